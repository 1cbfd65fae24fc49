// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string>
#include <string_view>

// Not for other folders.
namespace wetfront::store_detail {

/// SHA-256 (FIPS 180-4).
using Hash = std::array<unsigned char, 32>;

[[nodiscard]] Hash sha256(std::string_view bytes);
/// 64 letters, 0-9 and a-f.
[[nodiscard]] std::string in_hex(const Hash& hash);

}  // namespace wetfront::store_detail
