// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Banks with pads of the same height and thickness against the best of them. Apart means: more than 30 %,
// counted on the smaller, and more than both uncertainties explain (common practice, no source). A finding
// is waste where both hang on one timer, which then has to serve the weaker; else a note. Causes are ranked
// by what else was read. No settings.
namespace wetfront {

/// Wetting times (wet-through less fill) of banks on one pump, scaled by the flow per length of each where
/// their headers were worked out; else only between headers with the same outlets as far as entered. Not
/// between readings with fans on and with fans off.
[[nodiscard]] std::vector<Finding> bank_wets_slower(const RuleInputs& inputs);

/// Fill times of banks on one pump, of the same length (5 %) and bore. Silent on a bank that wets more slowly
/// too: that finding tells both.
[[nodiscard]] std::vector<Finding> bank_fills_slower(const RuleInputs& inputs);

/// Flow per length of banks on different pumps, each measured.
[[nodiscard]] std::vector<Finding> bank_gets_less_water(const RuleInputs& inputs);

/// Water that the pads take up until they drip, by volume of pad (flow x wetting time), of banks on different
/// pumps with measured flows: always a note, on the bank that takes up less.
[[nodiscard]] std::vector<Finding> bank_takes_up_less(const RuleInputs& inputs);

/// Effectiveness of banks each with its own reading behind the pad, less what air speed and thickness
/// explain: a tenth of the possible cooling (common practice, no source) and more than both thermometers
/// explain. Fault, with the cooling lost. Silent on a bank that cools clearly less than published: that is
/// told there.
[[nodiscard]] std::vector<Finding> bank_cools_less(const RuleInputs& inputs);

}  // namespace wetfront
