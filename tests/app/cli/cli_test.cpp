// SPDX-License-Identifier: Apache-2.0
#include "cli/cli.h"

#include "cli_run.h"
#include "demo/demo.h"
#include "records/record_text.h"

namespace wetfront::test {
namespace {

/// The real program, through a shell.
CliRun run_program(const std::string& arguments) {
    return run_in_shell(std::string{"'"} + WETFRONT_CLI + "' " + arguments);
}

TEST(CliTest, help_stands_everywhere_with_an_example) {
    const std::vector<std::vector<std::string>> commands{{},
                                                         {"air"},
                                                         {"pad"},
                                                         {"header"},
                                                         {"water"},
                                                         {"timing"},
                                                         {"cycle"},
                                                         {"advise"},
                                                         {"check"},
                                                         {"simulate"},
                                                         {"sheet"},
                                                         {"example"},
                                                         {"example", "visit"},
                                                         {"example", "template"},
                                                         {"example", "weather"},
                                                         {"schema"},
                                                         {"schema", "visit"},
                                                         {"schema", "template"},
                                                         {"store"},
                                                         {"store", "list"},
                                                         {"store", "show"}};
    for (auto arguments : commands) {
        const std::string name = arguments.empty() ? "the program" : arguments.back();
        arguments.emplace_back("--help");
        const auto result = run(arguments);
        EXPECT_EQ(result.status, 0) << name;
        EXPECT_EQ(result.err, "") << name;
        EXPECT_NE(result.out.find("Example: wetfront-cli"), std::string::npos) << name << "\n" << result.out;
    }
}

TEST(CliTest, no_command_or_an_unknown_one_is_bad_usage) {
    expect_refused(run({}), "usage");
    expect_refused(run({"dance"}), "dance");
    expect_refused(run({"timing", "45s", "--loud"}), "--loud");
    expect_refused(run({"--units", "imperial", "timing", "45s"}), "imperial");
    expect_refused(run({"store"}), "usage");
}

TEST(CliTest, a_word_that_is_no_choice_is_answered_with_the_choices_alone) {
    const auto refusal = [](const std::vector<std::string>& arguments, const std::string& words) {
        const auto result = run(arguments);
        expect_refused(result, "'bogus': write " + words + ";");
        for (const char* noise : {"{", "->", "OR", "FAILED"}) {
            EXPECT_EQ(result.err.find(noise), std::string::npos) << result.err;
        }
    };
    refusal({"check", "-", "--fail-on", "bogus"}, "harm, fault, waste or note");
    refusal({"check", "-", "--settings", "bogus"}, "found or left");
    refusal({"timing", "45s", "--units", "bogus"}, "us or si");
    refusal({"example", "template", "--kind", "bogus"}, "trimmed, 'fixed interval' or 'on demand'");
    refusal({"sheet", "-", "-o", "x.pdf", "--paper", "bogus"}, "letter or a4");
}

TEST(CliTest, global_options_stand_before_or_behind_the_command) {
    const auto before = run({"--json", "timing", "45s,46s"});
    const auto behind = run({"timing", "45s,46s", "--json"});
    EXPECT_EQ(before.status, 0) << before.err;
    EXPECT_EQ(before.out, behind.out);
}

TEST(CliTest, an_output_that_cannot_be_written_is_a_failed_file) {
    std::istringstream in;
    std::ostringstream out;
    std::ostringstream err;
    out.setstate(std::ios::badbit);
    const FakeClock clock;
    EXPECT_EQ(run_cli({"timing", "45s"}, {in, out, err, clock, {}}), ExitStatus::storage_failed);
    EXPECT_NE(err.str().find("output"), std::string::npos) << err.str();
}

TEST(CliTest, the_real_program_gives_the_same_as_the_library) {
    const auto program =
        run_program("cycle --fill 45s --wet-through 75s --dry-out 300s --uncertainty 0s --json");
    EXPECT_EQ(program.status, 0);
    EXPECT_EQ(program.out, run({"cycle", "--fill", "45s", "--wet-through", "75s", "--dry-out", "300s",
                                "--uncertainty", "0s", "--json"})
                               .out);
}

TEST(CliTest, the_real_program_pipes_its_example_into_its_check) {
    const auto result =
        run_program(std::string{"example visit | '"} + WETFRONT_CLI + "' check - --fail-on waste");
    EXPECT_EQ(result.status, 0) << result.out;
    EXPECT_NE(result.out.find("House Alder"), std::string::npos) << result.out;
}

TEST(CliTest, the_real_program_exits_with_2_on_bad_input_and_3_on_a_missing_file) {
    EXPECT_EQ(run_program("timing 45 2>/dev/null").status, 2);
    EXPECT_EQ(run_program("advise /nowhere/visit.json 2>/dev/null").status, 3);
    EXPECT_EQ(run_program("timing 45s >/dev/full 2>/dev/null").status, 3);
}

TEST(CliTest, the_real_program_writes_the_sheet_or_says_that_this_build_cannot) {
    const TemporaryFolder folder;
    const auto visit = folder.with("visit.json", run({"example", "visit"}).out);
    const auto pdf = folder.file("sheet.pdf");
    const auto result = run_program("sheet '" + visit + "' -o '" + pdf + "' 2>&1");
    if (WETFRONT_CLI_PRINTS == 0) {
        EXPECT_EQ(result.status, 2) << result.out;
        EXPECT_NE(result.out.find("no printer"), std::string::npos) << result.out;
        EXPECT_FALSE(std::filesystem::exists(pdf));
        return;
    }
    EXPECT_EQ(result.status, 0) << result.out;
    std::ifstream file{pdf, std::ios::binary};
    std::string head(5, ' ');
    file.read(head.data(), 5);
    EXPECT_EQ(head, "%PDF-");
    EXPECT_EQ(run_program("sheet '" + visit + "' -o /nowhere/sheet.pdf 2>/dev/null").status, 3);
}

// The fullest houses of the demo, on the smaller of both papers, in either unit.
TEST(CliTest, the_growers_summary_of_every_demo_visit_is_one_page) {
    const TemporaryFolder folder;
    for (const auto& visit : demo_visits()) {
        const auto file = folder.with("visit.json", visit_file_text(visit));
        for (const char* units : {"us", "si"}) {
            const auto pdf = folder.file("summary.pdf");
            ASSERT_EQ(run_program("sheet '" + file + "' --summary -o '" + pdf + "' --units " + units).status,
                      0);
            const auto about = run_in_shell("pdfinfo '" + pdf + "'").out;
            EXPECT_NE(about.find("Pages:           1\n"), std::string::npos) << visit.visit.id.text << "\n"
                                                                             << about;
        }
    }
}

}  // namespace
}  // namespace wetfront::test
