// SPDX-License-Identifier: Apache-2.0
#include "water/flow_measurement.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <string>
#include <vector>

#include "base/numbers.h"
#include "water/bleed.h"

namespace wetfront {
namespace {

constexpr double coverage = 2.0;
// Common practice, no source: a fill of 30 to 60 s, and 3 % as good enough to compare one visit with the
// next.
constexpr double good_share = 0.03;
constexpr double shortest_good_fill_s = 30.0;
constexpr double longest_good_fill_s = 60.0;

Result<double> above_zero(const char* item, double si, double most, const char* unit) {
    if (!(si > 0.0 && si <= most)) {
        return bad_input(item, print_number(si, 6) + " " + unit,
                         "above 0 to " + print_number(most, 0) + " " + unit);
    }
    return si;
}

Result<double> checked_time(Duration time) {
    return above_zero("time", in_seconds(time), 24.0 * 3600.0, "s");
}

Result<double> rate_of(Volume caught, Duration in) {
    WF_TRY(const double volume, above_zero("volume", in_si(caught), 100.0, "m3"));
    WF_TRY(const double time, checked_time(in));
    return volume / time;
}

Result<void> check_parts(const FlowUncertainty& parts) {
    const struct {
        const char* item;
        double value;
        double most;
        const char* unit;
    } rows[] = {
        {"uncertainty of hand timing", in_seconds(parts.hand), 60.0, "s"},
        {"uncertainty of a level reading", in_si(parts.rule), 1.0, "m"},
        {"uncertainty of the sump's area", parts.sump_area, 0.5, "of it"},
        {"uncertainty of the meter", parts.meter, 0.5, "of it"},
        {"uncertainty of the vessel", parts.vessel, 0.5, "of it"},
        {"uncertainty of the bucket", parts.bucket, 0.5, "of it"},
    };
    for (const auto& row : rows) {
        if (!(row.value >= 0.0 && row.value <= row.most)) {
            return bad_input(row.item, print_number(row.value, 6) + " " + row.unit,
                             "0 to " + print_number(row.most, 1) + " " + row.unit);
        }
    }
    return boost::outcome_v2::success();
}

double root_sum_of_squares(std::initializer_list<double> shares) {
    double sum = 0.0;
    for (const double share : shares) {
        sum += share * share;
    }
    return std::sqrt(sum);
}

MeasuredFlow measured(double flow, double standard_share) {
    return {from_si<VolumeFlow>(flow), from_si<VolumeFlow>(coverage * standard_share * flow), std::nullopt,
            std::nullopt};
}

bool is_coarse(const MeasuredFlow& flow) {
    return in_si(flow.share()) > good_share;
}

double standard_deviation(const std::vector<double>& values, double mean) {
    double squares = 0.0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

std::optional<Message> advice_for_outlets(const MeasuredFlow& flow, Duration shortest) {
    if (in_seconds(shortest) < shortest_good_fill_s) {
        return Message{WF_TEXT("A fill took only %1: take a larger vessel, so that each fill takes %2 to %3. "
                               "The flow is uncertain by %4."),
                       {any(shortest), any(seconds(shortest_good_fill_s)), any(seconds(longest_good_fill_s)),
                        any(flow.share())}};
    }
    if (is_coarse(flow)) {
        return Message{WF_TEXT("The flow is uncertain by %1: catch at more outlets, or shut the make-up and "
                               "time how fast the sump falls."),
                       {any(flow.share())}};
    }
    return std::nullopt;
}

}  // namespace

// u^2/q^2 = u_area^2/A^2 + 2 u_rule^2/h^2 + u_hand^2/t^2: JCGM 100:2008, 5.1.6, for a product of independent
// inputs; the level is read twice. Range: shares well below 1. Simplification: walls upright between the two
// levels.
Result<MeasuredFlow> flow_by_drawdown(Area sump_area, Length fall, Duration time,
                                      const FlowUncertainty& parts) {
    WF_TRY(const double area, above_zero("area of the sump", in_si(sump_area), 1000.0, "m2"));
    WF_TRY(const double height, above_zero("fall of the level", in_si(fall), 10.0, "m"));
    WF_TRY(const double duration, checked_time(time));
    WF_CHECK(check_parts(parts));
    const double levels = std::sqrt(2.0) * in_si(parts.rule) / height;
    const double timed = in_seconds(parts.hand) / duration;
    auto flow = measured(area * height / duration, root_sum_of_squares({parts.sump_area, levels, timed}));
    if (is_coarse(flow)) {
        flow.advice =
            levels > parts.sump_area
                ? Message{WF_TEXT(
                              "The flow is uncertain by %1, because the level fell by %2 only: let it fall "
                              "further, as long as the pump stays under water and nothing comes back."),
                          {any(flow.share()), any(fall, Scale::fine)}}
                : Message{WF_TEXT("The flow is uncertain by %1: measure the sump's area better, or let the "
                                  "level fall for longer."),
                          {any(flow.share())}};
    }
    return flow;
}

// u^2/q^2 = u_bucket^2/V^2 + u_hand^2/t^2, as above. At 45 US gpm a vessel of 5 US gal fills in 6.7 s: 2 %
// and 0.10 s / 6.67 s = 1.5 % make 2.5 %, twice which is 5 %.
Result<MeasuredFlow> flow_by_bucket(Volume volume, Duration time, const FlowUncertainty& parts) {
    WF_TRY(const double rate, rate_of(volume, time));
    WF_CHECK(check_parts(parts));
    auto flow =
        measured(rate, root_sum_of_squares({parts.bucket, in_seconds(parts.hand) / in_seconds(time)}));
    if (in_seconds(time) < shortest_good_fill_s || is_coarse(flow)) {
        flow.advice =
            Message{WF_TEXT("A vessel that fills in %1 is uncertain by %2: shut the make-up and time "
                            "how fast the sump falls instead."),
                    {any(time), any(flow.share())}};
    }
    return flow;
}

// u^2/q^2 = u_vessel^2/V^2 (one vessel: common to all catches) + timing^2/n + s^2/(n mean^2) (1 - n/N), the
// last being the variance of a mean of n drawn without return from N (any text on survey sampling; from
// memory). Timing is also part of what the catches differ by: counted twice, on the safe side.
Result<MeasuredFlow> flow_by_catches(std::span<const Catch> catches, std::size_t outlets,
                                     const FlowUncertainty& parts) {
    if (outlets < 1 || outlets > 5000) {
        return bad_input("number of outlets", std::to_string(outlets), "1 to 5000");
    }
    const auto least = std::min<std::size_t>(2, outlets);
    if (catches.size() < least || catches.size() > outlets) {
        return bad_input("catches", std::to_string(catches.size()),
                         std::to_string(least) + " to " + std::to_string(outlets) + ", one an outlet");
    }
    WF_CHECK(check_parts(parts));
    std::vector<double> rates;
    double sum = 0.0;
    double timing_squares = 0.0;
    Duration shortest = catches.front().time;
    for (const auto& fill : catches) {
        WF_TRY(const double rate, rate_of(fill.volume, fill.time));
        rates.push_back(rate);
        sum += rate;
        timing_squares += std::pow(rate * in_seconds(parts.hand) / in_seconds(fill.time), 2.0);
        shortest = std::min(shortest, fill.time);
    }
    const auto count = static_cast<double>(rates.size());
    const auto total = static_cast<double>(outlets);
    const double mean = sum / count;
    const double timed = std::sqrt(timing_squares) / sum;
    const double spread = rates.size() > 1 ? standard_deviation(rates, mean) / mean : 0.0;
    const double left_out = 1.0 - count / total;
    const double sampled = spread * std::sqrt(left_out / count);
    auto flow = measured(total * mean, root_sum_of_squares({parts.vessel, timed, sampled}));
    if (rates.size() > 1) {
        flow.spread = from_si<Fraction>(spread);
    }
    flow.advice = advice_for_outlets(flow, shortest);
    return flow;
}

// u^2/q^2 = u_meter^2/V^2 + u_hand^2/t^2, as above.
Result<MeasuredFlow> flow_by_meter(Volume counted, Duration time, const FlowUncertainty& parts) {
    WF_TRY(const double rate, rate_of(counted, time));
    WF_CHECK(check_parts(parts));
    auto flow = measured(rate, root_sum_of_squares({parts.meter, in_seconds(parts.hand) / in_seconds(time)}));
    if (is_coarse(flow)) {
        flow.advice =
            Message{WF_TEXT("The flow is uncertain by %1: read the meter over a longer time, or shut "
                            "the make-up and time how fast the sump falls."),
                    {any(flow.share())}};
    }
    return flow;
}

FlowAgreement agreement(const MeasuredFlow& a, const MeasuredFlow& b) {
    const double difference = in_si(a.flow) - in_si(b.flow);
    const double limit = std::hypot(in_si(a.expanded), in_si(b.expanded));
    return {from_si<VolumeFlow>(difference), from_si<VolumeFlow>(limit), std::abs(difference) <= limit};
}

std::optional<FlowPerLength> published_least_circulation(Length thickness) {
    if (!(in_si(thickness) >= 0.145 && in_si(thickness) <= 0.155)) {
        return std::nullopt;
    }
    const auto units = units_of(Kind::flow_per_length);
    const auto gpm_per_ft =
        std::find_if(units.begin(), units.end(), [](const Unit& unit) { return unit.symbol == "gpm/ft"; });
    return from_si<FlowPerLength>(to_si(*gpm_per_ft, 0.75));
}

Result<Circulation> circulation(VolumeFlow flow, Length pad_length, std::optional<Length> thickness,
                                std::optional<MassFlow> largest_evaporation) {
    if (!(in_si(flow) >= 0.0 && in_si(flow) <= 1.0)) {
        return bad_input("flow", print_number(in_si(flow), 6) + " m3/s", "0 to 1 m3/s");
    }
    WF_CHECK(above_zero("pad length", in_si(pad_length), 1000.0, "m"));
    Circulation result{flow / pad_length, std::nullopt, std::nullopt};
    if (thickness) {
        WF_CHECK(above_zero("pad thickness", in_si(*thickness), 1.0, "m"));
        result.published_least = published_least_circulation(*thickness);
    }
    if (largest_evaporation) {
        const double evaporated = in_si(*largest_evaporation);
        if (!(evaporated >= 0.0 && evaporated <= 1000.0)) {
            return bad_input("evaporation", print_number(evaporated, 6) + " kg/s", "0 to 1000 kg/s");
        }
        if (evaporated > 0.0) {
            result.times_evaporation = in_si(flow) / in_si(volume_flow_of(*largest_evaporation));
        }
    }
    return result;
}

}  // namespace wetfront
