// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "records/record_places.h"
#include "units/message.h"

namespace wetfront {

/// What goes from `before` to `after`, in one line: "Period of Timer 1 as left, 5 min back to 6 min", "Pad
/// banks, Bank 3 taken out". Where it cannot be said well (many places, or items that moved within a list),
/// what was changed and in how many places: "House, changed places: 12". `file` gives the names of what is
/// spoken of; `record` is the sort of record.
[[nodiscard]] Message change_words(const VisitFile& file, const ChangedPlaces& changed,
                                   const Message& record);

/// One place of a record that is one way in its first state and another in its second.
struct TwoStates {
    Message place;
    Message first;  ///< empty: nothing stands there
    Message second;
};

/// Those of the places that people see; `before` of a change is the first state. `house` gives the names.
[[nodiscard]] std::vector<TwoStates> state_words(const House& house, const ChangedPlaces& changed);

}  // namespace wetfront
