// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "records/file_shape.h"
#include "records/record_text.h"

namespace wetfront::test {
namespace {

/// Follows a path of property names and list items through the schema.
Json at(std::initializer_list<const char*> path) {
    auto node = Json::parse(visit_schema_text());
    for (const std::string step : path) {
        node = step == "[]" ? node.at("items") : node.at("properties").at(step);
    }
    return node;
}

template <class R>
void expect_keys_of(const Json& schema) {
    R record;
    std::size_t count = 0;
    each_field(record, [&](const Field& field, const auto&) {
        ++count;
        EXPECT_TRUE(schema.at("properties").contains(field.key)) << field.key;
    });
    EXPECT_EQ(schema.at("properties").size(), count);
    EXPECT_EQ(schema.at("additionalProperties"), false);
}

TEST(RecordSchemaTest, every_record_has_its_fields_and_no_other) {
    expect_keys_of<VisitFile>(at({}));
    expect_keys_of<Farm>(at({"farm"}));
    expect_keys_of<Limits>(at({"farm", "limits"}));
    expect_keys_of<House>(at({"house"}));
    expect_keys_of<PadBank>(at({"house", "banks", "[]"}));
    expect_keys_of<Timer>(at({"house", "timers", "[]"}));
    expect_keys_of<Visit>(at({"visit"}));
    expect_keys_of<Conditions>(at({"visit", "conditions"}));
    expect_keys_of<Mark>(at({"visit", "marks", "[]"}));
    expect_keys_of<TimerSettings>(at({"visit", "found", "[]"}));
    expect_keys_of<TrimRow>(at({"visit", "left", "[]", "trim_rows", "[]"}));
}

TEST(RecordSchemaTest, a_quantity_is_text_with_one_of_its_units) {
    const auto length = at({"house", "banks", "[]", "length"});
    EXPECT_EQ(length.at("type"), "string");
    const std::regex pattern{length.at("pattern").get<std::string>(), std::regex::ECMAScript};
    for (const auto* text : {"60ft", "60 ft", " 18.3m", "7.2e2in", "62,5 ft", ".5m"}) {
        EXPECT_TRUE(std::regex_match(text, pattern)) << text;
    }
    for (const auto* text : {"60", "ft", "60 s", "60 ftt", "sixty ft", "1.2.3m", "NaNm", ""}) {
        EXPECT_FALSE(std::regex_match(text, pattern)) << text;
    }
    EXPECT_NE(length.at("description").get<std::string>().find("0.5 m to 200 m (1.64 ft to 656.2 ft)"),
              std::string::npos);
}

TEST(RecordSchemaTest, limits_and_names_stand_in_the_schema) {
    EXPECT_EQ(at({"visit", "marks"}).at("maxItems"), 100'000);
    EXPECT_EQ(at({"visit", "found", "[]", "trim_rows"}).at("maxItems"), 4);
    EXPECT_EQ(at({"visit", "conditions", "ph"}).at("maximum"), 14.0);
    EXPECT_EQ(at({"house", "timers", "[]", "kind"}).at("enum"),
              Json::array({"trimmed", "fixed interval", "on demand"}));
    EXPECT_EQ(at({"farm"}).at("required"), Json::array({"id", "name"}));
    EXPECT_EQ(at({"house", "banks", "[]"}).at("required"), Json::array({"id", "pump", "pump_end"}));
}

}  // namespace
}  // namespace wetfront::test
