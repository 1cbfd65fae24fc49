// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/houses_model.h"

#include "rules/rules.h"

namespace wetfront::ui {

double aspect_of(const PadBank& bank) {
    return bank.length && bank.height ? in_si(bank.length->value()) / in_si(bank.height->value()) : 0.0;
}

HousesModel::HousesModel(const Context& context, QObject* parent)
    : QAbstractListModel{parent}, context_{context}, turn_{new QTimer{this}} {
    turn_->setInterval(0);
    connect(turn_, &QTimer::timeout, this, &HousesModel::work_out_one);
}

int HousesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> HousesModel::roleNames() const {
    return {{IdRole, "houseId"}, {HouseRole, "house"}, {FarmRole, "farm"},           {VisitsRole, "visits"},
            {OpenRole, "open"},  {WorstRole, "worst"}, {LastFoundRole, "lastFound"}, {BanksRole, "banks"}};
}

Result<void> HousesModel::reload() {
    auto houses = context_.store.houses();
    if (!houses) {
        return houses.error();
    }
    beginResetModel();
    houses_ = std::move(houses).value();
    details_.clear();
    wanted_.clear();
    endResetModel();
    emit countChanged();
    return boost::outcome_v2::success();
}

const HousesModel::Details* HousesModel::details(int row) const {
    const auto [at, is_new] = details_.try_emplace(row);
    if (is_new) {
        wanted_.push_back(row);
        turn_->start();
    }
    return at->second ? &*at->second : nullptr;
}

void HousesModel::work_out_one() {
    if (wanted_.empty()) {
        turn_->stop();
        return;
    }
    const int row = wanted_.back();
    wanted_.pop_back();
    details_[row] = work_out(houses_[static_cast<std::size_t>(row)]);
    emit dataChanged(index(row), index(row), {WorstRole, LastFoundRole, BanksRole});
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
    const auto& house = houses_[static_cast<std::size_t>(index.row())];
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
            const auto* known = details(index.row());
            return known != nullptr ? known->worst : QString{};
        }
        case LastFoundRole: {
            const auto* known = details(index.row());
            return known != nullptr     ? known->last_found
                   : house.latest_visit ? tr("Looking at the latest visit …")
                                        : QString{};
        }
        case BanksRole: {
            const auto* known = details(index.row());
            return known != nullptr ? known->banks : QVariantList{};
        }
        default:
            return {};
    }
}

}  // namespace wetfront::ui
