// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "charts/ink.h"

namespace wetfront::ui {

/// A pad bank seen from outside and where its water is. Columns count from the pump's end to the far end; any
/// number of them, all of one width. Shares outside 0..1 are drawn as the nearest end.
struct BankPicture {
    bool pump_on_left = true;
    double aspect = 0.0;        ///< length by height; long banks are drawn shortened. 0: not described
    double header_front = 0.0;  ///< share of the header that water has reached; 0 also where nothing is known
    std::vector<double> wet_front;  ///< share of the pad's height wetted, from the top, a column
    std::vector<bool> dripping;     ///< water leaves the pad at the bottom, a column
    std::vector<bool> drying;       ///< a dry patch shows on the face, a column
    bool running = false;           ///< the pump
};

/// Where the parts of the drawing lie, in the painter's units.
struct BankGeometry {
    QRectF header;
    QRectF pad;
    QRectF gutter;
    QRectF sump;
    QPointF pump;  ///< centre of the pump's symbol
    double pump_radius = 0.0;
    bool pump_on_left = true;

    /// x at a share of the way from the pump's end to the far end.
    [[nodiscard]] double along(double share) const;
};
[[nodiscard]] BankGeometry bank_geometry(const QRectF& area, bool pump_on_left, double aspect, double stroke);

/// The drawing of the program: header on top, pump at its true end, water along and then down. Fits `area`
/// from about 120 x 60 pixels up and paints nothing outside it. Leaves the painter as it was.
void paint_bank(QPainter& painter, const QRectF& area, const BankPicture& picture, const Ink& ink);

}  // namespace wetfront::ui
