// SPDX-License-Identifier: Apache-2.0
#include "store/timeline.h"

#include <map>
#include <set>
#include <utility>

#include "records/record_text.h"
#include "store/stored_records.h"

namespace wetfront::store_detail {
namespace {

using nlohmann::json;

void take(Timeline& line, TimelineStep step, const std::optional<std::string>& restores) {
    if (restores && !line.done.empty() && line.done.back().from == *restores) {
        line.undone.push_back(std::move(line.done.back()));
        line.done.pop_back();
        return;
    }
    if (restores && !line.undone.empty() && line.undone.back().to == *restores) {
        line.done.push_back(std::move(line.undone.back()));
        line.undone.pop_back();
        return;
    }
    line.done.push_back(std::move(step));
    line.undone.clear();
}

std::string shown(const json& document, const json::json_pointer& place) {
    if (!document.contains(place)) {
        return {};
    }
    const auto& value = document.at(place);
    return value.is_string() ? value.get<std::string>() : value.dump();
}

/// The places that a patch names. It writes "-" for behind the last item of a list, once for each item there.
class PatchPlaces {
public:
    explicit PatchPlaces(const json& before) : before_{before} {}

    std::string next(std::string path) {
        if (path.ends_with("/-")) {
            path.resize(path.size() - 2);
            const json::json_pointer list{path};
            const auto had = before_.contains(list) ? before_.at(list).size() : 0;
            path += "/" + std::to_string(had + appended_[path]++);
        }
        return path;
    }

private:
    const json& before_;
    std::map<std::string, std::size_t> appended_;
};

}  // namespace

Result<Timeline> timeline_of(Statements& sql, const Id& visit) {
    WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
    Timeline line;
    if (head.is_signed) {
        return line;
    }
    const auto rows = sql(R"sql(
        WITH begun (entry) AS (SELECT entry FROM revision WHERE kind = 'visit' AND record = ?1 AND number = 1),
        described (kind, record) AS (VALUES ('visit', ?1), ('house', ?2),
            ('farm', (SELECT farm FROM head WHERE kind = 'house' AND record = ?2 ORDER BY number DESC, id DESC LIMIT 1)))
        SELECT r.kind, r.record, r.parent, r.id, e.unix_ms, e.utc_offset_min, r.restores,
            e.before IS NOT NULL OR r.passed_over IS NOT NULL
        FROM described AS d JOIN revision AS r ON r.kind = d.kind AND r.record = d.record
        JOIN entry AS e ON e.entry = r.entry
        WHERE r.parent IS NOT NULL AND r.entry > (SELECT entry FROM begun) ORDER BY r.entry)sql");
    Binder{rows}(visit)(head.house);
    while (rows.next_row()) {
        if (flag_at(rows, 7)) {
            line = {};
            continue;
        }
        const auto kind = enum_value<RecordKind>(text_at(rows, 0));
        take(line, {kind.value(), id_at(rows, 1), text_at(rows, 2), text_at(rows, 3), time_at(rows, 4)},
             null_at(rows, 6) ? std::nullopt : std::optional{text_at(rows, 6)});
    }
    return line;
}

std::vector<FieldChange> changes_between(Statements& sql, const std::string& from, const std::string& to) {
    const json before = document_at<json>(sql, from);
    const json after = document_at<json>(sql, to);
    std::vector<FieldChange> changes;
    std::set<std::string> seen;
    PatchPlaces places{before};
    for (const auto& change : json::diff(before, after)) {
        const auto path = places.next(change.at("path").get<std::string>());
        if (seen.insert(path).second) {
            const json::json_pointer place{path};
            changes.push_back({path, shown(before, place), shown(after, place)});
        }
    }
    return changes;
}

UndoStep described(Statements& sql, const TimelineStep& step) {
    return {step.kind, step.record, step.at, changes_between(sql, step.from, step.to)};
}

Result<void> restore(const Pen& pen, const Id& visit, const TimelineStep& step, const std::string& revision) {
    LastRead last;
    WF_TRY(const auto before, visit_file_of(pen.sql, visit, last));
    switch (step.kind) {
        case RecordKind::farm: {
            WF_TRY(const auto farm, record_at(pen.sql, revision, farm_of));
            WF_CHECK(put(pen, farm, revision));
            break;
        }
        case RecordKind::house: {
            WF_TRY(const auto house, record_at(pen.sql, revision, house_of));
            WF_CHECK(put(pen, house, revision));
            break;
        }
        case RecordKind::visit: {
            WF_TRY(const auto restored, record_at(pen.sql, revision, visit_of));
            WF_CHECK(put(pen, restored, revision));
            break;
        }
        case RecordKind::setting_template:
            break;  // in no visit's timeline
    }
    WF_TRY(const auto after, visit_file_of(pen.sql, visit, last));
    if (check_references(before) && !check_references(after)) {
        return bad_input(std::string{enum_name(step.kind)}, step.record.text,
                         "something that was timed or entered since belongs to what this would take away; "
                         "undo that first");
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::store_detail
