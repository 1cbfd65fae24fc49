// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "records/sheet_content.h"
#include "records/visit.h"

namespace wetfront {

/// The steps of a visit in their usual order; a technician moves between them freely.
enum class Step {
    safety,
    house_and_banks,
    time_the_water,
    conditions,
    settings_found,
    advice,
    settings_left,
    proof,  ///< one or two cycles are watched
    before_leaving,
    sheet,
};

/// A line that is ticked. Its id stays for ever: ticks are kept under it.
struct ChecklistLine {
    std::string_view id;  ///< "safety.isolated"
    Message text;
    bool required = true;
};

/// Make the site safe, and see that the system is fit to be timed (step safety); pump, fans, breaker,
/// make-up, flush valve, alarm, grower (step before_leaving). Other steps have none.
[[nodiscard]] const std::vector<ChecklistLine>& checklist(Step step);

/// Required lines of that step that are not ticked.
[[nodiscard]] std::vector<const ChecklistLine*> open_lines(Step step, const Visit& visit);

/// A caution where the work is: hazard, result, how to avoid; published wording in our own words.
struct Caution {
    std::string_view id;
    SignalWord word = SignalWord::caution;
    std::vector<Step> steps;  ///< where it is shown
    Message text;             ///< hazard: result. How to avoid.
    std::string_view source;
};
[[nodiscard]] const std::vector<Caution>& cautions();
[[nodiscard]] std::vector<const Caution*> cautions_at(Step step);
/// Local codes and licensed trades come first: stands wherever cautions stand.
[[nodiscard]] Message codes_come_first();

}  // namespace wetfront
