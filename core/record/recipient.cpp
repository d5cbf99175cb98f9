// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/recipient.h"

#include "core/base/blanks.h"

#include <array>

namespace hearth::record {
namespace {

using reg::RoleKind;

constexpr std::array kRemindedRoles{RoleKind::Landlord, RoleKind::Agent,  RoleKind::HomeOwner,
                                    RoleKind::Customer, RoleKind::Tenant, RoleKind::ResponsiblePerson};
constexpr std::array kVisitedRoles{RoleKind::Tenant,   RoleKind::HomeOwner, RoleKind::ResponsiblePerson,
                                   RoleKind::Customer, RoleKind::Landlord,  RoleKind::Agent};
constexpr std::array kCoveredRoles{RoleKind::Customer,  RoleKind::Landlord, RoleKind::Agent,
                                   RoleKind::HomeOwner, RoleKind::Tenant,   RoleKind::ResponsiblePerson};

bool isPlace(const reg::Address& address) {
    return !withoutOuterBlanks(address.line1).empty() && !withoutOuterBlanks(address.town).empty();
}

bool livesThere(RoleKind role) {
    return role == RoleKind::Tenant || role == RoleKind::HomeOwner || role == RoleKind::ResponsiblePerson;
}

struct Addressed {
    const reg::Party* party;
    const reg::Address* address;
};

std::optional<Addressed> addressed(RecordKind kind, const reg::VisitFile& file) {
    const auto& roles = kind == RecordKind::NoAccessLetter   ? kVisitedRoles
                        : kind == RecordKind::CoveringLetter ? kCoveredRoles
                                                             : kRemindedRoles;
    for (const auto role : roles) {
        for (const auto& holder : file.people) {
            const bool named = !withoutOuterBlanks(holder.party.name).empty();
            if (holder.role != role || !named) {
                continue;
            }
            if (isPlace(holder.party.address)) {
                return Addressed{&holder.party, &holder.party.address};
            }
            if (livesThere(role) && isPlace(file.premises.address)) {
                return Addressed{&holder.party, &file.premises.address};
            }
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Recipient> recipientOf(RecordKind kind, const reg::VisitFile& file) {
    const auto found = addressed(kind, file);
    return found ? std::optional(Recipient{found->party->name, *found->address}) : std::nullopt;
}

const reg::Party* receiverOf(RecordKind kind, const reg::VisitFile& file) {
    if (isLetter(kind)) {
        const auto found = addressed(kind, file);
        return found ? found->party : nullptr;
    }
    for (const auto role : kCoveredRoles) {
        const auto* party = file.holder(role);
        if (party != nullptr && !withoutOuterBlanks(party->name).empty()) {
            return party;
        }
    }
    return nullptr;
}

}  // namespace hearth::record
