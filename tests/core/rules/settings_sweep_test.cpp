// SPDX-License-Identifier: Apache-2.0
// The settings of a timer swept all around their limits, every pair and every three of them, and more: the
// full product. The wetting column is the judge: it is given the true rates of each pad, walks twenty columns
// and the far end through the day from bone dry, and says what is wet. The rules are given only what a
// stopwatch would have read.
#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <iostream>
#include <map>
#include <set>

#include "pad/wet_pad.h"
#include "rule_case.h"
#include "wetting_judge.h"

namespace wetfront::test {
namespace {

constexpr double least_rest = 60.0;

struct SweptHouse {
    const char* name;
    std::vector<TruePad> pads;
    const char* design_dry_bulb = "36degC";
    const char* design_wet_bulb = "24degC";
};

/// One choice of settings; seconds. No rinse and no rows where they are 0 and empty.
struct Combination {
    double period = 0.0;
    double base = 0.0;
    double ceiling = 0.0;
    std::vector<double> rows;  ///< changes at 1, 2, 3 K above target
    double rinse = 0.0;

    [[nodiscard]] bool takes_off() const {
        return std::ranges::any_of(rows, [](double change) { return change < 0.0; });
    }
    [[nodiscard]] bool climbs() const {
        return std::ranges::any_of(rows, [](double change) { return change > 0.0; });
    }
    /// A row that takes time off does so at every review, until nothing is left; a timer may hold a ceiling
    /// that is below its base.
    [[nodiscard]] double shortest() const { return takes_off() ? 0.0 : std::min(base, ceiling); }
    [[nodiscard]] double longest() const { return climbs() ? std::max(base, ceiling) : base; }
    [[nodiscard]] std::string text() const {
        std::string text = "period " + std::to_string(period) + ", base " + std::to_string(base) +
                           ", ceiling " + std::to_string(ceiling) + ", rinse " + std::to_string(rinse) +
                           ", rows";
        for (const double change : rows) {
            text += " " + std::to_string(change);
        }
        return text;
    }
};

/// The house with its readings, advice and the weathers' ratio; settings are put in and judged again and
/// again.
class Sweep {
public:
    explicit Sweep(const SweptHouse& house, TimerKind kind)
        : visit_{static_cast<int>(house.pads.size()), 1, kind}, pads_{house.pads} {
        visit_.both_weathers();
        visit_.file().farm.design_dry_bulb = typed<Temperature>(house.design_dry_bulb);
        visit_.file().farm.design_wet_bulb = typed<Temperature>(house.design_wet_bulb);
        for (int bank = 1; const auto& pad : pads_) {
            for (int again = 0; again < 3; ++again) {
                visit_.run(bank, {.fill = pad.fill,
                                  .wet_through = pad.fill + pad.wetting,
                                  .dry_out = pad.dry_out,
                                  .runs_for = 2400.0});
            }
            ++bank;
        }
        timings_ = timings_of(visit_.file());
        advice_ = advise(visit_.file());
        // A weather that was met at the readings will come again, however mild the design day.
        ratio_ = std::max(
            1.0, evaporation_ratio(*advice_.weather.design, *advice_.weather.test, from_si<Fraction>(0.75))
                     .value());
    }

    [[nodiscard]] double ratio() const { return ratio_; }
    [[nodiscard]] const std::vector<TruePad>& pads() const { return pads_; }

    [[nodiscard]] std::vector<Finding> findings(const Combination& combination) {
        const auto entered = [](double s) { return Entered<Duration>::of(seconds(s)); };
        auto& settings = visit_.found();
        settings.period = entered(combination.period);
        settings.base_on_time = entered(combination.base);
        settings.on_time_ceiling = entered(combination.ceiling);
        settings.rinse_length =
            combination.rinse > 0.0 ? Optional<Duration>{entered(combination.rinse)} : Optional<Duration>{};
        settings.trim_rows.clear();
        double above = 1.0;
        for (const double change : combination.rows) {
            settings.trim_rows.push_back(
                {Entered<TemperatureDifference>::of(from_si<TemperatureDifference>(above)), entered(change)});
            above += 1.0;
        }
        return check(visit_.file(), timings_, advice_, WhichSettings::found);
    }

    [[nodiscard]] Judgement judge(double period, double run, double rinse) {
        const std::array key{period, run, rinse};
        if (const auto known = known_.find(key); known != known_.end()) {
            return known->second;
        }
        Judgement worst{false, true};
        for (const auto& pad : pads_) {
            const auto one = judged(pad, ratio_, period, run, rinse);
            worst.dry = worst.dry || one.dry;
            worst.wet_in_time = worst.wet_in_time && one.wet_in_time;
        }
        known_[key] = worst;
        return worst;
    }

private:
    VisitBuilder visit_;
    std::vector<TruePad> pads_;
    VisitTimings timings_;
    Advice advice_;
    double ratio_ = 1.0;
    std::map<std::array<double, 3>, Judgement> known_;
};

/// What fills and what evaporates in a period, of the pad that asks most.
double need_of(const Sweep& sweep, double period) {
    double need = 0.0;
    for (const auto& pad : sweep.pads()) {
        need = std::max(need, pad.fill + period * pad.wetting / pad.dry_out * sweep.ratio());
    }
    return need;
}

std::vector<double> sorted_seconds(std::vector<double> values) {
    std::set<double> kept;
    for (const double value : values) {
        if (value >= 0.0) {
            kept.insert(std::round(value));
        }
    }
    return {kept.begin(), kept.end()};
}

std::vector<double> bases_around(const Sweep& sweep, double period) {
    double fill = 0.0;
    double gap_bound = 0.0;
    for (const auto& pad : sweep.pads()) {
        fill = std::max(fill, pad.fill);
        gap_bound = std::max(gap_bound, period + pad.fill - pad.dry_out / sweep.ratio());
    }
    const double need = need_of(sweep, period);
    return sorted_seconds({0.0, fill - 2.0, fill + 1.0, 0.5 * (fill + need), need - 2.0, need + 2.0,
                           fill + 1.25 * (need - fill) + 8.0, gap_bound - 2.0, gap_bound + 2.0, period - 61.0,
                           period - 59.0, period - 1.0, period, period + 5.0});
}

std::vector<double> ceilings_around(const Sweep& sweep, const Combination& with) {
    double wet_through = 0.0;
    for (const auto& pad : sweep.pads()) {
        wet_through = std::max(wet_through, pad.fill + pad.wetting);
    }
    return sorted_seconds({with.base - 5.0, with.base, with.base + 10.0, wet_through - 2.0, wet_through + 8.0,
                           with.period - 61.0, with.period - 30.0, with.period});
}

std::vector<double> rinses_around(const Sweep& sweep) {
    double wet_through = 0.0;
    for (const auto& pad : sweep.pads()) {
        wet_through = std::max(wet_through, pad.fill + pad.wetting);
    }
    return sorted_seconds({0.0, 60.0, wet_through - 3.0, 2.0 * wet_through + 60.0});
}

const std::vector<SweptHouse>& houses() {
    static const std::vector<SweptHouse> all{
        {"short bank", {{20.0, 60.0, 900.0}}},
        {"long bank", {{95.0, 150.0, 1500.0}}},
        {"slow pump", {{120.0, 400.0, 1200.0}}},
        {"fast drying, hot and dry", {{45.0, 100.0, 420.0}}, "42degC", "22degC"},
        {"humid", {{45.0, 90.0, 2400.0}}, "34degC", "26.5degC"},
        {"two unlike banks", {{25.0, 60.0, 1500.0}, {80.0, 170.0, 800.0}}},
        {"pump too small", {{60.0, 900.0, 600.0}}},
    };
    return all;
}

struct Counts {
    int combinations = 0;
    int dry = 0;
    int never_resting = 0;
    int good = 0;
    int findings = 0;

    void add(const Counts& other) {
        combinations += other.combinations;
        dry += other.dry;
        never_resting += other.never_resting;
        good += other.good;
        findings += other.findings;
    }
};

Severity worst_of(const std::vector<Finding>& findings) {
    return findings.empty() ? Severity::note : findings.front().severity;
}

std::string rules_in(const std::vector<Finding>& findings) {
    std::string text;
    for (const auto& finding : findings) {
        text += " " + finding.rule + " (" + std::string{name_of(finding.severity)} + ")";
    }
    return text.empty() ? " nothing" : text;
}

// A hundred alike tell no more than the first ten.
bool enough_failures() {
    return ::testing::UnitTest::GetInstance()->current_test_info()->result()->total_part_count() > 10;
}

void judge_one(Sweep& sweep, const SweptHouse& house, const Combination& combination, Counts& counts) {
    auto findings = sweep.findings(combination);
    std::erase_if(findings, [](const Finding& finding) { return finding.timer.empty(); });
    const auto judgement = sweep.judge(combination.period, combination.shortest(), combination.rinse);
    const bool never_rests = combination.longest() >= combination.period;
    const bool coherent = combination.ceiling >= combination.base;
    const bool good = coherent && !judgement.dry && judgement.wet_in_time &&
                      combination.period - combination.longest() >= least_rest &&
                      combination.shortest() >= need_of(sweep, combination.period);
    counts.combinations += 1;
    counts.dry += judgement.dry ? 1 : 0;
    counts.never_resting += never_rests ? 1 : 0;
    counts.good += good ? 1 : 0;
    counts.findings += static_cast<int>(findings.size());
    const auto what = [&] {
        return std::string{house.name} + ": " + combination.text() + "; found:" + rules_in(findings);
    };
    if (judgement.dry && !never_rests) {
        EXPECT_GE(worst_of(findings), Severity::fault) << "dry in every cycle: " << what();
    }
    if (judgement.dry || never_rests) {
        EXPECT_FALSE(findings.empty()) << (judgement.dry ? "dry" : "never resting") << ": " << what();
    }
    if (good) {
        EXPECT_LT(worst_of(findings), Severity::fault) << "good: " << what();
    }
}

const std::vector<std::vector<double>>& row_sets() {
    static const std::vector<std::vector<double>> all{{},      {15.0},       {5.0, 10.0, 20.0},
                                                      {300.0}, {-5.0, 15.0}, {-30.0}};
    return all;
}

Counts swept(const SweptHouse& house) {
    Sweep sweep{house, TimerKind::trimmed};
    Counts counts;
    Combination combination;
    for (const double period : {120.0, 240.0, 300.0, 450.0, 600.0, 900.0, 1500.0}) {
        combination.period = period;
        for (const double base : bases_around(sweep, period)) {
            combination.base = base;
            for (const double ceiling : ceilings_around(sweep, combination)) {
                combination.ceiling = ceiling;
                for (const auto& rows : row_sets()) {
                    combination.rows = rows;
                    for (const double rinse : rinses_around(sweep)) {
                        combination.rinse = rinse;
                        judge_one(sweep, house, combination, counts);
                        if (enough_failures()) {
                            return counts;
                        }
                    }
                }
            }
        }
    }
    return counts;
}

Counts swept_at_fixed_intervals(const SweptHouse& house) {
    Sweep sweep{house, TimerKind::fixed_interval};
    Counts counts;
    Combination combination;
    for (const double period : {120.0, 240.0, 300.0, 450.0, 600.0, 900.0, 1500.0}) {
        combination.period = period;
        for (const double base : bases_around(sweep, period)) {
            combination.base = base;
            combination.ceiling = base;
            judge_one(sweep, house, combination, counts);
        }
    }
    return counts;
}

void tell(const Counts& counts, double took) {
    testing::Test::RecordProperty("combinations", counts.combinations);
    testing::Test::RecordProperty("dry", counts.dry);
    testing::Test::RecordProperty("never_resting", counts.never_resting);
    testing::Test::RecordProperty("good", counts.good);
    testing::Test::RecordProperty("findings", counts.findings);
    std::cout << "sweep: " << counts.combinations << " combinations, " << counts.dry << " dry, "
              << counts.never_resting << " never resting, " << counts.good << " good, " << counts.findings
              << " findings, " << took << " s\n";
}

template <class SweepOne>
Counts sweep_all(SweepOne sweep_one) {
    const auto begin = std::chrono::steady_clock::now();
    Counts all;
    for (const auto& house : houses()) {
        all.add(sweep_one(house));
        if (enough_failures()) {
            break;
        }
    }
    tell(all, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    return all;
}

TEST(SettingsSweepTest, no_bad_combination_passes_and_no_good_one_is_a_fault) {
    const auto counts = sweep_all(swept);
    EXPECT_GT(counts.combinations, 10'000);
    EXPECT_GT(counts.dry, 1'000);
    EXPECT_GT(counts.never_resting, 1'000);
    EXPECT_GT(counts.good, 500);
}

TEST(SettingsSweepTest, nor_at_fixed_intervals) {
    const auto counts = sweep_all(swept_at_fixed_intervals);
    EXPECT_GT(counts.combinations, 400);
    EXPECT_GT(counts.dry, 50);
    EXPECT_GT(counts.never_resting, 50);
    EXPECT_GT(counts.good, 20);
}

}  // namespace
}  // namespace wetfront::test
