// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/result.h"
#include "units/quantities.h"

namespace wetfront {

/// What seeing an event adds to a hand-timed interval, as standard uncertainties. Editable; assumed ones are
/// named so on the sheet.
struct EventUncertainty {
    Duration hand = seconds(0.10);  ///< start and stop together; Am. J. Phys. 87(2):110 (2019), 4,304 records
    Duration drip_or_patch = seconds(2.0);  ///< first drip or dry patch, assumed
    Duration by_signal = seconds(3.0);      ///< a helper or the controller starts the pump, assumed
    double dry_patch_share = 0.05;          ///< share of a dry-out time, assumed
    double single_reading_share = 0.05;     ///< stands for the spread of one reading, assumed
};

/// A longer interval between two marks is a missing mark, not a reading.
constexpr double longest_reading_s = 24.0 * 3600.0;

/// Where the random part of an uncertainty came from.
enum class SpreadFrom {
    readings,  ///< standard deviation of these readings
    pooled,    ///< one reading: pooled spread of like readings of the visit
    assumed,   ///< one reading and nothing to pool: an assumed share of it
};

/// Mean and uncertainty of repeated readings of one quantity.
struct TimingResult {
    int count = 0;
    Duration mean;
    std::optional<Duration> standard_deviation;  ///< none for one reading
    SpreadFrom spread_from = SpreadFrom::readings;
    Duration random;      ///< standard uncertainty of the mean from spread (type A, or what stands for it)
    Duration systematic;  ///< hand and seeing the event together (type B); does not shrink with repeats
    Duration standard;    ///< combined standard uncertainty u_c
    std::optional<double>
        degrees_of_freedom;        ///< effective, unrounded (Welch-Satterthwaite); none = infinite
    double coverage_factor = 0.0;  ///< k, 95 %, Student's t at the degrees of freedom cut to a whole number
    Duration expanded;             ///< U = k u_c
};

/// The spread of one group of like readings, for pooling.
struct Spread {
    double variance_s2 = 0.0;
    int degrees_of_freedom = 0;
};

/// Sum of squares over sum of degrees of freedom; none if no group has one.
[[nodiscard]] std::optional<Spread> pooled(std::span<const Spread> groups);

/// k for two-sided coverage `probability` in (0, 1); degrees of freedom at least 1, none = infinite. They are
/// cut to a whole number (GUM JCGM 100:2008, G.4.1, note), rounding noise of 1e-9 forgiven.
[[nodiscard]] Result<double> coverage_factor(double probability, std::optional<double> degrees_of_freedom);

/// One component of a combined uncertainty; no degrees of freedom = infinite.
struct Component {
    double standard_uncertainty;
    std::optional<double> degrees_of_freedom;
};
/// Welch-Satterthwaite (GUM JCGM 100:2008, G.2b), unrounded; none = infinite.
[[nodiscard]] std::optional<double> effective_degrees_of_freedom(std::span<const Component> components);

/// GUM evaluation (JCGM 100:2008, 4.2, 5.1, G.4) of readings (at least one, each finite and positive, at most
/// 24 h) with the type-B part `systematic` (finite, not negative), whose degrees of freedom count as
/// infinite. One reading: `pooled_spread` serves if given (variance finite and not negative, degrees of
/// freedom at least 1), else `single_reading_share` (0 to 1) of it, with infinite degrees of freedom.
[[nodiscard]] Result<TimingResult> evaluate(
    std::span<const Duration> readings, Duration systematic,
    std::optional<Spread> pooled_spread = std::nullopt,
    double single_reading_share = EventUncertainty{}.single_reading_share);

/// A reading that stands out: Grubbs' test, two-sided, at the 5 % level, for three readings or more; at most
/// one is named, the one farthest from the mean. It is shown, never dropped. Index into `readings`. G = max
/// |x - mean| / s > (n - 1)/sqrt(n) * sqrt(t^2/(n - 2 + t^2)), t = Student's upper 0.05/(2n) point for n - 2
/// degrees of freedom: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1. Assumes normal scatter.
[[nodiscard]] std::optional<std::size_t> outlier(std::span<const Duration> readings);

/// a minus b as a result of its own: standard uncertainties combined as if independent, which is on the safe
/// side where both share the hand and the eye. It has no standard deviation; `count` is the smaller one,
/// `spread_from` the weaker.
[[nodiscard]] TimingResult difference(const TimingResult& a, const TimingResult& b);

/// Two results side by side: the difference counts if it is larger than its expanded uncertainty.
struct Comparison {
    Duration difference;  ///< a minus b
    Duration expanded;    ///< 95 %, Welch-Satterthwaite over both
    bool differs = false;
};
[[nodiscard]] Comparison compare(const TimingResult& a, const TimingResult& b);

}  // namespace wetfront
