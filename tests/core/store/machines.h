// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <memory>
#include <optional>
#include <string>

#include "samples.h"

namespace wetfront::test {

/// A machine with a record file of its own, for bundles between several of them.
class Machine {
public:
    Machine() : store_{open()} {}

    [[nodiscard]] Store& store() { return *store_; }
    [[nodiscard]] const Id& device() const { return store_->device(); }
    [[nodiscard]] std::filesystem::path file() const { return folder_.file(); }
    [[nodiscard]] std::filesystem::path place(const std::string& name) const { return folder_.path() / name; }
    FakeClock clock;

    /// A bundle's text.
    [[nodiscard]] std::string bundle(const BundleChoice& choice) const {
        const auto path = place("bundle-" + std::to_string(++bundles_));
        const auto made = value_of(store_->write_bundle(choice, path));
        return made.entries == 0 ? std::string{} : value_of(read_bundle_file(path));
    }
    [[nodiscard]] std::string all(bool sheets = false) const {
        return bundle({.everything = true, .sheets = sheets});
    }
    [[nodiscard]] std::string new_for(const Machine& other) const {
        return bundle({.new_for = other.device()});
    }
    BundleReport take(const std::string& text) { return value_of(store_->take_in(text)); }
    /// What another machine reads back.
    [[nodiscard]] std::string receipt(const std::string& bundle) const {
        succeed(store_->write_receipt(bundle, place("receipt")));
        return value_of(read_bundle_file(place("receipt")));
    }

    /// All that the file holds, whatever the order in which it came, and what is present of it. The file is
    /// closed meanwhile.
    [[nodiscard]] std::string contents();
    /// What `store verify` finds; its text if anything is wrong.
    [[nodiscard]] StoreVerdict verdict();
    /// Runs `work` with the file's path while it is closed.
    template <class Work>
    auto closed(Work&& work) {
        store_.reset();
        auto result = work(file());
        store_.emplace(open());
        return result;
    }

private:
    [[nodiscard]] Store open() { return value_of(Store::open(folder_.file(), clock)); }

    StoreFolder folder_;
    mutable int bundles_ = 0;
    std::optional<Store> store_;
};

[[nodiscard]] std::string wrong_in(const StoreVerdict& verdict);

}  // namespace wetfront::test
