// SPDX-License-Identifier: Apache-2.0
#include "cli/quantity_lists.h"

#include <algorithm>
#include <string>

#include "units/quantity_text.h"

namespace wetfront {
namespace {

/// The items of a list with commas between; an empty text has one empty item.
std::vector<std::string_view> split(std::string_view text) {
    std::vector<std::string_view> items;
    std::size_t from = 0;
    while (from <= text.size()) {
        const auto to = std::min(text.find(',', from), text.size());
        items.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return items;
}

}  // namespace

Result<std::vector<Duration>> readings_of(std::string_view text) {
    std::vector<Duration> readings;
    for (const auto item : split(text)) {
        WF_TRY(const auto reading,
               parse_quantity<Duration>(item, "reading " + std::to_string(readings.size() + 1)));
        readings.push_back(reading);
    }
    return readings;
}

Result<std::vector<PumpPoint>> pump_points(std::string_view text) {
    std::vector<PumpPoint> points;
    for (const auto pair : split(text)) {
        const auto item = "--pump, point " + std::to_string(points.size() + 1);
        const auto colon = pair.find(':');
        if (colon == std::string_view::npos) {
            return bad_input(item, pair,
                             "flow and head with a colon between, as 60gpm:20ft; decimals with a point");
        }
        PumpPoint point;
        WF_TRY(point.flow, parse_quantity<VolumeFlow>(pair.substr(0, colon), item + ", flow"));
        WF_TRY(point.head, parse_quantity<Length>(pair.substr(colon + 1), item + ", head"));
        points.push_back(point);
    }
    return points;
}

}  // namespace wetfront
