// SPDX-License-Identifier: Apache-2.0
// Bundles that are broken, forged or of another time: refused with the reason, the record file as it was.
#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fstream>
#include <random>

#include "bundle_edits.h"

namespace wetfront::test {
namespace {

using store_detail::Bytes;
using store_detail::value;
using ::testing::HasSubstr;

class BundleRefusal : public testing::Test {
protected:
    BundleRefusal() {
        enter_visit(tablet);
        good = tablet.all();
        before = office.contents();
    }

    /// Why it is refused, once it is sure that nothing came of it.
    std::string why(const std::string& bundle) {
        const auto preview = office.store().preview_bundle(bundle);
        const auto taken = office.store().take_in(bundle);
        EXPECT_FALSE(taken.has_value());
        EXPECT_FALSE(preview.has_value());
        EXPECT_EQ(office.contents(), before);
        if (taken || preview) {
            return {};
        }
        EXPECT_EQ(taken.error().kind, Error::Kind::bad_input) << taken.error().text();
        EXPECT_EQ(taken.error(), preview.error());
        return taken.error().text();
    }
    /// Its content with one text in the place of another, and the hash that belongs to it.
    [[nodiscard]] std::string with(const std::string& text, const std::string& instead) const {
        const auto file = value_of(store_detail::unsealed(good, "wetfront bundle"));
        std::string content{file.content};
        const auto place = content.find(text);
        EXPECT_NE(place, std::string::npos) << text;
        content.replace(place, text.size(), instead);
        return store_detail::sealed(content, "wetfront bundle");
    }

    Machine tablet;
    Machine office;
    std::string good;
    std::string before;
};

TEST_F(BundleRefusal, a_bundle_that_ends_early_at_any_place_is_refused) {
    for (std::size_t size = 0; size < good.size(); size += size < 200 ? 1 : 97) {
        EXPECT_FALSE(office.store().take_in(good.substr(0, size)).has_value()) << size;
    }
    EXPECT_THAT(why(good.substr(0, good.size() - 1)), HasSubstr("ends before it is complete"));
    EXPECT_THAT(why(good.substr(0, 500)), HasSubstr("ends before it is complete"));
    EXPECT_THAT(why(""), HasSubstr("no such file"));
}

TEST_F(BundleRefusal, one_bit_flipped_anywhere_is_refused) {
    std::mt19937 random{5};
    for (std::size_t place = 0; place < good.size(); place += place < 300 ? 1 : 1 + random() % 20) {
        auto bent = good;
        bent[place] = static_cast<char>(bent[place] ^ (1 << random() % 8));
        EXPECT_FALSE(office.store().take_in(bent).has_value()) << "byte " << place;
    }
    auto bent = good;
    bent[good.size() / 2] ^= 1;
    EXPECT_THAT(why(bent), HasSubstr("SHA-256"));
}

TEST_F(BundleRefusal, a_receipt_whose_list_does_not_end_is_refused_even_with_a_hash_that_fits) {
    office.take(good);
    const auto receipt = office.receipt(good);
    std::string content{value_of(store_detail::unsealed(receipt, "wetfront receipt")).content};
    content.erase(content.rfind("]}"));
    const auto read = tablet.store().read_receipt(store_detail::sealed(content, "wetfront receipt"));
    ASSERT_FALSE(read.has_value());
    EXPECT_THAT(read.error().text(), HasSubstr("does not end as it should"));
}

TEST_F(BundleRefusal, a_later_format_is_refused_before_anything_else_is_read) {
    auto later = good;
    later.replace(later.find("\"format_version\":1"), 18, "\"format_version\":2");
    EXPECT_THAT(why(later), HasSubstr("later version"));
    EXPECT_THAT(why("{\"format\":\"wetfront bundle\",\"format_version\":99,\"content\":[]}"),
                HasSubstr("later version"));
}

TEST_F(BundleRefusal, what_is_no_bundle_is_refused) {
    for (const std::string text :
         {"{}", "[]", "null", "%PDF-1.4", "SQLite format 3", "{\"format\":\"other\"}"}) {
        EXPECT_THAT(why(text), HasSubstr("no such file")) << text;
    }
}

TEST_F(BundleRefusal, an_entry_that_is_not_what_its_device_wrote_is_refused) {
    EXPECT_THAT(why(with("Quarzell Farm", "Quarzell Fern")), HasSubstr("not what its device wrote"));
    EXPECT_THAT(why(with("\"number\":3", "\"number\":13")), HasSubstr("the hash of the entry before it"));
}

TEST_F(BundleRefusal, the_same_number_with_another_content_is_refused) {
    office.take(good);
    before = office.contents();
    const auto forged =
        rewritten(good, [](auto& entries) { entries[3].content.fields["boot_ns"] = value(std::int64_t{5}); });
    EXPECT_THAT(why(forged), HasSubstr("another entry with this number"));
    auto entries = entries_of(good);
    entries.resize(4);
    auto other = entries.back();
    other.head.at.unix_ms += 1;
    other.hash = entry_hash(other.before, other.head, other.content.table, other.content.fields);
    entries.push_back(other);
    Machine empty;
    EXPECT_THAT(error_of(empty.store().take_in(with_entries(good, entries))),
                HasSubstr("another entry with this number"));
}

TEST_F(BundleRefusal, a_history_that_forks_is_refused) {
    auto entries = entries_of(good);
    entries.resize(3);
    office.take(with_entries(good, entries));
    before = office.contents();
    auto forked = entries_of(rewritten(good, [](auto& all) { all[0].head.at.unix_ms += 1; }));
    forked.erase(forked.begin(), forked.begin() + 3);
    EXPECT_THAT(why(with_entries(good, forked)), HasSubstr("does not follow"));
}

TEST_F(BundleRefusal, an_id_that_is_here_with_another_content_is_refused) {
    office.take(good);
    Machine other;
    enter_visit(other, "visit-2");
    // The other device claims ids of the first: of a revision, then of a mark.
    const auto farm = std::get<std::string>(entries_of(good)[0].content.fields.at("id"));
    before = office.contents();
    EXPECT_THAT(why(rewritten(other.all(), [&](auto& all) { all[2].content.fields["id"] = value(farm); })),
                HasSubstr("another revision with this id"));
    EXPECT_THAT(why(rewritten(other.all(),
                              [&](auto& all) {
                                  all[3].content.fields["id"] = words("visit-1-m1");
                                  all[3].content.fields["boot_ns"] = value(std::int64_t{77});
                              })),
                HasSubstr("another mark with this id"));
}

TEST_F(BundleRefusal, an_entry_of_this_very_device_that_is_not_here_is_refused) {
    auto entries = entries_of(good);
    auto more = entries.back();
    entries.push_back(more);
    chain_anew(entries);
    EXPECT_THAT(error_of(tablet.store().take_in(with_entries(good, entries))), HasSubstr("set back"));
}

TEST_F(BundleRefusal, names_and_ids_with_paths_are_refused) {
    const std::string device = "\"id\":\"" + tablet.device().text + "\"";
    EXPECT_THAT(why(with(device, "\"id\":\"../../etc/passwd\"")), HasSubstr("line 2"));
    EXPECT_THAT(why(with("\"name\":\"", "\"name\":\"../../")), HasSubstr("without / or"));
    EXPECT_THAT(why(with("\"from\":\"", "\"from\":\"/tmp/")), HasSubstr("line 2"));
    // Inside of an entry an id is a text: such a record is no record, and stays aside.
    const auto bundle =
        rewritten(good, [](auto& all) { all[0].content.fields["record"] = words("../farm"); });
    EXPECT_EQ(office.take(bundle).aside.size(), 6U);
}

TEST_F(BundleRefusal, a_claimed_size_of_a_gigabyte_is_refused_without_being_read) {
    const auto huge = office.place("huge");
    std::ofstream{huge} << good;
    ASSERT_EQ(::truncate(huge.c_str(), 1L << 30), 0);
    EXPECT_THAT(error_of(read_bundle_file(huge)), HasSubstr("larger than 512 MiB"));
}

TEST_F(BundleRefusal, a_line_longer_than_any_is_refused) {
    const std::string fill(store_detail::most_line_bytes, 'x');
    EXPECT_THAT(why(with("Quarzell Farm", fill)), HasSubstr("longer than any"));
}

TEST_F(BundleRefusal, nesting_without_end_is_refused) {
    const std::string deep(1'000'000, '[');
    EXPECT_THAT(why(with("\"fields\":{", "\"fields\":{\"x\":" + deep + ",")), HasSubstr("a list"));
    std::string objects;
    for (int i = 0; i < 100'000; ++i) {
        objects += "{\"base64\":";
    }
    EXPECT_THAT(why(with("\"fields\":{", "\"fields\":{\"x\":" + objects + ",")), HasSubstr("an object"));
    EXPECT_THAT(why(with("\"devices\":[", "\"devices\":[" + deep)), HasSubstr("nested deeper"));
    // In the body of a revision, and by revisions that each nest a little deeper: kept aside, never followed.
    const auto nested = rewritten(good, [&](auto& all) { all[0].content.fields["body"] = value(deep); });
    EXPECT_EQ(office.take(nested).aside.size(), 6U);
}

TEST_F(BundleRefusal, a_change_that_makes_much_of_little_is_never_followed) {
    rename_house(tablet, "House 7");
    std::string copies = "[";
    for (int i = 0; i < 40; ++i) {
        copies += std::string{i == 0 ? "" : ","} + R"({"op":"copy","from":"","path":"/x)" +
                  std::to_string(i) + "\"}";
    }
    const auto bomb =
        rewritten(tablet.all(), [&](auto& all) { all[6].content.fields["body"] = value(copies + "]"); });
    const auto report = office.take(bomb);
    ASSERT_EQ(report.aside.size(), 1U);
    EXPECT_EQ(report.aside[0].entry.number, 7);
}

TEST_F(BundleRefusal, what_contradicts_itself_is_kept_aside_and_the_rest_is_taken_in) {
    rename_house(tablet, "House 7");
    struct Lie {
        std::size_t entry;
        const char* field;
        store_detail::Value says;
    };
    const std::vector<Lie> lies{{6, "name", words("House 8")},
                                {6, "farm", words("farm-2")},
                                {6, "number", value(7)},
                                {6, "record", words("house-9")},
                                {6, "body", words(R"([{"op":"add","path":"/colour","value":"red"}])")},
                                {6, "body", words(R"([{"op":"remove","path":"/nowhere"}])")},
                                {6, "body", words("[{")},
                                {6, "whole", value(2)},
                                {5, "undone", words("yes")},
                                {5, "number", value(0)},
                                {4, "timed_by", words("magic")},
                                {4, "boot_ns", value(-1)},
                                {4, "pump", Bytes{"pump-1"}}};
    for (const auto& lie : lies) {
        Machine other;
        const auto bundle =
            rewritten(tablet.all(), [&](auto& all) { all[lie.entry].content.fields[lie.field] = lie.says; });
        const auto report = other.take(bundle);
        EXPECT_GE(report.aside.size(), 1U) << lie.field;
        EXPECT_GE(report.added, 5) << lie.field;
        EXPECT_EQ(wrong_in(other.verdict()), "") << lie.field;
    }
}

TEST_F(BundleRefusal, a_link_or_a_folder_is_no_bundle) {
    std::ofstream{office.place("bundle")} << good;
    std::filesystem::create_symlink(office.place("bundle"), office.place("link"));
    EXPECT_THAT(error_of(read_bundle_file(office.place("link"))), HasSubstr("it is a link"));
    EXPECT_THAT(error_of(read_bundle_file(office.place("."))), HasSubstr("not a file"));
    EXPECT_THAT(error_of(read_bundle_file(office.place("none"))), HasSubstr("No such file"));
    ASSERT_EQ(::mkfifo(office.place("pipe").c_str(), 0600), 0);
    EXPECT_THAT(error_of(read_bundle_file(office.place("pipe"))), HasSubstr("not a file"));
}

TEST_F(BundleRefusal, a_file_that_is_there_is_never_written_over) {
    std::ofstream{tablet.place("mine")} << "letter";
    EXPECT_THAT(error_of(tablet.store().write_bundle({.new_for = office.device()}, tablet.place("mine"))),
                HasSubstr("a file of that name"));
    EXPECT_EQ(bytes_of(tablet.place("mine")), "letter");
    EXPECT_FALSE(
        tablet.store().write_bundle({.new_for = office.device()}, tablet.place("no/folder")).has_value());
    EXPECT_EQ(mode_of(tablet.place("bundle-1")), 0600U);
}

}  // namespace
}  // namespace wetfront::test
