// SPDX-License-Identifier: Apache-2.0
#include "cycle/proof.h"

#include <algorithm>
#include <cmath>

#include "cycle/drip_return.h"
#include "cycle/labels.h"
#include "cycle/proof_causes.h"
#include "cycle/pump_runs.h"
#include "records/setting_ranges.h"

namespace wetfront {
namespace {

// Times worked out or typed in different units are the same below a millionth of a second.
constexpr double never_rests_within_s = 1e-6;

Duration larger(Duration a, Duration b) {
    return std::max(a, b);
}

Message name_of(const House& house, const ProofLine& line) {
    if (const auto* bank = house.bank(line.bank)) {
        return {WF_TEXT("%1, %2"), {label_of(house, *bank), label_of(line.what)}};
    }
    const auto* pump = house.pump(line.pump);
    return pump == nullptr ? label_of(line.what)
                           : Message{WF_TEXT("%1, %2"), {label_of(house, *pump), label_of(line.what)}};
}

ProofLine line_about(ProofQuantity what, const Id& pump, const Id& bank) {
    ProofLine line;
    line.what = what;
    line.pump = pump;
    line.bank = bank;
    return line;
}

Message listed(const std::vector<Message>& items) {
    Message all;
    for (const auto& item : items) {
        all = all.empty() ? item : Message{WF_TEXT("%1; %2"), {std::move(all), item}};
    }
    return all;
}

/// What is compared with what is set: the timer's own settings, as far as they are there.
struct Set {
    std::optional<Duration> period;
    std::optional<Duration> on_least;
    std::optional<Duration> on_most;
    std::optional<Duration> base;
    bool never_rests = false;   ///< it has no cycle
    bool fill_missing = false;  ///< its on-times count from a full header, and no fill time is known
};

// In runs of the pump. Where its on-times count from a full header, the run may be any that the headers of
// its banks make of them.
Set set_in(const VisitFile& file, const VisitTimings& timings, const Timer& timer) {
    Set set;
    const auto* entered = file.visit.left_of(timer.id);
    set.never_rests = timer.kind == TimerKind::on_demand;
    if (entered == nullptr || set.never_rests) {
        return set;
    }
    const auto runs = pump_runs(file.house, timings, timer, without_unusual(*entered));
    const auto* left = &runs.settings;
    const auto spread = runs.fill ? runs.fill->longest - runs.fill->shortest : seconds(0.0);
    set.fill_missing = runs.fill_missing;
    const auto value = [](const Optional<Duration>& entry) {
        return entry ? std::optional{entry->value()} : std::nullopt;
    };
    set.period = value(left->period);
    set.base = value(left->base_on_time);
    if (set.base) {
        const Duration most = *set.base + spread;
        const auto ceiling = value(left->on_time_ceiling);
        set.on_least = set.base;
        set.on_most = timer.kind == TimerKind::trimmed && ceiling ? larger(most, *ceiling) : most;
        set.never_rests = set.period && in_seconds(most) >= in_seconds(*set.period) - never_rests_within_s;
    }
    if (set.never_rests) {
        set.on_most.reset();
    } else if (left->shown_on_time) {
        set.on_least = left->shown_on_time->value();
        set.on_most = *set.on_least + spread;
    }
    return set;
}

std::optional<Moment> changed_in(const TimerSettings* left) {
    return left != nullptr ? left->changed : std::nullopt;
}

/// Goes through one timer: which runs count, what was seen in them, what it should have been.
class Proving {
public:
    Proving(const VisitFile& file, const VisitTimings& timings, const TimerAdvice* advice, const Timer& timer,
            const ProofTolerances& tolerances, const EventUncertainty& uncertainty)
        : file_{file},
          timings_{timings},
          advice_{advice},
          timer_{timer},
          tolerances_{tolerances},
          uncertainty_{uncertainty},
          set_{set_in(file, timings, timer)},
          changed_{changed_in(file.visit.left_of(timer.id))},
          runs_{watched_runs(file.visit.marks, banks_of_pumps(file.house))},
          banks_{file.house.banks_of(timer)} {
        std::erase_if(runs_, [&](const WatchedRun& run) {
            return std::ranges::find(timer.pumps, run.pump) == timer.pumps.end();
        });
    }

    TimerProof proven() {
        TimerProof proof;
        proof.timer = timer_.id;
        const bool looked = std::ranges::any_of(banks_, [&](const PadBank* bank) {
            const auto* notes = file_.visit.proof_of_bank(bank->id);
            return notes != nullptr && (notes->even_drip || notes->dry_patch);
        });
        const bool watched = !runs_.empty() || looked;
        all_old_ = watched && leave_out_old();
        const bool early = watched && (all_old_ || leave_out_early_runs());
        for (const auto& pump : timer_.pumps) {
            const auto count = std::ranges::count(runs_, pump, &WatchedRun::pump);
            proof.runs = std::max(proof.runs, static_cast<int>(count));
            add_pump(pump);
        }
        for (const auto* bank : banks_) {
            add_bank(*bank);
        }
        if (early) {
            for (auto& line : lines_) {
                if (line.seen || line.answer) {
                    line.verdict = ProofVerdict::too_early;
                }
            }
            proof.runs = 0;
        }
        proof.lines = std::move(lines_);
        conclude(proof, watched, early);
        return proof;
    }

private:
    /// What was watched or answered before the last change says nothing of what is set now. True if nothing
    /// else is left; it stays then, to be shown.
    bool leave_out_old() {
        if (!changed_) {
            return false;
        }
        std::vector<WatchedRun> kept;
        std::ranges::copy_if(runs_, std::back_inserter(kept), [&](const WatchedRun& run) {
            const auto start = std::ranges::find(file_.visit.marks, run.start_mark, &Mark::id);
            return !before(Moment{start->at, start->wall}, *changed_);
        });
        const bool looked = std::ranges::any_of(banks_, [&](const PadBank* bank) {
            const auto* notes = standing(file_.visit.proof_of_bank(bank->id));
            return notes != nullptr && (notes->even_drip || notes->dry_patch);
        });
        if (kept.empty() && !looked) {
            return true;
        }
        runs_ = std::move(kept);
        return false;
    }

    /// None where they were answered before the last change.
    [[nodiscard]] const ProofNotes* standing(const ProofNotes* notes) const {
        const bool old =
            notes != nullptr && changed_ && notes->answered && before(*notes->answered, *changed_);
        return old && !all_old_ ? nullptr : notes;
    }

    /// True if none is left. Where it is too early for all of them they stay, to be shown.
    bool leave_out_early_runs() {
        if (set_.never_rests) {
            return false;
        }
        const auto* notes = standing(file_.visit.proof_of_timer(timer_.id));
        if (notes == nullptr || !notes->cycles_since_change) {
            return true;
        }
        const int first = static_cast<int>(std::floor(*notes->cycles_since_change));
        const int early = std::max(0, tolerances_.first_run_judged - first);
        std::vector<WatchedRun> kept;
        for (const auto& pump : timer_.pumps) {
            int number = 0;
            std::ranges::copy_if(runs_, std::back_inserter(kept), [&](const WatchedRun& run) {
                return run.pump == pump && number++ >= early;
            });
        }
        if (early > 0 && kept.empty()) {
            return true;
        }
        runs_ = std::move(kept);
        return false;
    }

    void add_pump(const Id& pump) {
        std::vector<Duration> periods;
        std::vector<Duration> on_times;
        for (const auto& run : runs_) {
            if (run.pump == pump && run.period) {
                periods.push_back(*run.period);
            }
            if (run.pump == pump && run.on_time) {
                on_times.push_back(*run.on_time);
            }
        }
        const auto seen = [&](const std::vector<Duration>& values) {
            // No share stands for the spread of a single one: a timer repeats itself as a clock does.
            return result_of(
                values, std::hypot(in_seconds(uncertainty_.hand), in_seconds(tolerances_.switching_seen)),
                std::nullopt, 0.0);
        };
        if (!set_.never_rests) {
            auto period = line_about(ProofQuantity::period, pump, {});
            period.seen = seen(periods);
            period.set = period.least = period.most = set_.period;
            compare_with_set(period, timer_.period_resolution);
        }
        auto on_time = line_about(ProofQuantity::on_time, pump, {});
        on_time.seen = seen(on_times);
        on_time.set = set_.base;
        on_time.least = set_.on_least;
        on_time.most = set_.on_most;
        // A pump that never rests has a run only where it stopped all the same.
        if (!set_.never_rests || (on_time.seen && on_time.least)) {
            compare_with_set(on_time, timer_.resolution);
        }
    }

    void compare_with_set(ProofLine& line, const Optional<Duration>& step) {
        const auto set = line.most ? line.most : line.least;
        line.tolerance = tolerances_.timer_least;
        if (set) {
            line.tolerance = larger(line.tolerance, tolerances_.timer_share * *set);
        }
        if (step) {
            line.tolerance = larger(line.tolerance, 0.5 * step->value());
        }
        line.expanded = line.seen ? line.seen->expanded : seconds(0.0);
        judge(line);
    }

    void add_bank(const PadBank& bank) {
        std::vector<Duration> fills;
        std::vector<Duration> drips;
        bool by_signal = false;
        for (const auto& run : runs_) {
            const auto* at = run.at(bank.id);
            if (at == nullptr) {
                continue;
            }
            by_signal = by_signal || run.by_signal;
            if (at->fill) {
                fills.push_back(*at->fill);
            }
            if (at->drip) {
                drips.push_back(*at->drip);
            }
        }
        const double start = by_signal ? in_seconds(uncertainty_.by_signal) : 0.0;
        const double hand = in_seconds(uncertainty_.hand);
        const double drip = in_seconds(uncertainty_.drip_or_patch);
        const double share = uncertainty_.single_reading_share;
        add_fill(bank, fills, std::hypot(hand, start));
        add_drip_return(bank, result_of(drips, std::hypot(hand, drip, start), std::nullopt, share));
        // Drip and stop are both timed from the same start, so its signal cancels.
        add_drip_before_stop(bank, result_of(drips, std::hypot(hand, drip), std::nullopt, share));

        const auto* notes = standing(file_.visit.proof_of_bank(bank.id));
        add_answer(bank, ProofQuantity::even_drip, notes != nullptr ? notes->even_drip : std::nullopt, true);
        add_answer(bank, ProofQuantity::dry_patch, notes != nullptr ? notes->dry_patch : std::nullopt, false);
    }

    void add_fill(const PadBank& bank, const std::vector<Duration>& values, double systematic) {
        const auto* timed = timings_.of(bank.id);
        const auto read = timed != nullptr ? timed->fill : std::nullopt;
        std::optional<Spread> spread;
        if (read && read->standard_deviation) {
            const double deviation = in_seconds(*read->standard_deviation);
            spread = Spread{deviation * deviation, read->count - 1};
        }
        auto line = line_about(ProofQuantity::fill, bank.pump, bank.id);
        line.seen = result_of(values, systematic, spread, uncertainty_.single_reading_share);
        expect_no_later_than(line, read, tolerances_.fill_least, tolerances_.fill_share);
    }

    void add_drip_return(const PadBank& bank, std::optional<TimingResult> seen) {
        auto line = line_about(ProofQuantity::drip_return, bank.pump, bank.id);
        line.seen = std::move(seen);
        expect_no_later_than(line, model_of(bank), tolerances_.drip_least, tolerances_.drip_share);
    }

    void expect_no_later_than(ProofLine& line, const std::optional<TimingResult>& expected, Duration least,
                              double share) {
        if (expected) {
            line.most = expected->mean;
            line.expected_expanded = expected->expanded;
            line.tolerance = larger(least, share * expected->mean);
        }
        if (line.seen) {
            line.expanded = expected ? difference(*line.seen, *expected).expanded : line.seen->expanded;
        }
        judge(line);
    }

    void add_drip_before_stop(const PadBank& bank, std::optional<TimingResult> seen) {
        const auto* on_time = line_of(ProofQuantity::on_time, bank.pump);
        if (set_.never_rests) {
            return;
        }
        auto line = line_about(ProofQuantity::drip_before_stop, bank.pump, bank.id);
        line.seen = std::move(seen);
        if (on_time != nullptr && on_time->seen) {
            line.most = on_time->seen->mean;
            line.expected_expanded = on_time->seen->expanded;
            line.expanded =
                line.seen ? difference(*line.seen, *on_time->seen).expanded : on_time->seen->expanded;
        }
        judge(line);
    }

    void add_answer(const PadBank& bank, ProofQuantity what, std::optional<bool> answer, bool good) {
        auto line = line_about(what, bank.pump, bank.id);
        line.answer = answer;
        if (answer) {
            line.verdict = *answer == good ? ProofVerdict::pass : ProofVerdict::fail;
        }
        lines_.push_back(std::move(line));
    }

    void judge(ProofLine& line) {
        if (line.seen) {
            const auto within = [&](const std::optional<Duration>& limit, double sign) {
                return limit ? std::optional{*limit + sign * line.tolerance} : std::nullopt;
            };
            line.verdict = line.least || line.most ? judged(line.seen->mean, line.expanded,
                                                            within(line.least, -1.0), within(line.most, 1.0))
                                                   : ProofVerdict::not_compared;
        }
        lines_.push_back(line);
    }

    /// What the model expects at the period and on-time that were seen, else at those that are set.
    [[nodiscard]] std::optional<TimingResult> model_of(const PadBank& bank) const {
        if (advice_ == nullptr || set_.never_rests) {
            return std::nullopt;
        }
        const auto advised = std::ranges::find(advice_->banks, bank.id, &BankAdvice::bank);
        const auto seen_or = [&](ProofQuantity what, std::optional<Duration> set) {
            const auto* line = line_of(what, bank.pump);
            return line != nullptr && line->seen ? std::optional{line->seen->mean} : set;
        };
        const auto period = seen_or(ProofQuantity::period, set_.period);
        const auto on_time = seen_or(ProofQuantity::on_time, set_.base);
        if (advised == advice_->banks.end() || !advised->question || !period || !on_time) {
            return std::nullopt;
        }
        return expected_drip_return(*advised->question, *period, *on_time);
    }

    [[nodiscard]] const ProofLine* line_of(ProofQuantity what, const Id& pump) const {
        const auto found = std::ranges::find_if(
            lines_, [&](const ProofLine& line) { return line.what == what && line.pump == pump; });
        return found == lines_.end() ? nullptr : &*found;
    }

    [[nodiscard]] static std::optional<TimingResult> result_of(const std::vector<Duration>& values,
                                                               double systematic,
                                                               std::optional<Spread> spread, double share) {
        auto result = evaluate(values, seconds(systematic), spread, share);
        return result ? std::optional{std::move(result).value()} : std::nullopt;
    }

    void conclude(TimerProof& proof, bool watched, bool early) const {
        if (!watched) {
            proof.verdict = ProofVerdict::not_watched;
            proof.text = WF_TEXT("Not done: no run of the pump was watched.");
            return;
        }
        if (early) {
            proof.verdict = ProofVerdict::too_early;
            if (all_old_) {
                proof.text = {
                    WF_TEXT("Not judged: the settings left were changed after this was watched. Watch "
                            "again, from run number %1 after the change."),
                    {tolerances_.first_run_judged}};
                return;
            }
            const auto* notes = standing(file_.visit.proof_of_timer(timer_.id));
            proof.text =
                notes == nullptr || !notes->cycles_since_change
                    ? Message{WF_TEXT("Not judged: how many runs went by since the last change was not "
                                      "entered; the first that counts is number %1."),
                              {tolerances_.first_run_judged}}
                    : Message{
                          WF_TEXT("Not judged yet: too early after the change of a setting. The first run "
                                  "that counts is number %1."),
                          {tolerances_.first_run_judged}};
            return;
        }
        std::vector<Message> failed;
        std::vector<Message> close;
        for (const auto& line : proof.lines) {
            if (line.verdict == ProofVerdict::fail) {
                failed.push_back(name_of(file_.house, line));
            } else if (line.verdict == ProofVerdict::too_close) {
                close.push_back(name_of(file_.house, line));
            }
        }
        proof.missing = missing_from(proof);
        if (!failed.empty()) {
            proof.verdict = ProofVerdict::fail;
            proof.text = {WF_TEXT("Failed: %1."), {listed(failed)}};
            proof.causes = causes_of(timer_, proof.lines);
        } else if (!close.empty()) {
            proof.verdict = ProofVerdict::too_close;
            proof.text = {WF_TEXT("Too close to call: %1. Watch another cycle."), {listed(close)}};
        } else if (!proof.missing.empty()) {
            proof.verdict = ProofVerdict::incomplete;
            proof.text = {WF_TEXT("Not complete: nothing failed, but this is missing: %1."),
                          {listed(proof.missing)}};
        } else {
            proof.verdict = ProofVerdict::pass;
            proof.text =
                set_.never_rests
                    ? Message{WF_TEXT("Passed: the far end drips evenly and no part of the face is dry.")}
                    : Message{WF_TEXT("Passed: the pads run as set. Runs that count: %1."), {proof.runs}};
        }
    }

    /// A fill or a return of the drip that there is nothing to compare with is none of it: it was watched.
    [[nodiscard]] std::vector<Message> missing_from(const TimerProof& proof) const {
        std::vector<Message> missing;
        if (set_.fill_missing) {
            missing.emplace_back(
                WF_TEXT("the fill time of every bank, as this controller counts from a full header"));
        }
        for (const auto& line : proof.lines) {
            const bool of_timer = line.what == ProofQuantity::period || line.what == ProofQuantity::on_time;
            const bool looked_at =
                line.what == ProofQuantity::even_drip || line.what == ProofQuantity::dry_patch;
            if (line.verdict == ProofVerdict::not_watched && (!set_.never_rests || looked_at)) {
                // The drip is watched once and compared twice.
                if (line.what != ProofQuantity::drip_before_stop) {
                    missing.push_back(name_of(file_.house, line));
                }
            } else if (line.verdict == ProofVerdict::not_compared && of_timer) {
                missing.push_back({WF_TEXT("%1 as left in the timer"), {label_of(line.what)}});
            }
        }
        return missing;
    }

    const VisitFile& file_;
    const VisitTimings& timings_;
    const TimerAdvice* advice_;
    const Timer& timer_;
    const ProofTolerances& tolerances_;
    const EventUncertainty& uncertainty_;
    Set set_;
    std::optional<Moment> changed_;
    bool all_old_ = false;  ///< all that was watched and answered is older than the last change
    std::vector<WatchedRun> runs_;
    std::vector<const PadBank*> banks_;
    std::vector<ProofLine> lines_;
};

}  // namespace

Message label_of(ProofVerdict verdict) {
    switch (verdict) {
        case ProofVerdict::pass:
            return WF_TEXT("pass");
        case ProofVerdict::too_close:
            return WF_TEXT("too close to call");
        case ProofVerdict::fail:
            return WF_TEXT("fail");
        case ProofVerdict::not_watched:
            return WF_TEXT("not watched");
        case ProofVerdict::not_compared:
            return WF_TEXT("nothing to compare with");
        case ProofVerdict::too_early:
            return WF_TEXT("too early");
        case ProofVerdict::incomplete:
            return WF_TEXT("not complete");
    }
    return {};
}

Message label_of(ProofQuantity what) {
    switch (what) {
        case ProofQuantity::period:
            return WF_TEXT("Period");
        case ProofQuantity::on_time:
            return WF_TEXT("On-time");
        case ProofQuantity::fill:
            return WF_TEXT("Water at the far end");
        case ProofQuantity::drip_return:
            return WF_TEXT("Drip is back");
        case ProofQuantity::drip_before_stop:
            return WF_TEXT("Drip before the stop");
        case ProofQuantity::even_drip:
            return WF_TEXT("Even drip at the far end");
        case ProofQuantity::dry_patch:
            return WF_TEXT("Dry patch on the face");
    }
    return {};
}

const TimerProof* ProofRun::of(const Id& timer) const {
    const auto found = std::ranges::find(timers, timer, &TimerProof::timer);
    return found == timers.end() ? nullptr : &*found;
}

ProofVerdict judged(Duration seen, Duration expanded, std::optional<Duration> least,
                    std::optional<Duration> most) {
    const auto low = seen - expanded;
    const auto high = seen + expanded;
    if ((!least || low >= *least) && (!most || high <= *most)) {
        return ProofVerdict::pass;
    }
    const bool outside = (least && high < *least) || (most && low > *most);
    return outside ? ProofVerdict::fail : ProofVerdict::too_close;
}

Message proof_decision_rule() {
    return WF_TEXT(
        "Pass: what was seen, with its uncertainty U (95 %) on both sides, lies within what is expected and "
        "its "
        "tolerance. Fail: it lies wholly outside. Else too close to call. Runs before the third after a "
        "change "
        "are not judged; an uneven drip or a dry patch fails.");
}

ProofRun prove(const VisitFile& file, const VisitTimings& timings, const Advice& advice,
               const ProofTolerances& tolerances, const EventUncertainty& uncertainty) {
    ProofRun run;
    for (const auto& timer : file.house.timers) {
        run.timers.push_back(
            Proving{file, timings, advice.of(timer.id), timer, tolerances, uncertainty}.proven());
    }
    return run;
}

}  // namespace wetfront
