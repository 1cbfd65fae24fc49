// SPDX-License-Identifier: Apache-2.0
#include "water/uniformity.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "base/numbers.h"

namespace wetfront {

Result<Uniformity> uniformity_of(std::span<const double> flows) {
    if (flows.empty()) {
        return bad_input("outlet flows", "none", "at least one");
    }
    for (const double flow : flows) {
        if (!(flow >= 0.0) || !std::isfinite(flow)) {
            return bad_input("outlet flow", print_number(flow, 6), "0 or more");
        }
    }
    const auto count = static_cast<double>(flows.size());
    const double mean = std::accumulate(flows.begin(), flows.end(), 0.0) / count;
    if (!(mean > 0.0)) {
        return bad_input("outlet flows", "all 0", "water from at least one outlet");
    }
    std::vector<double> ordered{flows.begin(), flows.end()};
    const auto quarter = std::max(std::ptrdiff_t{1}, static_cast<std::ptrdiff_t>(std::lround(count / 4.0)));
    std::partial_sort(ordered.begin(), ordered.begin() + quarter, ordered.end());
    const double lowest =
        std::accumulate(ordered.begin(), ordered.begin() + quarter, 0.0) / static_cast<double>(quarter);
    double apart = 0.0;
    for (const double flow : flows) {
        apart += std::abs(flow - mean);
    }
    return Uniformity{lowest / mean, 1.0 - apart / (count * mean)};
}

}  // namespace wetfront
