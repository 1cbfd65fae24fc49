// SPDX-License-Identifier: Apache-2.0
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <regex>
#include <string>
#include <system_error>
#include <utility>

#include "store/backup.h"
#include "store/backup_name.h"
#include "store/draft.h"
#include "store/failure.h"
#include "store/holder.h"
#include "store/record_file.h"
#include "store/unfinished_restore.h"
#include "store/whole_copy.h"

namespace wetfront {
namespace store_detail {
namespace {

constexpr std::string_view waiting = ".restoring-";

/// The copy of a restore that was decided and not ended.
std::optional<std::filesystem::path> waiting_for(const std::filesystem::path& record_file) {
    const std::string begin = record_file.filename().string() + std::string{waiting};
    std::error_code none;
    const auto folder = record_file.parent_path();
    for (const auto& entry :
         std::filesystem::directory_iterator{folder.empty() ? std::filesystem::path{"."} : folder, none}) {
        const auto name = entry.path().filename().string();
        if (!name.starts_with(begin)) {
            continue;
        }
        // Nothing but the whole copy has a name that ends with the time: neither its draft nor a journal of
        // that.
        static const std::regex time{R"(\d{4}-\d{2}-\d{2}-\d{4}(-\d+)?)"};
        if (std::regex_match(name.substr(begin.size()), time)) {
            return folder / name;
        }
    }
    return std::nullopt;
}

constexpr std::array journals_first{"-shm", "-wal", ""};

constexpr std::string_view replaced = ".replaced-";

/// Where the record file goes whose place that copy takes.
std::filesystem::path replaced_by(const std::filesystem::path& copy) {
    std::string name = copy.string();
    return name.replace(name.rfind(waiting), waiting.size(), replaced);
}

bool is_there(const std::filesystem::path& file) {
    struct stat about {};
    return ::lstat(file.c_str(), &about) == 0;
}

bool any_is_there(const std::filesystem::path& file) {
    return std::ranges::any_of(journals_first,
                               [&](const char* suffix) { return is_there(file.string() + suffix); });
}

/// Moves the file with its journals, those that are there, to names that are free. Its journals go first: a
/// record file beside a -wal that belongs to another would be mixed with it. 0, or what went wrong.
int move_with_journals(const std::filesystem::path& from, const std::filesystem::path& to) {
    for (const auto* suffix : journals_first) {
        if (::rename((from.string() + suffix).c_str(), (to.string() + suffix).c_str()) != 0 &&
            errno != ENOENT) {
            return errno;
        }
    }
    return 0;
}

}  // namespace

std::filesystem::path waiting_copy(const std::filesystem::path& record_file, WallTime now) {
    for (int number = 1;; ++number) {
        // What an earlier restore of this minute replaced may be the only place of the latest entries.
        const std::string when =
            name_part(now) + (number == 1 ? std::string{} : "-" + std::to_string(number));
        std::filesystem::path copy = record_file.string() + std::string{waiting} + when;
        if (!any_is_there(replaced_by(copy))) {
            return copy;
        }
    }
}

Result<std::optional<std::filesystem::path>> finish_restore(const std::filesystem::path& record_file) {
    const auto found = waiting_for(record_file);
    if (!found) {
        return std::optional<std::filesystem::path>{};
    }
    const std::string item = "record file " + record_file.string() + ", restoring";
    if (const auto holder = locked_by(record_file)) {
        return storage_error(item, "it is open in " + *holder, "close it there, then try again");
    }
    const auto moved_to = replaced_by(*found);
    if (const int problem = move_with_journals(record_file, moved_to); problem != 0) {
        return system_failure(item, problem);
    }
    WF_CHECK(sync(record_file.parent_path(), item));
    if (::rename(found->c_str(), record_file.c_str()) != 0) {
        return system_failure(item, errno);
    }
    WF_CHECK(sync(record_file.parent_path(), item));
    std::error_code ignored;
    return std::filesystem::exists(moved_to, ignored) ? std::optional{moved_to} : std::nullopt;
}

}  // namespace store_detail

namespace {

using namespace store_detail;

std::string item_of(const std::filesystem::path& backup) {
    return "backup " + backup.string();
}

/// The file and what its -wal holds, copied to `target` (0600) as one file that was read through.
Result<RecordContent> copy_joined(const std::filesystem::path& backup, const std::filesystem::path& target) {
    const std::string item = item_of(backup);
    WF_CHECK(check_is_ours(backup, item));
    for (const auto* suffix : {"", "-wal"}) {
        const std::filesystem::path from = backup.string() + suffix;
        const std::filesystem::path to = target.string() + suffix;
        std::error_code problem;
        if (*suffix != '\0' && !std::filesystem::exists(from, problem)) {
            continue;
        }
        if (!std::filesystem::copy_file(from, to, problem) || ::chmod(to.c_str(), 0600) != 0) {
            return system_failure(item, problem ? problem.value() : errno);
        }
    }
    return guarded(item, [&]() -> Result<RecordContent> {
        // Joins the -wal to the copy.
        SQLite::Database db{target, SQLite::OPEN_READWRITE};
        db.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA trusted_schema=OFF; PRAGMA journal_mode=DELETE");
        WF_CHECK(check_whole(db, item));
        const int version = schema_version(db);
        if (version > static_cast<int>(released_migrations().size())) {
            return storage_error(item, "it was written by a newer version of this program",
                                 "update this program, then try again");
        }
        return content_of(db);
    });
}

/// A folder for one copy, gone with it.
class Workplace {
public:
    static Result<Workplace> make() {
        std::error_code none;
        std::string name = (std::filesystem::temp_directory_path(none) / "wetfront-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) {
            return system_failure("folder for a copy", errno);
        }
        return Workplace{name};
    }
    Workplace(Workplace&& other) noexcept : path_{std::exchange(other.path_, {})} {}
    Workplace& operator=(Workplace&&) = delete;
    ~Workplace() {
        std::error_code ignored;
        if (!path_.empty()) {
            std::filesystem::remove_all(path_, ignored);
        }
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    explicit Workplace(std::filesystem::path path) : path_{std::move(path)} {}
    std::filesystem::path path_;
};

Result<void> check_not_open(const std::filesystem::path& record_file) {
    const std::string item = "record file " + record_file.string();
    if (open_in_this_process(record_file)) {
        return storage_error(item, "this program has it open", "close it there, then try again");
    }
    if (const auto holder = locked_by(record_file)) {
        return storage_error(item, "it is open in " + *holder, "close it there, then try again");
    }
    return boost::outcome_v2::success();
}

/// What was entered behind the copy's last entry may be on other machines by now, under this device's
/// numbers: from here on the file is written by a device of its own.
Result<void> go_on_as_another_device(const std::filesystem::path& copy, const Clock& clock,
                                     const std::string& item) {
    return guarded(item, [&]() -> Result<void> {
        SQLite::Database db{copy, SQLite::OPEN_READWRITE};
        db.exec("PRAGMA locking_mode=EXCLUSIVE; PRAGMA trusted_schema=OFF; PRAGMA foreign_keys=ON");
        SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement device{db,
                                 "INSERT INTO device (id, name, made_unix_ms, made_utc_offset_min) SELECT ?, "
                                 "name, ?, ? FROM device "
                                 "WHERE device = (SELECT device FROM this_device)"};
        const auto now = clock.wall_now();
        device.bind(1, IdSource{clock}.next().text);
        device.bind(2, now.unix_ms);
        device.bind(3, now.utc_offset_minutes);
        device.exec();
        db.exec("UPDATE this_device SET device = last_insert_rowid()");
        transaction.commit();
        return boost::outcome_v2::success();
    });
}

/// After a restore that failed once it was decided: what was moved goes back to its place and the copy away.
/// Where that fails too, the error says that the next start ends what was begun.
Error taken_back(const std::filesystem::path& record_file, const std::filesystem::path& waiting, Error why) {
    if (is_there(waiting) && move_with_journals(replaced_by(waiting), record_file) == 0 &&
        ::unlink(waiting.c_str()) == 0) {
        return why;
    }
    why.accepted = "the restore was begun, and the next start ends it; nothing is lost";
    return why;
}

}  // namespace

Result<void> check_can_be_replaced(const std::filesystem::path& record_file) {
    WF_CHECK(check_not_open(record_file));
    const auto folder = record_file.parent_path();
    if (::faccessat(AT_FDCWD, folder.empty() ? "." : folder.c_str(), W_OK, AT_EACCESS) != 0) {
        return system_failure("folder " + folder.string(), errno);
    }
    return boost::outcome_v2::success();
}

Result<RecordContent> read_backup(const std::filesystem::path& backup) {
    WF_TRY(const auto place, Workplace::make());
    return copy_joined(backup, place.path() / "copy");
}

Result<std::optional<std::filesystem::path>> restore(const std::filesystem::path& backup,
                                                     const std::filesystem::path& record_file,
                                                     const Clock& clock) {
    WF_CHECK(check_not_open(record_file));
    WF_CHECK(finish_restore(record_file));
    const auto waiting = waiting_copy(record_file, clock.wall_now());
    {
        const Draft draft{waiting};
        WF_CHECK(copy_joined(backup, draft.path()));
        WF_CHECK(go_on_as_another_device(draft.path(), clock, item_of(backup)));
        WF_CHECK(sync(draft.path(), item_of(backup)));
        if (::rename(draft.path().c_str(), waiting.c_str()) != 0) {
            return system_failure("record file " + record_file.string(), errno);
        }
    }
    const auto decided = sync(record_file.parent_path(), item_of(backup));
    auto finished =
        decided ? finish_restore(record_file) : Result<std::optional<std::filesystem::path>>{decided.error()};
    return finished ? finished : taken_back(record_file, waiting, finished.error());
}

}  // namespace wetfront
