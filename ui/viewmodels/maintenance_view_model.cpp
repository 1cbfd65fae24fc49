// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/maintenance_view_model.h"

#include <algorithm>

#include "records/record_text.h"

namespace wetfront::ui {
namespace {

constexpr std::int64_t day_ms = 86'400'000;
constexpr std::int64_t minute_ms = 60'000;
const QDate first_day{1970, 1, 1};

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

QDate day_of(WallTime time) {
    return QDate::fromString(qstring(local_date(time)), Qt::ISODate);
}

// When that day began, by the offset that holds there now.
WallTime start_of(const QDate& day, std::int32_t utc_offset_minutes) {
    return {first_day.daysTo(day) * day_ms - utc_offset_minutes * minute_ms, utc_offset_minutes};
}

QString name_of(Upkeep what) {
    const auto name = enum_name(what);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

}  // namespace

MaintenanceViewModel::MaintenanceViewModel(const Context& context, QObject* parent)
    : QObject{parent}, context_{context} {}

void MaintenanceViewModel::show(const House& house) {
    const bool other = house.id != house_.id;
    house_ = house;
    if (other) {
        tell({}, {}, {});
    }
    emit changed();
}

QString MaintenanceViewModel::title_of(const Maintenance& done) const {
    return tr("%1, %2").arg(context_.formatter.date(done.on), context_.formatter.text(label_of(done.what)));
}

QVariantList MaintenanceViewModel::events() const {
    auto latest_first = house_.maintenance;
    std::ranges::stable_sort(latest_first, std::ranges::greater{}, &Maintenance::on);
    QVariantList list;
    for (const auto& done : latest_first) {
        QStringList parts;
        if (const auto* pump = house_.pump(done.pump)) {
            parts.append(qstring(pump->name));
        }
        for (const auto& id : done.banks) {
            if (const auto* bank = house_.bank(id)) {
                parts.append(qstring(bank->name));
            }
        }
        if (!done.note.empty()) {
            parts.append(qstring(done.note));
        }
        list.append(QVariantMap{{"id", qstring(done.id.text)},
                                {"title", title_of(done)},
                                {"detail", parts.join(QStringLiteral("; "))}});
    }
    return list;
}

QVariantList MaintenanceViewModel::kinds() const {
    QVariantList list;
    for (const auto& each : EnumNames<Upkeep>::all) {
        list.append(QVariantMap{{"value", name_of(each.value)},
                                {"text", context_.formatter.text(label_of(each.value))}});
    }
    return list;
}

QString MaintenanceViewModel::what() const {
    return name_of(draft_.what);
}

void MaintenanceViewModel::setWhat(const QString& what) {
    if (const auto found = enum_value<Upkeep>(what.toStdString())) {
        draft_.what = *found;
        emit draftChanged();
    }
}

QVariantList MaintenanceViewModel::pumps() const {
    QVariantList list;
    for (const auto& pump : house_.pumps) {
        list.append(QVariantMap{{"value", qstring(pump.id.text)}, {"text", qstring(pump.name)}});
    }
    return list;
}

void MaintenanceViewModel::setPump(const QString& id) {
    pump_ = Id{id.toStdString()};
    emit draftChanged();
}

QVariantList MaintenanceViewModel::banks() const {
    QVariantList list;
    for (const auto& bank : house_.banks) {
        list.append(QVariantMap{{"id", qstring(bank.id.text)},
                                {"text", qstring(bank.name)},
                                {"chosen", banks_.contains(bank.id)}});
    }
    return list;
}

QString MaintenanceViewModel::day() const {
    return day_.toString(Qt::ISODate);
}

void MaintenanceViewModel::setNote(const QString& note) {
    draft_.note = note.trimmed().toStdString();
    emit draftChanged();
}

void MaintenanceViewModel::begin() {
    draft_ = Maintenance{};
    banks_.clear();
    for (const auto& bank : house_.banks) {
        banks_.insert(bank.id);
    }
    pump_ = house_.pumps.empty() ? Id{} : house_.pumps.front().id;
    today_ = day_of(context_.clock.wall_now());
    day_ = today_;
    tell({}, {}, {});
    emit draftChanged();
}

void MaintenanceViewModel::toggleBank(const QString& id) {
    const Id bank{id.toStdString()};
    if (banks_.erase(bank) == 0) {
        banks_.insert(bank);
    }
    emit draftChanged();
}

void MaintenanceViewModel::set_day(const QDate& day) {
    if (day >= first_day && day <= today_) {
        day_ = day;
        emit draftChanged();
    }
}

void MaintenanceViewModel::moveDay(int days) {
    set_day(day_.addDays(days));
}

void MaintenanceViewModel::moveMonth(int months) {
    set_day(std::min(day_.addMonths(months), today_));
}

bool MaintenanceViewModel::keep(std::vector<Maintenance> maintenance) {
    // As it is stored now, whatever was entered in a visit meanwhile.
    auto house = context_.store.house(house_.id);
    if (house) {
        house.value().maintenance = std::move(maintenance);
        if (const auto saved = context_.store.save(house.value()); !saved) {
            house = saved.error();
        }
    }
    if (!house) {
        tell({}, qstring(house.error().text()), {});
        return false;
    }
    house_ = std::move(house).value();
    emit houseChanged();
    emit changed();
    return true;
}

void MaintenanceViewModel::enter() {
    if (!complete()) {
        return;
    }
    const auto on = start_of(day_, context_.clock.wall_now().utc_offset_minutes);
    if (const auto fits = check_text(draft_.note, 200, tr("Note").toStdString()); !fits) {
        tell({}, qstring(fits.error().text()), {});
        return;
    }
    Maintenance done{context_.store.new_id(), on, draft_.what, {}, {}, draft_.note};
    if (toPump()) {
        done.pump = pump_;
    } else {
        for (const auto& bank : house_.banks) {
            if (banks_.contains(bank.id)) {
                done.banks.push_back(bank.id);
            }
        }
    }
    const auto before = house_.maintenance;
    auto with = before;
    with.push_back(done);
    if (keep(std::move(with))) {
        tell(tr("Entered: %1").arg(title_of(done)), {}, before);
    }
}

void MaintenanceViewModel::takeOut(const QString& id) {
    const auto before = house_.maintenance;
    const auto found = std::ranges::find(before, Id{id.toStdString()}, &Maintenance::id);
    if (found == before.end()) {
        return;
    }
    auto without = before;
    std::erase(without, *found);
    if (keep(std::move(without))) {
        tell(tr("Taken out: %1").arg(title_of(*found)), {}, before);
    }
}

void MaintenanceViewModel::undo() {
    if (before_ && keep(*before_)) {
        tell(tr("Taken back."), {}, {});
    }
}

void MaintenanceViewModel::tell(const QString& outcome, const QString& problem,
                                std::optional<std::vector<Maintenance>> before) {
    outcome_ = outcome;
    problem_ = problem;
    before_ = std::move(before);
    emit outcomeChanged();
}

}  // namespace wetfront::ui
