// SPDX-License-Identifier: Apache-2.0
// A mark's commit beside a bare insert of the same row with the same pragmas, each in a transaction of its
// own and synced, in turns. The bare one knows no visit, entry, number or hash: its table is the journal's,
// with its indices (ratio_at_p99, to stay below 1.3), or one without any (ratio_to_plain_at_p99, told as
// well).
//
// The files are made in the temporary folder (TMPDIR). How long its disk takes for a sync decides the ratio,
// so that is measured too; with an argument every sync takes that many microseconds more: what a disk costs
// that has to reach its medium. The tail belongs to whatever else the machine does: run it on an idle one.
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <map>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "bench_files.h"
#include "store/store.h"
#include "support/visit_builder.h"

namespace {

using namespace wetfront;

/// The 99th percentile of 2,000 is the 20th largest: moved by a few that the machine delayed. Where syncs are
/// fast there is time for more.
constexpr int commits_with(std::chrono::microseconds sync_more) {
    return sync_more.count() == 0 ? 8000 : 2000;
}
constexpr int columns = 16;

/// While it lives every sync of SQLite takes longer.
class SlowerSync {
public:
    explicit SlowerSync(std::chrono::microseconds by) : vfs_{*sqlite3_vfs_find(nullptr)} {
        more = by;
        real = sqlite3_vfs_find(nullptr);
        vfs_.zName = "slower-sync";
        vfs_.xOpen = [](sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* got) {
            const int result = real->xOpen(real, name, file, flags, got);
            if (file->pMethods != nullptr) {
                auto& slowed = slowed_methods[file->pMethods];
                slowed.methods = *file->pMethods;
                slowed.sync = file->pMethods->xSync;
                slowed.methods.xSync = [](sqlite3_file* synced, int how) {
                    std::this_thread::sleep_for(more);
                    return reinterpret_cast<const Slowed*>(synced->pMethods)->sync(synced, how);
                };
                file->pMethods = &slowed.methods;
            }
            return result;
        };
        sqlite3_vfs_register(&vfs_, 1);
    }
    ~SlowerSync() {
        sqlite3_vfs_unregister(&vfs_);
        sqlite3_vfs_register(real, 1);
    }
    SlowerSync(const SlowerSync&) = delete;
    SlowerSync& operator=(const SlowerSync&) = delete;

private:
    /// Its methods come first: a pointer to them is one to all of it.
    struct Slowed {
        sqlite3_io_methods methods;
        int (*sync)(sqlite3_file*, int);
    };
    // SQLite hands its callbacks no place for these.
    static inline std::chrono::microseconds more{};
    static inline sqlite3_vfs* real = nullptr;
    static inline std::map<const sqlite3_io_methods*, Slowed> slowed_methods;  ///< by the real ones
    sqlite3_vfs vfs_;
};

/// How the journal's marks are kept: table and indices as the file `like` has them, but for the entry.
std::string journal_of_marks(const std::filesystem::path& like) {
    const SQLite::Database db{like, SQLite::OPEN_READONLY};
    SQLite::Statement rows{db,
                           "SELECT sql FROM sqlite_schema WHERE tbl_name = 'mark' AND type IN "
                           "('table', 'index') AND sql IS NOT NULL ORDER BY type DESC"};
    std::string made;
    while (rows.executeStep()) {
        made += rows.getColumn(0).getString() + ";";
    }
    const std::string to_entry = " REFERENCES entry (entry)";
    const auto at = made.find(to_entry);
    if (at == std::string::npos) {
        give_up("the table of marks is not as it was");
    }
    return made.erase(at, to_entry.size());
}

/// Nothing but the insert.
class Bare {
public:
    Bare(const std::filesystem::path& file, const std::string& table)
        : db_{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE} {
        db_.exec(
            "PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; "
            "PRAGMA foreign_keys=ON; PRAGMA recursive_triggers=ON; PRAGMA cell_size_check=ON; "
            "PRAGMA temp_store=MEMORY; PRAGMA wal_autocheckpoint=4000");
        db_.exec(table);
        insert_.emplace(db_,
                        "INSERT INTO mark (id, visit, kind, pump, bank, boot_id, boot_ns, unix_ms, "
                        "utc_offset_min, timed_by, stamp_error_ns, seen, started_by, pads, fans_running, "
                        "proof) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    }
    void add(const Id& visit, const Mark& mark) {
        SQLite::Transaction transaction{db_, SQLite::TransactionBehavior::IMMEDIATE};
        auto& row = *insert_;
        row.bind(1, mark.id.text);
        row.bind(2, visit.text);
        row.bind(3, std::string{enum_name(mark.kind)});
        row.bind(4, mark.pump.text);
        row.bind(5);
        row.bind(6, mark.at.boot_id);
        row.bind(7, mark.at.boot_ns);
        row.bind(8, mark.wall.unix_ms);
        row.bind(9, mark.wall.utc_offset_minutes);
        row.bind(10, std::string{enum_name(mark.timed_by)});
        row.bind(11);
        row.bind(12, std::string{enum_name(mark.seen)});
        row.bind(13, std::string{enum_name(mark.started_by)});
        row.bind(14, std::string{enum_name(mark.pads)});
        row.bind(15);
        row.bind(columns, mark.proof ? 1 : 0);
        row.exec();
        row.reset();
        transaction.commit();
    }

private:
    SQLite::Database db_;
    std::optional<SQLite::Statement> insert_;
};

template <class Work>
double microseconds(Work&& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - begin).count();
}

double percentile(std::vector<double>& times, std::size_t of_hundred) {
    const auto place = times.begin() + static_cast<std::ptrdiff_t>(times.size() * of_hundred / 100);
    std::nth_element(times.begin(), place, times.end());
    return *place;
}

/// What the disk takes for a page behind the end of a file.
double sync_us(const std::filesystem::path& path) {
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    constexpr std::array<char, 4096> page{};
    std::vector<double> times;
    for (int i = 0; i < 200; ++i) {
        if (::write(file, page.data(), page.size()) != static_cast<ssize_t>(page.size())) {
            give_up("the temporary folder takes no file");
        }
        times.push_back(microseconds([&] { ::fdatasync(file); }));
    }
    ::close(file);
    return percentile(times, 50);
}

VisitFile a_visit() {
    return test::VisitBuilder{2}.file();
}

void commit_of_a_mark(benchmark::State& state) {
    const SystemClock clock;
    const std::chrono::microseconds sync_more{state.range(0)};
    const SlowerSync slower{sync_more};
    const int commits = commits_with(sync_more);
    for (auto _ : state) {
        const Folder folder{"mark-commit"};
        const auto file = a_visit();
        auto store = value_of(Store::open(folder.file("records"), clock));
        if (const auto added = store.add(file); !added) {
            give_up(added.error().text());
        }
        { value_of(Store::open(folder.file("another"), clock)); }
        Bare bare{folder.file("bare"), journal_of_marks(folder.file("another"))};
        Bare plain{folder.file("plain"),
                   "CREATE TABLE mark (id TEXT, visit TEXT, kind TEXT, pump TEXT, bank TEXT, boot_id TEXT, "
                   "boot_ns INTEGER, unix_ms INTEGER, utc_offset_min INTEGER, timed_by TEXT, stamp_error_ns "
                   "INTEGER, seen TEXT, started_by TEXT, pads TEXT, fans_running INTEGER, proof INTEGER) "
                   "STRICT"};
        Mark mark;
        mark.kind = MarkKind::pump_start;
        mark.pump = file.house.pumps.front().id;
        std::vector<double> ours;
        std::vector<double> journal;
        std::vector<double> table;
        for (int i = 0; i < commits; ++i) {
            mark.id = store.new_id();
            mark.at = clock.boot_now();
            mark.wall = clock.wall_now();
            bool kept = false;
            ours.push_back(microseconds([&] { kept = store.add_mark(file.visit.id, mark).has_value(); }));
            if (!kept) {
                give_up("a mark was not stored");
            }
            journal.push_back(microseconds([&] { bare.add(file.visit.id, mark); }));
            table.push_back(microseconds([&] { plain.add(file.visit.id, mark); }));
        }
        state.counters["commits"] = commits;
        state.counters["sync_us"] = sync_us(folder.file("synced")) + static_cast<double>(state.range(0));
        state.counters["mark_p50_us"] = percentile(ours, 50);
        state.counters["bare_p50_us"] = percentile(journal, 50);
        state.counters["plain_p50_us"] = percentile(table, 50);
        state.counters["mark_p99_us"] = percentile(ours, 99);
        state.counters["bare_p99_us"] = percentile(journal, 99);
        state.counters["plain_p99_us"] = percentile(table, 99);
        state.counters["ratio_at_p50"] = percentile(ours, 50) / percentile(journal, 50);
        state.counters["ratio_at_p99"] = percentile(ours, 99) / percentile(journal, 99);
        state.counters["ratio_to_plain_at_p99"] = percentile(ours, 99) / percentile(table, 99);
    }
}
BENCHMARK(commit_of_a_mark)
    ->ArgName("sync_us_more")
    ->Arg(0)
    ->Arg(1500)
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
