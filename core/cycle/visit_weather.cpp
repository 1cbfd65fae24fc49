// SPDX-License-Identifier: Apache-2.0
#include "cycle/visit_weather.h"

#include <numbers>

#include "pad/wet_pad.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr double water_density = 1000.0;  // kg/m3

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

// Length of pad under all headers of a pump; none if one of them is not described.
std::optional<Length> pad_length_of(const House& house, const Id& pump) {
    auto total = 0.0_m;
    for (const auto& bank : house.banks) {
        if (bank.pump == pump) {
            if (!bank.length) {
                return std::nullopt;
            }
            total += bank.length->value();
        }
    }
    return total;
}

}  // namespace

VisitWeather weather_of(const VisitFile& file) {
    VisitWeather weather;
    const auto pressure = site_pressure(file, weather);
    const auto& conditions = file.visit.conditions;
    if (!conditions.outside_dry_bulb) {
        weather.missing.emplace_back(WF_TEXT("outside temperature at the readings"));
    }
    if (!conditions.outside_humidity) {
        weather.missing.emplace_back(WF_TEXT("outside humidity at the readings"));
    }
    if (conditions.outside_dry_bulb && conditions.outside_humidity) {
        weather.test = kept(air_from_humidity(conditions.outside_dry_bulb->value(),
                                              conditions.outside_humidity->value(), pressure),
                            weather);
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
        weather.assumed.emplace_back(WF_TEXT("most water evaporates at the hottest hour of the design day"));
    }
    return weather;
}

std::optional<Velocity> face_velocity_of(const VisitFile& file) {
    if (file.visit.conditions.face_velocity) {
        return file.visit.conditions.face_velocity->value();
    }
    if (!file.house.fan_airflow || file.house.banks.empty()) {
        return std::nullopt;
    }
    auto face = from_si<Area>(0.0);
    for (const auto& bank : file.house.banks) {
        if (!bank.length || !bank.height) {
            return std::nullopt;
        }
        face += bank.length->value() * bank.height->value();
    }
    if (in_si(face) <= 0.0) {
        return std::nullopt;
    }
    return file.house.fan_airflow->value() / face;
}

PadEffectiveness effectiveness_of(const VisitFile& file, const VisitWeather& weather, const PadBank& bank) {
    if (weather.test && file.visit.conditions.behind_pad) {
        const auto measured =
            measured_effectiveness(*weather.test, file.visit.conditions.behind_pad->value());
        if (measured) {
            return {measured.value(), Origin::measured};
        }
    }
    const auto velocity = face_velocity_of(file);
    if (velocity && bank.thickness) {
        const auto expected = expected_effectiveness(*velocity, bank.thickness->value());
        if (expected) {
            return {expected.value(), Origin::published};
        }
    }
    return {from_si<Fraction>(assumed_effectiveness), Origin::assumed};
}

std::optional<VolumeFlow> flow_to(const VisitFile& file, const PadBank& bank) {
    const auto flow = file.visit.flow_of(bank.pump);
    const auto total = pad_length_of(file.house, bank.pump);
    if (!flow || !bank.length || !total || in_si(*total) <= 0.0) {
        return std::nullopt;
    }
    return flow->value() * (bank.length->value() / *total);
}

std::optional<double> share_from_flow(const VisitFile& file, const VisitWeather& weather,
                                      const PadBank& bank) {
    const auto flow = flow_to(file, bank);
    const auto velocity = face_velocity_of(file);
    const auto effectiveness = effectiveness_of(file, weather, bank);
    if (!flow || in_si(*flow) <= 0.0 || !velocity || !bank.height || !weather.test ||
        effectiveness.origin == Origin::assumed) {
        return std::nullopt;
    }
    const auto flux = evaporation(*weather.test, effectiveness.value, *velocity);
    if (!flux) {
        return std::nullopt;
    }
    const double evaporated = in_si(flux.value()) * in_si(bank.length->value()) * in_si(bank.height->value());
    return evaporated / (in_si(*flow) * water_density);
}

std::optional<Duration> header_exchange_of(const VisitFile& file, const PadBank& bank) {
    const auto flow = flow_to(file, bank);
    if (!flow || in_si(*flow) <= 0.0 || !bank.header_bore) {
        return std::nullopt;
    }
    const auto bore = bank.header_bore->value();
    const auto volume = std::numbers::pi / 4.0 * bore * bore * bank.length->value();
    return 3.0 * volume / *flow;
}

}  // namespace wetfront
