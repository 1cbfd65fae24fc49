// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "base/enum_names.h"
#include "records/visit.h"
#include "trend/change.h"
#include "trend/trend.h"
#include "units/message.h"

namespace wetfront {

/// What is followed over the years, bank by bank.
enum class Followed { fill, wetting, wet_through, flow, effectiveness };
// clang-format off
template <> struct EnumNames<Followed> { static constexpr std::array all{
    EnumName{Followed::fill, "fill"}, EnumName{Followed::wetting, "wetting"},
    EnumName{Followed::wet_through, "wet-through"}, EnumName{Followed::flow, "flow"},
    EnumName{Followed::effectiveness, "effectiveness"}}; };
// clang-format on
[[nodiscard]] Message label_of(Followed what);

/// What one visit measured.
struct VisitValue {
    Id visit;
    WallTime at;  ///< the visit's start
    AnyQuantity value;
    std::optional<AnyQuantity> expanded;  ///< its expanded uncertainty; none: not known
};

/// One measured quantity of one bank, the earliest visit first.
struct BankSeries {
    Id bank;
    Followed what = Followed::fill;
    std::vector<VisitValue> values;
};

/// The series of a house's banks: those quantities of which a visit measured at least one, in the order of
/// the house's banks. Of a visit and its corrections the last correction counts. Flow is what was measured,
/// not what was worked out; effectiveness too. The house is that of the latest visit; a bank that is not in
/// it any more has no series. `visits`: of one house, in any order.
[[nodiscard]] std::vector<BankSeries> history_of(std::span<const VisitFile> visits);

/// A series' trend over time in years of 365.25 days since its first value; two visits at the same moment are
/// an error.
[[nodiscard]] Result<Trend> trend_of(const BankSeries& series);

/// Values before it that say what the later ones are held against.
inline constexpr std::size_t fewest_before_a_change = 3;
/// The first lasting shift of a series against the mean of its first three values, by a cumulative sum with
/// k = 0.5 and h = 5 standard deviations (NIST/SEMATECH e-Handbook 6.3.2.3 names h of 4 or 5). The standard
/// deviation is that of the first three values' uncertainties, half of an expanded one each (k = 2, assumed).
/// None also where these are not known.
[[nodiscard]] Result<std::optional<Change>> change_of(const BankSeries& series);

}  // namespace wetfront
