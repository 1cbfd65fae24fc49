// SPDX-License-Identifier: Apache-2.0
#include "properties.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace wetfront::fuzz {
namespace {

// A list of every key or unit that is accepted may be long; what was read never makes it longer.
constexpr std::size_t most_error_bytes = 2000;

}  // namespace

void must(bool holds, const char* sentence) {
    if (!holds) {
        std::fprintf(stderr, "does not hold: %s\n", sentence);
        std::abort();
    }
}

void must_be_told_well(const Error& error) {
    const auto text = error.text();
    must(!error.item.empty(), "an error names its item");
    must(!error.accepted.empty(), "an error says what is accepted");
    must(text.size() <= most_error_bytes, "an error is short, whatever was read");
    must(printable(text, most_error_bytes) == text, "an error is one line of plain UTF-8");
}

}  // namespace wetfront::fuzz
