// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "air/design_day.h"
#include "cycle/reason.h"
#include "pad/face_velocity.h"
#include "pad/measured_pad.h"
#include "records/visit.h"

namespace wetfront {

/// The two weathers of the advice: that of the readings, and the design hour, the hour of the farm's design
/// day in which most evaporates.
struct VisitWeather {
    AbsolutePressure pressure = from_si<AbsolutePressure>(101325.0);  ///< of the site
    std::optional<MoistAir> test;
    HumidityFrom humidity_from = HumidityFrom::hygrometer;  ///< of the readings
    std::optional<MoistAir> design;
    std::optional<DesignDay> day;  ///< none: its daily range is not entered, or cannot be used
    std::vector<Message> missing;  ///< what is not entered, or cannot be used
    std::vector<Message> assumed;
    std::vector<Message> notes;  ///< what was entered and could not be used
};

/// Without a daily range the design hour is taken to be that of the design dry bulb with its coincident wet
/// bulb, which is then listed as assumed. Pressure: barometer, else from the elevation, else sea level
/// (assumed; it changes the ratio by less than a percent). Humidity of the readings: relative humidity, else
/// wet bulb, else dew point.
[[nodiscard]] VisitWeather weather_of(const VisitFile& file);

/// Speed of the air at a pad's face.
struct PadFace {
    Velocity speed;
    Origin origin = Origin::measured;    ///< derived: from the fans' airflow
    std::optional<FaceVelocity> points;  ///< of this bank, where they were taken
};
/// As measured at points of this bank; else the house's own reading; else the fans' airflow over the face
/// area of all banks.
[[nodiscard]] std::optional<PadFace> face_of(const VisitFile& file, const PadBank& bank);

/// A pad's effectiveness and where it comes from: measured, published (expected for speed and thickness) or
/// assumed.
struct PadEffectiveness {
    Fraction value;
    Origin origin = Origin::assumed;
    std::optional<MeasuredEffectiveness> measured;  ///< with its uncertainty
    std::optional<Fraction> expected;               ///< published, for the speed and thickness
};
inline constexpr double assumed_effectiveness =
    0.75;  ///< where nothing is known; cancels from E_design / E_test
[[nodiscard]] PadEffectiveness effectiveness_of(const VisitFile& file, const VisitWeather& weather,
                                                const PadBank& bank);

/// Temperature behind that bank's pad, else the one read for all banks.
[[nodiscard]] Optional<Temperature> behind_pad_of(const VisitFile& file, const PadBank& bank);

/// Water evaporated by one bank's pads in that weather; none where face speed, length or height lack.
[[nodiscard]] std::optional<MassFlow> evaporation_of(const VisitFile& file, const VisitWeather& weather,
                                                     const MoistAir& outside, const PadBank& bank);

}  // namespace wetfront
