-- SPDX-License-Identifier: GPL-3.0-or-later
-- A trace may also be of the carbon monoxide in a room: then no test has it.

CREATE TABLE traces_of_visits (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    visit BLOB NOT NULL REFERENCES visits (id),
    test BLOB REFERENCES tests (id),
    source TEXT NOT NULL,
    origin TEXT NOT NULL,
    simulated INTEGER NOT NULL CHECK (simulated IN (0, 1)),
    began_at TEXT,
    resolution TEXT NOT NULL,
    resolution_unit TEXT NOT NULL,
    channels TEXT NOT NULL,
    points INTEGER NOT NULL CHECK (points > 0),
    milliseconds INTEGER NOT NULL CHECK (milliseconds >= 0),
    size INTEGER NOT NULL CHECK (size > 0),
    digest TEXT NOT NULL,
    marks TEXT NOT NULL,
    kept_at TEXT NOT NULL,
    kept_by TEXT NOT NULL,
    CHECK ((test IS NULL) = (channels = 'co'))
) STRICT, WITHOUT ROWID;
INSERT INTO traces_of_visits (id, visit, test, source, origin, simulated, began_at, resolution, resolution_unit, channels,
    points, milliseconds, size, digest, marks, kept_at, kept_by)
SELECT id, visit, test, source, origin, simulated, began_at, resolution, resolution_unit, channels, points, milliseconds,
    size, digest, marks, kept_at, kept_by FROM traces;
DROP TABLE traces;
ALTER TABLE traces_of_visits RENAME TO traces;
CREATE INDEX traces_by_visit ON traces (visit, kept_at);
CREATE INDEX traces_by_test ON traces (test) WHERE test IS NOT NULL;
CREATE INDEX traces_by_digest ON traces (digest);
