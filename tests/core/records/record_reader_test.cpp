// SPDX-License-Identifier: Apache-2.0
#include "records/record_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "made_visits.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;

/// One quantity somewhere in a file: where it stands for JSON and for people, and what is said about it.
struct Place {
    std::string pointer;
    std::string path;
    Field field;
    Kind kind;
};

template <class R>
void collect(R& record, const std::string& pointer, const std::string& path, std::vector<Place>& places);

struct Collector {
    std::string pointer;
    std::string path;
    std::vector<Place>& places;

    template <class Q>
    void operator()(const Field& field, const Optional<Q>&) const {
        places.push_back({pointer + "/" + field.key, dotted(field.key), field, KindOf<Q>::value});
    }
    template <class T>
    void operator()(const Field& field, const std::vector<T>& items) const {
        if constexpr (Record<T>) {
            for (std::size_t i = 0; i < items.size(); ++i) {
                const auto index = std::to_string(i);
                collect(items[i], pointer + "/" + field.key + "/" + index,
                        dotted(field.key) + "[" + index + "]", places);
            }
        }
    }
    template <class T>
    void operator()(const Field& field, const T& member) const {
        if constexpr (Record<T>) {
            collect(member, pointer + "/" + field.key, dotted(field.key), places);
        }
    }
    [[nodiscard]] std::string dotted(const char* key) const { return path.empty() ? key : path + "." + key; }
};

template <class R>
void collect(R& record, const std::string& pointer, const std::string& path, std::vector<Place>& places) {
    each_field(record, Collector{pointer, path, places});
}

std::vector<Place> all_quantities(const VisitFile& file) {
    std::vector<Place> places;
    collect(file, "", "", places);
    return places;
}

Json full_json() {
    return Json::parse(visit_file_text(full_visit()));
}

std::string with(const std::string& pointer, const Json& value) {
    auto json = full_json();
    json[Json::json_pointer{pointer}] = value;
    return json.dump();
}

std::string si_text(const Place& place, double si) {
    const auto& unit = units_of(place.kind).front();
    const auto text = print_any({place.kind, si}, unit);
    return unit.symbol == "1" ? text.substr(0, text.size() - 1) + " 1" : text;
}

Error error_of(const std::string& text) {
    const auto result = parse_visit_file(text);
    return result ? Error{Error::Kind::storage, "accepted", text.substr(0, 200), ""} : result.error();
}

TEST(RecordReaderTest, every_quantity_has_a_range_and_is_accepted_at_both_its_ends) {
    const auto places = all_quantities(full_visit());
    ASSERT_GT(places.size(), 80U);
    for (const auto& place : places) {
        ASSERT_TRUE(std::isfinite(place.field.least) && std::isfinite(place.field.most)) << place.path;
        for (const double limit : {place.field.least, place.field.most}) {
            const auto result = parse_visit_file(with(place.pointer, si_text(place, limit)));
            EXPECT_TRUE(result) << place.path << " = " << si_text(place, limit) << ": "
                                << result.error().text();
        }
    }
}

TEST(RecordReaderTest, every_quantity_of_no_timer_is_refused_by_its_path_just_outside_both_ends) {
    for (const auto& place : all_quantities(full_visit())) {
        if (place.field.kept) {
            continue;
        }
        const double step = 1e-6 * std::max(std::abs(place.field.least), std::abs(place.field.most));
        for (const double value : {place.field.least - step, place.field.most + step}) {
            const auto error = error_of(with(place.pointer, si_text(place, value)));
            EXPECT_EQ(error.item, place.path) << error.text();
            EXPECT_EQ(error.kind, Error::Kind::bad_input);
            EXPECT_THAT(error.accepted, HasSubstr("must be")) << error.text();
        }
    }
}

TEST(RecordReaderTest, what_was_found_in_a_timer_is_kept_outside_what_is_usual_and_written_back_as_it_was) {
    int kept = 0;
    for (const auto& place : all_quantities(full_visit())) {
        if (!place.field.kept) {
            continue;
        }
        ++kept;
        const double step = place.field.most - place.field.least;
        for (const double value : {place.field.least - step, place.field.most + step, 1e9, -1e9}) {
            const auto text = si_text(place, value);
            const auto result = parse_visit_file(with(place.pointer, text));
            ASSERT_TRUE(result) << result.error().text();
            const auto written = Json::parse(visit_file_text(result.value()));
            EXPECT_EQ(written[Json::json_pointer{place.pointer}], text) << place.path;
        }
    }
    EXPECT_GE(kept, 24) << "found and left, each with twelve quantities and rows";
}

TEST(RecordReaderTest, what_no_record_can_hold_is_refused_in_a_timer_too) {
    for (const auto& place : all_quantities(full_visit())) {
        if (place.field.kept) {
            const auto error = error_of(with(place.pointer, si_text(place, 2e12)));
            EXPECT_EQ(error.item, place.path) << error.text();
            EXPECT_THAT(error.accepted, HasSubstr("usual is")) << error.text();
        }
    }
}

TEST(RecordReaderTest, every_quantity_refuses_a_bare_number_another_unit_and_nonsense_by_its_path) {
    for (const auto& place : all_quantities(full_visit())) {
        for (const Json& value :
             {Json(45), Json("45"), Json("45 furlong"), Json("NaNs"), Json("inf m"), Json(""), Json(nullptr),
              Json(true), Json::array(), Json::object(), Json("-")}) {
            const auto error = error_of(with(place.pointer, value));
            EXPECT_EQ(error.item, place.path) << value.dump() << ": " << error.text();
            EXPECT_FALSE(error.accepted.empty()) << value.dump();
        }
        const auto bare = error_of(with(place.pointer, 45));
        EXPECT_THAT(bare.accepted, HasSubstr(accepted_units(place.kind))) << bare.text();
    }
}

struct BadValue {
    const char* pointer;
    const char* value;  ///< JSON
    const char* item;
    const char* accepted;  ///< part of what the message says is accepted
};

class BadValueTest : public testing::TestWithParam<BadValue> {};

TEST_P(BadValueTest, is_refused_by_path_with_what_is_accepted) {
    const auto& row = GetParam();
    const auto error = error_of(with(row.pointer, Json::parse(row.value)));
    EXPECT_EQ(error.item, row.item) << error.text();
    EXPECT_THAT(error.accepted, HasSubstr(row.accepted)) << error.text();
}

INSTANTIATE_TEST_SUITE_P(
    Files, BadValueTest,
    testing::Values(
        BadValue{"/house/banks/0/length", "\"3km\"", "house.banks[0].length", "not a unit of length"},
        BadValue{"/house/banks/0/length", "\"3000m\"", "house.banks[0].length", "0.5 m to 200 m"},
        BadValue{"/house/banks/0/length", "\"9000ft\"", "house.banks[0].length", "1.64 ft to 656.2 ft"},
        BadValue{"/house/banks/0/length", "\"-60ft\"", "house.banks[0].length", "1.64 ft to 656.2 ft"},
        BadValue{"/house/banks/0/length", "\"0ft\"", "house.banks[0].length", "1.64 ft to 656.2 ft"},
        BadValue{"/house/banks/0/length", "\"1,200ft\"", "house.banks[0].length", "thousands"},
        BadValue{"/house/banks/0/outlet_bore", "\"0.1mm\"", "house.banks[0].outlet_bore", "0.5 mm to 30 mm"},
        BadValue{"/house/banks/0/pump_end", "\"middle\"", "house.banks[0].pump_end", "\"left\", \"right\""},
        BadValue{"/house/banks/0/id", "\"a b\"", "house.banks[0].id", "letters, digits and hyphens"},
        BadValue{"/house/banks/0/id", "7", "house.banks[0].id", "in quotes"},
        BadValue{"/house/timers/0/kind", "3", "house.timers[0].kind", "\"trimmed\""},
        BadValue{"/house/banks", "{}", "house.banks", "a list"},
        BadValue{"/house/pumps/0", "[]", "house.pumps[0]", "an object"},
        BadValue{"/house/name", "\"\"", "house.name", "a name"},
        BadValue{"/house/name", "\"two\\nlines\"", "house.name", "control character"},
        BadValue{"/house/name", "12", "house.name", "text in quotes"},
        BadValue{"/visit/conditions/ph", "15", "visit.conditions.ph", "0 to 14"},
        BadValue{"/visit/conditions/ph", "\"7\"", "visit.conditions.ph", "plain number"},
        BadValue{"/visit/conditions/bird_age_days", "-1", "visit.conditions.bird_age_days", "0 to 700"},
        BadValue{"/visit/conditions/outside_humidity", "\"140%\"", "visit.conditions.outside_humidity",
                 "1 % to 100 %"},
        BadValue{"/visit/found/0/rinse_at", "\"24:00\"", "visit.found[0].rinse_at", "23:59"},
        BadValue{"/visit/found/0/rinse_at", "930", "visit.found[0].rinse_at", "in quotes"},
        BadValue{"/visit/found/0/continuous_intended", "\"yes\"", "visit.found[0].continuous_intended",
                 "true or false"},
        BadValue{"/visit/started", "\"2026-07-01\"", "visit.started", "offset"},
        BadValue{"/visit/started", "\"2026-02-30T10:00:00Z\"", "visit.started", "offset"},
        BadValue{"/visit/marks/0/at/boot_ns", "-1", "visit.marks[0].at.boot_ns", "whole number"},
        BadValue{"/visit/marks/0/at/boot_ns", "1.5", "visit.marks[0].at.boot_ns", "whole number"},
        BadValue{"/visit/marks/0/at/boot_ns", "9223372036854775808", "visit.marks[0].at.boot_ns",
                 "whole number"},
        BadValue{"/visit/marks/0/kind", "\"pump Start\"", "visit.marks[0].kind", "\"pump start\""},
        BadValue{"/visit/signatures/0/drawn", "\"0,0 400,0\"", "visit.signatures[0].drawn", "a list"},
        BadValue{"/visit/signatures/0/drawn", "[[0, 0]]", "visit.signatures[0].drawn[0]", "in quotes"},
        BadValue{"/visit/signatures/0/drawn", "[\"0,0 400,0\", \"0,1001\"]", "visit.signatures[0].drawn[1]",
                 "0 to 1000 down"},
        BadValue{"/visit/signatures/0/drawn", "[\"0,0 2501,0\"]", "visit.signatures[0].drawn[0]",
                 "0 to 2500 across"},
        BadValue{"/visit/signatures/0/drawn", "[\"9,9\", \"9,9 30,9\"]", "visit.signatures[0].drawn",
                 "too short for a signature"},
        BadValue{"/visit/colour", "1", "visit.colour", "unknown key; known here: id, house, started"},
        BadValue{"/house/banks/0/lenght", "\"60ft\"", "house.banks[0].lenght", "unknown key"}));

TEST(RecordReaderTest, a_missing_key_that_a_file_needs_is_named_by_path) {
    for (const auto* pointer : {"/farm/id",
                                "/farm/name",
                                "/house/id",
                                "/house/farm",
                                "/house/name",
                                "/house/pumps/0/id",
                                "/house/banks/0/id",
                                "/house/banks/0/pump",
                                "/house/banks/0/pump_end",
                                "/house/timers/0/kind",
                                "/visit/id",
                                "/visit/house",
                                "/visit/started",
                                "/visit/marks/0/id",
                                "/visit/marks/0/kind",
                                "/visit/marks/0/pump",
                                "/visit/marks/0/at",
                                "/visit/marks/0/wall",
                                "/visit/marks/0/at/boot_id",
                                "/visit/found/0/timer",
                                "/visit/set_aside/0/end_mark",
                                "/visit/ticks/0/id",
                                "/visit/ticks/0/done",
                                "/farm",
                                "/house",
                                "/visit"}) {
        auto json = full_json();
        const Json::json_pointer place{pointer};
        json[place.parent_pointer()].erase(place.back());
        const auto error = error_of(json.dump());
        EXPECT_THAT(error.accepted, HasSubstr("missing")) << pointer << ": " << error.text();
        EXPECT_TRUE(error.item.ends_with(place.back())) << pointer << ": " << error.text();
    }
}

TEST(RecordReaderTest, a_list_longer_than_its_limit_is_refused_with_the_limit) {
    auto json = full_json();
    auto& rows = json["visit"]["found"][0]["trim_rows"];
    rows = Json::array({Json::object(), Json::object(), Json::object(), Json::object()});
    EXPECT_TRUE(parse_visit_file(json.dump()));
    rows.push_back(Json::object());
    const auto error = error_of(json.dump());
    EXPECT_EQ(error.item, "visit.found[0].trim_rows");
    EXPECT_EQ(error.accepted, "at most 4");
}

TEST(RecordReaderTest, lines_and_points_of_a_signature_have_their_limits_in_files_and_in_the_store) {
    const auto place = "/visit/signatures/0/drawn";
    EXPECT_TRUE(parse_visit_file(with(place, Json(std::vector<std::string>(60, "0,0 400,0")))));
    const auto lines = error_of(with(place, Json(std::vector<std::string>(61, "0,0 400,0"))));
    EXPECT_EQ(lines.item, "visit.signatures[0].drawn");
    EXPECT_EQ(lines.accepted, "at most 60");

    std::string points = "0,0 400,0";
    for (int i = 2; i < 600; ++i) {
        points += " 9,9";
    }
    EXPECT_TRUE(parse_visit_file(with(place, Json({points}))));
    const auto twice = error_of(with(place, Json({points, points})));
    EXPECT_EQ(twice.item, "visit.signatures[0].drawn");
    EXPECT_THAT(twice.accepted, HasSubstr("1000 points together"));
    auto visit = full_json()["visit"];
    visit["signatures"][0]["drawn"] = Json({points, points});
    EXPECT_FALSE(parse_visit(visit.dump()));
}

TEST(RecordReaderTest, a_text_is_limited_in_characters_not_in_bytes) {
    std::string accented;
    for (int i = 0; i < 200; ++i) {
        accented += "\xC3\xA9";
    }
    EXPECT_TRUE(parse_visit_file(with("/farm/customer", accented)));
    EXPECT_EQ(error_of(with("/farm/customer", accented + "x")).item, "farm.customer");
    EXPECT_TRUE(parse_visit_file(with("/visit/open_points/0", std::string(2000, 'x'))));
    EXPECT_EQ(error_of(with("/visit/open_points/0", std::string(2001, 'x'))).item, "visit.open_points[0]");
}

TEST(RecordReaderTest, a_hundred_thousand_marks_are_more_than_the_file_may_hold) {
    auto json = full_json();
    json["visit"]["marks"] = Json(std::vector<int>(100'001, 0));
    const auto error = error_of(json.dump());
    EXPECT_EQ(error.item, "visit.marks");
    EXPECT_EQ(error.accepted, "at most 100000");
}

}  // namespace
}  // namespace wetfront::test
