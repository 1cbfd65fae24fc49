// SPDX-License-Identifier: Apache-2.0
#include "trend/settings_history.h"

#include <algorithm>
#include <string_view>
#include <type_traits>

#include "trend/house_history.h"

namespace wetfront {
namespace {

template <class T>
constexpr bool is_entry = false;
template <class Q>
constexpr bool is_entry<Optional<Q>> = true;

template <class Member>
void add(std::vector<HeldSetting>& held, const Field& field, const Member& member, int row) {
    if constexpr (is_entry<Member>) {
        if (member) {
            held.push_back({field, row, any(member->value(), field.scale)});
        }
    } else if constexpr (std::is_same_v<Member, std::optional<TimeOfDay>>) {
        if (member) {
            held.push_back({field, row, member->since_midnight()});
        }
    }
}

const HeldSetting* same(const std::vector<HeldSetting>& held, const HeldSetting& wanted) {
    const auto found = std::ranges::find_if(held, [&](const HeldSetting& each) {
        return std::string_view{each.field.key} == wanted.field.key && each.row == wanted.row;
    });
    return found == held.end() ? nullptr : &*found;
}

}  // namespace

std::vector<HeldSetting> held_settings(const TimerSettings& settings) {
    std::vector<HeldSetting> held;
    each_field(settings, [&]<class Member>(const Field& field, const Member& member) {
        if constexpr (std::is_same_v<Member, std::vector<TrimRow>>) {
            for (std::size_t i = 0; i < member.size(); ++i) {
                each_field(member[i], [&](const Field& part, const auto& value) {
                    add(held, part, value, static_cast<int>(i) + 1);
                });
            }
        } else if (std::string_view{field.key} != "shown_on_time") {
            add(held, field, member, 0);
        }
    });
    return held;
}

std::vector<SettingChange> changes_between(const TimerSettings& before, const TimerSettings& after) {
    const auto had = held_settings(before);
    const auto has = held_settings(after);
    std::vector<SettingChange> changes;
    for (const auto& now : has) {
        const auto* then = same(had, now);
        if (then == nullptr || then->value != now.value) {
            changes.push_back(
                {now.field, now.row, then == nullptr ? std::nullopt : std::optional{then->value}, now.value});
        }
    }
    for (const auto& then : had) {
        if (same(has, then) == nullptr) {
            changes.push_back({then.field, then.row, then.value, std::nullopt});
        }
    }
    return changes;
}

Message label_of(const SettingChange& change) {
    const Message label{change.field.label};
    return change.row == 0 ? label : Message{WF_TEXT("Trim row %1: %2"), {change.row, label}};
}

Message words_of(const SettingChange& change) {
    const auto label = label_of(change);
    if (!change.before) {
        return {WF_TEXT("%1: %2, not set before"), {label, *change.after}};
    }
    if (!change.after) {
        return {WF_TEXT("%1: %2, then not set"), {label, *change.before}};
    }
    return {WF_TEXT("%1: %2, then %3"), {label, *change.before, *change.after}};
}

std::vector<TimerHistory> settings_over_visits(const House& house, std::span<const VisitFile> visits) {
    const auto files = standing_visits(visits);
    std::vector<TimerHistory> all;
    for (const auto& timer : house.timers) {
        TimerHistory history{timer.id, {}};
        for (const auto* file : files) {
            const auto* found = file->visit.found_of(timer.id);
            const auto* left = file->visit.left_of(timer.id);
            if (found == nullptr && left == nullptr) {
                continue;
            }
            SettingsStand stand{
                file->visit.id, file->visit.started, left != nullptr ? *left : *found, {}, {}};
            const auto* before = history.stands.empty() ? nullptr : &history.stands.back().settings;
            if (found != nullptr && before != nullptr) {
                stand.meanwhile = changes_between(*before, *found);
            }
            if (const auto* had = found != nullptr ? found : before; had != nullptr && left != nullptr) {
                stand.by_visit = changes_between(*had, *left);
            }
            history.stands.push_back(std::move(stand));
        }
        if (!history.stands.empty()) {
            all.push_back(std::move(history));
        }
    }
    return all;
}

}  // namespace wetfront
