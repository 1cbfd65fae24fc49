// SPDX-License-Identifier: Apache-2.0
#include "store/journal.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tuple>

namespace wetfront::store_detail {
namespace {

constexpr const char* mark_columns =
    "SELECT m.id, m.kind, m.pump, m.bank, m.boot_id, m.boot_ns, m.unix_ms, m.utc_offset_min, m.timed_by, "
    "m.stamp_error_ns, m.seen, m.undone, m.started_by, m.pads, m.fans_running, m.proof, m.visit";

template <class E>
E enum_at(const SQLite::Statement& row, int column) {
    const auto value = enum_value<E>(text_at(row, column));
    if (!value) {
        throw std::runtime_error{"a mark says '" + text_at(row, column) +
                                 "', which this version does not know"};
    }
    return *value;
}

Mark mark_in(const SQLite::Statement& row) {
    Mark mark;
    mark.id = id_at(row, 0);
    mark.kind = enum_at<MarkKind>(row, 1);
    mark.pump = id_at(row, 2);
    mark.bank = id_at(row, 3);  // NULL reads as empty
    mark.at = {text_at(row, 4), number_at(row, 5)};
    mark.wall = time_at(row, 6);
    mark.timed_by = enum_at<TimedBy>(row, 8);
    if (!null_at(row, 9)) {
        mark.stamp_error_ns = number_at(row, 9);
    }
    mark.seen = enum_at<Seen>(row, 10);
    mark.undone = flag_at(row, 11);
    mark.started_by = enum_at<StartedBy>(row, 12);
    mark.pads = enum_at<PadsAtStart>(row, 13);
    if (!null_at(row, 14)) {
        mark.fans_running = flag_at(row, 14);
    }
    mark.proof = flag_at(row, 15);
    return mark;
}

struct WrittenBy {
    std::string device_id;
    std::int64_t seq;
};

/// Marks of several devices, or those that came in by bundles, have an order of arrival that says nothing:
/// each device's marks by its numbers, and first the device whose first mark is the earliest.
std::vector<Mark> as_written(std::vector<Mark> marks, const std::vector<WrittenBy>& written) {
    const auto out_of_turn = [](const WrittenBy& a, const WrittenBy& b) {
        return a.device_id != b.device_id || a.seq > b.seq;
    };
    if (std::adjacent_find(written.begin(), written.end(), out_of_turn) == written.end()) {
        return marks;
    }
    std::vector<std::size_t> order(marks.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::map<std::string, std::size_t> first;
    for (const auto place : order) {
        const auto [known, is_new] = first.try_emplace(written[place].device_id, place);
        if (!is_new && written[place].seq < written[known->second].seq) {
            known->second = place;
        }
    }
    const auto rank = [&](std::size_t place) {
        const auto& by = written[place];
        return std::tuple{marks[first.at(by.device_id)].wall.unix_ms, std::string_view{by.device_id}, by.seq};
    };
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    std::vector<Mark> sorted;
    sorted.reserve(marks.size());
    for (const auto place : order) {
        sorted.push_back(std::move(marks[place]));
    }
    return sorted;
}

/// 0 where nothing changed the mark yet, or only what has no number (schema_4.cpp).
std::int64_t highest_number(Statements& sql, const Id& mark) {
    const auto row = sql("SELECT coalesce(max(number), 0) FROM mark_change WHERE mark = ?");
    Binder{row}(mark);
    return row.next_row() ? number_at(row, 0) : 0;
}

}  // namespace

std::vector<Mark> marks_of(Statements& sql, const Id& visit) {
    std::vector<Mark> marks;
    std::vector<WrittenBy> written;
    const auto rows = sql(std::string{mark_columns} +
                          ", d.id, e.seq FROM present_mark AS m JOIN entry AS e ON e.entry = m.entry "
                          "JOIN device AS d ON d.device = e.device WHERE m.visit = ? ORDER BY m.entry");
    Binder{rows}(visit);
    while (rows.next_row()) {
        marks.push_back(mark_in(rows));
        written.push_back({text_at(rows, 17), number_at(rows, 18)});
    }
    return as_written(std::move(marks), written);
}

std::optional<JournalMark> mark_with(Statements& sql, const Id& mark) {
    const auto row = sql(std::string{mark_columns} + " FROM present_mark AS m WHERE m.id = ?");
    Binder{row}(mark);
    if (!row.next_row()) {
        return std::nullopt;
    }
    return JournalMark{id_at(row, 16), mark_in(row)};
}

Result<void> add_mark(const Pen& pen, const Id& visit, const Mark& mark) {
    WF_CHECK(parse_id(mark.id.text, "mark"));
    WF_CHECK(parse_id(mark.pump.text, "pump of mark " + mark.id.text));
    if (const auto there = mark_with(pen.sql, mark.id)) {
        if (there->visit != visit || there->mark != mark) {
            return bad_input("mark", mark.id.text,
                             "there is another mark with this id; give this one a new id");
        }
        return boost::outcome_v2::success();
    }
    pen.write("mark", {{"id", value(mark.id)},
                       {"visit", value(visit)},
                       {"kind", value(enum_name(mark.kind))},
                       {"pump", value(mark.pump)},
                       {"bank", mark.bank.empty() ? Value{} : value(mark.bank)},
                       {"boot_id", value(mark.at.boot_id)},
                       {"boot_ns", value(mark.at.boot_ns)},
                       {"unix_ms", value(mark.wall.unix_ms)},
                       {"utc_offset_min", value(mark.wall.utc_offset_minutes)},
                       {"timed_by", value(enum_name(mark.timed_by))},
                       {"stamp_error_ns", value(mark.stamp_error_ns)},
                       {"seen", value(enum_name(mark.seen))},
                       {"started_by", value(enum_name(mark.started_by))},
                       {"pads", value(enum_name(mark.pads))},
                       {"fans_running", value(mark.fans_running)},
                       {"proof", value(mark.proof)}});
    Mark written = mark;
    written.undone = false;
    set_undone(pen, written, mark.undone);
    return boost::outcome_v2::success();
}

void set_undone(const Pen& pen, const Mark& present, bool undone) {
    if (present.undone == undone) {
        return;
    }
    const auto number = 1 + highest_number(pen.sql, present.id);
    pen.write("mark_change",
              {{"mark", value(present.id)}, {"undone", value(undone)}, {"number", value(number)}});
}

}  // namespace wetfront::store_detail
