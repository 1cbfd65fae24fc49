// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "records/field_change.h"
#include "records/fields.h"

namespace wetfront {

enum class PlaceHolds { quantity, number, yes_no, choice, reference, text };

/// A changed place with the field that it is, and whose it is.
struct ChangedPlace {
    Field field{"", ""};  ///< of a whole item, that of its list
    PlaceHolds holds = PlaceHolds::text;
    std::optional<Kind> kind;     ///< of a quantity
    std::string list;             ///< key of the outermost list that it is in: "banks"; empty: in none
    const char* list_label = "";  ///< and that list's label
    std::string item;  ///< of the item in that list: its name, or the id of the part that it is about; empty:
                       ///< the place is the item itself, or it has none
    const char* inner_list_label = "";     ///< of a list within that item: "Trim rows"
    std::optional<std::size_t> inner_row;  ///< counted from 0
    bool whole_item = false;               ///< the place is an item of the outermost list
    std::string before;                    ///< as in FieldChange; of a whole item, its name
    std::string after;
};

struct ChangedPlaces {
    /// Without those that people are not shown: ids, moments.
    std::vector<ChangedPlace> places;
    /// False if items moved up or down in a list: what was changed then is not what the places say.
    bool told_apart = true;
};

/// What an entry changed in a record, as deep as records go: a list or an item that came or went whole is
/// taken apart, down to an item that has a name. `present` is the record before or after the entry. Places
/// that records do not have are left out.
[[nodiscard]] ChangedPlaces changed_places(const Farm& present, const std::vector<FieldChange>& changes);
[[nodiscard]] ChangedPlaces changed_places(const House& present, const std::vector<FieldChange>& changes);
[[nodiscard]] ChangedPlaces changed_places(const Visit& present, const std::vector<FieldChange>& changes);

}  // namespace wetfront
