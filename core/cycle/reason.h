// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "units/message.h"

namespace wetfront {

/// Where a number came from.
enum class Origin { measured, entered, assumed, published, derived };
[[nodiscard]] Message label_of(Origin origin);

struct ReasonInput {
    Message name;
    std::string symbol;  ///< as in the formula: "t_fill"
    AnyQuantity value;
    Origin origin = Origin::derived;
    std::string source;  ///< publication; empty for what was measured, entered or assumed
};

enum class Rounding { none, up, down };

/// Why a setting is what it is, as data: enough to work it out again with a pencil.
struct Reason {
    std::string rule;     ///< "enough water", "no part dries", ...
    Message brief;        ///< why, in a few words that stand beside the number: "enough water for 5 min"
    Message explanation;  ///< the rule in words
    std::string formula;  ///< in symbols, those of the inputs
    std::vector<ReasonInput> inputs;
    std::optional<AnyQuantity> exact;  ///< before rounding
    Rounding rounding = Rounding::none;
    std::optional<AnyQuantity> resolution;
    std::string source;
};

}  // namespace wetfront
