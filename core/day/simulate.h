// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <memory>
#include <span>

#include "base/result.h"
#include "day/day_house.h"
#include "day/day_result.h"
#include "day/weather.h"

namespace wetfront {

// What a house, its pads and its timers make of a weather.
//
// Air. Fans move a volume of outside air, as in pad/wet_pad.h. Each bank's share of it leaves the wet part of
// the face at the pad's effectiveness and the dry part as it came; both mix by enthalpy and vapour. Down the
// house the birds' sensible heat, at the mean of its two ends, and the building's gain warm it, and the
// birds' vapour is added: quasi-steady, without heat stored in house, litter or air. What air at the end of
// the house cannot hold counts as fog. Between two hours the weather changes evenly (day/weather.h); where
// that much vapour would not fit in, it is saturated air. Wet bulb, humidity and what pads evaporate are
// worked out at both ends and the middle of an hour, with parabolas between.
//
// Pads. All are bone dry at first. The wet share is phi of the wetting column at all times, also in the first
// run, as what evaporates has to be what the air takes up. A column is supplied from the arrival of the front
// to the stop of the pump; what it does not take up drips off. While a header fills, its outlets behind the
// front take their full share and the rest of the flow fills pipe, which sets what a header holds.
//
// Time. No step: between switchings columns, sensor and water are closed forms (drying is exact for any
// weather; supply above the constant-rate share takes the mean drying of at most 60 s). A piece in which pads
// are partly dry is cut so that the house's temperature is a parabola within it to about 1 mK; the sensor
// that follows it is closed form again. Thresholds are located to 1 ms.
//
// Not modelled: birds that move or grow, walls and litter that store heat, wind and leaks, air that bypasses
// pads, scale, weak outlets (each column gets the same).

struct SimulationChoice {
    Duration slot = seconds(3600.0);  ///< 60 to 3,600 s, a whole number of them in an hour
    bool keep_runs = false;           ///< every run of a pump in DayResult::runs
};

/// A house in a weather, ready to be asked for one plan after another: what does not depend on the plan is
/// worked out once, and a result that is handed in again is not allocated afresh. Not for two threads at
/// once.
class DaySimulator {
public:
    /// Errors: a value of the house outside its range, by name ("bank 2 wetting rate"); weather of less than
    /// 2 or more than 100,000 hours; air that the house heats beyond the range of moist air.
    [[nodiscard]] static Result<DaySimulator> of(const DayHouse& house, const Weather& weather,
                                                 const SimulationChoice& choice = {});
    DaySimulator(DaySimulator&&) noexcept;
    DaySimulator& operator=(DaySimulator&&) noexcept;
    ~DaySimulator();

    /// One plan for each timer of the house, in its order. `go_on` is asked with the share done about once a
    /// simulated day and may end it by `false`. Errors: a value of a plan outside its range ("timer 1
    /// period"); ended by `go_on` ("simulation"); pumps or fans that switch without end (a million times a
    /// day).
    [[nodiscard]] Result<void> run(std::span<const TimerPlan> plans, DayResult& into,
                                   const std::function<bool(double)>& go_on = {});

private:
    class Engine;
    explicit DaySimulator(std::unique_ptr<Engine> engine);
    std::unique_ptr<Engine> engine_;
};

/// The same once.
[[nodiscard]] Result<DayResult> simulate(const DayHouse& house, const Weather& weather,
                                         std::span<const TimerPlan> plans,
                                         const SimulationChoice& choice = {});

}  // namespace wetfront
