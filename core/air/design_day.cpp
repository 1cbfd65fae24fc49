// SPDX-License-Identifier: Apache-2.0
#include "air/design_day.h"

#include "base/numbers.h"

namespace wetfront {
namespace {

// The source counts its hours from 1 to 24; its last one stands first here.
constexpr std::array shares{0.82, 0.88, 0.92, 0.95, 0.98, 1.00, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23,
                            0.13, 0.05, 0.00, 0.00, 0.06, 0.14, 0.24, 0.39, 0.50, 0.59, 0.68, 0.75};

Result<MoistAir> cooled(const MoistAir& air, Temperature dry_bulb) {
    if (air.dew_point && *air.dew_point >= dry_bulb) {
        return air_from_humidity(dry_bulb, from_si<Fraction>(1.0), air.pressure);
    }
    return air_from_humidity_ratio(dry_bulb, air.humidity_ratio, air.pressure);
}

}  // namespace

double share_of_daily_range(int solar_hour) {
    return shares.at(static_cast<std::size_t>(solar_hour));
}

Result<DesignDay> design_day(const MoistAir& hottest, TemperatureDifference daily_range) {
    const double range = in_si(daily_range);
    if (!(range >= 0.0 && range <= 35.0)) {
        return bad_input("daily range", print_number(range, 1) + " K", "0 to 35 K (0 to 63 degF)");
    }
    DesignDay day;
    for (std::size_t hour = 0; hour < shares.size(); ++hour) {
        // What was entered for the hottest hour stays as it is, to the last digit.
        day.hours[hour] = hottest;
        if (const double below = range * shares[hour]; below > 0.0) {
            WF_TRY(day.hours[hour],
                   cooled(hottest, from_si<Temperature>(in_kelvin(hottest.dry_bulb) - below)));
        }
    }
    return day;
}

}  // namespace wetfront
