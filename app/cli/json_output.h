// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "cli/cli.h"
#include "units/quantity_text.h"

namespace wetfront {

/// One object, two-space indented, keys in the order in which they were set.
using JsonObject = nlohmann::ordered_json;

/// Prints it with a newline; text that is not UTF-8 is replaced.
void print_json(std::ostream& out, const JsonObject& object);

/// The unit that a number has in JSON output: SI, temperatures in degC. Empty for a plain share.
[[nodiscard]] std::string json_unit(Kind kind);
/// The number in that unit.
[[nodiscard]] double json_number(const AnyQuantity& quantity);
/// "period" and a time give "period_s": name and unit in letters that a key can hold.
[[nodiscard]] std::string json_key(const std::string& name, Kind kind);

/// Seconds, or null.
[[nodiscard]] inline JsonObject json_seconds(const std::optional<Duration>& time) {
    return time ? JsonObject(in_seconds(*time)) : JsonObject(nullptr);
}

}  // namespace wetfront
