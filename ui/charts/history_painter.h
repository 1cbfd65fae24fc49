// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "charts/ink.h"
#include "charts/placed_label.h"

namespace wetfront::ui {

// Days are counted from 1970-01-01 of the place, values are in the reader's unit.

/// What one visit measured, or what stood in a timer after it.
struct HistoryPoint {
    double day = 0.0;
    double value = 0.0;
    double half = 0.0;  ///< half of its uncertainty bar; 0: not known, no bar
};

/// Marks that tell lines apart without colour, each with a pattern of dashes besides: so many are different.
inline constexpr int signs_apart = 30;

struct HistoryLine {
    std::vector<HistoryPoint> points;  ///< the earliest first
    int sign = 0;                      ///< 0 or more
};

/// A line with the band between its flattest and its steepest, which meet in its middle.
struct HistoryTrend {
    double from = 0.0;       ///< day
    double known_to = 0.0;   ///< day of the last visit: dashed beyond
    double to = 0.0;         ///< day
    double middle = 0.0;     ///< day
    double at_middle = 0.0;  ///< value
    double slope = 0.0;      ///< value a day
    std::optional<double> least;
    std::optional<double> most;
};

struct HistorySeason {
    double from = 0.0;
    double to = 0.0;
    QString label;
};

/// Something that was done; no line runs across it.
struct HistoryEvent {
    double day = 0.0;
    QString label;
};

struct HistoryLimit {
    double value = 0.0;
    QString label;
};

/// A point that is told beside the picture.
struct HistoryPick {
    std::size_t line = 0;
    std::size_t point = 0;
    friend bool operator==(const HistoryPick&, const HistoryPick&) = default;
};

/// Values of visits on a time axis.
struct HistoryPicture {
    double from = 0.0;  ///< first day shown
    double to = 0.0;    ///< above `from`, or nothing is drawn
    double least = 0.0;
    double most = 0.0;     ///< above `least`, or nothing is drawn
    QString title;         ///< quantity and unit: "Wet-through time, s"
    QString decimal_mark;  ///< of the numbers beside the axis
    std::vector<HistoryLine> lines;
    bool stepped = false;  ///< a value holds until the next one
    std::optional<HistoryTrend> trend;
    std::optional<HistoryLimit> limit;
    std::vector<HistorySeason> seasons;
    std::vector<HistoryEvent> events;
    std::optional<HistoryPick> picked;
};

/// Where the parts of the drawing lie, in the painter's units.
struct HistoryGeometry {
    struct Tick {
        double at = 0.0;  ///< x of a day, y of a value
        PlacedLabel label;
    };

    QRectF plot;
    double from = 0.0;
    double to = 0.0;
    double least = 0.0;
    double most = 0.0;
    double mark_radius = 0.0;
    PlacedLabel title;
    std::vector<Tick> day_ticks;
    std::vector<Tick> value_ticks;
    std::vector<PlacedLabel> season_names;
    std::vector<PlacedLabel> event_names;  ///< those that found room
    std::optional<PlacedLabel> limit_name;

    [[nodiscard]] QPointF at(double day, double value) const;
    [[nodiscard]] double day_at(double x) const;
};

/// Names of seasons stand below the days, names of events above the plot in up to three rows, none on
/// another. For axes that span something.
[[nodiscard]] HistoryGeometry history_geometry(const QRectF& area, const HistoryPicture& picture,
                                               const QFontMetricsF& metrics, double stroke);

/// Of the points in sight the one nearest to `place`, not farther than `reach`.
[[nodiscard]] std::optional<HistoryPick> nearest_point(const HistoryGeometry& geometry,
                                                       const HistoryPicture& picture, QPointF place,
                                                       double reach);

/// Fits `area` from about 240 x 160 pixels up, paints nothing outside it, and nothing at all where there is
/// no room for a plot. `font` is sized in pixels. Leaves the painter as it was.
void paint_history(QPainter& painter, const QRectF& area, const HistoryPicture& picture, const Ink& ink,
                   const QFont& font);

/// The mark of a line by itself, for the list of names beside the picture, with a piece of its line where
/// there is room.
void paint_history_sign(QPainter& painter, const QRectF& area, int sign, const Ink& ink);

}  // namespace wetfront::ui
