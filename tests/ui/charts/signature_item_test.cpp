// SPDX-License-Identifier: Apache-2.0
#include "items/signature_item.h"

#include <gmock/gmock.h>

#include <QPointingDevice>
#include <QSignalSpy>
#include <QTest>
#include <memory>

#include "seen.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

using namespace test;

/// The field alone in a window: a pixel is five of its units.
class SignatureItemTest : public testing::Test {
protected:
    QQuickWindow& window() { return qml_.window(); }
    SignatureItem& item() { return *item_; }
    bool is_drawn(QPoint at) { return is_line(window().grabWindow().pixel(at)); }
    QStringList drawn() {
        QStringList texts;
        for (const auto& emitted : lines_) {
            texts.append(emitted.front().toString());
        }
        return texts;
    }
    void press(QPoint at) { QTest::mousePress(&window(), Qt::LeftButton, Qt::NoModifier, at); }
    void move(QPoint to) { QTest::mouseMove(&window(), to); }
    void release(QPoint at) { QTest::mouseRelease(&window(), Qt::LeftButton, Qt::NoModifier, at); }

    QmlWindow qml_{QStringLiteral("import QtQuick\nimport Wetfront.Charts\n"
                                  "Rectangle { color: \"white\"; property alias field: one\n"
                                  "SignatureItem { id: one; drawable: true; thickness: 3\n"
                                  "x: 20; y: 30; width: 500; height: 200 } }"),
                   QSize{560, 260}};
    SignatureItem* item_ = qobject_cast<SignatureItem*>(qml_.get("field").value<QObject*>());
    QSignalSpy lines_{item_, &SignatureItem::strokeDrawn};
    std::unique_ptr<QPointingDevice> glass_{QTest::createTouchDevice()};
};

// A pixel of the window less 20 and 30, times 2500 / 500 and 1000 / 200.
TEST_F(SignatureItemTest, points_land_where_they_were_drawn) {
    press({120, 80});
    move({220, 180});
    move({320, 80});
    release({320, 80});
    EXPECT_EQ(drawn(), QStringList{"500,250 1000,750 1500,250"});
}

TEST_F(SignatureItemTest, a_line_is_there_while_it_is_drawn) {
    press({120, 80});
    EXPECT_TRUE(is_drawn({120, 80}));
    move({220, 80});
    EXPECT_TRUE(is_drawn({170, 80}));
    EXPECT_FALSE(is_drawn({320, 180}));
    move({320, 180});
    EXPECT_TRUE(is_drawn({320, 180}));
    EXPECT_TRUE(is_drawn({170, 80})) << "what was there before is still there";
    EXPECT_TRUE(drawn().isEmpty());
    release({320, 180});
    EXPECT_FALSE(is_drawn({170, 80})) << "nobody took it";
}

TEST_F(SignatureItemTest, what_it_is_given_is_shown_and_anew_when_it_changes) {
    item().set_strokes({"500,250 1500,250", "nonsense", "2000,750"});
    EXPECT_EQ(item().strokes(), (QStringList{"500,250 1500,250", "2000,750"}));
    EXPECT_TRUE(is_drawn({220, 80}));
    EXPECT_TRUE(is_drawn({420, 180})) << "a dot";
    item().set_strokes({});
    EXPECT_FALSE(is_drawn({220, 80}));
}

TEST_F(SignatureItemTest, a_line_ends_where_it_leaves_the_field_and_another_begins_where_it_comes_back) {
    press({120, 130});
    move({420, 130});
    move({550, 130});
    move({550, 200});
    move({420, 200});
    move({120, 200});
    release({120, 200});
    EXPECT_EQ(drawn(), (QStringList{"500,500 2000,500", "2000,850 500,850"}));
}

TEST_F(SignatureItemTest, it_is_only_a_picture_unless_it_is_to_be_drawn_on) {
    item().set_drawable(false);
    press({120, 80});
    move({320, 80});
    release({320, 80});
    EXPECT_TRUE(drawn().isEmpty());
}

TEST_F(SignatureItemTest, a_field_that_goes_out_of_sight_forgets_the_line_that_was_begun) {
    press({120, 80});
    move({320, 80});
    item().setVisible(false);
    release({320, 80});
    EXPECT_TRUE(drawn().isEmpty());
}

// All of these moves come before the next frame.
TEST_F(SignatureItemTest, every_move_of_a_quick_finger_counts) {
    QTest::touchEvent(&window(), glass_.get()).press(1, {120, 80});
    for (const QPoint to : {QPoint{170, 180}, {220, 80}, {270, 180}, {320, 80}}) {
        QTest::touchEvent(&window(), glass_.get()).move(1, to);
    }
    QTest::touchEvent(&window(), glass_.get()).release(1, {320, 80});
    EXPECT_EQ(drawn(), QStringList{"500,250 750,750 1000,250 1250,750 1500,250"});
}

TEST_F(SignatureItemTest, a_hand_that_rests_on_the_field_gives_way_to_a_finger_that_draws) {
    QTest::touchEvent(&window(), glass_.get()).press(1, {480, 210});
    QTest::touchEvent(&window(), glass_.get()).move(1, {482, 211});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).press(2, {120, 80});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).move(2, {320, 80});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).release(2, {320, 80});
    QTest::touchEvent(&window(), glass_.get()).release(1, {482, 211});
    EXPECT_EQ(drawn(), QStringList{"500,250 1500,250"});
}

TEST_F(SignatureItemTest, a_hand_that_is_lifted_does_not_end_the_line_of_a_finger) {
    QTest::touchEvent(&window(), glass_.get()).press(1, {480, 210});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).press(2, {120, 80});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).move(2, {320, 80});
    QTest::touchEvent(&window(), glass_.get()).release(1, {480, 210}).stationary(2);
    QTest::touchEvent(&window(), glass_.get()).move(2, {320, 180});
    QTest::touchEvent(&window(), glass_.get()).release(2, {320, 180});
    EXPECT_EQ(drawn(), QStringList{"500,250 1500,250 1500,750"});
}

TEST_F(SignatureItemTest, a_second_finger_does_not_disturb_one_that_draws) {
    QTest::touchEvent(&window(), glass_.get()).press(1, {120, 80});
    QTest::touchEvent(&window(), glass_.get()).move(1, {220, 80});
    QTest::touchEvent(&window(), glass_.get()).stationary(1).press(2, {480, 210});
    QTest::touchEvent(&window(), glass_.get()).move(1, {320, 180}).stationary(2);
    QTest::touchEvent(&window(), glass_.get()).release(1, {320, 180}).release(2, {480, 210});
    EXPECT_EQ(drawn(), QStringList{"500,250 1000,250 1500,750"});
}

TEST_F(SignatureItemTest, a_line_without_end_is_handed_on_in_pieces_that_hang_together) {
    press({20, 30});
    for (int turn = 0; turn < 1100; ++turn) {
        move({70, 40 + turn % 2});
        move({500, 200 - turn % 2});
    }
    release({500, 200});
    ASSERT_EQ(drawn().size(), 2);
    EXPECT_EQ(drawn()[0].split(u' ').last(), drawn()[1].split(u' ').first());
}

}  // namespace
}  // namespace wetfront::ui
