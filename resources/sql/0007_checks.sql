-- SPDX-License-Identifier: GPL-3.0-or-later
-- Safety checks: what was said of the duty at premises, checks by other firms, the one extension of a new appliance;
-- which appliances a record of ours says were checked, and on which day; and, derived, what is due next where.

CREATE TABLE check_plans (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL UNIQUE REFERENCES premises (id),
    duty TEXT NOT NULL,
    months INTEGER NOT NULL,
    lease_begins TEXT
) STRICT, WITHOUT ROWID;

CREATE TABLE earlier_checks (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    appliance BLOB REFERENCES appliances (id),
    date TEXT NOT NULL,
    made_by TEXT NOT NULL,
    note TEXT NOT NULL,
    visit BLOB REFERENCES visits (id)
) STRICT, WITHOUT ROWID;
CREATE INDEX earlier_checks_by_premises ON earlier_checks (premises, date);
CREATE INDEX earlier_checks_by_appliance ON earlier_checks (appliance);
CREATE INDEX earlier_checks_by_visit ON earlier_checks (visit);

CREATE TABLE check_extensions (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
    premises BLOB NOT NULL REFERENCES premises (id),
    appliance BLOB NOT NULL UNIQUE REFERENCES appliances (id),
    others_due TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX check_extensions_by_premises ON check_extensions (premises);

-- What an issued record says of each appliance. It outlives the record's payload, so that anniversaries can be proved;
-- `counts` goes to 0 when the record is superseded or made void. counted_from: the last check, or the deadline that it
-- counted for, as the engineer knew it.
CREATE TABLE record_checks (
    premises BLOB NOT NULL,
    date TEXT NOT NULL,
    record BLOB NOT NULL REFERENCES record_headers (id),
    appliance BLOB NOT NULL CHECK (length(appliance) = 16),
    kind TEXT NOT NULL,
    counted_from TEXT,
    counts INTEGER NOT NULL CHECK (counts IN (0, 1)),
    PRIMARY KEY (premises, date, record, appliance)
) STRICT, WITHOUT ROWID;
CREATE INDEX record_checks_by_record ON record_checks (record);

-- Records issued before there was this table: what was entered at their visits.
INSERT INTO record_checks (premises, date, record, appliance, kind, counted_from, counts)
SELECT s.premises,
       coalesce((SELECT nullif(d.canonical, '') FROM entries AS d
                 WHERE d.subject = e.subject AND d.item = 'appliance.checked_on' AND d.visit = s.visit), v.date),
       s.record, e.subject, h.kind,
       (SELECT nullif(l.canonical, '') FROM entries AS l
        WHERE l.subject = e.subject AND l.item = 'appliance.last_check' AND l.visit = s.visit),
       NOT EXISTS (SELECT 1 FROM record_snapshots AS n WHERE n.supersedes = s.record)
           AND NOT EXISTS (SELECT 1 FROM record_events AS o WHERE o.record = s.record AND o.event = 'void')
FROM record_snapshots AS s
JOIN record_headers AS h ON h.id = s.record AND h.kind IN ('landlord_safety', 'owner_safety')
JOIN visits AS v ON v.id = s.visit
JOIN entries AS e ON e.visit = s.visit AND e.subject_kind = 'appliance' AND e.item = 'appliance.inspected'
                 AND e.canonical = 'inspected';

CREATE TRIGGER record_checks_stay BEFORE UPDATE ON record_checks
WHEN new.premises <> old.premises OR new.date <> old.date OR new.record <> old.record
  OR new.appliance <> old.appliance OR new.kind <> old.kind OR new.counted_from IS NOT old.counted_from
BEGIN SELECT raise(ABORT, 'what a record says was checked is never changed'); END;
CREATE TRIGGER record_checks_are_kept BEFORE DELETE ON record_checks
BEGIN SELECT raise(ABORT, 'what a record says was checked is never removed'); END;
CREATE TRIGGER record_checks_once BEFORE INSERT ON record_checks
WHEN EXISTS (SELECT 1 FROM record_checks AS c WHERE c.premises = new.premises AND c.date = new.date
             AND c.record = new.record AND c.appliance = new.appliance)
BEGIN SELECT raise(ABORT, 'what a record says was checked is never replaced'); END;

-- What is due next, for lists: derived in the transaction of what it comes from. Days count from 1970. Each index
-- holds all that filters and states ask for.
CREATE TABLE due_premises (
    premises BLOB NOT NULL PRIMARY KEY CHECK (length(premises) = 16),
    duty INTEGER NOT NULL,
    deadline INTEGER,
    latest INTEGER,
    reason INTEGER NOT NULL,
    base INTEGER,
    opens INTEGER,
    appliance BLOB,
    items INTEGER NOT NULL,
    unknown INTEGER NOT NULL,
    last_check INTEGER,
    booking BLOB,
    booked INTEGER,
    engineer BLOB,
    landlord BLOB,
    landlord_name TEXT NOT NULL COLLATE NOCASE,
    agent BLOB,
    outward TEXT NOT NULL,
    place TEXT NOT NULL COLLATE NOCASE,
    postcode TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX due_by_deadline
    ON due_premises (deadline, premises, opens, booked, duty, landlord, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_place
    ON due_premises (place, premises, deadline, opens, booked, duty, landlord, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_postcode
    ON due_premises (postcode, deadline, premises, opens, booked, duty, landlord, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_landlord_name
    ON due_premises (landlord_name, deadline, premises, opens, booked, duty, landlord, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_last_check
    ON due_premises (last_check, deadline, premises, opens, booked, duty, landlord, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_none ON due_premises (place, landlord, agent, outward) WHERE duty = 3;

-- What deadlines ask of appliances, without reading the rest of them.
CREATE INDEX appliances_for_due ON appliances (installation, position, id, owner, installed_on, removed_on);
