// SPDX-License-Identifier: Apache-2.0
#include "water/sump.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/numbers.h"
#include "water/bleed.h"

namespace wetfront {
namespace {

template <class Q>
Result<void> check_known(const char* item, const std::optional<Q>& value, const char* unit) {
    if (value && (!(in_si(*value) >= 0.0) || !std::isfinite(in_si(*value)))) {
        return bad_input(item, print_number(in_si(*value), 6) + " " + unit,
                         std::string{"0 "} + unit + " or more");
    }
    return boost::outcome_v2::success();
}

Result<void> check_inputs(const Sump& sump, const SumpDemand& demand) {
    WF_CHECK(check_known("usable volume of the sump", sump.usable, "m3"));
    WF_CHECK(check_known("area of the sump", sump.area, "m2"));
    WF_CHECK(check_known("depth above the pump's intake", sump.depth, "m"));
    WF_CHECK(check_known("freeboard of the sump", sump.freeboard, "m"));
    WF_CHECK(check_known("make-up flow", sump.make_up, "m3/s"));
    WF_CHECK(check_known("volume of the headers", demand.header, "m3"));
    WF_CHECK(check_known("volume of the riser", demand.riser, "m3"));
    WF_CHECK(check_known("water taken up by the pads", demand.pads, "m3"));
    WF_CHECK(check_known("water that drips after a stop", demand.run_off, "m3"));
    WF_CHECK(check_known("evaporation", demand.evaporation, "kg/s"));
    WF_CHECK(check_known("bleed", demand.bleed, "kg/s"));
    if (sump.area && in_si(*sump.area) == 0.0) {
        return bad_input("area of the sump", "0 m2", "above 0 m2");
    }
    if (demand.on_share && !(*demand.on_share > 0.0 && *demand.on_share <= 1.0)) {
        return bad_input("share of the period that the pump runs",
                         print_number(100.0 * *demand.on_share, 3) + " %", "above 0 to 100 %");
    }
    return boost::outcome_v2::success();
}

std::optional<Volume> usable_of(const Sump& sump) {
    if (sump.usable) {
        return sump.usable;
    }
    if (sump.area && sump.depth) {
        return Volume{*sump.area * *sump.depth};
    }
    return std::nullopt;
}

std::optional<Duration> lasts(Volume water, MassFlow need) {
    if (!(in_si(need) > 0.0)) {
        return std::nullopt;
    }
    return std::max(Volume{}, water) / volume_flow_of(need);
}

void add_start_and_stop(const Sump& sump, const SumpDemand& demand, SumpBalance& balance) {
    if (!demand.header) {
        return;
    }
    const Volume pipes = *demand.header + demand.riser.value_or(Volume{});
    balance.draw_down = pipes + demand.pads.value_or(Volume{});
    balance.draw_down_is_least = !demand.riser || !demand.pads;
    balance.run_back = pipes + demand.run_off.value_or(Volume{});
    balance.run_back_is_least = !demand.riser || !demand.run_off;
    if (sump.area) {
        balance.level_fall = *balance.draw_down / *sump.area;
    }
    if (balance.usable) {
        balance.left_after_start = *balance.usable - *balance.draw_down;
    }
    if (balance.freeboard_volume) {
        balance.freeboard_left = *balance.freeboard_volume - *balance.run_back;
    }
}

void add_make_up(const Sump& sump, const SumpDemand& demand, SumpBalance& balance) {
    if (!demand.evaporation) {
        return;
    }
    const MassFlow bleed = demand.bleed.value_or(MassFlow{});
    balance.need = *demand.evaporation + bleed;
    balance.need_is_least = !demand.bleed;
    if (sump.make_up) {
        balance.make_up_left = *sump.make_up - volume_flow_of(*balance.need);
    }
    if (balance.usable) {
        balance.reserve = lasts(*balance.usable, *balance.need);
    }
    if (!demand.on_share) {
        return;
    }
    balance.need_cycled = *demand.evaporation + *demand.on_share * bleed;
    if (balance.usable && balance.run_back) {
        balance.reserve_cycled = lasts(*balance.usable - *balance.run_back, *balance.need_cycled);
    }
}

}  // namespace

Result<SumpBalance> sump_balance(const Sump& sump, const SumpDemand& demand) {
    WF_CHECK(check_inputs(sump, demand));
    SumpBalance balance;
    balance.usable = usable_of(sump);
    if (sump.area && sump.freeboard) {
        balance.freeboard_volume = *sump.area * *sump.freeboard;
    }
    add_start_and_stop(sump, demand, balance);
    add_make_up(sump, demand, balance);
    return balance;
}

}  // namespace wetfront
