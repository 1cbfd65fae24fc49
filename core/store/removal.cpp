// SPDX-License-Identifier: Apache-2.0
#include "store/removal.h"

#include <stdexcept>

#include "store/running.h"
#include "store/stored_records.h"

namespace wetfront::store_detail {
namespace {

/// The first id of a question that takes one.
std::optional<Id> first_of(Statements& sql, const std::string& question, const Id& id) {
    const auto row = sql(question);
    Binder{row}(id);
    return row.next_row() ? std::optional{id_at(row, 0)} : std::nullopt;
}

Result<void> check_not_running(Statements& sql, const Id& visit, const Clock& clock, const Id& asked,
                               RecordKind kind) {
    WF_TRY(const bool runs, stopwatch_runs(sql, visit, clock));
    if (runs) {
        return bad_input(std::string{enum_name(kind)}, asked.text,
                         "a reading of it is running; finish or undo its marks first");
    }
    return boost::outcome_v2::success();
}

Result<void> farm_may_go(Statements& sql, const Id& farm) {
    const auto house =
        first_of(sql,
                 "SELECT h.record FROM head AS h WHERE h.kind = 'house' AND h.farm = ? AND NOT "
                 "EXISTS (SELECT 1 FROM removed AS x WHERE x.kind = 'house' AND x.record = h.record)",
                 farm);
    if (house) {
        return bad_input("farm", farm.text, "it has houses; remove these first");
    }
    return boost::outcome_v2::success();
}

Result<void> house_may_go(Statements& sql, const Id& house, const Clock& clock) {
    std::vector<Id> visits;
    {
        const auto rows = sql("SELECT record FROM visit WHERE house = ? AND NOT signed");
        Binder{rows}(house);
        while (rows.next_row()) {
            visits.push_back(id_at(rows, 0));
        }
    }
    for (const auto& visit : visits) {
        WF_CHECK(check_not_running(sql, visit, clock, house, RecordKind::house));
    }
    return boost::outcome_v2::success();
}

Result<void> visit_may_go(Statements& sql, const Id& visit, const Head& head, const Clock& clock) {
    const auto correction =
        first_of(sql,
                 "SELECT v.record FROM visit AS v WHERE v.replaces = ? AND NOT EXISTS "
                 "(SELECT 1 FROM removed AS x WHERE x.kind = 'visit' AND x.record = v.record)",
                 visit);
    if (correction) {
        return bad_input("visit", visit.text, "another visit corrects it; remove that one first");
    }
    return head.is_signed ? Result<void>{boost::outcome_v2::success()}
                          : check_not_running(sql, visit, clock, visit, RecordKind::visit);
}

Result<void> may_go(Statements& sql, RecordKind kind, const Id& id, const Head& head, const Clock& clock) {
    switch (kind) {
        case RecordKind::farm:
            return farm_may_go(sql, id);
        case RecordKind::house:
            return house_may_go(sql, id, clock);
        case RecordKind::visit:
            return visit_may_go(sql, id, head, clock);
        case RecordKind::setting_template:
            break;
    }
    return boost::outcome_v2::success();
}

/// 0 where it was never removed, or only by what has no number (schema_4.cpp).
std::int64_t highest_number(Statements& sql, RecordKind kind, const Id& id) {
    const auto row = sql("SELECT coalesce(max(number), 0) FROM removal WHERE kind = ? AND record = ?");
    Binder{row}(enum_name(kind))(id);
    return row.next_row() ? number_at(row, 0) : 0;
}

Result<void> may_come_back(Statements& sql, RecordKind kind, const Head& head) {
    if (kind == RecordKind::house) {
        WF_TRY(const auto house, record_at(sql, head.revision, house_of));
        return check_not_removed(sql, RecordKind::farm, house.farm);
    }
    if (kind == RecordKind::visit) {
        WF_CHECK(check_not_removed(sql, RecordKind::house, head.house));
        WF_TRY(const auto visit, record_at(sql, head.revision, visit_of));
        if (visit.replaces) {
            return check_not_removed(sql, RecordKind::visit, *visit.replaces);
        }
    }
    return boost::outcome_v2::success();
}

}  // namespace

bool is_removed(Statements& sql, RecordKind kind, const Id& id) {
    const auto row = sql("SELECT 1 FROM removed WHERE kind = ? AND record = ?");
    Binder{row}(enum_name(kind))(id);
    return row.next_row();
}

Result<void> check_not_removed(Statements& sql, RecordKind kind, const Id& id) {
    if (is_removed(sql, kind, id)) {
        return bad_input(std::string{enum_name(kind)}, id.text, "it was removed; bring it back first");
    }
    return boost::outcome_v2::success();
}

Result<void> set_removed(const Pen& pen, RecordKind kind, const Id& id, bool removed, const Clock& clock) {
    WF_TRY(const auto head, need_head(pen.sql, kind, id));
    if (is_removed(pen.sql, kind, id) == removed) {
        return boost::outcome_v2::success();
    }
    WF_CHECK(removed ? may_go(pen.sql, kind, id, head, clock) : may_come_back(pen.sql, kind, head));
    pen.write("removal", {{"kind", value(enum_name(kind))},
                          {"record", value(id)},
                          {"removed", value(removed)},
                          {"number", value(1 + highest_number(pen.sql, kind, id))}});
    return boost::outcome_v2::success();
}

std::vector<RemovedRecord> removed_records(Statements& sql) {
    // The name of a visit is that of its house.
    const auto rows = sql(R"sql(
        SELECT x.kind, x.record, e.unix_ms, e.utc_offset_min, v.started_unix_ms, v.started_utc_offset_min,
            coalesce((SELECT name FROM head AS h WHERE h.kind = CASE x.kind WHEN 'visit' THEN 'house' ELSE x.kind END
                AND h.record = CASE x.kind WHEN 'visit' THEN v.house ELSE x.record END
                ORDER BY h.number DESC, h.id DESC LIMIT 1), '')
        FROM removed AS x JOIN entry AS e ON e.entry = x.entry JOIN device AS d ON d.device = e.device
        LEFT JOIN revision AS v ON x.kind = 'visit' AND v.kind = 'visit' AND v.record = x.record AND v.number = 1
        ORDER BY e.unix_ms DESC, d.id DESC, e.seq DESC)sql");
    std::vector<RemovedRecord> records;
    while (rows.next_row()) {
        const auto kind = enum_value<RecordKind>(text_at(rows, 0));
        if (!kind) {
            throw std::runtime_error{"a removal names a kind of record that this version does not know"};
        }
        RemovedRecord record{*kind, id_at(rows, 1), text_at(rows, 6), {}, time_at(rows, 2)};
        if (!null_at(rows, 4)) {
            record.started = time_at(rows, 4);
        }
        records.push_back(std::move(record));
    }
    return records;
}

}  // namespace wetfront::store_detail
