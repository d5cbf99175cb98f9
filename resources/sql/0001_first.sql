-- SPDX-License-Identifier: GPL-3.0-or-later
-- The law of this folder: a migration that has left the house is never edited (its checksum is in every store);
-- a change is a new file with the next number. A migration that older programs could not read safely
-- raises store.min_reader to its own number.
--
-- Keys are UUIDs of version 7 as 16 bytes, instants are UTC texts, days are YYYY-MM-DD, what was typed is kept as
-- typed beside its unit. Names and order of the register's columns are those of core/record/register_fields.h.

CREATE TABLE store (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    single INTEGER NOT NULL UNIQUE DEFAULT 1 CHECK (single = 1),
    created_at TEXT NOT NULL,
    min_reader INTEGER NOT NULL DEFAULT 1
) STRICT, WITHOUT ROWID;

CREATE TABLE migrations (
    number INTEGER NOT NULL PRIMARY KEY,
    name TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    applied_at TEXT NOT NULL,
    program TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The firm ----------------------------------------------------------------------------------------------------------

CREATE TABLE firm (
    id BLOB NOT NULL PRIMARY KEY REFERENCES store (id),
    name TEXT NOT NULL,
    line1 TEXT NOT NULL,
    line2 TEXT NOT NULL,
    town TEXT NOT NULL,
    postcode TEXT NOT NULL,
    registration_number TEXT NOT NULL,
    telephone TEXT NOT NULL,
    email TEXT NOT NULL,
    country TEXT NOT NULL,
    language TEXT NOT NULL,
    demonstration INTEGER NOT NULL CHECK (demonstration IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TRIGGER firm_stays_what_it_is BEFORE UPDATE OF demonstration ON firm
WHEN new.demonstration <> old.demonstration
BEGIN SELECT raise(ABORT, 'a demonstration stays one, and a firm too'); END;

CREATE TABLE engineers (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    name TEXT NOT NULL,
    card_number TEXT NOT NULL,
    card_expires TEXT,
    card_expires_text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE instruments (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    serial TEXT NOT NULL,
    resolution TEXT NOT NULL,
    resolution_unit TEXT NOT NULL,
    repeatability TEXT NOT NULL,
    repeatability_unit TEXT NOT NULL,
    accuracy TEXT NOT NULL,
    accuracy_unit TEXT NOT NULL,
    certificate TEXT NOT NULL,
    calibrated_on TEXT,
    calibrated_on_text TEXT NOT NULL,
    calibration_due TEXT,
    calibration_due_text TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- What the firm said of rule book entries; the newest of each key counts, the older ones are its history.
CREATE TABLE firm_entries (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    position INTEGER NOT NULL UNIQUE,
    rule TEXT NOT NULL,
    edition TEXT NOT NULL,
    gas TEXT NOT NULL,
    value TEXT NOT NULL,
    confirmed_by TEXT NOT NULL,
    confirmed_on TEXT NOT NULL,
    from_copy TEXT NOT NULL,
    saved_by TEXT NOT NULL,
    saved_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX firm_entries_by_key ON firm_entries (rule, edition, gas, position);

-- People, premises, installations -----------------------------------------------------------------------------------

CREATE TABLE parties (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    line1 TEXT NOT NULL,
    line2 TEXT NOT NULL,
    town TEXT NOT NULL,
    postcode TEXT NOT NULL,
    telephone TEXT NOT NULL,
    email TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE premises (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    line1 TEXT NOT NULL,
    line2 TEXT NOT NULL,
    town TEXT NOT NULL,
    postcode TEXT NOT NULL,
    country TEXT NOT NULL,
    access_notes TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX premises_by_place ON premises (town COLLATE NOCASE, line1 COLLATE NOCASE, line2 COLLATE NOCASE);

CREATE TABLE roles (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    party BLOB NOT NULL REFERENCES parties (id),
    kind TEXT NOT NULL,
    UNIQUE (premises, kind)
) STRICT, WITHOUT ROWID;
CREATE INDEX roles_by_party ON roles (party);

CREATE TABLE installations (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    gas TEXT NOT NULL,
    meter_code TEXT NOT NULL,
    meter_volume TEXT NOT NULL,
    meter_volume_unit TEXT NOT NULL,
    meter_serial TEXT NOT NULL,
    meter_place TEXT NOT NULL,
    operating_pressure TEXT NOT NULL,
    operating_pressure_unit TEXT NOT NULL,
    supply_pressure TEXT NOT NULL,
    supply_pressure_unit TEXT NOT NULL,
    control_valve_place TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX installations_by_premises ON installations (premises);

CREATE TABLE pipe_sections (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    installation BLOB NOT NULL REFERENCES installations (id),
    after BLOB REFERENCES pipe_sections (id) DEFERRABLE INITIALLY DEFERRED,
    after_text TEXT NOT NULL,
    position INTEGER NOT NULL,
    tube_code TEXT NOT NULL,
    length TEXT NOT NULL,
    length_unit TEXT NOT NULL,
    volume TEXT NOT NULL,
    volume_unit TEXT NOT NULL,
    leads_to TEXT NOT NULL,
    under_test INTEGER NOT NULL CHECK (under_test IN (0, 1))
) STRICT, WITHOUT ROWID;
CREATE INDEX pipe_sections_by_installation ON pipe_sections (installation, position);
CREATE INDEX pipe_sections_by_after ON pipe_sections (after);

-- Visits ------------------------------------------------------------------------------------------------------------

CREATE TABLE visits (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    installation BLOB NOT NULL REFERENCES installations (id),
    date TEXT NOT NULL,
    date_text TEXT NOT NULL,
    engineer BLOB REFERENCES engineers (id),
    started_at TEXT NOT NULL,
    closed INTEGER NOT NULL CHECK (closed IN (0, 1))
) STRICT, WITHOUT ROWID;
CREATE INDEX visits_by_premises ON visits (premises, date);
CREATE INDEX visits_by_date ON visits (date, started_at);
CREATE INDEX visits_by_installation ON visits (installation);
CREATE INDEX visits_by_engineer ON visits (engineer);

CREATE TABLE tests (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    visit BLOB NOT NULL REFERENCES visits (id),
    position INTEGER NOT NULL,
    label TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX tests_by_visit ON tests (visit, position);

-- One item's value on one subject. Codes of items, units and subjects that this program does not know are kept as
-- they are: a newer program wrote them.
CREATE TABLE entries (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    visit BLOB NOT NULL REFERENCES visits (id),
    subject_kind TEXT NOT NULL,
    subject BLOB NOT NULL CHECK (length(subject) = 16),
    item TEXT NOT NULL,
    text TEXT NOT NULL CHECK (text <> ''),
    unit TEXT NOT NULL,
    canonical TEXT NOT NULL,
    instrument BLOB REFERENCES instruments (id),
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    UNIQUE (subject, item)
) STRICT, WITHOUT ROWID;
CREATE INDEX entries_by_visit ON entries (visit);
CREATE INDEX entries_by_instrument ON entries (instrument);

-- Words to find things by: folded to small letters without accents. Derived, in the transaction of what they come from.
CREATE TABLE search_words (
    kind TEXT NOT NULL,
    word TEXT NOT NULL,
    row BLOB NOT NULL,
    PRIMARY KEY (kind, word, row)
) STRICT, WITHOUT ROWID;
CREATE INDEX search_words_by_row ON search_words (row, kind);

-- Issued records ----------------------------------------------------------------------------------------------------

-- place: a digest of the file's own place on the disk; another one means that this file is a copy, and a copy
-- starts a series of its own. last_number, last_record and head show when the end of a series was cut off.
CREATE TABLE series (
    series TEXT NOT NULL PRIMARY KEY,
    position INTEGER NOT NULL UNIQUE,
    started_at TEXT NOT NULL,
    follows_series TEXT NOT NULL,
    follows_head TEXT NOT NULL,
    place TEXT NOT NULL,
    last_number INTEGER NOT NULL DEFAULT 0,
    last_record INTEGER NOT NULL DEFAULT 0,
    head TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE record_headers (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    series TEXT NOT NULL REFERENCES series (series),
    number INTEGER NOT NULL CHECK (number > 0),
    record TEXT NOT NULL,
    revision INTEGER NOT NULL CHECK (revision > 0),
    kind TEXT NOT NULL,
    issued_at TEXT NOT NULL,
    snapshot_digest TEXT NOT NULL,
    pdf_digest TEXT NOT NULL,
    previous TEXT NOT NULL,
    digest TEXT NOT NULL,
    UNIQUE (series, number),
    UNIQUE (record, revision)
) STRICT, WITHOUT ROWID;
CREATE INDEX record_headers_by_time ON record_headers (issued_at);

-- The snapshot as bytes: its digest is over them. The other columns repeat what it says, for lists.
CREATE TABLE record_snapshots (
    record BLOB NOT NULL PRIMARY KEY REFERENCES record_headers (id),
    json BLOB NOT NULL,
    visit BLOB NOT NULL REFERENCES visits (id),
    premises BLOB NOT NULL REFERENCES premises (id),
    address TEXT NOT NULL,
    customer TEXT NOT NULL,
    outcome TEXT NOT NULL,
    supersedes BLOB UNIQUE REFERENCES record_headers (id),
    reason TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX record_snapshots_by_visit ON record_snapshots (visit);
CREATE INDEX record_snapshots_by_premises ON record_snapshots (premises);

CREATE TABLE record_pdfs (
    record BLOB NOT NULL PRIMARY KEY REFERENCES record_headers (id),
    pdf BLOB NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE record_events (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    position INTEGER NOT NULL UNIQUE,
    record BLOB NOT NULL REFERENCES record_headers (id),
    event TEXT NOT NULL,
    detail TEXT NOT NULL,
    by TEXT NOT NULL,
    at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX record_events_by_record ON record_events (record, position);

-- The change log: one line for each changed field of a register row or an entry. group_id is one action of a person.
CREATE TABLE changes (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    position INTEGER NOT NULL UNIQUE,
    group_id BLOB NOT NULL CHECK (length(group_id) = 16),
    store BLOB NOT NULL,
    visit BLOB,
    table_name TEXT NOT NULL,
    row_id TEXT NOT NULL,
    field TEXT NOT NULL,
    before TEXT,
    after TEXT,
    by TEXT NOT NULL,
    at TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX changes_by_row ON changes (table_name, row_id, position);
CREATE INDEX changes_by_visit ON changes (visit, position);
CREATE INDEX changes_by_group ON changes (group_id, position);

-- Facts are only ever added -----------------------------------------------------------------------------------------
-- The checks before INSERT are there for INSERT OR REPLACE on a connection without recursive triggers, which would
-- delete silently.

CREATE TRIGGER record_headers_stay BEFORE UPDATE ON record_headers
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;
CREATE TRIGGER record_headers_are_kept BEFORE DELETE ON record_headers
BEGIN SELECT raise(ABORT, 'an issued record is never removed'); END;
CREATE TRIGGER record_headers_once BEFORE INSERT ON record_headers
WHEN EXISTS (SELECT 1 FROM record_headers AS h WHERE h.id = new.id
             OR (h.series = new.series AND h.number = new.number)
             OR (h.record = new.record AND h.revision = new.revision))
BEGIN SELECT raise(ABORT, 'an issued record is never replaced'); END;

CREATE TRIGGER record_snapshots_stay BEFORE UPDATE ON record_snapshots
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;
CREATE TRIGGER record_snapshots_are_kept BEFORE DELETE ON record_snapshots
BEGIN SELECT raise(ABORT, 'an issued record is never removed'); END;
CREATE TRIGGER record_snapshots_once BEFORE INSERT ON record_snapshots
WHEN EXISTS (SELECT 1 FROM record_snapshots AS s WHERE s.record = new.record OR s.supersedes = new.supersedes)
BEGIN SELECT raise(ABORT, 'an issued record is never replaced'); END;

CREATE TRIGGER record_pdfs_stay BEFORE UPDATE ON record_pdfs
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;
CREATE TRIGGER record_pdfs_are_kept BEFORE DELETE ON record_pdfs
BEGIN SELECT raise(ABORT, 'an issued record is never removed'); END;
CREATE TRIGGER record_pdfs_once BEFORE INSERT ON record_pdfs
WHEN EXISTS (SELECT 1 FROM record_pdfs AS p WHERE p.record = new.record)
BEGIN SELECT raise(ABORT, 'an issued record is never replaced'); END;

CREATE TRIGGER record_events_stay BEFORE UPDATE ON record_events
BEGIN SELECT raise(ABORT, 'what happened is never changed'); END;
CREATE TRIGGER record_events_are_kept BEFORE DELETE ON record_events
BEGIN SELECT raise(ABORT, 'what happened is never removed'); END;
CREATE TRIGGER record_events_once BEFORE INSERT ON record_events
WHEN EXISTS (SELECT 1 FROM record_events AS e WHERE e.id = new.id OR e.position = new.position)
BEGIN SELECT raise(ABORT, 'what happened is never replaced'); END;

CREATE TRIGGER changes_stay BEFORE UPDATE ON changes
BEGIN SELECT raise(ABORT, 'the change log is never changed'); END;
CREATE TRIGGER changes_are_kept BEFORE DELETE ON changes
BEGIN SELECT raise(ABORT, 'the change log is never shortened'); END;
CREATE TRIGGER changes_once BEFORE INSERT ON changes
WHEN EXISTS (SELECT 1 FROM changes AS c WHERE c.id = new.id OR c.position = new.position)
BEGIN SELECT raise(ABORT, 'the change log is never replaced'); END;

CREATE TRIGGER firm_entries_stay BEFORE UPDATE ON firm_entries
BEGIN SELECT raise(ABORT, 'the history of the rule book is never changed'); END;
CREATE TRIGGER firm_entries_are_kept BEFORE DELETE ON firm_entries
BEGIN SELECT raise(ABORT, 'the history of the rule book is never shortened'); END;
CREATE TRIGGER firm_entries_once BEFORE INSERT ON firm_entries
WHEN EXISTS (SELECT 1 FROM firm_entries AS f WHERE f.id = new.id OR f.position = new.position)
BEGIN SELECT raise(ABORT, 'the history of the rule book is never replaced'); END;

CREATE TRIGGER series_go_on BEFORE UPDATE ON series
WHEN new.series <> old.series OR new.position <> old.position OR new.started_at <> old.started_at
  OR new.follows_series <> old.follows_series OR new.follows_head <> old.follows_head
  OR new.last_number < old.last_number OR new.last_record < old.last_record
BEGIN SELECT raise(ABORT, 'a series only goes on'); END;
CREATE TRIGGER series_are_kept BEFORE DELETE ON series
BEGIN SELECT raise(ABORT, 'a series is never removed'); END;
CREATE TRIGGER series_once BEFORE INSERT ON series
WHEN EXISTS (SELECT 1 FROM series AS s WHERE s.series = new.series OR s.position = new.position)
BEGIN SELECT raise(ABORT, 'a series is never replaced'); END;

CREATE TRIGGER migrations_stay BEFORE UPDATE ON migrations
BEGIN SELECT raise(ABORT, 'the history of the store is never changed'); END;
CREATE TRIGGER migrations_are_kept BEFORE DELETE ON migrations
BEGIN SELECT raise(ABORT, 'the history of the store is never shortened'); END;
