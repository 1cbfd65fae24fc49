// SPDX-License-Identifier: Apache-2.0
#include "batch/sheet_choice.h"

#include <algorithm>
#include <set>

namespace wetfront {
namespace {

bool holds(std::span<const Id> ids, const Id& id) {
    return std::ranges::find(ids, id) != ids.end();
}

bool lies_in(const SheetChoice& choice, WallTime started) {
    const std::string day = local_date(started);
    return (choice.from.empty() || choice.from <= day) && (choice.until.empty() || day <= choice.until);
}

}  // namespace

Result<std::vector<Id>> houses_chosen(const Store& store, std::span<const Id> houses,
                                      std::span<const Id> farms) {
    for (const auto& id : houses) {
        WF_CHECK(store.house(id));
    }
    for (const auto& id : farms) {
        WF_CHECK(store.farm(id));
    }
    WF_TRY(const auto all, store.houses());
    std::vector<Id> chosen;
    for (const auto& each : all) {
        if ((houses.empty() && farms.empty()) || holds(houses, each.house) || holds(farms, each.farm)) {
            chosen.push_back(each.house);
        }
    }
    return chosen;
}

Result<std::vector<Id>> visits_chosen(const Store& store, const Id& house, const SheetChoice& choice) {
    WF_TRY(const auto visits, store.visits_of(house));
    std::set<Id> replaced;
    for (const auto& visit : visits) {
        if (visit.replaces && (visit.is_signed || choice.visits == SheetVisits::last)) {
            replaced.insert(*visit.replaces);
        }
    }
    std::vector<Id> chosen;
    for (const auto& visit : visits) {  // the latest first
        const bool wanted = choice.visits == SheetVisits::last ? chosen.empty() : visit.is_signed;
        if (wanted && !replaced.contains(visit.visit) && lies_in(choice, visit.started)) {
            chosen.push_back(visit.visit);
        }
    }
    std::ranges::reverse(chosen);
    return chosen;
}

Result<std::string> parse_day(std::string_view text, std::string_view item) {
    const auto moment = parse_iso8601(std::string{text} + "T00:00:00Z", item);
    if (!moment || local_date(moment.value()) != text) {
        return bad_input(std::string{item}, text, "a day, as 2026-07-01");
    }
    return std::string{text};
}

}  // namespace wetfront
