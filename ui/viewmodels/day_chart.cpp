// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/day_chart.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "day/design_weather.h"
#include "day/simulate.h"
#include "day/visit_day.h"

namespace wetfront::ui {
namespace {

constexpr double slot_s = 900.0;

class DayChartWords {
    Q_DECLARE_TR_FUNCTIONS(DayChartWords)
};

QStringList texts_of(const std::vector<Message>& messages, const Formatter& formatter) {
    QStringList texts;
    for (const auto& message : messages) {
        texts.append(formatter.text(message));
    }
    return texts;
}

/// Temperatures in the reader's degrees, and the room that they take.
class DegreeAxis {
public:
    explicit DegreeAxis(const Formatter& formatter)
        : unit_{*display_unit(Kind::temperature, formatter.units()).unit} {}

    QVariant of(Temperature temperature) {
        const double shown = number_in(unit_, in_si(temperature));
        least_ = std::min(least_, shown);
        most_ = std::max(most_, shown);
        return shown;
    }
    [[nodiscard]] QString symbol() const {
        return QString::fromUtf8(unit_.display.data(), static_cast<qsizetype>(unit_.display.size()));
    }
    [[nodiscard]] double from() const { return 5.0 * std::floor((least_ - 1.0) / 5.0); }
    [[nodiscard]] double to() const { return 5.0 * std::ceil((most_ + 1.0) / 5.0); }

private:
    const Unit& unit_;
    double least_ = 1e9;
    double most_ = -1e9;
};

QVariantMap plan_map(const DayResult& day, const QString& label, DegreeAxis& axis) {
    QVariantList behind;
    QVariantList house;
    QVariantList wet;
    QVariantList pumping;
    const auto timers = day.timers.size();
    for (std::size_t i = 0; i < day.course.size(); ++i) {
        behind.append(axis.of(day.course[i].behind_pad));
        house.append(axis.of(day.course[i].house));
        wet.append(day.course[i].wet_share);
        double on = 0.0;
        for (std::size_t timer = 0; timer < timers; ++timer) {
            on = std::max(on, in_seconds(day.pump_on[i * timers + timer]));
        }
        pumping.append(on / in_seconds(day.slot_length));
    }
    return {{QStringLiteral("label"), label},
            {QStringLiteral("behindPad"), behind},
            {QStringLiteral("house"), house},
            {QStringLiteral("wetShare"), wet},
            {QStringLiteral("pumping"), pumping}};
}

QVariantMap picture_of(const std::vector<std::pair<QString, const DayResult*>>& days, const DayLimits& limits,
                       const Formatter& formatter) {
    DegreeAxis axis{formatter};
    QVariantList outside;
    for (const auto& slot : days.front().second->course) {
        outside.append(axis.of(slot.outside));
    }
    QVariantList plans;
    for (const auto& [label, day] : days) {
        plans.append(plan_map(*day, label, axis));
    }
    return {{QStringLiteral("outside"), outside},
            {QStringLiteral("plans"), plans},
            {QStringLiteral("limit"), axis.of(limits.house)},
            {QStringLiteral("limitLabel"),
             DayChartWords::tr("limit of the house: %1").arg(formatter.text(any(limits.house)))},
            {QStringLiteral("least"), axis.from()},
            {QStringLiteral("most"), axis.to()},
            {QStringLiteral("fromHour"), 0.0},
            {QStringLiteral("title"), DayChartWords::tr("Temperature, %1").arg(axis.symbol())},
            {QStringLiteral("decimalMark"), formatter.locale().decimalPoint()},
            {QStringLiteral("outsideLabel"), DayChartWords::tr("outside")},
            {QStringLiteral("behindLabel"), DayChartWords::tr("behind the pads")},
            {QStringLiteral("houseLabel"), DayChartWords::tr("in the house")},
            {QStringLiteral("wetLabel"), DayChartWords::tr("Share of the pads that is wet")},
            {QStringLiteral("pumpLabel"), DayChartWords::tr("Pumps run")}};
}

/// As advised, but for one timer.
WayToRun way_with(const VisitDay& day, const VisitFile& file, const Advice& advice,
                  const TimerSettings& tried) {
    const auto timer = std::ranges::find(file.house.timers, tried.timer, &Timer::id);
    if (timer == file.house.timers.end() || !day.advised.plans) {
        return day.advised;
    }
    VisitFile alone = file;
    alone.house.timers = {*timer};
    alone.visit.left = {tried};
    auto way = visit_day(alone, advice).left;
    if (way.plans) {
        auto plans = *day.advised.plans;
        plans[static_cast<std::size_t>(timer - file.house.timers.begin())] = way.plans->front();
        way.plans = std::move(plans);
    }
    return way;
}

}  // namespace

QVariantList day_rows(const std::vector<DayComparison::Row>& rows, const Formatter& formatter) {
    QVariantList list;
    for (const auto& row : rows) {
        list.append(QVariantMap{{QStringLiteral("what"), formatter.text(row.what)},
                                {QStringLiteral("first"), formatter.text(row.values[0])},
                                {QStringLiteral("second"), formatter.text(row.values[1])},
                                {QStringLiteral("difference"), formatter.text(row.difference)}});
    }
    return list;
}

DayChart day_chart(const VisitFile& file, const Advice& advice, const std::optional<TimerSettings>& tried,
                   const Formatter& formatter) {
    DayChart chart;
    const auto day = visit_day(file, advice);
    chart.missing = texts_of(day.missing, formatter);
    chart.assumed = texts_of(day.assumed, formatter);
    const auto weather = design_weather_of(file, advice);
    if (!weather) {
        chart.missing.append(QString::fromStdString(weather.error().text()));
    }
    if (!day.house || !weather) {
        return chart;
    }
    auto simulator = DaySimulator::of(*day.house, weather.value(), {seconds(slot_s)});
    if (!simulator) {
        chart.missing.append(QString::fromStdString(simulator.error().text()));
        return chart;
    }
    chart.second = tried ? DayChartWords::tr("what if") : DayChartWords::tr("advised");
    const std::array names{DayChartWords::tr("found"), chart.second};
    const std::array ways{day.found, tried ? way_with(day, file, advice, *tried) : day.advised};
    std::array<DayResult, 2> results;
    std::vector<std::pair<QString, const DayResult*>> known;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        chart.assumed.append(texts_of(ways[i].assumed, formatter));
        if (!ways[i].plans) {
            chart.missing.append(texts_of(ways[i].missing, formatter));
        } else if (const auto run = simulator.value().run(*ways[i].plans, results[i]); run) {
            known.emplace_back(names[i], &results[i]);
        } else {
            chart.missing.append(QString::fromStdString(run.error().text()));
        }
    }
    chart.assumed.removeDuplicates();
    if (!known.empty()) {
        chart.picture = picture_of(known, day.house->limits, formatter);
    }
    if (known.size() == 2) {
        const auto words = compared(std::array{results[0].totals, results[1].totals}, file.farm.currency,
                                    tried ? Message{WF_TEXT("tried")} : Message{WF_TEXT("advised")});
        chart.rows = day_rows(words.rows, formatter);
        chart.sentence = formatter.text(words.sentence);
    }
    return chart;
}

}  // namespace wetfront::ui
