// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

const QString fold = QStringLiteral("The hottest day, hour by hour");
const QString picture = QStringLiteral(
    "the hottest day: air outside, behind the pads and in the house, wet share of the pads, pump runs");

/// The demo's example visit, open.
class DayWalkTest : public testing::TestWithParam<QSize> {
protected:
    void SetUp() override {
        VisitFile file = example_visit();
        file.visit.id = Id{"visit-at-hand"};
        file.visit.signatures.clear();
        ASSERT_TRUE(walk_.store().add(file));
    }
    bool comes(const QString& name) {
        return QTest::qWaitFor([&] { return walk_.hand().shows(name); }, 10'000);
    }

    Walk walk_{GetParam()};
};

TEST_P(DayWalkTest, advice_shows_what_the_present_settings_cost_on_the_hottest_day) {
    walk_.session().openVisit(QStringLiteral("visit-at-hand"));
    walk_.go_to(Step::advice);
    walk_.hand().click(fold);
    ASSERT_TRUE(comes(picture));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("Water pumped")));
    const auto& day = *walk_.session().visit()->day();
    EXPECT_TRUE(walk_.hand().shows(day.sentence())) << day.sentence().toStdString();
    const QRectF place = walk_.hand().find(picture).place();
    EXPECT_LE(place.width(), GetParam().width());
    EXPECT_GT(place.width(), 0.7 * GetParam().width());
}

TEST_P(DayWalkTest, the_house_page_shows_the_day_of_its_latest_visit) {
    const auto house = QString::fromStdString(example_visit().house.id.text);
    walk_.session().openHouse(house);
    walk_.hand().click(fold);
    EXPECT_TRUE(comes(picture));
}

INSTANTIATE_TEST_SUITE_P(Screens, DayWalkTest, testing::Values(QSize(1024, 600), QSize(600, 1024)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
