// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/history_view_model.h"

#include <QCoreApplication>
#include <algorithm>

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

TEST_F(HistoryViewModelTest, a_house_that_gets_worse_is_to_be_visited_again_after_half_a_year) {
    EXPECT_EQ(history_.nextVisit(), QString{});
    ASSERT_TRUE(history_.show(house_));
    const auto last = store_.visits_of(house_.id).value().front().started;
    const WallTime due{last.unix_ms + 182LL * 86'400'000, last.utc_offset_minutes};
    EXPECT_EQ(history_.nextVisit(), QStringLiteral("Next visit by ") + formatter_.date(due) +
                                        QStringLiteral(": its wetting gets worse over the years."));
}

TEST_F(HistoryViewModelTest, what_to_do_stands_with_its_cautions_where_something_gets_worse) {
    ASSERT_TRUE(history_.show(house_));
    EXPECT_TRUE(
        bank(0).value(QStringLiteral("remedy")).toString().startsWith(QStringLiteral("What to do: ")));
    EXPECT_EQ(history_.cautions().size(), 6);
    ASSERT_TRUE(history_.show(file_.house));
    EXPECT_TRUE(history_.cautions().isEmpty());
}

TEST_F(HistoryViewModelTest, the_first_chart_is_that_of_the_wet_through_time_that_gets_worse) {
    ASSERT_TRUE(history_.show(house_));
    const auto words = bank(0).value(QStringLiteral("series")).toList();
    const auto found = std::ranges::find_if(words, [&](const QVariant& each) {
        return each.toMap().value(QStringLiteral("index")).toInt() == history_.first();
    });
    ASSERT_NE(found, words.end());
    EXPECT_TRUE(found->toMap()
                    .value(QStringLiteral("words"))
                    .toString()
                    .startsWith(QStringLiteral("Wet-through time rises")));
    EXPECT_TRUE(found->toMap().value(QStringLiteral("worse")).toBool());
    ASSERT_TRUE(history_.show(file_.house));
    EXPECT_EQ(history_.first(), -1);
}

TEST_F(HistoryViewModelTest, the_chart_has_a_point_a_visit_and_the_table_the_same_the_latest_first) {
    ASSERT_TRUE(history_.show(house_));
    const auto chart = history_.chart(history_.first());
    const auto picture = chart.value(QStringLiteral("picture")).toMap();
    const auto points = picture.value(QStringLiteral("lines"))
                            .toList()
                            .front()
                            .toMap()
                            .value(QStringLiteral("points"))
                            .toList();
    ASSERT_EQ(points.size(), 6);
    for (int year = 0; year < 6; ++year) {
        const auto point = points.at(year).toMap();
        EXPECT_DOUBLE_EQ(point.value(QStringLiteral("value")).toDouble(), 110.0 + 10.0 * year);
        EXPECT_GT(point.value(QStringLiteral("half")).toDouble(), 0.0);
        EXPECT_TRUE(point.value(QStringLiteral("words"))
                        .toString()
                        .contains(QStringLiteral("%1 s ± ").arg(110 + 10 * year)));
    }
    EXPECT_NEAR(points.at(5).toMap().value(QStringLiteral("day")).toDouble() -
                    points.at(0).toMap().value(QStringLiteral("day")).toDouble(),
                5 * 365.25, 1e-6);
    const auto rows = chart.value(QStringLiteral("rows")).toList();
    ASSERT_EQ(rows.size(), 6);
    EXPECT_TRUE(
        rows.front().toMap().value(QStringLiteral("text")).toString().startsWith(QStringLiteral("160 s")));
    const auto trend = picture.value(QStringLiteral("trend")).toMap();
    EXPECT_NEAR(trend.value(QStringLiteral("slope")).toDouble() * 365.25, 10.0, 1e-6);
    EXPECT_NEAR(trend.value(QStringLiteral("atMiddle")).toDouble(), 135.0, 1e-6);
    EXPECT_GE(picture.value(QStringLiteral("seasons")).toList().size(), 5);
    EXPECT_TRUE(
        picture.value(QStringLiteral("title")).toString().startsWith(QStringLiteral("Wet-through time, s")));
    EXPECT_TRUE(history_.chart(-1).isEmpty());
    EXPECT_TRUE(history_.chart(99).isEmpty());
}

TEST_F(HistoryViewModelTest, an_event_is_on_the_chart_and_in_the_table_and_ends_the_trend) {
    Maintenance done{Id{"pads"},
                     store_.visit(Id{"visit-4"}).value().started,
                     Upkeep::new_pads,
                     {house_.banks.front().id},
                     {},
                     {}};
    done.on.unix_ms -= std::int64_t{86'400'000} * 30;
    house_.maintenance = {done};
    ASSERT_TRUE(history_.show(house_));
    EXPECT_TRUE(all_words(0).contains(QStringLiteral("(New pads): too few visits for a trend, 2 of 5.")))
        << all_words(0).toStdString();
    const auto chart = history_.chart(history_.first());
    const auto picture = chart.value(QStringLiteral("picture")).toMap();
    EXPECT_FALSE(picture.contains(QStringLiteral("trend")));
    ASSERT_EQ(picture.value(QStringLiteral("events")).toList().size(), 1);
    const auto rows = chart.value(QStringLiteral("rows")).toList();
    ASSERT_EQ(rows.size(), 7);
    EXPECT_EQ(rows.at(2).toMap().value(QStringLiteral("text")).toString(), QStringLiteral("New pads"));
    EXPECT_TRUE(rows.at(2).toMap().value(QStringLiteral("event")).toBool());
}

TEST_F(HistoryViewModelTest, the_charts_follow_the_readers_units) {
    auto file = store_.visit_file(Id{"visit-5"}).value();
    file.visit.id = Id{"visit-flow"};
    file.visit.marks.clear();
    file.visit.started.unix_ms += 86'400'000;
    file.visit.conditions.flows.push_back({file.house.pumps.front().id, test::typed<VolumeFlow>("60 L/min")});
    ASSERT_TRUE(store_.add(file));
    ASSERT_TRUE(history_.show(house_));
    const auto flow_chart = [&] {
        for (int i = 0;; ++i) {
            const auto picture = history_.chart(i).value(QStringLiteral("picture")).toMap();
            if (picture.isEmpty() ||
                picture.value(QStringLiteral("title")).toString().startsWith(QStringLiteral("Flow"))) {
                return picture;
            }
        }
    };
    const auto value = [](const QVariantMap& picture) {
        return picture.value(QStringLiteral("lines"))
            .toList()
            .front()
            .toMap()
            .value(QStringLiteral("points"))
            .toList()
            .front()
            .toMap()
            .value(QStringLiteral("value"))
            .toDouble();
    };
    EXPECT_NEAR(value(flow_chart()), 15.8503, 1e-3) << "gpm: 60 L/min over 3.785411784";
    formatter_.set_units(UnitSystem::si);
    EXPECT_NEAR(value(flow_chart()), 60.0, 1e-9);
}

TEST_F(HistoryViewModelTest, settings_are_charted_in_steps_and_their_changes_told) {
    TimerSettings left;
    left.timer = house_.timers.front().id;
    left.period = test::typed<Duration>("5 min");
    for (const auto& [visit, base] : {std::pair{"visit-0", "90 s"}, {"visit-3", "110 s"}}) {
        auto stored = store_.visit(Id{visit}).value();
        left.base_on_time = test::typed<Duration>(base);
        stored.left = {left};
        ASSERT_TRUE(store_.save(stored));
    }
    ASSERT_TRUE(history_.show(house_));
    ASSERT_EQ(history_.timers().size(), 1);
    EXPECT_EQ(history_.timers().front().toMap().value(QStringLiteral("summary")).toString(),
              QStringLiteral("visits: 2, with changes: 1"));
    const auto chart = history_.settingsChart(0);
    EXPECT_EQ(chart.value(QStringLiteral("legend")).toList().size(), 2) << "period and base on-time";
    EXPECT_TRUE(chart.value(QStringLiteral("picture")).toMap().value(QStringLiteral("stepped")).toBool());
    const auto rows = chart.value(QStringLiteral("rows")).toList();
    ASSERT_EQ(rows.size(), 2);
    EXPECT_EQ(rows.front().toMap().value(QStringLiteral("text")).toString(),
              QStringLiteral("Changed. Base on-time: 90 s, then 110 s"));
}

TEST_F(HistoryViewModelTest, the_houses_of_a_farm_are_read_one_by_one_and_stand_on_one_chart) {
    auto neighbour = store_.visit_file(Id{"visit-0"}).value();
    neighbour.house.id = Id{"neighbour"};
    neighbour.house.name = "House Next";
    neighbour.visit.id = Id{"visit-next"};
    neighbour.visit.house = neighbour.house.id;
    for (auto& mark : neighbour.visit.marks) {
        mark.id.text += "-next";
    }
    ASSERT_TRUE(store_.add(neighbour));
    ASSERT_TRUE(history_.show(house_));
    EXPECT_TRUE(history_.hasNeighbours());
    EXPECT_TRUE(history_.comparable().isEmpty());
    history_.compare();
    EXPECT_FALSE(history_.comparing().isEmpty());
    while (!history_.comparing().isEmpty()) {
        QCoreApplication::processEvents();
    }
    EXPECT_EQ(history_.comparable().size(), 3) << "fill, wetting and wet-through";
    const auto chart = history_.comparison(QStringLiteral("wet-through"));
    const auto legend = chart.value(QStringLiteral("legend")).toList();
    ASSERT_EQ(legend.size(), 2);
    EXPECT_NE(legend.at(0).toMap().value(QStringLiteral("sign")),
              legend.at(1).toMap().value(QStringLiteral("sign")));
    QStringList names;
    for (const auto& each : legend) {
        names.append(each.toMap().value(QStringLiteral("text")).toString());
    }
    EXPECT_TRUE(names.contains(QStringLiteral("House Next, Bank 1"))) << names.join('|').toStdString();
    EXPECT_EQ(chart.value(QStringLiteral("picture")).toMap().value(QStringLiteral("lines")).toList().size(),
              2);
    history_.compare();
    history_.stopComparing();
    EXPECT_TRUE(history_.comparing().isEmpty());
    ASSERT_TRUE(history_.show(file_.house));
    EXPECT_TRUE(history_.comparable().isEmpty()) << "another house was opened";
}

TEST_F(HistoryViewModelTest, a_house_of_which_nothing_was_measured_has_no_bank_in_it) {
    ASSERT_TRUE(history_.show(file_.house));
    EXPECT_TRUE(history_.banks().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
