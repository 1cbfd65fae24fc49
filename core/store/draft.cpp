// SPDX-License-Identifier: Apache-2.0
#include "store/draft.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <fcntl.h>
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <cstdio>
#include <regex>
#include <system_error>

#include "store/backup_name.h"
#include "store/failure.h"
#include "store/whole_copy.h"

namespace wetfront::store_detail {
namespace {

constexpr std::string_view unfinished = ".unfinished-";

/// A number that was given away again keeps its draft for this time. This process's own number is on drafts
/// of an earlier one: it builds none while it opens a file.
bool is_gone(const std::string& process) {
    pid_t number = 0;
    const auto* end = process.data() + process.size();
    const auto [stop, problem] = std::from_chars(process.data(), end, number);
    if (problem != std::errc{} || stop != end || number <= 0) {
        return false;
    }
    return number == ::getpid() || (::kill(number, 0) != 0 && errno == ESRCH);
}

bool is_file_of_mine(const std::filesystem::path& path) {
    struct stat found {};
    return ::lstat(path.c_str(), &found) == 0 && S_ISREG(found.st_mode) && found.st_uid == ::geteuid();
}

template <class Ours>
void remove_left_in(const std::filesystem::path& folder, Ours&& is_ours) {
    static const std::regex shape{R"((.+)\.unfinished-(\d+)(-wal|-shm|-journal)?)"};
    std::error_code end;
    for (std::filesystem::directory_iterator at{folder, end}, none; !end && at != none; at.increment(end)) {
        const std::string name = at->path().filename().string();
        std::smatch parts;
        if (std::regex_match(name, parts, shape) && is_ours(parts[1].str()) && is_gone(parts[2].str()) &&
            is_file_of_mine(at->path())) {
            ::unlink(at->path().c_str());
        }
    }
}

}  // namespace

Draft::Draft(const std::filesystem::path& place)
    : path_{place.string() + std::string{unfinished} + std::to_string(::getpid())} {
    remove_with_journals(path_);
}

Draft::~Draft() {
    remove_with_journals(path_);
}

Result<void> Draft::make(const std::string& item) const {
    const int descriptor = ::open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0) {
        const int problem = errno;
        if (problem == EEXIST) {
            return storage_error(item, "what is left of an earlier attempt cannot be removed",
                                 "nothing was changed; remove " + path_.string() + ", then try again");
        }
        return system_failure(item, problem);
    }
    ::close(descriptor);
    return boost::outcome_v2::success();
}

Result<bool> Draft::put_database_in_place(const std::filesystem::path& file, const std::string& item) const {
    {
        // Asked anew: a connection that wrote it may know better than the disk.
        SQLite::Database db{path_, SQLite::OPEN_READWRITE};
        db.exec("PRAGMA locking_mode=EXCLUSIVE");
        const std::string told = db.execAndGet("PRAGMA integrity_check").getString();
        // SQLITE_NOMEM at a page ends up among the faults of the file.
        if (told.find("error code=7") != std::string::npos ||
            told.find("error code 7") != std::string::npos) {
            return storage_error(item, "memory ran out",
                                 "nothing was changed; close other programs, then try again");
        }
        if (told != "ok") {
            return storage_error(item, "what was written to the disk reads back otherwise",
                                 "nothing was changed; check the disk, then try again or save elsewhere");
        }
    }
    return put_in_place(file, item);
}

Result<bool> Draft::put_in_place(const std::filesystem::path& file, const std::string& item) const {
    WF_CHECK(sync(path_, item));
    // Never over a file that is there. File systems of sticks may not know the flag and say EINVAL.
    if (::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, file.c_str(), RENAME_NOREPLACE) != 0 &&
        !(errno == EINVAL && ::access(file.c_str(), F_OK) != 0 &&
          ::rename(path_.c_str(), file.c_str()) == 0)) {
        const int problem = errno;
        if (problem == EEXIST || (problem == EINVAL && ::access(file.c_str(), F_OK) == 0)) {
            return false;
        }
        return system_failure(item, problem);
    }
    WF_CHECK(sync(file.parent_path(), item));
    return true;
}

void remove_left_drafts(const std::filesystem::path& record_file) {
    const auto folder = record_file.parent_path();
    remove_left_in(folder.empty() ? std::filesystem::path{"."} : folder, [&](const std::string& place) {
        const std::string name = record_file.filename().string();
        return place == name || place.starts_with(name + ".before-v") ||
               place.starts_with(name + ".restoring-");
    });
    remove_left_in(backup_folder_of(record_file),
                   [&](const std::string& place) { return as_backup(place, record_file).has_value(); });
}

void remove_with_journals(const std::filesystem::path& file) {
    for (const auto* suffix : {"", "-wal", "-shm", "-journal"}) {
        ::unlink((file.string() + suffix).c_str());
    }
}

}  // namespace wetfront::store_detail
