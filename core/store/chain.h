// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "store/rows.h"
#include "store/sha256.h"

// Not for other folders.
//
// The chain of hashes. Every entry holds the SHA-256 of these bytes:
//
//   1. the hash of the entry before it of the same device (the next smaller seq), 32 bytes; 32 zero bytes for
//      a device's first entry;
//   2. five lines about the entry: device (its id, not its key in this file), seq, unix_ms, utc_offset_min,
//      table (in which its content is: revision, mark, mark_change, removal, sheet or picture);
//   3. a line for each column of the content's row but `entry`, in the order of the columns' names as bytes.
//      NULL has no line, so a column that a later version adds changes no hash.
//
// A line is name=<type><length>:<value> and a newline, the type being t (text, UTF-8), i (whole number, in
// decimal) or b (bytes), the length that of the value in bytes. Example of a line: seq=i2:17
//
// What it proves. A row that was changed, taken out or put in between no longer fits the hashes behind it; to
// hide that, all of them have to be made anew. Whoever noted a device's last number and hash elsewhere (on
// paper, in the office) can tell that too, and that the last entries were cut off: that hash is then not
// there. From the file alone neither can be seen, because an older copy of a file is a good file. Entries of
// schema 1 and 2 got their hashes when the file was brought to schema 3, and are vouched for from then on.
//
// What another device wrote keeps its device, number, time and hash. It may be here in part: such an entry
// holds the hash of the one before it besides (entry.before), so that its own can still be proved.
namespace wetfront::store_detail {

struct Bytes {
    std::string bytes;
    friend bool operator==(const Bytes&, const Bytes&) = default;
};
using Value = std::variant<std::monostate, std::int64_t, std::string, Bytes>;
/// Columns by name.
using Fields = std::map<std::string, Value>;

[[nodiscard]] inline Value value(std::string_view text) {
    return std::string{text};
}
[[nodiscard]] inline Value value(const Id& id) {
    return id.text;
}
[[nodiscard]] inline Value value(std::int64_t number) {
    return number;
}
[[nodiscard]] inline Value value(int number) {
    return std::int64_t{number};
}
[[nodiscard]] inline Value value(bool flag) {
    return std::int64_t{flag ? 1 : 0};
}
template <class T>
[[nodiscard]] Value value(const std::optional<T>& maybe) {
    return maybe ? value(*maybe) : Value{};
}

struct EntryHead {
    std::string device;
    std::int64_t seq = 0;
    WallTime at;
    friend bool operator==(const EntryHead&, const EntryHead&) = default;
};

/// What an entry says, with the table that holds it.
struct Content {
    std::string table;
    Fields fields;
    friend bool operator==(const Content&, const Content&) = default;
};

/// The tables that hold contents of entries.
inline constexpr std::array content_tables{"revision", "mark", "mark_change", "removal", "sheet", "picture"};

[[nodiscard]] Hash entry_hash(const Hash& previous, const EntryHead& head, const std::string& table,
                              const Fields& fields);

/// The rows of those tables that belong to the entry; one if all is well. May throw.
[[nodiscard]] std::vector<Content> contents_of(Statements& sql, std::span<const char* const> tables,
                                               std::int64_t entry);

/// Those that are not NULL: what a hash covers.
[[nodiscard]] Fields without_nulls(Fields fields);

/// A column that holds a hash. Throws if it holds something else.
[[nodiscard]] Hash hash_at(const SQLite::Statement& row, int column);

}  // namespace wetfront::store_detail
