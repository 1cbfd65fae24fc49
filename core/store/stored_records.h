// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "records/record_json.h"
#include "store/lists.h"
#include "store/revisions.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// A record's document to the record; refuses what is out of range.
template <class Record>
using RecordOf = Result<Record> (*)(const Json&);

/// An error if there is no such record.
[[nodiscard]] Result<Head> need_head(Statements& sql, RecordKind kind, const Id& id);
/// An error if there is no such visit or if it is signed.
[[nodiscard]] Result<void> check_open(Statements& sql, const Id& visit);

template <class Record>
[[nodiscard]] Result<Record> record_at(Statements& sql, const std::string& revision,
                                       RecordOf<Record> record_of) {
    auto record = record_of(document_at<Json>(sql, revision));
    if (!record) {
        return storage_error("revision " + revision + " cannot be read", record.error().text(),
                             "the file is damaged or was written by another version");
    }
    return record;
}

template <class Record>
[[nodiscard]] Result<Record> present(Statements& sql, RecordKind kind, const Id& id,
                                     RecordOf<Record> record_of) {
    WF_TRY(const auto head, need_head(sql, kind, id));
    return record_at(sql, head.revision, record_of);
}

/// Those of a kind that are not removed.
template <class Record>
[[nodiscard]] Result<std::vector<Record>> all_by_name(Statements& sql, RecordKind kind,
                                                      RecordOf<Record> record_of) {
    const auto rows =
        sql("SELECT DISTINCT r.record FROM revision AS r WHERE r.kind = ? AND NOT EXISTS "
            "(SELECT 1 FROM removed AS x WHERE x.kind = r.kind AND x.record = r.record)");
    Binder{rows}(enum_name(kind));
    std::vector<Record> all;
    while (rows.next_row()) {
        WF_TRY(auto record, present(sql, kind, id_at(rows, 0), record_of));
        all.push_back(std::move(record));
    }
    std::sort(all.begin(), all.end(),
              [](const Record& a, const Record& b) { return comes_before(a.name, a.id, b.name, b.id); });
    return all;
}

/// The house and the farm that were read last: most visits that are read one after the other share them, and
/// a revision never changes.
struct LastRead {
    std::string house_revision;
    House house;
    std::string farm_revision;
    Farm farm;
};

/// The visit with its marks, its house and its farm: those of its signing, or those of now if it is open.
[[nodiscard]] Result<VisitFile> visit_file_of(Statements& sql, const Id& visit, LastRead& last);

// Each adds a revision with the record as it is here, if it may follow the present one. `restores`: the
// revision whose state this is.
using Restored = std::optional<std::string>;
[[nodiscard]] Result<void> put(const Pen& pen, const Farm& farm, const Restored& restores = {});
[[nodiscard]] Result<void> put(const Pen& pen, const House& house, const Restored& restores = {});
[[nodiscard]] Result<void> put(const Pen& pen, const SettingTemplate& described);
[[nodiscard]] Result<void> put(const Pen& pen, const Visit& visit, const Restored& restores = {});

/// Puts farm, house and visit with marks in place; what is there already must be the same.
[[nodiscard]] Result<void> put_new(const Pen& pen, const VisitFile& file);

}  // namespace wetfront::store_detail
