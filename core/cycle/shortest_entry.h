// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "units/quantity_text.h"

namespace wetfront {

/// An entry that a program makes of a number that people chose: in the unit that writes it shortest, as 83
/// degF are no round number of kelvins. A share stays in percent.
template <class Q>
[[nodiscard]] Entered<Q> shortest_entry(Q value) {
    auto entry = Entered<Q>::of(value);
    if (KindOf<Q>::value == Kind::fraction) {
        return entry;
    }
    for (const auto& unit : units_of(KindOf<Q>::value)) {
        const auto text = print_any(any(value), unit);
        if (text.size() >= entry.text().size()) {
            continue;
        }
        if (auto shorter = Entered<Q>::parse(text, "")) {
            entry = std::move(shorter).value();
        }
    }
    return entry;
}

}  // namespace wetfront
