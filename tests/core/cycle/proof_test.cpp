// SPDX-License-Identifier: Apache-2.0
#include "cycle/proof.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "proved_house.h"

namespace wetfront::test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

std::string verdict_text(ProofVerdict verdict) {
    return english(label_of(verdict));
}

struct Case {
    double seen;
    ProofVerdict wanted;
};

constexpr auto pass = ProofVerdict::pass;
constexpr auto close = ProofVerdict::too_close;
constexpr auto fail = ProofVerdict::fail;

// |seen - 300| + U <= 3, |seen - 300| - U > 3; the same rule written out as an interval.
TEST(DecisionRuleTest, the_uncertainty_stands_between_pass_and_fail) {
    const auto at = [](double seen) {
        return judged(seconds(seen), seconds(1.0), seconds(297.0), seconds(303.0));
    };
    EXPECT_EQ(at(300.0), pass);
    EXPECT_EQ(at(302.0), pass) << "2 + 1 is not above 3";
    EXPECT_EQ(at(298.0), pass);
    EXPECT_EQ(at(302.01), close);
    EXPECT_EQ(at(297.99), close);
    EXPECT_EQ(at(304.0), close) << "4 - 1 is not above 3";
    EXPECT_EQ(at(296.0), close);
    EXPECT_EQ(at(304.01), fail);
    EXPECT_EQ(at(295.99), fail);
}

TEST(DecisionRuleTest, a_limit_on_one_side_leaves_the_other_open) {
    EXPECT_EQ(judged(seconds(1.0), seconds(1.0), std::nullopt, seconds(50.0)), pass);
    EXPECT_EQ(judged(seconds(49.5), seconds(1.0), std::nullopt, seconds(50.0)), close);
    EXPECT_EQ(judged(seconds(51.5), seconds(1.0), std::nullopt, seconds(50.0)), fail);
    EXPECT_EQ(judged(seconds(1e4), seconds(1.0), seconds(50.0), std::nullopt), pass);
    EXPECT_EQ(judged(seconds(48.5), seconds(1.0), seconds(50.0), std::nullopt), fail);
}

TEST(DecisionRuleTest, an_uncertainty_wider_than_the_tolerance_can_never_pass) {
    for (double seen = 290.0; seen <= 310.0; seen += 0.5) {
        EXPECT_NE(judged(seconds(seen), seconds(4.0), seconds(297.0), seconds(303.0)), pass) << seen;
    }
}

// One period: u = hypot(0.10, 0.50) = 0.50990 s, U = 1.9600 u = 0.9994 s. Tolerance: 1 % of 300 s = 3 s, more
// than 2 s. Pass up to 2.0006 s off, fail from 3.9994 s on.
TEST(ProofTest, a_period_on_each_side_of_its_limits) {
    for (const auto& [seen, wanted] :
         {Case{300.0, pass}, Case{301.95, pass}, Case{302.05, close}, Case{303.95, close}, Case{304.05, fail},
          Case{298.05, pass}, Case{297.95, close}, Case{296.05, close}, Case{295.95, fail}}) {
        Proof proof;
        proof.watch({.at = 0.0, .stops = 90.0}).watch({.at = seen});
        const auto line = proof.line(ProofQuantity::period);
        EXPECT_EQ(verdict_text(line.verdict), verdict_text(wanted)) << seen;
        EXPECT_NEAR(in_seconds(line.expanded), 0.9994, 1e-4);
        EXPECT_NEAR(in_seconds(line.tolerance), 3.0, 1e-9);
    }
}

// Tolerance of 90 s: 2 s, more than 1 %. Pass up to 1.0006 s off, fail from 2.9994 s on.
TEST(ProofTest, an_on_time_on_each_side_of_its_limits) {
    for (const auto& [seen, wanted] :
         {Case{90.95, pass}, Case{91.05, close}, Case{92.95, close}, Case{93.05, fail}, Case{89.05, pass},
          Case{88.95, close}, Case{87.05, close}, Case{86.95, fail}}) {
        Proof proof;
        proof.watch({.at = 0.0, .stops = seen});
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::on_time)), verdict_text(wanted)) << seen;
    }
}

// Half a step of 10 s: 5 s. Pass up to 4.0006 s off.
TEST(ProofTest, a_coarse_timer_is_given_half_a_step) {
    for (const auto& [seen, wanted] : {Case{93.95, pass}, Case{94.05, close}, Case{96.05, fail}}) {
        Proof proof;
        proof.visit.timer(1).resolution = typed<Duration>("10s");
        proof.watch({.at = 0.0, .stops = seen});
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::on_time)), verdict_text(wanted)) << seen;
    }
}

// 300.9 and 301.1: mean 301.0, s = 0.14142, u_A = 0.1, u = hypot(0.1, 0.50990) = 0.51961, 729 degrees of
// freedom, k = 1.9632, U = 1.0201: 1 + 1.02 < 3.
TEST(ProofTest, two_periods_are_taken_together) {
    Proof proof;
    proof.watch({.at = 0.0}).watch({.at = 300.9}).watch({.at = 602.0});
    const auto line = proof.line(ProofQuantity::period);
    ASSERT_TRUE(line.seen);
    EXPECT_EQ(line.seen->count, 2);
    EXPECT_NEAR(in_seconds(line.seen->mean), 301.0, 1e-6);
    EXPECT_NEAR(in_seconds(line.expanded), 1.0201, 5e-4);
    EXPECT_EQ(line.verdict, pass);
}

// 300 and 302: s = 1.41421, u_A = 1, u = 1.12250, 1 degree of freedom (1.12250^4 = 1.5876), k = 12.706,
// U = 14.263: a timer that does not repeat itself is not proved by two cycles.
TEST(ProofTest, two_periods_that_disagree_are_too_close_to_call) {
    Proof proof;
    proof.watch({.at = 0.0}).watch({.at = 300.0}).watch({.at = 602.0});
    const auto line = proof.line(ProofQuantity::period);
    EXPECT_NEAR(in_seconds(line.expanded), 14.263, 2e-3);
    EXPECT_EQ(line.verdict, close);
}

// Read: 39, 40, 41 s: u_A = 1/sqrt(3) = 0.57735 (2 degrees of freedom), with the hand 0.58595. Seen once,
// with the spread of the readings: u = sqrt(1 + 0.1^2 + 3^2) = 3.16386, 2 (3.16386)^4 = 200.4 degrees of
// freedom. Together 3.21766 with 193, k = 1.9724, U = 6.346 s. Limit 40 + 10 = 50 s: pass to 43.65 s, fail
// from 56.35 s.
TEST(ProofTest, water_at_the_far_end_on_each_side_of_its_limits) {
    for (const auto& [seen, wanted] : {Case{20.0, pass}, Case{40.0, pass}, Case{43.5, pass},
                                       Case{43.8, close}, Case{56.2, close}, Case{56.5, fail}}) {
        Proof proof;
        proof.watch({.at = 0.0, .water = seen, .stops = 90.0});
        const auto line = proof.line(ProofQuantity::fill);
        EXPECT_EQ(verdict_text(line.verdict), verdict_text(wanted)) << seen;
        EXPECT_NEAR(in_seconds(line.expanded), 6.346, 2e-3);
        EXPECT_NEAR(in_seconds(line.tolerance), 10.0, 1e-9);
    }
}

TEST(ProofTest, a_long_fill_is_given_a_fifth_of_itself) {
    Proof proof;
    proof.file().visit.marks.clear();
    proof.visit.run(1, {.fill = 100.0});
    proof.watch({.at = 0.0, .water = 100.0, .stops = 190.0});
    EXPECT_NEAR(in_seconds(proof.line(ProofQuantity::fill).tolerance), 20.0, 1e-9);
}

// The model expects 47.5107 s (worked out in drip_return_test); 20 s are more than a quarter of it: limit
// 67.511 s. Seen once: u = hypot(5 % of it, 0.1, 2, 3), the model's own u is below 1.1 s, U about 9.1 s at
// 58 s and 10.7 s at 80 s.
TEST(ProofTest, the_drip_against_the_model_on_each_side_of_its_limits) {
    for (const auto& [seen, wanted] :
         {Case{42.0, pass}, Case{57.5, pass}, Case{59.5, close}, Case{77.0, close}, Case{80.0, fail}}) {
        Proof proof;
        proof.watch({.at = 0.0, .drips = seen, .stops = 90.0}).watch({.at = 300.0});
        const auto line = proof.line(ProofQuantity::drip_return);
        ASSERT_TRUE(line.most);
        EXPECT_NEAR(in_seconds(*line.most), 47.5107, 1e-4);
        EXPECT_EQ(verdict_text(line.verdict), verdict_text(wanted))
            << seen << " U " << in_seconds(line.expanded);
    }
}

// Without its signal, which drip and stop share: at 80 s u = hypot(4, 0.1, 2) = 4.473, with the stop's 0.510
// 4.502, U = 8.82 s: 88.8 < 90. At 82 s 4.1: 4.563, 4.592, 9.00: 91.0 > 90. At 99
// s: 4.95: 5.340, 5.364, 10.51: 88.5 < 90; at 101 s: 5.05: 5.433, 5.457, 10.70: 90.3 > 90.
TEST(ProofTest, the_drip_must_be_back_before_the_stop) {
    for (const auto& [seen, wanted] :
         {Case{80.0, pass}, Case{82.0, close}, Case{99.0, close}, Case{101.0, fail}}) {
        Proof proof;
        proof.watch({.at = 0.0, .drips = seen, .stops = 90.0});
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::drip_before_stop)), verdict_text(wanted)) << seen;
    }
}

TEST(ProofTest, a_good_cycle_passes_as_a_whole) {
    Proof proof;
    proof.watch_good();
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "pass") << english(result.text);
    EXPECT_EQ(result.runs, 2);
    EXPECT_THAT(result.missing, IsEmpty());
    EXPECT_THAT(result.causes, IsEmpty());
    for (const auto& line : result.lines) {
        EXPECT_EQ(verdict_text(line.verdict), "pass") << english(label_of(line.what));
    }
    EXPECT_THAT(result.lines, SizeIs(7));
}

TEST(ProofTest, the_worst_line_decides) {
    Proof one_close;
    one_close.watch({.at = 0.0, .water = 41.0, .drips = 55.0, .stops = 91.5}).watch({.at = 300.0});
    EXPECT_EQ(verdict_text(one_close.result().verdict), "too close to call");
    EXPECT_THAT(english(one_close.result().text), HasSubstr("Pump 1, On-time"));
    Proof one_failed;
    one_failed.watch({.at = 0.0, .water = 41.0, .drips = 55.0, .stops = 91.5}).watch({.at = 310.0});
    EXPECT_EQ(verdict_text(one_failed.result().verdict), "fail");
    EXPECT_THAT(english(one_failed.result().text), HasSubstr("Failed: Pump 1, Period."));
}

TEST(ProofTest, an_uneven_drip_or_a_dry_patch_fails_outright) {
    Proof uneven;
    uneven.watch_good().looked().even_drip = false;
    EXPECT_EQ(verdict_text(uneven.result().verdict), "fail");
    EXPECT_EQ(uneven.verdict(ProofQuantity::even_drip), fail);
    Proof patch;
    patch.watch_good().looked().dry_patch = true;
    EXPECT_EQ(verdict_text(patch.result().verdict), "fail");
    EXPECT_EQ(patch.verdict(ProofQuantity::dry_patch), fail);
}

TEST(ProofTest, nothing_watched_is_not_done) {
    Proof proof;
    proof.looked() = {};
    proof.file().visit.proof.clear();
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "not watched");
    EXPECT_THAT(english(result.text), HasSubstr("Not done"));
    EXPECT_EQ(result.runs, 0);
}

TEST(ProofTest, one_start_gives_no_period_and_that_is_said) {
    Proof proof;
    proof.watch({.at = 0.0, .water = 41.0, .drips = 55.0, .stops = 90.0});
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "not complete");
    ASSERT_THAT(result.missing, SizeIs(1));
    EXPECT_EQ(english(result.missing[0]), "Pump 1, Period");
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), pass);
}

TEST(ProofTest, each_thing_that_was_not_watched_is_named) {
    Proof proof;
    proof.watch({.at = 0.0}).watch({.at = 300.0});
    proof.looked().even_drip.reset();
    std::vector<std::string> missing;
    for (const auto& each : proof.result().missing) {
        missing.push_back(english(each));
    }
    EXPECT_THAT(missing, testing::ElementsAre("Pump 1, On-time", "Bank 1, Water at the far end",
                                              "Bank 1, Drip is back", "Bank 1, Even drip at the far end"));
}

TEST(ProofTest, a_bank_that_nobody_looked_at_is_not_proved) {
    Proof proof{TimerKind::fixed_interval, 2};
    proof.watch_good();
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "not complete");
    EXPECT_THAT(english(result.text), HasSubstr("Bank 2, Drip is back"));
}

TEST(ProofTest, marks_in_the_wrong_order_are_not_believed) {
    Proof proof;
    proof.watch({.at = 0.0, .water = 60.0, .drips = 50.0, .stops = 90.0}).watch({.at = 300.0});
    EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::fill)), "not watched");
    EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::drip_return)), "not watched");
}

TEST(ProofTest, undone_marks_count_for_nothing) {
    Proof proof;
    proof.watch_good();
    const auto good = proof.result();
    const auto before = proof.file().visit.marks.size();
    proof.watch({.at = 150.0, .water = 90.0, .drips = 20.0, .stops = 10.0});
    EXPECT_NE(verdict_text(proof.result().verdict), "pass") << "the marks would spoil it";
    auto& marks = proof.file().visit.marks;
    for (auto i = before; i < marks.size(); ++i) {
        marks[i].undone = true;
    }
    EXPECT_EQ(verdict_text(proof.result().verdict), "pass");
    EXPECT_EQ(proof.result().runs, good.runs);
}

TEST(ProofTest, runs_before_the_third_after_a_change_are_not_judged) {
    for (const double first : {1.0, 2.0}) {
        Proof proof;
        proof.watch({.at = 0.0, .water = 80.0, .drips = 85.0, .stops = 120.0});
        counted_from_change(proof.file(), proof.visit.timer(1), first);
        proof.looked().dry_patch = true;
        const auto result = proof.result();
        EXPECT_EQ(verdict_text(result.verdict), "too early") << first;
        EXPECT_THAT(english(result.text), HasSubstr("number 3"));
        EXPECT_THAT(result.causes, IsEmpty());
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::on_time)), "too early") << first;
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::dry_patch)), "too early") << first;
        ASSERT_TRUE(proof.line(ProofQuantity::on_time).seen) << "what was seen is shown all the same";
    }
}

TEST(ProofTest, without_the_count_since_the_change_nothing_is_judged) {
    Proof proof;
    proof.watch_good();
    std::erase_if(proof.file().visit.proof, [](const ProofNotes& notes) { return !notes.timer.empty(); });
    EXPECT_EQ(verdict_text(proof.result().verdict), "too early");
    EXPECT_THAT(english(proof.result().text), HasSubstr("was not entered"));
}

TEST(ProofTest, of_runs_watched_from_the_change_on_only_the_first_two_are_left_out) {
    Proof proof;
    counted_from_change(proof.file(), proof.visit.timer(1), 1.0);
    proof.watch({.at = 0.0, .water = 80.0, .stops = 150.0})
        .watch({.at = 200.0, .water = 70.0, .stops = 140.0})
        .watch({.at = 600.0, .water = 41.0, .drips = 55.0, .stops = 90.0})
        .watch({.at = 900.0, .stops = 90.0});
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "pass") << english(result.text);
    EXPECT_EQ(result.runs, 2);
}

// Base 90 s, ceiling 150 s, tolerance 2 s: from 88 to 152 s; U = 0.9994 s.
TEST(ProofTest, a_trimmed_on_time_may_be_anything_from_base_to_ceiling) {
    for (const auto& [seen, wanted] :
         {Case{90.0, pass}, Case{120.0, pass}, Case{150.9, pass}, Case{151.1, close}, Case{153.05, fail},
          Case{89.05, pass}, Case{88.9, close}, Case{86.9, fail}}) {
        Proof proof{TimerKind::trimmed};
        proof.visit.left().on_time_ceiling = typed<Duration>("150s");
        proof.watch({.at = 0.0, .stops = seen});
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::on_time)), verdict_text(wanted)) << seen;
    }
}

TEST(ProofTest, an_on_time_that_the_controller_shows_is_what_it_must_be) {
    for (const auto& [seen, wanted] : {Case{120.5, pass}, Case{124.0, fail}, Case{90.0, fail}}) {
        Proof proof{TimerKind::trimmed};
        proof.visit.left().on_time_ceiling = typed<Duration>("150s");
        proof.visit.left().shown_on_time = typed<Duration>("120s");
        proof.watch({.at = 0.0, .stops = seen});
        EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::on_time)), verdict_text(wanted)) << seen;
    }
}

TEST(ProofTest, a_fixed_interval_timer_has_no_ceiling) {
    Proof proof;
    proof.visit.left().on_time_ceiling = typed<Duration>("150s");
    proof.watch({.at = 0.0, .stops = 120.0});
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), fail);
}

TEST(ProofTest, without_settings_left_a_cycle_is_seen_and_not_compared) {
    Proof proof;
    proof.file().visit.left.clear();
    proof.watch_good();
    EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::period)), "nothing to compare with");
    const auto result = proof.result();
    EXPECT_EQ(verdict_text(result.verdict), "not complete");
    EXPECT_THAT(english(result.text), HasSubstr("Period as left in the timer"));
}

TEST(ProofTest, a_bank_without_readings_is_proved_by_the_timer_and_by_looking) {
    Proof proof;
    proof.file().visit.marks.clear();
    proof.watch_good();
    EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::fill)), "nothing to compare with");
    EXPECT_EQ(verdict_text(proof.verdict(ProofQuantity::drip_return)), "nothing to compare with");
    EXPECT_EQ(proof.verdict(ProofQuantity::drip_before_stop), pass);
    EXPECT_EQ(verdict_text(proof.result().verdict), "pass") << english(proof.result().text);
}

TEST(ProofTest, a_timer_on_demand_is_proved_by_looking) {
    Proof proof{TimerKind::on_demand};
    proof.file().visit.left.clear();
    EXPECT_EQ(verdict_text(proof.result().verdict), "pass") << english(proof.result().text);
    proof.looked().dry_patch = true;
    EXPECT_EQ(verdict_text(proof.result().verdict), "fail");
    proof.looked().dry_patch.reset();
    EXPECT_EQ(verdict_text(proof.result().verdict), "not complete");
}

TEST(ProofTest, a_pump_left_without_rest_fails_if_it_stops_early) {
    Proof proof;
    proof.visit.left().base_on_time = typed<Duration>("300s");
    proof.watch({.at = 0.0, .stops = 900.0});
    EXPECT_EQ(verdict_text(proof.result().verdict), "pass") << english(proof.result().text);
    proof.watch({.at = 1200.0, .stops = 90.0});
    proof.file().visit.marks.at(proof.file().visit.marks.size() - 3).undone = true;  // the stop at 900 s
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), fail);
}

/// When that timer's settings were changed, counted from the proof's first start.
Moment at_the_watch(Proof& proof, double after_start) {
    const auto& first = *std::ranges::find_if(proof.file().visit.marks, &Mark::proof);
    Moment moment{first.at, first.wall};
    moment.at.boot_ns += static_cast<std::int64_t>(after_start * 1e9);
    moment.wall.unix_ms += static_cast<std::int64_t>(after_start * 1e3);
    return moment;
}

TEST(ChangedAfterProofTest, what_was_watched_before_the_change_is_not_judged_and_one_is_told_to_watch_again) {
    Proof proof;
    proof.watch_good();
    proof.visit.left().changed = at_the_watch(proof, -1.0);
    EXPECT_EQ(proof.result().verdict, pass) << english(proof.result().text);
    proof.visit.left().changed = at_the_watch(proof, 400.0);
    for (auto& notes : proof.file().visit.proof) {
        notes.answered = at_the_watch(proof, 350.0);
    }
    EXPECT_EQ(proof.result().verdict, ProofVerdict::too_early);
    EXPECT_THAT(english(proof.result().text), HasSubstr("Watch again"));
    EXPECT_EQ(proof.result().runs, 0);
    EXPECT_EQ(proof.verdict(ProofQuantity::period), ProofVerdict::too_early) << "it is still shown";
}

TEST(ChangedAfterProofTest, what_is_watched_after_the_change_is_judged_alone) {
    Proof proof;
    proof.watch({.at = 0.0, .water = 41.0, .drips = 55.0, .stops = 30.0});  // under other settings
    proof.watch({.at = 1000.0, .water = 41.0, .drips = 55.0, .stops = 90.0}).watch({.at = 1300.0});
    EXPECT_NE(proof.result().verdict, pass) << "both are judged while nothing tells them apart";
    proof.visit.left().changed = at_the_watch(proof, 500.0);
    EXPECT_EQ(proof.result().verdict, pass) << english(proof.result().text);
}

TEST(ChangedAfterProofTest, an_answer_from_before_the_change_does_not_count) {
    Proof proof;
    proof.watch({.at = 0.0}).watch({.at = 1000.0, .water = 41.0, .drips = 55.0, .stops = 90.0});
    proof.watch({.at = 1300.0});
    proof.visit.left().changed = at_the_watch(proof, 500.0);
    EXPECT_EQ(proof.result().verdict, pass) << english(proof.result().text);
    proof.looked().answered = at_the_watch(proof, 400.0);
    EXPECT_EQ(proof.result().verdict, ProofVerdict::incomplete) << english(proof.result().text);
    EXPECT_EQ(proof.verdict(ProofQuantity::even_drip), ProofVerdict::not_watched);
    proof.looked().answered = at_the_watch(proof, 1400.0);
    EXPECT_EQ(proof.result().verdict, pass) << english(proof.result().text);
}

TEST(ChangedAfterProofTest, the_number_of_the_run_is_asked_again_after_a_change) {
    Proof proof;
    proof.watch({.at = 0.0}).watch({.at = 1000.0, .water = 41.0, .drips = 55.0, .stops = 90.0});
    proof.watch({.at = 1300.0});
    proof.visit.left().changed = at_the_watch(proof, 500.0);
    for (auto& notes : proof.file().visit.proof) {
        notes.answered = at_the_watch(proof, notes.timer.empty() ? 1400.0 : 400.0);
    }
    EXPECT_THAT(english(proof.result().text), HasSubstr("was not entered"));
}

TEST(ProofTest, an_on_time_counted_from_a_full_header_is_proved_as_a_run_of_the_pump) {
    Proof proof;
    auto described = generic_template(TimerKind::fixed_interval);
    described.counts_from = CountsFrom::full_header;
    choose_controller(proof.visit.timer(1), described);
    proof.visit.left().base_on_time = typed<Duration>("50s");  // and 40 s of filling
    proof.watch_good();
    EXPECT_NEAR(in_seconds(proof.line(ProofQuantity::on_time).set.value()), 90.0, 1e-6);
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), pass);
    forget_controller(proof.visit.timer(1));
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), fail) << "50 s from pump start";
}

TEST(ProofTest, without_a_fill_time_such_an_on_time_has_nothing_to_be_compared_with) {
    Proof proof;
    auto described = generic_template(TimerKind::fixed_interval);
    described.counts_from = CountsFrom::full_header;
    choose_controller(proof.visit.timer(1), described);
    std::erase_if(proof.file().visit.marks,
                  [](const Mark& mark) { return mark.kind == MarkKind::water_at_far_end; });
    proof.watch_good();
    EXPECT_EQ(proof.verdict(ProofQuantity::on_time), ProofVerdict::not_compared);
    std::vector<std::string> missing;
    for (const auto& each : proof.result().missing) {
        missing.push_back(english(each));
    }
    EXPECT_THAT(missing, Contains(HasSubstr("fill time of every bank")));
}

}  // namespace
}  // namespace wetfront::test
