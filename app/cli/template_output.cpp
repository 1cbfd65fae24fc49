// SPDX-License-Identifier: Apache-2.0
#include "cli/template_output.h"

#include <ostream>

namespace wetfront {
namespace {

JsonObject quantity_or_null(const std::optional<AnyQuantity>& quantity) {
    return quantity ? JsonObject(file_number(*quantity)) : JsonObject(nullptr);
}

JsonObject sentences(const std::vector<Message>& messages, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& message : messages) {
        list.push_back(in_english(message, units));
    }
    return list;
}

}  // namespace

JsonObject fit_json(const SettingTemplate& described, const TemplateFit& fit, UnitSystem units) {
    JsonObject lines = JsonObject::array();
    for (const auto& line : fit.lines) {
        lines.push_back({{"label", line.label},
                         {"number", line.number},
                         {"unit", line.unit},
                         {"wanted", quantity_or_null(line.wanted)},
                         {"entered", quantity_or_null(line.entered)},
                         {"changes", sentences(line.changes, units)},
                         {"problems", sentences(line.problems, units)}});
    }
    return {{"template", described.name},
            {"fits", fit.fits()},
            {"lines", std::move(lines)},
            {"not_held", sentences(fit.not_held, units)}};
}

void print_fit(std::ostream& out, const SettingTemplate& described, const TemplateFit& fit,
               UnitSystem units) {
    out << "  To be entered, as " << described.name << " asks\n";
    for (const auto& line : fit.lines) {
        const auto pad = line.label.size() < 32 ? 32 - line.label.size() : 1;
        out << "    " << line.label << std::string(pad, ' ')
            << (line.number.empty() ? std::string{"nothing"} : line.number + " " + line.unit) << '\n';
        for (const auto& change : line.changes) {
            out << "      " << in_english(change, units) << '\n';
        }
        for (const auto& problem : line.problems) {
            out << "      cannot be held: " << in_english(problem, units) << '\n';
        }
    }
    for (const auto& missing : fit.not_held) {
        out << "    cannot be held: " << in_english(missing, units) << '\n';
    }
}

}  // namespace wetfront
