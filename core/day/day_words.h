// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <string>
#include <vector>

#include "day/day_result.h"
#include "units/message.h"

namespace wetfront {

/// What a day or a season comes to under two sets of settings, in words.
struct DayComparison {
    struct Row {
        Message what;
        std::vector<Message> values;  ///< one for each set of settings
        Message difference;           ///< second less first
    };
    std::vector<Row> rows;
    Message sentence;  ///< what a grower would repeat
};

/// Two or more: the first is how the timers were found, the second how they would stand as `way` says;
/// `currency` as people write it. What is not known under one of them is left out. A house that differs by
/// less than 0.25 K and pumping that differs by less than 2 % count as the same (assumed).
[[nodiscard]] DayComparison compared(std::span<const DayTotals> all, const std::string& currency,
                                     const Message& way = WF_TEXT("advised"));

/// Share of the cooling that pads could have given while they were called that dry pad lost, 0 to 1; 0 where
/// they were not called.
[[nodiscard]] double share_lost(const DayTotals& totals);

}  // namespace wetfront
