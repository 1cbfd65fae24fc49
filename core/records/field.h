// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <concepts>
#include <limits>
#include <type_traits>

#include "units/kinds.h"

// What the descriptions of all records share; the records stand in fields.h.
namespace wetfront {

/// What is said about one field of a record, once for files, schema, forms and checks.
struct Field {
    const char* key;       ///< in files
    const char* label;     ///< for people; translated
    const char* why = "";  ///< why it is asked, or what becomes assumed without it; translated
    double least =
        -std::numeric_limits<double>::infinity();  ///< accepted range, inclusive, in the SI unit of the kind
    double most = std::numeric_limits<double>::infinity();
    Scale scale = Scale::normal;  ///< which usual unit a form offers
    bool kept = false;  ///< the range is what is usual: a value outside it is kept as found, and flagged
};

/// Of what stands in a timer: whatever is found there is kept, with the range of what is usual.
[[nodiscard]] constexpr Field found_setting(const char* key, const char* label, double least, double most) {
    Field field{key, label, "", least, most};
    field.kept = true;
    return field;
}

template <class Record, class Wanted>
concept RecordOf = std::same_as<std::remove_cvref_t<Record>, Wanted>;

constexpr double hours = 3600.0;
constexpr double celsius_zero = 273.15;

}  // namespace wetfront
