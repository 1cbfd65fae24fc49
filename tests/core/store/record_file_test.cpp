// SPDX-License-Identifier: Apache-2.0
#include "store/record_file.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <stdexcept>

#include "child.h"
#include "samples.h"
#include "store/holder.h"
#include "support/data_table.h"

namespace wetfront::test {
namespace {

using store_detail::Migration;
using store_detail::RecordFile;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

class RecordFileTest : public StoreTest {};

std::string names_in(const std::filesystem::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator{folder}) {
        names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    std::string all;
    for (const auto& name : names) {
        all += name + " ";
    }
    return all;
}

void write_file(const std::filesystem::path& file, std::string_view bytes) {
    std::ofstream{file, std::ios::binary} << bytes;
}

/// Any SQL on the closed file, as another program could.
void alter(const std::filesystem::path& file, const std::string& sql) {
    SQLite::Database{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}.exec(sql);
}

TEST_F(RecordFileTest, a_new_file_is_for_its_owner_only_and_so_is_the_folder_made_for_it) {
    file = folder.path() / "made" / "deeper" / "records";
    const auto store = open();
    EXPECT_EQ(mode_of(file), 0600U);
    EXPECT_EQ(mode_of(file.string() + "-wal"), 0600U);
    EXPECT_EQ(mode_of(file.parent_path()), 0700U);
    EXPECT_EQ(mode_of(file.parent_path().parent_path()), 0700U);
}

/// A user whose new files are open to everyone, unless a program sees to it.
class NoMask {
public:
    NoMask() : before_{::umask(0)} {}
    ~NoMask() { ::umask(before_); }
    NoMask(const NoMask&) = delete;
    NoMask& operator=(const NoMask&) = delete;

private:
    mode_t before_;
};

TEST_F(RecordFileTest, whatever_the_user_lets_others_do_everything_the_store_makes_is_for_its_owner_only) {
    const NoMask everyone_may;
    file = folder.path() / "made" / "records";
    {
        auto store = open_with_visit();
        EXPECT_EQ(names_in(file.parent_path()), "records records-wal ");
        EXPECT_EQ(mode_of(file.string() + "-wal"), 0600U);
    }
    {
        const auto reader = open(OpenMode::read_only);
        EXPECT_EQ(value_of(reader.houses()).size(), 1U);
        for (const auto& entry : std::filesystem::directory_iterator{file.parent_path()}) {
            EXPECT_EQ(mode_of(entry.path()), 0600U) << entry.path();
        }
        EXPECT_NE(names_in(file.parent_path()), "records ") << "nothing was looked at while it was open";
    }
    const std::array<Migration, 6> steps{
        store_detail::make_schema_1, store_detail::make_schema_2,
        store_detail::make_schema_3, store_detail::make_schema_4,
        store_detail::make_schema_5, [](SQLite::Database& db) { db.exec("CREATE TABLE later (x)"); }};
    { const auto migrated = value_of(RecordFile::open(file, clock, OpenMode::read_write, steps)); }
    EXPECT_THAT(names_in(file.parent_path()), HasSubstr("records.before-v6-2026-07-01 "));
    for (const auto& entry : std::filesystem::directory_iterator{file.parent_path()}) {
        EXPECT_EQ(mode_of(entry.path()), 0600U) << entry.path();
    }
    EXPECT_EQ(mode_of(file.parent_path()), 0700U);
}

TEST_F(RecordFileTest, a_file_that_others_could_read_is_closed_to_them_when_it_is_opened_for_writing) {
    const NoMask everyone_may;
    { const auto store = open_with_visit(); }
    ASSERT_EQ(::chmod(file.c_str(), 0666), 0);
    const auto store = open();
    EXPECT_EQ(mode_of(file), 0600U);
    EXPECT_EQ(mode_of(file.string() + "-wal"), 0600U);
}

TEST_F(RecordFileTest, making_and_closing_leaves_one_file) {
    { const auto store = open(); }
    EXPECT_EQ(names_in(folder.path()), "records ");
}

TEST_F(RecordFileTest, the_connection_syncs_each_commit_checks_foreign_keys_and_holds_the_lock) {
    auto opened = value_of(RecordFile::open(file, clock, OpenMode::read_write));
    const std::array<std::pair<const char*, const char*>, 6> wanted{{{"journal_mode", "wal"},
                                                                     {"synchronous", "2"},
                                                                     {"foreign_keys", "1"},
                                                                     {"locking_mode", "exclusive"},
                                                                     {"user_version", "5"},
                                                                     {"application_id", "1466323555"}}};
    for (const auto& [pragma, value] : wanted) {
        EXPECT_EQ(opened.database().execAndGet(std::string{"PRAGMA "} + pragma).getString(), value) << pragma;
    }
}

TEST_F(RecordFileTest, a_second_process_is_refused_and_told_who_holds_the_file) {
    Child holder{[&](const Child::Say& say) {
        const auto store = open();
        say("open");
        ::pause();
    }};
    ASSERT_EQ(holder.line(), "open");
    const auto who = "(process " + std::to_string(holder.process()) + ")";
    EXPECT_THAT(error_of(Store::open(file, clock)), AllOf(HasSubstr("open in"), HasSubstr(who)));
    EXPECT_THAT(error_of(Store::open(file, clock, OpenMode::read_only)), HasSubstr(who));
    holder.kill();
    EXPECT_TRUE(Store::open(file, clock).has_value());
}

TEST_F(RecordFileTest, nobody_writes_while_the_file_is_viewed) {
    { const auto store = open(); }
    Child viewer{[&](const Child::Say& say) {
        const auto store = open(OpenMode::read_only);
        say("open");
        ::pause();
    }};
    ASSERT_EQ(viewer.line(), "open");
    EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr(std::to_string(viewer.process())));
}

TEST_F(RecordFileTest, the_same_process_is_refused_too_and_its_first_lock_stays) {
    auto store = open_with_visit();
    EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr("this program has it open already"));
    Child other{[&](const Child::Say& say) { say(store_detail::holder_of(file)); }};
    EXPECT_THAT(other.line(), HasSubstr("(process " + std::to_string(::getpid()) + ")"));
    EXPECT_TRUE(store.add_mark(Id{"visit-1"}, sample_mark("m", MarkKind::pump_start)));
}

struct Foreign {
    const char* what;
    std::string bytes;
    const char* said;
};

TEST_F(RecordFileTest, a_file_that_is_not_ours_is_named_as_what_it_is_and_stays_as_it_was) {
    const auto database = folder.path() / "other";
    alter(database, "CREATE TABLE t (a); PRAGMA application_id=77");
    const std::array<Foreign, 5> foreign{
        {{"text", "Dear diary, today the pads were dry.", "it is not a record file"},
         {"empty", "", "the file is empty"},
         {"zeros", std::string(8192, '\0'), "it is not a record file"},
         {"other program", bytes_of(database), "another program's database"},
         {"cut in the head", std::string("SQLite format 3\0....", 20), "damaged"}}};
    for (const auto& [what, bytes, said] : foreign) {
        write_file(file, bytes);
        for (const auto mode : {OpenMode::read_write, OpenMode::read_only}) {
            EXPECT_THAT(error_of(Store::open(file, clock, mode)), HasSubstr(said)) << what;
        }
        EXPECT_EQ(bytes_of(file), bytes) << what;
    }
    EXPECT_EQ(names_in(folder.path()), "other records ");
}

TEST_F(RecordFileTest, a_folder_in_its_place_is_refused) {
    std::filesystem::create_directory(file);
    EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr("it is not a file"));
}

TEST_F(RecordFileTest, viewing_makes_no_file) {
    EXPECT_THAT(error_of(Store::open(file, clock, OpenMode::read_only)), HasSubstr("there is no such file"));
    EXPECT_EQ(names_in(folder.path()), "");
}

TEST_F(RecordFileTest, a_truncated_file_is_called_damaged_and_not_written_to) {
    { const auto store = open_with_visit(); }
    const auto whole = bytes_of(file);
    for (const auto kept : {whole.size() - 4096, whole.size() / 2, std::size_t{5000}, std::size_t{100}}) {
        write_file(file, whole.substr(0, kept));
        EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr("damaged"))
            << kept << " of " << whole.size();
        EXPECT_EQ(bytes_of(file), whole.substr(0, kept));
    }
}

TEST_F(RecordFileTest, a_file_from_a_newer_version_is_not_written_to_but_can_be_viewed) {
    { const auto store = open_with_visit(); }
    alter(file, "PRAGMA user_version=99; PRAGMA wal_checkpoint(TRUNCATE)");
    const auto before = bytes_of(file);
    EXPECT_THAT(error_of(Store::open(file, clock)),
                AllOf(HasSubstr("newer version"), HasSubstr("schema 99")));
    {
        auto store = open(OpenMode::read_only);
        EXPECT_EQ(value_of(store.houses()).size(), 1U);
        EXPECT_THAT(error_of(store.save(sample_farm())), HasSubstr("opened read-only"));
    }
    EXPECT_EQ(bytes_of(file), before);
}

TEST_F(RecordFileTest, a_folder_without_permission_is_said_and_the_file_can_be_viewed) {
    { const auto store = open_with_visit(); }
    std::filesystem::permissions(file, std::filesystem::perms{0400});
    std::filesystem::permissions(folder.path(), std::filesystem::perms{0500});
    const auto before = bytes_of(file);
    EXPECT_THAT(said_without_privilege([&] { return error_of(Store::open(file, clock)); }),
                HasSubstr("no permission to write"));
    EXPECT_EQ(
        said_without_privilege([&] { return value_of(open(OpenMode::read_only).houses()).at(0).house_name; }),
        "House 1");
    EXPECT_THAT(said_without_privilege([&] { return error_of(Store::open(folder.path() / "new", clock)); }),
                HasSubstr("no permission to write"));
    EXPECT_EQ(bytes_of(file), before);
    EXPECT_EQ(names_in(folder.path()), "records ");
}

TEST_F(RecordFileTest, a_file_that_only_its_owner_may_read_is_said_to_be_so) {
    { const auto store = open(); }
    std::filesystem::permissions(file, std::filesystem::perms{0});
    for (const auto mode : {OpenMode::read_write, OpenMode::read_only}) {
        EXPECT_THAT(said_without_privilege([&] { return error_of(Store::open(file, clock, mode)); }),
                    AllOf(HasSubstr("no permission to read it"), HasSubstr("ask its owner"),
                          Not(HasSubstr("viewed"))));
    }
}

TEST_F(RecordFileTest, a_record_whose_text_is_damaged_is_named_and_said_to_be_damaged) {
    { const auto store = open_with_visit(); }
    alter(file, "DROP TRIGGER revision_is_not_changed; UPDATE revision SET body = '[{' WHERE kind = 'farm'");
    EXPECT_THAT(error_of(open().farm(Id{"farm-1"})),
                AllOf(HasSubstr("revision"), HasSubstr("cannot be read"), HasSubstr("the file is damaged"),
                      Not(HasSubstr("json"))));
}

TEST_F(RecordFileTest, a_write_protected_file_is_said) {
    { const auto store = open(); }
    std::filesystem::permissions(file, std::filesystem::perms{0400});
    EXPECT_THAT(said_without_privilege([&] { return error_of(Store::open(file, clock)); }),
                HasSubstr("no permission to write"));
}

TEST_F(RecordFileTest, a_journal_without_its_file_is_not_mixed_with_a_new_one) {
    write_file(file.string() + "-wal", "entries of a file that was moved away");
    EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr("-wal file is there"));
    EXPECT_EQ(names_in(folder.path()), "records-wal ");
}

// Migrations of a version that is not there yet.
void add_colour(SQLite::Database& db) {
    db.exec("ALTER TABLE device ADD COLUMN colour TEXT");
}
void fail_half_way(SQLite::Database& db) {
    add_colour(db);
    throw std::runtime_error{"half way"};
}
void break_a_reference(SQLite::Database& db) {
    db.exec(
        "PRAGMA defer_foreign_keys=ON; INSERT INTO entry (device, seq, unix_ms, utc_offset_min) VALUES (9, "
        "1, 0, 0)");
}

/// The released ones and one more.
std::vector<Migration> released_and(Migration next) {
    const auto released = store_detail::released_migrations();
    std::vector<Migration> steps{released.begin(), released.end()};
    steps.push_back(next);
    return steps;
}

TEST_F(RecordFileTest, a_migration_keeps_a_whole_copy_first) {
    { const auto store = open_with_visit(); }
    const auto steps = released_and(add_colour);
    {
        const auto opened = value_of(RecordFile::open(file, clock, OpenMode::read_write, steps));
        EXPECT_EQ(store_detail::schema_version(opened.database()), 6);
    }
    EXPECT_EQ(names_in(folder.path()), "records records.before-v6-2026-07-01 ");
    const auto kept = file.string() + ".before-v6-2026-07-01";
    EXPECT_EQ(mode_of(kept), 0600U);
    file = kept;
    EXPECT_EQ(value_of(open().houses()).size(), 1U);
}

TEST_F(RecordFileTest, a_migration_that_fails_changes_nothing_and_a_second_copy_gets_its_own_name) {
    { const auto store = open_with_visit(); }
    for (const auto step : {fail_half_way, break_a_reference}) {
        const auto steps = released_and(step);
        EXPECT_THAT(error_of(RecordFile::open(file, clock, OpenMode::read_write, steps)),
                    Not(HasSubstr("newer")));
    }
    EXPECT_EQ(names_in(folder.path()),
              "records records.before-v6-2026-07-01 records.before-v6-2026-07-01-2 ");
    EXPECT_EQ(value_of(open().houses()).size(), 1U);
    EXPECT_EQ(schema_text(file), data_text("store/schema_5.sql"));
}

TEST_F(RecordFileTest, an_older_file_is_not_viewed_before_it_was_migrated) {
    { const auto store = open(); }
    const auto steps = released_and(add_colour);
    EXPECT_THAT(error_of(RecordFile::open(file, clock, OpenMode::read_only, steps)),
                HasSubstr("older version"));
}

TEST_F(RecordFileTest, the_device_keeps_its_id) {
    const Id first = open().device();
    EXPECT_EQ(open().device(), first);
    EXPECT_EQ(first.text.size(), 36U);
}

}  // namespace
}  // namespace wetfront::test
