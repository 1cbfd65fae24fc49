// SPDX-License-Identifier: Apache-2.0
#include "records/setting_ranges.h"

#include "records/record_text.h"

namespace wetfront {
namespace {

/// Calls use(field, row, entry) for every quantity outside its usual range.
template <class Settings, class Use>
void each_unusual(Settings& settings, const Use& use) {
    const auto look = [&](const Field& field, int row, auto& member) {
        if constexpr (requires { member->value(); }) {
            if (member && field.kept && !in_range(field, any(member->value()).si)) {
                use(field, row, member);
            }
        }
    };
    each_field(settings, [&](const Field& field, auto& member) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(member)>, std::vector<TrimRow>>) {
            for (int row = 0; auto& each : member) {
                ++row;
                each_field(each, [&](const Field& in_row, auto& entry) { look(in_row, row, entry); });
            }
        } else {
            look(field, 0, member);
        }
    });
}

}  // namespace

std::vector<UnusualSetting> unusual_settings(const TimerSettings& settings) {
    std::vector<UnusualSetting> unusual;
    each_unusual(settings, [&](const Field& field, int row, const auto& entry) {
        unusual.push_back({field, row, any(entry->value(), field.scale)});
    });
    return unusual;
}

TimerSettings without_unusual(TimerSettings settings) {
    each_unusual(settings, [](const Field&, int, auto& entry) { entry.reset(); });
    return settings;
}

}  // namespace wetfront
