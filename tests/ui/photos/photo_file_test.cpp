// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QColor>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

#include "photos/camera_data.h"
#include "photos/photo_file.h"
#include "records/photo.h"

namespace wetfront::ui::test {
namespace {

using ::testing::HasSubstr;

/// What a camera writes: big-endian, one directory of two entries, the orientation (a quarter turn to the
/// right) and a copyright notice, 315 in CP-3451 being the artist's name. Laid out by hand after CP-3451.
QByteArray made_camera_data() {
    const QByteArray head{"Exif\0\0MM\0*\0\0\0\x08", 14};
    const QByteArray directory{
        "\0\x02"
        "\x01\x12\0\x03\0\0\0\x01\0\x06\0\0"
        "\x01\x3B\0\x02\0\0\0\x0E\0\0\0\x26"
        "\0\0\0\0",
        2 + 2 * 12 + 4};
    return head + directory + QByteArray{"Made-up Artist", 14};
}

class PhotoFileTest : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const QString& name) const { return folder_.filePath(name); }

    /// Left half red, right half blue.
    [[nodiscard]] static QImage two_colours(QSize size) {
        QImage picture{size, QImage::Format_RGB32};
        picture.fill(Qt::blue);
        QPainter{&picture}.fillRect(0, 0, size.width() / 2, size.height(), Qt::red);
        return picture;
    }
    QString written(const QString& name, const QByteArray& bytes) const {
        QFile file{path(name)};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path(name);
    }
    [[nodiscard]] QByteArray jpeg_bytes(QSize size) const {
        const auto name = path(QStringLiteral("plain.jpg"));
        EXPECT_TRUE(two_colours(size).save(name, "JPEG", 95));
        QFile file{name};
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
    [[nodiscard]] static QByteArray taken(const QString& file, CameraData data) {
        const auto photo = photo_of(file, data);
        EXPECT_TRUE(photo) << photo.error().text();
        return photo ? photo.value() : QByteArray{};
    }
    static std::string refused(const QString& file) {
        const auto photo = photo_of(file, CameraData::dropped);
        EXPECT_FALSE(photo);
        return photo ? std::string{} : photo.error().text();
    }

private:
    QTemporaryDir folder_;
};

TEST_F(PhotoFileTest, a_large_picture_is_scaled_and_keeps_its_shape) {
    const auto file = written(QStringLiteral("large.jpg"), jpeg_bytes({4000, 3000}));
    const auto kept = QImage::fromData(taken(file, CameraData::dropped), "JPEG");
    EXPECT_EQ(kept.size(), QSize(1280, 960));
}

TEST_F(PhotoFileTest, a_small_picture_is_not_blown_up) {
    const auto file = written(QStringLiteral("small.jpg"), jpeg_bytes({64, 48}));
    EXPECT_EQ(QImage::fromData(taken(file, CameraData::dropped), "JPEG").size(), QSize(64, 48));
}

TEST_F(PhotoFileTest, a_picture_taken_with_the_tablet_on_its_side_stands_upright) {
    const auto turned = with_camera_data(jpeg_bytes({800, 600}), made_camera_data());
    const auto kept =
        QImage::fromData(taken(written(QStringLiteral("turned.jpg"), turned), CameraData::dropped), "JPEG");
    ASSERT_EQ(kept.size(), QSize(600, 800));
    // Orientation 6: the first column as stored, red, is the top row as seen.
    EXPECT_GT(kept.pixelColor(300, 100).red(), 200);
    EXPECT_GT(kept.pixelColor(300, 700).blue(), 200);
}

TEST_F(PhotoFileTest, place_time_and_owner_stay_out_of_the_record) {
    const auto file =
        written(QStringLiteral("owner.jpg"), with_camera_data(jpeg_bytes({80, 60}), made_camera_data()));
    const auto kept = taken(file, CameraData::dropped);
    EXPECT_TRUE(camera_data(kept).isEmpty());
    EXPECT_FALSE(kept.contains("Made-up Artist"));
}

TEST_F(PhotoFileTest, they_are_kept_on_purpose_and_the_picture_is_turned_once) {
    const auto file =
        written(QStringLiteral("owner.jpg"), with_camera_data(jpeg_bytes({80, 60}), made_camera_data()));
    const auto kept = taken(file, CameraData::kept);
    EXPECT_TRUE(camera_data(kept).contains("Made-up Artist"));
    const auto again = taken(written(QStringLiteral("again.jpg"), kept), CameraData::dropped);
    EXPECT_EQ(QImage::fromData(again, "JPEG").size(), QSize(60, 80)) << "it was upright already";
}

TEST_F(PhotoFileTest, texts_of_a_png_stay_out_too_and_what_shows_through_becomes_white) {
    QImage glass{40, 30, QImage::Format_ARGB32};
    glass.fill(Qt::transparent);
    glass.setText(QStringLiteral("Author"), QStringLiteral("Made-up Artist"));
    ASSERT_TRUE(glass.save(path(QStringLiteral("glass.png")), "PNG"));
    const auto kept = taken(path(QStringLiteral("glass.png")), CameraData::dropped);
    EXPECT_FALSE(kept.contains("Made-up Artist"));
    EXPECT_GT(QImage::fromData(kept, "JPEG").pixelColor(20, 15).lightness(), 250);
}

TEST_F(PhotoFileTest, noise_that_hardly_compresses_still_fits_the_record) {
    QImage noise{3000, 3000, QImage::Format_RGB32};
    quint32 state = 1;
    for (int y = 0; y < noise.height(); ++y) {
        for (int x = 0; x < noise.width(); ++x) {
            state = state * 1'664'525U + 1'013'904'223U;
            noise.setPixel(x, y, 0xFF000000U | (state >> 8U));
        }
    }
    ASSERT_TRUE(noise.save(path(QStringLiteral("noise.png")), "PNG"));
    const auto kept = taken(path(QStringLiteral("noise.png")), CameraData::dropped);
    EXPECT_TRUE(is_photo({kept.constData(), static_cast<std::size_t>(kept.size())}));
}

TEST_F(PhotoFileTest, what_is_no_picture_is_refused_by_name) {
    EXPECT_THAT(refused(written(QStringLiteral("drawing.jpg"), "<svg xmlns='http://www.w3.org/2000/svg'/>")),
                HasSubstr("no picture"));
    EXPECT_THAT(refused(written(QStringLiteral("empty.jpg"), "")), HasSubstr("no picture"));
    EXPECT_THAT(refused(path(QStringLiteral("nowhere.jpg"))), HasSubstr("nowhere.jpg"));
}

TEST_F(PhotoFileTest, a_link_is_neither_offered_nor_followed) {
    const auto file = written(QStringLiteral("real.jpg"), jpeg_bytes({80, 60}));
    const auto link = path(QStringLiteral("link.jpg"));
    ASSERT_TRUE(QFile::link(file, link));
    EXPECT_THAT(refused(link), HasSubstr("a link to another file"));
    EXPECT_FALSE(pictures_in({QFileInfo{file}.path()}, 10).contains(link));
}

TEST_F(PhotoFileTest, pictures_are_offered_the_newest_first_and_not_too_many) {
    const auto now = QDateTime::currentDateTime();
    const auto bytes = jpeg_bytes({80, 60});
    QFile::remove(path(QStringLiteral("plain.jpg")));
    for (int age = 0; age < 3; ++age) {
        QFile file{written(QStringLiteral("%1.JPG").arg(age), bytes)};
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        ASSERT_TRUE(file.setFileTime(now.addSecs(-60 * age), QFileDevice::FileModificationTime));
    }
    written(QStringLiteral("notes.txt"), "no picture");
    EXPECT_EQ(pictures_in({QFileInfo{path(QStringLiteral("0.JPG"))}.path()}, 2),
              (QStringList{path(QStringLiteral("0.JPG")), path(QStringLiteral("1.JPG"))}));
}

TEST_F(PhotoFileTest, camera_data_cut_off_anywhere_is_followed_nowhere_it_does_not_go) {
    const auto whole = with_camera_data(jpeg_bytes({80, 60}), made_camera_data());
    for (qsizetype size = 0; size < 100; ++size) {
        EXPECT_LE(camera_data(whole.left(size)).size(), made_camera_data().size());
    }
    for (qsizetype size = 0; size <= made_camera_data().size(); ++size) {
        EXPECT_EQ(as_upright(made_camera_data().left(size)).size(), size);
    }
    auto wild = made_camera_data();
    wild.replace(10, 4, QByteArray{"\xFF\xFF\xFF\xF0", 4});  // a directory far behind the end
    EXPECT_EQ(as_upright(wild), wild);
}

}  // namespace
}  // namespace wetfront::ui::test
