// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/house_sieve.h"

#include <algorithm>
#include <unordered_map>

#include "rules/rules.h"
#include "store/house_visits.h"

namespace wetfront::ui {
namespace {

QString plain(const QString& text) {
    QString letters;
    for (const QChar sign : text.normalized(QString::NormalizationForm_KD)) {
        if (!sign.isMark()) {
            letters.append(sign);
        }
    }
    return letters.toCaseFolded();
}

std::optional<Severity> worst_left(const VisitFile& file) {
    const auto which = file.visit.left.empty() ? WhichSettings::found : WhichSettings::left;
    const auto findings = check(file, timings_of(file), advise(file), which);
    return findings.empty() ? std::nullopt : std::optional{findings.front().severity};
}

/// Of a house that cannot be read it is not known: rather looked at than not.
bool may_worsen(const Id& id, const Store& store) {
    const auto house = store.house(id);
    const auto visits = visit_files_of(store, id);
    return !house || !visits || is_worsening(house.value(), visits.value());
}

bool is_due(const VisitFile& latest, const HouseSummary& house, const Context& context) {
    return next_visit(latest, may_worsen(house.house, context.store)).due <= context.clock.wall_now();
}

}  // namespace

Revisit next_visit(const VisitFile& latest, bool worsening) {
    return revisit_after(latest.visit.started, worst_left(latest), worsening);
}

bool belongs(const HouseSummary& house, HousesShown shown, const Context& context) {
    if (shown == HousesShown::all) {
        return true;
    }
    if (shown == HousesShown::open) {
        return house.open_visit;
    }
    if (!house.latest_visit) {
        return shown == HousesShown::due;
    }
    if (shown == HousesShown::worsening) {
        return may_worsen(house.house, context.store);
    }
    const auto latest = context.store.visit_file(*house.latest_visit);
    if (!latest) {
        return true;
    }
    if (shown == HousesShown::due) {
        return is_due(latest.value(), house, context);
    }
    return worst_left(latest.value()) >= (shown == HousesShown::harm ? Severity::harm : Severity::fault);
}

HouseWords::HouseWords(const std::vector<HouseSummary>& houses, const Store& store) {
    std::unordered_map<std::string, QString> customers;
    if (const auto farms = store.farms()) {
        for (const auto& farm : farms.value()) {
            customers.emplace(farm.id.text, QString::fromStdString(farm.customer));
        }
    }
    texts_.reserve(houses.size());
    for (const auto& house : houses) {
        const auto customer = customers.find(house.farm.text);
        texts_.push_back(plain(QString::fromStdString(house.house_name) + u'\n' +
                               QString::fromStdString(house.farm_name) + u'\n' +
                               (customer == customers.end() ? QString{} : customer->second)));
    }
}

bool HouseWords::match(std::size_t house, const QStringList& words) const {
    return std::ranges::all_of(words, [&](const QString& word) { return texts_[house].contains(word); });
}

QStringList HouseWords::words_of(const QString& question) {
    return plain(question).simplified().split(u' ', Qt::SkipEmptyParts);
}

}  // namespace wetfront::ui
