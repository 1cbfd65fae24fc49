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

/// Makes an empty record file (0600), and its folder (0700) if there is none. It is built under another name
/// and put in place whole, so that a file with that name is either complete or not there. If another program
/// was quicker, its file stays.
[[nodiscard]] Result<void> make_record_file(const std::filesystem::path& file, const Clock& clock,
                                            std::span<const Migration> steps, const std::string& item);

/// Makes that folder, 0700, and those above it that are not there.
[[nodiscard]] Result<void> make_folder(const std::filesystem::path& folder, const std::string& item);

}  // namespace wetfront::store_detail
