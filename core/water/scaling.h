// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

#include "base/result.h"
#include "units/message.h"
#include "units/quantities.h"

namespace wetfront {

/// What a water test says. Hardness and alkalinity as CaCO3.
struct WaterTest {
    Temperature temperature;         ///< 0 to 90 degC
    double ph = 7.0;                 ///< 4 to 11
    Concentration calcium_hardness;  ///< 1 to 5,000 mg/L (0.001 to 5 kg/m3)
    Concentration alkalinity;        ///< 1 to 5,000 mg/L (0.001 to 5 kg/m3)
    Concentration dissolved_solids;  ///< 10 to 10,000 mg/L (0.01 to 10 kg/m3)
};

/// Where water stands against the point at which it is just saturated with calcium carbonate.
struct ScalingIndex {
    double saturation_ph = 0.0;  ///< pHs
    double langelier = 0.0;      ///< pH - pHs: above 0 oversaturated
    double ryznar = 0.0;         ///< 2 pHs - pH: the lower, the more scale
};

/// Langelier and Ryznar index. Errors: a value outside its range above.
[[nodiscard]] Result<ScalingIndex> scaling_index(const WaterTest& water);

/// The ranges of WaterTest, which scaling_index() keeps: kg/m3.
struct WaterTestRange {
    static constexpr double least_hardness = 1e-3;  ///< and alkalinity
    static constexpr double most_hardness = 5.0;
    static constexpr double least_solids = 1e-2;
    static constexpr double most_solids = 10.0;
};

/// Dissolved solids in mg/L for each uS/cm of conductivity: assumed; common practice is 0.64 to 0.67, no
/// source. It depends on the salts.
constexpr double assumed_solids_factor = 0.65;

/// Dissolved solids where only conductivity was measured: 0 to 10 S/m (100 mS/cm), factor 0.5 to 0.9 mg/L per
/// uS/cm.
[[nodiscard]] Result<Concentration> dissolved_solids_from(Conductivity conductivity,
                                                          double factor = assumed_solids_factor);

/// What the index says by its definition: number, sign and which way the carbonate goes. No classes: the
/// sources at hand print single examples, not limits.
[[nodiscard]] Message langelier_in_words(double index);
[[nodiscard]] Message ryznar_in_words(double index);

/// Scale on a season's pads by one farm's figure: 168 g for each 1,000 L of water used (Griggs, MS thesis,
/// Auburn University). One farm, one well: other water lays down more or less. `used` 0 or more.
[[nodiscard]] Result<Mass> scale_by_one_farm(Volume used);

/// The part of hardness that can come down as scale: the smaller of calcium hardness and alkalinity, both as
/// CaCO3 and 0 or more.
[[nodiscard]] Result<Concentration> carbonate_hardness(Concentration calcium_hardness,
                                                       Concentration alkalinity);

/// Carbonate hardness that came with the water and did not leave with it, as CaCO3.
struct ScaleBalance {
    Mass brought_in;
    Mass carried_off;
    /// The difference. An upper bound of what sits on the pads: part lies in sump and filter. Below 0 where
    /// more leaves than comes: the sump was not at its steady state, or old scale dissolves.
    Mass laid_down;
};

/// The balance of a season. `make_up` is all water let in, `carried_off` what left as water: bleed, drift and
/// leaks, at most `make_up`; both 0 or more. Carbonate hardness 0 to 50 kg/m3. Without the sump's, water
/// carried off counts with the make-up's: what evaporates then leaves all its hardness, the most there can
/// be.
[[nodiscard]] Result<ScaleBalance> scale_by_balance(
    Volume make_up, Volume carried_off, Concentration make_up_hardness,
    std::optional<Concentration> sump_hardness = std::nullopt);

}  // namespace wetfront
