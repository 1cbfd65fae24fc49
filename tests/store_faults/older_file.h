// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <filesystem>
#include <vector>

namespace wetfront::test {

/// A closed record file of an older schema version (1 to the newest but one) with the rows of
/// tests/data/store/schema_1_rows.sql.
void make_older_file(const std::filesystem::path& file, std::size_t version);

/// From which a migration is broken off at any moment: the first, whose way leads through all the others,
/// each of which is committed and gone on from, and the newest but one, whose files are the most.
[[nodiscard]] std::vector<std::size_t> older_versions();

}  // namespace wetfront::test
