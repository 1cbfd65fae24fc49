// SPDX-License-Identifier: Apache-2.0
#include "cycle/visit_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/numbers.h"
#include "water/flow_measurement.h"

namespace wetfront {
namespace {

constexpr double water_density = 1000.0;  // kg/m3
constexpr double assumed_discharge = 0.6;

Volume pipe_volume(Length length, Length bore) {
    return std::numbers::pi / 4.0 * bore * bore * length;
}

BankWater described(const PadBank& bank) {
    BankWater water;
    water.bank = bank.id;
    if (!bank.length || !bank.header_bore || !bank.outlet_bore || !bank.outlet_spacing) {
        return water;
    }
    auto header =
        even_header(bank.length->value(), bank.header_bore->value(), bank.outlet_bore->value(),
                    bank.outlet_spacing->value(), bank.discharge_coefficient.value_or(assumed_discharge));
    if (!header) {
        water.notes.push_back({WF_TEXT("Not used: %1"), {header.error().text()}});
        return water;
    }
    if (!bank.discharge_coefficient) {
        water.assumed.push_back(
            {WF_TEXT("discharge coefficient of an outlet %1"), {print_number(assumed_discharge, 2)}});
    }
    if (!bank.header_rise) {
        water.assumed.emplace_back(WF_TEXT("a level header"));
    } else {
        header.value().rise = bank.header_rise->value();
    }
    for (auto& outlet : header.value().outlets) {
        for (const auto& change : bank.outlet_changes) {
            if (change.from && change.bore && outlet.at >= change.from->value()) {
                outlet.bore = change.bore->value();
            }
        }
        if (bank.clogged_share) {
            outlet.open_share = 1.0 - in_si(bank.clogged_share->value());
        }
    }
    water.header = std::move(header.value());
    return water;
}

/// The banks of one pump with what their headers do.
struct PumpWork {
    const VisitFile& file;
    const Pump& pump;
    std::vector<const PadBank*> banks;
    std::vector<BankWater> waters;
    PumpWater result;

    [[nodiscard]] bool all_described() const {
        return !waters.empty() &&
               std::ranges::all_of(waters, [](const BankWater& water) { return water.header.has_value(); });
    }
    [[nodiscard]] std::vector<Header> headers() const {
        std::vector<Header> all;
        for (const auto& water : waters) {
            all.push_back(*water.header);
        }
        return all;
    }
};

template <class T>
std::optional<T> kept(Result<T> result, std::vector<Message>& notes) {
    if (!result) {
        notes.push_back({WF_TEXT("Not used: %1"), {result.error().text()}});
        return std::nullopt;
    }
    return std::move(result.value());
}

void add_flow(PumpWork& work, FlowFrom from, Result<MeasuredFlow> measured) {
    if (const auto flow = kept(std::move(measured), work.result.notes)) {
        work.result.flows.push_back({flow->flow, from, flow->expanded, flow->advice});
    }
}

std::vector<Catch> catches_at(const BankConditions* at) {
    std::vector<Catch> caught;
    if (at != nullptr) {
        for (const auto& each : at->catches) {
            if (each.volume && each.time) {
                caught.push_back({each.volume->value(), each.time->value()});
            }
        }
    }
    return caught;
}

// Every header of the pump has to be caught, or the pump gives more than was counted.
void add_catches(PumpWork& work) {
    FlowEvidence sum{from_si<VolumeFlow>(0.0), FlowFrom::catches, std::nullopt, std::nullopt};
    double square = 0.0;
    for (std::size_t i = 0; i < work.waters.size(); ++i) {
        const auto caught = catches_at(work.file.visit.conditions_at(work.banks[i]->id));
        if (caught.empty() || !work.waters[i].header) {
            return;
        }
        const auto flow =
            kept(flow_by_catches(caught, work.waters[i].header->outlets.size()), work.result.notes);
        if (!flow) {
            return;
        }
        sum.flow += flow->flow;
        square += in_si(flow->expanded) * in_si(flow->expanded);
        if (flow->advice) {
            sum.advice = flow->advice;
        }
    }
    if (in_si(sum.flow) > 0.0) {
        sum.expanded = from_si<VolumeFlow>(std::sqrt(square));
        work.result.flows.push_back(std::move(sum));
    }
}

void add_drawdown(PumpWork& work, const PumpFlow& measured) {
    if (!measured.drawdown_fall || !measured.drawdown_time) {
        return;
    }
    if (!work.pump.sump_area) {
        work.result.notes.emplace_back(
            WF_TEXT("The sump's drawdown is not used: its water surface is not entered."));
        return;
    }
    add_flow(work, FlowFrom::drawdown,
             flow_by_drawdown(work.pump.sump_area->value(), measured.drawdown_fall->value(),
                              measured.drawdown_time->value()));
}

void add_measured_flows(PumpWork& work) {
    const auto* measured = work.file.visit.measured_flow(work.pump.id);
    if (measured == nullptr) {
        add_catches(work);
        return;
    }
    if (measured->flow) {
        work.result.flows.push_back({measured->flow->value(), FlowFrom::entered, std::nullopt, std::nullopt});
    }
    add_drawdown(work, *measured);
    if (measured->meter_volume && measured->meter_time) {
        add_flow(work, FlowFrom::meter,
                 flow_by_meter(measured->meter_volume->value(), measured->meter_time->value()));
    }
    add_catches(work);
    if (measured->bucket_volume && measured->bucket_time) {
        add_flow(work, FlowFrom::bucket,
                 flow_by_bucket(measured->bucket_volume->value(), measured->bucket_time->value()));
    }
}

// A head at every header of the pump tells its flow; so does a pump curve.
void add_worked_out_flow(PumpWork& work) {
    if (!work.all_described()) {
        return;
    }
    auto sum = from_si<VolumeFlow>(0.0);
    bool all_heads = true;
    for (std::size_t i = 0; i < work.waters.size(); ++i) {
        const auto* at = work.file.visit.conditions_at(work.banks[i]->id);
        if (at == nullptr || !at->inlet_head) {
            all_heads = false;
            break;
        }
        const auto flow =
            kept(flow_for_head(*work.waters[i].header, at->inlet_head->value()), work.result.notes);
        if (!flow) {
            return;
        }
        sum += flow->flow;
    }
    if (all_heads) {
        work.result.flows.push_back({sum, FlowFrom::inlet_head, std::nullopt, std::nullopt});
        return;
    }
    Supply supply;
    for (const auto& point : work.pump.curve) {
        if (point.flow && point.head) {
            supply.pump.push_back({point.flow->value(), point.head->value()});
        }
    }
    if (supply.pump.empty()) {
        return;
    }
    if (work.pump.static_lift) {
        supply.static_lift = work.pump.static_lift->value();
    }
    if (work.pump.supply_length && work.pump.supply_bore) {
        supply.pipe_length = work.pump.supply_length->value();
        supply.pipe_bore = work.pump.supply_bore->value();
    }
    if (const auto pumped = kept(flow_on_pump(work.headers(), supply), work.result.notes)) {
        work.result.flows.push_back({pumped->flow, FlowFrom::pump_curve, std::nullopt, std::nullopt});
    }
}

void share_by_length(PumpWork& work, VolumeFlow flow) {
    auto total = from_si<Length>(0.0);
    for (const auto* bank : work.banks) {
        if (!bank->length) {
            return;
        }
        total += bank->length->value();
    }
    for (std::size_t i = 0; i < work.waters.size(); ++i) {
        work.waters[i].flow = flow * (work.banks[i]->length->value() / total);
    }
}

// By the headers' hydraulics; by length of pad where one is not described or they cannot take that flow.
void share_flow(PumpWork& work, const FlowEvidence& flow) {
    if (work.all_described()) {
        if (auto shared = shared_flow(work.headers(), flow.flow)) {
            for (std::size_t i = 0; i < work.waters.size(); ++i) {
                work.waters[i].flow = shared.value()[i].flow;
                work.waters[i].plain = std::move(shared.value()[i]);
            }
        } else {
            work.result.notes.push_back({WF_TEXT("Not used: %1"), {shared.error().text()}});
        }
    }
    if (!work.waters.front().flow) {
        share_by_length(work, flow.flow);
    }
    for (auto& water : work.waters) {
        water.flow_measured = water.flow && flow.measured();
    }
}

double far_over_least(const HeaderFlow& flow) {
    return in_si(flow.lowest) > 0.0 ? in_si(flow.outlets.back()) / in_si(flow.lowest) : 1.0;
}

// The filling front costs a march along the outlets for every outlet. Sixty stand for all of them: groups of
// neighbours, each as one outlet of their area in their middle. With 300 outlets that moves the fill time by
// less than 0.5 %, which a test holds.
Header thinned(const Header& header) {
    constexpr std::size_t enough = 60;
    const auto& all = header.outlets;
    if (all.size() <= enough) {
        return header;
    }
    const std::size_t group = (all.size() + enough - 1) / enough;
    Header thin = header;
    thin.outlets.clear();
    for (std::size_t from = 0; from < all.size(); from += group) {
        const auto to = std::min(from + group, all.size());
        double area = 0.0;
        auto sum = from_si<Length>(0.0);
        for (auto i = from; i < to; ++i) {
            const double bore = in_si(all[i].bore);
            area += all[i].discharge_coefficient * all[i].open_share * bore * bore;
            sum += all[i].at;
        }
        Outlet one = all[from];
        one.at = sum / static_cast<double>(to - from);
        one.bore = from_si<Length>(std::sqrt(area / one.discharge_coefficient));
        one.open_share = 1.0;
        thin.outlets.push_back(one);
    }
    const bool fits = std::ranges::all_of(thin.outlets, [&](const Outlet& outlet) {
        return outlet.bore > from_si<Length>(0.0) && outlet.bore < header.bore;
    });
    return fits ? thin : header;
}

void run_header(BankWater& water) {
    if (!water.header || !water.flow) {
        return;
    }
    if (!water.plain) {
        water.plain = kept(head_for_flow(*water.header, *water.flow), water.notes);
    }
    if (!water.plain) {
        return;
    }
    auto with_recovery = *water.header;
    with_recovery.static_recovery = 1.0;
    water.recovered = kept(head_for_flow(with_recovery, *water.flow), water.notes);
    water.weakest_outlet_ratio = std::max(1.0, far_over_least(*water.plain));
    if (water.recovered) {
        water.weakest_outlet_ratio = std::max(water.weakest_outlet_ratio, far_over_least(*water.recovered));
    }
    auto filling = filling_of(thinned(*water.header), *water.flow);
    if (filling) {
        water.filling = std::move(filling.value());
    } else {
        water.does_not_fill = std::move(filling).error();
    }
}

// What was caught along the header says more than any description: the far end against the least. At least
// three outlets, one of them in the last tenth.
void compare_catches(const VisitFile& file, const PadBank& bank, BankWater& water) {
    const auto* at = file.visit.conditions_at(bank.id);
    if (at == nullptr || !bank.length) {
        return;
    }
    double farthest = 0.0;
    double far_flow = 0.0;
    double least = 0.0;
    int count = 0;
    for (const auto& caught : at->catches) {
        if (!caught.at || !caught.volume || !caught.time) {
            continue;
        }
        const double flow = in_si(caught.volume->value()) / in_si(caught.time->value());
        least = count == 0 ? flow : std::min(least, flow);
        if (const double share = caught.at->value() / bank.length->value(); share >= farthest) {
            farthest = share;
            far_flow = flow;
        }
        ++count;
    }
    if (count >= 3 && farthest >= 0.9 && least > 0.0) {
        water.weakest_outlet_ratio = std::max(water.weakest_outlet_ratio, far_flow / least);
    }
}

PumpWork measured_work_of(const VisitFile& file, const Pump& pump) {
    PumpWork work{file, pump, file.house.banks_of(pump), {}, {}};
    work.result.pump = pump.id;
    for (const auto* bank : work.banks) {
        work.waters.push_back(described(*bank));
    }
    add_measured_flows(work);
    return work;
}

PumpWork work_of(const VisitFile& file, const Pump& pump) {
    auto work = measured_work_of(file, pump);
    if (pump.riser_volume) {
        work.result.riser = pump.riser_volume->value();
    } else if (pump.supply_length && pump.supply_bore) {
        work.result.riser = pipe_volume(pump.supply_length->value(), pump.supply_bore->value());
    }
    if (work.result.flows.empty()) {
        add_worked_out_flow(work);
    }
    if (const auto* flow = work.result.flow(); flow != nullptr && !work.waters.empty()) {
        share_flow(work, *flow);
    }
    for (std::size_t i = 0; i < work.waters.size(); ++i) {
        run_header(work.waters[i]);
        compare_catches(file, *work.banks[i], work.waters[i]);
    }
    return work;
}

template <class Work>
VisitWater water_by(const VisitFile& file, const Work& work_of_pump) {
    VisitWater water;
    std::vector<BankWater> banks;
    for (const auto& pump : file.house.pumps) {
        auto work = work_of_pump(file, pump);
        water.pumps.push_back(std::move(work.result));
        std::ranges::move(work.waters, std::back_inserter(banks));
    }
    for (const auto& bank : file.house.banks) {
        const auto found = std::ranges::find(banks, bank.id, &BankWater::bank);
        water.banks.push_back(found != banks.end() ? std::move(*found) : described(bank));
    }
    return water;
}

}  // namespace

Message label_of(FlowFrom from) {
    switch (from) {
        case FlowFrom::entered:
            return {WF_TEXT("as measured"), {}};
        case FlowFrom::drawdown:
            return {WF_TEXT("by sump drawdown"), {}};
        case FlowFrom::meter:
            return {WF_TEXT("by meter"), {}};
        case FlowFrom::catches:
            return {WF_TEXT("by catches at outlets"), {}};
        case FlowFrom::bucket:
            return {WF_TEXT("by bucket"), {}};
        case FlowFrom::inlet_head:
            return {WF_TEXT("worked out from the head at the header"), {}};
        case FlowFrom::pump_curve:
            return {WF_TEXT("worked out from the pump curve"), {}};
    }
    return {};
}

std::optional<VolumeFlow> PumpWater::measured() const {
    const auto* best = flow();
    return best != nullptr && best->measured() ? std::optional{best->flow} : std::nullopt;
}

const PumpWater* VisitWater::pump(const Id& id) const {
    const auto found = std::ranges::find(pumps, id, &PumpWater::pump);
    return found == pumps.end() ? nullptr : &*found;
}

const BankWater* VisitWater::bank(const Id& id) const {
    const auto found = std::ranges::find(banks, id, &BankWater::bank);
    return found == banks.end() ? nullptr : &*found;
}

VisitWater water_of(const VisitFile& file) {
    return water_by(file, work_of);
}

VisitWater measured_flows_of(const VisitFile& file) {
    return water_by(file, [](const VisitFile& of, const Pump& pump) {
        auto work = measured_work_of(of, pump);
        if (const auto* flow = work.result.flow(); flow != nullptr && !work.waters.empty()) {
            share_flow(work, *flow);
        }
        return work;
    });
}

std::optional<double> share_from_flow(const VisitFile& file, const VisitWater& water,
                                      const VisitWeather& weather, const PadBank& bank) {
    const auto* supplied = water.bank(bank.id);
    if (supplied == nullptr || !supplied->flow_measured || in_si(*supplied->flow) <= 0.0 || !weather.test ||
        effectiveness_of(file, weather, bank).origin == Origin::assumed) {
        return std::nullopt;
    }
    const auto evaporated = evaporation_of(file, weather, *weather.test, bank);
    if (!evaporated) {
        return std::nullopt;
    }
    return in_si(*evaporated) / (in_si(*supplied->flow) * water_density);
}

std::optional<Duration> header_exchange_of(const VisitWater& water, const PadBank& bank) {
    const auto* supplied = water.bank(bank.id);
    if (supplied == nullptr || !supplied->flow || in_si(*supplied->flow) <= 0.0 || !bank.header_bore ||
        !bank.length) {
        return std::nullopt;
    }
    return 3.0 * pipe_volume(bank.length->value(), bank.header_bore->value()) / *supplied->flow;
}

std::optional<ExpectedFill> expected_fill(const VisitWater& water, const PadBank& bank) {
    const auto* supplied = water.bank(bank.id);
    const auto* pump = water.pump(bank.pump);
    if (supplied == nullptr || pump == nullptr || pump->flow() == nullptr || !supplied->flow ||
        in_si(*supplied->flow) <= 0.0 || !bank.header_bore || !bank.length || supplied->does_not_fill) {
        return std::nullopt;
    }
    const Duration riser = pump->riser ? *pump->riser / pump->flow()->flow : seconds(0.0);
    const Duration pipe = pipe_volume(bank.length->value(), bank.header_bore->value()) / *supplied->flow;
    // A healthy header: 1.3 to 2.2 times the pipe's own time; common practice, no source.
    if (supplied->filling) {
        return ExpectedFill{riser + supplied->filling->fill, riser + pipe,
                            riser + 1.25 * supplied->filling->fill, true};
    }
    return ExpectedFill{riser + 1.75 * pipe, riser + 1.3 * pipe, riser + 2.2 * pipe, false};
}

}  // namespace wetfront
