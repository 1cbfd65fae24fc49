// SPDX-License-Identifier: Apache-2.0
#include "store/record_file.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <fstream>
#include <system_error>

#include "store/backup_name.h"
#include "store/draft.h"
#include "store/failure.h"
#include "store/holder.h"
#include "store/new_file.h"
#include "store/unfinished_restore.h"
#include "store/whole_copy.h"
#include "store/write_ahead.h"

namespace wetfront::store_detail {
namespace {

bool can_write(const std::filesystem::path& path) {
    return ::faccessat(AT_FDCWD, path.empty() ? "." : path.c_str(), W_OK, AT_EACCESS) == 0;
}

Result<void> check_can_write(const std::filesystem::path& file, const std::string& item) {
    for (const auto& path : {file, file.parent_path()}) {
        if (!can_write(path)) {
            const int problem = errno;
            return system_failure(path == file ? item : item + ", folder", problem);
        }
    }
    return boost::outcome_v2::success();
}

/// By name and not by descriptor: closing one would drop SQLite's locks. A file of someone else stays as it
/// is.
void keep_private(const std::filesystem::path& file) {
    for (const auto* suffix : {"", "-wal", "-shm", "-journal"}) {
        ::chmod((file.string() + suffix).c_str(), 0600);
    }
}

Error held(const std::filesystem::path& file, const std::string& item) {
    return storage_error(item, "it is open in " + holder_of(file), "close it there, then try again");
}

bool is_busy(const SQLite::Exception& cause) {
    return (cause.getErrorCode() & 0xFF) == SQLITE_BUSY;
}

/// A file of ours is not trusted either: it may be damaged or come from elsewhere.
void be_careful(const SQLite::Database& db) {
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
}

/// Plans do not follow bound values, or what is bound anew is also prepared anew: a question of which a value
/// might decide for a partial index costs several times its answer.
void plan_once(const SQLite::Database& db) {
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_ENABLE_QPSG, 1, nullptr);
}

void checkpoint_on_close(const SQLite::Database& db, bool on) {
    sqlite3_db_config(db.getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, on ? 0 : 1, nullptr);
}

Result<void> demand(SQLite::Database& db, const std::string& pragma, const std::string& wanted,
                    const std::string& item) {
    const std::string now = db.execAndGet("PRAGMA " + pragma).getString();
    if (now.empty() && db.getErrorCode() == SQLITE_NOMEM) {
        throw SQLite::Exception{db.getHandle()};  // a number that found no room to become a text
    }
    if (now != wanted) {
        return storage_error(item, pragma + " is " + now + ", not " + wanted,
                             "nothing is written without it");
    }
    return boost::outcome_v2::success();
}

struct Opened {
    SQLite::Database db;
    std::optional<Error> loss = {};
};

/// A copy of the -wal file (0600), "-2" and so on where that name is taken. Returns its path.
Result<std::filesystem::path> keep_write_ahead(const std::filesystem::path& wal,
                                               const std::filesystem::path& target, const std::string& item) {
    std::error_code problem;
    auto kept = target;
    for (int number = 2; !std::filesystem::copy_file(wal, kept, problem); ++number) {
        if (problem != std::errc::file_exists) {
            return system_failure(item, problem.value());
        }
        kept = target.string() + "-" + std::to_string(number);
    }
    if (::chmod(kept.c_str(), 0600) != 0) {
        return system_failure(item, errno);
    }
    WF_CHECK(sync(kept, item));
    WF_CHECK(sync(kept.parent_path(), item));
    return kept;
}

/// Looks at what the last run left in the -wal file, once nobody else can write it. `loss` gets what is to be
/// said of it, if anything.
Result<void> look_for_loss(SQLite::Database& db, const std::filesystem::path& file, const Clock& clock,
                           const std::string& item, std::optional<Error>& loss) {
    const std::filesystem::path wal = file.string() + "-wal";
    std::error_code none;
    const auto size = std::filesystem::file_size(wal, none);
    if (none || size == 0) {
        return boost::outcome_v2::success();
    }
    const auto page = static_cast<std::size_t>(db.execAndGet("PRAGMA page_size").getInt());
    if (!look_at_write_ahead(wal, page).broken) {
        return boost::outcome_v2::success();
    }
    // Before anything is written, which would go over the frames that are not read.
    const auto target = file.string() + ".damaged-wal-" + name_part(clock.wall_now());
    WF_TRY(const auto kept, keep_write_ahead(wal, target, item));
    db.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    const auto latest = content_of(db).latest;
    loss = storage_error(
        item,
        "its -wal file was damaged while no program had it open: entries made " +
            (latest ? "after " + local_date(*latest) + " " + local_clock(*latest) : "so far") +
            " may be missing",
        "go through the last visit and time again what is missing; the damaged -wal file is kept as " +
            kept.string());
    return boost::outcome_v2::success();
}

Result<Opened> open_to_write(const std::filesystem::path& file, const Clock& clock,
                             std::span<const Migration> steps, const std::string& item) {
    WF_CHECK(check_can_write(file, item));
    keep_private(file);
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    be_careful(db);
    plan_once(db);
    checkpoint_on_close(db, false);
    db.exec("PRAGMA locking_mode=EXCLUSIVE");
    const int version = schema_version(db);
    const auto newest = static_cast<int>(steps.size());
    if (version > newest) {
        return storage_error(item,
                             "it was written by a newer version of this program (schema " +
                                 std::to_string(version) + ", this one knows " + std::to_string(newest) + ")",
                             "nothing was written; update this program, or view the file read-only");
    }
    db.exec(
        "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA "
        "recursive_triggers=ON;"
        "PRAGMA cell_size_check=ON; PRAGMA temp_store=MEMORY");
    // A commit that meets a checkpoint, and the one after it, wait for further syncs: at the usual 1000 pages
    // every hundredth press would. 4000 pages of 4 KiB make at most 16 MB of -wal, which closing empties.
    db.exec("PRAGMA wal_autocheckpoint=4000");
    // Takes the lock now and not at the first entry.
    db.exec("BEGIN EXCLUSIVE; COMMIT");
    WF_CHECK(demand(db, "locking_mode", "exclusive", item));
    WF_CHECK(demand(db, "journal_mode", "wal", item));
    WF_CHECK(demand(db, "synchronous", "2", item));
    WF_CHECK(demand(db, "foreign_keys", "1", item));
    std::optional<Error> loss;
    WF_CHECK(look_for_loss(db, file, clock, item, loss));
    checkpoint_on_close(db, true);
    if (version < newest) {
        WF_CHECK(keep_copy(db, file, newest, clock.wall_now()));
        WF_CHECK(migrate(db, steps));
    }
    remove_left_drafts(file);
    return Opened{std::move(db), std::move(loss)};
}

Result<Opened> open_to_read(const std::filesystem::path& file, std::span<const Migration> steps,
                            const std::string& item) {
    std::string uri = "file:";
    for (const char c : std::filesystem::absolute(file).string()) {
        uri += c == '%' ? "%25" : c == '?' ? "%3f" : c == '#' ? "%23" : std::string(1, c);
    }
    if (!can_write(file.parent_path())) {
        // Where SQLite cannot make its lock files it reads only what is known not to change.
        std::error_code none;
        const auto waiting = std::filesystem::file_size(file.string() + "-wal", none);
        if (!none && waiting > 0) {
            return storage_error(
                item, "its last entries stand in the -wal file beside it and cannot be joined here",
                "copy both to a folder that can be written to");
        }
        uri += "?immutable=1";
    }
    SQLite::Database db{uri, SQLite::OPEN_READONLY | SQLite::OPEN_URI};
    be_careful(db);
    plan_once(db);
    db.exec("PRAGMA query_only=ON; PRAGMA cell_size_check=ON; PRAGMA temp_store=MEMORY");
    const int version = schema_version(db);
    if (version < static_cast<int>(steps.size())) {
        return storage_error(item, "it was written by an older version of this program",
                             "open it once for writing, which keeps a copy and brings it up to date");
    }
    return Opened{std::move(db)};
}

}  // namespace

Result<void> check_is_ours(const std::filesystem::path& file, const std::string& item) {
    const auto not_ours = [&](std::string_view what) {
        return storage_error(item, what,
                             "it was not touched; put a record file of this program in its place, move it "
                             "away to begin anew, or start with --store and another name");
    };
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(file, ignored)) {
        return not_ours("it is not a file");
    }
    std::ifstream stream{file, std::ios::binary};
    if (!stream) {
        const int problem = errno;
        if (problem == EACCES) {
            return storage_error(
                item, "no permission to read it",
                "it was not touched; ask its owner for a copy, or start with --store and a file of your own");
        }
        return system_failure(item, problem);
    }
    std::array<char, 100> head{};
    stream.read(head.data(), head.size());
    constexpr std::string_view magic{"SQLite format 3\0", 16};
    const std::string_view read{head.data(), static_cast<std::size_t>(stream.gcount())};
    if (read.empty()) {
        return storage_error(
            item, "the file is empty, which a record file never is",
            "it was not touched; put a good copy in its place, or move it away to begin anew");
    }
    if (!read.starts_with(magic)) {
        return not_ours("it is not a record file");
    }
    if (read.size() < head.size()) {
        return storage_error(item,
                             "the file is damaged: it ends after " + std::to_string(read.size()) + " bytes",
                             "it was not touched; go back to a good copy");
    }
    std::uint32_t id = 0;
    for (const char byte : read.substr(68, 4)) {
        id = id << 8U | static_cast<unsigned char>(byte);
    }
    if (id != static_cast<std::uint32_t>(application_id)) {
        return not_ours("it is another program's database");
    }
    return boost::outcome_v2::success();
}

Result<RecordFile> RecordFile::open(const std::filesystem::path& file, const Clock& clock, OpenMode mode,
                                    std::span<const Migration> steps) {
    const std::string item = "record file " + file.string();
    if (open_in_this_process(file)) {
        return storage_error(item, "this program has it open already", "close it there, then try again");
    }
    if (mode == OpenMode::read_write) {
        WF_CHECK(finish_restore(file));
    }
    std::error_code ignored;
    if (!std::filesystem::exists(std::filesystem::symlink_status(file, ignored))) {
        if (mode == OpenMode::read_only) {
            return storage_error(item, "there is no such file", "check its name");
        }
        WF_CHECK(make_record_file(file, clock, steps, item));
    }
    WF_CHECK(check_is_ours(file, item));
    bool busy = false;
    auto opened = guarded(item, [&]() -> Result<Opened> {
        try {
            return mode == OpenMode::read_write ? open_to_write(file, clock, steps, item)
                                                : open_to_read(file, steps, item);
        } catch (const SQLite::Exception& cause) {
            busy = is_busy(cause);
            throw;
        }
    });
    if (busy) {
        return held(file, item);
    }
    WF_TRY(auto made, std::move(opened));
    return RecordFile{std::move(made.db), std::move(made.loss), mode, file, item};
}

}  // namespace wetfront::store_detail
