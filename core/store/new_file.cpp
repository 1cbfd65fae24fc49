// SPDX-License-Identifier: Apache-2.0
#include "store/new_file.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

#include "base/ids.h"
#include "store/draft.h"
#include "store/failure.h"
#include "store/record_file.h"
#include "store/whole_copy.h"

namespace wetfront::store_detail {
namespace {

std::string machine_name() {
    std::array<char, 256> name{};
    return ::gethostname(name.data(), name.size() - 1) == 0 ? name.data() : "";
}

/// Records or a journal whose main file is gone must not be mixed with a new one.
Result<void> refuse_orphans(const std::filesystem::path& file, const std::string& item) {
    for (const auto* suffix : {"-wal", "-journal"}) {
        std::error_code none;
        const auto size = std::filesystem::file_size(file.string() + suffix, none);
        if (!none && size > 0) {
            return storage_error(
                item, "it is missing, but its " + std::string{suffix} + " file is there",
                "put the file back beside it, or move the " + std::string{suffix} + " file away");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> fill(const std::filesystem::path& file, const Clock& clock, std::span<const Migration> steps) {
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    // A draft that a power cut spoils is never looked at again: one sync at the end is enough.
    db.exec("PRAGMA synchronous=OFF; PRAGMA journal_mode=MEMORY; PRAGMA foreign_keys=ON");
    db.exec("PRAGMA application_id=" + std::to_string(application_id));
    WF_CHECK(migrate(db, steps));
    const auto now = clock.wall_now();
    SQLite::Statement device{
        db, "INSERT INTO device (id, name, made_unix_ms, made_utc_offset_min) VALUES (?, ?, ?, ?)"};
    device.bind(1, IdSource{clock}.next().text);
    device.bind(2, printable(machine_name()));
    device.bind(3, now.unix_ms);
    device.bind(4, now.utc_offset_minutes);
    device.exec();
    db.exec("INSERT INTO this_device (only_row, device) SELECT 1, device FROM device");
    db.exec("PRAGMA journal_mode=WAL");
    return boost::outcome_v2::success();
}

}  // namespace

Result<void> make_folder(const std::filesystem::path& folder, const std::string& item) {
    std::error_code ignored;
    if (folder.empty() || std::filesystem::is_directory(folder, ignored)) {
        return boost::outcome_v2::success();
    }
    WF_CHECK(make_folder(folder.parent_path(), item));
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) {
        return system_failure(item, errno);
    }
    // A folder whose name is lost takes the file in it along.
    return sync(folder.parent_path(), item);
}

Result<void> make_record_file(const std::filesystem::path& file, const Clock& clock,
                              std::span<const Migration> steps, const std::string& item) {
    WF_CHECK(make_folder(file.parent_path(), item));
    WF_CHECK(refuse_orphans(file, item));
    const Draft draft{file};
    return guarded(item, [&]() -> Result<void> {
        WF_CHECK(draft.make(item));
        WF_CHECK(fill(draft.path(), clock, steps));
        WF_CHECK(draft.put_database_in_place(file, item));
        return boost::outcome_v2::success();
    });
}

}  // namespace wetfront::store_detail
