// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <string>

#include "base/clock.h"
#include "base/result.h"

namespace wetfront {

/// Names a record for ever. 1 to 64 characters of a-z, A-Z, 0-9 and '-'; new ones are UUIDs of version 7.
struct Id {
    std::string text;

    [[nodiscard]] bool empty() const { return text.empty(); }
    friend bool operator==(const Id&, const Id&) = default;
    // LLVM 14 takes the 0 of a defaulted comparison for a pointer. NOLINTNEXTLINE(modernize-use-nullptr)
    friend auto operator<=>(const Id&, const Id&) = default;
};

[[nodiscard]] Result<Id> parse_id(std::string_view text, std::string_view item);

/// Makes ids: RFC 9562 section 5.7 (48 bits of Unix milliseconds, version, 74 random bits).
class IdSource {
public:
    using RandomBits = std::function<std::uint64_t()>;
    /// `random` defaults to the system's generator; tests pass their own.
    explicit IdSource(const Clock& clock, RandomBits random = {});
    [[nodiscard]] Id next();

private:
    const Clock& clock_;
    RandomBits random_;
};

}  // namespace wetfront
