// SPDX-License-Identifier: Apache-2.0
// store_kills [number of kills] [seed]: the test of kills as long as wanted.
#include <charconv>
#include <cstring>
#include <iostream>

#include "kills.h"

namespace {

bool read_number(const char* text, int& number) {
    const auto* end = text + std::strlen(text);
    const auto [stop, problem] = std::from_chars(text, end, number);
    return problem == std::errc{} && stop == end && number > 0;
}

}  // namespace

int main(int count, char** arguments) {
    int kills = 10'000;
    int seed = 1;
    if (count > 3 || (count > 1 && !read_number(arguments[1], kills)) ||
        (count > 2 && !read_number(arguments[2], seed))) {
        std::cerr << "store_kills [number of kills, 10000] [seed, 1]\n";
        return 2;
    }
    const auto counts = wetfront::test::kill_writers(kills, static_cast<unsigned>(seed), &std::cout);
    std::cout << wetfront::test::text_of(counts) << '\n';
    return counts.wrong.empty() ? 0 : 1;
}
