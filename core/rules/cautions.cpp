// SPDX-License-Identifier: Apache-2.0
#include "rules/checklists.h"

// Cautions in our own words, each with the publication that it follows. The rules named are those of the
// United States; codes_come_first() stands wherever cautions stand, and says what comes before them.
namespace wetfront {
namespace {

// A value as its source prints it; shown in the reader's units.
AnyQuantity printed(Kind kind, std::string_view text, Scale scale = Scale::normal) {
    auto value = parse_any(kind, text, "value of a caution").value();
    value.scale = scale;
    return value;
}

std::vector<Caution> injury() {
    return {
        {"unexpected-start",
         SignalWord::danger,
         {Step::safety, Step::time_the_water, Step::proof, Step::before_leaving},
         WF_TEXT("A pump or fan that starts by itself: it crushes or cuts off hands. Before you reach in, "
                 "know every "
                 "source of energy, shut down, switch off at the isolating device, lock and tag it, let "
                 "moving parts "
                 "come to rest and pressure go, try to start it, then work. In the United States, 29 CFR "
                 "1910.147 "
                 "asks this for a service firm's people; it does not cover farm employment, where 29 CFR "
                 "1928.57(a)(6) asks for instruction at first assignment and every year, and for everything "
                 "stopped, "
                 "at rest and its power locked out before maintenance."),
         "29 CFR 1910.147(d); 29 CFR 1928.57(a)(6)"},
        {"electricity-and-water",
         SignalWord::danger,
         {Step::safety, Step::time_the_water, Step::proof, Step::before_leaving},
         WF_TEXT(
             "Electricity where everything is wet: a shock kills. Use receptacles with ground-fault "
             "protection, "
             "switch off at the isolating device before a cover comes off, and leave wiring to a licensed "
             "electrician. In the United States, NEC article 547 is for farm buildings; look into the "
             "edition "
             "adopted where you are."),
         "NEC article 547 (agricultural buildings); section numbers move between editions"},
        {"bleach-and-acid",
         SignalWord::danger,
         {Step::safety, Step::house_and_banks, Step::conditions},
         WF_TEXT("Bleach with acid or with ammonia: the gas that forms can kill. Descaling acid and bleach "
                 "meet in this "
                 "very job: never let them mix, drain and rinse between them, give air, wear gloves and eye "
                 "protection."),
         "Washington State Department of Health wording, read second hand; draining and rinsing between them "
         "is common "
         "practice, no source"},
        {"fan-blades",
         SignalWord::warning,
         {Step::safety, Step::time_the_water, Step::proof, Step::conditions},
         {WF_TEXT("Fan blades behind a missing or open guard: deep cuts, lost fingers. Keep guards on while "
                  "a fan can "
                  "turn; blades lower than %1 need guards with openings of at most %2. Put no meter and no "
                  "hand through "
                  "a guard."),
          {printed(Kind::length, "7ft"), printed(Kind::length, "0.5in", Scale::fine)}},
         "29 CFR 1910.212(a)(5); 29 CFR 1928.57"},
        {"ladder",
         SignalWord::warning,
         {Step::safety, Step::house_and_banks, Step::time_the_water, Step::proof},
         {WF_TEXT("A fall from a ladder at the header: broken bones, or death. Foot out one for every four "
                  "up, rails %1 "
                  "above the landing, face it, three points of contact, no metal ladder near live parts."),
          {printed(Kind::length, "3ft")}},
         "OSHA ladder material"},
        {"heat-of-the-worker",
         SignalWord::warning,
         {Step::safety, Step::time_the_water, Step::proof},
         {WF_TEXT("Work in the heat: heat stroke can kill. Drink water every %1 and rest in the shade; the "
                  "risk is high "
                  "from a heat index of %2, very high above %3. The first week is the worst."),
          {printed(Kind::duration, "20min"), printed(Kind::temperature, "103degF"),
           printed(Kind::temperature, "115degF")}},
         "OSHA heat-index guide"},
        {"bacteria-in-sump",
         SignalWord::warning,
         {Step::safety, Step::house_and_banks, Step::conditions},
         {WF_TEXT("Bacteria in warm recirculated water: breathed in as fine spray they can make you severely "
                  "ill. Sludge, "
                  "scale and algae feed them between %1 and %2. A running pad was measured to carry over "
                  "very little, "
                  "yet an untreated sump grows them within weeks; pressure washing, flushing the ends and "
                  "cleaning the "
                  "sump make spray. Keep the sump clean, stay out of the spray, wear breathing protection "
                  "where you "
                  "can't."),
          {printed(Kind::temperature, "20degC"), printed(Kind::temperature, "50degC")}},
         "HSE L8 and HSG274 part 3; OSHA Technical Manual III-7; Macher & Girman 1990; Macher et al. 1995, "
         "Environ. "
         "Int."},
        {"backflow",
         SignalWord::warning,
         {Step::safety, Step::house_and_banks, Step::before_leaving},
         {WF_TEXT("Sump water drawn back into drinking water: it makes people and birds ill. Keep an air gap "
                  "of at least "
                  "twice the inlet's diameter and at least %1; a float valve with its outlet under water has "
                  "none."),
          {printed(Kind::length, "1in", Scale::fine)}},
         "EPA 816-R-03-002 and utilities' rules"},
        {"slips",
         SignalWord::caution,
         {Step::safety, Step::time_the_water, Step::proof},
         WF_TEXT("Wet concrete, algae, heavy pads: a fall or a strained back. Wear soles that grip, walk, "
                 "keep the way "
                 "between pump and far end clear, and lift with a second person."),
         "common practice, no source"},
    };
}

std::vector<Caution> property() {
    return {
        {"birds-without-cooling",
         SignalWord::notice,
         {Step::safety, Step::time_the_water, Step::proof, Step::before_leaving},
         WF_TEXT("Birds without cooling: in extreme heat a flock can be lost in minutes. Agree a stop "
                 "temperature and a "
                 "longest pump-off time with the grower before a test, prefer an empty or a cool house, keep "
                 "the fans "
                 "running, have back-up power tested, and look at every switch before you leave."),
         "trade press on losses; Vale et al. 2010 (over 31 days: THI above 30.6 degC and maximum above 34.4 "
         "degC)"},
        {"biosecurity",
         SignalWord::notice,
         {Step::safety, Step::house_and_banks},
         WF_TEXT("Disease carried from farm to farm: it can cost the flock. Keep the line of separation, "
                 "clean equipment "
                 "and footwear, and take farms and houses in the order agreed."),
         "CFIA Poultry Service Industry Biosecurity Guide; NPIP"},
    };
}

}  // namespace

const std::vector<Caution>& cautions() {
    static const std::vector<Caution> all = [] {
        auto list = injury();
        for (auto& notice : property()) {
            list.push_back(std::move(notice));
        }
        return list;
    }();
    return all;
}

Message codes_come_first() {
    return WF_TEXT(
        "Local codes and the farm's own rules come first; wiring and drinking-water pipes are work for "
        "licensed "
        "trades.");
}

}  // namespace wetfront
