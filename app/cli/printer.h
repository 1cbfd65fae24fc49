// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli/cli.h"

namespace wetfront {

/// The printer of this build: the PDF painter where the wizard is built too, else none.
[[nodiscard]] SheetPrinter printer_of_this_build();
/// Likewise what reads pictures.
[[nodiscard]] PhotoTaker photo_taker_of_this_build();

}  // namespace wetfront
