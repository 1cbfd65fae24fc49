// SPDX-License-Identifier: Apache-2.0
#include "units/kinds.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <map>
#include <set>
#include <string>

#include "support/data_table.h"
#include "support/outside_check.h"
#include "units/quantity_text.h"

namespace wetfront {
namespace {

std::vector<Kind> all_kinds() {
    std::vector<Kind> kinds;
    for (int i = 0; i <= static_cast<int>(last_kind); ++i) {
        kinds.push_back(static_cast<Kind>(i));
    }
    return kinds;
}

struct Definition {
    double factor;
    double offset;
    std::string published;
};

/// By name of the kind and symbol of the unit.
std::map<std::pair<std::string, std::string>, Definition> definitions() {
    std::map<std::pair<std::string, std::string>, Definition> table;
    for (const auto& row : test::data_rows("unit_definitions.csv")) {
        table[{row.at(0), row.at(1)}] = {test::cell_number(row.at(2)) / test::cell_number(row.at(3)),
                                         test::cell_number(row.at(4)), row.at(5)};
    }
    return table;
}

TEST(KindsTest, every_unit_is_worth_what_its_definition_says) {
    auto table = definitions();
    test::OutsideCheck check{
        "unit factors",
        "exact definitions of the units, fractions worked out by hand (unit_definitions.csv)"};
    for (const auto kind : all_kinds()) {
        for (const auto& unit : units_of(kind)) {
            const auto row = table.find({std::string{name_of(kind)}, std::string{unit.symbol}});
            ASSERT_NE(row, table.end()) << "no definition of " << unit.symbol << " of " << name_of(kind);
            check.within(row->first.second + " of " + row->first.first, unit.factor, row->second.factor,
                         4.0 * std::numeric_limits<double>::epsilon());
            EXPECT_EQ(unit.offset, row->second.offset) << unit.symbol;
            table.erase(row);
        }
    }
    for (const auto& [name, unused] : table) {
        ADD_FAILURE() << "the table defines " << name.second << " of " << name.first
                      << ", which is not accepted";
    }
}

TEST(KindsTest, every_unit_agrees_with_the_published_factor_to_its_last_digit) {
    int compared = 0;
    test::OutsideCheck check{"unit factors as printed", "NIST SP 811 (2008), Appendix B.8, second hand",
                             "of the 7th digit"};
    for (const auto& [name, definition] : definitions()) {
        if (definition.published.empty()) {
            continue;
        }
        for (const auto kind : all_kinds()) {
            for (const auto& unit : units_of(kind)) {
                if (name_of(kind) != name.first || unit.symbol != name.second) {
                    continue;
                }
                ++compared;
                const double published = test::cell_number(definition.published);
                // Printed to seven digits that count, compared in units of the last.
                const double digit = std::pow(10.0, std::floor(std::log10(published)) - 6.0);
                check.near(name.second + " of " + name.first + ", in units of the 7th digit",
                           unit.factor / digit, published / digit, 0.5 * (1.0 + 1e-9));
            }
        }
    }
    EXPECT_EQ(compared, 10);
}

TEST(KindsTest, the_first_unit_of_a_kind_is_the_si_one) {
    for (const auto kind : all_kinds()) {
        ASSERT_FALSE(units_of(kind).empty()) << name_of(kind);
        EXPECT_EQ(units_of(kind).front().factor, 1.0) << name_of(kind);
        EXPECT_EQ(units_of(kind).front().offset, 0.0) << name_of(kind);
    }
}

TEST(KindsTest, kinds_have_different_names_and_units_of_a_kind_different_symbols) {
    std::set<std::string_view> names;
    for (const auto kind : all_kinds()) {
        EXPECT_TRUE(names.insert(name_of(kind)).second) << name_of(kind);
        std::set<std::string_view> symbols;
        for (const auto& unit : units_of(kind)) {
            EXPECT_TRUE(symbols.insert(unit.symbol).second) << unit.symbol << " of " << name_of(kind);
        }
    }
}

TEST(KindsTest, every_kind_is_shown_in_a_unit_of_its_own_in_both_systems) {
    for (const auto kind : all_kinds()) {
        for (const auto system : {UnitSystem::us, UnitSystem::si}) {
            for (const auto scale : {Scale::normal, Scale::fine, Scale::coarse}) {
                const auto shown = display_unit(kind, system, scale);
                const auto units = units_of(kind);
                EXPECT_TRUE(shown.unit >= &units.front() && shown.unit <= &units.back()) << name_of(kind);
                EXPECT_GE(shown.decimals, 0);
            }
        }
    }
}

struct Point {
    const char* text;
    double kelvin;
};
class FixedPoint : public testing::TestWithParam<Point> {};
// By definition of the degrees: 0 degC = 273.15 K = 32 degF, 100 kelvins above that 180 degF more, equal at
// -40.
TEST_P(FixedPoint, of_a_thermometer_is_met) {
    const auto result = parse_quantity<Temperature>(GetParam().text, "temperature");
    ASSERT_TRUE(result) << result.error().text();
    EXPECT_NEAR(in_kelvin(result.value()), GetParam().kelvin, 1e-12 * 400.0) << GetParam().text;
}
INSTANTIATE_TEST_SUITE_P(Temperatures, FixedPoint,
                         testing::Values(Point{"32degF", 273.15}, Point{"212degF", 373.15},
                                         Point{"-40degF", 233.15}, Point{"-40degC", 233.15},
                                         Point{"0degC", 273.15}, Point{"-459.67degF", 0.0},
                                         Point{"95degF", 308.15}, Point{"300K", 300.0}));

TEST(KindsTest, a_difference_of_degrees_has_no_zero_point) {
    EXPECT_EQ(in_si(parse_quantity<TemperatureDifference>("18degF", "difference").value()), 10.0);
    EXPECT_EQ(in_si(parse_quantity<TemperatureDifference>("10degC", "difference").value()), 10.0);
}

}  // namespace
}  // namespace wetfront
