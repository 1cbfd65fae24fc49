-- SPDX-License-Identifier: Apache-2.0
CREATE INDEX change_of_mark ON mark_change (mark);
CREATE INDEX mark_of_visit ON mark (visit);
CREATE INDEX picture_by_hash ON picture (lower(hex(sha256)));
CREATE INDEX picture_of_visit ON picture (visit);
CREATE INDEX removal_of_record ON removal (kind, record);
CREATE INDEX revision_of_parent ON revision (parent) WHERE parent IS NOT NULL;
CREATE INDEX revision_of_record ON revision (kind, record, number);
CREATE INDEX revision_passed_over ON revision (passed_over) WHERE passed_over IS NOT NULL;
CREATE INDEX sheet_of_visit ON sheet (visit);
CREATE INDEX signed_visit ON revision (record) WHERE kind = 'visit' AND signed = 1;
CREATE INDEX visit_of_house ON revision (house, started_unix_ms, record) WHERE kind = 'visit' AND number = 1;
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
CREATE TABLE delivered (
    receiver INTEGER NOT NULL REFERENCES device (device),
    device INTEGER NOT NULL REFERENCES device (device),
    seq INTEGER NOT NULL CHECK (seq > 0),
    PRIMARY KEY (receiver, device, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE device (
    device INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    made_unix_ms INTEGER NOT NULL,
    made_utc_offset_min INTEGER NOT NULL
) STRICT;
CREATE TABLE entry (
    entry INTEGER PRIMARY KEY,
    device INTEGER NOT NULL REFERENCES device (device),
    seq INTEGER NOT NULL CHECK (seq > 0),
    unix_ms INTEGER NOT NULL,
    utc_offset_min INTEGER NOT NULL, hash BLOB NOT NULL
    DEFAULT x'0000000000000000000000000000000000000000000000000000000000000000' CHECK (length(hash) = 32), before BLOB CHECK (length(before) = 32),
    UNIQUE (device, seq)
) STRICT;
CREATE TABLE mark (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    id TEXT NOT NULL UNIQUE CHECK (length(id) BETWEEN 1 AND 64),
    visit TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('pump start', 'water at far end', 'far end drips', 'pump stop', 'drip ends',
                                       'first dry patch', 'back on automatic')),
    pump TEXT NOT NULL,
    bank TEXT,
    boot_id TEXT NOT NULL,
    boot_ns INTEGER NOT NULL,
    unix_ms INTEGER NOT NULL,
    utc_offset_min INTEGER NOT NULL,
    timed_by TEXT NOT NULL CHECK (timed_by IN ('event stamp', 'handler', 'after restart')),
    stamp_error_ns INTEGER,
    seen TEXT NOT NULL CHECK (seen IN ('as it happened', 'already there')),
    started_by TEXT NOT NULL CHECK (started_by IN ('me here', 'me then walk', 'helper on signal', 'controller')),
    pads TEXT NOT NULL CHECK (pads IN ('dry', 'dripping', 'not dry')),
    fans_running INTEGER CHECK (fans_running IN (0, 1))
, proof INTEGER NOT NULL DEFAULT 0 CHECK (proof IN (0, 1))) STRICT;
CREATE TABLE mark_change (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    mark TEXT NOT NULL REFERENCES mark (id),
    undone INTEGER NOT NULL CHECK (undone IN (0, 1))
, number INTEGER CHECK (number > 0)) STRICT;
CREATE TABLE picture (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    visit TEXT NOT NULL,
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
    jpeg BLOB NOT NULL CHECK (length(jpeg) > 0)
) STRICT;
CREATE TABLE removal (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    kind TEXT NOT NULL CHECK (kind IN ('farm', 'house', 'visit', 'template')),
    record TEXT NOT NULL,
    removed INTEGER NOT NULL CHECK (removed IN (0, 1))
, number INTEGER CHECK (number > 0)) STRICT;
CREATE TABLE "revision" (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    id TEXT NOT NULL UNIQUE,
    kind TEXT NOT NULL CHECK (kind IN ('farm', 'house', 'visit', 'template')),
    record TEXT NOT NULL CHECK (length(record) BETWEEN 1 AND 64),
    parent TEXT REFERENCES "revision" (id),
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
    house_revision TEXT REFERENCES "revision" (id),
    farm_revision TEXT REFERENCES "revision" (id), restores TEXT REFERENCES revision (id), passed_over TEXT REFERENCES revision (id),
    CHECK ((number = 1) = (parent IS NULL)),
    CHECK (number > 1 OR whole = 1),
    CHECK ((kind = 'visit') = (house IS NOT NULL AND started_unix_ms IS NOT NULL AND signed IS NOT NULL
                               AND house_revision IS NOT NULL AND farm_revision IS NOT NULL)),
    CHECK ((kind = 'visit') = (name IS NULL)),
    CHECK ((kind = 'house') = (farm IS NOT NULL))
) STRICT;
CREATE TABLE "sheet" (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    visit TEXT NOT NULL,
    revision TEXT NOT NULL UNIQUE REFERENCES revision (id),
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
    pdf BLOB NOT NULL CHECK (length(pdf) > 0)
) STRICT;
CREATE TABLE this_device (
    only_row INTEGER PRIMARY KEY CHECK (only_row = 1),
    device INTEGER NOT NULL REFERENCES device (device)
) STRICT;
CREATE TRIGGER entry_has_no_gap BEFORE INSERT ON entry
    WHEN new.device = (SELECT device FROM this_device)
        AND new.seq <> 1 + coalesce((SELECT max(seq) FROM entry WHERE device = new.device), 0)
    BEGIN SELECT raise(ABORT, 'a number of the journal is missing or taken'); END;
CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
    BEGIN SELECT raise(ABORT, 'entries are never changed'); END;
CREATE TRIGGER entry_is_not_removed BEFORE DELETE ON entry
    BEGIN SELECT raise(ABORT, 'entries are never removed'); END;
CREATE TRIGGER mark_change_is_not_changed BEFORE UPDATE ON mark_change
    BEGIN SELECT raise(ABORT, 'changes of marks are never changed'); END;
CREATE TRIGGER mark_change_is_not_removed BEFORE DELETE ON mark_change
    BEGIN SELECT raise(ABORT, 'changes of marks are never removed'); END;
CREATE TRIGGER mark_is_not_changed BEFORE UPDATE ON mark
    BEGIN SELECT raise(ABORT, 'marks are never changed'); END;
CREATE TRIGGER mark_is_not_removed BEFORE DELETE ON mark
    BEGIN SELECT raise(ABORT, 'marks are never removed'); END;
CREATE TRIGGER picture_is_not_changed BEFORE UPDATE ON picture
    BEGIN SELECT raise(ABORT, 'photos are never changed'); END;
CREATE TRIGGER picture_is_not_removed BEFORE DELETE ON picture
    BEGIN SELECT raise(ABORT, 'photos are never removed'); END;
CREATE TRIGGER picture_is_of_a_visit BEFORE INSERT ON picture
    WHEN NOT EXISTS (SELECT 1 FROM revision WHERE kind = 'visit' AND record = new.visit)
    BEGIN SELECT raise(ABORT, 'a photo belongs to a visit'); END;
CREATE TRIGGER removal_is_not_changed BEFORE UPDATE ON removal
    BEGIN SELECT raise(ABORT, 'removals are never changed'); END;
CREATE TRIGGER removal_is_not_removed BEFORE DELETE ON removal
    BEGIN SELECT raise(ABORT, 'removals are never removed'); END;
CREATE TRIGGER revision_has_its_parent BEFORE INSERT ON revision
    WHEN new.parent IS NOT NULL AND NOT EXISTS (SELECT 1 FROM revision WHERE id = new.parent AND kind = new.kind
        AND record = new.record AND number = new.number - 1)
    BEGIN SELECT raise(ABORT, 'a revision follows one of the same record'); END;
CREATE TRIGGER revision_is_not_changed BEFORE UPDATE ON revision
    BEGIN SELECT raise(ABORT, 'revisions are never changed'); END;
CREATE TRIGGER revision_is_not_removed BEFORE DELETE ON revision
    BEGIN SELECT raise(ABORT, 'revisions are never removed'); END;
CREATE TRIGGER sheet_is_not_changed BEFORE UPDATE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never changed'); END;
CREATE TRIGGER sheet_is_not_removed BEFORE DELETE ON sheet
    BEGIN SELECT raise(ABORT, 'sheets are never removed'); END;
CREATE TRIGGER sheet_is_of_a_signed_visit BEFORE INSERT ON sheet
    WHEN NOT EXISTS (SELECT 1 FROM revision WHERE id = new.revision AND kind = 'visit' AND record = new.visit
        AND signed = 1)
    BEGIN SELECT raise(ABORT, 'a sheet belongs to a signed visit'); END;
CREATE TRIGGER signed_visit_is_frozen BEFORE INSERT ON revision
    WHEN new.kind = 'visit' AND EXISTS (SELECT 1 FROM revision WHERE id = new.parent AND signed = 1)
    BEGIN SELECT raise(ABORT, 'a signed visit is frozen'); END;
CREATE VIEW head AS
    SELECT * FROM revision AS r WHERE NOT EXISTS (SELECT 1 FROM revision AS next WHERE next.parent = r.id)
        AND NOT EXISTS (SELECT 1 FROM revision AS chosen WHERE chosen.passed_over = r.id);
CREATE VIEW present_mark AS
    SELECT m.*, CASE WHEN EXISTS (SELECT 1 FROM mark_change AS c WHERE c.mark = m.id) THEN
            (SELECT c.undone FROM mark_change AS c JOIN entry AS e ON e.entry = c.entry
            JOIN device AS d ON d.device = e.device WHERE c.mark = m.id
            ORDER BY coalesce(c.number, 0) DESC, d.id DESC, e.seq DESC LIMIT 1) ELSE 0 END AS undone
    FROM mark AS m;
CREATE VIEW removed AS
    SELECT r.entry, r.kind, r.record FROM removal AS r WHERE r.removed = 1 AND r.entry = (
        SELECT last.entry FROM removal AS last JOIN entry AS e ON e.entry = last.entry
            JOIN device AS d ON d.device = e.device WHERE last.kind = r.kind AND last.record = r.record
            ORDER BY coalesce(last.number, 0) DESC, d.id DESC, e.seq DESC LIMIT 1);
CREATE VIEW visit AS
    SELECT v.entry, v.record, v.house, v.started_unix_ms, v.started_utc_offset_min, v.replaces,
        EXISTS (SELECT 1 FROM revision AS s INDEXED BY signed_visit
                WHERE s.kind = 'visit' AND s.signed = 1 AND s.record = v.record) AS signed
    FROM revision AS v INDEXED BY visit_of_house WHERE v.kind = 'visit' AND v.number = 1;
