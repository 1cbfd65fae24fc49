// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/visit_view_model.h"

#include <algorithm>

#include "viewmodels/elapsed.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

constexpr std::int64_t urgent_ms = 120'000;

QString level_name(SignalWord word) {
    switch (word) {
        case SignalWord::danger:
            return QStringLiteral("danger");
        case SignalWord::warning:
            return QStringLiteral("warning");
        case SignalWord::caution:
            return QStringLiteral("caution");
        case SignalWord::notice:
            return QStringLiteral("notice");
    }
    return {};
}

}  // namespace

VisitViewModel::VisitViewModel(const Context& context, const PressClock& presses, const SheetPaper& paper,
                               VisitFile file, Known known, QObject* parent)
    : QObject{parent},
      record_{context, std::move(file), nullptr},
      steps_{new StepsModel{record_, this}},
      agreement_{new FormModel{context.formatter, this}},
      safety_checks_{new ChecklistModel{record_, Step::safety, this}},
      leaving_checks_{new ChecklistModel{record_, Step::before_leaving, this}},
      house_{new HouseViewModel{record_, this}},
      stopwatch_{new StopwatchViewModel{record_, presses, std::move(known.earlier), this}},
      conditions_{new ConditionsViewModel{record_, this}},
      found_{new SettingsViewModel{record_, WhichSettings::found, this}},
      advice_{new AdviceViewModel{record_, this}},
      left_{new SettingsViewModel{record_, WhichSettings::left, this}},
      sheet_{
          new SheetViewModel{record_, paper, std::move(known.persons), std::move(known.instruments), this}} {
    agreement_->set_fields(form_lines<StopAgreement>(
        [this]() -> StopAgreement& { return record_.visit().agreement; },
        {"longest_pump_off", "stop_temperature", "agreed_with"}, [this] { return record_.save_visit(); }));
    second_.setInterval(1000);
    connect(&second_, &QTimer::timeout, this, &VisitViewModel::pumpOffChanged);
    connect(&record_, &VisitRecord::changed, this, &VisitViewModel::follow_record);
    connect(&record_, &VisitRecord::storage_problem_changed, this, &VisitViewModel::storageProblemChanged);
    follow_record();
}

void VisitViewModel::follow_record() {
    if (longest_off_ms()) {
        second_.start();
    } else {
        second_.stop();
    }
    emit changed();
    emit pumpOffChanged();
}

QString VisitViewModel::houseName() const {
    return QString::fromStdString(record_.file().house.name);
}
QString VisitViewModel::farmName() const {
    return QString::fromStdString(record_.file().farm.name);
}

void VisitViewModel::goTo(int step) {
    if (step >= 0 && step < steps_->count() && step != static_cast<int>(step_)) {
        step_ = static_cast<Step>(step);
        emit stepChanged();
    }
}

QVariantList VisitViewModel::cautions() const {
    QVariantList list;
    for (const auto* caution : cautions_at(step_)) {
        list.append(QVariantMap{
            {"level", level_name(caution->word)},
            {"text", record_.context().formatter.text(caution->text)},
            {"source",
             QString::fromUtf8(caution->source.data(), static_cast<qsizetype>(caution->source.size()))}});
    }
    return list;
}

QString VisitViewModel::codesComeFirst() const {
    return cautions_at(step_).empty() ? QString{} : record_.context().formatter.text(codes_come_first());
}

// How long the pump that has been off longest has been off for a test.
std::optional<std::int64_t> VisitViewModel::longest_off_ms() const {
    if (record_.frozen() || record_.file().visit.ticked(pumps_automatic_line)) {
        return std::nullopt;
    }
    std::vector<Id> pumps;
    for (const auto& pump : record_.file().house.pumps) {
        pumps.push_back(pump.id);
    }
    std::optional<std::int64_t> longest;
    for (const auto& state : pump_states(record_.file().visit.marks, pumps)) {
        if (!state.running && state.since) {
            const auto off = ms_since(*state.since, record_.context().clock);
            if (off < longest_test_ms) {
                longest = std::max(longest.value_or(off), off);
            }
        }
    }
    return longest;
}

QString VisitViewModel::pumpOffText() const {
    const auto off = longest_off_ms();
    const auto& agreed = record_.file().visit.agreement.longest_pump_off;
    if (!off) {
        return {};
    }
    if (!agreed) {
        return tr("Pump off for %1").arg(record_.context().formatter.clock(*off, false));
    }
    const auto left = static_cast<std::int64_t>(in_seconds(agreed->value()) * 1000.0) - *off;
    return left >= 0 ? tr("Pump off: %1 left").arg(record_.context().formatter.clock(left, false))
                     : tr("Start the pump: %1 over").arg(record_.context().formatter.clock(-left, false));
}

bool VisitViewModel::pumpOffUrgent() const {
    const auto off = longest_off_ms();
    const auto& agreed = record_.file().visit.agreement.longest_pump_off;
    return off && agreed &&
           static_cast<std::int64_t>(in_seconds(agreed->value()) * 1000.0) - *off < urgent_ms;
}

QString VisitViewModel::storageProblem() const {
    const QString problem = record_.storage_problem();
    if (problem.isEmpty() || record_.marks_not_stored() == 0) {
        return problem;
    }
    return tr("Presses not stored yet: %1. They are kept on screen and tried again. %2")
        .arg(record_.marks_not_stored())
        .arg(problem);
}

void VisitViewModel::show_again() {
    emit record_.changed();
}

}  // namespace wetfront::ui
