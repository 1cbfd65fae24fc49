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
    std::vector<Maintenance> events;  ///< that concern it, the earliest first

    /// What is judged: after an event another thing is measured, which says nothing about what it was before.
    [[nodiscard]] std::span<const VisitValue> since_last_event() const;
};

/// Whether such work makes the quantity another one, so that a trend across it means nothing. Common
/// practice, no source:
/// - clean outlets: all of them; more water comes out sooner, and dry streaks go
/// - new pads: wetting, wet-through and effectiveness; header and pump stay what they were
/// - a new pump: fill, wetting, wet-through and flow; a wet pad cools the same with more water
/// - anything else: all of them, as nobody said what it changed
[[nodiscard]] bool concerns(Upkeep what, Followed followed);

/// The visits that no other one corrects, the earliest first. They point into `visits`.
[[nodiscard]] std::vector<const VisitFile*> standing_visits(std::span<const VisitFile> visits);

/// The series of a house's banks: those quantities of which a visit measured at least one, in the order of
/// the house's banks. Of a visit and its corrections the last correction counts. Flow is what was measured,
/// not what was worked out; effectiveness too. `house` is as it is now: a bank that is not in it any more has
/// no series, and its maintenance splits the series. `visits`: of that house, in any order.
[[nodiscard]] std::vector<BankSeries> history_of(const House& house, std::span<const VisitFile> visits);

/// Those values over time in years of 365.25 days since the first of them.
[[nodiscard]] std::vector<DatedValue> dated(std::span<const VisitValue> values);
/// The moment that lies so many years after the first of the values, of which there is one at least.
[[nodiscard]] WallTime moment_at(std::span<const VisitValue> values, double years);

/// The trend of what is judged; two visits at the same moment are an error.
[[nodiscard]] Result<Trend> trend_of(const BankSeries& series);

/// Values before it that say what the later ones are held against.
inline constexpr std::size_t fewest_before_a_change = 3;
/// The first lasting shift in what is judged of a series, its index counted in that, against the mean of its
/// first three values, by a cumulative sum with k = 0.5 and h = 5 standard deviations (NIST/SEMATECH
/// e-Handbook 6.3.2.3 names h of 4 or 5). The standard deviation is that of the first three values'
/// uncertainties, half of an expanded one each (k = 2, assumed). None also where these are not known.
[[nodiscard]] Result<std::optional<Change>> change_of(const BankSeries& series);

}  // namespace wetfront
