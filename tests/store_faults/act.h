// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "book.h"
#include "support/fake_clock.h"

namespace wetfront::test {

/// A step of somebody's work with the store, and what the file says once it is acknowledged. Without work:
/// the program is closed and started again, the file viewed read-only between if `views`.
struct Act {
    std::string name;
    std::function<Result<void>(Store&)> work = {};
    std::function<void(Book&)> effect = [](Book&) {};
    bool views = false;
};

[[nodiscard]] Act reopen_act();
[[nodiscard]] Act view_act();
[[nodiscard]] Act mark_act(const std::string& visit, const std::string& mark, int second);
[[nodiscard]] Act undone_act(const std::string& mark, bool undone);
template <class Record>
[[nodiscard]] Act save_act(const Record& record) {
    return {"save", [record](Store& store) { return store.save(record); },
            [record](Book& book) { book.put(record); }};
}

/// A whole visit from an empty store to a signed one and its correction.
[[nodiscard]] std::vector<Act> whole_visit();
/// The same ways of writing, each once or twice: for faults that are too many for the whole.
[[nodiscard]] std::vector<Act> short_visit();
/// Goes on in the file of make_older_file().
[[nodiscard]] std::vector<Act> visit_after_migration();

/// What came of acts on a disk that may fail. Each act that fails is tried once more, as the program does.
struct Outcome {
    /// What the file may say: all that was acknowledged, and besides at most one of the acts that failed
    /// since, whole. One that failed before the file was opened again may have come to light then, and have
    /// others after it.
    std::vector<Book> allowed;
    std::vector<Error> errors;
    std::string wrong;           ///< not empty: an answer that nothing explains
    std::optional<Store> store;  ///< still open, if it could be opened
};

struct Listener {
    std::function<void(const Act& act)> begins = [](const Act&) {};
    std::function<void()> acknowledged = [] {};
};

/// Opens the file and does the acts. `before`: what the file says already.
[[nodiscard]] Outcome perform(const std::vector<Act>& acts, const std::filesystem::path& file,
                              FakeClock& clock, const Book& before = {}, const Listener& listener = {});

}  // namespace wetfront::test
