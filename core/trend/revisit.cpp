// SPDX-License-Identifier: Apache-2.0
#include "trend/revisit.h"

#include <algorithm>

#include "trend/history_words.h"

namespace wetfront {
namespace {

constexpr std::int64_t day_ms = 86'400'000;

}  // namespace

Revisit revisit_after(WallTime latest, std::optional<Severity> worst_left, bool worsening) {
    const auto in_days = [&](std::int64_t days) {
        return WallTime{latest.unix_ms + days * day_ms, latest.utc_offset_minutes};
    };
    if (worst_left && *worst_left >= Severity::fault) {
        return {in_days(30), WF_TEXT("something that does not do its job was left")};
    }
    if (worsening) {
        return {in_days(182), WF_TEXT("its wetting gets worse over the years")};
    }
    return {in_days(365), WF_TEXT("once a year, before the next hot season")};
}

bool is_worsening(const House& house, std::span<const VisitFile> visits) {
    const auto trends = trends_of(house, visits);
    return trends && std::ranges::any_of(trends.value(), gets_worse);
}

}  // namespace wetfront
