// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>

#include "records/visit.h"

namespace wetfront::test {

template <class Q>
[[nodiscard]] Optional<Q> typed(const char* text) {
    return Entered<Q>::parse(text, "test").value();
}

/// One run of a pump as it is marked for one bank, in seconds; what is not given is not marked.
struct MarkedRun {
    std::optional<double> fill = {};         ///< from the start
    std::optional<double> wet_through = {};  ///< from the start
    std::optional<double> run_off = {};      ///< from the stop
    std::optional<double> dry_out = {};      ///< from the stop
    PadsAtStart pads = PadsAtStart::dry;
    double runs_for = 600.0;
    double stands_for = 6000.0;  ///< until the next run of this pump
    Seen water_seen = Seen::as_it_happened;
    StartedBy started_by = StartedBy::me_here;
};

/// An invented house with a visit, as complete as a test wants it: `banks` shared evenly by `timers`, each
/// with a pump of its own. Ids are "bank-1", "pump-1", "timer-1" and so on.
class VisitBuilder {
public:
    explicit VisitBuilder(int banks = 1, int timers = 1, TimerKind kind = TimerKind::trimmed);

    [[nodiscard]] VisitFile& file() { return file_; }
    [[nodiscard]] PadBank& bank(int number) {
        return file_.house.banks.at(static_cast<std::size_t>(number - 1));
    }
    [[nodiscard]] Timer& timer(int number) {
        return file_.house.timers.at(static_cast<std::size_t>(number - 1));
    }

    /// Weather of the readings and of the design day; the design day evaporates more.
    VisitBuilder& both_weathers();

    /// Marks one run for one bank; the fans are off while it wets and on while it dries.
    VisitBuilder& run(int bank_number, const MarkedRun& run);

    /// Settings of timer `number` in `list` (found or left), made if there are none.
    [[nodiscard]] TimerSettings& settings(std::vector<TimerSettings>& list, int number = 1) {
        const auto id = timer(number).id;
        for (auto& each : list) {
            if (each.timer == id) {
                return each;
            }
        }
        list.emplace_back().timer = id;
        return list.back();
    }
    [[nodiscard]] TimerSettings& found(int number = 1) { return settings(file_.visit.found, number); }
    [[nodiscard]] TimerSettings& left(int number = 1) { return settings(file_.visit.left, number); }

private:
    Mark& mark(MarkKind kind, const PadBank& bank, double after_s);

    VisitFile file_;
    std::int64_t now_ns_ = 0;
};

}  // namespace wetfront::test
