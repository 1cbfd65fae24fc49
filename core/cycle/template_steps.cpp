// SPDX-License-Identifier: Apache-2.0
#include "cycle/template_steps.h"

#include <algorithm>
#include <cmath>

#include "base/numbers.h"

namespace wetfront {
namespace {

constexpr double at_a_step = 1e-6;  ///< of a step

double steps_above_least(const TemplateSetting& setting, const AnyQuantity& value) {
    return (number_in(*unit_of(setting), value.si) - *setting.least) / *setting.resolution;
}

double last(const TemplateSetting& setting) {
    return std::floor((*setting.most - *setting.least) / *setting.resolution + at_a_step);
}

double number_at(const TemplateSetting& setting, double step) {
    return *setting.least + step * *setting.resolution;
}

}  // namespace

std::optional<double> step_for(const TemplateSetting& setting, const AnyQuantity& value,
                               StepDirection direction) {
    const double steps = steps_above_least(setting, value);
    const double end = last(setting);
    switch (direction) {
        case StepDirection::up: {
            const double step = std::max(std::ceil(steps - at_a_step), 0.0);
            return step <= end ? std::optional{number_at(setting, step)} : std::nullopt;
        }
        case StepDirection::down: {
            const double step = std::min(std::floor(steps + at_a_step), end);
            return step >= 0.0 ? std::optional{number_at(setting, step)} : std::nullopt;
        }
        case StepDirection::nearest: {
            if (steps < -0.5 - at_a_step || steps > end + 0.5 + at_a_step) {
                return std::nullopt;
            }
            const double step = std::ceil(steps - 0.5 - at_a_step);
            return number_at(setting, std::clamp(step, 0.0, end));
        }
    }
    return std::nullopt;
}

bool is_multiple(double time, double period) {
    const double times = time / period;
    return times > 0.5 && std::abs(times - std::round(times)) <= at_a_step;
}

std::optional<double> multiple_for(const TemplateSetting& setting, const AnyQuantity& value,
                                   Duration period) {
    const auto first = step_for(setting, value, StepDirection::up);
    if (!first) {
        return std::nullopt;
    }
    // Multiples are fewer than steps, and only those at a step count.
    const double p = in_seconds(period);
    for (double multiple = std::max(1.0, std::ceil(value.si / p - at_a_step)) * p;
         multiple <= last_step(setting).si + at_a_step; multiple += p) {
        const auto at = step_for(setting, any(seconds(multiple)), StepDirection::up);
        if (at && same_number(setting, *at, any(seconds(multiple)))) {
            return at;
        }
    }
    return std::nullopt;
}

AnyQuantity within_steps(const TemplateSetting& setting, const AnyQuantity& value) {
    const double steps = steps_above_least(setting, value);
    if (steps < 0.0) {
        return quantity_of(setting, *setting.least);
    }
    return steps > last(setting) ? last_step(setting) : value;
}

bool is_out_of_range(const TemplateSetting& setting, const AnyQuantity& value) {
    const double steps = steps_above_least(setting, value);
    return steps < -1.0 + at_a_step || steps > last(setting) + 1.0 - at_a_step;
}

AnyQuantity last_step(const TemplateSetting& setting) {
    return quantity_of(setting, number_at(setting, last(setting)));
}

AnyQuantity quantity_of(const TemplateSetting& setting, double number) {
    return {kind_of(setting.setting), to_si(*unit_of(setting), number),
            is_time_of_day(setting.setting) ? Scale::clock : Scale::normal};
}

bool same_number(const TemplateSetting& setting, double number, const AnyQuantity& value) {
    return std::abs(number_in(*unit_of(setting), value.si) - number) <= at_a_step * *setting.resolution;
}

std::string number_text(const TemplateSetting& setting, double number) {
    if (is_time_of_day(setting.setting)) {
        return TimeOfDay::at(seconds(quantity_of(setting, number).si)).text();
    }
    // Steps are no finer than a thousandth; what stands behind that is the noise of adding them up.
    return print_number(number, 6);
}

}  // namespace wetfront
