// SPDX-License-Identifier: Apache-2.0
#include "support/visit_builder.h"

namespace wetfront::test {
namespace {

std::int64_t nanoseconds(double s) {
    return static_cast<std::int64_t>(s * 1e9);
}

}  // namespace

VisitBuilder::VisitBuilder(int banks, int timers, TimerKind kind) {
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

VisitBuilder& VisitBuilder::both_weathers() {
    file_.visit.conditions.outside_dry_bulb = typed<Temperature>("32degC");
    file_.visit.conditions.outside_humidity = typed<Fraction>("45%");
    file_.farm.design_dry_bulb = typed<Temperature>("36degC");
    file_.farm.design_wet_bulb = typed<Temperature>("24degC");
    return *this;
}

VisitBuilder& VisitBuilder::run(int bank_number, const MarkedRun& run) {
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

Mark& VisitBuilder::mark(MarkKind kind, const PadBank& bank, double after_s) {
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

}  // namespace wetfront::test
