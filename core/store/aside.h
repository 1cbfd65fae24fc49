// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "store/bundle_text.h"

// Not for other folders. Everything here may throw.
namespace wetfront::store_detail {

/// Every entry that is kept aside, for aside_entry_at().
constexpr const char* aside_entries =
    "SELECT d.id, a.seq, a.unix_ms, a.utc_offset_min, a.before, a.hash, a.content, a.fields, a.device, a.why "
    "FROM aside AS a JOIN device AS d ON d.device = a.device ORDER BY d.id, a.seq";

/// The entry of a row of that question. An error if its fields cannot be read.
[[nodiscard]] Result<BundleEntry> aside_entry_at(const SQLite::Statement& row);

/// Keeps an entry of the device with that key, and why it is not taken in.
void put_aside(Statements& sql, std::int64_t device, const BundleEntry& entry, const std::string& why);

}  // namespace wetfront::store_detail
