-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a gauge that was watched all the time saw of a tightness test. The readings lie apart, under the digest of their
-- text (core/record/trace_text.h), which is what is packed.

CREATE TABLE traces (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    visit BLOB NOT NULL REFERENCES visits (id),
    test BLOB NOT NULL REFERENCES tests (id),
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
    kept_by TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX traces_by_visit ON traces (visit, kept_at);
CREATE INDEX traces_by_test ON traces (test);
CREATE INDEX traces_by_digest ON traces (digest);

CREATE TABLE trace_readings (
    digest TEXT NOT NULL PRIMARY KEY,
    packed BLOB NOT NULL
) STRICT;
