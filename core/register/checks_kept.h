// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"
#include "core/register/appliance.h"

/// What is kept of safety checks beside the records that the firm issued.
namespace hearth::reg {

using CheckPlanId = Id<struct CheckPlanTag>;
using EarlierCheckId = Id<struct EarlierCheckTag>;
using CheckExtensionId = Id<struct CheckExtensionTag>;

/// What was said of the checks at premises; at most one for each. Where the duty is not said, the roles tell:
/// premises with a landlord or an agent are let.
struct CheckPlan {
    CheckPlanId id;
    PremisesId premises;
    calendar::CheckDuty duty = calendar::CheckDuty::NotKnown;
    int months = 0;  // of the firm's own interval here; 0: its usual one
    std::optional<calendar::Date> leaseBegins = {};
    bool operator==(const CheckPlan&) const = default;
};

/// A check that another firm made, or this one before it used the program. It counts as proof of the
/// anniversary, and says so; its record is kept as an attachment of "earlier_checks".
struct EarlierCheck {
    EarlierCheckId id;
    PremisesId premises;
    std::optional<ApplianceId> appliance = {};  // none: all that stood there
    calendar::Date date{};
    std::string by = {};  // who made it, as its record says
    std::string note = {};
    std::optional<VisitId> visit = {};  // the visit that an import made for it
    bool operator==(const EarlierCheck&) const = default;
};

/// The one extension of a new appliance's first check, so that it comes with the others', due on that day.
struct CheckExtension {
    CheckExtensionId id;
    PremisesId premises;
    ApplianceId appliance;
    calendar::Date othersDue{};
    bool operator==(const CheckExtension&) const = default;
};

/// "not_known", "let", "own_interval", "none".
[[nodiscard]] std::string_view codeOf(calendar::CheckDuty);
[[nodiscard]] std::optional<calendar::CheckDuty> checkDutyFromCode(std::string_view);

}  // namespace hearth::reg
