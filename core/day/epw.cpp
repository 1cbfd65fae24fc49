// SPDX-License-Identifier: Apache-2.0
#include "day/epw.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "base/numbers.h"
#include "day/weather_runs.h"

namespace wetfront {
namespace epw_detail {
namespace {

using namespace weather_detail;
using std::chrono::year;
using std::chrono::year_month_day;

constexpr std::size_t columns = 35;
constexpr std::array header_names{"LOCATION",
                                  "DESIGN CONDITIONS",
                                  "TYPICAL/EXTREME PERIODS",
                                  "GROUND TEMPERATURES",
                                  "HOLIDAYS/DAYLIGHT SAVING",
                                  "COMMENTS 1",
                                  "COMMENTS 2",
                                  "DATA PERIODS"};
constexpr std::size_t location_line = 1;
constexpr std::size_t holidays_line = 5;
constexpr std::size_t periods_line = 8;

/// What a typical year is dated, which is of no year: one without and one with a 29 February.
constexpr int year_of_365 = 2001;
constexpr int year_of_366 = 2004;
/// Up to here a dew point lies above the dry bulb only because both are rounded to a tenth.
constexpr double printed_step = 0.1;

/// One line, cut at its commas.
struct Cells {
    std::size_t line = 0;
    std::vector<std::string_view> cells;

    /// Without blanks around it; column from 1.
    [[nodiscard]] std::string_view at(std::size_t column) const { return without_blanks(cells[column - 1]); }
};

void cut(std::string_view text, Cells& into) {
    into.cells.clear();
    while (true) {
        const auto comma = text.find(',');
        into.cells.push_back(text.substr(0, comma));
        if (comma == std::string_view::npos) {
            return;
        }
        text.remove_prefix(comma + 1);
    }
}

Error wrong_cell(const Cells& cells, std::size_t column, std::string_view what, std::string accepted) {
    return bad_input(cell_name(cells.line, column, what), cells.at(column), std::move(accepted));
}

Error wrong_line(std::size_t line, std::string_view read, std::string accepted) {
    return bad_input("line " + std::to_string(line), read, std::move(accepted));
}

Result<int> whole_number(const Cells& cells, std::size_t column, std::string_view what, int least, int most) {
    const auto text = cells.at(column);
    int value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || problem != std::errc{} || end != text.data() + text.size() || value < least ||
        value > most) {
        return wrong_cell(cells, column, what,
                          "a whole number from " + std::to_string(least) + " to " + std::to_string(most));
    }
    return value;
}

/// A column of the data dictionary.
struct Column {
    std::size_t number;
    std::string_view what;
    double least;
    double most;
    double missing;  ///< from here on a value stands for none
    std::string_view range;
    bool open = true;  ///< the ends of the range lie outside it
};
constexpr Column dry_bulb{7, "dry bulb", -70.0, 70.0, 99.9, "above -70 and below 70 degC"};
constexpr Column dew_point{8, "dew point", -70.0, 70.0, 99.9, "above -70 and below 70 degC"};
constexpr Column humidity{9, "relative humidity", 0.0, 110.0, 999.0, "0 to 110 %", false};
constexpr Column pressure{10, "air pressure", 31000.0, 120000.0, 999999.0, "above 31000 and below 120000 Pa"};

Result<std::optional<double>> value_of(const Cells& cells, const Column& column) {
    const auto text = cells.at(column.number);
    if (text.empty()) {
        return std::optional<double>{};
    }
    WF_TRY(const double value, parse_number(text, cell_name(cells.line, column.number, column.what)));
    if (value >= column.missing) {
        return std::optional<double>{};
    }
    const bool inside = column.open ? value > column.least && value < column.most
                                    : value >= column.least && value <= column.most;
    if (!inside) {
        return wrong_cell(cells, column.number, column.what, std::string{column.range});
    }
    return std::optional{value};
}

struct Header {
    std::string source;
    std::int32_t offset_minutes = 0;
    AbsolutePressure pressure;  ///< of the standard atmosphere there
    bool leap_days = false;
    std::optional<Message> daylight_saving;
};

Result<double> number_within(const Cells& cells, std::size_t column, std::string_view what, double least,
                             double most, std::string accepted) {
    WF_TRY(const double value, parse_number(cells.at(column), cell_name(cells.line, column, what)));
    if (!(value >= least && value <= most)) {
        return wrong_cell(cells, column, what, std::move(accepted));
    }
    return value;
}

Result<void> enough_columns(const Cells& cells, std::size_t least) {
    if (cells.cells.size() < least) {
        return wrong_line(
            cells.line, cells.cells.front(),
            "at least " + std::to_string(least) + " columns, not " + std::to_string(cells.cells.size()));
    }
    return boost::outcome_v2::success();
}

// LOCATION,city,region,country,source,station,latitude,longitude,time zone,elevation
Result<void> read_location(const Cells& cells, Header& header) {
    WF_CHECK(enough_columns(cells, 10));
    // The dictionary ends at 12 h; clocks go up to 14 h ahead of UTC.
    WF_TRY(const double zone,
           number_within(cells, 9, "time zone", -12.0, 14.0, "-12 to 14 h ahead of Greenwich"));
    const double minutes = 60.0 * zone;
    if (std::abs(minutes - std::round(minutes)) > 1e-6) {
        return wrong_cell(cells, 9, "time zone", "hours that are whole minutes, as -6 or 5.5");
    }
    header.offset_minutes = static_cast<std::int32_t>(std::lround(minutes));
    WF_TRY(const double elevation, parse_number(cells.at(10), cell_name(cells.line, 10, "elevation")));
    const auto standard = standard_pressure(from_si<Length>(elevation));
    if (!standard) {
        return wrong_cell(cells, 10, "elevation", standard.error().accepted);
    }
    header.pressure = standard.value();
    header.source = printable(cells.at(2));
    for (const std::size_t column : {3U, 4U, 5U}) {
        if (const auto part = cells.at(column); !part.empty() && part != "-") {
            header.source += ", " + printable(part);
        }
    }
    return boost::outcome_v2::success();
}

// HOLIDAYS/DAYLIGHT SAVING,leap years observed,first day,last day,number of holidays,...
Result<void> read_holidays(const Cells& cells, Header& header) {
    WF_CHECK(enough_columns(cells, 4));
    const auto observed = cells.at(2);
    if (observed != "Yes" && observed != "No") {
        return wrong_cell(cells, 2, "leap years observed", "Yes or No");
    }
    header.leap_days = observed == "Yes";
    const auto first = cells.at(3);
    const auto last = cells.at(4);
    const auto none = [](std::string_view date) { return date.empty() || date == "0"; };
    if (none(first) != none(last)) {
        return wrong_cell(cells, none(first) ? 3 : 4, "daylight saving",
                          "both days of the period, or 0 for both");
    }
    if (!none(first)) {
        header.daylight_saving = Message{
            WF_TEXT("The file names daylight saving from %1 to %2; its hours are in standard time all "
                    "year, as the format has them."),
            {printable(first), printable(last)}};
    }
    return boost::outcome_v2::success();
}

/// True if a date of a header is that day: "1/1", "12/31", with a year behind it, or the day of the year.
bool is_day(std::string_view text, std::string_view month_part, std::string_view day_part,
            std::string_view of_year, std::string_view of_leap_year) {
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        return text == of_year || text == of_leap_year;
    }
    const auto rest = text.substr(slash + 1);
    const auto without_zero = [](std::string_view part) {
        part = without_blanks(part);
        return part.size() == 2 && part.front() == '0' ? part.substr(1) : part;
    };
    return without_zero(text.substr(0, slash)) == month_part &&
           without_zero(rest.substr(0, rest.find('/'))) == day_part;
}

// DATA PERIODS,number,records an hour,name,day of the week,first day,last day
Result<void> read_periods(const Cells& cells) {
    WF_CHECK(enough_columns(cells, 7));
    WF_CHECK(whole_number(cells, 2, "data periods", 1, 1));
    WF_CHECK(whole_number(cells, 3, "records an hour", 1, 1));
    if (!is_day(cells.at(6), "1", "1", "1", "1")) {
        return wrong_cell(cells, 6, "first day", "1/1: a whole year");
    }
    if (!is_day(cells.at(7), "12", "31", "365", "366")) {
        return wrong_cell(cells, 7, "last day", "12/31: a whole year");
    }
    return boost::outcome_v2::success();
}

Result<Header> read_header(std::string_view& rest) {
    Header header;
    Cells cells;
    for (const char* name : header_names) {
        ++cells.line;
        cut(take_line(rest), cells);
        // The dictionary writes SAVING, the files SAVINGS.
        const auto found = cells.at(1);
        const bool plural = cells.line == holidays_line && found == std::string{name} + "S";
        if (found != name && !plural) {
            return wrong_line(cells.line, found, std::string{"the header line "} + name);
        }
        if (cells.line == location_line) {
            WF_CHECK(read_location(cells, header));
        } else if (cells.line == holidays_line) {
            WF_CHECK(read_holidays(cells, header));
        } else if (cells.line == periods_line) {
            WF_CHECK(read_periods(cells));
        }
    }
    return header;
}

/// One record, at the hour's end.
struct Record {
    std::size_t line = 0;
    int year_printed = 0;
    int month = 0;
    int day = 0;
    int hour = 0;
    std::optional<MoistAir> air;
};

std::string hour_of(const Record& record) {
    return std::to_string(record.month) + "/" + std::to_string(record.day) + " hour " +
           std::to_string(record.hour);
}

Result<Record> read_date(const Cells& cells) {
    Record record;
    record.line = cells.line;
    WF_TRY(record.year_printed, whole_number(cells, 1, "year", 1900, 2199));
    WF_TRY(record.month, whole_number(cells, 2, "month", 1, 12));
    WF_TRY(record.day, whole_number(cells, 3, "day", 1, 31));
    WF_TRY(record.hour, whole_number(cells, 4, "hour", 1, 24));
    WF_CHECK(whole_number(cells, 5, "minute", 0, 60));
    return record;
}

Result<MoistAir> air_of(double t, std::optional<double> dew, std::optional<double> share,
                        AbsolutePressure p) {
    if (!dew) {
        return air_from_humidity(celsius(t), from_si<Fraction>(*share / 100.0), p);
    }
    if (*dew > t && *dew <= t + printed_step + 1e-9) {
        return air_from_humidity(celsius(t), from_si<Fraction>(1.0), p);
    }
    return air_from_dew_point(celsius(t), celsius(*dew), p);
}

/// The year's records, checked one after the other.
class Year {
public:
    explicit Year(const Header& header) : header_{header} {}

    [[nodiscard]] Result<void> add(const Cells& cells) {
        if (cells.cells.size() != columns) {
            return wrong_line(cells.line, std::to_string(cells.cells.size()) + " columns",
                              std::to_string(columns) + " columns");
        }
        WF_TRY(auto record, read_date(cells));
        WF_CHECK(check_follows(cells, record));
        WF_TRY(const auto t, value_of(cells, dry_bulb));
        WF_TRY(const auto dew, value_of(cells, dew_point));
        WF_TRY(const auto share, value_of(cells, humidity));
        WF_TRY(const auto p, value_of(cells, pressure));
        if (t && (dew || share)) {
            const auto air = air_of(*t, dew, share, p ? from_si<AbsolutePressure>(*p) : header_.pressure);
            if (!air) {
                constexpr std::array places{
                    CellOf{dry_bulb.what, dry_bulb.number}, CellOf{dew_point.what, dew_point.number},
                    CellOf{humidity.what, humidity.number}, CellOf{pressure.what, pressure.number}};
                return located(air.error(), cells.line, places);
            }
            record.air = air.value();
            without_pressure_ += p ? 0 : 1;
        }
        one_year_ = one_year_ && (records_.empty() || record.year_printed == records_.front().year_printed);
        records_.push_back(record);
        return boost::outcome_v2::success();
    }

    [[nodiscard]] Result<WeatherFile> finish(std::size_t last_line) && {
        if (records_.empty() || records_.back().month != 12 || records_.back().day != 31 ||
            records_.back().hour != 24) {
            return bad_input(
                "line " + std::to_string(last_line), std::to_string(records_.size()) + " records",
                "a whole year of 8760 records, or 8784 with 29 February; is the file cut short?");
        }
        WF_TRY(const int dated, date());
        WeatherRuns runs{header_.source, header_.offset_minutes};
        for (const auto& record : records_) {
            const auto days = std::chrono::sys_days{year{dated} / record.month / record.day};
            runs.add(days.time_since_epoch().count() * day_ms + record.hour * hour_ms -
                         header_.offset_minutes * 60'000LL,
                     record.line, record.air);
        }
        return std::move(runs).finish(notes(dated));
    }

private:
    [[nodiscard]] static bool leap(int number) { return year{number}.is_leap(); }

    // Each hour is the one after that before it, the first one 1 January, hour 1.
    [[nodiscard]] Result<void> check_follows(const Cells& cells, const Record& record) {
        Record wanted{record.line, record.year_printed, 1, 1, 1, {}};
        if (!records_.empty()) {
            const auto& before = records_.back();
            wanted.month = before.month;
            wanted.day = before.day;
            wanted.hour = before.hour + 1;
            if (wanted.hour > 24) {
                wanted.hour = 1;
                if (before.month == 12 && before.day == 31) {
                    return wrong_line(cells.line, hour_of(record), "the end of the file: a year is over");
                }
                // The year of the records decides below whether there may be a 29 February.
                const bool leap_day_here = record.month == 2 && record.day == 29;
                const auto next =
                    year_month_day{std::chrono::sys_days{
                                       year{leap_day_here || before.day == 29 ? year_of_366 : year_of_365} /
                                       before.month / before.day} +
                                   std::chrono::days{1}};
                wanted.month = static_cast<int>(static_cast<unsigned>(next.month()));
                wanted.day = static_cast<int>(static_cast<unsigned>(next.day()));
            }
        }
        if (record.month != wanted.month || record.day != wanted.day || record.hour != wanted.hour) {
            return bad_input(cell_name(cells.line, 2, "month, day, hour"), hour_of(record),
                             hour_of(wanted) + ", the hour after the one before");
        }
        if (record.month == 2 && record.day == 29 && record.hour == 1) {
            leap_line_ = record.line;
            if (!header_.leap_days || !leap(record.year_printed)) {
                return bad_input(cell_name(cells.line, 2, "month, day, hour"),
                                 hour_of(record) + " of " + std::to_string(record.year_printed),
                                 header_.leap_days ? "3/1: that year has no 29 February"
                                                   : "3/1: line 5 says that leap years are not observed");
            }
        }
        return boost::outcome_v2::success();
    }

    /// The year that all of it is dated.
    [[nodiscard]] Result<int> date() const {
        const int first = records_.front().year_printed;
        if (header_.leap_days && leap_line_ == 0 && one_year_ && leap(first)) {
            const auto march =
                std::ranges::find_if(records_, [](const Record& each) { return each.month == 3; });
            return bad_input(
                cell_name(march->line, 2, "month, day, hour"), hour_of(*march),
                "2/29: line 5 says that leap years are observed, and " + std::to_string(first) + " is one");
        }
        if (one_year_) {
            return first;
        }
        return leap_line_ != 0 ? year_of_366 : year_of_365;
    }

    [[nodiscard]] std::vector<Message> notes(int dated) const {
        std::vector<Message> notes;
        if (!one_year_) {
            notes.push_back({WF_TEXT("A year made of months of several years; it is dated %1."),
                             {std::to_string(dated)}});
        }
        if (header_.daylight_saving) {
            notes.push_back(*header_.daylight_saving);
        }
        if (without_pressure_ > 0) {
            notes.push_back({WF_TEXT("Hours without an air pressure: %1; they have that of the standard "
                                     "atmosphere at the station's elevation, %2."),
                             {without_pressure_, any(header_.pressure)}});
        }
        return notes;
    }

    const Header& header_;
    std::vector<Record> records_;
    bool one_year_ = true;       ///< every record prints the same
    std::size_t leap_line_ = 0;  ///< where 29 February begins
    int without_pressure_ = 0;
};

}  // namespace
}  // namespace epw_detail

bool looks_like_epw(std::string_view text) {
    return text.starts_with("LOCATION,");
}

Result<WeatherFile> read_epw(std::string_view text) {
    using namespace epw_detail;
    if (text.size() > most_weather_bytes) {
        return bad_input("weather file", std::to_string(text.size()) + " bytes",
                         "at most " + std::to_string(most_weather_bytes));
    }
    WF_TRY(const auto header, read_header(text));
    Year records{header};
    Cells cells;
    cells.line = header_names.size();
    while (text.find_first_not_of("\r\n") != std::string_view::npos) {
        ++cells.line;
        cut(take_line(text), cells);
        WF_CHECK(records.add(cells));
    }
    return std::move(records).finish(cells.line);
}

}  // namespace wetfront
