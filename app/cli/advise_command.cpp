// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/findings_output.h"
#include "cli/template_output.h"
#include "cli/visit_source.h"
#include "cycle/advice.h"
#include "rules/rules.h"

namespace wetfront {
namespace {

struct AdviseOptions {
    std::string visit;
    std::optional<std::string> described_by;  ///< a template file
    bool explain = false;
};

JsonObject quantity_json(const std::optional<AnyQuantity>& quantity) {
    return quantity ? JsonObject(file_number(*quantity)) : JsonObject(nullptr);
}

JsonObject text_list(const std::vector<Message>& messages, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& message : messages) {
        list.push_back(in_english(message, units));
    }
    return list;
}

JsonObject inputs_json(const Reason& reason, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& input : reason.inputs) {
        list.push_back({{"name", in_english(input.name, units)},
                        {"symbol", input.symbol},
                        {"value", file_number(input.value)},
                        {"unit", file_unit(input.value.kind)},
                        {"origin", in_english(label_of(input.origin), units)},
                        {"source", input.source}});
    }
    return list;
}

JsonObject settings_json(const std::vector<SettingAdvice>& settings, const Id& timer, UnitSystem units) {
    JsonObject list = JsonObject::array();
    for (const auto& advice : settings) {
        const auto& reason = advice.reason;
        const auto& exact = reason.exact ? reason.exact : advice.value;
        list.push_back(
            {{"timer", timer.text},
             {"name", std::string{key_of(advice.setting)}},
             {"value", quantity_json(exact)},
             {"unit", advice.value ? JsonObject(file_unit(advice.value->kind)) : JsonObject(nullptr)},
             {"rounded", quantity_json(advice.value)},
             {"reason", in_english(reason.explanation, units)},
             {"rule", reason.rule},
             {"formula", reason.formula},
             {"inputs", inputs_json(reason, units)},
             {"source", reason.source}});
    }
    return list;
}

void append(JsonObject& list, const JsonObject& more) {
    list.insert(list.end(), more.begin(), more.end());
}

JsonObject bank_json(const BankAdvice& bank, const Id& timer, const House& house, UnitSystem units) {
    const auto* described = house.bank(bank.bank);
    const auto& bounds = bank.bounds;
    return {{"bank", bank.bank.text},
            {"name", described != nullptr ? described->name : std::string{}},
            {"timer", timer.text},
            {"decides", bank.decides},
            {"fits", bank.fits},
            {"need_s", json_seconds(bounds ? std::optional{bounds->need} : std::nullopt)},
            {"gap_bound_s", json_seconds(bounds ? std::optional{bounds->gap_bound} : std::nullopt)},
            {"uncertainty_s", json_seconds(bounds ? std::optional{bounds->uncertainty} : std::nullopt)},
            {"evaporated_share", bounds ? JsonObject(bounds->evaporated_share) : JsonObject(nullptr)},
            {"missing", text_list(bank.missing, units)},
            {"obstacles", text_list(bank.obstacles, units)}};
}

JsonObject advice_json(const VisitFile& file, const Advice& advice, const std::vector<Finding>& findings,
                       UnitSystem units) {
    JsonObject timers = JsonObject::array();
    JsonObject continuous = JsonObject::array();
    JsonObject cycle = JsonObject::array();
    JsonObject settings = JsonObject::array();
    JsonObject banks = JsonObject::array();
    for (const auto& timer : advice.timers) {
        const auto& ratio = timer.evaporation_ratio;
        const auto& fit = timer.fit;
        timers.push_back({{"timer", timer.timer.text},
                          {"cycled", timer.cycled},
                          {"verdict", in_english(timer.verdict, units)},
                          {"evaporation_ratio", ratio ? JsonObject(*ratio) : JsonObject(nullptr)},
                          {"notes", text_list(timer.notes, units)},
                          {"to_enter", fit ? fit_json(*file.house.timer(timer.timer)->controller, *fit, units)
                                           : JsonObject(nullptr)}});
        append(continuous, settings_json(timer.continuous, timer.timer, units));
        append(cycle, settings_json(timer.cycle, timer.timer, units));
        append(settings, settings_json(timer.when_pads_may_run, timer.timer, units));
        append(settings, settings_json(timer.cycled ? timer.cycle : timer.continuous, timer.timer, units));
        for (const auto& bank : timer.banks) {
            banks.push_back(bank_json(bank, timer.timer, file.house, units));
        }
    }
    return {{"visit", file.visit.id.text},
            {"timers", std::move(timers)},
            {"continuous", std::move(continuous)},
            {"cycle", std::move(cycle)},
            {"settings", std::move(settings)},
            {"banks", std::move(banks)},
            {"findings", findings_json(findings, file.house, units)},
            {"truth", in_english(advice.truth, units)},
            {"truth_source", advice.truth_source},
            {"assumed", text_list(advice.assumed, units)},
            {"missing", text_list(advice.missing, units)},
            {"notes", text_list(advice.notes, units)}};
}

/// The advice as text for one reader.
class AdviceText {
public:
    AdviceText(std::ostream& out, UnitSystem units, bool explain)
        : out_{out}, units_{units}, explain_{explain} {}

    void timer(const TimerAdvice& advice, const House& house) {
        const auto* described = house.timer(advice.timer);
        out_ << '\n' << (described != nullptr ? described->name : advice.timer.text) << '\n';
        out_ << "  " << english(advice.verdict) << '\n';
        if (!advice.when_pads_may_run.empty()) {
            settings("When pads may run", advice.when_pads_may_run);
        }
        if (advice.cycled) {
            settings("The best cycle", advice.cycle);
        }
        settings(advice.cycled ? "Or continuous pumping while pads are called for" : "Continuous pumping",
                 advice.continuous);
        list("To know:", advice.notes, "  ");
        for (const auto& bank : advice.banks) {
            list("Missing:", bank.missing, "  ");
            list("In the way of a cycle:", bank.obstacles, "  ");
        }
    }

    void list(const char* title, const std::vector<Message>& messages, const std::string& indent = "") {
        if (messages.empty()) {
            return;
        }
        out_ << indent << title << '\n';
        for (const auto& message : messages) {
            out_ << indent << "  - " << english(message) << '\n';
        }
    }

    void limits(const CycleMargins& margins) {
        out_ << "Margins and limits of the advice\n";
        for (const auto limit : all_limits) {
            const auto [text, origin, source] = limit_text(margins, limit);
            out_ << "  - " << english(text) << " (" << english(label_of(origin))
                 << (source.empty() ? "" : ": " + source) << ")\n";
        }
    }

    [[nodiscard]] std::string english(const Message& message) const { return in_english(message, units_); }

private:
    [[nodiscard]] std::string shown(const AnyQuantity& quantity) const {
        return show(quantity, units_).joined(units_);
    }

    void settings(const char* title, const std::vector<SettingAdvice>& all) {
        out_ << "  " << title << '\n';
        Message told;
        for (const auto& advice : all) {
            const auto label = english(label_of(advice.setting));
            const auto value = advice.value ? shown(*advice.value) : english(advice.reason.brief);
            out_ << "    " << label << std::string(label.size() < 32 ? 32 - label.size() : 1, ' ') << value
                 << '\n';
            if (advice.reason.explanation == told) {
                continue;
            }
            told = advice.reason.explanation;
            out_ << "      why: " << english(told) << '\n';
            if (explain_) {
                derivation(advice.reason);
            }
        }
    }

    void derivation(const Reason& reason) {
        out_ << "      rule: " << reason.rule << '\n';
        if (!reason.formula.empty()) {
            out_ << "      formula: " << reason.formula << '\n';
        }
        for (const auto& input : reason.inputs) {
            out_ << "        " << input.symbol << " = " << shown(input.value) << "   " << english(input.name)
                 << " (" << english(label_of(input.origin))
                 << (input.source.empty() ? "" : ": " + input.source) << ")\n";
        }
        if (reason.exact) {
            out_ << "      before rounding: " << shown(*reason.exact);
            if (reason.resolution && reason.rounding != Rounding::none) {
                out_ << ", rounded " << (reason.rounding == Rounding::up ? "up" : "down") << " to steps of "
                     << shown(*reason.resolution);
            }
            out_ << '\n';
        }
        if (!reason.source.empty()) {
            out_ << "      source: " << reason.source << '\n';
        }
    }

    std::ostream& out_;
    UnitSystem units_;
    bool explain_;
};

Result<ExitStatus> run_advise(const AdviseOptions& options, const Common& common) {
    WF_TRY(auto visit, load_visit(options.visit, common));
    auto& file = visit.file;
    std::optional<SettingTemplate> in_place;  // of what the visit says of its controllers
    if (options.described_by) {
        WF_TRY(in_place, load_template(*options.described_by));
        for (auto& timer : file.house.timers) {
            if (timer.kind == in_place->kind) {
                choose_controller(timer, *in_place);
            }
        }
    }
    const auto advice = advise(file);
    const auto findings = check(file, timings_of(file), advice, WhichSettings::found);
    if (common.json) {
        print_json(common.out(), advice_json(file, advice, findings, common.units));
        return ExitStatus::done;
    }
    auto& out = common.out();
    AdviceText text{out, common.units, options.explain};
    out << headline(file) << '\n';
    out << text.english(advice.truth) << '\n';
    out << "(" << advice.truth_source << ")\n";
    for (const auto& timer : advice.timers) {
        text.timer(timer, file.house);
        const auto* described = file.house.timer(timer.timer);
        if (in_place && described->kind != in_place->kind) {
            out << "  " << in_place->name << " describes another kind of timer.\n";
        }
        if (timer.fit) {
            print_fit(out, *described->controller, *timer.fit, common.units);
        }
    }
    if (advice.timers.empty()) {
        out << "The house has no timer described: nothing to advise.\n";
    }
    out << '\n';
    text.list("Missing for the whole visit:", advice.missing);
    text.list("To know:", advice.notes);
    text.list("Assumed, and can be changed:", advice.assumed);
    if (options.explain) {
        text.limits(advice.margins);
    }
    out << "\nOn the settings found:\n";
    print_findings(out, findings, file.house, common.units);
    if (findings.empty()) {
        out << "Nothing found.\n";
    }
    return ExitStatus::done;
}

}  // namespace

void add_advise(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("advise", "timer settings for a visit, each with its reason");
    const auto options = std::make_shared<AdviseOptions>();
    command->add_option("visit", options->visit, "a file, - or an id in the store")
        ->required()
        ->type_name("VISIT");
    command
        ->add_option("--template", options->described_by,
                     "a file that describes the controller, in place of what the visit says of it")
        ->type_name("FILE");
    command->add_flag("--explain", options->explain,
                      "print each derivation in full: formula, numbers, sources");
    command->footer("Example: wetfront-cli advise visit.json --explain --template controller.json");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_advise(*options, common); };
    });
}

}  // namespace wetfront
