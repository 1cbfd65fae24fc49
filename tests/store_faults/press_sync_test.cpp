// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include "core/store/samples.h"
#include "watched_disk.h"

namespace wetfront::test {
namespace {

// A disk takes longest over a sync; a press that had to wait for two would be slow to confirm.
TEST(PressSyncTest, none_of_six_hundred_presses_waits_for_more_than_one_sync) {
    const StoreFolder folder;
    FakeClock clock;
    WatchedDisk disk;
    auto store = value_of(Store::open(folder.file(), clock));
    succeed(store.save(sample_farm()));
    succeed(store.save(sample_house()));
    succeed(store.save(sample_visit()));
    int syncs = 0;
    disk.tell([&](const DiskEvent& event) { syncs += event.kind == DiskEvent::Kind::synced ? 1 : 0; });
    for (int press = 0; press < 600; ++press) {
        syncs = 0;
        succeed(store.add_mark(Id{"visit-1"},
                               sample_mark("m" + std::to_string(press), MarkKind::pump_start, press)));
        ASSERT_EQ(syncs, 1) << "press " << press;
    }
    disk.tell({});
}

}  // namespace
}  // namespace wetfront::test
