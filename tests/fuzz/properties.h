// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "base/result.h"

namespace wetfront::fuzz {

[[nodiscard]] inline std::string_view text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// Stops the program with the sentence if it does not hold; libFuzzer then keeps the input.
void must(bool holds, const char* sentence);

/// A refusal names its item, says what is accepted, and can be shown: one line of plain UTF-8, however long
/// or broken what was read is.
void must_be_told_well(const Error& error);

/// What reads also writes, and reads back equal; writing again gives the same text.
template <class Parse, class Write>
void must_survive_writing(std::string_view text, Parse parse, Write write) {
    const auto read = parse(text);
    if (!read) {
        must_be_told_well(read.error());
        return;
    }
    const auto written = write(read.value());
    const auto again = parse(written);
    must(again.has_value(), "what was written is read");
    must(again.value() == read.value(), "what was written reads back equal");
    must(write(again.value()) == written, "writing twice gives the same text");
}

}  // namespace wetfront::fuzz
