// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "air/moist_air.h"
#include "cli/command.h"
#include "cli/results.h"

namespace wetfront {

/// A state of air as typed: dry bulb, one of three for the humidity, at most one of two for the pressure.
struct AirOptions {
    std::string dry_bulb;
    std::optional<std::string> relative_humidity, wet_bulb, dew_point;
    std::optional<std::string> elevation, pressure;
};

void add_air_options(CLI::App& command, AirOptions& options);

/// The air asked for, at sea level where neither elevation nor pressure was given.
[[nodiscard]] Result<MoistAir> air_of(const AirOptions& options);

/// What stands behind the pressure in text and in the list of what was assumed: where it comes from.
[[nodiscard]] std::string pressure_origin(const AirOptions& options);
[[nodiscard]] bool sea_level_assumed(const AirOptions& options);

}  // namespace wetfront
