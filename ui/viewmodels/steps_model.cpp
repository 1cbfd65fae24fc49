// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/steps_model.h"

#include <algorithm>

namespace wetfront::ui {
namespace {

QString short_of(const Formatter& formatter, const StopAgreement& agreement) {
    return StepsModel::tr("at most %1 off, stop at %2")
        .arg(formatter.text(any(agreement.longest_pump_off->value())),
             formatter.text(any(agreement.stop_temperature->value())));
}

StepState safety(VisitRecord& record) {
    const auto& visit = record.file().visit;
    const bool agreed = visit.agreement.longest_pump_off && visit.agreement.stop_temperature;
    const auto open = static_cast<int>(open_lines(Step::safety, visit).size());
    StepState state{Step::safety, StepsModel::tr("Safety"), agreed && open == 0, {}, {}};
    if (!agreed && !visit.marks.empty()) {
        state.problem =
            StepsModel::tr("The pump was timed without an agreement on how long the pads may be off.");
    }
    state.summary =
        agreed ? short_of(record.context().formatter, visit.agreement) : StepsModel::tr("nothing agreed yet");
    return state;
}

StepState house_and_banks(VisitRecord& record) {
    const auto& house = record.file().house;
    StepState state{Step::house_and_banks, StepsModel::tr("House and banks"), false, {}, {}};
    const bool described = std::all_of(house.banks.begin(), house.banks.end(), [&](const PadBank& bank) {
        return house.pump(bank.pump) != nullptr && bank.length && bank.height && bank.thickness;
    });
    const auto switched = [&](const Pump& pump) {
        return std::any_of(house.timers.begin(), house.timers.end(), [&](const Timer& timer) {
            return std::find(timer.pumps.begin(), timer.pumps.end(), pump.id) != timer.pumps.end();
        });
    };
    const auto lone = std::find_if_not(house.pumps.begin(), house.pumps.end(), switched);
    if (lone != house.pumps.end()) {
        state.problem = StepsModel::tr("No timer switches %1.").arg(QString::fromStdString(lone->name));
    }
    state.complete = !house.banks.empty() && described && lone == house.pumps.end() &&
                     record.file().farm.design_dry_bulb && record.file().farm.design_wet_bulb;
    state.summary = StepsModel::tr("pumps: %1, banks: %2")
                        .arg(QString::number(house.pumps.size()), QString::number(house.banks.size()));
    return state;
}

bool timed(const BankTimings& bank) {
    return bank.fill && ((bank.wet_through && bank.dry_out) || (bank.wet_off && bank.wet_return));
}

StepState time_the_water(VisitRecord& record) {
    const auto& banks = record.timings().banks;
    const auto done = std::count_if(banks.begin(), banks.end(), timed);
    StepState state{Step::time_the_water, StepsModel::tr("Time the water"), false, {}, {}};
    state.complete = !banks.empty() && done == static_cast<std::ptrdiff_t>(banks.size());
    state.summary =
        StepsModel::tr("%1 of %2 banks timed").arg(QString::number(done), QString::number(banks.size()));
    return state;
}

// Humidity, wet bulb or dew point: each tells the air beside its temperature. In the order in which they
// count.
QString humidity_entered(const Formatter& formatter, const Conditions& conditions) {
    if (conditions.outside_humidity) {
        return formatter.text(any(conditions.outside_humidity->value()));
    }
    if (conditions.outside_wet_bulb) {
        return StepsModel::tr("wet bulb %1").arg(formatter.text(any(conditions.outside_wet_bulb->value())));
    }
    if (conditions.outside_dew_point) {
        return StepsModel::tr("dew point %1").arg(formatter.text(any(conditions.outside_dew_point->value())));
    }
    return {};
}

StepState conditions(VisitRecord& record) {
    const auto& entered = record.file().visit.conditions;
    const auto& formatter = record.context().formatter;
    const QString humidity = humidity_entered(formatter, entered);
    StepState state{Step::conditions,
                    StepsModel::tr("Conditions"),
                    entered.outside_dry_bulb && !humidity.isEmpty(),
                    {},
                    {}};
    state.summary = state.complete
                        ? StepsModel::tr("outside %1, %2")
                              .arg(formatter.text(any(entered.outside_dry_bulb->value())), humidity)
                        : StepsModel::tr("outside temperature and humidity are needed");
    return state;
}

bool has_cycle(const TimerSettings* settings, const Timer& timer) {
    return settings != nullptr &&
           (timer.kind == TimerKind::on_demand || (settings->period && settings->base_on_time));
}

QString worst_word(const std::vector<Finding>& findings) {
    const auto count = [&](Severity severity) {
        return static_cast<int>(std::count_if(findings.begin(), findings.end(), [&](const Finding& finding) {
            return finding.severity == severity;
        }));
    };
    QStringList parts;
    if (const int n = count(Severity::harm); n > 0) {
        parts.append(StepsModel::tr("harm: %1").arg(n));
    }
    if (const int n = count(Severity::fault); n > 0) {
        parts.append(StepsModel::tr("fault: %1").arg(n));
    }
    if (const int n = count(Severity::waste); n > 0) {
        parts.append(StepsModel::tr("waste: %1").arg(n));
    }
    return parts.join(QStringLiteral(", "));
}

StepState settings_found(VisitRecord& record) {
    const auto& file = record.file();
    StepState state{
        Step::settings_found, StepsModel::tr("Settings found"), !file.house.timers.empty(), {}, {}};
    for (const auto& timer : file.house.timers) {
        state.complete = state.complete && has_cycle(file.visit.found_of(timer.id), timer);
    }
    auto on_settings = record.found_findings();
    std::erase_if(on_settings, [](const Finding& each) { return each.timer.empty(); });
    const QString worst = worst_word(on_settings);
    state.summary = !worst.isEmpty() ? worst
                    : state.complete ? StepsModel::tr("nothing wrong found")
                                     : StepsModel::tr("not all entered");
    return state;
}

StepState advice(VisitRecord& record) {
    const auto& given = record.advice();
    StepState state{
        Step::advice, StepsModel::tr("Advice"), !given.timers.empty() && given.missing.empty(), {}, {}};
    for (const auto& timer : given.timers) {
        for (const auto& bank : timer.banks) {
            state.complete = state.complete && bank.missing.empty();
        }
    }
    if (!given.timers.empty()) {
        state.summary = state.complete
                            ? (given.timers.front().cycled ? StepsModel::tr("a cycle is advised")
                                                           : StepsModel::tr("continuous pumping is advised"))
                            : StepsModel::tr("continuous pumping until the readings are there");
    }
    return state;
}

StepState settings_left(VisitRecord& record) {
    const auto& file = record.file();
    StepState state{Step::settings_left, StepsModel::tr("Settings left"), !file.house.timers.empty(), {}, {}};
    for (const auto& timer : file.house.timers) {
        state.complete = state.complete && has_cycle(file.visit.left_of(timer.id), timer);
    }
    // A clogged header is no fault of the settings: only what names a timer counts, the worst first.
    const auto& findings = record.left_findings();
    const auto worst =
        std::ranges::find_if(findings, [](const Finding& each) { return !each.timer.empty(); });
    if (worst != findings.end() && worst->severity >= Severity::fault && !file.visit.left.empty()) {
        state.problem = StepsModel::tr("The settings left have a %1.")
                            .arg(record.context().formatter.text(label_of(worst->severity)));
    }
    state.summary = state.complete ? StepsModel::tr("entered") : StepsModel::tr("not entered yet");
    return state;
}

// Proved is what was left in a timer: one without settings left has nothing to prove yet.
StepState proof(VisitRecord& record) {
    const auto& formatter = record.context().formatter;
    StepState state{Step::proof, StepsModel::tr("Proof run"), false, {}, StepsModel::tr("not done")};
    int left = 0;
    int passed = 0;
    for (const auto& timer : record.proof().timers) {
        left += record.file().visit.left_of(timer.timer) != nullptr ? 1 : 0;
        passed += timer.verdict == ProofVerdict::pass ? 1 : 0;
        if (timer.verdict == ProofVerdict::fail) {
            state.problem = formatter.text(timer.text);
        }
        if (timer.verdict != ProofVerdict::pass && timer.verdict != ProofVerdict::not_watched) {
            state.summary = formatter.text(label_of(timer.verdict));
        }
    }
    state.complete = left > 0 && passed == left;
    if (state.complete) {
        state.summary = formatter.text(label_of(ProofVerdict::pass));
    }
    return state;
}

StepState before_leaving(VisitRecord& record) {
    const auto open = static_cast<int>(open_lines(Step::before_leaving, record.file().visit).size());
    StepState state{Step::before_leaving, StepsModel::tr("Before leaving"), open == 0, {}, {}};
    state.summary =
        open == 0 ? StepsModel::tr("all back as it should be") : StepsModel::tr("lines open: %1").arg(open);
    return state;
}

StepState sheet(VisitRecord& record) {
    const bool is_signed = record.file().visit.is_signed();
    StepState state{Step::sheet, StepsModel::tr("Sheet"), is_signed, {}, {}};
    if (!is_signed && record.file().visit.persons.empty()) {
        state.summary = StepsModel::tr("nobody named yet");
    } else {
        state.summary = is_signed ? StepsModel::tr("signed") : StepsModel::tr("draft");
    }
    return state;
}

}  // namespace

StepsModel::StepsModel(VisitRecord& record, QObject* parent) : QAbstractListModel{parent}, record_{record} {
    work_out();
    connect(&record_, &VisitRecord::changed, this, [this] {
        work_out();
        emit dataChanged(index(0), index(count() - 1));
    });
}

void StepsModel::work_out() {
    // In the order of Step.
    steps_ = {safety(record_),        house_and_banks(record_), time_the_water(record_),
              conditions(record_),    settings_found(record_),  advice(record_),
              settings_left(record_), proof(record_),           before_leaving(record_),
              sheet(record_)};
}

int StepsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> StepsModel::roleNames() const {
    return {
        {TitleRole, "title"}, {CompleteRole, "complete"}, {ProblemRole, "problem"}, {SummaryRole, "summary"}};
}

QVariant StepsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const auto& state = steps_[static_cast<std::size_t>(index.row())];
    switch (role) {
        case TitleRole:
            return state.title;
        case CompleteRole:
            return state.complete;
        case ProblemRole:
            return state.problem;
        case SummaryRole:
            return state.summary;
        default:
            return {};
    }
}

}  // namespace wetfront::ui
