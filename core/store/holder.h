// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>

// Not for other folders. Linux only: file locks of POSIX, and /proc.
namespace wetfront::store_detail {

/// True if this process has the file open. Must be asked before any other call opens it: POSIX drops all
/// locks that a process has on a file as soon as it closes any descriptor of it.
[[nodiscard]] bool open_in_this_process(const std::filesystem::path& file);

/// The other process that has locked the file, named as below; none: nobody has. Only where
/// open_in_this_process() is false.
[[nodiscard]] std::optional<std::string> locked_by(const std::filesystem::path& file);

/// Which other process has locked the file, as "wetfront (process 1234)"; "another program" if that cannot be
/// learnt. Only where open_in_this_process() is false.
[[nodiscard]] std::string holder_of(const std::filesystem::path& file);

}  // namespace wetfront::store_detail
