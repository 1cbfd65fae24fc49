// SPDX-License-Identifier: Apache-2.0
#include "store/verify.h"

#include <algorithm>
#include <map>
#include <stdexcept>

#include "store/aside.h"
#include "store/chain.h"
#include "store/failure.h"
#include "store/journal.h"
#include "store/record_file.h"
#include "store/stored_records.h"
#include "store/write_ahead.h"

namespace wetfront {
namespace {

using store_detail::Binder;
using store_detail::content_tables;
using store_detail::Hash;
using store_detail::id_at;
using store_detail::look_at_write_ahead;
using store_detail::null_at;
using store_detail::number_at;
using store_detail::Statements;
using store_detail::text_at;

void note(StoreCheck& check, const std::optional<EntryName>& entry, const std::string& what) {
    if (check.wrong++ == 0) {
        check.first_entry = entry;
        check.first_wrong = what;
    }
}

/// Runs one check; what it throws is what is wrong, and ends it.
template <class Work>
StoreCheck checked(const char* name, const char* says, Work&& work) {
    StoreCheck check;
    check.name = name;
    check.says = says;
    std::optional<EntryName> at;
    try {
        work(check, at);
    } catch (const SQLite::Exception& cause) {
        note(check, at, std::string{"it cannot be read on from here: "} + cause.what());
    } catch (const std::exception& cause) {
        note(check, at, cause.what());
    }
    return check;
}

StoreCheck check_file(Statements& sql) {
    return checked("file", "SQLite finds its pages, tables and indices whole", [&](StoreCheck& check, auto&) {
        check.checked = sql.database().execAndGet("PRAGMA page_count").getInt64();
        const auto rows = sql("PRAGMA integrity_check");
        while (rows.next_row()) {
            if (text_at(rows, 0) != "ok") {
                note(check, {}, text_at(rows, 0));
            }
        }
    });
}

StoreCheck check_write_ahead(Statements& sql, const std::filesystem::path& file) {
    const auto* says = "what was confirmed and stands in the -wal file beside it is all read";
    return checked("wal", says, [&](StoreCheck& check, auto&) {
        const auto page = sql.database().execAndGet("PRAGMA page_size").getInt();
        const auto found = look_at_write_ahead(file.string() + "-wal", static_cast<std::size_t>(page));
        check.checked = found.frames;
        if (found.broken) {
            note(check, {},
                 "it is damaged behind its frame " + std::to_string(found.frames) +
                     "; what was entered after that is not read");
        }
    });
}

/// What makes each table, index, view and rule.
std::map<std::string, std::string> schema_of(SQLite::Database& db) {
    std::map<std::string, std::string> schema;
    SQLite::Statement rows{db,
                           "SELECT type || ' ' || name || ' of ' || tbl_name, coalesce(sql, '') FROM "
                           "sqlite_schema WHERE name NOT LIKE 'sqlite_stat%'"};
    while (rows.executeStep()) {
        schema.emplace(rows.getColumn(0).getString(), rows.getColumn(1).getString());
    }
    return schema;
}

std::map<std::string, std::string> schema_as_made() {
    SQLite::Database made{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    if (const auto done = store_detail::migrate(made, store_detail::released_migrations()); !done) {
        throw std::runtime_error{done.error().text()};
    }
    return schema_of(made);
}

StoreCheck check_schema(Statements& sql) {
    const auto* says = "its tables, views and rules are those of this version";
    return checked("schema", says, [&](StoreCheck& check, auto&) {
        static const auto made = schema_as_made();
        auto found = schema_of(sql.database());
        for (const auto& [name, text] : made) {
            ++check.checked;
            const auto same = found.extract(name);
            if (same.empty() || same.mapped() != text) {
                note(check, {}, name + (same.empty() ? " is missing" : " is another one"));
            }
        }
        for (const auto& [name, text] : found) {
            note(check, {}, name + " does not belong there");
        }
    });
}

StoreCheck check_references(Statements& sql) {
    return checked("references", "every row names rows that are there", [&](StoreCheck& check, auto&) {
        for (const auto* table : content_tables) {
            check.checked +=
                sql.database().execAndGet(std::string{"SELECT count(*) FROM "} + table).getInt64();
        }
        const auto rows = sql("PRAGMA foreign_key_check");
        while (rows.next_row()) {
            note(check, {},
                 "row " + text_at(rows, 1) + " of table " + text_at(rows, 0) + " names one of table " +
                     text_at(rows, 2) + " that is not there");
        }
    });
}

StoreCheck check_numbers(Statements& sql) {
    const auto* says = "entries are numbered from 1 without a gap";
    return checked("numbers", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        // What another device wrote may be here in part.
        const auto rows =
            sql("SELECT d.id, e.seq FROM entry AS e JOIN device AS d USING (device) "
                "WHERE e.device = (SELECT device FROM this_device) ORDER BY e.seq");
        for (std::int64_t expected = 1; rows.next_row(); ++expected) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            if (at->number != expected) {
                note(check, at, "the entry before it is missing");
                expected = at->number;
            }
        }
    });
}

StoreCheck check_chain(Statements& sql) {
    const auto* says = "every entry has the hash of its content and of the entry before it";
    return checked("chain", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows =
            sql("SELECT d.id, e.seq, e.unix_ms, e.utc_offset_min, e.hash, e.entry, e.before FROM entry AS e "
                "JOIN device AS d USING (device) ORDER BY e.device, e.seq");
        Hash previous{};
        Id device;
        std::int64_t before = 0;
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            if (at->device != device) {
                device = at->device;
                previous = {};
                before = 0;
            }
            // Of what another device wrote, entries may be missing in between.
            if (!null_at(rows, 6)) {
                const auto noted = store_detail::hash_at(rows, 6);
                if (at->number == before + 1 && noted != previous) {
                    note(check, at, "it follows another entry than the one before it");
                }
                previous = noted;
            }
            before = at->number;
            const auto contents = store_detail::contents_of(sql, content_tables, number_at(rows, 5));
            const auto hash = store_detail::hash_at(rows, 4);
            if (contents.size() != 1) {
                note(check, at, contents.empty() ? "its content is missing" : "it has two contents");
            } else if (hash != entry_hash(previous, {device.text, at->number, store_detail::time_at(rows, 2)},
                                          contents.front().table, contents.front().fields)) {
                note(check, at,
                     "its hash is not that of this content of table " + contents.front().table +
                         " behind the entry before it");
            }
            previous = hash;
        }
    });
}

/// Empty, or what is wrong.
std::string reading_problem(RecordKind kind, const Json& document) {
    const auto problem = [](const auto& result) { return result ? std::string{} : result.error().text(); };
    switch (kind) {
        case RecordKind::farm:
            return problem(farm_of(document));
        case RecordKind::house:
            return problem(house_of(document));
        case RecordKind::visit:
            return problem(visit_of(document));
        case RecordKind::setting_template:
            return problem(template_of(document));
    }
    return {};
}

StoreCheck check_revisions(Statements& sql) {
    const auto* says = "every state of every record is made up of its changes and can be read";
    return checked("revisions", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows = sql(R"sql(
            SELECT d.id, e.seq, r.kind, r.record, r.id, r.parent, r.whole, r.body, r.restores
            FROM revision AS r LEFT JOIN entry AS e ON e.entry = r.entry LEFT JOIN device AS d ON d.device = e.device
            ORDER BY r.kind, r.record, r.number, r.entry)sql");
        std::map<std::string, nlohmann::json> states;  // of the record at hand, by revision
        std::string record;
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            const auto key = text_at(rows, 2) + " " + text_at(rows, 3);
            if (key != record) {
                record = key;
                states.clear();
            }
            try {
                nlohmann::json state;
                if (number_at(rows, 6) == 0) {
                    state = states.at(text_at(rows, 5));
                }
                state.patch_inplace(nlohmann::json::parse(text_at(rows, 7)));
                const auto kind = enum_value<RecordKind>(text_at(rows, 2));
                const auto problem =
                    kind ? reading_problem(*kind, Json(state)) : "a kind that this version does not know";
                if (!problem.empty()) {
                    note(check, at, key + ": " + problem);
                }
                if (!null_at(rows, 8) && state != states.at(text_at(rows, 8))) {
                    note(check, at, key + ": it is not the state that it says it restores");
                }
                states.emplace(text_at(rows, 4), std::move(state));
            } catch (const SQLite::Exception&) {
                throw;
            } catch (const std::exception& cause) {
                note(check, at, key + ": its change cannot be applied: " + cause.what());
            }
        }
    });
}

StoreCheck check_marks(Statements& sql) {
    const auto* says = "every mark can be read and belongs to a visit";
    return checked("marks", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows =
            sql("SELECT d.id, e.seq, m.id, EXISTS (SELECT 1 FROM revision AS r WHERE r.kind = 'visit' "
                "AND r.record = m.visit) FROM mark AS m LEFT JOIN entry AS e ON e.entry = m.entry "
                "LEFT JOIN device AS d ON d.device = e.device ORDER BY m.entry");
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            if (!store_detail::flag_at(rows, 3)) {
                note(check, at, "mark " + text_at(rows, 2) + ": its visit is missing");
            }
            try {
                if (!store_detail::mark_with(sql, id_at(rows, 2))) {
                    note(check, at, "mark " + text_at(rows, 2) + ": it is not found by its id");
                }
            } catch (const SQLite::Exception&) {
                throw;
            } catch (const std::exception& cause) {
                note(check, at, "mark " + text_at(rows, 2) + ": " + cause.what());
            }
        }
    });
}

StoreCheck check_sheets(Statements& sql) {
    const auto* says = "every sheet kept is, byte for byte, the one that was signed";
    return checked("sheets", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows =
            sql("SELECT d.id, e.seq, s.visit, s.sha256, s.pdf FROM sheet AS s "
                "LEFT JOIN entry AS e ON e.entry = s.entry LEFT JOIN device AS d ON d.device = e.device "
                "ORDER BY s.entry");
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            if (store_detail::sha256(text_at(rows, 4)) != store_detail::hash_at(rows, 3)) {
                note(check, at, "the sheet of visit " + text_at(rows, 2) + " is not the one that was signed");
            }
        }
    });
}

StoreCheck check_pictures(Statements& sql) {
    const auto* says = "every photo kept is, byte for byte, the one that was added";
    return checked("photos", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows =
            sql("SELECT d.id, e.seq, p.visit, p.sha256, p.jpeg FROM picture AS p "
                "LEFT JOIN entry AS e ON e.entry = p.entry LEFT JOIN device AS d ON d.device = e.device "
                "ORDER BY p.entry");
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            if (store_detail::sha256(text_at(rows, 4)) != store_detail::hash_at(rows, 3)) {
                note(check, at, "a photo of visit " + text_at(rows, 2) + " is not the one that was added");
            }
        }
    });
}

StoreCheck check_aside(Statements& sql) {
    const auto* says = "what is kept aside is what its device wrote";
    return checked("aside", says, [&](StoreCheck& check, std::optional<EntryName>& at) {
        const auto rows = sql(store_detail::aside_entries);
        while (rows.next_row()) {
            ++check.checked;
            at = EntryName{id_at(rows, 0), number_at(rows, 1)};
            const auto entry = store_detail::aside_entry_at(rows);
            if (!entry) {
                note(check, at, entry.error().text());
            } else if (!entry.value().is_what_was_written()) {
                note(check, at, "its hash is not that of this content");
            }
        }
    });
}

StoreCheck check_known(Statements& sql, const std::string& known) {
    return checked("known", "an entry has the hash that was noted elsewhere", [&](StoreCheck& check, auto&) {
        check.checked = 1;
        const auto row = sql("SELECT 1 FROM entry WHERE lower(hex(hash)) = ?");
        Binder{row}(known);
        if (!row.next_row()) {
            note(check, {},
                 "no entry has the hash " + known + ": entries were changed or cut off since it was noted");
        }
    });
}

std::vector<ChainHead> heads_of(Statements& sql) {
    const auto rows =
        sql("SELECT d.id, e.seq, e.hash, e.seq - (SELECT count(*) FROM entry WHERE device = d.device) "
            "FROM device AS d JOIN entry AS e USING (device) WHERE e.seq = "
            "(SELECT max(seq) FROM entry WHERE device = d.device) ORDER BY d.device");
    std::vector<ChainHead> heads;
    while (rows.next_row()) {
        heads.push_back({id_at(rows, 0), number_at(rows, 1),
                         store_detail::in_hex(store_detail::hash_at(rows, 2)), number_at(rows, 3)});
    }
    return heads;
}

}  // namespace

bool StoreVerdict::sound() const {
    return std::all_of(checks.begin(), checks.end(),
                       [](const StoreCheck& check) { return check.wrong == 0; });
}

Result<StoreVerdict> verify_store(const std::filesystem::path& file, const Clock& clock,
                                  const std::optional<std::string>& known) {
    WF_TRY(auto opened, store_detail::RecordFile::open(file, clock, OpenMode::read_only));
    return store_detail::guarded(opened.item(), [&]() -> Result<StoreVerdict> {
        // What a newer one keeps in tables of its own would look like content that is missing.
        if (store_detail::schema_version(opened.database()) >
            static_cast<int>(store_detail::released_migrations().size())) {
            return storage_error(opened.item(), "it was written by a newer version of this program",
                                 "update this program, then verify again");
        }
        Statements sql{opened.database()};
        StoreVerdict verdict;
        verdict.checks = {check_file(sql),      check_write_ahead(sql, file),
                          check_schema(sql),    check_references(sql),
                          check_numbers(sql),   check_chain(sql),
                          check_revisions(sql), check_marks(sql),
                          check_sheets(sql),    check_pictures(sql),
                          check_aside(sql)};
        if (known) {
            verdict.checks.push_back(check_known(sql, *known));
        }
        try {
            verdict.heads = heads_of(sql);
        } catch (const std::exception&) {
            verdict.heads.clear();  // the chain's check has said why
        }
        return verdict;
    });
}

}  // namespace wetfront
