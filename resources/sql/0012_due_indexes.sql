-- SPDX-License-Identifier: GPL-3.0-or-later
-- What deadlines ask of appliances has the kind too, since an unvented cylinder asks for no check: else each
-- appliance is read whole to be left out.

DROP INDEX appliances_for_due;
CREATE INDEX appliances_for_due ON appliances (installation, position, id, owner, installed_on, removed_on, kind);

-- One landlord's or agent's premises without walking everybody's, by deadline.
CREATE INDEX due_by_landlord
    ON due_premises (landlord, deadline, premises, opens, booked, duty, agent, engineer, outward) WHERE duty < 3;
CREATE INDEX due_by_agent
    ON due_premises (agent, deadline, premises, opens, booked, duty, landlord, engineer, outward) WHERE duty < 3;
