// SPDX-License-Identifier: Apache-2.0
#include "trend/house_history.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "cycle/visit_water.h"
#include "cycle/visit_weather.h"

namespace wetfront {
namespace {

constexpr double year_ms = 365.25 * 24.0 * 3600.0 * 1000.0;
constexpr double slack_in_deviations = 0.5;
constexpr double decision_in_deviations = 5.0;
constexpr double expanded_in_deviations = 2.0;

struct Measured {
    AnyQuantity value;
    std::optional<AnyQuantity> expanded;
};

std::optional<Measured> measured(const std::optional<TimingResult>& timed) {
    // Wetting is not positive where readings contradict each other.
    if (!timed || in_seconds(timed->mean) <= 0.0) {
        return std::nullopt;
    }
    return Measured{any(timed->mean), any(timed->expanded)};
}

/// All of one visit, worked out once.
struct Evidence {
    VisitTimings timings;
    VisitWeather weather;
    VisitWater water;
};

// The pump's whole flow where it feeds this bank alone, else the bank's share of it.
std::optional<Measured> flow_of(const VisitWater& water, const PadBank& bank) {
    const auto* of_bank = water.bank(bank.id);
    const auto* of_pump = water.pump(bank.pump);
    if (of_bank == nullptr || of_pump == nullptr || !of_bank->flow || !of_bank->flow_measured) {
        return std::nullopt;
    }
    Measured flow{any(*of_bank->flow), std::nullopt};
    if (const auto* evidence = of_pump->flow(); evidence != nullptr && evidence->expanded) {
        const double share = in_si(*of_bank->flow) / in_si(evidence->flow);
        flow.expanded = any(from_si<VolumeFlow>(in_si(*evidence->expanded) * share));
    }
    return flow;
}

std::optional<Measured> effectiveness_in(const VisitFile& file, const VisitWeather& weather,
                                         const PadBank& bank) {
    const auto found = effectiveness_of(file, weather, bank);
    if (!found.measured) {
        return std::nullopt;
    }
    return Measured{any(found.measured->value), any(found.measured->expanded)};
}

std::optional<Measured> measured(Followed what, const VisitFile& file, const Evidence& evidence,
                                 const PadBank& bank) {
    const auto* timed = evidence.timings.of(bank.id);
    switch (what) {
        case Followed::fill:
            return timed ? measured(timed->fill) : std::nullopt;
        case Followed::wetting:
            return timed ? measured(timed->wetting) : std::nullopt;
        case Followed::wet_through:
            return timed ? measured(timed->wet_through) : std::nullopt;
        case Followed::flow:
            return flow_of(evidence.water, bank);
        case Followed::effectiveness:
            return effectiveness_in(file, evidence.weather, bank);
    }
    return std::nullopt;
}

std::vector<Maintenance> events_of(const House& house, const PadBank& bank, Followed what) {
    std::vector<Maintenance> events;
    std::ranges::copy_if(house.maintenance, std::back_inserter(events), [&](const Maintenance& done) {
        return done.done_to(bank) && concerns(done.what, what);
    });
    std::ranges::stable_sort(events, {}, &Maintenance::on);
    return events;
}

}  // namespace

Message label_of(Followed what) {
    switch (what) {
        case Followed::fill:
            return WF_TEXT("Fill time");
        case Followed::wetting:
            return WF_TEXT("Wetting time");
        case Followed::wet_through:
            return WF_TEXT("Wet-through time");
        case Followed::flow:
            return WF_TEXT("Flow into the header");
        case Followed::effectiveness:
            return WF_TEXT("Pad effectiveness");
    }
    return {};
}

bool concerns(Upkeep what, Followed followed) {
    switch (what) {
        case Upkeep::new_pads:
            return followed != Followed::fill && followed != Followed::flow;
        case Upkeep::new_pump:
            return followed != Followed::effectiveness;
        case Upkeep::outlets_cleaned:
        case Upkeep::other:
            return true;
    }
    return true;
}

std::span<const VisitValue> BankSeries::since_last_event() const {
    if (events.empty()) {
        return values;
    }
    const auto first =
        std::ranges::find_if(values, [&](const VisitValue& each) { return !(each.at < events.back().on); });
    return {first, values.end()};
}

std::vector<const VisitFile*> standing_visits(std::span<const VisitFile> visits) {
    std::set<Id> replaced;
    for (const auto& file : visits) {
        if (file.visit.replaces) {
            replaced.insert(*file.visit.replaces);
        }
    }
    std::vector<const VisitFile*> list;
    for (const auto& file : visits) {
        if (!replaced.contains(file.visit.id)) {
            list.push_back(&file);
        }
    }
    std::ranges::stable_sort(
        list, [](const VisitFile* a, const VisitFile* b) { return a->visit.started < b->visit.started; });
    return list;
}

std::vector<BankSeries> history_of(const House& house, std::span<const VisitFile> visits) {
    const auto files = standing_visits(visits);
    std::vector<BankSeries> all;
    std::vector<Evidence> evidence;
    for (const auto* file : files) {
        evidence.push_back({timings_of(*file), weather_of(*file), measured_flows_of(*file)});
    }
    for (const auto& bank : house.banks) {
        for (const auto& [what, name] : EnumNames<Followed>::all) {
            BankSeries series{bank.id, what, {}, events_of(house, bank, what)};
            for (std::size_t i = 0; i < files.size(); ++i) {
                const auto& file = *files[i];
                const auto* then = file.house.bank(bank.id);
                const auto found = then == nullptr ? std::nullopt : measured(what, file, evidence[i], *then);
                if (found) {
                    series.values.push_back(
                        {file.visit.id, file.visit.started, found->value, found->expanded});
                }
            }
            if (!series.values.empty()) {
                all.push_back(std::move(series));
            }
        }
    }
    return all;
}

std::vector<DatedValue> dated(std::span<const VisitValue> values) {
    std::vector<DatedValue> list;
    for (const auto& each : values) {
        const auto since = each.at.unix_ms - values.front().at.unix_ms;
        list.push_back({static_cast<double>(since) / year_ms, each.value.si});
    }
    return list;
}

WallTime moment_at(std::span<const VisitValue> values, double years) {
    auto at = values.front().at;
    at.unix_ms += std::llround(years * year_ms);
    return at;
}

Result<Trend> trend_of(const BankSeries& series) {
    return trend_of(dated(series.since_last_event()));
}

Result<std::optional<Change>> change_of(const BankSeries& series) {
    const auto judged = series.since_last_event();
    if (judged.size() <= fewest_before_a_change) {
        return std::optional<Change>{};
    }
    double target = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < fewest_before_a_change; ++i) {
        const auto& first = judged[i];
        if (!first.expanded) {
            return std::optional<Change>{};
        }
        target += first.value.si / fewest_before_a_change;
        squares += std::pow(first.expanded->si / expanded_in_deviations, 2) / fewest_before_a_change;
    }
    const double deviation = std::sqrt(squares);
    if (deviation <= 0.0) {
        return std::optional<Change>{};
    }
    // Only what came later can differ from them: against their own mean some of them always do.
    std::vector<double> later;
    for (const auto& each : judged.subspan(fewest_before_a_change)) {
        later.push_back(each.value.si);
    }
    WF_TRY(auto change, first_change(later, {target, slack_in_deviations * deviation,
                                             decision_in_deviations * deviation}));
    if (change) {
        change->seen_at += fewest_before_a_change;
        change->began_at += fewest_before_a_change;
    }
    return change;
}

}  // namespace wetfront
