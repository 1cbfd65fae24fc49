// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "charts/ink.h"
#include "charts/placed_label.h"

namespace wetfront::ui {

/// What one set of settings makes of a day; each list has a value for every slot of it.
struct DayPlan {
    QString label;                   ///< "found"
    std::vector<double> behind_pad;  ///< in the unit of the axis
    std::vector<double> house;
    std::vector<double> wet_share;  ///< of the pads' face, 0 to 1
    std::vector<double> pumping;    ///< share of the slot in which pumps run, 0 to 1
};

/// A day over the hours of the clock: temperatures, below them how much of the pads is wet and when pumps
/// run, of one or two plans laid over each other.
struct DayPicture {
    double least = 0.0;
    double most = 0.0;     ///< above `least`, or nothing is drawn
    double from_hour = 0;  ///< of the clock; the slots share the 24 h behind it
    QString title;         ///< "Temperature, °C"
    QString decimal_mark;
    QString outside_label;
    QString behind_label;
    QString house_label;
    QString wet_label;   ///< "wet share of the pads"
    QString pump_label;  ///< "pumps run"
    std::vector<double> outside;
    std::vector<DayPlan> plans;  ///< one or two; the last is drawn strongest
    std::optional<double> limit;
    QString limit_label;
};

/// Where the parts of the drawing lie, in the painter's units.
struct DayGeometry {
    struct Tick {
        double at = 0.0;
        PlacedLabel label;
    };

    QRectF air;                 ///< temperatures
    QRectF wet;                 ///< wet share, 0 below
    std::vector<QRectF> pumps;  ///< a lane for each plan
    std::vector<Tick> value_ticks;
    std::vector<Tick> hour_ticks;
    std::vector<PlacedLabel> labels;  ///< titles, names of plans, names of lines that found room
    double least = 0.0;
    double most = 0.0;

    [[nodiscard]] QPointF at(std::size_t slot, std::size_t count, double value) const;
};
[[nodiscard]] DayGeometry day_geometry(const QRectF& area, const DayPicture& picture,
                                       const QFontMetricsF& metrics, double stroke);

/// Fits `area` from about 240 x 200 pixels up, paints nothing outside it, and nothing at all where there is
/// no room or no plan. `font` is sized in pixels. Leaves the painter as it was.
void paint_day(QPainter& painter, const QRectF& area, const DayPicture& picture, const Ink& ink,
               const QFont& font);

}  // namespace wetfront::ui
