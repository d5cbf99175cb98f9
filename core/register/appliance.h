// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/model.h"

/// Appliances, and what an engineer is competent in.
namespace hearth::reg {

/// Whose it is: a landlord's check does not reach what the tenant may take along.
enum class Owner { NotSaid, Landlord, Tenant, HomeOwner };
enum class FlueType { NotSaid, RoomSealed, OpenFlued, Flueless };

/// One appliance of an installation. Numbers are kept as typed. The maker's limits decide before all others,
/// so each set says where it stands.
struct Appliance {
    ApplianceId id;
    InstallationId installation;
    int position = 0;  // order in the list
    std::string kind;  // a choice code of Item::ApplianceKind; empty: not said yet
    std::string make;
    std::string model;
    std::string serial;
    std::string gcNumber;  // 00-000-00, as typed
    std::string place;     // room or location
    FlueType flue = FlueType::NotSaid;
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    quantity::Typed netInput;
    quantity::Typed grossInput;
    std::optional<calendar::Date> installedOn;
    std::string installedOnText;  // what was typed where it is no date; else empty
    Owner owner = Owner::NotSaid;
    // maker's limits
    quantity::Typed makerRatio;
    quantity::Typed makerCo;
    quantity::Typed makerInletLeast;
    quantity::Typed makerInletMost;
    quantity::Typed makerBurnerLeast;
    quantity::Typed makerBurnerMost;
    quantity::Typed makerTolerance;
    std::string makerSource;  // instructions, page
    std::optional<calendar::Date> removedOn;
    std::string removedOnText;
    std::string notes;
    bool operator==(const Appliance&) const = default;
};

using CompetenceId = Id<struct CompetenceTag>;
/// A category of work that an engineer holds, by the trade's own term ("CCN1"), with its expiry.
struct Competence {
    CompetenceId id;
    EngineerId engineer;
    std::string category;
    std::optional<calendar::Date> expires;
    std::string expiresText;
    bool operator==(const Competence&) const = default;
};

[[nodiscard]] std::string_view codeOf(Owner);
[[nodiscard]] std::string_view codeOf(FlueType);
[[nodiscard]] std::optional<Owner> ownerFromCode(std::string_view);
[[nodiscard]] std::optional<FlueType> flueTypeFromCode(std::string_view);

}  // namespace hearth::reg
