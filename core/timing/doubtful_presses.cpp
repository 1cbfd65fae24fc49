// SPDX-License-Identifier: Apache-2.0
#include "timing/doubtful_presses.h"

#include "timing/mark_order.h"

namespace wetfront {

double soonest_s(MarkKind kind) {
    switch (kind) {
        case MarkKind::water_at_far_end:
            return 2.0;
        case MarkKind::far_end_drips:
            return 3.0;
        case MarkKind::drip_ends:
            return 1.0;
        case MarkKind::first_dry_patch:
            return 10.0;
        case MarkKind::pump_start:
        case MarkKind::pump_stop:
        case MarkKind::back_on_automatic:
            return 0.0;
    }
    return 0.0;
}

std::optional<PressDoubt> doubt_of(const Mark& mark, const Mark* since, const Mark* last) {
    if (is_same_press(since, mark) || is_same_press(last, mark)) {
        return PressDoubt::second_press;
    }
    if (since == nullptr || mark.seen == Seen::already_there || since->seen == Seen::already_there) {
        return std::nullopt;
    }
    const auto gap = between(*since, mark);
    return gap.verified && gap.seconds < soonest_s(mark.kind) ? std::optional{PressDoubt::too_soon}
                                                              : std::nullopt;
}

std::map<Id, PressDoubt> doubtful_presses(std::span<const Mark> marks, std::span<const BankOfPump> banks) {
    std::map<Id, PressDoubt> doubts;
    std::map<Id, const Mark*> since;  // of each pump
    std::map<Id, const Mark*> last;   // of each bank
    for (const auto* mark : in_time_order(marks)) {
        auto& switched = since[pump_of(*mark, banks)];
        if (mark->kind == MarkKind::back_on_automatic) {
            switched = nullptr;
            continue;
        }
        const bool switches = is_pump_event(*mark);
        auto* before = switches ? nullptr : last[mark->bank];
        const auto doubt = doubt_of(*mark, switched, before);
        if (doubt) {
            doubts.emplace(mark->id, *doubt);
        }
        if (!switches) {
            last[mark->bank] = mark;
        } else if (!doubt) {
            switched = mark;
        }
    }
    return doubts;
}

}  // namespace wetfront
