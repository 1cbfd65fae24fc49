// SPDX-License-Identifier: Apache-2.0
#include "timing/proof_marks.h"

#include <algorithm>
#include <map>
#include <set>

#include "timing/mark_order.h"

namespace wetfront {
namespace {

std::optional<Duration> time_between(const Mark& from, const Mark& to) {
    const auto interval = between(from, to);
    const bool seen = from.seen == Seen::as_it_happened && to.seen == Seen::as_it_happened;
    if (!seen || !interval.verified || interval.seconds <= 0.0 || interval.seconds > longest_reading_s) {
        return std::nullopt;
    }
    return seconds(interval.seconds);
}

/// Goes through the marks of one visit in time order and puts them into runs.
class Watching {
public:
    void take(const Mark& mark, const Id& pump_id) {
        auto& pump = pumps_[pump_id];
        if (ends_watching(mark, MarksOf::proof_run)) {
            pump = Pump{};
        } else if (mark.proof && mark.kind == MarkKind::pump_start) {
            take_start(mark, pump_id, pump);
        } else if (mark.proof && pump.run) {
            take_in_run(mark, pump);
        }
    }

    [[nodiscard]] std::vector<WatchedRun> finished() && { return std::move(runs_); }

private:
    struct Pump {
        std::optional<std::size_t> run;  ///< its place among the runs
        const Mark* start = nullptr;
        const Mark* stop = nullptr;
        std::map<Id, const Mark*> last_of_bank;
        std::set<std::pair<Id, MarkKind>> pressed;  ///< bank marks of this run
    };

    void take_start(const Mark& mark, const Id& pump_id, Pump& pump) {
        if (is_same_press(pump.start, mark)) {
            return;
        }
        if (pump.run) {
            runs_[*pump.run].period = time_between(*pump.start, mark);
        }
        pump = Pump{runs_.size(), &mark, nullptr, {}, {}};
        runs_.push_back({pump_id, mark.id, is_by_signal(mark.started_by), std::nullopt, std::nullopt, {}});
    }

    void take_in_run(const Mark& mark, Pump& pump) {
        auto& run = runs_[*pump.run];
        if (mark.kind == MarkKind::pump_stop) {
            if (pump.stop == nullptr && !is_same_press(pump.start, mark)) {
                pump.stop = &mark;
                run.on_time = time_between(*pump.start, mark);
            }
            return;
        }
        const bool water = mark.kind == MarkKind::water_at_far_end;
        if (!water && mark.kind != MarkKind::far_end_drips) {
            return;
        }
        auto& last = pump.last_of_bank[mark.bank];
        const bool doubtful = doubt_of(mark, pump.start, last).has_value();
        last = &mark;
        if (doubtful || !pump.pressed.insert({mark.bank, mark.kind}).second) {
            return;
        }
        auto& bank = bank_in(run, mark.bank);
        if (water && pump.pressed.contains({mark.bank, MarkKind::far_end_drips})) {
            // Water cannot come after the drip: one of the two presses is wrong, and nothing says which.
            bank.drip.reset();
            return;
        }
        (water ? bank.fill : bank.drip) = time_between(*pump.start, mark);
    }

    static WatchedBank& bank_in(WatchedRun& run, const Id& bank) {
        const auto found = std::ranges::find(run.banks, bank, &WatchedBank::bank);
        return found != run.banks.end() ? *found : run.banks.emplace_back(WatchedBank{bank, {}, {}});
    }

    std::map<Id, Pump> pumps_;
    std::vector<WatchedRun> runs_;
};

}  // namespace

const WatchedBank* WatchedRun::at(const Id& bank) const {
    const auto found = std::ranges::find(banks, bank, &WatchedBank::bank);
    return found == banks.end() ? nullptr : &*found;
}

std::vector<WatchedRun> watched_runs(std::span<const Mark> marks, std::span<const BankOfPump> banks) {
    Watching watching;
    for (const auto* mark : in_time_order(marks)) {
        watching.take(*mark, pump_of(*mark, banks));
    }
    return std::move(watching).finished();
}

}  // namespace wetfront
