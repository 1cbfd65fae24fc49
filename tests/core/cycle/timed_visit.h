// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "records/visit.h"

namespace wetfront::test {

/// A visit to an invented house that can be timed in a line: one timer, one pump, two banks, a weather and a
/// design day. Marks are laid on the boot clock as a technician would press them.
class TimedVisit {
public:
    VisitFile file;

    TimedVisit() {
        file.farm.elevation = entry<Length>("150m");
        file.farm.design_dry_bulb = entry<Temperature>("36degC");
        file.farm.design_wet_bulb = entry<Temperature>("24degC");
        file.visit.conditions.outside_dry_bulb = entry<Temperature>("33degC");
        file.visit.conditions.outside_humidity = entry<Fraction>("45%");
        file.house.pumps.emplace_back().id = pump;
        file.house.pumps.back().name = "Pump";
        file.house.banks = {bank("north", "North bank"), bank("south", "South bank")};
        Timer timer;
        timer.id = Id{"timer"};
        timer.pumps = {pump};
        timer.resolution = entry<Duration>("5s");
        timer.period_resolution = entry<Duration>("1min");
        file.house.timers.push_back(timer);
    }

    template <class Q>
    static Optional<Q> entry(const char* text) {
        return Entered<Q>::parse(text, "test").value();
    }

    Pump& the_pump() { return file.house.pumps.front(); }
    PumpFlow& flow() {
        auto& flows = file.visit.conditions.flows;
        if (flows.empty()) {
            flows.emplace_back().pump = pump;
        }
        return flows.front();
    }
    BankConditions& at(const char* bank) {
        auto& list = file.visit.conditions.at_banks;
        for (auto& each : list) {
            if (each.bank.text == bank) {
                return each;
            }
        }
        list.emplace_back().bank = Id{bank};
        return list.back();
    }
    /// Outlets for every header: 66 of 3 mm, 300 mm apart.
    void describe_outlets() {
        for (auto& each : file.house.banks) {
            each.outlet_bore = entry<Length>("3mm");
            each.outlet_spacing = entry<Length>("300mm");
        }
    }

    Timer& timer() { return file.house.timers.front(); }
    PadBank& bank_at(std::size_t index) { return file.house.banks.at(index); }

    /// Fill and wet-through of a dry pad, then the dry-out; fans off while wetting.
    void dry_start(const char* bank, double fill, double wet_through, double dry_out, bool fans_on = false) {
        mark(MarkKind::pump_start, 0.0, nullptr, PadsAtStart::dry, fans_on);
        mark(MarkKind::water_at_far_end, fill, bank);
        mark(MarkKind::far_end_drips, wet_through, bank);
        now_ += wet_through + 60.0;
        mark(MarkKind::pump_stop, 0.0, nullptr, PadsAtStart::not_dry, true);
        mark(MarkKind::first_dry_patch, dry_out, bank);
        now_ += dry_out + 600.0;
    }

    /// Pump off while the far end drips, then fill and return of the drip.
    void wet_start(const char* bank, double off, double fill, double drip_return, bool fans_on = true) {
        mark(MarkKind::pump_stop, 0.0, nullptr, PadsAtStart::not_dry, fans_on);
        now_ += off;
        mark(MarkKind::pump_start, 0.0, nullptr, PadsAtStart::dripping, fans_on);
        mark(MarkKind::water_at_far_end, fill, bank);
        mark(MarkKind::far_end_drips, drip_return, bank);
        now_ += drip_return + 600.0;
    }

private:
    PadBank bank(const char* id, const char* name) const {
        PadBank bank;
        bank.id = Id{id};
        bank.name = name;
        bank.pump = pump;
        bank.length = entry<Length>("20m");
        bank.height = entry<Length>("1.5m");
        bank.thickness = entry<Length>("150mm");
        bank.header_bore = entry<Length>("50mm");
        return bank;
    }

    void mark(MarkKind kind, double after, const char* bank, PadsAtStart pads = PadsAtStart::not_dry,
              std::optional<bool> fans = std::nullopt) {
        Mark mark;
        mark.id = Id{"m" + std::to_string(file.visit.marks.size())};
        mark.kind = kind;
        mark.pump = pump;
        mark.bank = Id{bank != nullptr ? bank : ""};
        mark.at = {"boot", static_cast<std::int64_t>((now_ + after) * 1e9)};
        mark.wall = {1'782'900'000'000 + static_cast<std::int64_t>((now_ + after) * 1e3), 0};
        mark.timed_by = TimedBy::event_stamp;
        mark.pads = pads;
        mark.fans_running = fans;
        file.visit.marks.push_back(mark);
    }

    Id pump{"pump"};
    double now_ = 100.0;
};

}  // namespace wetfront::test
