// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// How evenly outlets share the water, 1 where all give the same.
struct Uniformity {
    /// Mean of the lowest quarter over the mean of all; a quarter of n outlets is n / 4 rounded to the
    /// nearest, at least one (Merriam and Keller 1978; from memory, as is the rounding of the 15-value
    /// check).
    double low_quarter = 1.0;
    /// Christiansen's coefficient, 1 - sum |q - mean| / (n mean); Christiansen 1942, Calif. Agric. Exp. Stn.
    /// Bull. 670. Below 0 where a few outlets give nearly all.
    double christiansen = 1.0;
};

/// Of flows in any unit. Times to fill a vessel are the inverse of a flow: convert first. Errors: no value, a
/// value below 0 or not finite, all values 0.
[[nodiscard]] Result<Uniformity> uniformity_of(std::span<const double> flows);

}  // namespace wetfront
