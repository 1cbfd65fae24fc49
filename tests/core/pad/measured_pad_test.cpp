// SPDX-License-Identifier: Apache-2.0
#include "pad/measured_pad.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>
#include <string>

#include "pad/wet_pad.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

MoistAir air(double t, double humidity, double p = 101325.0) {
    return air_from_humidity(celsius(t), from_si<Fraction>(humidity), from_si<AbsolutePressure>(p)).value();
}

Temperature behind(const MoistAir& outside, double effectiveness) {
    const double depression = in_kelvin(outside.dry_bulb) - in_kelvin(outside.wet_bulb);
    return from_si<Temperature>(in_kelvin(outside.dry_bulb) - effectiveness * depression);
}

// Any double in -1 to 1, the same with every standard library.
class Draws {
public:
    double next() { return static_cast<double>(engine_() >> 11) * 0x1p-52 - 1.0; }

private:
    std::mt19937_64 engine_{20240607};
};

TEST(MeasuredPadTest, the_value_is_that_of_the_plain_function) {
    const auto outside = air(35.0, 0.4);
    const auto got = effectiveness_with_uncertainty(outside, 28_degC, HumidityFrom::hygrometer).value();
    EXPECT_NEAR(in_si(got.value), in_si(measured_effectiveness(outside, 28_degC).value()), 1e-15);
    EXPECT_FALSE(got.outside_bounds);
}

TEST(MeasuredPadTest, a_wet_bulb_thermometer_gives_the_uncertainty_worked_out_by_hand) {
    // T 35, wet bulb 25, behind 27.5: D = 10 K, e = 0.75. Slopes per kelvin: behind -1/10, dry bulb
    // (1 - 0.75)/10, wet bulb 0.75/10. Each bound 0.5 K: u = 0.5/sqrt 3 = 0.288675 K.
    // u(e) = 0.288675 sqrt(0.1^2 + 0.025^2 + 0.075^2) = 0.288675 * 0.1274755 = 0.0367990
    const auto outside = air_from_wet_bulb(35_degC, 25_degC, 101325_Pa).value();
    const auto got =
        effectiveness_with_uncertainty(outside, 27.5_degC, HumidityFrom::wet_bulb_thermometer).value();
    test::OutsideCheck check{"uncertainty of an effectiveness from two thermometers and a wet bulb",
                             "GUM JCGM 100:2008 eq. 10, worked by hand (in the test)"};
    check.near("from behind the pad", in_si(got.from_behind_pad), 0.0288675, 1e-7);
    check.near("from the dry bulb", in_si(got.from_dry_bulb), 0.0072169, 1e-7);
    check.near("from the wet bulb", in_si(got.from_humidity), 0.0216506, 1e-7);
    check.near("standard", in_si(got.standard), 0.0367990, 1e-6);
    check.near("expanded", in_si(got.expanded), 0.0735980, 2e-6);
    EXPECT_EQ(got.coverage_factor, 2.0);
}

TEST(MeasuredPadTest, the_uncertainty_is_that_of_a_monte_carlo_propagation) {
    test::OutsideCheck check{"uncertainty of an effectiveness from thermometers and a hygrometer",
                             "Monte Carlo propagation (JCGM 101:2008), 40,000 draws in the test"};
    const InstrumentAccuracy accuracy;
    const struct {
        double dry_bulb, humidity, pressure, effectiveness;
    } cases[] = {{35.0, 0.4, 101325.0, 0.75}, {40.0, 0.15, 101325.0, 0.65}, {30.0, 0.3, 85e3, 0.8},
                 {28.0, 0.6, 101325.0, 0.7},  {30.0, 0.75, 101325.0, 0.7},  {45.0, 0.1, 70.1e3, 0.5},
                 {35.0, 0.05, 101325.0, 0.75}};
    for (const auto& c : cases) {
        const auto outside = air(c.dry_bulb, c.humidity, c.pressure);
        const auto behind_pad = behind(outside, c.effectiveness);
        Draws draws;
        constexpr int count = 40000;
        double sum = 0.0;
        double squares = 0.0;
        for (int i = 0; i < count; ++i) {
            const double t = c.dry_bulb + in_si(accuracy.dry_bulb) * draws.next();
            const double humidity = c.humidity + in_si(accuracy.relative_humidity) * draws.next();
            const double out = in_celsius(behind_pad) + in_si(accuracy.behind_pad) * draws.next();
            const double e = (t - out) / (t - in_celsius(air(t, humidity, c.pressure).wet_bulb));
            sum += e - c.effectiveness;
            squares += (e - c.effectiveness) * (e - c.effectiveness);
        }
        const double wanted = std::sqrt((squares - sum * sum / count) / (count - 1));
        const auto got = effectiveness_with_uncertainty(outside, behind_pad, HumidityFrom::hygrometer);
        ASSERT_TRUE(got) << got.error().text();
        check.within(std::to_string(c.dry_bulb) + " degC, humidity " + std::to_string(c.humidity),
                     in_si(got.value().standard), wanted, 0.02);
    }
}

TEST(MeasuredPadTest, the_parts_add_up_and_the_better_instrument_adds_less) {
    const auto outside = air(35.0, 0.4);
    InstrumentAccuracy accuracy;
    const auto usual = effectiveness_with_uncertainty(outside, 28_degC, HumidityFrom::hygrometer, accuracy);
    accuracy.relative_humidity = 1_percent;
    const auto better = effectiveness_with_uncertainty(outside, 28_degC, HumidityFrom::hygrometer, accuracy);
    for (const auto& got : {usual.value(), better.value()}) {
        EXPECT_NEAR(
            in_si(got.standard),
            std::hypot(in_si(got.from_dry_bulb), in_si(got.from_behind_pad), in_si(got.from_humidity)),
            1e-15);
    }
    EXPECT_NEAR(in_si(better.value().from_humidity), in_si(usual.value().from_humidity) / 3.0, 1e-12);
    EXPECT_EQ(in_si(better.value().from_behind_pad), in_si(usual.value().from_behind_pad));
}

TEST(MeasuredPadTest, the_driest_and_the_hottest_air_have_an_uncertainty_like_their_neighbours) {
    const auto at = [](double t, double humidity) {
        const auto outside = air(t, humidity);
        return effectiveness_with_uncertainty(outside, behind(outside, 0.7), HumidityFrom::hygrometer)
            .value();
    };
    const double dry = in_si(at(35.0, 0.001).from_humidity);
    EXPECT_NEAR(in_si(at(35.0, 0.0).from_humidity), dry, 0.01 * dry);
    const double hot = in_si(at(79.9, 0.1).from_dry_bulb);
    EXPECT_NEAR(in_si(at(80.0, 0.1).from_dry_bulb), hot, 0.01 * hot);
}

TEST(MeasuredPadTest, exact_instruments_leave_no_uncertainty) {
    const InstrumentAccuracy exact{0_K, 0_K, 0_K, 0_percent};
    const auto got =
        effectiveness_with_uncertainty(air(35.0, 0.4), 28_degC, HumidityFrom::hygrometer, exact).value();
    EXPECT_EQ(in_si(got.expanded), 0.0);
}

TEST(MeasuredPadTest, more_than_all_is_an_answer_within_the_uncertainty_and_an_error_beyond) {
    const auto outside = air(35.0, 0.4);
    const auto within =
        effectiveness_with_uncertainty(outside, behind(outside, 1.05), HumidityFrom::hygrometer);
    ASSERT_TRUE(within) << within.error().text();
    EXPECT_NEAR(in_si(within.value().value), 1.05, 1e-12);
    EXPECT_TRUE(within.value().outside_bounds);
    EXPECT_GT(in_si(within.value().expanded), 0.05);

    const auto beyond =
        effectiveness_with_uncertainty(outside, behind(outside, 1.3), HumidityFrom::hygrometer);
    ASSERT_FALSE(beyond);
    EXPECT_EQ(beyond.error().item, "temperature behind the pad");
    EXPECT_NE(beyond.error().accepted.find("this one gives 130 %"), std::string::npos)
        << beyond.error().text();
}

TEST(MeasuredPadTest, air_warmer_behind_the_pad_is_an_answer_only_within_the_uncertainty) {
    const auto outside = air(35.0, 0.4);
    const auto within =
        effectiveness_with_uncertainty(outside, behind(outside, -0.03), HumidityFrom::hygrometer);
    ASSERT_TRUE(within) << within.error().text();
    EXPECT_TRUE(within.value().outside_bounds);
    EXPECT_FALSE(effectiveness_with_uncertainty(outside, behind(outside, -0.3), HumidityFrom::hygrometer));
}

TEST(MeasuredPadTest, saturated_air_and_air_close_to_it_tell_nothing) {
    for (const auto from : {HumidityFrom::hygrometer, HumidityFrom::wet_bulb_thermometer}) {
        for (const double humidity : {1.0, 0.99999, 0.97, 0.93}) {
            const auto outside = air(30.0, humidity);
            const auto got = effectiveness_with_uncertainty(outside, behind(outside, 0.7), from);
            ASSERT_FALSE(got) << humidity;
            EXPECT_EQ(got.error().item, "outside air") << humidity;
        }
    }
    const auto exact = effectiveness_with_uncertainty(air(30.0, 1.0), 30_degC, HumidityFrom::hygrometer,
                                                      {0_K, 0_K, 0_K, 0_percent});
    ASSERT_FALSE(exact);
    EXPECT_EQ(exact.error().text(), "outside air: 'saturated': air whose wet bulb lies below its dry bulb");
}

TEST(MeasuredPadTest, the_least_depression_is_twice_its_own_expanded_uncertainty) {
    // With a wet-bulb thermometer the depression is off by sqrt(2) 0.288675 = 0.408248 K, standard; twice
    // its expanded uncertainty is 1.63299 K.
    const auto with = [](double depression) {
        const auto outside = air_from_wet_bulb(30_degC, celsius(30.0 - depression), 101325_Pa).value();
        return effectiveness_with_uncertainty(outside, behind(outside, 0.7),
                                              HumidityFrom::wet_bulb_thermometer);
    };
    EXPECT_FALSE(with(1.632));
    EXPECT_TRUE(with(1.634));
}

TEST(MeasuredPadTest, a_pad_that_would_freeze_is_not_evaluated) {
    const auto cold = effectiveness_with_uncertainty(air(2.0, 0.3), 0_degC, HumidityFrom::hygrometer);
    ASSERT_FALSE(cold);
    EXPECT_EQ(cold.error().item, "wet bulb outside");
}

TEST(MeasuredPadTest, accuracies_and_temperatures_that_cannot_be_are_named) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto outside = air(35.0, 0.4);
    const auto item_with = [&](InstrumentAccuracy accuracy, HumidityFrom from) {
        const auto got = effectiveness_with_uncertainty(outside, 28_degC, from, accuracy);
        return got ? std::string{"taken"} : got.error().item;
    };
    for (const double bad : {-0.1, 5.1, nan}) {
        InstrumentAccuracy accuracy;
        accuracy.dry_bulb = from_si<TemperatureDifference>(bad);
        EXPECT_EQ(item_with(accuracy, HumidityFrom::hygrometer), "accuracy of the thermometer outside")
            << bad;
        accuracy = {};
        accuracy.behind_pad = from_si<TemperatureDifference>(bad);
        EXPECT_EQ(item_with(accuracy, HumidityFrom::hygrometer), "accuracy of the thermometer behind the pad")
            << bad;
        accuracy = {};
        accuracy.wet_bulb = from_si<TemperatureDifference>(bad);
        EXPECT_EQ(item_with(accuracy, HumidityFrom::wet_bulb_thermometer),
                  "accuracy of the wet-bulb thermometer")
            << bad;
        EXPECT_EQ(item_with(accuracy, HumidityFrom::hygrometer), "taken") << "not used: " << bad;
    }
    for (const double bad : {-0.01, 0.21, nan}) {
        InstrumentAccuracy accuracy;
        accuracy.relative_humidity = from_si<Fraction>(bad);
        EXPECT_EQ(item_with(accuracy, HumidityFrom::hygrometer), "accuracy of the hygrometer") << bad;
    }
    EXPECT_FALSE(
        effectiveness_with_uncertainty(outside, from_si<Temperature>(nan), HumidityFrom::hygrometer));
}

MeasuredEffectiveness measured(double value, double standard) {
    MeasuredEffectiveness result;
    result.value = from_si<Fraction>(value);
    result.standard = from_si<Fraction>(standard);
    result.coverage_factor = 2.0;
    result.expanded = from_si<Fraction>(2.0 * standard);
    return result;
}

TEST(MeasuredPadTest, the_uncertainty_of_a_difference_holds_both_sides) {
    // 2 sqrt(0.03^2 + 0.04^2) = 0.1
    const auto got = compare_effectiveness(measured(0.6, 0.03), 72_percent, 4_percent).value();
    EXPECT_NEAR(in_si(got.difference), -0.12, 1e-15);
    EXPECT_NEAR(in_si(got.expanded), 0.1, 1e-15);
    EXPECT_EQ(got.verdict, EffectivenessVerdict::clearly_lower);
}

TEST(MeasuredPadTest, each_verdict_has_its_side_of_the_limits) {
    // Expanded 0.1 (above) and a difference that matters of 0.2: agrees up to 0.1.
    const auto verdict = [](double value, double standard) {
        return compare_effectiveness(measured(value, standard), 70_percent, 4_percent).value().verdict;
    };
    EXPECT_EQ(verdict(0.599, 0.03), EffectivenessVerdict::clearly_lower);
    EXPECT_EQ(verdict(0.601, 0.03), EffectivenessVerdict::agrees);
    EXPECT_EQ(verdict(0.7, 0.03), EffectivenessVerdict::agrees);
    EXPECT_EQ(verdict(0.799, 0.03), EffectivenessVerdict::agrees);
    EXPECT_EQ(verdict(0.801, 0.03), EffectivenessVerdict::clearly_higher);
    // 2 sqrt(0.0768375^2 + 0.04^2) = 0.17325: agrees up to 0.02675 only, clear from 0.17325 on.
    EXPECT_EQ(verdict(0.674, 0.0768375), EffectivenessVerdict::agrees);
    EXPECT_EQ(verdict(0.672, 0.0768375), EffectivenessVerdict::too_close);
    EXPECT_EQ(verdict(0.528, 0.0768375), EffectivenessVerdict::too_close);
    EXPECT_EQ(verdict(0.526, 0.0768375), EffectivenessVerdict::clearly_lower);
    // No instrument so poor that everything agrees.
    EXPECT_EQ(verdict(0.7, 0.11), EffectivenessVerdict::too_close);
}

TEST(MeasuredPadTest, the_polynomial_brings_its_assumed_uncertainty) {
    const auto got = compare_effectiveness(measured(0.7, 0.0), 70_percent).value();
    EXPECT_NEAR(in_si(got.expanded), 2.0 * in_si(assumed_polynomial_uncertainty), 1e-15);
}

TEST(MeasuredPadTest, an_expected_effectiveness_that_cannot_be_is_named) {
    for (const double bad : {-0.01, 1.01, std::numeric_limits<double>::quiet_NaN()}) {
        const auto expected = compare_effectiveness(measured(0.7, 0.03), from_si<Fraction>(bad));
        ASSERT_FALSE(expected) << bad;
        EXPECT_EQ(expected.error().item, "expected effectiveness");
        const auto spread = compare_effectiveness(measured(0.7, 0.03), 70_percent, from_si<Fraction>(bad));
        ASSERT_FALSE(spread) << bad;
        EXPECT_EQ(spread.error().item, "uncertainty of the expected effectiveness");
    }
}

}  // namespace
}  // namespace wetfront
