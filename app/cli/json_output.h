// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "cli/cli.h"
#include "units/file_keys.h"

namespace wetfront {

/// One object, two-space indented, keys in the order in which they were set.
using JsonObject = nlohmann::ordered_json;

/// Prints it with a newline; text that is not UTF-8 is replaced.
void print_json(std::ostream& out, const JsonObject& object);

/// Seconds, or null.
[[nodiscard]] inline JsonObject json_seconds(const std::optional<Duration>& time) {
    return time ? JsonObject(in_seconds(*time)) : JsonObject(nullptr);
}

}  // namespace wetfront
