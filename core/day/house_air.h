// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "day/bird_terms.h"
#include "day/day_house.h"
#include "day/weather_table.h"

namespace wetfront::day_detail {

/// What the air does in one hour at one fan stage, as parabolas of the seconds since the hour's beginning.
struct HourAir {
    Parabola dry_bulb;
    Parabola ratio;
    Parabola wet_bulb;
    Parabola humidity;
    Parabola mass_flow;            ///< of dry air, kg/s
    Parabola building;             ///< W
    std::vector<Parabola> drying;  ///< of each bank, wet throughout: kg/s evaporated; nowhere below 0
    double pressure = 101325.0;
    std::size_t stage = 0;
};

/// Air on its way in one moment; degC, kg/kg, kg/s, W.
struct AirNow {
    double outside = 0.0;
    double wet_bulb = 0.0;  ///< outside
    double mass_flow = 0.0;
    double evaporated = 0.0;  ///< by all pads, kg/s
    double behind_pad = 0.0;
    double house = 0.0;
    double house_ratio = 0.0;
    double bird_heat = 0.0;
    double bird_mean = 0.0;  ///< at which the birds' heat was taken
    double building = 0.0;
    double carried_away = 0.0;  ///< enthalpy in the house less outside
};

/// House air with what is felt of it.
struct FeltAir {
    double humidity = 0.0;
    double index = 0.0;  ///< THI, degC
    bool fog = false;
};

/// Enthalpy of the water that evaporates at that wet bulb, kJ/kg.
[[nodiscard]] double liquid_heat(double wet_bulb);

/// The house as the air sees it.
class HouseAir {
public:
    explicit HouseAir(const DayHouse& house);

    /// `clock` by the sun at the hour's beginning, seconds since midnight, for the building's gain.
    void load(const OutsideHour& outside, double clock, std::size_t stage, HourAir& into) const;

    /// `wet` is the wet share of each bank.
    [[nodiscard]] AirNow at(const HourAir& hour, double second, std::span<const double> wet) const;

    /// Error: a house hotter or colder than the range of moist air.
    [[nodiscard]] static Result<FeltAir> felt(double house, double ratio, double pressure);

    [[nodiscard]] double effectiveness(std::size_t bank, std::size_t stage) const {
        return effectiveness_[bank * stages_ + stage];
    }
    [[nodiscard]] double face_share(std::size_t bank) const { return face_share_[bank]; }
    [[nodiscard]] double airflow(std::size_t stage) const { return airflow_[stage]; }
    [[nodiscard]] std::size_t stages() const { return stages_; }

private:
    std::size_t stages_;
    std::vector<double> airflow_;
    std::vector<double> face_share_;
    std::vector<double> effectiveness_;
    BirdTerms birds_;
    double building_gain_;
};

}  // namespace wetfront::day_detail
