// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/due_repository.h"
#include "core/store/edit.h"
#include "core/store/kept_repository.h"
#include "core/store/register_repository.h"

#include <map>

/// Thirty alike flats from one.
namespace hearth::store {
namespace {

/// What premises have that others like them may have too, read once.
struct Pattern {
    reg::Premises premises;
    struct OfInstallation {
        reg::Installation installation;
        std::vector<reg::PipeSection> pipes;
        std::vector<reg::Appliance> appliances;
    };
    std::vector<OfInstallation> installations;
    std::vector<reg::Role> roles;
    std::optional<reg::CheckPlan> plan;
};

Pattern patternOf(const Connection& db, reg::PremisesId id) {
    Pattern pattern;
    pattern.premises = valueWithId<reg::Premises>(db, id.bytes);
    refuseBinned(db, {id.bytes});
    for (const auto& installation : readInstallations(db, id)) {
        pattern.installations.push_back({installation, readPipes(db, installation.id),
                                         readAppliances(db, installation.id, Removed::LeftOut)});
    }
    pattern.roles = valuesWhere<reg::Role>(
        db, "WHERE t.premises = ? AND t.until IS NULL AND t.kind IN ('landlord', 'agent') ORDER BY t.id",
        {id.bytes});
    auto plans = valuesWhere<reg::CheckPlan>(db, "WHERE t.premises = ?", {id.bytes});
    if (!plans.empty()) {
        pattern.plan = plans.front();
        pattern.plan->leaseBegins.reset();
    }
    return pattern;
}

/// What was seen at one place, and what belongs to one thing alone, is not carried to another.
void forget(reg::Installation& installation) {
    installation.meterSerial.clear();
    installation.mprn.clear();
    installation.controlValveAccessible = reg::YesNo::NotSaid;
    installation.bondingSeen = reg::YesNo::NotSaid;
    installation.lineDiagram.clear();
}
void forget(reg::Appliance& appliance) {
    appliance.serial.clear();
    appliance.installedOn.reset();
    appliance.installedOnText.clear();
    appliance.notes.clear();
}

void putInstallation(Edit& edit, const Pattern::OfInstallation& pattern, reg::PremisesId premises) {
    Session& session = edit.session();
    reg::Installation installation = pattern.installation;
    installation.id = {session.newId()};
    installation.premises = premises;
    forget(installation);
    edit.put(installation);
    std::map<UuidBytes, reg::ApplianceId> hung;
    for (const auto& appliance : pattern.appliances) {
        reg::Appliance copy = appliance;
        copy.id = {session.newId()};
        hung.emplace(appliance.id.bytes, copy.id);
        copy.installation = installation.id;
        forget(copy);
        edit.put(copy);
    }
    std::map<UuidBytes, reg::PipeSectionId> made;
    for (const auto& section : pattern.pipes) {
        made.emplace(section.id.bytes, reg::PipeSectionId{session.newId()});
    }
    for (const auto& section : pattern.pipes) {
        reg::PipeSection copy = section;
        copy.id = made.at(section.id.bytes);
        copy.installation = installation.id;
        if (section.after) {
            const auto feeder = made.find(section.after->bytes);
            copy.after = feeder == made.end() ? std::nullopt : std::optional(feeder->second);
        }
        if (section.appliance) {
            const auto end = hung.find(section.appliance->bytes);
            copy.appliance = end == hung.end() ? std::nullopt : std::optional(end->second);
        }
        edit.put(copy);
    }
}

}  // namespace

std::vector<reg::PremisesId> copyPremises(Session& session, reg::PremisesId id,
                                          const std::vector<AlikePremises>& alike) {
    Edit edit(session);
    const auto pattern = patternOf(session.db, id);
    std::vector<reg::PremisesId> made;
    for (const auto& one : alike) {
        reg::Premises premises;
        premises.id = {session.newId()};
        premises.address = one.address;
        premises.uprn = one.uprn;
        premises.country = pattern.premises.country;
        edit.put(premises);
        for (const auto& installation : pattern.installations) {
            putInstallation(edit, installation, premises.id);
        }
        for (auto role : pattern.roles) {
            role.id = {session.newId()};
            role.premises = premises.id;
            edit.put(role);
        }
        if (pattern.plan) {
            auto plan = *pattern.plan;
            plan.id = {session.newId()};
            plan.premises = premises.id;
            edit.put(plan);
        }
        made.push_back(premises.id);
    }
    edit.commit();
    return made;
}

}  // namespace hearth::store
