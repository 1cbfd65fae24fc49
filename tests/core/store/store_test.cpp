// SPDX-License-Identifier: Apache-2.0
#include "store/store.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>

#include <array>

#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

constexpr std::int64_t hour_ms = 3'600'000;

template <class Row>
std::vector<std::string> names_of(const std::vector<Row>& rows, std::string Row::*name) {
    std::vector<std::string> names;
    for (const auto& row : rows) {
        names.push_back(row.*name);
    }
    return names;
}

std::int64_t count_in(const std::filesystem::path& file, const std::string& table) {
    return SQLite::Database{file}.execAndGet("SELECT count(*) FROM " + table).getInt64();
}

TEST_F(StoreTest, what_was_saved_is_read_back_equal_after_reopening) {
    auto visit = sample_visit();
    visit.conditions.outside_dry_bulb = entered<Temperature>("95 degF");
    visit.conditions.ph = 7.3;
    visit.open_points = {"Valve weeps / \"left\" side ~1", "Кран, später"};
    {
        auto store = open();
        succeed(store.save(sample_farm()));
        succeed(store.save(sample_house()));
        succeed(store.save(visit));
    }
    const auto store = open();
    EXPECT_EQ(value_of(store.farm(Id{"farm-1"})), sample_farm());
    EXPECT_EQ(value_of(store.house(Id{"house-1"})), sample_house());
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})), visit);
}

TEST_F(StoreTest, saving_the_present_state_adds_nothing) {
    {
        auto store = open_with_visit();
        succeed(store.save(sample_farm()));
        succeed(store.save(sample_house()));
        succeed(store.save(sample_visit()));
        EXPECT_EQ(value_of(store.revision_of(Id{"visit-1"})), 1);
    }
    EXPECT_EQ(count_in(file, "revision"), 3);
    EXPECT_EQ(count_in(file, "entry"), 3);
}

TEST_F(StoreTest, each_change_is_one_revision_and_the_last_one_is_present) {
    auto store = open_with_visit();
    auto visit = sample_visit();
    visit.open_points = {"one"};
    succeed(store.save(visit));
    visit.open_points = {"two"};
    succeed(store.save(visit));
    EXPECT_EQ(value_of(store.revision_of(Id{"visit-1"})), 3);
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).open_points, std::vector<std::string>{"two"});
}

TEST_F(StoreTest, an_unknown_id_is_bad_input_that_names_it) {
    auto store = open_with_visit();
    const std::array<std::string, 7> said{error_of(store.setting_template(Id{"nobody"})),
                                          error_of(store.farm(Id{"nobody"})),
                                          error_of(store.house(Id{"nobody"})),
                                          error_of(store.visit(Id{"nobody"})),
                                          error_of(store.visits_of(Id{"nobody"})),
                                          error_of(store.visit_file(Id{"nobody"})),
                                          error_of(store.set_undone(Id{"nobody"}, true))};
    for (const auto& text : said) {
        EXPECT_THAT(text, HasSubstr("'nobody'"));
    }
    EXPECT_EQ(store.farm(Id{"nobody"}).error().kind, Error::Kind::bad_input);
}

TEST_F(StoreTest, a_house_needs_its_farm_and_a_visit_its_house) {
    auto store = open();
    EXPECT_THAT(error_of(store.save(sample_house())), HasSubstr("farm: 'farm-1'"));
    EXPECT_THAT(error_of(store.save(sample_visit())), HasSubstr("house: 'house-1'"));
}

TEST_F(StoreTest, what_could_not_be_read_back_is_not_stored) {
    auto store = open_with_visit();
    auto house = sample_house();
    house.banks[0].length = entered<Length>("3000 m");
    EXPECT_THAT(error_of(store.save(house)), HasSubstr("length"));
    house.banks[0].length = std::nullopt;
    house.name = "broken \xC3 text";
    EXPECT_FALSE(store.save(house));
    EXPECT_EQ(value_of(store.house(Id{"house-1"})), sample_house());
}

TEST_F(StoreTest, marks_come_back_whole_and_in_the_order_of_pressing) {
    auto start = sample_mark("m1", MarkKind::pump_start);
    start.timed_by = TimedBy::event_stamp;
    start.stamp_error_ns = 1'200'000;
    start.started_by = StartedBy::me_then_walk;
    start.pads = PadsAtStart::dry;
    start.fans_running = true;
    auto water = sample_mark("m2", MarkKind::water_at_far_end, 45);
    water.seen = Seen::already_there;
    auto stop = sample_mark("m0", MarkKind::pump_stop, 20);
    stop.fans_running = false;
    stop.proof = true;
    {
        auto store = open_with_visit();
        for (const auto& mark : {start, water, stop}) {
            succeed(store.add_mark(Id{"visit-1"}, mark));
        }
    }
    const auto store = open();
    EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})), (std::vector{start, water, stop}));
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).marks, (std::vector{start, water, stop}));
}

TEST_F(StoreTest, saving_a_visit_leaves_its_marks_alone) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    auto visit = sample_visit();
    visit.marks = {sample_mark("stray", MarkKind::pump_stop)};
    visit.open_points = {"changed"};
    succeed(store.save(visit));
    EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})), std::vector{sample_mark("m1", MarkKind::pump_start)});
}

TEST_F(StoreTest, an_undone_mark_stays_and_can_be_redone_and_each_turn_is_a_row) {
    {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        for (const bool undone : {true, true, false, true}) {
            succeed(store.set_undone(Id{"m1"}, undone));
            EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})).at(0).undone, undone);
        }
    }
    EXPECT_TRUE(value_of(open().marks_of(Id{"visit-1"})).at(0).undone);
    EXPECT_EQ(count_in(file, "mark"), 1);
    EXPECT_EQ(count_in(file, "mark_change"), 3) << "the repeated undo adds nothing";
}

TEST_F(StoreTest, the_same_mark_again_adds_nothing_and_another_with_its_id_is_refused) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})).size(), 1U);
    EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start, 1))),
                HasSubstr("another mark"));
}

TEST_F(StoreTest, a_mark_needs_its_visit) {
    auto store = open();
    EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start))),
                HasSubstr("visit: 'visit-1'"));
}

TEST_F(StoreTest, a_mark_without_id_or_pump_is_refused) {
    auto store = open_with_visit();
    EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, sample_mark("", MarkKind::pump_start))),
                HasSubstr("an id has"));
    auto mark = sample_mark("m1", MarkKind::pump_start);
    mark.pump = Id{};
    EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, mark)), HasSubstr("pump of mark m1"));
    EXPECT_TRUE(value_of(store.marks_of(Id{"visit-1"})).empty());
}

TEST_F(StoreTest, a_signed_visit_is_frozen_with_its_marks) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    EXPECT_TRUE(store.save(visit)) << "equal content";
    visit.open_points = {"afterthought"};
    EXPECT_THAT(error_of(store.save(visit)), HasSubstr("frozen"));
    visit.signatures.clear();
    EXPECT_THAT(error_of(store.save(visit)), HasSubstr("frozen"));
    EXPECT_THAT(error_of(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop))),
                HasSubstr("frozen"));
    EXPECT_THAT(error_of(store.set_undone(Id{"m1"}, true)), HasSubstr("frozen"));
    EXPECT_EQ(value_of(store.marks_of(Id{"visit-1"})), std::vector{sample_mark("m1", MarkKind::pump_start)});
}

TEST_F(StoreTest, a_correction_is_a_new_visit_that_names_the_signed_one) {
    auto store = open_with_visit();
    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    auto correction = sample_visit("visit-2");
    correction.replaces = visit.id;
    correction.started.unix_ms += 1;
    succeed(store.save(correction));
    const auto visits = value_of(store.visits_of(Id{"house-1"}));
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].replaces, visit.id);
    EXPECT_EQ(visits[1].replaces, std::nullopt);
}

TEST_F(StoreTest, a_visit_keeps_house_and_start) {
    auto store = open_with_visit();
    auto other = sample_house();
    other.id = Id{"house-2"};
    succeed(store.save(other));
    auto visit = sample_visit();
    visit.house = other.id;
    EXPECT_THAT(error_of(store.save(visit)), HasSubstr("keeps its house"));
    visit = sample_visit();
    visit.started.unix_ms += 1;
    EXPECT_THAT(error_of(store.save(visit)), HasSubstr("keeps its house, its start"));
}

TEST_F(StoreTest, an_open_visit_comes_with_the_house_of_now_and_a_signed_one_with_that_of_its_signing) {
    auto store = open_with_visit();
    auto house = sample_house();
    house.name = "House 1, after the extension";
    succeed(store.save(house));
    EXPECT_EQ(value_of(store.visit_file(Id{"visit-1"})).house, house);

    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    auto later = house;
    later.name = "House 1, rebuilt";
    later.banks.pop_back();
    succeed(store.save(later));
    auto farm = sample_farm();
    farm.name = "Quarzell and Daughters";
    succeed(store.save(farm));
    const auto signed_file = value_of(store.visit_file(Id{"visit-1"}));
    EXPECT_EQ(signed_file.house, house);
    EXPECT_EQ(signed_file.farm, sample_farm());
    EXPECT_EQ(signed_file.visit, visit);
}

TEST_F(StoreTest, lists_go_by_name_with_numbers_as_numbers) {
    auto store = open();
    for (const auto& [id, name] : {std::pair{"f1", "quarzell"}, {"f2", "Anders Hof"}}) {
        auto farm = sample_farm();
        farm.id = Id{id};
        farm.name = name;
        succeed(store.save(farm));
    }
    for (const auto& [id, farm, name] : {std::tuple{"a", "f1", "House 10"},
                                         {"b", "f1", "house 2"},
                                         {"c", "f2", "House 3"},
                                         {"d", "f1", "House"},
                                         {"e", "f1", "House 02b"}}) {
        auto house = sample_house();
        house.id = Id{id};
        house.farm = Id{farm};
        house.name = name;
        succeed(store.save(house));
    }
    EXPECT_THAT(names_of(value_of(store.farms()), &Farm::name), ElementsAre("Anders Hof", "quarzell"));
    EXPECT_THAT(names_of(value_of(store.houses()), &HouseSummary::house_name),
                ElementsAre("House 3", "House", "house 2", "House 02b", "House 10"));
}

TEST_F(StoreTest, a_template_is_read_back_as_it_was_last_saved_and_listed_by_name) {
    auto first = generic_template(TimerKind::trimmed);
    first.name = "Shed box 10";
    auto second = generic_template(TimerKind::fixed_interval);
    second.name = "Shed box 9";
    {
        auto store = open();
        succeed(store.save(first));
        succeed(store.save(second));
        first.settings.front().label = "Aim \xC2\xB0";
        succeed(store.save(first));
        succeed(store.save(first));
    }
    {
        const auto store = open();
        EXPECT_EQ(value_of(store.setting_template(first.id)), first);
        EXPECT_EQ(value_of(store.setting_templates()), (std::vector{second, first}));
    }
    EXPECT_EQ(count_in(file, "revision"), 3);
}

TEST_F(StoreTest, a_template_that_is_still_being_entered_is_stored) {
    SettingTemplate begun;
    begun.id = Id{"begun"};
    begun.settings.emplace_back().setting = TemplateKey::base_on_time;
    auto store = open();
    succeed(store.save(begun));
    EXPECT_EQ(value_of(store.setting_template(begun.id)), begun);
}

TEST_F(StoreTest, a_timer_keeps_the_template_that_describes_it) {
    auto store = open_with_visit();
    auto house = sample_house();
    Timer timer;
    timer.id = Id{"timer-1"};
    timer.template_id = Id{"generic-trimmed"};
    house.timers.push_back(timer);
    succeed(store.save(house));
    EXPECT_EQ(value_of(store.house(house.id)).timers.at(0).template_id, Id{"generic-trimmed"});
}

TEST_F(StoreTest, a_house_line_tells_of_its_latest_visit) {
    auto store = open_with_visit();
    auto empty = sample_house();
    empty.id = Id{"house-2"};
    empty.name = "House 2";
    succeed(store.save(empty));
    auto latest = sample_visit("visit-0");
    latest.started.unix_ms += hour_ms;
    succeed(store.save(latest));

    auto houses = value_of(store.houses());
    ASSERT_EQ(houses.size(), 2U);
    EXPECT_EQ(houses[0].farm_name, "Quarzell Farm");
    EXPECT_EQ(houses[0].visits, 2);
    EXPECT_EQ(houses[0].latest_visit, latest.id);
    EXPECT_EQ(houses[0].latest_visit_at, latest.started);
    EXPECT_TRUE(houses[0].open_visit);
    EXPECT_EQ(houses[1].visits, 0);
    EXPECT_EQ(houses[1].latest_visit, std::nullopt);
    EXPECT_FALSE(houses[1].open_visit);

    latest.signatures = {sample_signature()};
    succeed(store.save(latest));
    EXPECT_FALSE(value_of(store.houses())[0].open_visit);
}

TEST_F(StoreTest, a_visit_line_counts_revisions_and_marks_that_stand) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 9)));
    succeed(store.set_undone(Id{"m2"}, true));
    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    const auto line = value_of(store.visits_of(Id{"house-1"})).at(0);
    EXPECT_EQ(line.revisions, 2);
    EXPECT_EQ(line.marks, 1);
    EXPECT_TRUE(line.is_signed);
    EXPECT_EQ(line.started, visit.started);
}

TEST_F(StoreTest, a_running_pump_is_where_the_program_reopens) {
    {
        auto store = open_with_visit();
        EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt);
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    }
    auto store = open();
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"});
    succeed(store.set_undone(Id{"m1"}, true));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt);
}

TEST_F(StoreTest, a_watched_pump_counts_for_an_hour_after_it_switched) {
    auto store = open_with_visit();
    for (const auto kind : {MarkKind::pump_start, MarkKind::pump_stop}) {
        auto mark = sample_mark(kind == MarkKind::pump_start ? "m1" : "m2", kind);
        mark.proof = true;
        mark.at = clock.boot_now();
        mark.wall = clock.wall_now();
        succeed(store.add_mark(Id{"visit-1"}, mark));
        clock.advance_ms(hour_ms);
        EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"}) << "1 h after";
        clock.advance_ms(1);
        EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt) << "1 h and 1 ms after";
    }
}

TEST_F(StoreTest, a_drying_bank_counts_until_its_dry_patch_or_for_a_day) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m2", MarkKind::pump_stop, 60)));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"});
    clock.advance_ms(24 * hour_ms + 60'000);
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"}) << "24 h after the stop";
    clock.advance_ms(1);
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt) << "24 h and 1 ms after the stop";
    clock.advance_ms(-24 * hour_ms);
    for (const auto* bank : {"bank-1", "bank-2"}) {
        EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"}) << bank;
        auto patch = sample_mark(std::string{"patch-"} + bank, MarkKind::first_dry_patch, 900);
        patch.bank = Id{bank};
        succeed(store.add_mark(Id{"visit-1"}, patch));
    }
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt);
}

TEST_F(StoreTest, after_a_restart_of_the_machine_the_wall_clock_tells_how_long_a_bank_dries) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_stop)));
    clock.boot = {"boot-b", 0};
    clock.wall.unix_ms += 23 * hour_ms;
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-1"});
    clock.wall.unix_ms += 2 * hour_ms;
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), std::nullopt);
}

TEST_F(StoreTest, of_several_running_visits_the_newest_open_one_is_found) {
    auto store = open_with_visit();
    for (const auto* id : {"visit-2", "visit-3"}) {
        auto visit = sample_visit(id);
        visit.started.unix_ms += id == std::string{"visit-2"} ? 1000 : 2000;
        succeed(store.save(visit));
        succeed(store.add_mark(visit.id, sample_mark(std::string{"m-"} + id, MarkKind::pump_start)));
    }
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-3"});
    auto visit = value_of(store.visit(Id{"visit-3"}));
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch()), Id{"visit-2"});
}

/// A visit with a pump started and stopped 500 times, and dry long ago.
VisitFile long_timed(const std::string& id) {
    VisitFile file{sample_farm(), sample_house(), sample_visit(id)};
    for (int run = 0; run < 500; ++run) {
        for (const auto kind : {MarkKind::pump_start, MarkKind::pump_stop}) {
            const auto number = static_cast<std::int64_t>(file.visit.marks.size());
            auto mark = sample_mark(id + "-mark-" + std::to_string(number), kind, number);
            mark.wall.unix_ms -= 48 * hour_ms;
            mark.at.boot_id = "boot-before";
            file.visit.marks.push_back(mark);
        }
    }
    return file;
}

TEST_F(StoreTest, a_stopwatch_is_found_by_its_latest_marks_whatever_else_was_timed_before) {
    auto store = open_with_visit();
    succeed(store.add(long_timed("visit-2")));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch(TimedIn::latest_marks)), std::nullopt);
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch(TimedIn::latest_marks)), Id{"visit-1"});
}

TEST_F(StoreTest, a_stopwatch_that_a_thousand_marks_followed_is_found_among_all) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add(long_timed("visit-2")));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch(TimedIn::latest_marks)), std::nullopt);
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch(TimedIn::all_marks)), Id{"visit-1"});
}

TEST_F(StoreTest, an_old_mark_that_was_undone_and_redone_lately_is_found_among_the_latest) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.add(long_timed("visit-2")));
    succeed(store.set_undone(Id{"m1"}, true));
    succeed(store.set_undone(Id{"m1"}, false));
    EXPECT_EQ(value_of(store.visit_with_running_stopwatch(TimedIn::latest_marks)), Id{"visit-1"});
}

VisitFile sample_file() {
    VisitFile visit_file{sample_farm(), sample_house(), sample_visit()};
    visit_file.visit.marks = {sample_mark("m1", MarkKind::pump_start),
                              sample_mark("m2", MarkKind::pump_stop, 5)};
    visit_file.visit.marks[1].undone = true;
    visit_file.visit.signatures = {sample_signature()};
    return visit_file;
}

TEST_F(StoreTest, a_visit_file_comes_in_whole_and_the_same_one_again_adds_nothing) {
    {
        auto store = open();
        succeed(store.add(sample_file()));
        EXPECT_EQ(value_of(store.visit_file(Id{"visit-1"})), sample_file());
        succeed(store.add(sample_file()));
    }
    EXPECT_EQ(count_in(file, "entry"), 6) << "three records, two marks, one undone";
}

TEST_F(StoreTest, a_visit_file_that_contradicts_the_store_adds_nothing) {
    {
        auto store = open();
        succeed(store.add(sample_file()));
        auto other_house = sample_file();
        other_house.farm.id = Id{"farm-2"};
        other_house.house.farm = Id{"farm-2"};
        EXPECT_THAT(error_of(store.add(other_house)), HasSubstr("house: 'house-1'"));
        auto other_marks = sample_file();
        other_marks.visit.marks.pop_back();
        EXPECT_THAT(error_of(store.add(other_marks)), HasSubstr("other marks"));
        auto other_visit = sample_file();
        other_visit.visit.open_points = {"new"};
        EXPECT_THAT(error_of(store.add(other_visit)), HasSubstr("visit: 'visit-1'"));
    }
    EXPECT_EQ(count_in(file, "entry"), 6);
}

TEST_F(StoreTest, of_several_visit_files_all_come_in_or_none) {
    auto store = open();
    std::vector<VisitFile> files(2, sample_file());
    files[1].visit = sample_visit("visit-2");
    files[1].house.name = "House 1 by another name";
    EXPECT_THAT(error_of(store.add(files)), HasSubstr("house: 'house-1'"));
    EXPECT_TRUE(value_of(store.farms()).empty());
    files[1].house.name = files[0].house.name;
    succeed(store.add(files));
    EXPECT_EQ(value_of(store.visits_of(Id{"house-1"})).size(), 2U);
}

TEST_F(StoreTest, entries_are_numbered_without_a_gap_over_records_and_marks) {
    const Id device = [&] {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        EXPECT_FALSE(store.add_mark(Id{"no-visit"}, sample_mark("m2", MarkKind::pump_start)));
        succeed(store.set_undone(Id{"m1"}, true));
        return store.device();
    }();
    SQLite::Database db{file};
    SQLite::Statement rows{db,
                           "SELECT group_concat(seq), group_concat(DISTINCT id) FROM (SELECT seq, id FROM "
                           "entry JOIN device USING "
                           "(device) ORDER BY entry)"};
    ASSERT_TRUE(rows.executeStep());
    EXPECT_EQ(rows.getColumn(0).getString(), "1,2,3,4,5");
    EXPECT_EQ(rows.getColumn(1).getString(), device.text);
}

TEST_F(StoreTest, the_file_itself_refuses_to_change_or_remove_what_it_holds) {
    {
        auto store = open_with_visit();
        succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
        succeed(store.set_undone(Id{"m1"}, true));
        auto visit = sample_visit();
        visit.signatures = {sample_signature()};
        succeed(store.save(visit));
    }
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    for (const auto* sql :
         {"UPDATE entry SET unix_ms = 0", "DELETE FROM entry", "UPDATE revision SET body = '[]'",
          "DELETE FROM revision", "UPDATE mark SET boot_ns = 0", "DELETE FROM mark",
          "UPDATE mark_change SET undone = 0", "DELETE FROM mark_change",
          "INSERT INTO entry (device, seq, unix_ms, utc_offset_min) SELECT device, 99, 0, 0 FROM this_device",
          "INSERT INTO revision (entry, id, kind, record, parent, number, whole, body, house, "
          "started_unix_ms, signed, "
          "house_revision, farm_revision) SELECT 99, 'x', kind, record, id, number + 1, 1, body, house, "
          "started_unix_ms, 0, house_revision, farm_revision FROM head WHERE kind = 'visit'",
          "INSERT INTO revision (entry, id, kind, record, parent, number, whole, body, name) "
          "SELECT 99, 'x', 'farm', record, id, number + 2, 1, body, name FROM head WHERE kind = 'farm'"}) {
        try {
            db.exec(sql);
            ADD_FAILURE() << "accepted: " << sql;
        } catch (const SQLite::Exception& refused) {
            EXPECT_THAT(refused.what(), ::testing::AnyOf(HasSubstr("never"), HasSubstr("missing or taken"),
                                                         HasSubstr("frozen"), HasSubstr("same record")))
                << sql;
        }
    }
}

}  // namespace
}  // namespace wetfront::test
