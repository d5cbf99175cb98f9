-- SPDX-License-Identifier: GPL-3.0-or-later
-- An appliance is seen again next year: an entry is one visit's, and next year's stands beside it.

CREATE TABLE entries_of_visits (
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
    UNIQUE (subject, item, visit)
) STRICT, WITHOUT ROWID;
INSERT INTO entries_of_visits (id, visit, subject_kind, subject, item, text, unit, canonical, instrument, at, by)
SELECT id, visit, subject_kind, subject, item, text, unit, canonical, instrument, at, by FROM entries;
DROP TABLE entries;
ALTER TABLE entries_of_visits RENAME TO entries;
CREATE INDEX entries_by_visit ON entries (visit);
CREATE INDEX entries_by_instrument ON entries (instrument);

-- What stands in the log of a premises: everything that belongs to it, by the line itself, since rows go.
-- salt: random bytes without which nobody guesses an erased text from its digest; lines from before have none.
-- texts: once the law asked for a line's texts to be erased, SHA-256 of salt, before and after as they were, so that
-- the seal over the line holds on. How digests are made stands in core/store/sealing.h.
ALTER TABLE changes ADD COLUMN premises BLOB;
ALTER TABLE changes ADD COLUMN salt BLOB;
ALTER TABLE changes ADD COLUMN texts TEXT;
ALTER TABLE changes ADD COLUMN erased_at TEXT;
DROP TRIGGER changes_stay;

CREATE TABLE belonging (row TEXT NOT NULL PRIMARY KEY, premises BLOB NOT NULL) STRICT, WITHOUT ROWID;
INSERT OR IGNORE INTO belonging (row, premises)
SELECT lower(substr(hex(id), 1, 8) || '-' || substr(hex(id), 9, 4) || '-' || substr(hex(id), 13, 4) || '-'
             || substr(hex(id), 17, 4) || '-' || substr(hex(id), 21)), premises
FROM (SELECT id, id AS premises FROM premises
      UNION ALL SELECT id, premises FROM roles
      UNION ALL SELECT id, premises FROM installations
      UNION ALL SELECT id, premises FROM visits
      UNION ALL SELECT id, premises FROM access_attempts
      UNION ALL SELECT id, premises FROM letters
      UNION ALL SELECT id, premises FROM bookings
      UNION ALL SELECT id, premises FROM situations
      UNION ALL SELECT p.id, i.premises FROM pipe_sections AS p JOIN installations AS i ON i.id = p.installation
      UNION ALL SELECT a.id, i.premises FROM appliances AS a JOIN installations AS i ON i.id = a.installation
      UNION ALL SELECT t.id, v.premises FROM tests AS t JOIN visits AS v ON v.id = t.visit
      UNION ALL SELECT e.id, s.premises FROM situation_events AS e JOIN situations AS s ON s.id = e.situation);
-- Rows that are gone said in the log where they belonged.
INSERT OR IGNORE INTO belonging (row, premises)
SELECT c.row_id, b.premises FROM changes AS c JOIN belonging AS b ON b.row = coalesce(c.after, c.before)
WHERE c.field = 'premises';
INSERT OR IGNORE INTO belonging (row, premises)
SELECT c.row_id, b.premises FROM changes AS c JOIN belonging AS b ON b.row = coalesce(c.after, c.before)
WHERE c.field IN ('installation', 'situation', 'visit', 'owner', 'row');
UPDATE changes SET premises = coalesce((SELECT b.premises FROM belonging AS b WHERE b.row = changes.row_id),
                                       (SELECT v.premises FROM visits AS v WHERE v.id = changes.visit));
DROP TABLE belonging;
CREATE INDEX changes_by_premises ON changes (premises, position);

CREATE TRIGGER changes_stay BEFORE UPDATE ON changes
WHEN NOT (new.id IS old.id AND new.position IS old.position AND new.group_id IS old.group_id
          AND new.store IS old.store AND new.visit IS old.visit AND new.premises IS old.premises
          AND new.table_name IS old.table_name AND new.row_id IS old.row_id AND new.field IS old.field
          AND new.by IS old.by AND new.at IS old.at
          AND old.erased_at IS NULL AND new.erased_at IS NOT NULL AND coalesce(length(new.texts), 0) = 64
          AND new.salt IS NULL AND new.before IS NULL AND new.after IS NULL)
BEGIN SELECT raise(ABORT, 'the change log is never changed'); END;
