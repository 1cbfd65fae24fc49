// SPDX-License-Identifier: Apache-2.0
#include "rules/rules.h"

#include <algorithm>

namespace wetfront {

const std::vector<Rule>& all_rules() {
    static const std::vector<Rule> rules{
        {"pump-never-rests", pump_never_rests},
        {"base-below-fill", base_below_fill},
        {"ceiling-below-wet-through", ceiling_below_wet_through},
        {"gap-outlasts-wet-pad", gap_outlasts_wet_pad},
        {"pad-not-dry-at-start", pad_not_dry_at_start},
        {"flow-disagrees-with-timing", flow_disagrees_with_timing},
        {"fans-mixed", fans_mixed},
    };
    return rules;
}

std::vector<Finding> check(const VisitFile& file, const VisitTimings& timings, const Advice& advice,
                           WhichSettings which) {
    const auto& settings = which == WhichSettings::found ? file.visit.found : file.visit.left;
    const RuleInputs inputs{file, timings, advice, settings};
    std::vector<Finding> findings;
    for (const auto& rule : all_rules()) {
        std::ranges::move(rule.check(inputs), std::back_inserter(findings));
    }
    std::ranges::stable_sort(findings, std::greater{}, &Finding::severity);
    return findings;
}

}  // namespace wetfront
