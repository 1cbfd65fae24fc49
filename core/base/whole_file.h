// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

#include "base/result.h"

namespace wetfront {

/// Why a file could not be kept, as far as a person does something else about it.
enum class FileFault {
    no_room,        ///< the medium or the share of it is full, or takes no file of that size
    not_permitted,  ///< read-only, or no permission
    gone,           ///< the folder is not there, or the medium does not answer
    differs,        ///< what is read back is not what was written
    other,
};
struct FileFailure {
    FileFault fault = FileFault::other;
    int number = 0;  ///< errno; 0 where nothing failed but the comparison
};

/// Writes the bytes beside the file, syncs them, reads them back from the medium and compares, and only then
/// gives them the file's name; the folder is synced too. What was there before stays on any failure, and
/// nothing is left beside it. A link of that name is replaced, never followed. None: the file is kept.
[[nodiscard]] std::optional<FileFailure> keep_file(const std::filesystem::path& file, std::string_view bytes);

/// Makes the folder in one that is there; none also where it is there already.
[[nodiscard]] std::optional<FileFailure> keep_folder(const std::filesystem::path& folder);

/// keep_file(), with the failure as a storage error in words.
[[nodiscard]] Result<void> write_whole(const std::filesystem::path& file, std::string_view bytes);
[[nodiscard]] Error not_kept(const std::filesystem::path& file, const FileFailure& failure);

}  // namespace wetfront
