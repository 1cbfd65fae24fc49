// SPDX-License-Identifier: Apache-2.0
#include "store/chain.h"

#include <algorithm>
#include <cstring>
#include <stdexcept>

namespace wetfront::store_detail {
namespace {

void add_line(std::string& bytes, std::string_view name, char type, std::string_view value) {
    bytes.append(name).append("=").append(1, type).append(std::to_string(value.size())).append(":");
    bytes.append(value).append("\n");
}

void add_line(std::string& bytes, const std::string& name, const Value& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) {
        add_line(bytes, name, 'i', std::to_string(*number));
    } else if (const auto* text = std::get_if<std::string>(&value)) {
        add_line(bytes, name, 't', *text);
    } else if (const auto* raw = std::get_if<Bytes>(&value)) {
        add_line(bytes, name, 'b', raw->bytes);
    }
}

Value value_at(const SQLite::Statement& row, int column) {
    const auto cell = row.getColumn(column);
    if (cell.isNull()) {
        return {};
    }
    if (cell.isInteger()) {
        return std::int64_t{cell.getInt64()};
    }
    if (cell.isBlob()) {
        return Bytes{cell.getString()};
    }
    if (cell.isText()) {
        return cell.getString();
    }
    throw std::runtime_error{std::string{"column "} + cell.getName() + " holds what it never holds"};
}

}  // namespace

Hash entry_hash(const Hash& previous, const EntryHead& head, const std::string& table, const Fields& fields) {
    std::string bytes(previous.begin(), previous.end());
    add_line(bytes, "device", value(head.device));
    add_line(bytes, "seq", value(head.seq));
    add_line(bytes, "unix_ms", value(head.at.unix_ms));
    add_line(bytes, "utc_offset_min", value(head.at.utc_offset_minutes));
    add_line(bytes, "table", value(table));
    for (const auto& [name, content] : fields) {
        add_line(bytes, name, content);
    }
    return sha256(bytes);
}

std::vector<Content> contents_of(Statements& sql, std::span<const char* const> tables, std::int64_t entry) {
    std::vector<Content> found;
    for (const auto* table : tables) {
        const auto loan = sql(std::string{"SELECT * FROM "} + table + " WHERE entry = ?");
        Binder{loan}(entry);
        if (!loan.next_row()) {
            continue;
        }
        const SQLite::Statement& row = loan;
        Content content{table, {}};
        for (int column = 0; column < row.getColumnCount(); ++column) {
            const std::string name = row.getColumn(column).getName();
            if (name != "entry") {
                content.fields.emplace(name, value_at(row, column));
            }
        }
        found.push_back(std::move(content));
    }
    return found;
}

Fields without_nulls(Fields fields) {
    std::erase_if(fields,
                  [](const auto& field) { return std::holds_alternative<std::monostate>(field.second); });
    return fields;
}

Hash hash_at(const SQLite::Statement& row, int column) {
    const std::string bytes = row.getColumn(column).getString();
    Hash hash{};
    if (bytes.size() != hash.size()) {
        throw std::runtime_error{"a hash is not 32 bytes long"};
    }
    std::memcpy(hash.data(), bytes.data(), hash.size());
    return hash;
}

}  // namespace wetfront::store_detail
