// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/doings_repository.h"

#include "core/store/bin_repository.h"
#include "core/store/edit.h"

#include <cassert>

namespace hearth::store {
namespace {

/// Of a premises, newest first by `when`.
template <class Value>
std::vector<Value> doneAt(const Connection& db, reg::PremisesId id, std::string_view when) {
    return valuesWhere<Value>(db,
                              "WHERE t.premises = ? AND " + notInBin("t.id") + " ORDER BY t." +
                                  std::string(when) + " DESC, t.id DESC",
                              {id.bytes});
}

}  // namespace

std::vector<reg::AccessAttempt> readAttempts(const Connection& db, reg::PremisesId id) {
    return doneAt<reg::AccessAttempt>(db, id, "at");
}

std::vector<reg::Letter> readLetters(const Connection& db, reg::PremisesId id) {
    return doneAt<reg::Letter>(db, id, "at");
}

std::vector<reg::Letter> readLetters(const Connection& db, reg::PartyId id, Binned binned) {
    return valuesWhere<reg::Letter>(db,
                                    "WHERE t.party = ? AND " + shown("t.id", binned) + " AND " +
                                        shown("t.premises", binned) + " ORDER BY t.at DESC, t.id DESC",
                                    {id.bytes});
}

std::vector<reg::Booking> readBookings(const Connection& db, reg::PremisesId id) {
    return valuesWhere<reg::Booking>(
        db,
        "WHERE t.premises = ? AND " + notInBin("t.id") + " ORDER BY t.date DESC, t.from_time DESC, t.id DESC",
        {id.bytes});
}

std::vector<reg::Booking> readBookings(const Connection& db, calendar::Date first, calendar::Date last) {
    return valuesWhere<reg::Booking>(db,
                                     "WHERE t.date >= ? AND t.date <= ? AND " + notInBin("t.id") + " AND " +
                                         notInBin("t.premises") + " ORDER BY t.date, t.from_time, t.id",
                                     {calendar::isoText(first), calendar::isoText(last)});
}

std::vector<reg::Situation> readSituations(const Connection& db, reg::PremisesId id) {
    return doneAt<reg::Situation>(db, id, "found_at");
}

namespace {
std::string whereSituationOpen() {
    return "WHERE t.closed_at IS NULL AND " + notInBin("t.id") + " AND " + notInBin("t.premises");
}
}  // namespace

std::vector<reg::Situation> readOpenSituations(const Connection& db) {
    return valuesWhere<reg::Situation>(db, whereSituationOpen() + " ORDER BY t.found_at, t.id");
}

int countOpenSituations(const Connection& db) {
    return static_cast<int>(db.number("SELECT count(*) FROM situations AS t " + whereSituationOpen()));
}

std::vector<reg::SituationEvent> readEvents(const Connection& db, reg::SituationId id) {
    return valuesWhere<reg::SituationEvent>(db, "WHERE t.situation = ? ORDER BY t.at, t.id", {id.bytes});
}

void addEvent(Session& session, const reg::SituationEvent& event) {
    assert(!event.id.isNull());
    Edit edit(session);
    if (edit.rowOf(tableOf<reg::SituationEvent>(), event.id.bytes)) {
        throw Failure(ErrorCode::EventStays, {event.text});
    }
    edit.put(event);
    edit.commit();
}

std::vector<reg::EmergencyContact> readContacts(const Connection& db) {
    return valuesWhere<reg::EmergencyContact>(db, "ORDER BY t.country, t.gas");
}

void saveContact(Session& session, const reg::EmergencyContact& contact) {
    assert(!contact.id.isNull());
    Edit edit(session);
    reg::EmergencyContact row = contact;
    for (const auto& other : readContacts(session.db)) {
        if (other.country == row.country && other.gas == row.gas) {
            row.id = other.id;
        }
    }
    edit.put(row);
    edit.commit();
}

template <class Value>
void removeOne(Session& session, const UuidBytes& id) {
    Edit edit(session);
    edit.remove(tableOf<Value>(), id);
    edit.commit();
}
template void removeOne<reg::Competence>(Session&, const UuidBytes&);
template void removeOne<reg::EmergencyContact>(Session&, const UuidBytes&);

}  // namespace hearth::store
