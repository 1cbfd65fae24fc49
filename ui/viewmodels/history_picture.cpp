// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/history_picture.h"

#include <QDate>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string_view>

#include "viewmodels/history_view_model.h"

namespace wetfront::ui {
namespace {

constexpr double day_ms = 86'400'000.0;
constexpr double days_a_year = 365.25;
constexpr double minute_ms = 60'000.0;
/// The axis goes on to where the limit is reached, if that is not farther away.
constexpr double farthest_shown_years = 3.0;

double day_of(WallTime at) {
    return (static_cast<double>(at.unix_ms) + minute_ms * at.utc_offset_minutes) / day_ms;
}

/// Least and most of what is to be shown.
class Span {
public:
    void take(double value) {
        least_ = std::min(least_, value);
        most_ = std::max(most_, value);
    }
    [[nodiscard]] bool empty() const { return most_ < least_; }
    [[nodiscard]] double least() const { return least_; }
    [[nodiscard]] double most() const { return most_; }
    [[nodiscard]] double length() const { return most_ - least_; }

private:
    double least_ = std::numeric_limits<double>::infinity();
    double most_ = -std::numeric_limits<double>::infinity();
};

/// One unit for all values of a chart.
class Scale {
public:
    Scale(const Formatter& formatter, const AnyQuantity& like)
        : unit_{display_unit(like.kind, formatter.units(), like.scale).unit} {}

    [[nodiscard]] double of(double si) const { return number_in(*unit_, si); }
    /// Of a difference or a slope.
    [[nodiscard]] double difference(double si) const { return si / unit_->factor; }
    [[nodiscard]] QString title(const QString& what) const {
        return HistoryViewModel::tr("%1, %2").arg(
            what, QString::fromUtf8(unit_->display.data(), static_cast<qsizetype>(unit_->display.size())));
    }

private:
    const Unit* unit_;
};

// Summers of the northern half of the earth, June to August as weather services count them; nobody enters
// where a farm lies, and the trade this is made for is at home there.
QVariantList summers(double from, double to) {
    QVariantList list;
    const QDate first{1970, 1, 1};
    const auto year_at = [&](double day) { return first.addDays(static_cast<qint64>(day)).year(); };
    for (int year = year_at(from); year <= year_at(to); ++year) {
        list.append(QVariantMap{{"from", static_cast<double>(first.daysTo({year, 6, 1}))},
                                {"to", static_cast<double>(first.daysTo({year, 9, 1}))},
                                {"label", HistoryViewModel::tr("summer")}});
    }
    return list;
}

void put_axes(QVariantMap& picture, const Formatter& formatter, const QString& title, const Span& days,
              const Span& values) {
    const double around = std::max(45.0, 0.04 * days.length());
    const double from = days.least() - around;
    const double to = days.most() + around;
    const double room = std::max(0.12 * values.length(), 0.02 * std::abs(values.most()));
    picture.insert("from", from);
    picture.insert("to", to);
    picture.insert("least", values.least() - (room > 0.0 ? room : 1.0));
    picture.insert("most", values.most() + (room > 0.0 ? room : 1.0));
    picture.insert("title", title);
    picture.insert("decimalMark", formatter.locale().decimalPoint());
    picture.insert("seasons", summers(from, to));
}

QVariantMap row(const QString& day, const QString& text, bool event) {
    return {{"day", day}, {"text", text}, {"event", event}};
}

QVariantMap point_of(const Formatter& formatter, const Scale& scale, const VisitValue& value,
                     const QString& name) {
    const auto words =
        HistoryViewModel::tr("%1: %2").arg(formatter.date(value.at), value_text(formatter, value));
    return {{"day", day_of(value.at)},
            {"value", scale.of(value.value.si)},
            {"half", value.expanded ? scale.difference(value.expanded->si) : 0.0},
            {"words", name.isEmpty() ? words : HistoryViewModel::tr("%1, %2").arg(name, words)}};
}

void take_in(Span& days, Span& values, const Scale& scale, const BankSeries& series) {
    for (const auto& each : series.values) {
        const double half = each.expanded ? each.expanded->si : 0.0;
        days.take(day_of(each.at));
        values.take(scale.of(each.value.si - half));
        values.take(scale.of(each.value.si + half));
    }
}

QVariantMap trend_map(const FollowedTrend& followed, const Scale& scale) {
    const auto judged = followed.series.since_last_event();
    const auto& line = *followed.trend.line;
    const auto times = dated(judged);
    const double first = day_of(judged.front().at);
    const double last = day_of(judged.back().at);
    const double middle = middle_of(times);
    const auto a_day = [&](double slope) { return scale.difference(slope) / days_a_year; };
    double to = last;
    if (const auto reached = limit_reached(followed);
        reached && reached->likely - times.back().at <= farthest_shown_years) {
        to = first + reached->likely * days_a_year;
    }
    QVariantMap trend{{"from", first},
                      {"knownTo", last},
                      {"to", to},
                      {"middle", first + middle * days_a_year},
                      {"atMiddle", scale.of(line.at(middle))},
                      {"slope", a_day(line.slope)}};
    if (line.least && line.most) {
        trend.insert("least", a_day(*line.least));
        trend.insert("most", a_day(*line.most));
    }
    return trend;
}

QString limit_label(const Formatter& formatter, const SeriesLimit& limit) {
    switch (limit.from) {
        case SeriesLimit::From::base_on_time:
            return HistoryViewModel::tr("limit: base on-time %1").arg(formatter.text(limit.set_by));
        case SeriesLimit::From::least_circulation:
            return HistoryViewModel::tr("limit: least circulation");
    }
    return {};
}

// Far away it would press the values together; then the sentence tells it alone.
bool is_near(const Span& values, double limit, bool has_trend) {
    const double away = std::max(limit - values.most(), values.least() - limit);
    return has_trend || away <= std::max(1.5 * values.length(), 0.3 * std::abs(values.most()));
}

}  // namespace

QString value_text(const Formatter& formatter, const VisitValue& value) {
    return value.expanded ? HistoryViewModel::tr("%1 ± %2").arg(formatter.text(value.value),
                                                                formatter.text(*value.expanded))
                          : formatter.text(value.value);
}

QVariantMap series_chart(const Formatter& formatter, const FollowedTrend& followed) {
    const auto& series = followed.series;
    const Scale scale{formatter, series.values.front().value};
    Span days;
    Span values;
    take_in(days, values, scale, series);
    QVariantMap picture;
    const bool has_trend =
        followed.trend.verdict == TrendVerdict::rising || followed.trend.verdict == TrendVerdict::falling;
    if (has_trend) {
        const auto trend = trend_map(followed, scale);
        days.take(trend.value("to").toDouble());
        picture.insert("trend", trend);
    }
    if (followed.limit && is_near(values, scale.of(followed.limit->value.si), gets_worse(followed))) {
        values.take(scale.of(followed.limit->value.si));
        picture.insert("limit", QVariantMap{{"value", scale.of(followed.limit->value.si)},
                                            {"label", limit_label(formatter, *followed.limit)}});
    }
    QVariantList points;
    QVariantList rows;
    QVariantList events;
    auto event = series.events.begin();
    const auto tell_events_before = [&](double day) {
        for (; event != series.events.end() && day_of(event->on) <= day; ++event) {
            const auto name = formatter.text(label_of(event->what));
            days.take(day_of(event->on));
            events.append(QVariantMap{{"day", day_of(event->on)}, {"label", name}});
            rows.prepend(row(formatter.date(event->on), name, true));
        }
    };
    for (const auto& each : series.values) {
        tell_events_before(day_of(each.at));
        points.append(point_of(formatter, scale, each, {}));
        rows.prepend(row(formatter.date(each.at), value_text(formatter, each), false));
    }
    tell_events_before(std::numeric_limits<double>::infinity());
    picture.insert("events", events);
    picture.insert("lines", QVariantList{QVariantMap{{"sign", 0}, {"points", points}}});
    put_axes(picture, formatter, scale.title(formatter.text(label_of(series.what))), days, values);
    return {{"picture", picture}, {"rows", rows}, {"legend", QVariantList{}}};
}

QVariantMap settings_chart(const Formatter& formatter, const TimerHistory& timer) {
    constexpr std::array shown{std::string_view{"period"}, std::string_view{"on_time_ceiling"},
                               std::string_view{"base_on_time"}};
    const Scale scale{formatter, any(seconds(1.0))};
    Span days;
    Span values;
    QVariantList lines;
    QVariantList legend;
    for (const auto key : shown) {
        QVariantList points;
        QString name;
        for (const auto& stand : timer.stands) {
            for (const auto& held : held_settings(stand.settings)) {
                if (key != held.field.key) {
                    continue;
                }
                name = formatter.text(Message{held.field.label});
                days.take(day_of(stand.at));
                values.take(scale.of(held.value.si));
                points.append(QVariantMap{
                    {"day", day_of(stand.at)},
                    {"value", scale.of(held.value.si)},
                    {"words", HistoryViewModel::tr("%1: %2, %3")
                                  .arg(formatter.date(stand.at), name, formatter.text(held.value))}});
            }
        }
        if (!points.isEmpty()) {
            legend.append(QVariantMap{{"sign", lines.size()}, {"text", name}, {"line", lines.size()}});
            lines.append(QVariantMap{{"sign", lines.size()}, {"points", points}});
        }
    }
    QVariantList rows;
    const auto told = [&](const std::vector<SettingChange>& changes) {
        QStringList words;
        for (const auto& change : changes) {
            words.append(formatter.text(words_of(change)));
        }
        return words.join(QStringLiteral("; "));
    };
    for (const auto& stand : timer.stands) {
        const auto day = formatter.date(stand.at);
        if (!stand.meanwhile.empty()) {
            rows.prepend(row(
                day,
                HistoryViewModel::tr("Found changed since the visit before. %1").arg(told(stand.meanwhile)),
                true));
        }
        rows.prepend(stand.by_visit.empty()
                         ? row(day, HistoryViewModel::tr("Left as found."), false)
                         : row(day, HistoryViewModel::tr("Changed. %1").arg(told(stand.by_visit)), true));
    }
    QVariantMap picture;
    if (!days.empty()) {
        picture.insert("lines", lines);
        picture.insert("stepped", true);
        put_axes(picture, formatter, scale.title(HistoryViewModel::tr("How long")), days, values);
    }
    return {{"picture", picture}, {"rows", rows}, {"legend", legend}};
}

QVariantMap comparison_chart(const Formatter& formatter, std::span<const NamedSeries> all) {
    if (all.empty()) {
        return {{"picture", QVariantMap{}}, {"rows", QVariantList{}}, {"legend", QVariantList{}}};
    }
    const Scale scale{formatter, all.front().series.values.front().value};
    Span days;
    Span values;
    QVariantList lines;
    QVariantList legend;
    QVariantList rows;
    for (const auto& each : all) {
        take_in(days, values, scale, each.series);
        QVariantList points;
        for (const auto& value : each.series.values) {
            auto point = point_of(formatter, scale, value, each.name);
            point.insert("half", 0.0);  // bars of many lines would hide the lines
            points.append(point);
        }
        const auto& last = each.series.values.back();
        rows.append(row(formatter.date(last.at),
                        HistoryViewModel::tr("%1: %2").arg(each.name, value_text(formatter, last)), false));
        legend.append(QVariantMap{{"sign", lines.size()}, {"text", each.name}, {"line", lines.size()}});
        lines.append(QVariantMap{{"sign", lines.size()}, {"points", points}});
    }
    QVariantMap picture{{"lines", lines}};
    put_axes(picture, formatter, scale.title(formatter.text(label_of(all.front().series.what))), days,
             values);
    return {{"picture", picture}, {"rows", rows}, {"legend", legend}};
}

}  // namespace wetfront::ui
