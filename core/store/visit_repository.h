// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/session.h"
#include "core/store/store.h"

#include <string>
#include <vector>

/// Visits, their tests and entries. Everything throws Failure.
namespace hearth::store {

/// Newest first.
[[nodiscard]] std::vector<VisitLine> findVisits(const Connection& db, const std::string& search, int limit);
[[nodiscard]] std::vector<VisitLine> visitsAt(const Connection& db, reg::PremisesId premises);
/// Those at which an appliance had readings.
[[nodiscard]] std::vector<VisitLine> visitsWithReadingsOf(const Connection& db, reg::ApplianceId id);

[[nodiscard]] reg::VisitId startVisit(Session& session, const reg::Visit& visit);
[[nodiscard]] reg::TestId addTest(Session& session, reg::VisitId visit, const std::string& label);
[[nodiscard]] reg::VisitFile readVisitFile(const Session& session, reg::VisitId visit);
void saveEntry(Session& session, const reg::Entry& entry);

}  // namespace hearth::store
