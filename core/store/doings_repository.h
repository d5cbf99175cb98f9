// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "core/store/bin_repository.h"

#include <vector>

/// What is done around premises beside visits. Everything throws Failure.
namespace hearth::store {

[[nodiscard]] std::vector<reg::AccessAttempt> readAttempts(const Connection& db, reg::PremisesId id);
[[nodiscard]] std::vector<reg::Letter> readLetters(const Connection& db, reg::PremisesId id);
[[nodiscard]] std::vector<reg::Letter> readLetters(const Connection& db, reg::PartyId id,
                                                   Binned binned = Binned::LeftOut);
[[nodiscard]] std::vector<reg::Booking> readBookings(const Connection& db, reg::PremisesId id);
[[nodiscard]] std::vector<reg::Booking> readBookings(const Connection& db, calendar::Date first,
                                                     calendar::Date last);
[[nodiscard]] std::vector<reg::Situation> readSituations(const Connection& db, reg::PremisesId id);
[[nodiscard]] std::vector<reg::Situation> readOpenSituations(const Connection& db);
/// As many as readOpenSituations() gives.
[[nodiscard]] int countOpenSituations(const Connection& db);
[[nodiscard]] std::vector<reg::SituationEvent> readEvents(const Connection& db, reg::SituationId id);
void addEvent(Session& session, const reg::SituationEvent& event);
[[nodiscard]] std::vector<reg::EmergencyContact> readContacts(const Connection& db);
void saveContact(Session& session, const reg::EmergencyContact& contact);

/// Removes one row as an action of its own; nothing when it is not there.
template <class Value>
void removeOne(Session& session, const UuidBytes& id);

}  // namespace hearth::store
