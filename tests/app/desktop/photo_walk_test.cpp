// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <QTest>

#include "demo/demo.h"
#include "walk.h"

namespace wetfront::ui {
namespace {

/// An open visit of one house, and a stick with one picture on it.
class PhotoWalkTest : public testing::TestWithParam<QSize> {
protected:
    void SetUp() override {
        QImage picture{800, 600, QImage::Format_RGB32};
        picture.fill(QColor{0, 140, 60});
        ASSERT_TRUE(picture.save(stick_.filePath(QStringLiteral("pad.jpg")), "JPEG"));
        VisitFile file = example_visit();
        file.visit.id = Id{"visit-at-hand"};
        file.visit.signatures.clear();
        bank_ = QString::fromStdString(file.house.banks.front().name);
        ASSERT_TRUE(walk_.store().add(file));
        walk_.session().openVisit(QStringLiteral("visit-at-hand"));
        walk_.go_to(Step::conditions);
    }
    [[nodiscard]] std::vector<Photo> photos() {
        return walk_.store().visit(Id{"visit-at-hand"}).value().photos;
    }
    bool comes(const QString& name) {
        return QTest::qWaitFor([&] { return walk_.hand().shows(name); }, 20'000);
    }

    QTemporaryDir stick_;
    Walk walk_{GetParam(), {}, [this] { return QStringList{stick_.path()}; }};
    QString bank_;
};

TEST_P(PhotoWalkTest, a_photo_is_added_to_a_bank_without_typing_and_taken_out_again) {
    walk_.hand().click(QStringLiteral("Add a photo"));
    ASSERT_TRUE(comes(QStringLiteral("Picture pad.jpg")));
    walk_.hand().click(QStringLiteral("Picture pad.jpg"));
    walk_.hand().click(bank_);
    walk_.hand().click(QStringLiteral("Add this photo"));
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos().front().bank, example_visit().house.banks.front().id);
    ASSERT_TRUE(comes(QStringLiteral("Photo 1. %1").arg(bank_)));
    walk_.hand().click(QStringLiteral("Take photo 1 out"));
    EXPECT_TRUE(photos().empty());
}

TEST_P(PhotoWalkTest, leaving_the_panel_adds_nothing) {
    walk_.hand().click(QStringLiteral("Add a photo"));
    ASSERT_TRUE(comes(QStringLiteral("Picture pad.jpg")));
    walk_.hand().click(QStringLiteral("Picture pad.jpg"));
    walk_.hand().click(QStringLiteral("Cancel"));
    EXPECT_TRUE(photos().empty());
}

INSTANTIATE_TEST_SUITE_P(Tablets, PhotoWalkTest, testing::Values(QSize{1024, 600}, QSize{600, 1024}),
                         [](const auto& at) {
                             return at.param.width() > at.param.height() ? "landscape" : "portrait";
                         });

}  // namespace
}  // namespace wetfront::ui
