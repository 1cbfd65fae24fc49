// SPDX-License-Identifier: Apache-2.0
#include "day/day_house.h"

#include "base/numbers.h"

namespace wetfront {

Result<Mass> water_held(const ColumnRates& rates, EvaporationFlux flux, Area face) {
    if (!(in_si(rates.drying) > 0.0)) {
        return bad_input("drying rate", print_number(in_si(rates.drying), 6) + " per second", "more than 0");
    }
    if (!(in_si(flux) > 0.0)) {
        return bad_input("water evaporated per face area", print_number(in_si(flux), 6) + " kg/(s m2)",
                         "more than 0");
    }
    return from_si<Mass>(in_si(flux) * in_si(face) / in_si(rates.drying));
}

}  // namespace wetfront
