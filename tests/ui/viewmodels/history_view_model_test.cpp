// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/history_view_model.h"

#include "desk.h"
#include "support/visit_builder.h"

namespace wetfront::ui {
namespace {

/// A house of which six visits, one a year, found a wet-through time that grows by 10 s each.
class HistoryViewModelTest : public Desk {
protected:
    HistoryViewModelTest() {
        for (int year = 0; year < 6; ++year) {
            test::VisitBuilder builder;
            test::MarkedRun run;
            run.fill = 40.0;
            run.wet_through = 110.0 + 10.0 * year;
            builder.run(1, run).run(1, run);
            auto& file = builder.file();
            file.visit.id = Id{"visit-" + std::to_string(year)};
            file.visit.started.unix_ms += year * 31'557'600'000;  // 365.25 days
            for (auto& mark : file.visit.marks) {
                mark.id.text += "-" + std::to_string(year);
            }
            const auto added = store_.add(file);
            EXPECT_TRUE(added) << added.error().text();
            house_ = file.house;
        }
    }
    [[nodiscard]] QVariantMap bank(int index) const { return history_.banks().at(index).toMap(); }
    [[nodiscard]] QString all_words(int index) const {
        QStringList words;
        for (const auto& each : bank(index).value(QStringLiteral("series")).toList()) {
            words.append(each.toMap().value(QStringLiteral("words")).toString());
        }
        return words.join(QLatin1Char('\n'));
    }

    House house_;
    HistoryViewModel history_{context_, nullptr};
};

TEST_F(HistoryViewModelTest, a_bank_tells_what_rises_and_what_likely_lies_behind_it) {
    ASSERT_TRUE(history_.show(house_));
    ASSERT_EQ(history_.banks().size(), 1);
    EXPECT_EQ(bank(0).value(QStringLiteral("name")), QStringLiteral("Bank 1"));
    EXPECT_TRUE(all_words(0).contains(QStringLiteral("Wet-through time rises by 10 s a year")))
        << all_words(0).toStdString();
    EXPECT_TRUE(all_words(0).contains(QStringLiteral("Fill time: no trend is seen in 6 visits")));
    EXPECT_TRUE(
        bank(0).value(QStringLiteral("cause")).toString().contains(QStringLiteral("clogged outlets")));
}

TEST_F(HistoryViewModelTest, the_first_and_the_last_value_stand_with_their_days) {
    ASSERT_TRUE(history_.show(house_));
    const auto fill = bank(0).value(QStringLiteral("series")).toList().front().toMap();
    const auto values = fill.value(QStringLiteral("values")).toString();
    EXPECT_TRUE(values.contains(QStringLiteral("first 40 s"))) << values.toStdString();
    EXPECT_TRUE(values.contains(QStringLiteral("last 40 s"))) << values.toStdString();
}

TEST_F(HistoryViewModelTest, a_house_of_which_nothing_was_measured_has_no_bank_in_it) {
    ASSERT_TRUE(history_.show(file_.house));
    EXPECT_TRUE(history_.banks().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
