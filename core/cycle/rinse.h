// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "cycle/bank_cycle.h"

namespace wetfront {

/// How long one bank has to be rinsed in the morning (model rule 10): until a dry pad drips at its far end
/// with the fans on at the design hour, and until the header's water has been changed.
struct RinseNeed {
    Duration wet_through;  ///< fill, then wetting from bone dry against the fans (the wetting column)
    /// Three header volumes / flow (95 % of a dead-ended header is exchanged), or 3 t_fill.
    Duration exchange;
    bool exchange_from_flow = false;

    [[nodiscard]] Duration length() const { return wet_through + exchange; }
};

/// `header_exchange` is three header volumes over the bank's flow; none: flow or bore are unknown. Errors: a
/// wet start (nothing says how long a dry pad takes), drying that outruns supply, and those of best_cycle().
/// Simplifications: E of the design hour, though a morning is milder; the air behind a half-wet pad as behind
/// a wet one.
[[nodiscard]] Result<RinseNeed> rinse_need(const BankQuestion& bank, std::optional<Duration> header_exchange,
                                           const CycleMargins& margins);

/// True if a rinse of that length wets the whole pad, which is what it must not fall short of.
[[nodiscard]] bool covers_wet_through(const RinseNeed& need, Duration rinse);

}  // namespace wetfront
