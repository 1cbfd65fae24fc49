// SPDX-License-Identifier: Apache-2.0
#include "day/weather_csv.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/numbers.h"
#include "day/csv_lines.h"
#include "day/weather_runs.h"

namespace wetfront {
namespace weather_csv_detail {
namespace {

using namespace weather_detail;

enum class Measured { dry_bulb, relative_humidity, wet_bulb, dew_point, pressure };
struct MeasuredName {
    Measured measured;
    std::string_view name;
    Kind kind;
    const char* example;
};
constexpr std::array measured_names{
    MeasuredName{Measured::dry_bulb, "dry bulb", Kind::temperature, "dry bulb [degC]"},
    MeasuredName{Measured::relative_humidity, "relative humidity", Kind::fraction, "relative humidity [%]"},
    MeasuredName{Measured::wet_bulb, "wet bulb", Kind::temperature, "wet bulb [degC]"},
    MeasuredName{Measured::dew_point, "dew point", Kind::temperature, "dew point [degC]"},
    MeasuredName{Measured::pressure, "pressure", Kind::pressure, "pressure [kPa]"}};
constexpr std::array humidities{Measured::relative_humidity, Measured::wet_bulb, Measured::dew_point};

const MeasuredName& name_of(Measured measured) {
    return measured_names.at(static_cast<std::size_t>(measured));
}

/// A column of a quantity.
struct Column {
    std::size_t number = 0;  ///< from 1; 0: not in the file
    const Unit* unit = nullptr;
};
struct Columns {
    std::size_t count = 0;
    std::size_t time = 0;
    std::array<Column, measured_names.size()> of;
    Measured humidity = Measured::relative_humidity;
    std::vector<Message> notes;

    [[nodiscard]] const Column& at(Measured measured) const {
        return of.at(static_cast<std::size_t>(measured));
    }
};

Error wrong_heading(std::size_t column, std::string_view heading, std::string accepted) {
    return bad_input(cell_name(1, column, "heading"), heading, std::move(accepted));
}

Result<const Unit*> unit_of(std::size_t column, std::string_view heading, const MeasuredName& name) {
    const auto open = heading.find('[');
    if (open != std::string_view::npos && heading.ends_with(']')) {
        const auto symbol = without_blanks(heading.substr(open + 1, heading.size() - open - 2));
        for (const auto& unit : units_of(name.kind)) {
            if (symbol == unit.symbol || symbol == unit.display) {
                return &unit;
            }
        }
    }
    return wrong_heading(
        column, heading,
        std::string{"a unit behind the name, as "} + name.example + "; units: " + accepted_units(name.kind));
}

Result<void> take_heading(std::size_t column, std::string_view heading, Columns& columns) {
    const auto name = without_blanks(heading.substr(0, heading.find('[')));
    const auto once = [&](std::size_t before) -> Result<void> {
        if (before != 0) {
            return wrong_heading(column, heading,
                                 "each column once; column " + std::to_string(before) + " is the same");
        }
        return boost::outcome_v2::success();
    };
    if (heading == "time") {
        WF_CHECK(once(columns.time));
        columns.time = column;
        return boost::outcome_v2::success();
    }
    for (const auto& each : measured_names) {
        if (name == each.name) {
            auto& place = columns.of.at(static_cast<std::size_t>(each.measured));
            WF_CHECK(once(place.number));
            WF_TRY(place.unit, unit_of(column, heading, each));
            place.number = column;
            return boost::outcome_v2::success();
        }
    }
    if (heading != "remark") {
        columns.notes.push_back({WF_TEXT("Column %1 is not used."), {"\"" + printable(heading) + "\""}});
    }
    return boost::outcome_v2::success();
}

Result<Columns> columns_of(const CsvLine& headings) {
    Columns columns;
    columns.count = headings.cells.size();
    for (std::size_t i = 0; i < headings.cells.size(); ++i) {
        WF_CHECK(take_heading(i + 1, without_blanks(headings.cells[i]), columns));
    }
    const auto lacks = [&](const char* which) {
        return bad_input("line 1", headings.cells.front(),
                         std::string{"headings with commas between them, among them "} + which);
    };
    if (columns.time == 0) {
        return lacks("time");
    }
    if (columns.at(Measured::dry_bulb).number == 0) {
        return lacks("dry bulb [degC]");
    }
    const auto there = [&](Measured measured) { return columns.at(measured).number != 0; };
    const auto* humidity = std::ranges::find_if(humidities, there);
    if (humidity == humidities.end()) {
        return lacks("relative humidity [%], wet bulb [degC] or dew point [degC]");
    }
    if (const auto* second = std::find_if(humidity + 1, humidities.end(), there);
        second != humidities.end()) {
        const auto column = columns.at(*second).number;
        return wrong_heading(
            column, headings.cells[column - 1],
            "one column of humidity; column " + std::to_string(columns.at(*humidity).number) + " is one");
    }
    columns.humidity = *humidity;
    return columns;
}

Result<WallTime> time_of(const CsvLine& row, const Columns& columns) {
    std::string text{without_blanks(row.cells[columns.time - 1])};
    constexpr std::size_t to_the_minute = 16;  // "2026-07-01T14:00"
    if (text.size() > to_the_minute &&
        std::string_view{"+-Z"}.find(text[to_the_minute]) != std::string_view::npos) {
        text.insert(to_the_minute, ":00");
    }
    return parse_iso8601(text, cell_name(row.line, columns.time, "time"));
}

Result<std::optional<double>> value_of(const CsvLine& row, const Columns& columns, Measured measured) {
    const auto& column = columns.at(measured);
    if (column.number == 0) {
        return std::optional<double>{};
    }
    const auto text = without_blanks(row.cells[column.number - 1]);
    if (text.empty()) {
        return std::optional<double>{};
    }
    const auto number = parse_number(text, "");
    const double si = number ? to_si(*column.unit, number.value()) : 0.0;
    if (!number || !std::isfinite(si)) {
        return bad_input(
            cell_name(row.line, column.number, name_of(measured).name), text,
            "a plain number; its unit stands in the heading, " + std::string{column.unit->symbol});
    }
    return std::optional{si};
}

Result<MoistAir> air_of(Temperature dry_bulb, Measured measured, double humidity, AbsolutePressure pressure) {
    switch (measured) {
        case Measured::wet_bulb:
            return air_from_wet_bulb(dry_bulb, from_si<Temperature>(humidity), pressure);
        case Measured::dew_point:
            return air_from_dew_point(dry_bulb, from_si<Temperature>(humidity), pressure);
        case Measured::relative_humidity:
        case Measured::dry_bulb:
        case Measured::pressure:
            break;
    }
    return air_from_humidity(dry_bulb, from_si<Fraction>(humidity), pressure);
}

struct Row {
    std::size_t line = 0;
    WallTime time;
    std::optional<MoistAir> air;
};

class Rows {
public:
    Rows(const Columns& columns, AbsolutePressure site_pressure)
        : columns_{columns}, site_pressure_{site_pressure} {}

    [[nodiscard]] Result<void> add(const CsvLine& line) {
        if (line.cells.size() != columns_.count) {
            return bad_input("line " + std::to_string(line.line),
                             std::to_string(line.cells.size()) + " cells",
                             std::to_string(columns_.count) + ", as line 1 has");
        }
        Row row{line.line, {}, {}};
        WF_TRY(row.time, time_of(line, columns_));
        WF_CHECK(check_follows(line, row));
        WF_TRY(const auto dry_bulb, value_of(line, columns_, Measured::dry_bulb));
        WF_TRY(const auto humidity, value_of(line, columns_, columns_.humidity));
        WF_TRY(const auto pressure, value_of(line, columns_, Measured::pressure));
        if (dry_bulb && humidity) {
            const auto air = air_of(from_si<Temperature>(*dry_bulb), columns_.humidity, *humidity,
                                    pressure ? from_si<AbsolutePressure>(*pressure) : site_pressure_);
            if (!air) {
                const auto number = [&](Measured measured) { return columns_.at(measured).number; };
                const std::array places{
                    CellOf{"dry bulb", number(Measured::dry_bulb)},
                    CellOf{name_of(columns_.humidity).name, number(columns_.humidity)},
                    CellOf{"air pressure", std::max(number(Measured::pressure), number(Measured::dry_bulb))}};
                return located(air.error(), line.line, places);
            }
            row.air = air.value();
            without_pressure_ += pressure ? 0 : 1;
        }
        rows_.push_back(row);
        return boost::outcome_v2::success();
    }

    [[nodiscard]] Result<WeatherFile> finish(std::string_view source) && {
        if (rows_.empty()) {
            return bad_input("line 2", "", "a row for each hour");
        }
        const auto offset = std::ranges::min(rows_, {}, offset_of).time.utc_offset_minutes;
        WeatherRuns runs{printable(source), offset};
        for (const auto& row : rows_) {
            runs.add(row.time.unix_ms, row.line, row.air);
        }
        auto notes = columns_.notes;
        if (without_pressure_ > 0) {
            notes.push_back({WF_TEXT("Hours without an air pressure: %1; they have that of the site, %2."),
                             {without_pressure_, any(site_pressure_)}});
        }
        return std::move(runs).finish(std::move(notes));
    }

private:
    static int offset_of(const Row& row) { return row.time.utc_offset_minutes; }

    // `row` against the one before it.
    [[nodiscard]] Result<void> check_follows(const CsvLine& line, const Row& row) {
        constexpr int most_summer_time_minutes = 60;
        least_offset_ = rows_.empty() ? offset_of(row) : std::min(least_offset_, offset_of(row));
        most_offset_ = rows_.empty() ? offset_of(row) : std::max(most_offset_, offset_of(row));
        const auto wrong = [&](std::string accepted) {
            return bad_input(cell_name(line.line, columns_.time, "time"), line.cells[columns_.time - 1],
                             std::move(accepted));
        };
        if (most_offset_ - least_offset_ > most_summer_time_minutes) {
            return wrong("offsets of one site: at most an hour apart, for summer time");
        }
        if (rows_.empty()) {
            return boost::outcome_v2::success();
        }
        const auto& before = rows_.back();
        const auto passed = row.time.unix_ms - before.time.unix_ms;
        if (passed <= 0) {
            return wrong(passed == 0 ? "each hour once; line " + std::to_string(before.line) + " is the same"
                                     : "hours in order; line " + std::to_string(before.line) + " is later");
        }
        if (passed % hour_ms != 0) {
            return wrong("whole hours after line " + std::to_string(before.line));
        }
        return boost::outcome_v2::success();
    }

    const Columns& columns_;
    AbsolutePressure site_pressure_;
    std::vector<Row> rows_;
    int least_offset_ = 0;
    int most_offset_ = 0;
    int without_pressure_ = 0;
};

}  // namespace
}  // namespace weather_csv_detail

Result<WeatherFile> read_weather_csv(std::string_view text, std::string_view name,
                                     AbsolutePressure site_pressure) {
    using namespace weather_csv_detail;
    if (text.size() > most_weather_bytes) {
        return bad_input("weather file", std::to_string(text.size()) + " bytes",
                         "at most " + std::to_string(most_weather_bytes));
    }
    if (!is_utf8(text)) {
        return bad_input("weather file", "", "text in UTF-8");
    }
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.starts_with(byte_order_mark)) {
        text.remove_prefix(byte_order_mark.size());
    }
    CsvLines lines{text};
    WF_TRY(const auto headings, lines.next());
    if (!headings) {
        return bad_input("weather file", "",
                         "headings in line 1, as time,dry bulb [degC],relative humidity [%]");
    }
    WF_TRY(const auto columns, columns_of(*headings));
    Rows rows{columns, site_pressure};
    while (true) {
        WF_TRY(const auto line, lines.next());
        if (!line) {
            return std::move(rows).finish(name);
        }
        WF_CHECK(rows.add(*line));
    }
}

std::string weather_csv_text(const Weather& weather, const std::string& remark) {
    std::string text = "time,dry bulb [degC],relative humidity [%],pressure [Pa],remark\r\n";
    auto time = weather.from;
    for (const auto& air : weather.hours) {
        text += to_iso8601(time) + "," + print_number(in_celsius(air.dry_bulb), 2) + "," +
                print_number(100.0 * in_si(air.relative_humidity), 2) + "," +
                print_number(in_si(air.pressure), 1) + ",\"";
        for (const char sign : remark) {
            text.append(sign == '"' ? 2 : 1, sign);
        }
        text += "\"\r\n";
        time.unix_ms += weather_detail::hour_ms;
    }
    return text;
}

}  // namespace wetfront
