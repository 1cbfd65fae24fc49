// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "pad/wetting_column.h"
#include "units/quantities.h"

namespace wetfront {

// What a day or a season is worked out from: plain values, nothing of records or forms. Whatever lies outside
// its range is an error that names it (DaySimulator::of(), run()).

/// One pad bank: equal columns along the header, each wetting and drying as in pad/wetting_column.h.
///
/// What a column dries by is what the air takes up: b = water evaporated by the bank / what it holds. So the
/// air and the pad never disagree, and b follows weather, airflow and effectiveness from minute to minute.
struct DayBank {
    double face_share = 1.0;  ///< of the house's air that goes through it, (0, 1]; over all banks they make 1
    Mass holds;               ///< D_cap L: from bone dry to even drip; above 0 (water_held())
    Rate wetting;             ///< a, above 0; a * holds is at most what the header brings
    double constant_share = 0.7;          ///< c, in (0, 1); assumed
    std::vector<Fraction> effectiveness;  ///< of the wet pad, (0, 1]: one for each fan stage, or one for all
    VolumeFlow flow;                      ///< into its header while the pump runs, above 0
    Duration riser = seconds(0.0);        ///< t_0: until water is at the header's inlet
    Duration fill;                        ///< t_fill: until it is at the far end; above t_0
    /// g, the share of t_fill - t_0 at which the front is at a share of the length: points rising from (0, 0)
    /// to (1, 1) with straight lines between. Empty: it moves evenly (assumed).
    std::vector<double> arrival_shares{};
    std::vector<double> arrival_times{};
};

/// D_cap L of a bank: at b per second it loses E A. Errors: a drying rate or a flux not above 0.
[[nodiscard]] Result<Mass> water_held(const ColumnRates& rates, EvaporationFlux flux, Area face);

/// A pump with its sump; all that it lifts goes to its banks.
struct DayPump {
    std::vector<std::size_t> banks;  ///< of DayHouse::banks; a bank hangs on one pump at most
    std::optional<Power> power;      ///< electric, above 0; none: no energy is counted
    /// Drawn off while the pump runs (assumed: where it is drawn off is not known), 0 or above.
    VolumeFlow bleed = from_si<VolumeFlow>(0.0);
};

struct DayTimer {
    std::vector<std::size_t> pumps;  ///< of DayHouse::pumps, which it switches together; each has one timer
};

/// Fans that run from so many degrees above target on. The first stage runs below them as well.
struct DayFanStage {
    TemperatureDifference above_target = from_si<TemperatureDifference>(0.0);  ///< rising from stage to stage
    VolumeFlow airflow;  ///< of all fans that run then, of outside air; above 0, rising
};

struct Flock {
    double birds = 0.0;              ///< number, 0 or above
    Mass mass = from_si<Mass>(0.0);  ///< of one, above 0 where there are birds; the same all the time
};

/// Above which hours are counted.
struct DayLimits {
    Temperature house = celsius(30.0);  ///< assumed: the warm end of the published band of start temperatures
    Temperature index = celsius(21.0);  ///< THI; Purswell et al. 2012, ILES12-0265: heavy broilers
    Fraction litter = from_si<Fraction>(0.8);  ///< humidity in the house from which litter gets wet; assumed
};

/// Money per unit; none: nothing is said of costs.
struct DayPrices {
    std::optional<double> energy;  ///< of a kWh, 0 or above
    std::optional<double> water;   ///< of a m3 taken in (evaporated and bled), 0 or above
};

struct DayHouse {
    std::vector<DayBank> banks;  ///< at least one
    int columns = 20;            ///< of each bank, 1 to 1,000
    std::vector<DayPump> pumps;
    std::vector<DayTimer> timers;

    std::vector<DayFanStage> fan_stages;  ///< at least one; one: these fans always run
    std::optional<Temperature> target;    ///< needed for more than one stage
    /// A stage ends so far below where it began; above 0; assumed.
    TemperatureDifference fan_band = from_si<TemperatureDifference>(0.5);

    Flock flock;
    /// Heat of sun and building to the house's air at the hottest hour; 0 or above. Over the day it goes as
    /// the published shares of the daily range (air/design_day.h): nothing at 5, all at 14 and 15 o'clock by
    /// the sun (assumed).
    Power building_gain = from_si<Power>(0.0);

    /// Time constant of the sensor that timer and fans go by, which hangs in the air at the end of the
    /// house: first order; 0: it shows that air at once, which several fan stages forbid.
    Duration sensor_lag = seconds(180.0);  ///< assumed
    Duration clock_ahead = seconds(0.0);   ///< of the timers' clocks ahead of the weather's, -3 h to 3 h
    Duration clock_ahead_of_sun = seconds(0.0);  ///< of the timers' clocks, 0 to 3 h; for the building's gain

    DayLimits limits;
    DayPrices prices;
};

enum class Pumping {
    in_cycles,     ///< runs of the on-time in every period, from when it is called
    while_called,  ///< on while called: on demand, and continuous pumping
    never,
};

/// Degrees above target and what the on-time changes by at a review; below 0 it gets shorter.
struct TrimStep {
    TemperatureDifference above_target;
    Duration change;
};

/// All that decides when one timer runs its pumps. Times of day have passed since midnight, by the timer's
/// clock. What a controller does that no record asks for is assumed, and said here.
struct TimerPlan {
    Pumping pumping = Pumping::never;

    // When pads may run. Called: from the start temperature on, until the sensor is `call_band` below it;
    // without a start temperature always. Whatever keeps pads off stops the pump at once, and the next call
    // begins with a whole run (assumed).
    std::optional<Temperature> start_temperature;
    TemperatureDifference call_band = from_si<TemperatureDifference>(1.0);  ///< above 0; assumed
    std::optional<Temperature> lowest_house_temperature;  ///< strictly below it off, from it on allowed
    std::optional<Fraction> humidity_cut_off;             ///< of the air outside: strictly above it off
    std::optional<Duration> hours_from;  ///< both or none; past midnight where `to` is the earlier one
    std::optional<Duration> hours_to;

    // How long; of runs in cycles. From pump start to stop.
    Duration period = seconds(300.0);  ///< 10 s or above
    Duration base = seconds(0.0);      ///< above 0; at the period or above: the pump never rests
    std::optional<Duration> ceiling;   ///< at least the base; none: the base

    // How it adapts. At each review, counted from the beginning of the call, the hottest row that the sensor
    // has reached changes the on-time, within base and ceiling; below target by more than the dead band the
    // first row that adds is taken back (assumed). A call begins with the base (assumed); a new on-time holds
    // from the next run on.
    std::optional<Temperature> target;                                      ///< needed where there are rows
    std::vector<TrimStep> trim_rows;                                        ///< rising
    TemperatureDifference dead_band = from_si<TemperatureDifference>(0.5);  ///< 0 or above; assumed
    Duration review_interval = seconds(600.0);                              ///< 10 s or above

    // One long run in place of the cycle, at the first moment of a day from `rinse_at` on at which pads are
    // called and allowed (assumed: a rinse does not run where they are not).
    std::optional<Duration> rinse_at;
    Duration rinse_length = seconds(0.0);
};

}  // namespace wetfront
