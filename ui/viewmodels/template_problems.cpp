// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/template_problems.h"

#include <QCoreApplication>
#include <algorithm>
#include <cctype>

#include "format/formatter.h"

namespace wetfront::ui {
namespace {

class TemplateProblemsWords {
    Q_DECLARE_TR_FUNCTIONS(TemplateProblemsWords)
};

QString field_words(const std::string& field) {
    return field == "label"        ? TemplateProblemsWords::tr("Label")
           : field == "unit"       ? TemplateProblemsWords::tr("Unit")
           : field == "resolution" ? TemplateProblemsWords::tr("Smallest step")
           : field == "least"      ? TemplateProblemsWords::tr("Least")
           : field == "most"       ? TemplateProblemsWords::tr("Most")
                                   : TemplateProblemsWords::tr("Setting");
}

// The check names settings by their key in files; people know them by name.
std::string with_names(std::string text) {
    const auto in_word = [&](std::size_t at) {
        return at < text.size() && (std::isalnum(static_cast<unsigned char>(text[at])) || text[at] == '_');
    };
    for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
        const std::string label = label_of(key).text;
        for (auto at = text.find(name); at != std::string::npos; at = text.find(name, at)) {
            const bool whole = (at == 0 || !in_word(at - 1)) && !in_word(at + name.size());
            if (whole) {
                text.replace(at, name.size(), label);
            }
            at += whole ? label.size() : name.size();
        }
    }
    return text;
}

QString said(Error error, const QString& item) {
    error.item = item.toStdString();
    error.read = error.item == TemplateProblemsWords::tr("Setting").toStdString() ? with_names(error.read)
                                                                                  : error.read;
    error.accepted = with_names(error.accepted);
    return QString::fromStdString(error.text());
}

bool about_settings(const Error& error) {
    return error.item.starts_with("settings");
}

void put_in(SettingTemplate& described, const TemplateSetting& setting) {
    const auto there = std::ranges::find(described.settings, setting.setting, &TemplateSetting::setting);
    if (there == described.settings.end()) {
        described.settings.push_back(setting);
    } else {
        *there = setting;
    }
}

// Adds what the template's kind, or what is there, needs and is not there; returns what was missing and why.
std::map<TemplateKey, SettingProblem> add_missing(SettingTemplate& described) {
    std::map<TemplateKey, SettingProblem> missing;
    for (auto checked = check_template(described, ""); !checked && about_settings(checked.error());
         checked = check_template(described, "")) {
        // The one that is missing is the one whose presence changes what the check says.
        const auto before = described;
        for (const auto& [key, name] : EnumNames<TemplateKey>::all) {
            if (before.setting(key) != nullptr || !can_have(before.kind, key)) {
                continue;
            }
            put_in(described, plain_setting(key));
            const auto with = check_template(described, "");
            if (!with && with.error() == checked.error()) {
                described = before;
                continue;
            }
            missing[key] = {"setting", said(checked.error(), Formatter{}.text(label_of(key)))};
            break;
        }
        if (described == before) {
            break;
        }
    }
    return missing;
}

}  // namespace

TemplateSetting plain_setting(TemplateKey key) {
    const auto start = generic_template(TimerKind::trimmed);
    if (const auto* setting = start.setting(key)) {
        return *setting;
    }
    // What a controller asks for or shows of the timings is a time as its on-times are.
    auto setting = *start.setting(TemplateKey::base_on_time);
    setting.setting = key;
    setting.label = label_of(key).text;
    return setting;
}

std::optional<SettingProblem> problem_of(TimerKind kind, const TemplateSetting& setting) {
    auto probe = generic_template(kind);
    probe.dependencies.clear();
    if (setting.setting == TemplateKey::pad_hours_from || setting.setting == TemplateKey::pad_hours_to) {
        put_in(probe, plain_setting(TemplateKey::pad_hours_from));
        put_in(probe, plain_setting(TemplateKey::pad_hours_to));
    }
    put_in(probe, setting);
    const auto checked = check_template(probe, "");
    if (checked) {
        return std::nullopt;
    }
    const auto& item = checked.error().item;
    const auto field = item.substr(item.rfind('.') + 1);
    return SettingProblem{field, said(checked.error(), field_words(field))};
}

bool can_have(TimerKind kind, TemplateKey key) {
    return !problem_of(kind, plain_setting(key));
}

TemplateProblems problems_of(const SettingTemplate& described) {
    TemplateProblems problems;
    // Each part is checked among others that are in order.
    auto mended = described;
    mended.name = generic_template(described.kind).name;
    mended.dependencies.clear();
    mended.settings.clear();
    for (const auto& setting : described.settings) {
        if (auto problem = problem_of(described.kind, setting)) {
            if (problem->field != "setting") {
                put_in(mended, plain_setting(setting.setting));
            }
            problems.settings[setting.setting] = std::move(*problem);
        } else {
            put_in(mended, setting);
        }
    }
    problems.settings.merge(add_missing(mended));
    if (const auto checked = check_template(mended, ""); !checked) {
        problems.trim_rows = said(checked.error(), TemplateProblemsWords::tr("Trim rows"));
        mended.trim_rows = generic_template(described.kind).trim_rows;
    }
    for (const auto dependency : described.dependencies) {
        mended.dependencies = {dependency};
        if (const auto checked = check_template(mended, ""); !checked) {
            problems.dependencies[dependency] =
                said(checked.error(), TemplateProblemsWords::tr("Between settings"));
        }
    }
    return problems;
}

QString TemplateProblems::first() const {
    if (!settings.empty()) {
        const auto& [key, problem] = *settings.begin();
        return problem.field == "setting"
                   ? problem.text
                   : QStringLiteral("%1: %2").arg(Formatter{}.text(label_of(key)), problem.text);
    }
    return !trim_rows.isEmpty() ? trim_rows : dependencies.empty() ? QString{} : dependencies.begin()->second;
}

}  // namespace wetfront::ui
