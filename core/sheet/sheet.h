// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "cycle/advice.h"
#include "records/finding.h"
#include "records/sheet_content.h"
#include "records/visit.h"
#include "trend/history_words.h"

namespace wetfront {

/// The commissioning sheet, or the one page in plain words for the grower.
enum class SheetKind { commissioning, summary };

/// The bytes of photos by their SHA-256.
using PhotoBytes = std::map<std::string, std::string>;

/// What a sheet is made from besides the visit itself.
struct SheetInputs {
    const VisitFile& file;
    const VisitTimings& timings;
    const Advice& advice;
    const std::vector<Finding>& found;  ///< findings on the settings found
    const std::vector<Finding>& left;   ///< findings on the settings left
    int revision = 1;
    WallTime issued;
    std::string
        record_hash{};  ///< record_hash() of the file (store/record_hash.h); empty: no code is printed
    std::vector<FollowedTrend> trends{};  ///< against earlier visits (trends_after()); empty: there are none
    const PhotoBytes* photos = nullptr;   ///< of the visit, as far as they are at hand; null: none is
};

/// The commissioning sheet as data (ISO/IEC 17025 clause 7.8 as yardstick, no accreditation claimed). Missing
/// parts say "not measured" or "not entered"; nothing is left out silently. A value left is marked where a
/// value is advised and the two differ; where running without rest is advised, any setting that never rests
/// is as advised.
[[nodiscard]] SheetContent commissioning_sheet(const SheetInputs& inputs);

/// The same visit on one page in plain words for the grower: what the pads need, what was changed, one period
/// to scale, what is left to do. Of changes and things to do the first few stand on it, with the number of
/// those that do not.
[[nodiscard]] SheetContent grower_summary(const SheetInputs& inputs);

/// One or the other.
[[nodiscard]] inline SheetContent sheet_of(const SheetInputs& inputs, SheetKind kind) {
    return kind == SheetKind::summary ? grower_summary(inputs) : commissioning_sheet(inputs);
}

/// One period of one timer's slowest bank for a set of settings; none where no period or on-time is known,
/// unless the timer runs on demand (then continuous, without a period). Dry-out is shortened by the
/// evaporation ratio (E_design / E_test, above 0) where it is given. That a pad stays wet is said of the
/// design hour only: never without the ratio.
[[nodiscard]] std::optional<CycleStrip> cycle_strip(const VisitFile& file, const VisitTimings& timings,
                                                    const TimerSettings& settings, Message label,
                                                    std::optional<double> evaporation_ratio = std::nullopt);

}  // namespace wetfront
