// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/conditions_view_model.h"

#include <algorithm>

#include "cycle/visit_weather.h"
#include "viewmodels/percent.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t most_face_points = 20;
constexpr std::size_t most_catches = 10;

// A thermometer cannot read this; a mistyped one can.
Result<void> not_warmer(const Optional<Temperature>& cooler, const char* item,
                        const Optional<Temperature>& dry_bulb) {
    if (cooler && dry_bulb && cooler->value() > dry_bulb->value()) {
        return bad_input(item, cooler->text(), "at most the outside temperature, " + dry_bulb->text());
    }
    return boost::outcome_v2::success();
}

// "38 gpm ± 1.2 gpm".
QString with_uncertainty(const Formatter& formatter, const AnyQuantity& value,
                         const std::optional<AnyQuantity>& expanded) {
    return expanded ? QStringLiteral("%1 ± %2").arg(formatter.text(value), formatter.text(*expanded))
                    : formatter.text(value);
}

QString face_sentence(const Formatter& formatter, const FaceVelocity& face) {
    if (face.points == 1) {
        return ConditionsViewModel::tr("One point, %1: at least %2 make a mean.")
            .arg(formatter.text(any(face.mean)), QString::number(least_face_points));
    }
    const QString mean =
        ConditionsViewModel::tr("Mean of %1 points %2, from %3 to %4.")
            .arg(QString::number(face.points),
                 with_uncertainty(formatter, any(face.mean),
                                  face.expanded ? std::optional{any(*face.expanded)} : std::nullopt),
                 formatter.text(any(face.lowest)), formatter.text(any(face.highest)));
    return face.firm ? mean
                     : ConditionsViewModel::tr("%1 Too few to be firm: at least %2 points.")
                           .arg(mean, QString::number(least_face_points));
}

QString cooling_sentence(const Formatter& formatter, const PadEffectiveness& effectiveness) {
    if (!effectiveness.measured) {
        return {};
    }
    const QString measured =
        QStringLiteral("%1 ± %2").arg(whole_percent(formatter, in_si(effectiveness.measured->value)),
                                      whole_percent(formatter, in_si(effectiveness.measured->expanded)));
    return effectiveness.expected
               ? ConditionsViewModel::tr(
                     "The pad cools %1 of the way to the wet bulb; a clean new one at this speed: %2.")
                     .arg(measured, whole_percent(formatter, in_si(*effectiveness.expected)))
               : ConditionsViewModel::tr("The pad cools %1 of the way to the wet bulb.").arg(measured);
}

QString catch_sentence(const Formatter& formatter, const BankConditions& at) {
    std::vector<double> flows;
    for (const auto& caught : at.catches) {
        if (caught.volume && caught.time) {
            flows.push_back(in_si(caught.volume->value()) / in_si(caught.time->value()));
        }
    }
    if (flows.size() < 2) {
        return {};
    }
    double sum = 0.0;
    for (const double flow : flows) {
        sum += flow;
    }
    const double mean = sum / static_cast<double>(flows.size());
    return ConditionsViewModel::tr("Caught at %1 outlets: the least gives %2 of their mean.")
        .arg(QString::number(flows.size()),
             whole_percent(formatter, *std::ranges::min_element(flows) / mean));
}

}  // namespace

ConditionsViewModel::ConditionsViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent},
      record_{record},
      air_{new FormModel{record.context().formatter, this}},
      water_{new FormModel{record.context().formatter, this}},
      instruments_{new FormModel{record.context().formatter, this}} {
    const auto lines = [this](const std::vector<std::string_view>& keys,
                              const std::function<Result<void>()>& stored) {
        return form_lines<Conditions>([this]() -> Conditions& { return record_.visit().conditions; }, keys,
                                      stored);
    };
    const auto save = [this] { return record_.save_visit(); };
    air_->set_fields(
        lines({"outside_dry_bulb", "outside_humidity", "outside_wet_bulb", "outside_dew_point", "behind_pad",
               "house_temperature", "house_humidity", "static_pressure", "face_velocity", "barometer",
               "bird_age_days"},
              [this]() -> Result<void> {
                  const auto& now = record_.visit().conditions;
                  WF_CHECK(not_warmer(now.outside_wet_bulb, "outside wet bulb", now.outside_dry_bulb));
                  WF_CHECK(not_warmer(now.outside_dew_point, "outside dew point", now.outside_dry_bulb));
                  return record_.save_visit();
              }));
    water_->set_fields(lines({"hardness", "calcium_hardness", "alkalinity", "dissolved_solids", "ph",
                              "conductivity", "sump_ph", "sump_conductivity", "sump_temperature"},
                             save));
    instruments_->set_fields(lines({"thermometer_accuracy", "hygrometer_accuracy"}, save));
    const auto& formatter = record.context().formatter;
    PartsModel::Access banks;
    banks.count = [this] { return record_.file().house.banks.size(); };
    banks.title = [this](std::size_t i) {
        return QString::fromStdString(record_.file().house.banks[i].name);
    };
    banks.lines = [](std::size_t) { return std::vector<FormField>{}; };
    banks.more = [this](std::size_t i) { return bank_lines(i); };
    banks.results = [this](std::size_t i) { return bank_results(i); };
    banks_ = new PartsModel{formatter, std::move(banks), this};
    PartsModel::Access pumps;
    pumps.count = [this] { return record_.file().house.pumps.size(); };
    pumps.title = [this](std::size_t i) {
        return QString::fromStdString(record_.file().house.pumps[i].name);
    };
    pumps.lines = [this](std::size_t i) { return flow_lines(i, {"flow"}); };
    pumps.more = [this](std::size_t i) {
        return flow_lines(i, {"drawdown_fall", "drawdown_time", "meter_volume", "meter_time", "bucket_volume",
                              "bucket_time", "lost"});
    };
    pumps.results = [this](std::size_t i) { return flow_results(i); };
    flows_ = new PartsModel{formatter, std::move(pumps), this};
    connect(&record_, &VisitRecord::changed, this, [this] {
        air_->refresh();
        water_->refresh();
        instruments_->refresh();
        banks_->refresh();
        flows_->refresh();
        emit changed();
    });
}

ListedItem<PumpFlow>& ConditionsViewModel::flow_of(std::size_t pump) {
    const auto& id = record_.file().house.pumps[pump].id;
    const auto list = [this]() -> std::vector<PumpFlow>& { return record_.visit().conditions.flows; };
    return measured_.try_emplace(id.text, list, &PumpFlow::pump, id).first->second;
}

ListedItem<BankConditions>& ConditionsViewModel::at_bank(std::size_t bank) {
    const auto& id = record_.file().house.banks[bank].id;
    const auto list = [this]() -> std::vector<BankConditions>& {
        return record_.visit().conditions.at_banks;
    };
    return at_banks_.try_emplace(id.text, list, &BankConditions::bank, id).first->second;
}

std::vector<FormField> ConditionsViewModel::flow_lines(std::size_t pump,
                                                       const std::vector<std::string_view>& keys) {
    auto& flow = flow_of(pump);
    return form_lines<PumpFlow>([&flow]() -> PumpFlow& { return flow.item(); }, keys,
                                [this, &flow] { return flow.keep([this] { return record_.save_visit(); }); });
}

std::vector<FormField> ConditionsViewModel::bank_lines(std::size_t bank) {
    auto& at = at_bank(bank);
    const auto keep = [this, &at] { return at.keep([this] { return record_.save_visit(); }); };
    auto lines = form_lines<BankConditions>([&at]() -> BankConditions& { return at.item(); },
                                            {"behind_pad", "pressure_drop", "inlet_head"}, keep);
    append(lines, list_lines<FacePoint>([&at]() -> std::vector<FacePoint>& { return at.item().face_points; },
                                        {"speed"}, tr("Point %1"), most_face_points, keep));
    append(lines, list_lines<OutletCatch>([&at]() -> std::vector<OutletCatch>& { return at.item().catches; },
                                          {"at", "volume", "time"}, tr("Catch %1"), most_catches, keep));
    return lines;
}

QStringList ConditionsViewModel::flow_results(std::size_t pump) {
    const auto& formatter = record_.context().formatter;
    QStringList words;
    const auto* water = record_.water().pump(record_.file().house.pumps[pump].id);
    if (water == nullptr) {
        return words;
    }
    const bool only_entered = water->flows.size() == 1 && water->flows.front().from == FlowFrom::entered;
    for (const auto& evidence : water->flows) {
        if (only_entered) {
            break;  // it stands in its line
        }
        const bool used = &evidence == water->flow() && water->flows.size() > 1;
        const QString told =
            (used ? tr("%1, %2; this one is used.") : tr("%1, %2."))
                .arg(with_uncertainty(
                         formatter, any(evidence.flow),
                         evidence.expanded ? std::optional{any(*evidence.expanded)} : std::nullopt),
                     formatter.text(label_of(evidence.from)));
        words.append(evidence.advice ? told + u' ' + formatter.text(*evidence.advice) : told);
    }
    for (const auto& note : water->notes) {
        words.append(formatter.text(note));
    }
    return words;
}

QStringList ConditionsViewModel::bank_results(std::size_t index) {
    const auto& formatter = record_.context().formatter;
    const auto& file = record_.file();
    const auto& bank = file.house.banks[index];
    QStringList words;
    const auto face = face_of(file, bank);
    if (face && face->points) {
        words.append(face_sentence(formatter, *face->points));
    }
    words.append(cooling_sentence(formatter, effectiveness_of(file, weather_of(file), bank)));
    if (const auto* at = file.visit.conditions_at(bank.id)) {
        words.append(catch_sentence(formatter, *at));
    }
    words.removeAll(QString{});
    return words;
}

}  // namespace wetfront::ui
