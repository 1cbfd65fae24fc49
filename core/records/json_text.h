// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "records/file_shape.h"

namespace wetfront {

/// Deepest nesting that is read; a visit file has seven levels.
constexpr std::size_t most_levels = 12;
/// Most keys of one object; the largest record, the limits, has 21.
constexpr std::size_t most_keys = 64;

/// One JSON document as a tree. Refuses what is larger than most_file_bytes, not UTF-8, not JSON (named by
/// line and column), nested deeper than most_levels, or holds a key twice (named by its path). `item` names
/// the document.
[[nodiscard]] Result<Json> read_json(std::string_view text, std::string_view item);

/// The value as a person can find it again, shortened: text and numbers as they stand, "{...}", "[...]".
[[nodiscard]] std::string glimpse(const Json& json);

}  // namespace wetfront
