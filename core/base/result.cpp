// SPDX-License-Identifier: Apache-2.0
#include "base/result.h"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace wetfront {
namespace {

// Length of the well-formed UTF-8 sequence at the front of `bytes`, or 0 (Unicode 15, table 3-7).
std::size_t sequence_length(std::string_view bytes) {
    const auto at = [&](std::size_t i) { return static_cast<std::uint8_t>(bytes[i]); };
    const auto in = [&](std::size_t i, unsigned low, unsigned high) {
        return i < bytes.size() && at(i) >= low && at(i) <= high;
    };
    const unsigned lead = at(0);
    if (lead < 0x80) {
        return 1;
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
        return in(1, 0x80, 0xBF) ? 2 : 0;
    }
    if (lead >= 0xE0 && lead <= 0xEF) {
        const unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
        const unsigned high = lead == 0xED ? 0x9F : 0xBF;
        return in(1, low, high) && in(2, 0x80, 0xBF) ? 3 : 0;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        const unsigned low = lead == 0xF0 ? 0x90 : 0x80;
        const unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
        return in(1, low, high) && in(2, 0x80, 0xBF) && in(3, 0x80, 0xBF) ? 4 : 0;
    }
    return 0;
}

// C0, DEL and C1 controls: U+0000 to U+001F, U+007F to U+009F.
bool is_control(std::string_view sequence, std::size_t length) {
    const auto at = [&](std::size_t i) { return static_cast<std::uint8_t>(sequence[i]); };
    return length == 1 ? at(0) < 0x20 || at(0) == 0x7F : length == 2 && at(0) == 0xC2 && at(1) < 0xA0;
}

}  // namespace

bool is_utf8(std::string_view bytes) {
    while (!bytes.empty()) {
        const auto length = sequence_length(bytes);
        if (length == 0) {
            return false;
        }
        bytes.remove_prefix(length);
    }
    return true;
}

std::string printable(std::string_view text, std::size_t most_bytes) {
    std::string shown;
    while (!text.empty()) {
        if (shown.size() >= most_bytes) {
            return shown + "...";
        }
        const auto length = sequence_length(text);
        if (length == 0 || is_control(text, length)) {
            shown += '?';
            text.remove_prefix(std::max<std::size_t>(length, 1));
            continue;
        }
        shown += text.substr(0, length);
        text.remove_prefix(length);
    }
    return shown;
}

std::string Error::text() const {
    std::string line = item;
    if (!read.empty()) {
        line += ": " + (kind == Kind::bad_input ? "'" + read + "'" : read);
    }
    if (!accepted.empty()) {
        line += ": " + accepted;
    }
    return line;
}

Error bad_input(std::string item, std::string_view read, std::string accepted) {
    return Error{Error::Kind::bad_input, std::move(item), printable(read), std::move(accepted)};
}

Error storage_error(std::string item, std::string_view cause, std::string what_to_do) {
    return Error{Error::Kind::storage, std::move(item), printable(cause, 300), std::move(what_to_do)};
}

}  // namespace wetfront
