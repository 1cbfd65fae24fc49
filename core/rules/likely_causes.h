// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "records/finding.h"

// What is behind most deviations, each with the next check that tells it from the others; a rule puts those
// that fit its case in order. All of it: common practice, no source.
namespace wetfront::likely {

// Between sump and header.
[[nodiscard]] LikelyCause air_on_suction();
[[nodiscard]] LikelyCause clogged_filter();
[[nodiscard]] LikelyCause half_shut_valve();
[[nodiscard]] LikelyCause worn_pump();
[[nodiscard]] LikelyCause leaking_supply();

// At the header.
[[nodiscard]] LikelyCause clogged_outlets();
[[nodiscard]] LikelyCause water_lost_at_header();  ///< flush valve, end cap, joints
[[nodiscard]] LikelyCause header_not_empty();      ///< at the start of a fill
[[nodiscard]] LikelyCause wrong_description();     ///< bore, outlets, spacing or supply pipe as entered

// At the pad.
[[nodiscard]] LikelyCause scaled_pad();
[[nodiscard]] LikelyCause blocked_distribution();  ///< between header and pad, or the gutter below
[[nodiscard]] LikelyCause start_not_dry();
[[nodiscard]] LikelyCause dry_streaks();
[[nodiscard]] LikelyCause air_around_pad();
[[nodiscard]] LikelyCause air_too_fast();
[[nodiscard]] LikelyCause thermometer_misled();
[[nodiscard]] LikelyCause passages_clogged();

}  // namespace wetfront::likely
