// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Published guidance on when pads may run.
namespace wetfront {

/// Start temperature below 80 degF with older birds (28 days or more: common practice, no source), in the 70s
/// against "low to mid 80s": waste, with the degrees below. Needs bird age and start temperature. Source:
/// Univ. of Georgia, 2011.
[[nodiscard]] std::vector<Finding> start_temperature_low(const RuleInputs& inputs);

/// Start temperature above 30 degC (86 degF) with such birds: fault, with the degrees above. Same needs, same
/// source.
[[nodiscard]] std::vector<Finding> start_temperature_high(const RuleInputs& inputs);

/// The fans' air goes down the house at less than 2.54 m/s (500 ft/min): note, with the airflow missing.
/// Silent with birds known to be younger. Needs airflow and cross-section; no settings. Source: Czarick,
/// Fairchild, Leu, Univ. of Georgia, 2019.
[[nodiscard]] std::vector<Finding> air_speed_below_500(const RuleInputs& inputs);

/// With the only humidity sensors outside: at start temperature and cut-off humidity even the best bank of
/// the timer, at the upper end of what its effectiveness may be, cools less than 2.0 K: waste, with the
/// cut-off that does serve. Needs start temperature, cut-off, and an effectiveness that is not just assumed.
/// Source: worked out; under 3 degF above 80 %, Univ. of Georgia.
[[nodiscard]] std::vector<Finding> humidity_cut_off_useless(const RuleInputs& inputs);

/// The other side: ten points above the cut-off (assumed; what is lost there is little) even the worst bank,
/// at the lower end, would still cool by 2.0 K. Note, with the cooling lost at the cut-off. Same needs.
[[nodiscard]] std::vector<Finding> humidity_cut_off_early(const RuleInputs& inputs);

}  // namespace wetfront
