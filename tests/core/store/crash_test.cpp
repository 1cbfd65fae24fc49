// SPDX-License-Identifier: Apache-2.0
// A program that is killed while it writes, and a disk that is full.
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <random>

#include "child.h"
#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

class CrashTest : public StoreTest {};

TEST_F(CrashTest, after_thirty_kills_every_acknowledged_mark_is_there_once) {
    { const auto store = open_with_visit(); }
    std::mt19937 random{7};
    std::size_t acknowledged = 0;
    std::size_t present = 0;
    for (int round = 0; round < 30; ++round) {
        Child writer{[&](const Child::Say& say) {
            auto store = open();
            const auto marks = value_of(store.marks_of(Id{"visit-1"}));
            for (auto next = static_cast<std::int64_t>(marks.size());; ++next) {
                succeed(store.add_mark(Id{"visit-1"},
                                       sample_mark("m" + std::to_string(next), MarkKind::pump_start, next)));
                say("m" + std::to_string(next));
            }
        }};
        const auto heard_before_the_kill = random() % 40;
        std::size_t heard = 0;
        for (std::string line; heard < heard_before_the_kill && !(line = writer.line()).empty(); ++heard) {
            ASSERT_EQ(line, "m" + std::to_string(present + heard));
        }
        writer.kill();
        for (std::string line; !(line = writer.line()).empty(); ++heard) {
            ASSERT_EQ(line, "m" + std::to_string(present + heard));
        }
        const auto marks = value_of(open().marks_of(Id{"visit-1"}));
        const auto expected = present + heard;
        acknowledged += heard;
        ASSERT_GE(marks.size(), expected) << "an acknowledged mark is lost in round " << round;
        ASSERT_LE(marks.size(), expected + 1)
            << "more than the one mark that was being written, round " << round;
        for (std::size_t i = 0; i < marks.size(); ++i) {
            ASSERT_EQ(marks[i], sample_mark("m" + std::to_string(i), MarkKind::pump_start,
                                            static_cast<std::int64_t>(i)));
        }
        present = marks.size();
    }
    EXPECT_GT(acknowledged, 100U);
    EXPECT_EQ(SQLite::Database{file}.execAndGet("PRAGMA integrity_check").getString(), "ok");
}

TEST_F(CrashTest, a_killed_program_is_reopened_on_its_running_stopwatch) {
    Child writer{[&](const Child::Say& say) {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        say("running");
        ::pause();
    }};
    ASSERT_EQ(writer.line(), "running");
    writer.kill();
    const auto store = open();
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"});
    EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})), std::vector{sample_mark("m1", MarkKind::pump_start)});
}

TEST_F(CrashTest, a_program_killed_while_it_makes_the_file_leaves_none_or_a_whole_one) {
    std::mt19937 random{11};
    for (int round = 0; round < 20; ++round) {
        file = folder.path() / std::to_string(round);
        Child maker{[&](const Child::Say& say) {
            say("begin");
            const auto store = open();
            say("made");
        }};
        ASSERT_EQ(maker.line(), "begin");
        for (auto turns = random() % 2'000'000; turns > 0; --turns) {
            [[maybe_unused]] volatile bool moment = true;
        }
        maker.kill();
        auto opened = Store::open(file, clock);
        EXPECT_TRUE(opened.has_value()) << (opened ? "" : opened.error().text());
    }
}

// SQLite's own calls of the operating system, replaced while a FullDisk lives.
ssize_t no_room_to_write(int, const void*, std::size_t) {
    errno = ENOSPC;
    return -1;
}
ssize_t no_room_to_write_at(int, const void*, std::size_t, off_t) {
    errno = ENOSPC;
    return -1;
}

class FullDisk {
public:
    FullDisk() {
        set("write", reinterpret_cast<sqlite3_syscall_ptr>(no_room_to_write));
        set("pwrite", reinterpret_cast<sqlite3_syscall_ptr>(no_room_to_write_at));
        set("pwrite64", reinterpret_cast<sqlite3_syscall_ptr>(no_room_to_write_at));
    }
    ~FullDisk() {
        for (const auto* call : {"write", "pwrite", "pwrite64"}) {
            set(call, nullptr);
        }
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

private:
    static void set(const char* call, sqlite3_syscall_ptr function) {
        auto* vfs = sqlite3_vfs_find("unix");
        vfs->xSetSystemCall(vfs, call, function);
    }
};

TEST_F(CrashTest, a_full_disk_is_said_and_nothing_that_was_saved_is_lost) {
    {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        auto changed = sample_visit();
        changed.open_points = {"too much"};
        {
            const FullDisk full;
            const auto result = store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 5));
            EXPECT_THAT(error_of(result), HasSubstr("the disk is full"));
            EXPECT_EQ(result.error().kind, Error::Kind::storage);
            EXPECT_THAT(error_of(store.save(changed)), HasSubstr("the disk is full"));
            EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})).size(), 1U);
        }
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 5)));
    }
    const auto store = open();
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).open_points, std::vector<std::string>{});
    EXPECT_EQ(
        value_of(store.marks_of(Id{"visit-1"})),
        (std::vector{sample_mark("m1", MarkKind::pump_start), sample_mark("m2", MarkKind::pump_stop, 5)}));
}

TEST_F(CrashTest, on_a_full_disk_no_half_made_file_is_left) {
    {
        const FullDisk full;
        EXPECT_THAT(error_of(Store::open(file, clock)), HasSubstr("the disk is full"));
    }
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
    EXPECT_TRUE(Store::open(file, clock).has_value());
}

}  // namespace
}  // namespace wetfront::test
