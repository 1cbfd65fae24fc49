// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QTest>
#include <algorithm>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

constexpr int patience_ms = 60'000;

/// The demo's houses in a real window, and a folder that stands for a stick.
class SheetsWalkTest : public testing::TestWithParam<QSize> {
protected:
    SheetsWalkTest() {
        EXPECT_TRUE(QDir{folder_.path()}.mkdir(QStringLiteral("stick")));
        EXPECT_TRUE(fill_store(walk_.store()));
        walk_.session().openHouse(QStringLiteral("demo-birch"));
    }
    void click(const char* name) { walk_.hand().click(QString::fromUtf8(name)); }
    [[nodiscard]] bool comes_to_say(const char* words) {
        return QTest::qWaitFor(
            [&] {
                return std::ranges::any_of(walk_.hand().everything(), [&](const Heard& each) {
                    return each.name.contains(QString::fromUtf8(words));
                });
            },
            patience_ms);
    }
    [[nodiscard]] QStringList on_stick() const {
        return QDir{stick_ + QStringLiteral("/Wetfront sheets")}.entryList(QDir::Files, QDir::Name);
    }
    [[nodiscard]] QString text_of(const QString& name) const {
        QProcess read;
        read.start(QStringLiteral("pdftotext"),
                   {stick_ + QStringLiteral("/Wetfront sheets/") + name, QStringLiteral("-")});
        EXPECT_TRUE(read.waitForFinished(patience_ms));
        return QString::fromUtf8(read.readAllStandardOutput());
    }

    QTemporaryDir folder_;
    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    Walk walk_{GetParam(), {}, [this] { return QStringList{stick_}; }};
};

TEST_P(SheetsWalkTest, a_farm_goes_onto_a_stick_from_the_houses_list_and_every_page_is_counted) {
    walk_.session().leave();
    click("Sheets");
    ASSERT_EQ(walk_.session().place(), QStringLiteral("sheets"));
    click("Last season, 2025");
    walk_.hand().click(QStringLiteral("Onto ") + stick_);
    ASSERT_TRUE(comes_to_say("Written and read back: "));
    const auto all = demo_visits();
    const auto wanted = std::ranges::count_if(all, [](const VisitFile& file) {
        return file.visit.is_signed() && local_date(file.visit.started).starts_with("2025");
    });
    ASSERT_EQ(on_stick().size(), wanted);
    for (const auto& name : on_stick()) {
        EXPECT_TRUE(text_of(name).contains(QStringLiteral("page 1 of "))) << name.toStdString();
    }
    click("Back");
    EXPECT_EQ(walk_.session().place(), QStringLiteral("houses"));
}

TEST_P(SheetsWalkTest, summaries_of_one_house_in_spanish_go_into_the_folder_of_this_tablet) {
    click("Sheets of these visits");
    click("House Birch");
    click("All days");
    click("Summaries for the grower");
    click("español");
    click("Onto this tablet");
    ASSERT_TRUE(comes_to_say("Written and read back: "));
    const auto files = QDir{walk_.documents()}.entryList({QStringLiteral("*House-Birch*.summary.pdf")});
    EXPECT_EQ(files.size(), 3);
    EXPECT_TRUE(on_stick().isEmpty());
}

TEST_P(SheetsWalkTest, one_press_hands_the_grower_his_sheet_and_his_summary) {
    walk_.session().openVisit(QString::fromStdString(example_visit().visit.id.text));
    walk_.go_to(Step::sheet);
    click("Sheet onto a stick");
    ASSERT_TRUE(comes_to_say("On the stick and read back: "));
    ASSERT_EQ(on_stick().size(), 1);
    click("Summary onto a stick");
    ASSERT_TRUE(comes_to_say(".summary.pdf"));
    ASSERT_EQ(on_stick().size(), 2);
    EXPECT_TRUE(text_of(on_stick().filter(QStringLiteral("summary")).front())
                    .contains(QStringLiteral("What your pads need")));
    EXPECT_FALSE(walk_.hand().shows(QStringLiteral("the summary")));
    click("Look at the summary");
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("the summary")));
    click("Hide the summary");
    EXPECT_FALSE(walk_.hand().shows(QStringLiteral("the summary")));
}

INSTANTIATE_TEST_SUITE_P(Screens, SheetsWalkTest, testing::Values(QSize{1024, 600}, QSize{600, 1024}),
                         [](const testing::TestParamInfo<QSize>& info) {
                             return info.param.width() > info.param.height() ? "landscape" : "portrait";
                         });

}  // namespace
}  // namespace wetfront::ui
