// SPDX-License-Identifier: Apache-2.0
#include "machines.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include "store/verify.h"

namespace wetfront::test {
namespace {

void add_rows(std::string& text, SQLite::Database& db, const std::string& question) {
    SQLite::Statement rows{db, question};
    while (rows.executeStep()) {
        for (int column = 0; column < rows.getColumnCount(); ++column) {
            text += rows.getColumn(column).getString() + "|";
        }
        text += "\n";
    }
}

/// Every column but the key of its entry, which is a matter of the order of arrival.
std::string columns_of(SQLite::Database& db, const std::string& table) {
    SQLite::Statement rows{db, "SELECT group_concat('t.' || name) FROM pragma_table_info('" + table +
                                   "') WHERE name NOT IN ('entry', 'device', 'receiver')"};
    rows.executeStep();
    return rows.getColumn(0).getString();
}

}  // namespace

std::string Machine::contents() {
    return closed([](const std::filesystem::path& path) {
        SQLite::Database db{path};
        std::string text;
        add_rows(text, db,
                 "SELECT id, name, made_unix_ms FROM device WHERE device IN (SELECT device FROM entry UNION "
                 "SELECT device FROM aside) ORDER BY id");
        add_rows(
            text, db,
            "SELECT d.id, e.seq, e.unix_ms, e.utc_offset_min, hex(e.hash) FROM entry AS e JOIN device AS d "
            "USING (device) ORDER BY d.id, e.seq");
        for (const std::string table : {"revision", "mark", "mark_change", "removal", "sheet", "picture"}) {
            add_rows(text, db,
                     "SELECT '" + table + "', d.id, e.seq, " + columns_of(db, table) + " FROM " + table +
                         " AS t JOIN entry AS e ON e.entry = t.entry JOIN device AS d ON d.device = e.device "
                         "ORDER BY d.id, e.seq");
        }
        add_rows(text, db,
                 "SELECT 'aside', d.id, " + columns_of(db, "aside") +
                     " FROM aside AS t JOIN device AS d ON d.device = t.device ORDER BY d.id, t.seq");
        add_rows(text, db, "SELECT 'present', kind, record, id FROM head ORDER BY kind, record, id");
        add_rows(text, db, "SELECT 'undone', id, undone FROM present_mark ORDER BY id");
        add_rows(text, db, "SELECT 'removed', kind, record FROM removed ORDER BY kind, record");
        return text;
    });
}

StoreVerdict Machine::verdict() {
    return closed([&](const std::filesystem::path& path) { return value_of(verify_store(path, clock)); });
}

std::string wrong_in(const StoreVerdict& verdict) {
    std::string text;
    for (const auto& check : verdict.checks) {
        if (check.wrong > 0) {
            text += check.name + ": " + check.first_wrong + "\n";
        }
    }
    return text;
}

}  // namespace wetfront::test
