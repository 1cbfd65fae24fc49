// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <compare>
#include <string>
#include <string_view>

#include "base/result.h"
#include "units/quantity_text.h"

namespace wetfront {

/// A time of day at the house: 0 to 1439 minutes after midnight.
struct TimeOfDay {
    int minutes = 0;

    [[nodiscard]] std::string text() const;  ///< "09:30"
    [[nodiscard]] static Result<TimeOfDay> parse(std::string_view text, std::string_view item);
    /// What has passed since midnight, to be shown as a time of day; and back, the nearest minute.
    [[nodiscard]] AnyQuantity since_midnight() const;
    [[nodiscard]] static TimeOfDay at(Duration since_midnight);
    friend auto operator<=>(const TimeOfDay&, const TimeOfDay&) = default;
};

}  // namespace wetfront
