// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// Whether a run brings back what the pad loses in a period.
namespace wetfront {

/// The shortest run is below fill + P kappa E_design / E_test, what a period evaporates at the design hour:
/// water runs short a little in every period, until the far end is dry. Fault, with what lacks in a period,
/// how long a wet pad lasts, and the cooling that is lost there in the end, by the wetting column; where that
/// still finds enough, with what may lack by another drying curve. From there up to the advised
/// bound (margin and uncertainty): note. Needs period, base on-time, the readings of a dry or a wet start and
/// both weathers (BankAdvice::question); silent where the pump never rests, and below the fill time, where
/// base_below_fill speaks.
[[nodiscard]] std::vector<Finding> base_below_need(const RuleInputs& inputs);

/// At the design hour a bank dries faster than it is supplied: no on-time and no period keeps it wet, running
/// without rest included. Fault of the equipment, with the share that it gets of what it needs and the
/// cooling lost. Needs BankAdvice::question; no settings.
[[nodiscard]] std::vector<Finding> drying_outruns_supply_of_bank(const RuleInputs& inputs);

}  // namespace wetfront
