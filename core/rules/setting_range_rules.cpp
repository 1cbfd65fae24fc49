// SPDX-License-Identifier: Apache-2.0
#include "rules/setting_range_rules.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "cycle/template_steps.h"
#include "records/setting_ranges.h"
#include "rules/timer_view.h"

namespace wetfront {
namespace {

/// Pads never run by it, however hot it gets.
bool bars_pads(std::string_view key, bool above) {
    return above ? key == "start_temperature" || key == "lowest_house_temperature"
                 : key == "humidity_cut_off";
}

/// What the controller was told or shows: nothing runs by it.
bool is_evidence(std::string_view key) {
    constexpr std::array evidence{std::string_view{"entered_fill"}, std::string_view{"entered_wet_through"},
                                  std::string_view{"shown_on_time"}};
    return std::ranges::find(evidence, key) != evidence.end();
}

/// "Trim row 2, On-time changes by".
Message name_of(const UnusualSetting& unusual) {
    const Message label{unusual.field.label};
    return unusual.row == 0 ? label : Message{WF_TEXT("Trim row %1: %2"), {unusual.row, label}};
}

Message what_it_does(std::string_view key, bool above) {
    if (bars_pads(key, above)) {
        return WF_TEXT("If it stands there, pads never run, however hot it gets.");
    }
    if (is_evidence(key)) {
        return WF_TEXT("It tells nothing about the pads.");
    }
    return WF_TEXT("If it stands there, the timer does not do what was meant.");
}

std::optional<AnyQuantity> advised_for(const TimerView& view, const UnusualSetting& unusual) {
    const auto setting =
        std::ranges::find(all_settings, unusual.field.key, [](Setting each) { return key_of(each); });
    return setting == all_settings.end() ? std::nullopt : view.advised(*setting);
}

Finding finding_about(const TimerView& view, const UnusualSetting& unusual) {
    const std::string_view key = unusual.field.key;
    const auto& value = unusual.value;
    const auto limit = [&](double si) { return AnyQuantity{value.kind, si, value.scale}; };
    const bool above = value.si > unusual.field.most;
    auto finding = finding_on(view, nullptr, "setting-out-of-range",
                              bars_pads(key, above) ? Severity::harm
                              : is_evidence(key)    ? Severity::note
                                                    : Severity::fault);
    finding.message = {
        WF_TEXT("%1 of %2 is outside what is usual, %3 to %4: kept as found, and nothing else is "
                "judged by it. %5"),
        {name_of(unusual), value, limit(unusual.field.least), limit(unusual.field.most),
         what_it_does(key, above)}};
    if (const auto advised = advised_for(view, unusual)) {
        finding.remedy = {
            WF_TEXT("Read it again at the controller; if it stands there, set it to %1, as advised."),
            {*advised}};
    } else {
        finding.remedy =
            WF_TEXT("Read it again at the controller, its unit too; if it stands there, correct it there.");
    }
    finding.source = "range of what is usual: ours, wide on purpose, no source";
    finding.values = {{std::string{key}, value},
                      {"least", limit(unusual.field.least)},
                      {"most", limit(unusual.field.most)}};
    return finding;
}

bool lies_beyond(const TemplateSetting& setting, const AnyQuantity& value) {
    return !step_for(setting, value, StepDirection::up) || !step_for(setting, value, StepDirection::down);
}

Finding finding_about(const TimerView& view, const TemplateSetting& setting, const AnyQuantity& value) {
    const auto least = quantity_of(setting, *setting.least);
    const auto most = last_step(setting);
    auto finding = finding_on(view, nullptr, "setting-not-on-controller", Severity::note);
    finding.message = {
        WF_TEXT("%1 (%2) of %3 cannot stand in this controller as it is described: it holds %4 to "
                "%5."),
        {label_of(setting.setting), setting.label, value, least, most}};
    finding.remedy =
        WF_TEXT("Read it again at the controller; if it stands there, correct the setting template.");
    finding.source = "the setting template chosen for this timer";
    finding.values = {{"found", value}, {"least", least}, {"most", most}};
    return finding;
}

}  // namespace

std::vector<Finding> setting_out_of_range(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        for (const auto& unusual : unusual_settings(view.on_controller)) {
            findings.push_back(finding_about(view, unusual));
        }
    }
    return findings;
}

std::vector<Finding> setting_not_on_controller(const RuleInputs& inputs) {
    std::vector<Finding> findings;
    for (const auto& view : timers_with_settings(inputs)) {
        const auto* described = described_controller(view.timer);
        if (described == nullptr) {
            continue;
        }
        for (const auto& setting : described->settings) {
            const bool of_rows = setting.setting == TemplateKey::trim_above_target ||
                                 setting.setting == TemplateKey::trim_change;
            const auto rows = of_rows ? view.on_controller.trim_rows.size() : std::size_t{1};
            for (std::size_t row = 0; row < rows; ++row) {
                const auto value = held(view.on_controller, setting.setting, row);
                if (value && lies_beyond(setting, *value)) {
                    findings.push_back(finding_about(view, setting, *value));
                }
            }
        }
    }
    return findings;
}

}  // namespace wetfront
