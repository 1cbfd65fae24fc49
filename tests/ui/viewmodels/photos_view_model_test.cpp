// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/photos_view_model.h"

#include <QDir>
#include <QTest>

#include "desk.h"

namespace wetfront::ui {
namespace {

/// A stick with one picture on it.
class PhotosViewModelTest : public Desk {
protected:
    PhotosViewModelTest() {
        QDir{}.mkpath(stick_);
        QImage picture{400, 300, QImage::Format_RGB32};
        picture.fill(Qt::darkGreen);
        EXPECT_TRUE(picture.save(stick_ + QStringLiteral("/pad.jpg"), "JPEG"));
        photos_.look();
        EXPECT_TRUE(QTest::qWaitFor([&] { return !photos_.looking(); }, 20'000));
    }
    [[nodiscard]] QString bank() const { return QString::fromStdString(file_.house.banks[0].id.text); }
    [[nodiscard]] static QString picture_of(const QVariantList& list) {
        return list.front().toMap()["picture"].toString();
    }

    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    VisitRecord record_{context_, file_, nullptr};
    PhotosViewModel photos_{record_, [this] { return QStringList{stick_}; }, nullptr};
};

TEST_F(PhotosViewModelTest, a_picture_is_chosen_by_its_looks_and_kept_with_its_bank) {
    ASSERT_EQ(photos_.offered().size(), 1);
    EXPECT_EQ(photos_.offered().front().toMap()["name"], QStringLiteral("pad.jpg"));
    EXPECT_FALSE(photos_.photo(picture_of(photos_.offered())).isNull());

    EXPECT_EQ(photos_.add(0, bank(), {}, false), QString{});
    ASSERT_EQ(stored().photos.size(), 1U);
    EXPECT_EQ(stored().photos[0].bank, file_.house.banks[0].id);
    EXPECT_TRUE(photos_.photos().front().toMap()["title"].toString().contains(bank_name(0)));
    EXPECT_EQ(photos_.photo(picture_of(photos_.photos())).size(), QSize(400, 300));
}

TEST_F(PhotosViewModelTest, the_same_picture_is_not_kept_twice) {
    EXPECT_EQ(photos_.add(0, {}, {}, false), QString{});
    EXPECT_NE(photos_.add(0, {}, {}, false), QString{});
    EXPECT_EQ(stored().photos.size(), 1U);
}

TEST_F(PhotosViewModelTest, a_note_is_kept_and_a_photo_is_taken_out_and_brought_back) {
    EXPECT_EQ(photos_.add(0, {}, {}, false), QString{});
    EXPECT_EQ(photos_.setNote(0, QStringLiteral(" dry streak ")), QString{});
    EXPECT_EQ(stored().photos[0].note, "dry streak");
    EXPECT_EQ(photos_.remove(0), QString{});
    EXPECT_TRUE(stored().photos.empty());
    ASSERT_TRUE(record_.undo());
    ASSERT_EQ(photos_.photos().size(), 1);
    EXPECT_FALSE(photos_.photo(picture_of(photos_.photos())).isNull());
}

TEST_F(PhotosViewModelTest, a_picture_that_is_gone_meanwhile_is_told_and_changes_nothing) {
    ASSERT_TRUE(QFile::remove(stick_ + QStringLiteral("/pad.jpg")));
    EXPECT_TRUE(photos_.add(0, {}, {}, false).contains(QStringLiteral("pad.jpg")));
    EXPECT_TRUE(stored().photos.empty());
    EXPECT_EQ(photos_.photos().size(), 0);
}

TEST_F(PhotosViewModelTest, no_row_and_no_place_that_is_not_there_is_followed) {
    EXPECT_NE(photos_.add(7, {}, {}, false), QString{});
    EXPECT_EQ(photos_.remove(-1), QString{});
    EXPECT_TRUE(photos_.photo(QStringLiteral("offered/99/1")).isNull());
    EXPECT_TRUE(photos_.photo(QStringLiteral("kept/../../etc/passwd")).isNull());
}

TEST_F(PhotosViewModelTest, findings_that_call_for_something_can_be_chosen_once_each) {
    auto settings = left_in_first_timer();
    settings.humidity_cut_off = Entered<Fraction>::of(from_si<Fraction>(0.3));
    record_.visit().found = {settings};
    ASSERT_TRUE(record_.save_visit());
    QStringList rules;
    for (const auto& choice : photos_.findings()) {
        rules.append(choice.toMap()["value"].toString());
    }
    EXPECT_EQ(rules.removeDuplicates(), 0);
    EXPECT_GT(rules.size(), 0);
}

}  // namespace
}  // namespace wetfront::ui
