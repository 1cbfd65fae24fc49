// SPDX-License-Identifier: Apache-2.0
#include "store/lists.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace wetfront::store_detail {
namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
unsigned char lower(char c) {
    return static_cast<unsigned char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
}

/// Takes a number off the front, without leading zeros.
std::string_view take_digits(std::string_view& text) {
    const auto end = std::find_if_not(text.begin(), text.end(), is_digit);
    auto digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
    text.remove_prefix(digits.size());
    digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
    return digits;
}

std::map<std::string, std::string> farm_names(Statements& sql) {
    std::map<std::string, std::string> names;
    const auto rows = sql("SELECT record, name FROM head WHERE kind = 'farm' ORDER BY number, id");
    while (rows.next_row()) {
        names[text_at(rows, 0)] = text_at(rows, 1);
    }
    return names;
}

/// Negative, 0 or positive as a comes before, with or after b.
int compare_names(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        if (is_digit(a.front()) && is_digit(b.front())) {
            const auto left = take_digits(a);
            const auto right = take_digits(b);
            if (left != right) {
                return std::tuple{left.size(), left} < std::tuple{right.size(), right} ? -1 : 1;
            }
            continue;
        }
        const int difference = lower(a.front()) - lower(b.front());
        if (difference != 0) {
            return difference;
        }
        a.remove_prefix(1);
        b.remove_prefix(1);
    }
    return static_cast<int>(b.empty()) - static_cast<int>(a.empty());
}

}  // namespace

bool comes_before(std::string_view a, const Id& id_a, std::string_view b, const Id& id_b) {
    const auto order = compare_names(a, b);
    return order != 0 ? order < 0 : id_a < id_b;
}

std::vector<HouseSummary> house_list(Statements& sql) {
    const auto farms = farm_names(sql);
    const auto rows = sql(R"sql(
        WITH gone (house, count) AS MATERIALIZED (
            SELECT r.house, count(*) FROM removed AS x
            JOIN revision AS r ON r.kind = 'visit' AND r.record = x.record AND r.number = 1
            WHERE x.kind = 'visit' GROUP BY r.house),
        houses (record, farm, name, count, latest, number, id) AS (
            SELECT h.record, h.farm, h.name,
                (SELECT count(*) FROM visit AS v WHERE v.house = h.record) - coalesce(g.count, 0),
                (SELECT entry FROM visit AS l WHERE house = h.record AND NOT EXISTS (
                        SELECT 1 FROM removed AS x WHERE x.kind = 'visit' AND x.record = l.record)
                    ORDER BY started_unix_ms DESC, record DESC LIMIT 1),
                h.number, h.id
            FROM head AS h LEFT JOIN gone AS g ON g.house = h.record
            WHERE h.kind = 'house'
                AND NOT EXISTS (SELECT 1 FROM removed AS x WHERE x.kind = 'house' AND x.record = h.record))
        SELECT h.record, h.farm, h.name, h.count, l.record, l.started_unix_ms, l.started_utc_offset_min,
            EXISTS (SELECT 1 FROM revision AS s INDEXED BY signed_visit
                    WHERE s.kind = 'visit' AND s.signed = 1 AND s.record = l.record), h.number, h.id
        FROM houses AS h LEFT JOIN revision AS l ON l.entry = h.latest)sql");
    std::vector<HouseSummary> houses;
    struct Shown {
        std::size_t place;
        std::pair<std::int64_t, std::string> state;
    };
    std::unordered_map<std::string, Shown> shown;
    while (rows.next_row()) {
        HouseSummary house;
        house.house = id_at(rows, 0);
        house.farm = id_at(rows, 1);
        house.house_name = text_at(rows, 2);
        if (const auto farm = farms.find(house.farm.text); farm != farms.end()) {
            house.farm_name = farm->second;
        }
        house.visits = static_cast<int>(number_at(rows, 3));
        if (!null_at(rows, 4)) {
            house.latest_visit = id_at(rows, 4);
            house.latest_visit_at = time_at(rows, 5);
            house.open_visit = !flag_at(rows, 7);
        }
        // One that has two present states stands there once, as head_of() takes it.
        const std::pair state{number_at(rows, 8), text_at(rows, 9)};
        const auto [known, is_new] = shown.try_emplace(house.house.text, Shown{houses.size(), state});
        if (is_new) {
            houses.push_back(std::move(house));
        } else if (known->second.state < state) {
            known->second.state = state;
            houses[known->second.place] = std::move(house);
        }
    }
    std::sort(houses.begin(), houses.end(), [](const HouseSummary& a, const HouseSummary& b) {
        return a.farm == b.farm ? comes_before(a.house_name, a.house, b.house_name, b.house)
                                : comes_before(a.farm_name, a.farm, b.farm_name, b.farm);
    });
    return houses;
}

std::vector<VisitSummary> visit_list(Statements& sql, const Id& house) {
    const auto rows = sql(R"sql(
        SELECT v.record, v.started_unix_ms, v.started_utc_offset_min, v.signed,
            (SELECT max(number) FROM revision AS r WHERE r.kind = 'visit' AND r.record = v.record),
            (SELECT count(*) FROM present_mark AS m WHERE m.visit = v.record AND NOT m.undone), v.replaces
        FROM visit AS v WHERE v.house = ?
            AND NOT EXISTS (SELECT 1 FROM removed AS x WHERE x.kind = 'visit' AND x.record = v.record)
        ORDER BY v.started_unix_ms DESC, v.record DESC)sql");
    Binder{rows}(house);
    std::vector<VisitSummary> visits;
    while (rows.next_row()) {
        VisitSummary visit;
        visit.visit = id_at(rows, 0);
        visit.started = time_at(rows, 1);
        visit.is_signed = flag_at(rows, 3);
        visit.revisions = static_cast<int>(number_at(rows, 4));
        visit.marks = static_cast<int>(number_at(rows, 5));
        if (!null_at(rows, 6)) {
            visit.replaces = id_at(rows, 6);
        }
        visits.push_back(std::move(visit));
    }
    return visits;
}

// CROSS JOIN asks in this order: from the few visits that were timed to their revisions.
std::vector<Id> open_visits(Statements& sql, TimedIn where) {
    const auto rows = where == TimedIn::all_marks ? sql(R"sql(
        SELECT record FROM visit WHERE NOT signed ORDER BY started_unix_ms DESC, record DESC)sql")
                                                  : sql(R"sql(
        WITH timed (visit) AS MATERIALIZED (
            SELECT visit FROM (SELECT visit FROM mark ORDER BY entry DESC LIMIT 1000)
            UNION SELECT m.visit FROM (SELECT mark FROM mark_change ORDER BY entry DESC LIMIT 1000) AS c
                JOIN mark AS m ON m.id = c.mark)
        SELECT r.record FROM timed CROSS JOIN revision AS r ON r.kind = 'visit' AND r.record = timed.visit AND r.number = 1
        WHERE NOT EXISTS (SELECT 1 FROM revision AS s INDEXED BY signed_visit
            WHERE s.kind = 'visit' AND s.signed = 1 AND s.record = r.record)
        ORDER BY r.started_unix_ms DESC, r.record DESC)sql");
    std::vector<Id> visits;
    while (rows.next_row()) {
        visits.push_back(id_at(rows, 0));
    }
    return visits;
}

}  // namespace wetfront::store_detail
