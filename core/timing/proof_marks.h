// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "timing/readings.h"

namespace wetfront {

/// What came to one bank in a watched run, from the pump's start.
struct WatchedBank {
    Id bank;
    std::optional<Duration> fill;  ///< water at the far end
    std::optional<Duration> drip;  ///< even drip at the far end
};

/// One run of a pump that its timer switched while somebody watched. A time is there only if both of its ends
/// were seen as they happened, on the clock of one boot, in order and at most 24 h apart.
struct WatchedRun {
    Id pump;
    Id start_mark;
    bool by_signal = true;           ///< the start reached the watcher by a signal or from the controller
    std::optional<Duration> period;  ///< to the pump's next start
    std::optional<Duration> on_time;
    std::vector<WatchedBank> banks;  ///< those that were marked

    [[nodiscard]] const WatchedBank* at(const Id& bank) const;
};

/// The runs of a proof, oldest first, from the marks of a proof run (any order; undone ones are left out). A
/// start opens a run that lasts to the pump's next start; a stop without a start before it belongs to none.
/// In a run the first stop and the first press for a bank and kind count; a doubtful press does not. A drip
/// that was marked before the water takes both with it. The pump's switching by hand, and its going back on
/// automatic, end the run: what came before says nothing of the period after.
[[nodiscard]] std::vector<WatchedRun> watched_runs(std::span<const Mark> marks,
                                                   std::span<const BankOfPump> banks);

}  // namespace wetfront
