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

}  // namespace
}  // namespace wetfront::ui
