// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/bin_repository.h"
#include "core/store/kept.h"
#include "core/store/session.h"

#include <optional>
#include <string>
#include <vector>

/// Appliances, competences, roles in time, settings. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] std::vector<reg::Appliance> readAppliances(const Connection& db, reg::InstallationId id,
                                                         Removed removed);
[[nodiscard]] std::vector<reg::Appliance> readAppliances(const Connection& db, reg::PremisesId id,
                                                         Removed removed);
void saveAppliance(Session& session, const reg::Appliance& appliance);
void orderAppliances(Session& session, reg::InstallationId id, const std::vector<reg::ApplianceId>& order);
[[nodiscard]] ApplianceHistory readHistory(Connection& db, reg::ApplianceId id);

[[nodiscard]] std::vector<reg::Competence> readCompetences(const Connection& db, reg::EngineerId id);

[[nodiscard]] std::vector<reg::VisitFile::Holder> readHoldersAt(const Connection& db, reg::PremisesId id,
                                                                calendar::Date date);
[[nodiscard]] std::vector<RoleLine> readRoles(const Connection& db, reg::PremisesId id);
[[nodiscard]] std::vector<RoleLine> readRoles(const Connection& db, reg::PartyId id,
                                              Binned binned = Binned::LeftOut);
/// See Store::save(Role).
void saveRole(Session& session, const reg::Role& role);
void endRole(Session& session, reg::PremisesId premises, reg::RoleKind kind, calendar::Date lastDay);
void removeRole(Session& session, reg::PremisesId premises, reg::RoleKind kind);

[[nodiscard]] std::string readSetting(const Connection& db, const std::string& name);
void saveSetting(Session& session, const std::string& name, const std::string& value);

}  // namespace hearth::store
