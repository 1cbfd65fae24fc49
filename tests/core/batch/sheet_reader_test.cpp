// SPDX-License-Identifier: Apache-2.0
#include "batch/sheet_reader.h"

#include <gtest/gtest.h>

#include "batch_records.h"
#include "units/message.h"

namespace wetfront::test {
namespace {

constexpr std::string_view kept_pdf = "%PDF-1.7 kept";

class SheetReaderTest : public BatchRecords {
protected:
    [[nodiscard]] SheetSource read(SheetReader& reader, const std::string& visit) {
        reader.begin(Id{visit});
        for (turns_ = 1; turns_ < 100; ++turns_) {
            auto source = reader.read_on();
            EXPECT_TRUE(source) << source.error().text();
            if (!source) {
                return {};
            }
            if (source.value()) {
                return std::move(*source.value());
            }
        }
        ADD_FAILURE() << "never read";
        return {};
    }
    [[nodiscard]] static std::string headings(const SheetContent& content) {
        std::string all;
        for (const auto& block : content.blocks) {
            if (const auto* heading = std::get_if<SheetHeading>(&block)) {
                all += in_english(heading->text, UnitSystem::us) + "|";
            }
        }
        return all;
    }

    int turns_ = 0;
};

TEST_F(SheetReaderTest, a_sheet_that_was_kept_is_its_bytes) {
    add("2026-06-01", "a");
    ASSERT_TRUE(store_.keep_sheet(store_.visit(Id{"a"}).value(), kept_pdf));
    SheetReader reader{store_, SheetKind::commissioning};
    EXPECT_EQ(read(reader, "a").kept, kept_pdf);
    SheetReader summaries{store_, SheetKind::summary};
    EXPECT_FALSE(read(summaries, "a").kept) << "a summary never is";
}

TEST_F(SheetReaderTest, visits_of_a_house_are_read_one_in_a_turn_and_once_for_all_its_sheets) {
    for (const auto* day : {"2024-06-01", "2025-06-01", "2026-06-01"}) {
        add(day, std::string{"v-"} + day);
    }
    SheetReader reader{store_, SheetKind::commissioning};
    const auto first = read(reader, "v-2024-06-01");
    EXPECT_EQ(turns_, 4);
    const auto last = read(reader, "v-2026-06-01");
    EXPECT_EQ(turns_, 1);
    ASSERT_TRUE(last.of_house);
    EXPECT_EQ(last.of_house, first.of_house);
    EXPECT_EQ(last.of_house->size(), 3U);
    EXPECT_EQ(last.file, store_.visit_file(Id{"v-2026-06-01"}).value());
}

TEST_F(SheetReaderTest, the_trend_stands_on_a_drawn_sheet_and_not_on_a_summary) {
    add("2025-06-01", "a");
    add("2026-06-01", "b");
    SheetReader reader{store_, SheetKind::commissioning};
    const auto sheet = sheet_content(read(reader, "b"), SheetKind::commissioning, clock_.wall_now());
    EXPECT_NE(headings(sheet).find("Against earlier visits"), std::string::npos) << headings(sheet);
    SheetReader summaries{store_, SheetKind::summary};
    const auto summary = sheet_content(read(summaries, "b"), SheetKind::summary, clock_.wall_now());
    EXPECT_NE(headings(summary).find("In the heat"), std::string::npos) << headings(summary);
    EXPECT_EQ(turns_, 1);
}

TEST_F(SheetReaderTest, after_a_visit_that_is_not_there_the_next_one_is_read) {
    add("2026-06-01", "a");
    SheetReader reader{store_, SheetKind::commissioning};
    reader.begin(Id{"unknown"});
    EXPECT_FALSE(reader.read_on());
    EXPECT_EQ(read(reader, "a").file.visit.id, Id{"a"});
}

TEST_F(SheetReaderTest, a_signed_sheet_is_dated_when_it_was_signed_and_a_draft_today) {
    add("2026-06-01", "a");
    add("2026-06-02", "b", Signed::no);
    SheetReader reader{store_, SheetKind::commissioning};
    const auto today = parse_iso8601("2031-12-24T10:00:00-05:00", "now").value();
    const auto words = [&](const std::string& visit) {
        std::string all;
        for (const auto& block : sheet_content(read(reader, visit), SheetKind::commissioning, today).blocks) {
            if (const auto* facts = std::get_if<SheetFacts>(&block)) {
                for (const auto& fact : facts->facts) {
                    all += in_english(fact.value, UnitSystem::us) + "|";
                }
            }
        }
        return all;
    };
    EXPECT_EQ(words("a").find("2031-12-24"), std::string::npos);
    EXPECT_NE(words("b").find("2031-12-24"), std::string::npos);
}

}  // namespace
}  // namespace wetfront::test
