// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <iterator>

#include "cli_run.h"
#include "demo/demo.h"
#include "store/store.h"

namespace wetfront::test {
namespace {

constexpr std::string_view pdf = "%PDF-1.7 the sheet that was signed";

class StoreOfficeTest : public testing::Test {
protected:
    StoreOfficeTest() {
        auto store = Store::open(file_, clock_).value();
        EXPECT_TRUE(fill_store(store));
        EXPECT_TRUE(store.keep_sheet(example_visit().visit, pdf));
        const auto houses = store.houses().value();
        removed_ = houses.back().house.text;
        removed_name_ = houses.back().house_name;
        const auto gone = store.set_removed(RecordKind::house, houses.back().house, true);
        EXPECT_TRUE(gone) << gone.error().text();
    }
    [[nodiscard]] CliRun store(std::vector<std::string> arguments) const {
        arguments.insert(arguments.begin(), "store");
        arguments.insert(arguments.end(), {"--store", file_});
        return run(arguments);
    }
    [[nodiscard]] std::string bytes() const {
        std::ifstream stream{file_, std::ios::binary};
        return {std::istreambuf_iterator<char>{stream}, {}};
    }

    TemporaryFolder folder_;
    FakeClock clock_;
    std::string file_ = folder_.file("records.db");
    std::string removed_;
    std::string removed_name_;
};

TEST_F(StoreOfficeTest, verify_of_a_good_file_is_status_0_and_names_every_check) {
    const auto before = bytes();
    const auto result = store({"verify", "--json"});
    EXPECT_EQ(result.status, 0) << result.err;
    const auto json = result.json();
    EXPECT_EQ(keys_of(json), (std::set<std::string>{"sound", "checks", "chains"}));
    EXPECT_EQ(json.at("sound"), true);
    std::string names;
    for (const auto& check : json.at("checks")) {
        names += check.at("check").get<std::string>() + " ";
        // A file that was closed has no -wal beside it, and this one has nothing of a later version and no
        // photo.
        const auto has_none =
            check.at("check") == "wal" || check.at("check") == "aside" || check.at("check") == "photos";
        EXPECT_EQ(check.at("checked").get<int>() == 0, has_none) << check;
        EXPECT_EQ(check.at("wrong"), 0) << check;
        EXPECT_TRUE(check.at("first_wrong").is_null()) << check;
    }
    EXPECT_EQ(names, "file wal schema references numbers chain revisions marks sheets photos aside ");
    EXPECT_EQ(json.at("chains").at(0).at("hash").get<std::string>().size(), 64U);
    EXPECT_EQ(bytes(), before);
    const auto text = store({"verify"});
    EXPECT_EQ(text.status, 0);
    EXPECT_NE(text.out.find("All of it is good"), std::string::npos) << text.out;
}

TEST_F(StoreOfficeTest, verify_of_a_changed_file_is_status_1_and_names_the_entry) {
    auto changed = bytes();
    const auto place = changed.find("sheet that was signed");
    ASSERT_NE(place, std::string::npos);
    changed[place] ^= 1;
    std::ofstream{file_, std::ios::binary} << changed;
    const auto result = store({"verify", "--json"});
    EXPECT_EQ(result.status, 1);
    const auto json = result.json();
    EXPECT_EQ(json.at("sound"), false);
    const auto& checks = json.at("checks");
    const auto found =
        std::ranges::find_if(checks, [](const auto& each) { return each.at("check") == "sheets"; });
    ASSERT_NE(found, checks.end());
    const auto& sheets = *found;
    EXPECT_EQ(sheets.at("wrong"), 1);
    EXPECT_GT(sheets.at("first_wrong").at("entry").get<int>(), 0);
    EXPECT_NE(sheets.at("first_wrong").at("what").get<std::string>().find(example_visit().visit.id.text),
              std::string::npos);
    const auto text = store({"verify"}).out;
    EXPECT_NE(text.find("first wrong in sheets: entry "), std::string::npos) << text;
}

TEST_F(StoreOfficeTest, a_noted_hash_is_asked_for_and_must_be_one) {
    const auto noted = store({"verify", "--json"}).json().at("chains").at(0).at("hash").get<std::string>();
    EXPECT_EQ(store({"verify", "--known", noted}).status, 0);
    EXPECT_EQ(store({"verify", "--known", std::string(64, '0')}).status, 1);
    expect_refused(store({"verify", "--known", "abc"}), "--known");
}

TEST_F(StoreOfficeTest, verify_of_what_cannot_be_read_is_status_3) {
    EXPECT_EQ(run({"store", "verify", "--store", folder_.file("none.db")}).status, 3);
    EXPECT_EQ(run({"store", "verify", "--store", folder_.with("notes", std::string(200, 'x'))}).status, 3);
    expect_refused(run({"store", "verify"}), "--store");
}

TEST_F(StoreOfficeTest, a_kept_sheet_is_written_byte_for_byte) {
    const auto id = example_visit().visit.id.text;
    const auto out = folder_.file("sheet.pdf");
    const auto result = store({"sheet", id, "-o", out, "--json"});
    EXPECT_EQ(result.status, 0) << result.err;
    std::ifstream stream{out, std::ios::binary};
    EXPECT_EQ((std::string{std::istreambuf_iterator<char>{stream}, {}}), pdf);
    const auto json = result.json();
    EXPECT_EQ(json.at("bytes"), pdf.size());
    // printf '%s' '%PDF-1.7 the sheet that was signed' | sha256sum
    EXPECT_EQ(json.at("sha256"), "60fe5fae5e9ae2702c77a1fa17e4fb32b563b217a3d0c6a877194dc33d1d9985");
    EXPECT_EQ(store({"sheet", id, "-o", folder_.file("no/such/folder.pdf")}).status, 3);
}

TEST_F(StoreOfficeTest, a_visit_without_a_kept_sheet_gives_none) {
    const auto open_visit = demo_visits().back().visit.id.text;
    expect_refused(store({"sheet", open_visit, "-o", folder_.file("sheet.pdf")}), "no sheet was kept");
    EXPECT_FALSE(std::filesystem::exists(folder_.file("sheet.pdf")));
}

TEST_F(StoreOfficeTest, what_was_removed_is_in_the_list_of_removed_and_not_in_the_other) {
    EXPECT_EQ(store({"list"}).out.find(removed_), std::string::npos);
    const auto text = store({"list", "--removed"}).out;
    EXPECT_NE(text.find("house  " + removed_name_), std::string::npos) << text;
    const auto json = store({"list", "--removed", "--json"}).json();
    ASSERT_EQ(json.at("removed").size(), 1U);
    EXPECT_EQ(json.at("removed")[0].at("kind"), "house");
    EXPECT_EQ(json.at("removed")[0].at("id"), removed_);
}

TEST_F(StoreOfficeTest, history_follows_every_bank_of_a_house_with_a_verdict_on_each_series) {
    const auto result = store({"history", example_visit().house.id.text, "--json"});
    EXPECT_EQ(result.status, 0) << result.err;
    const auto json = result.json();
    EXPECT_EQ(keys_of(json), (std::set<std::string>{"house", "house_name", "series", "settings"}));
    ASSERT_FALSE(json.at("series").empty());
    std::set<std::string> followed;
    for (const auto& series : json.at("series")) {
        followed.insert(series.at("followed").get<std::string>());
        EXPECT_FALSE(series.at("values").empty());
        EXPECT_TRUE(series.at("change").is_null()) << "three visits show no change yet";
        if (series.at("values").size() < 5) {
            EXPECT_EQ(series.at("trend").at("verdict"), "too few visits");
            EXPECT_FALSE(series.at("trend").contains("p"));
        }
    }
    EXPECT_TRUE(followed.contains("fill"));
    EXPECT_TRUE(followed.contains("wet-through"));
    EXPECT_TRUE(json.at("series").at(0).at("values").at(0).contains("value_s"));
}

TEST_F(StoreOfficeTest, history_of_a_house_that_gets_worse_names_the_event_the_month_and_what_to_do) {
    {
        auto records = Store::open(file_, clock_).value();
        ASSERT_TRUE(records.set_removed(RecordKind::house, Id{removed_}, false));
    }
    const auto text = store({"history", removed_});
    EXPECT_EQ(text.status, 0) << text.err;
    for (const auto* words : {"since 2024-05-06 (Outlets cleaned) rises by", "2024-05-06  Outlets cleaned",
                              "base on-time of", "What to do: ", "changed: Base on-time: "}) {
        EXPECT_NE(text.out.find(words), std::string::npos) << words << "\n" << text.out;
    }
    const auto json = store({"history", removed_, "--json"}).json();
    bool rises = false;
    for (const auto& series : json.at("series")) {
        if (series.at("bank") == "demo-cedar-bank-2" && series.at("followed") == "wet-through") {
            rises = series.at("trend").at("verdict") == "rising";
            EXPECT_EQ(series.at("maintenance").at(0).at("what"), "outlets cleaned");
            EXPECT_EQ(series.at("limit").at("from"), "base on-time");
            EXPECT_GT(series.at("limit").at("value_s").get<double>(), 0.0);
        }
    }
    EXPECT_TRUE(rises);
    ASSERT_EQ(json.at("settings").size(), 1U);
    EXPECT_EQ(json.at("settings").at(0).at("visits").size(), 7U);
}

TEST_F(StoreOfficeTest, history_in_text_says_too_few_and_not_that_there_is_no_trend) {
    const auto result = store({"history", example_visit().house.id.text});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_NE(result.out.find("too few visits for a trend"), std::string::npos) << result.out;
    EXPECT_EQ(result.out.find("no trend"), std::string::npos) << result.out;
}

TEST_F(StoreOfficeTest, history_of_an_unknown_house_is_refused) {
    expect_refused(store({"history", "nobody-knows-it"}), "nobody-knows-it");
}

// Python's csv module is the outside reader.
TEST_F(StoreOfficeTest, a_table_reads_back_by_another_program_as_the_json_has_it) {
    for (const char* table : {"readings", "settings", "findings"}) {
        const auto csv = folder_.with("table.csv", store({"table", table}).out);
        const auto json = store({"table", table, "--json"}).json();
        const auto read = run_in_shell(
            "python3 -c 'import csv,json,sys; print(json.dumps(list(csv.DictReader(open(sys.argv[1], "
            "newline=\"\", "
            "encoding=\"utf-8\")))))' '" +
            csv + "'");
        ASSERT_EQ(read.status, 0);
        const auto rows = nlohmann::json::parse(read.out);
        ASSERT_GT(rows.size(), 5U) << table;
        ASSERT_EQ(rows.size(), json.at("rows").size());
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const auto& wanted = json.at("rows")[i];
            EXPECT_EQ(keys_of(rows[i]), keys_of(wanted));
            for (const auto& [key, cell] : wanted.items()) {
                const auto got = rows[i].at(key).get<std::string>();
                if (cell.is_number()) {
                    EXPECT_EQ(std::stod(got), cell.get<double>()) << key;
                } else if (cell.is_boolean()) {
                    EXPECT_EQ(got, cell.get<bool>() ? "true" : "false") << key;
                } else {
                    EXPECT_EQ(got, cell.is_null() ? "" : cell.get<std::string>()) << key;
                }
            }
        }
    }
}

TEST_F(StoreOfficeTest, a_table_of_one_house_has_that_house_alone) {
    const auto all = store({"table", "readings", "--json"}).json().at("rows");
    const auto house = all.at(0).at("house").get<std::string>();
    const auto one = store({"table", "readings", house, "--json"}).json().at("rows");
    EXPECT_GT(one.size(), 0U);
    EXPECT_LT(one.size(), all.size());
    for (const auto& row : one) {
        EXPECT_EQ(row.at("house"), house);
    }
    expect_refused(store({"table", "readings", "no-such-house"}), "no-such-house");
    expect_refused(store({"table", "prices"}), "prices");
}

}  // namespace
}  // namespace wetfront::test
