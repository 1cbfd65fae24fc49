// SPDX-License-Identifier: Apache-2.0
#include <SQLiteCpp/Statement.h>

#include <array>
#include <vector>

#include "store/chain.h"
#include "store/migration.h"

namespace wetfront::store_detail {
namespace {

struct Unhashed {
    std::int64_t entry;
    std::int64_t device;
    EntryHead head;
};

std::vector<Unhashed> all_entries(Statements& sql) {
    const auto rows =
        sql("SELECT e.entry, e.device, d.id, e.seq, e.unix_ms, e.utc_offset_min FROM entry AS e "
            "JOIN device AS d USING (device) ORDER BY e.device, e.seq");
    std::vector<Unhashed> entries;
    while (rows.next_row()) {
        entries.push_back({number_at(rows, 0),
                           number_at(rows, 1),
                           {text_at(rows, 2), number_at(rows, 3), time_at(rows, 4)}});
    }
    return entries;
}

void chain_what_is_there(SQLite::Database& db) {
    constexpr std::array tables{"revision", "mark", "mark_change"};
    Statements sql{db};
    Hash previous{};
    std::int64_t device = 0;
    for (const auto& [entry, of_device, head] : all_entries(sql)) {
        if (of_device != device) {
            device = of_device;
            previous = {};
        }
        const auto contents = contents_of(sql, tables, entry);
        const Content content = contents.empty() ? Content{} : contents.front();
        previous = entry_hash(previous, head, content.table, content.fields);
        const auto update = sql("UPDATE entry SET hash = ? WHERE entry = ?");
        SQLite::Statement& statement = update;
        statement.bind(1, previous.data(), static_cast<int>(previous.size()));
        statement.bind(2, entry);
        update.run();
    }
}

}  // namespace

// Released: never changed again. tests/data/store/schema_3.sql holds what it makes.
//
// Every entry gets its hash (chain.h); records can be removed and brought back; a revision says which one it
// restores; the sheet that was signed is kept. The rule that entries are never changed stands aside while
// those that are there get their hash. The default is no hash of anything: an entry written without one
// breaks the chain.
void make_schema_3(SQLite::Database& db) {
    db.exec(R"sql(

DROP TRIGGER entry_is_not_changed;
ALTER TABLE entry ADD COLUMN hash BLOB NOT NULL
    DEFAULT x'0000000000000000000000000000000000000000000000000000000000000000' CHECK (length(hash) = 32);
ALTER TABLE revision ADD COLUMN restores TEXT REFERENCES revision (id);

-- A record was taken out of the lists (1) or brought back (0); its revisions stay.
CREATE TABLE removal (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    kind TEXT NOT NULL CHECK (kind IN ('farm', 'house', 'visit', 'template')),
    record TEXT NOT NULL,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1))
) STRICT;
CREATE INDEX removal_of_record ON removal (kind, record);
CREATE VIEW removed AS
    SELECT r.entry, r.kind, r.record FROM removal AS r WHERE r.removed = 1 AND NOT EXISTS (
        SELECT 1 FROM removal AS later WHERE later.kind = r.kind AND later.record = r.record AND later.entry > r.entry);

-- The sheet of a signed visit as it was handed out, with the revision that was signed.
CREATE TABLE sheet (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    visit TEXT NOT NULL UNIQUE,
    revision TEXT NOT NULL REFERENCES revision (id),
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
    pdf BLOB NOT NULL CHECK (length(pdf) > 0)
) STRICT;

CREATE TRIGGER removal_is_not_changed BEFORE UPDATE ON removal
    BEGIN SELECT raise(ABORT, 'removals are never changed'); END;
CREATE TRIGGER removal_is_not_removed BEFORE DELETE ON removal
    BEGIN SELECT raise(ABORT, 'removals are never removed'); END;
CREATE TRIGGER sheet_is_not_changed BEFORE UPDATE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never changed'); END;
CREATE TRIGGER sheet_is_not_removed BEFORE DELETE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never removed'); END;
CREATE TRIGGER sheet_is_of_a_signed_visit BEFORE INSERT ON sheet
    WHEN NOT EXISTS (SELECT 1 FROM revision WHERE id = new.revision AND kind = 'visit' AND record = new.visit
        AND signed = 1)
    BEGIN SELECT raise(ABORT, 'a sheet belongs to a signed visit'); END;

)sql");
    chain_what_is_there(db);
    db.exec(R"sql(

CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
    BEGIN SELECT raise(ABORT, 'entries are never changed'); END;

)sql");
}

}  // namespace wetfront::store_detail
