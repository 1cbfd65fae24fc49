// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "base/result.h"

// Not for other folders.
namespace wetfront::store_detail {

enum class IfThere { refuse, replace };

/// Writes a file (0600) beside its place, syncs it, reads it back from the medium and gives it its name. On
/// an error nothing is left of it, and what had that name is as it was.
[[nodiscard]] Result<void> write_file(const std::filesystem::path& file, std::string_view bytes,
                                      IfThere if_there, const std::string& item);

}  // namespace wetfront::store_detail
