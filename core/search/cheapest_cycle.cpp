// SPDX-License-Identifier: Apache-2.0
#include "search/cheapest_cycle.h"

#include <algorithm>
#include <cmath>

#include "cycle/labels.h"
#include "rules/rules.h"

namespace wetfront {
namespace {

/// One timer's search, with its rules.
class TimerSearch {
public:
    TimerSearch(const VisitFile& file, const Advice& advice, const TimerAdvice& advised, std::size_t timer)
        : file_{file}, advice_{advice}, timings_{timings_of(file)}, settings_{as_settings(advised)} {
        // On-times count from pump start here, whatever the controller counts from.
        forget_controller(file_.house.timers[timer]);
        index_ = timer;
    }

    [[nodiscard]] OptimiserQuestion question(const VisitDay& day) const {
        const auto& timer = file_.house.timers[index_];
        const auto& margins = advice_.margins;
        OptimiserQuestion asked;
        asked.plans = *day.advised.plans;
        asked.timer = index_;
        asked.steps.periods = margins.periods;
        asked.steps.step = timer.resolution ? timer.resolution->value() : seconds(1.0);
        asked.steps.least_on = asked.steps.step;
        asked.steps.least_rest = margins.least_rest;
        const auto& plan = asked.plans[index_];
        if (timer.kind == TimerKind::trimmed && plan.target) {
            asked.trim_above = margins.dead_band;
        }
        asked.house_lag = margins.house_lag;
        if (plan.pumping == Pumping::in_cycles) {
            asked.advised = TimerCycle{plan.period, plan.base, plan.ceiling.value_or(plan.base)};
        }
        asked.refused = [this](const TimerPlan& tried) { return refused(tried); };
        return asked;
    }

    /// The settings advised with that cycle in them.
    [[nodiscard]] TimerSettings with(const TimerPlan& plan) const {
        TimerSettings settings = settings_;
        if (plan.pumping == Pumping::in_cycles) {
            settings.period = Entered<Duration>::of(plan.period);
            settings.base_on_time = Entered<Duration>::of(plan.base);
            settings.on_time_ceiling = Entered<Duration>::of(plan.ceiling.value_or(plan.base));
            settings.review_interval = Entered<Duration>::of(plan.review_interval);
            settings.trim_rows.clear();
            for (const auto& row : plan.trim_rows) {
                settings.trim_rows.push_back({Entered<TemperatureDifference>::of(row.above_target),
                                              Entered<Duration>::of(row.change)});
            }
        }
        return settings;
    }

private:
    [[nodiscard]] std::optional<Message> refused(const TimerPlan& plan) const {
        if (plan.pumping != Pumping::in_cycles) {
            return std::nullopt;
        }
        VisitFile tried = file_;
        std::erase_if(tried.visit.left,
                      [&](const TimerSettings& left) { return left.timer == settings_.timer; });
        tried.visit.left.push_back(with(plan));
        for (const auto& finding : check(tried, timings_, advice_, WhichSettings::left)) {
            if (finding.timer == settings_.timer && finding.severity >= Severity::fault) {
                return finding.message;
            }
        }
        return std::nullopt;
    }

    VisitFile file_;
    const Advice& advice_;
    VisitTimings timings_;
    TimerSettings settings_;
    std::size_t index_ = 0;
};

}  // namespace

Result<std::vector<CheapestCycle>> cheapest_cycles(const VisitFile& file, const Advice& advice,
                                                   const VisitDay& day, const Weather& weather,
                                                   const std::function<bool()>& go_on) {
    std::vector<CheapestCycle> found;
    WF_TRY(auto simulator, DaySimulator::of(*day.house, weather));
    for (std::size_t i = 0; i < file.house.timers.size(); ++i) {
        const auto* advised = advice.of(file.house.timers[i].id);
        if (advised == nullptr || !advised->cycled) {
            continue;
        }
        if (go_on && !go_on()) {
            return bad_input("search", "", "to be let run to its end");
        }
        const TimerSearch search{file, advice, *advised, i};
        WF_TRY(auto answer, best_timer_cycle(simulator, search.question(day)));
        auto settings = search.with(answer.best.plan);
        found.push_back({advised->timer, std::move(answer), std::move(settings)});
    }
    return found;
}

Message words_of(const CheapestCycle& found, const House& house) {
    const auto label = label_of(house, *house.timer(found.timer));
    const auto& best = found.answer.best;
    if (!best.cycle) {
        return {WF_TEXT("%1: no cycle cools as well as continuous pumping. %2"),
                {label, found.answer.binding}};
    }
    const Message runs{WF_TEXT("%1: %2 in every %3, up to %4"),
                       {label, any(best.cycle->base), any(best.cycle->period), any(best.cycle->ceiling)}};
    const auto& advised = found.answer.advised;
    const double before = advised ? in_si(advised->pumped) : 0.0;
    const double less = before > 0.0 ? 1.0 - in_si(best.pumped) / before : 0.0;
    return {WF_TEXT("%1; on the design day %2 less water is pumped than as advised. %3"),
            {runs, any_share(std::round(1000.0 * less) / 1000.0), found.answer.binding}};
}

}  // namespace wetfront
