// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <span>
#include <string>

#include "base/clock.h"
#include "base/result.h"
#include "store/migration.h"

// Not for other folders.
namespace wetfront::store_detail {

/// A file that is built beside its later place: gone at the end unless it was put there whole. May throw.
class Draft {
public:
    explicit Draft(std::filesystem::path path);
    ~Draft();
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;

    /// Makes it, empty, for its owner only.
    [[nodiscard]] Result<void> make(const std::string& item) const;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// Proves that the closed database is whole, syncs it, and gives it that name. False if the name is
    /// taken.
    [[nodiscard]] Result<bool> put_in_place(const std::filesystem::path& file, const std::string& item) const;

private:
    std::filesystem::path path_;
};

/// Makes an empty record file (0600), and its folder (0700) if there is none. It is built under another name
/// and put in place whole, so that a file with that name is either complete or not there. If another program
/// was quicker, its file stays.
[[nodiscard]] Result<void> make_record_file(const std::filesystem::path& file, const Clock& clock,
                                            std::span<const Migration> steps, const std::string& item);

/// Makes that folder, 0700, and those above it that are not there.
[[nodiscard]] Result<void> make_folder(const std::filesystem::path& folder, const std::string& item);

}  // namespace wetfront::store_detail
