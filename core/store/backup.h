// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <vector>

#include "store/store.h"

namespace wetfront {

/// A copy of a record file, by its name alone: "records-2026-07-01-1004.wetfront".
struct Backup {
    std::filesystem::path file;
    std::string day;    ///< "2026-07-01", by the clock of the machine that made it
    std::string clock;  ///< "10:04", by the same

    friend bool operator==(const Backup&, const Backup&) = default;
};

/// The backups of that record file in a folder, newest day first; copies that are not whole yet, and files of
/// other names, are not among them. None where the folder is not there.
[[nodiscard]] std::vector<Backup> backups_in(const std::filesystem::path& folder,
                                             const std::filesystem::path& record_file);

/// Where the copies of every day are kept: "backups" beside the record file.
[[nodiscard]] std::filesystem::path backup_folder_of(const std::filesystem::path& record_file);

/// One backup a day: makes it if there is none of today yet (none returned otherwise), then removes what is
/// older than the last seven days that have one, keeping the newest of each of the last twelve months. The
/// one just made always stays, whatever the clock says. What was in the folder before is only removed once
/// the new one has been read back.
[[nodiscard]] Result<std::optional<std::filesystem::path>> back_up_today(Store& store,
                                                                         const std::filesystem::path& folder,
                                                                         const Clock& clock);

/// Reads all of a backup (integrity, and that its records fit together). Errors: not a record file, damaged,
/// from a newer version of the program. Touches nothing, neither the file nor what stands beside it.
[[nodiscard]] Result<RecordContent> read_backup(const std::filesystem::path& backup);

/// Whether restore() could put a copy in the place of the record file. Errors: it is open in a program (who);
/// its folder cannot be written to.
[[nodiscard]] Result<void> check_can_be_replaced(const std::filesystem::path& record_file);

/// Puts a copy of the backup, with what its -wal file holds, in the place of the record file. What was there
/// stays beside it as "<file>.replaced-<time>", with its own -wal and -shm, whatever state it is in; the
/// backup itself stays as it is. What is entered from then on counts as another device's: numbers behind the
/// copy's may have gone to other machines. Returns where the replaced file is now; none if there was none.
///
/// From the moment the copy is whole a crash changes nothing: the next open() ends what was begun. Errors:
/// those of read_backup(); the record file is open in a program (who); disk full, no permission; then the
/// record file is as it was. No Store of this process may have the file open.
[[nodiscard]] Result<std::optional<std::filesystem::path>> restore(const std::filesystem::path& backup,
                                                                   const std::filesystem::path& record_file,
                                                                   const Clock& clock);

}  // namespace wetfront
