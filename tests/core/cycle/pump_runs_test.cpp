// SPDX-License-Identifier: Apache-2.0
#include "cycle/pump_runs.h"

#include <gtest/gtest.h>

#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

/// Two banks on one timer that fill in 40 s and 60 s by their readings; base 50 s, ceiling 100 s.
class PumpRunsTest : public testing::Test {
protected:
    PumpRunsTest() {
        for (const double fill : {40.0, 60.0}) {
            BankTimings timed;
            timed.bank = builder_.file().house.banks.at(timings_.banks.size()).id;
            timed.fill.emplace().mean = seconds(fill);
            timings_.banks.push_back(timed);
        }
        settings_.timer = timer().id;
        settings_.base_on_time = typed<Duration>("50s");
        settings_.on_time_ceiling = typed<Duration>("100s");
        settings_.shown_on_time = typed<Duration>("55s");
        settings_.rinse_length = typed<Duration>("5min");
    }
    Timer& timer() { return builder_.file().house.timers.front(); }
    void describe(CountsFrom from) {
        auto described = generic_template(TimerKind::trimmed);
        described.counts_from = from;
        choose_controller(timer(), described);
    }
    [[nodiscard]] PumpRuns runs() { return pump_runs(builder_.file().house, timings_, timer(), settings_); }
    static double s(const Optional<Duration>& time) { return in_seconds(time->value()); }

    VisitBuilder builder_{2, 1, TimerKind::trimmed};
    VisitTimings timings_;
    TimerSettings settings_;
};

TEST_F(PumpRunsTest, counted_from_pump_start_settings_are_the_runs) {
    EXPECT_EQ(runs().settings, settings_) << "no template";
    describe(CountsFrom::pump_start);
    EXPECT_EQ(runs().settings, settings_);
    EXPECT_FALSE(runs().fill_missing);
}

TEST_F(PumpRunsTest,
       counted_from_a_full_header_the_shortest_fill_goes_to_the_base_and_the_longest_to_the_ceiling) {
    describe(CountsFrom::full_header);
    const auto made = runs();
    EXPECT_EQ(s(made.settings.base_on_time), 90.0) << "50 + 40: no bank gets more water";
    EXPECT_EQ(s(made.settings.shown_on_time), 95.0);
    EXPECT_EQ(s(made.settings.on_time_ceiling), 160.0) << "100 + 60: the pump rests no longer";
    EXPECT_EQ(s(made.settings.rinse_length), 300.0) << "a rinse counts from pump start";
}

TEST_F(PumpRunsTest, the_fill_that_the_controller_was_told_goes_before_the_readings) {
    describe(CountsFrom::full_header);
    settings_.entered_fill = typed<Duration>("45s");
    EXPECT_EQ(s(runs().settings.base_on_time), 95.0);
    EXPECT_EQ(s(runs().settings.on_time_ceiling), 145.0);
}

TEST_F(PumpRunsTest, without_a_fill_time_of_every_bank_runs_are_not_known) {
    describe(CountsFrom::full_header);
    timings_.banks.back().fill.reset();
    const auto made = runs();
    EXPECT_TRUE(made.fill_missing);
    EXPECT_FALSE(made.settings.base_on_time || made.settings.on_time_ceiling || made.settings.shown_on_time);
    EXPECT_EQ(s(made.settings.rinse_length), 300.0);
    settings_ = TimerSettings{};
    EXPECT_FALSE(runs().fill_missing) << "nothing is entered that could not be judged";
}

}  // namespace
}  // namespace wetfront::test
