// SPDX-License-Identifier: Apache-2.0
// What holds for any template and any settings.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "cycle/template_fit.h"
#include "easy_cycle.h"

namespace wetfront::test {
namespace {

using Key = TemplateKey;

/// Templates and settings from anywhere; whatever does not fit gets no number.
class FitMaker {
public:
    explicit FitMaker(unsigned seed) : random_{seed} {}

    SettingTemplate described() {
        auto made = generic_template(TimerKind::trimmed);
        made.counts_from = below(2) == 0 ? CountsFrom::pump_start : CountsFrom::full_header;
        made.settings.push_back({Key::entered_fill, "Fill", "s", 1.0, 0.0, 600.0, ""});
        for (auto& setting : made.settings) {
            constexpr std::array resolutions{0.5, 1.0, 2.0, 3.0, 5.0, 7.0};
            setting.resolution = resolutions[below(resolutions.size())];
            *setting.least += static_cast<double>(below(3));
        }
        return made;
    }

    TimerSettings settings() {
        TimerSettings made;
        made.target = kelvin(295.0, 300.0);
        made.start_temperature = kelvin(299.0, 304.0);
        made.lowest_house_temperature = kelvin(285.0, 295.0);
        made.humidity_cut_off = Entered<Fraction>::of(from_si<Fraction>(between(0.5, 0.95)));
        made.pad_hours_from = TimeOfDay{static_cast<int>(400 + below(200))};
        made.pad_hours_to = TimeOfDay{static_cast<int>(1000 + below(200))};
        made.period = time(240.0, 900.0);
        made.base_on_time = time(60.0, 200.0);
        made.on_time_ceiling = time(200.0, 240.0);
        made.review_interval = time(600.0, 1200.0);
        made.rinse_at = TimeOfDay{static_cast<int>(500 + below(200))};
        made.rinse_length = time(100.0, 500.0);
        made.entered_fill = time(10.0, 59.0);
        made.trim_rows.push_back(
            {Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(between(0.0, 3.0))),
             time(-30.0, 30.0)});
        return made;
    }

private:
    std::size_t below(std::size_t count) { return random_() % count; }
    double between(double least, double most) {
        return least + (most - least) * static_cast<double>(random_()) / 4294967296.0;
    }
    Optional<Temperature> kelvin(double least, double most) {
        return Entered<Temperature>::of(from_si<Temperature>(between(least, most)));
    }
    Optional<Duration> time(double least, double most) {
        return Entered<Duration>::of(seconds(between(least, most)));
    }

    std::mt19937 random_;
};

TEST(TemplateFitPropertiesTest, what_a_controller_holds_already_is_not_changed_again) {
    int compared = 0;
    for (unsigned seed = 0; seed < 500; ++seed) {
        FitMaker maker{seed};
        auto described = maker.described();
        described.counts_from =
            CountsFrom::pump_start;  // else what is wanted and what is held count otherwise
        const auto once = fit_to_template(described, maker.settings());
        const auto twice = fit_to_template(described, once.settings);
        ASSERT_EQ(once.lines.size(), twice.lines.size());
        for (std::size_t i = 0; i < once.lines.size(); ++i) {
            ASSERT_EQ(once.lines[i].number, twice.lines[i].number)
                << once.lines[i].label << ", seed " << seed;
            compared += once.lines[i].number.empty() ? 0 : 1;
        }
    }
    EXPECT_GT(compared, 500 * 10);
}

TEST(TemplateFitPropertiesTest, each_value_is_held_at_a_step_on_its_safe_side_less_than_a_step_away) {
    int compared = 0;
    for (unsigned seed = 0; seed < 500; ++seed) {
        FitMaker maker{seed};
        auto described = maker.described();
        described.counts_from = CountsFrom::pump_start;
        described.dependencies.clear();
        const auto fit = fit_to_template(described, maker.settings());
        for (const auto& line : fit.lines) {
            if (!line.entered || line.setting == Key::on_time_ceiling) {
                continue;
            }
            ++compared;
            const auto& setting = *described.setting(line.setting);
            const auto& unit = *unit_of(setting);
            const double held = number_in(unit, line.entered->si);
            const double moved = (held - number_in(unit, line.wanted->si)) / *setting.resolution;
            const double steps = (held - *setting.least) / *setting.resolution;
            const auto where = line.label + ", seed " + std::to_string(seed);
            EXPECT_NEAR(steps, std::round(steps), 1e-6) << where;
            EXPECT_TRUE(held >= *setting.least - 1e-9 && held <= *setting.most + 1e-9)
                << where << ": " << held;
            switch (line.setting) {
                case Key::humidity_cut_off:
                case Key::pad_hours_from:
                    EXPECT_TRUE(moved < 1e-6 && moved > -1.0) << where << ": moved " << moved;
                    break;
                case Key::target:
                case Key::period:
                case Key::entered_fill:
                    EXPECT_LE(std::abs(moved), 0.5 + 1e-6) << where;
                    break;
                default:
                    EXPECT_TRUE(moved > -1e-6 && (moved < 1.0 || steps < 0.5))
                        << where << ": moved " << moved;
            }
        }
        const auto* ceiling = fit.line(Key::on_time_ceiling);
        const auto* base = fit.line(Key::base_on_time);
        if (ceiling->entered && base->entered) {
            EXPECT_GE(ceiling->entered->si, base->entered->si - 1e-6) << seed;
            EXPECT_LE(ceiling->entered->si, std::max(ceiling->wanted->si, base->entered->si + 7.0) + 1e-6)
                << seed;
        }
    }
    EXPECT_GT(compared, 500 * 10);
}

TEST(TemplateFitPropertiesTest, an_advised_run_is_never_held_below_what_the_banks_need) {
    int held = 0;
    for (unsigned seed = 0; seed < 500; ++seed) {
        FitMaker maker{seed};
        const auto described = maker.described();
        const double period = 240.0 + static_cast<double>(seed % 300);
        const auto fit = fit_to_template(described, cycle_advice(period, 45.0 + 0.125 * period, 165.0));
        if (!fit.settings.base_on_time || !fit.settings.period) {
            continue;
        }
        ++held;
        const double needed = 45.0 + 0.125 * in_seconds(fit.settings.period->value());
        const auto told = fit.settings.entered_fill;
        const double fill = described.counts_from == CountsFrom::pump_start ? 0.0
                            : told                                          ? in_seconds(told->value())
                                                                            : 45.0;
        EXPECT_GE(in_seconds(fit.settings.base_on_time->value()) + fill, needed - 1e-6) << "seed " << seed;
        for (const auto& problem : fit.line(Key::base_on_time)->problems) {
            EXPECT_THAT(problem.text, testing::HasSubstr("less than %1 of rest")) << "seed " << seed;
        }
    }
    EXPECT_GT(held, 400);
}

}  // namespace
}  // namespace wetfront::test
