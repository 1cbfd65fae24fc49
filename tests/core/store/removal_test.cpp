// SPDX-License-Identifier: Apache-2.0
#include "store/removal.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>

#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

class RemovalTest : public StoreTest {
protected:
    [[nodiscard]] static std::vector<std::string> visit_ids(const Store& store) {
        std::vector<std::string> ids;
        for (const auto& visit : value_of(store.visits_of(Id{"house-1"}))) {
            ids.push_back(visit.visit.text);
        }
        return ids;
    }
    [[nodiscard]] static std::vector<std::string> removed_ids(const Store& store) {
        std::vector<std::string> ids;
        for (const auto& record : value_of(store.removed())) {
            ids.push_back(record.id.text);
        }
        return ids;
    }
};

TEST_F(RemovalTest, a_removed_house_leaves_the_list_with_its_visits_and_comes_back_with_them) {
    {
        auto store = open_with_visit();
        succeed(store.set_removed(RecordKind::house, Id{"house-1"}, true));
    }
    auto store = open();
    EXPECT_TRUE(value_of(store.houses()).empty());
    EXPECT_EQ(value_of(store.house(Id{"house-1"})), sample_house()) << "it can still be read";
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})), sample_visit());
    succeed(store.set_removed(RecordKind::house, Id{"house-1"}, false));
    const auto houses = value_of(store.houses());
    ASSERT_EQ(houses.size(), 1U);
    EXPECT_EQ(houses[0].visits, 1);
    EXPECT_EQ(houses[0].latest_visit, Id{"visit-1"});
    EXPECT_TRUE(value_of(store.removed()).empty());
}

TEST_F(RemovalTest, a_removed_visit_counts_in_no_list_and_the_one_before_is_the_latest) {
    auto store = open_with_visit();
    auto later = sample_visit("visit-2");
    later.started.unix_ms += 1000;
    succeed(store.save(later));
    succeed(store.set_removed(RecordKind::visit, later.id, true));
    EXPECT_EQ(visit_ids(store), std::vector<std::string>{"visit-1"});
    const auto house = value_of(store.houses()).at(0);
    EXPECT_EQ(house.visits, 1);
    EXPECT_EQ(house.latest_visit, Id{"visit-1"});
    succeed(store.set_removed(RecordKind::visit, Id{"visit-1"}, true));
    EXPECT_EQ(value_of(store.houses()).at(0).visits, 0);
    EXPECT_EQ(value_of(store.houses()).at(0).latest_visit, std::nullopt);
    succeed(store.set_removed(RecordKind::visit, later.id, false));
    EXPECT_EQ(visit_ids(store), std::vector<std::string>{"visit-2"});
}

TEST_F(RemovalTest, a_farm_goes_after_its_houses_and_comes_back_before_them) {
    auto store = open_with_visit();
    EXPECT_THAT(error_of(store.set_removed(RecordKind::farm, Id{"farm-1"}, true)),
                HasSubstr("it has houses"));
    succeed(store.set_removed(RecordKind::house, Id{"house-1"}, true));
    succeed(store.set_removed(RecordKind::farm, Id{"farm-1"}, true));
    EXPECT_TRUE(value_of(store.farms()).empty());
    EXPECT_THAT(error_of(store.set_removed(RecordKind::house, Id{"house-1"}, false)),
                HasSubstr("farm: 'farm-1': it was removed; bring it back first"));
    succeed(store.set_removed(RecordKind::farm, Id{"farm-1"}, false));
    succeed(store.set_removed(RecordKind::house, Id{"house-1"}, false));
    EXPECT_EQ(value_of(store.houses()).size(), 1U);
}

TEST_F(RemovalTest, nothing_new_is_put_into_what_was_removed_but_what_is_there_can_be_saved) {
    auto store = open_with_visit();
    succeed(store.set_removed(RecordKind::house, Id{"house-1"}, true));
    EXPECT_THAT(error_of(store.save(sample_visit("visit-2"))), HasSubstr("house-1"));
    auto visit = sample_visit();
    visit.open_points = {"entered meanwhile"};
    succeed(store.save(visit));
    succeed(store.add_mark(visit.id, sample_mark("m1", MarkKind::pump_start)));
    succeed(store.set_removed(RecordKind::farm, Id{"farm-1"}, true));
    auto house = sample_house();
    house.id = Id{"house-2"};
    EXPECT_THAT(error_of(store.save(house)), HasSubstr("farm-1"));
    EXPECT_EQ(value_of(store.visit(visit.id)).open_points, visit.open_points);
}

TEST_F(RemovalTest, what_a_reading_runs_on_stays) {
    auto store = open_with_visit();
    succeed(store.add_mark(Id{"visit-1"}, sample_mark("m1", MarkKind::pump_start)));
    EXPECT_THAT(error_of(store.set_removed(RecordKind::visit, Id{"visit-1"}, true)), HasSubstr("running"));
    EXPECT_THAT(error_of(store.set_removed(RecordKind::house, Id{"house-1"}, true)), HasSubstr("running"));
    succeed(store.set_undone(Id{"m1"}, true));
    succeed(store.set_removed(RecordKind::visit, Id{"visit-1"}, true));
}

TEST_F(RemovalTest, a_corrected_visit_goes_after_its_correction_and_comes_back_before_it) {
    auto store = open_with_visit();
    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    auto correction = sample_visit("visit-2");
    correction.replaces = visit.id;
    succeed(store.save(correction));
    EXPECT_THAT(error_of(store.set_removed(RecordKind::visit, visit.id, true)), HasSubstr("corrects"));
    succeed(store.set_removed(RecordKind::visit, correction.id, true));
    succeed(store.set_removed(RecordKind::visit, visit.id, true));
    EXPECT_THAT(error_of(store.set_removed(RecordKind::visit, correction.id, false)), HasSubstr("'visit-1'"));
    succeed(store.set_removed(RecordKind::visit, visit.id, false));
    succeed(store.set_removed(RecordKind::visit, correction.id, false));
}

TEST_F(RemovalTest, a_removed_template_leaves_the_list_and_timers_still_read_it) {
    auto store = open();
    const auto described = generic_template(TimerKind::trimmed);
    succeed(store.save(described));
    succeed(store.set_removed(RecordKind::setting_template, described.id, true));
    EXPECT_TRUE(value_of(store.setting_templates()).empty());
    EXPECT_EQ(value_of(store.setting_template(described.id)), described);
}

TEST_F(RemovalTest, what_was_removed_is_listed_with_its_name_and_time_the_last_first) {
    auto store = open_with_visit();
    succeed(store.set_removed(RecordKind::visit, Id{"visit-1"}, true));
    clock.advance_ms(60'000);
    succeed(store.set_removed(RecordKind::house, Id{"house-1"}, true));
    const auto removed = value_of(store.removed());
    ASSERT_EQ(removed.size(), 2U);
    EXPECT_EQ(removed[0].kind, RecordKind::house);
    EXPECT_EQ(removed[0].name, "House 1");
    EXPECT_EQ(removed[0].started, std::nullopt);
    EXPECT_EQ(removed[0].removed_at, clock.wall_now());
    EXPECT_EQ(removed[1].kind, RecordKind::visit);
    EXPECT_EQ(removed[1].name, "House 1") << "a visit goes by its house";
    EXPECT_EQ(removed[1].started, sample_visit().started);
}

TEST_F(RemovalTest, each_turn_is_an_entry_and_a_repeated_one_adds_none) {
    {
        auto store = open_with_visit();
        for (const bool removed : {true, true, false, false, true}) {
            succeed(store.set_removed(RecordKind::visit, Id{"visit-1"}, removed));
            EXPECT_EQ(removed_ids(store).size(), removed ? 1U : 0U);
        }
        EXPECT_THAT(error_of(store.set_removed(RecordKind::house, Id{"nobody"}, true)),
                    HasSubstr("'nobody'"));
    }
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM removal").getInt(), 3);
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM revision").getInt(), 3) << "no record is gone";
    EXPECT_THROW(db.exec("DELETE FROM removal"), SQLite::Exception);
    EXPECT_THROW(db.exec("UPDATE removal SET removed = 0"), SQLite::Exception);
}

}  // namespace
}  // namespace wetfront::test
