// SPDX-License-Identifier: Apache-2.0
#include "base/ids.h"

#include <algorithm>
#include <memory>
#include <random>
#include <utility>

namespace wetfront {

Result<Id> parse_id(std::string_view text, std::string_view item) {
    const auto allowed = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
    };
    if (text.empty() || text.size() > 64 || !std::all_of(text.begin(), text.end(), allowed)) {
        return bad_input(std::string{item}, text, "an id has 1 to 64 letters, digits and hyphens");
    }
    return Id{std::string{text}};
}

IdSource::IdSource(const Clock& clock, RandomBits random) : clock_{clock}, random_{std::move(random)} {
    if (!random_) {
        random_ = [device = std::make_shared<std::random_device>()] {
            return (std::uint64_t{(*device)()} << 32U) | (*device)();
        };
    }
}

Id IdSource::next() {
    const auto time = static_cast<std::uint64_t>(clock_.wall_now().unix_ms) & 0xFFFF'FFFF'FFFFU;
    const std::uint64_t high = (time << 16U) | 0x7000U | (random_() & 0x0FFFU);
    const std::uint64_t low = 0x8000'0000'0000'0000U | (random_() >> 2U);
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (int nibble = 0; nibble < 32; ++nibble) {
        if (nibble == 8 || nibble == 12 || nibble == 16 || nibble == 20) {
            text += '-';
        }
        const std::uint64_t half = nibble < 16 ? high : low;
        text += digits[(half >> (60U - 4U * (static_cast<unsigned>(nibble) % 16U))) & 0xFU];
    }
    return Id{std::move(text)};
}

}  // namespace wetfront
