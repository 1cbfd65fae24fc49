// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/houses_model.h"

#include <algorithm>

#include "rules/rules.h"

namespace wetfront::ui {

double aspect_of(const PadBank& bank) {
    return bank.length && bank.height ? in_si(bank.length->value()) / in_si(bank.height->value()) : 0.0;
}

HousesModel::HousesModel(const Context& context, QObject* parent)
    : QAbstractListModel{parent}, context_{context}, turn_{new QTimer{this}} {
    turn_->setInterval(0);
    connect(turn_, &QTimer::timeout, this, &HousesModel::take_turn);
}

int HousesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> HousesModel::roleNames() const {
    return {{IdRole, "houseId"}, {HouseRole, "house"}, {FarmRole, "farm"},           {VisitsRole, "visits"},
            {OpenRole, "open"},  {WorstRole, "worst"}, {LastFoundRole, "lastFound"}, {BanksRole, "banks"}};
}

std::vector<Id> HousesModel::listed() const {
    std::vector<Id> ids;
    for (const House house : rows_) {
        ids.push_back(houses_[house].house);
    }
    return ids;
}

Result<void> HousesModel::reload() {
    auto houses = context_.store.houses();
    if (!houses) {
        return houses.error();
    }
    houses_ = std::move(houses).value();
    texts_.reset();
    details_.clear();
    wanted_.clear();
    belongs_.clear();
    narrow();
    return boost::outcome_v2::success();
}

void HousesModel::seek(const QString& words) {
    if (words != words_) {
        words_ = words;
        narrow();
        emit narrowed();
    }
}

QString HousesModel::shown() const {
    const auto name = enum_name(shown_);
    return QString::fromLatin1(name.data(), static_cast<qsizetype>(name.size()));
}

void HousesModel::show(const QString& shown) {
    const auto wanted = enum_value<HousesShown>(shown.toStdString()).value_or(HousesShown::all);
    if (wanted != shown_) {
        shown_ = wanted;
        belongs_.clear();
        narrow();
        emit narrowed();
    }
}

void HousesModel::prepareToSeek() {
    if (!texts_) {
        texts_.emplace(houses_, context_.store);
    }
}

void HousesModel::narrow() {
    const QStringList sought = HouseWords::words_of(words_);
    if (!sought.isEmpty()) {
        prepareToSeek();
    }
    beginResetModel();
    rows_.clear();
    unasked_.clear();
    for (House house = 0; house < houses_.size(); ++house) {
        if (!sought.isEmpty() && !texts_->match(house, sought)) {
            continue;
        }
        const auto known = belongs_.find(house);
        if (known == belongs_.end() && needs_visits(shown_)) {
            unasked_.push_back(house);
        } else if (known == belongs_.end() ? belongs(houses_[house], shown_, context_) : known->second) {
            rows_.push_back(house);
        }
    }
    std::ranges::reverse(unasked_);
    endResetModel();
    emit countChanged();
    emit unaskedChanged();
    if (!unasked_.empty()) {
        turn_->start();
    }
}

const HousesModel::Details* HousesModel::details(House house) const {
    const auto [at, is_new] = details_.try_emplace(house);
    if (is_new) {
        wanted_.push_back(house);
        turn_->start();
    }
    return at->second ? &*at->second : nullptr;
}

void HousesModel::take_turn() {
    if (!wanted_.empty()) {
        work_out_one();
    } else if (!unasked_.empty()) {
        ask_one();
    } else {
        turn_->stop();
    }
}

void HousesModel::work_out_one() {
    const House house = wanted_.back();
    wanted_.pop_back();
    details_[house] = work_out(houses_[house]);
    const auto at = std::ranges::lower_bound(rows_, house);
    if (at != rows_.end() && *at == house) {
        const auto line = index(static_cast<int>(at - rows_.begin()));
        emit dataChanged(line, line, {WorstRole, LastFoundRole, BanksRole});
    }
}

void HousesModel::ask_one() {
    const House house = unasked_.back();
    unasked_.pop_back();
    const bool joins = belongs(houses_[house], shown_, context_);
    belongs_[house] = joins;
    if (joins) {
        const auto at = std::ranges::lower_bound(rows_, house);
        const auto row = static_cast<int>(at - rows_.begin());
        beginInsertRows({}, row, row);
        rows_.insert(at, house);
        endInsertRows();
        emit countChanged();
    }
    emit unaskedChanged();
}

HousesModel::Details HousesModel::work_out(const HouseSummary& summary) const {
    Details made;
    if (const auto house = context_.store.house(summary.house)) {
        for (const auto& bank : house.value().banks) {
            const double aspect = aspect_of(bank);
            made.banks.append(
                QVariantMap{{"pumpOnLeft", bank.pump_end == PumpEnd::left}, {"aspect", aspect}});
        }
    }
    if (summary.latest_visit) {
        if (const auto file = context_.store.visit_file(*summary.latest_visit)) {
            const auto timings = timings_of(file.value());
            const auto advice = advise(file.value());
            const auto findings = check(file.value(), timings, advice, WhichSettings::found);
            if (!findings.empty()) {
                const auto name = name_of(findings.front().severity);
                made.worst = QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
                made.last_found = context_.formatter.text(findings.front().message);
            }
        }
    }
    return made;
}

QVariant HousesModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) {
        return {};
    }
    const House number = rows_[static_cast<std::size_t>(index.row())];
    const auto& house = houses_[number];
    switch (role) {
        case IdRole:
            return QString::fromStdString(house.house.text);
        case HouseRole:
            return QString::fromStdString(house.house_name);
        case FarmRole:
            return QString::fromStdString(house.farm_name);
        case VisitsRole:
            return house.latest_visit_at ? tr("visits: %1, latest %2")
                                               .arg(QString::number(house.visits),
                                                    context_.formatter.date(*house.latest_visit_at))
                                         : tr("not visited yet");
        case OpenRole:
            return house.open_visit;
        case WorstRole: {
            const auto* known = details(number);
            return known != nullptr ? known->worst : QString{};
        }
        case LastFoundRole: {
            const auto* known = details(number);
            return known != nullptr     ? known->last_found
                   : house.latest_visit ? tr("Looking at the latest visit …")
                                        : QString{};
        }
        case BanksRole: {
            const auto* known = details(number);
            return known != nullptr ? known->banks : QVariantList{};
        }
        default:
            return {};
    }
}

}  // namespace wetfront::ui
