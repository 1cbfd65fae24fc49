// SPDX-License-Identifier: Apache-2.0
// A disk that fails while a backup takes the record file's place.
#include <gmock/gmock.h>

#include "core/store/samples.h"
#include "store/backup.h"
#include "watched_disk.h"

namespace wetfront::test {
namespace {

class RestoreFaultTest : public StoreTest, public ::testing::WithParamInterface<DiskCall> {
protected:
    RestoreFaultTest() {
        file = folder.path() / "records.wetfront";
        auto store = open_with_visit();
        backup_ = value_of(store.back_up(backup_folder_of(file)));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("later", MarkKind::pump_start)));
    }
    [[nodiscard]] std::size_t marks_in(const std::filesystem::path& path) {
        return value_of(value_of(Store::open(path, clock)).marks_of(Id{"visit-1"})).size();
    }
    [[nodiscard]] std::vector<std::filesystem::path> files_with(const std::string& part) const {
        std::vector<std::filesystem::path> found;
        for (const auto& entry : std::filesystem::directory_iterator{folder.path()}) {
            const auto name = entry.path().filename().string();
            if (name.find(part) != name.npos && !name.ends_with("-wal") && !name.ends_with("-shm")) {
                found.push_back(entry.path());
            }
        }
        return found;
    }

    std::filesystem::path backup_;
};

// The nth call fails once, for every n: either the backup is in place and what it replaced beside it, or the
// record file is as it was, or the error says that the next start ends what was begun, and it does.
TEST_P(RestoreFaultTest, at_any_moment_of_a_restore_every_entry_stays_and_the_error_is_true) {
    int failed = 0;
    for (int nth = 1;; ++nth) {
        bool reached = false;
        Result<std::optional<std::filesystem::path>> result{std::optional<std::filesystem::path>{}};
        {
            WatchedDisk disk;
            disk.break_at({GetParam(), nth, false, SQLITE_IOERR});
            result = restore(backup_, file, clock);
            reached = disk.has_failed();
        }
        const bool is_to_end =
            !result && result.error().text().find("the next start ends it") != std::string::npos;
        if (result || is_to_end) {
            EXPECT_EQ(marks_in(file), 0U) << "call " << nth;
            const auto replaced = files_with(".replaced-");
            ASSERT_EQ(replaced.size(), 1U) << "call " << nth;
            EXPECT_EQ(marks_in(replaced.front()), 1U) << "call " << nth;
            // For the next round, as it was.
            std::filesystem::rename(replaced.front(), file);
        } else {
            EXPECT_EQ(marks_in(file), 1U) << "call " << nth << ": " << result.error().text();
            EXPECT_TRUE(files_with(".replaced-").empty()) << "call " << nth;
        }
        EXPECT_TRUE(files_with(".restoring-").empty()) << "call " << nth;
        failed += result ? 0 : 1;
        if (!reached) {
            break;
        }
    }
    EXPECT_GT(failed, 0) << "no call of that sort was met";
}

INSTANTIATE_TEST_SUITE_P(Calls, RestoreFaultTest,
                         ::testing::Values(DiskCall::rename, DiskCall::sync, DiskCall::open),
                         [](const auto& info) {
                             return info.param == DiskCall::rename ? "rename"
                                    : info.param == DiskCall::sync ? "sync"
                                                                   : "open";
                         });

TEST_F(RestoreFaultTest, two_restores_in_a_minute_keep_both_files_that_they_replaced) {
    const auto first = value_of(restore(backup_, file, clock));
    {
        auto store = value_of(Store::open(file, clock));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("between", MarkKind::pump_start)));
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("between-too", MarkKind::pump_stop, 9)));
    }
    const auto second = value_of(restore(backup_, file, clock));
    ASSERT_TRUE(first && second);
    EXPECT_NE(*first, *second);
    EXPECT_EQ(marks_in(*first), 1U);
    EXPECT_EQ(marks_in(*second), 2U);
}

}  // namespace
}  // namespace wetfront::test
