// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/day_view_model.h"

#include <QDir>
#include <QFile>
#include <QTest>

#include "demo/demo.h"
#include "format/formatter.h"

namespace wetfront::ui {
namespace {

class DayViewModelTest : public testing::Test {
protected:
    [[nodiscard]] static QVariantMap plan(const DayViewModel& day, int index) {
        return day.picture()["plans"].toList().at(index).toMap();
    }
    [[nodiscard]] double most_wet(int index) const {
        double most = 0.0;
        for (const auto& share : plan(day_, index)["wetShare"].toList()) {
            most = std::max(most, share.toDouble());
        }
        return most;
    }
    QString weather_file(const QString& name, const QByteArray& text) {
        QFile file{folder_.filePath(name)};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    void simulate(const QString& file) {
        day_.simulate(file);
        EXPECT_TRUE(QTest::qWaitFor([&] { return !day_.busy(); }, 60'000));
    }
    /// Two days of one hot hour after another.
    [[nodiscard]] static QByteArray two_hot_days() {
        QByteArray text{"time,dry bulb [degC],relative humidity [%]\n"};
        for (int hour = 0; hour < 49; ++hour) {
            text += QStringLiteral("2026-07-%1T%2:00-06:00,%3,30\n")
                        .arg(1 + hour / 24, 2, 10, QLatin1Char{'0'})
                        .arg(hour % 24, 2, 10, QLatin1Char{'0'})
                        .arg(hour % 24 > 8 && hour % 24 < 20 ? 37 : 22)
                        .toLatin1();
        }
        return text;
    }

    QTemporaryDir folder_;
    Formatter formatter_{UnitSystem::si};
    std::optional<VisitFile> file_ = example_visit();
    DayViewModel day_{formatter_, [this] { return file_; }, [this] { return QStringList{folder_.path()}; },
                      nullptr};
};

TEST_F(DayViewModelTest, nothing_is_worked_out_before_it_is_in_sight) {
    day_.follow();
    QCoreApplication::processEvents();
    EXPECT_TRUE(day_.picture().isEmpty());
    day_.show();
    EXPECT_FALSE(day_.picture().isEmpty());
}

TEST_F(DayViewModelTest, found_and_advised_are_laid_over_each_other_with_what_they_come_to) {
    day_.show();
    EXPECT_EQ(day_.missing(), QStringList{});
    ASSERT_EQ(day_.picture()["plans"].toList().size(), 2);
    EXPECT_EQ(plan(day_, 0)["label"], QStringLiteral("found"));
    EXPECT_EQ(plan(day_, 1)["label"], QStringLiteral("advised"));
    EXPECT_EQ(plan(day_, 1)["house"].toList().size(), day_.picture()["outside"].toList().size());
    EXPECT_GT(most_wet(1), 0.9);
    EXPECT_FALSE(day_.sentence().isEmpty());
    EXPECT_GE(day_.rows().size(), 8);
}

TEST_F(DayViewModelTest, what_a_finger_tries_stands_in_place_of_the_advice) {
    day_.show();
    TimerSettings tried = file_->visit.found.front();
    tried.period = Entered<Duration>::of(seconds(600.0));
    tried.base_on_time = Entered<Duration>::of(seconds(60.0));
    tried.on_time_ceiling = Entered<Duration>::of(seconds(60.0));
    tried.trim_rows.clear();
    const auto advised = day_.rows();
    day_.follow_tried(tried);
    QCoreApplication::processEvents();
    EXPECT_EQ(day_.second(), QStringLiteral("what if"));
    EXPECT_FALSE(day_.sentence().contains(QStringLiteral("advised"))) << day_.sentence().toStdString();
    EXPECT_NE(day_.rows(), advised);
    day_.follow_tried({});
    QCoreApplication::processEvents();
    EXPECT_EQ(day_.rows(), advised);
}

TEST_F(DayViewModelTest, what_lacks_for_a_day_is_told) {
    file_->farm.design_wet_bulb.reset();
    day_.show();
    EXPECT_TRUE(day_.picture().isEmpty());
    EXPECT_FALSE(day_.missing().isEmpty());
    file_.reset();
    day_.follow();
    QCoreApplication::processEvents();
    EXPECT_TRUE(day_.picture().isEmpty()) << "no visit yet";
}

TEST_F(DayViewModelTest, a_cheaper_cycle_is_searched_and_told_with_what_it_saves) {
    day_.show();
    day_.searchCheapest();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !day_.busy(); }, 60'000));
    ASSERT_EQ(day_.cheapest().size(), 1);
    EXPECT_TRUE(day_.cheapest().front().contains(QStringLiteral("less water is pumped than as advised")))
        << day_.cheapest().front().toStdString();
    day_.follow();
    EXPECT_TRUE(day_.cheapest().isEmpty()) << "the visit has changed";
}

TEST_F(DayViewModelTest, a_season_of_a_weather_file_is_worked_out_beside_the_window) {
    const auto file = weather_file(QStringLiteral("weather.csv"), two_hot_days());
    day_.show();
    ASSERT_EQ(day_.weatherFiles().size(), 1);
    simulate(file);
    EXPECT_GE(day_.seasonRows().size(), 8) << day_.seasonWords().toStdString();
    EXPECT_FALSE(day_.seasonWords().isEmpty());
}

TEST_F(DayViewModelTest, a_weather_file_that_cannot_be_used_is_told_with_its_place) {
    auto text = two_hot_days();
    text.replace("37,30", "97,30");
    simulate(weather_file(QStringLiteral("weather.csv"), text));
    EXPECT_TRUE(day_.seasonRows().isEmpty());
    EXPECT_TRUE(day_.seasonWords().contains(QStringLiteral("line 11"))) << day_.seasonWords().toStdString();
}

TEST_F(DayViewModelTest, a_link_is_no_weather_file) {
    const auto file = weather_file(QStringLiteral("weather.csv"), two_hot_days());
    const auto link = folder_.filePath(QStringLiteral("weather-link.csv"));
    ASSERT_TRUE(QFile::link(file, link));
    day_.lookForWeather();
    EXPECT_EQ(day_.weatherFiles().size(), 1);
    simulate(link);
    EXPECT_TRUE(day_.seasonRows().isEmpty());
}

}  // namespace
}  // namespace wetfront::ui
