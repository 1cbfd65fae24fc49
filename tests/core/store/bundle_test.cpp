// SPDX-License-Identifier: Apache-2.0
#include "store/bundle.h"

#include <gmock/gmock.h>

#include <array>
#include <cstdio>
#include <memory>
#include <set>

#include "bundle_edits.h"
#include "store/backup.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

constexpr std::string_view signed_pdf = "%PDF-1.4 signed \0\xFF bytes";

void sign(Machine& machine, const std::string& visit = "visit-1") {
    auto signed_visit = value_of(machine.store().visit(Id{visit}));
    signed_visit.signatures = {sample_signature()};
    succeed(machine.store().keep_sheet(signed_visit, signed_pdf));
}

std::string said_by_python(const std::string& script, const std::filesystem::path& file) {
    const std::string command = "/usr/bin/python3 " + script + " " + file.string() + " 2>&1";
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe{::popen(command.c_str(), "r"), ::pclose};
    std::string said;
    std::array<char, 256> part{};
    while (std::fgets(part.data(), part.size(), pipe.get()) != nullptr) {
        said += part.data();
    }
    return said;
}

TEST(Bundle, what_one_machine_wrote_is_the_same_on_another) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    sign(tablet);
    succeed(tablet.store().save(generic_template(TimerKind::trimmed)));
    succeed(tablet.store().set_removed(RecordKind::setting_template, generic_template(TimerKind::trimmed).id,
                                       true));
    const auto report = office.take(tablet.all(true));
    EXPECT_EQ(report.entries, 10);
    EXPECT_EQ(report.added, 10);
    EXPECT_EQ(report.there, 0);
    EXPECT_EQ(report.farms + report.houses + report.visits + report.templates, 4);
    EXPECT_EQ(report.marks, 2);
    EXPECT_EQ(report.from, tablet.device());
    EXPECT_EQ(value_of(office.store().visit_file(Id{"visit-1"})),
              value_of(tablet.store().visit_file(Id{"visit-1"})));
    EXPECT_EQ(value_of(office.store().signed_sheet(Id{"visit-1"}))->pdf, signed_pdf);
    EXPECT_EQ(value_of(office.store().removed()).size(), 1U);
    EXPECT_EQ(office.contents(), tablet.contents());
}

TEST(Bundle, what_came_in_is_proved_by_its_devices_own_chain) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    office.take(tablet.all());
    succeed(office.store().save(generic_template(TimerKind::on_demand)));
    const auto verdict = office.verdict();
    EXPECT_EQ(wrong_in(verdict), "");
    ASSERT_EQ(verdict.heads.size(), 2U);
    const auto theirs = tablet.verdict().heads.at(0);
    const auto same = std::find_if(verdict.heads.begin(), verdict.heads.end(),
                                   [&](const ChainHead& head) { return head.device == theirs.device; });
    ASSERT_NE(same, verdict.heads.end());
    EXPECT_EQ(same->hash, theirs.hash);
    EXPECT_EQ(same->missing, 0);
}

TEST(Bundle, another_program_finds_hash_and_entries_as_the_schema_says) {
    Machine tablet;
    enter_visit(tablet);
    sign(tablet);
    const auto made =
        value_of(tablet.store().write_bundle({.everything = true, .sheets = true}, tablet.place("b")));
    EXPECT_EQ(said_by_python(BUNDLE_SCRIPT, made.file), made.sha256 + " 8\n");
}

TEST(Bundle, a_photo_goes_with_its_visit) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    auto visit = value_of(tablet.store().visit(Id{"visit-1"}));
    visit.photos = {sample_photo()};
    succeed(tablet.store().keep_picture(visit, sample_jpeg));
    office.take(tablet.bundle({.houses = {Id{"house-1"}}}));
    EXPECT_EQ(value_of(office.store().visit(Id{"visit-1"})).photos, std::vector{sample_photo()});
    EXPECT_EQ(value_of(office.store().picture(sample_photo().sha256)), std::string{sample_jpeg});
    EXPECT_EQ(office.contents(), tablet.contents());
    EXPECT_EQ(wrong_in(office.verdict()), "");
}

TEST(Bundle, the_same_bundle_twice_adds_nothing) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    const auto bundle = tablet.all();
    office.take(bundle);
    const auto before = office.contents();
    const auto again = office.take(bundle);
    EXPECT_EQ(again.added, 0);
    EXPECT_EQ(again.there, 6);
    EXPECT_EQ(office.contents(), before);
}

TEST(Bundle, a_preview_says_what_importing_says_and_changes_nothing) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    const auto bundle = tablet.all();
    const auto before = office.contents();
    const auto preview = value_of(office.store().preview_bundle(bundle));
    EXPECT_EQ(preview.added, 6);
    EXPECT_EQ(office.contents(), before);
    const auto report = office.take(bundle);
    EXPECT_EQ(report.added, preview.added);
    EXPECT_EQ(report.visits, preview.visits);
}

TEST(Bundle, a_house_goes_with_all_that_it_refers_to_and_nothing_else) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    sign(tablet);
    auto other = sample_house();
    other.id = Id{"house-2"};
    succeed(tablet.store().save(other));
    succeed(tablet.store().save(generic_template(TimerKind::trimmed)));
    rename_house(tablet, "House 7");
    const auto report = office.take(tablet.bundle({.houses = {Id{"house-1"}}}));
    EXPECT_EQ(report.entries, 8) << "farm, house twice, visit twice, marks and a change; no sheet";
    EXPECT_EQ(value_of(office.store().houses()).size(), 1U);
    EXPECT_EQ(value_of(office.store().house(Id{"house-1"})).name, "House 7");
    EXPECT_FALSE(value_of(office.store().signed_sheet(Id{"visit-1"})));
    const auto verdict = office.verdict();
    EXPECT_EQ(wrong_in(verdict), "");
    EXPECT_EQ(verdict.heads.at(0).missing, 3) << "sheet, other house and template";
    office.take(tablet.all(true));
    EXPECT_EQ(office.contents(), tablet.contents());
    EXPECT_EQ(office.verdict().heads.at(0).missing, 0);
}

TEST(Bundle, a_farm_goes_with_its_houses) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    auto other = sample_house();
    other.id = Id{"house-2"};
    succeed(tablet.store().save(other));
    office.take(tablet.bundle({.farms = {Id{"farm-1"}}}));
    EXPECT_EQ(value_of(office.store().houses()).size(), 2U);
    EXPECT_THAT(error_of(tablet.store().write_bundle({.farms = {Id{"farm-9"}}}, tablet.place("x"))),
                HasSubstr("farm-9"));
}

TEST(Bundle, the_office_prepares_a_house_and_the_tablet_brings_back_its_visit) {
    Machine office;
    Machine tablet;
    succeed(office.store().save(sample_farm()));
    succeed(office.store().save(sample_house()));
    tablet.take(office.new_for(tablet));
    succeed(tablet.store().save(sample_visit()));
    succeed(tablet.store().add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    const auto back = tablet.new_for(office);
    EXPECT_EQ(entries_of(back).size(), 2U) << "the office's own entries stay out";
    office.take(back);
    EXPECT_EQ(office.contents(), tablet.contents());
    EXPECT_EQ(value_of(office.store().visits_of(Id{"house-1"})).size(), 1U);
}

TEST(Bundle, only_a_receipt_makes_an_entry_delivered) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    const auto first = tablet.new_for(office);
    EXPECT_EQ(entries_of(tablet.new_for(office)).size(), 6U) << "sending alone delivers nothing";
    office.take(first);
    const auto read = value_of(tablet.store().read_receipt(office.receipt(first)));
    EXPECT_EQ(read.receiver, office.device());
    EXPECT_EQ(read.entries, 6);
    EXPECT_EQ(read.marked, 6);
    EXPECT_EQ(tablet.new_for(office), "");
    rename_house(tablet, "House 7");
    EXPECT_EQ(entries_of(tablet.new_for(office)).size(), 1U);
    EXPECT_EQ(value_of(tablet.store().read_receipt(office.receipt(first))).marked, 0);
    EXPECT_EQ(entries_of(tablet.all()).size(), 7U) << "another office has none of it";
}

TEST(Bundle, a_receipt_for_what_is_not_here_or_not_the_same_marks_nothing) {
    Machine tablet;
    Machine other;
    Machine office;
    enter_visit(tablet);
    enter_visit(other, "visit-2");
    const auto theirs = other.new_for(office);
    EXPECT_THAT(error_of(office.store().write_receipt(theirs, office.place("receipt"))),
                HasSubstr("import it"));
    EXPECT_FALSE(std::filesystem::exists(office.place("receipt")));
    Machine empty;
    empty.take(theirs);
    const auto receipt = empty.receipt(theirs);
    EXPECT_THAT(error_of(tablet.store().read_receipt(receipt)), HasSubstr("nothing was marked"));
    EXPECT_THAT(error_of(empty.store().read_receipt(receipt)), HasSubstr("own"));
    EXPECT_THAT(error_of(tablet.store().read_receipt(theirs)), HasSubstr("no such file"));
    auto bent = receipt;
    bent[receipt.find("\"last\":") + 7] = '9';
    EXPECT_THAT(error_of(other.store().read_receipt(bent)), HasSubstr("SHA-256"));
    EXPECT_EQ(entries_of(tablet.new_for(empty)).size(), 6U);
}

TEST(Bundle, an_entry_that_this_version_cannot_read_is_kept_aside_and_passed_on_unharmed) {
    Machine tablet;
    Machine office;
    Machine third;
    enter_visit(tablet);
    const auto bundle = rewritten(tablet.all(), [](auto& entries) {
        entries[4].content.fields["colour"] = words("red");  // a mark with a field more
        entries[5].content = {"rumour",
                              {{"bytes", store_detail::Bytes{{"\0\x01", 2}}},
                               {"count", store_detail::value(7)},
                               {"text", words("später")}}};
    });
    const auto report = office.take(bundle);
    EXPECT_EQ(report.added, 4);
    ASSERT_EQ(report.aside.size(), 2U);
    EXPECT_EQ(report.aside[1].kind, "rumour");
    EXPECT_THAT(report.aside[1].why, HasSubstr("does not know"));
    EXPECT_EQ(report.aside[1].entry.number, 6);
    EXPECT_EQ(wrong_in(office.verdict()), "");
    EXPECT_EQ(value_of(office.store().marks_of(Id{"visit-1"})).size(), 1U);
    const auto passed_on = entries_of(office.new_for(third));
    EXPECT_EQ(passed_on, entries_of(bundle));
    third.take(office.new_for(third));
    EXPECT_EQ(third.contents(), office.contents());
    EXPECT_EQ(value_of(third.store().kept_aside()).size(), 2U);
    EXPECT_EQ(office.take(bundle).aside.size(), 2U);
}

TEST(Bundle, what_refers_to_something_that_has_not_come_waits_for_it) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    const auto first = tablet.new_for(office);
    Machine elsewhere;
    elsewhere.take(first);
    EXPECT_EQ(value_of(tablet.store().read_receipt(elsewhere.receipt(first))).marked, 6);
    rename_house(tablet, "House 7");
    succeed(tablet.store().set_undone(Id{"visit-1-m1"}, true));
    const auto second = tablet.new_for(elsewhere);
    const auto report = office.take(second);
    EXPECT_EQ(report.added, 0);
    ASSERT_EQ(report.aside.size(), 2U);
    EXPECT_THAT(report.aside[0].why, HasSubstr("not here yet"));
    EXPECT_EQ(wrong_in(office.verdict()), "");
    const auto later = office.take(first);
    EXPECT_EQ(later.added, 6);
    EXPECT_EQ(later.taken_in_later, 2);
    EXPECT_EQ(office.contents(), tablet.contents());
    EXPECT_EQ(wrong_in(office.verdict()), "");
}

class SplitBundle : public testing::Test {
protected:
    SplitBundle() {
        enter_visit(office);
        tablet.take(office.new_for(tablet));
        rename_house(office, "House of the office");
        rename_house(tablet, "House of the tablet");
        office.take(tablet.new_for(office));
        tablet.take(office.new_for(tablet));
    }
    Machine office;
    Machine tablet;
};

TEST_F(SplitBundle, two_changes_of_one_state_are_both_kept_and_told) {
    const auto split = value_of(office.store().split_records());
    ASSERT_EQ(split.size(), 1U);
    EXPECT_EQ(split[0].kind, RecordKind::house);
    EXPECT_EQ(split[0].record, Id{"house-1"});
    ASSERT_EQ(split[0].states.size(), 2U);
    ASSERT_EQ(split[0].differences.size(), 1U);
    EXPECT_EQ(split[0].differences[0].pointer, "/name");
    EXPECT_EQ((std::set{split[0].differences[0].before, split[0].differences[0].after}),
              (std::set<std::string>{"House of the office", "House of the tablet"}));
    EXPECT_EQ(split[0].name, split[0].differences[0].before);
    EXPECT_EQ(value_of(office.store().house(Id{"house-1"})).name, split[0].name);
    const auto houses = value_of(office.store().houses());
    ASSERT_EQ(houses.size(), 1U) << "the list shows a house once";
    EXPECT_EQ(houses[0].house_name, split[0].name);
    EXPECT_EQ(tablet.contents(), office.contents()) << "both machines show the same";
}

TEST_F(SplitBundle, a_person_chooses_and_the_choice_travels) {
    const auto split = value_of(office.store().split_records()).at(0);
    succeed(office.store().choose_state(split.states[1].revision));
    EXPECT_TRUE(value_of(office.store().split_records()).empty());
    EXPECT_EQ(value_of(office.store().house(Id{"house-1"})).name, split.differences[0].after);
    EXPECT_THAT(error_of(office.store().choose_state(split.states[0].revision)), HasSubstr("present states"));
    tablet.take(office.new_for(tablet));
    EXPECT_TRUE(value_of(tablet.store().split_records()).empty());
    EXPECT_EQ(tablet.contents(), office.contents());
    EXPECT_EQ(wrong_in(tablet.verdict()), "");
    EXPECT_EQ(wrong_in(office.verdict()), "");
}

TEST_F(SplitBundle, opposite_choices_are_a_split_again) {
    const auto split = value_of(office.store().split_records()).at(0);
    succeed(office.store().choose_state(split.states[0].revision));
    succeed(tablet.store().choose_state(split.states[1].revision));
    office.take(tablet.new_for(office));
    EXPECT_EQ(value_of(office.store().split_records()).at(0).states.size(), 2U);
}

TEST_F(SplitBundle, undo_stops_at_what_another_device_wrote) {
    auto house = value_of(tablet.store().house(Id{"house-1"}));
    const auto name = house.name;
    EXPECT_FALSE(value_of(tablet.store().can_undo(Id{"visit-1"})));
    house.name = "House 9";
    succeed(tablet.store().save(house));
    EXPECT_TRUE(value_of(tablet.store().undo(Id{"visit-1"})));
    EXPECT_EQ(value_of(tablet.store().house(Id{"house-1"})).name, name);
    EXPECT_FALSE(value_of(tablet.store().can_undo(Id{"visit-1"})));
}

TEST(Bundle, a_visit_signed_on_one_device_stays_signed_whatever_was_entered_on_another) {
    Machine office;
    Machine tablet;
    enter_visit(office);
    tablet.take(office.new_for(tablet));
    for (int i = 0; i < 3; ++i) {
        auto visit = value_of(office.store().visit(Id{"visit-1"}));
        visit.agreement.agreed_with = "person " + std::to_string(i);
        succeed(office.store().save(visit));
    }
    sign(tablet);
    office.take(tablet.bundle({.houses = {Id{"house-1"}}, .sheets = true}));
    EXPECT_TRUE(value_of(office.store().visit(Id{"visit-1"})).is_signed());
    EXPECT_TRUE(value_of(office.store().signed_sheet(Id{"visit-1"})));
    const auto split = value_of(office.store().split_records()).at(0);
    EXPECT_TRUE(split.states[0].is_signed);
    EXPECT_THAT(error_of(office.store().choose_state(split.states[1].revision)), HasSubstr("correction"));
    EXPECT_EQ(wrong_in(office.verdict()), "");
}

TEST(Bundle, a_visit_signed_on_two_devices_keeps_both_sheets) {
    Machine office;
    Machine tablet;
    enter_visit(office);
    tablet.take(office.new_for(tablet));
    sign(office);
    sign(tablet);
    office.take(tablet.bundle({.houses = {Id{"house-1"}}, .sheets = true}));
    tablet.take(office.bundle({.houses = {Id{"house-1"}}, .sheets = true}));
    EXPECT_EQ(value_of(office.store().split_records()).at(0).states.size(), 2U);
    EXPECT_TRUE(value_of(office.store().signed_sheet(Id{"visit-1"})));
    EXPECT_EQ(office.contents(), tablet.contents());
    EXPECT_EQ(wrong_in(office.verdict()), "");
}

TEST(Bundle, what_was_undone_or_removed_last_is_so_whatever_the_clocks_say) {
    Machine office;
    Machine tablet;
    enter_visit(office);
    tablet.take(office.new_for(tablet));
    tablet.clock.advance_ms(86'400'000);  // a day ahead
    succeed(tablet.store().set_undone(Id{"visit-1-m1"}, true));
    succeed(tablet.store().set_removed(RecordKind::visit, Id{"visit-1"}, true));
    office.take(tablet.new_for(office));
    EXPECT_TRUE(value_of(office.store().marks_of(Id{"visit-1"})).at(0).undone);
    succeed(office.store().set_undone(Id{"visit-1-m1"}, false));
    succeed(office.store().set_removed(RecordKind::visit, Id{"visit-1"}, false));
    EXPECT_FALSE(value_of(office.store().marks_of(Id{"visit-1"})).at(0).undone);
    EXPECT_TRUE(value_of(office.store().removed()).empty());
    tablet.take(office.new_for(tablet));
    EXPECT_FALSE(value_of(tablet.store().marks_of(Id{"visit-1"})).at(0).undone);
    EXPECT_TRUE(value_of(tablet.store().removed()).empty());
}

TEST(Bundle, marks_stand_in_the_order_of_their_devices_numbers_however_they_came) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    auto entries = entries_of(tablet.all());
    const auto bundle = tablet.all();
    std::swap(entries[3], entries[4]);
    office.take(with_entries(bundle, entries));
    EXPECT_EQ(value_of(office.store().marks_of(Id{"visit-1"})),
              value_of(tablet.store().marks_of(Id{"visit-1"})));
}

TEST(Bundle, a_restored_record_file_goes_on_as_another_device) {
    Machine tablet;
    Machine office;
    enter_visit(tablet);
    const auto backup = value_of(tablet.store().back_up(tablet.place("copies")));
    rename_house(tablet, "House 7");
    office.take(tablet.all());
    const auto before = tablet.device();
    tablet.closed([&](const std::filesystem::path& path) {
        EXPECT_TRUE(restore(backup, path, tablet.clock).has_value());
        return 0;
    });
    EXPECT_NE(tablet.device(), before);
    rename_house(tablet, "House 8");
    office.take(tablet.new_for(office));
    tablet.take(office.new_for(tablet));
    EXPECT_EQ(office.contents(), tablet.contents()) << "what was lost by the restore is back";
    EXPECT_EQ(value_of(office.store().split_records()).size(), 1U);
    EXPECT_EQ(wrong_in(tablet.verdict()), "");
}

}  // namespace
}  // namespace wetfront::test
