-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a gauge read open to the air before it was connected; what a second gauge saw beside it; how far a gauge drifts.

ALTER TABLE traces ADD COLUMN zero_reads TEXT NOT NULL DEFAULT '';
ALTER TABLE traces ADD COLUMN zero_reads_unit TEXT NOT NULL DEFAULT '';
ALTER TABLE traces ADD COLUMN zero_step TEXT NOT NULL DEFAULT '';
ALTER TABLE traces ADD COLUMN zero_step_unit TEXT NOT NULL DEFAULT '';
ALTER TABLE traces ADD COLUMN zero_at TEXT;
ALTER TABLE traces ADD COLUMN zero_is INTEGER NOT NULL DEFAULT 0 CHECK (zero_is IN (0, 1));
ALTER TABLE traces ADD COLUMN beside BLOB REFERENCES traces (id) DEFERRABLE INITIALLY DEFERRED;
CREATE INDEX traces_by_beside ON traces (beside) WHERE beside IS NOT NULL;

ALTER TABLE instruments ADD COLUMN drift TEXT NOT NULL DEFAULT '';
ALTER TABLE instruments ADD COLUMN drift_unit TEXT NOT NULL DEFAULT '';
