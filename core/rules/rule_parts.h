// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/labels.h"
#include "rules/rules.h"

// What rules about equipment and readings share. Their findings name no timer: they stand whatever is set.
namespace wetfront {

inline constexpr const char* common_practice = "common practice, no source";
inline constexpr double rounding = 1e-6;   ///< SI: a limit typed in the other unit is met at the limit
inline constexpr double an_hour = 3600.0;  ///< s
inline constexpr int minutes_of_day = 1440;

[[nodiscard]] inline Duration of_minutes(int minutes) {
    return seconds(60.0 * minutes);
}

/// About that bank, or where none is given about the house or what the message names.
[[nodiscard]] Finding finding_about(const PadBank* bank, const char* rule, Severity severity);

/// Length of all these pads; none where one is not known or there are none.
[[nodiscard]] std::optional<Length> length_of(const std::vector<const PadBank*>& banks);

/// Water that all these pads evaporate in that air; none where one is not known or there are none.
[[nodiscard]] std::optional<MassFlow> evaporation_of(const RuleInputs& inputs, const MoistAir& outside,
                                                     const std::vector<const PadBank*>& banks);

/// Two numbers more than 30 % apart, counted on the smaller (common practice, no source), and by more than
/// their uncertainties together.
[[nodiscard]] bool clearly_above(double high, double high_expanded, double low, double low_expanded);

/// Share of their described area that a header's outlets pass, by orifice law from the head read at its pump
/// end and the flow measured: sqrt(head that the description asks for / head read). None where head, measured
/// flow or description lack.
[[nodiscard]] std::optional<double> open_share_of(const RuleInputs& inputs, const PadBank& bank);
/// An open share below this speaks of clogged outlets, above its inverse of wider or missing ones: allows for
/// a discharge coefficient that is assumed (common practice, no source).
inline constexpr double least_open_share = 0.8;

/// Why a pump gives little, likeliest first: clogged outlets lead where the head at a header says so, and
/// come last where it says no.
[[nodiscard]] std::vector<LikelyCause> causes_of_low_flow(const RuleInputs& inputs,
                                                          const std::vector<const PadBank*>& banks);

/// How much warmer air leaves pads that lack that share of the wet-bulb depression: at the design hour, else
/// in the weather of the readings; none without either.
struct CoolingLost {
    TemperatureDifference lost;
    bool at_design = true;
    [[nodiscard]] Message when() const;
};
[[nodiscard]] std::optional<CoolingLost> cooling_lost(const VisitWeather& weather, double share);

}  // namespace wetfront
