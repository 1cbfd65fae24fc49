// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>

#include "base/clock.h"
#include "base/result.h"

// Not for other folders.
namespace wetfront::store_detail {

/// The name under which a whole copy waits to take the record file's place. As long as a file of such a name
/// is there, the restore is decided and not finished.
[[nodiscard]] std::filesystem::path waiting_copy(const std::filesystem::path& record_file, WallTime now);

/// Moves the record file with its -wal and -shm to "<file>.replaced-<time>" and the waiting copy to its
/// place; nothing if no copy waits. Can be interrupted anywhere and called again. Returns where the replaced
/// file is. Not while anybody has the record file open.
[[nodiscard]] Result<std::optional<std::filesystem::path>> finish_restore(
    const std::filesystem::path& record_file);

}  // namespace wetfront::store_detail
