// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "records/visit.h"

namespace wetfront::test {

template <class Q>
[[nodiscard]] Optional<Q> typed(const char* text) {
    return Entered<Q>::parse(text, "test").value();
}

/// One run of a pump as it is marked for one bank, in seconds; what is not given is not marked.
struct MarkedRun {
    std::optional<double> fill = {};         ///< from the start
    std::optional<double> wet_through = {};  ///< from the start
    std::optional<double> run_off = {};      ///< from the stop
    std::optional<double> dry_out = {};      ///< from the stop
    PadsAtStart pads = PadsAtStart::dry;
    double runs_for = 600.0;
    double stands_for = 6000.0;  ///< until the next run of this pump
    Seen water_seen = Seen::as_it_happened;
    StartedBy started_by = StartedBy::me_here;
};

/// An invented house with a visit, as complete as a test wants it: `banks` shared evenly by `timers`, each
/// with a pump of its own. Ids are "bank-1", "pump-1", "timer-1" and so on.
class VisitBuilder {
public:
    explicit VisitBuilder(int banks = 1, int timers = 1, TimerKind kind = TimerKind::trimmed) {
        file_.farm = {Id{"farm-1"}, "Made-up Farm", "A. Grower", "Invented Service", {}, {}, {}, {}, {}};
        file_.house.id = Id{"house-1"};
        file_.house.farm = file_.farm.id;
        file_.house.name = "House 7";
        for (int t = 1; t <= timers; ++t) {
            Pump pump;
            pump.id = Id{"pump-" + std::to_string(t)};
            pump.name = "Pump " + std::to_string(t);
            file_.house.pumps.push_back(pump);
            Timer timer;
            timer.id = Id{"timer-" + std::to_string(t)};
            timer.name = "Timer " + std::to_string(t);
            timer.kind = kind;
            timer.pumps = {pump.id};
            file_.house.timers.push_back(timer);
        }
        for (int b = 1; b <= banks; ++b) {
            PadBank bank;
            bank.id = Id{"bank-" + std::to_string(b)};
            bank.name = "Bank " + std::to_string(b);
            bank.pump = Id{"pump-" + std::to_string((b - 1) * timers / banks + 1)};
            bank.pump_end = b % 2 == 1 ? PumpEnd::left : PumpEnd::right;
            bank.length = typed<Length>("18m");
            bank.height = typed<Length>("1.5m");
            bank.thickness = typed<Length>("150mm");
            file_.house.banks.push_back(bank);
        }
        file_.visit.id = Id{"visit-1"};
        file_.visit.house = file_.house.id;
        file_.visit.started = {1'782'900'000'000, -300};  // 2026-07-01T05:00:00-05:00
        now_ns_ = 1'000'000'000;
    }

    [[nodiscard]] VisitFile& file() { return file_; }
    [[nodiscard]] PadBank& bank(int number) {
        return file_.house.banks.at(static_cast<std::size_t>(number - 1));
    }
    [[nodiscard]] Timer& timer(int number) {
        return file_.house.timers.at(static_cast<std::size_t>(number - 1));
    }

    /// Weather of the readings and of the design day; the design day evaporates more.
    VisitBuilder& both_weathers() {
        file_.visit.conditions.outside_dry_bulb = typed<Temperature>("32degC");
        file_.visit.conditions.outside_humidity = typed<Fraction>("45%");
        file_.farm.design_dry_bulb = typed<Temperature>("36degC");
        file_.farm.design_wet_bulb = typed<Temperature>("24degC");
        return *this;
    }

    /// Marks one run for one bank; the fans are off while it wets and on while it dries.
    VisitBuilder& run(int bank_number, const MarkedRun& run) {
        const auto& pads = bank(bank_number);
        const auto start = now_ns_;
        auto& begin = mark(MarkKind::pump_start, pads, 0.0);
        begin.pads = run.pads;
        begin.fans_running = false;
        begin.started_by = run.started_by;
        if (run.fill) {
            mark(MarkKind::water_at_far_end, pads, *run.fill).seen = run.water_seen;
        }
        if (run.wet_through) {
            mark(MarkKind::far_end_drips, pads, *run.wet_through);
        }
        mark(MarkKind::pump_stop, pads, run.runs_for).fans_running = true;
        if (run.run_off) {
            mark(MarkKind::drip_ends, pads, run.runs_for + *run.run_off);
        }
        if (run.dry_out) {
            mark(MarkKind::first_dry_patch, pads, run.runs_for + *run.dry_out);
        }
        now_ns_ = start + nanoseconds(run.runs_for + run.stands_for);
        return *this;
    }

    /// Settings of timer `number` in `list` (found or left), made if there are none.
    [[nodiscard]] TimerSettings& settings(std::vector<TimerSettings>& list, int number = 1) {
        const auto id = timer(number).id;
        for (auto& each : list) {
            if (each.timer == id) {
                return each;
            }
        }
        list.emplace_back().timer = id;
        return list.back();
    }
    [[nodiscard]] TimerSettings& found(int number = 1) { return settings(file_.visit.found, number); }
    [[nodiscard]] TimerSettings& left(int number = 1) { return settings(file_.visit.left, number); }

private:
    static std::int64_t nanoseconds(double s) { return static_cast<std::int64_t>(s * 1e9); }

    Mark& mark(MarkKind kind, const PadBank& bank, double after_s) {
        Mark made;
        made.id = Id{"mark-" + std::to_string(file_.visit.marks.size() + 1)};
        made.kind = kind;
        made.pump = bank.pump;
        if (kind != MarkKind::pump_start && kind != MarkKind::pump_stop) {
            made.bank = bank.id;
        }
        made.at = {"boot-a", now_ns_ + nanoseconds(after_s)};
        made.wall = file_.visit.started;
        made.wall.unix_ms += made.at.boot_ns / 1'000'000;
        made.timed_by = TimedBy::event_stamp;
        file_.visit.marks.push_back(made);
        return file_.visit.marks.back();
    }

    VisitFile file_;
    std::int64_t now_ns_ = 0;
};

}  // namespace wetfront::test
