// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

/// One visit a year, each with that wet-through time; the last is the one that the sheet is of.
std::vector<VisitFile> years(const std::vector<double>& wet_through) {
    std::vector<VisitFile> visits;
    for (std::size_t i = 0; i < wet_through.size(); ++i) {
        VisitBuilder visit;
        visit.run(1, {.fill = 40.0, .wet_through = wet_through[i]});
        auto& file = visits.emplace_back(visit.file());
        file.visit.id = Id{"visit-" + std::to_string(i + 1)};
        file.visit.started.unix_ms += static_cast<std::int64_t>(i) * 365 * 86'400'000;
    }
    return visits;
}

std::vector<std::string> trend_texts(const VisitFile& file, const std::vector<VisitFile>& of_house) {
    const MadeSheet made{file};
    const auto content = commissioning_sheet({made.file,
                                              made.timings,
                                              made.advice,
                                              made.found,
                                              made.left,
                                              1,
                                              {},
                                              {},
                                              trends_after(made.file, of_house)});
    std::vector<std::string> texts;
    bool inside = false;
    for (const auto& block : content.blocks) {
        if (const auto* heading = std::get_if<SheetHeading>(&block)) {
            inside = MadeSheet::english(heading->text) == "Against earlier visits";
        }
        if (inside) {
            std::visit(TextsOf{texts}, block);
        }
    }
    return texts;
}

TEST(SheetTrendsTest, a_wet_through_time_that_creeps_stands_with_its_first_and_its_last_value) {
    const auto visits = years({110, 120, 131, 140, 152, 160});
    const auto texts = trend_texts(visits.back(), visits);
    EXPECT_THAT(texts, Contains(AllOf(HasSubstr("Wet-through"), HasSubstr("6 visits"))));
    EXPECT_THAT(texts, Contains("110 s"));
    EXPECT_THAT(texts, Contains("160 s"));
    EXPECT_THAT(texts, Contains(HasSubstr("Mann-Kendall")));
}

TEST(SheetTrendsTest, two_visits_are_too_few_and_that_is_said) {
    const auto visits = years({110, 160});
    EXPECT_THAT(trend_texts(visits.back(), visits), Contains(HasSubstr("too few visits")));
}

TEST(SheetTrendsTest, a_first_visit_has_nothing_to_be_held_against) {
    const auto visits = years({110});
    EXPECT_THAT(trend_texts(visits.back(), visits), IsEmpty());
    EXPECT_THAT(trend_texts(visits.back(), {}), IsEmpty());
}

TEST(SheetTrendsTest, what_later_visits_measured_is_not_on_the_sheet_of_an_earlier_one) {
    const auto visits = years({110, 120, 131, 140, 152, 160});
    EXPECT_THAT(trend_texts(visits[1], visits), Not(Contains("160 s")));
}

}  // namespace
}  // namespace wetfront::test
