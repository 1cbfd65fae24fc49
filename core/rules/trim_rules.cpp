// SPDX-License-Identifier: Apache-2.0
#include "rules/trim_rules.h"

#include <algorithm>
#include <cmath>

#include "rules/rule_parts.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

std::vector<TimerView> timers_that_trim(const RuleInputs& inputs) {
    std::vector<TimerView> views;
    for (const auto& view : timers_with_settings(inputs)) {
        if (view.timer.kind == TimerKind::trimmed && !view.always_on() &&
            !view.settings().trim_rows.empty()) {
            views.push_back(view);
        }
    }
    return views;
}

bool changes_something(const TimerView& view) {
    return std::ranges::any_of(view.settings().trim_rows, [](const TrimRow& row) {
        return row.change && in_seconds(row.change->value()) != 0.0;
    });
}

std::optional<Duration> largest_step(const TimerView& view) {
    std::optional<Duration> largest;
    for (const auto& row : view.settings().trim_rows) {
        if (row.change && in_seconds(row.change->value()) > 0.0) {
            largest = std::max(largest.value_or(row.change->value()), row.change->value());
        }
    }
    return largest;
}

Message advised_row_or(const TimerView& view, Message otherwise) {
    const auto step = view.advised_in_cycle(Setting::trim_step);
    const auto band = view.advised(Setting::trim_dead_band);
    if (step && band) {
        return {WF_TEXT("One row is enough: %1 at %2 above target, as advised."), {any(*step), *band}};
    }
    return otherwise;
}

int row_number(std::size_t index) {
    return static_cast<int>(index) + 1;
}

/// Degrees of two neighbours: none unless both are set.
std::optional<double> rise(const TrimRow& cooler, const TrimRow& hotter) {
    if (!cooler.above_target || !hotter.above_target) {
        return std::nullopt;
    }
    return in_si(hotter.above_target->value()) - in_si(cooler.above_target->value());
}

}  // namespace

std::vector<Finding> trim_rows_out_of_order(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto& rows = view.settings().trim_rows;
        for (std::size_t i = 1; i < rows.size(); ++i) {
            const auto step = rise(rows[i - 1], rows[i]);
            if (!step || *step > rounding) {
                continue;
            }
            auto finding = finding_on(view, nullptr, "trim-rows-out-of-order", Severity::fault);
            finding.message = {
                WF_TEXT("Trim row %1 at %2 above target does not stand above row %3 at %4: one of them is "
                        "never reached, and which is open."),
                {row_number(i), any(rows[i].above_target->value()), row_number(i - 1),
                 any(rows[i - 1].above_target->value())}};
            finding.remedy = advised_row_or(
                view, WF_TEXT("Put the rows in order, each at more degrees above target than the one "
                              "before, or take one out."));
            finding.source = common_practice;
            finding.values = {{"above_target", any(rows[i].above_target->value())},
                              {"above_target_before", any(rows[i - 1].above_target->value())}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

std::vector<Finding> trim_against_heat(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto& rows = view.settings().trim_rows;
        for (std::size_t i = 1; i < rows.size(); ++i) {
            const auto step = rise(rows[i - 1], rows[i]);
            if (!step || *step <= rounding || !rows[i].change || !rows[i - 1].change) {
                continue;
            }
            const auto less = rows[i - 1].change->value() - rows[i].change->value();
            if (in_seconds(less) <= rounding) {
                continue;
            }
            auto finding = finding_on(view, nullptr, "trim-against-heat", Severity::fault);
            finding.message = {
                WF_TEXT("From %1 above target on, a review gives the on-time %2 less than at %3: the hotter "
                        "the house, the less its pads get."),
                {any(rows[i].above_target->value()), any(less), any(rows[i - 1].above_target->value())}};
            finding.remedy =
                advised_row_or(view, WF_TEXT("Let no row change the on-time by less than a cooler one."));
            finding.source = common_practice;
            finding.values = {{"less_at_a_review", any(less)},
                              {"above_target", any(rows[i].above_target->value())}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

namespace {

/// How soon rows that take time off have used up a base.
struct Decline {
    Duration taken_off;  ///< at a review, by the row that takes most
    Duration down_to;    ///< slowest fill, or nothing where it was not timed
    bool fill_known = false;
    int reviews = 0;  ///< until the run is shorter than that
};

std::optional<Decline> decline_of(const TimerView& view, const VisitTimings& timings) {
    if (!view.can_shorten()) {
        return std::nullopt;
    }
    Decline decline{*view.on_time() - *view.shortest_run(), seconds(0.0)};
    for (const auto* bank : view.banks) {
        const auto* timed = timings.of(bank->id);
        if (timed != nullptr && timed->fill) {
            decline.down_to = std::max(decline.down_to, timed->fill->mean);
            decline.fill_known = true;
        }
    }
    if (!at_least(*view.shortest_run(), decline.down_to)) {
        return std::nullopt;
    }
    decline.reviews = static_cast<int>(std::floor((in_seconds(*view.on_time() - decline.down_to) + rounding) /
                                                  in_seconds(decline.taken_off))) +
                      1;
    return decline;
}

Message decline_message(const TimerView& view, const Decline& decline) {
    const Message ends =
        decline.fill_known
            ? Message{WF_TEXT(
                          "it is shorter than the %1 that water needs to the far end, which then stays dry"),
                      {any(decline.down_to)}}
            : Message{WF_TEXT("nothing is left of it")};
    if (view.settings().review_interval) {
        return {
            WF_TEXT("A trim row takes %1 off the on-time, at every review again: after %2 of them, in %3, "
                    "%4."),
            {any(decline.taken_off), decline.reviews,
             any(static_cast<double>(decline.reviews) * view.settings().review_interval->value()), ends}};
    }
    return {WF_TEXT("A trim row takes %1 off the on-time, at every review again: after %2 of them %3."),
            {any(decline.taken_off), decline.reviews, ends}};
}

}  // namespace

std::vector<Finding> trim_shortens_without_end(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto decline = decline_of(view, inputs.timings);
        if (!decline) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "trim-shortens-without-end", Severity::fault);
        finding.message = decline_message(view, *decline);
        finding.remedy = WF_TEXT(
            "Take out the trim rows that take time off, and let the base be the shortest run; they may stay "
            "only where the timer is known never to go below its base.");
        finding.source = common_practice;
        finding.values = {{"base_on_time", any(*view.on_time())}, {"taken_off", any(decline->taken_off)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> trim_in_one_step(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto climbs = view.trim_room();
        const auto largest = largest_step(view);
        if (!climbs || !largest || at_least(seconds(0.0), *climbs)) {
            continue;
        }
        const auto room = *climbs;
        const auto quarter = view.entry_for(TemplateKey::trim_change, room / 4.0);
        const auto advised = view.advised_in_cycle(Setting::trim_step);
        if (!at_least(*largest, room) || at_least(std::max(quarter, advised.value_or(quarter)), *largest)) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "trim-in-one-step", Severity::waste);
        finding.values = {{"largest_step", any(*largest)}, {"base_to_ceiling", any(room)}};
        if (view.period() && in_seconds(*view.period()) > 0.0) {
            const auto more = room * (an_hour / in_seconds(*view.period()));
            finding.message = {
                WF_TEXT("A trim row of %1 takes the on-time from base to ceiling, %2, at one review: %3 more "
                        "pumping in every hour, or none, and nothing between."),
                {any(*largest), any(room), any(more)}};
            finding.values.push_back({"more_pumping_per_hour", any(more)});
        } else {
            finding.message = {WF_TEXT("A trim row of %1 takes the on-time from base to ceiling, %2, at one "
                                       "review: nothing between is ever used."),
                               {any(*largest), any(room)}};
        }
        finding.remedy = advised_row_or(view, {WF_TEXT("Take steps of about %1."), {any(quarter)}});
        finding.source = "a quarter of the room: assumed; common practice, no source";
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> trim_within_dead_band(const RuleInputs& inputs) {
    const auto band = inputs.advice.margins.dead_band;
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        for (const auto& row : view.settings().trim_rows) {
            if (!row.above_target || !row.change || in_seconds(row.change->value()) <= 0.0 ||
                in_si(row.above_target->value()) >= in_si(band) - rounding) {
                continue;
            }
            auto finding = finding_on(view, nullptr, "trim-within-dead-band", Severity::waste);
            finding.message = {
                WF_TEXT("A trim row adds %1 from %2 above target on, within the %3 that a house wavers about "
                        "its target: the on-time climbs although the house is as it should be."),
                {any(row.change->value()), any(row.above_target->value()), any(band)}};
            finding.remedy =
                advised_row_or(view, {WF_TEXT("Begin to trim at %1 above target or more."), {any(band)}});
            finding.source = limit_source(inputs.advice.margins, {Limit::dead_band},
                                          "0.5 K: assumed; common practice, no source");
            finding.values = {{"above_target", any(row.above_target->value())},
                              {"change", any(row.change->value())}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

std::vector<Finding> review_before_answer(const RuleInputs& inputs) {
    const auto lag = inputs.advice.margins.house_lag;
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto& review = view.settings().review_interval;
        if (!review || at_least(review->value(), lag) || !changes_something(view)) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "review-before-answer", Severity::waste);
        finding.values = {{"review_interval", any(review->value())}, {"house_lag", any(lag)}};
        const auto step = largest_step(view);
        const auto room = view.trim_room();
        if (step && room && !at_least(seconds(0.0), *room)) {
            const double reviews = std::ceil(in_seconds(*room) / in_seconds(*step) - 1e-9);
            const auto climbs = reviews * review->value();
            finding.message = {
                WF_TEXT("The on-time is reviewed every %1, before the house has answered the last change "
                        "(%2): it climbs to its ceiling within %3, needed or not."),
                {any(review->value()), any(lag), any(climbs)}};
            finding.values.push_back({"base_to_ceiling_in", any(climbs)});
        } else {
            finding.message = {WF_TEXT("The on-time is reviewed every %1, before the house has answered the "
                                       "last change (%2): it is changed too often and too far."),
                               {any(review->value()), any(lag)}};
        }
        finding.remedy = {WF_TEXT("Review it every %1."),
                          {any(view.advised_in_cycle(Setting::review_interval)
                                   .value_or(view.period() ? review_interval(*view.period(), lag) : lag))}};
        finding.source = limit_source(inputs.advice.margins, {Limit::house_lag},
                                      "10 min until a house answers: assumed; common practice, no source");
        findings.push_back(std::move(finding));
    }
    return findings;
}

std::vector<Finding> review_off_period(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_that_trim(inputs)) {
        const auto& review = view.settings().review_interval;
        const auto period = view.period();
        if (!review || !period || in_seconds(*period) <= 0.0 || !changes_something(view)) {
            continue;
        }
        const double periods = in_seconds(review->value()) / in_seconds(*period);
        if (periods >= 1.0 && std::abs(periods - std::round(periods)) < 1e-6) {
            continue;
        }
        auto finding = finding_on(view, nullptr, "review-off-period", Severity::note);
        finding.message = {
            WF_TEXT("The on-time is reviewed every %1, which is no whole number of periods of %2: reviews "
                    "fall into runs, and how many runs see one change differs."),
            {any(review->value()), any(*period)}};
        finding.remedy = {
            WF_TEXT("Review it every %1."),
            {any(review_interval(*period, std::max(review->value(), inputs.advice.margins.house_lag)))}};
        finding.source = common_practice;
        finding.values = {{"review_interval", any(review->value())}, {"period", any(*period)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

}  // namespace wetfront
