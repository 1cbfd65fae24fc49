// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <random>

#include "timing/readings.h"

// Whatever people and radio do to the wall clock, and however long the machine sleeps, a reading is the time
// that passed on the clock which counts through sleep; and what a restart of the machine cut is never used.

namespace wetfront {
namespace {

const Id pump{"pump"};
const Id bank{"bank"};
const std::vector<BankOfPump> banks{{bank, pump}};
constexpr std::int64_t minute_ms = 60'000;

/// One visit of several runs, each from a pump's start over its stop to the dry pad.
class Day {
public:
    explicit Day(unsigned seed) : random_{seed} {
        for (int run = 0; run < 3; ++run) {
            press(MarkKind::pump_start, 600, 3000);
            press(MarkKind::water_at_far_end, 5, 120);
            press(MarkKind::far_end_drips, 10, 600);
            press(MarkKind::pump_stop, 5, 60);
            press(MarkKind::drip_ends, 5, 300);
            press(MarkKind::first_dry_patch, 30, 3600);
        }
    }

    std::int64_t between(std::int64_t least, std::int64_t most) {
        return std::uniform_int_distribution<std::int64_t>{least, most}(random_);
    }

    std::vector<Mark> marks;

private:
    void press(MarkKind kind, std::int64_t least_s, std::int64_t most_s) {
        now_ms_ += between(least_s * 1000, most_s * 1000);
        Mark mark;
        mark.id = Id{"m" + std::to_string(marks.size())};
        mark.kind = kind;
        mark.pump = pump;
        mark.bank = kind == MarkKind::pump_start || kind == MarkKind::pump_stop ? Id{} : bank;
        mark.at = {"boot-1", now_ms_ * 1'000'000};
        mark.wall = {1'782'900'000'000 + now_ms_, -300};
        mark.timed_by = TimedBy::event_stamp;
        mark.pads = PadsAtStart::dry;
        mark.fans_running = true;
        marks.push_back(mark);
    }

    std::mt19937 random_;
    std::int64_t now_ms_ = 0;
};

struct Value {
    Id end;
    double seconds;
    std::optional<NotUsed> not_used;
    friend bool operator==(const Value&, const Value&) = default;
};

std::vector<Value> values(const std::vector<Mark>& marks) {
    std::vector<Value> list;
    for (const auto& reading : readings_of(marks, banks)) {
        list.push_back({reading.end_mark, in_seconds(reading.value), reading.not_used});
    }
    return list;
}

struct Step {
    const char* what;
    std::int64_t unix_ms;
    int offset_minutes;
};

const std::array steps{
    Step{"set an hour ahead", 60 * minute_ms, 0},
    Step{"set an hour back", -60 * minute_ms, 0},
    Step{"summer time begins", 0, 60},
    Step{"summer time ends", 0, -60},
    Step{"another time zone", 0, 14 * 60},
    Step{"set four years ahead", 1461LL * 1440 * minute_ms, 0},
    Step{"set back to 1970", -1'782'900'000'000, 0},
    Step{"a leap second", -1000, 0},
};

TEST(ClockChangesTest, no_step_of_the_wall_clock_at_any_press_changes_a_reading) {
    for (unsigned seed = 0; seed < 20; ++seed) {
        Day day{seed};
        const auto plain = values(day.marks);
        ASSERT_EQ(plain.size(), 12U);
        for (const auto& step : steps) {
            for (std::size_t from = 0; from < day.marks.size(); ++from) {
                auto stepped = day.marks;
                for (std::size_t i = from; i < stepped.size(); ++i) {
                    stepped[i].wall.unix_ms += step.unix_ms;
                    stepped[i].wall.utc_offset_minutes += step.offset_minutes;
                }
                EXPECT_EQ(values(stepped), plain)
                    << step.what << " before press " << from << ", seed " << seed;
            }
        }
    }
}

TEST(ClockChangesTest, a_wall_clock_that_makes_no_sense_at_all_changes_no_reading) {
    for (unsigned seed = 0; seed < 200; ++seed) {
        Day day{seed};
        auto senseless = day.marks;
        for (auto& mark : senseless) {
            mark.wall.unix_ms = day.between(-1'000'000'000'000, 7'000'000'000'000);
        }
        EXPECT_EQ(values(senseless), values(day.marks)) << "seed " << seed;
    }
}

// The clock of the boot counts through a sleep, so the sleep is part of the reading that it fell into.
TEST(ClockChangesTest, a_sleep_of_any_length_is_part_of_the_reading_it_falls_into_and_of_no_other) {
    for (unsigned seed = 0; seed < 100; ++seed) {
        Day day{seed};
        const auto plain = values(day.marks);
        const auto before = static_cast<std::size_t>(day.between(1, 17));
        const auto sleep_ms = day.between(1, 12 * 60 * minute_ms);
        auto slept = day.marks;
        for (std::size_t i = before; i < slept.size(); ++i) {
            slept[i].at.boot_ns += sleep_ms * 1'000'000;
        }
        // Runs have six presses: the start counts for the next two, the stop for the two after it.
        const std::size_t in_run = before % 6;
        const auto after = values(slept);
        ASSERT_EQ(after.size(), plain.size());
        for (std::size_t i = 0; i < plain.size(); ++i) {
            const auto end = static_cast<std::size_t>(std::stoi(plain[i].end.text.substr(1)));
            const bool spans = end >= before && end / 6 == before / 6 &&
                               (in_run <= 2 ? in_run > 0 && end % 6 <= 2 : in_run > 3 && end % 6 > 3);
            EXPECT_NEAR(after[i].seconds - plain[i].seconds,
                        spans ? static_cast<double>(sleep_ms) / 1e3 : 0.0, 1e-6)
                << "press " << end << ", sleep before " << before << ", seed " << seed;
        }
    }
}

TEST(ClockChangesTest, nothing_that_a_restart_of_the_machine_cut_is_used_wherever_it_fell) {
    for (unsigned seed = 0; seed < 50; ++seed) {
        Day day{seed};
        for (std::size_t first_after = 1; first_after < day.marks.size(); ++first_after) {
            auto cut = day.marks;
            const auto lost_ms = day.between(-60 * minute_ms, 60 * minute_ms);
            for (std::size_t i = first_after; i < cut.size(); ++i) {
                cut[i].at = {"boot-2", cut[i].at.boot_ns - cut[first_after].at.boot_ns + 20'000'000'000};
                cut[i].wall.unix_ms += lost_ms;
            }
            for (const auto& reading : readings_of(cut, banks)) {
                const auto place = [](const Id& id) {
                    return static_cast<std::size_t>(std::stoi(id.text.substr(1)));
                };
                const bool one_boot =
                    (place(reading.start_mark) < first_after) == (place(reading.end_mark) < first_after);
                EXPECT_TRUE(one_boot || reading.not_used.has_value())
                    << reading.start_mark.text << " to " << reading.end_mark.text << ", restart before "
                    << first_after << ", seed " << seed;
            }
        }
    }
}

}  // namespace
}  // namespace wetfront
