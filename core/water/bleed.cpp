// SPDX-License-Identifier: Apache-2.0
#include "water/bleed.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/numbers.h"

namespace wetfront {
namespace {

Result<double> checked(const char* item, MassFlow flow) {
    const double si = in_si(flow);
    if (!(si >= 0.0 && si <= 1000.0)) {
        return bad_input(item, print_number(si, 6) + " kg/s", "0 to 1000 kg/s");
    }
    return si;
}

Result<double> checked(const char* item, Conductivity conductivity) {
    const double si = in_si(conductivity);
    if (!(si > 0.0 && si <= 10.0)) {
        return bad_input(item, print_number(1e4 * si, 1) + " uS/cm", "above 0 to 100,000 uS/cm");
    }
    return si;
}

std::string above_one_in_words(double cycles) {
    return std::isfinite(cycles) ? print_number(cycles, 6) : "no number";
}

Result<double> finite_limit(const char* item, double limit) {
    if (!std::isfinite(limit)) {
        return bad_input(item, "no number", "a finite number");
    }
    return limit;
}

// Calcium, alkalinity and solids all grow with the cycles R. In pHs they stand as -log10, -log10 and +log10 /
// 10, so that pHs falls by 1.9 log10 R at a fixed pH and temperature.
constexpr double saturation_per_decade = 1.9;

MostCycles up_to(double cycles, const WaterTest& water) {
    if (!(cycles >= 1.0)) {
        return {};
    }
    using Range = WaterTestRange;
    const double end = std::min({Range::most_hardness / in_si(water.calcium_hardness),
                                 Range::most_hardness / in_si(water.alkalinity),
                                 Range::most_solids / in_si(water.dissolved_solids)});
    return cycles > end ? MostCycles{end, true} : MostCycles{cycles, false};
}

}  // namespace

VolumeFlow volume_flow_of(MassFlow water) {
    return water / from_si<Density>(1000.0);
}

// Salts in = salts out: M c = (B + D) R c with M = E + B + D, so B + D = E/(R - 1). Source: bleed, make-up
// and cycles as in waterplanner.gemi.org (formulas for cooling towers), drift counted as bleed; EnergyPlus
// Engineering Reference, blow-down, is the same with B = E/(R - 1). Range: any E and R > 1. Accuracy: exact
// at the steady state, which a sump reaches after a few times its volume over B + D. Simplification: no salt
// comes down on the way; where scale forms, less is left to be bled.
Result<WaterBalance> water_balance(MassFlow evaporation, double cycles, MassFlow lost) {
    WF_TRY(const double e, checked("evaporation", evaporation));
    WF_TRY(const double d, checked("drift and leaks", lost));
    if (!(cycles > 1.0) || !std::isfinite(cycles)) {
        return bad_input("cycles of concentration", above_one_in_words(cycles),
                         "above 1; at 1 no bleed is large enough");
    }
    const double leaving = e / (cycles - 1.0);
    if (!(leaving <= 1e9)) {
        return bad_input("cycles of concentration", print_exact(cycles),
                         "so far above 1 that the bleed is not beyond all pipes");
    }
    const double bleed = std::max(0.0, leaving - d);
    WaterBalance balance;
    balance.evaporation = evaporation;
    balance.lost = lost;
    balance.bleed = from_si<MassFlow>(bleed);
    balance.make_up = from_si<MassFlow>(e + bleed + d);
    balance.wanted_cycles = cycles;
    balance.lost_is_enough = d >= leaving;
    if (bleed + d > 0.0) {
        balance.cycles = (e + bleed + d) / (bleed + d);
    }
    return balance;
}

std::optional<Message> note_on(const WaterBalance& balance) {
    if (balance.lost_is_enough && in_si(balance.evaporation) > 0.0) {
        return Message{WF_TEXT("Drift and leaks, %1, already hold the salts of the sump at %2 times those of "
                               "the make-up: no bleed is needed for %3 times."),
                       {any(volume_flow_of(balance.lost)), print_number(balance.cycles.value_or(1.0), 2),
                        print_number(balance.wanted_cycles, 2)}};
    }
    if (balance.wanted_cycles < least_published_cycles) {
        return Message{WF_TEXT("Published guidance lets the salts rise to at least %1 times those of the "
                               "make-up (EnergyPlus Engineering Reference); %2 times bleeds more water."),
                       {print_number(least_published_cycles, 0), print_number(balance.wanted_cycles, 2)}};
    }
    return std::nullopt;
}

Result<double> cycles_from_conductivity(Conductivity make_up, Conductivity sump) {
    WF_TRY(const double in, checked("conductivity of the make-up", make_up));
    WF_TRY(const double held, checked("conductivity of the sump", sump));
    if (held < in) {
        return bad_input("conductivity of the sump", print_number(1e4 * held, 1) + " uS/cm",
                         "not below that of the make-up, " + print_number(1e4 * in, 1) + " uS/cm");
    }
    return held / in;
}

Result<Concentration> concentrated(Concentration make_up, double cycles) {
    if (!(in_si(make_up) >= 0.0) || !std::isfinite(in_si(make_up))) {
        return bad_input("concentration of the make-up", print_number(1e3 * in_si(make_up), 3) + " mg/L",
                         "0 mg/L or more");
    }
    if (!(cycles >= 1.0) || !std::isfinite(cycles)) {
        return bad_input("cycles of concentration", above_one_in_words(cycles), "1 or more");
    }
    return cycles * make_up;
}

// Langelier's index rises by 1.9 log10 R from that of the make-up.
Result<MostCycles> most_cycles_for_langelier(const WaterTest& water, double highest) {
    WF_TRY(const double limit, finite_limit("highest Langelier index", highest));
    WF_TRY(const auto index, scaling_index(water));
    return up_to(std::pow(10.0, (limit - index.langelier) / saturation_per_decade), water);
}

// Ryznar's is 2 pHs - pH, so that it falls twice as fast.
Result<MostCycles> most_cycles_for_ryznar(const WaterTest& water, double lowest) {
    WF_TRY(const double limit, finite_limit("lowest Ryznar index", lowest));
    WF_TRY(const auto index, scaling_index(water));
    return up_to(std::pow(10.0, (index.ryznar - limit) / (2.0 * saturation_per_decade)), water);
}

}  // namespace wetfront
