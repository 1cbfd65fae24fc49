// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QBuffer>

#include "example_sheet.h"
#include "print/pdf.h"

namespace wetfront::ui {
namespace {

using namespace test;

constexpr double a_pixel_a_point = 72.0;  // an inch: a pixel a point

std::string green(QSize size) {
    QImage picture{size, QImage::Format_RGB32};
    picture.fill(QColor{0, 160, 0});
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(picture.save(&buffer, "JPEG"));
    return bytes.toStdString();
}

/// Where the page is green.
QRect green_box(const SheetPhotos& photos) {
    const auto page = preview_pages(sheet_of({photos}), Paper::letter, si, a_pixel_a_point).front();
    QRect box;
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const QColor colour = page.pixelColor(x, y);
            if (colour.green() > colour.red() + 60) {
                box |= QRect{x, y, 1, 1};
            }
        }
    }
    return box;
}

TEST(PhotoBlocksTest, three_stand_beside_one_another_and_keep_their_shape) {
    const auto one = green_box({{{green({400, 300}), "Photo 1"}}});
    const auto three = green_box(
        {{{green({400, 300}), "Photo 1"}, {green({400, 300}), "Photo 2"}, {green({400, 300}), "Photo 3"}}});
    EXPECT_NEAR(static_cast<double>(one.width()) / one.height(), 4.0 / 3.0, 0.03);
    EXPECT_GT(three.width(), 3 * one.width());
    EXPECT_LT(three.width(), 7 * one.width() / 2);
    EXPECT_NEAR(three.height(), one.height(), 1);
}

TEST(PhotoBlocksTest, an_upright_one_fits_the_same_height) {
    const auto upright = green_box({{{green({300, 400}), "Photo 1"}}});
    EXPECT_NEAR(static_cast<double>(upright.height()) / upright.width(), 4.0 / 3.0, 0.03);
    EXPECT_NEAR(upright.height(), green_box({{{green({400, 300}), "Photo 1"}}}).height(), 1);
}

TEST(PhotoBlocksTest, photos_do_not_make_a_sheet_heavy) {
    SheetPhotos photos;
    for (int i = 0; i < 12; ++i) {
        photos.pictures.push_back({green({1280, 960}), "Photo"});
    }
    const auto bytes = pdf_bytes(sheet_of({photos}), Paper::letter, si);
    ASSERT_TRUE(bytes);
    EXPECT_LT(bytes.value().size(), 12 * 100'000);
}

}  // namespace
}  // namespace wetfront::ui
