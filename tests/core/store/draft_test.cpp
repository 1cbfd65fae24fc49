// SPDX-License-Identifier: Apache-2.0
#include "store/draft.h"

#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <fstream>

#include "child.h"
#include "samples.h"
#include "store/backup.h"
#include "store/record_file.h"

namespace wetfront::test {
namespace {

using ::testing::IsEmpty;
using ::testing::UnorderedElementsAreArray;

class DraftTest : public StoreTest {
protected:
    /// Names in the folder of the file and, with "backups/" before them, in that of its copies.
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> all;
        for (const auto& entry : std::filesystem::recursive_directory_iterator{folder.path()}) {
            all.push_back(entry.path().lexically_relative(folder.path()).string());
        }
        return all;
    }
    [[nodiscard]] std::vector<std::string> drafts() const {
        auto all = names();
        std::erase_if(all, [](const std::string& name) { return name.find(".unfinished-") == name.npos; });
        return all;
    }
    void put(const std::string& name) const { std::ofstream{folder.path() / name} << "anything"; }
};

/// The number of a process that was there a moment ago.
std::string number_of_the_dead() {
    Child child{[](const Child::Say&) {}};
    child.kill();
    return std::to_string(child.process());
}

TEST_F(DraftTest, of_a_copy_that_a_kill_interrupted_is_removed_at_the_next_start) {
    Child copier{[&](const Child::Say& say) {
        auto store = open_with_visit();
        auto visit = sample_visit();
        visit.signatures = {sample_signature()};
        // More than is copied at once.
        succeed(store.keep_sheet(visit, "%PDF-1.4 " + std::string(5'000'000, 'x')));
        const auto made = store.back_up(backup_folder_of(file), [&](double) {
            say("copying");
            ::pause();
            return true;
        });
        say(made ? "made" : made.error().text());
    }};
    ASSERT_EQ(copier.line(), "copying");
    copier.kill();
    EXPECT_THAT(drafts(), Not(IsEmpty()));
    { const auto store = open(); }
    EXPECT_THAT(names(), UnorderedElementsAreArray({"records", "backups"}));
}

TEST_F(DraftTest, of_a_new_file_whose_maker_was_killed_is_removed_at_the_next_start) {
    Child maker{[&](const Child::Say& say) {
        const std::array<store_detail::Migration, 2> steps{store_detail::make_schema_1,
                                                           [](SQLite::Database&) { std::raise(SIGKILL); }};
        say(error_of(store_detail::RecordFile::open(file, clock, OpenMode::read_write, steps)));
    }};
    ASSERT_EQ(maker.line(), "");
    maker.kill();
    EXPECT_THAT(drafts(), Not(IsEmpty()));
    EXPECT_FALSE(std::filesystem::exists(file));
    { const auto store = open(); }
    EXPECT_THAT(names(), UnorderedElementsAreArray({"records"}));
}

TEST_F(DraftTest, of_anything_that_is_made_of_the_file_is_removed_with_its_journals) {
    { const auto store = open_with_visit(); }
    std::filesystem::create_directory(backup_folder_of(file));
    const auto dead = number_of_the_dead();
    for (const std::string draft : {"records", "records.before-v3-2026-07-01",
                                    "records.restoring-2026-07-01-0900", "backups/records-2026-07-01-0900"}) {
        for (const auto* journal : {"", "-wal", "-shm", "-journal"}) {
            put(draft + ".unfinished-" + dead + journal);
        }
    }
    // A number given anew to this very process.
    put("records.unfinished-" + std::to_string(::getpid()));
    { const auto store = open(); }
    EXPECT_THAT(names(), UnorderedElementsAreArray({"records", "backups"}));
}

TEST_F(DraftTest, of_a_living_process_and_what_only_looks_like_one_stays) {
    { const auto store = open_with_visit(); }
    std::filesystem::create_directory(backup_folder_of(file));
    Child living{[](const Child::Say& say) {
        say("here");
        ::pause();
    }};
    ASSERT_EQ(living.line(), "here");
    const auto dead = number_of_the_dead();
    const auto alive = std::to_string(living.process());
    for (const auto& name :
         {"records.unfinished-" + alive, "records.unfinished-" + alive + "-journal",
          "records.before-v3-2026-07-01.unfinished-" + alive,
          "records.restoring-2026-07-01-0900.unfinished-" + alive,
          "backups/records-2026-07-01-0900.unfinished-" + alive, std::string{"records.unfinished-1"},
          // Of other files.
          "other.unfinished-" + dead, "backups/other-2026-07-01-0900.unfinished-" + dead,
          "backups/records-notes.unfinished-" + dead, "records.copy.unfinished-" + dead,
          // Of no process.
          std::string{"records.unfinished-"}, std::string{"records.unfinished-notes"},
          "records.unfinished-" + dead + ".txt", std::string{"records.unfinished-99999999999999999999"},
          // What is whole.
          std::string{"records.before-v3-2026-07-01"}, std::string{"records.replaced-2026-07-01-0900"},
          std::string{"backups/records-2026-07-01-0900"}}) {
        put(name);
    }
    std::filesystem::create_directory(file.string() + ".unfinished-" + dead);
    std::filesystem::create_symlink(file, file.string() + ".before-v3-2026-07-01.unfinished-" + dead);
    const auto before = names();
    { const auto store = open(); }
    EXPECT_THAT(names(), UnorderedElementsAreArray(before));
}

TEST_F(DraftTest, stays_where_the_file_is_only_viewed_or_another_program_holds_it) {
    { const auto store = open_with_visit(); }
    const auto draft = "records.unfinished-" + number_of_the_dead();
    put(draft);
    { const auto store = open(OpenMode::read_only); }
    Child holder{[&](const Child::Say& say) {
        const auto store = open(OpenMode::read_only);
        say("open");
        ::pause();
    }};
    ASSERT_EQ(holder.line(), "open");
    EXPECT_FALSE(Store::open(file, clock));
    holder.kill();
    EXPECT_THAT(drafts(), UnorderedElementsAreArray({draft}));
}

}  // namespace
}  // namespace wetfront::test
