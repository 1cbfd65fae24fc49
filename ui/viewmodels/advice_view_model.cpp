// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/advice_view_model.h"

#include "cycle/deviations.h"
#include "sheet/sheet.h"
#include "viewmodels/controller_lines.h"
#include "viewmodels/finding_maps.h"
#include "viewmodels/strip_map.h"

namespace wetfront::ui {
namespace {

QString qstring(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString shown(const std::optional<AnyQuantity>& value, const Formatter& formatter) {
    return value ? formatter.text(*value) : QString{};
}

QString entered(const auto& entry, const Formatter& formatter) {
    return entry ? formatter.text(any(entry->value())) : QString{};
}

}  // namespace

AdviceViewModel::AdviceViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent}, record_{record}, what_if_{new WhatIfViewModel{record, this}} {
    follow_record();
    connect(&record_, &VisitRecord::changed, this, &AdviceViewModel::follow_record);
}

void AdviceViewModel::follow_record() {
    const auto& house = record_.file().house;
    if (house.timer(timer_) == nullptr) {
        timer_ = house.timers.empty() ? Id{} : house.timers.front().id;
    }
    what_if_->follow(timer_);
    emit changed();
}

QVariantList AdviceViewModel::timers() const {
    QVariantList list;
    for (const auto& timer : record_.file().house.timers) {
        list.append(QVariantMap{{"value", qstring(timer.id.text)}, {"text", qstring(timer.name)}});
    }
    return list;
}

QString AdviceViewModel::timer() const {
    return qstring(timer_.text);
}

void AdviceViewModel::chooseTimer(const QString& id) {
    timer_ = Id{id.toStdString()};
    follow_record();
}

const TimerAdvice* AdviceViewModel::advice() const {
    return record_.advice().of(timer_);
}

QString AdviceViewModel::verdict() const {
    const auto* timer = advice();
    return timer == nullptr ? QString{} : record_.context().formatter.text(timer->verdict);
}

QString AdviceViewModel::truth() const {
    return record_.context().formatter.text(record_.advice().truth);
}
QString AdviceViewModel::truthSource() const {
    return qstring(record_.advice().truth_source);
}

const SettingTemplate* AdviceViewModel::described() const {
    const auto* timer = record_.file().house.timer(timer_);
    return timer == nullptr ? nullptr : described_controller(*timer);
}

/// What the timer's controller asks for: its labels, order and units.
QVariantMap AdviceViewModel::controller_row(const TemplateLine& line, const TimerSettings& found,
                                            const TimerSettings& left) const {
    const auto& formatter = record_.context().formatter;
    const auto& timer = *advice();
    const auto key = line.setting;
    const auto setting = setting_of(key);
    const std::size_t row = line.row == 0 ? 0 : static_cast<std::size_t>(line.row - 1);
    const auto text = [&](const std::optional<AnyQuantity>& value) {
        return value ? text_on_controller(*described(), key, *value) : QString{};
    };
    const auto meaning = [&](const TimerSettings& settings) {
        const auto differs = setting ? deviation(settings, timer, *setting, row) : std::nullopt;
        return differs ? formatter.text(differs->meaning) : QString{};
    };
    const auto* advised = setting && row == 0 ? timer.advised(*setting) : nullptr;
    const QString label = QString::fromStdString(line.label);
    QString brief = advised == nullptr ? QString{} : formatter.text(advised->reason.brief);
    if (!line.problems.empty()) {
        brief = tr("Cannot be held as advised. %1").arg(formatter.text(line.problems.front()));
    }
    return {{"label", line.row == 0 ? label : tr("Row %1: %2").arg(QString::number(line.row), label)},
            {"trade", formatter.text(label_of(key))},
            {"found", text(held(found, key, row))},
            {"advised", text(line.entered)},
            {"left", text(held(left, key, row))},
            {"brief", brief},
            {"foundDiffers", meaning(found)},
            {"leftDiffers", meaning(left)},
            {"setting", advised == nullptr ? QString{} : qstring(key_of(*setting))}};
}

QVariantList AdviceViewModel::groups() const {
    const auto& formatter = record_.context().formatter;
    const auto& visit = record_.file().visit;
    const TimerSettings none;
    const auto* found_entry = visit.found_of(timer_);
    const auto* left_entry = visit.left_of(timer_);
    const TimerSettings& found = found_entry == nullptr ? none : *found_entry;
    const TimerSettings& left = left_entry == nullptr ? none : *left_entry;

    const auto plain_row = [](const QString& label, const QString& was, const QString& is) {
        return QVariantMap{{"label", label},
                           {"trade", QString{}},
                           {"found", was},
                           {"advised", QString{}},
                           {"left", is},
                           {"brief", QString{}},
                           {"foundDiffers", QString{}},
                           {"leftDiffers", QString{}},
                           {"setting", QString{}}};
    };
    const auto* timer = advice();
    const auto advised_row = [&](Setting setting) {
        const auto* advised = timer == nullptr ? nullptr : timer->advised(setting);
        const auto meaning = [&](const TimerSettings& settings) {
            const auto differs = timer == nullptr ? std::nullopt : deviation(settings, *timer, setting);
            return differs ? formatter.text(differs->meaning) : QString{};
        };
        const bool has_value = advised != nullptr && advised->value;
        return QVariantMap{{"label", formatter.text(label_of(setting))},
                           {"trade", QString{}},
                           {"found", shown(held(found, setting), formatter)},
                           {"advised", has_value ? shown(advised->value, formatter) : QString{}},
                           {"left", shown(held(left, setting), formatter)},
                           {"brief", advised == nullptr ? QString{} : formatter.text(advised->reason.brief)},
                           {"foundDiffers", meaning(found)},
                           {"leftDiffers", meaning(left)},
                           {"setting", advised == nullptr ? QString{} : qstring(key_of(setting))}};
    };

    QVariantList groups;
    const auto* fit = timer != nullptr && timer->fit ? &*timer->fit : nullptr;
    for (const auto group : all_groups) {
        QVariantList rows;
        if (fit != nullptr) {
            for (const auto& line : fit->lines) {
                // What it is told stands with how long it runs.
                if (group_of(line.setting).value_or(SettingGroup::how_long) == group) {
                    rows.append(controller_row(line, found, left));
                }
            }
            if (!rows.isEmpty()) {
                groups.append(QVariantMap{{"title", formatter.text(label_of(group))}, {"rows", rows}});
            }
            continue;
        }
        if (group == SettingGroup::when_pads_may_run) {
            rows.append(
                plain_row(tr("Target"), entered(found.target, formatter), entered(left.target, formatter)));
        }
        for (const auto setting : all_settings) {
            if (group_of(setting) == group) {
                rows.append(advised_row(setting));
            }
        }
        groups.append(QVariantMap{{"title", formatter.text(label_of(group))}, {"rows", rows}});
    }
    return groups;
}

QVariantList AdviceViewModel::banks() const {
    QVariantList list;
    const auto* timer = advice();
    if (timer == nullptr) {
        return list;
    }
    for (const auto& bank : timer->banks) {
        const auto* described = record_.file().house.bank(bank.bank);
        QStringList lines = texts(bank.missing) + texts(bank.obstacles);
        if (bank.decides && lines.isEmpty() && timer->banks.size() > 1) {
            lines.append(tr("This bank decides: the others need less."));
        }
        if (!lines.isEmpty()) {
            list.append(QVariantMap{{"name", described == nullptr ? QString{} : qstring(described->name)},
                                    {"decides", bank.decides},
                                    {"text", lines.join(QLatin1Char(' '))}});
        }
    }
    return list;
}

QStringList AdviceViewModel::texts(const std::vector<Message>& messages) const {
    QStringList list;
    for (const auto& message : messages) {
        list.append(record_.context().formatter.text(message));
    }
    return list;
}

QStringList AdviceViewModel::missing() const {
    return texts(record_.advice().missing);
}
QStringList AdviceViewModel::assumed() const {
    return texts(record_.advice().assumed);
}

QStringList AdviceViewModel::notes() const {
    const auto* timer = advice();
    return (timer == nullptr ? QStringList{} : texts(timer->notes)) + texts(record_.advice().notes);
}

QVariantList AdviceViewModel::foundFindings() const {
    return finding_maps(record_.found_findings(), record_.file().house, timer_, FindingsOf::timer_and_house,
                        record_.context().formatter);
}
QVariantList AdviceViewModel::foundSettingFindings() const {
    return finding_maps(record_.found_findings(), record_.file().house, timer_, FindingsOf::timer,
                        record_.context().formatter);
}
QVariantList AdviceViewModel::leftFindings() const {
    return finding_maps(record_.left_findings(), record_.file().house, timer_, FindingsOf::timer,
                        record_.context().formatter);
}

QVariantList AdviceViewModel::strips() const {
    QVariantList list;
    const auto& visit = record_.file().visit;
    const auto* timer = advice();
    const auto ratio = timer == nullptr ? std::nullopt : timer->evaporation_ratio;
    const auto add = [&](const TimerSettings& settings, const Message& label) {
        if (const auto strip = cycle_strip(record_.file(), record_.timings(), settings, label, ratio)) {
            list.append(strip_map(*strip, record_.context().formatter));
        }
    };
    if (const auto* found = visit.found_of(timer_)) {
        add(*found, WF_TEXT("found"));
    }
    if (timer != nullptr) {
        add(settings_to_enter(*timer), WF_TEXT("advised"));
    }
    if (const auto* left = visit.left_of(timer_)) {
        add(*left, WF_TEXT("left"));
    }
    return list;
}

QVariantMap AdviceViewModel::reason(const QString& setting) const {
    const auto* timer = advice();
    for (const auto one : all_settings) {
        if (timer == nullptr || setting != qstring(key_of(one))) {
            continue;
        }
        const auto* advised = timer->advised(one);
        if (advised == nullptr) {
            return {};
        }
        const auto& formatter = record_.context().formatter;
        const auto& reason = advised->reason;
        QVariantList inputs;
        for (const auto& input : reason.inputs) {
            inputs.append(QVariantMap{{"name", formatter.text(input.name)},
                                      {"symbol", qstring(input.symbol)},
                                      {"value", formatter.text(input.value)},
                                      {"origin", formatter.text(label_of(input.origin))},
                                      {"source", qstring(input.source)}});
        }
        QString rounding;
        if (reason.exact && reason.resolution && reason.rounding != Rounding::none) {
            rounding = (reason.rounding == Rounding::up ? tr("%1, rounded up to a step of %2")
                                                        : tr("%1, rounded down to a step of %2"))
                           .arg(formatter.text(*reason.exact), formatter.text(*reason.resolution));
        }
        return {{"title", formatter.text(label_of(one))},
                {"explanation", formatter.text(reason.explanation)},
                {"formula", qstring(reason.formula)},
                {"inputs", inputs},
                {"result",
                 formatter.text(advised->value ? Message{"%1", {*advised->value}} : advised->reason.brief)},
                {"rounding", rounding},
                {"source", qstring(reason.source)}};
    }
    return {};
}

QString AdviceViewModel::controller() const {
    const auto* known = described();
    return known != nullptr ? QString::fromStdString(known->name) : QString{};
}

QVariantList AdviceViewModel::toEnter() const {
    QVariantList lines;
    const auto* timer = advice();
    if (timer == nullptr || !timer->fit) {
        return lines;
    }
    const auto add = [&](const QString& label, const QString& number, const QStringList& remarks, bool held) {
        lines.append(QVariantMap{{"label", label}, {"number", number}, {"remarks", remarks}, {"held", held}});
    };
    for (const auto& line : timer->fit->lines) {
        const auto number = QString::fromStdString(line.number);
        const auto label = QString::fromStdString(line.label);
        add(line.row == 0 ? label : tr("Row %1: %2").arg(QString::number(line.row), label),
            number.isEmpty() ? tr("nothing")
                             : tr("%1 %2").arg(number, QString::fromStdString(line.unit)).trimmed(),
            texts(line.changes) + texts(line.problems), line.problems.empty());
    }
    for (const auto& missing : timer->fit->not_held) {
        add(record_.context().formatter.text(missing), {}, {}, false);
    }
    return lines;
}

}  // namespace wetfront::ui
