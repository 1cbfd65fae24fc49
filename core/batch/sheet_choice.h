// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <span>
#include <string>
#include <vector>

#include "base/enum_names.h"
#include "store/store.h"

namespace wetfront {

/// Which visits of a house get a sheet: every signed one, or the last one, signed or not.
enum class SheetVisits { every_signed, last };
// clang-format off
template <> struct EnumNames<SheetVisits> { static constexpr std::array all{
    EnumName{SheetVisits::every_signed, "signed"}, EnumName{SheetVisits::last, "last"}}; };
// clang-format on

struct SheetChoice {
    SheetVisits visits = SheetVisits::every_signed;
    // Days as local_date() writes them, both with it; empty: open on that side.
    std::string from{};
    std::string until{};
};

/// Those houses and the houses of those farms, each once, in the order of the houses list; all of them where
/// neither is named. An id that is none of a house or farm is bad input.
[[nodiscard]] Result<std::vector<Id>> houses_chosen(const Store& store, std::span<const Id> houses,
                                                    std::span<const Id> farms);

/// The visits of one house that get a sheet, the earliest first. A visit that a correction replaces gets
/// none; of every_signed, where the correction is signed itself.
[[nodiscard]] Result<std::vector<Id>> visits_chosen(const Store& store, const Id& house,
                                                    const SheetChoice& choice);

/// A day, written as local_date() does; `item` names it in the error.
[[nodiscard]] Result<std::string> parse_day(std::string_view text, std::string_view item);

}  // namespace wetfront
