// SPDX-License-Identifier: Apache-2.0
#include <cstdio>
#include <memory>

#include "cli_run.h"
#include "demo/demo.h"
#include "store/store.h"

namespace wetfront::test {
namespace {

/// A tablet's record file with the demo's houses; the office's is not there yet.
class BundleCommandTest : public testing::Test {
protected:
    BundleCommandTest() {
        auto store = Store::open(tablet, clock);
        EXPECT_TRUE(store) << store.error().text();
        EXPECT_TRUE(fill_store(store.value()));
        house = store.value().houses().value().front().house.text;
        device = store.value().device().text;
    }
    [[nodiscard]] nlohmann::json json(std::vector<std::string> arguments, int status = 0) const {
        arguments.emplace_back("--json");
        const auto made = run(arguments);
        EXPECT_EQ(made.status, status) << made.err;
        return made.json();
    }
    [[nodiscard]] nlohmann::json export_all(const std::string& file) const {
        return json({"bundle", "export", "--store", tablet, "--new-for", "office", "-o", file});
    }
    void rename_house(const std::string& records, const std::string& name) const {
        auto store = Store::open(records, clock);
        ASSERT_TRUE(store) << store.error().text();
        auto changed = store.value().house(Id{house}).value();
        changed.name = name;
        ASSERT_TRUE(store.value().save(changed));
    }

    TemporaryFolder folder;
    FakeClock clock;
    std::string tablet = folder.file("tablet.wetfront");
    std::string office = folder.file("office.wetfront");
    std::string bundle = folder.file("all.bundle");
    std::string house;
    std::string device;
};

TEST_F(BundleCommandTest, records_go_to_the_office_and_the_receipt_comes_back) {
    const auto made = export_all(bundle);
    EXPECT_EQ(keys_of(made), (std::set<std::string>{"file", "sha256", "from", "entries", "kept_aside"}));
    EXPECT_EQ(made.at("from"), device);
    const auto entries = made.at("entries").get<int>();
    EXPECT_GT(entries, 20);
    const auto report = json({"bundle", "import", bundle, "--store", office});
    EXPECT_EQ(keys_of(report),
              (std::set<std::string>{"sha256", "from", "made", "entries", "added", "there", "kept_aside",
                                     "taken_in_later", "new", "split", "receipt", "receiver"}));
    EXPECT_EQ(report.at("added"), entries);
    EXPECT_EQ(report.at("sha256"), made.at("sha256"));
    EXPECT_EQ(report.at("receipt"), bundle + ".receipt");
    const std::string receiver = report.at("receiver");
    const auto read = json({"bundle", "receipt", bundle + ".receipt", "--store", tablet});
    EXPECT_EQ(read.at("receiver"), receiver);
    EXPECT_EQ(read.at("newly_delivered"), entries);
    const auto nothing =
        json({"bundle", "export", "--store", tablet, "--new-for", receiver, "-o", folder.file("none")});
    EXPECT_EQ(nothing.at("entries"), 0);
    EXPECT_TRUE(nothing.at("file").is_null());
    EXPECT_FALSE(std::filesystem::exists(folder.file("none")));
    EXPECT_EQ(run({"store", "list", "--store", office, "--json"}).out,
              run({"store", "list", "--store", tablet, "--json"}).out);
    EXPECT_EQ(run({"store", "verify", "--store", office}).status, 0);
}

TEST_F(BundleCommandTest, a_preview_says_what_would_come_and_leaves_the_store_as_it_is) {
    static_cast<void>(export_all(bundle));
    const auto missing = run({"bundle", "preview", bundle, "--store", office});
    EXPECT_EQ(missing.status, 3) << missing.out;
    EXPECT_FALSE(std::filesystem::exists(office));
    static_cast<void>(json({"bundle", "import", bundle, "--store", office}));
    rename_house(tablet, "House Sedge");
    const auto changed =
        json({"bundle", "export", "--store", tablet, "--house", house, "-o", folder.file("house.bundle")});
    const auto preview = json({"bundle", "preview", folder.file("house.bundle"), "--store", office});
    EXPECT_EQ(preview.at("added"), 1);
    EXPECT_EQ(preview.at("there"), changed.at("entries").get<int>() - 1);
    EXPECT_EQ(json({"bundle", "preview", folder.file("house.bundle"), "--store", office}), preview);
    const auto text = run({"bundle", "preview", folder.file("house.bundle"), "--store", office});
    EXPECT_NE(text.out.find("Nothing was changed."), std::string::npos) << text.out;
    EXPECT_FALSE(std::filesystem::exists(folder.file("house.bundle.receipt")));
}

TEST_F(BundleCommandTest, two_states_are_shown_side_by_side_and_one_is_chosen) {
    static_cast<void>(export_all(bundle));
    static_cast<void>(json({"bundle", "import", bundle, "--store", office}));
    rename_house(tablet, "House Sedge");
    rename_house(office, "House Reed");
    const auto second = folder.file("second.bundle");
    static_cast<void>(export_all(second));
    EXPECT_EQ(json({"bundle", "preview", second, "--store", office}, 1).at("split").size(), 1U);
    const auto text = run({"bundle", "import", second, "--store", office});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("House Sedge"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("House Reed"), std::string::npos) << text.out;
    const auto split = json({"bundle", "split", "--store", office}, 1).at("split");
    ASSERT_EQ(split.size(), 1U);
    const std::string second_state = split[0].at("states")[1].at("revision");
    EXPECT_EQ(json({"bundle", "choose", second_state, "--store", office}).at("chosen"), second_state);
    EXPECT_TRUE(json({"bundle", "split", "--store", office}).at("split").empty());
    expect_refused(run({"bundle", "choose", second_state, "--store", office}), "present states");
}

TEST_F(BundleCommandTest, a_broken_bundle_is_bad_input_and_a_missing_one_a_failed_file) {
    static_cast<void>(export_all(bundle));
    std::string text;
    {
        std::ostringstream bytes;
        bytes << std::ifstream{bundle}.rdbuf();
        text = bytes.str();
    }
    text[text.size() / 2] ^= 1;
    const auto broken = folder.with("broken", text);
    expect_refused(run({"bundle", "import", broken, "--store", office}), "SHA-256");
    EXPECT_FALSE(std::filesystem::exists(broken + ".receipt"));
    EXPECT_EQ(run({"bundle", "import", folder.file("nowhere"), "--store", office}).status, 3);
    expect_refused(run({"bundle", "receipt", bundle, "--store", tablet}), "receipt");
}

TEST_F(BundleCommandTest, what_a_bundle_is_to_hold_must_be_said) {
    expect_refused(run({"bundle", "export", "--store", tablet, "-o", bundle}), "--new-for");
    expect_refused(
        run({"bundle", "export", "--store", tablet, "--new-for", "office", "--house", house, "-o", bundle}),
        "--new-for");
    expect_refused(run({"bundle", "export", "--store", tablet, "--house", "nobody", "-o", bundle}), "nobody");
    expect_refused(run({"bundle", "export", "--store", tablet, "--new-for", device, "-o", bundle}), device);
    expect_refused(run({"bundle", "import", bundle}), "--store");
    EXPECT_FALSE(std::filesystem::exists(bundle));
}

TEST_F(BundleCommandTest, an_import_whose_receipt_cannot_be_written_says_that_the_records_are_in) {
    static_cast<void>(export_all(bundle));
    const auto made =
        run({"bundle", "import", bundle, "--store", office, "--receipt", folder.file("no/folder")});
    EXPECT_EQ(made.status, 3);
    EXPECT_NE(made.err.find("the bundle is in the record file"), std::string::npos) << made.err;
    EXPECT_GT(json({"bundle", "import", bundle, "--store", office}).at("there").get<int>(), 20);
}

TEST_F(BundleCommandTest, bundle_and_receipt_keep_to_their_published_schemas) {
    static_cast<void>(export_all(bundle));
    static_cast<void>(json({"bundle", "import", bundle, "--store", office}));
    folder.with("bundle.schema", run({"schema", "bundle"}).out);
    folder.with("receipt.schema", run({"schema", "receipt"}).out);
    const auto judged = [&](const std::string& schema, const std::string& file) {
        const auto command =
            "/usr/bin/python3 -c \"import json, sys, jsonschema; "
            "s = json.load(open(sys.argv[1])); d = json.load(open(sys.argv[2])); "
            "v = jsonschema.Draft202012Validator; v.check_schema(s); v(s).validate(d); "
            "d['content']['colour'] = 'red'; print(v(s).is_valid(d))\" '" +
            folder.file(schema) + "' '" + file + "' 2>&1";
        const std::unique_ptr<FILE, int (*)(FILE*)> pipe{::popen(command.c_str(), "r"), ::pclose};
        std::string said;
        for (int c = std::fgetc(pipe.get()); c != EOF; c = std::fgetc(pipe.get())) {
            said += static_cast<char>(c);
        }
        return said;
    };
    EXPECT_EQ(judged("bundle.schema", bundle), "False\n");
    EXPECT_EQ(judged("receipt.schema", bundle + ".receipt"), "False\n");
}

}  // namespace
}  // namespace wetfront::test
