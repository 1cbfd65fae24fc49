// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "viewmodels/advice_view_model.h"
#include "viewmodels/checklist_model.h"
#include "viewmodels/conditions_view_model.h"
#include "viewmodels/day_view_model.h"
#include "viewmodels/entry_undo_view_model.h"
#include "viewmodels/handout_view_model.h"
#include "viewmodels/house_view_model.h"
#include "viewmodels/limits_view_model.h"
#include "viewmodels/photos_view_model.h"
#include "viewmodels/proof_view_model.h"
#include "viewmodels/settings_view_model.h"
#include "viewmodels/sheet_view_model.h"
#include "viewmodels/steps_model.h"
#include "viewmodels/stopwatch_view_model.h"

namespace wetfront::ui {

/// One visit in the wizard: its steps, what stands on each.
class VisitViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString houseName READ houseName NOTIFY changed)
    Q_PROPERTY(QString farmName READ farmName NOTIFY changed)
    Q_PROPERTY(bool frozen READ frozen NOTIFY changed)
    Q_PROPERTY(wetfront::ui::StepsModel* steps READ steps CONSTANT)
    Q_PROPERTY(int step READ step WRITE goTo NOTIFY stepChanged)
    Q_PROPERTY(QString stepTitle READ stepTitle NOTIFY stepChanged)
    Q_PROPERTY(QString stepNote READ stepNote NOTIFY stepNoteChanged)  ///< its problem, or what was entered
    Q_PROPERTY(wetfront::ui::EntryUndoViewModel* entryUndo READ entryUndo CONSTANT)
    Q_PROPERTY(wetfront::ui::FormModel* agreement READ agreement CONSTANT)
    Q_PROPERTY(wetfront::ui::ChecklistModel* safetyChecks READ safetyChecks CONSTANT)
    Q_PROPERTY(wetfront::ui::ChecklistModel* leavingChecks READ leavingChecks CONSTANT)
    Q_PROPERTY(wetfront::ui::HouseViewModel* house READ house CONSTANT)
    Q_PROPERTY(wetfront::ui::LimitsViewModel* limits READ limits CONSTANT)
    Q_PROPERTY(wetfront::ui::StopwatchViewModel* stopwatch READ stopwatch CONSTANT)
    Q_PROPERTY(wetfront::ui::ConditionsViewModel* conditions READ conditions CONSTANT)
    Q_PROPERTY(wetfront::ui::PhotosViewModel* photos READ photos CONSTANT)
    Q_PROPERTY(wetfront::ui::SettingsViewModel* found READ found CONSTANT)
    Q_PROPERTY(wetfront::ui::AdviceViewModel* advice READ advice CONSTANT)
    Q_PROPERTY(wetfront::ui::DayViewModel* day READ day CONSTANT)
    Q_PROPERTY(wetfront::ui::SettingsViewModel* left READ left CONSTANT)
    Q_PROPERTY(wetfront::ui::ProofViewModel* proof READ proof CONSTANT)
    Q_PROPERTY(wetfront::ui::SheetViewModel* sheet READ sheet CONSTANT)
    Q_PROPERTY(wetfront::ui::HandoutViewModel* handout READ handout CONSTANT)
    Q_PROPERTY(
        QVariantList cautions READ cautions NOTIFY stepChanged)  ///< of this step: {level, text, source}
    Q_PROPERTY(QString codesComeFirst READ codesComeFirst NOTIFY stepChanged)
    Q_PROPERTY(QString storageProblem READ storageProblem NOTIFY storageProblemChanged)
    Q_PROPERTY(bool waitsForStorage READ waits_for_storage NOTIFY
                   storageProblemChanged)  ///< presses are only on screen yet

public:
    struct Known {
        VisitTimings earlier;         ///< timings of the latest visit before this one
        std::vector<Person> persons;  ///< to choose from, so that a name is typed once
        std::vector<Instrument> instruments;
    };
    VisitViewModel(const Context& context, const PressClock& presses, const SheetPaper& paper, VisitFile file,
                   Known known, QObject* parent);

    [[nodiscard]] QString houseName() const;
    [[nodiscard]] QString farmName() const;
    [[nodiscard]] bool frozen() const { return record_.frozen(); }
    [[nodiscard]] StepsModel* steps() const { return steps_; }
    [[nodiscard]] int step() const { return static_cast<int>(step_); }
    void goTo(int step);
    [[nodiscard]] QString stepTitle() const { return steps_->at(step_).title; }
    [[nodiscard]] QString stepNote() const;
    [[nodiscard]] EntryUndoViewModel* entryUndo() const { return entry_undo_; }
    [[nodiscard]] FormModel* agreement() const { return agreement_; }
    [[nodiscard]] ChecklistModel* safetyChecks() const { return safety_checks_; }
    [[nodiscard]] ChecklistModel* leavingChecks() const { return leaving_checks_; }
    [[nodiscard]] HouseViewModel* house() const { return house_; }
    [[nodiscard]] LimitsViewModel* limits() const { return limits_; }
    [[nodiscard]] StopwatchViewModel* stopwatch() const { return stopwatch_; }
    [[nodiscard]] ConditionsViewModel* conditions() const { return conditions_; }
    [[nodiscard]] PhotosViewModel* photos() const { return photos_; }
    [[nodiscard]] SettingsViewModel* found() const { return found_; }
    [[nodiscard]] AdviceViewModel* advice() const { return advice_; }
    [[nodiscard]] DayViewModel* day() const { return day_; }
    [[nodiscard]] SettingsViewModel* left() const { return left_; }
    [[nodiscard]] ProofViewModel* proof() const { return proof_; }
    [[nodiscard]] SheetViewModel* sheet() const { return sheet_; }
    [[nodiscard]] HandoutViewModel* handout() const { return handout_; }
    [[nodiscard]] QVariantList cautions() const;
    [[nodiscard]] QString codesComeFirst() const;
    [[nodiscard]] QString storageProblem() const;
    [[nodiscard]] const VisitFile& file() const { return record_.file(); }
    /// Presses that are only on screen yet.
    void close() { record_.close(); }  ///< the visit is left
    [[nodiscard]] bool waits_for_storage() const { return record_.presses_not_stored() > 0; }

    Q_INVOKABLE void storeNow() { record_.store_waiting(); }
    /// Says in one line where the presses are now, or why they are not there.
    Q_INVOKABLE QString writePresses(const QString& folder) const;

    /// The unit system changed: everything is shown anew, nothing is stored.
    void show_again();

signals:
    void changed();
    void stepChanged();
    void stepNoteChanged();
    void storageProblemChanged();

private:
    VisitRecord record_;
    StepsModel* steps_;
    EntryUndoViewModel* entry_undo_;
    FormModel* agreement_;
    ChecklistModel* safety_checks_;
    ChecklistModel* leaving_checks_;
    HouseViewModel* house_;
    LimitsViewModel* limits_;
    StopwatchViewModel* stopwatch_;
    ConditionsViewModel* conditions_;
    PhotosViewModel* photos_;
    SettingsViewModel* found_;
    AdviceViewModel* advice_;
    DayViewModel* day_;
    SettingsViewModel* left_;
    ProofViewModel* proof_;
    SheetViewModel* sheet_;
    HandoutViewModel* handout_;
    Step step_ = Step::safety;
};

}  // namespace wetfront::ui
