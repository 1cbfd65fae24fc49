// SPDX-License-Identifier: Apache-2.0
#include "cycle/bank_evidence.h"

#include <algorithm>

#include "pad/wet_pad.h"
#include "pad/wetting_column.h"

namespace wetfront {
namespace {

// One reading says nothing about spread: what the hand and seeing the event add then stands alone, and it is
// never undercut. Two readings say little where they agree, but where they disagree by more than hand and eye
// explain (45 s and 65 s), the floor alone would claim to know the mean better than either reading does.
Duration standard_uncertainty(const TimingResult& result) {
    return result.count < 2 ? result.systematic : std::max(result.standard, result.systematic);
}

bool clearly_above(const TimingResult& later, const TimingResult& fill) {
    return later.mean > fill.mean && later.mean >= fill.mean + 2.0 * standard_uncertainty(fill);
}

bool is_dry_start(const BankTimings& timings) {
    return timings.fill && timings.wet_through && timings.dry_out &&
           clearly_above(*timings.wet_through, *timings.fill);
}

// A pad rests without drying where the fans stand still: such a wet start proves nothing, so the fans must be
// known to have run while the pump was off, and not be known to have stood after the restart.
bool fans_ran_in_wet_start(const VisitTimings& timings, const Id& bank) {
    return std::all_of(timings.readings.begin(), timings.readings.end(), [&](const Reading& reading) {
        if (reading.bank != bank || reading.not_used) {
            return true;
        }
        if (reading.kind == TimingKind::wet_off) {
            return reading.fans_running.value_or(false);
        }
        return reading.kind != TimingKind::wet_return || reading.fans_running.value_or(true);
    });
}

bool is_wet_start(const BankTimings& timings) {
    return timings.fill && timings.wet_off && timings.wet_return &&
           clearly_above(*timings.wet_return, *timings.fill);
}

std::optional<std::variant<DryStart, WetStart>> start_of(const VisitTimings& visit,
                                                         const BankTimings& timings) {
    if (is_dry_start(timings)) {
        return DryStart{timings.wet_through->mean, timings.dry_out->mean, timings.fans_ran_during_wet_through,
                        standard_uncertainty(*timings.wet_through), standard_uncertainty(*timings.dry_out)};
    }
    if (is_wet_start(timings) && fans_ran_in_wet_start(visit, timings.bank)) {
        return WetStart{timings.wet_off->mean, timings.wet_return->mean,
                        standard_uncertainty(*timings.wet_off), standard_uncertainty(*timings.wet_return)};
    }
    return std::nullopt;
}

// Which readings would make a start of either kind, the dry one first.
std::vector<Message> missing_readings(const VisitTimings& visit, const BankTimings* timings,
                                      const Message& bank) {
    std::vector<Message> missing;
    const bool fill = timings != nullptr && timings->fill;
    const bool wet_through = timings != nullptr && timings->wet_through;
    const bool dry_out = timings != nullptr && timings->dry_out;
    if (!fill) {
        missing.push_back({WF_TEXT("%1: fill time"), {bank}});
    }
    if (!wet_through) {
        missing.push_back({WF_TEXT("%1: wet-through time from a dry pad (or a wet start)"), {bank}});
    } else if (fill && !clearly_above(*timings->wet_through, *timings->fill)) {
        missing.push_back(
            {WF_TEXT("%1: wet-through time clearly above the fill time; time both again"), {bank}});
    }
    if (!dry_out) {
        missing.push_back({WF_TEXT("%1: dry-out time with the fans running (or a wet start)"), {bank}});
    }
    if (timings != nullptr && is_wet_start(*timings) && !fans_ran_in_wet_start(visit, timings->bank)) {
        missing.push_back({WF_TEXT("%1: wet start with the fans running all the while"), {bank}});
    }
    return missing;
}

std::optional<double> share_of_timings(const BankQuestion& question, const CycleMargins& margins) {
    if (const auto* dry = std::get_if<DryStart>(&question.start)) {
        const auto rates = rates_from_timings(dry->wet_through - question.fill, dry->dry_out, dry->fans_on,
                                              margins.constant_share);
        if (!rates) {
            return std::nullopt;
        }
        return in_si(rates.value().drying) / in_si(rates.value().wetting);
    }
    const auto& wet = std::get<WetStart>(question.start);
    const auto share = evaporated_share_from_wet_start(wet.off, wet.drip_return, question.fill);
    return share ? std::optional{share.value()} : std::nullopt;
}

}  // namespace

BankEvidence evidence_of(const VisitFile& file, const VisitTimings& timings, const VisitWeather& weather,
                         const VisitWater& water, const PadBank& bank, const CycleMargins& margins) {
    BankEvidence evidence;
    evidence.bank = &bank;
    evidence.effectiveness = effectiveness_of(file, weather, bank);
    evidence.share_from_flow = share_from_flow(file, water, weather, bank);
    evidence.header_exchange = header_exchange_of(water, bank);
    const auto label = label_of(file.house, bank);
    const auto* timed = timings.of(bank.id);
    const auto start = timed != nullptr ? start_of(timings, *timed) : std::nullopt;
    if (!start) {
        evidence.missing = missing_readings(timings, timed, label);
        return evidence;
    }
    BankQuestion question;
    question.fill = timed->fill->mean;
    question.u_fill = standard_uncertainty(*timed->fill);
    question.start = *start;
    question.evaporated_share = evidence.share_from_flow;
    if (const auto* supplied = water.bank(bank.id)) {
        question.weakest_outlet_ratio = supplied->weakest_outlet_ratio;
    }
    evidence.share_from_timings = share_of_timings(question, margins);
    if (!weather.test || !weather.design) {
        return evidence;
    }
    const auto ratio = evaporation_ratio(*weather.design, *weather.test, evidence.effectiveness.value);
    if (!ratio) {
        evidence.missing.push_back(
            {WF_TEXT("%1: readings in drier air (%2)"), {label, ratio.error().text()}});
        return evidence;
    }
    if (ratio.value() <= 0.0) {
        evidence.missing.emplace_back(
            WF_TEXT("a design day on which water evaporates: check dry and wet bulb"));
        return evidence;
    }
    // Advice must keep the pad wet today as well: where the readings' weather was the worse one, it counts.
    question.evaporation_ratio = std::max(1.0, ratio.value());
    if (ratio.value() < 1.0) {
        question.milder_design = ratio.value();
    }
    // What is left to be wrong (a time above 24 h) has its own message from the rules.
    const auto usable = evaporated_share(question);
    if (!usable) {
        evidence.missing.push_back({WF_TEXT("%1: %2"), {label, usable.error().text()}});
        return evidence;
    }
    evidence.question = question;
    return evidence;
}

bool shares_disagree(const BankEvidence& evidence) {
    if (!evidence.share_from_timings || !evidence.share_from_flow) {
        return false;
    }
    const auto [low, high] = std::minmax(*evidence.share_from_timings, *evidence.share_from_flow);
    return high > 1.3 * low;
}

}  // namespace wetfront
