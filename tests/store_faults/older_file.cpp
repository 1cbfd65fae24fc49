// SPDX-License-Identifier: Apache-2.0
#include "older_file.h"

#include <SQLiteCpp/Database.h>

#include "core/store/samples.h"
#include "store/migration.h"
#include "store/record_file.h"
#include "support/data_table.h"

namespace wetfront::test {

void make_older_file(const std::filesystem::path& file, std::size_t version) {
    SQLite::Database db{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0, "unix"};
    db.exec("PRAGMA synchronous=OFF; PRAGMA foreign_keys=ON; PRAGMA application_id=" +
            std::to_string(store_detail::application_id));
    const auto steps = store_detail::released_migrations();
    succeed(store_detail::migrate(db, steps.first(1)));
    db.exec("BEGIN;" + data_text("store/schema_1_rows.sql") + "COMMIT");
    succeed(store_detail::migrate(db, steps.first(version)));
    db.exec("PRAGMA journal_mode=WAL");
}

std::vector<std::size_t> older_versions() {
    return {1, store_detail::released_migrations().size() - 1};
}

}  // namespace wetfront::test
