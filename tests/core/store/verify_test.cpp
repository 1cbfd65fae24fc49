// SPDX-License-Identifier: Apache-2.0
#include "store/verify.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <memory>
#include <random>

#include "samples.h"
#include "store/migration.h"
#include "support/data_table.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

constexpr std::string_view kept_pdf = "%PDF-1.4 a sheet that was signed \0\xFF with any bytes";

class VerifyTest : public StoreTest {
protected:
    /// Every kind of entry at least once: 3 records, 2 marks, one undone, an entry with undo and redo, a
    /// sheet, a house and a template removed, the house brought back.
    void fill() {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 9)));
        succeed(store.set_undone(Id{"m2"}, true));
        succeed(store.set_undone(Id{"m1"}, true));
        auto visit = sample_visit();
        visit.open_points = {"Später: \"valve\""};
        succeed(store.save(visit));
        EXPECT_TRUE(value_of(store.undo(visit.id)));
        EXPECT_TRUE(value_of(store.redo(visit.id)));
        visit.signatures = {sample_signature()};
        succeed(store.keep_sheet(visit, kept_pdf));
        succeed(store.save(generic_template(TimerKind::trimmed)));
        succeed(
            store.set_removed(RecordKind::setting_template, generic_template(TimerKind::trimmed).id, true));
        succeed(store.set_removed(RecordKind::house, Id{"house-1"}, true));
        succeed(store.set_removed(RecordKind::house, Id{"house-1"}, false));
    }
    static constexpr std::int64_t entries = 16;

    /// What someone does to the closed file who first takes its rules away and then puts them back.
    void tamper(const std::string& sql) {
        SQLite::Database db{file, SQLite::OPEN_READWRITE};
        std::string rules;
        for (SQLite::Statement rule{db, "SELECT sql FROM sqlite_schema WHERE type = 'trigger'"};
             rule.executeStep();) {
            rules += rule.getColumn(0).getString() + ";";
        }
        for (const auto* table :
             {"entry", "revision", "mark", "mark_change", "removal", "sheet", "picture"}) {
            for (const auto* rule : {"changed", "removed"}) {
                db.exec(std::string{"DROP TRIGGER "} + table + "_is_not_" + rule);
            }
        }
        db.exec(sql);
        SQLite::Statement left{db, "SELECT name FROM sqlite_schema WHERE type = 'trigger'"};
        std::string others;
        while (left.executeStep()) {
            others += "DROP TRIGGER " + left.getColumn(0).getString() + ";";
        }
        left.reset();
        db.exec(others + rules);
    }

    [[nodiscard]] StoreVerdict verdict(const std::optional<std::string>& known = {}) {
        return value_of(verify_store(file, clock, known));
    }
    [[nodiscard]] static StoreCheck of(const StoreVerdict& verdict, const std::string& name) {
        for (const auto& check : verdict.checks) {
            if (check.name == name) {
                return check;
            }
        }
        ADD_FAILURE() << "no check " << name;
        return {};
    }
    static std::string wrong_in(const StoreVerdict& verdict) {
        std::string names;
        for (const auto& check : verdict.checks) {
            if (check.wrong > 0) {
                names += check.name + " ";
            }
        }
        return names;
    }
};

std::string said_by(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe{::popen((command + " 2>&1").c_str(), "r"), ::pclose};
    std::string said;
    std::array<char, 256> part{};
    while (std::fgets(part.data(), part.size(), pipe.get()) != nullptr) {
        said += part.data();
    }
    return said;
}

TEST_F(VerifyTest, a_file_with_every_kind_of_entry_is_sound_and_each_check_says_how_much_it_saw) {
    fill();
    const auto result = verdict();
    EXPECT_EQ(wrong_in(result), "");
    EXPECT_TRUE(result.sound());
    EXPECT_EQ(of(result, "numbers").checked, entries);
    EXPECT_EQ(of(result, "chain").checked, entries);
    EXPECT_EQ(of(result, "references").checked, entries);
    EXPECT_EQ(of(result, "revisions").checked, 8);
    EXPECT_EQ(of(result, "marks").checked, 2);
    EXPECT_EQ(of(result, "sheets").checked, 1);
    EXPECT_GT(of(result, "file").checked, 10);
    ASSERT_EQ(result.heads.size(), 1U);
    EXPECT_EQ(result.heads[0].number, entries);
}

TEST_F(VerifyTest, a_view_or_rule_that_reads_otherwise_is_told) {
    fill();
    for (const auto* change :
         {"UPDATE sqlite_schema SET sql = replace(sql, 'removed = 1', 'removed = 0') WHERE name = 'removed'",
          "DELETE FROM sqlite_schema WHERE name = 'sheet_is_not_changed'",
          "INSERT INTO sqlite_schema SELECT type, 'more', 'more', rootpage, replace(sql, 'VIEW removed', "
          "'VIEW more') "
          "FROM sqlite_schema WHERE name = 'removed'"}) {
        const StoreFolder other;
        std::filesystem::copy_file(file, other.file());
        {
            SQLite::Database db{other.file(), SQLite::OPEN_READWRITE};
            db.exec("PRAGMA writable_schema=ON");
            ASSERT_EQ(db.exec(change), 1) << change;
        }
        EXPECT_EQ(wrong_in(value_of(verify_store(other.file(), clock))), "schema ") << change;
    }
}

TEST_F(VerifyTest, another_program_works_out_the_same_chain_from_its_description) {
    fill();
    const auto head = verdict().heads.at(0);
    EXPECT_EQ(said_by("/usr/bin/python3 " CHAIN_SCRIPT " " + file.string()),
              std::to_string(entries) + " " + head.hash + "\n");
}

TEST_F(VerifyTest, a_file_of_version_1_has_a_whole_chain_after_its_migration) {
    {
        SQLite::Database db{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec("PRAGMA foreign_keys=ON; PRAGMA application_id=1466323555");
        succeed(store_detail::migrate(db, store_detail::released_migrations().first(1)));
        db.exec("BEGIN;" + data_text("store/schema_1_rows.sql") + "COMMIT");
    }
    { const auto store = open(); }
    const auto result = verdict();
    EXPECT_EQ(wrong_in(result), "");
    const auto head = result.heads.at(0);
    EXPECT_GT(head.number, 10);
    EXPECT_EQ(said_by("/usr/bin/python3 " CHAIN_SCRIPT " " + file.string()),
              std::to_string(head.number) + " " + head.hash + "\n");
}

TEST_F(VerifyTest, the_same_entries_on_another_device_have_other_hashes) {
    fill();
    const auto first = verdict().heads.at(0);
    file = folder.path() / "other";
    fill();
    EXPECT_NE(verdict().heads.at(0).hash, first.hash);
}

TEST_F(VerifyTest, one_changed_byte_of_a_signed_sheet_is_told) {
    fill();
    auto bytes = bytes_of(file);
    const auto place = bytes.find("that was signed");
    ASSERT_NE(place, std::string::npos);
    ASSERT_EQ(bytes.find("that was signed", place + 1), std::string::npos);
    bytes[place] ^= 1;
    std::ofstream{file, std::ios::binary} << bytes;
    const auto result = verdict();
    EXPECT_EQ(wrong_in(result), "chain sheets ");
    const auto sheets = of(result, "sheets");
    EXPECT_THAT(sheets.first_wrong, HasSubstr("visit-1"));
    ASSERT_TRUE(sheets.first_entry);
    EXPECT_EQ(sheets.first_entry->number, 12);
    EXPECT_EQ(of(result, "chain").first_entry->number, 12);
    const auto store = open(OpenMode::read_only);
    EXPECT_THAT(error_of(store.signed_sheet(Id{"visit-1"})), HasSubstr("not what was signed"));
}

struct Tampering {
    const char* what;
    const char* sql;
    const char* wrong;
    std::int64_t first;  ///< number of the first entry that the chain finds wrong; 0: none
};

TEST_F(VerifyTest, whatever_is_changed_taken_out_or_put_in_is_found_at_its_entry) {
    fill();
    const auto good = bytes_of(file);
    const std::array<Tampering, 13> all{{
        {"time of an entry", "UPDATE entry SET unix_ms = unix_ms + 1 WHERE seq = 5", "chain ", 5},
        {"zone of an entry", "UPDATE entry SET utc_offset_min = 60 WHERE seq = 2", "chain ", 2},
        {"a hash", "UPDATE entry SET hash = zeroblob(32) WHERE seq = 3", "chain ", 3},
        {"time of a mark", "UPDATE mark SET boot_ns = boot_ns + 1 WHERE id = 'm2'", "chain ", 5},
        {"what a mark is not", "UPDATE mark SET bank = 'bank-1' WHERE id = 'm1'", "chain ", 4},
        {"an undone mark", "UPDATE mark_change SET undone = 0 WHERE mark = 'm1'", "chain ", 7},
        {"a mark of no visit", "UPDATE mark SET visit = 'nobody' WHERE id = 'm2'", "chain marks ", 5},
        {"a removal", "UPDATE removal SET removed = 0 WHERE kind = 'template'", "chain ", 14},
        {"a name", "UPDATE revision SET name = 'Other' WHERE kind = 'farm'", "chain ", 1},
        {"what is restored",
         "UPDATE revision SET restores = parent WHERE restores IS NOT NULL AND number = 4",
         "chain revisions ", 10},
        {"an entry taken out of the middle",
         "DELETE FROM mark_change WHERE mark = 'm2'; DELETE FROM entry WHERE seq = 6", "numbers chain ", 7},
        {"content taken out", "DELETE FROM mark_change WHERE mark = 'm2'", "chain ", 6},
        {"an entry put in", "INSERT INTO entry (device, seq, unix_ms, utc_offset_min) VALUES (1, 17, 0, 0)",
         "chain ", 17},
    }};
    for (const auto& tampering : all) {
        std::ofstream{file, std::ios::binary} << good;
        tamper(tampering.sql);
        const auto result = verdict();
        EXPECT_EQ(wrong_in(result), tampering.wrong) << tampering.what;
        const auto chain = of(result, "chain");
        ASSERT_TRUE(chain.first_entry) << tampering.what;
        EXPECT_EQ(chain.first_entry->number, tampering.first) << tampering.what;
    }
}

TEST_F(VerifyTest, a_change_that_cannot_be_applied_and_a_record_out_of_range_are_named) {
    fill();
    const auto good = bytes_of(file);
    for (const auto& [body, says] : {std::pair{R"([{"op":"remove","path":"/nowhere"}])", "cannot be applied"},
                                     {"[{", "cannot be applied"},
                                     {R"([{"op":"add","path":"/colour","value":"red"}])", "colour"}}) {
        std::ofstream{file, std::ios::binary} << good;
        tamper("UPDATE revision SET whole = 0, body = '" + std::string{body} +
               "' WHERE kind = 'visit' AND number = 2");
        const auto revisions = of(verdict(), "revisions");
        EXPECT_THAT(revisions.first_wrong, HasSubstr(says));
        ASSERT_TRUE(revisions.first_entry);
        EXPECT_EQ(revisions.first_entry->number, 8);
    }
}

TEST_F(VerifyTest, a_row_that_names_one_that_is_missing_is_found) {
    fill();
    tamper("PRAGMA foreign_keys=OFF; DELETE FROM mark WHERE id = 'm2'");
    const auto result = verdict();
    EXPECT_THAT(of(result, "references").first_wrong, HasSubstr("table mark_change"));
    EXPECT_EQ(of(result, "chain").first_entry->number, 5);
}

TEST_F(VerifyTest, a_cut_off_end_is_seen_only_against_a_hash_that_was_noted) {
    fill();
    const auto noted = verdict().heads.at(0).hash;
    EXPECT_TRUE(verdict(noted).sound());
    tamper("DELETE FROM removal WHERE kind = 'house' AND removed = 0; DELETE FROM entry WHERE seq = 16");
    EXPECT_TRUE(verdict().sound()) << "from the file alone an older state is a good state";
    EXPECT_EQ(wrong_in(verdict(noted)), "known ");
    EXPECT_THAT(of(verdict(noted), "known").first_wrong, HasSubstr("cut off"));
}

TEST_F(VerifyTest, a_damaged_file_is_read_as_far_as_it_goes_and_never_called_sound) {
    fill();
    const auto good = bytes_of(file);
    std::mt19937 random{3};
    int told_by_a_check = 0;
    for (std::size_t page = 4096; page < good.size(); page += 4096) {
        auto bytes = good;
        for (std::size_t i = 0; i < 4096; ++i) {
            bytes[page + i] = static_cast<char>(random());
        }
        std::ofstream{file, std::ios::binary} << bytes;
        const auto result = verify_store(file, clock);
        EXPECT_EQ(bytes_of(file), bytes) << "page " << page / 4096 << " was written to";
        if (result) {
            EXPECT_FALSE(result.value().sound()) << page / 4096;
            EXPECT_EQ(result.value().checks.size(), 11U);
            ++told_by_a_check;
        } else {
            EXPECT_EQ(result.error().kind, Error::Kind::storage);
        }
    }
    EXPECT_GT(told_by_a_check, 10);
}

TEST_F(VerifyTest, what_is_no_record_file_is_an_error) {
    EXPECT_THAT(error_of(verify_store(file, clock)), HasSubstr("no such file"));
    std::ofstream{file}
        << "notes about birds, longer than a hundred bytes so that nothing else than their content "
           "tells that this is none";
    EXPECT_THAT(error_of(verify_store(file, clock)), HasSubstr("not a record file"));
}

TEST_F(VerifyTest, a_file_from_a_newer_version_is_not_judged) {
    { auto store = open_with_visit(); }
    SQLite::Database{file, SQLite::OPEN_READWRITE}.exec("PRAGMA user_version=99");
    EXPECT_THAT(error_of(verify_store(file, clock)), HasSubstr("newer version"));
}

}  // namespace
}  // namespace wetfront::test
