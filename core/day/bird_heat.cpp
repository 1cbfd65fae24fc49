// SPDX-License-Identifier: Apache-2.0
#include "day/bird_heat.h"

#include "day/bird_terms.h"

namespace wetfront {

BirdHeat bird_heat(Mass mass, Temperature air) {
    const auto bird = day_detail::bird_terms(in_si(mass));
    const double t = in_celsius(air);
    return {from_si<Power>(bird.total_at(t)), from_si<Power>(bird.sensible_at(t))};
}

}  // namespace wetfront
