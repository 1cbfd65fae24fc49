// SPDX-License-Identifier: Apache-2.0
#include "store/backup.h"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <unistd.h>

#include <fstream>

#include "child.h"
#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

constexpr std::int64_t day_ms = 24LL * 3600 * 1000;

class BackupTest : public StoreTest {
protected:
    BackupTest() { file = folder.path() / "records.wetfront"; }

    [[nodiscard]] std::filesystem::path copies() const { return backup_folder_of(file); }
    [[nodiscard]] std::vector<std::string> days() const {
        std::vector<std::string> all;
        for (const auto& backup : backups_in(copies(), file)) {
            all.push_back(backup.day);
        }
        return all;
    }
    void put_empty(const std::string& name) const { std::ofstream{copies() / name} << "x"; }
};

void flip_byte(const std::filesystem::path& file, std::streamoff at) {
    std::fstream stream{file, std::ios::binary | std::ios::in | std::ios::out};
    stream.seekg(at);
    const int byte = stream.get();
    stream.seekp(at);
    stream.put(static_cast<char>(byte ^ 0xFF));
}

TEST_F(BackupTest, a_backup_opens_with_every_record_and_every_mark) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    const auto made = value_of(store.back_up(copies()));
    const auto copy = value_of(Store::open(made, clock));
    EXPECT_EQ(value_of(copy.visit_file(Id{"visit-1"})), value_of(store.visit_file(Id{"visit-1"})));
    EXPECT_THAT(value_of(copy.marks_of(Id{"visit-1"})), SizeIs(1));
}

TEST_F(BackupTest, a_backup_is_one_file_for_its_owner_only_named_by_day_and_clock) {
    auto store = open_with_visit();
    const auto made = value_of(store.back_up(copies()));
    EXPECT_EQ(made.filename(), "records-2026-07-01-0500.wetfront");
    EXPECT_EQ(mode_of(made), 0600U);
    EXPECT_EQ(mode_of(copies()), 0700U);
    EXPECT_EQ(std::distance(begin(std::filesystem::directory_iterator{copies()}), {}), 1);
}

TEST_F(BackupTest, a_link_with_the_name_of_a_backup_is_none) {
    auto store = open_with_visit();
    const auto made = value_of(store.back_up(copies()));
    const auto moved = made.parent_path() / "moved";
    std::filesystem::rename(made, moved);
    std::filesystem::create_symlink(moved, made);
    EXPECT_THAT(backups_in(copies(), file), IsEmpty());
}

TEST_F(BackupTest, two_backups_in_a_minute_are_both_kept) {
    auto store = open_with_visit();
    EXPECT_NE(value_of(store.back_up(copies())), value_of(store.back_up(copies())));
    EXPECT_THAT(backups_in(copies(), file), SizeIs(2));
}

TEST_F(BackupTest, a_folder_that_cannot_be_made_is_named_and_the_records_go_on) {
    auto store = open_with_visit();
    std::ofstream{folder.path() / "taken"} << "a file";
    EXPECT_THAT(error_of(store.back_up(folder.path() / "taken" / "copies")), HasSubstr("taken"));
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
}

TEST_F(BackupTest, a_day_gets_one_backup) {
    auto store = open_with_visit();
    EXPECT_TRUE(value_of(back_up_today(store, copies(), clock)).has_value());
    EXPECT_FALSE(value_of(back_up_today(store, copies(), clock)).has_value());
    clock.advance_ms(day_ms);
    EXPECT_TRUE(value_of(back_up_today(store, copies(), clock)).has_value());
    EXPECT_THAT(days(), ElementsAre("2026-07-02", "2026-07-01"));
}

TEST_F(BackupTest, the_last_seven_days_stay_and_the_newest_of_each_of_twelve_months) {
    auto store = open_with_visit();
    std::filesystem::create_directories(copies());
    for (const auto* month : {"2025-06", "2025-07", "2025-08", "2025-09", "2025-10", "2025-11", "2025-12",
                              "2026-01", "2026-02", "2026-03", "2026-04", "2026-05"}) {
        put_empty("records-" + std::string{month} + "-03-0700.wetfront");
        put_empty("records-" + std::string{month} + "-28-0700.wetfront");
    }
    for (int day = 20; day <= 30; ++day) {
        put_empty("records-2026-06-" + std::to_string(day) + "-0700.wetfront");
    }
    EXPECT_TRUE(value_of(back_up_today(store, copies(), clock)).has_value());
    EXPECT_THAT(days(), ElementsAre("2026-07-01", "2026-06-30", "2026-06-29", "2026-06-28", "2026-06-27",
                                    "2026-06-26", "2026-06-25", "2026-05-28", "2026-04-28", "2026-03-28",
                                    "2026-02-28", "2026-01-28", "2025-12-28", "2025-11-28", "2025-10-28",
                                    "2025-09-28", "2025-08-28"));
}

TEST_F(BackupTest, the_backup_just_made_stays_where_the_clock_says_it_is_the_oldest) {
    auto store = open_with_visit();
    for (int day = 0; day < 30; ++day) {
        EXPECT_TRUE(value_of(back_up_today(store, copies(), clock)).has_value());
        clock.advance_ms(day_ms);
    }
    clock.wall.unix_ms -= 20 * 365 * day_ms;
    const auto made = value_of(back_up_today(store, copies(), clock));
    ASSERT_TRUE(made.has_value());
    EXPECT_TRUE(std::filesystem::exists(*made));
}

TEST_F(BackupTest, files_of_other_names_are_neither_listed_nor_removed) {
    auto store = open_with_visit();
    std::filesystem::create_directories(copies());
    const std::vector<std::string> others{"records-2020-01-01-0700.wetfront.unfinished-1",
                                          "other-2020-01-01-0700.wetfront", "records.wetfront",
                                          "records-2020-01-01-0700.pdf", "records-notes.wetfront"};
    for (const auto& name : others) {
        put_empty(name);
    }
    EXPECT_TRUE(value_of(back_up_today(store, copies(), clock)).has_value());
    EXPECT_THAT(days(), ElementsAre("2026-07-01"));
    for (const auto& name : others) {
        EXPECT_TRUE(std::filesystem::exists(copies() / name)) << name;
    }
}

TEST_F(BackupTest, a_backup_tells_what_it_holds) {
    auto store = open_with_visit();
    clock.advance_ms(90'000);
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    const auto made = value_of(store.back_up(copies()));
    const auto before = bytes_of(made);
    const auto content = value_of(read_backup(made));
    EXPECT_EQ(content.houses, 1);
    EXPECT_EQ(content.entries, 4);  // farm, house, visit, mark
    EXPECT_EQ(content.latest, clock.wall_now());
    EXPECT_EQ(bytes_of(made), before);
}

TEST_F(BackupTest, a_listed_backup_tells_day_and_clock_of_its_name) {
    auto store = open_with_visit();
    const auto made = value_of(store.back_up(copies()));
    EXPECT_THAT(backups_in(copies(), file), ElementsAre(Backup{made, "2026-07-01", "05:00"}));
}

TEST_F(BackupTest, the_store_tells_what_it_holds_and_how_much_of_it_is_not_in_a_backup) {
    auto store = open_with_visit();
    const auto held = value_of(read_backup(value_of(store.back_up(copies()))));
    EXPECT_EQ(value_of(store.content()).entries, 3);  // farm, house, visit
    EXPECT_EQ(value_of(store.entries_since(held)), 0);
    clock.advance_ms(60'000);
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 9)));
    EXPECT_EQ(value_of(store.entries_since(held)), 2);
    EXPECT_EQ(value_of(store.content()).latest, clock.wall_now());
    EXPECT_EQ(value_of(store.entries_since({})), 5) << "since there was nothing";
}

TEST_F(BackupTest, a_copy_that_is_no_earlier_state_of_the_store_is_not_counted_from) {
    auto store = open_with_visit();
    auto other = value_of(store.content());
    other.latest->unix_ms += 1;
    EXPECT_EQ(value_of(store.entries_since(other)), std::nullopt) << "another entry stands there";
    auto longer = value_of(store.content());
    longer.entries += 1;
    EXPECT_EQ(value_of(store.entries_since(longer)), std::nullopt) << "the store has not so many";
}

TEST_F(BackupTest, a_long_copy_tells_how_far_it_is) {
    { const auto made = open_with_visit(); }
    // 10 MB are some 2,500 pages.
    SQLite::Database{file, SQLite::OPEN_READWRITE}.exec(
        "CREATE TABLE filler AS SELECT zeroblob(10000000) AS bytes");
    const auto store = open();
    std::vector<double> shares;
    const auto made = store.back_up(copies(), [&](double share) {
        shares.push_back(share);
        return true;
    });
    EXPECT_TRUE(made) << error_of(made);
    ASSERT_FALSE(shares.empty());
    EXPECT_TRUE(std::ranges::is_sorted(shares));
    EXPECT_GT(shares.front(), 0.0);
    EXPECT_LT(shares.back(), 1.0);
    EXPECT_THAT(error_of(store.back_up(copies(), [](double) { return false; })), HasSubstr("stopped"));
    EXPECT_EQ(std::distance(begin(std::filesystem::directory_iterator{copies()}), {}), 1)
        << "something is left of the copy that was stopped";
}

TEST_F(BackupTest, a_damaged_backup_is_told_and_not_restored) {
    auto store = open_with_visit();
    const auto made = value_of(store.back_up(copies()));
    const auto size = static_cast<std::streamoff>(std::filesystem::file_size(made));
    for (std::streamoff at = 8192; at < size; at += 64) {
        flip_byte(made, at);
    }
    EXPECT_THAT(error_of(read_backup(made)), HasSubstr("damaged"));
    { const auto gone = std::move(store); }
    const auto before = bytes_of(file);
    EXPECT_THAT(error_of(restore(made, file, clock)), HasSubstr("damaged"));
    EXPECT_EQ(bytes_of(file), before);
}

TEST_F(BackupTest, what_is_no_record_file_is_not_restored) {
    { const auto made = open_with_visit(); }
    std::ofstream{folder.path() / "letter.txt"} << "Dear grower";
    EXPECT_THAT(error_of(restore(folder.path() / "letter.txt", file, clock)), HasSubstr("not a record file"));
    EXPECT_THAT(value_of(open().houses()), SizeIs(1));
}

TEST_F(BackupTest, a_backup_of_a_newer_version_is_refused) {
    const auto made = value_of(open_with_visit().back_up(copies()));
    SQLite::Database{made, SQLite::OPEN_READWRITE}.exec("PRAGMA user_version=99");
    EXPECT_THAT(error_of(restore(made, file, clock)), HasSubstr("newer version"));
}

class RestoreTest : public BackupTest {
protected:
    RestoreTest() {
        auto store = open_with_visit();
        backup = value_of(store.back_up(copies()));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("later", MarkKind::pump_start)));
    }
    [[nodiscard]] std::size_t marks() { return value_of(open().marks_of(Id{"visit-1"})).size(); }
    [[nodiscard]] std::size_t marks_in(const std::filesystem::path& path) {
        return value_of(value_of(Store::open(path, clock)).marks_of(Id{"visit-1"})).size();
    }

    std::filesystem::path backup;
};

TEST_F(RestoreTest, restoring_goes_back_to_the_backup_and_keeps_what_was_replaced) {
    const auto replaced = value_of(restore(backup, file, clock));
    ASSERT_TRUE(replaced.has_value());
    EXPECT_EQ(marks(), 0U);
    EXPECT_EQ(marks_in(*replaced), 1U);
    EXPECT_TRUE(std::filesystem::exists(backup));
    EXPECT_EQ(mode_of(file), 0600U);
}

TEST_F(RestoreTest, what_was_still_in_the_wal_file_is_replaced_with_it_and_not_mixed_into_the_backup) {
    Child writer{[this](const Child::Say& say) {
        auto store = value_of(Store::open(file, clock));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("in-wal", MarkKind::pump_stop, 5)));
        say("written");
        ::pause();
    }};
    ASSERT_EQ(writer.line(), "written");
    writer.kill();
    ASSERT_GT(std::filesystem::file_size(file.string() + "-wal"), 0U);
    const auto replaced = value_of(restore(backup, file, clock));
    ASSERT_TRUE(replaced.has_value());
    EXPECT_EQ(marks(), 0U);
    EXPECT_EQ(marks_in(*replaced), 2U);
}

TEST_F(RestoreTest, a_backup_with_a_wal_file_beside_it_is_restored_with_what_that_holds) {
    Child writer{[this](const Child::Say& say) {
        auto store = value_of(Store::open(backup, clock));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("in-wal", MarkKind::pump_stop, 5)));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("too", MarkKind::pump_start, 9)));
        say("written");
        ::pause();
    }};
    ASSERT_EQ(writer.line(), "written");
    writer.kill();
    ASSERT_TRUE(restore(backup, file, clock).has_value());
    EXPECT_EQ(marks(), 2U);
    EXPECT_TRUE(std::filesystem::exists(backup.string() + "-wal"));
}

TEST_F(RestoreTest, a_damaged_record_file_is_replaced_and_kept_as_it_is) {
    std::filesystem::resize_file(file, 5000);
    const auto damaged = bytes_of(file);
    const auto replaced = value_of(restore(backup, file, clock));
    ASSERT_TRUE(replaced.has_value());
    EXPECT_EQ(bytes_of(*replaced), damaged);
    EXPECT_EQ(marks(), 0U);
}

TEST_F(RestoreTest, a_record_file_that_is_gone_is_brought_back) {
    std::filesystem::remove(file);
    EXPECT_FALSE(value_of(restore(backup, file, clock)).has_value());
    EXPECT_EQ(marks(), 0U);
}

TEST_F(RestoreTest, a_file_that_another_program_has_open_is_not_replaced) {
    Child holder{[this](const Child::Say& say) {
        const auto store = value_of(Store::open(file, clock));
        say("open");
        ::pause();
    }};
    ASSERT_EQ(holder.line(), "open");
    EXPECT_THAT(error_of(restore(backup, file, clock)),
                AllOf(HasSubstr("it is open in"), HasSubstr("process")));
    holder.kill();
    EXPECT_EQ(marks(), 1U);
}

TEST_F(RestoreTest, a_file_that_nobody_has_open_can_be_replaced) {
    succeed(check_can_be_replaced(file));
}

TEST_F(RestoreTest, a_file_that_this_program_has_open_is_not_replaced) {
    const auto store = open();
    EXPECT_THAT(error_of(check_can_be_replaced(file)), HasSubstr("this program has it open"));
    EXPECT_THAT(error_of(restore(backup, file, clock)), HasSubstr("this program has it open"));
}

// A restore that stopped after any of its steps: the copy waits, and so many files have been moved.
class InterruptedRestoreTest : public RestoreTest, public ::testing::WithParamInterface<int> {};

TEST_P(InterruptedRestoreTest, the_next_opening_ends_what_was_decided) {
    std::ofstream{file.string() + "-wal"} << "what belongs to the replaced file";
    std::filesystem::copy_file(backup, file.string() + ".restoring-2026-07-01-0900");
    const std::vector<std::string> moved{"-wal", ""};
    const std::string replaced = file.string() + ".replaced-2026-07-01-0900";
    for (int step = 0; step < GetParam(); ++step) {
        const auto& suffix = moved[static_cast<std::size_t>(step)];
        std::filesystem::rename(file.string() + suffix, replaced + suffix);
    }
    EXPECT_EQ(marks(), 0U);
    EXPECT_TRUE(std::filesystem::exists(replaced));
    EXPECT_TRUE(std::filesystem::exists(replaced + "-wal"));
    EXPECT_FALSE(std::filesystem::exists(file.string() + ".restoring-2026-07-01-0900"));
}

INSTANTIATE_TEST_SUITE_P(after_each_step, InterruptedRestoreTest, ::testing::Values(0, 1, 2));

TEST_F(RestoreTest, a_copy_that_was_not_whole_when_the_power_went_is_not_taken_for_a_decision) {
    for (const auto* left : {"", "-wal", "-shm", "-journal"}) {
        std::filesystem::copy_file(backup, file.string() + ".restoring-2026-07-01-0900.unfinished-1" + left);
    }
    EXPECT_EQ(marks(), 1U);
}

}  // namespace
}  // namespace wetfront::test
