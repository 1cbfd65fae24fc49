// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/field.h"
#include "records/limit_fields.h"
#include "records/setting_template.h"
#include "records/visit.h"

namespace wetfront {

// each_field(record, visit) calls visit(Field, member) for every field in the order in which files and forms
// show it. It works on constant and mutable records alike. The ranges are plausibility limits of ours, wide
// on purpose: they catch a slipped digit or unit, not a rare house. No source; each is tested on both sides.

template <class R, class V>
requires RecordOf<R, Farm>
void each_field(R& farm, V&& visit) {
    visit(Field{"id", ""}, farm.id);
    visit(Field{"name", WF_TEXT("Farm")}, farm.name);
    visit(Field{"customer", WF_TEXT("Customer")}, farm.customer);
    visit(Field{"service_firm", WF_TEXT("Service firm")}, farm.service_firm);
    visit(Field{"elevation", WF_TEXT("Elevation"),
                WF_TEXT("Sets the air pressure; without it, sea level is assumed."), -500.0, 4000.0},
          farm.elevation);
    visit(Field{"design_dry_bulb", WF_TEXT("Design day: hottest outside"),
                WF_TEXT("The day that the settings must carry; without it no cycle is advised."),
                celsius_zero + 15.0, celsius_zero + 55.0},
          farm.design_dry_bulb);
    visit(Field{"design_wet_bulb", WF_TEXT("Design day: wet bulb at that hour"),
                WF_TEXT("How much a pad evaporates then; without it no cycle is advised."), celsius_zero,
                celsius_zero + 40.0},
          farm.design_wet_bulb);
    visit(Field{"design_daily_range", WF_TEXT("Design day: warmest minus coolest"),
                WF_TEXT("For the hours in which pads help."), 0.0, 35.0},
          farm.design_daily_range);
    visit(Field{"currency", WF_TEXT("Prices are in"), WF_TEXT("What the cost of a day is told in.")},
          farm.currency);
    visit(Field{"water_price", WF_TEXT("Price of water"),
                WF_TEXT("For the cost of a day; without it, none is told."), 0.0, 100.0},
          farm.water_price);
    visit(Field{"energy_price", WF_TEXT("Price of power"),
                WF_TEXT("For the cost of a day; without it, none is told."), 0.0, 1e-3},
          farm.energy_price);
    visit(Field{"limits", WF_TEXT("Margins and limits")}, farm.limits);
}

template <class R, class V>
requires RecordOf<R, PumpCurvePoint>
void each_field(R& point, V&& visit) {
    visit(Field{"flow", WF_TEXT("At a flow of"),
                WF_TEXT("A point of the pump's curve; without a curve, the "
                        "measured flow is used."),
                0.0, 0.1},
          point.flow);
    visit(Field{"head", WF_TEXT("it lifts"), "", 0.0, 100.0}, point.head);
}

template <class R, class V>
requires RecordOf<R, Pump>
void each_field(R& pump, V&& visit) {
    visit(Field{"id", ""}, pump.id);
    visit(Field{"name", WF_TEXT("Pump")}, pump.name);
    visit(Field{"sump_volume", WF_TEXT("Sump volume"), WF_TEXT("Must hold what drains back at a stop."),
                0.005, 50.0},
          pump.sump_volume);
    visit(Field{"sump_area", WF_TEXT("Water surface of the sump"),
                WF_TEXT("Turns a fall of the level into a flow, and what drains back into a rise."), 0.01,
                100.0},
          pump.sump_area);
    visit(Field{"sump_freeboard", WF_TEXT("Sump: working level to overflow"),
                WF_TEXT("What drains back at a stop must fit; without it, that is not checked."), 0.0, 3.0,
                Scale::fine},
          pump.sump_freeboard);
    visit(Field{"make_up_flow", WF_TEXT("Make-up flow"), WF_TEXT("Must carry what evaporates."), 1e-6, 0.02},
          pump.make_up_flow);
    visit(Field{"bleed_flow", WF_TEXT("Bleed"),
                WF_TEXT("Carries salts away; without it, what would be needed is shown."), 0.0, 0.02},
          pump.bleed_flow);
    visit(Field{"riser_volume", WF_TEXT("Riser volume"),
                WF_TEXT("Filled before the header; without it, from the supply pipe, or none is assumed."),
                0.0, 1.0},
          pump.riser_volume);
    visit(Field{"supply_length", WF_TEXT("Supply pipe: length"),
                WF_TEXT("From pump to header; for the riser's volume and its loss."), 0.0, 300.0},
          pump.supply_length);
    visit(
        Field{"supply_bore", WF_TEXT("Supply pipe: bore"), WF_TEXT("For the same."), 0.01, 0.30, Scale::fine},
        pump.supply_bore);
    visit(Field{"static_lift", WF_TEXT("Header above the sump's water"),
                WF_TEXT("What the pump lifts before anything flows; with its curve."), 0.0, 20.0},
          pump.static_lift);
    visit(Field{"power", WF_TEXT("Electric power of the pump"),
                WF_TEXT("For what a day of pumping costs; without it, none is told."), 1.0, 50e3},
          pump.power);
    visit(Field{"curve", WF_TEXT("Pump curve")}, pump.curve);
}

template <class R, class V>
requires RecordOf<R, OutletChange>
void each_field(R& change, V&& visit) {
    visit(Field{"from", WF_TEXT("Other outlets from"), WF_TEXT("Seen from the pump end."), 0.0, 200.0},
          change.from);
    visit(Field{"bore", WF_TEXT("bore there"), "", 0.0005, 0.03, Scale::fine}, change.bore);
}

template <class R, class V>
requires RecordOf<R, PadBank>
void each_field(R& bank, V&& visit) {
    visit(Field{"id", ""}, bank.id);
    visit(Field{"name", WF_TEXT("Bank")}, bank.name);
    visit(Field{"pump", WF_TEXT("Fed by")}, bank.pump);
    visit(Field{"pump_end", WF_TEXT("End with the pump")}, bank.pump_end);
    visit(Field{"length", WF_TEXT("Pad length"),
                WF_TEXT("Shares the pump's flow; without it, no flow per length."), 0.5, 200.0},
          bank.length);
    visit(Field{"height", WF_TEXT("Pad height"), WF_TEXT("Water evaporated down the pad."), 0.3, 4.0},
          bank.height);
    visit(Field{"thickness", WF_TEXT("Pad thickness"), WF_TEXT("For the expected cooling."), 0.05, 0.30,
                Scale::fine},
          bank.thickness);
    visit(Field{"header_bore", WF_TEXT("Header bore"),
                WF_TEXT("Pipe volume, for the fill time to expect and the rinse; without it, three fill "
                        "times are rinsed."),
                0.01, 0.30, Scale::fine},
          bank.header_bore);
    visit(Field{"outlet_bore", WF_TEXT("Outlet bore"),
                WF_TEXT("Which outlet gets least; without it, all are assumed to give the same."), 0.0005,
                0.03, Scale::fine},
          bank.outlet_bore);
    visit(Field{"outlet_spacing", WF_TEXT("Outlet spacing"),
                WF_TEXT("Which outlet gets least; without it, all are assumed to give the same."), 0.01, 3.0,
                Scale::fine},
          bank.outlet_spacing);
    visit(Field{"outlet_changes", WF_TEXT("Other outlets")}, bank.outlet_changes);
    visit(Field{"discharge_coefficient", WF_TEXT("Discharge coefficient of an outlet"),
                WF_TEXT("Without it, 0.6 is assumed, a drilled hole."), 0.3, 1.0},
          bank.discharge_coefficient);
    visit(Field{"clogged_share", WF_TEXT("Share of the outlets' area that is clogged"),
                WF_TEXT("Counted as lost evenly; without it, none is assumed."), 0.0, 0.95},
          bank.clogged_share);
    visit(Field{"header_rise", WF_TEXT("Far end of the header above its pump end"),
                WF_TEXT(
                    "A level decides where water goes first; without it, the header is assumed to be level."),
                -2.0, 2.0, Scale::fine},
          bank.header_rise);
}

template <class R, class V>
requires RecordOf<R, Timer>
void each_field(R& timer, V&& visit) {
    visit(Field{"id", ""}, timer.id);
    visit(Field{"name", WF_TEXT("Timer")}, timer.name);
    visit(Field{"kind", WF_TEXT("Kind of timer")}, timer.kind);
    visit(Field{"pumps", WF_TEXT("Switches")}, timer.pumps);
    visit(Field{"resolution", WF_TEXT("Smallest step of an on-time"),
                WF_TEXT("Advice is rounded to it; without it, 1 s is assumed."), 0.1, 600.0},
          timer.resolution);
    visit(Field{"period_resolution", WF_TEXT("Smallest step of a period"),
                WF_TEXT("Without it, any period is assumed to be possible."), 0.1, 3600.0},
          timer.period_resolution);
    visit(Field{"template_id", ""}, timer.template_id);
    visit(Field{"controller", WF_TEXT("Setting template")}, timer.controller);
}

template <class R, class V>
requires RecordOf<R, Sensor>
void each_field(R& sensor, V&& visit) {
    visit(Field{"id", ""}, sensor.id);
    visit(Field{"kind", WF_TEXT("Sensor")}, sensor.kind);
    visit(Field{"place", WF_TEXT("Hangs")}, sensor.place);
}

template <class R, class V>
requires RecordOf<R, Maintenance>
void each_field(R& done, V&& visit) {
    visit(Field{"id", ""}, done.id);
    visit(Field{"on", WF_TEXT("Day")}, done.on);
    visit(Field{"what", WF_TEXT("What was done")}, done.what);
    visit(Field{"banks", WF_TEXT("Pad banks")}, done.banks);
    visit(Field{"pump", WF_TEXT("Pump")}, done.pump);
    visit(Field{"note", WF_TEXT("Note")}, done.note);
}

template <class R, class V>
requires RecordOf<R, FanStage>
void each_field(R& stage, V&& visit) {
    visit(Field{"above_target", WF_TEXT("Above target"),
                WF_TEXT("From there on these fans run; 0 for those that always do."), 0.0, 20.0},
          stage.above_target);
    visit(Field{"airflow", WF_TEXT("air through the pads"), "", 0.0, 1000.0, Scale::coarse}, stage.airflow);
}

template <class R, class V>
requires RecordOf<R, House>
void each_field(R& house, V&& visit) {
    visit(Field{"id", ""}, house.id);
    visit(Field{"farm", ""}, house.farm);
    visit(Field{"name", WF_TEXT("House")}, house.name);
    visit(Field{"fan_airflow", WF_TEXT("Airflow of the fans that run with the pads"),
                WF_TEXT("For the water evaporated and the air speed."), 0.5, 1000.0, Scale::coarse},
          house.fan_airflow);
    visit(Field{"cross_section", WF_TEXT("Cross-section of the house"),
                WF_TEXT("For the air speed over the birds; without it, that is not checked."), 5.0, 300.0},
          house.cross_section);
    visit(Field{"fan_stages", WF_TEXT("Fan stages"),
                WF_TEXT("For a day hour by hour; without them, all fans run with the pads.")},
          house.fan_stages);
    visit(Field{"birds", WF_TEXT("Number of birds"),
                WF_TEXT("For the heat that they add along the house; without it, none is counted."), 0.0,
                200'000.0},
          house.birds);
    visit(Field{"bird_mass", WF_TEXT("Mass of a bird, when heaviest"), WF_TEXT("For the same."), 0.03, 20.0},
          house.bird_mass);
    visit(Field{"building_gain", WF_TEXT("Heat from sun and building, hottest hour"),
                WF_TEXT("For the same; without it, none is counted."), 0.0, 500e3},
          house.building_gain);
    visit(Field{"sensor_lag", WF_TEXT("Lag of the house sensor"),
                WF_TEXT("How late the timer sees what the pads do; without it, 3 min are assumed."), 0.0,
                1.0 * hours},
          house.sensor_lag);
    visit(Field{"pumps", WF_TEXT("Pumps")}, house.pumps);
    visit(Field{"banks", WF_TEXT("Pad banks")}, house.banks);
    visit(Field{"timers", WF_TEXT("Timers")}, house.timers);
    visit(Field{"sensors", WF_TEXT("Sensors")}, house.sensors);
    visit(Field{"maintenance", WF_TEXT("Maintenance"),
                WF_TEXT("What was measured is followed over the years from the last of these on.")},
          house.maintenance);
}

template <class R, class V>
requires RecordOf<R, TrimRow>
void each_field(R& row, V&& visit) {
    visit(found_setting("above_target", WF_TEXT("Above target"), 0.0, 20.0), row.above_target);
    visit(found_setting("change", WF_TEXT("On-time changes by"), -600.0, 600.0), row.change);
}

template <class R, class V>
requires RecordOf<R, Moment>
void each_field(R& moment, V&& visit) {
    visit(Field{"at", ""}, moment.at);
    visit(Field{"wall", ""}, moment.wall);
}

template <class R, class V>
requires RecordOf<R, TimerSettings>
void each_field(R& settings, V&& visit) {
    visit(Field{"timer", ""}, settings.timer);
    visit(found_setting("target", WF_TEXT("Target"), celsius_zero, celsius_zero + 45.0), settings.target);
    visit(found_setting("start_temperature", WF_TEXT("Start temperature"), celsius_zero, celsius_zero + 50.0),
          settings.start_temperature);
    visit(found_setting("lowest_house_temperature", WF_TEXT("Lowest house temperature"), celsius_zero - 20.0,
                        celsius_zero + 45.0),
          settings.lowest_house_temperature);
    visit(found_setting("humidity_cut_off", WF_TEXT("Humidity cut-off"), 0.0, 1.0),
          settings.humidity_cut_off);
    visit(Field{"pad_hours_from", WF_TEXT("Pad hours from")}, settings.pad_hours_from);
    visit(Field{"pad_hours_to", WF_TEXT("Pad hours to")}, settings.pad_hours_to);
    visit(found_setting("period", WF_TEXT("Period"), 1.0, 4.0 * hours), settings.period);
    visit(found_setting("base_on_time", WF_TEXT("Base on-time"), 0.0, 4.0 * hours), settings.base_on_time);
    visit(found_setting("on_time_ceiling", WF_TEXT("On-time ceiling"), 0.0, 4.0 * hours),
          settings.on_time_ceiling);
    visit(Field{"trim_rows", WF_TEXT("Trim rows")}, settings.trim_rows);
    visit(found_setting("review_interval", WF_TEXT("Review interval"), 1.0, 24.0 * hours),
          settings.review_interval);
    visit(Field{"rinse_at", WF_TEXT("Rinse time")}, settings.rinse_at);
    visit(found_setting("rinse_length", WF_TEXT("Rinse length"), 0.0, 4.0 * hours), settings.rinse_length);
    visit(found_setting("entered_fill", WF_TEXT("Entered fill"), 0.0, 1.0 * hours), settings.entered_fill);
    visit(found_setting("entered_wet_through", WF_TEXT("Entered wet-through"), 0.0, 2.0 * hours),
          settings.entered_wet_through);
    visit(found_setting("shown_on_time", WF_TEXT("Shown on-time"), 0.0, 4.0 * hours), settings.shown_on_time);
    visit(Field{"continuous_intended", WF_TEXT("Pump meant to run without rest")},
          settings.continuous_intended);
    visit(Field{"deviation_reason", WF_TEXT("Why it differs from the advice")}, settings.deviation_reason);
    visit(Field{"changed", ""}, settings.changed);
}

template <class R, class V>
requires RecordOf<R, Person>
void each_field(R& person, V&& visit) {
    visit(Field{"name", WF_TEXT("Name")}, person.name);
    visit(Field{"role", WF_TEXT("Role")}, person.role);
}

template <class R, class V>
requires RecordOf<R, Instrument>
void each_field(R& instrument, V&& visit) {
    visit(Field{"name", WF_TEXT("Instrument")}, instrument.name);
    visit(Field{"last_checked", WF_TEXT("Last checked")}, instrument.last_checked);
}

template <class R, class V>
requires RecordOf<R, StopAgreement>
void each_field(R& agreement, V&& visit) {
    visit(Field{"longest_pump_off", WF_TEXT("Longest time the pads may be off"),
                WF_TEXT("Agreed with the grower before any pump is stopped; it counts down on every page."),
                30.0, 4.0 * hours, Scale::coarse},
          agreement.longest_pump_off);
    visit(Field{"stop_temperature", WF_TEXT("House temperature at which the test stops"),
                WF_TEXT("Agreed with the grower before any pump is stopped."), celsius_zero + 10.0,
                celsius_zero + 45.0},
          agreement.stop_temperature);
    visit(Field{"agreed_with", WF_TEXT("Agreed with")}, agreement.agreed_with);
}

template <class R, class V>
requires RecordOf<R, Tick>
void each_field(R& tick, V&& visit) {
    visit(Field{"id", ""}, tick.id);
    visit(Field{"done", ""}, tick.done);
    visit(Field{"note", WF_TEXT("Note")}, tick.note);
}

template <class R, class V>
requires RecordOf<R, PumpFlow>
void each_field(R& flow, V&& visit) {
    visit(Field{"pump", ""}, flow.pump);
    visit(Field{"flow", WF_TEXT("Measured flow"),
                WF_TEXT("By sump drawdown with the make-up shut, or by meter. Checks the stopwatch; a second "
                        "opinion."),
                1e-6, 0.1},
          flow.flow);
    visit(Field{"drawdown_fall", WF_TEXT("Sump drawdown: fall of the level"),
                WF_TEXT(
                    "Make-up shut, from the pump's start and only until water comes back from the pads. The "
                    "surest way to a pump's flow; needs the sump's water surface."),
                0.005, 2.0, Scale::fine},
          flow.drawdown_fall);
    visit(Field{"drawdown_time", WF_TEXT("Sump drawdown: time"), "", 5.0, 1.0 * hours}, flow.drawdown_time);
    visit(Field{"meter_volume", WF_TEXT("By meter: volume"), "", 0.001, 100.0}, flow.meter_volume);
    visit(Field{"meter_time", WF_TEXT("By meter: time"), "", 5.0, 24.0 * hours}, flow.meter_time);
    visit(Field{"bucket_volume", WF_TEXT("By bucket under the whole flow: volume"),
                WF_TEXT("Quick, but sure to 5 % only."), 0.001, 1.0},
          flow.bucket_volume);
    visit(Field{"bucket_time", WF_TEXT("By bucket: time to fill"), "", 1.0, 1.0 * hours}, flow.bucket_time);
    visit(Field{"lost", WF_TEXT("Lost by leaks and drift"),
                WF_TEXT("Carries salts away as bleed does; without it, none is assumed."), 0.0, 0.02},
          flow.lost);
}

template <class R, class V>
requires RecordOf<R, FacePoint>
void each_field(R& point, V&& visit) {
    visit(Field{"speed", WF_TEXT("Air speed at the pad face"),
                WF_TEXT("At least five points along the pad; the speed changes a lot from one to the next."),
                0.0, 10.0},
          point.speed);
}

template <class R, class V>
requires RecordOf<R, OutletCatch>
void each_field(R& caught, V&& visit) {
    visit(Field{"at", WF_TEXT("Outlet caught at"), WF_TEXT("From the pump end. Catch 30 to 60 s at each."),
                0.0, 200.0},
          caught.at);
    visit(Field{"volume", WF_TEXT("volume caught"), "", 1e-5, 0.1, Scale::fine}, caught.volume);
    visit(Field{"time", WF_TEXT("time to fill"), "", 1.0, 1.0 * hours}, caught.time);
}

template <class R, class V>
requires RecordOf<R, BankConditions>
void each_field(R& at, V&& visit) {
    visit(Field{"bank", ""}, at.bank);
    visit(Field{"behind_pad", WF_TEXT("Temperature behind this pad"),
                WF_TEXT("One bank against another; without it, the one for all banks counts."),
                celsius_zero - 10.0, celsius_zero + 50.0},
          at.behind_pad);
    visit(Field{"pressure_drop", WF_TEXT("Pressure drop through this pad"),
                WF_TEXT("From outside to just behind it; rises as a pad clogs."), 0.0, 500.0},
          at.pressure_drop);
    visit(Field{"inlet_head", WF_TEXT("Head of water at the header's inlet"),
                WF_TEXT("Where no flow was measured, the header's flow is worked out from it."), 0.0, 30.0},
          at.inlet_head);
    visit(Field{"face_points", WF_TEXT("Air speed at the pad face")}, at.face_points);
    visit(Field{"catches", WF_TEXT("Water caught at outlets")}, at.catches);
}

template <class R, class V>
requires RecordOf<R, Conditions>
void each_field(R& conditions, V&& visit) {
    visit(Field{"outside_dry_bulb", WF_TEXT("Outside temperature"),
                WF_TEXT("Today's weather against the design day; without it no cycle is advised."),
                celsius_zero - 40.0, celsius_zero + 55.0},
          conditions.outside_dry_bulb);
    visit(
        Field{"outside_humidity", WF_TEXT("Outside relative humidity"),
              WF_TEXT("Today's weather against the design day; without it no cycle is advised."), 0.01, 1.0},
        conditions.outside_humidity);
    visit(Field{"outside_wet_bulb", WF_TEXT("Outside wet bulb"),
                WF_TEXT("In place of the humidity; counts only where that is not entered."),
                celsius_zero - 40.0, celsius_zero + 50.0},
          conditions.outside_wet_bulb);
    visit(Field{"outside_dew_point", WF_TEXT("Outside dew point"),
                WF_TEXT(
                    "In place of the humidity; counts only where neither that nor the wet bulb is entered."),
                celsius_zero - 40.0, celsius_zero + 45.0},
          conditions.outside_dew_point);
    visit(Field{"barometer", WF_TEXT("Barometer"),
                WF_TEXT("Station pressure; without it, from the farm's elevation."), 60e3, 110e3},
          conditions.barometer);
    visit(Field{"behind_pad", WF_TEXT("Temperature behind the pad"),
                WF_TEXT("Measures how well the pad cools; without it, the published value for new pads or 75 "
                        "% is assumed."),
                celsius_zero - 10.0, celsius_zero + 50.0},
          conditions.behind_pad);
    visit(Field{"house_temperature", WF_TEXT("House temperature"), "", celsius_zero - 10.0,
                celsius_zero + 55.0},
          conditions.house_temperature);
    visit(Field{"house_humidity", WF_TEXT("House relative humidity"), "", 0.01, 1.0},
          conditions.house_humidity);
    visit(Field{"static_pressure", WF_TEXT("Static pressure"), WF_TEXT("Compared with earlier visits."), 0.0,
                500.0},
          conditions.static_pressure);
    visit(Field{"face_velocity", WF_TEXT("Air speed at the pad face"),
                WF_TEXT("Mean of at least five points; for the expected cooling."), 0.1, 5.0},
          conditions.face_velocity);
    visit(Field{"thermometer_accuracy", WF_TEXT("Thermometer good to"),
                WF_TEXT("For how sure the measured cooling is; without it, 0.5 °C (0.9 °F) is assumed."),
                0.01, 5.0},
          conditions.thermometer_accuracy);
    visit(Field{"hygrometer_accuracy", WF_TEXT("Hygrometer good to"),
                WF_TEXT("For how sure the measured cooling is; without it, 3 % is assumed."), 0.001, 0.2},
          conditions.hygrometer_accuracy);
    visit(Field{"bird_age_days", WF_TEXT("Age of the birds in days"), "", 0.0, 700.0},
          conditions.bird_age_days);
    visit(Field{"flows", WF_TEXT("Measured flow")}, conditions.flows);
    visit(Field{"at_banks", ""}, conditions.at_banks);
    visit(Field{"hardness", WF_TEXT("Hardness as CaCO3"), "", 0.0, 5.0}, conditions.hardness);
    visit(Field{"calcium_hardness", WF_TEXT("Calcium hardness as CaCO3"),
                WF_TEXT("For the scaling indices; without it, the whole hardness is assumed to be calcium."),
                0.0, 5.0},
          conditions.calcium_hardness);
    visit(Field{"alkalinity", WF_TEXT("Alkalinity as CaCO3"), WF_TEXT("For the scaling indices."), 0.0, 5.0},
          conditions.alkalinity);
    visit(Field{"dissolved_solids", WF_TEXT("Dissolved solids"),
                WF_TEXT("For the scaling indices; without it, from the conductivity."), 0.0, 20.0},
          conditions.dissolved_solids);
    visit(Field{"ph", WF_TEXT("pH of the make-up water"), "", 0.0, 14.0}, conditions.ph);
    visit(Field{"conductivity", WF_TEXT("Conductivity of the make-up water"),
                WF_TEXT("With the sump's: how far salts have gathered."), 0.0, 10.0},
          conditions.conductivity);
    visit(Field{"sump_ph", WF_TEXT("pH of the sump"),
                WF_TEXT("Rises as salts gather; without it, the indices are those of the make-up water."),
                0.0, 14.0},
          conditions.sump_ph);
    visit(Field{"sump_conductivity", WF_TEXT("Conductivity of the sump"),
                WF_TEXT("With that of the make-up water: how far salts have gathered."), 0.0, 20.0},
          conditions.sump_conductivity);
    visit(Field{"sump_temperature", WF_TEXT("Temperature of the sump"),
                WF_TEXT("For the scaling indices; without it, 25 °C (77 °F) is assumed."), celsius_zero,
                celsius_zero + 50.0},
          conditions.sump_temperature);
}

template <class R, class V>
requires RecordOf<R, BootTime>
void each_field(R& at, V&& visit) {
    visit(Field{"boot_id", ""}, at.boot_id);
    visit(Field{"boot_ns", ""}, at.boot_ns);
}

template <class R, class V>
requires RecordOf<R, Mark>
void each_field(R& mark, V&& visit) {
    visit(Field{"id", ""}, mark.id);
    visit(Field{"kind", ""}, mark.kind);
    visit(Field{"pump", ""}, mark.pump);
    visit(Field{"bank", ""}, mark.bank);
    visit(Field{"at", ""}, mark.at);
    visit(Field{"wall", ""}, mark.wall);
    visit(Field{"timed_by", ""}, mark.timed_by);
    visit(Field{"stamp_error_ns", ""}, mark.stamp_error_ns);
    visit(Field{"seen", ""}, mark.seen);
    visit(Field{"undone", ""}, mark.undone);
    visit(Field{"started_by", ""}, mark.started_by);
    visit(Field{"pads", ""}, mark.pads);
    visit(Field{"fans_running", ""}, mark.fans_running);
    visit(Field{"proof", ""}, mark.proof);
}

template <class R, class V>
requires RecordOf<R, SetAside>
void each_field(R& set_aside, V&& visit) {
    visit(Field{"end_mark", ""}, set_aside.end_mark);
    visit(Field{"reason", WF_TEXT("Reason")}, set_aside.reason);
}

template <class R, class V>
requires RecordOf<R, ProofNotes>
void each_field(R& notes, V&& visit) {
    visit(Field{"timer", ""}, notes.timer);
    visit(Field{"bank", ""}, notes.bank);
    visit(Field{"even_drip", WF_TEXT("The far end drips evenly before the pump stops")}, notes.even_drip);
    visit(Field{"dry_patch", WF_TEXT("A dry patch somewhere on the face")}, notes.dry_patch);
    visit(Field{"cycles_since_change", WF_TEXT("First run watched, counted from the last change"),
                WF_TEXT("1: the first run after a setting was changed. Runs before the third are not judged: "
                        "the pads need them to settle."),
                1.0, 10'000.0},
          notes.cycles_since_change);
    visit(Field{"answered", ""}, notes.answered);
}

template <class R, class V>
requires RecordOf<R, Signature>
void each_field(R& signature, V&& visit) {
    visit(Field{"person", ""}, signature.person);
    visit(Field{"at", ""}, signature.at);
    visit(Field{"drawn", ""}, signature.drawn);
}

template <class R, class V>
requires RecordOf<R, Photo>
void each_field(R& photo, V&& visit) {
    visit(Field{"sha256", ""}, photo.sha256);
    visit(Field{"bank", WF_TEXT("Pad bank")}, photo.bank);
    visit(Field{"finding", WF_TEXT("Finding")}, photo.finding);
    visit(Field{"note", WF_TEXT("Note")}, photo.note);
    visit(Field{"added", ""}, photo.added);
}

template <class R, class V>
requires RecordOf<R, Visit>
void each_field(R& visited, V&& visit) {
    visit(Field{"id", ""}, visited.id);
    visit(Field{"house", ""}, visited.house);
    visit(Field{"started", ""}, visited.started);
    visit(Field{"persons", WF_TEXT("Persons")}, visited.persons);
    visit(Field{"instruments", WF_TEXT("Instruments")}, visited.instruments);
    visit(Field{"agreement", ""}, visited.agreement);
    visit(Field{"ticks", ""}, visited.ticks);
    visit(Field{"conditions", ""}, visited.conditions);
    visit(Field{"marks", ""}, visited.marks);
    visit(Field{"set_aside", ""}, visited.set_aside);
    visit(Field{"found", WF_TEXT("Settings found")}, visited.found);
    visit(Field{"left", WF_TEXT("Settings left")}, visited.left);
    visit(Field{"proof", WF_TEXT("Proof run")}, visited.proof);
    visit(Field{"open_points", WF_TEXT("Open points")}, visited.open_points);
    visit(Field{"photos", WF_TEXT("Photos")}, visited.photos);
    visit(Field{"signatures", ""}, visited.signatures);
    visit(Field{"replaces", ""}, visited.replaces);
}

template <class R, class V>
requires RecordOf<R, VisitFile>
void each_field(R& file, V&& visit) {
    visit(Field{"farm", ""}, file.farm);
    visit(Field{"house", ""}, file.house);
    visit(Field{"visit", ""}, file.visit);
}

template <class R, class V>
requires RecordOf<R, TemplateSetting>
void each_field(R& setting, V&& visit) {
    visit(Field{"setting", WF_TEXT("Setting")}, setting.setting);
    visit(Field{"label", WF_TEXT("Label"), WF_TEXT("As the controller writes it.")}, setting.label);
    visit(Field{"unit", WF_TEXT("Unit"),
                WF_TEXT("s, min or h; degC or degF; %. Left out for a time of day, whose numbers are minutes "
                        "after midnight.")},
          setting.unit);
    visit(Field{"resolution", WF_TEXT("Smallest step"), WF_TEXT("In that unit."), 1e-3, 1e5},
          setting.resolution);
    visit(Field{"least", WF_TEXT("Least"), WF_TEXT("In that unit; steps count from it."), -1e5, 1e5},
          setting.least);
    visit(Field{"most", WF_TEXT("Most"), WF_TEXT("In that unit."), -1e5, 1e5}, setting.most);
    visit(Field{"note", WF_TEXT("Note")}, setting.note);
}

template <class R, class V>
requires RecordOf<R, SettingTemplate>
void each_field(R& described, V&& visit) {
    visit(Field{"id", ""}, described.id);
    visit(Field{"name", WF_TEXT("Name")}, described.name);
    visit(Field{"note", WF_TEXT("Note")}, described.note);
    visit(Field{"kind", WF_TEXT("Kind of timer")}, described.kind);
    visit(Field{"counts_from", WF_TEXT("Its on-time counts from")}, described.counts_from);
    visit(Field{"trim_rows", WF_TEXT("Trim rows"), WF_TEXT("How many it has."), 1.0, 4.0},
          described.trim_rows);
    visit(Field{"settings", WF_TEXT("Settings"), WF_TEXT("In the order in which the controller asks.")},
          described.settings);
    visit(Field{"dependencies", WF_TEXT("What it demands between settings")}, described.dependencies);
}

template <class R, class V>
requires RecordOf<R, TemplateFile>
void each_field(R& file, V&& visit) {
    visit(Field{"format_version", "", "", 1.0, template_format_version}, file.format_version);
    visit(Field{"template", ""}, file.setting_template);
}

}  // namespace wetfront
