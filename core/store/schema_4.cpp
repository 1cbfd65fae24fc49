// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

namespace wetfront::store_detail {

// Released: never changed again. tests/data/store/schema_4.sql holds what it makes.
//
// What other devices wrote comes in by bundles, in any order, so nothing that is present may hang on the
// order of arrival. Changes of a mark and removals get a number: one more than the highest that its writer
// saw of the same mark or record. The highest number is present; of equal ones, written on two devices that
// did not know of each other, the one of the device with the higher id, whatever their clocks say. What was
// written before has none, counts as 0 and goes by its place in its device's row.
//
// A visit may be signed on two devices, so there may be two sheets of it, each of its own revision.
void make_schema_4(SQLite::Database& db) {
    db.exec(R"sql(

-- Of an entry that another device wrote: the hash of that device's entry before it, which may not be here.
ALTER TABLE entry ADD COLUMN before BLOB CHECK (length(before) = 32);

-- A person chose between two states of a record: this revision follows the one and passes the other over.
ALTER TABLE revision ADD COLUMN passed_over TEXT REFERENCES revision (id);
CREATE INDEX revision_passed_over ON revision (passed_over) WHERE passed_over IS NOT NULL;
DROP VIEW head;
CREATE VIEW head AS
    SELECT * FROM revision AS r WHERE NOT EXISTS (SELECT 1 FROM revision AS next WHERE next.parent = r.id)
        AND NOT EXISTS (SELECT 1 FROM revision AS chosen WHERE chosen.passed_over = r.id);

ALTER TABLE mark_change ADD COLUMN number INTEGER CHECK (number > 0);
DROP VIEW present_mark;
CREATE VIEW present_mark AS
    SELECT m.*, CASE WHEN EXISTS (SELECT 1 FROM mark_change AS c WHERE c.mark = m.id) THEN
            (SELECT c.undone FROM mark_change AS c JOIN entry AS e ON e.entry = c.entry
            JOIN device AS d ON d.device = e.device WHERE c.mark = m.id
            ORDER BY coalesce(c.number, 0) DESC, d.id DESC, e.seq DESC LIMIT 1) ELSE 0 END AS undone
    FROM mark AS m;

ALTER TABLE removal ADD COLUMN number INTEGER CHECK (number > 0);
DROP VIEW removed;
CREATE VIEW removed AS
    SELECT r.entry, r.kind, r.record FROM removal AS r WHERE r.removed = 1 AND r.entry = (
        SELECT last.entry FROM removal AS last JOIN entry AS e ON e.entry = last.entry
            JOIN device AS d ON d.device = e.device WHERE last.kind = r.kind AND last.record = r.record
            ORDER BY coalesce(last.number, 0) DESC, d.id DESC, e.seq DESC LIMIT 1);

DROP TRIGGER sheet_is_not_changed;
DROP TRIGGER sheet_is_not_removed;
DROP TRIGGER sheet_is_of_a_signed_visit;
CREATE TABLE sheet_4 (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    visit TEXT NOT NULL,
    revision TEXT NOT NULL UNIQUE REFERENCES revision (id),
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
    pdf BLOB NOT NULL CHECK (length(pdf) > 0)
) STRICT;
INSERT INTO sheet_4 (entry, visit, revision, sha256, pdf)
    SELECT entry, visit, revision, sha256, pdf FROM sheet ORDER BY entry;
DROP TABLE sheet;
ALTER TABLE sheet_4 RENAME TO sheet;
CREATE INDEX sheet_of_visit ON sheet (visit);
CREATE TRIGGER sheet_is_not_changed BEFORE UPDATE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never changed'); END;
CREATE TRIGGER sheet_is_not_removed BEFORE DELETE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never removed'); END;
CREATE TRIGGER sheet_is_of_a_signed_visit BEFORE INSERT ON sheet
    WHEN NOT EXISTS (SELECT 1 FROM revision WHERE id = new.revision AND kind = 'visit' AND record = new.visit
        AND signed = 1)
    BEGIN SELECT raise(ABORT, 'a sheet belongs to a signed visit'); END;

-- Entries of other devices that are not part of the record yet: a later version wrote them, or what they refer to has
-- not come. `fields` is the content's row as a bundle has it. They leave this table when they can be taken in.
CREATE TABLE aside (
    device INTEGER NOT NULL REFERENCES device (device),
    seq INTEGER NOT NULL CHECK (seq > 0),
    unix_ms INTEGER NOT NULL,
    utc_offset_min INTEGER NOT NULL,
    before BLOB NOT NULL CHECK (length(before) = 32),
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    content TEXT NOT NULL,
    fields TEXT NOT NULL,
    why TEXT NOT NULL,
    PRIMARY KEY (device, seq)
) STRICT;

-- Entries that another device has, by its own receipt.
CREATE TABLE delivered (
    receiver INTEGER NOT NULL REFERENCES device (device),
    device INTEGER NOT NULL REFERENCES device (device),
    seq INTEGER NOT NULL CHECK (seq > 0),
    PRIMARY KEY (receiver, device, seq)
) STRICT, WITHOUT ROWID;

)sql");
}

}  // namespace wetfront::store_detail
