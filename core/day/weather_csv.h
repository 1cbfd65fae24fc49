// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

#include "day/weather_file.h"

namespace wetfront {

/// Reads hourly weather from a comma-separated text (RFC 4180, UTF-8) whose first line names the columns, in
/// any order, each quantity with its unit: `time`, `dry bulb [degC]`, one of `relative humidity [%]`, `wet
/// bulb [degC]` and `dew point [degC]`, and perhaps `pressure [kPa]`; units are those of the command line. A
/// column `remark` is for people; a note names any other that is not used.
///
/// `time` is ISO 8601 with offset, with or without seconds; the rows lie whole hours apart. Where the offset
/// changes on the way, as in summer time, the smallest is the standard time; where it does not, it counts as
/// that. An empty cell is missing: without dry bulb or humidity the hour is a gap, as is one that is not in
/// the file; without pressure it has `site_pressure`, and a note says so.
///
/// Errors name line and column: a column missing, twice or without a usable unit, two columns of humidity, a
/// wrong number of cells, a cell that is no plain number, a value outside the range of moist air (-40 to 80
/// degC, 60 to 110 kPa, a wet bulb or dew point above the dry bulb), a time twice, earlier than the one
/// before or beside the full hours, offsets more than an hour apart, fewer than two hours in a row.
[[nodiscard]] Result<WeatherFile> read_weather_csv(std::string_view text, std::string_view name,
                                                   AbsolutePressure site_pressure);

/// The same the other way round: time, dry bulb and relative humidity to a hundredth, pressure to a tenth of
/// a pascal, and `remark` in each row.
[[nodiscard]] std::string weather_csv_text(const Weather& weather, const std::string& remark);

}  // namespace wetfront
