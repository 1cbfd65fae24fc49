// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/houses_model.h"

#include <QCoreApplication>
#include <QSignalSpy>

#include "desk.h"
#include "rules/rules.h"

namespace wetfront::ui {
namespace {

/// The demo's three houses, one more that nobody visited, and the list of them.
class HousesModelTest : public Desk {
protected:
    HousesModelTest() {
        House empty;
        empty.id = Id{"house-unvisited"};
        empty.farm = file_.farm.id;
        empty.name = "House Zinnia";
        const auto filled = fill_store(store_);
        const auto saved = store_.save(empty);
        EXPECT_TRUE(filled && saved);
        read();
    }

    void read() {
        const auto reloaded = model_.reload();
        EXPECT_TRUE(reloaded) << reloaded.error().text();
    }
    [[nodiscard]] QVariant at(int row, HousesModel::Role role) {
        return model_.data(model_.index(row), role);
    }
    [[nodiscard]] QString text(int row, HousesModel::Role role) { return at(row, role).toString(); }
    [[nodiscard]] int row_of(const QString& house) {
        for (int row = 0; row < model_.count(); ++row) {
            if (text(row, HousesModel::HouseRole) == house) {
                return row;
            }
        }
        return -1;
    }
    /// Turns of the event loop until nothing is left to be told.
    void settle() {
        for (auto before = told_.size() - 1; before != told_.size();) {
            before = told_.size();
            QCoreApplication::processEvents();
        }
    }
    /// The worst finding on the settings that the latest visit found.
    [[nodiscard]] Finding worst(int row) {
        const Id house{text(row, HousesModel::IdRole).toStdString()};
        const auto file = store_.visit_file(store_.visits_of(house).value().front().visit).value();
        return check(file, timings_of(file), advise(file), WhichSettings::found).front();
    }

    HousesModel model_{context_, nullptr};
    QSignalSpy told_{&model_, &QAbstractItemModel::dataChanged};
    static inline const QString looking = QStringLiteral("Looking at the latest visit …");
};

TEST_F(HousesModelTest, names_and_visits_are_there_at_once) {
    ASSERT_EQ(model_.count(), 4);
    const int cedar = row_of(QStringLiteral("House Cedar"));
    ASSERT_GE(cedar, 0);
    EXPECT_EQ(text(cedar, HousesModel::FarmRole), QString::fromStdString(file_.farm.name));
    EXPECT_EQ(text(cedar, HousesModel::VisitsRole), QStringLiteral("visits: 7, latest 2026-07-09"));
    EXPECT_TRUE(at(cedar, HousesModel::OpenRole).toBool());
    settle();
    EXPECT_TRUE(told_.isEmpty()) << "something was worked out that nobody asked for";
}

TEST_F(HousesModelTest, what_was_found_is_looked_for_first_and_told_when_it_is_known) {
    const int birch = row_of(QStringLiteral("House Birch"));
    ASSERT_GE(birch, 0);
    EXPECT_EQ(text(birch, HousesModel::LastFoundRole), looking);
    EXPECT_EQ(text(birch, HousesModel::WorstRole), QString{});
    EXPECT_TRUE(at(birch, HousesModel::BanksRole).toList().isEmpty());
    settle();
    ASSERT_EQ(told_.size(), 1);
    EXPECT_EQ(told_.front().at(0).toModelIndex().row(), birch);
    const auto finding = worst(birch);
    EXPECT_EQ(text(birch, HousesModel::LastFoundRole), formatter_.text(finding.message));
    EXPECT_EQ(text(birch, HousesModel::WorstRole).toStdString(), name_of(finding.severity));
    EXPECT_EQ(at(birch, HousesModel::BanksRole).toList().size(), 2);
}

TEST_F(HousesModelTest, a_turn_works_out_one_line_and_the_last_one_asked_for_first) {
    for (int row = 0; row < 3; ++row) {
        EXPECT_EQ(text(row, HousesModel::LastFoundRole).isEmpty(), false);
    }
    EXPECT_TRUE(told_.isEmpty()) << "asking waited for an answer";
    std::vector<int> rows;
    for (int turn = 0; turn < 100 && rows.size() < 3; ++turn) {
        QCoreApplication::processEvents();
        ASSERT_LE(told_.size(), static_cast<int>(rows.size()) + 1) << "more than one line in a turn";
        if (told_.size() > static_cast<int>(rows.size())) {
            rows.push_back(told_.back().at(0).toModelIndex().row());
        }
    }
    EXPECT_EQ(rows, (std::vector{2, 1, 0}));
}

TEST_F(HousesModelTest, a_line_is_worked_out_once) {
    for (int time = 0; time < 2; ++time) {
        EXPECT_FALSE(text(0, HousesModel::LastFoundRole).isEmpty());
        settle();
    }
    EXPECT_EQ(told_.size(), 1);
}

TEST_F(HousesModelTest, a_house_that_nobody_visited_has_nothing_to_look_at) {
    const int zinnia = row_of(QStringLiteral("House Zinnia"));
    ASSERT_GE(zinnia, 0);
    EXPECT_EQ(text(zinnia, HousesModel::VisitsRole), QStringLiteral("not visited yet"));
    EXPECT_EQ(text(zinnia, HousesModel::LastFoundRole), QString{});
    settle();
    EXPECT_EQ(text(zinnia, HousesModel::LastFoundRole), QString{});
}

TEST_F(HousesModelTest, a_list_that_is_read_anew_drops_what_was_asked_of_the_old_one) {
    EXPECT_EQ(text(0, HousesModel::LastFoundRole), looking);
    read();
    settle();
    EXPECT_TRUE(told_.isEmpty());
    EXPECT_EQ(text(0, HousesModel::LastFoundRole), looking);
    settle();
    EXPECT_EQ(told_.size(), 1);
}

TEST_F(HousesModelTest, words_are_sought_in_house_farm_and_customer_whatever_their_case) {
    auto farm = file_.farm;
    farm.customer = "Señora Ibáñez (invented)";
    ASSERT_TRUE(store_.save(farm));
    read();
    const int all = model_.count();
    for (const auto* const words : {"ibanez", "IBÁÑEZ", "señ", "house ibáñ"}) {
        model_.seek(QString::fromUtf8(words));
        EXPECT_EQ(model_.count(), all) << words;
    }
    model_.seek(QStringLiteral("zin ibanez"));
    EXPECT_EQ(model_.count(), 1);
    model_.seek(QStringLiteral("zinnia"));
    ASSERT_EQ(model_.count(), 1);
    EXPECT_EQ(text(0, HousesModel::HouseRole), QStringLiteral("House Zinnia"));
    model_.seek(QStringLiteral("zinnia nobody"));
    EXPECT_EQ(model_.count(), 0);
    EXPECT_EQ(model_.total(), all);
    model_.seek(QStringLiteral("  "));
    EXPECT_EQ(model_.count(), all);
}

TEST_F(HousesModelTest, open_visits_are_shown_at_once) {
    model_.show(QStringLiteral("open"));
    ASSERT_GT(model_.count(), 0);
    EXPECT_LT(model_.count(), model_.total());
    EXPECT_EQ(model_.unasked(), 0);
    for (int row = 0; row < model_.count(); ++row) {
        EXPECT_TRUE(at(row, HousesModel::OpenRole).toBool());
    }
}

TEST_F(HousesModelTest, houses_with_a_fault_left_join_the_list_as_they_are_found) {
    QStringList wanted;
    for (const auto& house : model_.houses()) {
        if (!house.latest_visit) {
            continue;
        }
        const auto file = store_.visit_file(*house.latest_visit).value();
        const auto which = file.visit.left.empty() ? WhichSettings::found : WhichSettings::left;
        const auto findings = check(file, timings_of(file), advise(file), which);
        if (!findings.empty() && findings.front().severity >= Severity::fault) {
            wanted.append(QString::fromStdString(house.house_name));
        }
    }
    ASSERT_FALSE(wanted.isEmpty());
    model_.show(QStringLiteral("fault"));
    EXPECT_EQ(model_.count(), 0) << "asking waited for an answer";
    EXPECT_EQ(model_.unasked(), model_.total());
    for (int turn = 0; turn < 100 && model_.unasked() > 0; ++turn) {
        QCoreApplication::processEvents();
    }
    QStringList shown;
    for (int row = 0; row < model_.count(); ++row) {
        shown.append(text(row, HousesModel::HouseRole));
    }
    EXPECT_EQ(shown, wanted);
    model_.show(QStringLiteral("all"));
    EXPECT_EQ(model_.count(), model_.total());
}

TEST_F(HousesModelTest, a_house_without_a_visit_is_due_and_one_of_last_month_is_not) {
    model_.show(QStringLiteral("due"));
    for (int turn = 0; turn < 100 && model_.unasked() > 0; ++turn) {
        QCoreApplication::processEvents();
    }
    EXPECT_GE(row_of(QStringLiteral("House Zinnia")), 0);
    for (int row = 0; row < model_.count(); ++row) {
        const auto house = Id{text(row, HousesModel::IdRole).toStdString()};
        const auto visits = store_.visits_of(house).value();
        for (const auto& visit : visits) {
            EXPECT_LT(visit.started.unix_ms + 30LL * 86'400'000, clock_.wall_now().unix_ms);
        }
    }
}

TEST_F(HousesModelTest, an_answer_is_not_asked_for_twice_while_words_are_typed) {
    model_.show(QStringLiteral("fault"));
    for (int turn = 0; turn < 100 && model_.unasked() > 0; ++turn) {
        QCoreApplication::processEvents();
    }
    model_.seek(QStringLiteral("house"));
    EXPECT_EQ(model_.unasked(), 0);
}

TEST_F(HousesModelTest, an_unknown_choice_shows_all) {
    model_.show(QStringLiteral("open"));
    model_.show(QStringLiteral("nonsense"));
    EXPECT_EQ(model_.shown(), QStringLiteral("all"));
    EXPECT_EQ(model_.count(), model_.total());
}

}  // namespace
}  // namespace wetfront::ui
