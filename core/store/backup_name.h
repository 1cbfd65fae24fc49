// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/clock.h"
#include "store/backup.h"

// Not for other folders.
namespace wetfront::store_detail {

/// "2026-07-01-1004", as the names of copies carry it.
[[nodiscard]] std::string name_part(WallTime time);

/// "records-2026-07-01-1004.wetfront" for ".../records.wetfront".
[[nodiscard]] std::string backup_name(const std::filesystem::path& record_file, WallTime now);

/// The file as a backup of that record file, if its name says that it is one.
[[nodiscard]] std::optional<Backup> as_backup(const std::filesystem::path& file,
                                              const std::filesystem::path& record_file);

}  // namespace wetfront::store_detail
