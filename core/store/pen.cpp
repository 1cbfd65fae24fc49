// SPDX-License-Identifier: Apache-2.0
#include "store/pen.h"

#include <algorithm>

namespace wetfront::store_detail {
namespace {

void bind_to(SQLite::Statement& statement, int place, const Value& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) {
        statement.bind(place, *number);
    } else if (const auto* text = std::get_if<std::string>(&value)) {
        statement.bind(place, *text);
    } else if (const auto* raw = std::get_if<Bytes>(&value)) {
        statement.bind(place, raw->bytes.data(), static_cast<int>(raw->bytes.size()));
    } else {
        statement.bind(place);
    }
}

std::string insert_into(const std::string& table, const Fields& fields) {
    std::string columns = "entry";
    std::string places = "?";
    for (const auto& [name, value] : fields) {
        columns += ", " + name;
        places += ", ?";
    }
    return "INSERT INTO " + table + " (" + columns + ") VALUES (" + places + ")";
}

}  // namespace

void Pen::write(const std::string& table, const Fields& fields) const {
    EntryHead head{device_id.text, 1, now};
    Hash previous{};
    {
        const auto last = sql("SELECT seq, hash FROM entry WHERE device = ? ORDER BY seq DESC LIMIT 1");
        Binder{last}(device);
        if (last.next_row()) {
            head.seq = 1 + number_at(last, 0);
            previous = hash_at(last, 1);
        }
    }
    const Hash hash = entry_hash(previous, head, table, fields);
    {
        const auto insert =
            sql("INSERT INTO entry (device, seq, unix_ms, utc_offset_min, hash) VALUES (?, ?, ?, ?, ?)");
        Binder{insert}(device)(head.seq)(now);
        bind_to(insert, 5, Bytes{std::string(hash.begin(), hash.end())});
        insert.run();
    }
    const auto entry = std::int64_t{sql.database().getLastInsertRowid()};
    const auto insert = sql(insert_into(table, fields));
    int place = 0;
    bind_to(insert, ++place, value(entry));
    for (const auto& [name, content] : fields) {
        bind_to(insert, ++place, content);
    }
    insert.run();
}

}  // namespace wetfront::store_detail
