// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <ostream>

#include "base/numbers.h"
#include "cli/command.h"
#include "cli/quantity_lists.h"
#include "cli/results.h"
#include "water/filling.h"

namespace wetfront {
namespace {

using Text = std::optional<std::string>;

struct HeaderOptions {
    std::string length, bore, outlet_bore, outlet_spacing;
    Text discharge_coefficient, roughness, rise, clogged, static_recovery;
    Text flow, head, pump, static_lift, supply_length, supply_bore;
    bool explain = false;
};

constexpr std::array explanations{
    Explanation{
        "inlet head; flow; inlet velocity; lowest outlet; highest outlet; first outlet; last outlet; first "
        "outlet / last outlet; head at the first outlet; head at the last outlet",
        "outlet: q = Cd A sqrt(2 g h); friction from outlet to outlet: f (s / D) v^2 / (2 g); rise taken off "
        "evenly; solved from the closed end to the inlet",
        "orifice law and Darcy-Weisbach, textbook hydraulics; checked against EPANET 2.3.5",
        "steady flow of water at 20 degC, g = 9.80665 m/s2; no loss at the inlet; heads to 100 m"},
    Explanation{"friction factor f",
                "1/sqrt(f) = -2 log10(e / (3.7 D) + 2.51 / (Re sqrt(f))); 64 / Re for laminar flow",
                "Colebrook 1939, J. Inst. Civ. Eng. 11; Hagen and Poiseuille",
                "Re to 2,000 laminar, from 4,000 turbulent, a smooth curve between; e/D to 0.05"},
    Explanation{"static recovery", "past each outlet, k (v1^2 - v2^2) / (2 g) comes back as pressure",
                "Bernoulli's law; k itself is not published for such headers, so both ends are shown",
                "k from 0 (nothing comes back) to 1 (everything does)"},
    Explanation{"distribution uniformity", "mean of the lowest quarter of the outlets / mean of all",
                "Merriam and Keller 1978, low-quarter form (from memory)",
                "a quarter of n outlets is n / 4 rounded to the nearest, at least one"},
    Explanation{"Christiansen's uniformity", "1 - sum |q - mean| / (n mean)",
                "Christiansen 1942, Calif. Agric. Exp. Stn. Bull. 670", "any outlets, not all without water"},
    Explanation{"fill; water arrives",
                "the front moves with v = Q_front / A while the outlets behind it run; head at the front D / "
                "2; marched "
                "from the front to the inlet so that the inlet takes the flow",
                "mass balance with the laws above; our own derivation, no published table",
                "an empty header at a steady flow; riser and priming of the pump come on top"},
    Explanation{"pipe volume over flow", "pi D^2 L / (4 Q): filling without outlets", "volume over flow",
                "any; shorter than any real fill"},
    Explanation{"pump head; supply loss",
                "H_pump(Q) = lift + supply loss + inlet head; straight lines between the pump's points",
                "energy balance; loss in the supply pipe by Darcy-Weisbach",
                "inside the given points; bends and fittings are not counted"},
};

/// What was asked: the header, and what feeds it.
struct Question {
    Header header;
    std::optional<VolumeFlow> flow;
    std::optional<Length> head;
    std::optional<Supply> supply;
};

/// What one share of static recovery gives.
struct Answer {
    HeaderFlow at_work;
    std::optional<PumpedFlow> pumped;
    std::optional<Filling> filling;
    std::string not_filled;  ///< why there is no filling
};

Result<Supply> supply_of(const HeaderOptions& options) {
    Supply supply;
    WF_TRY(supply.pump, pump_points(*options.pump));
    WF_TRY(const auto lift, option_value<Length>(options.static_lift, "--static-lift"));
    WF_TRY(const auto length, option_value<Length>(options.supply_length, "--supply-length"));
    WF_TRY(const auto bore, option_value<Length>(options.supply_bore, "--supply-bore"));
    if (length.has_value() != bore.has_value()) {
        return bad_input(length ? "--supply-bore" : "--supply-length", "",
                         "missing; the supply pipe needs its length and its bore");
    }
    WF_TRY(const auto roughness, option_value<Length>(options.roughness, "--roughness"));
    supply.roughness = roughness.value_or(supply.roughness);
    supply.static_lift = lift.value_or(supply.static_lift);
    supply.pipe_length = length.value_or(supply.pipe_length);
    supply.pipe_bore = bore.value_or(supply.pipe_bore);
    return supply;
}

Result<Header> header_of(const HeaderOptions& options) {
    WF_TRY(const auto length, parse_quantity<Length>(options.length, "--length"));
    WF_TRY(const auto bore, parse_quantity<Length>(options.bore, "--bore"));
    WF_TRY(const auto outlet_bore, parse_quantity<Length>(options.outlet_bore, "--outlet-bore"));
    WF_TRY(const auto spacing, parse_quantity<Length>(options.outlet_spacing, "--outlet-spacing"));
    double coefficient = Outlet{}.discharge_coefficient;
    if (options.discharge_coefficient) {
        WF_TRY(coefficient, parse_number(*options.discharge_coefficient, "--discharge-coefficient"));
    }
    WF_TRY(auto header, even_header(length, bore, outlet_bore, spacing, coefficient));
    WF_TRY(const auto roughness, option_value<Length>(options.roughness, "--roughness"));
    header.roughness = roughness.value_or(header.roughness);
    WF_TRY(const auto rise, option_value<Length>(options.rise, "--rise"));
    header.rise = rise.value_or(header.rise);
    WF_TRY(const auto clogged, option_value<Fraction>(options.clogged, "--clogged"));
    const double share = clogged ? in_si(*clogged) : 0.0;
    if (share < 0.0 || share >= 1.0) {
        return bad_input("--clogged", *options.clogged, "0 % to below 100 %");
    }
    for (auto& outlet : header.outlets) {
        outlet.open_share = 1.0 - share;
    }
    if (options.static_recovery) {
        WF_TRY(header.static_recovery, parse_number(*options.static_recovery, "--static-recovery"));
    }
    return header;
}

Result<Question> question_of(const HeaderOptions& options) {
    WF_TRY(const auto feed, only_one("--flow, --head, --pump", {&options.flow, &options.head, &options.pump},
                                     "give exactly one of them"));
    const std::initializer_list<std::pair<const char*, const Text*>> supply_only{
        {"--static-lift", &options.static_lift},
        {"--supply-length", &options.supply_length},
        {"--supply-bore", &options.supply_bore}};
    for (const auto& [name, text] : supply_only) {
        if (*text && !options.pump) {
            return bad_input(name, **text, "only with --pump");
        }
    }
    Question question;
    WF_TRY(question.header, header_of(options));
    if (feed == 2) {
        WF_TRY(question.supply, supply_of(options));
    }
    WF_TRY(question.flow, option_value<VolumeFlow>(options.flow, "--flow"));
    WF_TRY(question.head, option_value<Length>(options.head, "--head"));
    return question;
}

Result<Answer> answer_of(const Question& question, double static_recovery) {
    auto header = question.header;
    header.static_recovery = static_recovery;
    Answer answer;
    if (question.supply) {
        WF_TRY(answer.pumped, flow_on_pump({&header, 1}, *question.supply));
        answer.at_work = answer.pumped->headers.front();
    } else if (question.flow) {
        WF_TRY(answer.at_work, head_for_flow(header, *question.flow));
    } else {
        WF_TRY(answer.at_work, flow_for_head(header, *question.head));
    }
    if (auto filling = filling_of(header, answer.at_work.flow)) {
        answer.filling = std::move(filling).value();
    } else {
        answer.not_filled = filling.error().text();
    }
    return answer;
}

void add_flow(Results& results, const char* key, const char* label, VolumeFlow flow) {
    results.add(key, label, flow);
    results.with_decimals(3, 2);
}
void add_head(Results& results, const char* key, const char* label, Length head) {
    results.add(key, label, head);
    results.with_decimals(2, 3);
}

Results results_of(const Answer& answer) {
    const auto& at_work = answer.at_work;
    Results results;
    add_head(results, "inlet_head", "inlet head", at_work.inlet_head);
    results.add("flow", "flow", at_work.flow);
    results.with_decimals(1, 1);
    results.add("inlet_velocity", "inlet velocity", at_work.inlet_velocity);
    add_flow(results, "lowest_outlet", "lowest outlet", at_work.lowest);
    add_flow(results, "highest_outlet", "highest outlet", at_work.highest);
    add_flow(results, "first_outlet", "first outlet", at_work.outlets.front());
    add_flow(results, "last_outlet", "last outlet", at_work.outlets.back());
    if (in_si(at_work.outlets.back()) > 0.0) {
        results.number("first_to_last_outlet", "first outlet / last outlet",
                       in_si(at_work.outlets.front()) / in_si(at_work.outlets.back()), 3);
    } else {
        results.missing_number("first_to_last_outlet", "first outlet / last outlet",
                               "the last one gives nothing");
    }
    add_head(results, "first_head", "head at the first outlet", at_work.first_head);
    add_head(results, "last_head", "head at the last outlet", at_work.last_head);
    results.add("distribution_uniformity", "distribution uniformity",
                from_si<Fraction>(at_work.uniformity.low_quarter), "lowest quarter to mean");
    results.add("christiansen_uniformity", "Christiansen's uniformity",
                from_si<Fraction>(at_work.uniformity.christiansen));
    if (answer.filling) {
        results.add("fill", "fill", answer.filling->fill, "empty header to water at the far end");
        results.add("pipe_volume_time", "pipe volume over flow", answer.filling->pipe_time);
    } else {
        results.missing("fill", "fill", Kind::duration, answer.not_filled);
        results.missing("pipe_volume_time", "pipe volume over flow", Kind::duration, "");
    }
    if (answer.pumped) {
        add_head(results, "pump_head", "pump head", answer.pumped->pump_head);
        add_head(results, "supply_loss", "supply loss", answer.pumped->supply_loss);
    } else {
        results.missing("pump_head", "pump head", Kind::length, "");
        results.missing("supply_loss", "supply loss", Kind::length, "");
    }
    return results;
}

JsonObject answer_json(const Answer& answer) {
    auto json = results_of(answer).json();
    auto flows = JsonObject::array();
    for (const auto& flow : answer.at_work.outlets) {
        flows.push_back(in_si(flow));
    }
    json["outlet_flows_m3_per_s"] = std::move(flows);
    json["fill_front_s"] = nullptr;
    json["fill_missing"] = nullptr;
    if (answer.filling) {
        auto arrivals = JsonObject::array();
        for (const auto& arrival : answer.filling->arrivals) {
            arrivals.push_back(in_seconds(arrival));
        }
        json["fill_front_s"] = std::move(arrivals);
    } else {
        json["fill_missing"] = answer.not_filled;
    }
    return json;
}

// The first, the last and some between.
std::vector<std::size_t> outlets_to_show(std::size_t count) {
    constexpr std::size_t most = 9;
    std::vector<std::size_t> shown;
    const auto rows = std::min(count, most);
    for (std::size_t row = 0; row < rows; ++row) {
        shown.push_back(rows == 1 ? 0 : (row * (count - 1) + (rows - 1) / 2) / (rows - 1));
    }
    return shown;
}

void print_outlets(std::ostream& out, UnitSystem units, const Header& header,
                   const std::vector<Answer>& answers, const std::vector<std::string>& headings) {
    std::vector<std::vector<std::string>> table(1);
    table.front() = {"outlet", "at"};
    for (std::size_t a = 0; a < answers.size(); ++a) {
        const auto behind = headings.empty() ? "" : ", " + headings[a];
        table.front().push_back("flow" + behind);
        table.front().push_back("water arrives" + behind);
    }
    for (const auto i : outlets_to_show(header.outlets.size())) {
        auto& row = table.emplace_back();
        row.push_back(std::to_string(i + 1));
        row.push_back(show_text(header.outlets[i].at, units));
        for (const auto& answer : answers) {
            row.push_back(shown_with(any(answer.at_work.outlets[i]), units, 3, 2));
            row.push_back(answer.filling ? show_text(answer.filling->arrivals[i], units) : "-");
        }
    }
    out << '\n';
    print_table(out, table);
}

void print_text(const Header& header, const std::vector<Answer>& answers, const HeaderOptions& options,
                const Common& common) {
    auto& out = common.out();
    const auto units = common.units;
    std::vector<std::string> headings;
    if (answers.size() > 1) {
        headings = {"recovery 0", "recovery 1"};
    }
    std::vector<Results> columns;
    columns.reserve(answers.size());
    for (const auto& answer : answers) {
        columns.push_back(results_of(answer));
    }
    const auto fine = [&](Length length) { return shown_with(any(length, Scale::fine), units, 3, 1); };
    out << header.outlets.size() << " outlets of " << fine(header.outlets.front().bore) << ", "
        << fine(header.outlets.front().at) << " apart, in a header of " << show_text(header.length, units)
        << ", " << fine(header.bore) << " inside\n";
    if (answers.size() > 1) {
        out << "How much static pressure comes back past each outlet is not known: both ends are shown.\n";
    }
    if (!options.discharge_coefficient) {
        out << "Discharge coefficient " << print_number(header.outlets.front().discharge_coefficient, 3)
            << " assumed.\n";
    }
    if (!options.roughness) {
        out << "Roughness of drawn plastic, " << print_number(1000.0 * in_si(header.roughness), 4)
            << " mm, assumed.\n";
    }
    out << '\n';
    print_results(out, units, columns, headings);
    print_outlets(out, units, header, answers, headings);
    if (options.explain) {
        print_explanations(out, explanations);
    }
}

Result<ExitStatus> run_header(const HeaderOptions& options, const Common& common) {
    WF_TRY(const auto question, question_of(options));
    WF_TRY(auto given, answer_of(question, question.header.static_recovery));
    auto full = answer_of(question, 1.0);
    if (!full && !options.static_recovery) {
        return std::move(full).error();
    }
    if (common.json) {
        JsonObject json{{"outlets", question.header.outlets.size()},
                        {"static_recovery", question.header.static_recovery}};
        json.update(answer_json(given));
        json["with_full_recovery"] = full ? answer_json(full.value()) : JsonObject(nullptr);
        if (options.explain) {
            json["explanations"] = explanations_json(explanations);
        }
        print_json(common.out(), json);
        return ExitStatus::done;
    }
    std::vector<Answer> answers{std::move(given)};
    if (!options.static_recovery) {
        answers.push_back(std::move(full).value());
    }
    print_text(question.header, answers, options, common);
    return ExitStatus::done;
}

}  // namespace

void add_header(CLI::App& app, const Common& common, Work& chosen) {
    auto* command =
        app.add_subcommand("header", "what each outlet of a header gives, and how the header fills");
    const auto options = std::make_shared<HeaderOptions>();
    const auto add = [&](const char* name, auto& value, const char* type, const char* text) {
        return command->add_option(name, value, text)->type_name(type);
    };
    add("--length", options->length, "L", "from the inlet to the closed end")->required();
    add("--bore", options->bore, "D", "of the header, inside")->required();
    add("--outlet-bore", options->outlet_bore, "d", "of each outlet")->required();
    add("--outlet-spacing", options->outlet_spacing, "s",
        "from outlet to outlet; the first is one from the inlet")
        ->required();
    add("--flow", options->flow, "Q", "into the inlet");
    add("--head", options->head, "H", "at the inlet, as height of water");
    add("--pump", options->pump, "Q:H,Q:H,...", "points of the pump's curve, flow rising, head falling");
    add("--static-lift", options->static_lift, "H",
        "with --pump: inlet above the water in the sump (default 0 m)");
    add("--supply-length", options->supply_length, "L", "with --pump: of the pipe from pump to inlet");
    add("--supply-bore", options->supply_bore, "D", "with --pump: of that pipe, inside");
    add("--discharge-coefficient", options->discharge_coefficient, "C",
        "of the outlets (default 0.6, assumed)");
    add("--roughness", options->roughness, "e", "of the pipes' inside (default 0.0015mm, drawn plastic)");
    add("--rise", options->rise, "H", "of the far end above the inlet; below 0 where it falls (default 0 m)");
    add("--clogged", options->clogged, "P", "share of each outlet's area that is clogged (default 0 %)");
    add("--static-recovery", options->static_recovery, "k",
        "share of the velocity head that comes back, 0 to 1 (default: both ends)");
    command->add_flag("--explain", options->explain, "print formulas, sources and ranges");
    command->footer(
        "Example: wetfront-cli header --length 60ft --bore 2in --outlet-bore 0.125in --outlet-spacing 4in "
        "--flow 45gpm");
    command->callback([&common, &chosen, options] {
        chosen = [&common, options] { return run_header(*options, common); };
    });
}

}  // namespace wetfront
