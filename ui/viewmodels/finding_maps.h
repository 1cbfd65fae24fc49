// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantList>
#include <vector>

#include "format/formatter.h"
#include "records/finding.h"
#include "records/house.h"

namespace wetfront::ui {

/// Which findings a page shows.
enum class FindingsOf {
    timer,            ///< that timer's settings
    timer_and_house,  ///< the same, and what is about no timer: equipment, air, water
};

/// Findings as QML shows them: {severity, message, remedy, source, causes}. Where a house has several banks,
/// the message names its bank.
[[nodiscard]] QVariantList finding_maps(const std::vector<Finding>& findings, const House& house,
                                        const Id& timer, FindingsOf which, const Formatter& formatter);

}  // namespace wetfront::ui
