// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <array>
#include <string>

#include "store/new_file.h"

namespace wetfront::store_detail {
namespace {

constexpr std::array<Migration, 3> released{make_schema_1, make_schema_2, make_schema_3};

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
    const std::string wanted = file.string() + ".before-v" + std::to_string(version) + "-" + local_date(now);
    const std::string item = "copy " + wanted;
    const Draft draft{wanted + ".new"};
    WF_CHECK(draft.make(item));
    {
        SQLite::Database copy{draft.path(), SQLite::OPEN_READWRITE};
        if (SQLite::Backup{copy, db}.executeStep(-1) != SQLITE_DONE) {  // busy is no exception here
            return storage_error(item, "another program is using it", "nothing was changed; try again");
        }
        // One file, without a -wal beside it, so that it can be taken away as it is.
        copy.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=DELETE");
    }
    for (int number = 1;; ++number) {
        const std::filesystem::path path = number == 1 ? wanted : wanted + "-" + std::to_string(number);
        WF_TRY(const bool placed, draft.put_in_place(path, item));
        if (placed) {
            return path;
        }
    }
}

}  // namespace wetfront::store_detail
