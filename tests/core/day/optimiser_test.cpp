// SPDX-License-Identifier: Apache-2.0
#include "day/optimiser.h"

#include <gtest/gtest.h>

#include "cycle_house.h"

namespace wetfront {
namespace {

using namespace literals;
using test::CycleHouse;
using test::CycleHouses;

DaySimulator simulator_of(const CycleHouse& made) {
    return DaySimulator::of(made.house, made.weather).value();
}

OptimiserAnswer best_of(const CycleHouse& made, const OptimiserQuestion& question) {
    auto simulator = simulator_of(made);
    auto answer = best_timer_cycle(simulator, question);
    EXPECT_TRUE(answer) << (answer ? "" : answer.error().text());
    return std::move(answer).value();
}

/// A house in which a cycle is worth while: big enough a pad, called on a hot day.
CycleHouse easy_house(bool trims) {
    CycleHouses houses{1};
    while (true) {
        auto made = houses.next(6, 5.0);
        if (made.question.trim_above.has_value() != trims) {
            continue;
        }
        if (best_of(made, made.question).best.cycle) {
            return made;
        }
    }
}

std::string words(const Message& message) {
    return in_english(message, UnitSystem::si);
}

/// What a plan pumps and loses by a simulation of its own.
struct Simulated {
    double pumped;
    double lost;
    double warmer;
    double wet_dry_cycles;
};
Simulated judged_apart(const CycleHouse& made, const JudgedCycle& judged, const JudgedCycle& continuous) {
    const auto with = simulate(made.house, made.weather, std::vector{judged.plan}).value().totals;
    const auto all = simulate(made.house, made.weather, std::vector{continuous.plan}).value().totals;
    return {in_si(with.pumped),
            all.cooling > 0.0 ? (with.lost_to_dry_pad - all.lost_to_dry_pad) / all.cooling : 0.0,
            in_si(with.hottest_house - all.hottest_house), with.wet_dry_cycles};
}

TEST(OptimiserTest, it_is_never_worse_than_the_closed_form_in_1000_random_houses) {
    CycleHouses houses{20260715};
    int advised = 0;
    int better = 0;
    int cycled = 0;
    for (int i = 0; i < 1000; ++i) {
        const auto made = houses.next(1, 40.0);
        const auto question = made.with_advice();
        const auto answer = best_of(made, question);
        const auto& limits = question.limits;
        const auto best = judged_apart(made, answer.best, answer.continuous);
        ASSERT_LE(best.lost, limits.most_lost + 1e-12) << i;
        ASSERT_LE(best.warmer, in_si(limits.most_warmer) + 1e-9) << i;
        ASSERT_LE(best.pumped, in_si(answer.continuous.pumped) * (1.0 + 1e-9)) << i;
        cycled += answer.best.cycle ? 1 : 0;
        if (!question.advised) {
            continue;
        }
        ++advised;
        ASSERT_TRUE(answer.advised);
        const auto closed = judged_apart(made, *answer.advised, answer.continuous);
        if (closed.lost <= limits.most_lost && closed.warmer <= in_si(limits.most_warmer)) {
            ASSERT_LE(best.pumped, closed.pumped * (1.0 + 1e-9)) << i;
            if (best.pumped >= closed.pumped * (1.0 - 1e-9)) {
                ASSERT_LE(best.wet_dry_cycles, closed.wet_dry_cycles) << i;
            }
            better += best.pumped < closed.pumped * 0.999 ? 1 : 0;
        }
    }
    // It would prove nothing if nothing were advised, or nothing found.
    EXPECT_GT(advised, 300);
    EXPECT_GT(cycled, 300);
    EXPECT_GT(better, 100);
    std::cout << advised << " advised, " << better << " of them pumped less, " << cycled << " cycled\n";
}

TEST(OptimiserTest, it_finds_within_1_percent_what_trying_every_setting_finds) {
    CycleHouses houses{7};
    for (int i = 0; i < 8; ++i) {
        const auto made = houses.next(2, 30.0);
        const auto answer = best_of(made, made.question);
        double least = in_si(answer.continuous.pumped);
        auto question = made.question;
        question.steps.periods = {seconds(300.0)};
        for (const double period : {300.0, 600.0}) {
            for (double base = 30.0; base <= period - 60.0; base += 30.0) {
                for (double ceiling = base; ceiling <= (question.trim_above ? period - 60.0 : base);
                     ceiling += 30.0) {
                    question.advised = TimerCycle{seconds(period), seconds(base), seconds(ceiling)};
                    // Of no use but to judge this one setting.
                    question.steps.periods = {seconds(10.0)};
                    question.steps.least_on = seconds(100.0);
                    const auto one = best_of(made, question);
                    if (!one.advised->out) {
                        least = std::min(least, in_si(one.advised->pumped));
                    }
                }
            }
        }
        EXPECT_LE(in_si(answer.best.pumped), least * 1.01) << i;  // trimmed bases are tried at seven places
        EXPECT_GE(in_si(answer.best.pumped), least * (1.0 - 1e-9)) << i;
    }
}

TEST(OptimiserTest, the_same_question_has_the_same_answer) {
    for (const bool trims : {false, true}) {
        const auto made = easy_house(trims);
        const auto one = best_of(made, made.question);
        const auto two = best_of(made, made.question);
        EXPECT_EQ(one.best.cycle, two.best.cycle);
        EXPECT_EQ(in_si(one.best.pumped), in_si(two.best.pumped));
        EXPECT_EQ(words(one.binding), words(two.binding));
        EXPECT_EQ(one.simulated, two.simulated);
    }
}

TEST(OptimiserTest, one_step_less_water_is_what_the_binding_sentence_speaks_of) {
    const auto made = easy_house(false);
    const auto answer = best_of(made, made.question);
    const auto& best = *answer.best.cycle;
    auto question = made.question;
    question.advised = TimerCycle{best.period, best.base - 5_s, best.ceiling - 5_s};
    const auto shorter = best_of(made, question).advised;
    ASSERT_TRUE(shorter->out);
    EXPECT_EQ(words(answer.binding), "Not runs of " + show_text(best.base - 5_s, UnitSystem::si) + " to " +
                                         show_text(best.base - 5_s, UnitSystem::si) + " every " +
                                         show_text(best.period, UnitSystem::si) + ": " +
                                         words(*shorter->out));
}

TEST(OptimiserTest, a_rule_that_refuses_short_runs_binds_and_is_quoted) {
    const auto made = easy_house(false);
    const auto freely = *best_of(made, made.question).best.cycle;
    auto question = made.question;
    const auto least = freely.base + 10_s;
    question.refused = [least](const TimerPlan& plan) {
        return plan.base < least ? std::optional<Message>{"a rule wants longer runs"} : std::nullopt;
    };
    const auto answer = best_of(made, question);
    ASSERT_TRUE(answer.best.cycle);
    EXPECT_GE(answer.best.cycle->base, least);
    EXPECT_NE(words(answer.binding).find("a rule wants longer runs"), std::string::npos)
        << words(answer.binding);
}

TEST(OptimiserTest, rules_that_refuse_every_cycle_leave_continuous_pumping) {
    const auto made = easy_house(true);
    auto question = made.question;
    question.refused = [](const TimerPlan&) { return std::optional<Message>{"no cycle here"}; };
    const auto answer = best_of(made, question);
    EXPECT_FALSE(answer.best.cycle);
    EXPECT_EQ(answer.best.plan.pumping, Pumping::while_called);
    EXPECT_NE(words(answer.binding).find("no cycle here"), std::string::npos);
}

TEST(OptimiserTest, a_looser_limit_never_pumps_more) {
    const auto made = easy_house(true);
    double before = in_si(best_of(made, made.question).continuous.pumped);
    for (const double lost : {0.0, 0.005, 0.02, 0.1, 0.5}) {
        auto question = made.question;
        question.limits = {lost, from_si<TemperatureDifference>(20.0 * lost)};
        const double pumped = in_si(best_of(made, question).best.pumped);
        EXPECT_LE(pumped, before * 1.001) << lost;
        before = pumped;
    }
}

TEST(OptimiserTest, what_the_timer_cannot_hold_is_never_the_answer) {
    const auto made = easy_house(false);
    auto question = made.question;
    const auto freely = *best_of(made, question).best.cycle;
    question.steps.least_on = freely.base + 20_s;
    const auto longer = best_of(made, question);
    ASSERT_TRUE(longer.best.cycle);
    EXPECT_GE(longer.best.cycle->base, question.steps.least_on);
    question.steps.most_on = freely.base + 15_s;
    EXPECT_FALSE(best_of(made, question).best.cycle);
    EXPECT_NE(words(best_of(made, question).binding).find("No run that the timer can hold"),
              std::string::npos);
}

TEST(OptimiserTest, pads_that_are_not_called_need_no_setting) {
    auto made = easy_house(true);
    made.question.plans[0].start_temperature = 60_degC;
    const auto answer = best_of(made, made.question);
    EXPECT_EQ(words(answer.binding), "Pads are not called in this weather.");
    EXPECT_EQ(answer.simulated, 1);
}

TEST(OptimiserTest, less_water_is_better_and_then_fewer_wet_dry_cycles) {
    JudgedCycle one;
    one.pumped = from_si<Mass>(100.0);
    one.wet_dry_cycles = 5.0;
    auto other = one;
    EXPECT_FALSE(is_better(one, other));
    other.wet_dry_cycles = 4.0;
    EXPECT_TRUE(is_better(other, one));
    EXPECT_FALSE(is_better(one, other));
    one.pumped = from_si<Mass>(99.0);
    EXPECT_TRUE(is_better(one, other));
    one.out = Message{"refused"};
    EXPECT_TRUE(is_better(other, one));
}

TEST(OptimiserTest, a_question_outside_its_range_is_refused_by_name) {
    const auto made = easy_house(true);
    const auto refused = [&](auto change) {
        auto question = made.question;
        change(question);
        auto simulator = simulator_of(made);
        const auto answer = best_timer_cycle(simulator, question);
        EXPECT_FALSE(answer);
        return answer ? "" : answer.error().item;
    };
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.timer = 1; }), "optimiser: timer");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.steps.periods.clear(); }), "optimiser: periods");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.steps.periods = {9_s}; }), "optimiser: period, s");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.steps.step = 0_s; }), "optimiser: step, s");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.steps.least_on = 0_s; }), "optimiser: least on-time, s");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.steps.least_rest = seconds(-1.0); }),
              "optimiser: rest, s");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.limits.most_lost = std::nan(""); }),
              "optimiser: cooling that may be lost");
    EXPECT_EQ(
        refused([](OptimiserQuestion& q) { q.limits.most_warmer = from_si<TemperatureDifference>(-1.0); }),
        "optimiser: warmer by, K");
    EXPECT_EQ(refused([](OptimiserQuestion& q) { q.plans[0].target.reset(); }), "optimiser: target");
}

}  // namespace
}  // namespace wetfront
