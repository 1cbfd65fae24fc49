// SPDX-License-Identifier: Apache-2.0
// Memory that runs out at SQLite's nth request along a visit: for every 61st n, or for every one if
// WETFRONT_ALL_FAULTS is set, which takes long.
#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>

#include "act.h"
#include "book.h"
#include "core/store/samples.h"
#include "failing_memory.h"
#include "older_file.h"
#include "store/migration.h"
#include "watched_disk.h"

namespace wetfront::test {
namespace {

constexpr int shares = 2;

/// From one refused request of a share to the next: several processes divide the work.
int step() {
    return shares * (std::getenv("WETFRONT_ALL_FAULTS") != nullptr ? 1 : 61);
}

class MemoryFaultTest : public testing::TestWithParam<std::tuple<int, bool>> {
protected:
    [[nodiscard]] bool for_ever() const { return std::get<1>(GetParam()); }

    /// How many requests were refused.
    int refuse_every(std::size_t version, const std::vector<Act>& acts) {
        FailingMemory memory;
        WatchedDisk disk;
        Book before;
        const StoreFolder kept;
        if (version > 0) {
            make_older_file(kept.path() / "older", version);
            std::filesystem::copy_file(kept.path() / "older", kept.file());
            const FakeClock clock;
            before = value_of(read_book(value_of(Store::open(kept.file(), clock))));
        }
        int refused = 0;
        for (int nth = 1 + std::get<0>(GetParam());; nth += step()) {
            SCOPED_TRACE("request " + std::to_string(nth));
            const StoreFolder folder;
            const auto file = folder.file();
            if (version > 0) {
                std::filesystem::copy_file(kept.path() / "older", file);
            }
            FakeClock clock;
            memory.run_out_at(nth, for_ever());
            auto outcome = perform(acts, file, clock, before);
            outcome.store.reset();
            memory.recover();
            EXPECT_EQ(outcome.wrong, "");
            if (!memory.ran_out()) {
                return refused;
            }
            ++refused;
            for (const auto& error : outcome.errors) {
                EXPECT_EQ(vague_in(error, file), "") << error.text();
                EXPECT_NE(error.read.find("memory ran out"), std::string::npos) << error.text();
            }
            EXPECT_EQ(judge(file, outcome.allowed), "");
            if (HasFailure()) {
                return refused;
            }
        }
    }
};

std::string memory_fault_name(const testing::TestParamInfo<std::tuple<int, bool>>& info) {
    return "share_" + std::to_string(std::get<0>(info.param)) +
           (std::get<1>(info.param) ? "_for_ever" : "_once");
}

TEST_P(MemoryFaultTest, at_any_moment_of_a_visit_loses_nothing_acknowledged_and_is_said) {
    const int refused = refuse_every(0, short_visit());
    std::cout << refused << " requests for memory refused along a visit"
              << (for_ever() ? ", for ever" : ", once") << ": nothing lost\n";
    EXPECT_GT(refused, 100);
}

TEST_P(MemoryFaultTest, at_any_moment_of_a_migration_loses_nothing_and_is_said) {
    for (const auto version : older_versions()) {
        const int refused = refuse_every(version, {mark_act("visit-2", "new-1", 100'000)});
        std::cout << refused << " requests for memory refused from schema " << version
                  << (for_ever() ? ", for ever" : ", once") << ": nothing lost\n";
        EXPECT_GT(refused, 50);
    }
}

INSTANTIATE_TEST_SUITE_P(Requests, MemoryFaultTest,
                         testing::Combine(testing::Range(0, shares), testing::Bool()), memory_fault_name);

}  // namespace
}  // namespace wetfront::test
