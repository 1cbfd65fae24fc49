// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/removed_view_model.h"

#include <algorithm>

#include "store/house_visits.h"
#include "viewmodels/pump_off.h"

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

QString name_of(RecordKind kind) {
    const auto name = enum_name(kind);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

}  // namespace

RemovedViewModel::RemovedViewModel(const Context& context, QObject* parent)
    : QObject{parent}, context_{context} {}

std::optional<RemovedViewModel::Named> RemovedViewModel::named(const QString& kind, const QString& id) {
    const auto found = enum_value<RecordKind>(kind.toStdString());
    return found ? std::optional{Named{*found, Id{id.toStdString()}}} : std::nullopt;
}

QString RemovedViewModel::title(RecordKind kind, const Id& id) const {
    const auto& store = context_.store;
    const auto of_house = [&](const Id& house_id) {
        const auto house = store.house(house_id);
        const auto farm = house ? store.farm(house.value().farm) : Result<Farm>{Farm{}};
        return house && farm ? tr("%1, %2").arg(qstring(house.value().name), qstring(farm.value().name))
                             : QString{};
    };
    switch (kind) {
        case RecordKind::farm: {
            const auto farm = store.farm(id);
            return farm ? tr("Farm %1").arg(qstring(farm.value().name)) : QString{};
        }
        case RecordKind::house:
            return of_house(id);
        case RecordKind::visit: {
            const auto visit = store.visit(id);
            return visit ? tr("Visit of %1, %2")
                               .arg(context_.formatter.date(visit.value().started),
                                    of_house(visit.value().house))
                         : QString{};
        }
        case RecordKind::setting_template: {
            const auto described = store.setting_template(id);
            return described ? tr("Setting template %1").arg(qstring(described.value().name)) : QString{};
        }
    }
    return {};
}

QVariantList RemovedViewModel::records() const {
    QVariantList list;
    for (const auto& record : records_) {
        list.append(QVariantMap{
            {"kind", name_of(record.kind)},
            {"id", qstring(record.id.text)},
            {"title", title(record.kind, record.id)},
            {"detail", tr("removed %1").arg(context_.formatter.date_and_time(record.removed_at))}});
    }
    return list;
}

bool RemovedViewModel::holds(RecordKind kind, const Id& id) const {
    return std::ranges::any_of(
        records_, [&](const RemovedRecord& record) { return record.kind == kind && record.id == id; });
}

Result<void> RemovedViewModel::reload() {
    WF_TRY(records_, context_.store.removed());
    emit changed();
    return boost::outcome_v2::success();
}

void RemovedViewModel::forget() {
    if (!outcome_.isEmpty() || !problem_.isEmpty()) {
        tell({}, {}, {});
    }
}

void RemovedViewModel::tell(const QString& outcome, const QString& problem, std::optional<Named> undoable) {
    outcome_ = outcome;
    problem_ = problem;
    undoable_ = std::move(undoable);
    emit outcomeChanged();
}

QVariantMap RemovedViewModel::question(const QString& kind, const QString& id) const {
    const auto record = named(kind, id);
    if (!record) {
        return {};
    }
    QString goes;
    switch (record->first) {
        case RecordKind::house: {
            const auto visits = context_.store.visits_of(record->second);
            goes = visits ? tr("It goes out of sight, and with it its visits: %1.").arg(visits.value().size())
                          : qstring(visits.error().text());
            break;
        }
        case RecordKind::visit:
            goes = tr("Its entries, presses and sheet go out of sight.");
            break;
        case RecordKind::setting_template:
            goes = tr("It is offered to no timer any more. Timers that carry it keep their copy.");
            break;
        case RecordKind::farm:
            goes = tr("It goes out of sight.");
            break;
    }
    return {{"question", tr("Remove %1?").arg(title(record->first, record->second))},
            {"detail",
             tr("%1 Nothing is deleted: it can be brought back, at once or later from Removed at the houses.")
                 .arg(goes)}};
}

Result<bool> RemovedViewModel::pump_is_off_in(RecordKind kind, const Id& id) const {
    std::vector<VisitFile> files;
    if (kind == RecordKind::visit) {
        WF_TRY(auto file, context_.store.visit_file(id));
        files.push_back(std::move(file));
    } else if (kind == RecordKind::house) {
        WF_TRY(files, visit_files_of(context_.store, id));
    }
    return std::ranges::any_of(
        files, [&](const VisitFile& file) { return !pumps_off(file, context_.clock).empty(); });
}

bool RemovedViewModel::turn(const Named& record, bool removed) {
    const auto& [kind, id] = record;
    if (removed) {
        const auto off = pump_is_off_in(kind, id);
        if (!off || off.value()) {
            tell({},
                 off ? tr("Not removed: a pump of it is off for a test. Start it, or put it back on "
                          "automatic, "
                          "first.")
                     : qstring(off.error().text()),
                 {});
            return false;
        }
    }
    auto done = context_.store.set_removed(kind, id, removed);
    if (!done && done.error().kind == Error::Kind::bad_input) {
        // Where the refusal is about another record, that one stands above it.
        const bool of_itself = done.error().read == id.text;
        tell({},
             removed     ? tr("Not removed: %1").arg(qstring(done.error().accepted))
             : of_itself ? tr("Not brought back: %1").arg(qstring(done.error().accepted))
                         : tr("Not brought back: what it belongs to was removed too; bring that back first."),
             {});
        return false;
    }
    if (done) {
        done = reload();
    }
    if (!done) {
        tell({}, qstring(done.error().text()), {});
    }
    return static_cast<bool>(done);
}

void RemovedViewModel::remove(const QString& kind, const QString& id) {
    const auto record = named(kind, id);
    if (record && turn(*record, true)) {
        tell(tr("%1 is out of sight.").arg(title(record->first, record->second)), {}, record);
    }
}

void RemovedViewModel::undo() {
    if (const auto record = undoable_; record && turn(*record, false)) {
        tell(tr("%1 is back.").arg(title(record->first, record->second)), {}, {});
    }
}

void RemovedViewModel::bringBack(const QString& kind, const QString& id) {
    const auto record = named(kind, id);
    if (record && turn(*record, false)) {
        tell(tr("%1 is back.").arg(title(record->first, record->second)), {}, {});
    }
}

}  // namespace wetfront::ui
