// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "cycle/visit_weather.h"
#include "records/visit.h"
#include "water/filling.h"
#include "water/header.h"

namespace wetfront {

/// How a pump's flow came to be known, the surest first.
enum class FlowFrom {
    entered,     ///< read off a meter, or worked out by the technician
    drawdown,    ///< fall of the sump's level with the make-up shut
    meter,       ///< volume and time of a meter
    catches,     ///< water caught at outlets, times their number
    bucket,      ///< the whole flow into one vessel
    inlet_head,  ///< worked out from the head at the headers' inlets
    pump_curve,  ///< worked out where pump curve and headers meet
};
[[nodiscard]] Message label_of(FlowFrom from);

struct FlowEvidence {
    VolumeFlow flow;
    FlowFrom from = FlowFrom::entered;
    std::optional<VolumeFlow> expanded;  ///< expanded uncertainty, k = 2; none: not known
    std::optional<Message> advice;       ///< why it is not sure, and what would be surer

    /// Measured; a flow that was worked out from the headers is no second opinion on anything.
    [[nodiscard]] bool measured() const {
        return from != FlowFrom::inlet_head && from != FlowFrom::pump_curve;
    }
};

/// What is known of one pump's water.
struct PumpWater {
    Id pump;
    std::vector<FlowEvidence> flows;  ///< the surest first; empty: not known
    std::optional<Volume> riser;      ///< as entered, or of the supply pipe
    std::vector<Message> notes;       ///< what was entered and could not be used

    [[nodiscard]] const FlowEvidence* flow() const { return flows.empty() ? nullptr : &flows.front(); }
    /// None where the flow was not measured.
    [[nodiscard]] std::optional<VolumeFlow> measured() const;
};

/// What is known of the water of one bank.
struct BankWater {
    Id bank;
    std::optional<VolumeFlow> flow;  ///< into its header: measured, or worked out
    bool flow_measured = false;      ///< by the pump's measured flow
    std::optional<Header> header;    ///< none: bore, length, outlets or spacing are not described
    /// The header at that flow, without and with full recovery of the velocity head; what it really does lies
    /// between.
    std::optional<HeaderFlow> plain;
    std::optional<HeaderFlow> recovered;
    std::optional<Filling> filling;      ///< without recovery; of at most 60 outlets that stand for all
    std::optional<Error> does_not_fill;  ///< the pump cannot fill the header at that flow
    /// q_far / least q, the larger of the two, at least 1; 1 where outlets are not described.
    double weakest_outlet_ratio = 1.0;
    std::vector<Message> assumed;  ///< what the header was taken to be
    std::vector<Message> notes;    ///< what was entered and could not be used
};

struct VisitWater {
    std::vector<PumpWater> pumps;  ///< in the house's order
    std::vector<BankWater> banks;

    [[nodiscard]] const PumpWater* pump(const Id& id) const;
    [[nodiscard]] const BankWater* bank(const Id& id) const;
};

/// Flows and headers of a visit's house. A pump's flow is shared among its headers by their hydraulics where
/// all are described, else by length of pad. Takes about a millisecond for four described headers.
[[nodiscard]] VisitWater water_of(const VisitFile& file);

/// The same as far as flows were measured: nothing of what headers do with them, and nothing worked out. For
/// many visits at once.
[[nodiscard]] VisitWater measured_flows_of(const VisitFile& file);

/// E H / q in the weather of the test: the share of the water that evaporates, from flow and air instead of
/// from the stopwatch. None where the measured flow, height, a length, the weather, face speed or more than
/// an assumed effectiveness lack. Water is taken as 1,000 kg/m3 (0.7 % high at 37 degC).
[[nodiscard]] std::optional<double> share_from_flow(const VisitFile& file, const VisitWater& water,
                                                    const VisitWeather& weather, const PadBank& bank);

/// Three header volumes over the bank's flow; none where flow or bore is not known.
[[nodiscard]] std::optional<Duration> header_exchange_of(const VisitWater& water, const PadBank& bank);

/// When water is to be expected at a bank's far end: the riser, then the filling front where outlets are
/// described, else 1.3 to 2.2 times pipe volume over flow (a healthy header; outlets run while it fills).
struct ExpectedFill {
    Duration usual;
    Duration least;
    Duration most;
    bool from_front = false;  ///< by the filling front
};
[[nodiscard]] std::optional<ExpectedFill> expected_fill(const VisitWater& water, const PadBank& bank);

}  // namespace wetfront
