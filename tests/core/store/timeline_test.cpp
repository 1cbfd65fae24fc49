// SPDX-License-Identifier: Apache-2.0
#include "store/timeline.h"

#include <gmock/gmock.h>

#include <random>

#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

class TimelineTest : public StoreTest {
protected:
    const Id visit{"visit-1"};

    void enter(Store& store, const std::string& point) {
        auto changed = value_of(store.visit(visit));
        changed.open_points = {point};
        succeed(store.save(changed));
    }
    [[nodiscard]] std::string standing(const Store& store) const {
        const auto points = value_of(store.visit(visit)).open_points;
        return points.empty() ? "" : points.front();
    }
};

TEST_F(TimelineTest, entries_are_undone_and_redone_one_by_one_across_restarts) {
    { auto store = open_with_visit(); }
    for (const auto* point : {"a", "b", "c"}) {
        auto store = open();
        enter(store, point);
    }
    for (const auto* left : {"b", "a", ""}) {
        auto store = open();
        EXPECT_TRUE(value_of(store.undo(visit)));
        EXPECT_EQ(standing(store), left);
    }
    {
        auto store = open();
        EXPECT_EQ(value_of(store.undo(visit)), std::nullopt) << "the visit itself is not undone";
        EXPECT_EQ(value_of(store.can_undo(visit)), std::nullopt);
    }
    for (const auto* back : {"a", "b", "c"}) {
        auto store = open();
        EXPECT_TRUE(value_of(store.redo(visit)));
        EXPECT_EQ(standing(store), back);
    }
    auto store = open();
    EXPECT_EQ(value_of(store.redo(visit)), std::nullopt);
    EXPECT_EQ(value_of(store.revision_of(visit)), 10) << "each of them is a revision";
}

TEST_F(TimelineTest, a_new_entry_ends_redoing_and_only_that) {
    auto store = open_with_visit();
    enter(store, "a");
    enter(store, "b");
    EXPECT_TRUE(value_of(store.undo(visit)));
    EXPECT_TRUE(value_of(store.can_redo(visit)));
    succeed(store.save(value_of(store.visit(visit))));
    EXPECT_TRUE(value_of(store.can_redo(visit))) << "saving what is there is no entry";
    enter(store, "c");
    EXPECT_EQ(value_of(store.can_redo(visit)), std::nullopt);
    EXPECT_EQ(value_of(store.redo(visit)), std::nullopt);
    EXPECT_EQ(standing(store), "c");
    EXPECT_TRUE(value_of(store.undo(visit)));
    EXPECT_EQ(standing(store), "a");
    EXPECT_TRUE(value_of(store.undo(visit)));
    EXPECT_EQ(standing(store), "");
}

TEST_F(TimelineTest, a_step_that_adds_two_items_names_both) {
    auto store = open_with_visit();
    auto changed = value_of(store.visit(visit));
    changed.open_points = {"Valve weeps"};
    succeed(store.save(changed));
    changed.open_points = {"Valve weeps", "Belt is worn", "Lamp is out"};
    succeed(store.save(changed));
    EXPECT_THAT(value_of(store.can_undo(visit))->changes,
                ElementsAre(FieldChange{"/open_points/1", "", "Belt is worn"},
                            FieldChange{"/open_points/2", "", "Lamp is out"}));
}

TEST_F(TimelineTest, a_step_names_the_record_the_place_and_what_stood_there) {
    auto store = open_with_visit();
    auto changed = sample_visit();
    changed.conditions.ph = 7.5;
    changed.open_points = {"Valve weeps"};
    succeed(store.save(changed));
    clock.advance_ms(1000);
    auto house = sample_house();
    house.banks[1].length = test::entered<Length>("60 ft");
    succeed(store.save(house));

    const auto last = value_of(store.can_undo(visit));
    ASSERT_TRUE(last);
    EXPECT_EQ(last->kind, RecordKind::house);
    EXPECT_EQ(last->record, house.id);
    EXPECT_EQ(last->entered_at, clock.wall_now());
    EXPECT_THAT(last->changes, ElementsAre(FieldChange{"/banks/1/length", "18 m", "60 ft"}));
    EXPECT_EQ(value_of(store.undo(visit)), last);
    EXPECT_EQ(value_of(store.can_redo(visit)), last) << "told the same way on the way back";
    EXPECT_EQ(value_of(store.house(house.id)), sample_house());

    const auto first = value_of(store.can_undo(visit));
    ASSERT_TRUE(first);
    EXPECT_EQ(first->kind, RecordKind::visit);
    std::vector<std::string> places;
    for (const auto& change : first->changes) {
        places.push_back(change.pointer + "|" + change.before + "|" + change.after);
    }
    EXPECT_THAT(places, ::testing::UnorderedElementsAre(HasSubstr("/conditions"), HasSubstr("/open_points")));
}

TEST_F(TimelineTest, house_and_farm_belong_to_it_from_the_visits_beginning) {
    auto store = open();
    succeed(store.save(sample_farm()));
    succeed(store.save(sample_house()));
    auto house = sample_house();
    house.name = "House 1, before the visit";
    succeed(store.save(house));
    succeed(store.save(sample_visit()));
    EXPECT_EQ(value_of(store.can_undo(visit)), std::nullopt);
    auto farm = sample_farm();
    farm.name = "Quarzell North";
    succeed(store.save(farm));
    EXPECT_EQ(value_of(store.undo(visit))->kind, RecordKind::farm);
    EXPECT_EQ(value_of(store.farm(farm.id)), sample_farm());
    EXPECT_EQ(value_of(store.house(house.id)), house);
}

TEST_F(TimelineTest, what_was_timed_keeps_the_bank_that_it_belongs_to) {
    auto store = open_with_visit();
    auto house = sample_house();
    auto bank = house.banks.back();
    bank.id = Id{"bank-4"};
    house.banks.push_back(bank);
    succeed(store.save(house));
    auto mark = sample_mark("m1", MarkKind::first_dry_patch, 5);
    mark.bank = bank.id;
    mark.pump = bank.pump;
    succeed(store.add_mark(visit, mark));
    EXPECT_THAT(error_of(store.undo(visit)), HasSubstr("undo that first"));
    EXPECT_EQ(value_of(store.house(house.id)), house) << "nothing of it was kept";
    EXPECT_TRUE(value_of(store.can_undo(visit)));
}

TEST_F(TimelineTest, a_signed_visit_has_nothing_to_undo_and_an_unknown_one_is_bad_input) {
    auto store = open_with_visit();
    enter(store, "a");
    auto changed = value_of(store.visit(visit));
    changed.signatures = {sample_signature()};
    succeed(store.save(changed));
    EXPECT_EQ(value_of(store.can_undo(visit)), std::nullopt);
    EXPECT_EQ(value_of(store.undo(visit)), std::nullopt);
    EXPECT_EQ(value_of(store.visit(visit)), changed);
    EXPECT_THAT(error_of(store.undo(Id{"nobody"})), HasSubstr("'nobody'"));
    EXPECT_THAT(error_of(store.can_redo(Id{"nobody"})), HasSubstr("'nobody'"));
}

TEST_F(TimelineTest, two_open_visits_of_a_house_undo_its_last_entry_whoever_made_it) {
    auto store = open_with_visit();
    auto other = sample_visit("visit-2");
    other.started.unix_ms += 1;
    succeed(store.save(other));
    auto house = sample_house();
    house.name = "Renamed";
    succeed(store.save(house));
    EXPECT_TRUE(value_of(store.undo(visit)));
    EXPECT_EQ(value_of(store.house(house.id)).name, "House 1");
    EXPECT_EQ(value_of(store.can_undo(other.id)), std::nullopt);
    EXPECT_TRUE(value_of(store.redo(other.id)));
    EXPECT_EQ(value_of(store.house(house.id)).name, "Renamed");
    EXPECT_EQ(value_of(store.can_redo(visit)), std::nullopt);
}

TEST_F(TimelineTest, a_random_run_of_entries_undos_and_redos_is_that_of_two_stacks) {
    { const auto store = open_with_visit(); }
    std::mt19937 random{17};
    std::vector<std::string> done{""};  // model: the last is what stands
    std::vector<std::string> undone;
    for (int turn = 0; turn < 300; ++turn) {
        auto store = open();
        switch (random() % 3) {
            case 0:
                done.push_back("entry " + std::to_string(turn));
                undone.clear();
                enter(store, done.back());
                break;
            case 1:
                EXPECT_EQ(value_of(store.undo(visit)).has_value(), done.size() > 1) << turn;
                if (done.size() > 1) {
                    undone.push_back(done.back());
                    done.pop_back();
                }
                break;
            default:
                EXPECT_EQ(value_of(store.redo(visit)).has_value(), !undone.empty()) << turn;
                if (!undone.empty()) {
                    done.push_back(undone.back());
                    undone.pop_back();
                }
        }
        ASSERT_EQ(standing(store), done.back()) << turn;
    }
}

}  // namespace
}  // namespace wetfront::test
