// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/bank_cycle.h"
#include "cycle/rinse.h"
#include "cycle/setting_advice.h"
#include "cycle/template_lines.h"
#include "cycle/visit_water.h"
#include "cycle/visit_weather.h"
#include "records/visit.h"

namespace wetfront {

/// One bank on the timer: what was used, and what stands in the way of a cycle.
struct BankAdvice {
    Id bank;
    std::optional<BankQuestion> question;  ///< none: readings or a weather are missing
    std::optional<OnTimeBounds> bounds;    ///< at the advised period, or at the last one tried
    bool decides = false;                  ///< the worst bank of its timer
    bool fits = false;                     ///< this bank alone could be cycled at that period
    std::optional<Duration> longest_gap;   ///< unsupplied at the far end, at the design hour (rule 2)
    std::optional<RinseNeed> rinse;        ///< none: wet start, or drying outruns supply
    std::optional<double>
        share_from_timings;  ///< evaporated share of the water, test weather, off the stopwatch
    std::optional<double> share_from_flow;  ///< the same from flow and air (E H / q)
    bool shares_disagree = false;           ///< the two are more than 30 % apart
    std::vector<Message> missing;           ///< readings that would be needed
    std::vector<Message> obstacles;         ///< which hardware limits, with the change that would help
};

/// Continuous pumping and, where every part stays wet, the best cycle.
struct TimerAdvice {
    Id timer;
    bool cycled = false;
    /// Both ways the same; of a trimmed timer all of them, of another those that its controller has.
    std::vector<SettingAdvice> when_pads_may_run;
    std::vector<SettingAdvice> continuous;  ///< always there
    std::vector<SettingAdvice> cycle;       ///< empty where none is advised; of a rinse what it can hold
    std::vector<BankAdvice> banks;
    Message verdict;                          ///< one sentence: what is advised and why
    std::vector<Message> notes;               ///< what else the technician has to know or do
    std::optional<double> evaporation_ratio;  ///< E_design / E_test as used (at least 1), largest of its
                                              ///< banks; none: a weather is missing
    std::optional<TemplateFit> fit;           ///< the same on the timer's controller, where that is described

    /// What is advised for that setting: of when pads may run; else of the cycle if there is one, else of
    /// continuous pumping.
    [[nodiscard]] const SettingAdvice* advised(Setting setting) const;
};

struct Advice {
    std::vector<TimerAdvice> timers;  ///< in the house's order
    Message truth;                    ///< a timer makes no extra cooling and no drier air
    std::string truth_source;
    std::vector<Message> assumed;  ///< every assumed value that was used, as "name value"
    std::vector<Message> missing;  ///< what the whole visit lacks (weather)
    std::vector<Message> notes;    ///< what was entered and could not be used
    VisitWeather weather;          ///< the two weathers that it was made for
    VisitWater water;              ///< the flows and headers that it was made with
    CycleMargins margins;          ///< the margins and limits that it was made with

    [[nodiscard]] const TimerAdvice* of(const Id& timer) const;
};

/// Settings for every timer of the visit's house, each with its reason (model rules 1 to 10). Never
/// fails for missing readings: it says what is missing and advises what it can. Margins and limits are those
/// of the file's farm; where these cannot be used together, a note says so and the program's own are used.
[[nodiscard]] Advice advise(const VisitFile& file);

/// The same with the water of that file already worked out, which takes longer than all the rest.
[[nodiscard]] Advice advise(const VisitFile& file, VisitWater water);

/// The advised settings as a TimerSettings record, before any controller's steps: on-times from pump start.
/// The trim step becomes one row above the dead band.
[[nodiscard]] TimerSettings as_settings(const TimerAdvice& advice);

/// What is to stand in the timer: as its controller holds it and counts where that is described, else
/// as_settings(). What the controller cannot hold is not in it.
[[nodiscard]] TimerSettings settings_to_enter(const TimerAdvice& advice);

}  // namespace wetfront
