// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <iosfwd>
#include <vector>

#include "cli/json_output.h"
#include "records/finding.h"
#include "records/visit.h"

namespace wetfront {

[[nodiscard]] JsonObject findings_json(const std::vector<Finding>& findings, const House& house,
                                       UnitSystem units);

/// One block a finding: severity and place, what is so, what to do, source.
void print_findings(std::ostream& out, const std::vector<Finding>& findings, const House& house,
                    UnitSystem units);

}  // namespace wetfront
