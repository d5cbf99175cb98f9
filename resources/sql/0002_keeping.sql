-- SPDX-License-Identifier: GPL-3.0-or-later
-- Everything that a firm keeps beside tests and records: appliances, competences, who held which role from when to when,
-- attempts to get in, letters, bookings, unsafe situations, pictures and papers, the bin; and a chain over the change log.

ALTER TABLE firm ADD COLUMN logo BLOB REFERENCES attachments (id);
ALTER TABLE firm ADD COLUMN number_form TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN insurer TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN policy TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN insured_until TEXT;
ALTER TABLE firm ADD COLUMN insured_until_text TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN reminder_text TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN no_access_text TEXT NOT NULL DEFAULT '';
ALTER TABLE firm ADD COLUMN cover_text TEXT NOT NULL DEFAULT '';

ALTER TABLE parties ADD COLUMN language TEXT NOT NULL DEFAULT '';
ALTER TABLE parties ADD COLUMN send_by TEXT NOT NULL DEFAULT 'not_said';
ALTER TABLE parties ADD COLUMN reminder_basis TEXT NOT NULL DEFAULT 'not_said';
ALTER TABLE parties ADD COLUMN reminder_since TEXT;
ALTER TABLE parties ADD COLUMN reminder_withdrawn TEXT;
ALTER TABLE parties ADD COLUMN notes TEXT NOT NULL DEFAULT '';
CREATE INDEX parties_by_name ON parties (name COLLATE NOCASE);

ALTER TABLE premises ADD COLUMN uprn TEXT NOT NULL DEFAULT '';

ALTER TABLE installations ADD COLUMN name TEXT NOT NULL DEFAULT '';
ALTER TABLE installations ADD COLUMN mprn TEXT NOT NULL DEFAULT '';
ALTER TABLE installations ADD COLUMN meter_badge TEXT NOT NULL DEFAULT '';
ALTER TABLE installations ADD COLUMN regulator TEXT NOT NULL DEFAULT '';
ALTER TABLE installations ADD COLUMN control_valve_accessible TEXT NOT NULL DEFAULT 'not_said';
ALTER TABLE installations ADD COLUMN bonding_seen TEXT NOT NULL DEFAULT 'not_said';
ALTER TABLE installations ADD COLUMN line_diagram TEXT NOT NULL DEFAULT '';

-- A role has its time; at most one holder of a kind at once.
CREATE TABLE roles_in_time (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    party BLOB NOT NULL REFERENCES parties (id),
    kind TEXT NOT NULL,
    since TEXT,
    until TEXT
) STRICT, WITHOUT ROWID;
INSERT INTO roles_in_time (id, premises, party, kind) SELECT id, premises, party, kind FROM roles;
DROP TABLE roles;
ALTER TABLE roles_in_time RENAME TO roles;
CREATE UNIQUE INDEX roles_now ON roles (premises, kind) WHERE until IS NULL;
CREATE INDEX roles_by_premises ON roles (premises);
CREATE INDEX roles_by_party ON roles (party);

CREATE TABLE appliances (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    installation BLOB NOT NULL REFERENCES installations (id),
    position INTEGER NOT NULL,
    kind TEXT NOT NULL,
    make TEXT NOT NULL,
    model TEXT NOT NULL,
    serial TEXT NOT NULL,
    gc_number TEXT NOT NULL,
    place TEXT NOT NULL,
    flue TEXT NOT NULL,
    gas TEXT NOT NULL,
    net_input TEXT NOT NULL,
    net_input_unit TEXT NOT NULL,
    gross_input TEXT NOT NULL,
    gross_input_unit TEXT NOT NULL,
    installed_on TEXT,
    installed_on_text TEXT NOT NULL,
    owner TEXT NOT NULL,
    maker_ratio TEXT NOT NULL,
    maker_ratio_unit TEXT NOT NULL,
    maker_co TEXT NOT NULL,
    maker_co_unit TEXT NOT NULL,
    maker_inlet_least TEXT NOT NULL,
    maker_inlet_least_unit TEXT NOT NULL,
    maker_inlet_most TEXT NOT NULL,
    maker_inlet_most_unit TEXT NOT NULL,
    maker_burner_least TEXT NOT NULL,
    maker_burner_least_unit TEXT NOT NULL,
    maker_burner_most TEXT NOT NULL,
    maker_burner_most_unit TEXT NOT NULL,
    maker_tolerance TEXT NOT NULL,
    maker_tolerance_unit TEXT NOT NULL,
    maker_source TEXT NOT NULL,
    removed_on TEXT,
    removed_on_text TEXT NOT NULL,
    notes TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX appliances_by_installation ON appliances (installation, position);
CREATE INDEX appliances_by_make ON appliances (make COLLATE NOCASE, model COLLATE NOCASE);

CREATE TABLE competences (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    engineer BLOB NOT NULL REFERENCES engineers (id),
    category TEXT NOT NULL,
    expires TEXT,
    expires_text TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX competences_by_engineer ON competences (engineer, category);

CREATE TABLE access_attempts (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    at TEXT NOT NULL,
    who TEXT NOT NULL,
    channel TEXT NOT NULL,
    what_was_left TEXT NOT NULL,
    response TEXT NOT NULL,
    next_step TEXT NOT NULL,
    next_on TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX access_attempts_by_premises ON access_attempts (premises, at);

CREATE TABLE letters (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    party BLOB NOT NULL REFERENCES parties (id),
    kind TEXT NOT NULL,
    channel TEXT NOT NULL,
    sent_to TEXT NOT NULL,
    text TEXT NOT NULL,
    at TEXT NOT NULL,
    result TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX letters_by_premises ON letters (premises, at);
CREATE INDEX letters_by_party ON letters (party, at);

CREATE TABLE bookings (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    visit BLOB REFERENCES visits (id),
    engineer BLOB REFERENCES engineers (id),
    date TEXT NOT NULL,
    from_time TEXT NOT NULL,
    until_time TEXT NOT NULL,
    state TEXT NOT NULL,
    note TEXT NOT NULL,
    sequence INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX bookings_by_premises ON bookings (premises, date);
CREATE INDEX bookings_by_engineer ON bookings (engineer, date);
CREATE INDEX bookings_by_visit ON bookings (visit);

CREATE TABLE situations (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    installation BLOB REFERENCES installations (id),
    appliance BLOB REFERENCES appliances (id),
    visit BLOB REFERENCES visits (id),
    found_at TEXT NOT NULL,
    danger TEXT NOT NULL,
    what TEXT NOT NULL,
    place TEXT NOT NULL,
    closed_at TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX situations_by_premises ON situations (premises, found_at);
CREATE INDEX situations_by_installation ON situations (installation);
CREATE INDEX situations_by_appliance ON situations (appliance);
CREATE INDEX situations_by_visit ON situations (visit);
CREATE INDEX situations_open ON situations (found_at) WHERE closed_at IS NULL;

CREATE TABLE situation_events (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    situation BLOB NOT NULL REFERENCES situations (id),
    at TEXT NOT NULL,
    kind TEXT NOT NULL,
    text TEXT NOT NULL,
    by TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX situation_events_by_situation ON situation_events (situation, at);

CREATE TABLE emergency_contacts (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    country TEXT NOT NULL,
    gas TEXT NOT NULL,
    name TEXT NOT NULL,
    number TEXT NOT NULL,
    UNIQUE (country, gas)
) STRICT, WITHOUT ROWID;

-- owner_table and owner: any row of the register; what it belongs to may lie in the bin.
CREATE TABLE attachments (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    owner_table TEXT NOT NULL,
    owner BLOB NOT NULL CHECK (length(owner) = 16),
    name TEXT NOT NULL,
    media_type TEXT NOT NULL,
    size INTEGER NOT NULL,
    digest TEXT NOT NULL,
    added_at TEXT NOT NULL,
    added_by TEXT NOT NULL,
    place_kept INTEGER NOT NULL CHECK (place_kept IN (0, 1)),
    note TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX attachments_by_owner ON attachments (owner, added_at);
-- The bytes lie apart, by their digest, so that lists stay small and the same picture is kept once.
CREATE TABLE attachment_bytes (
    digest TEXT NOT NULL PRIMARY KEY,
    bytes BLOB NOT NULL,
    thumbnail BLOB
) STRICT;

CREATE TABLE bin (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    table_name TEXT NOT NULL,
    row BLOB NOT NULL CHECK (length(row) = 16),
    label TEXT NOT NULL,
    at TEXT NOT NULL,
    by TEXT NOT NULL,
    UNIQUE (row, table_name)
) STRICT, WITHOUT ROWID;
CREATE INDEX bin_by_time ON bin (at);

-- What this store is told about itself: the second folder for backups, when the last one was made.
CREATE TABLE settings (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The chain over the change log: each seal covers the lines after the seal before it, and that seal. The first one covers
-- whatever was logged before there were seals.
CREATE TABLE change_seals (
    position INTEGER NOT NULL PRIMARY KEY,
    previous TEXT NOT NULL,
    digest TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TRIGGER change_seals_stay BEFORE UPDATE ON change_seals
BEGIN SELECT raise(ABORT, 'a seal is never changed'); END;
CREATE TRIGGER change_seals_are_kept BEFORE DELETE ON change_seals
BEGIN SELECT raise(ABORT, 'a seal is never removed'); END;
CREATE TRIGGER change_seals_once BEFORE INSERT ON change_seals
WHEN EXISTS (SELECT 1 FROM change_seals AS s WHERE s.position >= new.position)
BEGIN SELECT raise(ABORT, 'a seal is never replaced'); END;

UPDATE store SET min_reader = 2;
