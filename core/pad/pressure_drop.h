// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// Where a published pressure drop comes from.
enum class PressureDropSource {
    design_speed,  ///< Czarick & Fairchild, Univ. of Georgia, Poultry Housing Tips 26(4), 2014: new pads
    wind_tunnel,   ///< Franco, Valera, Madueno, Pena, Trans. ASABE 53(2):565-576, 2010, abstract
    both,
};

struct PublishedPressureDrop {
    PressureDifference lowest;
    PressureDifference highest;
    PressureDropSource source = PressureDropSource::wind_tunnel;
};

/// Published pressure drop across a clean wet pad, from just outside to just behind it. No relation with
/// speed is published openly, only these points; everywhere else it is an error that says so, and the drop is
/// measured only. Face velocity above 0 to 10 m/s, thickness 50 to 300 mm.
///  - 12.5 Pa (0.05 inH2O) at 1.778 m/s (350 ft/min) through 150 mm and 1.143 m/s (225 ft/min) through 100
///  mm,
///    taken to serve 5 mm and 5 % around these; as 10 to 15 Pa
///  - 3.9 to 11.25 Pa at 1 to 1.5 m/s, by kind of pad and water flow; taken to serve 50 to 150 mm, as the
///    abstract gives no thickness
/// Where both serve, the range holds both.
[[nodiscard]] Result<PublishedPressureDrop> published_pressure_drop(Velocity face_velocity, Length thickness);

enum class PressureDropVerdict {
    within,
    higher,     ///< suspect clogged passages: scale, algae, dust
    lower,      ///< suspect air that goes around the pad, a dry pad, or thin air (a high farm)
    too_close,  ///< to call: beyond the range by no more than the instrument's accuracy
};

/// How far a hand manometer may be off, assumed: 0.01 inH2O.
inline constexpr PressureDifference assumed_manometer_accuracy = from_si<PressureDifference>(2.5);

/// A measured drop (0 to 500 Pa, accuracy 0 to 50 Pa) against the published one. The drop of the pad alone:
/// the static pressure of a whole house (25 to 50 Pa, same source as the design point) holds more than it.
[[nodiscard]] Result<PressureDropVerdict> compare_pressure_drop(
    PressureDifference measured, const PublishedPressureDrop& published,
    PressureDifference accuracy = assumed_manometer_accuracy);

}  // namespace wetfront
