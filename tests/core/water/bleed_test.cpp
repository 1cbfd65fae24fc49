// SPDX-License-Identifier: Apache-2.0
#include "water/bleed.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

MassFlow kg_per_s(double value) {
    return from_si<MassFlow>(value);
}

MassFlow gallons_per(double gallons, double seconds_in_it) {
    return kg_per_s(gallons * 3.785411784 / seconds_in_it);
}

double in_gallons_per(MassFlow flow, double seconds_in_it) {
    return in_si(flow) * seconds_in_it / 3.785411784;
}

Conductivity us_per_cm(double value) {
    return from_si<Conductivity>(1e-4 * value);
}

// Well water of the first worked example in scaling_index.csv: Langelier -0.7312 at pH 7.5.
WaterTest soft_water() {
    return {25_degC, 7.5, from_si<Concentration>(0.150), from_si<Concentration>(0.034),
            from_si<Concentration>(0.320)};
}

WaterTest at_cycles(WaterTest water, double cycles) {
    water.calcium_hardness *= cycles;
    water.alkalinity *= cycles;
    water.dissolved_solids *= cycles;
    return water;
}

// Whether the row of water_balance.csv with that id prints that text: what a test expects stands in its
// source.
bool printed(const std::string& id, const std::string& text) {
    for (const auto& row : test::data_rows("water_balance.csv")) {
        if (row.at(0) == id) {
            return row.at(2).find(text) != std::string::npos;
        }
    }
    return false;
}

// WB-1 and WB-2: 114,048 gal evaporate in a day, 14,256 gal drift off. Printed to a gallon; WB-2's make-up is
// printed as the sum of parts whose bleed was rounded up.
TEST(BleedTest, bleed_and_make_up_with_drift_agree_with_a_published_case) {
    ASSERT_TRUE(printed("WB-1", "W 14256 gpd; E 114048; B 23760; M 152064 gpd"));
    ASSERT_TRUE(printed("WB-2", "B 2037; M 130341 gpd"));
    constexpr double day = 86400.0;
    test::OutsideCheck check{"bleed and make-up with drift",
                             "GEMI Water Sustainability Planner formulas, public case sheet", "gal/day"};
    const struct {
        const char* id;
        double cycles;
        double bleed;
        double make_up;
    } cases[] = {{"WB-1", 4.0, 23760.0, 152064.0}, {"WB-2", 8.0, 2037.0, 130341.0}};
    for (const auto& c : cases) {
        const auto got = water_balance(gallons_per(114048.0, day), c.cycles, gallons_per(14256.0, day));
        ASSERT_TRUE(got) << got.error().text();
        check.near(std::string{c.id} + " bleed", in_gallons_per(got.value().bleed, day), c.bleed, 0.51);
        check.near(std::string{c.id} + " make-up", in_gallons_per(got.value().make_up, day), c.make_up, 0.51);
        EXPECT_FALSE(note_on(got.value()));
    }
}

TEST(BleedTest, make_up_without_drift_agrees_with_a_published_note) {
    ASSERT_TRUE(printed("WB-3", "E 15 gpm; makeup at 4 cycles 20 gpm; factor C/(C-1): 2->2, 3->1.5"));
    test::OutsideCheck check{"make-up at 15 gpm evaporated", "public cooling-tower note", "gpm"};
    const struct {
        double cycles;
        double make_up;
    } cases[] = {{4.0, 20.0}, {2.0, 15.0 * 2.0}, {3.0, 15.0 * 1.5}};
    for (const auto& c : cases) {
        const auto got = water_balance(gallons_per(15.0, 60.0), c.cycles);
        ASSERT_TRUE(got) << got.error().text();
        check.near(std::to_string(c.cycles) + " cycles", in_gallons_per(got.value().make_up, 60.0), c.make_up,
                   1e-9);
    }
}

TEST(BleedTest, bleed_without_drift_agrees_with_a_published_example) {
    ASSERT_TRUE(printed("WB-4", "B 3.3 gpm"));
    test::OutsideCheck check{"bleed at 10 gpm evaporated, 4 cycles",
                             "ingener.by HVAC encyclopedia, evaporative maintenance", "gpm"};
    const auto got = water_balance(gallons_per(10.0, 60.0), 4.0);
    ASSERT_TRUE(got);
    check.near("WB-4", in_gallons_per(got.value().bleed, 60.0), 3.3, 0.05);
}

TEST(BleedTest, the_sump_holds_what_a_published_example_says) {
    ASSERT_TRUE(printed("WB-5", "sump 1200 ppm"));
    test::OutsideCheck check{"salts of the sump at 4 cycles",
                             "ingener.by HVAC encyclopedia, evaporative maintenance", "ppm"};
    const auto got = concentrated(from_si<Concentration>(0.300), 4.0);
    ASSERT_TRUE(got);
    check.near("WB-5", 1e3 * in_si(got.value()), 1200.0, 1e-9);
}

// Water that comes in leaves, and so does the salt; the sump's salts are those of the make-up times the
// cycles.
TEST(BleedTest, water_and_salts_are_conserved) {
    for (const double evaporation : {1e-4, 0.05, 3.0}) {
        for (const double cycles : {1.05, 2.0, 3.7, 20.0}) {
            for (const double lost : {0.0, 0.001, 0.5}) {
                const auto got = water_balance(kg_per_s(evaporation), cycles, kg_per_s(lost));
                ASSERT_TRUE(got) << got.error().text();
                const auto& b = got.value();
                const double in = in_si(b.make_up);
                const double out = in_si(b.bleed) + in_si(b.lost);
                EXPECT_NEAR(in, evaporation + out, 1e-9 * in) << evaporation << ' ' << cycles << ' ' << lost;
                ASSERT_TRUE(b.cycles);
                EXPECT_NEAR(in * 0.3,
                            out * in_si(concentrated(from_si<Concentration>(0.3), *b.cycles).value()),
                            1e-9 * in)
                    << evaporation << ' ' << cycles << ' ' << lost;
                EXPECT_LE(*b.cycles, cycles * (1.0 + 1e-12));
                EXPECT_EQ(b.lost_is_enough, in_si(b.bleed) == 0.0);
            }
        }
    }
}

TEST(BleedTest, drift_that_holds_the_ratio_alone_needs_no_bleed_and_says_so) {
    // 0.3 kg/s evaporated at 4 cycles asks for 0.1 kg/s; 0.15 kg/s leak, which makes (0.3 + 0.15) / 0.15 = 3.
    const auto got = water_balance(kg_per_s(0.3), 4.0, kg_per_s(0.15));
    ASSERT_TRUE(got);
    EXPECT_EQ(in_si(got.value().bleed), 0.0);
    EXPECT_TRUE(got.value().lost_is_enough);
    ASSERT_TRUE(got.value().cycles);
    EXPECT_NEAR(*got.value().cycles, 3.0, 1e-12);
    EXPECT_NEAR(in_si(got.value().make_up), 0.45, 1e-12);
    ASSERT_TRUE(note_on(got.value()));
    EXPECT_EQ(in_english(*note_on(got.value()), UnitSystem::si),
              "Drift and leaks, 9 L/min, already hold the salts of the sump at 3 times those of the make-up: "
              "no bleed is needed for 4 times.");
}

TEST(BleedTest, bleed_vanishes_as_the_cycles_grow) {
    const auto got = water_balance(kg_per_s(0.3), 1e12);
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value().bleed), 0.0, 1e-12);
    EXPECT_NEAR(in_si(got.value().make_up), 0.3, 1e-12);
}

TEST(BleedTest, nothing_evaporated_needs_no_bleed) {
    const auto still = water_balance(kg_per_s(0.0), 3.0);
    ASSERT_TRUE(still);
    EXPECT_EQ(in_si(still.value().make_up), 0.0);
    EXPECT_FALSE(still.value().cycles);
    EXPECT_FALSE(note_on(still.value()));
    const auto leaking = water_balance(kg_per_s(0.0), 3.0, kg_per_s(0.2));
    ASSERT_TRUE(leaking);
    EXPECT_EQ(in_si(leaking.value().bleed), 0.0);
    EXPECT_EQ(leaking.value().cycles, 1.0);
}

TEST(BleedTest, a_ratio_below_the_published_least_is_worked_out_and_said) {
    const auto got = water_balance(kg_per_s(0.1), 1.5);
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value().bleed), 0.2, 1e-12);
    ASSERT_TRUE(note_on(got.value()));
    EXPECT_NE(in_english(*note_on(got.value()), UnitSystem::us).find("at least 2 times"), std::string::npos);
    EXPECT_FALSE(note_on(water_balance(kg_per_s(0.1), least_published_cycles).value()));
}

TEST(BleedTest, cycles_come_from_two_conductivities) {
    EXPECT_NEAR(cycles_from_conductivity(us_per_cm(450.0), us_per_cm(1350.0)).value(), 3.0, 1e-12);
    EXPECT_EQ(cycles_from_conductivity(us_per_cm(450.0), us_per_cm(450.0)).value(), 1.0);
}

TEST(BleedTest, the_most_cycles_bring_the_sump_to_its_langelier_limit) {
    for (const double limit : {-0.5, 0.0, 0.7}) {
        const auto most = most_cycles_for_langelier(soft_water(), limit);
        ASSERT_TRUE(most);
        ASSERT_TRUE(most.value().cycles) << limit;
        EXPECT_FALSE(most.value().range_ends_first) << limit;
        const auto index = scaling_index(at_cycles(soft_water(), *most.value().cycles));
        ASSERT_TRUE(index) << index.error().text();
        EXPECT_NEAR(index.value().langelier, limit, 1e-9) << limit;
    }
}

// By hand: the index of the make-up is -0.7312, so 10^(0.7312 / 1.9) = 10^0.38484 = 2.4257 cycles reach 0.
TEST(BleedTest, a_fixed_ph_raises_the_langelier_index_by_1_9_for_each_tenfold) {
    const auto most = most_cycles_for_langelier(soft_water(), 0.0);
    ASSERT_TRUE(most && most.value().cycles);
    EXPECT_NEAR(*most.value().cycles, 2.4257, 5e-4);
}

TEST(BleedTest, the_most_cycles_bring_the_sump_to_its_ryznar_limit) {
    const auto most = most_cycles_for_ryznar(soft_water(), 7.0);
    ASSERT_TRUE(most && most.value().cycles);
    const auto index = scaling_index(at_cycles(soft_water(), *most.value().cycles));
    ASSERT_TRUE(index);
    EXPECT_NEAR(index.value().ryznar, 7.0, 1e-9);
}

TEST(BleedTest, water_beyond_its_limit_already_has_no_cycles) {
    const auto langelier = most_cycles_for_langelier(soft_water(), -0.8);
    ASSERT_TRUE(langelier);
    EXPECT_FALSE(langelier.value().cycles);
    const auto ryznar = most_cycles_for_ryznar(soft_water(), 9.0);
    ASSERT_TRUE(ryznar);
    EXPECT_FALSE(ryznar.value().cycles);
}

// 10,000 mg/L / 320 mg/L = 31.25 times end the range. An index of 2.0 lies at 10^(2.7312 / 1.9) = 27.38
// cycles, one of 2.2 at 10^(2.9312 / 1.9) = 34.9.
TEST(BleedTest, cycles_end_where_the_index_is_no_longer_known) {
    const auto inside = most_cycles_for_langelier(soft_water(), 2.0);
    ASSERT_TRUE(inside && inside.value().cycles);
    EXPECT_FALSE(inside.value().range_ends_first);
    EXPECT_NEAR(*inside.value().cycles, 27.38, 0.01);
    const auto beyond = most_cycles_for_langelier(soft_water(), 2.2);
    ASSERT_TRUE(beyond && beyond.value().cycles);
    EXPECT_TRUE(beyond.value().range_ends_first);
    EXPECT_NEAR(*beyond.value().cycles, 31.25, 1e-9);
}

TEST(BleedTest, bad_inputs_are_refused_with_their_limit) {
    const auto names = [](const auto& result, const std::string& item) {
        ASSERT_FALSE(result) << item;
        EXPECT_EQ(result.error().item, item);
        EXPECT_FALSE(result.error().accepted.empty());
    };
    for (const double cycles : {1.0, 0.5, 0.0, -3.0, nan, infinity, 1.0 + 1e-14}) {
        names(water_balance(kg_per_s(0.1), cycles), "cycles of concentration");
    }
    for (const double flow : {-0.1, nan, infinity, 1001.0}) {
        names(water_balance(kg_per_s(flow), 3.0), "evaporation");
        names(water_balance(kg_per_s(0.1), 3.0, kg_per_s(flow)), "drift and leaks");
    }
    for (const double conductivity : {0.0, -5.0, nan, infinity, 100001.0}) {
        names(cycles_from_conductivity(us_per_cm(conductivity), us_per_cm(900.0)),
              "conductivity of the make-up");
        names(cycles_from_conductivity(us_per_cm(400.0), us_per_cm(conductivity)),
              "conductivity of the sump");
    }
    names(cycles_from_conductivity(us_per_cm(900.0), us_per_cm(899.0)), "conductivity of the sump");
    names(concentrated(from_si<Concentration>(-1.0), 2.0), "concentration of the make-up");
    names(concentrated(from_si<Concentration>(nan), 2.0), "concentration of the make-up");
    names(concentrated(from_si<Concentration>(1.0), 0.9), "cycles of concentration");
    names(concentrated(from_si<Concentration>(1.0), nan), "cycles of concentration");
    names(most_cycles_for_langelier(soft_water(), nan), "highest Langelier index");
    names(most_cycles_for_ryznar(soft_water(), infinity), "lowest Ryznar index");
    auto without_ph = soft_water();
    without_ph.ph = nan;
    names(most_cycles_for_langelier(without_ph, 0.0), "pH");
}

}  // namespace
}  // namespace wetfront
