// SPDX-License-Identifier: Apache-2.0
#include "records/house.h"

#include <algorithm>

namespace wetfront {
namespace {

template <class Record>
const Record* with_id(const std::vector<Record>& records, const Id& id) {
    const auto found =
        std::find_if(records.begin(), records.end(), [&](const Record& record) { return record.id == id; });
    return found == records.end() ? nullptr : &*found;
}

Optional<Duration> step_of(const SettingTemplate& described, TemplateKey key) {
    const auto* setting = described.setting(key);
    return setting == nullptr ? std::nullopt
                              : Optional<Duration>{Entered<Duration>::of(
                                    seconds(to_si(*unit_of(*setting), *setting->resolution)))};
}

}  // namespace

Message label_of(Upkeep what) {
    switch (what) {
        case Upkeep::outlets_cleaned:
            return WF_TEXT("Outlets cleaned");
        case Upkeep::new_pads:
            return WF_TEXT("New pads");
        case Upkeep::new_pump:
            return WF_TEXT("New pump");
        case Upkeep::other:
            return WF_TEXT("Other work");
    }
    return {};
}

bool Maintenance::done_to(const PadBank& bank) const {
    return (!pump.empty() && bank.pump == pump) || std::ranges::find(banks, bank.id) != banks.end();
}

void choose_controller(Timer& timer, const SettingTemplate& chosen) {
    timer.template_id = chosen.id;
    timer.controller = chosen;
    timer.kind = chosen.kind;
    timer.resolution = step_of(chosen, TemplateKey::base_on_time);
    timer.period_resolution = step_of(chosen, TemplateKey::period);
}

void forget_controller(Timer& timer) {
    timer.template_id = Id{};
    timer.controller.reset();
}

const SettingTemplate* described_controller(const Timer& timer) {
    return timer.controller && check_template(*timer.controller, "") ? &*timer.controller : nullptr;
}

bool counts_from_full_header(const Timer& timer) {
    return timer.controller && timer.controller->counts_from == CountsFrom::full_header;
}

bool can_hold(const Timer& timer, TemplateKey key) {
    return timer.kind == TimerKind::trimmed ||
           (timer.controller && timer.controller->setting(key) != nullptr);
}

const Pump* House::pump(const Id& wanted) const {
    return with_id(pumps, wanted);
}
const PadBank* House::bank(const Id& wanted) const {
    return with_id(banks, wanted);
}
const Timer* House::timer(const Id& wanted) const {
    return with_id(timers, wanted);
}

std::vector<const PadBank*> House::banks_of(const Timer& timer) const {
    std::vector<const PadBank*> driven;
    for (const auto& bank : banks) {
        if (std::find(timer.pumps.begin(), timer.pumps.end(), bank.pump) != timer.pumps.end()) {
            driven.push_back(&bank);
        }
    }
    return driven;
}

std::vector<const PadBank*> House::banks_of(const Pump& pump) const {
    std::vector<const PadBank*> fed;
    for (const auto& bank : banks) {
        if (bank.pump == pump.id) {
            fed.push_back(&bank);
        }
    }
    return fed;
}

}  // namespace wetfront
