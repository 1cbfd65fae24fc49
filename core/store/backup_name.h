// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/clock.h"

// Not for other folders.
namespace wetfront::store_detail {

/// "2026-07-01-1004", as the names of copies carry it.
[[nodiscard]] std::string name_part(WallTime time);

/// "records-2026-07-01-1004.wetfront" for ".../records.wetfront".
[[nodiscard]] std::string backup_name(const std::filesystem::path& record_file, WallTime now);

/// The day in the name of a backup of that record file; none for any other name.
[[nodiscard]] std::optional<std::string> day_in_name(const std::string& name,
                                                     const std::filesystem::path& record_file);

}  // namespace wetfront::store_detail
