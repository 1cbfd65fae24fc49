// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "store/store.h"

namespace wetfront::test {

/// All that a record file says, read through the store. Sorted by id; marks in the order of pressing.
struct Book {
    std::vector<Farm> farms;
    std::vector<House> houses;
    std::vector<Visit> visits;
    std::vector<SettingTemplate> templates;

    void put(const Farm& farm);
    void put(const House& house);
    void put(const Visit& visit);  ///< all but its marks, like Store::save
    void put(const SettingTemplate& described);
    void add_mark(const Id& visit, const Mark& mark);
    void set_undone(const Id& mark, bool undone);

    friend bool operator==(const Book&, const Book&) = default;
};

/// Every record and list, or the first error.
[[nodiscard]] Result<Book> read_book(const Store& store);

/// What is wrong with the closed file seen from behind the store's back: SQLite's check of the whole file,
/// references, numbers without a gap, a mark that is there twice. Empty if nothing is.
[[nodiscard]] std::string faults_of(const std::filesystem::path& file);

/// What `store verify` finds wrong with the closed file, or why it cannot read it. Empty if nothing. What
/// check `known` finds is left out.
[[nodiscard]] std::string told_by_verify(const std::filesystem::path& file, std::string_view known = {});

/// True for a copy that the store keeps before a migration, not for one that is being made.
[[nodiscard]] bool is_kept_copy(const std::filesystem::path& path);

enum class Verify { yes, no };

/// Opens the file as the next start of the program does, reads all of it, closes it, looks behind and asks
/// `store verify`. Empty if it says one of `allowed`, and no loss; otherwise what is wrong.
[[nodiscard]] std::string judge(const std::filesystem::path& file, std::span<const Book> allowed,
                                Verify verify = Verify::yes);

/// What an error lacks of: what failed (the file or the revision in it), why, what is safe or can be done.
/// Empty if nothing.
[[nodiscard]] std::string vague_in(const Error& error, const std::filesystem::path& file);

}  // namespace wetfront::test
