// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/pad_hours.h"
#include "cycle/when_pads_may_run.h"

namespace wetfront {

/// The pad that cools best.
struct BestPad {
    Fraction effectiveness;
    Origin origin = Origin::assumed;
};

/// Against 28 days, or what stands in the margins.
enum class BirdAge { unknown, young, older };

/// What the advice on when pads may run is put together from.
struct PadsWork {
    const PadsQuestion& asked;
    BirdAge age = BirdAge::unknown;
    std::optional<Temperature> start{};   ///< none: none is advised
    std::optional<Velocity> air_speed{};  ///< down the house
    std::optional<BestPad> pad{};
};

// Inputs that several reasons name.
[[nodiscard]] ReasonInput start_input(const PadsWork& work);
[[nodiscard]] ReasonInput pad_input(const BestPad& pad);
[[nodiscard]] ReasonInput least_cooling_input(const CycleMargins& margins);

/// The hours of a timer, rounded to the clock's steps.
struct AdvisedHours {
    Duration from;
    Duration to;
};

/// Adds pad hours from and to (model rule 9) to the advice, with or without values; none where they have
/// none.
std::optional<AdvisedHours> add_pad_hours(const PadsWork& work, PadsAdvice& advice);

}  // namespace wetfront
