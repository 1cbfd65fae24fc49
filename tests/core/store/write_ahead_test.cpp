// SPDX-License-Identifier: Apache-2.0
#include "store/write_ahead.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <sys/stat.h>

#include <fstream>

#include "samples.h"
#include "store/verify.h"

namespace wetfront::test {
namespace {

using store_detail::look_at_write_ahead;
using ::testing::HasSubstr;

// sqlite.org/fileformat2.html, 4.1.
constexpr std::size_t header = 32;
constexpr std::size_t page = 4096;
constexpr std::size_t frame = 24 + page;

class WriteAheadTest : public StoreTest {
protected:
    /// The file and its journal as a crash leaves them, after ten marks a minute apart.
    void SetUp() override {
        StoreFolder running;
        file = running.file();
        {
            auto store = open_with_visit();
            for (int i = 0; i < 10; ++i) {
                clock.advance_ms(60'000);
                succeed(store.add_mark(Id{"visit-1"},
                                       sample_mark("m" + std::to_string(i), MarkKind::pump_start, i)));
            }
            whole = bytes_of(file.string() + "-wal");
            std::filesystem::copy_file(file, folder.file());
        }
        file = folder.file();
        for (std::size_t at = header; at < whole.size(); at += frame) {
            if (whole.substr(at + 4, 4) != std::string(4, '\0')) {
                commits.push_back(at);
            }
        }
        ASSERT_EQ(commits.back() + frame, whole.size());
        put(whole);
    }
    [[nodiscard]] std::filesystem::path wal() const { return file.string() + "-wal"; }
    void put(const std::string& bytes) const { std::ofstream{wal(), std::ios::binary} << bytes; }
    /// With a bit changed there.
    [[nodiscard]] std::string damaged(std::size_t at) const {
        auto bytes = whole;
        bytes[at] = static_cast<char>(bytes[at] ^ 4);
        return bytes;
    }
    [[nodiscard]] std::size_t marks(const Store& store) const {
        return value_of(store.marks_of(Id{"visit-1"})).size();
    }

    std::string whole;
    std::vector<std::size_t> commits;  ///< where the last frame of each begins
};

TEST_F(WriteAheadTest, has_as_many_frames_as_sqlite_counts) {
    EXPECT_EQ(static_cast<std::size_t>(look_at_write_ahead(wal(), page).frames), whole.size() / frame);
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    SQLite::Statement count{db, "PRAGMA wal_checkpoint(PASSIVE)"};
    ASSERT_TRUE(count.executeStep());
    EXPECT_EQ(look_at_write_ahead(wal(), page).frames, count.getColumn(1).getInt());
}

TEST_F(WriteAheadTest, a_byte_that_changed_before_confirmed_entries_is_said_once_and_the_file_kept) {
    const auto bytes = damaged(commits[commits.size() - 4] + frame + 100);
    put(bytes);
    std::string kept;
    {
        auto store = open();
        ASSERT_TRUE(store.loss());
        const auto text = store.loss()->text();
        // Ten marks from 10:05 on, the last three of them not read.
        EXPECT_EQ(marks(store), 7U);
        EXPECT_THAT(text, HasSubstr("after " + local_date(clock.wall_now())));
        const auto last_read =
            WallTime{clock.wall_now().unix_ms - 180'000, clock.wall_now().utc_offset_minutes};
        EXPECT_THAT(text, HasSubstr(local_clock(last_read) + " may be missing"));
        kept = file.string() + ".damaged-wal-" + local_date(clock.wall_now());
        EXPECT_THAT(text, HasSubstr(kept));
        kept = text.substr(text.find(kept));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("again", MarkKind::pump_start, 100)));
    }
    EXPECT_EQ(bytes_of(kept), bytes);
    struct stat found {};
    ASSERT_EQ(::stat(kept.c_str(), &found), 0);
    EXPECT_EQ(found.st_mode & 0777U, 0600U);
    const auto store = open();
    EXPECT_FALSE(store.loss());
    EXPECT_EQ(marks(store), 8U);
}

TEST_F(WriteAheadTest, a_second_crash_after_that_says_nothing_new) {
    put(damaged(commits[2] + frame + 100));
    const StoreFolder next;
    {
        auto store = open();
        ASSERT_TRUE(store.loss());
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("again", MarkKind::pump_start, 100)));
        std::filesystem::copy_file(file, next.file());
        std::filesystem::copy_file(wal(), next.file().string() + "-wal");
    }
    file = next.file();
    EXPECT_FALSE(open().loss());
}

TEST_F(WriteAheadTest, each_byte_of_the_header_that_changed_is_said) {
    for (std::size_t at = 0; at < header; ++at) {
        put(damaged(at));
        EXPECT_TRUE(look_at_write_ahead(wal(), page).broken) << at;
    }
}

TEST_F(WriteAheadTest, every_frame_that_changed_before_the_last_commit_but_one_ends_is_said) {
    const auto certain = commits[commits.size() - 2] - frame;
    for (std::size_t start = header; start < whole.size(); start += frame) {
        for (const std::size_t at : {0U, 4U, 8U, 12U, 16U, 20U, 24U, 2000U, 4119U}) {
            put(damaged(start + at));
            const auto found = look_at_write_ahead(wal(), page);
            EXPECT_EQ(static_cast<std::size_t>(found.frames), start / frame) << start + at;
            EXPECT_TRUE(found.broken || start >= certain) << start + at;
            EXPECT_FALSE(found.broken && start >= commits[commits.size() - 2] + frame) << start + at;
        }
    }
}

TEST_F(WriteAheadTest, any_frames_of_the_last_commit_that_the_power_took_are_no_damage) {
    const auto first = commits[commits.size() - 2] + frame;
    const auto count = (whole.size() - first) / frame;
    ASSERT_LT(count, 12U);
    for (unsigned taken = 0; taken < 1U << count; ++taken) {
        auto bytes = whole;
        for (std::size_t i = 0; i < count; ++i) {
            if ((taken >> i & 1U) != 0) {
                bytes.replace(first + i * frame, frame, std::string(frame, '\0'));
            }
        }
        put(bytes);
        EXPECT_FALSE(look_at_write_ahead(wal(), page).broken) << taken;
    }
}

TEST_F(WriteAheadTest, that_is_whole_or_ends_early_or_is_not_there_is_no_damage) {
    EXPECT_FALSE(look_at_write_ahead(wal(), page).broken);
    for (std::size_t size = 0; size < whole.size(); size += 1000) {
        put(whole.substr(0, size));
        EXPECT_FALSE(look_at_write_ahead(wal(), page).broken) << size;
    }
    std::filesystem::remove(wal());
    EXPECT_FALSE(look_at_write_ahead(wal(), page).broken);
    EXPECT_FALSE(open().loss());
}

TEST_F(WriteAheadTest, verify_tells_the_damage_before_the_next_start_and_changes_nothing) {
    const auto bytes = damaged(commits[2] + frame + 100);
    put(bytes);
    for (const auto& check : value_of(verify_store(file, clock)).checks) {
        EXPECT_EQ(check.wrong, check.name == "wal" ? 1 : 0) << check.name << ": " << check.first_wrong;
    }
    EXPECT_EQ(bytes_of(wal()), bytes);
}

}  // namespace
}  // namespace wetfront::test
