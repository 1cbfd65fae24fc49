// SPDX-License-Identifier: Apache-2.0
#include "day/optimiser.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "base/numbers.h"
#include "cycle/bank_cycle.h"

namespace wetfront {
namespace optimiser_detail {
namespace {

constexpr double same_pumping = 1e-9;
constexpr int most_steps = 20'000;
/// Bases tried between the shortest that can be trimmed long enough and the shortest that needs no trimming.
constexpr int bases_between = 6;
/// Rounds of trying neighbours; each one pumps less, so it ends by itself long before.
constexpr int most_rounds = 40;

/// On-times counted in steps from the least.
struct Steps {
    int period = 0;
    int base = 0;
    int ceiling = 0;
    // LLVM 14 takes the 0 of a defaulted comparison for a pointer. NOLINTNEXTLINE(modernize-use-nullptr)
    friend auto operator<=>(const Steps&, const Steps&) = default;
};

Error out_of_range(const char* what, double read, const char* accepted) {
    return bad_input(std::string{"optimiser: "} + what, print_number(read, 3), accepted);
}

Result<void> check_question(const OptimiserQuestion& question) {
    const auto& steps = question.steps;
    if (question.timer >= question.plans.size()) {
        return out_of_range("timer", static_cast<double>(question.timer), "one of the plans");
    }
    if (steps.periods.empty()) {
        return out_of_range("periods", 0.0, "at least one");
    }
    for (const auto& period : steps.periods) {
        if (!(in_seconds(period) >= 10.0 && in_seconds(period) <= 86400.0)) {
            return out_of_range("period, s", in_seconds(period), "10 to 86400");
        }
    }
    const auto check = [](const char* what, double value, double least,
                          const char* accepted) -> Result<void> {
        if (!(value >= least) || !std::isfinite(value)) {
            return out_of_range(what, value, accepted);
        }
        return boost::outcome_v2::success();
    };
    WF_CHECK(check("step, s", in_seconds(steps.step), 0.1, "0.1 or above"));
    WF_CHECK(check("least on-time, s", in_seconds(steps.least_on), 0.1, "0.1 or above"));
    WF_CHECK(check("rest, s", in_seconds(steps.least_rest), 0.0, "0 or above"));
    WF_CHECK(check("house lag, s", in_seconds(question.house_lag), 0.0, "0 or above"));
    WF_CHECK(check("cooling that may be lost", question.limits.most_lost, 0.0, "0 or above"));
    WF_CHECK(check("warmer by, K", in_si(question.limits.most_warmer), 0.0, "0 or above"));
    if (question.trim_above && !question.plans[question.timer].target) {
        return out_of_range("target", 0.0, "a target temperature, from which the on-time is trimmed");
    }
    return boost::outcome_v2::success();
}

TimerPlan continuous_plan(TimerPlan plan) {
    plan.pumping = Pumping::while_called;
    plan.trim_rows.clear();
    plan.ceiling.reset();
    return plan;
}

TimerPlan plan_of(const OptimiserQuestion& question, const TimerCycle& cycle) {
    auto plan = question.plans[question.timer];
    plan.pumping = Pumping::in_cycles;
    plan.period = cycle.period;
    plan.base = cycle.base;
    plan.ceiling = cycle.ceiling;
    plan.review_interval = review_interval(cycle.period, question.house_lag);
    plan.trim_rows.clear();
    if (question.trim_above && cycle.ceiling > cycle.base) {
        plan.trim_rows.push_back(
            {*question.trim_above, rounded_up(0.25 * (cycle.ceiling - cycle.base), question.steps.step)});
    }
    return plan;
}

class Search {
public:
    Search(DaySimulator& simulator, const OptimiserQuestion& question)
        : simulator_{simulator}, question_{question}, plans_{question.plans} {}

    [[nodiscard]] Result<OptimiserAnswer> run() {
        const auto with_continuous = continuous_plan(question_.plans[question_.timer]);
        WF_TRY(reference_, simulated(with_continuous));
        answer_.continuous = {std::nullopt,      with_continuous,           0.0,         {},
                              reference_.pumped, reference_.wet_dry_cycles, std::nullopt};
        best_ = answer_.continuous;
        if (question_.advised) {
            WF_TRY(answer_.advised, judge(*question_.advised));
            take(*answer_.advised, steps_of(*question_.advised));
        }
        if (in_si(reference_.pumped) > 0.0) {
            for (int i = 0; i < static_cast<int>(question_.steps.periods.size()); ++i) {
                WF_CHECK(search_period(i));
            }
            WF_CHECK(try_neighbours());
        }
        answer_.best = best_;
        WF_TRY(answer_.binding, binding());
        return std::move(answer_);
    }

private:
    [[nodiscard]] Result<DayTotals> simulated(const TimerPlan& plan) {
        plans_[question_.timer] = plan;
        WF_CHECK(simulator_.run(plans_, result_));
        ++answer_.simulated;
        return result_.totals;
    }

    [[nodiscard]] Result<JudgedCycle> judge(const TimerCycle& cycle) {
        JudgedCycle judged;
        judged.cycle = cycle;
        judged.plan = plan_of(question_, cycle);
        WF_TRY(const auto totals, simulated(judged.plan));
        judged.pumped = totals.pumped;
        judged.wet_dry_cycles = totals.wet_dry_cycles;
        judged.lost = reference_.cooling > 0.0
                          ? (totals.lost_to_dry_pad - reference_.lost_to_dry_pad) / reference_.cooling
                          : 0.0;
        judged.warmer = totals.hottest_house - reference_.hottest_house;
        judged.out = why_out(judged);
        return judged;
    }

    [[nodiscard]] std::optional<Message> why_out(const JudgedCycle& judged) const {
        const auto& limits = question_.limits;
        if (judged.lost > limits.most_lost) {
            return Message{
                WF_TEXT("It would lose %1 of the cooling of continuous pumping; at most %2 may be lost."),
                {any_share(judged.lost), any_share(limits.most_lost)}};
        }
        if (judged.warmer > limits.most_warmer) {
            return Message{
                WF_TEXT("The house would get %1 warmer at its hottest than with continuous pumping; at "
                        "most %2 are accepted."),
                {any(judged.warmer), any(limits.most_warmer)}};
        }
        return question_.refused ? question_.refused(judged.plan) : std::nullopt;
    }

    /// Last step of an on-time that fits into the period; -1: none does.
    [[nodiscard]] int last_step(int period) const {
        const auto& steps = question_.steps;
        auto longest = steps.periods[static_cast<std::size_t>(period)] - steps.least_rest;
        if (steps.most_on && *steps.most_on < longest) {
            longest = *steps.most_on;
        }
        if (longest < steps.least_on) {
            return -1;
        }
        const double count =
            in_seconds(rounded_down(longest - steps.least_on, steps.step)) / in_seconds(steps.step);
        return static_cast<int>(std::lround(std::min(count, 1.0 * most_steps)));
    }

    [[nodiscard]] TimerCycle cycle_of(const Steps& at) const {
        const auto& steps = question_.steps;
        return {steps.periods[static_cast<std::size_t>(at.period)],
                steps.least_on + static_cast<double>(at.base) * steps.step,
                steps.least_on + static_cast<double>(at.ceiling) * steps.step};
    }

    /// Where a cycle lies among the steps; none: between them, or beyond.
    [[nodiscard]] std::optional<Steps> steps_of(const TimerCycle& cycle) const {
        const auto& periods = question_.steps.periods;
        const auto period = std::ranges::find(periods, cycle.period);
        if (period == periods.end()) {
            return std::nullopt;
        }
        const auto count = [&](Duration on_time) {
            return static_cast<int>(std::lround(
                std::clamp(in_seconds(on_time - question_.steps.least_on) / in_seconds(question_.steps.step),
                           -1.0, 1.0 * most_steps)));
        };
        const Steps at{static_cast<int>(period - periods.begin()), count(cycle.base), count(cycle.ceiling)};
        const auto there = cycle_of(at);
        const auto same = [](Duration a, Duration b) { return std::abs(in_seconds(a - b)) < 1e-6; };
        return at.base >= 0 && same(there.base, cycle.base) && same(there.ceiling, cycle.ceiling)
                   ? std::optional{at}
                   : std::nullopt;
    }

    /// Judged once; the best of all that was judged stays.
    [[nodiscard]] Result<const JudgedCycle*> at(const Steps& where) {
        const auto known = judged_.find(where);
        if (known != judged_.end()) {
            return &known->second;
        }
        WF_TRY(auto judged, judge(cycle_of(where)));
        take(judged, where);
        return &judged_.emplace(where, std::move(judged)).first->second;
    }

    void take(const JudgedCycle& judged, std::optional<Steps> where) {
        if (is_better(judged, best_)) {
            best_ = judged;
            best_at_ = where;
        }
    }

    /// The lowest number from `low` to `high` for which `holds`, which then holds for all above; none if not
    /// even for `high`.
    template <class Holds>
    [[nodiscard]] static Result<std::optional<int>> lowest(int low, int high, const Holds& holds) {
        WF_TRY(const bool at_all, holds(high));
        if (!at_all) {
            return std::optional<int>{};
        }
        while (low < high) {
            const int middle = low + (high - low) / 2;
            WF_TRY(const bool there, holds(middle));
            if (there) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return std::optional{high};
    }

    [[nodiscard]] Result<bool> may_be_taken(const Steps& where) {
        WF_TRY(const auto* judged, at(where));
        return !judged->out;
    }

    [[nodiscard]] Result<void> search_period(int period) {
        const int last = last_step(period);
        if (last < 0) {
            return boost::outcome_v2::success();
        }
        WF_TRY(const auto fixed, lowest(0, last, [&](int base) {
                   return may_be_taken({period, base, base});
               }));
        if (!question_.trim_above) {
            return boost::outcome_v2::success();
        }
        // A base may be shorter than what the hottest hour needs, if trimming gets there in time.
        const int top = fixed.value_or(last);
        WF_TRY(const auto shortest, lowest(0, top, [&](int base) {
                   return may_be_taken({period, base, last});
               }));
        if (!shortest) {
            return boost::outcome_v2::success();
        }
        int ceiling = last;
        int before = -1;
        for (int i = 0; i <= bases_between; ++i) {
            const int base = *shortest + (top - *shortest) * i / bases_between;
            if (base == before) {
                continue;
            }
            before = base;
            // The longer the base, the lower the ceiling that is enough.
            WF_TRY(const auto enough, lowest(base, std::max(base, ceiling), [&](int high) {
                       return may_be_taken({period, base, high});
                   }));
            ceiling = enough.value_or(ceiling);
        }
        return boost::outcome_v2::success();
    }

    [[nodiscard]] Result<void> try_neighbours() {
        for (int round = 0; round < most_rounds && best_at_; ++round) {
            const auto from = *best_at_;
            const int last = last_step(from.period);
            for (const auto& [base, ceiling] : {std::pair{-1, 0},
                                                {0, -1},
                                                {-1, -1},
                                                {-1, 1},
                                                {-2, 0},
                                                {-2, 2},
                                                {-1, 2},
                                                {1, -1},
                                                {1, -2}}) {
                const Steps there{from.period, from.base + base,
                                  question_.trim_above ? from.ceiling + ceiling : from.base + base};
                if (there.base >= 0 && there.ceiling >= there.base && there.ceiling <= last) {
                    WF_CHECK(at(there));
                }
            }
            if (*best_at_ == from) {
                return boost::outcome_v2::success();
            }
        }
        return boost::outcome_v2::success();
    }

    /// What stands against a cycle, as a sentence.
    [[nodiscard]] static Message against(const JudgedCycle& judged) {
        return {
            WF_TEXT("Not runs of %1 to %2 every %3: %4"),
            {any(judged.cycle->base), any(judged.cycle->ceiling), any(judged.cycle->period), *judged.out}};
    }

    [[nodiscard]] Result<Message> binding() {
        if (!(in_si(reference_.pumped) > 0.0)) {
            return Message{WF_TEXT("Pads are not called in this weather.")};
        }
        if (!best_.cycle) {
            return binding_of_continuous();
        }
        if (!best_at_) {
            return Message{
                WF_TEXT("No other setting of the timer pumps less and cools as well as the advised one.")};
        }
        const auto here = *best_at_;
        const Steps shorter{here.period, here.base - 1, question_.trim_above ? here.ceiling : here.base - 1};
        const Steps lower{here.period, here.base, here.ceiling - 1};
        for (const auto& step : {shorter, lower}) {
            if (step.base < 0 || step.ceiling < step.base) {
                continue;
            }
            WF_TRY(const auto* judged, at(step));
            if (judged->out) {
                return against(*judged);
            }
        }
        if (here.base == 0) {
            return Message{WF_TEXT("The timer holds no shorter run than %1."), {any(best_.cycle->base)}};
        }
        return Message{WF_TEXT("No setting of the timer was found that pumps less.")};
    }

    // The longest run comes nearest to continuous pumping: what stands against it stands against all.
    [[nodiscard]] Result<Message> binding_of_continuous() {
        for (int period = 0; period < static_cast<int>(question_.steps.periods.size()); ++period) {
            if (const int last = last_step(period); last >= 0) {
                WF_TRY(const auto* judged, at({period, last, last}));
                if (judged->out) {
                    return against(*judged);
                }
                return Message{WF_TEXT("No cycle pumps less than continuous pumping in this weather.")};
            }
        }
        return Message{WF_TEXT("No run that the timer can hold fits into a period with a rest of %1."),
                       {any(question_.steps.least_rest)}};
    }

    DaySimulator& simulator_;
    const OptimiserQuestion& question_;
    std::vector<TimerPlan> plans_;
    DayResult result_;
    DayTotals reference_;
    std::map<Steps, JudgedCycle> judged_;
    JudgedCycle best_;
    std::optional<Steps> best_at_;
    OptimiserAnswer answer_;
};

}  // namespace
}  // namespace optimiser_detail

bool is_better(const JudgedCycle& a, const JudgedCycle& b) {
    if (a.out.has_value() != b.out.has_value()) {
        return !a.out.has_value();
    }
    const double apart = in_si(a.pumped) - in_si(b.pumped);
    if (std::abs(apart) > optimiser_detail::same_pumping * std::max(in_si(a.pumped), in_si(b.pumped))) {
        return apart < 0.0;
    }
    return a.wet_dry_cycles < b.wet_dry_cycles;
}

Result<OptimiserAnswer> best_timer_cycle(DaySimulator& simulator, const OptimiserQuestion& question) {
    WF_CHECK(optimiser_detail::check_question(question));
    return optimiser_detail::Search{simulator, question}.run();
}

}  // namespace wetfront
