// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

#include "day/weather_file.h"

namespace wetfront {

/// True if the text begins as an EPW file does.
[[nodiscard]] bool looks_like_epw(std::string_view text);

/// Reads an EPW file, the weather format of EnergyPlus. Source: EnergyPlus documentation, Auxiliary Programs,
/// "EnergyPlus Weather File (EPW) Data Dictionary" (v24.1).
///
/// Eight header lines, then a record an hour of 35 columns for the whole of one year. Used are dry bulb, dew
/// point (where it is missing the relative humidity, which is printed coarser) and pressure. Hour 1 ends at
/// one o'clock, hour 24 at midnight: a record stands for the air at the end of its hour. The time zone is the
/// standard time, all year; a daylight saving period in the header moves no record, and a note names it.
///
/// A value at or above its missing code, or an empty one, is missing: without dry bulb, or without dew point
/// and humidity, the hour is a gap; without pressure it has that of the standard atmosphere at the station's
/// elevation, and a note counts these hours. A dew point above the dry bulb by no more than 0.1 K, the step
/// of both, is saturated air.
///
/// A year made of months of several years, as a typical one is, is dated 2001, or 2004 where it has a 29
/// February; its months follow each other as if they were of one year. A year of one date keeps it; where it
/// is a leap year and the header says that leap days are left out, 29 February is a gap.
///
/// Errors name line and column: a header line that is not the one that belongs there, more than one data
/// period or record an hour, a wrong number of columns, an hour that does not follow the one before, a year
/// that is not whole (8,760 or 8,784 records), 29 February against the header, a value outside the format's
/// range or that of moist air, an elevation outside -500 to 4,000 m.
[[nodiscard]] Result<WeatherFile> read_epw(std::string_view text);

}  // namespace wetfront
