// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "cycle/template_steps.h"
#include "cycle/template_work.h"

namespace wetfront {
namespace {

// What the model says of the run that is held. Only where something is known of the banks.
void check_run(TemplateWork& work) {
    auto* base = work.line(TemplateKey::base_on_time);
    const auto run = run_of(work, base, &HeaderFill::shortest);
    const auto needed = work.period ? needed_run(work, *work.period) : std::nullopt;
    if (!run || !needed || work.never_rests) {
        return;
    }
    if (in_seconds(*needed - *run) > same_time) {
        base->problems.push_back({WF_TEXT("Too short: in a period of %1 the pads need a run of %2."),
                                  {any(*work.period), any(*needed)}});
    }
    const auto most = *work.period - work.margins.least_rest;
    const Message too_long{WF_TEXT("Leaves the pump less than %1 of rest in a period of %2."),
                           {any(work.margins.least_rest), any(*work.period)}};
    // Whichever header fills first, the rest has to stay.
    if (in_seconds(*run_of(work, base, &HeaderFill::longest) - most) > same_time) {
        base->problems.push_back(too_long);
    }
    auto* ceiling = work.line(TemplateKey::on_time_ceiling);
    const auto longest = run_of(work, ceiling, &HeaderFill::longest);
    if (longest && in_seconds(*longest - most) > same_time) {
        ceiling->problems.push_back(too_long);
    }
}

void check_temperatures(TemplateWork& work) {
    auto* start = work.line(TemplateKey::start_temperature);
    if (start == nullptr || !start->entered) {
        return;
    }
    const double warmest = in_kelvin(work.margins.warmest_start);
    constexpr double slack = 1e-9;
    if (start->wanted->si <= warmest + slack && start->entered->si > warmest + slack) {
        start->problems.push_back({WF_TEXT("Above the band for a start temperature, which ends at %1."),
                                   {any(work.margins.warmest_start)}});
    }
    auto* lowest = work.line(TemplateKey::lowest_house_temperature);
    if (lowest != nullptr && lowest->entered && lowest->wanted->si <= start->wanted->si + slack &&
        lowest->entered->si > start->entered->si + slack) {
        lowest->problems.push_back(
            {WF_TEXT("Above the start temperature of %1, which could then never start the pads."),
             {*start->entered}});
    }
}

/// Both entered, the first put to the test against the second.
struct Pair {
    TemplateLine* of = nullptr;
    double first = 0.0;
    double second = 0.0;
};
std::optional<Pair> pair_of(TemplateWork& work, TemplateKey first, TemplateKey second) {
    auto* of = work.line(first);
    const auto* other = work.line(second);
    if (of == nullptr || other == nullptr || !of->entered || !other->entered) {
        return std::nullopt;
    }
    return Pair{of, of->entered->si, other->entered->si};
}

void check_rows(TemplateWork& work) {
    const AnyQuantity* before = nullptr;
    for (auto& line : work.fit.lines) {
        if (line.setting != TemplateKey::trim_above_target || !line.entered) {
            continue;
        }
        if (before != nullptr && line.entered->si <= before->si + 1e-9) {
            line.problems.push_back(
                {WF_TEXT("This controller demands more degrees than in the row before, %1."), {*before}});
        }
        before = &*line.entered;
    }
}

void check_dependency(TemplateWork& work, SettingDependency dependency) {
    const auto complain = [](const std::optional<Pair>& pair, bool met, const char* text) {
        if (pair && !met) {
            pair->of->problems.emplace_back(text);
        }
    };
    switch (dependency) {
        case SettingDependency::ceiling_at_least_base: {
            const auto pair = pair_of(work, TemplateKey::on_time_ceiling, TemplateKey::base_on_time);
            complain(pair, !pair || pair->first >= pair->second - same_time,
                     WF_TEXT("This controller demands a ceiling not below the base on-time."));
            return;
        }
        case SettingDependency::ceiling_below_period: {
            const auto pair = pair_of(work, TemplateKey::on_time_ceiling, TemplateKey::period);
            complain(
                pair, !pair || pair->first < pair->second - same_time,
                WF_TEXT("This controller demands a ceiling below the period: it cannot run without rest."));
            return;
        }
        case SettingDependency::base_below_period: {
            const auto pair = pair_of(work, TemplateKey::base_on_time, TemplateKey::period);
            complain(
                pair, !pair || pair->first < pair->second - same_time,
                WF_TEXT(
                    "This controller demands a base on-time below the period: it cannot run without rest."));
            return;
        }
        case SettingDependency::review_multiple_of_period: {
            const auto pair = pair_of(work, TemplateKey::review_interval, TemplateKey::period);
            complain(pair, !pair || is_multiple(pair->first, pair->second),
                     WF_TEXT("This controller demands a multiple of the period, and holds none that is long "
                             "enough."));
            return;
        }
        case SettingDependency::pad_hours_end_after_they_begin: {
            const auto pair = pair_of(work, TemplateKey::pad_hours_to, TemplateKey::pad_hours_from);
            complain(pair, !pair || pair->first > pair->second + same_time,
                     WF_TEXT("This controller demands pad hours that end on the day on which they begin."));
            return;
        }
        case SettingDependency::trim_rows_ascend:
            check_rows(work);
            return;
    }
}

}  // namespace

TemplateLine* TemplateWork::line(TemplateKey key) {
    const auto found = std::ranges::find(fit.lines, key, &TemplateLine::setting);
    return found == fit.lines.end() ? nullptr : &*found;
}

std::optional<Duration> duration_of(const std::optional<AnyQuantity>& value) {
    return value ? std::optional{seconds(value->si)} : std::nullopt;
}

std::optional<Duration> needed_run(const TemplateWork& work, Duration period) {
    std::optional<Duration> most;
    for (const auto& bank : work.banks) {
        const auto bounds = on_time_bounds(bank, period, work.margins);
        if (bounds) {
            most = std::max(bounds.value().largest(), most.value_or(bounds.value().largest()));
        }
    }
    return most;
}

std::optional<Duration> run_of(const TemplateWork& work, const TemplateLine* line,
                               Duration HeaderFill::*which) {
    const auto entered = line != nullptr ? duration_of(line->entered) : std::nullopt;
    return entered && work.fill ? std::optional{*entered + (*work.fill).*which} : entered;
}

void check_what_is_held(TemplateWork& work) {
    check_run(work);
    check_temperatures(work);
    for (const auto dependency : work.described.dependencies) {
        check_dependency(work, dependency);
    }
}

}  // namespace wetfront
