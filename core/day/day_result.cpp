// SPDX-License-Identifier: Apache-2.0
#include "day/day_result.h"

#include <algorithm>
#include <cmath>

namespace wetfront {
namespace {

double share_of(double difference, double whole) {
    return whole > 0.0 ? std::abs(difference) / whole : std::abs(difference);
}

}  // namespace

double WaterBalance::error() const {
    return share_of(in_si(pumped) - in_si(evaporated) - in_si(stored) - in_si(returned),
                    std::max(in_si(pumped), in_si(evaporated)));
}

double HeatBalance::error() const {
    return share_of(in_si(birds) + in_si(building) + in_si(water) - in_si(carried_away),
                    std::abs(in_si(carried_away)));
}

}  // namespace wetfront
