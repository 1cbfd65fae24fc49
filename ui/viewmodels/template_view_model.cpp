// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/template_view_model.h"

#include <algorithm>

#include "base/numbers.h"
#include "sheet/words.h"
#include "viewmodels/template_files.h"

namespace wetfront::ui {
namespace {

constexpr int most_trim_rows = 4;

QString qstring(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString problem_in(const Result<void>& result) {
    return result ? QString{} : qstring(result.error().text());
}

QVariantMap choice(const QString& value, const QString& text) {
    return {{"value", value}, {"text", text}};
}

QString demand_words(SettingDependency dependency) {
    switch (dependency) {
        case SettingDependency::ceiling_at_least_base:
            return TemplateViewModel::tr("The on-time ceiling is at least the base on-time");
        case SettingDependency::ceiling_below_period:
            return TemplateViewModel::tr("The on-time ceiling is below the period");
        case SettingDependency::base_below_period:
            return TemplateViewModel::tr("The base on-time is below the period");
        case SettingDependency::review_multiple_of_period:
            return TemplateViewModel::tr("The review interval is a multiple of the period");
        case SettingDependency::pad_hours_end_after_they_begin:
            return TemplateViewModel::tr("Pad hours end on the day on which they begin");
        case SettingDependency::trim_rows_ascend:
            return TemplateViewModel::tr("Each trim row is at more degrees than the one before");
    }
    return {};
}

QString unit_words(TemplateKey key, std::string_view unit) {
    for (const auto& known : units_of(kind_of(key))) {
        if (known.symbol == unit) {
            return qstring(known.display);
        }
    }
    return qstring(unit);
}

bool may_be_negative(TemplateKey key) {
    return key == TemplateKey::trim_change || kind_of(key) == Kind::temperature;
}

// A limit as people read it: of a time of day the time, not its minutes.
QString limit_text(TemplateKey key, const std::optional<double>& value) {
    if (!value) {
        return {};
    }
    const bool clock = is_time_of_day(key) && *value >= 0.0 && *value < 1440.0;
    return qstring(clock ? TimeOfDay{static_cast<int>(*value)}.text() : print_exact(*value));
}

QString summary_of(const TemplateSetting& setting) {
    const auto key = setting.setting;
    const QString unit = is_time_of_day(key) ? QStringLiteral("min") : unit_words(key, setting.unit);
    const QString step = setting.resolution ? qstring(print_exact(*setting.resolution)) : QString{};
    return TemplateViewModel::tr("every %1 %2, %3 to %4")
        .arg(step, unit, limit_text(key, setting.least), limit_text(key, setting.most));
}

Result<double> parse_limit(TemplateKey key, bool limit, const QString& text) {
    const auto item = label_of(key).text;
    if (limit && is_time_of_day(key)) {
        WF_TRY(const auto time, TimeOfDay::parse(text.trimmed().toStdString(), item));
        return static_cast<double>(time.minutes);
    }
    return parse_number(text.trimmed().section(QLatin1Char(' '), 0, 0).toStdString(), item);
}

QVariantMap constant_part(TemplateKey key) {
    QVariantList units;
    for (const auto unit : units_of(key)) {
        units.append(choice(qstring(unit), unit_words(key, unit)));
    }
    return {{"key", qstring(enum_name(key))},
            {"name", Formatter{}.text(label_of(key))},
            {"units", units},
            {"timeOfDay", is_time_of_day(key)},
            {"negative", may_be_negative(key)}};
}

}  // namespace

TemplateViewModel::TemplateViewModel(const Context& context, SettingTemplate described,
                                     std::function<QStringList()> folders, QObject* parent)
    : QObject{parent},
      context_{context},
      template_{std::move(described)},
      look_for_folders_{std::move(folders)},
      folders_{look_for_folders_()} {
    work_out();
}

QString TemplateViewModel::kind() const {
    return qstring(enum_name(template_.kind));
}

QVariantList TemplateViewModel::kinds() const {
    QVariantList list;
    for (const auto& [kind, name] : EnumNames<TimerKind>::all) {
        list.append(choice(qstring(name), context_.formatter.text(label_of(kind))));
    }
    return list;
}

QString TemplateViewModel::countsFrom() const {
    return qstring(enum_name(template_.counts_from));
}

QVariantList TemplateViewModel::countsFromChoices() const {
    return {choice(qstring(enum_name(CountsFrom::pump_start)), tr("pump start")),
            choice(qstring(enum_name(CountsFrom::full_header)), tr("a full header"))};
}

QString TemplateViewModel::trimRows() const {
    return template_.trim_rows ? QString::number(*template_.trim_rows) : QString{};
}

bool TemplateViewModel::trimRowsShown() const {
    return template_.trim_rows || template_.kind == TimerKind::trimmed;
}

QVariantList TemplateViewModel::groups() const {
    const auto group_map = [](const QString& title, std::optional<SettingGroup> group) {
        QVariantList settings;
        for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
            if (group_of(key) == group) {
                settings.append(constant_part(key));
            }
        }
        return QVariantMap{
            {"title", title}, {"settings", settings}, {"asksTrimRows", group == SettingGroup::how_it_adapts}};
    };
    QVariantList list;
    for (const auto group : {SettingGroup::when_pads_may_run, SettingGroup::how_long,
                             SettingGroup::how_it_adapts, SettingGroup::rinse}) {
        list.append(group_map(context_.formatter.text(label_of(group)), group));
    }
    list.append(group_map(tr("What it is told of the water, and shows"), std::nullopt));
    return list;
}

QStringList TemplateViewModel::order() const {
    QStringList list;
    for (const auto& setting : template_.settings) {
        list.append(qstring(setting.label));
    }
    return list;
}

QVariantList TemplateViewModel::demands() const {
    QVariantList list;
    for (const auto& [dependency, name] : EnumNames<SettingDependency>::all) {
        list.append(choice(qstring(name), demand_words(dependency)));
    }
    return list;
}

TemplateSetting TemplateViewModel::setting_to_put_in(TemplateKey key) const {
    const auto before = taken_out_.find(key);
    return before == taken_out_.end() ? plain_setting(key) : before->second;
}

void TemplateViewModel::work_out() {
    problems_ = problems_of(template_);
    settings_.clear();
    for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
        const auto* setting = template_.setting(key);
        const auto problem = problems_.settings.find(key);
        const bool wrong = problem != problems_.settings.end();
        QVariantMap map{{"shown", setting != nullptr || can_have(template_.kind, key)},
                        {"used", setting != nullptr},
                        {"problem", wrong ? problem->second.text : QString{}},
                        {"problemField", wrong ? qstring(problem->second.field) : QString{}}};
        const auto held = setting != nullptr ? *setting : setting_to_put_in(key);
        map["label"] = qstring(held.label);
        map["unit"] = qstring(held.unit);
        map["unitText"] = is_time_of_day(key) ? QStringLiteral("min") : unit_words(key, held.unit);
        map["resolution"] = held.resolution ? qstring(print_exact(*held.resolution)) : QString{};
        map["least"] = limit_text(key, held.least);
        map["most"] = limit_text(key, held.most);
        map["note"] = qstring(held.note);
        map["summary"] = summary_of(held);
        settings_[qstring(name)] = map;
    }
    demanded_.clear();
    for (const auto& [dependency, name] : EnumNames<SettingDependency>::all) {
        auto with = template_;
        with.dependencies = {dependency};
        const bool ticked = template_.demands(dependency);
        const auto problem = problems_.dependencies.find(dependency);
        demanded_[qstring(name)] =
            QVariantMap{{"shown", ticked || problems_of(with).dependencies.empty()},
                        {"ticked", ticked},
                        {"problem", problem == problems_.dependencies.end() ? QString{} : problem->second}};
    }
}

Result<void> TemplateViewModel::keep(SettingTemplate wanted) {
    WF_CHECK(context_.store.save(wanted));
    template_ = std::move(wanted);
    work_out();
    emit changed();
    return boost::outcome_v2::success();
}

QString TemplateViewModel::enter(const QString& field, const QString& text) {
    auto wanted = template_;
    const auto typed = text.trimmed().toStdString();
    if (field == QStringLiteral("name")) {
        if (typed.empty()) {
            return tr("A template needs a name.");
        }
        wanted.name = typed;
    } else if (field == QStringLiteral("note")) {
        wanted.note = typed;
    } else if (field == QStringLiteral("kind")) {
        wanted.kind = enum_value<TimerKind>(typed).value_or(wanted.kind);
    } else if (field == QStringLiteral("counts_from")) {
        wanted.counts_from = enum_value<CountsFrom>(typed).value_or(wanted.counts_from);
    } else if (field == QStringLiteral("trim_rows")) {
        const int rows = text.toInt();
        wanted.trim_rows = rows >= 1 && rows <= most_trim_rows ? std::optional{rows} : std::nullopt;
    }
    return problem_in(keep(std::move(wanted)));
}

QString TemplateViewModel::enterSetting(const QString& key, const QString& field, const QString& text) {
    auto wanted = template_;
    const auto named = enum_value<TemplateKey>(key.toStdString());
    const auto setting = std::ranges::find_if(
        wanted.settings, [&](const TemplateSetting& each) { return named && each.setting == *named; });
    if (setting == wanted.settings.end()) {
        return tr("The template has no such setting.");
    }
    const auto name = field.toStdString();
    if (name == "label") {
        setting->label = text.trimmed().toStdString();
    } else if (name == "unit") {
        setting->unit = text.toStdString();
    } else if (name == "note") {
        setting->note = text.trimmed().toStdString();
    } else {
        const auto value = parse_limit(*named, name != "resolution", text);
        if (!value) {
            return qstring(value.error().text());
        }
        (name == "resolution" ? setting->resolution
         : name == "least"    ? setting->least
                              : setting->most) = value.value();
    }
    if (const auto problem = problem_of(wanted.kind, *setting); problem && problem->field == name) {
        return problem->text;
    }
    return problem_in(keep(std::move(wanted)));
}

QString TemplateViewModel::use(const QString& key, bool used) {
    const auto named = enum_value<TemplateKey>(key.toStdString());
    if (!named || used == (template_.setting(*named) != nullptr)) {
        return {};
    }
    auto wanted = template_;
    auto& settings = wanted.settings;
    if (used) {
        const auto place = std::ranges::find_if(
            settings, [&](const TemplateSetting& each) { return each.setting > *named; });
        settings.insert(place, setting_to_put_in(*named));
    } else {
        taken_out_[*named] = *template_.setting(*named);
        std::erase_if(settings, [&](const TemplateSetting& each) { return each.setting == *named; });
    }
    return problem_in(keep(std::move(wanted)));
}

QString TemplateViewModel::demand(const QString& value, bool wanted) {
    const auto named = enum_value<SettingDependency>(value.toStdString());
    if (!named || wanted == template_.demands(*named)) {
        return {};
    }
    auto next = template_;
    if (wanted) {
        next.dependencies.push_back(*named);
    } else {
        std::erase(next.dependencies, *named);
    }
    return problem_in(keep(std::move(next)));
}

QString TemplateViewModel::move(int row, int by) {
    const auto count = static_cast<int>(template_.settings.size());
    const int to = row + by;
    if (row < 0 || row >= count || to < 0 || to >= count) {
        return {};
    }
    auto wanted = template_;
    std::swap(wanted.settings[static_cast<std::size_t>(row)], wanted.settings[static_cast<std::size_t>(to)]);
    return problem_in(keep(std::move(wanted)));
}

void TemplateViewModel::lookForFolders() {
    folders_ = look_for_folders_();
    emit foldersChanged();
}

QString TemplateViewModel::writeTo(const QString& folder) {
    if (!problems_.none()) {
        return tr("Not written: %1").arg(problem());
    }
    const auto written = write_template(template_, folder);
    return written ? tr("Written to %1").arg(written.value()) : qstring(written.error().text());
}

}  // namespace wetfront::ui
