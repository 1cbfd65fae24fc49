// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "cycle/advice.h"
#include "records/finding.h"
#include "records/visit.h"

namespace wetfront {

/// What every rule is given. All plain values; a rule that lacks an input finds nothing, and says so in its
/// contract.
struct RuleInputs {
    const VisitFile& file;
    const VisitTimings& timings;
    const Advice& advice;
    const std::vector<TimerSettings>& settings;  ///< found or left; Rule::as_read says how much of them
};

/// One rule: a pure function from inputs to findings (none, or one for each timer or bank that it holds for).
struct Rule {
    const char* id;  ///< "pump-never-rests"; stable, in files
    std::vector<Finding> (*check)(const RuleInputs&);
    /// Is given settings as somebody read them. All others are given them without what lies outside its usual
    /// range: no rule judges a number that was hardly read right.
    bool as_read = false;
};

/// Every rule, in the order of the catalogue. Static storage.
[[nodiscard]] const std::vector<Rule>& all_rules();

enum class WhichSettings { found, left };

/// Findings of all rules, worst first, then in the order of rules and of the house.
[[nodiscard]] std::vector<Finding> check(const VisitFile& file, const VisitTimings& timings,
                                         const Advice& advice, WhichSettings which);

// The rules on runs and readings; those on single settings, trimming, rinse, hours and heat, on equipment,
// air and water stand by subject in the headers beside this one. Each comes with its limit, its source and
// its tests on both sides. A mean reading is the limit; where the setting lies within the expanded
// uncertainty on its safe side, the finding is a note: too close to call. A rule that lacks an input finds
// nothing for that timer or bank. A timer on demand has no period and no on-time, a fixed-interval timer no
// ceiling and no trim rows, and of rinse and of when pads may run either has what its controller is described
// with: what a record holds beyond that is not looked at. Messages speak of the pump's runs, from its start;
// what a remedy says to enter is as the timer's controller counts and holds it.

/// The base on-time, or a ceiling to which a trim row can lengthen it, is not below the period; or the timer
/// is on demand. Note where continuous running is intended, where no cycle fits, or where that is not known;
/// fault where a cycle was intended (unless none fits); waste otherwise, with what the advised cycle saves in
/// an hour: pumping, and water pumped where the flow of every pump of the timer was measured; where the
/// design day is known hour by hour, in that day too. Needs period and base on-time; for trimming the ceiling
/// and a row that adds time.
[[nodiscard]] std::vector<Finding> pump_never_rests(const RuleInputs& inputs);

/// The longest timed run (ceiling; on-time of a fixed-interval timer) is below the wet-through time of the
/// timer's slowest bank: no single run wets the far end of a dry pad. Fault; note where a rinse that pad
/// hours allow is at least as long as wet-through, or where the wetting column shows that several of the
/// shortest runs do it within an hour (assumed). Needs that setting and a used wet-through reading; silent
/// where the pump never rests.
[[nodiscard]] std::vector<Finding> ceiling_below_wet_through(const RuleInputs& inputs);

/// The shortest run below a bank's fill time: water never reaches the far end. Fault, with the share of the
/// pad that gets no water: from the filling front where outlets are described and flow is known, else at a
/// steady speed along the header; after the supply pipe where that is known. The shortest run is the base
/// with the trim row that takes off most; it may become shorter still where rows are taken off at every
/// review. Needs base on-time and a used fill reading; silent where the pump never rests, or never runs
/// (pump_never_runs speaks).
[[nodiscard]] std::vector<Finding> base_below_fill(const RuleInputs& inputs);

/// The far end is unsupplied (period - shortest run + fill, the shortest run as above) for longer than its
/// pad stays wet at the design hour, dry-out time x E_test / E_design: fault, with the dry time per period.
/// Longer than half of that: note. Where only a wet start was timed, longer than it proved: note. Needs
/// period, base on-time, fill and dry-out or wet start; without both weathers it judges in the weather of the
/// reading and says so. Silent where the pump never rests, and where the shortest run is below the fill time:
/// then the gap has no end, and base_below_fill speaks.
[[nodiscard]] std::vector<Finding> gap_outlasts_wet_pad(const RuleInputs& inputs);

/// Wet-through readings that started on a pad that was not dry: too short, kept and not used. One note a
/// bank, naming the readings; those set aside by a person are not named again. Needs no settings.
[[nodiscard]] std::vector<Finding> pad_not_dry_at_start(const RuleInputs& inputs);

/// A bank's evaporated share of the water by the stopwatch and by flow and air are more than 30 % apart: one
/// of the two measurements is wrong. Note, with both shares. Needs both; no settings.
[[nodiscard]] std::vector<Finding> flow_disagrees_with_timing(const RuleInputs& inputs);

/// Wet-through readings of a bank of which some had the fans running, some not or not stated: they don't time
/// the same thing, and count as without fans. Note. Needs no settings.
[[nodiscard]] std::vector<Finding> fans_mixed(const RuleInputs& inputs);

}  // namespace wetfront
