// SPDX-License-Identifier: Apache-2.0
#include "cycle/template_fit.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"
#include "cycle/template_steps.h"
#include "cycle/template_work.h"

namespace wetfront {
namespace {

std::optional<Duration> longest_wet_through(const std::vector<BankQuestion>& banks) {
    std::optional<Duration> longest;
    for (const auto& bank : banks) {
        if (const auto* dry = std::get_if<DryStart>(&bank.start)) {
            longest = std::max(dry->wet_through, longest.value_or(dry->wet_through));
        }
    }
    return longest;
}

// What a controller is told of the timings comes off the readings where nobody chose it.
std::optional<AnyQuantity> wanted_value(const TemplateWork& work, TemplateKey key, std::size_t row) {
    const auto value = held(work.wanted, key, row);
    if (!value && key == TemplateKey::entered_fill) {
        return work.measured ? std::optional{any(work.measured->longest)} : std::nullopt;
    }
    if (!value && key == TemplateKey::entered_wet_through) {
        const auto longest = longest_wet_through(work.banks);
        return longest ? std::optional{any(*longest)} : std::nullopt;
    }
    return value;
}

TemplateLine empty_line(const TemplateWork& work, const TemplateSetting& setting, int row) {
    TemplateLine line;
    line.setting = setting.setting;
    line.row = row;
    line.label = setting.label;
    line.unit = is_time_of_day(setting.setting) ? "" : std::string{unit_of(setting)->display};
    line.wanted = wanted_value(work, setting.setting, row > 0 ? static_cast<std::size_t>(row - 1) : 0);
    return line;
}

bool is_trim(TemplateKey key) {
    return key == TemplateKey::trim_above_target || key == TemplateKey::trim_change;
}

// Trim rows stand where the first of their settings stands, row by row.
void add_lines(TemplateWork& work) {
    bool rows_done = false;
    for (const auto& setting : work.described.settings) {
        if (!is_trim(setting.setting)) {
            work.fit.lines.push_back(empty_line(work, setting, 0));
            continue;
        }
        for (int row = 1; !rows_done && row <= work.described.trim_rows.value_or(0); ++row) {
            for (const auto& of_row : work.described.settings) {
                if (is_trim(of_row.setting)) {
                    work.fit.lines.push_back(empty_line(work, of_row, row));
                }
            }
        }
        rows_done = true;
    }
}

void enter(const TemplateWork& work, TemplateLine& line, double number) {
    const auto& setting = *work.described.setting(line.setting);
    line.number = number_text(setting, number);
    line.entered = quantity_of(setting, number);
}

Message direction_text(StepDirection direction, const AnyQuantity& from) {
    switch (direction) {
        case StepDirection::up:
            return {WF_TEXT("Rounded up from %1."), {from}};
        case StepDirection::down:
            return {WF_TEXT("Rounded down from %1."), {from}};
        case StepDirection::nearest:
            return {WF_TEXT("Rounded from %1 to the nearest step."), {from}};
    }
    return {};
}

// Puts a value on the line, or says that the controller cannot hold it.
void settle(TemplateWork& work, TemplateLine& line, const AnyQuantity& value, StepDirection direction) {
    const auto& setting = *work.described.setting(line.setting);
    const auto number = step_for(setting, value, direction);
    if (!number) {
        line.problems.push_back({WF_TEXT("It would have to be %1; this controller holds %2 to %3."),
                                 {value, quantity_of(setting, *setting.least), last_step(setting)}});
        return;
    }
    enter(work, line, *number);
    if (!is_out_of_range(setting, value)) {
        if (!same_number(setting, *number, value)) {
            line.changes.push_back(direction_text(direction, value));
        }
        return;
    }
    // Far on the safe side is still not what was wanted, but for runs, which are checked again as they are
    // held.
    const bool is_checked_again =
        line.setting == TemplateKey::base_on_time || line.setting == TemplateKey::on_time_ceiling;
    auto& told = is_checked_again ? line.changes : line.problems;
    told.push_back({WF_TEXT("Moved from %1 into what this controller holds."), {value}});
}

StepDirection direction_of(TemplateKey key) {
    switch (key) {
        case TemplateKey::base_on_time:
        case TemplateKey::rinse_length:
        case TemplateKey::trim_above_target:
        case TemplateKey::trim_change:
        case TemplateKey::review_interval:
        case TemplateKey::start_temperature:
        case TemplateKey::lowest_house_temperature:
        case TemplateKey::pad_hours_to:
        case TemplateKey::rinse_at:
            return StepDirection::up;
        case TemplateKey::on_time_ceiling:
        case TemplateKey::humidity_cut_off:
        case TemplateKey::pad_hours_from:
            return StepDirection::down;
        case TemplateKey::target:
        case TemplateKey::period:
        case TemplateKey::entered_fill:
        case TemplateKey::entered_wet_through:
        case TemplateKey::shown_on_time:
            return StepDirection::nearest;
    }
    return StepDirection::nearest;
}

// Those that hang on the period or on the fill are settled in their turn.
bool stands_alone(TemplateKey key) {
    return key != TemplateKey::period && key != TemplateKey::base_on_time &&
           key != TemplateKey::on_time_ceiling && key != TemplateKey::review_interval;
}

void settle_those_that_stand_alone(TemplateWork& work) {
    const auto rows = static_cast<int>(work.wanted.trim_rows.size());
    for (auto& line : work.fit.lines) {
        if (!stands_alone(line.setting)) {
            continue;
        }
        if (line.wanted) {
            settle(work, line, *line.wanted, direction_of(line.setting));
        } else if (work.advised && line.setting == TemplateKey::trim_change && line.row > rows) {
            // A row that keeps an old change would still act.
            line.changes.emplace_back(WF_TEXT("This row is not used: no change."));
            settle(work, line, any(seconds(0.0)), StepDirection::up);
            if (line.entered && std::abs(line.entered->si) > same_time) {
                line.problems.emplace_back(
                    WF_TEXT("This row is not used, but it cannot be set to no change."));
            }
        }
    }
}

void settle_period(TemplateWork& work) {
    work.period = duration_of(held(work.wanted, TemplateKey::period));
    const auto base = duration_of(held(work.wanted, TemplateKey::base_on_time));
    work.never_rests = work.period && base && in_seconds(*base - *work.period) > -same_time;
    auto* line = work.line(TemplateKey::period);
    if (line == nullptr || !line->wanted) {
        return;
    }
    const auto& setting = *work.described.setting(TemplateKey::period);
    // An advised one may move as far as it must: what hangs on it is worked out anew.
    const auto value = work.advised ? within_steps(setting, *line->wanted) : *line->wanted;
    settle(work, *line, value, StepDirection::nearest);
    if (!line->entered) {
        return;
    }
    if (value != *line->wanted) {
        line->changes.push_back({WF_TEXT("Moved from %1 into what this controller holds."), {*line->wanted}});
    }
    work.period_moved = std::abs(line->entered->si - line->wanted->si) > same_time;
    work.period = seconds(line->entered->si);
}

void settle_fill(TemplateWork& work) {
    if (work.described.counts_from == CountsFrom::pump_start) {
        return;
    }
    const auto* told = work.line(TemplateKey::entered_fill);
    if (const auto fill = told != nullptr ? duration_of(told->entered) : std::nullopt) {
        work.fill = HeaderFill{*fill, *fill};
    } else if (work.measured) {
        work.fill = work.measured;
    } else if (const auto entered = duration_of(held(work.wanted, TemplateKey::entered_fill))) {
        work.fill = HeaderFill{*entered, *entered};
    }
}

Duration counted(TemplateWork& work, TemplateLine& line, Duration run, Duration HeaderFill::*which) {
    if (work.described.counts_from == CountsFrom::pump_start) {
        return run;
    }
    if (!work.fill) {
        line.problems.emplace_back(
            WF_TEXT("This on-time counts from a full header, and no fill time is known: the number counts "
                    "from pump start."));
        return run;
    }
    const auto fill = (*work.fill).*which;
    line.changes.push_back(
        {WF_TEXT("%1 from pump start, less %2 for filling the header."), {any(run), any(fill)}});
    return run - fill;
}

void settle_base(TemplateWork& work) {
    auto* line = work.line(TemplateKey::base_on_time);
    if (line == nullptr || !line->wanted) {
        return;
    }
    auto run = seconds(line->wanted->si);
    if (work.period_moved && work.never_rests) {
        run = std::max(*work.period, seconds(0.0));
        line->changes.push_back({WF_TEXT("As long as the period of %1, so that the pump runs without rest."),
                                 {any(*work.period)}});
    } else if (work.period_moved && work.advised) {
        if (const auto needed = needed_run(work, *work.period)) {
            run = *needed;
            line->changes.push_back(
                {WF_TEXT("A period of %1 needs a run of %2."), {any(*work.period), any(*needed)}});
        }
    }
    settle(work, *line, any(counted(work, *line, run, &HeaderFill::shortest)), StepDirection::up);
}

void settle_ceiling(TemplateWork& work) {
    auto* line = work.line(TemplateKey::on_time_ceiling);
    if (line == nullptr || !line->wanted) {
        return;
    }
    auto run = seconds(line->wanted->si);
    if (work.period_moved && work.never_rests) {
        run = *work.period;
    } else if (work.period_moved && work.advised) {
        run = std::min(run, *work.period - work.margins.least_rest);
    }
    const auto value = any(counted(work, *line, run, &HeaderFill::longest));
    const auto* base = work.line(TemplateKey::base_on_time);
    const auto& setting = *work.described.setting(TemplateKey::on_time_ceiling);
    const auto number = step_for(setting, value, StepDirection::down);
    const bool below_base = base != nullptr && base->entered &&
                            (!number || quantity_of(setting, *number).si < base->entered->si - same_time);
    if (below_base) {
        line->changes.push_back({WF_TEXT("Not below the base on-time of %1."), {*base->entered}});
        settle(work, *line, *base->entered, StepDirection::up);
    } else {
        settle(work, *line, value, StepDirection::down);
    }
}

void settle_review(TemplateWork& work) {
    auto* line = work.line(TemplateKey::review_interval);
    if (line == nullptr || !line->wanted) {
        return;
    }
    auto value = *line->wanted;
    if (work.period_moved && work.advised) {
        value = any(review_interval(*work.period, work.margins.house_lag));
    }
    const auto& setting = *work.described.setting(TemplateKey::review_interval);
    const auto multiple = work.period && work.described.demands(SettingDependency::review_multiple_of_period)
                              ? multiple_for(setting, value, *work.period)
                              : std::nullopt;
    if (!multiple) {
        settle(work, *line, value, StepDirection::up);
        return;
    }
    enter(work, *line, *multiple);
    if (!same_number(setting, *multiple, *line->wanted)) {
        line->changes.push_back({WF_TEXT("The next multiple of the period from %1 up."), {*line->wanted}});
    }
}

void say_what_is_not_held(TemplateWork& work) {
    for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
        const auto value = held(work.wanted, key);
        if (value && work.described.setting(key) == nullptr) {
            work.fit.not_held.push_back(
                {WF_TEXT("This controller has no setting for: %1 (%2)."), {label_of(key), *value}});
        }
    }
    const auto rows = static_cast<int>(work.wanted.trim_rows.size());
    const int has = work.described.trim_rows.value_or(0);
    if (has > 0 && rows > has) {
        work.fit.not_held.push_back(
            {WF_TEXT("%1 trim rows are wanted; this controller has %2."), {rows, has}});
    }
}

template <class Q>
Optional<Q> entry_of(const TemplateWork& work, const TemplateLine& line) {
    const auto text = line.number + " " + std::string{unit_of(*work.described.setting(line.setting))->symbol};
    const auto entry = Entered<Q>::parse(text, line.label);
    return entry ? Optional<Q>{entry.value()} : std::nullopt;
}

void put(const TemplateWork& work, const TemplateLine& line, TimerSettings& out) {
    if (!line.entered) {
        return;
    }
    const auto time_of_day = TimeOfDay::at(seconds(line.entered->si));
    switch (line.setting) {
        case TemplateKey::target:
            out.target = entry_of<Temperature>(work, line);
            return;
        case TemplateKey::start_temperature:
            out.start_temperature = entry_of<Temperature>(work, line);
            return;
        case TemplateKey::lowest_house_temperature:
            out.lowest_house_temperature = entry_of<Temperature>(work, line);
            return;
        case TemplateKey::humidity_cut_off:
            out.humidity_cut_off = entry_of<Fraction>(work, line);
            return;
        case TemplateKey::pad_hours_from:
            out.pad_hours_from = time_of_day;
            return;
        case TemplateKey::pad_hours_to:
            out.pad_hours_to = time_of_day;
            return;
        case TemplateKey::period:
            out.period = entry_of<Duration>(work, line);
            return;
        case TemplateKey::base_on_time:
            out.base_on_time = entry_of<Duration>(work, line);
            return;
        case TemplateKey::on_time_ceiling:
            out.on_time_ceiling = entry_of<Duration>(work, line);
            return;
        case TemplateKey::trim_above_target:
        case TemplateKey::trim_change: {
            const auto row = static_cast<std::size_t>(line.row - 1);
            if (row >= work.wanted.trim_rows.size()) {
                return;
            }
            out.trim_rows.resize(std::max(out.trim_rows.size(), row + 1));
            if (line.setting == TemplateKey::trim_change) {
                out.trim_rows[row].change = entry_of<Duration>(work, line);
            } else {
                out.trim_rows[row].above_target = entry_of<TemperatureDifference>(work, line);
            }
            return;
        }
        case TemplateKey::review_interval:
            out.review_interval = entry_of<Duration>(work, line);
            return;
        case TemplateKey::rinse_at:
            out.rinse_at = time_of_day;
            return;
        case TemplateKey::rinse_length:
            out.rinse_length = entry_of<Duration>(work, line);
            return;
        case TemplateKey::entered_fill:
            out.entered_fill = entry_of<Duration>(work, line);
            return;
        case TemplateKey::entered_wet_through:
            out.entered_wet_through = entry_of<Duration>(work, line);
            return;
        case TemplateKey::shown_on_time:
            out.shown_on_time = entry_of<Duration>(work, line);
            return;
    }
}

TemplateFit fitted(TemplateWork work) {
    add_lines(work);
    settle_those_that_stand_alone(work);
    settle_period(work);
    settle_fill(work);
    settle_base(work);
    settle_ceiling(work);
    settle_review(work);
    check_what_is_held(work);
    say_what_is_not_held(work);
    work.fit.settings.timer = work.wanted.timer;
    work.fit.settings.continuous_intended = work.wanted.continuous_intended;
    for (const auto& line : work.fit.lines) {
        put(work, line, work.fit.settings);
    }
    return std::move(work.fit);
}

}  // namespace

bool TemplateFit::fits() const {
    return not_held.empty() &&
           std::ranges::all_of(lines, [](const TemplateLine& line) { return line.problems.empty(); });
}

const TemplateLine* TemplateFit::line(TemplateKey key, int row) const {
    const auto found = std::ranges::find_if(
        lines, [&](const TemplateLine& line) { return line.setting == key && line.row == row; });
    return found == lines.end() ? nullptr : &*found;
}

TemplateFit fit_to_template(const SettingTemplate& described, const TimerAdvice& advice,
                            const CycleMargins& margins, std::optional<HeaderFill> measured) {
    std::vector<BankQuestion> banks;
    for (const auto& bank : advice.banks) {
        if (bank.question) {
            banks.push_back(*bank.question);
        }
    }
    const auto wanted = as_settings(advice);
    return fitted({described, wanted, banks, margins, true, measured});
}

TemplateFit fit_to_template(const SettingTemplate& described, const TimerSettings& wanted,
                            const std::vector<BankQuestion>& banks, const CycleMargins& margins) {
    return fitted({described, wanted, banks, margins, false, std::nullopt});
}

}  // namespace wetfront
