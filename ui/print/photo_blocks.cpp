// SPDX-License-Identifier: Apache-2.0
#include <QImage>
#include <QPen>
#include <algorithm>

#include "print/blocks.h"
#include "print/type.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t across = 3;
constexpr double between = 14.0 * pt;
constexpr double dots_per_inch = 200.0;  // what an office printer shows of a photograph

QImage small_picture(const std::string& jpeg, QSizeF box) {
    const auto picture =
        QImage::fromData(reinterpret_cast<const uchar*>(jpeg.data()), static_cast<int>(jpeg.size()), "JPEG");
    const QSize dots = (box * dots_per_inch / units_per_inch).toSize();
    return picture.width() > dots.width() || picture.height() > dots.height()
               ? picture.scaled(dots, Qt::KeepAspectRatio, Qt::SmoothTransformation)
               : picture;
}

Line picture_line(const SheetPhotos::Picture& photo, QSizeF box, const Measure& measure) {
    const auto picture = small_picture(photo.jpeg, box);
    if (picture.isNull()) {
        const auto words = text_lines(
            measure.formatter.text(WF_TEXT("The photo itself is not at hand here; the record names it.")),
            Face::small, box.width() - 8.0 * pt, 4.0 * pt);
        return {box.height(), [box, words](QPainter& painter, QPointF top_left) {
                    painter.setPen(QPen{QColor{0x90, 0x90, 0x90}, 0.4 * pt});
                    painter.drawRect(QRectF{top_left, box});
                    auto at = top_left + QPointF{0.0, 4.0 * pt};
                    for (const auto& line : words) {
                        line.paint(painter, at);
                        at.ry() += line.height;
                    }
                }};
    }
    // Upright and lying ones fill the same box as far as they go; none is cropped.
    const auto size = QSizeF{picture.size()}.scaled(box, Qt::KeepAspectRatio);
    return {box.height(), [picture, size](QPainter& painter, QPointF top_left) {
                painter.drawImage(QRectF{top_left, size}, picture);
            }};
}

}  // namespace

Rows rows_of(const SheetPhotos& photos, const Measure& measure) {
    const double width = (measure.width - between * (across - 1)) / across;
    const QSizeF box{width, 0.75 * width};
    Rows rows;
    for (std::size_t i = 0; i < photos.pictures.size(); i += across) {
        Row pictures;
        Row captions;
        for (std::size_t k = i; k < std::min(i + across, photos.pictures.size()); ++k) {
            const auto& photo = photos.pictures[k];
            const double x = static_cast<double>(k - i) * (width + between);
            pictures.cells.push_back({x, {picture_line(photo, box, measure)}});
            captions.cells.push_back(
                {x, text_lines(measure.formatter.text(photo.caption), Face::small, width)});
        }
        pictures.space_before = 6.0 * pt;
        pictures.keep_with_next = true;
        captions.space_before = 2.0 * pt;
        rows.push_back(std::move(pictures));
        rows.push_back(std::move(captions));
    }
    return rows;
}

}  // namespace wetfront::ui
