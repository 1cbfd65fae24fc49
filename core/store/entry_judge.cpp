// SPDX-License-Identifier: Apache-2.0
#include "store/entry_judge.h"

#include <algorithm>
#include <array>
#include <tuple>
#include <utility>

#include "records/record_json.h"
#include "store/revisions.h"
#include "timing/mark.h"

namespace wetfront::store_detail {
namespace {

constexpr const char* not_readable = "it holds what this version of the program cannot read";
/// What is kept of states: what is asked for is the last one of the record at hand, nearly always.
constexpr std::size_t most_states = 64;

const std::string* text_of(const Fields& fields, const char* name) {
    const auto found = fields.find(name);
    return found == fields.end() ? nullptr : std::get_if<std::string>(&found->second);
}
const std::int64_t* number_of(const Fields& fields, const char* name) {
    const auto found = fields.find(name);
    return found == fields.end() ? nullptr : std::get_if<std::int64_t>(&found->second);
}
const Bytes* bytes_of(const Fields& fields, const char* name) {
    const auto found = fields.find(name);
    return found == fields.end() ? nullptr : std::get_if<Bytes>(&found->second);
}
bool has(const Fields& fields, const char* name) {
    return fields.contains(name);
}

bool is_id(const std::string* text) {
    return text != nullptr && parse_id(*text, "id").has_value();
}
bool is_flag(const std::int64_t* number) {
    return number != nullptr && (*number == 0 || *number == 1);
}
template <class E>
bool is_one_of(const std::string* text) {
    return text != nullptr && enum_value<E>(*text).has_value();
}
/// A column that may be NULL: nothing, or what `good` accepts.
template <class T, class Good>
bool none_or(const Fields& fields, const char* name, const T* read, Good good) {
    return !has(fields, name) || good(read);
}
bool is_number(const std::int64_t* number) {
    return number != nullptr;
}
bool is_count(const std::int64_t* number) {
    return number != nullptr && *number > 0;
}

bool is_hash_of(const Bytes& hash, const Bytes& content) {
    const auto real = sha256(content.bytes);
    return hash.bytes == std::string(real.begin(), real.end());
}

std::string waits_for(const char* what, const std::string& id) {
    return std::string{"it waits for "} + what + " " + printable(id, 64) + ", which is not here yet";
}

/// Only what this program writes: no operation that makes much of little.
bool is_plain_patch(const Json& patch, bool whole) {
    if (!patch.is_array()) {
        return false;
    }
    if (whole) {
        if (patch.size() != 1 || !patch[0].is_object() || patch[0].size() != 3 || !patch[0].contains("op") ||
            !patch[0].contains("path") || !patch[0].contains("value")) {
            return false;
        }
        const auto& path = patch[0]["path"];
        return patch[0]["op"] == "replace" && path.is_string() && path.get_ref<const std::string&>().empty();
    }
    return std::all_of(patch.begin(), patch.end(), [](const Json& each) {
        if (!each.is_object() || !each.contains("op") || !each.contains("path")) {
            return false;
        }
        const auto& op = each["op"];
        return op == "add" || op == "remove" || op == "replace";
    });
}

bool same(const std::string* column, const std::string& content) {
    return column != nullptr && *column == content;
}
bool same(const Fields& fields, const char* name, const std::optional<Id>& content) {
    return content ? same(text_of(fields, name), content->text) : !has(fields, name);
}
bool none_of(const Fields& fields, std::initializer_list<const char*> names) {
    return std::none_of(names.begin(), names.end(), [&](const char* name) { return has(fields, name); });
}

bool says(const Farm& farm, const Fields& fields) {
    return farm.id.text == *text_of(fields, "record") && same(text_of(fields, "name"), farm.name) &&
           none_of(fields, {"farm", "house", "started_unix_ms", "started_utc_offset_min", "signed",
                            "replaces", "house_revision", "farm_revision"});
}
bool says(const House& house, const Fields& fields) {
    return house.id.text == *text_of(fields, "record") && same(text_of(fields, "name"), house.name) &&
           same(text_of(fields, "farm"), house.farm.text) &&
           none_of(fields, {"house", "started_unix_ms", "started_utc_offset_min", "signed", "replaces",
                            "house_revision", "farm_revision"});
}
bool says(const SettingTemplate& described, const Fields& fields) {
    return described.id.text == *text_of(fields, "record") && same(text_of(fields, "name"), described.name) &&
           none_of(fields, {"farm", "house", "started_unix_ms", "started_utc_offset_min", "signed",
                            "replaces", "house_revision", "farm_revision"});
}
bool says(const Visit& visit, const Fields& fields) {
    const auto* ms = number_of(fields, "started_unix_ms");
    const auto* offset = number_of(fields, "started_utc_offset_min");
    const auto* is_signed = number_of(fields, "signed");
    return visit.id.text == *text_of(fields, "record") && visit.marks.empty() &&
           same(text_of(fields, "house"), visit.house.text) && ms != nullptr && offset != nullptr &&
           WallTime{*ms, static_cast<std::int32_t>(*offset)} == visit.started && is_flag(is_signed) &&
           (*is_signed == 1) == visit.is_signed() && same(fields, "replaces", visit.replaces) &&
           has(fields, "house_revision") && has(fields, "farm_revision") && none_of(fields, {"name", "farm"});
}
template <class R>
bool says(const Result<R>& record, const Fields& fields) {
    return record.has_value() && says(record.value(), fields);
}

/// The document can be read, and the columns beside it repeat it.
bool is_said(RecordKind kind, const Json& document, const Fields& fields) {
    switch (kind) {
        case RecordKind::farm:
            return says(farm_of(document), fields);
        case RecordKind::house:
            return says(house_of(document), fields);
        case RecordKind::visit:
            return says(visit_of(document), fields);
        case RecordKind::setting_template:
            return says(template_of(document), fields);
    }
    return false;
}

bool is_revision(const Fields& fields) {
    const auto* number = number_of(fields, "number");
    const auto* whole = number_of(fields, "whole");
    return is_id(text_of(fields, "id")) && is_one_of<RecordKind>(text_of(fields, "kind")) &&
           is_id(text_of(fields, "record")) && is_count(number) && is_flag(whole) &&
           text_of(fields, "body") != nullptr && (*number == 1) == !has(fields, "parent") &&
           (*number > 1 || *whole == 1) && none_or(fields, "parent", text_of(fields, "parent"), is_id);
}

bool is_mark(const Fields& fields) {
    const auto* boot_id = text_of(fields, "boot_id");
    const auto* boot_ns = number_of(fields, "boot_ns");
    return is_id(text_of(fields, "id")) && is_id(text_of(fields, "visit")) &&
           is_one_of<MarkKind>(text_of(fields, "kind")) && is_id(text_of(fields, "pump")) &&
           none_or(fields, "bank", text_of(fields, "bank"), is_id) && boot_id != nullptr &&
           boot_id->size() <= 200 && boot_ns != nullptr && *boot_ns >= 0 &&
           is_number(number_of(fields, "unix_ms")) && is_number(number_of(fields, "utc_offset_min")) &&
           is_one_of<TimedBy>(text_of(fields, "timed_by")) &&
           none_or(fields, "stamp_error_ns", number_of(fields, "stamp_error_ns"), is_number) &&
           is_one_of<Seen>(text_of(fields, "seen")) && is_one_of<StartedBy>(text_of(fields, "started_by")) &&
           is_one_of<PadsAtStart>(text_of(fields, "pads")) &&
           none_or(fields, "fans_running", number_of(fields, "fans_running"), is_flag) &&
           is_flag(number_of(fields, "proof"));
}

}  // namespace

Result<std::string> EntryJudge::why_not(const BundleEntry& entry) {
    made_.reset();
    const auto& [table, fields] = entry.content;
    if (std::find(content_tables.begin(), content_tables.end(), table) == content_tables.end()) {
        return "a kind of entry that this version of the program does not know";
    }
    if (!knows(table, fields)) {
        return std::string{not_readable};
    }
    return table == "revision"      ? of_revision(fields)
           : table == "mark"        ? of_mark(fields)
           : table == "mark_change" ? of_mark_change(fields)
           : table == "removal"     ? of_removal(fields)
           : table == "sheet"       ? of_sheet(fields)
                                    : of_picture(fields);
}

void EntryJudge::taken_in() {
    if (!made_) {
        return;
    }
    if (states_.size() >= most_states) {
        states_.clear();
    }
    auto revision = made_->revision;
    states_.insert_or_assign(std::move(revision), *std::exchange(made_, {}));
}

bool EntryJudge::knows(const std::string& table, const Fields& fields) {
    auto& columns = columns_[table];
    if (columns.empty()) {
        const auto rows = sql_("SELECT name FROM pragma_table_info(?) WHERE name <> 'entry'");
        Binder{rows}(table);
        while (rows.next_row()) {
            columns.insert(text_at(rows, 0));
        }
    }
    auto column = columns.begin();  // both in the order of their names
    for (const auto& [name, value] : fields) {
        column = std::find(column, columns.end(), name);
        if (column == columns.end()) {
            return false;
        }
    }
    return true;
}

bool EntryJudge::has_record(RecordKind kind, const std::string& record) {
    const std::pair key{kind, record};
    if (records_.contains(key)) {
        return true;
    }
    const auto row = sql_("SELECT 1 FROM revision WHERE kind = ? AND record = ? AND number = 1");
    Binder{row}(enum_name(kind))(record);
    const bool there = row.next_row();
    if (there) {
        records_.insert(key);
    }
    return there;
}

EntryJudge::State* EntryJudge::state_of(const std::string& revision) {
    if (const auto known = states_.find(revision); known != states_.end()) {
        return &known->second;
    }
    State state;
    {
        const auto row = sql_("SELECT kind, record, number, coalesce(signed, 0) FROM revision WHERE id = ?");
        Binder{row}(revision);
        if (!row.next_row()) {
            return nullptr;
        }
        state = {revision,        enum_value<RecordKind>(text_at(row, 0)).value(),
                 text_at(row, 1), number_at(row, 2),
                 flag_at(row, 3), {}};
    }
    state.document = document_at<Json>(sql_, revision);
    if (states_.size() >= most_states) {
        states_.clear();
    }
    return &states_.insert_or_assign(revision, std::move(state)).first->second;
}

/// The id is taken already, by an entry of another device.
Result<std::string> EntryJudge::why_not_beside(const char* table, const char* key, const std::string& id,
                                               const Fields& fields, const char* aside) {
    std::int64_t entry = 0;
    {
        const auto row = sql_(std::string{"SELECT entry FROM "} + table + " WHERE " + key + " = ?");
        Binder{row}(id);
        if (!row.next_row()) {
            return std::string{};
        }
        entry = number_at(row, 0);
    }
    const std::array tables{table};
    if (without_nulls(contents_of(sql_, tables, entry).front().fields) != fields) {
        return bad_input("bundle", id,
                         "there is another " + std::string{table} +
                             " with this id in the record file; nothing was taken in");
    }
    return std::string{aside};
}

std::string EntryJudge::why_not_following(const State* parent, const State& made) {
    if (parent->kind != made.kind || parent->record != made.record || parent->number != made.number - 1) {
        return "it does not follow the revision that it says it follows";
    }
    if (parent->is_signed) {
        return "it changes a visit that is signed and frozen";
    }
    return {};
}

std::string EntryJudge::why_not_referring(const Fields& fields, const State& made) {
    for (const auto& [name, kind, record] :
         {std::tuple{"house_revision", RecordKind::house, text_of(fields, "house")},
          std::tuple<const char*, RecordKind, const std::string*>{"farm_revision", RecordKind::farm, nullptr},
          std::tuple{"restores", made.kind, &made.record},
          std::tuple{"passed_over", made.kind, &made.record}}) {
        if (!has(fields, name)) {
            continue;
        }
        const auto* revision = text_of(fields, name);
        if (!is_id(revision)) {
            return not_readable;
        }
        const auto row = sql_("SELECT kind, record FROM revision WHERE id = ?");
        Binder{row}(*revision);
        if (!row.next_row()) {
            return waits_for("revision", *revision);
        }
        if (text_at(row, 0) != enum_name(kind) || (record != nullptr && text_at(row, 1) != *record)) {
            return std::string{"its "} + name + " is of another record";
        }
    }
    if (const auto* restores = text_of(fields, "restores");
        restores != nullptr &&
        nlohmann::json(made.document) != document_at<nlohmann::json>(sql_, *restores)) {
        return "it is not the state that it says it restores";
    }
    return {};
}

Result<std::string> EntryJudge::of_revision(const Fields& fields) {
    if (!is_revision(fields)) {
        return std::string{not_readable};
    }
    const auto& id = *text_of(fields, "id");
    WF_TRY(auto taken, why_not_beside("revision", "id", id, fields, "another device wrote the same"));
    if (!taken.empty()) {
        return taken;
    }
    State made{id,
               enum_value<RecordKind>(*text_of(fields, "kind")).value(),
               *text_of(fields, "record"),
               *number_of(fields, "number"),
               false,
               {}};
    const bool whole = *number_of(fields, "whole") == 1;
    if (const auto* follows = text_of(fields, "parent")) {
        auto* parent = state_of(*follows);
        if (parent == nullptr) {
            return waits_for("revision", *follows);
        }
        if (auto why = why_not_following(parent, made); !why.empty()) {
            return why;
        }
        // Nobody else follows it, nearly always; who does finds it in the record.
        made.document = whole ? Json{} : std::move(parent->document);
        states_.erase(*follows);
    } else if (has_record(made.kind, made.record)) {
        return "its record was begun on another device as well";
    }
    const auto patch = read_json(*text_of(fields, "body"), "body");
    if (!patch || !is_plain_patch(patch.value(), whole)) {
        return std::string{not_readable};
    }
    try {
        made.document.patch_inplace(patch.value());
    } catch (const Json::exception&) {
        return "its change does not fit what it changes";
    }
    if (!is_said(made.kind, made.document, fields)) {
        return std::string{not_readable};
    }
    if (auto why = why_not_referring(fields, made); !why.empty()) {
        return why;
    }
    if (made.kind == RecordKind::visit && !has_record(RecordKind::house, *text_of(fields, "house"))) {
        return waits_for("house", *text_of(fields, "house"));
    }
    if (made.kind == RecordKind::house && !has_record(RecordKind::farm, *text_of(fields, "farm"))) {
        return waits_for("farm", *text_of(fields, "farm"));
    }
    const auto* is_signed = number_of(fields, "signed");
    made.is_signed = is_signed != nullptr && *is_signed == 1;
    made_ = std::move(made);
    return std::string{};
}

Result<std::string> EntryJudge::of_mark(const Fields& fields) {
    if (!is_mark(fields)) {
        return std::string{not_readable};
    }
    WF_TRY(auto taken,
           why_not_beside("mark", "id", *text_of(fields, "id"), fields, "another device has the same mark"));
    if (!taken.empty()) {
        return taken;
    }
    const auto& visit = *text_of(fields, "visit");
    return has_record(RecordKind::visit, visit) ? std::string{} : waits_for("visit", visit);
}

Result<std::string> EntryJudge::of_mark_change(const Fields& fields) {
    const auto* mark = text_of(fields, "mark");
    if (!is_id(mark) || !is_flag(number_of(fields, "undone")) ||
        !none_or(fields, "number", number_of(fields, "number"), is_count)) {
        return std::string{not_readable};
    }
    const auto row = sql_("SELECT 1 FROM mark WHERE id = ?");
    Binder{row}(*mark);
    return row.next_row() ? std::string{} : waits_for("mark", *mark);
}

Result<std::string> EntryJudge::of_removal(const Fields& fields) {
    const auto* kind = text_of(fields, "kind");
    const auto* record = text_of(fields, "record");
    if (!is_one_of<RecordKind>(kind) || !is_id(record) || !is_flag(number_of(fields, "removed")) ||
        !none_or(fields, "number", number_of(fields, "number"), is_count)) {
        return std::string{not_readable};
    }
    return has_record(enum_value<RecordKind>(*kind).value(), *record) ? std::string{}
                                                                      : waits_for(kind->c_str(), *record);
}

Result<std::string> EntryJudge::of_sheet(const Fields& fields) {
    const auto* visit = text_of(fields, "visit");
    const auto* revision = text_of(fields, "revision");
    const auto* pdf = bytes_of(fields, "pdf");
    const auto* hash = bytes_of(fields, "sha256");
    if (!is_id(visit) || !is_id(revision) || pdf == nullptr || hash == nullptr ||
        !pdf->bytes.starts_with("%PDF-")) {
        return std::string{not_readable};
    }
    if (!is_hash_of(*hash, *pdf)) {
        return "the sheet is not the one that was signed: its SHA-256 is another";
    }
    WF_TRY(auto taken,
           why_not_beside("sheet", "revision", *revision, fields, "another device kept the same"));
    if (!taken.empty()) {
        return taken;
    }
    const auto row = sql_("SELECT kind = 'visit' AND signed = 1, record FROM revision WHERE id = ?");
    Binder{row}(*revision);
    if (!row.next_row()) {
        return waits_for("revision", *revision);
    }
    return flag_at(row, 0) && text_at(row, 1) == *visit ? std::string{}
                                                        : "it is the sheet of a revision that is not signed";
}

Result<std::string> EntryJudge::of_picture(const Fields& fields) {
    const auto* visit = text_of(fields, "visit");
    const auto* jpeg = bytes_of(fields, "jpeg");
    const auto* hash = bytes_of(fields, "sha256");
    if (!is_id(visit) || jpeg == nullptr || hash == nullptr || !is_photo(jpeg->bytes)) {
        return std::string{not_readable};
    }
    if (!is_hash_of(*hash, *jpeg)) {
        return "the photo is not the one that was added: its SHA-256 is another";
    }
    return has_record(RecordKind::visit, *visit) ? std::string{} : waits_for("visit", *visit);
}

}  // namespace wetfront::store_detail
