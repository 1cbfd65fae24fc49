// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <optional>
#include <span>

#include "base/result.h"
#include "units/message.h"
#include "units/quantities.h"

namespace wetfront {

/// What a measured flow's parts are uncertain by: standard uncertainties, so half of what is commonly written
/// behind a "±". All but the hand are assumed; editable, and named as assumed on the sheet. Shares 0 to 0.5,
/// the others 0 or more.
struct FlowUncertainty {
    /// Start and stop together: Manual timing in physics experiments, Am. J. Phys. 87(2):110 (2019).
    Duration hand = seconds(0.10);
    Length rule = from_si<Length>(1e-3);  ///< one reading of a level: ± 2 mm, assumed
    double sump_area = 0.01;              ///< by tape: ± 2 %, assumed
    double meter = 0.01;                  ///< ± 2 % of its reading, assumed
    double vessel = 0.01;                 ///< filled to a mark at one outlet: ± 2 %, assumed
    double bucket = 0.02;                 ///< filled to the brim by the whole flow: ± 4 %, assumed
};

/// A flow with its uncertainty: components combined in quadrature, k = 2 (about 95 %). Simplification:
/// Student's factor for few catches is left out, so that U is a little low with fewer than ten.
struct MeasuredFlow {
    VolumeFlow flow;
    VolumeFlow expanded;             ///< U, k = 2
    std::optional<Fraction> spread;  ///< of catches: standard deviation of the catches over their mean
    std::optional<Message> advice;  ///< how to measure better, where U is above 3 % or a fill took under 30 s

    [[nodiscard]] Fraction share() const { return expanded / flow; }  ///< U over the flow
};

/// Water caught at one outlet: volume above 0 to 100 m3, time above 0 to 24 h.
struct Catch {
    Volume volume;
    Duration time;
};

/// q = area x fall / time. Only with the make-up shut and while no water comes back from the pads: from a
/// pump's start until the gutter runs, or with its return led away. Area above 0 to 1,000 m2, fall above 0 to
/// 10 m, time as of a catch.
[[nodiscard]] Result<MeasuredFlow> flow_by_drawdown(Area sump_area, Length fall, Duration time,
                                                    const FlowUncertainty& parts = {});

/// The pump's whole flow into one vessel: volume and time as of a catch.
[[nodiscard]] Result<MeasuredFlow> flow_by_bucket(Volume volume, Duration time,
                                                  const FlowUncertainty& parts = {});

/// Mean of the catches x number of outlets (1 to 5,000, not fewer than catches). At least two catches, unless
/// there is but one outlet; spread them from the pump end to the far end. The catches count as a sample
/// without return: where all outlets are caught, spread adds nothing.
[[nodiscard]] Result<MeasuredFlow> flow_by_catches(std::span<const Catch> catches, std::size_t outlets,
                                                   const FlowUncertainty& parts = {});

/// What a meter counted in a time, within the same limits.
[[nodiscard]] Result<MeasuredFlow> flow_by_meter(Volume counted, Duration time,
                                                 const FlowUncertainty& parts = {});

/// Two measurements of one flow side by side.
struct FlowAgreement {
    VolumeFlow difference;  ///< a - b
    VolumeFlow limit;       ///< sqrt(Ua^2 + Ub^2)
    bool agree = false;     ///< the difference, either way, is at most the limit
};
[[nodiscard]] FlowAgreement agreement(const MeasuredFlow& a, const MeasuredFlow& b);

/// Least flow for each metre of a pad of that thickness; none where no number is published for it. 150 mm (6
/// in; 145 to 155 mm counts): 0.75 US gpm/ft, 9.314 L/(min m), Univ. of Georgia, Poultry Housing Tips 14(4),
/// 2002.
[[nodiscard]] std::optional<FlowPerLength> published_least_circulation(Length thickness);

/// Circulation is to be about this many times the largest evaporation: the same source.
constexpr double published_times_evaporation = 10.0;

/// A flow against the pad that it wets.
struct Circulation {
    FlowPerLength flow;
    std::optional<FlowPerLength> published_least;
    std::optional<double> times_evaporation;  ///< none where no evaporation is given, or it is 0
};

/// Flow 0 to 1 m3/s over all pads of that length (above 0 to 1,000 m); thickness above 0 to 1 m, evaporation
/// 0 to 1,000 kg/s, the largest of all those pads.
[[nodiscard]] Result<Circulation> circulation(VolumeFlow flow, Length pad_length,
                                              std::optional<Length> thickness = std::nullopt,
                                              std::optional<MassFlow> largest_evaporation = std::nullopt);

}  // namespace wetfront
