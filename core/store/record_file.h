// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>

#include "store/migration.h"
#include "store/store.h"

// Not for other folders.
namespace wetfront::store_detail {

/// Written into the head of every record file of ours (PRAGMA application_id): the letters "WfRc".
constexpr std::int32_t application_id = 0x57665263;

/// Bad luck or another program's file: an error that says so, from its first bytes alone. SQLite is not
/// asked, which might repair another program's file (sqlite.org/fileformat2.html, 1.3).
[[nodiscard]] Result<void> check_is_ours(const std::filesystem::path& file, const std::string& item);

/// The one connection to a record file, and the lock on it for as long as it lives.
///
/// For writing: WAL, synchronous=FULL, foreign keys on, locking_mode=EXCLUSIVE, taken before open() returns.
/// Read-only: a shared lock, so that nobody writes meanwhile; the file is not touched.
class RecordFile {
public:
    [[nodiscard]] static Result<RecordFile> open(const std::filesystem::path& file, const Clock& clock,
                                                 OpenMode mode,
                                                 std::span<const Migration> steps = released_migrations());

    [[nodiscard]] SQLite::Database& database() { return db_; }
    [[nodiscard]] const SQLite::Database& database() const { return db_; }
    [[nodiscard]] OpenMode mode() const { return mode_; }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    /// What errors call it: "record file larkrise.wetfront".
    [[nodiscard]] const std::string& item() const { return item_; }
    /// See Store::loss().
    [[nodiscard]] const std::optional<Error>& loss() const { return loss_; }

private:
    RecordFile(SQLite::Database db, std::optional<Error> loss, OpenMode mode, std::filesystem::path path,
               std::string item)
        : db_{std::move(db)},
          loss_{std::move(loss)},
          mode_{mode},
          path_{std::move(path)},
          item_{std::move(item)} {}

    SQLite::Database db_;
    std::optional<Error> loss_;
    OpenMode mode_;
    std::filesystem::path path_;
    std::string item_;
};

}  // namespace wetfront::store_detail
