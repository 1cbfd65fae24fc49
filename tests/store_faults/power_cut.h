// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <map>
#include <random>
#include <string>
#include <vector>

#include "watched_disk.h"

namespace wetfront::test {

/// What stands on a disk after its power went, worked out from what was asked of it. Synced bytes stand, and
/// names whose folder was synced. Of what came after the last sync each write may be there, missing, or there
/// in some of its sectors only, without regard to order; of the changes of names in a folder the first few
/// are there. A sync that failed leaves each of its writes done or lost for good.
class Disk {
public:
    /// `root` is there for ever; what is in it now counts as synced.
    explicit Disk(const std::filesystem::path& root);

    void apply(const DiskEvent& event, std::mt19937& random);
    /// Puts into the empty folder `into` what stands if the power goes now.
    void leave(const std::filesystem::path& into, std::mt19937& random) const;

private:
    struct Content {
        std::string synced;
        std::vector<DiskEvent> since;
    };
    struct Names {
        std::map<std::string, int> synced;  ///< number of a file's content, or a_folder
        std::vector<DiskEvent> since;
        std::vector<int> numbers;  ///< of `since`
    };
    static constexpr int a_folder = -1;

    [[nodiscard]] Content& content(const std::string& path);
    void name_changed(const std::string& folder, const DiskEvent& event, int number);

    std::filesystem::path root_;
    std::map<std::string, int> now_;  ///< names as the running program sees them
    std::map<std::string, Names> folders_;
    std::vector<Content> contents_;
};

}  // namespace wetfront::test
