// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// The header as described (bore, outlets, spacing), at the flow that is measured or worked out. Need both; no
// settings.
namespace wetfront {

/// At that flow the outlets take all the water before it has filled the header. Fault. Note where water was
/// timed at the far end all the same: then flow or description is wrong. Silent where outlets get nothing,
/// which is worse. Source: the filling front.
[[nodiscard]] std::vector<Finding> pump_cannot_fill_header(const RuleInputs& inputs);

/// Outlets that get no water at all, with and without static recovery: fault, with how many of how many; note
/// as above. Source: orifice law and friction, as in header.h.
[[nodiscard]] std::vector<Finding> header_starves_outlets(const RuleInputs& inputs);

/// The weakest outlet gives less than 0.9 times the strongest, with and without static recovery. Note, with
/// what that asks of the on-time. Silent where outlets get nothing. Source: under 10 % variation in
/// discharge, University of Minnesota pressure distribution worksheet v11.09.22.
[[nodiscard]] std::vector<Finding> header_uneven(const RuleInputs& inputs);

/// The head read at the pump end is more than the described outlets ask for at the measured flow: they pass
/// less than 0.8 times their area. Waste, with that share. Needs the head read and a measured flow besides.
/// Source: orifice law; 0.8: common practice, no source.
[[nodiscard]] std::vector<Finding> outlets_clogged(const RuleInputs& inputs);

/// The same the other way: they pass more than 1 / 0.8 times their area. Note.
[[nodiscard]] std::vector<Finding> outlets_pass_too_much(const RuleInputs& inputs);

}  // namespace wetfront
