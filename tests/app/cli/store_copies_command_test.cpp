// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"
#include "demo/demo.h"
#include "store/backup.h"

namespace wetfront::test {
namespace {

/// A record file with the demo's houses.
class StoreCopiesCommandTest : public testing::Test {
protected:
    StoreCopiesCommandTest() {
        auto store = Store::open(file, clock);
        EXPECT_TRUE(store) << store.error().text();
        EXPECT_TRUE(fill_store(store.value()));
        houses = store.value().houses().value().size();
    }
    void add_farm(const char* name) {
        auto store = Store::open(file, clock);
        ASSERT_TRUE(store) << store.error().text();
        Farm farm;
        farm.id = store.value().new_id();
        farm.name = name;
        ASSERT_TRUE(store.value().save(farm));
    }
    [[nodiscard]] std::size_t farms_in(const std::string& records) {
        const auto store = Store::open(records, clock, OpenMode::read_only);
        EXPECT_TRUE(store) << store.error().text();
        return store.value().farms().value().size();
    }
    [[nodiscard]] std::string back_up() {
        return run({"store", "backup", "--store", file, "--json"}).json().at("backup");
    }

    TemporaryFolder folder;
    FakeClock clock;
    std::string file = folder.file("records.wetfront");
    std::size_t houses = 0;
};

TEST_F(StoreCopiesCommandTest, a_backup_goes_beside_the_record_file_and_says_what_it_holds) {
    const auto made = run({"store", "backup", "--store", file, "--json"});
    EXPECT_EQ(made.status, 0) << made.err;
    const auto json = made.json();
    EXPECT_EQ(keys_of(json), (std::set<std::string>{"backup", "entries", "houses", "latest_entry"}));
    EXPECT_EQ(json.at("backup"), folder.file("backups/records-2026-07-01-0500.wetfront"));
    EXPECT_EQ(json.at("houses"), houses);
    const auto content = read_backup(json.at("backup").get<std::string>());
    ASSERT_TRUE(content) << content.error().text();
    EXPECT_EQ(json.at("entries"), content.value().entries);
    EXPECT_EQ(json.at("latest_entry"), to_iso8601(*content.value().latest));
}

TEST_F(StoreCopiesCommandTest, a_backup_goes_to_the_folder_that_is_named_and_the_text_says_where) {
    const auto made = run({"store", "backup", "--store", file, "--to", folder.file("stick")});
    EXPECT_EQ(made.status, 0) << made.err;
    EXPECT_NE(made.out.find(folder.file("stick/records-2026-07-01-0500.wetfront")), std::string::npos)
        << made.out;
    EXPECT_NE(made.out.find("latest entry  2026-07-01 05:00"), std::string::npos) << made.out;
}

TEST_F(StoreCopiesCommandTest, a_folder_that_cannot_be_made_is_a_failure_of_the_store) {
    const auto taken = folder.with("taken", "a file");
    const auto refused = run({"store", "backup", "--store", file, "--to", taken + "/copies"});
    EXPECT_EQ(refused.status, 3);
    EXPECT_NE(refused.err.find("taken"), std::string::npos) << refused.err;
}

TEST_F(StoreCopiesCommandTest, a_restore_goes_back_and_says_what_the_backup_holds_and_where_the_rest_is) {
    const auto backup = back_up();
    const auto before = farms_in(file);
    add_farm("Entered later");
    const auto restored = run({"store", "restore", backup, "--store", file, "--json"});
    EXPECT_EQ(restored.status, 0) << restored.err;
    const auto json = restored.json();
    EXPECT_EQ(keys_of(json),
              (std::set<std::string>{"store", "backup", "entries", "houses", "latest_entry", "replaced"}));
    EXPECT_EQ(json.at("houses"), houses);
    EXPECT_EQ(farms_in(file), before);
    EXPECT_EQ(farms_in(json.at("replaced")), before + 1);
}

TEST_F(StoreCopiesCommandTest, a_restore_in_words_names_the_replaced_file) {
    const auto backup = back_up();
    const auto restored = run({"store", "restore", backup, "--store", file});
    EXPECT_EQ(restored.status, 0) << restored.err;
    EXPECT_NE(restored.out.find("kept as " + file + ".replaced-"), std::string::npos) << restored.out;
    EXPECT_NE(restored.out.find("houses        " + std::to_string(houses)), std::string::npos)
        << restored.out;
}

TEST_F(StoreCopiesCommandTest, a_record_file_that_is_gone_is_brought_back) {
    const auto backup = back_up();
    const auto farms = farms_in(file);
    std::filesystem::remove(file);
    const auto restored = run({"store", "restore", backup, "--store", file, "--json"});
    EXPECT_EQ(restored.status, 0) << restored.err;
    EXPECT_TRUE(restored.json().at("replaced").is_null());
    EXPECT_EQ(farms_in(file), farms);
}

TEST_F(StoreCopiesCommandTest, what_is_no_backup_is_refused_and_the_record_file_stays) {
    const auto letter = folder.with("letter.txt", "Dear grower");
    const auto farms = farms_in(file);
    for (const auto& name : {letter, folder.file("none.wetfront")}) {
        const auto refused = run({"store", "restore", name, "--store", file});
        EXPECT_EQ(refused.status, 3) << name;
        EXPECT_EQ(refused.out, "");
        EXPECT_NE(refused.err.find(name), std::string::npos) << refused.err;
    }
    EXPECT_EQ(farms_in(file), farms);
}

TEST_F(StoreCopiesCommandTest, a_record_file_that_is_open_is_not_replaced) {
    const auto backup = back_up();
    const auto held = Store::open(file, clock);
    ASSERT_TRUE(held) << held.error().text();
    const auto refused = run({"store", "restore", backup, "--store", file});
    EXPECT_EQ(refused.status, 3);
    EXPECT_NE(refused.err.find("open"), std::string::npos) << refused.err;
}

TEST_F(StoreCopiesCommandTest, usage_is_refused_by_name) {
    expect_refused(run({"store", "restore", back_up()}), "--store");
    expect_refused(run({"store", "backup"}), "--store");
    expect_refused(run({"store", "restore", "--store", file}), "backup");
}

}  // namespace
}  // namespace wetfront::test
