// SPDX-License-Identifier: Apache-2.0
#include "store/split_records.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "store/revisions.h"
#include "store/timeline.h"

namespace wetfront::store_detail {
namespace {

std::string name_of(Statements& sql, RecordKind kind, const std::string& record) {
    const auto row = sql(R"sql(
        SELECT h.name FROM head AS h WHERE h.kind = CASE ?1 WHEN 'visit' THEN 'house' ELSE ?1 END
            AND h.record = CASE ?1 WHEN 'visit' THEN
                (SELECT v.house FROM revision AS v WHERE v.kind = 'visit' AND v.record = ?2 AND v.number = 1) ELSE ?2 END
        ORDER BY h.number DESC, h.id DESC LIMIT 1)sql");
    Binder{row}(enum_name(kind))(record);
    return row.next_row() ? text_at(row, 0) : std::string{};
}

/// The one that is shown comes first, as head_of() chooses it.
std::vector<PresentState> states_of(Statements& sql, RecordKind kind, const std::string& record) {
    const auto rows =
        sql("SELECT h.id, d.id, e.seq, e.unix_ms, e.utc_offset_min, coalesce(h.signed, 0) FROM head AS h "
            "JOIN entry AS e ON e.entry = h.entry JOIN device AS d ON d.device = e.device "
            "WHERE h.kind = ? AND h.record = ? ORDER BY h.signed DESC, h.number DESC, h.id DESC");
    Binder{rows}(enum_name(kind))(record);
    std::vector<PresentState> states;
    while (rows.next_row()) {
        states.push_back(
            {text_at(rows, 0), {id_at(rows, 1), number_at(rows, 2)}, time_at(rows, 3), flag_at(rows, 5)});
    }
    return states;
}

/// Records with a revision that two others follow: none is split without.
std::vector<std::pair<RecordKind, std::string>> forked(Statements& sql) {
    const auto rows = sql(
        "SELECT DISTINCT kind, record FROM revision WHERE id IN (SELECT parent FROM revision WHERE parent IS "
        "NOT NULL GROUP BY parent HAVING count(*) > 1) ORDER BY kind, record");
    std::vector<std::pair<RecordKind, std::string>> records;
    while (rows.next_row()) {
        const auto kind = enum_value<RecordKind>(text_at(rows, 0));
        if (!kind) {
            throw std::runtime_error{"a revision is of a kind that this version does not know"};
        }
        records.emplace_back(*kind, text_at(rows, 1));
    }
    return records;
}

struct RecordOfRevision {
    std::int64_t entry = 0;
    RecordKind kind{};
    std::string record;
};

std::optional<RecordOfRevision> record_of(Statements& sql, const std::string& revision) {
    const auto row = sql("SELECT entry, kind, record FROM revision WHERE id = ?");
    Binder{row}(revision);
    if (!row.next_row()) {
        return std::nullopt;
    }
    const auto kind = enum_value<RecordKind>(text_at(row, 1));
    return kind ? std::optional{RecordOfRevision{number_at(row, 0), *kind, text_at(row, 2)}} : std::nullopt;
}

}  // namespace

std::vector<SplitRecord> split_records(Statements& sql) {
    std::vector<SplitRecord> split;
    for (const auto& [kind, record] : forked(sql)) {
        auto states = states_of(sql, kind, record);
        if (states.size() < 2) {
            continue;
        }
        auto differences = changes_between(sql, states[0].revision, states[1].revision);
        split.push_back(
            {kind, Id{record}, name_of(sql, kind, record), std::move(states), std::move(differences)});
    }
    return split;
}

Result<void> choose_state(const Pen& pen, const std::string& revision) {
    const auto chosen = record_of(pen.sql, revision);
    const auto states =
        chosen ? states_of(pen.sql, chosen->kind, chosen->record) : std::vector<PresentState>{};
    const bool is_one = std::any_of(states.begin(), states.end(),
                                    [&](const PresentState& state) { return state.revision == revision; });
    if (!is_one || states.size() < 2) {
        return bad_input("revision", revision, "it is not one of several present states of a record");
    }
    if (std::any_of(states.begin(), states.end(),
                    [](const PresentState& state) { return state.is_signed; })) {
        return bad_input("visit", chosen->record,
                         "it is signed and frozen, and what was signed stands; enter what else holds as a "
                         "correction, a new visit that replaces it");
    }
    constexpr std::array revisions{"revision"};
    auto fields = contents_of(pen.sql, revisions, chosen->entry).front().fields;
    auto number = std::get<std::int64_t>(fields.at("number"));
    std::string parent = revision;
    fields.erase("restores");
    fields["whole"] = value(false);
    fields["body"] = value(std::string_view{"[]"});
    for (const auto& other : states) {
        if (other.revision == revision) {
            continue;
        }
        const auto id = pen.ids.next();
        fields["id"] = value(id);
        fields["parent"] = value(parent);
        fields["number"] = value(++number);
        fields["passed_over"] = value(other.revision);
        pen.write("revision", fields);
        parent = id.text;
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::store_detail
