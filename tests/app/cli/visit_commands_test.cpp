// SPDX-License-Identifier: Apache-2.0
#include "cli_run.h"

#include <algorithm>

#include "demo/demo.h"
#include "records/record_text.h"
#include "store/store.h"

namespace wetfront::test {
namespace {

using testing::TempDir;

std::string example() {
    return visit_file_text(example_visit());
}

std::string never_resting() {
    for (const auto& file : demo_visits()) {
        if (file.house.name == "House Birch" && local_date(file.visit.started) > "2026") {
            return visit_file_text(file);
        }
    }
    return {};
}

TEST(AdviseCommandTest, the_json_object_has_the_documented_keys_at_every_level) {
    const auto result = run({"advise", "-", "--json"}, example());
    ASSERT_EQ(result.status, 0) << result.err;
    const auto json = result.json();
    EXPECT_EQ(keys_of(json),
              (std::set<std::string>{"visit", "timers", "continuous", "cycle", "settings", "banks",
                                     "findings", "truth", "truth_source", "assumed", "missing", "notes"}));
    ASSERT_FALSE(json.at("settings").empty());
    for (const auto* list : {"settings", "cycle", "continuous"}) {
        for (const auto& setting : json.at(list)) {
            EXPECT_EQ(keys_of(setting),
                      (std::set<std::string>{"timer", "name", "value", "unit", "rounded", "reason", "rule",
                                             "formula", "inputs", "source"}));
            EXPECT_FALSE(setting.at("reason").get<std::string>().empty()) << setting;
        }
    }
    EXPECT_EQ(json.at("banks").size(), 2U);
    // When pads may run comes first and is the same both ways; then the cycle.
    const auto& settings = json.at("settings");
    ASSERT_EQ(settings.size(), 5U + json.at("cycle").size());
    EXPECT_EQ(settings[0].at("name"), "start_temperature");
    EXPECT_EQ(settings[4].at("name"), "pad_hours_to");
    for (std::size_t i = 5; i < settings.size(); ++i) {
        EXPECT_EQ(settings[i], json.at("cycle")[i - 5]);
    }
}

TEST(AdviseCommandTest, a_time_of_day_is_a_clock_in_text_and_seconds_after_midnight_in_json) {
    const auto json = run({"advise", "-", "--json"}, example()).json();
    const auto& from = json.at("settings")[3];
    ASSERT_EQ(from.at("name"), "pad_hours_from");
    EXPECT_EQ(from.at("unit"), "s");
    const int minutes = static_cast<int>(from.at("rounded").get<double>()) / 60;
    ASSERT_GE(minutes, 360);
    ASSERT_LT(minutes, 720);
    const auto two_digits = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    EXPECT_NE(run({"advise", "-"}, example())
                  .out.find("Pad hours from                  " + two_digits(minutes / 60) + ":" +
                            two_digits(minutes % 60)),
              std::string::npos);
}

TEST(AdviseCommandTest, explain_lists_every_margin_and_limit_with_where_it_comes_from) {
    const auto brief = run({"advise", "-"}, example()).out;
    const auto full = run({"advise", "-", "--explain"}, example()).out;
    EXPECT_EQ(brief.find("Margins and limits of the advice"), std::string::npos);
    for (const auto* line :
         {"Margins and limits of the advice", "  - shortest rest 60 s (assumed, can be changed)",
          "at least 500 ft/min (published: 500 ft/min: Czarick, Fairchild, Leu"}) {
        EXPECT_NE(full.find(line), std::string::npos) << line;
    }
}

/// The example with limits changed for its farm.
std::string example_with(const nlohmann::ordered_json& limits) {
    auto json = nlohmann::ordered_json::parse(example());
    json["farm"]["limits"] = limits;
    return json.dump();
}

TEST(AdviseCommandTest, limits_changed_in_the_file_change_the_advice_and_are_told_as_changed) {
    const auto on_time = [](const std::string& file) {
        const auto json = run({"advise", "-", "--json"}, file).json();
        for (const auto& setting : json.at("cycle")) {
            if (setting.at("name") == "base_on_time") {
                return setting.at("value").get<double>();
            }
        }
        return 0.0;
    };
    const auto changed = example_with({{"water_margin", "110 %"}, {"least_air_speed", "3 m/s"}});
    EXPECT_GT(on_time(example()), on_time(changed));
    const auto full = run({"--units", "si", "advise", "-", "--explain"}, changed);
    ASSERT_EQ(full.status, 0) << full.err;
    for (const auto* line :
         {"  - water margin 110 %, changed for this farm (the program's own: 125 %) (entered)",
          "at least 3 m/s, changed for this farm (the program's own: 2.54 m/s) (entered: the program's own: "
          "500 ft/min: Czarick",
          "Runs bring 110 % of the water that a pad evaporates"}) {
        EXPECT_NE(full.out.find(line), std::string::npos) << line << "\n" << full.out;
    }
    const auto assumed = run({"--units", "si", "advise", "-", "--json"}, changed).json().at("assumed");
    EXPECT_NE(std::find(assumed.begin(), assumed.end(),
                        "water margin 110 %, changed for this farm (the program's own: 125 %)"),
              assumed.end())
        << assumed;
}

TEST(AdviseCommandTest, limits_that_cannot_be_used_together_are_said_and_found) {
    const auto file = example_with({{"least_rest", "10 min"}});
    EXPECT_NE(run({"advise", "-"}, file).out.find("cannot be used together (shortest rest"),
              std::string::npos);
    const auto findings = run({"check", "-", "--json"}, file).json().at("findings");
    EXPECT_EQ(findings.at(0).at("rule"), "limits-unusable") << findings;
    expect_refused(run({"advise", "-"}, example_with({{"least_rest", "2 h"}})), "farm.limits.least_rest");
}

TEST(AdviseCommandTest, with_a_template_it_says_what_to_enter_in_the_labels_of_the_controller) {
    const auto dir = std::filesystem::path{testing::TempDir()} / "controller.json";
    std::ofstream{dir} << run({"example", "template"}).out;
    const auto text = run({"advise", "-", "--template", dir.string()}, example());
    ASSERT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("To be entered, as "), std::string::npos) << text.out;
    const auto json = run({"advise", "-", "--template", dir.string(), "--json"}, example()).json();
    const auto& fit = json.at("timers").at(0).at("to_enter");
    EXPECT_EQ(keys_of(fit), (std::set<std::string>{"template", "fits", "lines", "not_held"}));
    ASSERT_FALSE(fit.at("lines").empty());
    for (const auto& line : fit.at("lines")) {
        EXPECT_NE(text.out.find(line.at("label").get<std::string>()), std::string::npos) << line;
    }
    EXPECT_TRUE(run({"advise", "-", "--json"}, example()).json().at("timers").at(0).at("to_enter").is_null());
    std::ofstream{dir} << "{}";
    expect_refused(run({"advise", "-", "--template", dir.string()}, example()), "format_version");
    EXPECT_EQ(run({"advise", "-", "--template", "/no/such/file"}, example()).status, 3);
}

TEST(AdviseCommandTest, a_visit_that_carries_its_controller_needs_no_template) {
    auto visit = nlohmann::json::parse(example());
    auto controller = nlohmann::json::parse(run({"example", "template"}).out).at("template");
    for (auto& setting : controller.at("settings")) {
        if (setting.at("setting") == "base_on_time") {
            setting["label"] = "Wet run";
        }
    }
    visit["house"]["timers"][0]["controller"] = controller;
    const auto text = visit.dump();
    EXPECT_NE(run({"advise", "-"}, text).out.find("Wet run "), std::string::npos);
    const auto fit = run({"advise", "-", "--json"}, text).json().at("timers").at(0).at("to_enter");
    EXPECT_EQ(fit.at("template"), controller.at("name"));
    const auto dir = std::filesystem::path{testing::TempDir()} / "in_place.json";
    std::ofstream{dir} << run({"example", "template"}).out;
    EXPECT_EQ(run({"advise", "-", "--template", dir.string()}, text).out.find("Wet run "), std::string::npos)
        << "a file goes before what the visit carries";
    const auto checked = run({"check", "-"}, text);
    EXPECT_TRUE(checked.status == 0 || checked.status == 1) << checked.err;
    visit["house"]["timers"][0]["kind"] = "on demand";
    expect_refused(run({"check", "-"}, visit.dump()), "house.timers[0].kind");
}

TEST(AdviseCommandTest, text_and_json_give_the_same_on_time) {
    const auto json = run({"advise", "-", "--json"}, example()).json();
    for (const auto& setting : json.at("settings")) {
        if (setting.at("name") == "base_on_time") {
            const auto shown = std::to_string(static_cast<int>(setting.at("rounded").get<double>())) + " s";
            EXPECT_NE(run({"advise", "-"}, example()).out.find("Base on-time                    " + shown),
                      std::string::npos)
                << run({"advise", "-"}, example()).out;
            EXPECT_LE(setting.at("value").get<double>(), setting.at("rounded").get<double>());
            return;
        }
    }
    FAIL() << "no base on-time in " << json.at("settings");
}

TEST(AdviseCommandTest, explain_prints_formula_inputs_and_rounding) {
    const auto plain = run({"advise", "-"}, example()).out;
    const auto full = run({"advise", "-", "--explain"}, example()).out;
    EXPECT_EQ(plain.find("formula:"), std::string::npos);
    for (const auto* part : {"formula:", "before rounding:", "source:", "t_fill = "}) {
        EXPECT_NE(full.find(part), std::string::npos) << part << "\n" << full;
    }
}

TEST(AdviseCommandTest, temperatures_follow_the_unit_system_in_text_and_stay_si_in_json) {
    const auto us = run({"--units", "us", "advise", "-"}, example()).out;
    const auto si = run({"--units", "si", "advise", "-"}, example()).out;
    EXPECT_NE(us.find("0.9 °F"), std::string::npos) << us;
    EXPECT_NE(si.find("0.5 °C"), std::string::npos) << si;
    const auto us_json = run({"--units", "us", "advise", "-", "--json"}, example()).json();
    const auto si_json = run({"--units", "si", "advise", "-", "--json"}, example()).json();
    ASSERT_EQ(us_json.at("settings").size(), si_json.at("settings").size());
    for (std::size_t i = 0; i < us_json.at("settings").size(); ++i) {
        EXPECT_EQ(us_json.at("settings")[i].at("rounded"), si_json.at("settings")[i].at("rounded"));
    }
}

TEST(CheckCommandTest, the_json_object_has_the_documented_keys_and_values_carry_their_unit) {
    const auto json = run({"check", "-", "--json"}, never_resting()).json();
    EXPECT_EQ(keys_of(json), (std::set<std::string>{"visit", "settings", "settings_entered", "findings"}));
    ASSERT_FALSE(json.at("findings").empty());
    const auto& finding = json.at("findings")[0];
    EXPECT_EQ(keys_of(finding), (std::set<std::string>{"rule", "severity", "timer", "bank", "where",
                                                       "message", "remedy", "source", "values", "causes"}));
    EXPECT_EQ(finding.at("rule"), "pump-never-rests");
    EXPECT_EQ(finding.at("severity"), "waste");
    EXPECT_TRUE(finding.at("bank").is_null());
    EXPECT_EQ(finding.at("values").at("period_s"), 300.0) << finding;
}

TEST(CheckCommandTest, the_exit_status_says_whether_something_reached_the_severity_asked_for) {
    const auto file = never_resting();
    EXPECT_EQ(run({"check", "-"}, file).status, 0);
    EXPECT_EQ(run({"check", "-", "--fail-on", "harm"}, file).status, 0);
    EXPECT_EQ(run({"check", "-", "--fail-on", "fault"}, file).status, 0);
    EXPECT_EQ(run({"check", "-", "--fail-on", "waste"}, file).status, 1);
    EXPECT_EQ(run({"check", "-", "--fail-on", "note"}, file).status, 1);
    EXPECT_EQ(run({"check", "-", "--settings", "left", "--fail-on", "waste"}, example()).status, 0);
    expect_refused(run({"check", "-", "--fail-on", "catastrophe"}, file), "catastrophe");
    expect_refused(run({"check", "-", "--settings", "advised"}, file), "advised");
}

TEST(CheckCommandTest, a_visit_without_settings_says_that_only_the_readings_were_checked) {
    auto file = example_visit();
    file.visit.found.clear();
    const auto result = run({"check", "-"}, visit_file_text(file));
    EXPECT_EQ(result.status, 0);
    EXPECT_NE(result.out.find("No settings found were entered"), std::string::npos) << result.out;
    EXPECT_EQ(run({"check", "-", "--json"}, visit_file_text(file)).json().at("settings_entered"), false);
}

TEST(ExampleCommandTest, the_example_is_read_by_every_command_that_takes_a_visit) {
    const auto result = run({"example", "visit"});
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.out, example());
    EXPECT_EQ(run({"advise", "-"}, result.out).status, 0);
    EXPECT_EQ(run({"check", "-", "--fail-on", "waste"}, result.out).status, 0);
}

TEST(SchemaCommandTest, the_schema_is_the_one_of_the_records) {
    const auto result = run({"schema", "visit"});
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(result.out, visit_schema_text());
}

TEST(AdviseCommandTest, a_setting_without_a_value_says_when_or_why_instead_of_a_number) {
    const auto result = run({"advise", "-"}, example());
    ASSERT_EQ(result.status, 0) << result.err;
    EXPECT_NE(result.out.find("Rinse time                      at the first call of the day\n"),
              std::string::npos)
        << result.out;
    EXPECT_EQ(result.out.find("leave unset"), std::string::npos) << result.out;
}

TEST(VisitSourceTest, a_visit_comes_from_a_file_from_standard_input_or_from_the_store) {
    const TemporaryFolder folder;
    const auto file = folder.with("visit.json", example());
    const auto store_file = folder.file("records.db");
    {
        const FakeClock clock;
        auto store = Store::open(store_file, clock);
        ASSERT_TRUE(store) << store.error().text();
        ASSERT_TRUE(fill_store(store.value()));
    }
    const auto from_file = run({"advise", file});
    const auto from_input = run({"advise", "-"}, example());
    const auto from_store = run({"advise", example_visit().visit.id.text, "--store", store_file});
    ASSERT_EQ(from_file.status, 0) << from_file.err;
    EXPECT_EQ(from_file.out, from_input.out);
    EXPECT_EQ(from_store.out, from_input.out) << from_store.err;
}

TEST(VisitSourceTest, what_is_not_there_is_a_failed_file_and_what_is_wrong_is_bad_input) {
    const TemporaryFolder folder;
    EXPECT_EQ(run({"advise", folder.file("none.json")}).status, 3);
    EXPECT_EQ(run({"advise", folder.file("")}).status, 3);
    EXPECT_EQ(run({"advise", "some-id", "--store", folder.file("none.db")}).status, 3);
    EXPECT_EQ(run({"advise", "some-id", "--store", folder.with("text.db", std::string(5000, 'x'))}).status,
              3);
    expect_refused(run({"advise", "bad id", "--store", folder.file("none.db")}), "VISIT");
    expect_refused(run({"advise", folder.with("cut.json", example().substr(0, 1000))}), "ends here");
    expect_refused(run({"advise", "-"}, ""), "ends here");
    expect_refused(run({"check", "-"}, std::string(10'000'000, ' ')), "more than 8 MiB");
    expect_refused(run({"advise", "-"}, "{\"farm\": \xFF}"), "UTF-8");
}

TEST(VisitSourceTest, one_wrong_value_gives_one_message_with_its_path) {
    auto json = nlohmann::ordered_json::parse(example());
    json["house"]["banks"][1]["length"] = "3km";
    expect_refused(run({"advise", "-"}, json.dump()),
                   "house.banks[1].length: '3km': not a unit of length, write m, mm, cm, ft or in");
}

TEST(VisitSourceTest, a_path_in_a_record_is_a_text_and_its_file_is_never_read) {
    const TemporaryFolder folder;
    const auto other = folder.with("other.json", "what stands in the other file");
    auto json = nlohmann::ordered_json::parse(example());
    json["house"]["name"] = other;
    json["farm"]["name"] = "file://" + other;
    json["visit"]["open_points"] = {other, "<img src=\"file://" + other + "\">"};
    for (const auto* command : {"advise", "check"}) {
        const auto result = run({command, "-"}, json.dump());
        EXPECT_NE(result.out.find(other + ", file://" + other), std::string::npos)
            << result.out << result.err;
        EXPECT_EQ((result.out + result.err).find("what stands in"), std::string::npos);
    }
}

TEST(SheetCommandTest, without_a_printer_it_says_so_and_writes_nothing) {
    const TemporaryFolder folder;
    expect_refused(run({"sheet", "-", "-o", folder.file("sheet.pdf")}, example()), "no printer");
    EXPECT_FALSE(std::filesystem::exists(folder.file("sheet.pdf")));
}

TEST(SheetCommandTest, the_printer_gets_content_file_paper_units_and_language) {
    std::vector<std::string> seen;
    const SheetPrinter printer = [&](const SheetOrder& order) -> Result<std::string> {
        seen = {order.content.id, order.paper == SheetPaperSize::a4 ? "a4" : "letter",
                order.units == UnitSystem::si ? "si" : "us", order.content.draft ? "draft" : "signed",
                order.language == SheetLanguage::spanish ? "es" : "en"};
        return "%PDF-painted";
    };
    const TemporaryFolder folder;
    const auto pdf = folder.file("x.pdf");
    const auto result = run({"sheet", "-", "-o", pdf, "--paper", "a4", "--units", "si", "--language", "es"},
                            example(), printer);
    EXPECT_EQ(result.status, 0) << result.err;
    EXPECT_EQ(seen, (std::vector<std::string>{example_visit().visit.id.text, "a4", "si", "signed", "es"}));
    std::ifstream stream{pdf, std::ios::binary};
    EXPECT_EQ((std::string{std::istreambuf_iterator<char>{stream}, {}}), "%PDF-painted");
    run({"sheet", "-", "-o", folder.file("y.pdf")}, visit_file_text(demo_visits().back()), printer);
    EXPECT_EQ(seen[1], "letter");
    EXPECT_EQ(seen[3], "draft");
    EXPECT_EQ(seen[4], "en");
}

// The hash on the sheet is the one that anybody finds with `store show ID --json | sha256sum` (coreutils).
TEST(SheetCommandTest, the_code_on_the_sheet_has_the_hash_of_the_record_that_the_store_shows) {
    const TemporaryFolder folder;
    const auto file = folder.file("records.db");
    {
        const FakeClock clock;
        auto store = Store::open(file, clock).value();
        ASSERT_TRUE(fill_store(store));
    }
    const auto id = demo_visits().front().visit.id.text;
    std::string code;
    const SheetPrinter printer = [&](const SheetOrder& order) -> Result<std::string> {
        for (const auto& block : order.content.blocks) {
            if (const auto* found = std::get_if<SheetCode>(&block)) {
                code = found->text;
            }
        }
        return "%PDF-painted";
    };
    const auto printed = run({"sheet", id, "--store", file, "-o", folder.file("x.pdf")}, {}, printer);
    ASSERT_EQ(printed.status, 0) << printed.err;
    const auto shown = folder.with("visit.json", run({"store", "show", id, "--store", file, "--json"}).out);
    EXPECT_EQ(code.substr(code.rfind(' ') + 1),
              run_in_shell("sha256sum < '" + shown + "'").out.substr(0, 64));
}

TEST(SheetCommandTest, a_printer_that_fails_and_options_that_are_unknown_have_their_own_status) {
    const SheetPrinter full_disk = [](const SheetOrder&) -> Result<std::string> {
        return storage_error("sheet.pdf", "no space left", "free some space");
    };
    const auto failed = run({"sheet", "-", "-o", "sheet.pdf"}, example(), full_disk);
    EXPECT_EQ(failed.status, 3);
    EXPECT_EQ(failed.err, "wetfront-cli: sheet.pdf: no space left: free some space\n");
    expect_refused(run({"sheet", "-"}, example(), full_disk), "--output");
    expect_refused(run({"sheet", "-", "-o", "x.pdf", "--paper", "a5"}, example(), full_disk), "a5");
    expect_refused(run({"sheet", "-", "-o", "x.pdf", "--language", "tlh"}, example(), full_disk),
                   "--language");
}

TEST(StoreCommandTest, list_and_show_give_what_the_store_holds) {
    const TemporaryFolder folder;
    const auto store_file = folder.file("records.db");
    {
        const FakeClock clock;
        auto store = Store::open(store_file, clock);
        ASSERT_TRUE(store) << store.error().text();
        ASSERT_TRUE(fill_store(store.value()));
    }
    const auto list = run({"store", "list", "--store", store_file, "--json"}).json();
    ASSERT_EQ(list.at("houses").size(), 3U);
    EXPECT_EQ(keys_of(list.at("houses")[0]),
              (std::set<std::string>{"house", "house_name", "farm", "farm_name", "visits"}));
    EXPECT_EQ(keys_of(list.at("houses")[0].at("visits")[0]),
              (std::set<std::string>{"visit", "started", "signed", "revisions", "marks"}));
    const auto text = run({"store", "list", "--store", store_file}).out;
    EXPECT_NE(text.find("House Alder"), std::string::npos) << text;
    EXPECT_NE(text.find("open"), std::string::npos) << text;

    const auto id = example_visit().visit.id.text;
    EXPECT_EQ(run({"store", "show", id, "--store", store_file, "--json"}).out, example());
    const auto shown = run({"store", "show", id, "--store", store_file}).out;
    EXPECT_NE(shown.find("wet-through"), std::string::npos) << shown;
    expect_refused(run({"store", "list"}), "--store");
    EXPECT_EQ(run({"store", "show", "nobody", "--store", store_file}).status, 2);
}

}  // namespace
}  // namespace wetfront::test
