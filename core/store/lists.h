// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>
#include <vector>

#include "store/rows.h"
#include "store/store.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

[[nodiscard]] std::vector<HouseSummary> house_list(Statements& sql);
[[nodiscard]] std::vector<VisitSummary> visit_list(Statements& sql, const Id& house);
/// Visits that nobody has signed, latest first; of latest_marks those alone that have some of these.
[[nodiscard]] std::vector<Id> open_visits(Statements& sql, TimedIn where);

/// Order of names for people: numbers in them count as numbers ("House 2" before "House 10"), ASCII letters
/// alike in either case. Equal names go by id.
[[nodiscard]] bool comes_before(std::string_view a, const Id& id_a, std::string_view b, const Id& id_b);

}  // namespace wetfront::store_detail
