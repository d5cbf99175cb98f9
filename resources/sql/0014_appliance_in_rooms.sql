-- SPDX-License-Identifier: GPL-3.0-or-later
-- Whether a gas appliance stands in a room that tenants occupy: where none does, a copy of the record may be displayed.

ALTER TABLE premises ADD COLUMN appliance_in_rooms TEXT NOT NULL DEFAULT 'not_said';
