// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <algorithm>
#include <csignal>
#include <iterator>

#include "cli_run.h"
#include "demo/demo.h"
#include "store/store.h"
#include "support/full_disk.h"

namespace wetfront::test {
namespace {

constexpr std::string_view kept_pdf = "%PDF-1.7 the sheet as it was handed out";

/// The demo's record file: one sheet kept, the last visit of House Cedar open, every other one signed.
class StoreSheetsTest : public testing::Test {
protected:
    StoreSheetsTest() {
        auto store = Store::open(records_, clock_).value();
        EXPECT_TRUE(fill_store(store));
        EXPECT_TRUE(store.keep_sheet(example_visit().visit, kept_pdf));
    }
    [[nodiscard]] CliRun sheets(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), {"store", "sheets", "--store", records_, "--to", to_});
        return run(arguments, {}, printer_);
    }
    [[nodiscard]] std::vector<std::string> files() const {
        std::vector<std::string> names;
        if (std::filesystem::exists(to_)) {
            for (const auto& entry : std::filesystem::directory_iterator{to_}) {
                names.push_back(entry.path().filename().string());
            }
        }
        std::ranges::sort(names);
        return names;
    }
    [[nodiscard]] std::string content(const std::string& name) const {
        std::ifstream stream{std::filesystem::path{to_} / name, std::ios::binary};
        return {std::istreambuf_iterator<char>{stream}, {}};
    }
    [[nodiscard]] static std::size_t signed_in_demo() {
        const auto all = demo_visits();
        return static_cast<std::size_t>(
            std::ranges::count_if(all, [](const VisitFile& file) { return file.visit.is_signed(); }));
    }

    TemporaryFolder folder_;
    FakeClock clock_;
    std::string records_ = folder_.file("records.db");
    std::string to_ = folder_.file("sheets");
    std::vector<std::string> drawn_;
    SheetPrinter printer_ = [this](const SheetOrder& order) -> Result<std::string> {
        drawn_.push_back(order.content.id);
        return "%PDF-drawn " + order.content.id + (order.content.draft ? " draft" : "") +
               (order.paper == SheetPaperSize::a4 ? " a4" : "") +
               (order.language == SheetLanguage::spanish ? " es" : "") +
               (order.units == UnitSystem::si ? " si" : "");
    };
};

TEST_F(StoreSheetsTest, every_signed_visit_becomes_one_file_and_the_kept_one_is_its_kept_bytes) {
    const auto result = sheets({"--json"});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.err, "");
    const auto json = result.json();
    EXPECT_EQ(keys_of(json),
              (std::set<std::string>{"folder", "chosen", "written", "stopped", "sheets", "failed"}));
    EXPECT_EQ(json.at("written"), signed_in_demo());
    EXPECT_EQ(json.at("stopped"), false);
    EXPECT_TRUE(json.at("failed").empty());
    ASSERT_EQ(files().size(), signed_in_demo());
    EXPECT_EQ(drawn_.size(), signed_in_demo() - 1);
    std::size_t kept = 0;
    for (const auto& sheet : json.at("sheets")) {
        EXPECT_EQ(sheet.at("draft"), false);
        const auto bytes = content(sheet.at("file").get<std::string>());
        if (sheet.at("kept").get<bool>()) {
            ++kept;
            EXPECT_EQ(sheet.at("visit"), example_visit().visit.id.text);
            EXPECT_EQ(bytes, kept_pdf);
        } else {
            EXPECT_EQ(bytes, "%PDF-drawn " + sheet.at("visit").get<std::string>());
        }
    }
    EXPECT_EQ(kept, 1U);
}

TEST_F(StoreSheetsTest, progress_is_one_line_a_sheet_on_stderr_and_the_count_on_stdout) {
    const auto result = sheets({});
    const auto all = std::to_string(signed_in_demo());
    EXPECT_EQ(static_cast<std::size_t>(std::ranges::count(result.err, '\n')), signed_in_demo());
    EXPECT_EQ(result.err.rfind("1 of " + all + "  ", 0), 0U) << result.err;
    EXPECT_NE(result.err.find(all + " of " + all + "  "), std::string::npos) << result.err;
    EXPECT_EQ(result.out, "Written to " + to_ + ": " + all + " of " + all + ".\n");
}

TEST_F(StoreSheetsTest, the_last_visit_of_each_house_may_be_a_draft) {
    const auto json = sheets({"--visits", "last", "--json"}).json();
    ASSERT_EQ(json.at("sheets").size(), 3U);
    EXPECT_EQ(json.at("sheets")[2].at("visit"), demo_visits().back().visit.id.text);
    EXPECT_EQ(json.at("sheets")[2].at("draft"), true);
}

TEST_F(StoreSheetsTest, a_house_and_a_span_of_days_are_kept_to_with_both_days_in_it) {
    const auto all = demo_visits();
    const auto& house = all.back().house.id;
    std::vector<const VisitFile*> of_house;
    for (const auto& file : all) {
        if (file.house.id == house && file.visit.is_signed()) {
            of_house.push_back(&file);
        }
    }
    ASSERT_GT(of_house.size(), 3U);
    const auto first = local_date(of_house[1]->visit.started);
    const auto last = local_date(of_house[2]->visit.started);
    const auto json = sheets({"--house", house.text, "--from", first, "--until", last, "--json"}).json();
    ASSERT_EQ(json.at("sheets").size(), 2U);
    EXPECT_EQ(json.at("sheets")[0].at("visit"), of_house[1]->visit.id.text);
    EXPECT_EQ(json.at("sheets")[1].at("visit"), of_house[2]->visit.id.text);
}

TEST_F(StoreSheetsTest, a_farm_has_the_sheets_of_its_houses_and_no_others) {
    auto elsewhere = example_visit();
    elsewhere.farm.id = Id{"other-farm"};
    elsewhere.house.id = Id{"other-house"};
    elsewhere.house.farm = elsewhere.farm.id;
    elsewhere.visit.house = elsewhere.house.id;
    elsewhere.visit.id = Id{"other-visit"};
    for (auto& mark : elsewhere.visit.marks) {
        mark.id.text += "-other";
    }
    {
        auto store = Store::open(records_, clock_).value();
        ASSERT_TRUE(store.add(elsewhere));
    }
    EXPECT_EQ(sheets({"--json"}).json().at("chosen"), signed_in_demo() + 1);
    const auto json = sheets({"--farm", "other-farm", "--json"}).json();
    ASSERT_EQ(json.at("sheets").size(), 1U);
    EXPECT_EQ(json.at("sheets")[0].at("visit"), "other-visit");
    EXPECT_EQ(sheets({"--farm", "demo-farm", "--json"}).json().at("chosen"), signed_in_demo());
}

TEST_F(StoreSheetsTest, summaries_are_drawn_and_have_a_name_of_their_own) {
    const auto json = sheets({"--summary", "--house", example_visit().house.id.text, "--paper", "a4",
                              "--language", "es", "--units", "si", "--json"})
                          .json();
    ASSERT_FALSE(json.at("sheets").empty());
    for (const auto& sheet : json.at("sheets")) {
        EXPECT_EQ(sheet.at("kept"), false);
        const auto name = sheet.at("file").get<std::string>();
        EXPECT_TRUE(name.ends_with(".summary.pdf")) << name;
        EXPECT_TRUE(content(name).ends_with(" a4 es si")) << content(name);
    }
}

TEST_F(StoreSheetsTest, a_visit_that_cannot_be_drawn_is_told_with_its_id_and_the_rest_goes_on) {
    const auto bad = demo_visits().front().visit.id.text;
    const auto paints = printer_;
    printer_ = [&](const SheetOrder& order) -> Result<std::string> {
        if (order.content.id == bad) {
            return bad_input("sheet", "", "this one is not drawn");
        }
        return paints(order);
    };
    const auto text = sheets({});
    EXPECT_EQ(text.status, 2);
    EXPECT_NE(text.err.find("wetfront-cli: visit " + bad + ": "), std::string::npos) << text.err;
    EXPECT_EQ(files().size(), signed_in_demo() - 1);
    const auto json = sheets({"--json"}).json();
    ASSERT_EQ(json.at("failed").size(), 1U);
    EXPECT_EQ(json.at("failed")[0].at("visit"), bad);
}

TEST_F(StoreSheetsTest, ctrl_c_leaves_whole_files_alone_and_says_how_many) {
    const auto paints = printer_;
    printer_ = [&](const SheetOrder& order) {
        if (drawn_.size() == 2) {
            std::raise(SIGINT);
        }
        return paints(order);
    };
    const auto result = sheets({"--json"});
    EXPECT_EQ(result.status, 130) << result.err;
    const auto json = result.json();
    EXPECT_EQ(json.at("stopped"), true);
    EXPECT_EQ(json.at("chosen"), signed_in_demo());
    EXPECT_LT(files().size(), signed_in_demo());
    ASSERT_EQ(json.at("written"), files().size());
    for (const auto& sheet : json.at("sheets")) {
        EXPECT_TRUE(content(sheet.at("file").get<std::string>()).starts_with("%PDF-"));
    }
    drawn_.assign(3, "so that it goes through");
    EXPECT_EQ(sheets({}).status, 0) << "the next run is not stopped";
}

TEST_F(StoreSheetsTest, a_folder_that_is_full_ends_the_run_with_what_was_written_before) {
    printer_ = [this](const SheetOrder& order) -> Result<std::string> {
        drawn_.push_back(order.content.id);
        return drawn_.size() > 3 ? std::string(70'000, 'x') : order.content.id;
    };
    CliRun result;
    {
        const FullDisk full{60'000};
        result = sheets({"--json"});
    }
    EXPECT_EQ(result.status, 3);
    EXPECT_NE(result.err.find("no room left"), std::string::npos) << result.err;
    EXPECT_EQ(drawn_.size(), 4U) << "the next one would fare no better";
    EXPECT_NE(result.err.find(std::to_string(files().size()) + " of "), std::string::npos) << result.err;
    EXPECT_TRUE(
        std::ranges::none_of(files(), [](const std::string& name) { return !name.ends_with(".pdf"); }));
}

TEST_F(StoreSheetsTest, what_is_not_there_and_days_that_are_none_are_refused) {
    expect_refused(sheets({"--house", "nobody-knows-it"}), "nobody-knows-it");
    expect_refused(sheets({"--farm", "nobody-knows-it"}), "nobody-knows-it");
    expect_refused(sheets({"--from", "July"}), "--from");
    expect_refused(sheets({"--until", "2026-02-30"}), "--until");
    expect_refused(sheets({"--visits", "some"}), "some");
    EXPECT_FALSE(std::filesystem::exists(to_));
    printer_ = {};
    expect_refused(sheets({}), "no printer");
}

TEST_F(StoreSheetsTest, a_choice_without_a_visit_says_so_and_makes_no_folder) {
    const auto result = sheets({"--until", "1999-12-31"});
    EXPECT_EQ(result.status, 0);
    EXPECT_EQ(result.out, "No visit is of that choice.\n");
    EXPECT_FALSE(std::filesystem::exists(to_));
}

TEST_F(StoreSheetsTest, a_folder_that_cannot_be_made_is_status_3) {
    const auto in_the_way = folder_.with("file", "x");
    to_ = in_the_way + "/sheets";
    EXPECT_EQ(sheets({}).status, 3);
}

#if WETFRONT_CLI_PRINTS
TEST_F(StoreSheetsTest, the_program_itself_paints_pages_that_are_counted_sheet_by_sheet) {
    const auto result =
        run_in_shell(std::string{WETFRONT_CLI} + " store sheets --store '" + records_ + "' --to '" + to_ +
                     "' --house " + demo_visits().back().house.id.text + " 2>/dev/null");
    EXPECT_EQ(result.status, 0) << result.out;
    ASSERT_GT(files().size(), 3U);
    for (const auto& name : files()) {
        const auto text = run_in_shell("pdftotext '" + to_ + "/" + name + "' -");
        EXPECT_NE(text.out.find("page 1 of "), std::string::npos) << name;
    }
}
#endif

}  // namespace
}  // namespace wetfront::test
