// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QFont>
#include <QString>
#include <array>
#include <functional>
#include <optional>
#include <vector>

#include "charts/ink.h"
#include "records/sheet_content.h"

namespace wetfront::ui {

// The cycle as a strip: one period from left to right. The upper lane is the header (hatched while it fills,
// full while the pump runs), the lower lane the pad (edges at the pump's end and at the far end, full and
// dripping, draining, resting, crossed from the first dry patch on). Where the cycle keeps the pad wet, the
// edges stand at the share that is left of what the pad holds when it drips, and the period ends as it began.
// Elsewhere they rise from dry. Edges are straight: what dries while the pad takes up water is in the time of
// the drip's return.

/// Turns a text into the reader's language and units.
using Label = std::function<QString(const Message&)>;

/// Seconds across an area.
struct TimeScale {
    double left = 0.0;
    double width = 0.0;
    double end_s = 1.0;

    [[nodiscard]] double x(double time_s) const { return left + width * time_s / end_s; }
};

/// What one axis has to span for all strips, s: the longest period, or, where no strip has one, one and a
/// half times the longest time there is. 0 where there is nothing to draw.
[[nodiscard]] double axis_end_s(const std::vector<CycleStrip>& strips);

/// True if the strip can be drawn: its period is known or the pump never rests.
[[nodiscard]] bool is_drawable(const CycleStrip& strip);

/// The lanes of one strip: its area from top to bottom is header, pad, drops, ticks.
struct StripLanes {
    QRectF header;
    QRectF pad;
    double drops_top = 0.0;
    double ticks_top = 0.0;
    double bottom = 0.0;
};
[[nodiscard]] StripLanes strip_lanes(const QRectF& area);

/// One strip without its label; `area` spans the axis. `present_s` draws the setting that stands in the timer
/// now.
void paint_strip(QPainter& painter, const QRectF& area, const CycleStrip& strip, double end_s,
                 std::optional<double> present_s, const Ink& ink);

/// Ticks and numbers below the strips, in seconds, from 4 min up in minutes. `font` is sized in pixels.
void paint_time_axis(QPainter& painter, const QRectF& area, double end_s, const Ink& ink, const QFont& font,
                     const Label& label);

/// "85 s on, every 5 min", "The pump never rests", "No cycle known".
[[nodiscard]] Message note_of(const CycleStrip& strip);

/// How the pad enters the period as it is drawn: "pad stays wet", "from a dry pad"; empty where neither is
/// drawn.
[[nodiscard]] Message pad_note_of(const CycleStrip& strip);

/// The present setting that other strips are compared with: the on-time of the first strip, if several have a
/// cycle.
[[nodiscard]] std::optional<double> present_setting_s(const std::vector<CycleStrip>& strips);

/// All strips under one axis, labels at the left (shortened with an ellipsis where the room is small). `font`
/// is sized in pixels.
void paint_cycle_strips(QPainter& painter, const QRectF& area, const std::vector<CycleStrip>& strips,
                        const Ink& ink, const QFont& font, const Label& label);

/// What a strip is read by.
enum class StripSign {
    filling,
    full_header,
    wetting,
    dripping,
    draining,
    resting,
    dry_patch,
    on_time,
    ceiling,
    present
};
inline constexpr std::array all_strip_signs{
    StripSign::filling, StripSign::full_header, StripSign::wetting, StripSign::dripping, StripSign::draining,
    StripSign::resting, StripSign::dry_patch,   StripSign::on_time, StripSign::ceiling,  StripSign::present};
[[nodiscard]] Message label_of(StripSign sign);
/// The sign as it stands in a strip, for a legend.
void paint_sign(QPainter& painter, const QRectF& area, StripSign sign, const Ink& ink);

}  // namespace wetfront::ui
