// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/template_fit.h"

// Not for other folders.
namespace wetfront {

inline constexpr double same_time = 1e-6;  ///< s; far below any timer's step

/// What one fit is made from, and what is settled on the way.
struct TemplateWork {
    const SettingTemplate& described;
    const TimerSettings& wanted;
    const std::vector<BankQuestion>& banks;
    const CycleMargins& margins;
    bool advised;                        ///< what moves with the period is worked out anew
    std::optional<HeaderFill> measured;  ///< by the readings of all banks

    TemplateFit fit = {};
    std::optional<Duration> period = {};  ///< held, else wanted
    bool period_moved = false;
    bool never_rests = false;
    std::optional<HeaderFill> fill = {};  ///< where on-times count from a full header

    /// The (first) line of that setting; null if the controller has none.
    [[nodiscard]] TemplateLine* line(TemplateKey key);
};

[[nodiscard]] std::optional<Duration> duration_of(const std::optional<AnyQuantity>& value);

/// What the banks need in that period; none where nothing is known of them.
[[nodiscard]] std::optional<Duration> needed_run(const TemplateWork& work, Duration period);

/// The pump's run that stands behind an entered on-time, the header's filling included.
[[nodiscard]] std::optional<Duration> run_of(const TemplateWork& work, const TemplateLine* line,
                                             Duration HeaderFill::*which);

/// Puts a problem on each line that cannot stay as it is held: too short or too long for the banks, beyond
/// the band of start temperatures, against what the controller demands between settings.
void check_what_is_held(TemplateWork& work);

}  // namespace wetfront
