// SPDX-License-Identifier: Apache-2.0
#include "store/sha256.h"

#include <sodium/crypto_hash_sha256.h>

#include <tuple>

namespace wetfront::store_detail {

static_assert(std::tuple_size_v<Hash> == crypto_hash_sha256_BYTES);

// This part of the library has no state of its own and wants no sodium_init().
Hash sha256(std::string_view bytes) {
    Hash hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hash;
}

std::string in_hex(const Hash& hash) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    for (const unsigned char byte : hash) {
        text += digits[byte >> 4U];
        text += digits[byte & 0xFU];
    }
    return text;
}

}  // namespace wetfront::store_detail
