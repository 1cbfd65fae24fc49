// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <vector>

#include "rules/rules.h"
#include "support/visit_builder.h"

namespace wetfront::test {

/// What rules are given, with every number in the hand: timings and advice are not worked out but stated.
/// Only weather and water are worked out, from what the visit holds.
class RuleCase {
public:
    explicit RuleCase(int banks = 1, int timers = 1, TimerKind kind = TimerKind::trimmed);

    static TimingResult reading(double mean, double expanded) {
        TimingResult result;
        result.count = 3;
        result.mean = seconds(mean);
        result.expanded = seconds(expanded);
        return result;
    }
    [[nodiscard]] BankTimings& timed(int bank) {
        return timings.banks.at(static_cast<std::size_t>(bank - 1));
    }
    [[nodiscard]] TimerAdvice& advised(int timer = 1) {
        return advice.timers.at(static_cast<std::size_t>(timer - 1));
    }
    [[nodiscard]] TimerSettings& found(int timer = 1) { return builder.found(timer); }

    /// On-time and period as found.
    void cycle(const char* on, const char* period, int timer = 1) {
        found(timer).base_on_time = typed<Duration>(on);
        found(timer).period = typed<Duration>(period);
    }
    /// Ceiling as found, with a row that climbs to it.
    void trims_to(const char* ceiling, const char* change = "15s", int timer = 1) {
        found(timer).on_time_ceiling = typed<Duration>(ceiling);
        found(timer).trim_rows = {{typed<TemperatureDifference>("1K"), typed<Duration>(change)}};
    }
    /// The advice is a cycle.
    void advise_cycle(double on, double period, int timer = 1) {
        auto& advice_for = advised(timer);
        advice_for.cycled = true;
        advice_for.cycle = {{Setting::period, any(seconds(period)), {}},
                            {Setting::base_on_time, any(seconds(on)), {}}};
    }
    /// Every bank was looked at, and no cycle fits.
    void advise_continuous(int timer = 1) {
        for (auto& bank : advised(timer).banks) {
            bank.bounds.emplace();
        }
    }

    [[nodiscard]] std::vector<Finding> findings(std::vector<Finding> (*rule)(const RuleInputs&)) {
        advice.weather = weather_of(builder.file());
        advice.water = water_of(builder.file());
        return findings_as_stated(rule);
    }
    /// The same with weather and water as they stand in `advice`.
    [[nodiscard]] std::vector<Finding> findings_as_stated(std::vector<Finding> (*rule)(const RuleInputs&)) {
        return rule({builder.file(), timings, advice, builder.file().visit.found});
    }

    [[nodiscard]] House& house() { return builder.file().house; }
    [[nodiscard]] Pump& pump(int number = 1) {
        return house().pumps.at(static_cast<std::size_t>(number - 1));
    }
    [[nodiscard]] Conditions& conditions() { return builder.file().visit.conditions; }
    /// The flow of a pump as a person entered it.
    void flows(const char* flow, int number = 1) {
        conditions().flows.emplace_back().pump = pump(number).id;
        conditions().flows.back().flow = typed<VolumeFlow>(flow);
    }
    /// What was measured at a bank.
    [[nodiscard]] BankConditions& at(int bank) {
        const auto& id = builder.bank(bank).id;
        for (auto& each : conditions().at_banks) {
            if (each.bank == id) {
                return each;
            }
        }
        conditions().at_banks.emplace_back().bank = id;
        return conditions().at_banks.back();
    }

    VisitBuilder builder;
    VisitTimings timings;
    Advice advice;
};

[[nodiscard]] inline std::string english(const Message& message) {
    return in_english(message, UnitSystem::si);
}

/// Causes in their order, each by its text.
[[nodiscard]] inline std::vector<std::string> causes_of(const Finding& finding) {
    std::vector<std::string> causes;
    for (const auto& each : finding.causes) {
        causes.push_back(english(each.cause));
    }
    return causes;
}

/// The value of that name in a finding; NaN if there is none, so that no comparison holds.
[[nodiscard]] inline double value_in(const Finding& finding, const std::string& name) {
    for (const auto& value : finding.values) {
        if (value.name == name) {
            return value.value.si;
        }
    }
    return std::numeric_limits<double>::quiet_NaN();
}

}  // namespace wetfront::test
