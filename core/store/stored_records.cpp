// SPDX-License-Identifier: Apache-2.0
#include "store/stored_records.h"

#include <utility>

#include "records/record_text.h"
#include "store/journal.h"
#include "store/removal.h"

namespace wetfront::store_detail {
namespace {

Error no_such(RecordKind kind, const Id& id) {
    return bad_input(std::string{enum_name(kind)}, id.text, "there is none with this id in the record file");
}

/// A record's text as a document, once it is certain that it reads back as the same record.
template <class Record>
Result<nlohmann::json> document_of(const Record& record, const std::string& text,
                                   RecordOf<Record> record_of) {
    WF_TRY(const auto document, read_json(text, "record"));
    WF_TRY(const auto read_back, record_of(document));
    if (read_back != record) {
        return bad_input("record", record.id.text, "a text of it is not UTF-8, or an id is malformed");
    }
    return nlohmann::json(document);
}

Visit without_marks(Visit visit) {
    visit.marks.clear();
    return visit;
}

Result<void> check_may_follow(Statements& sql, const Head& present, const Visit& visit,
                              const nlohmann::json& document) {
    if (present.is_signed && document_at<nlohmann::json>(sql, present.revision) != document) {
        return bad_input("visit", visit.id.text,
                         "it is signed and frozen; make a correction, a new visit that replaces it");
    }
    WF_TRY(const auto before, record_at(sql, present.revision, visit_of));
    if (before.house != visit.house || before.started != visit.started || before.replaces != visit.replaces) {
        return bad_input("visit", visit.id.text,
                         "a visit keeps its house, its start and the visit that it replaces");
    }
    return boost::outcome_v2::success();
}

/// Puts a record in place that may be there already, but only with the same content.
template <class Record>
Result<void> put_new(const Pen& pen, RecordKind kind, const Record& record, RecordOf<Record> record_of) {
    if (const auto head = head_of(pen.sql, kind, record.id)) {
        WF_TRY(const auto there, record_at(pen.sql, head->revision, record_of));
        if (there != record) {
            return bad_input(std::string{enum_name(kind)}, record.id.text,
                             "it is in the record file with other content; nothing was added");
        }
        return boost::outcome_v2::success();
    }
    return put(pen, record);
}

}  // namespace

Result<Head> need_head(Statements& sql, RecordKind kind, const Id& id) {
    auto head = head_of(sql, kind, id);
    if (!head) {
        return no_such(kind, id);
    }
    return std::move(*head);
}

/// Asks indices alone, as every press waits for it.
Result<void> check_open(Statements& sql, const Id& visit) {
    const auto row =
        sql("SELECT EXISTS (SELECT 1 FROM revision INDEXED BY revision_of_record "
            "WHERE kind = 'visit' AND record = ?1), "
            "EXISTS (SELECT 1 FROM revision INDEXED BY signed_visit "
            "WHERE kind = 'visit' AND signed = 1 AND record = ?1)");
    Binder{row}(visit);
    if (!row.next_row() || !flag_at(row, 0)) {
        return no_such(RecordKind::visit, visit);
    }
    if (flag_at(row, 1)) {
        return bad_input("visit", visit.text, "it is signed and frozen: its marks stay as they are");
    }
    return boost::outcome_v2::success();
}

Result<VisitFile> visit_file_of(Statements& sql, const Id& id, LastRead& last) {
    WF_TRY(const auto head, need_head(sql, RecordKind::visit, id));
    WF_TRY(auto visit, record_at(sql, head.revision, visit_of));
    visit.marks = marks_of(sql, id);
    auto house_revision = head.house_revision;
    if (!head.is_signed) {
        WF_TRY(const auto now, need_head(sql, RecordKind::house, visit.house));
        house_revision = now.revision;
    }
    if (last.house_revision != house_revision) {
        WF_TRY(last.house, record_at(sql, house_revision, house_of));
        last.house_revision = house_revision;
    }
    auto farm_revision = head.farm_revision;
    if (!head.is_signed) {
        WF_TRY(const auto now, need_head(sql, RecordKind::farm, last.house.farm));
        farm_revision = now.revision;
    }
    if (last.farm_revision != farm_revision) {
        WF_TRY(last.farm, record_at(sql, farm_revision, farm_of));
        last.farm_revision = farm_revision;
    }
    return VisitFile{last.farm, last.house, std::move(visit)};
}

Result<void> put(const Pen& pen, const Farm& farm, const Restored& restores) {
    WF_TRY(const auto document, document_of(farm, farm_text(farm), farm_of));
    add_revision(pen, RecordKind::farm, farm.id, head_of(pen.sql, RecordKind::farm, farm.id), document,
                 {.name = farm.name, .restores = restores});
    return boost::outcome_v2::success();
}

Result<void> put(const Pen& pen, const House& house, const Restored& restores) {
    WF_CHECK(need_head(pen.sql, RecordKind::farm, house.farm));
    WF_TRY(const auto document, document_of(house, house_text(house), house_of));
    const auto before = head_of(pen.sql, RecordKind::house, house.id);
    if (!before) {
        WF_CHECK(check_not_removed(pen.sql, RecordKind::farm, house.farm));
    }
    add_revision(pen, RecordKind::house, house.id, before, document,
                 {.name = house.name, .farm = house.farm, .restores = restores});
    return boost::outcome_v2::success();
}

Result<void> put(const Pen& pen, const SettingTemplate& described) {
    constexpr auto kind = RecordKind::setting_template;
    WF_TRY(const auto document, document_of(described, template_text(described), template_of));
    add_revision(pen, kind, described.id, head_of(pen.sql, kind, described.id), document,
                 {.name = described.name});
    return boost::outcome_v2::success();
}

Result<void> put(const Pen& pen, const Visit& visit, const Restored& restores) {
    WF_TRY(const auto document, document_of(without_marks(visit), visit_text(visit), visit_of));
    WF_TRY(const auto house_head, need_head(pen.sql, RecordKind::house, visit.house));
    WF_TRY(const auto house, record_at(pen.sql, house_head.revision, house_of));
    WF_TRY(const auto farm_head, need_head(pen.sql, RecordKind::farm, house.farm));
    const auto present = head_of(pen.sql, RecordKind::visit, visit.id);
    if (present) {
        WF_CHECK(check_may_follow(pen.sql, *present, visit, document));
    } else {
        WF_CHECK(check_not_removed(pen.sql, RecordKind::house, visit.house));
    }
    add_revision(pen, RecordKind::visit, visit.id, present, document,
                 {.house = visit.house,
                  .started = visit.started,
                  .is_signed = visit.is_signed(),
                  .replaces = visit.replaces,
                  .house_revision = house_head.revision,
                  .farm_revision = farm_head.revision,
                  .restores = restores});
    return boost::outcome_v2::success();
}

Result<void> put_new(const Pen& pen, const VisitFile& file) {
    WF_CHECK(put_new(pen, RecordKind::farm, file.farm, farm_of));
    WF_CHECK(put_new(pen, RecordKind::house, file.house, house_of));
    const bool is_new = !head_of(pen.sql, RecordKind::visit, file.visit.id);
    WF_CHECK(put_new(pen, RecordKind::visit, without_marks(file.visit), visit_of));
    if (!is_new) {
        if (marks_of(pen.sql, file.visit.id) != file.visit.marks) {
            return bad_input("visit", file.visit.id.text,
                             "it is in the record file with other marks; nothing was added");
        }
        return boost::outcome_v2::success();
    }
    for (const auto& mark : file.visit.marks) {
        WF_CHECK(add_mark(pen, file.visit.id, mark));
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::store_detail
