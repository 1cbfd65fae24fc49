// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <vector>

#include "charts/ink.h"
#include "charts/placed_label.h"

namespace wetfront::ui {

/// What one outlet of a header gives.
struct OutletShare {
    double at = 0.0;    ///< share of the header's length, from the pump's end
    double flow = 0.0;  ///< over the mean of the bars' outlets
};

/// A header with the flow of each outlet as a bar hanging from it. Any number of outlets, in any order;
/// places outside 0..1 are drawn at the nearest end, flows below 0 as none, outlets with a number that is not
/// finite not at all. Texts are in the reader's language and units; an empty one is left out.
struct HeaderPicture {
    bool pump_on_left = true;
    std::vector<OutletShare> outlets;  ///< the bars
    std::vector<OutletShare> other;    ///< the same outlets solved another way: a dashed line; may be empty
    QString inlet_head;                ///< "inlet head 2.1 m"
    QString uniformity;                ///< "low-quarter uniformity 94 %"
    QString first;                     ///< outlet at the pump's end: "first outlet 1.3 L/min"
    QString last;                      ///< outlet at the far end
    // Below the picture, each behind its sign.
    QString mean;         ///< of the bars
    QString lowest;       ///< the outlet that gives least
    QString low_quarter;  ///< the hatched bars: "lowest quarter"
    QString bars_name;    ///< how the bars were solved
    QString other_name;   ///< how the dashed line was
};

/// What a text below the picture stands for.
enum class HeaderSign { bars, other, low_quarter, mean, lowest };

/// Where the parts of the drawing lie, in the painter's units.
struct HeaderGeometry {
    struct LegendEntry {
        HeaderSign sign;
        QRectF sign_box;
        PlacedLabel label;
    };

    bool pump_on_left = true;
    QRectF pipe;
    QRectF face;  ///< of the pad, that the bars hang in front of
    QPointF pump;
    double pump_radius = 0.0;
    double bar_width = 0.0;   ///< of one outlet
    bool merged = false;      ///< too many outlets for bars of their own: a band from the least to the most
    double most_flow = 1.0;   ///< drawn as a bar to the lower end of the face
    double marker_top = 0.0;  ///< of the lane below the face where the lowest outlet is marked
    double marker_size = 0.0;
    std::vector<PlacedLabel> labels;
    std::vector<LegendEntry> legend;

    /// x of an outlet at a share of the way from the pump's end to the far end.
    [[nodiscard]] double along(double share) const;
    /// y of the lower end of a bar.
    [[nodiscard]] double below(double flow) const;
};

/// Texts are left out, from the bottom of the picture up, where they would leave the bars less than a third
/// of the height.
[[nodiscard]] HeaderGeometry header_geometry(const QRectF& area, const HeaderPicture& picture,
                                             const QFontMetricsF& metrics, double stroke);

/// Fits `area` from about 200 x 80 pixels up, paints nothing outside it, and nothing at all where there is no
/// room for bars. `font` is sized in pixels. Leaves
/// the painter as it was. The lowest quarter of the outlets (n / 4 to the nearest, at least one) is hatched
/// instead of filled, as far as it gives less than the mean by a thousandth or more.
void paint_header(QPainter& painter, const QRectF& area, const HeaderPicture& picture, const Ink& ink,
                  const QFont& font);

}  // namespace wetfront::ui
