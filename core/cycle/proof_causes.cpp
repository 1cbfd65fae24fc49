// SPDX-License-Identifier: Apache-2.0
#include "cycle/proof_causes.h"

#include <algorithm>
#include <cmath>

// All of it: common practice, no source.
namespace wetfront {
namespace {

LikelyCause start_was_missed() {
    return {WF_TEXT("A start in between was not marked: what was seen is a whole number of periods."),
            WF_TEXT("Take that mark back and watch one more period from start to start.")};
}
LikelyCause period_taken_for_rest() {
    return {WF_TEXT("The controller takes what was entered as the period for the time between two runs."),
            WF_TEXT("Look up what its setting means; if it is the rest, enter period minus on-time.")};
}
LikelyCause wrong_period() {
    return {WF_TEXT("Another period stands in the controller than on the sheet."),
            WF_TEXT("Read the setting back on the controller, with its unit, and see that it was stored.")};
}
LikelyCause counts_from_full_header() {
    return {WF_TEXT("The controller counts the on-time from a full header: the run is longer by the fill "
                    "time."),
            WF_TEXT("Look up where its count starts; if so, take the fill time off what is entered.")};
}
LikelyCause entered_from_full_header() {
    return {
        WF_TEXT("The on-time was entered as counted from a full header, but the controller counts from the "
                "start: the run is shorter by the fill time."),
        WF_TEXT("Look up where its count starts; if so, add the fill time to what is entered.")};
}
LikelyCause wrong_on_time() {
    return {WF_TEXT("Another on-time stands in the controller than on the sheet."),
            WF_TEXT("Read the setting back on the controller, with its unit, and see that it was stored.")};
}
LikelyCause trimmed_already() {
    return {WF_TEXT("A review has trimmed the on-time already."),
            WF_TEXT("Read the on-time that the controller shows now and enter it as the shown on-time.")};
}
LikelyCause pump_starts_late() {
    return {WF_TEXT("The pump starts late or drops out: relay, contactor or overload."),
            WF_TEXT("Stand at the pump when the controller switches: is its output on and the pump still? "
                    "Relay, contactor and wiring are for a licensed electrician.")};
}
LikelyCause pump_stops_late() {
    return {
        WF_TEXT("The pump runs on after the controller has switched off: a contactor that sticks, or a hand "
                "switch."),
        WF_TEXT("Look at the hand switch first; contactor and wiring are for a licensed electrician.")};
}
LikelyCause called_off() {
    return {WF_TEXT("Something else switched the pump: start temperature, lowest house temperature, humidity "
                    "cut-off or pad hours."),
            WF_TEXT("Read house temperature, humidity and clock on the controller while you watch.")};
}
LikelyCause lost_priming() {
    return {
        WF_TEXT("The pump loses its water while it rests: a check or foot valve that leaks, or air on the "
                "suction side."),
        WF_TEXT("Listen at the start for a pump that runs dry, and watch the first outlets: spitting means "
                "air.")};
}
LikelyCause clogged_filter_or_valve() {
    return {WF_TEXT("Less flow than when it was timed: strainer, filter or a valve that is not fully open."),
            WF_TEXT("Clean strainer and filter, look at every handle, then time the fill again.")};
}
LikelyCause clogged_outlets() {
    return {
        WF_TEXT("Clogged outlets."),
        WF_TEXT("Look along the face from the side with the pump running, trace each dry streak up to its "
                "outlets, and flush the header.")};
}
LikelyCause blocked_distribution() {
    return {WF_TEXT("Water is led astray between header and pad, or the header does not hang level."),
            WF_TEXT("Look under the header's cover above the dry patch, and along it with a level.")};
}
LikelyCause not_wetted_before() {
    return {WF_TEXT("The pads were not wet through when the cycle began."),
            WF_TEXT("Run the pump until the far end drips evenly, let three cycles pass, then watch again.")};
}
LikelyCause drier_air() {
    return {WF_TEXT("The air is drier now than when the pads were timed."),
            WF_TEXT("Measure outside temperature and humidity again and enter them.")};
}
LikelyCause on_time_too_short() {
    return {WF_TEXT("The on-time is too short for these pads."),
            WF_TEXT("Time the water again, work out new settings and prove those.")};
}

/// The lines of one timer, and what each cause adds once.
class Causes {
public:
    Causes(const Timer& timer, const std::vector<ProofLine>& lines) : timer_{timer}, lines_{lines} {}

    std::vector<LikelyCause> all() {
        for (const auto what : {ProofQuantity::on_time, ProofQuantity::period, ProofQuantity::fill}) {
            for (const auto& line : lines_) {
                if (line.what == what && line.verdict == ProofVerdict::fail) {
                    add_of(line);
                }
            }
        }
        add_of_pads();
        return std::move(causes_);
    }

private:
    void add_of(const ProofLine& line) {
        switch (line.what) {
            case ProofQuantity::on_time:
                return add_of_on_time(line);
            case ProofQuantity::period:
                return add_of_period(line);
            case ProofQuantity::fill:
                add(lost_priming());
                add(pump_starts_late());
                return add(clogged_filter_or_valve());
            case ProofQuantity::drip_return:
            case ProofQuantity::drip_before_stop:
            case ProofQuantity::even_drip:
            case ProofQuantity::dry_patch:
                return;
        }
    }

    void add_of_on_time(const ProofLine& line) {
        const double seen = in_seconds(line.seen->mean);
        const bool longer = line.most && seen > in_seconds(*line.most);
        if (const auto fill = fill_of(line.pump)) {
            const double over = longer ? seen - in_seconds(*line.most) : in_seconds(*line.least) - seen;
            // As near to the fill time as on-times are compared at all, and as the fill time is known.
            const double near =
                in_seconds(line.tolerance) + in_seconds(line.expanded) + in_seconds(fill->expanded);
            if (std::abs(over - in_seconds(fill->mean)) <= near) {
                if (!longer) {
                    add(entered_from_full_header());
                } else if (!wetfront::counts_from_full_header(timer_)) {
                    add(counts_from_full_header());
                }
            }
        }
        if (timer_.kind == TimerKind::trimmed) {
            add(trimmed_already());
        }
        add(wrong_on_time());
        if (longer) {
            return add(pump_stops_late());
        }
        add(pump_starts_late());
        add(called_off());
    }

    void add_of_period(const ProofLine& line) {
        const double seen = in_seconds(line.seen->mean);
        const double set = in_seconds(*line.set);
        const double near = in_seconds(line.tolerance) + in_seconds(line.expanded);
        const double periods = std::round(seen / set);
        if (periods >= 2.0 && std::abs(seen - periods * set) <= periods * near) {
            add(start_was_missed());
        }
        const auto on = std::ranges::find_if(lines_, [&](const ProofLine& other) {
            return other.what == ProofQuantity::on_time && other.pump == line.pump && other.seen;
        });
        if (on != lines_.end() && std::abs(seen - set - in_seconds(on->seen->mean)) <= near) {
            add(period_taken_for_rest());
        }
        add(wrong_period());
        add(called_off());
    }

    void add_of_pads() {
        const auto failed = [&](ProofQuantity what) {
            return std::ranges::any_of(lines_, [&](const ProofLine& line) {
                return line.what == what && line.verdict == ProofVerdict::fail;
            });
        };
        const bool patch = failed(ProofQuantity::dry_patch) || failed(ProofQuantity::even_drip);
        const bool late = failed(ProofQuantity::drip_return) || failed(ProofQuantity::drip_before_stop);
        if (!patch && !late) {
            return;
        }
        add(clogged_outlets());
        if (patch) {
            add(blocked_distribution());
        }
        add(not_wetted_before());
        if (late) {
            add(drier_air());
        }
        if (!failed(ProofQuantity::on_time)) {
            add(on_time_too_short());
        }
    }

    /// What the readings, else the proof run, say of the fill of that pump's first bank with one.
    [[nodiscard]] std::optional<TimingResult> fill_of(const Id& pump) const {
        for (const auto& line : lines_) {
            if (line.what == ProofQuantity::fill && line.pump == pump && (line.most || line.seen)) {
                if (!line.most) {
                    return line.seen;
                }
                TimingResult fill;
                fill.mean = *line.most;
                fill.expanded = line.expected_expanded.value_or(seconds(0.0));
                return fill;
            }
        }
        return std::nullopt;
    }

    void add(LikelyCause cause) {
        if (std::ranges::find(causes_, cause) == causes_.end()) {
            causes_.push_back(std::move(cause));
        }
    }

    const Timer& timer_;
    const std::vector<ProofLine>& lines_;
    std::vector<LikelyCause> causes_;
};

}  // namespace

std::vector<LikelyCause> causes_of(const Timer& timer, const std::vector<ProofLine>& lines) {
    return Causes{timer, lines}.all();
}

}  // namespace wetfront
