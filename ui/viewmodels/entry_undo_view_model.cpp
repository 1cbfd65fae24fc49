// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/entry_undo_view_model.h"

#include <utility>

#include "sheet/change_words.h"

namespace wetfront::ui {
namespace {

constexpr int while_ms = 8000;

}  // namespace

EntryUndoViewModel::EntryUndoViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent}, record_{record} {
    while_.setSingleShot(true);
    while_.setInterval(while_ms);
    connect(&while_, &QTimer::timeout, this, [this] { set_outcome({}); });
    connect(&record_, &VisitRecord::entries_changed, this, &EntryUndoViewModel::changed);
}

QString EntryUndoViewModel::words(UndoStep step, bool redone) const {
    if (!redone) {
        for (auto& change : step.changes) {
            std::swap(change.before, change.after);
        }
    }
    const auto& file = record_.file();
    const auto said = [&](const ChangedPlaces& places, const char* record) {
        return record_.context().formatter.text(change_words(file, places, record));
    };
    switch (step.kind) {
        case RecordKind::farm:
            return said(changed_places(file.farm, step.changes), WF_TEXT("Farm"));
        case RecordKind::house:
            return said(changed_places(file.house, step.changes), WF_TEXT("House"));
        case RecordKind::visit:
            return said(changed_places(file.visit, step.changes), WF_TEXT("Visit"));
        case RecordKind::setting_template:
            break;  // in no visit's timeline
    }
    return {};
}

QString EntryUndoViewModel::undoText() const {
    const auto step = record_.frozen() ? Result<std::optional<UndoStep>>{std::nullopt}
                                       : record_.context().store.can_undo(record_.file().visit.id);
    return step && step.value() ? tr("Undo: %1").arg(words(*step.value(), false)) : QString{};
}

QString EntryUndoViewModel::redoText() const {
    const auto step = record_.frozen() ? Result<std::optional<UndoStep>>{std::nullopt}
                                       : record_.context().store.can_redo(record_.file().visit.id);
    return step && step.value() ? tr("Redo: %1").arg(words(*step.value(), true)) : QString{};
}

void EntryUndoViewModel::undo() {
    told(record_.undo(), false);
}

void EntryUndoViewModel::redo() {
    told(record_.redo(), true);
}

void EntryUndoViewModel::told(const Result<std::optional<UndoStep>>& step, bool redone) {
    if (!step) {
        const bool refused = step.error().kind == Error::Kind::bad_input;
        const auto why = QString::fromStdString(refused ? step.error().accepted : step.error().text());
        set_outcome(redone ? tr("Not made again: %1").arg(why) : tr("Not taken back: %1").arg(why));
    } else if (step.value()) {
        set_outcome(redone ? tr("Made again: %1").arg(words(*step.value(), true))
                           : tr("Taken back: %1").arg(words(*step.value(), false)));
    }
}

void EntryUndoViewModel::set_outcome(const QString& outcome) {
    if (outcome.isEmpty()) {
        while_.stop();
    } else {
        while_.start();
    }
    outcome_ = outcome;
    emit outcomeChanged();
}

}  // namespace wetfront::ui
