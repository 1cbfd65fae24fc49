// SPDX-License-Identifier: Apache-2.0
#include "cli/printer.h"

namespace wetfront {

SheetPrinter printer_of_this_build() {
    return {};
}

PhotoTaker photo_taker_of_this_build() {
    return {};
}

}  // namespace wetfront
