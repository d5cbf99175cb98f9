-- SPDX-License-Identifier: GPL-3.0-or-later
-- A record whose keeping is over may go: what it says and its pages are emptied, and its header stays, so that the
-- chain and its numbers hold on. Nothing empties them but the event "payload erased", which does it by itself: the one is
-- never there without the other. The event's detail is the last day of the keeping and the code of its rule:
-- "2032-11-25 six_years". That a record went is a line of the sealed change log as well (core/store/letting_go.h).

CREATE TRIGGER record_events_erase_late BEFORE INSERT ON record_events
WHEN new.event = 'payload erased'
  AND (date(substr(new.detail, 1, 10), '+0 days') IS NOT substr(new.detail, 1, 10)
       OR substr(new.detail, 1, 10) > substr(new.at, 1, 10)
       OR EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = new.record AND e.event = 'payload erased'))
BEGIN SELECT raise(ABORT, 'an issued record is kept until its keeping is over'); END;

DROP TRIGGER record_snapshots_stay;
CREATE TRIGGER record_snapshots_stay BEFORE UPDATE ON record_snapshots
WHEN NOT (new.record IS old.record AND new.visit IS old.visit AND new.premises IS old.premises
          AND new.supersedes IS old.supersedes
          AND length(old.json) > 0 AND length(new.json) = 0 AND new.address = '' AND new.customer = ''
          AND new.reason = '' AND new.outcome = 'no_verdict'
          AND EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = old.record AND e.event = 'payload erased'))
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;

DROP TRIGGER record_pdfs_stay;
CREATE TRIGGER record_pdfs_stay BEFORE UPDATE ON record_pdfs
WHEN NOT (new.record IS old.record AND length(old.pdf) > 0 AND length(new.pdf) = 0
          AND EXISTS (SELECT 1 FROM record_events AS e WHERE e.record = old.record AND e.event = 'payload erased'))
BEGIN SELECT raise(ABORT, 'an issued record is never changed'); END;

CREATE TRIGGER record_events_erase AFTER INSERT ON record_events
WHEN new.event = 'payload erased'
BEGIN
    UPDATE record_snapshots SET json = x'', address = '', customer = '', reason = '', outcome = 'no_verdict'
    WHERE record = new.record;
    UPDATE record_pdfs SET pdf = x'' WHERE record = new.record;
END;

-- This step's own number: an older program would call such a record altered.
UPDATE store SET min_reader = (SELECT max(number) + 1 FROM migrations);
