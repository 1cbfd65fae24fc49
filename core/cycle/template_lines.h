// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "records/setting_template.h"

namespace wetfront {

/// One thing that the controller asks for, in its own label and unit.
struct TemplateLine {
    TemplateKey setting;
    int row = 0;         ///< of the trim rows, from 1; else 0
    std::string label;   ///< the firm's own
    std::string unit;    ///< as people write it: "s", "°F"; empty for a time of day
    std::string number;  ///< to be entered: "75", "09:30"; empty where nothing is, or nothing can be held
    std::optional<AnyQuantity> wanted;   ///< as advised, before this template; on-times from pump start
    std::optional<AnyQuantity> entered;  ///< what `number` says, as the controller counts
    std::vector<Message> changes;        ///< why `entered` differs from `wanted`
    std::vector<Message> problems;       ///< what this controller cannot do here
};

/// Settings as a controller can hold them, in the order in which it asks.
struct TemplateFit {
    std::vector<TemplateLine> lines;
    std::vector<Message> not_held;  ///< wanted, but the controller has no such setting
    TimerSettings settings;         ///< what then stands in the timer, as the controller counts

    [[nodiscard]] bool fits() const;  ///< no problem anywhere
    [[nodiscard]] const TemplateLine* line(TemplateKey key, int row = 0) const;
};

}  // namespace wetfront
