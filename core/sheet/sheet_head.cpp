// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>

#include "base/numbers.h"
#include "records/fields.h"
#include "sheet/blocks.h"
#include "sheet/words.h"

// Who, where, when, with what, under which conditions.
namespace wetfront {
namespace {

void add_people(Blocks& blocks, const Visit& visit) {
    SheetTable people{{WF_TEXT("Person"), WF_TEXT("Role")}, {}, {0.6, 0.4}};
    for (const auto& person : visit.persons) {
        people.rows.push_back(row({as_written(person.name), as_written(person.role)}));
    }
    if (people.rows.empty()) {
        people.rows.push_back(row({not_entered(), not_entered()}));
    }
    blocks.emplace_back(std::move(people));

    SheetTable instruments{{WF_TEXT("Instrument"), WF_TEXT("Last checked")}, {}, {0.6, 0.4}};
    for (const auto& instrument : visit.instruments) {
        instruments.rows.push_back(row({as_written(instrument.name), as_written(instrument.last_checked)}));
    }
    if (instruments.rows.empty()) {
        instruments.rows.push_back(row({not_entered(), not_entered()}));
    }
    blocks.emplace_back(std::move(instruments));
}

Message day_of_work(const Visit& visit) {
    // Marks carry the wall time of the work; a visit may go on after midnight or be taken up on another day.
    auto last = visit.started;
    for (const auto& mark : visit.marks) {
        last = mark.wall > last ? mark.wall : last;
    }
    const auto from = local_date(visit.started);
    const auto to = local_date(last);
    return from == to ? verbatim(from) : Message{WF_TEXT("%1 to %2"), {from, to}};
}

void add_banks(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    SheetTable table{
        {WF_TEXT("Bank"), WF_TEXT("Fed by"), WF_TEXT("Length"), WF_TEXT("Height"), WF_TEXT("Thickness"),
         WF_TEXT("Header bore"), WF_TEXT("Outlet bore"), WF_TEXT("Outlet spacing")},
        {},
        {0.16, 0.18, 0.11, 0.11, 0.11, 0.11, 0.11, 0.11}};
    SheetBanks drawings;
    for (const auto& bank : house.banks) {
        const auto* pump = house.pump(bank.pump);
        const Message fed_by = pump == nullptr ? not_entered()
                                               : Message{WF_TEXT("%1, from the %2"),
                                                         {label_of(house, *pump), label_of(bank.pump_end)}};
        table.rows.push_back(
            row({label_of(house, bank), fed_by, shown_or(bank.length, not_entered()),
                 shown_or(bank.height, not_entered()), shown_or(bank.thickness, not_entered(), Scale::fine),
                 shown_or(bank.header_bore, not_entered(), Scale::fine),
                 shown_or(bank.outlet_bore, not_entered(), Scale::fine),
                 shown_or(bank.outlet_spacing, not_entered(), Scale::fine)}));
        const auto* timed = inputs.timings.of(bank.id);
        const auto mean = [](const std::optional<TimingResult>& result) {
            return result ? shown(any(result->mean)) : not_measured();
        };
        drawings.banks.push_back({label_of(house, bank),
                                  bank.pump_end == PumpEnd::left,
                                  bank.length ? in_si(bank.length->value()) : 0.0,
                                  bank.height ? in_si(bank.height->value()) : 0.0,
                                  {WF_TEXT("fill %1, wet-through %2, dry-out %3"),
                                   {timed == nullptr ? not_measured() : mean(timed->fill),
                                    timed == nullptr ? not_measured() : mean(timed->wet_through),
                                    timed == nullptr ? not_measured() : mean(timed->dry_out)}}});
    }
    blocks.emplace_back(std::move(table));
    blocks.emplace_back(std::move(drawings));
}

// As read where it was read; else by what it was worked out from.
Message flow_of(const SheetInputs& inputs, const Pump& pump) {
    const auto* measured = inputs.file.visit.measured_flow(pump.id);
    if (measured != nullptr && measured->flow) {
        return shown_or(measured->flow, not_measured());
    }
    const auto* water = inputs.advice.water.pump(pump.id);
    if (water == nullptr || !water->measured()) {
        return not_measured();
    }
    const auto& flow = *water->flow();
    if (!flow.expanded) {
        return {WF_TEXT("%1, %2"), {any(flow.flow), label_of(flow.from)}};
    }
    return {WF_TEXT("%1 ± %2, %3"), {any(flow.flow), any(*flow.expanded), label_of(flow.from)}};
}

void add_pumps_and_timers(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    SheetTable pumps{{WF_TEXT("Pump"), WF_TEXT("Measured flow"), WF_TEXT("Sump volume"),
                      WF_TEXT("Make-up flow"), WF_TEXT("Riser volume")},
                     {},
                     {0.28, 0.18, 0.18, 0.18, 0.18}};
    for (const auto& pump : house.pumps) {
        pumps.rows.push_back(
            row({label_of(house, pump), flow_of(inputs, pump), shown_or(pump.sump_volume, not_entered()),
                 shown_or(pump.make_up_flow, not_entered()), shown_or(pump.riser_volume, not_entered())}));
    }
    blocks.emplace_back(std::move(pumps));

    SheetTable timers{{WF_TEXT("Timer"), WF_TEXT("Kind"), WF_TEXT("Switches"), WF_TEXT("Step of on-time"),
                       WF_TEXT("Step of period")},
                      {},
                      {0.22, 0.24, 0.26, 0.14, 0.14}};
    for (const auto& timer : house.timers) {
        Message switched = not_entered();
        for (std::size_t i = 0; i < timer.pumps.size(); ++i) {
            const auto* pump = house.pump(timer.pumps[i]);
            const auto name = pump == nullptr ? not_entered() : label_of(house, *pump);
            switched = i == 0 ? name : Message{WF_TEXT("%1, %2"), {std::move(switched), name}};
        }
        timers.rows.push_back(row({label_of(house, timer), label_of(timer.kind), std::move(switched),
                                   shown_or(timer.resolution, not_entered()),
                                   shown_or(timer.period_resolution, not_entered())}));
    }
    blocks.emplace_back(std::move(timers));
}

/// What stands in place of something else, or is for whoever has a kit for it: no gap where it is not
/// entered.
bool is_extra(std::string_view key) {
    constexpr std::array extras{"outside_wet_bulb",
                                "outside_dew_point",
                                "thermometer_accuracy",
                                "hygrometer_accuracy",
                                "calcium_hardness",
                                "dissolved_solids",
                                "sump_ph",
                                "sump_conductivity",
                                "sump_temperature"};
    return std::ranges::find(extras, key) != extras.end();
}

/// Turns the fields of a record into facts; what was not measured says so.
struct FactsFromFields {
    std::vector<SheetFacts::Fact>& facts;
    Message missing;

    template <class Q>
    void operator()(const Field& field, const Optional<Q>& entry) const {
        if (!entry && is_extra(field.key)) {
            return;
        }
        facts.push_back({field.label, shown_or(entry, missing, field.scale)});
    }
    void operator()(const Field& field, const std::optional<double>& number) const {
        if (!number && is_extra(field.key)) {
            return;
        }
        facts.push_back({field.label, number ? verbatim(print_number(*number, 2)) : missing});
    }
    // Flows stand with their pumps, limits with what was assumed, what was measured at a bank in a table of
    // its own, names and ids with the house.
    void operator()(const Field&, const Limits&) const {}
    void operator()(const Field&, const std::vector<PumpFlow>&) const {}
    void operator()(const Field&, const std::vector<BankConditions>&) const {}
    void operator()(const Field&, const std::string&) const {}
    void operator()(const Field&, const Id&) const {}
};

Message face_speed(const SheetInputs& inputs, const PadBank& bank) {
    const auto face = face_of(inputs.file, bank);
    if (!face || face->origin != Origin::measured) {
        return not_measured();
    }
    if (!face->points) {
        return {"%1", {any(face->speed)}};
    }
    return {WF_TEXT("%1, mean of %2 points from %3 to %4"),
            {any(face->points->mean), face->points->points, any(face->points->lowest),
             any(face->points->highest)}};
}

Message evenness(const BankWater& water) {
    if (!water.plain || !water.recovered) {
        return not_measured();
    }
    const auto [low, high] =
        std::minmax(water.plain->uniformity.low_quarter, water.recovered->uniformity.low_quarter);
    return {WF_TEXT("%1 to %2"), {AnyQuantity{Kind::fraction, low}, AnyQuantity{Kind::fraction, high}}};
}

/// Only where something was measured bank by bank, or the header is described.
void add_at_banks(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    SheetTable table{{WF_TEXT("At the bank"), WF_TEXT("Behind the pad"), WF_TEXT("Air speed at the face"),
                      WF_TEXT("Pressure drop"), WF_TEXT("Water for each length"),
                      WF_TEXT("Evenness of the header, low quarter (worked out)")},
                     {},
                     {0.18, 0.12, 0.26, 0.12, 0.14, 0.18}};
    bool any_known = false;
    for (const auto& bank : house.banks) {
        const auto* at = visit.conditions_at(bank.id);
        const auto* water = inputs.advice.water.bank(bank.id);
        if (water == nullptr) {
            continue;
        }
        any_known = any_known || at != nullptr || water->plain;
        table.rows.push_back(
            row({label_of(house, bank), shown_or(behind_pad_of(inputs.file, bank), not_measured()),
                 face_speed(inputs, bank),
                 shown_or(at != nullptr ? at->pressure_drop : std::nullopt, not_measured()),
                 water->flow_measured && bank.length
                     ? Message{"%1", {any(FlowPerLength{*water->flow / bank.length->value()})}}
                     : not_measured(),
                 evenness(*water)}));
    }
    if (any_known) {
        blocks.emplace_back(std::move(table));
    }
}

}  // namespace

void add_who_and_where(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    SheetFacts facts;
    facts.facts = {{WF_TEXT("Service firm"), as_written(farm.service_firm)},
                   {WF_TEXT("Customer"), as_written(farm.customer)},
                   {WF_TEXT("Farm"), as_written(farm.name)},
                   {WF_TEXT("House"), as_written(house.name)},
                   {WF_TEXT("Date of work"), day_of_work(visit)},
                   {WF_TEXT("Date of issue"), verbatim(local_date(inputs.issued))},
                   {WF_TEXT("Sheet"), verbatim(visit.id.text)},
                   {WF_TEXT("Revision"), {"%1", {inputs.revision}}},
                   {WF_TEXT("State"), visit.is_signed() ? WF_TEXT("signed") : WF_TEXT("draft, not signed")}};
    blocks.emplace_back(std::move(facts));
    if (visit.replaces) {
        blocks.emplace_back(SheetParagraph{
            {WF_TEXT("This sheet is a correction and replaces sheet %1."), {visit.replaces->text}}, true});
    }
    add_people(blocks, visit);
}

void add_house(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    blocks.emplace_back(SheetHeading{WF_TEXT("House, pumps and banks")});
    SheetFacts facts;
    facts.facts.push_back({WF_TEXT("Airflow of the fans that run with the pads"),
                           shown_or(house.fan_airflow, not_entered(), Scale::coarse)});
    for (const auto& sensor : house.sensors) {
        facts.facts.push_back({label_of(sensor.kind), label_of(sensor.place)});
    }
    if (house.sensors.empty()) {
        facts.facts.push_back({WF_TEXT("Sensors"), not_entered()});
    }
    blocks.emplace_back(std::move(facts));
    add_pumps_and_timers(blocks, inputs);
    add_banks(blocks, inputs);
}

void add_conditions(Blocks& blocks, const SheetInputs& inputs) {
    const auto& [farm, house, visit] = inputs.file;
    blocks.emplace_back(SheetHeading{WF_TEXT("Conditions")});
    SheetFacts measured;
    each_field(visit.conditions, FactsFromFields{measured.facts, not_measured()});
    blocks.emplace_back(std::move(measured));
    add_at_banks(blocks, inputs);
    SheetFacts entered;
    each_field(farm, FactsFromFields{entered.facts, not_entered()});
    const auto& agreement = visit.agreement;
    entered.facts.push_back({WF_TEXT("Agreed: longest time the pads may be off"),
                             shown_or(agreement.longest_pump_off, not_entered(), Scale::coarse)});
    entered.facts.push_back({WF_TEXT("Agreed: house temperature at which the test stops"),
                             shown_or(agreement.stop_temperature, not_entered())});
    entered.facts.push_back({WF_TEXT("Agreed with"), as_written(agreement.agreed_with)});
    blocks.emplace_back(std::move(entered));
}

}  // namespace wetfront
