// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/advice.h"
#include "trend/house_history.h"

namespace wetfront {

/// The value beyond which a followed quantity is not good enough any more, and what sets it.
struct SeriesLimit {
    enum class From {
        base_on_time,       ///< a run of that length no longer brings what the advice asks for
        least_circulation,  ///< published least flow for each metre of pad
    };

    AnyQuantity value;
    From from = From::base_on_time;
    AnyQuantity set_by;  ///< that base on-time as it stands in the timer, or that least flow per length
};

/// Limits as they stand after a visit: fill, wetting and wet-through by the base on-time that was left (else
/// found) in the bank's timer, held against the bounds of the advice with its margins (OnTimeBounds) while
/// all else stays as that visit measured it; a wet-through time with the fill that it measured. Flow by the
/// published least circulation of its pad's thickness. Effectiveness has none: no least one is published.
/// None also where readings, weather or settings lack, or the pump never rests. `advice` is that on `file`.
[[nodiscard]] std::optional<SeriesLimit> limit_of(const VisitFile& file, const Advice& advice,
                                                  const PadBank& bank, Followed what);

}  // namespace wetfront
