// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/settings_view_model.h"

#include <algorithm>

#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t most_trim_rows = 4;

TimerSettings blank_settings(const Id& timer) {
    TimerSettings settings;
    settings.timer = timer;
    return settings;
}

FormModel* form(const VisitRecord& record, QObject* parent) {
    return new FormModel{record.context().formatter, parent};
}

}  // namespace

SettingsViewModel::SettingsViewModel(VisitRecord& record, WhichSettings which, QObject* parent)
    : QObject{parent},
      record_{record},
      which_{which},
      when_{form(record, this)},
      how_long_{form(record, this)},
      adapts_{form(record, this)},
      rinse_{form(record, this)},
      evidence_{form(record, this)} {
    follow_record();
    connect(&record_, &VisitRecord::changed, this, &SettingsViewModel::follow_record);
}

void SettingsViewModel::follow_record() {
    const auto& house = record_.file().house;
    if (house.timer(timer_) == nullptr) {
        timer_ = house.timers.empty() ? Id{} : house.timers.front().id;
    }
    build_forms();
    emit changed();
}

std::vector<TimerSettings>& SettingsViewModel::entries() {
    return which_ == WhichSettings::found ? record_.visit().found : record_.visit().left;
}

TimerSettings& SettingsViewModel::settings() {
    auto& list = entries();
    const auto at =
        std::find_if(list.begin(), list.end(), [this](const auto& entry) { return entry.timer == timer_; });
    if (at != list.end()) {
        return *at;
    }
    if (new_entry_.timer != timer_) {
        new_entry_ = blank_settings(timer_);
    }
    return new_entry_;
}

// A timer gets its entry with the first thing that is entered, and loses it with the last that is taken out.
Result<void> SettingsViewModel::store_settings() {
    auto& list = entries();
    const auto before = list;
    const TimerSettings now = settings();
    const TimerSettings blank = blank_settings(timer_);
    if (&settings() == &new_entry_) {
        list.push_back(now);
        new_entry_ = blank;
    }
    std::erase(list, blank);
    auto result = record_.save_visit();
    if (!result) {
        list = before;
    }
    return result;
}

void SettingsViewModel::build_forms() {
    if (timer_.empty()) {
        for (auto* model : {when_, how_long_, adapts_, rinse_, evidence_}) {
            model->change_fields({});
        }
        return;
    }
    const auto lines = [this](const std::vector<std::string_view>& keys) {
        return form_lines<TimerSettings>([this]() -> TimerSettings& { return settings(); }, keys,
                                         [this] { return store_settings(); });
    };
    const auto kind = record_.file().house.timer(timer_)->kind;
    const bool trimmed = kind == TimerKind::trimmed;
    when_->change_fields(lines({"target", "start_temperature", "lowest_house_temperature", "humidity_cut_off",
                                "pad_hours_from", "pad_hours_to"}));
    how_long_->change_fields(
        trimmed ? lines({"period", "base_on_time", "on_time_ceiling", "continuous_intended"})
        : kind == TimerKind::fixed_interval ? lines({"period", "base_on_time", "continuous_intended"})
                                            : lines({"continuous_intended"}));
    adapts_->change_fields(trimmed ? trim_lines() : std::vector<FormField>{});
    rinse_->change_fields(lines({"rinse_at", "rinse_length"}));
    evidence_->change_fields(which_ == WhichSettings::found
                                 ? lines({"entered_fill", "entered_wet_through", "shown_on_time"})
                                 : std::vector<FormField>{});
}

std::vector<FormField> SettingsViewModel::trim_lines() {
    std::vector<FormField> all =
        form_lines<TimerSettings>([this]() -> TimerSettings& { return settings(); }, {"review_interval"},
                                  [this] { return store_settings(); });
    append(all, list_lines<TrimRow>([this]() -> std::vector<TrimRow>& { return settings().trim_rows; },
                                    {"above_target", "change"}, tr("Row %1"), most_trim_rows,
                                    [this] { return store_settings(); }));
    return all;
}

QVariantList SettingsViewModel::timers() const {
    QVariantList list;
    for (const auto& timer : record_.file().house.timers) {
        list.append(QVariantMap{{"value", QString::fromStdString(timer.id.text)},
                                {"text", QString::fromStdString(timer.name)}});
    }
    return list;
}

QString SettingsViewModel::timer() const {
    return QString::fromStdString(timer_.text);
}

void SettingsViewModel::chooseTimer(const QString& id) {
    timer_ = Id{id.toStdString()};
    build_forms();
    emit changed();
}

bool SettingsViewModel::canCopy() const {
    return which_ == WhichSettings::left && !record_.frozen() &&
           record_.file().house.timer(timer_) != nullptr;
}

QString SettingsViewModel::copyAdvice() {
    const auto* advice = record_.advice().of(timer_);
    if (advice == nullptr) {
        return tr("There is no advice for this timer.");
    }
    // Advice covers how long and how it adapts; the rest stays as it was left, or as it was found.
    const auto before = settings();
    const auto* found = record_.file().visit.found_of(timer_);
    auto next = before == blank_settings(timer_) && found != nullptr ? *found : before;
    const auto advised = as_settings(*advice);
    next.timer = timer_;
    next.period = advised.period;
    next.base_on_time = advised.base_on_time;
    next.on_time_ceiling = advised.on_time_ceiling;
    next.trim_rows = advised.trim_rows;
    next.review_interval = advised.review_interval;
    next.rinse_length = advised.rinse_length ? advised.rinse_length : next.rinse_length;
    next.continuous_intended = !advice->cycled;
    next.entered_fill.reset();
    next.entered_wet_through.reset();
    next.shown_on_time.reset();
    settings() = next;
    const auto result = store_settings();
    if (!result) {
        settings() = before;
        return QString::fromStdString(result.error().text());
    }
    return {};
}

}  // namespace wetfront::ui
