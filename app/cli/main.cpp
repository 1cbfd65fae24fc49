// SPDX-License-Identifier: Apache-2.0
#include <iostream>

#include "cli/printer.h"

int main(int argc, char** argv) {
    const wetfront::SystemClock clock;
    const std::vector<std::string> arguments{argv + (argc > 0 ? 1 : 0), argv + argc};
    return static_cast<int>(wetfront::run_cli(
        arguments, {std::cin, std::cout, std::cerr, clock, wetfront::printer_of_this_build(),
                    wetfront::photo_taker_of_this_build()}));
}
