// SPDX-License-Identifier: Apache-2.0
// A disk on which the nth call fails, for every n along a visit.
#include <gtest/gtest.h>

#include <iostream>

#include "act.h"
#include "book.h"
#include "core/store/samples.h"
#include "older_file.h"
#include "store/migration.h"
#include "watched_disk.h"

namespace wetfront::test {
namespace {

struct Case {
    const char* name;
    DiskCall call;
    int code;
    std::vector<const char*> said;  ///< one of them, in every error
};

// What the operating system says of the store's own calls counts as much as what SQLite says of its.
const std::vector<const char*> broken{"the disk could not be read or written"};
const std::vector<const char*> left_over{"the disk could not be read or written",
                                         "what is left of an earlier attempt cannot be removed"};
const std::vector<const char*> read_back{"the disk could not be read or written",
                                         "what was written to the disk reads back otherwise"};
const std::vector<const char*> nothing_there{
    "the disk could not be read or written", "what was written to the disk reads back otherwise",
    "the file is damaged", "it does not say which device", "cannot be read"};

const std::vector<Case>& cases() {
    static const std::vector<Case> all{
        {"read", DiskCall::read, SQLITE_IOERR_READ, read_back},
        {"read_of_nothing", DiskCall::read, SQLITE_IOERR_SHORT_READ, nothing_there},
        {"write", DiskCall::write, SQLITE_IOERR_WRITE, broken},
        {"write_on_a_full_disk", DiskCall::write, SQLITE_FULL, {"the disk is full"}},
        {"sync", DiskCall::sync, SQLITE_IOERR_FSYNC, broken},
        {"truncate", DiskCall::truncate, SQLITE_IOERR_TRUNCATE, broken},
        {"open", DiskCall::open, SQLITE_CANTOPEN, {"it cannot be opened", "Too many open files"}},
        {"remove", DiskCall::remove, SQLITE_IOERR_DELETE, left_over},
        {"access", DiskCall::access, SQLITE_IOERR_ACCESS, broken},
        {"file_size", DiskCall::file_size, SQLITE_IOERR_FSTAT, broken},
        {"lock", DiskCall::lock, SQLITE_IOERR_LOCK, broken},
        {"busy_lock",
         DiskCall::lock,
         SQLITE_BUSY,
         {"it is open in another program", "another program is using it"}},
        {"shared_memory", DiskCall::shared_memory, SQLITE_IOERR_SHMMAP, broken},
    };
    return all;
}

struct FaultCounts {
    int faults = 0;
    int errors = 0;
};

/// A page of the list of free pages that reads as nothing is lost as room, not as record: SQLite goes on
/// without it.
std::string judge_after(const Case& fails, const std::filesystem::path& file, const Outcome& outcome) {
    const auto wrong = judge(file, outcome.allowed);
    const bool free_page =
        fails.code == SQLITE_IOERR_SHORT_READ && wrong.find("Main freelist: size is") != wrong.npos;
    return free_page ? told_by_verify(file, "file") : wrong;
}

/// Does the acts with the nth call broken, for every n until there is no nth call.
FaultCounts break_every(const Case& fails, bool for_ever, std::size_t version, const std::vector<Act>& acts) {
    FaultCounts counts;
    Book before;
    const StoreFolder kept;
    const auto older = kept.path() / "older";
    if (version > 0) {
        make_older_file(older, version);
        std::filesystem::copy_file(older, kept.file());
        const FakeClock clock;
        before = value_of(read_book(value_of(Store::open(kept.file(), clock))));
    }
    for (int nth = 1;; ++nth) {
        SCOPED_TRACE(std::string{fails.name} + " number " + std::to_string(nth));
        const StoreFolder folder;
        const auto file = folder.path() / "deeper" / "records";
        if (version > 0) {
            std::filesystem::create_directory(file.parent_path());
            std::filesystem::copy_file(older, file);
        }
        WatchedDisk disk;
        FakeClock clock;
        disk.break_at({fails.call, nth, for_ever, fails.code});
        auto outcome = perform(acts, file, clock, before);
        // What a program killed now would leave.
        const auto left = folder.path() / "left";
        std::filesystem::create_directory(left);
        for (const auto* suffix : {"", "-wal"}) {
            if (std::filesystem::exists(file.string() + suffix)) {
                std::filesystem::copy_file(file.string() + suffix, left / ("records" + std::string{suffix}));
            }
        }
        outcome.store.reset();
        if (!disk.has_failed()) {
            EXPECT_EQ(outcome.wrong, "");
            EXPECT_TRUE(outcome.errors.empty());
            return counts;
        }
        disk.repair();
        ++counts.faults;
        counts.errors += static_cast<int>(outcome.errors.size());
        EXPECT_EQ(outcome.wrong, "");
        for (const auto& error : outcome.errors) {
            EXPECT_EQ(vague_in(error, file), "") << error.text();
            EXPECT_TRUE(std::any_of(fails.said.begin(), fails.said.end(), [&](const char* said) {
                return error.read.find(said) != std::string::npos;
            })) << error.text();
        }
        EXPECT_EQ(judge_after(fails, file, outcome), "") << "after closing";
        EXPECT_EQ(judge_after(fails, left / "records", outcome), "") << "as left by a kill";
        for (const auto& entry : std::filesystem::directory_iterator{file.parent_path()}) {
            if (is_kept_copy(entry.path())) {
                EXPECT_EQ(faults_of(entry.path()), "") << "a copy that is not whole: " << entry.path();
            }
        }
        if (::testing::Test::HasFailure()) {
            return counts;
        }
    }
}

class DiskFaultTest : public testing::TestWithParam<std::tuple<std::size_t, bool>> {
protected:
    [[nodiscard]] const Case& fails() const { return cases()[std::get<0>(GetParam())]; }
    [[nodiscard]] bool for_ever() const { return std::get<1>(GetParam()); }

    void tell(const char* during, const FaultCounts& counts) const {
        std::cout << counts.faults << " faults (" << fails().name << (for_ever() ? ", for ever" : ", once")
                  << ", " << during << "), " << counts.errors << " errors said, nothing lost\n";
    }
};

std::string disk_fault_name(const testing::TestParamInfo<std::tuple<std::size_t, bool>>& info) {
    return std::string{cases()[std::get<0>(info.param)].name} +
           (std::get<1>(info.param) ? "_for_ever" : "_once");
}

TEST_P(DiskFaultTest, at_any_moment_of_a_visit_loses_nothing_acknowledged_and_is_said) {
    // A full disk differs from a broken one in what it says.
    const bool full = fails().code == SQLITE_FULL;
    const auto counts = break_every(fails(), for_ever(), 0, full ? short_visit() : whole_visit());
    tell(full ? "a short visit" : "a whole visit", counts);
    EXPECT_GT(counts.faults, 0);
}

TEST_P(DiskFaultTest, at_any_moment_of_a_migration_loses_nothing_and_is_said) {
    for (const auto version : older_versions()) {
        const auto counts = break_every(fails(), for_ever(), version, visit_after_migration());
        tell(("from schema " + std::to_string(version)).c_str(), counts);
    }
}

INSTANTIATE_TEST_SUITE_P(Calls, DiskFaultTest,
                         testing::Combine(testing::Range(std::size_t{0}, cases().size()), testing::Bool()),
                         disk_fault_name);

}  // namespace
}  // namespace wetfront::test
