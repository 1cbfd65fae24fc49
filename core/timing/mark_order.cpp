// SPDX-License-Identifier: Apache-2.0
#include "timing/mark_order.h"

#include <algorithm>
#include <compare>
#include <map>
#include <tuple>

namespace wetfront {
namespace {

// Assumed: a hand that means two presses is slower, and a trembling one or a second finger is quicker.
constexpr double same_press_s = 0.3;

}  // namespace

Interval between(const Mark& from, const Mark& to) {
    const bool one_boot = from.at.boot_id == to.at.boot_id && from.timed_by != TimedBy::after_restart &&
                          to.timed_by != TimedBy::after_restart;
    // As doubles before the difference: a damaged file must not overflow it. Exact below 104 days of uptime.
    if (one_boot) {
        return {(static_cast<double>(to.at.boot_ns) - static_cast<double>(from.at.boot_ns)) / 1e9, true};
    }
    return {(static_cast<double>(to.wall.unix_ms) - static_cast<double>(from.wall.unix_ms)) / 1e3, false};
}

bool is_same_press(const Mark* before, const Mark& mark) {
    if (before == nullptr) {
        return false;
    }
    const auto gap = between(*before, mark);
    return gap.verified && gap.seconds <= same_press_s;
}

bool is_pump_event(const Mark& mark) {
    return mark.kind == MarkKind::pump_start || mark.kind == MarkKind::pump_stop;
}

bool ends_watching(const Mark& mark, MarksOf of) {
    return mark.kind == MarkKind::back_on_automatic ||
           (is_pump_event(mark) && mark.proof != (of == MarksOf::proof_run));
}

std::vector<const Mark*> in_time_order(std::span<const Mark> marks) {
    std::vector<const Mark*> order;
    std::map<std::string_view, const Mark*> first_of_boot;
    for (const auto& mark : marks) {
        if (mark.undone) {
            continue;
        }
        order.push_back(&mark);
        auto& first = first_of_boot[mark.at.boot_id];
        if (first == nullptr || std::tie(mark.at.boot_ns, mark.id) < std::tie(first->at.boot_ns, first->id)) {
            first = &mark;
        }
    }
    const auto key = [&](const Mark* mark) {
        return std::tuple{first_of_boot.at(mark->at.boot_id)->wall.unix_ms,
                          std::string_view{mark->at.boot_id}, mark->at.boot_ns, mark->kind,
                          std::string_view{mark->id.text}};
    };
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return key(a) < key(b); });
    return order;
}

const Id& pump_of(const Mark& mark, std::span<const BankOfPump> banks) {
    if (mark.pump.empty() && !mark.bank.empty()) {
        for (const auto& entry : banks) {
            if (entry.bank == mark.bank) {
                return entry.pump;
            }
        }
    }
    return mark.pump;
}

bool is_by_signal(StartedBy by) {
    switch (by) {
        case StartedBy::me_here:
        case StartedBy::me_then_walk:
            return false;
        case StartedBy::helper_signal:
        case StartedBy::controller:
            return true;
    }
    return true;
}

}  // namespace wetfront
