// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/air_picture.h"

#include <QPointF>
#include <algorithm>
#include <cmath>

#include "cycle/visit_weather.h"
#include "viewmodels/conditions_view_model.h"
#include "viewmodels/percent.h"

namespace wetfront::ui {
namespace {

constexpr int curve_steps = 48;
constexpr int line_steps = 8;

/// The states that are known, and the drawing of them in one reader's units.
class AirDrawing {
public:
    AirDrawing(const Formatter& formatter, const MoistAir& outside)
        : formatter_{formatter},
          outside_{outside},
          temperature_unit_{*display_unit(Kind::temperature, formatter.units()).unit},
          water_unit_{*display_unit(Kind::humidity_ratio, formatter.units()).unit} {
        span(outside);
        span(outside.wet_bulb);
        state(QStringLiteral("outside"), ConditionsViewModel::tr("outside"), outside);
    }

    void state(const QString& key, const QString& name, const MoistAir& air) {
        span(air);
        const QPointF at = place(air);
        picture_[key] = QVariantMap{
            {QStringLiteral("temperature"), at.x()},
            {QStringLiteral("water"), at.y()},
            {QStringLiteral("label"), ConditionsViewModel::tr("%1\n%2, %3")
                                          .arg(name, formatter_.text(any(air.dry_bulb)),
                                               whole_percent(formatter_, in_si(air.relative_humidity)))}};
    }

    [[nodiscard]] QVariantMap picture() {
        // Room around the states, in whole tens of the reader's degrees and whole fives of water.
        const auto display = [this](double kelvin) { return number_in(temperature_unit_, kelvin); };
        const double from = std::floor((display(coolest_) - 5.0) / 10.0) * 10.0;
        const double to = std::ceil((display(warmest_) + 5.0) / 10.0) * 10.0;
        const double most = std::ceil(1.3 * number_in(water_unit_, wettest_) / 5.0) * 5.0;
        picture_[QStringLiteral("temperature")] =
            axis(from, to, ConditionsViewModel::tr("temperature, %1"), temperature_unit_);
        picture_[QStringLiteral("water")] =
            axis(0.0, most, ConditionsViewModel::tr("water in the air, %1"), water_unit_);
        QVariantList curves;
        for (const double share : {0.25, 0.5, 0.75}) {
            curves.append(humidity_curve(share, from, to, QStringLiteral("humidity")));
        }
        curves.append(humidity_curve(1.0, from, to, QStringLiteral("saturation")));
        curves.append(wet_bulb_line());
        picture_[QStringLiteral("curves")] = curves;
        return picture_;
    }

private:
    static QVariantMap axis(double from, double to, const QString& title, const Unit& unit) {
        return {
            {QStringLiteral("from"), from},
            {QStringLiteral("to"), to},
            {QStringLiteral("title"),
             title.arg(QString::fromUtf8(unit.display.data(), static_cast<qsizetype>(unit.display.size())))}};
    }

    [[nodiscard]] QPointF place(const MoistAir& air) const {
        return {number_in(temperature_unit_, in_si(air.dry_bulb)),
                number_in(water_unit_, in_si(air.humidity_ratio))};
    }

    void span(Temperature temperature) {
        coolest_ = std::min(coolest_, in_si(temperature));
        warmest_ = std::max(warmest_, in_si(temperature));
    }
    void span(const MoistAir& air) {
        span(air.dry_bulb);
        wettest_ = std::max(wettest_, in_si(air.humidity_ratio));
    }

    // What lies outside the range of the air's equations is left out of a curve.
    void add(QVariantList& points, const Result<MoistAir>& air) const {
        if (air) {
            points.append(place(air.value()));
        }
    }

    [[nodiscard]] QVariantMap humidity_curve(double share, double from, double to,
                                             const QString& kind) const {
        QVariantList points;
        for (int i = 0; i <= curve_steps; ++i) {
            const double at = from + (to - from) * i / curve_steps;
            add(points, air_from_humidity(from_si<Temperature>(to_si(temperature_unit_, at)),
                                          from_si<Fraction>(share), outside_.pressure));
        }
        return {{QStringLiteral("kind"), kind},
                {QStringLiteral("points"), points},
                {QStringLiteral("label"), whole_percent(formatter_, share)}};
    }

    [[nodiscard]] QVariantMap wet_bulb_line() const {
        QVariantList points;
        const double warm = in_si(outside_.dry_bulb);
        const double cool = in_si(outside_.wet_bulb);
        for (int i = 0; i <= line_steps; ++i) {
            add(points, air_from_wet_bulb(from_si<Temperature>(warm + (cool - warm) * i / line_steps),
                                          outside_.wet_bulb, outside_.pressure));
        }
        return {{QStringLiteral("kind"), QStringLiteral("wetBulb")},
                {QStringLiteral("points"), points},
                {QStringLiteral("label"),
                 ConditionsViewModel::tr("wet bulb %1").arg(formatter_.text(any(outside_.wet_bulb)))}};
    }

    const Formatter& formatter_;
    const MoistAir& outside_;
    const Unit& temperature_unit_;
    const Unit& water_unit_;
    double coolest_ = 1e9;  // K
    double warmest_ = 0.0;  // K
    double wettest_ = 0.0;  // kg/kg
    QVariantMap picture_;
};

// As read for all banks, else the mean of what was read bank by bank.
std::optional<Temperature> behind_pads(const VisitFile& file) {
    const auto& conditions = file.visit.conditions;
    if (conditions.behind_pad) {
        return conditions.behind_pad->value();
    }
    double sum = 0.0;
    int count = 0;
    for (const auto& at : conditions.at_banks) {
        if (at.behind_pad) {
            sum += in_si(at.behind_pad->value());
            ++count;
        }
    }
    return count == 0 ? std::nullopt : std::optional{from_si<Temperature>(sum / count)};
}

}  // namespace

AirView air_view(const VisitRecord& record) {
    const auto& formatter = record.context().formatter;
    const auto& file = record.file();
    const auto& conditions = file.visit.conditions;
    const auto weather = weather_of(file);
    AirView view;
    if (!weather.test) {
        view.words.append(ConditionsViewModel::tr(
            "For the picture, the outside temperature is needed, and the outside humidity, wet "
            "bulb or dew point."));
        return view;
    }
    const auto& outside = *weather.test;
    view.words.append(
        ConditionsViewModel::tr("A pad can cool this air to its wet bulb at most: %1, that is by %2.")
            .arg(formatter.text(any(outside.wet_bulb)),
                 formatter.text(any(outside.dry_bulb - outside.wet_bulb))));
    AirDrawing drawing{formatter, outside};
    if (const auto behind = behind_pads(file)) {
        if (const auto air = air_from_wet_bulb(*behind, outside.wet_bulb, outside.pressure)) {
            drawing.state(QStringLiteral("behindPad"), ConditionsViewModel::tr("behind the pad"),
                          air.value());
        } else {
            view.words.append(ConditionsViewModel::tr(
                "Behind the pad it is colder than the wet bulb outside, which no pad does: "
                "check the thermometers."));
        }
    }
    if (conditions.house_temperature && conditions.house_humidity) {
        if (const auto air = air_from_humidity(conditions.house_temperature->value(),
                                               conditions.house_humidity->value(), outside.pressure)) {
            drawing.state(QStringLiteral("house"), ConditionsViewModel::tr("in the house"), air.value());
        }
    }
    view.picture = drawing.picture();
    return view;
}

}  // namespace wetfront::ui
