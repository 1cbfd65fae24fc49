// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>

// Not for other folders.
namespace wetfront::store_detail {

/// What stands in the -wal file beside a record file (sqlite.org/fileformat2.html, 4: header, frames of a
/// page each, each frame's checksum continuing the one before it).
struct WriteAhead {
    std::int64_t frames = 0;  ///< from the first on, up to one whose checksum does not fit
    /// Behind these stand frames that were committed, synced and confirmed, so one before them has changed
    /// since, and what was entered from there on is not read.
    ///
    /// How that differs from power that went in the middle of a commit: its frames are synced before the next
    /// commit writes any (synchronous=FULL), so the power takes frames of the last commit only, in any order.
    /// A frame that continues a whole frame with the mark of a commit was written after that commit was
    /// synced. A change within the last commit, or in the last two frames of the one before it, looks like
    /// lost power.
    bool broken = false;
};

/// Reads the file whole. Not there, empty or not readable: nothing in it. Only while nobody writes it.
/// `page`: PRAGMA page_size of the record file.
[[nodiscard]] WriteAhead look_at_write_ahead(const std::filesystem::path& wal, std::size_t page);

}  // namespace wetfront::store_detail
