// SPDX-License-Identifier: Apache-2.0
#include "day/house_air.h"

#include <algorithm>
#include <cmath>

#include "air/comfort.h"
#include "air/design_day.h"
#include "air/saturation.h"

// Enthalpy of moist air 1.006 t + W (2501 + 1.86 t) and of water 4.186 t, kJ/kg, t in degC: ASHRAE
// Fundamentals 2017, chapter 1, eqs. 30, 33 and 35 (as in air/moist_air.cpp). Air that passes a wet pad goes
// along the wet-bulb line, on which W_gained x 4.186 t_wb is exactly what its enthalpy gains.
namespace wetfront::day_detail {
namespace {

constexpr double air_heat = 1.006;
constexpr double vapour_heat = 2501.0;
constexpr double vapour_slope = 1.86;

double enthalpy(double t, double ratio) {
    return air_heat * t + ratio * (vapour_heat + vapour_slope * t);
}

// Share of the building's gain at a time of the day: the published shares of the daily range, by straight
// lines.
double gain_share(double clock) {
    const double hour = clock / hour_s - 24.0 * std::floor(clock / day_s);
    const int full = std::clamp(static_cast<int>(hour), 0, 23);
    const double before = 1.0 - share_of_daily_range(full);
    const double after = 1.0 - share_of_daily_range((full + 1) % 24);
    return before + (hour - full) * (after - before);
}

}  // namespace

double liquid_heat(double wet) {
    return wet >= 0.0 ? 4.186 * wet : 2.1 * wet - 329.0;  // below 0 degC it is ice, as eq. 35 counts it
}

HouseAir::HouseAir(const DayHouse& house)
    : stages_{house.fan_stages.size()},
      birds_{house.flock.birds > 0.0 ? bird_terms(in_si(house.flock.mass), house.flock.birds) : BirdTerms{}},
      building_gain_{in_si(house.building_gain)} {
    for (const auto& stage : house.fan_stages) {
        airflow_.push_back(in_si(stage.airflow));
    }
    for (const auto& bank : house.banks) {
        face_share_.push_back(bank.face_share);
        for (std::size_t s = 0; s < stages_; ++s) {
            effectiveness_.push_back(in_si(bank.effectiveness[bank.effectiveness.size() == 1 ? 0 : s]));
        }
    }
}

void HouseAir::load(const OutsideHour& outside, double clock, std::size_t stage, HourAir& into) const {
    const auto through = [&nodes = outside.nodes](auto value) {
        return Parabola::through(value(nodes[0]), value(nodes[1]), value(nodes[2]), hour_s);
    };
    into.pressure = outside.pressure;
    into.stage = stage;
    into.dry_bulb = through([](const OutsideAir& air) { return air.dry_bulb; });
    into.ratio = through([](const OutsideAir& air) { return air.ratio; });
    into.wet_bulb = through([](const OutsideAir& air) { return air.wet_bulb; });
    into.humidity = through([](const OutsideAir& air) { return air.humidity; });
    into.mass_flow = through([&](const OutsideAir& air) { return airflow_[stage] * air.dry_air; });
    into.building = Parabola::through(building_gain_ * gain_share(clock),
                                      building_gain_ * gain_share(clock + 0.5 * hour_s),
                                      building_gain_ * gain_share(clock + hour_s), hour_s);
    std::array<double, 3> saturated{};
    for (std::size_t i = 0; i < 3; ++i) {
        saturated[i] = saturated_ratio(outside.nodes[i].wet_bulb, outside.pressure);
    }
    into.drying.resize(face_share_.size());
    for (std::size_t b = 0; b < face_share_.size(); ++b) {
        if (b > 0 && effectiveness(b, stage) == effectiveness(b - 1, stage)) {
            const double share = face_share_[b] / face_share_[b - 1];
            const auto& same = into.drying[b - 1];
            into.drying[b] = {share * same.c0, share * same.c1, share * same.c2};
            continue;
        }
        std::array<double, 3> gained{};
        for (std::size_t i = 0; i < 3; ++i) {
            const auto& air = outside.nodes[i];
            const double leaving = air.dry_bulb - effectiveness(b, stage) * (air.dry_bulb - air.wet_bulb);
            const double gain = ratio_on_line(leaving, air.wet_bulb, saturated[i]) - air.ratio;
            gained[i] = std::max(0.0, gain) * face_share_[b] * airflow_[stage] * air.dry_air;
        }
        auto& drying = into.drying[b];
        drying = Parabola::through(gained[0], gained[1], gained[2], hour_s);
        // Where air is saturated at one end a parabola could dip below 0; a straight line cannot.
        if (drying.range(hour_s).first < 0.0) {
            drying = Parabola::through(gained[0], 0.5 * (gained[0] + gained[2]), gained[2], hour_s);
        }
    }
}

AirNow HouseAir::at(const HourAir& hour, double second, std::span<const double> wet) const {
    AirNow now;
    now.outside = hour.dry_bulb.at(second);
    now.wet_bulb = hour.wet_bulb.at(second);
    now.mass_flow = hour.mass_flow.at(second);
    now.building = hour.building.at(second);
    for (std::size_t b = 0; b < wet.size(); ++b) {
        now.evaporated += wet[b] * hour.drying[b].at(second);
    }
    const double gained = now.evaporated / now.mass_flow;
    const double ratio_outside = hour.ratio.at(second);
    const double outside_heat = enthalpy(now.outside, ratio_outside);
    const double ratio = ratio_outside + gained;
    const double heat = outside_heat + gained * liquid_heat(now.wet_bulb);
    const double specific = air_heat + vapour_slope * ratio;
    now.behind_pad = (heat - vapour_heat * ratio) / specific;

    // 2 M (t - behind) = birds(t) + building at the mean t of both ends, a quadratic equation in t.
    const double carried = 2.0 * 1000.0 * now.mass_flow * specific;
    const double bend = -birds_.at_20 * BirdTerms::sensible_bend;
    const double slope = carried - birds_.at_20 * BirdTerms::sensible_slope;
    const double given =
        carried * now.behind_pad + birds_.at_20 * BirdTerms::sensible_constant + now.building;
    const double mean = 2.0 * given / (slope + std::sqrt(slope * slope + 4.0 * bend * given));
    now.bird_mean = mean;
    now.house = 2.0 * mean - now.behind_pad;
    now.bird_heat = birds_.total_at(mean);
    const double latent = now.bird_heat - birds_.sensible_at(mean);
    now.house_ratio = ratio + latent / (1000.0 * now.mass_flow * (vapour_heat + vapour_slope * now.house));
    now.carried_away = 1000.0 * now.mass_flow * (enthalpy(now.house, now.house_ratio) - outside_heat);
    return now;
}

Result<FeltAir> HouseAir::felt(double house, double ratio, double pressure) {
    constexpr double water_to_dry_air = 0.621945;
    const double saturation = std::exp(air_detail::log_saturation(house).value);
    FeltAir felt;
    felt.humidity = pressure * ratio / (water_to_dry_air + ratio) / saturation;
    if (felt.humidity >= 1.0) {
        felt.fog = felt.humidity > 1.0 + 1e-9;
        felt.humidity = 1.0;
    }
    WF_TRY(const auto wet, wet_bulb_from_humidity(celsius(house), from_si<Fraction>(felt.humidity),
                                                  from_si<AbsolutePressure>(pressure)));
    MoistAir air{};
    air.dry_bulb = celsius(house);
    air.wet_bulb = wet;
    felt.index = in_celsius(temperature_humidity_index(air));
    return felt;
}

}  // namespace wetfront::day_detail
