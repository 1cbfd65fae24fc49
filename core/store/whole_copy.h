// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <filesystem>

#include "store/store.h"

// Not for other folders. What returns a Result may throw besides.
namespace wetfront::store_detail {

/// Copies an open record file to `target` (0600, "-2" and so on where that name is taken): one file without
/// a -wal, written under another name, synced, read back and compared before it gets its own. Returns its
/// path. On an error, or stopped by `progress`, nothing is left of it.
[[nodiscard]] Result<std::filesystem::path> copy_whole(SQLite::Database& db,
                                                       const std::filesystem::path& target,
                                                       const CopyProgress& progress = {});

[[nodiscard]] RecordContent content_of(SQLite::Database& db);

/// When the last of that many entries was made, counted from the first; none if there are not so many, or 0.
[[nodiscard]] std::optional<WallTime> latest_of_first(SQLite::Database& db, int entries);

/// Pages and records fit together (integrity_check, foreign_key_check).
[[nodiscard]] Result<void> check_whole(SQLite::Database& db, const std::string& item);

/// So that what is read back comes from the medium and not from memory.
void forget_pages(const std::filesystem::path& file);

/// Data and size of a file or folder are on the medium.
[[nodiscard]] Result<void> sync(const std::filesystem::path& path, const std::string& item);

}  // namespace wetfront::store_detail
