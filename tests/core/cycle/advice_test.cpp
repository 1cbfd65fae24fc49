// SPDX-License-Identifier: Apache-2.0
#include "cycle/advice.h"

#include <gmock/gmock.h>

#include <cmath>

#include "air/moist_air.h"
#include "cycle/explain.h"
#include "english.h"
#include "pad/wet_pad.h"
#include "timed_visit.h"

namespace wetfront {
namespace {

using namespace literals;
using test::english;
using test::TimedVisit;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

TimedVisit timed() {
    TimedVisit visit;
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    visit.dry_start("south", 60.0, 200.0, 1100.0);
    return visit;
}

std::vector<Setting> settings_in(const std::vector<SettingAdvice>& advice) {
    std::vector<Setting> settings;
    for (const auto& entry : advice) {
        settings.push_back(entry.setting);
    }
    return settings;
}

std::optional<double> value_of(const TimerAdvice& advice, Setting setting) {
    const auto* found = advice.advised(setting);
    return found != nullptr && found->value ? std::optional{found->value->si} : std::nullopt;
}

const std::vector<Setting> every_setting{
    Setting::period,         Setting::base_on_time,    Setting::on_time_ceiling, Setting::trim_step,
    Setting::trim_dead_band, Setting::review_interval, Setting::rinse_at,        Setting::rinse_length};

TEST(AdviceTest, two_timed_banks_get_a_cycle_that_the_worse_one_decides) {
    const auto visit = timed();
    const auto advice = advise(visit.file);
    ASSERT_EQ(advice.timers.size(), 1U);
    const auto& timer = *advice.of(Id{"timer"});
    ASSERT_TRUE(timer.cycled) << english(timer.verdict);
    EXPECT_FALSE(timer.banks[0].decides);
    EXPECT_TRUE(timer.banks[1].decides);
    // By hand for the south bank: kappa = 140 / 1100 and, from the two weathers on one site, R.
    const auto pressure = standard_pressure(150_m).value();
    const auto test = air_from_humidity(33_degC, 45_percent, pressure).value();
    const auto design = air_from_wet_bulb(36_degC, 24_degC, pressure).value();
    const double ratio = evaporation_ratio(design, test, 75_percent).value();
    EXPECT_GT(ratio, 1.0);
    EXPECT_NEAR(*timer.evaporation_ratio, ratio, 1e-12);
    // One reading each: hand and seeing alone. s = 1.25 * 300 R / 1100; u_fill 0.1, u_wet hypot(0.1, 2),
    // u_dry hypot(0.1, 5 % of 1100 = 55).
    const double s = 375.0 * ratio / 1100.0;
    const double u =
        std::sqrt(std::pow((1.0 - s) * 0.1, 2) + s * s * 4.01 + std::pow(s * 140.0 / 1100.0, 2) * 3025.01);
    const double need = 60.0 + s * 140.0 + 2.0 * u;
    EXPECT_NEAR(in_seconds(timer.banks[1].bounds->need), need, 1e-5);
    EXPECT_EQ(value_of(timer, Setting::period), std::optional{300.0});
    EXPECT_EQ(value_of(timer, Setting::base_on_time), std::optional{5.0 * std::ceil(need / 5.0)});
    EXPECT_EQ(value_of(timer, Setting::review_interval), std::optional{600.0});
    EXPECT_EQ(value_of(timer, Setting::trim_dead_band), std::optional{0.5});
}

TEST(AdviceTest, a_trimmed_timer_is_told_every_setting_both_ways) {
    const auto advice = advise(timed().file).timers.front();
    EXPECT_EQ(settings_in(advice.cycle), every_setting);
    EXPECT_EQ(settings_in(advice.continuous), every_setting);
}

TEST(AdviceTest, continuous_pumping_has_no_rest) {
    const auto advice = advise(timed().file).timers.front();
    ASSERT_GE(advice.continuous.size(), 3U);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_EQ(advice.continuous[i].value, std::optional{any(300_s)});
    }
}

TEST(AdviceTest, every_setting_carries_why_with_words_formula_inputs_and_source) {
    const auto advice = advise(timed().file).timers.front();
    for (const auto* list : {&advice.cycle, &advice.continuous}) {
        for (const auto& setting : *list) {
            const auto& reason = setting.reason;
            EXPECT_FALSE(reason.rule.empty()) << key_of(setting.setting);
            EXPECT_FALSE(reason.brief.empty()) << key_of(setting.setting);
            EXPECT_FALSE(reason.explanation.empty()) << key_of(setting.setting);
            EXPECT_FALSE(reason.source.empty()) << key_of(setting.setting);
            if (setting.value) {
                EXPECT_FALSE(reason.formula.empty()) << key_of(setting.setting);
            }
            for (const auto& input : reason.inputs) {
                if (input.origin == Origin::published) {
                    EXPECT_FALSE(input.source.empty()) << english(input.name);
                }
            }
        }
    }
}

TEST(AdviceTest, the_base_can_be_worked_out_again_from_its_reason) {
    const auto timer = advise(timed().file).timers.front();
    const auto& advised = *timer.advised(Setting::base_on_time);
    const auto& reason = advised.reason;
    const auto input = [&](const std::string& symbol) {
        for (const auto& entry : reason.inputs) {
            if (entry.symbol == symbol) {
                return entry.value.si;
            }
        }
        ADD_FAILURE() << "no input " << symbol;
        return 0.0;
    };
    EXPECT_EQ(reason.rule, "enough water");
    EXPECT_EQ(reason.formula, "t_on = t_fill + m P kappa R + U; kappa = (t_wet - t_fill) / t_dry");
    const double kappa = (input("t_wet") - input("t_fill")) / input("t_dry");
    EXPECT_NEAR(kappa, input("kappa"), 1e-12);
    EXPECT_NEAR(input("t_fill") + input("m") * input("P") * kappa * input("R") + input("U"), reason.exact->si,
                1e-9);
    EXPECT_EQ(reason.rounding, Rounding::up);
    EXPECT_EQ(reason.resolution, std::optional{any(5_s)});
    EXPECT_EQ(advised.value->si, 5.0 * std::ceil(reason.exact->si / 5.0));
    EXPECT_EQ(english(reason.brief), "enough water for 5 min at the hottest hour");
}

TEST(AdviceTest, rinse_covers_the_bank_that_takes_longest) {
    const auto timer = advise(timed().file).timers.front();
    ASSERT_TRUE(timer.banks[0].rinse && timer.banks[1].rinse);
    const double longest =
        std::max(in_seconds(timer.banks[0].rinse->length()), in_seconds(timer.banks[1].rinse->length()));
    EXPECT_EQ(value_of(timer, Setting::rinse_length), std::optional{5.0 * std::ceil(longest / 5.0)});
    EXPECT_FALSE(value_of(timer, Setting::rinse_at));
    EXPECT_THAT(english(timer.advised(Setting::rinse_at)->reason.explanation),
                HasSubstr("Never on cold or young birds"));
}

// Header of 20 m and 50 mm: pi/4 * 0.05^2 * 20 = 0.0392699 m3, three of them 0.1178097 m3; half of 4
// L/s: 58.905 s.
TEST(AdviceTest, measured_flow_times_the_change_of_the_header_water) {
    auto visit = timed();
    visit.file.visit.conditions.flows.push_back({Id{"pump"}, TimedVisit::entry<VolumeFlow>("4L/s")});
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.banks[0].rinse);
    EXPECT_TRUE(timer.banks[0].rinse->exchange_from_flow);
    EXPECT_NEAR(in_seconds(timer.banks[0].rinse->exchange), 58.905, 0.001);
}

TEST(AdviceTest, a_share_from_flow_that_is_larger_is_used_and_a_large_difference_is_shown) {
    auto visit = timed();
    visit.file.visit.conditions.face_velocity = TimedVisit::entry<Velocity>("1.8m/s");
    visit.file.visit.conditions.flows.push_back({Id{"pump"}, TimedVisit::entry<VolumeFlow>("1L/s")});
    const auto bank = advise(visit.file).timers.front().banks.front();
    ASSERT_TRUE(bank.share_from_flow && bank.share_from_timings && bank.bounds);
    // E H L / (rho Q / 2) by hand from the pad's own functions.
    const auto test = air_from_humidity(33_degC, 45_percent, standard_pressure(150_m).value()).value();
    const auto e = expected_effectiveness(1.8_mps, 150_mm).value();
    const double flux = in_si(evaporation(test, e, 1.8_mps).value());
    EXPECT_NEAR(*bank.share_from_flow, flux * 30.0 / 0.5, 1e-9);
    EXPECT_NEAR(*bank.share_from_timings, 0.7 * 120.0 / 1200.0, 1e-9);
    EXPECT_TRUE(bank.shares_disagree);
    EXPECT_NEAR(bank.bounds->evaporated_share, *bank.share_from_flow, 1e-12);
}

TEST(AdviceTest, shares_that_agree_are_not_called_apart) {
    auto visit = timed();
    visit.file.visit.conditions.face_velocity = TimedVisit::entry<Velocity>("1.8m/s");
    auto flow_for = [&](double share_of_first) {
        const auto test = air_from_humidity(33_degC, 45_percent, standard_pressure(150_m).value()).value();
        const auto e = expected_effectiveness(1.8_mps, 150_mm).value();
        const double flow =
            2.0 * in_si(evaporation(test, e, 1.8_mps).value()) * 30.0 / (1000.0 * share_of_first);
        visit.file.visit.conditions.flows = {
            {Id{"pump"}, Entered<VolumeFlow>::of(from_si<VolumeFlow>(flow))}};
        return advise(visit.file).timers.front().banks.front().shares_disagree;
    };
    EXPECT_FALSE(flow_for(0.07 * 1.29));
    EXPECT_TRUE(flow_for(0.07 * 1.31));
    EXPECT_FALSE(flow_for(0.07 / 1.29));
    EXPECT_TRUE(flow_for(0.07 / 1.31));
}

TEST(AdviceTest, a_fixed_interval_timer_gets_period_and_base_and_is_told_to_rinse_by_hand) {
    auto visit = timed();
    visit.timer().kind = TimerKind::fixed_interval;
    const auto timer = advise(visit.file).timers.front();
    EXPECT_TRUE(timer.cycled);
    EXPECT_THAT(settings_in(timer.cycle), ElementsAre(Setting::period, Setting::base_on_time));
    EXPECT_THAT(settings_in(timer.continuous), ElementsAre(Setting::period, Setting::base_on_time));
    EXPECT_THAT(english(timer.notes), Contains(HasSubstr("by hand for")));
}

TEST(AdviceTest, a_timer_on_demand_is_continuous_and_says_so) {
    auto visit = timed();
    visit.timer().kind = TimerKind::on_demand;
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_TRUE(timer.cycle.empty());
    ASSERT_EQ(timer.continuous.size(), 2U);
    EXPECT_FALSE(timer.continuous.front().value);
    EXPECT_THAT(english(timer.verdict), HasSubstr("nothing to set"));
}

TEST(AdviceTest, without_a_weather_no_cycle_is_advised_and_the_lack_is_named) {
    const auto lacks = [](auto take_away, const char* what) {
        auto visit = timed();
        take_away(visit.file);
        const auto advice = advise(visit.file);
        const auto& timer = advice.timers.front();
        EXPECT_FALSE(timer.cycled) << what;
        EXPECT_TRUE(timer.cycle.empty()) << what;
        EXPECT_FALSE(timer.evaporation_ratio) << what;
        EXPECT_FALSE(timer.continuous.empty()) << what;
        EXPECT_THAT(english(advice.missing), Contains(HasSubstr(what)));
        EXPECT_THAT(english(timer.verdict), HasSubstr(what));
    };
    lacks([](VisitFile& f) { f.visit.conditions.outside_dry_bulb.reset(); }, "outside temperature");
    lacks([](VisitFile& f) { f.visit.conditions.outside_humidity.reset(); }, "outside humidity");
    lacks([](VisitFile& f) { f.farm.design_dry_bulb.reset(); }, "design temperature");
    lacks([](VisitFile& f) { f.farm.design_wet_bulb.reset(); }, "wet bulb");
    lacks([](VisitFile& f) { f.farm.design_wet_bulb = TimedVisit::entry<Temperature>("37degC"); },
          "Not usable");
}

TEST(AdviceTest, missing_readings_are_named_bank_by_bank) {
    TimedVisit visit;
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_THAT(timer.banks[0].missing, IsEmpty());
    EXPECT_THAT(
        english(timer.banks[1].missing),
        ElementsAre("South bank: fill time", "South bank: wet-through time from a dry pad (or a wet start)",
                    "South bank: dry-out time with the fans running (or a wet start)"));
    EXPECT_FALSE(timer.banks[1].question);
    EXPECT_THAT(english(timer.verdict), HasSubstr("South bank: fill time"));
}

TEST(AdviceTest, a_house_without_any_reading_still_gets_continuous_pumping) {
    const auto timer = advise(TimedVisit{}.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_EQ(value_of(timer, Setting::base_on_time), std::optional{300.0});
}

TEST(AdviceTest, a_wet_start_serves_where_the_pad_could_not_be_dried) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.wet_start("north", 300.0, 45.0, 85.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.cycled) << english(timer.verdict);
    EXPECT_TRUE(std::holds_alternative<WetStart>(timer.banks[0].question->start));
    EXPECT_EQ(value_of(timer, Setting::on_time_ceiling), value_of(timer, Setting::base_on_time));
    EXPECT_FALSE(value_of(timer, Setting::trim_step));
    EXPECT_FALSE(value_of(timer, Setting::rinse_length));
    EXPECT_THAT(english(timer.advised(Setting::rinse_length)->reason.explanation),
                HasSubstr("timed from a wet pad"));
}

TEST(AdviceTest, a_wet_start_with_the_fans_standing_proves_nothing) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.wet_start("north", 300.0, 45.0, 85.0, false);
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_THAT(english(timer.banks[0].missing), Contains(HasSubstr("fans running all the while")));
}

TEST(AdviceTest, a_dry_start_is_preferred_to_a_wet_one) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.wet_start("north", 300.0, 45.0, 85.0);
    visit.dry_start("north", 45.0, 165.0, 1200.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.banks[0].question);
    EXPECT_TRUE(std::holds_alternative<DryStart>(timer.banks[0].question->start));
}

TEST(AdviceTest, two_readings_or_more_bring_their_own_spread_where_it_is_larger_and_one_does_not) {
    const auto u_of = [](int readings, double apart) {
        TimedVisit visit;
        visit.file.house.banks.pop_back();
        for (int i = 0; i < readings; ++i) {
            visit.dry_start("north", 45.0, 165.0 + apart * (i - 1), 1200.0);
        }
        const auto timer = advise(visit.file).timers.front();
        return in_seconds(std::get<DryStart>(timer.banks[0].question->start).u_wet_through);
    };
    const double floor = std::hypot(0.1, 2.0);  // hand, and seeing a drip
    EXPECT_NEAR(u_of(1, 10.0), floor, 1e-9);
    // 155, 165: s = 10 / sqrt(2), mean 10 / 2.
    EXPECT_NEAR(u_of(2, 10.0), std::hypot(5.0, floor), 1e-9);
    EXPECT_NEAR(u_of(2, 0.0), floor, 1e-9);
    // 155, 165, 175: s = 10, mean 10 / sqrt(3).
    EXPECT_NEAR(u_of(3, 10.0), std::hypot(10.0 / std::sqrt(3.0), floor), 1e-9);
    EXPECT_NEAR(u_of(3, 0.0), floor, 1e-9);
}

TEST(AdviceTest, a_bank_that_a_gap_dries_is_told_which_hardware_would_help) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 110.0, 130.0, 300.0);
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_FALSE(timer.banks[0].fits);
    EXPECT_TRUE(timer.banks[0].decides);
    EXPECT_THAT(english(timer.banks[0].obstacles), Contains(HasSubstr("A header that stays full")));
    EXPECT_THAT(english(timer.verdict), HasSubstr("North bank would not stay wet"));
}

// The whole percent that stands in front of `mark` in a text.
double percent_before(const std::string& text, const std::string& mark) {
    const auto end = text.find(mark);
    if (end == std::string::npos) {
        ADD_FAILURE() << "no \"" << mark << "\" in " << text;
        return 0.0;
    }
    const auto begin = text.rfind("about ", end) + 6;
    return std::stod(text.substr(begin, end - begin)) / 100.0;
}

// More flow to each metre, by a stronger pump or a shorter bank, divides fill and wetting time by as much.
TEST(AdviceTest, the_flow_and_the_length_that_are_said_to_help_do_help_and_a_little_less_does_not) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 100.0, 1100.0, 1300.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_FALSE(timer.cycled);
    ASSERT_EQ(timer.banks[0].obstacles.size(), 1U);
    const auto text = english(timer.banks[0].obstacles[0]);
    const auto fits_with = [&](double flow) {
        auto question = *timer.banks[0].question;
        auto& dry = std::get<DryStart>(question.start);
        dry.wet_through = (1.0 / flow) * dry.wet_through;
        question.fill = (1.0 / flow) * question.fill;
        question.uncertainty = timer.banks[0].bounds->uncertainty;
        const auto bounds = on_time_bounds(question, 600_s, {}).value();
        return obstacles_of({}, question, bounds, 5_s, {}).empty();
    };
    const double flow = percent_before(text, " % of what it gets now");
    const double length = percent_before(text, " % of its length");
    EXPECT_GT(flow, 1.0);
    EXPECT_TRUE(fits_with(flow)) << text;
    EXPECT_FALSE(fits_with(flow - 0.011)) << text;
    EXPECT_TRUE(fits_with(1.0 / length)) << text;
}

TEST(AdviceTest, the_fill_time_that_is_said_to_help_does_help_and_a_second_more_does_not) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 110.0, 130.0, 300.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_FALSE(timer.cycled);
    auto question = *timer.banks[0].question;
    const double gap = in_seconds(longest_gap(question, {}));
    ASSERT_GT(gap, 61.0);
    const double fill = std::floor(gap - 60.0);
    EXPECT_THAT(english(timer.banks[0].obstacles),
                Contains(HasSubstr("Filled within " + std::to_string(static_cast<int>(fill)) + " s")));
    const auto dries_with = [&](double seconds_to_fill) {
        question.fill = seconds(seconds_to_fill);
        const auto bounds = on_time_bounds(question, 600_s, {}).value();
        return bounds.gap_bound > 540_s;
    };
    EXPECT_FALSE(dries_with(fill));
    EXPECT_TRUE(dries_with(fill + 1.0));
}

TEST(AdviceTest, a_pad_that_dries_within_the_shortest_rest_is_promised_no_help_from_a_full_header) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 20.0, 30.0, 100.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_LT(*timer.banks[0].longest_gap, 60_s);
    EXPECT_THAT(english(timer.banks[0].obstacles), Contains(HasSubstr("Even a header that stays full")));
    EXPECT_THAT(english(timer.banks[0].obstacles), Not(Contains(HasSubstr("Filled within"))));
}

TEST(AdviceTest, a_bank_that_needs_nearly_the_whole_period_is_told_so) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 100.0, 1100.0, 1300.0);
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_THAT(english(timer.banks[0].obstacles), ElementsAre(HasSubstr("of pumping in 10 min")));
}

TEST(AdviceTest, a_bank_that_dries_faster_than_water_comes_needs_more_flow) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.dry_start("north", 30.0, 430.0, 200.0);
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    // 400 s of wetting against b = 0.7 / 200 s: 1.4 times what comes, and R times that at the design hour.
    const double over = 400.0 * 0.7 / 200.0 * *timer.evaporation_ratio;
    EXPECT_THAT(english(timer.banks[0].obstacles),
                ElementsAre(HasSubstr("Give it more flow, more than " +
                                      std::to_string(static_cast<int>(std::ceil(100.0 * over))) + " %")));
    EXPECT_THAT(english(timer.verdict), HasSubstr("more flow"));
    EXPECT_FALSE(timer.banks[0].rinse);
}

TEST(AdviceTest, measured_effectiveness_is_preferred_and_a_wrong_one_is_not_used_in_silence) {
    auto visit = timed();
    visit.file.visit.conditions.behind_pad = TimedVisit::entry<Temperature>("27degC");
    EXPECT_THAT(advise(visit.file).notes, IsEmpty());
    EXPECT_THAT(english(advise(visit.file).assumed), Not(Contains(HasSubstr("pad effectiveness"))));
    visit.file.visit.conditions.behind_pad = TimedVisit::entry<Temperature>("12degC");
    EXPECT_THAT(english(advise(visit.file).notes), Contains(HasSubstr("temperature behind the pad")));
    EXPECT_THAT(english(advise(visit.file).assumed), Contains("pad effectiveness 75 %"));
}

TEST(AdviceTest, assumed_values_that_were_used_are_listed_once) {
    auto visit = timed();
    visit.timer().resolution.reset();
    const auto assumed = english(advise(visit.file).assumed);
    for (const char* wanted :
         {"water margin 125 %", "shortest rest 60 s", "smallest step of a timer 1 s",
          "pad effectiveness 75 %", "trim dead band 0.5 °C", "share of drying at constant rate 70 %"}) {
        EXPECT_EQ(std::count(assumed.begin(), assumed.end(), wanted), 1) << wanted;
    }
    EXPECT_THAT(english(advise(TimedVisit{}.file).assumed), Not(Contains(HasSubstr("water margin"))));
}

TEST(AdviceTest, readings_on_a_day_worse_than_the_design_day_are_noticed) {
    auto visit = timed();
    visit.file.farm.design_dry_bulb = TimedVisit::entry<Temperature>("30degC");
    const auto timer = advise(visit.file).timers.front();
    EXPECT_THAT(english(timer.notes), Contains(HasSubstr("check its design temperatures")));
    EXPECT_THAT(english(timer.notes), Contains(HasSubstr("holds for the weather of the readings")));
}

// With R = 1 the need of the south bank is 60 + 1.25 * 300 * 140 / 1100 + U = 107.7 s + U; the true R of
// about 0.7 would give less than what evaporated while it was read.
TEST(AdviceTest, a_design_day_milder_than_the_readings_never_asks_for_less_than_they_do) {
    auto visit = timed();
    visit.file.farm.design_dry_bulb = TimedVisit::entry<Temperature>("30degC");
    const auto advice = advise(visit.file);
    const auto& timer = advice.timers.front();
    EXPECT_EQ(timer.evaporation_ratio, std::optional{1.0});
    const auto& south = timer.banks[1];
    ASSERT_TRUE(south.bounds && south.question && south.question->milder_design);
    EXPECT_LT(*south.question->milder_design, 0.95);
    EXPECT_NEAR(in_seconds(south.bounds->need - south.bounds->uncertainty), 60.0 + 375.0 * 140.0 / 1100.0,
                1e-9);
    EXPECT_NEAR(in_seconds(*south.longest_gap), 550.0, 1e-9);
    EXPECT_THAT(english(advice.assumed), Contains(HasSubstr("no milder than the weather of the readings")));
    std::vector<std::string> names;
    for (const auto& input : timer.advised(Setting::base_on_time)->reason.inputs) {
        names.push_back(english(input.name));
    }
    EXPECT_THAT(names, Contains(HasSubstr("counts as 1")));
}

TEST(AdviceTest, a_wet_start_is_trusted_for_no_longer_gap_than_it_tested) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.file.farm.design_dry_bulb = TimedVisit::entry<Temperature>("30degC");
    visit.wet_start("north", 300.0, 45.0, 85.0);
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.banks[0].longest_gap);
    EXPECT_NEAR(in_seconds(*timer.banks[0].longest_gap), 345.0, 1e-9);
}

// 5 min is no multiple of 7 s; 7 min = 420 s is the first whole minute that is. Without a step of the period,
// whole seconds: 43 * 7 s = 301 s.
TEST(AdviceTest, continuous_pumping_has_an_on_time_that_is_the_period_in_steps_of_both) {
    auto visit = timed();
    visit.timer().resolution = TimedVisit::entry<Duration>("7s");
    const auto without_rest = [&] {
        const auto settings = advise(visit.file).timers.front().continuous;
        return std::vector<double>{settings.at(0).value->si, settings.at(1).value->si,
                                   settings.at(2).value->si};
    };
    EXPECT_THAT(without_rest(), ElementsAre(420.0, 420.0, 420.0));
    visit.timer().period_resolution.reset();
    EXPECT_THAT(without_rest(), ElementsAre(301.0, 301.0, 301.0));
}

TEST(AdviceTest, no_dead_band_is_advised_or_assumed_where_there_is_nothing_to_trim) {
    TimedVisit visit;
    visit.file.house.banks.pop_back();
    visit.wet_start("north", 300.0, 45.0, 85.0);
    const auto advice = advise(visit.file);
    const auto& timer = advice.timers.front();
    ASSERT_TRUE(timer.cycled);
    ASSERT_EQ(value_of(timer, Setting::on_time_ceiling), value_of(timer, Setting::base_on_time));
    EXPECT_FALSE(value_of(timer, Setting::trim_dead_band));
    EXPECT_EQ(english(timer.advised(Setting::trim_dead_band)->reason.brief), "nothing to trim");
    EXPECT_THAT(english(advice.assumed), Not(Contains(HasSubstr("dead band"))));
}

TEST(AdviceTest, a_reason_says_that_the_measured_flow_decided) {
    auto visit = timed();
    const auto explanation = [&] {
        return english(advise(visit.file).timers.front().advised(Setting::base_on_time)->reason.explanation);
    };
    EXPECT_THAT(explanation(), Not(HasSubstr("measured flow")));
    visit.file.visit.conditions.face_velocity = TimedVisit::entry<Velocity>("1.8m/s");
    visit.file.visit.conditions.flows.push_back({Id{"pump"}, TimedVisit::entry<VolumeFlow>("2L/s")});
    const auto timer = advise(visit.file).timers.front();
    ASSERT_TRUE(timer.cycled) << english(timer.verdict);
    ASSERT_EQ(timer.advised(Setting::base_on_time)->reason.rule, "enough water");
    EXPECT_THAT(explanation(), HasSubstr("measured flow"));
}

TEST(AdviceTest, a_timer_that_holds_only_coarse_periods_gets_one_that_it_can_hold) {
    auto visit = timed();
    visit.timer().period_resolution = TimedVisit::entry<Duration>("4min");
    EXPECT_EQ(value_of(advise(visit.file).timers.front(), Setting::period), std::optional{480.0});
}

TEST(AdviceTest, the_truth_about_timers_stands_on_top_with_its_source) {
    const auto advice = advise(TimedVisit{}.file);
    EXPECT_THAT(english(advice.truth), HasSubstr("no extra cooling and no drier air"));
    EXPECT_THAT(advice.truth_source, HasSubstr("Poultry Housing Tips"));
}

TEST(AdviceTest, advice_can_be_copied_to_what_is_left) {
    const auto timer = advise(timed().file).timers.front();
    const auto settings = as_settings(timer);
    EXPECT_EQ(settings.timer, Id{"timer"});
    for (const auto& advised : timer.cycle) {
        if (advised.setting == Setting::trim_dead_band) {
            continue;  // held as the row's degrees above target
        }
        const auto copied = held(settings, advised.setting);
        EXPECT_EQ(copied.has_value(), advised.value.has_value()) << key_of(advised.setting);
        if (copied && advised.value) {
            EXPECT_NEAR(copied->si, advised.value->si, 1e-9) << key_of(advised.setting);
        }
    }
    EXPECT_EQ(settings.continuous_intended, std::optional{false});
    EXPECT_EQ(as_settings(advise(TimedVisit{}.file).timers.front()).continuous_intended, std::optional{true});
}

TEST(AdviceTest, nothing_is_invented_for_a_timer_without_banks) {
    TimedVisit visit;
    visit.timer().pumps = {Id{"no such pump"}};
    const auto timer = advise(visit.file).timers.front();
    EXPECT_FALSE(timer.cycled);
    EXPECT_TRUE(timer.banks.empty());
    EXPECT_THAT(english(timer.verdict), HasSubstr("describe them first"));
}

TEST(AdviceTest, limits_of_the_farm_are_those_that_it_is_made_with) {
    auto visit = timed();
    visit.file.farm.limits.least_rest = TimedVisit::entry<Duration>("90s");
    const auto advice = advise(visit.file);
    EXPECT_EQ(advice.margins.least_rest, 90_s);
    EXPECT_THAT(english(advice.assumed),
                Contains("shortest rest 90 s, changed for this farm (the program's own: 60 s)"));
    const auto& inputs = advice.timers.front().advised(Setting::period)->reason.inputs;
    ASSERT_FALSE(inputs.empty());
    EXPECT_EQ(inputs.front().origin, Origin::entered);
    EXPECT_EQ(english(inputs.front().name), "shortest rest, changed for this farm (the program's own: 60 s)");
}

TEST(AdviceTest, limits_that_cannot_be_used_together_are_said_and_the_programs_own_are_used) {
    auto visit = timed();
    const auto own = advise(visit.file);
    visit.file.farm.limits.least_rest = TimedVisit::entry<Duration>("10min");
    const auto advice = advise(visit.file);
    EXPECT_THAT(english(advice.notes),
                Contains(HasSubstr("cannot be used together (shortest rest: '600 s'")));
    EXPECT_EQ(value_of(advice.timers.front(), Setting::base_on_time),
              value_of(own.timers.front(), Setting::base_on_time));
    EXPECT_EQ(advice.margins.least_rest, 60_s);
}

TEST(AdviceTest, a_period_rounded_for_the_timer_is_not_told_as_changed) {
    auto visit = timed();
    visit.file.house.timers.front().period_resolution = TimedVisit::entry<Duration>("8min");
    for (const auto& input : advise(visit.file).timers.front().advised(Setting::period)->reason.inputs) {
        EXPECT_EQ(input.origin, Origin::assumed) << english(input.name);
    }
}

}  // namespace
}  // namespace wetfront
