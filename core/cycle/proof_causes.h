// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cycle/proof.h"

namespace wetfront {

/// What a failed proof of that timer points at, likeliest first, each once: what happens at the timer before
/// what happens to the water, because the one brings about the other. Empty where no line failed.
[[nodiscard]] std::vector<LikelyCause> causes_of(const Timer& timer, const std::vector<ProofLine>& lines);

}  // namespace wetfront
