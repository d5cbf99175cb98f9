-- SPDX-License-Identifier: GPL-3.0-or-later
-- Pictures that a visit's records are to show, and those that an issued record shows: their bytes stay as long as what it
-- says does. And what people sign with their hands on a visit, each for one record: the how manyeth of its kind there.

ALTER TABLE attachments ADD COLUMN in_record_of BLOB REFERENCES visits (id);
CREATE INDEX attachments_by_record ON attachments (in_record_of);

CREATE TABLE record_pictures (
    record BLOB NOT NULL REFERENCES record_headers (id),
    digest TEXT NOT NULL,
    PRIMARY KEY (record, digest)
) STRICT, WITHOUT ROWID;
CREATE INDEX record_pictures_by_digest ON record_pictures (digest);

CREATE TRIGGER record_pictures_stay BEFORE UPDATE ON record_pictures
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;
CREATE TRIGGER record_pictures_are_kept BEFORE DELETE ON record_pictures
WHEN NOT EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = old.record AND e.event = 'payload erased')
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;
CREATE TRIGGER record_pictures_go AFTER INSERT ON record_events
WHEN new.event = 'payload erased'
BEGIN DELETE FROM record_pictures WHERE record = new.record; END;

CREATE TABLE hand_signatures (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    visit BLOB NOT NULL REFERENCES visits (id),
    record_kind TEXT NOT NULL,
    issue INTEGER NOT NULL CHECK (issue > 0),
    signer TEXT NOT NULL,
    way TEXT NOT NULL,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    strokes TEXT NOT NULL,
    copy_left TEXT NOT NULL,
    signed_at TEXT NOT NULL,
    UNIQUE (visit, record_kind, issue, signer)
) STRICT, WITHOUT ROWID;
