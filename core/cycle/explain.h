// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/advice.h"

namespace wetfront {

/// What the reasons of one timer's cycle are told from.
struct CycleStory {
    const BankQuestion& question;  ///< of the deciding bank
    Message bank;                  ///< its name
    const CycleAnswer& answer;     ///< cycled
    const CycleMargins& margins;   ///< periods as the timer can hold them
    const CycleMargins& limits;    ///< the same, with the periods as the farm has them
    Duration resolution;
    bool resolution_assumed = false;
};

// One reason each, as data; texts in a grower's words, formulas in the model's symbols.

[[nodiscard]] Reason why_period(const CycleStory& story);
[[nodiscard]] Reason why_base(const CycleStory& story);
[[nodiscard]] Reason why_ceiling(const CycleStory& story);
[[nodiscard]] Reason why_trim_step(const CycleStory& story);
[[nodiscard]] Reason why_dead_band(const CycleMargins& margins);
[[nodiscard]] Reason why_review_interval(Duration period, const CycleMargins& margins);
/// `from`: start of the advised pad hours, where there are any.
[[nodiscard]] Reason why_rinse_at(const std::optional<AnyQuantity>& from);
/// `need` of the bank that takes longest, named `bank`.
[[nodiscard]] Reason why_rinse_length(const CycleStory& story, const RinseNeed& need,
                                      const BankQuestion& question, const Message& bank);
/// No rinse length can be given: a bank was not wetted from dry.
[[nodiscard]] Reason why_no_rinse_length(const Message& bank);

/// Period and on-time of continuous pumping.
[[nodiscard]] Reason why_continuous();
/// A setting that means nothing where the pump does not rest.
[[nodiscard]] Reason why_not_while_continuous();
/// A timer that runs its pumps on demand has no such setting.
[[nodiscard]] Reason why_not_on_demand();

/// What keeps a bank from being cycled at the period its bounds are for, each with the change that would
/// help.
[[nodiscard]] std::vector<Message> obstacles_of(const Message& bank, const BankQuestion& question,
                                                const OnTimeBounds& bounds, Duration resolution,
                                                const CycleMargins& margins);

inline constexpr const char* no_extra_cooling_source =
    "University of Georgia, Poultry Housing Tips 21(7), 2009, and 34(10), 2022";

}  // namespace wetfront
