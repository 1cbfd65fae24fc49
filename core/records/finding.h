// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "base/ids.h"
#include "units/message.h"

namespace wetfront {

enum class Severity {
    note,
    waste,  ///< water, power or pad life
    fault,  ///< does not do its job
    harm,   ///< people or birds can be hurt
};
[[nodiscard]] std::string_view name_of(Severity severity);  ///< "harm"
[[nodiscard]] Message label_of(Severity severity);

struct NamedValue {
    std::string name;  ///< key in files, "base_on_time"
    AnyQuantity value;
    friend bool operator==(const NamedValue&, const NamedValue&) = default;
};

/// What may be behind a deviation, and what to look at next to tell it from the others.
struct LikelyCause {
    Message cause;
    Message next_check;
    friend bool operator==(const LikelyCause&, const LikelyCause&) = default;
};

/// One thing that is wrong, wasteful or worth knowing, what it does and what to do about it.
struct Finding {
    std::string rule;  ///< id of the rule, "pump-never-rests"
    Severity severity = Severity::note;
    Id timer;         ///< empty where it is not about one timer
    Id bank;          ///< empty where it is not about one bank
    Message message;  ///< what is so and what it causes, one sentence with its numbers
    Message remedy;
    std::string source;  ///< publication, or "common practice, no source"
    std::vector<NamedValue> values;
    std::vector<LikelyCause> causes{};  ///< likeliest first; empty where there is nothing to find out

    friend bool operator==(const Finding&, const Finding&) = default;
};

}  // namespace wetfront
