// SPDX-License-Identifier: Apache-2.0
#include "store/whole_copy.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <string>

#include "store/draft.h"
#include "store/failure.h"

namespace wetfront::store_detail {
namespace {

std::pair<int, int> entries_of(SQLite::Database& db) {
    SQLite::Statement ask{db, "SELECT count(*), coalesce(max(entry), 0) FROM entry"};
    ask.executeStep();
    return {ask.getColumn(0).getInt(), ask.getColumn(1).getInt()};
}

/// What is copied before it is synced and told; a page is 4096 bytes.
constexpr int pages_at_once = 1024;

/// A medium is slow where it syncs: without that after every part, all of the time would pass after the last.
Result<void> copy_pages(SQLite::Database& from, SQLite::Database& to, const std::filesystem::path& draft,
                        const std::string& item, const CopyProgress& progress) {
    SQLite::Backup pages{to, from};
    for (int answer = 0; (answer = pages.executeStep(pages_at_once)) != SQLITE_DONE;) {
        if (answer != SQLITE_OK) {  // busy is no exception here
            return storage_error(item, "another program is using it", "nothing was changed; try again");
        }
        WF_CHECK(sync(draft, item));
        const double share_left = static_cast<double>(pages.getRemainingPageCount()) /
                                  static_cast<double>(std::max(1, pages.getTotalPageCount()));
        if (progress && !progress(1.0 - share_left)) {
            return storage_error(item, "it was stopped", "nothing is left of it; the records are intact");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> fill(SQLite::Database& db, const std::filesystem::path& draft, const std::string& item,
                  const CopyProgress& progress) {
    {
        SQLite::Database copy{draft, SQLite::OPEN_READWRITE};
        copy.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA synchronous=OFF");
        WF_CHECK(copy_pages(db, copy, draft, item, progress));
        // One file, without a -wal beside it, so that it can be taken away as it is.
        copy.exec("PRAGMA journal_mode=DELETE");
    }
    WF_CHECK(sync(draft, item));
    forget_pages(draft);
    SQLite::Database read_back{draft, SQLite::OPEN_READONLY};
    if (entries_of(read_back) != entries_of(db)) {
        return storage_error(item, "it does not hold what was written to it",
                             "the records themselves are intact; use another medium");
    }
    return boost::outcome_v2::success();
}

}  // namespace

void forget_pages(const std::filesystem::path& file) {
    const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor >= 0) {
        ::posix_fadvise(descriptor, 0, 0, POSIX_FADV_DONTNEED);
        ::close(descriptor);
    }
}

Result<void> sync(const std::filesystem::path& path, const std::string& item) {
    const int descriptor = ::open(path.empty() ? "." : path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return system_failure(item, errno);
    }
    const int problem = ::fsync(descriptor) == 0 ? 0 : errno;
    ::close(descriptor);
    // Some file systems cannot sync a folder and say so with EINVAL.
    if (problem != 0 && problem != EINVAL) {
        return system_failure(item, problem);
    }
    return boost::outcome_v2::success();
}

Result<void> check_whole(SQLite::Database& db, const std::string& item) {
    const auto not_whole = [&](std::string_view what) {
        return storage_error(item, what, "it was not used; take another copy");
    };
    if (db.execAndGet("PRAGMA integrity_check").getString() != "ok") {
        return not_whole("it is damaged");
    }
    if (SQLite::Statement{db, "PRAGMA foreign_key_check"}.executeStep()) {
        return not_whole("its records do not fit together");
    }
    return boost::outcome_v2::success();
}

RecordContent content_of(SQLite::Database& db) {
    RecordContent content;
    SQLite::Statement ask{db,
                          "SELECT count(*), (SELECT unix_ms FROM entry ORDER BY entry DESC LIMIT 1), "
                          "(SELECT utc_offset_min FROM entry ORDER BY entry DESC LIMIT 1), "
                          "(SELECT count(DISTINCT record) FROM revision WHERE kind = 'house') FROM entry"};
    ask.executeStep();
    content.entries = ask.getColumn(0).getInt();
    if (!ask.isColumnNull(1)) {
        content.latest = WallTime{ask.getColumn(1).getInt64(), ask.getColumn(2).getInt()};
    }
    content.houses = ask.getColumn(3).getInt();
    return content;
}

std::optional<WallTime> latest_of_first(SQLite::Database& db, int entries) {
    SQLite::Statement ask{db, "SELECT unix_ms, utc_offset_min FROM entry ORDER BY entry LIMIT 1 OFFSET ?"};
    ask.bind(1, entries - 1);
    // A negative offset counts as 0.
    if (entries < 1 || !ask.executeStep()) {
        return std::nullopt;
    }
    return WallTime{ask.getColumn(0).getInt64(), ask.getColumn(1).getInt()};
}

Result<std::filesystem::path> copy_whole(SQLite::Database& db, const std::filesystem::path& target,
                                         const CopyProgress& progress) {
    const std::string item = "copy " + target.string();
    return guarded(item, [&]() -> Result<std::filesystem::path> {
        const Draft draft{target};
        WF_CHECK(draft.make(item));
        WF_CHECK(fill(db, draft.path(), item, progress));
        for (int number = 1;; ++number) {
            const std::filesystem::path path =
                number == 1 ? target.string() : target.string() + "-" + std::to_string(number);
            WF_TRY(const bool placed, draft.put_database_in_place(path, item));
            if (placed) {
                return path;
            }
        }
    });
}

}  // namespace wetfront::store_detail
