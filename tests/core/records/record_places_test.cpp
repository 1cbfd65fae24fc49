// SPDX-License-Identifier: Apache-2.0
#include "records/record_places.h"

#include <gtest/gtest.h>

#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

ChangedPlace only(const ChangedPlaces& changed) {
    EXPECT_TRUE(changed.told_apart);
    EXPECT_EQ(changed.places.size(), 1U);
    return changed.places.empty() ? ChangedPlace{} : changed.places.front();
}

TEST(RecordPlacesTest, a_place_is_the_field_of_its_key_with_its_kind) {
    const auto place = only(changed_places(Farm{}, {{"/elevation", "200 m", "700 ft"}}));
    EXPECT_STREQ(place.field.label, "Elevation");
    EXPECT_EQ(place.holds, PlaceHolds::quantity);
    EXPECT_EQ(place.kind, Kind::length);
    EXPECT_EQ(place.before, "200 m");
    EXPECT_EQ(place.after, "700 ft");
    EXPECT_EQ(place.list, "");
}

TEST(RecordPlacesTest, a_place_within_an_item_names_the_item) {
    const auto house = VisitBuilder{2}.file().house;
    const auto place = only(changed_places(house, {{"/banks/1/length", "", "12 m"}}));
    EXPECT_STREQ(place.field.label, "Pad length");
    EXPECT_EQ(place.list, "banks");
    EXPECT_EQ(place.item, house.banks[1].name);
    EXPECT_FALSE(place.whole_item);
}

TEST(RecordPlacesTest, what_is_about_a_part_of_the_house_says_which_by_its_id) {
    Visit visit;
    visit.conditions.at_banks.push_back({Id{"bank-1"}, {}, {}, {}, {}, {}});
    const auto place =
        only(changed_places(visit, {{"/conditions/at_banks/0/catches/2/volume", "1 L", "2 L"}}));
    EXPECT_EQ(place.list, "at_banks");
    EXPECT_EQ(place.item, "bank-1");
    EXPECT_EQ(place.inner_row, 2U);
    EXPECT_STREQ(place.inner_list_label, "Water caught at outlets");
}

TEST(RecordPlacesTest, a_list_that_came_as_a_whole_is_taken_apart_and_ids_are_not_shown) {
    const auto place =
        only(changed_places(Visit{}, {{"/found", "", R"([{"timer":"timer-1","period":"5 min"}])"}}));
    EXPECT_STREQ(place.field.label, "Period");
    EXPECT_EQ(place.after, "5 min");
    EXPECT_EQ(place.item, "timer-1");
}

TEST(RecordPlacesTest, an_item_with_a_name_is_told_as_one) {
    const auto house = VisitBuilder{2}.file().house;
    const auto place = only(changed_places(
        house, {{"/banks/2", R"({"id":"b","length":"12 m","name":"Bank 3","pump":"pump-1"})", ""}}));
    EXPECT_TRUE(place.whole_item);
    EXPECT_STREQ(place.field.label, "Pad banks");
    EXPECT_EQ(place.before, "Bank 3");
    EXPECT_EQ(place.after, "");
}

TEST(RecordPlacesTest, a_text_that_looks_like_a_list_stays_a_text) {
    const auto place = only(changed_places(Visit{}, {{"/open_points/0", "", R"(["valve", 2])"}}));
    EXPECT_EQ(place.after, R"(["valve", 2])");
    EXPECT_EQ(place.holds, PlaceHolds::text);
}

TEST(RecordPlacesTest, items_that_moved_up_are_not_told_apart) {
    const auto moved =
        changed_places(Visit{}, {{"/open_points/0", "Valve", "Filter"}, {"/open_points/1", "Filter", ""}});
    EXPECT_FALSE(moved.told_apart);
    const auto others = changed_places(
        Visit{}, {{"/found/0/timer", "timer-1", "timer-2"}, {"/found/0/period", "5 min", "6 min"}});
    EXPECT_FALSE(others.told_apart);
}

TEST(RecordPlacesTest, what_no_record_has_is_left_out) {
    EXPECT_TRUE(changed_places(Visit{}, {{"/nothing/0/of", "1", "2"}, {"/found/01/period", "1 s", "2 s"}})
                    .places.empty());
}

}  // namespace
}  // namespace wetfront::test
