// SPDX-License-Identifier: Apache-2.0
#include "water/scaling.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>
#include <string>
#include <vector>

#include "support/data_table.h"
#include "support/outside_check.h"

namespace wetfront {
namespace {

using namespace literals;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

Concentration mg_per_litre(double value) {
    return from_si<Concentration>(1e-3 * value);
}

WaterTest usual_water() {
    return {25_degC, 7.5, mg_per_litre(150.0), mg_per_litre(34.0), mg_per_litre(320.0)};
}

// Rows: id,pH,T_C,TDS,CaH,Alk,published_pHs,published_index,exact_pHs,exact_LSI,exact_RSI,provenance
std::vector<std::vector<std::string>> worked_examples() {
    auto rows = test::data_rows("scaling_index.csv");
    rows.erase(rows.begin());
    return rows;
}

WaterTest water_of(const std::vector<std::string>& row) {
    return {celsius(test::cell_number(row.at(2))), test::cell_number(row.at(1)),
            mg_per_litre(test::cell_number(row.at(4))), mg_per_litre(test::cell_number(row.at(5))),
            mg_per_litre(test::cell_number(row.at(3)))};
}

// "LSI -0.7", "LSI +0.6 (scale forming)", "RSI 6.98 (slightly scale forming)"
double number_behind_name(const std::string& cell) {
    const auto start = cell.find(' ') + 1;
    return test::cell_number(cell.substr(start, cell.find(' ', start) - start));
}

// Printed to 0.1, so off by at most half of that; R-1 is printed to 0.01 with a factor that is 0.03 off.
TEST(ScalingTest, the_saturation_ph_agrees_with_published_examples) {
    test::OutsideCheck check{"saturation pH", "worked examples on public pages, two of four second hand"};
    for (const auto& row : worked_examples()) {
        const auto got = scaling_index(water_of(row));
        ASSERT_TRUE(got) << row.at(0) << ": " << got.error().text();
        check.near(row.at(0), got.value().saturation_ph, test::cell_number(row.at(6)), 0.05);
    }
}

TEST(ScalingTest, the_langelier_index_agrees_with_published_examples) {
    test::OutsideCheck check{"Langelier index", "worked examples on public pages, one of three second hand"};
    for (const auto& row : worked_examples()) {
        if (row.at(7).starts_with("LSI")) {
            const auto got = scaling_index(water_of(row));
            ASSERT_TRUE(got) << row.at(0) << ": " << got.error().text();
            check.near(row.at(0), got.value().langelier, number_behind_name(row.at(7)), 0.05);
        }
    }
}

TEST(ScalingTest, the_ryznar_index_agrees_with_a_published_example) {
    test::OutsideCheck check{"Ryznar index", "watertreatmentbasics.com, second hand"};
    for (const auto& row : worked_examples()) {
        if (row.at(7).starts_with("RSI")) {
            const auto got = scaling_index(water_of(row));
            ASSERT_TRUE(got) << row.at(0) << ": " << got.error().text();
            check.near(row.at(0), got.value().ryznar, number_behind_name(row.at(7)), 0.1);
        }
    }
}

// The printed equation worked out apart from the program, to four digits.
TEST(ScalingTest, the_printed_equation_is_kept_to_its_last_digit) {
    for (const auto& row : worked_examples()) {
        const auto got = scaling_index(water_of(row));
        ASSERT_TRUE(got) << row.at(0) << ": " << got.error().text();
        EXPECT_NEAR(got.value().saturation_ph, test::cell_number(row.at(8)), 5.1e-5) << row.at(0);
        EXPECT_NEAR(got.value().langelier, test::cell_number(row.at(9)), 5.1e-5) << row.at(0);
        EXPECT_NEAR(got.value().ryznar, test::cell_number(row.at(10)), 1.01e-4) << row.at(0);
    }
}

// Rows: id,Alk,pH,CaH,T_F,AF,CF,TF,published_SI. The table names no dissolved solids; they move the index by
// 0.1 between 100 and 1,000 mg/L, so both ends are asked. Three factors and their constant, each printed to
// 0.1, are off by 0.05 each at most.
TEST(ScalingTest, the_factor_tables_of_another_trade_agree_with_the_equation) {
    test::OutsideCheck check{"Langelier index against factor tables printed to 0.1",
                             "pooloperationmanagement.com sample problems"};
    for (const auto& row : test::data_rows("scaling_index_tables.csv")) {
        if (row.at(0) == "id") {
            continue;
        }
        for (const double solids : {100.0, 1000.0}) {
            const WaterTest water{celsius((test::cell_number(row.at(4)) - 32.0) / 1.8),
                                  test::cell_number(row.at(2)), mg_per_litre(test::cell_number(row.at(3))),
                                  mg_per_litre(test::cell_number(row.at(1))), mg_per_litre(solids)};
            const auto got = scaling_index(water);
            ASSERT_TRUE(got) << row.at(0) << ": " << got.error().text();
            check.near(row.at(0) + " at " + std::to_string(solids) + " mg/L", got.value().langelier,
                       std::strtod(row.at(8).c_str(), nullptr), 0.2);
        }
    }
}

TEST(ScalingTest, warmer_harder_and_more_alkaline_water_scales_more) {
    const double base = scaling_index(usual_water()).value().langelier;
    auto warm = usual_water();
    warm.temperature = 35_degC;
    auto hard = usual_water();
    hard.calcium_hardness *= 2.0;
    auto alkaline = usual_water();
    alkaline.alkalinity *= 2.0;
    auto salty = usual_water();
    salty.dissolved_solids *= 2.0;
    EXPECT_GT(scaling_index(warm).value().langelier, base);
    // log10 2 = 0.30103
    EXPECT_NEAR(scaling_index(hard).value().langelier - base, 0.30103, 1e-5);
    EXPECT_NEAR(scaling_index(alkaline).value().langelier - base, 0.30103, 1e-5);
    EXPECT_NEAR(scaling_index(salty).value().langelier - base, -0.030103, 1e-6);
}

TEST(ScalingTest, the_ends_of_every_range_are_inside_it) {
    for (const double t : {0.0, 90.0}) {
        for (const double ph : {4.0, 11.0}) {
            for (const double hardness : {1.0, 5000.0}) {
                for (const double solids : {10.0, 10000.0}) {
                    const auto got = scaling_index({celsius(t), ph, mg_per_litre(hardness),
                                                    mg_per_litre(hardness), mg_per_litre(solids)});
                    EXPECT_TRUE(got) << got.error().text();
                }
            }
        }
    }
}

TEST(ScalingTest, a_value_outside_its_range_is_named_with_its_limits) {
    struct Case {
        const char* item;
        double low;
        double high;
        const char* accepted;
        void (*set)(WaterTest&, double);
    };
    const Case cases[] = {
        {"water temperature", -0.1, 90.1, "0 to 90 degC",
         [](WaterTest& w, double v) { w.temperature = celsius(v); }},
        {"pH", 3.9, 11.1, "4 to 11", [](WaterTest& w, double v) { w.ph = v; }},
        {"calcium hardness", 0.9, 5001.0, "1 to 5000 mg/L",
         [](WaterTest& w, double v) { w.calcium_hardness = mg_per_litre(v); }},
        {"alkalinity", 0.9, 5001.0, "1 to 5000 mg/L",
         [](WaterTest& w, double v) { w.alkalinity = mg_per_litre(v); }},
        {"dissolved solids", 9.9, 10001.0, "10 to 10000 mg/L",
         [](WaterTest& w, double v) { w.dissolved_solids = mg_per_litre(v); }},
    };
    for (const auto& c : cases) {
        for (const double value : {c.low, c.high, nan, infinity, -infinity}) {
            auto water = usual_water();
            c.set(water, value);
            const auto got = scaling_index(water);
            ASSERT_FALSE(got) << c.item << ' ' << value;
            EXPECT_EQ(got.error().item, c.item) << value;
            EXPECT_EQ(got.error().accepted, c.accepted) << value;
        }
    }
}

// 1,000 uS/cm x 0.65 mg/L per uS/cm = 650 mg/L
TEST(ScalingTest, conductivity_stands_for_dissolved_solids_by_a_factor) {
    const auto conductivity = from_si<Conductivity>(0.1);
    EXPECT_NEAR(in_si(dissolved_solids_from(conductivity).value()), 0.650, 1e-12);
    EXPECT_NEAR(in_si(dissolved_solids_from(conductivity, 0.64).value()), 0.640, 1e-12);
    EXPECT_EQ(in_si(dissolved_solids_from(from_si<Conductivity>(0.0)).value()), 0.0);
    for (const double factor : {0.49, 0.91, nan}) {
        EXPECT_FALSE(dissolved_solids_from(conductivity, factor)) << factor;
    }
    for (const double si : {-0.1, 10.1, nan, infinity}) {
        const auto got = dissolved_solids_from(from_si<Conductivity>(si));
        ASSERT_FALSE(got) << si;
        EXPECT_EQ(got.error().item, "conductivity");
    }
}

TEST(ScalingTest, the_index_in_words_keeps_to_number_and_sign) {
    const auto words = [](double index) { return in_english(langelier_in_words(index), UnitSystem::si); };
    EXPECT_TRUE(words(0.57).starts_with("Langelier index +0.6: the water holds more")) << words(0.57);
    EXPECT_TRUE(words(-0.73).starts_with("Langelier index -0.7: the water could dissolve")) << words(-0.73);
    EXPECT_TRUE(words(0.04).starts_with("Langelier index 0.0: the water is just")) << words(0.04);
    EXPECT_EQ(words(-0.04), words(0.04));
    EXPECT_EQ(in_english(ryznar_in_words(6.93), UnitSystem::si),
              "Ryznar index 6.9: the lower it is, the more scale.");
}

TEST(ScalingTest, one_farms_scale_is_its_published_figure) {
    const auto rows = test::data_rows("pad_and_practice.csv");
    const auto row = std::find_if(rows.begin(), rows.end(), [](const auto& r) { return r.at(0) == "WAT-4"; });
    ASSERT_NE(row, rows.end());
    test::OutsideCheck check{"scale from 1,000 L of one farm's water", "Griggs, MS thesis, Auburn University",
                             "kg"};
    check.near("WAT-4", in_si(scale_by_one_farm(from_si<Volume>(1.0)).value()), test::cell_number(row->at(4)),
               1e-12);
    for (const double volume : {-1.0, nan, infinity}) {
        EXPECT_FALSE(scale_by_one_farm(from_si<Volume>(volume))) << volume;
    }
}

TEST(ScalingTest, only_the_smaller_of_hardness_and_alkalinity_is_carbonate) {
    EXPECT_EQ(carbonate_hardness(mg_per_litre(150.0), mg_per_litre(34.0)).value(), mg_per_litre(34.0));
    EXPECT_EQ(carbonate_hardness(mg_per_litre(80.0), mg_per_litre(200.0)).value(), mg_per_litre(80.0));
    EXPECT_FALSE(carbonate_hardness(mg_per_litre(nan), mg_per_litre(34.0)));
    EXPECT_FALSE(carbonate_hardness(mg_per_litre(150.0), mg_per_litre(-1.0)));
}

// 200 m3 in at 0.15 kg/m3 = 30 kg; 50 m3 off at 0.4 kg/m3 = 20 kg.
TEST(ScalingTest, what_came_and_did_not_leave_was_laid_down) {
    const auto got = scale_by_balance(from_si<Volume>(200.0), from_si<Volume>(50.0), mg_per_litre(150.0),
                                      mg_per_litre(400.0));
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value().brought_in), 30.0, 1e-9);
    EXPECT_NEAR(in_si(got.value().carried_off), 20.0, 1e-9);
    EXPECT_NEAR(in_si(got.value().laid_down), 10.0, 1e-9);
}

// At 4 cycles a quarter of the make-up leaves; with four times its hardness it takes all of it along.
TEST(ScalingTest, a_sump_that_keeps_all_dissolved_lays_nothing_down) {
    const auto got = scale_by_balance(from_si<Volume>(200.0), from_si<Volume>(50.0), mg_per_litre(150.0),
                                      mg_per_litre(600.0));
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value().laid_down), 0.0, 1e-9);
}

// 150 m3 evaporate of 200: all their hardness, 150 x 0.15 = 22.5 kg.
TEST(ScalingTest, an_untested_sump_counts_for_the_most_scale_there_can_be) {
    const auto got = scale_by_balance(from_si<Volume>(200.0), from_si<Volume>(50.0), mg_per_litre(150.0));
    ASSERT_TRUE(got);
    EXPECT_NEAR(in_si(got.value().laid_down), 22.5, 1e-9);
}

TEST(ScalingTest, a_balance_of_impossible_water_is_refused) {
    const auto volume = [](double v) { return from_si<Volume>(v); };
    EXPECT_EQ(scale_by_balance(volume(10.0), volume(11.0), mg_per_litre(1.0)).error().item,
              "water carried off");
    EXPECT_EQ(scale_by_balance(volume(nan), volume(1.0), mg_per_litre(1.0)).error().item, "make-up");
    EXPECT_EQ(scale_by_balance(volume(10.0), volume(-1.0), mg_per_litre(1.0)).error().item,
              "water carried off");
    EXPECT_EQ(scale_by_balance(volume(10.0), volume(1.0), mg_per_litre(-1.0)).error().item,
              "carbonate hardness of the make-up");
    EXPECT_EQ(scale_by_balance(volume(10.0), volume(1.0), mg_per_litre(1.0), mg_per_litre(nan)).error().item,
              "carbonate hardness of the sump");
}

}  // namespace
}  // namespace wetfront
