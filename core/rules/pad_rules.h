// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "rules/rules.h"

// The air through the pads: cooling, speed and pressure against published values. No settings.
namespace wetfront {

/// Measured effectiveness clearly below the published one for speed and thickness (compare_effectiveness).
/// Fault, with how much warmer the air is at the design hour, else in the weather of the readings. A
/// shortfall that would matter but is too close to call: note, with the instrument that limits. Banks that
/// share one reading behind the pad are judged once. Needs the weather of the readings, the temperature
/// behind the pad, face speed and thickness. Source: eleven-term polynomial, EnergyPlus Engineering
/// Reference.
[[nodiscard]] std::vector<Finding> pad_cools_less_than_expected(const RuleInputs& inputs);

/// Clearly above it, which a pad cannot do: a reading is wrong. Note.
[[nodiscard]] std::vector<Finding> pad_cools_more_than_expected(const RuleInputs& inputs);

/// Face speed above the design speed of a pad of 150 or 100 mm (5 mm either way), by more than its expanded
/// uncertainty where several points were taken: note, with the cooling that this costs and the face that the
/// air would need. Source: 350 ft/min for 6 in, 225 ft/min for 4 in, Czarick & Fairchild, Univ. of Georgia,
/// Poultry Housing Tips 26(4), 2014.
[[nodiscard]] std::vector<Finding> face_velocity_above_design(const RuleInputs& inputs);

/// Fewer than five points of air speed on a bank: note, as the mean is not firm. Needs at least one point.
/// Source: 150 to 600 ft/min along one pad, Mississippi State P3329; five: common practice, no source.
[[nodiscard]] std::vector<Finding> face_points_few(const RuleInputs& inputs);

/// Air speed at the points of a bank varies by more than 30 % (standard deviation over mean; common practice,
/// no source): note, with the cooling at both ends where that is published. Needs five points or more.
[[nodiscard]] std::vector<Finding> face_velocity_uneven(const RuleInputs& inputs);

/// Pressure drop across a bank's pad above or below the published one, by more than the manometer's accuracy.
/// Notes. Need the drop, face speed and thickness, and a published value for these. Sources: Czarick &
/// Fairchild 2014; Franco et al. 2010.
[[nodiscard]] std::vector<Finding> pad_pressure_drop_high(const RuleInputs& inputs);
[[nodiscard]] std::vector<Finding> pad_pressure_drop_low(const RuleInputs& inputs);

/// Static pressure of the house above 50 Pa (0.20 inH2O) by more than the manometer's accuracy. Note: the
/// fans move less air. Source: Czarick & Fairchild 2014.
[[nodiscard]] std::vector<Finding> house_static_pressure_high(const RuleInputs& inputs);

}  // namespace wetfront
