// SPDX-License-Identifier: Apache-2.0
#include "cycle/template_fit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "easy_cycle.h"

namespace wetfront::test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

using Key = TemplateKey;

template <class Q>
Optional<Q> entry(const std::string& text) {
    return Entered<Q>::parse(text, "test").value();
}

TimerAdvice continuous_advice() {
    TimerAdvice advice;
    advice.continuous = {{Setting::period, any(seconds(300.0)), {}},
                         {Setting::base_on_time, any(seconds(300.0)), {}},
                         {Setting::on_time_ceiling, any(seconds(300.0)), {}}};
    advice.banks.emplace_back().question = easy_bank();
    return advice;
}

SettingTemplate plain() {
    auto made = generic_template(TimerKind::trimmed);
    made.dependencies.clear();
    return made;
}

TemplateSetting& at(SettingTemplate& described, Key key) {
    for (auto& setting : described.settings) {
        if (setting.setting == key) {
            return setting;
        }
    }
    throw std::runtime_error{"no such setting"};
}

/// That setting in other steps.
SettingTemplate with_steps(Key key, const char* unit, double resolution, double least, double most) {
    auto made = plain();
    auto& setting = at(made, key);
    setting.unit = unit;
    setting.resolution = resolution;
    setting.least = least;
    setting.most = most;
    EXPECT_TRUE(check_template(made, ""));
    return made;
}

std::string number(const TemplateFit& fit, Key key, int row = 0) {
    const auto* line = fit.line(key, row);
    return line == nullptr ? "no line" : line->number;
}

std::string said(const std::vector<Message>& messages) {
    std::string all;
    for (const auto& message : messages) {
        all += in_english(message, UnitSystem::si) + "|";
    }
    return all;
}

std::string problems(const TemplateFit& fit, Key key, int row = 0) {
    return said(fit.line(key, row)->problems);
}

std::string all_problems(const TemplateFit& fit) {
    std::string all = said(fit.not_held);
    for (const auto& line : fit.lines) {
        all += said(line.problems);
    }
    return all;
}

TEST(TemplateFitTest, a_base_on_time_between_two_steps_goes_up_and_one_at_a_step_stays) {
    const auto between = fit_to_template(plain(), cycle_advice(300.0, 83.0));
    EXPECT_EQ(number(between, Key::base_on_time), "85");
    EXPECT_EQ(between.line(Key::base_on_time)->entered, any(seconds(85.0)));
    EXPECT_EQ(between.line(Key::base_on_time)->wanted, any(seconds(83.0)));
    EXPECT_EQ(said(between.line(Key::base_on_time)->changes), "Rounded up from 83 s.|");
    const auto at_a_step = fit_to_template(plain(), cycle_advice(300.0, 85.0));
    EXPECT_EQ(number(at_a_step, Key::base_on_time), "85");
    EXPECT_EQ(said(at_a_step.line(Key::base_on_time)->changes), "");
    EXPECT_TRUE(at_a_step.fits()) << all_problems(at_a_step);
}

TEST(TemplateFitTest, lines_stand_in_the_order_of_the_controller_with_its_labels_and_units) {
    auto described = generic_template(TimerKind::fixed_interval);
    std::swap(described.settings[0], described.settings[1]);
    described.settings[0].label = "Run";
    described.settings[1].label = "Every";
    const auto fit = fit_to_template(described, cycle_advice());
    ASSERT_EQ(fit.lines.size(), 2U);
    EXPECT_EQ(fit.lines[0].label + " " + fit.lines[0].number + " " + fit.lines[0].unit, "Run 90 s");
    EXPECT_EQ(fit.lines[1].label + " " + fit.lines[1].number + " " + fit.lines[1].unit, "Every 5 min");
}

TEST(TemplateFitTest, steps_count_from_the_least) {
    const auto described = with_steps(Key::base_on_time, "s", 10.0, 3.0, 300.0);
    EXPECT_EQ(number(fit_to_template(described, cycle_advice(300.0, 83.0)), Key::base_on_time), "83");
    EXPECT_EQ(number(fit_to_template(described, cycle_advice(300.0, 84.0)), Key::base_on_time), "93");
}

TEST(TemplateFitTest, tenths_of_a_minute_are_written_without_noise) {
    const auto described = with_steps(Key::base_on_time, "min", 0.1, 0.0, 10.0);
    // 83 s = 1.38 min.
    EXPECT_EQ(number(fit_to_template(described, cycle_advice()), Key::base_on_time), "1.4");
}

TEST(TemplateFitTest, a_ceiling_goes_down_and_never_below_the_base_as_it_is_held) {
    EXPECT_EQ(number(fit_to_template(plain(), cycle_advice(300.0, 83.0, 164.0)), Key::on_time_ceiling),
              "160");
    // Down would be 80, the base is held at 85.
    const auto fit = fit_to_template(plain(), cycle_advice(300.0, 83.0, 84.0));
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "85");
    EXPECT_THAT(said(fit.line(Key::on_time_ceiling)->changes),
                HasSubstr("Not below the base on-time of 85 s"));
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
}

TEST(TemplateFitTest, a_ceiling_whose_steps_miss_the_base_takes_the_next_above_it) {
    auto described = with_steps(Key::on_time_ceiling, "s", 20.0, 0.0, 300.0);
    EXPECT_EQ(number(fit_to_template(described, cycle_advice(300.0, 83.0, 84.0)), Key::on_time_ceiling),
              "100");
}

TEST(TemplateFitTest, a_period_goes_to_the_nearest_step_and_the_base_is_worked_out_for_that_one) {
    // 45 + 0.125 P: 86.25 s in 330 s.
    const auto shorter = fit_to_template(plain(), cycle_advice(330.0, 87.0));
    EXPECT_EQ(number(shorter, Key::period), "5") << "a tie goes to the shorter";
    EXPECT_EQ(number(shorter, Key::base_on_time), "85") << "82.5 s up to steps of 5 s";
    EXPECT_THAT(said(shorter.line(Key::base_on_time)->changes),
                HasSubstr("A period of 5 min needs a run of 82.5 s"));
    const auto longer = fit_to_template(plain(), cycle_advice(331.0, 87.0));
    EXPECT_EQ(number(longer, Key::period), "6");
    EXPECT_EQ(number(longer, Key::base_on_time), "90");
    EXPECT_TRUE(longer.fits()) << all_problems(longer);
}

TEST(TemplateFitTest, an_advised_period_out_of_range_moves_into_it_and_all_that_hangs_on_it_follows) {
    const auto described = with_steps(Key::period, "min", 1.0, 10.0, 60.0);
    const auto fit = fit_to_template(described, cycle_advice());
    EXPECT_EQ(number(fit, Key::period), "10");
    EXPECT_EQ(number(fit, Key::base_on_time), "120");
    EXPECT_EQ(number(fit, Key::review_interval), "10");
    EXPECT_THAT(said(fit.line(Key::period)->changes), HasSubstr("Moved from 5 min into"));
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
}

TEST(TemplateFitTest, a_period_moved_so_short_that_no_rest_is_left_is_a_problem) {
    // 45 + 0.125 x 120 = 60 s of 120 s leaves just the 60 s of rest; of 60 s it leaves none.
    const auto just = with_steps(Key::period, "min", 1.0, 1.0, 2.0);
    EXPECT_TRUE(fit_to_template(just, cycle_advice()).fits());
    const auto too_short = with_steps(Key::period, "s", 5.0, 10.0, 115.0);
    EXPECT_THAT(problems(fit_to_template(too_short, cycle_advice()), Key::base_on_time),
                HasSubstr("less than 60 s of rest"));
}

TEST(TemplateFitTest, a_chosen_period_out_of_range_is_a_problem) {
    TimerSettings chosen;
    chosen.period = entry<Duration>("5 min");
    const auto described = with_steps(Key::period, "min", 2.0, 6.0, 60.0);
    EXPECT_EQ(number(fit_to_template(described, chosen), Key::period), "6") << "half a step away";
    const auto far = with_steps(Key::period, "min", 1.0, 6.0, 60.0);
    const auto fit = fit_to_template(far, chosen);
    EXPECT_EQ(number(fit, Key::period), "");
    EXPECT_EQ(problems(fit, Key::period),
              "It would have to be 5 min; this controller holds 6 min to 60 min.|");
}

TEST(TemplateFitTest, what_no_step_holds_on_the_safe_side_gets_no_number) {
    const auto short_range = with_steps(Key::base_on_time, "s", 5.0, 0.0, 80.0);
    const auto fit = fit_to_template(short_range, cycle_advice());
    EXPECT_EQ(number(fit, Key::base_on_time), "");
    EXPECT_EQ(fit.line(Key::base_on_time)->entered, std::nullopt);
    EXPECT_EQ(fit.settings.base_on_time, std::nullopt);
    EXPECT_THAT(problems(fit, Key::base_on_time), HasSubstr("this controller holds 0 s to 80 s"));
    EXPECT_FALSE(fit.fits());
    const auto just_enough = with_steps(Key::base_on_time, "s", 5.0, 0.0, 85.0);
    EXPECT_EQ(number(fit_to_template(just_enough, cycle_advice()), Key::base_on_time), "85");
}

TEST(TemplateFitTest, a_setting_that_the_controller_lacks_is_named_with_its_value) {
    auto described = plain();
    std::erase_if(described.settings,
                  [](const TemplateSetting& each) { return each.setting == Key::review_interval; });
    const auto fit = fit_to_template(described, cycle_advice());
    EXPECT_EQ(said(fit.not_held), "This controller has no setting for: Review interval (10 min).|");
    EXPECT_FALSE(fit.fits());
    EXPECT_EQ(said(fit_to_template(plain(), cycle_advice()).not_held), "");
}

TEST(TemplateFitTest, what_is_not_advised_has_a_line_without_a_number) {
    const auto fit = fit_to_template(plain(), cycle_advice());
    EXPECT_EQ(number(fit, Key::target), "");
    EXPECT_EQ(problems(fit, Key::target), "");
}

TEST(TemplateFitTest, counted_from_a_full_header_the_fill_is_taken_off_and_the_run_stays_long_enough) {
    auto described = plain();
    described.counts_from = CountsFrom::full_header;
    const auto fit = fit_to_template(described, cycle_advice());
    // 83 - 45 = 38, up to 40: the pump runs 85 s. 165 - 45 = 120 is a step.
    EXPECT_EQ(number(fit, Key::base_on_time), "40");
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "120");
    EXPECT_EQ(fit.settings.base_on_time->value(), seconds(40.0)) << "as the controller counts";
    EXPECT_EQ(fit.settings.on_time_ceiling->value(), seconds(120.0));
    EXPECT_EQ(said(fit.line(Key::base_on_time)->changes),
              "83 s from pump start, less 45 s for filling the header.|Rounded up from 38 s.|");
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
}

TEST(TemplateFitTest, of_several_banks_the_shortest_fill_goes_off_the_base_and_the_longest_off_the_ceiling) {
    auto described = plain();
    described.counts_from = CountsFrom::full_header;
    auto advice = cycle_advice();
    auto quick = easy_bank();
    quick.fill = seconds(30.0);
    advice.banks.emplace_back().question = quick;
    const auto fit = fit_to_template(described, advice);
    EXPECT_EQ(number(fit, Key::base_on_time), "55") << "83 - 30 = 53, up";
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "120") << "165 - 45";
}

// 230 s from the bank that fills in 30 s are 200 s on the controller: 240 s if it waits for the one of 40 s,
// and 241 s for one of 41 s.
TEST(TemplateFitTest, the_rest_has_to_stay_whichever_header_fills_first) {
    auto described = with_steps(Key::base_on_time, "s", 1.0, 0.0, 600.0);
    described.counts_from = CountsFrom::full_header;
    const auto problems_with = [&](double longest) {
        const HeaderFill read{seconds(30.0), seconds(longest)};
        return problems(fit_to_template(described, cycle_advice(300.0, 230.0, 240.0), {}, read),
                        Key::base_on_time);
    };
    EXPECT_EQ(problems_with(40.0), "");
    EXPECT_EQ(problems_with(41.0), "Leaves the pump less than 60 s of rest in a period of 5 min.|");
}

TEST(TemplateFitTest, a_controller_that_is_told_the_fill_counts_with_what_it_was_told) {
    auto described = plain();
    described.counts_from = CountsFrom::full_header;
    described.settings.push_back({Key::entered_fill, "Fill", "s", 10.0, 0.0, 300.0, ""});
    auto advice = cycle_advice();
    advice.banks[0].question->fill = seconds(47.0);
    const auto fit = fit_to_template(described, advice);
    EXPECT_EQ(number(fit, Key::entered_fill), "50") << "nearest";
    EXPECT_EQ(number(fit, Key::base_on_time), "35") << "83 - 50 = 33, up";
    EXPECT_EQ(fit.settings.base_on_time->value(), seconds(35.0)) << "a run of 85";
}

TEST(TemplateFitTest, the_fill_is_that_of_the_readings_of_all_banks) {
    auto described = plain();
    described.counts_from = CountsFrom::full_header;
    const auto fit = fit_to_template(described, cycle_advice(), {}, HeaderFill{seconds(23.0), seconds(65.0)});
    EXPECT_EQ(number(fit, Key::base_on_time), "60") << "83 - 23";
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "100") << "165 - 65";
}

// A bank that was not timed may fill faster than those that were: the period less their fill would let it
// rest.
TEST(TemplateFitTest, with_a_bank_untimed_no_fill_is_taken_off_and_that_is_a_problem) {
    auto described = plain();
    described.counts_from = CountsFrom::full_header;
    const auto fit = fit_to_template(described, continuous_advice(), {}, std::nullopt);
    EXPECT_EQ(number(fit, Key::base_on_time), "300") << "not 300 - 45";
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "300");
    for (const auto key : {Key::base_on_time, Key::on_time_ceiling}) {
        EXPECT_THAT(problems(fit, key), HasSubstr("no fill time is known"));
    }
}

TEST(TemplateFitTest, counted_from_a_full_header_without_a_fill_time_is_a_problem) {
    auto described = plain();
    TimerSettings chosen;
    chosen.base_on_time = entry<Duration>("80 s");
    EXPECT_EQ(problems(fit_to_template(described, chosen), Key::base_on_time), "");
    described.counts_from = CountsFrom::full_header;
    EXPECT_THAT(problems(fit_to_template(described, chosen), Key::base_on_time),
                HasSubstr("no fill time is known"));
    chosen.entered_fill = entry<Duration>("40 s");
    const auto fit = fit_to_template(described, chosen);
    EXPECT_EQ(number(fit, Key::base_on_time), "40");
    EXPECT_EQ(problems(fit, Key::base_on_time), "");
}

TEST(TemplateFitTest, the_timings_that_a_controller_asks_for_come_off_the_readings) {
    auto described = plain();
    described.settings.push_back({Key::entered_wet_through, "Wet", "s", 10.0, 0.0, 600.0, ""});
    auto advice = cycle_advice();
    EXPECT_EQ(number(fit_to_template(described, advice), Key::entered_wet_through), "160")
        << "165 lies half way: the lower";
    advice.banks[0].question->start = WetStart{.off = seconds(300.0), .drip_return = seconds(90.0)};
    EXPECT_EQ(number(fit_to_template(described, advice), Key::entered_wet_through), "")
        << "a wet start has none";
}

TEST(TemplateFitTest, a_review_interval_goes_up_and_to_a_multiple_where_that_is_demanded) {
    TimerSettings chosen;
    chosen.period = entry<Duration>("4 min");
    chosen.review_interval = entry<Duration>("595 s");
    auto described = plain();
    EXPECT_EQ(number(fit_to_template(described, chosen), Key::review_interval), "10");
    described.dependencies = {SettingDependency::review_multiple_of_period};
    const auto fit = fit_to_template(described, chosen);
    EXPECT_EQ(number(fit, Key::review_interval), "12");
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
    at(described, Key::review_interval).most = 11.0;
    EXPECT_THAT(problems(fit_to_template(described, chosen), Key::review_interval),
                HasSubstr("demands a multiple of the period"));
}

TEST(TemplateFitTest, a_review_interval_follows_a_period_that_moved) {
    // Advised for 250 s: 750 s. Held 240 s: the smallest multiple from 600 s up is 720 s.
    const auto fit = fit_to_template(plain(), cycle_advice(250.0, 77.0));
    EXPECT_EQ(number(fit, Key::period), "4");
    EXPECT_EQ(number(fit, Key::review_interval), "12");
}

TEST(TemplateFitTest, continuous_pumping_is_held_where_the_on_time_reaches_the_period) {
    const auto fit = fit_to_template(plain(), continuous_advice());
    EXPECT_EQ(number(fit, Key::period), "5");
    EXPECT_EQ(number(fit, Key::base_on_time), "300");
    EXPECT_EQ(number(fit, Key::on_time_ceiling), "300");
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
    const auto longer = with_steps(Key::period, "min", 7.0, 7.0, 70.0);
    EXPECT_EQ(number(fit_to_template(longer, continuous_advice()), Key::base_on_time), "420")
        << "it follows the period";
}

TEST(TemplateFitTest, a_demand_below_the_period_forbids_continuous_pumping_and_allows_a_cycle) {
    for (const auto& [demand, key] : {std::pair{SettingDependency::base_below_period, Key::base_on_time},
                                      {SettingDependency::ceiling_below_period, Key::on_time_ceiling}}) {
        auto described = plain();
        described.dependencies = {demand};
        EXPECT_THAT(problems(fit_to_template(described, continuous_advice()), key),
                    HasSubstr("cannot run without rest"));
        EXPECT_EQ(problems(fit_to_template(described, cycle_advice()), key), "");
    }
}

TEST(TemplateFitTest, a_base_rounded_into_the_rest_is_a_problem_and_one_that_leaves_it_is_not) {
    const auto described = with_steps(Key::base_on_time, "s", 80.0, 0.0, 800.0);
    EXPECT_EQ(number(fit_to_template(described, cycle_advice(300.0, 230.0)), Key::base_on_time), "240");
    EXPECT_EQ(problems(fit_to_template(described, cycle_advice(300.0, 230.0)), Key::base_on_time), "");
    EXPECT_EQ(problems(fit_to_template(described, cycle_advice(300.0, 241.0)), Key::base_on_time),
              "Leaves the pump less than 60 s of rest in a period of 5 min.|");
}

TEST(TemplateFitTest, a_chosen_base_is_checked_against_what_the_banks_need) {
    TimerSettings chosen;
    chosen.period = entry<Duration>("300 s");
    chosen.base_on_time = entry<Duration>("82 s");
    const auto described = with_steps(Key::base_on_time, "s", 0.5, 0.0, 300.0);
    EXPECT_EQ(problems(fit_to_template(described, chosen, {easy_bank()}), Key::base_on_time),
              "Too short: in a period of 5 min the pads need a run of 82.5 s.|");
    chosen.base_on_time = entry<Duration>("82.5 s");
    EXPECT_EQ(problems(fit_to_template(described, chosen, {easy_bank()}), Key::base_on_time), "");
    EXPECT_EQ(number(fit_to_template(described, chosen, {easy_bank()}), Key::base_on_time), "82.5");
}

TEST(TemplateFitTest, a_chosen_base_whose_period_is_rounded_up_is_found_too_short) {
    TimerSettings chosen;
    chosen.period = entry<Duration>("331 s");
    chosen.base_on_time = entry<Duration>("87 s");
    const auto described = with_steps(Key::base_on_time, "s", 1.0, 0.0, 300.0);
    EXPECT_THAT(problems(fit_to_template(described, chosen, {easy_bank()}), Key::base_on_time),
                HasSubstr("in a period of 6 min the pads need a run of 90 s"));
}

TEST(TemplateFitTest, a_start_temperature_goes_up_and_is_checked_against_the_published_band) {
    TimerSettings chosen;
    chosen.start_temperature = entry<Temperature>("83.2 degF");
    EXPECT_EQ(number(fit_to_template(plain(), chosen), Key::start_temperature), "84");
    EXPECT_EQ(fit_to_template(plain(), chosen).line(Key::start_temperature)->unit, "°F");
    chosen.start_temperature = entry<Temperature>("83 degF");
    EXPECT_EQ(number(fit_to_template(plain(), chosen), Key::start_temperature), "83");
    // The band ends at 30 degC = 86 degF.
    const auto fives = with_steps(Key::start_temperature, "degF", 5.0, 60.0, 110.0);
    EXPECT_EQ(number(fit_to_template(fives, chosen), Key::start_temperature), "85");
    EXPECT_EQ(problems(fit_to_template(fives, chosen), Key::start_temperature), "");
    const auto tens = with_steps(Key::start_temperature, "degF", 10.0, 60.0, 110.0);
    EXPECT_EQ(problems(fit_to_template(tens, chosen), Key::start_temperature),
              "Above the band for a start temperature, which ends at 30 °C.|");
}

TEST(TemplateFitTest, a_lowest_house_temperature_goes_up_but_not_above_the_start) {
    TimerSettings chosen;
    chosen.start_temperature = entry<Temperature>("83 degF");
    chosen.lowest_house_temperature = entry<Temperature>("80.5 degF");
    EXPECT_EQ(number(fit_to_template(plain(), chosen), Key::lowest_house_temperature), "81");
    EXPECT_EQ(problems(fit_to_template(plain(), chosen), Key::lowest_house_temperature), "");
    const auto tens = with_steps(Key::lowest_house_temperature, "degF", 10.0, 30.0, 90.0);
    EXPECT_THAT(problems(fit_to_template(tens, chosen), Key::lowest_house_temperature),
                HasSubstr("Above the start temperature"));
}

TEST(TemplateFitTest, a_humidity_cut_off_goes_down) {
    TimerSettings chosen;
    chosen.humidity_cut_off = entry<Fraction>("78.6 %");
    EXPECT_EQ(number(fit_to_template(plain(), chosen), Key::humidity_cut_off), "78");
    chosen.humidity_cut_off = entry<Fraction>("57 %");
    EXPECT_EQ(number(fit_to_template(plain(), chosen), Key::humidity_cut_off), "57");
    const auto high = with_steps(Key::humidity_cut_off, "%", 1.0, 58.0, 90.0);
    EXPECT_THAT(problems(fit_to_template(high, chosen), Key::humidity_cut_off), HasSubstr("58 % to 90 %"));
}

TEST(TemplateFitTest, what_lies_a_step_out_of_range_on_the_safe_side_is_held_and_marked) {
    TimerSettings chosen;
    chosen.humidity_cut_off = entry<Fraction>("75.9 %");
    const auto low = with_steps(Key::humidity_cut_off, "%", 1.0, 30.0, 75.0);
    EXPECT_EQ(problems(fit_to_template(low, chosen), Key::humidity_cut_off), "");
    chosen.humidity_cut_off = entry<Fraction>("76 %");
    const auto fit = fit_to_template(low, chosen);
    EXPECT_EQ(number(fit, Key::humidity_cut_off), "75");
    EXPECT_EQ(problems(fit, Key::humidity_cut_off), "Moved from 76 % into what this controller holds.|");
    const auto long_runs = with_steps(Key::base_on_time, "s", 5.0, 100.0, 300.0);
    const auto run = fit_to_template(long_runs, cycle_advice());
    EXPECT_EQ(number(run, Key::base_on_time), "100");
    EXPECT_TRUE(run.fits()) << all_problems(run) << "a longer run is checked, and good";
}

TEST(TemplateFitTest, pad_hours_go_outward_and_a_rinse_goes_later) {
    TimerSettings chosen;
    chosen.pad_hours_from = TimeOfDay{9 * 60 + 10};
    chosen.pad_hours_to = TimeOfDay{19 * 60 + 20};
    chosen.rinse_at = TimeOfDay{9 * 60 + 16};
    const auto fit = fit_to_template(plain(), chosen);
    EXPECT_EQ(number(fit, Key::pad_hours_from), "09:00");
    EXPECT_EQ(number(fit, Key::pad_hours_to), "19:30");
    EXPECT_EQ(number(fit, Key::rinse_at), "09:30");
    EXPECT_EQ(fit.line(Key::pad_hours_from)->unit, "");
    EXPECT_EQ(fit.settings.pad_hours_to, (TimeOfDay{19 * 60 + 30}));
    EXPECT_EQ(said(fit.line(Key::pad_hours_from)->changes), "Rounded down from 09:10.|");
}

TEST(TemplateFitTest, pad_hours_over_midnight_are_a_problem_only_where_that_is_demanded) {
    TimerSettings chosen;
    chosen.pad_hours_from = TimeOfDay{20 * 60};
    chosen.pad_hours_to = TimeOfDay{2 * 60};
    auto described = plain();
    EXPECT_EQ(problems(fit_to_template(described, chosen), Key::pad_hours_to), "");
    described.dependencies = {SettingDependency::pad_hours_end_after_they_begin};
    EXPECT_THAT(problems(fit_to_template(described, chosen), Key::pad_hours_to), HasSubstr("end on the day"));
    chosen.pad_hours_to = TimeOfDay{21 * 60};
    EXPECT_EQ(problems(fit_to_template(described, chosen), Key::pad_hours_to), "");
}

TEST(TemplateFitTest, a_ceiling_that_cannot_reach_the_base_is_a_problem) {
    auto described = with_steps(Key::on_time_ceiling, "s", 5.0, 0.0, 80.0);
    EXPECT_THAT(problems(fit_to_template(described, cycle_advice()), Key::on_time_ceiling),
                HasSubstr("It would have to be 85 s"));
}

std::vector<TrimRow> rows(std::initializer_list<std::pair<const char*, const char*>> texts) {
    std::vector<TrimRow> all;
    for (const auto& [above, change] : texts) {
        all.push_back({entry<TemperatureDifference>(above), entry<Duration>(change)});
    }
    return all;
}

TEST(TemplateFitTest, trim_rows_are_asked_row_by_row_and_both_their_numbers_go_up) {
    auto described = plain();
    described.trim_rows = 2;
    TimerSettings chosen;
    chosen.trim_rows = rows({{"0.9 degF", "7.5 s"}, {"3 degF", "-7.5 s"}});
    const auto fit = fit_to_template(described, chosen);
    std::vector<std::string> asked;
    for (const auto& line : fit.lines) {
        if (line.row > 0) {
            asked.push_back(std::to_string(line.row) + ": " + line.number + " " + line.unit);
        }
    }
    EXPECT_THAT(asked, ElementsAre("1: 1 °F", "1: 8 s", "2: 3 °F", "2: -7 s"));
    ASSERT_EQ(fit.settings.trim_rows.size(), 2U);
    EXPECT_EQ(fit.settings.trim_rows[1].change->text(), "-7 s");
}

TEST(TemplateFitTest, more_trim_rows_than_the_controller_has_are_said) {
    auto described = plain();
    described.trim_rows = 1;
    TimerSettings chosen;
    chosen.trim_rows = rows({{"1 degF", "5 s"}});
    EXPECT_EQ(said(fit_to_template(described, chosen).not_held), "");
    chosen.trim_rows = rows({{"1 degF", "5 s"}, {"2 degF", "5 s"}});
    EXPECT_EQ(said(fit_to_template(described, chosen).not_held),
              "2 trim rows are wanted; this controller has 1.|");
}

TEST(TemplateFitTest, a_row_that_the_advice_does_not_use_is_set_to_no_change) {
    auto advice = cycle_advice();
    advice.cycle.push_back({Setting::trim_step, any(seconds(20.0)), {}});
    advice.cycle.push_back({Setting::trim_dead_band, any(from_si<TemperatureDifference>(0.5)), {}});
    auto described = plain();
    described.trim_rows = 2;
    const auto fit = fit_to_template(described, advice);
    EXPECT_EQ(number(fit, Key::trim_change, 1), "20");
    EXPECT_EQ(number(fit, Key::trim_above_target, 1), "1") << "0.5 K are 0.9 degF";
    EXPECT_EQ(number(fit, Key::trim_change, 2), "0");
    EXPECT_EQ(number(fit, Key::trim_above_target, 2), "");
    EXPECT_EQ(fit.settings.trim_rows.size(), 1U);
    EXPECT_TRUE(fit.fits()) << all_problems(fit);
    at(described, Key::trim_change).least = 5.0;
    EXPECT_THAT(problems(fit_to_template(described, advice), Key::trim_change, 2),
                HasSubstr("cannot be set to no change"));
}

TEST(TemplateFitTest, rows_that_must_ascend_and_do_not_are_a_problem) {
    auto described = plain();
    described.dependencies = {SettingDependency::trim_rows_ascend};
    TimerSettings chosen;
    chosen.trim_rows = rows({{"1 degF", "5 s"}, {"2 degF", "9 s"}});
    EXPECT_EQ(problems(fit_to_template(described, chosen), Key::trim_above_target, 2), "");
    chosen.trim_rows = rows({{"1.2 degF", "5 s"}, {"1.8 degF", "9 s"}});
    EXPECT_THAT(problems(fit_to_template(described, chosen), Key::trim_above_target, 2),
                HasSubstr("more degrees than in the row before"))
        << "both are held as 2";
}

}  // namespace
}  // namespace wetfront::test
