// SPDX-License-Identifier: Apache-2.0
#include "cycle/advice.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "cycle/bank_evidence.h"
#include "cycle/explain.h"
#include "cycle/pump_runs.h"
#include "cycle/shortest_entry.h"
#include "cycle/template_fit.h"
#include "cycle/when_pads_may_run.h"

namespace wetfront {
namespace {

/// What a timer's advice is made from.
struct TimerWork {
    const VisitFile& file;
    const Timer& timer;
    const CycleMargins& limits;  ///< as the farm has them
    std::vector<BankEvidence> banks;
    CycleMargins margins;  ///< the same, with the periods as the timer can hold them
    Duration resolution = seconds(1.0);
    bool resolution_assumed = false;
};

TimerWork work_of(const VisitFile& file, const Timer& timer, const VisitTimings& timings,
                  const Advice& advice) {
    const auto& margins = advice.margins;
    TimerWork work{file, timer, margins, {}, margins, seconds(1.0), !timer.resolution.has_value()};
    for (const auto* bank : file.house.banks_of(timer)) {
        work.banks.push_back(evidence_of(file, timings, advice.weather, advice.water, *bank, margins));
    }
    if (timer.resolution && in_seconds(timer.resolution->value()) > 0.0) {
        work.resolution = timer.resolution->value();
    }
    if (timer.period_resolution && in_seconds(timer.period_resolution->value()) > 0.0) {
        for (auto& period : work.margins.periods) {
            period = rounded_up(period, timer.period_resolution->value());
        }
        const auto repeated = std::unique(work.margins.periods.begin(), work.margins.periods.end());
        work.margins.periods.erase(repeated, work.margins.periods.end());
    }
    return work;
}

void add_without_value(std::vector<SettingAdvice>& settings, std::initializer_list<Setting> which,
                       const Reason& why) {
    for (const auto setting : which) {
        settings.push_back({setting, std::nullopt, why});
    }
}

constexpr int most_steps_tried = 3600;

// The first period, from the shortest tried on, that the timer can hold as an on-time as well: both the same
// is what running without rest means. Steps of a timer are usually whole seconds or minutes, so that a
// multiple of both comes soon; where none does, the on-time's steps go first.
Duration period_without_rest(const TimerWork& work) {
    const auto shortest = work.margins.periods.front();
    const auto step = work.timer.period_resolution ? work.timer.period_resolution->value() : seconds(1.0);
    if (in_seconds(step) > 0.0) {
        auto period = rounded_up(shortest, step);
        for (int tried = 0; tried < most_steps_tried; ++tried, period += step) {
            if (std::abs(in_seconds(rounded_up(period, work.resolution) - period)) < 1e-6) {
                return period;
            }
        }
    }
    return rounded_up(shortest, work.resolution);
}

std::vector<SettingAdvice> continuous_settings(const TimerWork& work) {
    std::vector<SettingAdvice> settings;
    if (work.timer.kind == TimerKind::on_demand) {
        add_without_value(settings, {Setting::period, Setting::base_on_time}, why_not_on_demand());
        return settings;
    }
    const auto period = period_without_rest(work);
    settings.push_back({Setting::period, any(period), why_continuous()});
    settings.push_back({Setting::base_on_time, any(period), why_continuous()});
    if (work.timer.kind == TimerKind::trimmed) {
        settings.push_back({Setting::on_time_ceiling, any(period), why_continuous()});
        add_without_value(settings, {Setting::trim_step, Setting::trim_dead_band, Setting::review_interval},
                          why_not_while_continuous());
    }
    for (const auto key : {TemplateKey::rinse_at, TemplateKey::rinse_length}) {
        if (can_hold(work.timer, key)) {
            add_without_value(settings, {*setting_of(key)}, why_not_while_continuous());
        }
    }
    return settings;
}

struct LongestRinse {
    std::size_t bank = 0;
    std::optional<RinseNeed> need;  ///< none: this bank was not wetted from dry
};

// The bank that takes longest; a bank without a wet-through time leaves the whole timer without a length.
LongestRinse longest_rinse(const std::vector<BankAdvice>& banks) {
    LongestRinse longest;
    for (std::size_t i = 0; i < banks.size(); ++i) {
        if (!banks[i].rinse) {
            return {i, std::nullopt};
        }
        if (!longest.need || banks[i].rinse->length() > longest.need->length()) {
            longest = {i, banks[i].rinse};
        }
    }
    return longest;
}

void add_rinse(std::vector<SettingAdvice>& settings, const TimerWork& work, const CycleStory& story,
               const TimerAdvice& advice) {
    const auto& banks = advice.banks;
    if (can_hold(work.timer, TemplateKey::rinse_at)) {
        const auto* from = advice.advised(Setting::pad_hours_from);
        settings.push_back(
            {Setting::rinse_at, std::nullopt, why_rinse_at(from != nullptr ? from->value : std::nullopt)});
    }
    if (!can_hold(work.timer, TemplateKey::rinse_length)) {
        return;
    }
    const auto longest = longest_rinse(banks);
    const auto bank = label_of(work.file.house, *work.banks[longest.bank].bank);
    if (!longest.need) {
        settings.push_back({Setting::rinse_length, std::nullopt, why_no_rinse_length(bank)});
        return;
    }
    settings.push_back({Setting::rinse_length, any(rounded_up(longest.need->length(), work.resolution)),
                        why_rinse_length(story, *longest.need, *banks[longest.bank].question, bank)});
}

void add_adapting(std::vector<SettingAdvice>& settings, const TimerWork& work, const CycleStory& story) {
    const auto& answer = story.answer;
    const auto lag = work.margins.house_lag;
    const auto dead_band = work.margins.dead_band;
    settings.push_back({Setting::on_time_ceiling, any(*answer.ceiling), why_ceiling(story)});
    settings.push_back({Setting::trim_step,
                        answer.trim_step ? std::optional{any(*answer.trim_step)} : std::nullopt,
                        why_trim_step(story)});
    if (answer.trim_step) {
        settings.push_back({Setting::trim_dead_band, any(dead_band), why_dead_band(work.limits)});
    } else {
        settings.push_back({Setting::trim_dead_band, std::nullopt, why_trim_step(story)});
    }
    settings.push_back({Setting::review_interval, any(review_interval(answer.period, lag)),
                        why_review_interval(answer.period, work.limits)});
}

std::vector<SettingAdvice> cycle_settings(const TimerWork& work, const CycleStory& story,
                                          const TimerAdvice& advice) {
    const auto& answer = story.answer;
    std::vector<SettingAdvice> settings;
    settings.push_back({Setting::period, any(answer.period), why_period(story)});
    settings.push_back({Setting::base_on_time, any(*answer.base), why_base(story)});
    if (work.timer.kind == TimerKind::trimmed) {
        add_adapting(settings, work, story);
    }
    add_rinse(settings, work, story, advice);
    return settings;
}

BankAdvice bank_advice(const TimerWork& work, const BankEvidence& evidence) {
    BankAdvice advice;
    advice.bank = evidence.bank->id;
    advice.question = evidence.question;
    advice.share_from_timings = evidence.share_from_timings;
    advice.share_from_flow = evidence.share_from_flow;
    advice.shares_disagree = shares_disagree(evidence);
    advice.missing = evidence.missing;
    if (evidence.question) {
        advice.longest_gap = longest_gap(*evidence.question, work.margins);
        const auto rinse = rinse_need(*evidence.question, evidence.header_exchange, work.margins);
        if (rinse) {
            advice.rinse = rinse.value();
        }
    }
    return advice;
}

void add_bounds(const TimerWork& work, const CycleAnswer& answer, TimerAdvice& advice) {
    for (std::size_t i = 0; i < answer.banks.size(); ++i) {
        auto& bank = advice.banks[i];
        bank.bounds = answer.banks[i];
        bank.decides = i == answer.deciding_bank;
        const auto label = label_of(work.file.house, *work.banks[i].bank);
        bank.obstacles = obstacles_of(label, *bank.question, *bank.bounds, work.resolution, work.margins);
        bank.fits = bank.obstacles.empty();
    }
}

void add_cycle(const TimerWork& work, const CycleAnswer& answer, TimerAdvice& advice) {
    const auto deciding = answer.deciding_bank;
    const auto label = label_of(work.file.house, *work.banks[deciding].bank);
    const CycleStory story{
        *advice.banks[deciding].question, label, answer, work.margins, work.limits, work.resolution,
        work.resolution_assumed};
    advice.cycled = true;
    advice.cycle = cycle_settings(work, story, advice);
    advice.verdict = {
        WF_TEXT("A run of %1 in every %2 keeps every part of the pads wet at the hottest hour: it cools as "
                "continuous pumping does, with less pumping."),
        {any(*answer.base), any(answer.period)}};
    if (can_hold(work.timer, TemplateKey::rinse_length)) {
        return;
    }
    const auto longest = longest_rinse(advice.banks);
    if (longest.need) {
        advice.notes.push_back(
            {WF_TEXT("This timer has no rinse, and short runs leave a dry pad dry for a long time: run "
                     "the pump by hand for %1 when the pads start each day."),
             {any(rounded_up(longest.need->length(), work.resolution))}});
    } else {
        advice.notes.emplace_back(
            WF_TEXT("This timer has no rinse, and short runs leave a dry pad dry for a long time: run the "
                    "pump by hand "
                    "until the far end drips evenly when the pads start each day."));
    }
}

std::vector<Message> missing_of(const TimerWork& work, const VisitWeather& weather) {
    std::vector<Message> missing;
    for (const auto& bank : work.banks) {
        missing.insert(missing.end(), bank.missing.begin(), bank.missing.end());
    }
    missing.insert(missing.end(), weather.missing.begin(), weather.missing.end());
    return missing;
}

// Of the banks whose readings were taken in worse weather than the design hour, the one nearest to it.
std::optional<double> milder_design_of(const TimerWork& work) {
    std::optional<double> milder;
    for (const auto& bank : work.banks) {
        if (bank.question && bank.question->milder_design) {
            milder = std::max(*bank.question->milder_design, milder.value_or(0.0));
        }
    }
    return milder;
}

void add_ratio(const TimerWork& work, TimerAdvice& advice) {
    for (const auto& bank : work.banks) {
        if (bank.question) {
            const double ratio = bank.question->evaporation_ratio;
            advice.evaporation_ratio = std::max(ratio, advice.evaporation_ratio.value_or(ratio));
        }
    }
    const auto milder = milder_design_of(work);
    if (milder && *milder < 0.95) {
        advice.notes.push_back(
            {WF_TEXT("More evaporated during the readings than the farm's design day would: check its design "
                     "temperatures (design against readings: %1). What is advised holds for the weather of "
                     "the readings."),
             {AnyQuantity{Kind::fraction, *milder}}});
    }
}

// Cycled if every bank has its readings and one period fits all of them.
void decide(const TimerWork& work, const VisitWeather& weather, TimerAdvice& advice) {
    if (work.timer.kind == TimerKind::on_demand) {
        advice.verdict =
            advice.when_pads_may_run.empty()
                ? WF_TEXT("This timer runs the pump all the while the pads are called for: nothing to set.")
                : WF_TEXT("This timer runs the pump all the while the pads are called for: no cycle to set.");
        return;
    }
    if (work.banks.empty()) {
        advice.verdict = WF_TEXT("No pad bank is fed by this timer's pumps: describe them first.");
        return;
    }
    const bool all_known = std::all_of(work.banks.begin(), work.banks.end(),
                                       [](const BankEvidence& bank) { return bank.question.has_value(); });
    if (!all_known) {
        const auto missing = missing_of(work, weather);
        advice.verdict = {WF_TEXT("Continuous pumping for now. A cycle needs more, first: %1."),
                          {missing.front()}};
        return;
    }
    std::vector<BankQuestion> questions;
    for (const auto& bank : work.banks) {
        questions.push_back(*bank.question);
    }
    const auto answer = best_cycle(questions, work.resolution, work.margins);
    if (!answer) {
        advice.verdict = {WF_TEXT("Continuous pumping: no cycle could be worked out (%1)."),
                          {answer.error().text()}};
        return;
    }
    add_bounds(work, answer.value(), advice);
    if (answer.value().cycled) {
        add_cycle(work, answer.value(), advice);
        return;
    }
    const auto worst = label_of(work.file.house, *work.banks[answer.value().deciding_bank].bank);
    advice.verdict =
        answer.value().drying_outruns_supply
            ? Message{WF_TEXT(
                          "Continuous pumping, and more flow: at the hottest hour a pad dries faster than "
                          "water comes."),
                      {}}
            : Message{WF_TEXT("Continuous pumping: with a rest of %1 in %2, %3 would not stay wet at the "
                              "hottest hour."),
                      {any(work.margins.least_rest), any(answer.value().period), worst}};
}

void add_once(std::vector<Message>& list, const Message& message) {
    if (std::find(list.begin(), list.end(), message) == list.end()) {
        list.push_back(message);
    }
}

void add_assumed(const TimerWork& work, const TimerAdvice& timer, Advice& advice) {
    if (!timer.evaporation_ratio) {
        return;  // no question was asked, so nothing was assumed
    }
    auto& assumed = advice.assumed;
    const EventUncertainty seeing;
    for (const auto limit :
         {Limit::water_margin, Limit::least_rest, Limit::drying_share, Limit::constant_share}) {
        add_once(assumed, limit_text(work.limits, limit).text);
    }
    if (is_changed(work.limits, Limit::periods)) {
        add_once(assumed, limit_text(work.limits, Limit::periods).text);
    }
    add_once(assumed, {WF_TEXT("seeing a drip or a dry patch %1"), {any(seeing.drip_or_patch)}});
    add_once(assumed, {WF_TEXT("a start by signal %1"), {any(seeing.by_signal)}});
    add_once(assumed, {WF_TEXT("seeing the first dry patch %1 of the dry-out time"),
                       {any_share(seeing.dry_patch_share)}});
    if (const auto milder = milder_design_of(work)) {
        add_once(assumed,
                 {WF_TEXT("hottest hour no milder than the weather of the readings (worked out: %1 of "
                          "its evaporation)"),
                  {AnyQuantity{Kind::fraction, *milder}}});
    }
    if (work.resolution_assumed) {
        add_once(assumed, {WF_TEXT("smallest step of a timer %1"), {any(work.resolution)}});
    }
    if (work.timer.kind == TimerKind::trimmed && timer.cycled) {
        add_once(assumed, limit_text(work.limits, Limit::house_lag).text);
        if (timer.advised(Setting::trim_dead_band)->value) {
            add_once(assumed, limit_text(work.limits, Limit::dead_band).text);
        }
    }
    for (const auto& bank : work.banks) {
        const auto* water = advice.water.bank(bank.bank->id);
        if (water != nullptr && bank.question && bank.question->weakest_outlet_ratio > 1.0) {
            for (const auto& taken : water->assumed) {
                add_once(assumed, taken);
            }
        }
        if (bank.effectiveness.origin == Origin::assumed) {
            add_once(assumed, {WF_TEXT("pad effectiveness %1"), {any(bank.effectiveness.value)}});
        }
    }
}

void add_when_pads_may_run(const TimerWork& work, TimerAdvice& timer, Advice& advice) {
    auto pads = when_pads_may_run({work.file, work.timer, advice.weather, work.banks, work.margins});
    timer.when_pads_may_run = std::move(pads.settings);
    timer.notes.insert(timer.notes.end(), pads.notes.begin(), pads.notes.end());
    for (const auto& assumed : pads.assumed) {
        add_once(advice.assumed, assumed);
    }
}

void add_notes_on_water(Advice& advice) {
    for (const auto& pump : advice.water.pumps) {
        for (const auto& note : pump.notes) {
            add_once(advice.notes, note);
        }
    }
    for (const auto& bank : advice.water.banks) {
        for (const auto& note : bank.notes) {
            add_once(advice.notes, note);
        }
    }
}

const SettingAdvice* found_in(const std::vector<SettingAdvice>& settings, Setting setting) {
    const auto found = std::ranges::find(settings, setting, &SettingAdvice::setting);
    return found == settings.end() ? nullptr : &*found;
}

Optional<Temperature> entered_temperature(const TimerAdvice& advice, Setting setting) {
    const auto* advised = advice.advised(setting);
    if (advised == nullptr || !advised->value) {
        return std::nullopt;
    }
    return shortest_entry(from_si<Temperature>(advised->value->si));
}

std::optional<TimeOfDay> entered_time(const TimerAdvice& advice, Setting setting) {
    const auto* advised = advice.advised(setting);
    return advised != nullptr && advised->value ? std::optional{TimeOfDay::at(seconds(advised->value->si))}
                                                : std::nullopt;
}

template <class Q>
Optional<Q> entered(const TimerAdvice& advice, Setting setting) {
    const auto* advised = advice.advised(setting);
    if (advised == nullptr || !advised->value) {
        return std::nullopt;
    }
    return Entered<Q>::of(from_si<Q>(advised->value->si));
}

}  // namespace

const SettingAdvice* TimerAdvice::advised(Setting setting) const {
    const auto* when = found_in(when_pads_may_run, setting);
    return when != nullptr ? when : found_in(cycled ? cycle : continuous, setting);
}

const TimerAdvice* Advice::of(const Id& timer) const {
    const auto found = std::find_if(timers.begin(), timers.end(),
                                    [&](const TimerAdvice& advice) { return advice.timer == timer; });
    return found == timers.end() ? nullptr : &*found;
}

Advice advise(const VisitFile& file) {
    return advise(file, water_of(file));
}

Advice advise(const VisitFile& file, VisitWater water) {
    const auto timings = timings_of(file);
    Advice advice;
    advice.margins = usable_margins(file.farm);
    advice.weather = weather_of(file);
    advice.water = std::move(water);
    const auto& weather = advice.weather;
    advice.truth = WF_TEXT(
        "A timer makes no extra cooling and no drier air. Pumping all the while the pads are called for is "
        "the reference; "
        "a cycle is as good only if every part of the pad stays wet.");
    advice.truth_source = no_extra_cooling_source;
    advice.assumed = weather.assumed;
    advice.missing = weather.missing;
    advice.notes = weather.notes;
    if (const auto changed = margins_of(file.farm); !changed) {
        advice.notes.push_back(
            {WF_TEXT("The margins and limits that were changed for this farm cannot be used together (%1): "
                     "everything is worked out with the program's own until that is put right."),
             {changed.error().text()}});
    }
    add_notes_on_water(advice);
    for (const auto& timer : file.house.timers) {
        const auto work = work_of(file, timer, timings, advice);
        TimerAdvice timer_advice;
        timer_advice.timer = timer.id;
        timer_advice.continuous = continuous_settings(work);
        for (const auto& bank : work.banks) {
            timer_advice.banks.push_back(bank_advice(work, bank));
        }
        add_when_pads_may_run(work, timer_advice, advice);
        add_ratio(work, timer_advice);
        decide(work, weather, timer_advice);
        add_assumed(work, timer_advice, advice);
        if (const auto* controller = described_controller(timer)) {
            timer_advice.fit = fit_to_template(*controller, timer_advice, advice.margins,
                                               measured_fill(file.house, timings, timer));
        }
        advice.timers.push_back(std::move(timer_advice));
    }
    return advice;
}

TimerSettings as_settings(const TimerAdvice& advice) {
    TimerSettings settings;
    settings.timer = advice.timer;
    settings.start_temperature = entered_temperature(advice, Setting::start_temperature);
    settings.lowest_house_temperature = entered_temperature(advice, Setting::lowest_house_temperature);
    settings.humidity_cut_off = entered<Fraction>(advice, Setting::humidity_cut_off);
    settings.pad_hours_from = entered_time(advice, Setting::pad_hours_from);
    settings.pad_hours_to = entered_time(advice, Setting::pad_hours_to);
    settings.period = entered<Duration>(advice, Setting::period);
    settings.base_on_time = entered<Duration>(advice, Setting::base_on_time);
    settings.on_time_ceiling = entered<Duration>(advice, Setting::on_time_ceiling);
    settings.review_interval = entered<Duration>(advice, Setting::review_interval);
    settings.rinse_at = entered_time(advice, Setting::rinse_at);
    settings.rinse_length = entered<Duration>(advice, Setting::rinse_length);
    const auto step = entered<Duration>(advice, Setting::trim_step);
    if (step) {
        settings.trim_rows.push_back({entered<TemperatureDifference>(advice, Setting::trim_dead_band), step});
    }
    settings.continuous_intended = !advice.cycled;
    return settings;
}

TimerSettings settings_to_enter(const TimerAdvice& advice) {
    return advice.fit ? advice.fit->settings : as_settings(advice);
}

}  // namespace wetfront
