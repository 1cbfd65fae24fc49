// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "air/moist_air.h"
#include "cycle/reason.h"
#include "records/visit.h"

namespace wetfront {

/// The two weathers of the advice: that of the readings, and the hottest hour of the farm's design day.
struct VisitWeather {
    std::optional<MoistAir> test;
    std::optional<MoistAir> design;
    std::vector<Message> missing;  ///< what is not entered, or cannot be used
    std::vector<Message> assumed;
    std::vector<Message> notes;  ///< what was entered and could not be used
};

/// Simplification: the hour of the largest evaporation is taken to be that of the design dry bulb with its
/// coincident wet bulb. Where the day's humidity ratio changes little, the wet-bulb depression is largest at
/// the hottest hour. Pressure: barometer, else from the elevation, else sea level (assumed; it changes the
/// ratio by less than a percent).
[[nodiscard]] VisitWeather weather_of(const VisitFile& file);

/// Speed of the air at the pad's face: as measured, else the fans' airflow over the face area of all the
/// house's banks.
[[nodiscard]] std::optional<Velocity> face_velocity_of(const VisitFile& file);

/// A pad's effectiveness and where it comes from: measured, published (expected for speed and thickness) or
/// assumed.
struct PadEffectiveness {
    Fraction value;
    Origin origin = Origin::assumed;
};
inline constexpr double assumed_effectiveness =
    0.75;  ///< where nothing is known; cancels from E_design / E_test
[[nodiscard]] PadEffectiveness effectiveness_of(const VisitFile& file, const VisitWeather& weather,
                                                const PadBank& bank);

/// The bank's share of its pump's flow, by length of pad; none where flow or a length is not known.
[[nodiscard]] std::optional<VolumeFlow> flow_to(const VisitFile& file, const PadBank& bank);

/// E H / q in the weather of the test: the share of the water that evaporates, from flow and air instead of
/// from the stopwatch. None where flow, height, a length, the weather, face speed or more than an assumed
/// effectiveness lack. Water is taken as 1,000 kg/m3 (0.7 % high at 37 degC).
[[nodiscard]] std::optional<double> share_from_flow(const VisitFile& file, const VisitWeather& weather,
                                                    const PadBank& bank);

/// Three header volumes over the bank's flow; none where flow or bore is not known.
[[nodiscard]] std::optional<Duration> header_exchange_of(const VisitFile& file, const PadBank& bank);

}  // namespace wetfront
