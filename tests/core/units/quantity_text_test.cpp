// SPDX-License-Identifier: Apache-2.0
#include "units/quantity_text.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>
#include <random>

namespace wetfront {
namespace {

using testing::HasSubstr;

struct Typed {
    Kind kind;
    const char* text;
    double si;
};
class AcceptedQuantity : public testing::TestWithParam<Typed> {};
TEST_P(AcceptedQuantity, is_read_with_its_unit) {
    const auto [kind, text, si] = GetParam();
    const auto result = parse_any(kind, text, "field");
    ASSERT_TRUE(result) << text << ": " << result.error().text();
    EXPECT_EQ(result.value().kind, kind);
    EXPECT_NEAR(result.value().si, si, 1e-14 * std::abs(si)) << text;
}
// Wanted values follow from the exact definitions in tests/data/unit_definitions.csv, worked out by hand.
INSTANTIATE_TEST_SUITE_P(
    Quantities, AcceptedQuantity,
    testing::Values(Typed{Kind::duration, "45s", 45.0}, Typed{Kind::duration, "45 s", 45.0},
                    Typed{Kind::duration, "  1.5min ", 90.0}, Typed{Kind::duration, "1e3s", 1000.0},
                    Typed{Kind::duration, "1,5min", 90.0}, Typed{Kind::duration, "-3s", -3.0},
                    Typed{Kind::duration, "0s", 0.0}, Typed{Kind::length, "150mm", 0.150},
                    Typed{Kind::length, "6in", 0.1524}, Typed{Kind::length, "6 in", 0.1524},
                    Typed{Kind::length, "60ft", 18.288}, Typed{Kind::velocity, "350ft/min", 1.778},
                    Typed{Kind::velocity, "1.78m/s", 1.78}, Typed{Kind::volume_flow, "237L/min", 0.00395},
                    Typed{Kind::volume_flow, "45gpm", 45.0 * 3.785411784e-3 / 60.0},
                    Typed{Kind::pressure, "101.325kPa", 101'325.0},
                    Typed{Kind::pressure_difference, "0.05inH2O", 0.05 * 249.08891},
                    Typed{Kind::pressure_difference, "0.05 inH₂O", 0.05 * 249.08891},
                    Typed{Kind::temperature, "95degF", 308.15}, Typed{Kind::temperature, "95 °F", 308.15},
                    Typed{Kind::temperature, "35°C", 308.15}, Typed{Kind::fraction, "40%", 0.4},
                    Typed{Kind::fraction, "0.4 1", 0.4}, Typed{Kind::conductivity, "800uS/cm", 0.08},
                    Typed{Kind::conductivity, "800 µS/cm", 0.08}, Typed{Kind::area, "100ft²", 9.290304},
                    Typed{Kind::humidity_ratio, "70gr/lb", 0.01}));

struct Mistyped {
    Kind kind;
    std::string text;
    const char* accepted;
};
class RefusedQuantity : public testing::TestWithParam<Mistyped> {};
TEST_P(RefusedQuantity, is_refused_by_name_and_says_what_is_accepted) {
    const auto& [kind, text, accepted] = GetParam();
    const auto result = parse_any(kind, text, "header length");
    ASSERT_FALSE(result) << text << " was read as " << result.value().si;
    EXPECT_EQ(result.error().item, "header length");
    EXPECT_THAT(result.error().accepted, HasSubstr(accepted)) << text;
    EXPECT_LT(result.error().text().size(), 400U);
    EXPECT_TRUE(is_utf8(result.error().text()));
}
INSTANTIATE_TEST_SUITE_P(
    Quantities, RefusedQuantity,
    testing::Values(
        Mistyped{Kind::length, "", "m, mm, cm, ft or in"},
        Mistyped{Kind::length, "   ", "m, mm, cm, ft or in"},
        Mistyped{Kind::length, "18", "the unit is missing, write m, mm, cm, ft or in"},
        Mistyped{Kind::length, "18 s", "not a unit of length"},
        Mistyped{Kind::length, "18km", "not a unit of length"},
        Mistyped{Kind::length, "18M", "not a unit of length"},
        Mistyped{Kind::length, "18ftin", "not a unit of length"},
        Mistyped{Kind::length, "18 f t", "not a unit of length"},
        Mistyped{Kind::length, "6 ft 3 in", "not a unit of length"}, Mistyped{Kind::length, "ft", "write"},
        Mistyped{Kind::length, "m18", "write"}, Mistyped{Kind::length, "1,234m", "no thousands mark"},
        Mistyped{Kind::length, "1.234,5m", "no thousands mark"},
        Mistyped{Kind::length, "1 234m", "not a unit of length"}, Mistyped{Kind::length, "nanm", "write"},
        Mistyped{Kind::length, "nan m", "write"}, Mistyped{Kind::length, "inf m", "write"},
        Mistyped{Kind::length, "1e999m", "finite"}, Mistyped{Kind::power, "1e308hp", "finite"},
        Mistyped{Kind::length, "0x10m", "not a unit of length"}, Mistyped{Kind::length, "1e2.5m", "write"},
        Mistyped{Kind::length, "5\tm", "not a unit of length"},
        Mistyped{Kind::length, "5\xFFm", "not a unit of length"},
        Mistyped{Kind::length, std::string("5m\0", 3), "not a unit of length"},
        Mistyped{Kind::temperature, "35 C", "K, degC or degF"},
        Mistyped{Kind::temperature, "35", "K, degC or degF"},
        Mistyped{Kind::duration, "45 sec", "s, min or h"}, Mistyped{Kind::fraction, "0.4", "%"},
        Mistyped{Kind::pressure, "0.05inH2O", "not a unit of absolute pressure"}));

TEST(QuantityTextTest, ten_megabytes_are_refused_with_a_short_text) {
    for (const auto& text : {std::string(10'000'000, '5') + "m", std::string(10'000'000, ' ') + "\xFF"}) {
        const auto result = parse_any(Kind::length, text, "header length");
        ASSERT_FALSE(result);
        EXPECT_EQ(result.error().item, "header length");
        EXPECT_LT(result.error().text().size(), 400U);
        EXPECT_TRUE(is_utf8(result.error().text()));
    }
}

TEST(QuantityTextTest, blanks_count_among_the_64_characters_that_are_kept_as_typed) {
    EXPECT_TRUE(parse_any(Kind::length, std::string(62, ' ') + "5m", "header length"));
    for (const auto& text : {std::string(63, ' ') + "5m", "5m" + std::string(1'000'000, ' ')}) {
        const auto result = parse_any(Kind::length, text, "header length");
        ASSERT_FALSE(result) << text.size() << " characters";
        EXPECT_EQ(result.error().item, "header length");
    }
}

TEST(QuantityTextTest, a_refusal_shows_what_was_read) {
    EXPECT_EQ(parse_any(Kind::length, "18", "header length").error().text(),
              "header length: '18': the unit is missing, write m, mm, cm, ft or in");
}

TEST(QuantityTextTest, a_refusal_quotes_all_of_what_was_typed) {
    const auto refusal = [](std::string_view text) {
        return parse_any(Kind::length, text, "header length").error().text();
    };
    const std::string wanted = "write a number with its unit: m, mm, cm, ft or in";
    EXPECT_EQ(refusal("nan ft"), "header length: 'nan ft': " + wanted);
    EXPECT_EQ(refusal("inf ft"), "header length: 'inf ft': " + wanted);
    EXPECT_EQ(refusal(" ft"), "header length: ' ft': " + wanted);
    EXPECT_EQ(refusal("\xFF\xFE ft"), "header length: '?? ft': " + wanted);
    EXPECT_THAT(refusal("1,234 ft"), testing::HasSubstr("'1,234 ft': write one decimal point"));
}

TEST(QuantityTextTest, si_entries_read_back_as_the_same_number) {
    std::mt19937_64 random{11};
    std::uniform_real_distribution<double> magnitude{-9.0, 9.0};
    for (int i = 0; i < 5000; ++i) {
        const double si = (i % 2 == 0 ? 1.0 : -1.0) * std::pow(10.0, magnitude(random));
        for (int k = 0; k <= static_cast<int>(last_kind); ++k) {
            const auto kind = static_cast<Kind>(k);
            const auto text = print_any({kind, si}, units_of(kind).front());
            const auto back = parse_any(kind, text, "value");
            ASSERT_TRUE(back) << text << ": " << back.error().text();
            ASSERT_EQ(back.value().si, si) << text;
        }
    }
}

TEST(QuantityTextTest, entries_in_any_unit_read_back_to_the_last_binary_places) {
    std::mt19937_64 random{12};
    std::uniform_real_distribution<double> magnitude{-6.0, 6.0};
    for (int i = 0; i < 500; ++i) {
        const double si = std::pow(10.0, magnitude(random));
        for (int k = 0; k <= static_cast<int>(last_kind); ++k) {
            const auto kind = static_cast<Kind>(k);
            for (const auto& unit : units_of(kind)) {
                const auto text = print_any({kind, si}, unit);
                const auto back = parse_any(kind, text, "value");
                ASSERT_TRUE(back) << text << ": " << back.error().text();
                // A unit with a zero point of its own carries the rounding of that offset.
                const double size = si + unit.offset * unit.factor;
                ASSERT_NEAR(back.value().si, si, 4.0 * std::numeric_limits<double>::epsilon() * size) << text;
            }
        }
    }
}

TEST(QuantityTextTest, decimal_units_are_read_to_the_last_digit) {
    for (int percent = 0; percent <= 100; ++percent) {
        const auto text = std::to_string(percent) + "%";
        EXPECT_EQ(parse_any(Kind::fraction, text, "share").value().si, percent / 100.0) << text;
    }
    EXPECT_EQ(parse_any(Kind::length, "57mm", "height").value().si, 0.057);
    EXPECT_EQ(parse_any(Kind::volume_flow, "237L/min", "flow").value().si, 237.0 / 60'000.0);
}

TEST(QuantityTextTest, an_entry_made_by_a_program_is_written_as_a_person_would) {
    EXPECT_EQ(Entered<Fraction>::of(from_si<Fraction>(0.57)).text(), "57%");
    EXPECT_EQ(Entered<Duration>::of(45_s).text(), "45s");
    EXPECT_EQ(Entered<AbsolutePressure>::of(100'000_Pa).text(), "100000Pa");
    const auto& degrees = units_of(Kind::temperature)[2];
    EXPECT_EQ(print_any(any(celsius(35.0)), degrees), "95degF");
    EXPECT_EQ(print_any({Kind::fraction, 0.4}, units_of(Kind::fraction).front()), "0.4 1");
}

TEST(QuantityTextTest, a_typed_entry_keeps_its_text) {
    const auto entry = Entered<Length>::parse("60.0 ft", "header length");
    ASSERT_TRUE(entry);
    EXPECT_EQ(entry.value().text(), "60.0 ft");
    EXPECT_DOUBLE_EQ(in_si(entry.value().value()), 18.288);
    (void)show_text(entry.value().value(), UnitSystem::si);
    EXPECT_EQ(entry.value().text(), "60.0 ft");
    EXPECT_FALSE(Entered<Length>::parse("60", "header length"));
}

struct Shown {
    AnyQuantity quantity;
    const char* us;
    const char* si;
};
class ShownQuantity : public testing::TestWithParam<Shown> {};
TEST_P(ShownQuantity, is_rounded_for_its_reader) {
    const auto& [quantity, us, si] = GetParam();
    EXPECT_EQ(show(quantity, UnitSystem::us).joined(UnitSystem::us), us) << quantity.si;
    EXPECT_EQ(show(quantity, UnitSystem::si).joined(UnitSystem::si), si) << quantity.si;
}
INSTANTIATE_TEST_SUITE_P(
    Quantities, ShownQuantity,
    testing::Values(
        Shown{{Kind::duration, 79.999}, "80 s", "80 s"}, Shown{{Kind::duration, 82.5}, "82.5 s", "82.5 s"},
        Shown{{Kind::duration, 60.0}, "60 s", "60 s"}, Shown{{Kind::duration, 240.0}, "240 s", "240 s"},
        Shown{{Kind::duration, 300.0}, "5 min", "5 min"}, Shown{{Kind::duration, 299.999}, "300 s", "300 s"},
        Shown{{Kind::duration, 150.0}, "150 s", "150 s"}, Shown{{Kind::duration, -0.01}, "0 s", "0 s"},
        Shown{{Kind::duration, 2400.0, Scale::coarse}, "40 min", "40 min"},
        Shown{{Kind::duration, 7140.0}, "119 min", "119 min"}, Shown{{Kind::duration, 7200.0}, "2 h", "2 h"},
        Shown{{Kind::duration, 37800.0}, "10 h 30 min", "10 h 30 min"},
        Shown{{Kind::duration, 37800.0, Scale::coarse}, "10 h 30 min", "10 h 30 min"},
        Shown{{Kind::duration, 7201.0}, "2 h 0 min 1 s", "2 h 0 min 1 s"},
        Shown{{Kind::duration, 86400.0}, "24 h", "24 h"},
        Shown{{Kind::duration, -37800.0}, "-37800 s", "-37800 s"},
        Shown{{Kind::temperature, 273.15 + 79.999}, "176 °F", "80 °C"},
        Shown{{Kind::temperature, 273.15}, "32 °F", "0 °C"},
        Shown{{Kind::temperature_difference, 2.0}, "3.6 °F", "2 °C"},
        Shown{{Kind::fraction, 0.4}, "40%", "40 %"}, Shown{{Kind::fraction, 0.79999}, "80%", "80 %"},
        Shown{{Kind::length, 18.288}, "60 ft", "18.29 m"},
        Shown{{Kind::length, 0.1524, Scale::fine}, "6 in", "152 mm"},
        Shown{{Kind::length, 0.003175, Scale::fine}, "0.125 in", "3 mm"},  // 1/8 in
        Shown{{Kind::volume, 0.0094635296}, "2.5 gal", "9 L"},             // 2.5 * 3.785411784 L
        Shown{{Kind::velocity, 2.54}, "500 ft/min", "2.54 m/s"},
        Shown{{Kind::volume_flow, 0.001}, "15.9 gpm", "60 L/min"},
        Shown{{Kind::volume_flow, 94.4, Scale::coarse}, "200022 cfm", "94.4 m³/s"}));

TEST(QuantityTextTest, number_and_unit_can_be_had_apart) {
    const auto text = show(any(45_s), UnitSystem::us);
    EXPECT_EQ(text.number, "45");
    EXPECT_EQ(text.unit, "s");
}

TEST(QuantityTextTest, a_time_of_day_is_shown_as_a_clock_shows_it) {
    const auto clock = [](double hours) {
        const AnyQuantity time{Kind::duration, 3600.0 * hours, Scale::clock};
        EXPECT_EQ(show(time, UnitSystem::us).joined(UnitSystem::us), show(time, UnitSystem::si).number);
        return show(time, UnitSystem::si).joined(UnitSystem::si);
    };
    EXPECT_EQ(clock(0.0), "00:00");
    EXPECT_EQ(clock(9.5), "09:30");
    EXPECT_EQ(clock(21.75 + 29.0 / 3600.0), "21:45");
    EXPECT_EQ(clock(24.0), "00:00");
    EXPECT_EQ(clock(25.25), "01:15");
    EXPECT_EQ(clock(-0.25), "23:45");
}

}  // namespace
}  // namespace wetfront
