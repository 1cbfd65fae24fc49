// SPDX-License-Identifier: Apache-2.0
#include "water/scaling.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "base/numbers.h"

namespace wetfront {
namespace {

constexpr double mg_per_litre = 1e-3;  // kg/m3

std::string in_mg_per_litre(Concentration value) {
    return print_number(in_si(value) / mg_per_litre, 3) + " mg/L";
}

Result<double> checked(const char* item, Concentration value, double least, double most) {
    const double si = in_si(value);
    if (!(si >= least && si <= most)) {
        return bad_input(
            item, in_mg_per_litre(value),
            print_number(least / mg_per_litre, 3) + " to " + print_number(most / mg_per_litre, 0) + " mg/L");
    }
    return si / mg_per_litre;
}

Result<double> checked(const char* item, Volume value) {
    const double si = in_si(value);
    if (!(si >= 0.0) || !std::isfinite(si)) {
        return bad_input(item, print_number(si, 3) + " m3", "0 m3 or more");
    }
    return si;
}

std::string signed_number(double index) {
    const auto text = print_fixed(index, 1);
    return text.front() != '-' && text != "0.0" ? "+" + text : text;
}

}  // namespace

// pHs = (9.3 + A + B) - (C + D), A = (log10 TDS - 1)/10, B = -13.12 log10(T + 273) + 34.55, C = log10(Ca
// hardness) - 0.4, D = log10(alkalinity); T in degC, the rest in mg/L, hardness and alkalinity as CaCO3.
// Source: the equation as printed with its worked examples (Index-Lang-calcul, corrosion-doctors.org, and
// pages that quote it). It says T + 273; 273.15 would move pHs by 0.003. Accuracy: its examples are printed
// to 0.1, and their factors differ among pages by up to 0.03; good to about 0.1. Range: published examples
// span 24 to 82 degC and 320 to 500 mg/L; above 10,000 mg/L another index is used (public water treatment
// pages). The other ends are ours, assumed. Simplifications: all alkalinity counts as bicarbonate, which is
// less true the higher the pH; the salts enter by their sum alone; inhibitors are not seen.
Result<ScalingIndex> scaling_index(const WaterTest& water) {
    const double celsius = in_celsius(water.temperature);
    // Room for what 273.15 leaves behind when 0 degC is stored in kelvin.
    if (!(celsius >= -1e-9 && celsius <= 90.0 + 1e-9)) {
        return bad_input("water temperature", print_number(celsius, 1) + " degC", "0 to 90 degC");
    }
    if (!(water.ph >= 4.0 && water.ph <= 11.0)) {
        return bad_input("pH", print_number(water.ph, 2), "4 to 11");
    }
    using Range = WaterTestRange;
    WF_TRY(const double calcium,
           checked("calcium hardness", water.calcium_hardness, Range::least_hardness, Range::most_hardness));
    WF_TRY(const double alkalinity,
           checked("alkalinity", water.alkalinity, Range::least_hardness, Range::most_hardness));
    WF_TRY(const double solids,
           checked("dissolved solids", water.dissolved_solids, Range::least_solids, Range::most_solids));
    const double a = (std::log10(solids) - 1.0) / 10.0;
    const double b = -13.12 * std::log10(celsius + 273.0) + 34.55;
    const double c = std::log10(calcium) - 0.4;
    const double d = std::log10(alkalinity);
    const double saturation = (9.3 + a + b) - (c + d);
    return ScalingIndex{saturation, water.ph - saturation, 2.0 * saturation - water.ph};
}

Result<Concentration> dissolved_solids_from(Conductivity conductivity, double factor) {
    constexpr double us_per_cm = 1e-4;  // S/m
    const double si = in_si(conductivity);
    if (!(si >= 0.0 && si <= 10.0)) {
        return bad_input("conductivity", print_number(si / us_per_cm, 1) + " uS/cm", "0 to 100,000 uS/cm");
    }
    if (!(factor >= 0.5 && factor <= 0.9)) {
        return bad_input("dissolved solids for each unit of conductivity",
                         print_number(factor, 3) + " mg/L per uS/cm", "0.5 to 0.9 mg/L per uS/cm");
    }
    return from_si<Concentration>(factor * (si / us_per_cm) * mg_per_litre);
}

Message langelier_in_words(double index) {
    const auto shown = signed_number(index);
    if (shown == "0.0") {
        return WF_TEXT(
            "Langelier index 0.0: the water is just saturated with calcium carbonate; it neither lays down "
            "scale nor dissolves it.");
    }
    return index > 0.0 ? Message{WF_TEXT("Langelier index %1: the water holds more calcium carbonate than it "
                                         "can keep dissolved; it can lay down scale."),
                                 {shown}}
                       : Message{WF_TEXT("Langelier index %1: the water could dissolve more calcium "
                                         "carbonate; it lays down no such scale."),
                                 {shown}};
}

Message ryznar_in_words(double index) {
    return {WF_TEXT("Ryznar index %1: the lower it is, the more scale."), {print_fixed(index, 1)}};
}

Result<Mass> scale_by_one_farm(Volume used) {
    constexpr double scale_per_volume = 0.168;  // kg/m3: 168 g for each 1,000 L
    WF_TRY(const double volume, checked("water used", used));
    return from_si<Mass>(scale_per_volume * volume);
}

Result<Concentration> carbonate_hardness(Concentration calcium_hardness, Concentration alkalinity) {
    constexpr double most = 50.0;
    WF_CHECK(checked("calcium hardness", calcium_hardness, 0.0, most));
    WF_CHECK(checked("alkalinity", alkalinity, 0.0, most));
    return std::min(calcium_hardness, alkalinity);
}

Result<ScaleBalance> scale_by_balance(Volume make_up, Volume carried_off, Concentration make_up_hardness,
                                      std::optional<Concentration> sump_hardness) {
    constexpr double most = 50.0;
    WF_CHECK(checked("make-up", make_up));
    WF_CHECK(checked("water carried off", carried_off));
    WF_CHECK(checked("carbonate hardness of the make-up", make_up_hardness, 0.0, most));
    WF_CHECK(checked("carbonate hardness of the sump", sump_hardness.value_or(make_up_hardness), 0.0, most));
    if (carried_off > make_up) {
        return bad_input("water carried off", print_number(in_si(carried_off), 3) + " m3",
                         "at most the make-up, " + print_number(in_si(make_up), 3) + " m3");
    }
    const Mass in = make_up * make_up_hardness;
    const Mass off = carried_off * sump_hardness.value_or(make_up_hardness);
    return ScaleBalance{in, off, in - off};
}

}  // namespace wetfront
