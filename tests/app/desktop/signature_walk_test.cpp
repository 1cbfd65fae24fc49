// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QPointingDevice>
#include <QProcess>
#include <QTest>
#include <memory>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

const QString field_name = QStringLiteral("Field to sign on, with finger, glove or pen");

/// An unsigned visit with a technician and a grower, at its sheet.
class SignatureWalkTest : public testing::TestWithParam<QSize> {
protected:
    void SetUp() override {
        VisitFile file = example_visit();
        file.visit.id = Id{"visit-at-hand"};
        file.visit.signatures.clear();
        file.visit.marks.clear();
        file.visit.persons = {{"Jo Penn", "technician"}, {"Pat Quill", "grower"}};
        const auto added = walk_.store().add(file);
        ASSERT_TRUE(added) << added.error().text();
        walk_.session().openVisit(QStringLiteral("visit-at-hand"));
        walk_.go_to(Step::sheet);
    }
    QQuickWindow& window() { return *walk_.hand().everything().front().item->window(); }
    /// A place on the field, in shares of it.
    QPoint at(double x, double y) {
        const QRectF field = walk_.hand().find(field_name).place();
        return {static_cast<int>(field.x() + x * field.width()),
                static_cast<int>(field.y() + y * field.height())};
    }
    /// Within a pixel of it.
    bool is_ink(QPoint place) {
        const QImage seen = window().grabWindow();
        int darkest = 255;
        for (int y = -1; y <= 1; ++y) {
            for (int x = -1; x <= 1; ++x) {
                darkest = std::min(darkest, qGray(seen.pixel(place + QPoint{x, y})));
            }
        }
        return darkest < 100;
    }
    void draw_with_the_mouse(const std::vector<QPoint>& places) {
        QTest::mousePress(&window(), Qt::LeftButton, Qt::NoModifier, places.front());
        for (const QPoint place : places) {
            QTest::mouseMove(&window(), place);
        }
        QTest::mouseRelease(&window(), Qt::LeftButton, Qt::NoModifier, places.back());
    }
    void sign_as(const QString& name) {
        walk_.hand().click(QStringLiteral("Sign as %1").arg(name));
        if (walk_.hand().shows(QStringLiteral("Sign all the same"))) {
            walk_.hand().click(QStringLiteral("Sign all the same"));
        }
    }
    bool says(const QString& words) {
        const auto heard = walk_.hand().everything();
        return std::ranges::any_of(heard, [&](const Heard& each) { return each.name.contains(words); });
    }

    Walk walk_{GetParam()};
};

// A pixel of a field some 560 wide is 4.5 of its units.
TEST_P(SignatureWalkTest, what_is_drawn_in_the_window_is_signed_kept_and_printed) {
    walk_.hand().click(QStringLiteral("Draw the signature: Jo Penn, technician"));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("Signature of Jo Penn, technician")));
    EXPECT_TRUE(says(QStringLiteral("not a qualified electronic signature")));
    const QRectF field = walk_.hand().find(field_name).place();
    EXPECT_GT(field.width(), 0.75 * GetParam().width()) << "a large field";
    EXPECT_TRUE(QRectF(QPointF{}, GetParam()).contains(field));

    const std::vector<QPoint> places{at(0.2, 0.3), at(0.4, 0.8), at(0.7, 0.25)};
    QTest::mousePress(&window(), Qt::LeftButton, Qt::NoModifier, places[0]);
    QTest::mouseMove(&window(), places[1]);
    EXPECT_TRUE(is_ink(places[0]));
    EXPECT_TRUE(is_ink(places[1])) << "drawn as it comes";
    EXPECT_FALSE(is_ink(places[2]));
    QTest::mouseMove(&window(), places[2]);
    QTest::mouseRelease(&window(), Qt::LeftButton, Qt::NoModifier, places[2]);
    EXPECT_TRUE(is_ink(places[1])) << "still there";
    walk_.hand().click(QStringLiteral("Take this signature"));
    EXPECT_TRUE(walk_.hand().shows(QStringLiteral("signature of Jo Penn, technician")));
    EXPECT_TRUE(says(QStringLiteral("No signature is drawn by: Pat Quill, grower.")));
    EXPECT_FALSE(walk_.stored_visit().visit.is_signed());

    sign_as(QStringLiteral("Jo Penn"));
    const auto signatures = walk_.stored_visit().visit.signatures;
    ASSERT_EQ(signatures.size(), 1U);
    EXPECT_EQ(signatures[0].person, (Person{"Jo Penn", "technician"}));
    ASSERT_EQ(signatures[0].drawn.size(), 1U);
    const auto& points = signatures[0].drawn[0].points;
    ASSERT_EQ(points.size(), 3U);
    for (std::size_t i = 0; i < points.size(); ++i) {
        EXPECT_NEAR(points[i].x, (places[i].x() - field.x()) * 2500.0 / field.width(), 1.0) << i;
        EXPECT_NEAR(points[i].y, (places[i].y() - field.y()) * 1000.0 / field.height(), 1.0) << i;
    }

    walk_.hand().click(QStringLiteral("Save as PDF"));
    const auto files = QDir{walk_.documents()}.entryInfoList({QStringLiteral("*.pdf")});
    ASSERT_EQ(files.size(), 1);
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {files.front().filePath(), QStringLiteral("-")});
    ASSERT_TRUE(reader.waitForFinished());
    const QString text = QString::fromUtf8(reader.readAllStandardOutput());
    EXPECT_TRUE(text.contains(QStringLiteral("drawn on the screen"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Name, signature, date"))) << "the grower's line";
    EXPECT_FALSE(text.contains(QStringLiteral("DRAFT")));
}

TEST_P(SignatureWalkTest, a_finger_signs_while_the_hand_rests_and_a_touch_alone_is_none) {
    const std::unique_ptr<QPointingDevice> glass{QTest::createTouchDevice()};
    walk_.hand().click(QStringLiteral("Draw the signature: Pat Quill, grower"));
    auto& w = window();
    const auto touch = [&] { return QTest::touchEvent(&w, glass.get()); };
    const QPoint palm = at(0.9, 0.9);
    touch().press(1, palm);
    touch().release(1, palm);
    walk_.hand().click(QStringLiteral("Take this signature"));
    EXPECT_TRUE(says(QStringLiteral("Too little for a signature")));
    walk_.hand().click(QStringLiteral("Clear"));

    const QPoint from = at(0.2, 0.5);
    const QPoint to = at(0.6, 0.4);
    touch().press(1, palm);
    touch().stationary(1).press(2, from);
    touch().stationary(1).move(2, to);
    touch().release(1, palm).release(2, to);
    walk_.hand().click(QStringLiteral("Take this signature"));
    sign_as(QStringLiteral("Jo Penn"));
    const auto signatures = walk_.stored_visit().visit.signatures;
    ASSERT_EQ(signatures.size(), 2U);
    EXPECT_EQ(signatures[0].person.name, "Pat Quill");
    ASSERT_EQ(signatures[0].drawn.size(), 1U) << "the hand left no line";
    EXPECT_EQ(signatures[1].person.name, "Jo Penn");
    EXPECT_TRUE(signatures[1].drawn.empty());
}

TEST_P(SignatureWalkTest, cancelling_keeps_what_was_drawn_before_and_a_change_takes_it_off) {
    walk_.hand().click(QStringLiteral("Draw the signature: Jo Penn, technician"));
    draw_with_the_mouse({at(0.2, 0.3), at(0.7, 0.6)});
    walk_.hand().click(QStringLiteral("Take this signature"));
    const auto first_signer = [this] {
        return walk_.session().visit()->sheet()->signatures()->signers().front().toMap();
    };
    const auto before = first_signer();
    ASSERT_EQ(before["strokes"].toStringList().size(), 1);
    for (const bool by_key : {true, false}) {
        walk_.hand().click(QStringLiteral("Draw again: Jo Penn, technician"));
        ASSERT_TRUE(walk_.hand().shows(field_name));
        walk_.hand().click(QStringLiteral("Clear"));
        draw_with_the_mouse({at(0.1, 0.9), at(0.9, 0.9)});
        if (by_key) {
            walk_.hand().key(Qt::Key_Escape);
        } else {
            walk_.hand().click(QStringLiteral("Cancel"));
        }
        EXPECT_FALSE(walk_.hand().shows(field_name));
        EXPECT_EQ(walk_.session().place(), QStringLiteral("visit"));
        EXPECT_EQ(first_signer(), before) << by_key;
    }
    walk_.hand().click(QStringLiteral("Strainer to be cleaned"));
    EXPECT_FALSE(walk_.hand().shows(QStringLiteral("signature of Jo Penn, technician")));
    EXPECT_TRUE(says(QStringLiteral("is taken off. Sign again.")));
}

TEST_P(SignatureWalkTest, the_keyboard_alone_signs_without_drawing) {
    walk_.hand()
        .find(QStringLiteral("Draw the signature: Jo Penn, technician"))
        .item->forceActiveFocus(Qt::TabFocusReason);
    walk_.hand().key(Qt::Key_Return);
    ASSERT_TRUE(walk_.hand().shows(field_name)) << "the field can be opened, read and left";
    EXPECT_EQ(walk_.hand().find(field_name).description, QStringLiteral("Nothing is drawn yet."));
    walk_.hand().key(Qt::Key_Escape);
    for (int i = 0; i < 3 && walk_.hand().focused() != QStringLiteral("Sign as Jo Penn"); ++i) {
        walk_.hand().key(Qt::Key_Tab);
    }
    ASSERT_EQ(walk_.hand().focused(), QStringLiteral("Sign as Jo Penn"));
    walk_.hand().key(Qt::Key_Return);
    if (walk_.hand().shows(QStringLiteral("Sign all the same"))) {
        walk_.hand().key(Qt::Key_Tab);
        walk_.hand().key(Qt::Key_Return);
    }
    const auto signatures = walk_.stored_visit().visit.signatures;
    ASSERT_EQ(signatures.size(), 1U);
    EXPECT_EQ(signatures[0].person.name, "Jo Penn");
    EXPECT_TRUE(signatures[0].drawn.empty());
}

INSTANTIATE_TEST_SUITE_P(Screens, SignatureWalkTest, testing::Values(QSize(1024, 600), QSize(600, 1024)),
                         [](const auto& size) {
                             return size.param.width() < size.param.height() ? "portrait" : "landscape";
                         });

}  // namespace
}  // namespace wetfront::ui
