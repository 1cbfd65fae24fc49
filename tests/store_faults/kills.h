// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <iosfwd>
#include <string>

namespace wetfront::test {

struct KillCounts {
    int kills = 0;
    int while_opening = 0;  ///< before the writer said that the file is open
    int drafts = 0;         ///< files left half made by a kill, journals counted too
    int in_the_middle = 0;  ///< what was being written was found whole though never acknowledged
    int files = 0;
    long acknowledged = 0;  ///< entries, marks among them
    long marks = 0;
    std::string wrong;  ///< the first thing that was wrong, with seed and number of the kill; then it stops
};

/// Kills a writer that often with signal 9, at random moments of opening, marking, undoing, saving, signing
/// and closing; after each kill the file is opened, read in full, verified, and compared with what was
/// acknowledged. Each 25 kills begin a new file.
[[nodiscard]] KillCounts kill_writers(int kills, unsigned seed, std::ostream* progress = nullptr);

[[nodiscard]] std::string text_of(const KillCounts& counts);

}  // namespace wetfront::test
