// SPDX-License-Identifier: Apache-2.0
// The power goes after the nth change of the disk, for every n along a visit.
#include "power_cut.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iostream>

#include "act.h"
#include "book.h"
#include "core/store/samples.h"
#include "older_file.h"
#include "store/migration.h"

namespace wetfront::test {
namespace {

/// What a visit asked of the disk, and what the file must and may say after each change.
struct Log {
    std::vector<DiskEvent> events;
    std::vector<std::size_t> moment;  ///< of each event: number of the pair of books
    std::vector<std::vector<Book>> allowed;
};

Log record(const std::vector<Act>& acts, const std::filesystem::path& file, const Book& before,
           const Fault* fault = nullptr) {
    Log log;
    log.allowed = {{before}};
    Book acknowledged = before;
    Book with_it = before;
    WatchedDisk disk;
    disk.tell([&](DiskEvent event) {
        log.events.push_back(std::move(event));
        log.moment.push_back(log.allowed.size() - 1);
    });
    if (fault != nullptr) {
        disk.break_at(*fault);
    }
    FakeClock clock;
    const auto outcome = perform(acts, file, clock, before,
                                 {.begins =
                                      [&](const Act& act) {
                                          // An act that failed may still come to light.
                                          auto may = std::vector{acknowledged};
                                          if (with_it != acknowledged) {
                                              may.push_back(with_it);
                                          }
                                          with_it = acknowledged;
                                          act.effect(with_it);
                                          may.push_back(with_it);
                                          log.allowed.push_back(may);
                                      },
                                  .acknowledged =
                                      [&] {
                                          acknowledged = with_it;
                                          log.allowed.push_back({acknowledged});
                                      }});
    EXPECT_EQ(outcome.wrong, "");
    EXPECT_TRUE(fault != nullptr || outcome.errors.empty());
    return log;
}

/// Opens the file as each of some cuts after every `step`th change leaves it; how many it were.
int cut_power(const Log& log, Disk disk, const std::filesystem::path& name, unsigned seeds,
              std::size_t step = 1) {
    int cuts = 0;
    std::mt19937 random{1};
    for (std::size_t i = 0; i < log.events.size(); ++i) {
        disk.apply(log.events[i], random);
        // Until the next change the program may have gone on to acknowledge.
        const auto moment = i + 1 < log.moment.size() ? log.moment[i + 1] : log.allowed.size() - 1;
        for (unsigned seed = 0; i % step == 0 && seed < seeds; ++seed) {
            SCOPED_TRACE("cut after change " + std::to_string(i) + ", seed " + std::to_string(seed));
            std::mt19937 fate{static_cast<unsigned>(i) * 1000 + seed};
            const StoreFolder left;
            disk.leave(left.path(), fate);
            auto allowed = log.allowed[log.moment[i]];
            if (moment != log.moment[i]) {
                // Acknowledged with this change: from here on it must be there.
                allowed = log.allowed[std::min(log.moment[i] + 1, moment)];
            }
            // Once at each moment: it takes as long as the rest.
            EXPECT_EQ(judge(left.path() / name, allowed, seed == 0 ? Verify::yes : Verify::no), "");
            for (const auto& entry : std::filesystem::recursive_directory_iterator{left.path()}) {
                if (is_kept_copy(entry.path())) {
                    EXPECT_EQ(faults_of(entry.path()), "") << "a copy that is not whole: " << entry.path();
                }
            }
            ++cuts;
            if (testing::Test::HasFailure()) {
                return cuts;
            }
        }
    }
    return cuts;
}

class PowerCutTest : public testing::Test {
protected:
    StoreFolder folder;
};

TEST_F(PowerCutTest, at_any_moment_of_a_visit_leaves_every_acknowledged_entry) {
    const Disk disk{folder.path()};
    const auto log = record(whole_visit(), folder.file(), {});
    const int cuts = cut_power(log, disk, "records", 4);
    std::cout << cuts << " power cuts along a whole visit: nothing lost\n";
    EXPECT_GT(cuts, 1000);
}

TEST_F(PowerCutTest, leaves_what_was_entered_in_a_folder_that_was_just_made) {
    const Disk disk{folder.path()};
    const auto log = record(short_visit(), folder.path() / "made" / "deeper" / "records", {});
    const int cuts = cut_power(log, disk, "made/deeper/records", 4);
    std::cout << cuts << " power cuts in a new folder: nothing lost\n";
    EXPECT_GT(cuts, 300);
}

TEST_F(PowerCutTest, at_any_moment_of_a_migration_leaves_every_record_and_only_whole_copies) {
    for (const auto version : older_versions()) {
        const StoreFolder place;
        const StoreFolder twin;
        make_older_file(place.file(), version);
        std::filesystem::copy_file(place.file(), twin.file());
        const FakeClock clock;
        const auto before = value_of(read_book(value_of(Store::open(twin.file(), clock))));
        const Disk disk{place.path()};
        const auto log = record(visit_after_migration(), place.file(), before);
        const int cuts = cut_power(log, disk, "records", 8);
        std::cout << cuts << " power cuts from schema " << version << ": nothing lost\n";
        EXPECT_GT(cuts, 300);
    }
}

TEST_F(PowerCutTest, after_a_sync_that_failed_once_leaves_every_acknowledged_entry) {
    int cuts = 0;
    for (int nth = 1; nth <= 30; ++nth) {
        SCOPED_TRACE("sync " + std::to_string(nth));
        const StoreFolder place;
        const Disk disk{place.path()};
        const Fault fault{DiskCall::sync, nth, false, SQLITE_IOERR_FSYNC};
        const auto log = record(whole_visit(), place.file(), {}, &fault);
        cuts += cut_power(log, disk, "records", 2, 13);
    }
    std::cout << cuts << " power cuts after a failed sync: nothing lost\n";
    EXPECT_GT(cuts, 1000);
}

TEST_F(PowerCutTest, while_a_full_journal_goes_back_into_the_file_leaves_every_entry) {
    const Disk disk{folder.path()};
    auto acts = short_visit();
    acts.pop_back();  // the signature
    for (int i = 0; i < 260; ++i) {
        acts.push_back(mark_act("visit-1", "long-" + std::to_string(i), 100 + i));
    }
    auto log = record(acts, folder.file(), {});
    const auto in_the_file = std::count_if(log.events.begin(), log.events.end(), [&](const DiskEvent& event) {
        return event.kind == DiskEvent::Kind::wrote && event.path == folder.file().string();
    });
    EXPECT_GT(in_the_file, 10);
    const int cuts = cut_power(log, disk, "records", 1, 9);
    std::cout << cuts << " power cuts along " << log.events.size() << " changes: nothing lost\n";
    EXPECT_GT(cuts, 200);
}

}  // namespace
}  // namespace wetfront::test
