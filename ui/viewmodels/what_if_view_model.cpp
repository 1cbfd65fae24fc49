// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/what_if_view_model.h"

#include <algorithm>
#include <cmath>

#include "records/setting_ranges.h"
#include "rules/rules.h"
#include "sheet/sheet.h"
#include "viewmodels/finding_maps.h"
#include "viewmodels/strip_map.h"

namespace wetfront::ui {
namespace {

// Of the scales; common practice, no source: periods are 5 to 10 min.
constexpr double shortest_period_s = 60.0;
constexpr double longest_period_s = 1200.0;
constexpr double longest_on_time_s = 600.0;

std::optional<double> seconds_of(const TimerSettings* settings, Setting setting) {
    const auto value = settings == nullptr ? std::nullopt : held(*settings, setting);
    return value ? std::optional{value->si} : std::nullopt;
}

double step_of(const Optional<Duration>& resolution, double otherwise) {
    const double step = resolution ? in_seconds(resolution->value()) : 0.0;
    return step > 0.0 ? step : otherwise;
}

}  // namespace

WhatIfSetting::WhatIfSetting(Setting setting, const Formatter& formatter, QObject* parent)
    : QObject{parent}, setting_{setting}, formatter_{formatter} {}

QString WhatIfSetting::text() const {
    return formatter_.text(any(seconds(value_)));
}

void WhatIfSetting::offer(const Scale& scale, QVariantList ticks, std::optional<double> value) {
    there_ = value.has_value();
    scale_ = scale;
    ticks_ = std::move(ticks);
    value_ = value.value_or(scale.from);
    emit changed();
    emit moved();
}

void WhatIfSetting::move(double value) {
    const double nearest = std::round(value / scale_.step) * scale_.step;
    if (there_ && nearest >= scale_.from && nearest <= scale_.to && nearest != value_) {
        put(nearest);
        emit moved_by_hand();
    }
}

void WhatIfSetting::put(double value) {
    value_ = value;
    emit moved();
}

WhatIfViewModel::WhatIfViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent},
      record_{record},
      period_{new WhatIfSetting{Setting::period, record.context().formatter, this}},
      on_time_{new WhatIfSetting{Setting::base_on_time, record.context().formatter, this}},
      ceiling_{new WhatIfSetting{Setting::on_time_ceiling, record.context().formatter, this}} {
    for (auto* setting : {period_, on_time_, ceiling_}) {
        connect(setting, &WhatIfSetting::moved_by_hand, this, [this, setting] {
            take(*setting);
            derive();
        });
    }
}

std::optional<TimerSettings> WhatIfViewModel::beginning() {
    const auto* timer = record_.file().house.timer(timer_);
    if (timer == nullptr || timer->kind == TimerKind::on_demand) {
        return std::nullopt;
    }
    if (const auto* advice = record_.advice().of(timer_)) {
        auto advised = settings_to_enter(*advice);
        if (advised.period && advised.base_on_time) {
            return advised;
        }
    }
    auto found = usual_found();
    return found && found->period && found->base_on_time ? found : std::nullopt;
}

/// A scale has no place for what lies far outside what is usual.
std::optional<TimerSettings> WhatIfViewModel::usual_found() const {
    const auto* found = record_.file().visit.found_of(timer_);
    return found == nullptr ? std::nullopt : std::optional{without_unusual(*found)};
}

bool WhatIfViewModel::possible() {
    return beginning().has_value();
}

bool WhatIfViewModel::fromAdvice() {
    const auto* advice = record_.advice().of(timer_);
    return advice != nullptr && settings_to_enter(*advice).period.has_value();
}

void WhatIfViewModel::setOpen(bool open) {
    if (open != open_) {
        open_ = open;
        begin();
    }
}

void WhatIfViewModel::follow(const Id& timer) {
    timer_ = timer;
    if (open_) {
        begin();
    } else {
        emit changed();
    }
}

void WhatIfViewModel::back() {
    now_ = start_;
    for (auto* setting : {period_, on_time_, ceiling_}) {
        if (const auto value = seconds_of(&start_, setting->setting())) {
            setting->put(*value);
        }
    }
    derive();
}

void WhatIfViewModel::begin() {
    const auto from = open_ ? beginning() : std::nullopt;
    start_ = now_ = from.value_or(TimerSettings{});
    file_ = from ? record_.file() : VisitFile{};
    strips_.clear();
    findings_.clear();
    found_strip_.clear();
    if (from) {
        const auto& visit = record_.file().visit;
        const auto* advice = record_.advice().of(timer_);
        ratio_ = advice == nullptr ? std::nullopt : advice->evaporation_ratio;
        if (const auto* found = visit.found_of(timer_)) {
            if (const auto strip =
                    cycle_strip(record_.file(), record_.timings(), *found, WF_TEXT("found"), ratio_)) {
                found_strip_.append(strip_map(*strip, record_.context().formatter));
            }
        }
        const auto& timer = *record_.file().house.timer(timer_);
        const double on_time_step = step_of(timer.resolution, 1.0);
        const double period_step = step_of(timer.period_resolution, on_time_step);
        offer(*period_, {shortest_period_s, longest_period_s, period_step});
        offer(*on_time_, {0.0, longest_on_time_s, on_time_step});
        offer(*ceiling_, {0.0, longest_on_time_s, on_time_step});
        derive();
    }
    emit changed();
}

/// Widens the scale until found and advised have a place on it, both ends on a step.
void WhatIfViewModel::offer(WhatIfSetting& setting, WhatIfSetting::Scale scale) {
    const auto& formatter = record_.context().formatter;
    const auto* advice = record_.advice().of(timer_);
    const auto advised_settings = advice == nullptr ? TimerSettings{} : settings_to_enter(*advice);
    const auto was_found = usual_found();
    const auto found = seconds_of(was_found ? &*was_found : nullptr, setting.setting());
    const auto advised = seconds_of(&advised_settings, setting.setting());
    QVariantList ticks;
    const auto tick = [&](const std::optional<double>& at, const QString& text, bool is_advised) {
        if (at) {
            scale.from = std::min(scale.from, *at);
            scale.to = std::max(scale.to, *at);
            ticks.append(QVariantMap{
                {"at", *at}, {"text", text.arg(formatter.text(any(seconds(*at))))}, {"advised", is_advised}});
        }
    };
    tick(found, tr("found %1"), false);
    tick(advised, tr("advised %1"), true);
    scale.from = std::max(std::floor(scale.from / scale.step) * scale.step, scale.step);
    scale.to = std::ceil(scale.to / scale.step) * scale.step;
    const bool trimmed = record_.file().house.timer(timer_)->kind == TimerKind::trimmed;
    setting.offer(scale, ticks,
                  &setting == ceiling_ && !trimmed ? std::nullopt : seconds_of(&start_, setting.setting()));
}

void WhatIfViewModel::take(const WhatIfSetting& setting) {
    const auto value = Entered<Duration>::of(seconds(setting.value()));
    if (&setting == period_) {
        now_.period = value;
    } else if (&setting == on_time_) {
        now_.base_on_time = value;
    } else {
        now_.on_time_ceiling = value;
    }
}

void WhatIfViewModel::derive() {
    file_.visit.left = {now_};
    const auto& formatter = record_.context().formatter;
    strips_ = found_strip_;
    if (const auto strip = cycle_strip(file_, record_.timings(), now_, WF_TEXT("what if"), ratio_)) {
        strips_.append(strip_map(*strip, formatter));
    }
    findings_ = finding_maps(check(file_, record_.timings(), record_.advice(), WhichSettings::left),
                             file_.house, timer_, FindingsOf::timer, formatter);
    emit derived();
}

}  // namespace wetfront::ui
