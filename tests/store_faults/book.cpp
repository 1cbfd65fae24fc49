// SPDX-License-Identifier: Apache-2.0
#include "book.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <utility>

#include "store/verify.h"
#include "support/fake_clock.h"

namespace wetfront::test {
namespace {

template <class Record>
void put_by_id(std::vector<Record>& records, const Record& record) {
    const auto at = std::lower_bound(records.begin(), records.end(), record,
                                     [](const Record& a, const Record& b) { return a.id < b.id; });
    if (at != records.end() && at->id == record.id) {
        *at = record;
    } else {
        records.insert(at, record);
    }
}

template <class Record>
void sort_by_id(std::vector<Record>& records) {
    std::sort(records.begin(), records.end(), [](const Record& a, const Record& b) { return a.id < b.id; });
}

std::string difference(const Book& found, const Book& wanted) {
    const auto sizes = [](const Book& book) {
        std::size_t marks = 0;
        for (const auto& visit : book.visits) {
            marks += visit.marks.size();
        }
        return std::to_string(book.farms.size()) + " farms, " + std::to_string(book.houses.size()) +
               " houses, " + std::to_string(book.visits.size()) + " visits, " + std::to_string(marks) +
               " marks, " + std::to_string(book.templates.size()) + " templates";
    };
    std::string what = "found " + sizes(found) + "; last acknowledged " + sizes(wanted);
    for (const auto& [name, same] : {std::pair{"farms", found.farms == wanted.farms},
                                     {"houses", found.houses == wanted.houses},
                                     {"visits or marks", found.visits == wanted.visits},
                                     {"templates", found.templates == wanted.templates}}) {
        what += same ? "" : std::string{"; other "} + name;
    }
    return what;
}

/// The real file system, whatever stands before it.
SQLite::Database behind(const std::filesystem::path& file) {
    return SQLite::Database{file.string(), SQLite::OPEN_READWRITE, 0, "unix"};
}

}  // namespace

void Book::put(const Farm& farm) {
    put_by_id(farms, farm);
}
void Book::put(const House& house) {
    put_by_id(houses, house);
}
void Book::put(const SettingTemplate& described) {
    put_by_id(templates, described);
}

void Book::put(const Visit& visit) {
    auto with_marks = visit;
    with_marks.marks.clear();
    for (const auto& there : visits) {
        if (there.id == visit.id) {
            with_marks.marks = there.marks;
        }
    }
    put_by_id(visits, with_marks);
}

void Book::add_mark(const Id& visit, const Mark& mark) {
    for (auto& there : visits) {
        if (there.id == visit) {
            there.marks.push_back(mark);
        }
    }
}

void Book::set_undone(const Id& mark, bool undone) {
    for (auto& visit : visits) {
        for (auto& there : visit.marks) {
            if (there.id == mark) {
                there.undone = undone;
            }
        }
    }
}

Result<Book> read_book(const Store& store) {
    Book book;
    WF_TRY(book.farms, store.farms());
    WF_TRY(book.templates, store.setting_templates());
    WF_TRY(const auto houses, store.houses());
    for (const auto& line : houses) {
        WF_TRY(auto house, store.house(line.house));
        book.houses.push_back(std::move(house));
        WF_TRY(const auto visits, store.visits_of(line.house));
        for (const auto& summary : visits) {
            WF_CHECK(store.visit_file(summary.visit));
            WF_TRY(auto visit, store.visit(summary.visit));
            book.visits.push_back(std::move(visit));
        }
    }
    WF_CHECK(store.visit_with_running_stopwatch());
    sort_by_id(book.farms);
    sort_by_id(book.houses);
    sort_by_id(book.visits);
    sort_by_id(book.templates);
    return book;
}

std::string faults_of(const std::filesystem::path& file) {
    try {
        auto db = behind(file);
        const std::string whole = db.execAndGet("PRAGMA integrity_check").getString();
        if (whole != "ok") {
            return "integrity_check: " + whole;
        }
        if (SQLite::Statement{db, "PRAGMA foreign_key_check"}.executeStep()) {
            return "a reference leads nowhere";
        }
        if (SQLite::Statement{db, "SELECT device FROM entry GROUP BY device HAVING count(*) <> max(seq)"}
                .executeStep()) {
            return "numbers of entries have a gap";
        }
        if (SQLite::Statement{db, "SELECT id FROM mark NOT INDEXED GROUP BY +id HAVING count(*) > 1"}
                .executeStep()) {
            return "a mark is there twice";
        }
        if (SQLite::Statement{db,
                              "SELECT entry FROM entry EXCEPT SELECT entry FROM (SELECT entry FROM revision "
                              "UNION ALL SELECT entry FROM mark UNION ALL SELECT entry FROM mark_change)"}
                .executeStep()) {
            return "half a transaction: an entry without what was entered";
        }
        return {};
    } catch (const SQLite::Exception& problem) {
        return std::string{"behind the store: "} + problem.what();
    }
}

std::string told_by_verify(const std::filesystem::path& file, std::string_view known) {
    const FakeClock clock;
    const auto verdict = verify_store(file, clock);
    if (!verdict) {
        return verdict.error().text();
    }
    std::string wrong;
    for (const auto& check : verdict.value().checks) {
        if (check.wrong > 0 && check.name != known) {
            wrong += "verify, " + check.name + ": " + check.first_wrong + "; ";
        }
    }
    return wrong;
}

bool is_kept_copy(const std::filesystem::path& path) {
    const auto name = path.filename().string();
    return name.find(".before-v") != std::string::npos && name.find(".unfinished-") == std::string::npos;
}

std::string judge(const std::filesystem::path& file, std::span<const Book> allowed, Verify verify) {
    const FakeClock clock;
    {
        const auto store = Store::open(file, clock);
        if (!store) {
            return "does not open: " + store.error().text();
        }
        const auto book = read_book(store.value());
        if (!book) {
            return "does not read: " + book.error().text();
        }
        if (std::find(allowed.begin(), allowed.end(), book.value()) == allowed.end()) {
            return difference(book.value(), allowed.front());
        }
        if (store.value().loss()) {
            return "says that confirmed entries are missing: " + store.value().loss()->text();
        }
    }
    const auto wrong = faults_of(file);
    return wrong.empty() && verify == Verify::yes ? told_by_verify(file) : wrong;
}

std::string vague_in(const Error& error, const std::filesystem::path& file) {
    if (error.kind != Error::Kind::storage) {
        return "no storage error";
    }
    if (error.item.find(file.string()) == std::string::npos && !error.item.starts_with("revision ")) {
        return "does not name the file";
    }
    if (error.read.size() < 8 || error.accepted.size() < 8) {
        return "no reason or no way out";
    }
    std::string words = error.text();
    // The name of the test's own folder is made of any letters.
    const auto folder = file.parent_path().string();
    for (auto at = words.find(folder); at != std::string::npos; at = words.find(folder)) {
        words.erase(at, folder.size());
    }
    for (const auto* jargon :
         {"SQL", "json", "sqlite", "std::", "not an error", "basic_string", "logic error"}) {
        if (words.find(jargon) != std::string::npos) {
            return std::string{"speaks of "} + jargon;
        }
    }
    return {};
}

}  // namespace wetfront::test
