// SPDX-License-Identifier: Apache-2.0
#include "charts/strip_painter.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <cmath>

namespace wetfront::ui {
namespace {

constexpr float wet_fill = 0.62F;    ///< the far end takes up water, or drips
constexpr float ahead_fill = 0.28F;  ///< the pump's end does, the far end not yet
constexpr float rest_fill = 0.10F;   ///< no water comes

void fill(QPainter& painter, const QPolygonF& shape, const QColor& color) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(shape);
}

void drops(QPainter& painter, double from, double to, double top, double height, double spacing,
           const Ink& ink) {
    for (double x = from + spacing / 2.0; x + height / 2.0 <= to; x += spacing) {
        paint_drop(painter, QPointF{x, top}, height, ink.water);
    }
}

QPolygonF upward_tick(QPointF tip, double size) {
    return QPolygonF{} << tip << tip + QPointF{0.6 * size, size} << tip + QPointF{-0.6 * size, size};
}

QPolygonF rightward_tick(QPointF tip, double size) {
    return QPolygonF{} << tip << tip + QPointF{-size, 0.6 * size} << tip + QPointF{-size, -0.6 * size};
}

bool rests(const CycleStrip& strip) {
    return !strip.continuous && strip.on_s < strip.period_s;
}

bool stays_wet(const CycleStrip& strip) {
    return rests(strip) && strip.lowest_level && strip.drip_returns_s;
}

bool rises_from_dry(const CycleStrip& strip) {
    return !stays_wet(strip) && strip.wet_through_s && *strip.wet_through_s > strip.fill_s;
}

class StripDrawing {
public:
    StripDrawing(QPainter& painter, const QRectF& area, const CycleStrip& strip, double end_s, const Ink& ink)
        : painter_{painter},
          strip_{strip},
          ink_{ink},
          lanes_{strip_lanes(area)},
          scale_{area.left(), area.width(), end_s},
          rests_{rests(strip)},
          end_{strip.continuous ? end_s : std::min(strip.period_s, end_s)},
          on_{rests_ ? strip.on_s : end_},
          fill_{std::min(strip.fill_s, on_)},
          steady_{stays_wet(strip)} {}

    void paint(std::optional<double> present_s) {
        painter_.fillRect(lane(lanes_.header, 0.0, end_), ink_.ground);
        painter_.fillRect(lane(lanes_.pad, 0.0, end_), ink_.ground);
        paint_header();
        if (steady_) {
            paint_steady_pad();
        } else {
            paint_pad_from_dry();
        }
        paint_outline();
        if (present_s && *present_s <= scale_.end_s && std::abs(*present_s - strip_.on_s) > 0.05) {
            painter_.setPen(QPen{ink_.line, 0.9 * ink_.stroke, Qt::DashLine, Qt::FlatCap});
            painter_.drawLine(QPointF{scale_.x(*present_s), lanes_.header.top()},
                              QPointF{scale_.x(*present_s), lanes_.bottom});
        }
        if (rests_) {
            tick(strip_.on_s, true);
        }
        if (strip_.ceiling_s) {
            tick(*strip_.ceiling_s, false);
        }
    }

private:
    [[nodiscard]] QRectF lane(const QRectF& of, double from_s, double to_s) const {
        return {QPointF{scale_.x(from_s), of.top()}, QPointF{scale_.x(to_s), of.bottom()}};
    }
    [[nodiscard]] QPointF at(double time_s, double level) const {
        return {scale_.x(time_s), lanes_.pad.bottom() - level * lanes_.pad.height()};
    }

    void paint_header() {
        const QRectF filling = lane(lanes_.header, 0.0, fill_);
        hatch(painter_, filling, 3.2 * ink_.stroke, pen_of(ink_.water, 0.9 * ink_.stroke));
        painter_.setPen(pen_of(ink_.water, 1.2 * ink_.stroke));
        painter_.drawLine(filling.topRight(), filling.bottomRight());
        painter_.fillRect(lane(lanes_.header, fill_, on_), tint(ink_.water, wet_fill));
    }

    // Water taken up between `start` and `start` + the wetting time of one column, until the pump stops.
    [[nodiscard]] QPolygonF rising(double start, double wetting) const {
        const double full = start + wetting;
        QPolygonF shape;
        shape << at(start, 0.0);
        if (full <= on_) {
            shape << at(full, 1.0) << at(on_, 1.0);
        } else {
            shape << at(on_, (on_ - start) / wetting);
        }
        return shape << at(on_, 0.0);
    }

    // What is left `since_stop` after the pump stopped, in a period that ends as it began. Every column falls
    // from even drip at one rate until water reaches it again; the far end waits the longest.
    [[nodiscard]] double level_left(double since_stop) const {
        const double longest = strip_.period_s - on_ + fill_;
        return 1.0 - (1.0 - std::clamp(*strip_.lowest_level, 0.0, 1.0)) * since_stop / longest;
    }

    // One period of a pad that stays wet: each edge stands at what it holds, the pump's end supplied from the
    // start, the far end from the fill on, both as steep.
    void paint_steady_pad() {
        const double at_start = level_left(strip_.period_s - on_);
        const double lowest = level_left(strip_.period_s - on_ + fill_);
        const double far_full = std::clamp(*strip_.drip_returns_s, fill_, on_);
        const double pump_full = lowest < 1.0 ? (far_full - fill_) * (1.0 - at_start) / (1.0 - lowest) : 0.0;
        const QPointF floor_start = at(0.0, 0.0);
        const QPointF floor_stop = at(on_, 0.0);
        fill(painter_,
             QPolygonF{} << floor_start << at(0.0, at_start) << at(pump_full, 1.0) << at(on_, 1.0)
                         << floor_stop,
             tint(ink_.water, ahead_fill));
        fill(painter_,
             QPolygonF{} << at(fill_, 0.0) << at(fill_, lowest) << at(far_full, 1.0) << at(on_, 1.0)
                         << floor_stop,
             tint(ink_.water, wet_fill));
        // Dripping after the stop is a band below the level: a second falling edge would read as a pad that
        // runs empty.
        const double drained = std::min(on_ + strip_.run_off_s.value_or(0.0), end_);
        const QPointF drained_level = at(drained, level_left(drained - on_));
        const QPointF end_level = at(end_, level_left(end_ - on_));
        fill(painter_, QPolygonF{} << floor_stop << at(on_, 1.0) << drained_level << at(drained, 0.0),
             tint(ink_.water, ahead_fill));
        fill(painter_, QPolygonF{} << at(drained, 0.0) << drained_level << end_level << at(end_, 0.0),
             tint(ink_.water, rest_fill));
        paint_drops(far_full, drained);
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(pen_of(ink_.water, 0.7 * ink_.stroke));
        painter_.drawLine(at(0.0, at_start), at(pump_full, 1.0));
        painter_.setPen(pen_of(ink_.water, 1.3 * ink_.stroke));
        painter_.drawPolyline(QPolygonF{} << at(0.0, at_start) << at(fill_, lowest) << at(far_full, 1.0));
        painter_.drawLine(at(on_, 1.0), end_level);
    }

    void paint_pad_from_dry() {
        const double dry_from = strip_.dry_patch_s ? std::clamp(*strip_.dry_patch_s, on_, end_) : end_;
        // A pad that dries begins its period dry; any other lies in what the period before has left in it.
        painter_.fillRect(lane(lanes_.pad, dry_from < end_ ? on_ : 0.0, dry_from),
                          tint(ink_.water, rest_fill));
        crosses(painter_, lane(lanes_.pad, dry_from, end_),
                std::max(lanes_.pad.height() / 3.0, 3.0 * ink_.stroke), ink_);
        if (strip_.dry_patch_s && dry_from < end_) {
            painter_.setPen(pen_of(ink_.warm, 1.2 * ink_.stroke));
            painter_.drawLine(at(dry_from, 0.0), at(dry_from, 1.0));
        }
        if (!rises_from_dry(strip_)) {
            painter_.fillRect(lane(lanes_.pad, fill_, on_), tint(ink_.water, ahead_fill));
            return;
        }
        const double wetting = *strip_.wet_through_s - strip_.fill_s;
        fill(painter_, rising(0.0, wetting), tint(ink_.water, ahead_fill));
        painter_.setPen(pen_of(ink_.water, 0.7 * ink_.stroke));
        painter_.drawLine(at(0.0, 0.0), at(std::min(wetting, on_), std::min(on_ / wetting, 1.0)));
        if (on_ > strip_.fill_s) {
            fill(painter_, rising(strip_.fill_s, wetting), tint(ink_.water, wet_fill));
            painter_.setPen(pen_of(ink_.water, 1.3 * ink_.stroke));
            painter_.drawLine(at(strip_.fill_s, 0.0), at(std::min(*strip_.wet_through_s, on_),
                                                         std::min((on_ - strip_.fill_s) / wetting, 1.0)));
        }
        if (on_ > *strip_.wet_through_s) {
            paint_dripping(*strip_.wet_through_s);
        }
    }

    // From `from_s` until the pump stops, then smaller ones until `drained_s`.
    void paint_drops(double from_s, double drained_s) {
        const double height = 0.8 * (lanes_.ticks_top - lanes_.drops_top);
        const double spacing = 1.4 * height;
        drops(painter_, scale_.x(from_s), scale_.x(on_), lanes_.drops_top, height, spacing, ink_);
        drops(painter_, scale_.x(on_), scale_.x(drained_s), lanes_.drops_top, 0.6 * height, 2.0 * spacing,
              ink_);
    }

    void paint_dripping(double from_s) {
        if (!strip_.run_off_s || on_ >= end_) {
            paint_drops(from_s, on_);
            return;
        }
        const double drained = on_ + *strip_.run_off_s;
        const double until = std::min(drained, end_);
        const double left_over = (drained - until) / *strip_.run_off_s;
        QPolygonF falling;
        falling << at(on_, 0.0) << at(on_, 1.0) << at(until, left_over) << at(until, 0.0);
        fill(painter_, falling, tint(ink_.water, ahead_fill));
        painter_.setPen(pen_of(ink_.water, 0.7 * ink_.stroke));
        painter_.drawLine(at(on_, 1.0), at(until, left_over));
        paint_drops(from_s, until);
    }

    // Open at the right where the pump never rests: there is no next start.
    void paint_outline() {
        painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
        painter_.setBrush(Qt::NoBrush);
        for (const QRectF& of : {lanes_.header, lanes_.pad}) {
            const QRectF box = lane(of, 0.0, end_);
            if (rests_) {
                painter_.drawRect(box);
            } else {
                painter_.drawPolyline(QPolygonF{} << box.topRight() << box.topLeft() << box.bottomLeft()
                                                  << box.bottomRight());
            }
        }
    }

    void tick(double time_s, bool solid) {
        const double size = lanes_.bottom - lanes_.ticks_top - ink_.stroke;
        painter_.setPen(pen_of(ink_.line, 0.8 * ink_.stroke));
        painter_.setBrush(solid ? ink_.line : ink_.ground);
        // A ceiling beyond the axis points out of it.
        painter_.drawPolygon(
            time_s <= scale_.end_s
                ? upward_tick(QPointF{scale_.x(time_s), lanes_.ticks_top}, size)
                : rightward_tick(QPointF{scale_.x(scale_.end_s), lanes_.ticks_top + 0.6 * size}, size));
    }

    QPainter& painter_;
    const CycleStrip& strip_;
    const Ink& ink_;
    StripLanes lanes_;
    TimeScale scale_;
    bool rests_;
    double end_;
    double on_;
    double fill_;
    bool steady_;  ///< the pad stays wet through every period
};

double step_of(double end_s, double pixels, double least_pixels, bool in_minutes) {
    constexpr std::array steps{5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0};
    double step = 0.0;
    for (const double candidate : steps) {
        step = candidate;
        if ((!in_minutes || step >= 60.0) && step / end_s * pixels >= least_pixels) {
            return step;
        }
    }
    while (step / end_s * pixels < least_pixels) {
        step *= 2.0;
    }
    return step;
}

CycleStrip sample() {
    CycleStrip strip;
    strip.period_s = 100.0;
    strip.on_s = 60.0;
    strip.fill_s = 20.0;
    strip.wet_through_s = 40.0;
    strip.run_off_s = 25.0;
    strip.dry_patch_s = 88.0;
    return strip;
}

}  // namespace

bool is_drawable(const CycleStrip& strip) {
    return strip.continuous || strip.period_s > 0.0;
}

double axis_end_s(const std::vector<CycleStrip>& strips) {
    double longest_period = 0.0;
    double longest_time = 0.0;
    for (const auto& strip : strips) {
        if (!is_drawable(strip)) {
            continue;
        }
        longest_period = std::max(longest_period, strip.period_s);
        longest_time =
            std::max({longest_time, strip.on_s, strip.fill_s, strip.wet_through_s.value_or(0.0), 60.0});
    }
    return longest_period > 0.0 ? longest_period : 1.5 * longest_time;
}

StripLanes strip_lanes(const QRectF& area) {
    const double h = area.height();
    StripLanes lanes;
    lanes.header = QRectF{area.left(), area.top() + 0.02 * h, area.width(), 0.2 * h};
    lanes.pad = QRectF{area.left(), area.top() + 0.27 * h, area.width(), 0.38 * h};
    lanes.drops_top = area.top() + 0.68 * h;
    lanes.ticks_top = area.top() + 0.82 * h;
    lanes.bottom = area.top() + 0.98 * h;
    return lanes;
}

void paint_strip(QPainter& painter, const QRectF& area, const CycleStrip& strip, double end_s,
                 std::optional<double> present_s, const Ink& ink) {
    if (!is_drawable(strip) || end_s <= 0.0) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    StripDrawing{painter, area, strip, end_s, ink}.paint(present_s);
    painter.restore();
}

void paint_time_axis(QPainter& painter, const QRectF& area, double end_s, const Ink& ink, const QFont& font,
                     const Label& label) {
    if (end_s <= 0.0) {
        return;
    }
    const bool in_minutes = end_s >= 240.0;
    const double unit_s = in_minutes ? 60.0 : 1.0;
    const QFontMetricsF metrics{font, painter.device()};
    const double step = step_of(end_s, area.width(), 3.6 * metrics.height(), in_minutes);
    const TimeScale scale{area.left(), area.width(), end_s};
    const double tick_length = 0.3 * metrics.height();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(pen_of(ink.line, 0.8 * ink.stroke));
    painter.setFont(font);
    painter.drawLine(area.topLeft(), area.topRight());
    const int last = static_cast<int>(std::floor(end_s / step + 1e-9));
    for (int i = 0; i <= last; ++i) {
        const double x = scale.x(i * step);
        painter.drawLine(QPointF{x, area.top()}, QPointF{x, area.top() + tick_length});
        QString text = QString::number(std::lround(i * step / unit_s));
        if (i == last) {
            text = label(Message{in_minutes ? WF_TEXT("%1 min") : WF_TEXT("%1 s"), {text.toStdString()}});
        }
        const double width = metrics.horizontalAdvance(text);
        const double left =
            std::clamp(x - width / 2.0, area.left(), std::max(area.left(), area.right() - width));
        painter.drawText(QPointF{left, area.top() + tick_length + metrics.ascent()}, text);
    }
    painter.restore();
}

Message note_of(const CycleStrip& strip) {
    if (!is_drawable(strip)) {
        return WF_TEXT("No cycle known");
    }
    if (!rests(strip)) {
        return WF_TEXT("The pump never rests");
    }
    return {WF_TEXT("%1 on, every %2"), {any(seconds(strip.on_s)), any(seconds(strip.period_s))}};
}

Message pad_note_of(const CycleStrip& strip) {
    if (!is_drawable(strip)) {
        return {};
    }
    if (stays_wet(strip)) {
        return WF_TEXT("pad stays wet");
    }
    return rises_from_dry(strip) ? WF_TEXT("from a dry pad") : Message{};
}

std::optional<double> present_setting_s(const std::vector<CycleStrip>& strips) {
    if (strips.size() < 2 || !is_drawable(strips.front()) || strips.front().continuous) {
        return std::nullopt;
    }
    return strips.front().on_s;
}

void paint_cycle_strips(QPainter& painter, const QRectF& area, const std::vector<CycleStrip>& strips,
                        const Ink& ink, const QFont& font, const Label& label) {
    if (strips.empty()) {
        return;
    }
    QFont strong = font;
    strong.setBold(true);
    const QFontMetricsF metrics{font, painter.device()};
    const QFontMetricsF strong_metrics{strong, painter.device()};
    double widest = 0.0;
    for (const auto& strip : strips) {
        widest = std::max({widest, strong_metrics.horizontalAdvance(label(strip.label)),
                           metrics.horizontalAdvance(label(note_of(strip))),
                           metrics.horizontalAdvance(label(pad_note_of(strip)))});
    }
    const double gap = 0.8 * metrics.height();
    const double labels = std::min(widest + gap, 0.38 * area.width());
    const double end_s = axis_end_s(strips);
    const double axis_height = end_s > 0.0 ? 1.5 * metrics.height() : 0.0;
    const double each = (area.height() - axis_height) / static_cast<double>(strips.size());
    const auto present_s = present_setting_s(strips);

    painter.save();
    for (std::size_t i = 0; i < strips.size(); ++i) {
        const double top = area.top() + static_cast<double>(i) * each;
        const QRectF strip_area{area.left() + labels, top + 0.06 * each, area.width() - labels - ink.stroke,
                                0.88 * each};
        // Below the label as many of the notes as there is room for.
        std::vector<Message> notes{note_of(strips[i])};
        if (const Message pad_note = pad_note_of(strips[i]); !pad_note.empty()) {
            notes.push_back(pad_note);
        }
        const auto height_with = [&] {
            return strong_metrics.height() + static_cast<double>(notes.size()) * metrics.height();
        };
        while (!notes.empty() && height_with() > each) {
            notes.pop_back();
        }
        double baseline = top + (each - height_with()) / 2.0 + strong_metrics.ascent();
        painter.setPen(ink.line);
        painter.setFont(strong);
        painter.drawText(
            QPointF{area.left(), baseline},
            strong_metrics.elidedText(label(strips[i].label), Qt::ElideRight, labels - gap / 2.0));
        painter.setFont(font);
        for (const Message& note : notes) {
            baseline += metrics.height();
            painter.drawText(QPointF{area.left(), baseline},
                             metrics.elidedText(label(note), Qt::ElideRight, labels - gap / 2.0));
        }
        paint_strip(painter, strip_area, strips[i], end_s, present_s, ink);
    }
    paint_time_axis(painter,
                    QRectF{area.left() + labels, area.bottom() - axis_height,
                           area.width() - labels - ink.stroke, axis_height},
                    end_s, ink, font, label);
    painter.restore();
}

Message label_of(StripSign sign) {
    switch (sign) {
        case StripSign::filling:
            return WF_TEXT("header fills");
        case StripSign::full_header:
            return WF_TEXT("pump runs, header full");
        case StripSign::wetting:
            return WF_TEXT("pad takes up water; pump end first, far end last");
        case StripSign::dripping:
            return WF_TEXT("wet through, drips");
        case StripSign::draining:
            return WF_TEXT("pump off, still drips");
        case StripSign::resting:
            return WF_TEXT("pad rests");
        case StripSign::dry_patch:
            return WF_TEXT("first dry patch");
        case StripSign::on_time:
            return WF_TEXT("base on-time");
        case StripSign::ceiling:
            return WF_TEXT("on-time ceiling");
        case StripSign::present:
            return WF_TEXT("on-time found");
    }
    return {};
}

void paint_sign(QPainter& painter, const QRectF& area, StripSign sign, const Ink& ink) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QPen frame = pen_of(ink.line, 0.8 * ink.stroke);
    // The piece of the sample strip that shows the sign, blown up to the area.
    const auto piece = [&](double from_s, double to_s, bool header) {
        const CycleStrip strip = sample();
        const double width = area.width() * strip.period_s / (to_s - from_s);
        const StripLanes unit = strip_lanes(QRectF{0.0, 0.0, 1.0, 1.0});
        const QRectF& lane = header ? unit.header : unit.pad;
        const double height = area.height() / (header ? lane.height() : 0.82 - lane.top());
        const QRectF strip_area{area.left() - width * from_s / strip.period_s,
                                area.top() - lane.top() * height, width, height};
        painter.save();
        painter.setClipRect(area, Qt::IntersectClip);
        paint_strip(painter, strip_area, strip, strip.period_s, std::nullopt, ink);
        painter.restore();
    };
    switch (sign) {
        case StripSign::filling:
            piece(2.0, 19.0, true);
            break;
        case StripSign::full_header:
            piece(22.0, 58.0, true);
            break;
        case StripSign::wetting:
            piece(0.0, 40.0, false);
            break;
        case StripSign::dripping:
            piece(41.0, 59.0, false);
            break;
        case StripSign::draining:
            piece(60.0, 85.0, false);
            break;
        case StripSign::resting:
            piece(86.5, 87.5, false);
            break;
        case StripSign::dry_patch:
            piece(86.0, 100.0, false);
            break;
        case StripSign::on_time:
        case StripSign::ceiling: {
            painter.setPen(frame);
            painter.setBrush(sign == StripSign::on_time ? ink.line : ink.ground);
            painter.drawPolygon(upward_tick(QPointF{area.center().x(), area.top() + 0.15 * area.height()},
                                            0.7 * area.height()));
            break;
        }
        case StripSign::present:
            painter.setPen(QPen{ink.line, 0.9 * ink.stroke, Qt::DashLine, Qt::FlatCap});
            painter.drawLine(QPointF{area.center().x(), area.top()},
                             QPointF{area.center().x(), area.bottom()});
            break;
    }
    painter.restore();
}

}  // namespace wetfront::ui
