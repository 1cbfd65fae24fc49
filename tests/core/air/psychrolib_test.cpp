// SPDX-License-Identifier: Apache-2.0
// Moist air against psychrolib, an independent implementation of the same handbook, over a dense grid. CTest
// has it write the grid before this program runs.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "air/moist_air.h"
#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

constexpr const char* source = "psychrolib 1.1.1 (npm), run by the tests over a grid";

constexpr const char* columns =
    "# dry_bulb_degC,relative_humidity,pressure_Pa,wet_bulb_degC,dew_point_degC,humidity_ratio,"
    "enthalpy_J_per_kg,specific_volume_m3_per_kg,density_kg_per_m3";

struct Point {
    std::string input;
    double t;
    double humidity;
    double p;
    double wet;
    double dew;
    double ratio;
    double enthalpy;
    double volume;
    double density;
};

std::vector<Point> grid() {
    const std::string path = WETFRONT_OUTSIDE_DATA "/psychrolib_grid.csv";
    std::ifstream file{path};
    EXPECT_TRUE(file) << path << " is not there: run the CTest fixture outside_psychrolib (CTest does)";
    std::vector<Point> points;
    bool columns_named = false;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') {
            columns_named = columns_named || line == columns;
            continue;
        }
        std::vector<double> cells;
        std::istringstream text{line};
        for (std::string cell; std::getline(text, cell, ',');) {
            cells.push_back(test::cell_number(cell));
        }
        points.push_back({line, cells.at(0), cells.at(1), cells.at(2), cells.at(3), cells.at(4), cells.at(5),
                          cells.at(6), cells.at(7), cells.at(8)});
    }
    EXPECT_TRUE(columns_named) << path << " has other columns than\n" << columns;
    EXPECT_GT(points.size(), 15000U) << path;
    return points;
}

MoistAir ours(const Point& point) {
    return air_from_humidity(celsius(point.t), from_si<Fraction>(point.humidity),
                             from_si<AbsolutePressure>(point.p))
        .value();
}

TEST(PsychrolibTest, the_grid_covers_frost_and_heat_thin_air_and_dense) {
    bool frost = false;
    bool heat = false;
    bool thin = false;
    bool dense = false;
    for (const auto& point : grid()) {
        frost = frost || point.t <= -35.0;
        heat = heat || point.t >= 75.0;
        thin = thin || point.p <= 62e3;
        dense = dense || point.p >= 108e3;
    }
    EXPECT_TRUE(frost && heat && thin && dense);
}

TEST(PsychrolibTest, closed_forms_are_the_same_numbers) {
    test::OutsideCheck ratios{"humidity ratio", source};
    test::OutsideCheck enthalpies{"enthalpy", source, "J/kg"};
    test::OutsideCheck volumes{"specific volume", source};
    test::OutsideCheck densities{"density", source};
    for (const auto& point : grid()) {
        const auto air = ours(point);
        // Psychrolib lifts ratios under 1e-7 to that; the limit is a digit of what the handbook prints.
        ratios.within(point.input, in_si(air.humidity_ratio), point.ratio, 1e-6);
        enthalpies.near(point.input, in_si(air.enthalpy), point.enthalpy, 1.0);
        volumes.within(point.input, in_si(air.specific_volume), point.volume, 1e-5);
        densities.within(point.input, in_si(air.density), point.density, 1e-5);
    }
}

TEST(PsychrolibTest, dew_points_agree_within_its_tolerance) {
    test::OutsideCheck check{"dew point", source, "K"};
    for (const auto& point : grid()) {
        check.near(point.input, in_celsius(ours(point).dew_point.value()), point.dew, 0.001);
    }
}

// At one wet bulb around freezing there is water or ice on the bulb, and air in a narrow band of humidity has
// an answer with each. Psychrolib's halving ends at either one, ours is over water. There the two are not
// compared as temperatures; each must solve its own equation.
TEST(PsychrolibTest, wet_bulbs_agree_within_its_tolerance_or_both_solve_the_equations) {
    test::OutsideCheck check{"wet bulb", source, "K"};
    test::OutsideCheck both{"humidity ratio of psychrolib's wet bulb over ice where ours is over water",
                            source};
    int elsewhere = 0;
    for (const auto& point : grid()) {
        const auto air = ours(point);
        const double wet = in_celsius(air.wet_bulb);
        const bool other_answer = wet >= 0.0 && point.wet < 0.0 && point.t > 0.0;
        if (!other_answer) {
            check.near(point.input, wet, point.wet, 0.001);
            continue;
        }
        ++elsewhere;
        const auto of = [&](double wet_bulb) {
            return in_si(humidity_ratio_from_wet_bulb(air.dry_bulb, celsius(wet_bulb), air.pressure).value());
        };
        EXPECT_NEAR(of(wet), point.ratio, 1e-9) << point.input;
        // 0.001 K of wet bulb is 6e-7 in the ratio here.
        both.within(point.input, of(point.wet), point.ratio, 1e-6 / point.ratio);
    }
    // 32 of the 22,050 points; many more would mean that the band is not what sets them apart.
    EXPECT_LE(elsewhere, 50);
}

}  // namespace
}  // namespace wetfront
