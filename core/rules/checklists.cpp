// SPDX-License-Identifier: Apache-2.0
#include "rules/checklists.h"

#include <algorithm>

namespace wetfront {
namespace {

const std::vector<ChecklistLine>& safe_and_fit() {
    static const std::vector<ChecklistLine> lines{
        {"safety.biosecurity", WF_TEXT("Farm's biosecurity rules kept: clean footwear and equipment, line of "
                                       "separation, order of houses")},
        {"safety.isolation", WF_TEXT("Isolating devices of pumps and fans found; lock and tag at hand for "
                                     "work inside guards or wiring")},
        {"safety.ground_fault", WF_TEXT("Ground-fault protection tested on what is plugged in near water")},
        {"safety.fan_guards", WF_TEXT("Fan guards in place")},
        {"safety.ladder", WF_TEXT("Ladder sound, footed and clear of live parts, or not needed")},
        {"safety.chemicals", WF_TEXT("Chemicals in and near the sump known; bleach and acid kept apart")},
        {"safety.heat",
         WF_TEXT("Drinking water and rests planned for work in the heat; somebody knows where I am")},
        {"safety.agreed", WF_TEXT("Longest pump-off time and stop temperature agreed with the grower, before "
                                  "any pump is stopped")},
        {"safety.back_up_power", WF_TEXT("Back-up power of this house tested, as the grower reports"), false},
        {"fit.sump_full", WF_TEXT("Sump full")},
        {"fit.strainer_clean", WF_TEXT("Strainer clean")},
        {"fit.outlets_clean", WF_TEXT("Header outlets clean and running")},
        {"fit.float_works", WF_TEXT("Float valve works")},
        {"fit.no_leak", WF_TEXT("No leak at pump, riser, header or sump")},
    };
    return lines;
}

const std::vector<ChecklistLine>& left_as_it_must_be() {
    static const std::vector<ChecklistLine> lines{
        {"leaving.locks_off", WF_TEXT("My locks and tags removed, guards and covers back in place")},
        {"leaving.pumps_automatic", WF_TEXT("Every pump back on automatic")},
        {"leaving.fans_automatic", WF_TEXT("Every fan back on automatic")},
        {"leaving.breakers_on", WF_TEXT("Breakers on")},
        {"leaving.make_up_open", WF_TEXT("Make-up water open")},
        {"leaving.flush_shut", WF_TEXT("Flush valve shut")},
        {"leaving.alarm_armed", WF_TEXT("Alarm armed")},
        {"leaving.grower_told", WF_TEXT("Grower told what was changed and what is still open")},
    };
    return lines;
}

}  // namespace

const std::vector<ChecklistLine>& checklist(Step step) {
    static const std::vector<ChecklistLine> none;
    switch (step) {
        case Step::safety:
            return safe_and_fit();
        case Step::before_leaving:
            return left_as_it_must_be();
        case Step::house_and_banks:
        case Step::time_the_water:
        case Step::conditions:
        case Step::settings_found:
        case Step::advice:
        case Step::settings_left:
        case Step::proof:
        case Step::sheet:
            return none;
    }
    return none;
}

std::vector<const ChecklistLine*> open_lines(Step step, const Visit& visit) {
    std::vector<const ChecklistLine*> open;
    for (const auto& line : checklist(step)) {
        if (line.required && !visit.ticked(line.id)) {
            open.push_back(&line);
        }
    }
    return open;
}

std::vector<const Caution*> cautions_at(Step step) {
    std::vector<const Caution*> here;
    for (const auto& caution : cautions()) {
        if (std::ranges::find(caution.steps, step) != caution.steps.end()) {
            here.push_back(&caution);
        }
    }
    return here;
}

}  // namespace wetfront
