// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <array>
#include <string>

#include "store/whole_copy.h"

namespace wetfront::store_detail {
namespace {

constexpr std::array<Migration, 5> released{make_schema_1, make_schema_2, make_schema_3, make_schema_4,
                                            make_schema_5};

}  // namespace

std::span<const Migration> released_migrations() {
    return released;
}

int schema_version(const SQLite::Database& db) {
    SQLite::Statement ask{db, "PRAGMA user_version"};
    ask.executeStep();
    return ask.getColumn(0).getInt();
}

Result<void> migrate(SQLite::Database& db, std::span<const Migration> steps) {
    for (auto version = static_cast<std::size_t>(schema_version(db)); version < steps.size(); ++version) {
        SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
        steps[version](db);
        if (SQLite::Statement{db, "PRAGMA foreign_key_check"}.executeStep()) {
            return storage_error(db.getFilename(), "its records do not fit together",
                                 "nothing was changed; the file stays as it was");
        }
        db.exec("PRAGMA user_version=" + std::to_string(version + 1));
        transaction.commit();
    }
    return boost::outcome_v2::success();
}

Result<std::filesystem::path> keep_copy(SQLite::Database& db, const std::filesystem::path& file, int version,
                                        WallTime now) {
    return copy_whole(db, file.string() + ".before-v" + std::to_string(version) + "-" + local_date(now));
}

}  // namespace wetfront::store_detail
