// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/houses_model.h"

#include "rules/rules.h"

namespace wetfront::ui {

double aspect_of(const PadBank& bank) {
    return bank.length && bank.height ? in_si(bank.length->value()) / in_si(bank.height->value()) : 0.0;
}

HousesModel::HousesModel(const Context& context, QObject* parent)
    : QAbstractListModel{parent}, context_{context} {}

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
    endResetModel();
    emit countChanged();
    return boost::outcome_v2::success();
}

const HousesModel::Details& HousesModel::details(const HouseSummary& summary) const {
    const auto at = details_.find(summary.house.text);
    if (at != details_.end()) {
        return at->second;
    }
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
    return details_.emplace(summary.house.text, std::move(made)).first->second;
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
        case WorstRole:
            return details(house).worst;
        case LastFoundRole:
            return details(house).last_found;
        case BanksRole:
            return details(house).banks;
        default:
            return {};
    }
}

}  // namespace wetfront::ui
