// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <random>
#include <string>
#include <vector>

#include "records/visit.h"

namespace wetfront {

/// What a bank would show to a person who never errs: seconds from pump start, and from pump stop.
struct BankTruth {
    Id bank;
    double fill;
    double wet_through;
    double run_off;
    double dry_out;
};

/// Makes the presses of one visit, with the scatter of a person who looks, walks and presses. The readings of
/// several pumps run side by side.
class StopwatchDay {
public:
    /// `name` starts the id of every mark; `seed` fixes the scatter.
    StopwatchDay(std::string name, WallTime start, unsigned seed);

    /// `repeats` runs from dry pads: start, water and drip at each bank, stop, end of drip and first dry
    /// patch with the fans running; then the pads dry on until the next start.
    void time_from_dry(const Id& pump, const std::vector<BankTruth>& banks, int repeats,
                       StartedBy started_by);

    /// `repeats` wet starts with birds in: the pump stands for `off` while the far end drips, and is started
    /// again. `drip_return` is what the banks take until the far end drips again.
    void time_from_wet(const Id& pump, const std::vector<BankTruth>& banks, double off, double drip_return,
                       int repeats);

    /// The pump goes back on automatic, and two runs later somebody watches its timer: a run at the far end
    /// of each bank, and the start of the next. `drips`: from the pump's start, bank by bank.
    void watch_cycles(const Id& pump, const std::vector<BankTruth>& banks, const std::vector<double>& drips,
                      double period, double on_time);

    [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
    /// The clock on the wall at the last press.
    [[nodiscard]] WallTime ended() const;

private:
    Mark& press(MarkKind kind, const Id& pump, const Id& bank, double at_s);
    void start(const Id& pump, PadsAtStart pads, bool fans, StartedBy started_by, double at_s);
    void stop(const Id& pump, bool fans, double at_s);
    [[nodiscard]] double scattered(double value, double spread);

    std::string name_;
    WallTime start_;
    std::mt19937 random_;
    std::map<Id, double> now_s_;  ///< by pump: since the visit's start
    std::vector<Mark> marks_;
};

}  // namespace wetfront
