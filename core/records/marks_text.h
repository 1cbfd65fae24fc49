// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "records/visit.h"

namespace wetfront {

/// The presses of a visit alone, for a place beside the record file: id, house, start and marks, as a visit
/// file has them. parse_visit() reads it back.
[[nodiscard]] std::string marks_file_text(const Visit& visit);

}  // namespace wetfront
