// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>

#include <array>
#include <fstream>
#include <random>

#include "child.h"
#include "samples.h"
#include "store/record_file.h"
#include "support/data_table.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

constexpr std::array tables{"device", "this_device", "entry", "revision", "mark", "mark_change"};

class MigrationTest : public StoreTest {
protected:
    /// A closed record file as the first `versions` versions of the program leave it, with those rows.
    void make(std::size_t versions, const std::string& rows = {}) {
        SQLite::Database db{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec("PRAGMA foreign_keys=ON; PRAGMA application_id=" +
                std::to_string(store_detail::application_id));
        succeed(store_detail::migrate(db, store_detail::released_migrations().first(versions)));
        if (!rows.empty()) {
            db.exec("BEGIN;" + rows + "COMMIT");
        }
    }

    void make_version_1_with_rows() { make(1, data_text("store/schema_1_rows.sql")); }

    /// Every row of the table, as text, `columns` being a list for SELECT.
    std::vector<std::string> rows_of(const std::string& table, const std::string& columns) const {
        SQLite::Database db{file};
        SQLite::Statement ask{db, "SELECT " + columns + " FROM " + table + " ORDER BY rowid"};
        std::vector<std::string> rows;
        while (ask.executeStep()) {
            std::string row;
            for (int column = 0; column < ask.getColumnCount(); ++column) {
                row += ask.getColumn(column).getString() + "|";
            }
            rows.push_back(row);
        }
        return rows;
    }

    std::string columns_of(const std::string& table) const {
        SQLite::Database db{file};
        SQLite::Statement ask{db, "SELECT name FROM pragma_table_info('" + table + "')"};
        std::string columns;
        while (ask.executeStep()) {
            columns += (columns.empty() ? "" : ", ") + ask.getColumn(0).getString();
        }
        return columns;
    }
};

TEST_F(MigrationTest, the_released_schemas_have_not_changed) {
    ASSERT_EQ(store_detail::released_migrations().size(), 5U);
    for (std::size_t version = 1; version <= 5; ++version) {
        std::filesystem::remove(file);
        make(version);
        EXPECT_EQ(schema_text(file), data_text("store/schema_" + std::to_string(version) + ".sql"));
    }
}

TEST_F(MigrationTest, a_file_of_version_1_keeps_every_row) {
    make_version_1_with_rows();
    std::vector<std::string> columns;
    std::vector<std::vector<std::string>> before;
    for (const auto* table : tables) {
        columns.push_back(columns_of(table));
        before.push_back(rows_of(table, columns.back()));
        ASSERT_FALSE(before.back().empty()) << table;
    }
    { const auto store = open(); }
    for (std::size_t i = 0; i < tables.size(); ++i) {
        EXPECT_EQ(rows_of(tables[i], columns[i]), before[i]) << tables[i];
    }
    EXPECT_EQ(schema_text(file), data_text("store/schema_5.sql"));
}

TEST_F(MigrationTest, the_migrated_file_fits_together) {
    make_version_1_with_rows();
    { const auto store = open(); }
    SQLite::Database db{file};
    EXPECT_EQ(db.execAndGet("PRAGMA integrity_check").getString(), "ok");
    EXPECT_EQ(SQLite::Statement(db, "PRAGMA foreign_key_check").executeStep(), false);
}

TEST_F(MigrationTest, records_of_version_1_read_as_they_were_written) {
    make_version_1_with_rows();
    const auto store = open();
    // The rows were written from these: the farm's customer and the house's first length changed since.
    EXPECT_EQ(value_of(store.farm(Id{"farm-1"})).customer, "Orsolya Tamblyn");
    EXPECT_EQ(value_of(store.house(Id{"house-1"})).banks.at(0).length->text(), "50 m");
    const auto visit = value_of(store.visit_file(Id{"visit-1"}));
    EXPECT_TRUE(visit.visit.is_signed());
    ASSERT_EQ(visit.visit.marks.size(), 4U);
    EXPECT_TRUE(visit.visit.marks[2].undone);
    EXPECT_EQ(visit.visit.marks[1].stamp_error_ns, 250'000);
    for (const auto& mark : visit.visit.marks) {
        EXPECT_FALSE(mark.proof) << mark.id.text;
    }
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-2"});
}

TEST_F(MigrationTest, the_rules_of_the_journal_hold_after_it) {
    make_version_1_with_rows();
    {
        auto store = open();
        EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, sample_mark("late", MarkKind::pump_stop))),
                    HasSubstr("frozen"));
        auto house = value_of(store.house(Id{"house-1"}));
        house.name = "House 7";
        succeed(store.save(house));
    }
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    for (const auto* sql : {"DELETE FROM revision", "UPDATE revision SET body = '[]'", "DELETE FROM mark",
                            "UPDATE mark SET proof = 1",
                            "INSERT INTO revision (entry, id, kind, record, number, whole, body, name) "
                            "VALUES (1, 'x', 'rumour', "
                            "'r', 1, 1, '[]', 'n')"}) {
        EXPECT_THROW(db.exec(sql), SQLite::Exception) << sql;
    }
}

TEST_F(MigrationTest, the_copy_kept_is_of_version_1_with_all_its_rows) {
    make_version_1_with_rows();
    const auto before = rows_of("revision", "id, body");
    { const auto store = open(); }
    file = file.string() + ".before-v5-2026-07-01";
    EXPECT_EQ(schema_text(file), data_text("store/schema_1.sql"));
    EXPECT_EQ(rows_of("revision", "id, body"), before);
}

TEST_F(MigrationTest, a_program_killed_while_it_migrates_leaves_every_record) {
    make_version_1_with_rows();
    const auto original = bytes_of(file);
    const auto before = rows_of("revision", "id, body");
    std::mt19937 random{13};
    for (int round = 0; round < 20; ++round) {
        file = folder.path() / std::to_string(round);
        std::ofstream{file, std::ios::binary} << original;
        Child migrator{[&](const Child::Say& say) {
            say("begin");
            const auto store = open();
            say("migrated");
        }};
        ASSERT_EQ(migrator.line(), "begin");
        for (auto turns = random() % 4'000'000; turns > 0; --turns) {
            [[maybe_unused]] volatile bool moment = true;
        }
        migrator.kill();
        { const auto store = open(); }
        EXPECT_EQ(rows_of("revision", "id, body"), before) << round;
        EXPECT_EQ(schema_text(file), data_text("store/schema_5.sql")) << round;
    }
}

TEST_F(MigrationTest, a_file_whose_records_do_not_fit_together_stays_as_it_was) {
    make_version_1_with_rows();
    {
        SQLite::Database db{file, SQLite::OPEN_READWRITE};
        db.exec("INSERT INTO mark_change (entry, mark, undone) VALUES (1, 'nowhere', 1)");
    }
    const auto before = rows_of("revision", "id, body");
    EXPECT_FALSE(Store::open(file, clock).has_value());
    EXPECT_EQ(schema_text(file), data_text("store/schema_1.sql"));
    EXPECT_EQ(rows_of("revision", "id, body"), before);
}

}  // namespace
}  // namespace wetfront::test
