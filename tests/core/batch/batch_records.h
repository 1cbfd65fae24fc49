// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <unistd.h>

#include <stdexcept>

#include "demo/demo.h"
#include "store/store.h"
#include "support/fake_clock.h"

namespace wetfront::test {

/// A record file of its own with one house, visits added day by day.
class BatchRecords : public testing::Test {
protected:
    enum class Signed { no, yes };

    ~BatchRecords() override { std::filesystem::remove_all(folder_); }

    void add(const std::string& day, const std::string& id, Signed is_signed = Signed::yes,
             const std::string& replaces = {}) {
        auto file = file_;
        file.visit.id = Id{id};
        file.visit.started = parse_iso8601(day + "T10:00:00-05:00", "day").value();
        for (auto& mark : file.visit.marks) {
            mark.id = Id{id + "-" + mark.id.text};
        }
        if (is_signed == Signed::no) {
            file.visit.signatures.clear();
        }
        if (!replaces.empty()) {
            file.visit.replaces = Id{replaces};
        }
        const auto added = store_.add(file);
        ASSERT_TRUE(added) << added.error().text();
    }
    Id add_house(const std::string& name) {
        auto house = file_.house;
        house.id = store_.new_id();
        house.name = name;
        EXPECT_TRUE(store_.save(house));
        return house.id;
    }

    VisitFile file_ = example_visit();
    Id house_ = file_.house.id;
    FakeClock clock_;
    std::filesystem::path folder_ =
        std::filesystem::path{testing::TempDir()} / ("wetfront-batch-" + std::to_string(::getpid()));
    Store store_ = open();

private:
    Store open() {
        std::filesystem::remove_all(folder_);
        auto store = Store::open(folder_ / "records.wetfront", clock_);
        if (!store) {
            throw std::runtime_error{store.error().text()};
        }
        return std::move(store).value();
    }
};

}  // namespace wetfront::test
