// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/advice.h"
#include "records/finding.h"
#include "records/visit.h"
#include "timing/proof_marks.h"

namespace wetfront {

/// Tolerances of a proof run, all of them here and editable. All assumed.
struct ProofTolerances {
    // Period and on-time may differ by the largest of: this, this share of what is set, and half the smallest
    // step of that setting.
    Duration timer_least = seconds(2.0);
    double timer_share = 0.01;
    // Water may reach the far end later than in the readings by the larger of these. Earlier dries no pad.
    Duration fill_least = seconds(10.0);
    double fill_share = 0.20;
    // The drip may be back later than the model expects by the larger of these; and it must be back before
    // the stop, without any tolerance.
    Duration drip_least = seconds(20.0);
    double drip_share = 0.25;
    /// The first run after a change of settings that is judged.
    int first_run_judged = 3;
    /// Standard uncertainty of the time between two switchings of a pump, watched from one place: what the
    /// delays with which they are noticed differ by.
    Duration switching_seen = seconds(0.5);
};

enum class ProofVerdict {
    pass,
    too_close,  ///< to call: the uncertainty reaches over the limit
    fail,
    not_watched,   ///< nothing was seen of it
    not_compared,  ///< seen, but nothing is set, read or worked out to compare it with
    too_early,     ///< before the third run after a change, or before that change
    incomplete,    ///< of a timer: nothing failed, and something that belongs to a proof is missing
};
[[nodiscard]] Message label_of(ProofVerdict verdict);

enum class ProofQuantity {
    period,            ///< of a pump: start to start
    on_time,           ///< of a pump: start to stop
    fill,              ///< of a bank: water at the far end, against the readings
    drip_return,       ///< of a bank: even drip at the far end, against the model
    drip_before_stop,  ///< of a bank: the same against the stop of the pump
    even_drip,         ///< of a bank, looked at
    dry_patch,         ///< of a bank, looked at
};
[[nodiscard]] Message label_of(ProofQuantity what);

/// One quantity of one pump or bank: what was seen, what it should be, and the verdict.
struct ProofLine {
    ProofQuantity what = ProofQuantity::period;
    Id pump;
    Id bank;                           ///< empty for period and on-time
    std::optional<TimingResult> seen;  ///< over the runs that count
    std::optional<bool> answer;        ///< what was looked at: drips evenly, has a dry patch
    std::optional<Duration> set;       ///< as left in the timer: period, base on-time (from pump start)
    std::optional<Duration> least;     ///< expected: from here ...
    std::optional<Duration> most;      ///< ... to here; none: no limit on that side
    std::optional<Duration> expected_expanded;  ///< U of what is expected, where it was measured itself
    Duration tolerance = seconds(0.0);          ///< beyond least and most
    Duration expanded = seconds(0.0);           ///< U of seen minus expected: the one that decides
    ProofVerdict verdict = ProofVerdict::not_watched;
};

struct TimerProof {
    Id timer;
    ProofVerdict verdict = ProofVerdict::not_watched;
    Message text;                     ///< the verdict in one sentence, with what to do next
    int runs = 0;                     ///< watched that count, of the pump with the most
    std::vector<ProofLine> lines;     ///< pump by pump, then bank by bank
    std::vector<Message> missing;     ///< what has to be seen or entered before it can be called a pass
    std::vector<LikelyCause> causes;  ///< of a fail, likeliest first; common practice, no source
};

struct ProofRun {
    std::vector<TimerProof> timers;  ///< in the house's order

    [[nodiscard]] const TimerProof* of(const Id& timer) const;
};

/// The decision rule, guarded on both sides: with U the expanded uncertainty (95 %) of what is compared, pass
/// if [seen - U, seen + U] lies within [least, most], fail if it lies wholly outside, else too close to call.
/// For one expected value with a tolerance on both sides: pass if |seen - expected| + U <= tolerance, fail if
/// |seen - expected| - U > tolerance. After JCGM 106:2012, guarded acceptance and guarded rejection with a
/// guard band of U; read second hand.
[[nodiscard]] ProofVerdict judged(Duration seen, Duration expanded, std::optional<Duration> least,
                                  std::optional<Duration> most);
/// The same in one sentence, for people.
[[nodiscard]] Message proof_decision_rule();

/// Compares what was watched in the proof run with the settings left, with the readings and with the model,
/// in the weather of the readings. Never fails for what is missing: it says what is.
///
/// A trimmed timer's on-time may be anything from its base to its ceiling; where the on-time that it shows
/// was entered, it is compared with that. A timer that never rests has no period to prove, and a run of it
/// must only not be shorter than was set. An uneven drip or a dry patch fails outright. Runs before the third
/// after a change don't count; where the number is not entered, none does. Nor does what was watched or
/// answered before the settings left were changed, where the record knows when that was.
[[nodiscard]] ProofRun prove(const VisitFile& file, const VisitTimings& timings, const Advice& advice,
                             const ProofTolerances& tolerances = {},
                             const EventUncertainty& uncertainty = {});

}  // namespace wetfront
