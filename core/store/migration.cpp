// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <string>

#include "store/failure.h"

namespace wetfront::store_detail {
namespace {

constexpr std::array<Migration, 3> released{make_schema_1, make_schema_2, make_schema_3};

Result<std::filesystem::path> make_empty(const std::string& wanted) {
    for (int copy = 1;; ++copy) {
        const std::filesystem::path path = copy == 1 ? wanted : wanted + "-" + std::to_string(copy);
        const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
        if (descriptor >= 0) {
            ::close(descriptor);
            return path;
        }
        if (errno != EEXIST) {
            return system_failure("copy " + path.string(), errno);
        }
    }
}

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
    WF_TRY(const auto path,
           make_empty(file.string() + ".before-v" + std::to_string(version) + "-" + local_date(now)));
    SQLite::Database copy{path, SQLite::OPEN_READWRITE};
    SQLite::Backup{copy, db}.executeStep(-1);
    // One file, without a -wal beside it, so that it can be taken away as it is.
    copy.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=DELETE");
    if (copy.execAndGet("PRAGMA integrity_check").getString() != "ok") {
        return storage_error("copy " + path.string(), "it is not whole", "the record file was not changed");
    }
    return path;
}

}  // namespace wetfront::store_detail
