// SPDX-License-Identifier: Apache-2.0
#include "tables/visit_tables.h"

#include <algorithm>

#include "cycle/advice.h"
#include "records/fields.h"
#include "rules/rules.h"
#include "units/file_keys.h"

namespace wetfront {
namespace {

using Row = std::vector<TableCell>;

std::vector<std::string> columns_with(std::initializer_list<const char*> more) {
    std::vector<std::string> columns{"visit", "started", "signed", "farm_name", "house", "house_name"};
    columns.insert(columns.end(), more.begin(), more.end());
    return columns;
}

Row row_of(const VisitFile& file) {
    return {file.visit.id.text,     to_iso8601(file.visit.started),
            file.visit.is_signed(), file.farm.name,
            file.house.id.text,     file.house.name};
}

TableCell cell_of(const Id& id) {
    return id.empty() ? TableCell{} : TableCell{id.text};
}

template <class Part>
TableCell name_in(const Part* part) {
    return part == nullptr || part->name.empty() ? TableCell{} : TableCell{part->name};
}

const Mark* mark_with(const Visit& visit, const Id& id) {
    const auto found = std::ranges::find(visit.marks, id, &Mark::id);
    return found == visit.marks.end() ? nullptr : &*found;
}

std::string reason_for(const Visit& visit, const Id& end_mark) {
    const auto found = std::ranges::find(visit.set_aside, end_mark, &SetAside::end_mark);
    return found == visit.set_aside.end() ? std::string{} : found->reason;
}

constexpr std::size_t most_trim_rows = 4;  // TimerSettings::trim_rows

/// Names and cells of one timer's settings, in the order of fields.h: always the same names.
struct NamedCells {
    std::vector<std::string> names{};
    Row cells{};
    std::string before_name{};  ///< "trim_1_" of a part of that row

    template <class Q>
    void operator()(const Field& field, const Optional<Q>& entry) {
        put(file_key(before_name + field.key, KindOf<Q>::value),
            entry ? TableCell{file_number(any(entry->value()))} : TableCell{});
    }
    void operator()(const Field& field, const std::optional<TimeOfDay>& time) {
        put(field.key, time ? TableCell{time->text()} : TableCell{});
    }
    void operator()(const Field& field, const std::optional<bool>& flag) {
        put(field.key, flag ? TableCell{*flag} : TableCell{});
    }
    void operator()(const Field& field, const std::string& text) {
        put(field.key, text.empty() ? TableCell{} : TableCell{text});
    }
    void operator()(const Field&, const std::vector<TrimRow>& rows) {
        for (std::size_t i = 0; i < most_trim_rows; ++i) {
            before_name = "trim_" + std::to_string(i + 1) + "_";
            each_field(i < rows.size() ? rows[i] : TrimRow{}, *this);
        }
        before_name.clear();
    }
    // The timer stands in front; when a setting was entered is in the visit file.
    void operator()(const Field&, const Id&) {}
    void operator()(const Field&, const std::optional<Moment>&) {}

private:
    void put(std::string name, TableCell cell) {
        names.push_back(std::move(name));
        cells.push_back(std::move(cell));
    }
};

NamedCells named_cells(const TimerSettings& settings) {
    NamedCells named;
    each_field(settings, named);
    return named;
}

void add_settings(Table& table, const VisitFile& file, const TimerSettings& settings, const char* which) {
    auto row = row_of(file);
    row.insert(row.end(), {settings.timer.text, name_in(file.house.timer(settings.timer)), which});
    const auto named = named_cells(settings);
    row.insert(row.end(), named.cells.begin(), named.cells.end());
    table.rows.push_back(std::move(row));
}

void add_findings(Table& table, const VisitFile& file, const std::vector<Finding>& findings,
                  const char* which, UnitSystem units) {
    for (const auto& finding : findings) {
        auto row = row_of(file);
        row.insert(row.end(),
                   {which, finding.rule, std::string{name_of(finding.severity)}, cell_of(finding.timer),
                    name_in(file.house.timer(finding.timer)), cell_of(finding.bank),
                    name_in(file.house.bank(finding.bank)), in_english(finding.message, units),
                    in_english(finding.remedy, units), finding.source});
        table.rows.push_back(std::move(row));
    }
}

}  // namespace

Table readings_table(const std::vector<VisitFile>& visits) {
    Table table{"readings",
                columns_with({"bank", "bank_name", "pump", "pump_name", "reading", "value_s", "at", "used",
                              "not_used_because", "set_aside_because", "stands_out", "fans_running",
                              "started_by", "end_mark"}),
                {}};
    for (const auto& file : visits) {
        for (const auto& reading : timings_of(file).readings) {
            auto row = row_of(file);
            const auto* end = mark_with(file.visit, reading.end_mark);
            const auto reason = reason_for(file.visit, reading.end_mark);
            row.insert(row.end(),
                       {cell_of(reading.bank), name_in(file.house.bank(reading.bank)), cell_of(reading.pump),
                        name_in(file.house.pump(reading.pump)), std::string{name_of(reading.kind)},
                        in_seconds(reading.value),
                        end == nullptr ? TableCell{} : TableCell{to_iso8601(end->wall)}, !reading.not_used,
                        reading.not_used ? TableCell{std::string{name_of(*reading.not_used)}} : TableCell{},
                        reason.empty() ? TableCell{} : TableCell{reason}, reading.stands_out,
                        reading.fans_running ? TableCell{*reading.fans_running} : TableCell{},
                        std::string{enum_name(reading.started_by)}, reading.end_mark.text});
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

Table settings_table(const std::vector<VisitFile>& visits) {
    Table table{"settings", columns_with({"timer", "timer_name", "which"}), {}};
    const auto named = named_cells({});
    table.columns.insert(table.columns.end(), named.names.begin(), named.names.end());
    for (const auto& file : visits) {
        const auto advice = advise(file);
        for (const auto& timer : file.house.timers) {
            if (const auto* found = file.visit.found_of(timer.id)) {
                add_settings(table, file, *found, "found");
            }
            if (const auto* advised = advice.of(timer.id)) {
                add_settings(table, file, settings_to_enter(*advised), "advised");
            }
            if (const auto* left = file.visit.left_of(timer.id)) {
                add_settings(table, file, *left, "left");
            }
        }
    }
    return table;
}

Table findings_table(const std::vector<VisitFile>& visits, UnitSystem units) {
    Table table{"findings",
                columns_with({"on", "rule", "severity", "timer", "timer_name", "bank", "bank_name", "message",
                              "remedy", "source"}),
                {}};
    for (const auto& file : visits) {
        const auto timings = timings_of(file);
        const auto advice = advise(file);
        add_findings(table, file, check(file, timings, advice, WhichSettings::found), "found", units);
        add_findings(table, file, check(file, timings, advice, WhichSettings::left), "left", units);
    }
    return table;
}

}  // namespace wetfront
