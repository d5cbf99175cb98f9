// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"
#include "core/store/tables.h"

#include <string>
#include <vector>

/// The firm, people, premises and installations. Everything throws Failure.
namespace hearth::store {

/// The firm with its row's key.
[[nodiscard]] FirmRow readFirmRow(const Connection& db);
[[nodiscard]] reg::Firm readFirm(const Connection& db);
void saveFirm(Session& session, const reg::Firm& firm);

[[nodiscard]] std::vector<reg::Engineer> readEngineers(const Connection& db);
[[nodiscard]] std::vector<reg::Instrument> readInstruments(const Connection& db);

[[nodiscard]] std::vector<reg::Party> findParties(const Connection& db, const std::string& search, int limit);
/// Today's.
[[nodiscard]] std::vector<reg::VisitFile::Holder> readHolders(const Session& session,
                                                              reg::PremisesId premises);

[[nodiscard]] std::vector<reg::Installation> readInstallations(const Connection& db,
                                                               reg::PremisesId premises);
[[nodiscard]] std::vector<reg::PipeSection> readPipes(const Connection& db, reg::InstallationId installation);
void savePipes(Session& session, reg::InstallationId installation,
               const std::vector<reg::PipeSection>& sections);

/// SQL for the name of the customer, landlord or home owner of the premises in `column`, in this order; ""
/// for none.
[[nodiscard]] std::string customerOf(std::string_view column);

/// Puts one value as an action of its own.
template <class Value>
void saveOne(Session& session, const Value& value);

}  // namespace hearth::store
