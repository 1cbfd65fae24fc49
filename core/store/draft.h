// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>

#include "base/result.h"

// Not for other folders.
namespace wetfront::store_detail {

/// A file that is built beside its later place: gone at the end unless it was put there whole. May throw. Its
/// name is that of the place, ".unfinished-" and the number of the process that builds it.
class Draft {
public:
    explicit Draft(const std::filesystem::path& place);
    ~Draft();
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;

    /// Makes it, empty, for its owner only.
    [[nodiscard]] Result<void> make(const std::string& item) const;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// Syncs it and gives it that name. False if the name is taken.
    [[nodiscard]] Result<bool> put_in_place(const std::filesystem::path& file, const std::string& item) const;
    /// The same for a closed database, once it is proved whole.
    [[nodiscard]] Result<bool> put_database_in_place(const std::filesystem::path& file,
                                                     const std::string& item) const;

private:
    std::filesystem::path path_;
};

/// Removes what a process that was killed left of a record file and its copies while it built them: drafts
/// beside the file and in its folder of backups, this user's, of a process that is not there any more. Only
/// who holds the file for writing may call it: then nobody copies it, and what a draft was to become is at
/// hand in the file itself or in the backup from which it was taken. What cannot be removed stays.
void remove_left_drafts(const std::filesystem::path& record_file);

/// Removes a file with the journals beside it.
void remove_with_journals(const std::filesystem::path& file);

}  // namespace wetfront::store_detail
