// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/field.h"
#include "records/limits.h"
#include "units/message.h"

// Part of fields.h.
namespace wetfront {

template <class R, class V>
requires RecordOf<R, Limits>
void each_field(R& limits, V&& visit) {
    visit(Field{"coolest_start", WF_TEXT("Coolest start with older birds"),
                WF_TEXT("Below it, moving air does it and pads only make the house damp."),
                celsius_zero + 15.0, celsius_zero + 45.0},
          limits.coolest_start);
    visit(Field{"warmest_start", WF_TEXT("Warmest start with older birds"),
                WF_TEXT("By then they need pads."), celsius_zero + 15.0, celsius_zero + 45.0},
          limits.warmest_start);
    visit(Field{"start_temperature", WF_TEXT("Start temperature to advise"),
                WF_TEXT("Between the coolest and the warmest start."), celsius_zero + 15.0,
                celsius_zero + 45.0},
          limits.start_temperature);
    visit(Field{"older_birds_days", WF_TEXT("Older birds: from that age on, in days"),
                WF_TEXT("Breeds differ; younger birds are chilled by wet, moving air."), 0.0, 700.0},
          limits.older_birds_days);
    visit(Field{"least_air_speed", WF_TEXT("Air down the house before pads are used"),
                WF_TEXT("Moving air comes first; pads add to it."), 0.0, 10.0},
          limits.least_air_speed);
    visit(Field{"least_cooling", WF_TEXT("Least cooling that is worth the damp"),
                WF_TEXT("Sets the humidity cut-off and ends the pad hours."), 0.1, 10.0},
          limits.least_cooling);
    visit(Field{"hot_outside", WF_TEXT("Hot outside: no humidity stops pads from there on"),
                WF_TEXT("Not below the start temperature."), celsius_zero + 15.0, celsius_zero + 55.0},
          limits.hot_outside);
    visit(Field{"humidity_step", WF_TEXT("Smallest step of a humidity"),
                WF_TEXT("The cut-off is rounded down to it."), 0.001, 0.2},
          limits.humidity_step);
    visit(Field{"night", WF_TEXT("Pads dry by"), WF_TEXT("A time of day after noon.")}, limits.night);
    visit(Field{"dry_face", WF_TEXT("A pad counts as dry with that much of its face wet"),
                WF_TEXT("For how long pads stay wet after their last run."), 0.001, 0.5},
          limits.dry_face);
    visit(Field{"longest_dry_down", WF_TEXT("Longest time until a pad is dry"),
                WF_TEXT("A pad that takes longer does not dry that night."), 60.0, 12.0 * hours},
          limits.longest_dry_down);
    visit(Field{"clock_ahead_of_sun", WF_TEXT("Clock ahead of the sun"),
                WF_TEXT("By summer time and by where in its time zone the farm lies; pad hours go by it."),
                0.0, 3.0 * hours},
          limits.clock_ahead_of_sun);
    visit(Field{"clock_step", WF_TEXT("Smallest step of a time of day"),
                WF_TEXT("Pad hours are rounded outward to it."), 60.0, 1.0 * hours},
          limits.clock_step);
    visit(Field{"water_margin", WF_TEXT("Water margin"),
                WF_TEXT("Water in a run over what evaporates in a period at the hottest hour."), 1.0, 3.0},
          limits.water_margin);
    visit(Field{"least_rest", WF_TEXT("Shortest rest"),
                WF_TEXT("Where pads leave less time than this, the pump runs without rest. Ask what its "
                        "motor stands."),
                0.0, 1.0 * hours},
          limits.least_rest);
    visit(Field{"drying_share", WF_TEXT("Share of the dry-out time that a gap may take"),
                WF_TEXT("How long the far end may go without water between two runs."), 0.05, 1.0},
          limits.drying_share);
    visit(Field{"constant_share", WF_TEXT("Share of drying at constant rate"),
                WF_TEXT("How a pad dries: for the rinse, for dry-down, and whether water keeps up."), 0.05,
                0.95},
          limits.constant_share);
    visit(Field{"first_period", WF_TEXT("Period tried first"), "", 60.0, 1.0 * hours}, limits.first_period);
    visit(Field{"second_period", WF_TEXT("Period tried next"),
                WF_TEXT("Where the first leaves no rest; not shorter than the first."), 60.0, 1.0 * hours},
          limits.second_period);
    visit(Field{"house_lag", WF_TEXT("Time the house takes to answer"),
                WF_TEXT("A review comes no sooner than a change of on-time shows in the house."), 0.0,
                2.0 * hours},
          limits.house_lag);
    visit(Field{"dead_band", WF_TEXT("Trim dead band"), WF_TEXT("Within it the on-time stays as it is."), 0.0,
                5.0},
          limits.dead_band);
}

}  // namespace wetfront
