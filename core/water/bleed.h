// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/result.h"
#include "units/message.h"
#include "units/quantities.h"
#include "water/scaling.h"

namespace wetfront {

/// A ratio of concentration below this is against published guidance: EnergyPlus Engineering Reference,
/// direct evaporative cooler, blow-down.
constexpr double least_published_cycles = 2.0;

/// Volume of that water at 1000 kg/m3, as units count a gallon.
[[nodiscard]] VolumeFlow volume_flow_of(MassFlow water);

/// A sump at its steady state: what comes in leaves, and so do the salts.
struct WaterBalance {
    MassFlow evaporation;  ///< takes no salt
    MassFlow lost;         ///< drift and leaks, with the sump's salts
    MassFlow bleed;        ///< to be let out besides, with the sump's salts
    MassFlow make_up;      ///< evaporation + lost + bleed
    double wanted_cycles = 0.0;
    /// Salts of the sump against those of the make-up: the ratio wanted, or less where `lost_is_enough`; none
    /// where no water leaves as water.
    std::optional<double> cycles;
    bool lost_is_enough = false;  ///< drift and leaks alone keep the salts at or below the ratio wanted
};

/// Bleed that keeps the sump's salts at `cycles` times those of the make-up. Evaporation and losses 0 to
/// 1,000 kg/s; cycles above 1, below `least_published_cycles` only against published guidance (in_words says
/// so).
[[nodiscard]] Result<WaterBalance> water_balance(MassFlow evaporation, double cycles,
                                                 MassFlow lost = from_si<MassFlow>(0.0));

/// What a person should know besides the numbers; none where there is nothing.
[[nodiscard]] std::optional<Message> note_on(const WaterBalance& balance);

/// Cycles of concentration by measurement: the sump's conductivity over the make-up's, at least 1.
/// Conductivity above 0 to 10 S/m (100 mS/cm), the sump's not below the make-up's. Simplification:
/// conductivity grows a little slower than the salts, and carbonate that came down as scale is missing: the
/// ratio is a low one.
[[nodiscard]] Result<double> cycles_from_conductivity(Conductivity make_up, Conductivity sump);

/// What a salt that stays dissolved comes to in the sump: 0 kg/m3 or more, cycles 1 or more.
[[nodiscard]] Result<Concentration> concentrated(Concentration make_up, double cycles);

/// How far a water may be concentrated.
struct MostCycles {
    /// 1 or more; none: the make-up itself is beyond the limit at that pH and temperature.
    std::optional<double> cycles;
    /// The sump would leave the range in which the index is known before it meets its limit: `cycles` is the
    /// end of that range, not of what the water bears.
    bool range_ends_first = false;
};

/// Most cycles at which the Langelier index is at most `highest`, or the Ryznar index at least `lowest` (both
/// finite). `water`: temperature and pH of the sump, measured or held there; the rest as tested in the
/// make-up. The pH counts as fixed, yet it rises with the cycles in a real sump: a pH measured at fewer
/// cycles gives too many.
[[nodiscard]] Result<MostCycles> most_cycles_for_langelier(const WaterTest& water, double highest);
[[nodiscard]] Result<MostCycles> most_cycles_for_ryznar(const WaterTest& water, double lowest);

}  // namespace wetfront
