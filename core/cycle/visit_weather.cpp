// SPDX-License-Identifier: Apache-2.0
#include "cycle/visit_weather.h"

#include "cycle/pad_hours.h"
#include "pad/wet_pad.h"

namespace wetfront {
namespace {

using namespace literals;

AbsolutePressure site_pressure(const VisitFile& file, VisitWeather& weather) {
    if (file.visit.conditions.barometer) {
        return file.visit.conditions.barometer->value();
    }
    if (file.farm.elevation) {
        const auto pressure = standard_pressure(file.farm.elevation->value());
        if (pressure) {
            return pressure.value();
        }
        weather.missing.push_back({WF_TEXT("Not usable: %1"), {pressure.error().text()}});
    }
    weather.assumed.push_back({WF_TEXT("air pressure %1 (sea level)"), {any(101325_Pa)}});
    return 101325_Pa;
}

std::optional<MoistAir> kept(Result<MoistAir> air, VisitWeather& weather) {
    if (!air) {
        weather.missing.push_back({WF_TEXT("Not usable: %1"), {air.error().text()}});
        return std::nullopt;
    }
    return air.value();
}

// The air of the readings from the first of the three that is entered.
std::optional<MoistAir> air_of_readings(const Conditions& conditions, AbsolutePressure pressure,
                                        VisitWeather& weather) {
    const auto dry_bulb = conditions.outside_dry_bulb->value();
    if (conditions.outside_humidity) {
        return kept(air_from_humidity(dry_bulb, conditions.outside_humidity->value(), pressure), weather);
    }
    weather.humidity_from = HumidityFrom::wet_bulb_thermometer;
    if (conditions.outside_wet_bulb) {
        return kept(air_from_wet_bulb(dry_bulb, conditions.outside_wet_bulb->value(), pressure), weather);
    }
    weather.humidity_from = HumidityFrom::hygrometer;
    return kept(air_from_dew_point(dry_bulb, conditions.outside_dew_point->value(), pressure), weather);
}

InstrumentAccuracy accuracy_of(const Conditions& conditions) {
    InstrumentAccuracy accuracy;
    if (conditions.thermometer_accuracy) {
        const auto known = conditions.thermometer_accuracy->value();
        accuracy.dry_bulb = accuracy.behind_pad = accuracy.wet_bulb = known;
    }
    if (conditions.hygrometer_accuracy) {
        accuracy.relative_humidity = conditions.hygrometer_accuracy->value();
    }
    return accuracy;
}

// The hours of the design day, and the one in which most evaporates. What the pad makes of it cancels from
// the comparison of hours but for the last percent.
void add_day(const VisitFile& file, VisitWeather& weather) {
    const auto& range = file.farm.design_daily_range;
    if (!range) {
        weather.assumed.emplace_back(WF_TEXT("most water evaporates at the hottest hour of the design day"));
        return;
    }
    const auto day = design_day(*weather.design, range->value());
    if (!day) {
        weather.notes.push_back({WF_TEXT("Not used: %1"), {day.error().text()}});
        weather.assumed.emplace_back(WF_TEXT("most water evaporates at the hottest hour of the design day"));
        return;
    }
    weather.day = day.value();
    const auto hour = hour_of_most_evaporation(day.value(), from_si<Fraction>(assumed_effectiveness));
    if (hour) {
        weather.design = day.value().hours.at(static_cast<std::size_t>(hour.value()));
    }
}

std::optional<Area> wetted_face_of(const House& house) {
    auto face = from_si<Area>(0.0);
    for (const auto& bank : house.banks) {
        if (!bank.length || !bank.height) {
            return std::nullopt;
        }
        face += bank.length->value() * bank.height->value();
    }
    return face;
}

}  // namespace

VisitWeather weather_of(const VisitFile& file) {
    VisitWeather weather;
    weather.pressure = site_pressure(file, weather);
    const auto pressure = weather.pressure;
    const auto& conditions = file.visit.conditions;
    if (!conditions.outside_dry_bulb) {
        weather.missing.emplace_back(WF_TEXT("outside temperature at the readings"));
    }
    const bool humidity_known =
        conditions.outside_humidity || conditions.outside_wet_bulb || conditions.outside_dew_point;
    if (!humidity_known) {
        weather.missing.emplace_back(WF_TEXT("outside humidity at the readings"));
    }
    if (conditions.outside_dry_bulb && humidity_known) {
        weather.test = air_of_readings(conditions, pressure, weather);
    }
    if (weather.test && conditions.behind_pad) {
        const auto measured = measured_effectiveness(*weather.test, conditions.behind_pad->value());
        if (!measured) {
            weather.notes.push_back({WF_TEXT("Not used: %1"), {measured.error().text()}});
        }
    }
    if (!file.farm.design_dry_bulb) {
        weather.missing.emplace_back(WF_TEXT("the farm's design temperature"));
    }
    if (!file.farm.design_wet_bulb) {
        weather.missing.emplace_back(WF_TEXT("the wet bulb at the farm's design temperature"));
    }
    if (file.farm.design_dry_bulb && file.farm.design_wet_bulb) {
        weather.design = kept(air_from_wet_bulb(file.farm.design_dry_bulb->value(),
                                                file.farm.design_wet_bulb->value(), pressure),
                              weather);
    }
    if (weather.design) {
        add_day(file, weather);
    }
    return weather;
}

std::optional<PadFace> face_of(const VisitFile& file, const PadBank& bank) {
    if (const auto* at = file.visit.conditions_at(bank.id)) {
        std::vector<Velocity> speeds;
        for (const auto& point : at->face_points) {
            if (point.speed) {
                speeds.push_back(point.speed->value());
            }
        }
        const auto points = face_velocity_from_points(speeds);
        if (points) {
            return PadFace{points.value().mean, Origin::measured, points.value()};
        }
    }
    if (file.visit.conditions.face_velocity) {
        return PadFace{file.visit.conditions.face_velocity->value(), Origin::measured, std::nullopt};
    }
    const auto face = wetted_face_of(file.house);
    if (!file.house.fan_airflow || !face) {
        return std::nullopt;
    }
    const auto speed = face_velocity_from_fans(file.house.fan_airflow->value(), *face);
    if (!speed) {
        return std::nullopt;
    }
    return PadFace{speed.value(), Origin::derived, std::nullopt};
}

Optional<Temperature> behind_pad_of(const VisitFile& file, const PadBank& bank) {
    const auto* at = file.visit.conditions_at(bank.id);
    return at != nullptr && at->behind_pad ? at->behind_pad : file.visit.conditions.behind_pad;
}

PadEffectiveness effectiveness_of(const VisitFile& file, const VisitWeather& weather, const PadBank& bank) {
    PadEffectiveness result{from_si<Fraction>(assumed_effectiveness), Origin::assumed, std::nullopt,
                            std::nullopt};
    const auto face = face_of(file, bank);
    if (face && bank.thickness) {
        const auto expected = expected_effectiveness(face->speed, bank.thickness->value());
        if (expected) {
            result.expected = expected.value();
            result.value = expected.value();
            result.origin = Origin::published;
        }
    }
    const auto behind = behind_pad_of(file, bank);
    if (!weather.test || !behind) {
        return result;
    }
    const auto with_uncertainty = effectiveness_with_uncertainty(
        *weather.test, behind->value(), weather.humidity_from, accuracy_of(file.visit.conditions));
    if (with_uncertainty) {
        result.measured = with_uncertainty.value();
    }
    const auto measured = measured_effectiveness(*weather.test, behind->value());
    if (measured) {
        result.value = measured.value();
        result.origin = Origin::measured;
    }
    return result;
}

std::optional<MassFlow> evaporation_of(const VisitFile& file, const VisitWeather& weather,
                                       const MoistAir& outside, const PadBank& bank) {
    const auto face = face_of(file, bank);
    if (!face || !bank.length || !bank.height) {
        return std::nullopt;
    }
    const auto flux = evaporation(outside, effectiveness_of(file, weather, bank).value, face->speed);
    if (!flux) {
        return std::nullopt;
    }
    return flux.value() * bank.length->value() * bank.height->value();
}

}  // namespace wetfront
