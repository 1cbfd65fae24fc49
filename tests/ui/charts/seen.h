// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QPainter>
#include <functional>
#include <vector>

#include "charts/ink.h"

namespace wetfront::ui::test {

/// An ink in which each meaning has a colour of its own, so that a pixel tells what it is.
inline Ink plain_ink() {
    Ink ink;
    ink.line = Qt::black;
    ink.faint = QColor{0xff, 0xff, 0x00};  // no blue, as light as the ground: never taken for water or line
    ink.ground = Qt::white;
    ink.water = Qt::blue;
    ink.warm = Qt::red;
    ink.stroke = 2.0;
    return ink;
}

inline bool is_line(QRgb pixel) {
    return qRed(pixel) < 100 && qGreen(pixel) < 100 && qBlue(pixel) < 100;
}
/// Water, solid or as a tint down to a tenth.
inline bool is_water(QRgb pixel) {
    return qBlue(pixel) > 150 && qBlue(pixel) - qRed(pixel) > 15;
}
inline bool is_strong_water(QRgb pixel) {
    return qBlue(pixel) > 150 && qBlue(pixel) - qRed(pixel) > 120;
}
inline bool is_warm(QRgb pixel) {
    return qRed(pixel) > 150 && qRed(pixel) - qBlue(pixel) > 80 && qRed(pixel) - qGreen(pixel) > 80;
}

inline QImage painted(int width, int height, const std::function<void(QPainter&)>& paint) {
    QImage image{width, height, QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    paint(painter);
    painter.end();
    return image;
}

using Look = std::function<bool(QRgb)>;

/// Columns in which some pixel of the rows [top, bottom) looks like that.
inline std::vector<int> columns_with(const QImage& image, int top, int bottom, const Look& look) {
    std::vector<int> columns;
    for (int x = 0; x < image.width(); ++x) {
        for (int y = top; y < bottom; ++y) {
            if (look(image.pixel(x, y))) {
                columns.push_back(x);
                break;
            }
        }
    }
    return columns;
}

/// The first and last of a list; far from anything painted where it is empty.
constexpr int nowhere = -100'000;
inline int first(const std::vector<int>& list) {
    return list.empty() ? nowhere : list.front();
}
inline int last(const std::vector<int>& list) {
    return list.empty() ? nowhere : list.back();
}

/// Rows in which the pixel at x looks like that.
inline std::vector<int> rows_with(const QImage& image, int x, const Look& look) {
    std::vector<int> rows;
    for (int y = 0; y < image.height(); ++y) {
        if (look(image.pixel(x, y))) {
            rows.push_back(y);
        }
    }
    return rows;
}

inline int count_pixels(const QImage& image, const Look& look) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += look(image.pixel(x, y)) ? 1 : 0;
        }
    }
    return count;
}

}  // namespace wetfront::ui::test
