// SPDX-License-Identifier: Apache-2.0
// Importing a bundle of 10,000 entries (20 tablets, 500 each) beside a bare bulk insert of the same rows,
// in one transaction each and with the same pragmas. The bare one gets the rows from memory and reads, hashes
// and checks nothing: its tables are the record file's, with their indices and references but without its
// rules (ratio, to stay below 2), or without indices and references too (ratio_to_plain, told as well).
//
// With WETFRONT_BENCH_TABLETS=200 there are 100,000 entries, of which the ratio is stated.
//
// A tablet's 500 entries are those of three visits: 25 % revisions, 66 % marks, 9 % marks undone.
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <benchmark/benchmark.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <map>
#include <optional>
#include <regex>
#include <string>
#include <vector>

#include "bench_files.h"
#include "store/bundle_text.h"
#include "store/store.h"
#include "support/visit_builder.h"

namespace {

using namespace wetfront;
using store_detail::BundleEntry;
using store_detail::BundleReader;

constexpr int entries_each = 500;
constexpr int visits = 3;

int tablet_count() {
    const char* told = std::getenv("WETFRONT_BENCH_TABLETS");
    const int count = told == nullptr ? 20 : std::atoi(told);
    if (count < 1 || count > 999) {
        give_up("WETFRONT_BENCH_TABLETS: write a whole number from 1 to 999");
    }
    return count;
}

/// What one tablet enters, as the program writes it. Every id of it holds "t000".
std::vector<BundleEntry> entries_of_a_tablet(const Folder& folder) {
    const SystemClock clock;
    auto store = value_of(Store::open(folder.file("tablet"), clock));
    auto file = test::VisitBuilder{4}.both_weathers().file();
    file.farm.id = Id{"farm-t000"};
    file.house.id = Id{"house-t000"};
    file.house.farm = file.farm.id;
    file.visit.house = file.house.id;
    succeed(store.save(file.farm));
    succeed(store.save(file.house));
    int made = 2;
    for (int number = 0; number < visits; ++number) {
        auto visit = file.visit;
        visit.id = Id{"visit-t000-" + std::to_string(number)};
        for (int edit = 0; edit < 41; ++edit, ++made) {
            visit.conditions.ph = 6.0 + edit * 0.05;
            visit.agreement.agreed_with = "manager, called " + std::to_string(edit);
            succeed(store.save(visit));
        }
        const int marks = number < 2 ? 125 : entries_each - made - 15;
        Mark mark;
        mark.kind = MarkKind::pump_start;
        mark.pump = file.house.pumps.front().id;
        for (int i = 0; i < marks && made < entries_each; ++i, ++made) {
            mark.id = Id{"mark-t000-" + std::to_string(made)};
            mark.at = clock.boot_now();
            mark.wall = clock.wall_now();
            succeed(store.add_mark(visit.id, mark));
            if (i % 8 == 0 && ++made < entries_each) {
                succeed(store.set_undone(mark.id, true));
            }
        }
    }
    for (int i = 0; made < entries_each; ++made, ++i) {
        file.house.name = "House " + std::to_string(i);
        succeed(store.save(file.house));
    }
    const auto bundle = value_of(store.write_bundle({.new_for = Id{"office"}}, folder.file("bundle")));
    const auto text = value_of(read_bundle_file(bundle.file));
    auto reader =
        value_of(BundleReader::begin(value_of(store_detail::unsealed(text, "wetfront bundle")).content));
    std::vector<BundleEntry> entries;
    while (auto entry = value_of(reader.next())) {
        entries.push_back(std::move(*entry));
    }
    return entries;
}

std::string numbered(const std::string& text, const std::string& token) {
    std::string out = text;
    for (auto at = out.find("t000"); at != std::string::npos; at = out.find("t000", at + 4)) {
        out.replace(at, 4, token);
    }
    return out;
}

/// The same entries as another tablet would have written them.
std::vector<BundleEntry> of_tablet(std::vector<BundleEntry> entries, int number) {
    const std::string token = "t" + std::to_string(1000 + number).substr(1);
    std::map<std::string, std::string> revisions;
    for (const auto& entry : entries) {
        if (entry.content.table == "revision") {
            const auto& id = std::get<std::string>(entry.content.fields.at("id"));
            revisions[id] = id.substr(0, id.size() - 4) + token;
        }
    }
    store_detail::Hash before{};
    for (auto& entry : entries) {
        entry.head.device = "tablet-" + token;
        for (auto& [name, value] : entry.content.fields) {
            if (auto* text = std::get_if<std::string>(&value)) {
                const auto revision = revisions.find(*text);
                *text = revision != revisions.end() ? revision->second : numbered(*text, token);
            }
        }
        entry.before = before;
        entry.hash = entry_hash(entry.before, entry.head, entry.content.table, entry.content.fields);
        before = entry.hash;
    }
    return entries;
}

std::string bundle_of(const std::vector<BundleEntry>& entries) {
    store_detail::BundleHead head{Id{"tablet-t000"}, {1'782'900'000'000, -300}, {}};
    for (const auto& entry : entries) {
        if (head.devices.empty() || head.devices.back().id.text != entry.head.device) {
            head.devices.push_back({Id{entry.head.device}, "tablet", {1'782'900'000'000, -300}});
        }
    }
    store_detail::BundleWriter writer;
    for (const auto& entry : entries) {
        writer.add(entry);
    }
    return store_detail::sealed(writer.content(head), "wetfront bundle");
}

/// Tables as the record file has them; `plain`: without what has to be looked up.
void make_tables(SQLite::Database& db, const std::filesystem::path& like, bool plain) {
    const SQLite::Database made{like, SQLite::OPEN_READONLY};
    SQLite::Statement rows{
        made,
        "SELECT sql FROM sqlite_schema WHERE tbl_name IN ('device', 'entry', 'revision', 'mark', "
        "'mark_change') AND type IN ('table', 'index') AND sql IS NOT NULL ORDER BY type DESC"};
    static const std::regex looked_up{R"( UNIQUE \(device, seq\)|,\s*UNIQUE \(device, seq\)| UNIQUE|)"
                                      R"( REFERENCES "?\w+"? \(\w+\))"};
    while (rows.executeStep()) {
        const std::string sql = rows.getColumn(0).getString();
        if (!plain) {
            db.exec(sql);
        } else if (sql.starts_with("CREATE TABLE")) {
            db.exec(std::regex_replace(sql, looked_up, ""));
        }
    }
}

void bind_value(SQLite::Statement& row, int place, const store_detail::Value& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) {
        row.bind(place, *number);
    } else if (const auto* text = std::get_if<std::string>(&value)) {
        row.bindNoCopy(place, *text);
    } else {
        row.bind(place);
    }
}

/// Nothing but the inserts.
class Bare {
public:
    Bare(const std::filesystem::path& file, const std::filesystem::path& like, bool plain, int tablets)
        : db_{file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE} {
        db_.exec(
            "PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; "
            "PRAGMA foreign_keys=ON; PRAGMA recursive_triggers=ON; PRAGMA cell_size_check=ON; "
            "PRAGMA temp_store=MEMORY");
        make_tables(db_, like, plain);
        for (int i = 1; i <= tablets; ++i) {
            db_.exec("INSERT INTO device VALUES (" + std::to_string(i) + ", 'd" + std::to_string(i) +
                     "', '', 0, 0)");
        }
    }
    void add(const std::vector<BundleEntry>& entries) {
        SQLite::Transaction transaction{db_, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement head{
            db_,
            "INSERT INTO entry (entry, device, seq, unix_ms, utc_offset_min, hash, before) VALUES "
            "(?, ?, ?, ?, ?, ?, ?)"};
        const store_detail::Value null;
        std::int64_t number = 0;
        for (const auto& entry : entries) {
            head.bind(1, ++number);
            head.bind(2, 1 + (number - 1) / entries_each);
            head.bind(3, entry.head.seq);
            head.bind(4, entry.head.at.unix_ms);
            head.bind(5, entry.head.at.utc_offset_minutes);
            head.bindNoCopy(6, entry.hash.data(), 32);
            head.bindNoCopy(7, entry.before.data(), 32);
            head.exec();
            head.reset();
            auto& [row, columns] = row_of(entry.content.table);
            row->bind(1, number);
            int place = 1;
            for (const auto& column : columns) {
                const auto found = entry.content.fields.find(column);
                const auto& value = found == entry.content.fields.end() ? null : found->second;
                bind_value(*row, ++place, value);
            }
            row->exec();
            row->reset();
        }
        transaction.commit();
    }

private:
    using Row = std::pair<std::optional<SQLite::Statement>, std::vector<std::string>>;
    Row& row_of(const std::string& table) {
        auto& row = rows_[table];
        if (!row.first) {
            SQLite::Statement columns{db_, "SELECT name FROM pragma_table_info(?) WHERE name <> 'entry'"};
            columns.bind(1, table);
            std::string names = "entry";
            std::string places = "?";
            while (columns.executeStep()) {
                row.second.push_back(columns.getColumn(0).getString());
                names += ", " + row.second.back();
                places += ", ?";
            }
            row.first.emplace(db_, "INSERT INTO " + table + " (" + names + ") VALUES (" + places + ")");
        }
        return row;
    }

    SQLite::Database db_;
    std::map<std::string, Row> rows_;
};

template <class Work>
double seconds(Work&& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

void import_of_a_bundle(benchmark::State& state) {
    const SystemClock clock;
    const int tablets = tablet_count();
    for (auto _ : state) {
        const Folder folder{"import-bench"};
        const auto one = entries_of_a_tablet(folder);
        if (one.size() != entries_each) {
            give_up("a tablet has " + std::to_string(one.size()) + " entries");
        }
        std::vector<BundleEntry> entries;
        for (int i = 0; i < tablets; ++i) {
            auto more = of_tablet(one, i);
            std::move(more.begin(), more.end(), std::back_inserter(entries));
        }
        const auto text = bundle_of(entries);
        // In turns, and the best of each: whatever else the machine does only makes them longer.
        double ours = 1e9;
        double bare = 1e9;
        double plain = 1e9;
        for (const char* turn : {"1", "2", "3"}) {
            auto office = value_of(Store::open(folder.file(std::string{"office"} + turn), clock));
            ours = std::min(ours, seconds([&] {
                                if (value_of(office.take_in(text)).added != tablets * entries_each) {
                                    give_up("not every entry was taken in");
                                }
                            }));
            Bare like{folder.file(std::string{"bare"} + turn), folder.file("tablet"), false, tablets};
            bare = std::min(bare, seconds([&] { like.add(entries); }));
            Bare without{folder.file(std::string{"plain"} + turn), folder.file("tablet"), true, tablets};
            plain = std::min(plain, seconds([&] { without.add(entries); }));
        }
        state.counters["entries"] = static_cast<double>(entries.size());
        state.counters["megabytes"] = static_cast<double>(text.size()) / 1e6;
        state.counters["import_s"] = ours;
        state.counters["bare_s"] = bare;
        state.counters["plain_s"] = plain;
        state.counters["ratio"] = ours / bare;
        state.counters["ratio_to_plain"] = ours / plain;
    }
}
BENCHMARK(import_of_a_bundle)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
