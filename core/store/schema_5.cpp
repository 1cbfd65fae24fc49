// SPDX-License-Identifier: Apache-2.0
#include "store/migration.h"

namespace wetfront::store_detail {

// Released: never changed again. tests/data/store/schema_5.sql holds what it makes.
//
// Photos. What one shows, the visit says; here are its bytes, found by their hash. Two devices may have kept
// the same one.
void make_schema_5(SQLite::Database& db) {
    db.exec(R"sql(

CREATE TABLE picture (
    entry INTEGER PRIMARY KEY REFERENCES entry (entry),
    visit TEXT NOT NULL,
    sha256 BLOB NOT NULL CHECK (length(sha256) = 32),
    jpeg BLOB NOT NULL CHECK (length(jpeg) > 0)
) STRICT;
CREATE INDEX picture_of_visit ON picture (visit);
CREATE INDEX picture_by_hash ON picture (lower(hex(sha256)));
CREATE TRIGGER picture_is_not_changed BEFORE UPDATE ON picture
    BEGIN SELECT raise(ABORT, 'photos are never changed'); END;
CREATE TRIGGER picture_is_not_removed BEFORE DELETE ON picture
    BEGIN SELECT raise(ABORT, 'photos are never removed'); END;
CREATE TRIGGER picture_is_of_a_visit BEFORE INSERT ON picture
    WHEN NOT EXISTS (SELECT 1 FROM revision WHERE kind = 'visit' AND record = new.visit)
    BEGIN SELECT raise(ABORT, 'a photo belongs to a visit'); END;

)sql");
}

}  // namespace wetfront::store_detail
