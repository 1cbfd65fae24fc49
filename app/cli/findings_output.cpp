// SPDX-License-Identifier: Apache-2.0
#include "cli/findings_output.h"

#include <ostream>

namespace wetfront {
namespace {

JsonObject id_or_null(const Id& id) {
    return id.empty() ? JsonObject(nullptr) : JsonObject(id.text);
}

std::string place_of(const Finding& finding, const House& house) {
    if (const auto* bank = house.bank(finding.bank)) {
        return bank->name.empty() ? bank->id.text : bank->name;
    }
    if (const auto* timer = house.timer(finding.timer)) {
        return timer->name.empty() ? timer->id.text : timer->name;
    }
    return house.name;
}

}  // namespace

JsonObject findings_json(const std::vector<Finding>& findings, const House& house, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& finding : findings) {
        JsonObject values = JsonObject::object();
        for (const auto& value : finding.values) {
            values[file_key(value.name, value.value.kind)] = file_number(value.value);
        }
        JsonObject causes = JsonObject::array();
        for (const auto& likely : finding.causes) {
            causes.push_back({{"cause", in_english(likely.cause, units)},
                              {"next_check", in_english(likely.next_check, units)}});
        }
        list.push_back({{"rule", finding.rule},
                        {"severity", std::string{name_of(finding.severity)}},
                        {"timer", id_or_null(finding.timer)},
                        {"bank", id_or_null(finding.bank)},
                        {"where", place_of(finding, house)},
                        {"message", in_english(finding.message, units)},
                        {"remedy", in_english(finding.remedy, units)},
                        {"source", finding.source},
                        {"values", std::move(values)},
                        {"causes", std::move(causes)}});
    }
    return list;
}

void print_findings(std::ostream& out, const std::vector<Finding>& findings, const House& house,
                    UnitSystem units) {
    for (const auto& finding : findings) {
        out << name_of(finding.severity) << ": " << place_of(finding, house) << " (" << finding.rule << ")\n";
        out << "  " << in_english(finding.message, units) << '\n';
        if (!finding.remedy.empty()) {
            out << "  do: " << in_english(finding.remedy, units) << '\n';
        }
        for (const auto& likely : finding.causes) {
            out << "  likely: " << in_english(likely.cause, units)
                << " Check: " << in_english(likely.next_check, units) << '\n';
        }
        out << "  source: " << finding.source << '\n';
    }
}

}  // namespace wetfront
