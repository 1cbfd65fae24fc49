// SPDX-License-Identifier: Apache-2.0
#include "trend/settings_history.h"

#include <gtest/gtest.h>

#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

TimerSettings on_times(const char* base, const char* ceiling) {
    TimerSettings settings;
    settings.timer = Id{"timer-1"};
    settings.period = typed<Duration>("5 min");
    settings.base_on_time = typed<Duration>(base);
    settings.on_time_ceiling = typed<Duration>(ceiling);
    return settings;
}

/// A visit so many days after the first one.
VisitFile visit_after(int days, std::vector<TimerSettings> found, std::vector<TimerSettings> left) {
    VisitBuilder builder;
    auto& file = builder.file();
    file.visit.id = Id{"visit-" + std::to_string(days)};
    file.visit.started.unix_ms += std::int64_t{days} * 86'400'000;
    file.visit.found = std::move(found);
    file.visit.left = std::move(left);
    return file;
}

std::vector<TimerHistory> over_visits(const std::vector<VisitFile>& files) {
    return settings_over_visits(files.front().house, files);
}

std::string told(const std::vector<SettingChange>& changes) {
    std::string all;
    for (const auto& change : changes) {
        all += in_english(words_of(change), UnitSystem::si) + "; ";
    }
    return all;
}

TEST(SettingsHistoryTest, what_a_visit_changed_is_told_from_found_to_left) {
    const auto all =
        over_visits({visit_after(0, {on_times("110 s", "150 s")}, {on_times("125 s", "150 s")})});
    ASSERT_EQ(all.size(), 1U);
    ASSERT_EQ(all.front().stands.size(), 1U);
    EXPECT_EQ(told(all.front().stands.front().by_visit), "Base on-time: 110 s, then 125 s; ");
    EXPECT_TRUE(all.front().stands.front().meanwhile.empty()) << "nothing is known from before";
}

TEST(SettingsHistoryTest, what_was_found_other_than_it_was_left_was_changed_meanwhile) {
    const auto all =
        over_visits({visit_after(0, {}, {on_times("125 s", "150 s")}),
                     visit_after(365, {on_times("125 s", "290 s")}, {on_times("125 s", "150 s")})});
    const auto& second = all.front().stands.at(1);
    EXPECT_EQ(told(second.meanwhile), "On-time ceiling: 150 s, then 290 s; ");
    EXPECT_EQ(told(second.by_visit), "On-time ceiling: 290 s, then 150 s; ");
}

TEST(SettingsHistoryTest, where_nothing_was_left_what_was_found_stands) {
    const auto all = over_visits({visit_after(0, {on_times("110 s", "150 s")}, {})});
    EXPECT_EQ(all.front().stands.front().settings, on_times("110 s", "150 s"));
    EXPECT_TRUE(all.front().stands.front().by_visit.empty());
}

TEST(SettingsHistoryTest, a_setting_that_comes_or_goes_is_a_change_too) {
    auto with_row = on_times("110 s", "150 s");
    with_row.trim_rows = {{typed<TemperatureDifference>("1 K"), typed<Duration>("10 s")}};
    with_row.rinse_at = TimeOfDay{9 * 60 + 30};
    EXPECT_EQ(told(changes_between(on_times("110 s", "150 s"), with_row)),
              "Trim row 1: Above target: 1 °C, not set before; Trim row 1: On-time changes by: 10 s, not set "
              "before; Rinse time: 09:30, not set before; ");
    EXPECT_EQ(
        told(changes_between(with_row, on_times("110 s", "150 s"))),
        "Trim row 1: Above target: 1 °C, then not set; Trim row 1: On-time changes by: 10 s, then not set; "
        "Rinse time: 09:30, then not set; ");
}

TEST(SettingsHistoryTest, what_is_only_shown_or_said_is_no_setting) {
    auto other = on_times("110 s", "150 s");
    other.shown_on_time = typed<Duration>("130 s");
    other.deviation_reason = "because";
    other.continuous_intended = true;
    EXPECT_TRUE(changes_between(on_times("110 s", "150 s"), other).empty());
}

TEST(SettingsHistoryTest, the_same_time_in_another_unit_is_no_change) {
    auto other = on_times("110 s", "150 s");
    other.period = typed<Duration>("300 s");
    EXPECT_TRUE(changes_between(on_times("110 s", "150 s"), other).empty());
}

TEST(SettingsHistoryTest, visits_come_in_any_order_and_a_timer_without_settings_is_left_out) {
    const auto all = over_visits({visit_after(365, {}, {on_times("125 s", "150 s")}),
                                  visit_after(0, {}, {on_times("110 s", "150 s")})});
    EXPECT_EQ(told(all.front().stands.back().by_visit), "Base on-time: 110 s, then 125 s; ");
    EXPECT_TRUE(over_visits({visit_after(0, {}, {})}).empty());
}

}  // namespace
}  // namespace wetfront::test
