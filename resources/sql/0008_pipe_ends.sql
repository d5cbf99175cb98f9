-- SPDX-License-Identifier: GPL-3.0-or-later
-- What hangs at the end of a section of pipe, and the section's fittings as typed: what its pressure drop goes by.

ALTER TABLE pipe_sections ADD COLUMN appliance BLOB REFERENCES appliances (id) DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE pipe_sections ADD COLUMN capped INTEGER NOT NULL DEFAULT 0 CHECK (capped IN (0, 1));
ALTER TABLE pipe_sections ADD COLUMN fittings TEXT NOT NULL DEFAULT '';
CREATE INDEX pipe_sections_by_appliance ON pipe_sections (appliance) WHERE appliance IS NOT NULL;
