// SPDX-License-Identifier: Apache-2.0
#include "records/json_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "made_visits.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;

Error error_of(std::string_view text) {
    const auto result = parse_visit_file(text);
    return result ? Error{Error::Kind::storage, "accepted", "", ""} : result.error();
}

// An input that is refused at its first key leads a fuzz target nowhere.
TEST(JsonTextTest, the_whole_files_among_the_fuzz_targets_inputs_are_read) {
    const std::filesystem::path corpus{WETFRONT_FUZZ_CORPUS};
    std::size_t whole = 0;
    for (const auto* folder : {"visit", "template"}) {
        for (const auto& entry : std::filesystem::directory_iterator{corpus / folder}) {
            const auto name = entry.path().filename().string();
            if (!name.starts_with("whole_")) {
                continue;
            }
            ++whole;
            std::ifstream file{entry.path()};
            const std::string text{std::istreambuf_iterator<char>{file}, {}};
            const bool is_read = std::string_view{folder} == "visit" ? parse_visit_file(text).has_value()
                                                                     : parse_template_file(text).has_value();
            EXPECT_TRUE(is_read) << name;
        }
    }
    EXPECT_GE(whole, 6U);
}

TEST(JsonTextTest, ten_megabytes_of_text_are_refused_by_size) {
    const auto error = error_of(std::string(10'000'000, 'x'));
    EXPECT_EQ(error.item, "visit file");
    EXPECT_EQ(error.text(), "visit file: more than 8 MiB; a record file is smaller");
}

TEST(JsonTextTest, a_file_cut_off_anywhere_gives_one_clear_message) {
    const auto whole = visit_file_text(full_visit());
    ASSERT_TRUE(parse_visit_file(whole));
    for (std::size_t length = 0; length + 2 < whole.size(); length += 1 + length / 200) {
        const auto error = error_of(whole.substr(0, length));
        ASSERT_EQ(error.kind, Error::Kind::bad_input) << "cut at " << length;
        EXPECT_THAT(error.item, testing::StartsWith("visit file"))
            << "cut at " << length << ": " << error.text();
        EXPECT_FALSE(error.accepted.empty());
    }
}

TEST(JsonTextTest, a_file_that_ends_too_early_says_so_with_its_last_line) {
    const auto error = error_of("{\n  \"farm\": {");
    EXPECT_EQ(error.item, "visit file line 2, column 11");
    EXPECT_THAT(error.accepted, HasSubstr("ends here before it is complete"));
}

TEST(JsonTextTest, text_that_is_no_json_is_named_by_line_and_column) {
    const auto error = error_of("{\n  \"farm\": nonsense\n}");
    EXPECT_THAT(error.item, HasSubstr("visit file line 2, column")) << error.text();
    EXPECT_THAT(error.accepted, HasSubstr("not JSON")) << error.text();
}

TEST(JsonTextTest, numbers_that_are_not_finite_are_no_json) {
    for (const auto* number : {"NaN", "Infinity", "-Infinity", "1e999", "0x10", "01", "+1", ".5"}) {
        const auto error = error_of(std::string{"{\"farm\": "} + number + "}");
        EXPECT_THAT(error.accepted, HasSubstr("not JSON")) << number << ": " << error.text();
    }
}

TEST(JsonTextTest, bytes_that_are_not_utf8_are_refused_before_anything_is_read) {
    for (const auto* bytes :
         {"{\"farm\": \"\xFF\"}", "{\"farm\": \"\xC0\xAF\"}", "\xED\xA0\x80", "{\"\xE2\x82\"}"}) {
        EXPECT_THAT(error_of(bytes).accepted, HasSubstr("UTF-8"));
    }
}

TEST(JsonTextTest, what_follows_a_zero_byte_is_not_overlooked) {
    const auto whole = visit_file_text(full_visit());
    EXPECT_THAT(error_of(whole + std::string(1, '\0') + "more").accepted, HasSubstr("zero byte"));
}

TEST(JsonTextTest, something_behind_the_end_is_refused) {
    EXPECT_THAT(error_of(visit_file_text(full_visit()) + "x").accepted, HasSubstr("not JSON"));
    EXPECT_THAT(error_of("{}{}").accepted, HasSubstr("not JSON"));
}

TEST(JsonTextTest, a_repeated_key_is_refused_by_its_path) {
    const auto error = error_of(R"({"farm": {"id": "a", "name": "A", "name": "B"}})");
    EXPECT_EQ(error.item, "farm.name");
    EXPECT_THAT(error.accepted, HasSubstr("twice"));
    const auto in_list = error_of(R"({"visit": {"marks": [{}, {"id": 1, "id": 2}]}})");
    EXPECT_EQ(in_list.item, "visit.marks[1].id") << in_list.text();
}

TEST(JsonTextTest, deep_nesting_is_refused_before_it_costs_anything) {
    for (const auto* opening : {"[", "{\"a\":"}) {
        std::string bomb;
        for (int i = 0; i < 200'000; ++i) {
            bomb += opening;
        }
        EXPECT_THAT(error_of(bomb).accepted, HasSubstr("deeper than 12 levels"));
    }
}

TEST(JsonTextTest, an_object_with_very_many_keys_is_refused) {
    std::string many = "{";
    for (int i = 0; i < 100'000; ++i) {
        many += "\"k" + std::to_string(i) + "\":1,";
    }
    EXPECT_THAT(error_of(many).accepted, HasSubstr("more than 64 keys"));
}

TEST(JsonTextTest, a_document_that_is_no_object_is_refused) {
    for (const auto* text : {"[]", "3", "\"visit\"", "null", "true"}) {
        const auto error = error_of(text);
        EXPECT_EQ(error.item, "visit file");
        EXPECT_THAT(error.accepted, HasSubstr("farm, house and visit"));
    }
    EXPECT_THAT(error_of("").accepted, HasSubstr("ends here"));
}

}  // namespace
}  // namespace wetfront::test
