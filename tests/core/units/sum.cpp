// SPDX-License-Identifier: Apache-2.0
// Compiled once for each line of wrong_sums.cmake with the sum in WETFRONT_SUM.
#include "units/quantities.h"

using namespace wetfront;  // NOLINT(google-build-using-namespace): keeps the sums readable

[[maybe_unused]] const auto sum = WETFRONT_SUM;
