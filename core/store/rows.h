// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "base/clock.h"
#include "base/ids.h"

// Not for other folders. Everything here may throw SQLite::Exception.
namespace wetfront::store_detail {

/// Prepared statements, kept for the next time: preparing costs more than running.
class Statements {
    using Shelf = std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>>;

public:
    explicit Statements(SQLite::Database& db) : db_{db} {}

    /// A statement on loan: reset and back on its shelf at the end of its scope.
    class Loan {
    public:
        Loan(Statements& from, std::string sql) : from_{from}, kept_{from.take(std::move(sql))} {}
        ~Loan() { from_.put_back(std::move(kept_)); }
        Loan(const Loan&) = delete;
        Loan& operator=(const Loan&) = delete;
        operator SQLite::Statement&() const {
            return *kept_.mapped();
        }  // NOLINT(google-explicit-constructor): it is one
        [[nodiscard]] bool next_row() const { return kept_.mapped()->executeStep(); }
        void run() const { kept_.mapped()->exec(); }

    private:
        Statements& from_;
        Shelf::node_type kept_;
    };
    [[nodiscard]] Loan operator()(std::string sql) { return Loan{*this, std::move(sql)}; }
    [[nodiscard]] SQLite::Database& database() const { return db_; }

private:
    [[nodiscard]] Shelf::node_type take(std::string sql) {
        auto kept = kept_.extract(sql);
        if (kept.empty()) {
            auto prepared = std::make_unique<SQLite::Statement>(db_, sql);
            Shelf made;
            made.emplace(std::move(sql), std::move(prepared));
            kept = made.extract(made.begin());
        }
        return kept;
    }
    void put_back(Shelf::node_type kept) {
        kept.mapped()->tryReset();  // tells once more of an error that has been told
        kept.mapped()->clearBindings();
        kept_.insert(std::move(kept));
    }

    SQLite::Database& db_;
    Shelf kept_;
};

/// Binds values one after the other.
class Binder {
public:
    explicit Binder(SQLite::Statement& statement) : statement_{statement} {}

    Binder& operator()(const std::string& text) { return bound(text); }
    Binder& operator()(std::string_view text) { return bound(std::string{text}); }
    Binder& operator()(const Id& id) { return bound(id.text); }
    Binder& operator()(std::int64_t number) { return bound(number); }
    Binder& operator()(int number) { return bound(number); }
    Binder& operator()(WallTime time) { return (*this)(time.unix_ms)(time.utc_offset_minutes); }

private:
    template <class T>
    Binder& bound(const T& value) {
        statement_.bind(next_++, value);
        return *this;
    }

    SQLite::Statement& statement_;
    int next_ = 1;
};

[[nodiscard]] inline std::string text_at(const SQLite::Statement& row, int column) {
    return row.getColumn(column).getString();
}
[[nodiscard]] inline Id id_at(const SQLite::Statement& row, int column) {
    return Id{text_at(row, column)};
}
[[nodiscard]] inline std::int64_t number_at(const SQLite::Statement& row, int column) {
    return row.getColumn(column).getInt64();
}
[[nodiscard]] inline bool flag_at(const SQLite::Statement& row, int column) {
    return number_at(row, column) != 0;
}
[[nodiscard]] inline bool null_at(const SQLite::Statement& row, int column) {
    return row.getColumn(column).isNull();
}
/// From two columns: milliseconds, then minutes of offset.
[[nodiscard]] inline WallTime time_at(const SQLite::Statement& row, int column) {
    return {number_at(row, column), row.getColumn(column + 1).getInt()};
}

}  // namespace wetfront::store_detail
