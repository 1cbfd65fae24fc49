// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/settings_view_model.h"

#include <algorithm>

#include "cycle/deviations.h"
#include "viewmodels/controller_lines.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t most_trim_rows = 4;
/// Not to the last digit: 83 °F read back from text are not quite the kelvins that were written.
constexpr double same_within = 1e-6;

TimerSettings blank_settings(const Id& timer) {
    TimerSettings settings;
    settings.timer = timer;
    return settings;
}

/// The advised setting whose value a line with that key holds.
std::optional<Setting> setting_of_line(std::string_view key) {
    if (key == "above_target") {
        return Setting::trim_dead_band;
    }
    if (key == "change") {
        return Setting::trim_step;
    }
    const auto at = std::ranges::find(all_settings, key, [](Setting each) { return key_of(each); });
    return at == all_settings.end() ? std::nullopt : std::optional{*at};
}

/// What a timer holds in a line of the forms; `row` counts trim rows.
std::optional<AnyQuantity> held_in_line(const TimerSettings& settings, std::string_view key,
                                        std::size_t row) {
    if (key == "target") {
        return settings.target ? std::optional{any(settings.target->value())} : std::nullopt;
    }
    const auto setting = setting_of_line(key);
    return setting ? held(settings, *setting, row) : std::nullopt;
}

/// What is found is kept whatever it is; what somebody leaves is typed within the range. As it was found it
/// may be left: nobody types it then.
void keep_to_ranges(std::vector<FormField>& lines) {
    for (auto& line : lines) {
        line.about.kept = false;
        if (!line.kind) {
            continue;
        }
        line.set = [about = line.about, kind = *line.kind,
                    take = line.set](const std::string& text) -> Result<void> {
            if (!text.empty()) {
                WF_TRY(const auto value, parse_any(kind, text, about.label));
                WF_CHECK(check_range(about, value, text, about.label));
            }
            return take(text);
        };
    }
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
      evidence_{form(record, this)},
      why_different_{form(record, this)} {
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

/// What is left was entered now: a proof watched before says nothing of it.
void SettingsViewModel::note_change() {
    auto& now = settings();
    if (which_ == WhichSettings::left && !run_the_same(now, known_)) {
        const auto& clock = record_.context().clock;
        now.changed = Moment{clock.boot_now(), clock.wall_now()};
    }
    auto without = now;
    without.changed.reset();
    if (without == blank_settings(timer_)) {
        now.changed.reset();
    }
}

// A timer gets its entry with the first thing that is entered, and loses it with the last that is taken out.
Result<void> SettingsViewModel::store_settings() {
    note_change();
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
        for (auto* model : {when_, how_long_, adapts_, rinse_, evidence_, why_different_}) {
            model->change_fields({});
        }
        return;
    }
    known_ = settings();
    const auto lines = [this](const std::vector<std::string_view>& keys) {
        auto all = form_lines<TimerSettings>([this]() -> TimerSettings& { return settings(); }, keys,
                                             [this] { return store_settings(); });
        put_beside(all);
        return all;
    };
    if (controller() != nullptr) {
        build_forms_of_controller();
        build_reason();
        return;
    }
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
    build_reason();
}

void SettingsViewModel::build_reason() {
    const bool asked =
        which_ == WhichSettings::left && (!settings().deviation_reason.empty() || !differences().isEmpty());
    why_different_->change_fields(
        asked ? form_lines<TimerSettings>([this]() -> TimerSettings& { return settings(); },
                                          {"deviation_reason"}, [this] { return store_settings(); })
              : std::vector<FormField>{});
}

const SettingTemplate* SettingsViewModel::controller() const {
    const auto* timer = record_.file().house.timer(timer_);
    return timer == nullptr ? nullptr : described_controller(*timer);
}

/// What the timer's controller asks for, as it does; and what is entered though it is not described with it.
void SettingsViewModel::build_forms_of_controller() {
    const SettingsAccess access{[this]() -> TimerSettings& { return settings(); },
                                [this] { return store_settings(); }};
    const auto& described = *controller();
    const auto lines = [&](std::optional<SettingGroup> group, const std::vector<std::string_view>& keys,
                           bool all_evidence = true) {
        std::vector<FormField> fields;
        for (auto& line : controller_lines(described, group, access)) {
            if (!all_evidence && line.key == TemplateKey::shown_on_time) {
                continue;
            }
            line.field.beside = [this, key = line.key, row = line.row] {
                return beside_on_controller(key, row);
            };
            fields.push_back(std::move(line.field));
        }
        auto others = form_lines<TimerSettings>(access.settings, keys, access.stored);
        put_beside(others);
        for (auto& other : others) {
            const auto key = enum_value<TemplateKey>(other.about.key);
            const bool asked = key && described.setting(*key) != nullptr;
            if (!asked && (!key || !other.entry().isEmpty())) {
                fields.push_back(std::move(other));
            }
        }
        return fields;
    };
    when_->change_fields(
        lines(SettingGroup::when_pads_may_run, {"target", "start_temperature", "lowest_house_temperature",
                                                "humidity_cut_off", "pad_hours_from", "pad_hours_to"}));
    how_long_->change_fields(
        lines(SettingGroup::how_long, {"period", "base_on_time", "on_time_ceiling", "continuous_intended"}));
    adapts_->change_fields(lines(SettingGroup::how_it_adapts, {"review_interval"}));
    rinse_->change_fields(lines(SettingGroup::rinse, {"rinse_at", "rinse_length"}));
    // What it shows is read once; what it is told may be changed.
    const bool found = which_ == WhichSettings::found;
    evidence_->change_fields(
        lines(std::nullopt,
              found ? std::vector<std::string_view>{"entered_fill", "entered_wet_through", "shown_on_time"}
                    : std::vector<std::string_view>{"entered_fill", "entered_wet_through"},
              found));
}

QString SettingsViewModel::beside_on_controller(TemplateKey key, std::size_t row) {
    const auto& described = *controller();
    const auto& formatter = record_.context().formatter;
    const auto& visit = record_.file().visit;
    const auto* advice = record_.advice().of(timer_);
    QStringList parts;
    const auto add = [&](const TimerSettings* other, const QString& text) {
        if (const auto value = other == nullptr ? std::nullopt : held(*other, key, row)) {
            parts.append(text.arg(text_on_controller(described, key, *value)));
        }
    };
    if (which_ == WhichSettings::left) {
        add(visit.found_of(timer_), tr("found %1"));
    }
    const auto setting = setting_of(key);
    const bool is_trim = key == TemplateKey::trim_above_target || key == TemplateKey::trim_change;
    const auto* line = advice == nullptr || !advice->fit
                           ? nullptr
                           : advice->fit->line(key, is_trim ? static_cast<int>(row) + 1 : 0);
    if (line != nullptr && line->entered) {
        const bool differs = setting && deviation(settings(), *advice, *setting, row);
        parts.append((differs ? tr("≠ advised %1") : tr("advised %1"))
                         .arg(text_on_controller(described, key, *line->entered)));
    } else if (const auto* advised =
                   !setting || row > 0 || advice == nullptr ? nullptr : advice->advised(*setting);
               advised != nullptr && !advised->value) {
        parts.append(tr("advised: no value, %1").arg(formatter.text(advised->reason.brief)));
    }
    if (line != nullptr && !line->problems.empty()) {
        parts.append(tr("cannot be held as advised: %1").arg(formatter.text(line->problems.front())));
    }
    if (which_ == WhichSettings::found) {
        add(visit.left_of(timer_), tr("left %1"));
    }
    return parts.join(QStringLiteral(" · "));
}

/// The other two of found, advised and left stand beside each entry.
void SettingsViewModel::put_beside(std::vector<FormField>& lines) {
    if (which_ == WhichSettings::left) {
        keep_to_ranges(lines);
    }
    std::size_t trim_lines = 0;
    for (auto& line : lines) {
        const std::string_view key = line.about.key;
        const bool in_a_row = key == "above_target" || key == "change";
        const std::size_t row = in_a_row ? trim_lines++ / 2 : 0;  // two lines make a row
        line.beside = [this, key, row] { return beside(key, row); };
    }
}

QString SettingsViewModel::beside(std::string_view key, std::size_t row) {
    const auto& formatter = record_.context().formatter;
    const auto& visit = record_.file().visit;
    const auto* advice = record_.advice().of(timer_);
    const auto setting = setting_of_line(key);
    const auto differs =
        advice == nullptr || !setting ? std::nullopt : deviation(settings(), *advice, *setting, row);
    const auto* advised = advice == nullptr || !setting || row > 0 ? nullptr : advice->advised(*setting);
    QStringList parts;
    const auto add = [&](const TimerSettings* other, const QString& text) {
        const auto value = other == nullptr ? std::nullopt : held_in_line(*other, key, row);
        if (value) {
            parts.append(text.arg(formatter.text(*value)));
        }
    };
    if (which_ == WhichSettings::left) {
        add(visit.found_of(timer_), tr("found %1"));
    }
    if (advised != nullptr && advised->value) {
        parts.append((differs ? tr("≠ advised %1") : tr("advised %1")).arg(formatter.text(*advised->value)));
    } else if (advised != nullptr) {
        parts.append(tr("advised: no value, %1").arg(formatter.text(advised->reason.brief)));
    } else if (differs) {
        parts.append(tr("≠ advised %1").arg(formatter.text(differs->advised)));
    }
    if (which_ == WhichSettings::found) {
        add(visit.left_of(timer_), tr("left %1"));
    }
    return parts.join(QStringLiteral(" · "));
}

QVariantList SettingsViewModel::differences() {
    QVariantList list;
    const auto* advice = record_.advice().of(timer_);
    if (which_ == WhichSettings::found || advice == nullptr) {
        return list;
    }
    for (const auto& one : deviations(settings(), *advice)) {
        list.append(QVariantMap{
            {"label", setting_label(one.setting, one.row)},
            {"text",
             tr("%1 instead of %2").arg(shown(one.setting, one.held), shown(one.setting, one.advised))},
            {"meaning", record_.context().formatter.text(one.meaning)}});
    }
    return list;
}

const TemplateSetting* SettingsViewModel::on_controller(Setting setting) const {
    const auto* described = controller();
    if (described == nullptr) {
        return nullptr;
    }
    const auto at = std::ranges::find_if(described->settings, [&](const TemplateSetting& each) {
        return setting_of(each.setting) == setting;
    });
    return at == described->settings.end() ? nullptr : &*at;
}

QString SettingsViewModel::setting_label(Setting setting, std::size_t row) const {
    const auto* own = on_controller(setting);
    const auto label = own != nullptr ? QString::fromStdString(own->label)
                                      : record_.context().formatter.text(label_of(setting));
    return row > 0 ? tr("%1, row %2").arg(label, QString::number(row + 1)) : label;
}

QString SettingsViewModel::shown(Setting setting, const AnyQuantity& value) const {
    const auto* own = on_controller(setting);
    return own != nullptr ? QString::fromStdString(text_on(*own, value))
                          : record_.context().formatter.text(value);
}

std::vector<FormField> SettingsViewModel::trim_lines() {
    std::vector<FormField> all =
        form_lines<TimerSettings>([this]() -> TimerSettings& { return settings(); }, {"review_interval"},
                                  [this] { return store_settings(); });
    append(all, list_lines<TrimRow>([this]() -> std::vector<TrimRow>& { return settings().trim_rows; },
                                    {"above_target", "change"}, tr("Row %1"), most_trim_rows,
                                    [this] { return store_settings(); }));
    put_beside(all);
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

/// What is left with the advice taken over. How long and how it adapts are as advised, with or without a
/// value; of the rest, only what has an advised value.
TimerSettings SettingsViewModel::with_advice(const TimerAdvice& advice) {
    const auto& before = settings();
    const auto* found = record_.file().visit.found_of(timer_);
    auto next = before;
    if (before == blank_settings(timer_) && found != nullptr) {
        next = *found;
        next.entered_fill.reset();  // what a controller was told and shows is evidence of what was found
        next.entered_wet_through.reset();
        next.shown_on_time.reset();
    }
    const auto advised = settings_to_enter(advice);
    const auto take = [](auto& entry, const auto& value) { entry = value ? value : entry; };
    next.timer = timer_;
    take(next.start_temperature, advised.start_temperature);
    take(next.lowest_house_temperature, advised.lowest_house_temperature);
    take(next.humidity_cut_off, advised.humidity_cut_off);
    take(next.pad_hours_from, advised.pad_hours_from);
    take(next.pad_hours_to, advised.pad_hours_to);
    next.period = advised.period;
    next.base_on_time = advised.base_on_time;
    next.on_time_ceiling = advised.on_time_ceiling;
    next.trim_rows = advised.trim_rows;
    next.review_interval = advised.review_interval;
    take(next.rinse_at, advised.rinse_at);
    take(next.rinse_length, advised.rinse_length);
    take(next.entered_fill, advised.entered_fill);
    take(next.entered_wet_through, advised.entered_wet_through);
    next.continuous_intended = advised.continuous_intended;
    if (deviations(next, advice).empty()) {
        next.deviation_reason.clear();
    }
    return next;
}

QStringList SettingsViewModel::overwritten() {
    const auto* advice = record_.advice().of(timer_);
    const auto& before = settings();
    QStringList list;
    if (advice == nullptr || before == blank_settings(timer_)) {
        return list;
    }
    const auto next = with_advice(*advice);
    for (const auto setting : all_settings) {
        const auto was = held(before, setting);
        const auto is = held(next, setting);
        if (was && (!is || std::abs(was->si - is->si) > same_within)) {
            list.append(tr("%1: %2 becomes %3")
                            .arg(setting_label(setting, 0), shown(setting, *was),
                                 is ? shown(setting, *is) : tr("not set")));
        }
    }
    if (before.continuous_intended && before.continuous_intended != next.continuous_intended) {
        list.append(*before.continuous_intended
                        ? tr("It no longer says that the pump is meant to run without rest.")
                        : tr("It says that the pump is meant to run without rest."));
    }
    if (before.trim_rows.size() > 1) {
        list.append(tr("Trim rows from the second on are taken out."));
    }
    if (before.deviation_reason != next.deviation_reason) {
        list.append(tr("The reason for differing is taken out: %1")
                        .arg(QString::fromStdString(before.deviation_reason)));
    }
    return list;
}

QString SettingsViewModel::copyAdvice() {
    const auto* advice = record_.advice().of(timer_);
    if (advice == nullptr) {
        return tr("There is no advice for this timer.");
    }
    const auto before = settings();
    settings() = with_advice(*advice);
    const auto result = store_settings();
    if (!result) {
        settings() = before;
        return QString::fromStdString(result.error().text());
    }
    return {};
}

}  // namespace wetfront::ui
