// SPDX-License-Identifier: Apache-2.0
#include "store/aside.h"

namespace wetfront::store_detail {

Result<BundleEntry> aside_entry_at(const SQLite::Statement& row) {
    BundleEntry entry;
    entry.head = {text_at(row, 0), number_at(row, 1), time_at(row, 2)};
    entry.before = hash_at(row, 4);
    entry.hash = hash_at(row, 5);
    entry.content.table = text_at(row, 6);
    WF_TRY(entry.content.fields, parse_fields(text_at(row, 7), "entry kept aside"));
    return entry;
}

void put_aside(Statements& sql, std::int64_t device, const BundleEntry& entry, const std::string& why) {
    const auto insert =
        sql("INSERT INTO aside (device, seq, unix_ms, utc_offset_min, content, fields, why, before, hash) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
    SQLite::Statement& statement = insert;
    Binder{insert}(device)(entry.head.seq)(entry.head.at)(entry.content.table)(
        fields_text(entry.content.fields))(why);
    statement.bind(8, entry.before.data(), static_cast<int>(entry.before.size()));
    statement.bind(9, entry.hash.data(), static_cast<int>(entry.hash.size()));
    insert.run();
}

}  // namespace wetfront::store_detail
