// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/visit_view_model.h"

#include "viewmodels/caution_maps.h"

#include "viewmodels/record_form.h"

namespace wetfront::ui {
VisitViewModel::VisitViewModel(const Context& context, const PressClock& presses, const SheetPaper& paper,
                               VisitFile file, Known known, QObject* parent)
    : QObject{parent},
      record_{context, std::move(file), nullptr},
      steps_{new StepsModel{record_, this}},
      entry_undo_{new EntryUndoViewModel{record_, this}},
      agreement_{new FormModel{context.formatter, this}},
      safety_checks_{new ChecklistModel{record_, Step::safety, this}},
      leaving_checks_{new ChecklistModel{record_, Step::before_leaving, this}},
      house_{new HouseViewModel{record_, this}},
      limits_{new LimitsViewModel{record_, this}},
      stopwatch_{new StopwatchViewModel{record_, presses, std::move(known.earlier), this}},
      conditions_{new ConditionsViewModel{record_, this}},
      photos_{new PhotosViewModel{record_, paper.media, this}},
      found_{new SettingsViewModel{record_, WhichSettings::found, this}},
      advice_{new AdviceViewModel{record_, this}},
      day_{new DayViewModel{
          context.formatter, [this] { return std::optional{record_.file()}; },
          [media = paper.media, folder = paper.folder] { return QStringList{folder} + media(); }, this}},
      left_{new SettingsViewModel{record_, WhichSettings::left, this}},
      proof_{new ProofViewModel{record_, presses, this}},
      sheet_{
          new SheetViewModel{record_, paper, std::move(known.persons), std::move(known.instruments), this}},
      handout_{new HandoutViewModel{record_, *sheet_, paper, this}} {
    agreement_->set_fields(form_lines<StopAgreement>(
        [this]() -> StopAgreement& { return record_.visit().agreement; },
        {"longest_pump_off", "stop_temperature", "agreed_with"}, [this] { return record_.save_visit(); }));
    connect(&record_, &VisitRecord::changed, this, &VisitViewModel::changed);
    connect(&record_, &VisitRecord::entries_changed, day_, &DayViewModel::follow);
    connect(advice_->whatIf(), &WhatIfViewModel::derived, day_,
            [this] { day_->follow_tried(advice_->whatIf()->tried()); });
    connect(&record_, &VisitRecord::changed, this, &VisitViewModel::stepNoteChanged);
    connect(&record_, &VisitRecord::storage_problem_changed, this, &VisitViewModel::storageProblemChanged);
}

QString VisitViewModel::stepNote() const {
    if (record_.file().visit.is_signed()) {
        return sheet_->signedBy();
    }
    const auto& state = steps_->at(step_);
    return state.problem.isEmpty() ? state.summary : state.problem;
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
        emit stepNoteChanged();
    }
}

QVariantList VisitViewModel::cautions() const {
    return caution_maps(cautions_at(step_), record_.context().formatter);
}

QString VisitViewModel::codesComeFirst() const {
    return cautions_at(step_).empty() ? QString{} : record_.context().formatter.text(codes_come_first());
}

QString VisitViewModel::storageProblem() const {
    const QString problem = record_.storage_problem();
    if (problem.isEmpty() || record_.presses_not_stored() == 0) {
        return problem;
    }
    return tr("Presses not stored yet: %1. They are kept on screen and tried again: go on timing. Why: %2")
        .arg(QString::number(record_.presses_not_stored()), problem);
}

QString VisitViewModel::writePresses(const QString& folder) const {
    const auto file = record_.write_presses(folder);
    return file ? tr("Written to %1. Wetfront finds it there at its next start.").arg(file.value())
                : QString::fromStdString(file.error().text());
}

void VisitViewModel::show_again() {
    emit record_.changed();
    emit record_.entries_changed();
}

}  // namespace wetfront::ui
