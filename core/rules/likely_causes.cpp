// SPDX-License-Identifier: Apache-2.0
#include "rules/likely_causes.h"

namespace wetfront::likely {

LikelyCause air_on_suction() {
    return {WF_TEXT("The pump draws air: a leak on its suction side, or a pipe that empties between runs."),
            WF_TEXT("Watch the first outlets while the header fills: spitting and bubbles mean air. Tighten "
                    "the suction side, then time again.")};
}

LikelyCause clogged_filter() {
    return {WF_TEXT("Clogged filter or strainer."),
            WF_TEXT("Read the pressure before and behind the filter; clean filter and strainer, then measure "
                    "the flow again by sump drawdown.")};
}

LikelyCause half_shut_valve() {
    return {WF_TEXT("A valve that is not fully open."),
            WF_TEXT("Follow the pipe from the pump to the header and look at every handle; open it, then "
                    "time again.")};
}

LikelyCause worn_pump() {
    return {WF_TEXT("A worn pump, or one that turns the wrong way."),
            WF_TEXT("With filter clean and valves open, compare flow and head with the pump's curve or an "
                    "earlier visit; motor and wiring are for a licensed electrician.")};
}

LikelyCause leaking_supply() {
    return {WF_TEXT("A leak in the pipe from pump to header."),
            WF_TEXT("Walk along the pipe while the pump runs and look for water; compare the flow by sump "
                    "drawdown with what is caught at the outlets.")};
}

LikelyCause clogged_outlets() {
    return {WF_TEXT("Clogged outlets."),
            WF_TEXT("Read the head at the pump end of the header: more head with less flow means outlets, "
                    "less head means pump, filter or valve. Flush the header and catch water along it.")};
}

LikelyCause water_lost_at_header() {
    return {WF_TEXT("Water is lost on the way: flush valve, end cap or a joint of the header."),
            WF_TEXT("Walk along the header while it fills; shut the flush valve, look at cap and joints.")};
}

LikelyCause header_not_empty() {
    return {WF_TEXT("The header was not empty when the pump started."),
            WF_TEXT("Let it drain until no outlet drips, or open the flush valve, then time again.")};
}

LikelyCause wrong_description() {
    return {WF_TEXT("Bore, outlets or supply pipe are not as entered."),
            WF_TEXT("Measure the header's inside bore, an outlet and the supply pipe, and correct the "
                    "entries.")};
}

LikelyCause scaled_pad() {
    return {WF_TEXT("A scaled pad: it drips before it is wet."),
            WF_TEXT("Feel the face and the lower edge while it drips: crust, and dry paper between wet "
                    "streaks.")};
}

LikelyCause blocked_distribution() {
    return {WF_TEXT("Water is held up or led astray between header and pad, or by a blocked gutter."),
            WF_TEXT("Look under the header's cover and along the gutter for water that does not go through "
                    "the pad.")};
}

LikelyCause start_not_dry() {
    return {WF_TEXT("A pad that was not bone dry when the pump started."),
            WF_TEXT("Run the fans with the pump off until the pad is dry to the core, then time again.")};
}

LikelyCause dry_streaks() {
    return {WF_TEXT("Dry streaks: outlets clogged, or too little water."),
            WF_TEXT("Look along the face from the side with the pump running; trace each dry streak up to "
                    "its outlets.")};
}

LikelyCause air_around_pad() {
    return {WF_TEXT("Air that goes around the pad: gaps at the frame or between pads."),
            WF_TEXT("Hold a strip of tissue along the frame, above and below the pad with the fans "
                    "running.")};
}

LikelyCause air_too_fast() {
    return {WF_TEXT("Air faster than the pad is made for."),
            WF_TEXT("Take the air speed at five points or more of the face.")};
}

LikelyCause thermometer_misled() {
    return {WF_TEXT("A thermometer in the sun, in spray or close to a warm wall."),
            WF_TEXT("Read both places again with the same thermometer, shaded and dry, in moving air.")};
}

LikelyCause passages_clogged() {
    return {WF_TEXT("Passages of the pad clogged by scale, algae or dust."),
            WF_TEXT("Shine a lamp through the pad and look; compare with a clean stretch.")};
}

}  // namespace wetfront::likely
