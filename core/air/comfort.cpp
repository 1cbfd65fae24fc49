// SPDX-License-Identifier: Apache-2.0
#include "air/comfort.h"

#include <cmath>

#include "base/numbers.h"

namespace wetfront {

Temperature temperature_humidity_index(const MoistAir& air) {
    return celsius(0.85 * in_celsius(air.dry_bulb) + 0.15 * in_celsius(air.wet_bulb));
}

Result<Temperature> temperature_humidity_velocity_index(const MoistAir& air, Velocity velocity) {
    const double t = in_celsius(air.dry_bulb);
    const double v = in_si(velocity);
    constexpr double conversion = 1e-9;  // from kelvin must not push a limit out of its range
    if (!(t >= 35.0 - conversion && t <= 41.0 + conversion)) {
        return bad_input("dry bulb", print_number(t, 3) + " degC",
                         "35 to 41 degC, where the index was tested");
    }
    if (!(v >= 0.2 && v <= 1.2)) {
        return bad_input("air velocity", print_number(v, 3) + " m/s",
                         "0.2 to 1.2 m/s, where the index was tested");
    }
    return celsius(in_celsius(temperature_humidity_index(air)) * std::pow(v, -0.058));
}

}  // namespace wetfront
