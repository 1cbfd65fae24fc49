// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <span>

#include "base/clock.h"
#include "base/result.h"

// Not for other folders.
namespace wetfront::store_detail {

/// Takes a file from one schema version to the next; runs inside a transaction and may throw. Number n of a
/// list makes version n (the first makes version 1 from nothing). A released one is never changed:
/// tests/data/store holds what it made.
using Migration = void (*)(SQLite::Database&);

[[nodiscard]] std::span<const Migration> released_migrations();

/// The schema version of an open file: PRAGMA user_version.
[[nodiscard]] int schema_version(const SQLite::Database& db);

/// Runs what is missing, each step in one transaction together with its version number. May throw; then the
/// file stands at the last version that was reached whole.
[[nodiscard]] Result<void> migrate(SQLite::Database& db, std::span<const Migration> steps);

/// Copies an open file to "<file>.before-v<version>-<date>" (mode 0600, "-2" and so on if that name is taken)
/// and proves that the copy is whole. May throw. Returns the copy's path.
[[nodiscard]] Result<std::filesystem::path> keep_copy(SQLite::Database& db, const std::filesystem::path& file,
                                                      int version, WallTime now);

// Each version in a file of its own: schema_1.cpp and so on.
void make_schema_1(SQLite::Database& db);
void make_schema_2(SQLite::Database& db);
void make_schema_3(SQLite::Database& db);
void make_schema_4(SQLite::Database& db);
void make_schema_5(SQLite::Database& db);

}  // namespace wetfront::store_detail
