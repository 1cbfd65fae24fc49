// SPDX-License-Identifier: Apache-2.0
#include "demo/stopwatch_day.h"

#include <algorithm>
#include <cmath>

namespace wetfront {
namespace {

constexpr double boot_before_visit_s = 5400.0;
constexpr double event_scatter_s = 1.5;
constexpr double switching_scatter_s = 0.2;  // a pump is heard
constexpr double dry_patch_scatter = 0.02;   // of the dry-out time: a first dry patch is hard to see
constexpr std::int64_t ns_per_s = 1'000'000'000;

}  // namespace

StopwatchDay::StopwatchDay(std::string name, WallTime start, unsigned seed)
    : name_{std::move(name)}, start_{start}, random_{seed} {}

// Sum of four even numbers: bell-shaped enough, and the same on every machine, which std::normal_distribution
// is not.
double StopwatchDay::scattered(double value, double spread) {
    double sum = 0.0;
    for (int i = 0; i < 4; ++i) {
        sum += static_cast<double>(random_()) / 4294967296.0 - 0.5;
    }
    return value + spread * sum * std::sqrt(3.0);
}

Mark& StopwatchDay::press(MarkKind kind, const Id& pump, const Id& bank, double at_s) {
    const auto ms = static_cast<std::int64_t>(std::llround(at_s * 1000.0));
    Mark mark;
    mark.id = Id{name_ + "-mark-" + std::to_string(marks_.size() + 1)};
    mark.kind = kind;
    mark.pump = pump;
    mark.bank = bank;
    mark.at = {name_ + "-boot", static_cast<std::int64_t>(boot_before_visit_s) * ns_per_s + ms * 1'000'000};
    mark.wall = {start_.unix_ms + ms, start_.utc_offset_minutes};
    mark.timed_by = TimedBy::event_stamp;
    mark.stamp_error_ns = 1'000'000;
    marks_.push_back(std::move(mark));
    return marks_.back();
}

void StopwatchDay::start(const Id& pump, PadsAtStart pads, bool fans, StartedBy started_by, double at_s) {
    auto& mark = press(MarkKind::pump_start, pump, {}, at_s);
    mark.pads = pads;
    mark.fans_running = fans;
    mark.started_by = started_by;
}

void StopwatchDay::stop(const Id& pump, bool fans, double at_s) {
    press(MarkKind::pump_stop, pump, {}, at_s).fans_running = fans;
}

void StopwatchDay::time_from_dry(const Id& pump, const std::vector<BankTruth>& banks, int repeats,
                                 StartedBy started_by) {
    double& now = now_s_[pump];
    for (int repeat = 0; repeat < repeats; ++repeat) {
        now += 240.0;
        start(pump, PadsAtStart::dry, false, started_by, now);
        double last = now;
        for (const auto& bank : banks) {
            press(MarkKind::water_at_far_end, pump, bank.bank, now + scattered(bank.fill, event_scatter_s));
            const double drips = now + scattered(bank.wet_through, event_scatter_s);
            press(MarkKind::far_end_drips, pump, bank.bank, drips);
            last = std::max(last, drips);
        }
        now = last + 60.0;
        stop(pump, true, now);
        last = now;
        for (const auto& bank : banks) {
            press(MarkKind::drip_ends, pump, bank.bank, now + scattered(bank.run_off, 2.0 * event_scatter_s));
            const double dry = now + scattered(bank.dry_out, dry_patch_scatter * bank.dry_out);
            press(MarkKind::first_dry_patch, pump, bank.bank, dry);
            last = std::max(last, dry);
        }
        // From the first dry patch to bone dry takes about as long again.
        now = last + banks.front().dry_out;
    }
}

void StopwatchDay::time_from_wet(const Id& pump, const std::vector<BankTruth>& banks, double off,
                                 double drip_return, int repeats) {
    double& now = now_s_[pump];
    now += 240.0;
    start(pump, PadsAtStart::not_dry, true, StartedBy::me_here, now);
    now += 600.0;
    for (int repeat = 0; repeat < repeats; ++repeat) {
        stop(pump, true, now);
        now += scattered(off, event_scatter_s);
        start(pump, PadsAtStart::dripping, true, StartedBy::me_here, now);
        for (const auto& bank : banks) {
            press(MarkKind::water_at_far_end, pump, bank.bank, now + scattered(bank.fill, event_scatter_s));
            press(MarkKind::far_end_drips, pump, bank.bank,
                  now + scattered(drip_return, event_scatter_s) + bank.fill - banks.front().fill);
        }
        now += drip_return + 300.0;
    }
}

void StopwatchDay::watch_cycles(const Id& pump, const std::vector<BankTruth>& banks,
                                const std::vector<double>& drips, double period, double on_time) {
    double& now = now_s_[pump];
    now += 600.0;
    press(MarkKind::back_on_automatic, pump, {}, now);
    now += 60.0 + 2.0 * period;
    const auto watched = [&](MarkKind kind, const Id& bank, double at_s) {
        auto& mark = press(kind, pump, bank, at_s);
        mark.proof = true;
        mark.started_by = StartedBy::controller;
    };
    for (std::size_t bank = 0; bank < banks.size(); ++bank) {
        watched(MarkKind::pump_start, {}, now + scattered(0.0, switching_scatter_s));
        watched(MarkKind::water_at_far_end, banks[bank].bank,
                now + scattered(banks[bank].fill, event_scatter_s));
        watched(MarkKind::far_end_drips, banks[bank].bank, now + scattered(drips[bank], event_scatter_s));
        watched(MarkKind::pump_stop, {}, now + scattered(on_time, switching_scatter_s));
        now += period;
    }
    watched(MarkKind::pump_start, {}, now + scattered(0.0, switching_scatter_s));
}

WallTime StopwatchDay::ended() const {
    std::int64_t last = start_.unix_ms;
    for (const auto& mark : marks_) {
        last = std::max(last, mark.wall.unix_ms);
    }
    return {last, start_.utc_offset_minutes};
}

}  // namespace wetfront
