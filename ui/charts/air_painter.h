// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QPolygonF>
#include <QString>
#include <optional>
#include <vector>

#include "charts/ink.h"
#include "charts/placed_label.h"

namespace wetfront::ui {

/// An axis in the reader's unit, which is one that spans several whole numbers: they are its ticks.
struct AirAxis {
    double from = 0.0;
    double to = 0.0;  ///< above `from`, or nothing is drawn
    QString title;    ///< quantity and unit: "water in the air, g/kg"
};

/// What a curve says; each has a line of its own.
enum class AirCurveKind { saturation, humidity, wet_bulb };

/// Straight between its points, which are (temperature, water in the air) in the units of the axes, from left
/// to right or from right to left. What lies outside the axes is cut off.
struct AirCurve {
    AirCurveKind kind = AirCurveKind::humidity;
    QPolygonF points;
    QString label;  ///< "50 %"; may be empty
};

/// A state of the air. One outside the axes, or with a number that is not finite, is not drawn.
struct AirState {
    QPointF at;     ///< (temperature, water in the air) in the units of the axes
    QString label;  ///< "outside\n35 °C, 30 %"; lines parted by line feeds
};

/// What the pad does to the air, over temperature and the water that the air holds. A state that is not known
/// is left out, and with it the arrows to and from it.
struct AirPicture {
    AirAxis temperature;
    AirAxis water;
    std::vector<AirCurve> curves;
    std::optional<AirState> outside;     ///< a ring
    std::optional<AirState> behind_pad;  ///< a drop
    std::optional<AirState> house;       ///< a house
};

/// Where the parts of the drawing lie, in the painter's units.
struct AirGeometry {
    struct Tick {
        QPointF at;
        PlacedLabel label;
    };

    QRectF plot;
    AirAxis temperature;
    AirAxis water;
    double mark_radius = 0.0;
    std::vector<Tick> temperature_ticks;
    std::vector<Tick> water_ticks;
    std::vector<PlacedLabel> titles;
    std::vector<PlacedLabel> labels;  ///< of states, then of curves
    std::vector<QLineF> leaders;      ///< from a mark to a label that found no room beside it

    [[nodiscard]] QPointF at(QPointF state) const;
};

/// Labels stand in the plot, clear of each other and of the marks, where they cross the fewest lines. One for
/// which no such place is left is left out; curves give way to states. For axes that span something.
[[nodiscard]] AirGeometry air_geometry(const QRectF& area, const AirPicture& picture,
                                       const QFontMetricsF& metrics, double stroke);

/// Fits `area` from about 240 x 160 pixels up, paints nothing outside it, and nothing at all where there is
/// no room for a plot. `font` is sized in pixels. Leaves the painter as it was.
void paint_air(QPainter& painter, const QRectF& area, const AirPicture& picture, const Ink& ink,
               const QFont& font);

}  // namespace wetfront::ui
