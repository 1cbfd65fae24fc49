// SPDX-License-Identifier: Apache-2.0
// The code on the sheet as a camera sees it: read back by zbarimg from the printed page.
#include <gmock/gmock.h>

#include <QTemporaryDir>

#include "example_sheet.h"
#include "print/blocks.h"
#include "print/pdf.h"

namespace wetfront::ui {
namespace {

using namespace test;

TEST(CodeTest, a_camera_reads_it_from_the_page_as_it_went_in) {
    const QTemporaryDir folder;
    const QString pdf = folder.filePath("sheet.pdf");
    const QString picture = folder.filePath("page");
    for (const std::string& id : {std::string{"v-1"}, std::string(64, 'W')}) {
        const std::string text = "Wetfront visit " + id + " revision 12 sha256 " + std::string(64, 'f');
        const auto content = sheet_of({SheetCode{text, {"Visit", "Its hash"}}});
        ASSERT_TRUE(write_pdf(content, pdf.toStdString(), Paper::letter, si).has_value());
        output_of("pdftoppm", {"-png", "-gray", "-r", "150", "-singlefile", pdf, picture});
        const QString read =
            output_of("zbarimg", {"--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture + ".png"});
        EXPECT_EQ(read.trimmed().toStdString(), text);
    }
}

// 83 bytes at level Q take version 7 at least, 45 modules a side (ISO/IEC 18004, tables 1 and 7, from
// memory).
TEST(CodeTest, modules_are_half_a_millimetre_at_least_and_four_of_them_stay_blank_around) {
    const SheetCode code{"Wetfront visit v-1 sha256 " + std::string(57, 'f'), {}};
    const auto rows = rows_of(code, Measure{si, 500.0 * pt});
    const Line& drawn = rows.at(0).cells.at(0).lines.at(0);
    constexpr double dots_per_mm = 20.0;
    const double scale = dots_per_mm * 25.4 / units_per_inch;
    const int side = static_cast<int>(drawn.height * scale);
    QImage image{side + 100, side + 100, QImage::Format_Grayscale8};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.scale(scale, scale);
    drawn.paint(painter, {0.0, 0.0});
    painter.end();
    QRect ink;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            ink |= qGray(image.pixel(x, y)) < 128 ? QRect{x, y, 1, 1} : QRect{};
        }
    }
    const double module = ink.width() / 45.0;
    EXPECT_GE(module, 0.5 * dots_per_mm);
    EXPECT_EQ(ink.width(), ink.height());
    EXPECT_GE(ink.left() + 1, 4.0 * module);
    EXPECT_GE(ink.top() + 1, 4.0 * module);
    EXPECT_GE(side - ink.bottom(), 4.0 * module);
}

}  // namespace
}  // namespace wetfront::ui
