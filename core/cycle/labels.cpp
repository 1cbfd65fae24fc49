// SPDX-License-Identifier: Apache-2.0
#include "cycle/labels.h"

#include <algorithm>

namespace wetfront {
namespace {

template <class Part>
Message name_or_number(const std::vector<Part>& all, const Part& part, const char* numbered) {
    if (!part.name.empty()) {
        return verbatim(part.name);
    }
    const auto at = std::ranges::find(all, part.id, &Part::id);
    return {numbered, {static_cast<int>(at - all.begin()) + 1}};
}

}  // namespace

Message label_of(const House& house, const PadBank& bank) {
    return name_or_number(house.banks, bank, WF_TEXT("bank %1"));
}
Message label_of(const House& house, const Pump& pump) {
    return name_or_number(house.pumps, pump, WF_TEXT("pump %1"));
}
Message label_of(const House& house, const Timer& timer) {
    return name_or_number(house.timers, timer, WF_TEXT("timer %1"));
}

}  // namespace wetfront
