// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

namespace wetfront::store_detail {

// Released: never changed again. tests/data/store/schema_2.sql holds what it makes.
//
// Setting templates become records, and a mark says whether it belongs to a proof run. Records written from
// this version on may also hold keys that version 1 does not know (proof notes, a timer's template) and would
// call damaged: the number goes up for them too.
//
// SQLite cannot change a CHECK, so the table of revisions is made anew and takes the old one's name. Its
// references to itself follow that name. While the old rows go, references are counted and only looked at
// when the transaction ends; dropping a table runs no triggers, so the one that forbids removal stands aside
// for this once.
void make_schema_2(SQLite::Database& db) {
    db.exec(R"sql(

PRAGMA defer_foreign_keys=ON;
DROP VIEW visit;
DROP VIEW head;

-- A state of a farm, house, visit or template. body is a JSON Patch (RFC 6902) against the parent's state; whole = 1
-- says that it replaces all of it. The columns behind body repeat parts of that state for lists and joins.
CREATE TABLE revision_2 (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    id TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL CHECK (kind IN ('farm', 'house', 'visit', 'template')),
    record TEXT NOT NULL CHECK (length(record) BETWEEN 1 AND 64),
    parent TEXT REFERENCES revision_2 (id),
    number INTEGER NOT NULL CHECK (number > 0),
    whole INTEGER NOT NULL CHECK (whole IN (0, 1)),
    body TEXT NOT NULL,
    name TEXT,
    farm TEXT,
    house TEXT,
    started_unix_ms INTEGER,
    started_utc_offset_min INTEGER,
    signed INTEGER CHECK (signed IN (0, 1)),
    replaces TEXT,
    house_revision TEXT REFERENCES revision_2 (id),
    farm_revision TEXT REFERENCES revision_2 (id),
    CHECK ((number = 1) = (parent IS NULL)),
    CHECK (number > 1 OR whole = 1),
    CHECK ((kind = 'visit') = (house IS NOT NULL AND started_unix_ms IS NOT NULL AND signed IS NOT NULL
                               AND house_revision IS NOT NULL AND farm_revision IS NOT NULL)),
    CHECK ((kind = 'visit') = (name IS NULL)),
    CHECK ((kind = 'house') = (farm IS NOT NULL))
) STRICT;
INSERT INTO revision_2 (entry, id, kind, record, parent, number, whole, body, name, farm, house, started_unix_ms,
                        started_utc_offset_min, signed, replaces, house_revision, farm_revision)
    SELECT entry, id, kind, record, parent, number, whole, body, name, farm, house, started_unix_ms,
        started_utc_offset_min, signed, replaces, house_revision, farm_revision FROM revision ORDER BY entry;
DROP TABLE revision;
ALTER TABLE revision_2 RENAME TO revision;

CREATE INDEX revision_of_record ON revision (kind, record, number);
CREATE INDEX revision_of_parent ON revision (parent) WHERE parent IS NOT NULL;
CREATE INDEX visit_of_house ON revision (house, started_unix_ms, record) WHERE kind = 'visit' AND number = 1;
CREATE INDEX signed_visit ON revision (record) WHERE kind = 'visit' AND signed = 1;
CREATE VIEW head AS
    SELECT * FROM revision AS r WHERE NOT EXISTS (SELECT 1 FROM revision AS next WHERE next.parent = r.id);
CREATE VIEW visit AS
    SELECT v.entry, v.record, v.house, v.started_unix_ms, v.started_utc_offset_min, v.replaces,
        EXISTS (SELECT 1 FROM revision AS s INDEXED BY signed_visit
                WHERE s.kind = 'visit' AND s.signed = 1 AND s.record = v.record) AS signed
    FROM revision AS v INDEXED BY visit_of_house WHERE v.kind = 'visit' AND v.number = 1;
CREATE TRIGGER revision_has_its_parent BEFORE INSERT ON revision
    WHEN new.parent IS NOT NULL AND NOT EXISTS (SELECT 1 FROM revision WHERE id = new.parent AND kind = new.kind
        AND record = new.record AND number = new.number - 1)
    BEGIN SELECT raise(ABORT, 'a revision follows one of the same record'); END;
CREATE TRIGGER signed_visit_is_frozen BEFORE INSERT ON revision
    WHEN new.kind = 'visit' AND EXISTS (SELECT 1 FROM revision WHERE id = new.parent AND signed = 1)
    BEGIN SELECT raise(ABORT, 'a signed visit is frozen'); END;
CREATE TRIGGER revision_is_not_changed BEFORE UPDATE ON revision
    BEGIN SELECT raise(ABORT, 'revisions are never changed'); END;
CREATE TRIGGER revision_is_not_removed BEFORE DELETE ON revision
    BEGIN SELECT raise(ABORT, 'revisions are never removed'); END;

ALTER TABLE mark ADD COLUMN proof INTEGER NOT NULL DEFAULT 0 CHECK (proof IN (0, 1));

)sql");
}

}  // namespace wetfront::store_detail
