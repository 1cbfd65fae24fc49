// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "records/stroke.h"

namespace wetfront {

// What the demo's two invented people scribble where they sign: loops that no hand has drawn.

[[nodiscard]] std::vector<Stroke> technicians_scribble();
[[nodiscard]] std::vector<Stroke> growers_scribble();

}  // namespace wetfront
