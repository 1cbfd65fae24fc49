// SPDX-License-Identifier: Apache-2.0
#include "pad/pressure_drop.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

// The SI value of the row of tests/data/pad_and_practice.csv with that id.
std::string value_of(const std::string& id) {
    for (const auto& row : test::data_rows("pad_and_practice.csv")) {
        if (row.front() == id) {
            return row.at(4);
        }
    }
    ADD_FAILURE() << "no row " << id;
    return "";
}

PressureDifference pascal(double value) {
    return from_si<PressureDifference>(value);
}

TEST(PressureDropTest, the_published_drop_at_design_speed_is_the_middle_of_its_range) {
    test::OutsideCheck check{"pressure drop of a new pad at design speed",
                             "Czarick & Fairchild, Univ. of Georgia, Poultry Housing Tips 26(4), 2014", "Pa"};
    const auto speed = from_si<Velocity>(test::cell_number(value_of("PAD-4")));
    const auto thick = published_pressure_drop(speed, 150_mm).value();
    check.near("150 mm", 0.5 * (in_si(thick.lowest) + in_si(thick.highest)),
               test::cell_number(value_of("PAD-6")), 1e-9);
    EXPECT_EQ(thick.source, PressureDropSource::design_speed);
    // The thin pad's design speed is also one of the wind tunnel's: the range holds both.
    const auto thin =
        published_pressure_drop(from_si<Velocity>(test::cell_number(value_of("PAD-5"))), 100_mm).value();
    EXPECT_NEAR(in_si(thin.highest), in_si(thick.highest), 1e-9);
    EXPECT_EQ(thin.source, PressureDropSource::both);
    EXPECT_EQ(in_si(thin.lowest), 3.9);
}

TEST(PressureDropTest, between_1_and_1_5_mps_the_range_is_that_of_the_wind_tunnel) {
    const auto cell = value_of("PAD-8");
    const auto dots = cell.find("..");
    test::OutsideCheck check{"range of pressure drops at 1 to 1.5 m/s",
                             "Franco, Valera, Madueno, Pena 2010, Trans. ASABE 53(2):565-576, abstract",
                             "Pa"};
    for (const double speed : {1.0, 1.3, 1.5}) {
        for (const double thickness : {0.05, 0.1, 0.15, 0.1524}) {
            const auto got =
                published_pressure_drop(from_si<Velocity>(speed), from_si<Length>(thickness)).value();
            const auto at = std::to_string(speed) + " m/s, " + std::to_string(thickness) + " m";
            check.near(at + ", lowest", in_si(got.lowest), test::cell_number(cell.substr(0, dots)), 1e-9);
            check.near(at + ", highest", in_si(got.highest), test::cell_number(cell.substr(dots + 2)), 1e-9);
            EXPECT_EQ(got.source, PressureDropSource::wind_tunnel) << at;
        }
    }
}

TEST(PressureDropTest, elsewhere_nothing_is_published_and_the_error_says_to_measure) {
    const struct {
        double speed, thickness;
    } cases[] = {{0.99, 0.15},  {1.51, 0.15}, {1.68, 0.15}, {1.87, 0.15},
                 {1.778, 0.14}, {1.778, 0.1}, {1.2, 0.2},   {1.2, 0.156}};
    for (const auto& c : cases) {
        const auto got = published_pressure_drop(from_si<Velocity>(c.speed), from_si<Length>(c.thickness));
        ASSERT_FALSE(got) << c.speed << " m/s, " << c.thickness << " m";
        EXPECT_EQ(got.error().item, "published pressure drop");
        EXPECT_EQ(got.error().accepted.substr(0, 11), "measure it:");
    }
    EXPECT_TRUE(published_pressure_drop(1.7_mps, 150_mm));
    EXPECT_TRUE(published_pressure_drop(1.86_mps, from_si<Length>(0.1524)));
}

TEST(PressureDropTest, speeds_and_pads_that_cannot_be_are_named) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {0.0, -1.0, 10.1, nan}) {
        const auto got = published_pressure_drop(from_si<Velocity>(bad), 150_mm);
        ASSERT_FALSE(got) << bad;
        EXPECT_EQ(got.error().item, "face velocity") << bad;
    }
    for (const double bad : {0.0, 0.049, 0.301, nan}) {
        const auto got = published_pressure_drop(1.2_mps, from_si<Length>(bad));
        ASSERT_FALSE(got) << bad;
        EXPECT_EQ(got.error().item, "pad thickness") << bad;
    }
}

TEST(PressureDropTest, a_measured_drop_is_judged_by_range_and_accuracy) {
    const auto published = published_pressure_drop(1.25_mps, 150_mm).value();  // 3.9 to 11.25 Pa
    const auto verdict = [&](double drop) {
        return compare_pressure_drop(pascal(drop), published, pascal(2.5)).value();
    };
    EXPECT_EQ(verdict(1.3), PressureDropVerdict::lower);
    EXPECT_EQ(verdict(1.5), PressureDropVerdict::too_close);
    EXPECT_EQ(verdict(3.8), PressureDropVerdict::too_close);
    EXPECT_EQ(verdict(4.0), PressureDropVerdict::within);
    EXPECT_EQ(verdict(11.2), PressureDropVerdict::within);
    EXPECT_EQ(verdict(11.3), PressureDropVerdict::too_close);
    EXPECT_EQ(verdict(13.7), PressureDropVerdict::too_close);
    EXPECT_EQ(verdict(13.8), PressureDropVerdict::higher);
}

TEST(PressureDropTest, an_exact_instrument_is_never_too_close_to_call) {
    const auto published = published_pressure_drop(1.25_mps, 150_mm).value();
    EXPECT_EQ(compare_pressure_drop(pascal(11.26), published, pascal(0.0)).value(),
              PressureDropVerdict::higher);
    EXPECT_EQ(compare_pressure_drop(pascal(3.89), published, pascal(0.0)).value(),
              PressureDropVerdict::lower);
}

TEST(PressureDropTest, a_reading_that_cannot_be_is_named) {
    const auto published = published_pressure_drop(1.25_mps, 150_mm).value();
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double bad : {-0.1, 500.1, nan}) {
        const auto got = compare_pressure_drop(pascal(bad), published);
        ASSERT_FALSE(got) << bad;
        EXPECT_EQ(got.error().item, "pressure drop across the pad") << bad;
    }
    for (const double bad : {-0.1, 50.1, nan}) {
        const auto got = compare_pressure_drop(pascal(8.0), published, pascal(bad));
        ASSERT_FALSE(got) << bad;
        EXPECT_EQ(got.error().item, "accuracy of the manometer") << bad;
    }
}

}  // namespace
}  // namespace wetfront
