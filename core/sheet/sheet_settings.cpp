// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cycle/deviations.h"
#include "records/fields.h"
#include "sheet/blocks.h"
#include "sheet/words.h"

// As found, advised and as left side by side, and why.
namespace wetfront {
namespace {

/// One setting as a timer holds it.
struct PrintedSetting {
    std::string_view key;
    Message label;
    std::optional<Message> text;        ///< none: not entered
    std::optional<AnyQuantity> number;  ///< for comparing; none for yes or no
};

/// Reads the fields of a TimerSettings record one by one, those with one value each.
struct ReadHeld {
    std::vector<PrintedSetting>& held;

    template <class Q>
    void operator()(const Field& field, const Optional<Q>& entry) const {
        PrintedSetting setting{field.key, field.label, std::nullopt, std::nullopt};
        if (entry) {
            setting.number = any(entry->value());
            setting.text = shown(*setting.number);
        }
        held.push_back(std::move(setting));
    }
    void operator()(const Field& field, const std::optional<TimeOfDay>& time) const {
        PrintedSetting setting{field.key, field.label, std::nullopt, std::nullopt};
        if (time) {
            setting.number = time->since_midnight();
            setting.text = verbatim(time->text());
        }
        held.push_back(std::move(setting));
    }
    void operator()(const Field& field, const std::optional<bool>& flag) const {
        PrintedSetting setting{field.key, field.label, std::nullopt, std::nullopt};
        if (flag) {
            setting.text = *flag ? Message{WF_TEXT("yes")} : Message{WF_TEXT("no")};
        }
        held.push_back(std::move(setting));
    }
    void operator()(const Field&, const std::vector<TrimRow>&) const {}
    void operator()(const Field&, const std::optional<Moment>&) const {}
    void operator()(const Field&, const Id&) const {}
    void operator()(const Field&, const std::string&) const {}
};

std::vector<PrintedSetting> printed_settings(const TimerSettings* settings) {
    std::vector<PrintedSetting> held;
    const TimerSettings nothing;
    each_field(settings != nullptr ? *settings : nothing, ReadHeld{held});
    return held;
}

SettingGroup group_of_key(std::string_view key) {
    if (key == "target") {
        return SettingGroup::when_pads_may_run;
    }
    const auto advised =
        std::ranges::find(all_settings, key, [](Setting setting) { return key_of(setting); });
    return advised == all_settings.end() ? SettingGroup::how_long : group_of(*advised);
}

/// What a timer of that kind can hold; what it was found to hold is shown whatever its kind.
bool has_setting(TimerKind kind, std::string_view key) {
    switch (kind) {
        case TimerKind::trimmed:
            return true;
        case TimerKind::fixed_interval:
            return key == "period" || key == "base_on_time" || key == "continuous_intended";
        case TimerKind::on_demand:
            return key == "continuous_intended";
    }
    return true;
}

/// What a controller shows or was told about timings; a sheet lists it only where there is something.
bool is_evidence(std::string_view key) {
    return key == "entered_fill" || key == "entered_wet_through" || key == "shown_on_time";
}

const SettingAdvice* advised_for(const TimerAdvice* advice, std::string_view key) {
    const auto setting = std::ranges::find(all_settings, key, [](Setting each) { return key_of(each); });
    return advice == nullptr || setting == all_settings.end() ? nullptr : advice->advised(*setting);
}

Message advised_text(const SettingAdvice* advised) {
    if (advised == nullptr) {
        return WF_TEXT("no advice");
    }
    return advised->value ? shown(*advised->value) : advised->reason.brief;
}

/// Everything about one timer that its tables are made from.
struct SideBySide {
    const Timer& timer;
    const TimerSettings* found;
    const TimerSettings* left;
    const TimerAdvice* advice;
    const BankTimings* slowest;

    [[nodiscard]] bool deviates(Setting setting, std::size_t at = 0) const {
        return advice != nullptr && left != nullptr && deviation(*left, *advice, setting, at).has_value();
    }
    /// A timing that the controller was told, beside the reading of it.
    [[nodiscard]] Message evidence_text(std::string_view key) const {
        const auto reading = [](const std::optional<TimingResult>& result) {
            return result ? Message{WF_TEXT("read: %1"), {any(result->mean)}} : not_measured();
        };
        if (key == "entered_fill") {
            return slowest != nullptr ? reading(slowest->fill) : not_measured();
        }
        if (key == "entered_wet_through") {
            return slowest != nullptr ? reading(slowest->wet_through) : not_measured();
        }
        return WF_TEXT("no advice");
    }
};

SheetTable group_table(Message group) {
    return {{std::move(group), WF_TEXT("Found"), WF_TEXT("Advised"), WF_TEXT("Left")},
            {},
            {0.34, 0.22, 0.22, 0.22}};
}

void add_setting(SheetTable& table, const SideBySide& side, const PrintedSetting& found,
                 const PrintedSetting& left) {
    if (!has_setting(side.timer.kind, found.key) && !found.text && !left.text) {
        return;
    }
    if (is_evidence(found.key) && !found.text && !left.text) {
        return;
    }
    const auto* advised = advised_for(side.advice, found.key);
    const auto middle = is_evidence(found.key) ? side.evidence_text(found.key) : advised_text(advised);
    auto cells =
        row({found.label, found.text.value_or(not_entered()), middle, left.text.value_or(not_entered())});
    cells.back().marked = advised != nullptr && side.deviates(advised->setting);
    table.rows.push_back(std::move(cells));
}

Message trim_text(const TrimRow& row) {
    const auto from = shown_or(row.above_target, not_entered());
    if (!row.change) {
        return {WF_TEXT("from %1 above target: not entered"), {from}};
    }
    const double change = in_seconds(row.change->value());
    const auto by = any(seconds(std::abs(change)));
    return change < 0.0 ? Message{WF_TEXT("from %1 above target: %2 shorter"), {from, by}}
                        : Message{WF_TEXT("from %1 above target: %2 longer"), {from, by}};
}

/// Advice has one row, the step above the dead band; none where nothing is to be trimmed.
std::optional<TrimRow> advised_row(const TimerAdvice* advice) {
    if (advice == nullptr) {
        return std::nullopt;
    }
    const auto settings = as_settings(*advice);
    return settings.trim_rows.empty() ? std::nullopt : std::optional{settings.trim_rows.front()};
}

/// Those from `first` on that somebody found or left, but `least` of them.
void add_trim_rows(SheetTable& table, const SideBySide& side, std::size_t first, std::size_t least) {
    const auto rows_of = [](const TimerSettings* settings) {
        return settings == nullptr ? std::size_t{0} : settings->trim_rows.size();
    };
    const auto advised = advised_row(side.advice);
    const auto count = std::max({rows_of(side.found), rows_of(side.left), first + least});
    for (std::size_t i = first; i < count; ++i) {
        const auto text = [&](const TimerSettings* settings) {
            return i < rows_of(settings) ? trim_text(settings->trim_rows[i]) : not_entered();
        };
        Message middle = WF_TEXT("no row");
        if (i == 0 && least > 0) {
            middle = advised ? trim_text(*advised)
                             : advised_text(advised_for(side.advice, key_of(Setting::trim_step)));
        }
        auto cells = row(
            {{WF_TEXT("Trim row %1"), {static_cast<int>(i) + 1}}, text(side.found), middle, text(side.left)});
        cells.back().marked =
            side.deviates(Setting::trim_step, i) || side.deviates(Setting::trim_dead_band, i);
        table.rows.push_back(std::move(cells));
    }
}

/// The firm's own label, the trade's name beside it.
Message name_of(const TemplateLine& line) {
    const Message both{"%1 (%2)", {verbatim(line.label), label_of(line.setting)}};
    return line.row == 0 ? both : Message{WF_TEXT("Row %1: %2"), {line.row, both}};
}

/// What a described controller asks, in its order and units; its own numbers, not turned into the reader's.
void add_controller_line(SheetTable& table, const SideBySide& side, const TemplateLine& line) {
    const auto& described = *side.timer.controller->setting(line.setting);
    const auto at = line.row == 0 ? std::size_t{0} : static_cast<std::size_t>(line.row - 1);
    const auto text = [&](const TimerSettings* settings) {
        const auto value = settings == nullptr ? std::nullopt : held(*settings, line.setting, at);
        return value ? verbatim(text_on(described, *value)) : not_entered();
    };
    Message advised = WF_TEXT("no advice");
    if (line.entered) {
        advised = verbatim(text_on(described, *line.entered));
    } else if (const auto setting = setting_of(line.setting)) {
        advised = advised_text(side.advice->advised(*setting));
    }
    if (!line.problems.empty()) {
        advised = line.entered ? Message{WF_TEXT("%1 (cannot be held as advised)"), {advised}}
                               : Message{WF_TEXT("%1 (cannot be held)"), {advised}};
    }
    auto cells = row({name_of(line), text(side.found), advised, text(side.left)});
    const auto setting = setting_of(line.setting);
    cells.back().marked = setting && side.deviates(*setting, at);
    table.rows.push_back(std::move(cells));
}

/// What a record holds that the controller is not described with: shown all the same.
bool is_on_controller(const Timer& timer, std::string_view key) {
    return timer.controller && std::ranges::any_of(timer.controller->settings, [&](const auto& setting) {
               return enum_name(setting.setting) == key;
           });
}

/// How many trim rows the controller asks for.
std::size_t trim_lines_of(const TemplateFit& fit) {
    int rows = 0;
    for (const auto& line : fit.lines) {
        rows = std::max(rows, line.row);
    }
    return static_cast<std::size_t>(rows);
}

void add_groups_of_controller(Blocks& blocks, const SideBySide& side) {
    const auto found = printed_settings(side.found);
    const auto left = printed_settings(side.left);
    const auto add_lines = [&](SheetTable& table, std::optional<SettingGroup> group) {
        for (const auto& line : side.advice->fit->lines) {
            if (group_of(line.setting) == group) {
                add_controller_line(table, side, line);
            }
        }
    };
    for (const auto group : all_groups) {
        auto table = group_table(label_of(group));
        add_lines(table, group);
        if (group == SettingGroup::how_it_adapts) {
            add_trim_rows(table, side, trim_lines_of(*side.advice->fit), 0);
        }
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (group_of_key(found[i].key) == group && (found[i].text || left[i].text) &&
                !is_on_controller(side.timer, found[i].key)) {
                add_setting(table, side, found[i], left[i]);
            }
        }
        if (group == SettingGroup::how_long) {
            add_lines(table, std::nullopt);  // what it is told and shows
        }
        if (table.rows.empty()) {
            table.rows.push_back(row({WF_TEXT("this timer has none"), "", "", ""}));
        }
        blocks.emplace_back(std::move(table));
    }
}

/// What the numbers of those tables mean, and what the controller cannot do.
void add_remarks_on_controller(Blocks& blocks, const SideBySide& side) {
    const auto& fit = *side.advice->fit;
    blocks.emplace_back(
        SheetParagraph{counts_from_full_header(side.timer)
                           ? Message{WF_TEXT("Labels, units and steps are those of %1. Its on-times count "
                                             "from a full header, the pump's runs from its start."),
                                     {verbatim(side.timer.controller->name)}}
                           : Message{WF_TEXT("Labels, units and steps are those of %1."),
                                     {verbatim(side.timer.controller->name)}},
                       false});
    for (const auto& line : fit.lines) {
        for (const auto* remarks : {&line.changes, &line.problems}) {
            for (const auto& remark : *remarks) {
                blocks.emplace_back(SheetParagraph{{WF_TEXT("%1: %2"), {name_of(line), remark}}, false});
            }
        }
    }
    for (const auto& missing : fit.not_held) {
        blocks.emplace_back(SheetParagraph{missing, false});
    }
}

void add_groups(Blocks& blocks, const SideBySide& side) {
    if (side.advice != nullptr && side.advice->fit) {
        add_groups_of_controller(blocks, side);
        add_remarks_on_controller(blocks, side);
        return;
    }
    const auto found = printed_settings(side.found);
    const auto left = printed_settings(side.left);
    for (const auto group : all_groups) {
        auto table = group_table(label_of(group));
        if (group == SettingGroup::how_it_adapts) {
            add_trim_rows(table, side, 0, side.timer.kind == TimerKind::trimmed ? 1 : 0);
        }
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (group_of_key(found[i].key) == group) {
                add_setting(table, side, found[i], left[i]);
            }
        }
        if (table.rows.empty()) {
            table.rows.push_back(row({WF_TEXT("this timer has none"), "", "", ""}));
        }
        blocks.emplace_back(std::move(table));
    }
}

void add_text(Blocks& blocks, const std::vector<Message>& texts) {
    for (const auto& text : texts) {
        blocks.emplace_back(SheetParagraph{text, false});
    }
}

Message why(const SettingAdvice& advised) {
    const auto& reason = advised.reason;
    if (!advised.value) {
        return reason.explanation;  // the brief stands in place of the value
    }
    if (!reason.exact || reason.rounding == Rounding::none || same_value(*reason.exact, *advised.value)) {
        return reason.brief;
    }
    return reason.rounding == Rounding::up
               ? Message{WF_TEXT("%1; worked out %2, rounded up"), {reason.brief, *reason.exact}}
               : Message{WF_TEXT("%1; worked out %2, rounded down"), {reason.brief, *reason.exact}};
}

void add_reason_table(Blocks& blocks, const std::vector<SettingAdvice>& settings, Message title,
                      bool only_values) {
    SheetTable table{{std::move(title), WF_TEXT("Advised"), WF_TEXT("Why"), WF_TEXT("Source")},
                     {},
                     {0.22, 0.13, 0.38, 0.27}};
    for (const auto& advised : settings) {
        if (only_values && !advised.value) {
            continue;
        }
        table.rows.push_back(row({label_of(advised.setting), advised_text(&advised), why(advised),
                                  advised.reason.source.empty() ? "" : verbatim(advised.reason.source)}));
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace

void add_settings(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    blocks.emplace_back(SheetHeading{WF_TEXT("Settings")});
    blocks.emplace_back(SheetParagraph{inputs.advice.truth, true});
    blocks.emplace_back(SheetParagraph{{WF_TEXT("Source: %1"), {inputs.advice.truth_source}}, false});
    for (const auto& timer : house.timers) {
        const SideBySide side{timer, visit.found_of(timer.id), visit.left_of(timer.id),
                              inputs.advice.of(timer.id), slowest_bank(inputs.file, inputs.timings, timer)};
        blocks.emplace_back(SheetHeading{{WF_TEXT("As found, advised and as left: %1 (%2)"),
                                          {label_of(house, timer), label_of(timer.kind)}}});
        add_groups(blocks, side);
        if (side.left != nullptr && !side.left->deviation_reason.empty()) {
            blocks.emplace_back(SheetParagraph{
                {WF_TEXT("Why it differs from the advice: %1"), {side.left->deviation_reason}}, false});
        }
    }
}

void add_reasons(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    const auto& advice = inputs.advice;
    for (const auto& timer : advice.timers) {
        const auto* described = house.timer(timer.timer);
        const auto name = described != nullptr ? label_of(house, *described) : verbatim(timer.timer.text);
        blocks.emplace_back(SheetHeading{{WF_TEXT("Why: %1"), {name}}});
        blocks.emplace_back(SheetParagraph{timer.verdict, true});
        if (!timer.when_pads_may_run.empty()) {
            add_reason_table(blocks, timer.when_pads_may_run, WF_TEXT("When to run pads"), false);
        }
        if (timer.cycled) {
            add_reason_table(blocks, timer.cycle, WF_TEXT("Best cycle"), false);
        }
        // Beside a cycle, running without rest is the other choice: what it sets is enough.
        add_reason_table(blocks, timer.continuous, WF_TEXT("Without rest"), timer.cycled);
        for (const auto& bank : timer.banks) {
            add_text(blocks, bank.missing);
            add_text(blocks, bank.obstacles);
        }
        add_text(blocks, timer.notes);
    }
    blocks.emplace_back(SheetHeading{WF_TEXT("Assumed")});
    add_text(blocks, advice.assumed);
    if (advice.assumed.empty()) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("Nothing was assumed for the advice."), false});
    }
    if (!advice.missing.empty()) {
        blocks.emplace_back(SheetHeading{WF_TEXT("Missing for the advice")});
        add_text(blocks, advice.missing);
    }
    add_text(blocks, advice.notes);
}

}  // namespace wetfront
