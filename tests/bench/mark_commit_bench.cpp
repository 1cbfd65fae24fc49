// SPDX-License-Identifier: Apache-2.0
// A mark's commit beside a bare insert of the same values with the same pragmas, each synced, in turns. The
// counter ratio_at_p99 is to stay below 1.3. Both files are made in the temporary folder (TMPDIR): on a
// folder in memory a sync costs nothing and the ratio says nothing of a disk.
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

#include "demo/demo.h"
#include "store/store.h"

namespace {

using namespace wetfront;

template <class T>
T value_of(Result<T> result) {
    if (!result) {
        std::cerr << "mark_commit_bench: " << result.error().text() << '\n';
        std::exit(1);
    }
    return std::move(result).value();
}

class Folder {
public:
    Folder() {
        auto name = (std::filesystem::temp_directory_path() / "mark-commit-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) {
            std::cerr << "mark_commit_bench: no temporary folder\n";
            std::exit(1);
        }
        path_ = name;
    }
    ~Folder() { std::filesystem::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path file(const char* name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

/// One table without an index, and nothing done but the insert.
class Bare {
public:
    explicit Bare(const std::filesystem::path& file)
        : db_{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE} {
        db_.exec(
            "PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; "
            "PRAGMA foreign_keys=ON; PRAGMA cell_size_check=ON; PRAGMA temp_store=MEMORY;"
            "CREATE TABLE mark (id TEXT, visit TEXT, kind TEXT, pump TEXT, boot_id TEXT, boot_ns INTEGER, "
            "unix_ms INTEGER, utc_offset_min INTEGER) STRICT");
        insert_.emplace(db_, "INSERT INTO mark VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    }
    void add(const Id& visit, const Mark& mark) {
        SQLite::Transaction transaction{db_, SQLite::TransactionBehavior::IMMEDIATE};
        insert_->bind(1, mark.id.text);
        insert_->bind(2, visit.text);
        insert_->bind(3, std::string{enum_name(mark.kind)});
        insert_->bind(4, mark.pump.text);
        insert_->bind(5, mark.at.boot_id);
        insert_->bind(6, mark.at.boot_ns);
        insert_->bind(7, mark.wall.unix_ms);
        insert_->bind(8, mark.wall.utc_offset_minutes);
        insert_->exec();
        insert_->reset();
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

double percentile_99(std::vector<double>& times) {
    const auto place = times.begin() + static_cast<std::ptrdiff_t>(times.size() * 99 / 100);
    std::nth_element(times.begin(), place, times.end());
    return *place;
}

double median(std::vector<double>& times) {
    const auto place = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), place, times.end());
    return *place;
}

void commit_of_a_mark(benchmark::State& state) {
    constexpr int commits = 2000;
    const SystemClock clock;
    for (auto _ : state) {
        const Folder folder;
        auto store = value_of(Store::open(folder.file("records"), clock));
        auto file = example_visit();
        file.visit.signatures.clear();
        file.visit.marks.clear();
        if (!store.add(file)) {
            state.SkipWithError("the example visit was not stored");
            return;
        }
        Bare bare{folder.file("bare")};
        Mark mark;
        mark.kind = MarkKind::pump_start;
        mark.pump = file.house.pumps.front().id;
        std::vector<double> ours;
        std::vector<double> theirs;
        for (int i = 0; i < commits; ++i) {
            mark.id = store.new_id();
            mark.at = clock.boot_now();
            mark.wall = clock.wall_now();
            bool kept = false;
            ours.push_back(microseconds([&] { kept = store.add_mark(file.visit.id, mark).has_value(); }));
            if (!kept) {
                state.SkipWithError("a mark was not stored");
                return;
            }
            theirs.push_back(microseconds([&] { bare.add(file.visit.id, mark); }));
        }
        state.counters["commits"] = commits;
        state.counters["mark_p50_us"] = median(ours);
        state.counters["bare_p50_us"] = median(theirs);
        state.counters["mark_p99_us"] = percentile_99(ours);
        state.counters["bare_p99_us"] = percentile_99(theirs);
        state.counters["ratio_at_p99"] = percentile_99(ours) / percentile_99(theirs);
    }
}
BENCHMARK(commit_of_a_mark)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
