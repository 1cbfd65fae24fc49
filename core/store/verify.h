// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/clock.h"
#include "base/ids.h"
#include "base/result.h"

namespace wetfront {

/// An entry of the record file: the device that wrote it and that device's number.
struct EntryName {
    Id device;
    std::int64_t number = 0;
};

/// One thing that was looked at.
struct StoreCheck {
    std::string name;          ///< in one word, for files
    std::string says;          ///< what holds if nothing is wrong
    std::int64_t checked = 0;  ///< how many there were to look at
    std::int64_t wrong = 0;
    std::optional<EntryName> first_entry;  ///< the first that is wrong, where it is an entry
    std::string first_wrong;               ///< what is wrong with it
};

/// The end of a device's chain. Noted elsewhere, it later proves that no entry up to it was changed or cut
/// off.
struct ChainHead {
    Id device;
    std::int64_t number = 0;  ///< of its last entry
    std::string hash;         ///< 64 letters, 0-9 and a-f
    /// How many up to it are not in this file, of what another device wrote. What is here is proved by the
    /// hash of the entry before it, which came with it.
    std::int64_t missing = 0;
};

struct StoreVerdict {
    std::vector<StoreCheck> checks;
    std::vector<ChainHead> heads;  ///< empty if they could not be read

    [[nodiscard]] bool sound() const;
};

/// Reads a whole record file and changes nothing: SQLite's own check, confirmed entries in the -wal
/// file, tables and rules as this version makes them, references, numbers without a gap, the chain of hashes,
/// every revision and mark readable, undone entries equal to what they restore, kept sheets the bytes that
/// were signed, what is kept aside as its device wrote it. Each check goes as far as the damage lets it.
/// `known` is a hash noted elsewhere (64 letters, 0-9 and a-f): one check more, that an entry has it. An
/// error only where the file cannot be read at all: not there, held by another program, not ours, of another
/// version, its first page damaged.
[[nodiscard]] Result<StoreVerdict> verify_store(const std::filesystem::path& file, const Clock& clock,
                                                const std::optional<std::string>& known = {});

}  // namespace wetfront
