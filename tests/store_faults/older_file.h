// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>

namespace wetfront::test {

/// A closed record file of an older schema version (1 to the newest but one) with the rows of
/// tests/data/store/schema_1_rows.sql.
void make_older_file(const std::filesystem::path& file, std::size_t version);

}  // namespace wetfront::test
