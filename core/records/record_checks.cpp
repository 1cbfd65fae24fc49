// SPDX-License-Identifier: Apache-2.0
#include <set>

#include "records/record_text.h"

namespace wetfront {
namespace {

std::string item_of(std::string_view list, std::size_t index, std::string_view key) {
    return std::string{list} + "[" + std::to_string(index) + "]" + (key.empty() ? "" : ".") +
           std::string{key};
}

/// Every key of the list once. `key_of` gives the text that must be unique; `key` names it in the error.
template <class T, class KeyOf>
Result<void> check_unique(const std::vector<T>& items, std::string_view list, std::string_view key,
                          KeyOf key_of) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string text = key_of(items[i]);
        if (!seen.insert(text).second) {
            return bad_input(item_of(list, i, key), text, "stands here twice; each must be different");
        }
    }
    return boost::outcome_v2::success();
}

constexpr auto own_id = [](const auto& record) -> const std::string& { return record.id.text; };

Error unresolved(std::string item, const Id& id, std::string_view what) {
    return bad_input(std::move(item), id.text, "no " + std::string{what} + " of this file has that id");
}

Result<void> check_names(const VisitFile& file) {
    if (file.farm.name.empty()) {
        return bad_input("farm.name", "", "give the farm a name");
    }
    if (file.house.name.empty()) {
        return bad_input("house.name", "", "give the house a name");
    }
    return boost::outcome_v2::success();
}

Result<void> check_controller(const Timer& timer, std::size_t index) {
    if (!timer.controller) {
        return boost::outcome_v2::success();
    }
    WF_CHECK(check_template(*timer.controller, item_of("house.timers", index, "controller")));
    if (timer.kind != timer.controller->kind) {
        return bad_input(
            item_of("house.timers", index, "kind"), std::string{enum_name(timer.kind)},
            "its controller is described as '" + std::string{enum_name(timer.controller->kind)} + "'");
    }
    return boost::outcome_v2::success();
}

Result<void> check_maintenance(const House& house) {
    WF_CHECK(check_unique(house.maintenance, "house.maintenance", "id", own_id));
    for (std::size_t i = 0; i < house.maintenance.size(); ++i) {
        const auto& done = house.maintenance[i];
        const auto list = item_of("house.maintenance", i, "banks");
        WF_CHECK(
            check_unique(done.banks, list, "", [](const Id& id) -> const std::string& { return id.text; }));
        for (std::size_t k = 0; k < done.banks.size(); ++k) {
            if (house.bank(done.banks[k]) == nullptr) {
                return unresolved(item_of(list, k, ""), done.banks[k], "bank");
            }
        }
        if (!done.pump.empty() && house.pump(done.pump) == nullptr) {
            return unresolved(item_of("house.maintenance", i, "pump"), done.pump, "pump");
        }
        if (done.banks.empty() && done.pump.empty()) {
            return bad_input(item_of("house.maintenance", i, ""), "",
                             "name the banks or the pump that this was done to");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> check_house(const House& house) {
    WF_CHECK(check_unique(house.pumps, "house.pumps", "id", own_id));
    WF_CHECK(check_unique(house.banks, "house.banks", "id", own_id));
    WF_CHECK(check_unique(house.timers, "house.timers", "id", own_id));
    WF_CHECK(check_unique(house.sensors, "house.sensors", "id", own_id));
    for (std::size_t i = 0; i < house.banks.size(); ++i) {
        if (house.pump(house.banks[i].pump) == nullptr) {
            return unresolved(item_of("house.banks", i, "pump"), house.banks[i].pump, "pump");
        }
    }
    for (std::size_t i = 0; i < house.timers.size(); ++i) {
        const auto& pumps = house.timers[i].pumps;
        const auto list = item_of("house.timers", i, "pumps");
        WF_CHECK(check_controller(house.timers[i], i));
        WF_CHECK(check_unique(pumps, list, "", [](const Id& id) -> const std::string& { return id.text; }));
        for (std::size_t k = 0; k < pumps.size(); ++k) {
            if (house.pump(pumps[k]) == nullptr) {
                return unresolved(item_of(list, k, ""), pumps[k], "pump");
            }
        }
    }
    return check_maintenance(house);
}

Result<void> check_settings(const House& house, const std::vector<TimerSettings>& all,
                            std::string_view list) {
    WF_CHECK(check_unique(all, list, "timer", [](const TimerSettings& settings) -> const std::string& {
        return settings.timer.text;
    }));
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (house.timer(all[i].timer) == nullptr) {
            return unresolved(item_of(list, i, "timer"), all[i].timer, "timer");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> check_proof(const House& house, const std::vector<ProofNotes>& all) {
    WF_CHECK(check_unique(all, "visit.proof", "", [](const ProofNotes& notes) {
        return notes.timer.empty() ? "bank " + notes.bank.text : "timer " + notes.timer.text;
    }));
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto& [timer, bank, even_drip, dry_patch, cycles, answered] = all[i];
        if (timer.empty() == bank.empty()) {
            return bad_input(item_of("visit.proof", i, ""), bank.text,
                             "name either the bank or the timer that these notes are about");
        }
        if (!timer.empty() && house.timer(timer) == nullptr) {
            return unresolved(item_of("visit.proof", i, "timer"), timer, "timer");
        }
        if (!bank.empty() && house.bank(bank) == nullptr) {
            return unresolved(item_of("visit.proof", i, "bank"), bank, "bank");
        }
        if (!timer.empty() && (even_drip || dry_patch)) {
            return bad_input(item_of("visit.proof", i, even_drip ? "even_drip" : "dry_patch"), "",
                             "belongs to a bank, not to a timer");
        }
        if (!bank.empty() && cycles) {
            return bad_input(item_of("visit.proof", i, "cycles_since_change"), "",
                             "belongs to a timer, not to a bank");
        }
    }
    return boost::outcome_v2::success();
}

bool belongs_to_pump(MarkKind kind) {
    return kind == MarkKind::pump_start || kind == MarkKind::pump_stop || kind == MarkKind::back_on_automatic;
}

Result<void> check_marks(const House& house, const Visit& visit) {
    WF_CHECK(check_unique(visit.marks, "visit.marks", "id", own_id));
    std::set<Id> ids;
    for (std::size_t i = 0; i < visit.marks.size(); ++i) {
        const auto& mark = visit.marks[i];
        ids.insert(mark.id);
        if (house.pump(mark.pump) == nullptr) {
            return unresolved(item_of("visit.marks", i, "pump"), mark.pump, "pump");
        }
        const auto bank_item = item_of("visit.marks", i, "bank");
        if (belongs_to_pump(mark.kind)) {
            if (!mark.bank.empty()) {
                return bad_input(bank_item, mark.bank.text,
                                 "a start or stop belongs to a pump; leave the bank out");
            }
            continue;
        }
        const auto* bank = house.bank(mark.bank);
        if (bank == nullptr) {
            return unresolved(bank_item, mark.bank, "bank");
        }
        if (bank->pump != mark.pump) {
            return bad_input(bank_item, mark.bank.text,
                             "that bank is fed by pump '" + bank->pump.text + "', this mark names '" +
                                 mark.pump.text + "'");
        }
    }
    WF_CHECK(check_unique(visit.set_aside, "visit.set_aside", "end_mark",
                          [](const SetAside& aside) -> const std::string& { return aside.end_mark.text; }));
    for (std::size_t i = 0; i < visit.set_aside.size(); ++i) {
        if (!ids.contains(visit.set_aside[i].end_mark)) {
            return unresolved(item_of("visit.set_aside", i, "end_mark"), visit.set_aside[i].end_mark, "mark");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> check_photos(const House& house, const std::vector<Photo>& photos) {
    WF_CHECK(check_unique(photos, "visit.photos", "sha256",
                          [](const Photo& photo) -> const std::string& { return photo.sha256; }));
    for (std::size_t i = 0; i < photos.size(); ++i) {
        if (!is_sha256(photos[i].sha256)) {
            return bad_input(item_of("visit.photos", i, "sha256"), photos[i].sha256,
                             "a SHA-256 has 64 letters, 0-9 and a-f");
        }
        if (!photos[i].bank.empty() && house.bank(photos[i].bank) == nullptr) {
            return unresolved(item_of("visit.photos", i, "bank"), photos[i].bank, "bank");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> check_visit(const VisitFile& file) {
    const auto& visit = file.visit;
    if (visit.house != file.house.id) {
        return unresolved("visit.house", visit.house, "house");
    }
    if (visit.replaces == visit.id) {
        return bad_input("visit.replaces", visit.id.text, "a visit cannot replace itself");
    }
    WF_CHECK(check_unique(visit.ticks, "visit.ticks", "id",
                          [](const Tick& tick) -> const std::string& { return tick.id; }));
    const auto& flows = visit.conditions.flows;
    WF_CHECK(check_unique(flows, "visit.conditions.flows", "pump",
                          [](const PumpFlow& flow) -> const std::string& { return flow.pump.text; }));
    for (std::size_t i = 0; i < flows.size(); ++i) {
        if (file.house.pump(flows[i].pump) == nullptr) {
            return unresolved(item_of("visit.conditions.flows", i, "pump"), flows[i].pump, "pump");
        }
    }
    const auto& at_banks = visit.conditions.at_banks;
    WF_CHECK(check_unique(at_banks, "visit.conditions.at_banks", "bank",
                          [](const BankConditions& at) -> const std::string& { return at.bank.text; }));
    for (std::size_t i = 0; i < at_banks.size(); ++i) {
        if (file.house.bank(at_banks[i].bank) == nullptr) {
            return unresolved(item_of("visit.conditions.at_banks", i, "bank"), at_banks[i].bank, "bank");
        }
    }
    WF_CHECK(check_marks(file.house, visit));
    WF_CHECK(check_settings(file.house, visit.found, "visit.found"));
    WF_CHECK(check_settings(file.house, visit.left, "visit.left"));
    WF_CHECK(check_photos(file.house, visit.photos));
    return check_proof(file.house, visit.proof);
}

// Only what no weather can be; what is merely unlikely is left to the findings.
Result<void> check_design_day(const Farm& farm) {
    const auto& dry = farm.design_dry_bulb;
    const auto& wet = farm.design_wet_bulb;
    if (dry && wet && in_kelvin(wet->value()) > in_kelvin(dry->value())) {
        return bad_input("farm.design_wet_bulb", wet->text(),
                         "a wet bulb cannot be above farm.design_dry_bulb, here '" + dry->text() + "'");
    }
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> check_references(const VisitFile& file) {
    WF_CHECK(check_names(file));
    if (file.house.farm != file.farm.id) {
        return unresolved("house.farm", file.house.farm, "farm");
    }
    WF_CHECK(check_house(file.house));
    WF_CHECK(check_visit(file));
    return check_design_day(file.farm);
}

}  // namespace wetfront
