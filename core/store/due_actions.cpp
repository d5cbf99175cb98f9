// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/attachment_repository.h"
#include "core/store/due_facts.h"
#include "core/store/due_index.h"
#include "core/store/due_repository.h"
#include "core/store/edit.h"
#include "core/store/kept_repository.h"

#include <charconv>

/// What is done about checks: each function is one action of a person.
namespace hearth::store {
namespace {

constexpr int kMostOwnMonths = 120;

/// The row that stands for `column` = `key`, or the null id.
template <class Value>
std::optional<Value> standingFor(const Connection& db, std::string_view column, const UuidBytes& key) {
    auto found = valuesWhere<Value>(db, "WHERE t." + std::string(column) + " = ?", {key});
    return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

template <class Key>
Key madeIfNull(Session& session, const Key& id) {
    return id.isNull() ? Key{session.newId()} : id;
}

/// What happens to something that is not there is a mistake of the caller's list, which may be old.
template <class Value>
void needRow(const Connection& db, const UuidBytes& id) {
    static_cast<void>(valueWithId<Value>(db, id));
}

}  // namespace

void savePlan(Session& session, const reg::CheckPlan& plan) {
    Edit edit(session);
    needRow<reg::Premises>(session.db, plan.premises.bytes);
    reg::CheckPlan row = plan;
    const auto before = standingFor<reg::CheckPlan>(session.db, "premises", plan.premises.bytes);
    row.id = before ? before->id : madeIfNull(session, row.id);
    edit.put(row);
    edit.commit();
}

void saveEarlierCheck(Session& session, const reg::EarlierCheck& check, const NewAttachment* scan) {
    Edit edit(session);
    needRow<reg::Premises>(session.db, check.premises.bytes);
    reg::EarlierCheck row = check;
    row.id = madeIfNull(session, row.id);
    edit.put(row);
    if (scan != nullptr) {
        NewAttachment kept = *scan;
        kept.ownerTable = "earlier_checks";
        kept.owner = row.id.bytes;
        static_cast<void>(attachWithin(edit, kept));
    }
    edit.commit();
}

void removeEarlierCheck(Session& session, reg::EarlierCheckId id) {
    Edit edit(session);
    for (const auto& scan : readAttachments(session.db, id.bytes)) {
        edit.remove(tableOf<reg::Attachment>(), scan.id.bytes);
    }
    edit.remove(tableOf<reg::EarlierCheck>(), id.bytes);
    edit.commit();
}

void saveExtension(Session& session, const reg::CheckExtension& extension) {
    Edit edit(session);
    needRow<reg::Appliance>(session.db, extension.appliance.bytes);
    reg::CheckExtension row = extension;
    const auto before = standingFor<reg::CheckExtension>(session.db, "appliance", extension.appliance.bytes);
    row.id = before ? before->id : madeIfNull(session, row.id);
    edit.put(row);
    edit.commit();
}

std::vector<reg::BookingId> keepBookings(Session& session, const std::vector<reg::Booking>& bookings) {
    Edit edit(session);
    std::vector<reg::BookingId> ids;
    for (const auto& booking : bookings) {
        needRow<reg::Premises>(session.db, booking.premises.bytes);
        reg::Booking row = booking;
        row.id = madeIfNull(session, row.id);
        row.state = reg::BookingState::Booked;
        const auto before = standingFor<reg::Booking>(session.db, "id", row.id.bytes);
        row.sequence = before ? before->sequence + 1 : 0;
        edit.put(row);
        ids.push_back(row.id);
    }
    edit.commit();
    return ids;
}

void moveBooking(Session& session, reg::BookingId id, calendar::Date date, const std::string& from,
                 const std::string& until, std::optional<reg::EngineerId> engineer) {
    Edit edit(session);
    auto booking = valueWithId<reg::Booking>(session.db, id.bytes);
    booking.date = date;
    booking.from = from;
    booking.until = until;
    booking.engineer = engineer;
    booking.state = reg::BookingState::Booked;
    ++booking.sequence;
    edit.put(booking);
    edit.commit();
}

void cancelBooking(Session& session, reg::BookingId id, const std::string& why) {
    Edit edit(session);
    auto booking = valueWithId<reg::Booking>(session.db, id.bytes);
    booking.state = reg::BookingState::Cancelled;
    if (!why.empty()) {
        booking.note.append(booking.note.empty() ? "" : "\n").append(why);
    }
    ++booking.sequence;
    edit.put(booking);
    edit.commit();
}

reg::LetterId keepCall(Session& session, const Call& call) {
    Edit edit(session);
    needRow<reg::Party>(session.db, call.party.bytes);
    needRow<reg::Premises>(session.db, call.premises.bytes);
    reg::Letter letter;
    letter.id = {session.newId()};
    letter.premises = call.premises;
    letter.party = call.party;
    letter.kind = "call";
    letter.channel = reg::Channel::Telephone;
    letter.sentTo = call.number;
    letter.text = call.text;
    letter.at = call.at.value_or(session.clock.now());
    letter.result = call.result;
    edit.put(letter);
    edit.commit();
    return letter.id;
}

std::vector<reg::LetterId> keepLetters(Session& session, const std::vector<SentLetter>& letters) {
    Edit edit(session);
    std::vector<reg::LetterId> ids;
    for (const auto& sent : letters) {
        reg::Letter letter;
        letter.id = {session.newId()};
        letter.premises = sent.premises;
        letter.party = sent.party;
        letter.kind = sent.kind;
        letter.channel = sent.channel;
        letter.sentTo = sent.sentTo;
        letter.text = sent.text;
        letter.at = sent.at.value_or(session.clock.now());
        letter.result = sent.result;
        edit.put(letter);
        ids.push_back(letter.id);
    }
    edit.commit();
    return ids;
}

reg::AccessAttemptId keepNoAccess(Session& session, const NoAccess& what) {
    Edit edit(session);
    reg::AccessAttempt attempt = what.attempt;
    needRow<reg::Premises>(session.db, attempt.premises.bytes);
    attempt.id = madeIfNull(session, attempt.id);
    if (attempt.at == Instant{}) {
        attempt.at = session.clock.now();
    }
    edit.put(attempt);
    if (what.booking) {
        auto booking = valueWithId<reg::Booking>(session.db, what.booking->bytes);
        booking.state = reg::BookingState::NoAccess;
        ++booking.sequence;
        edit.put(booking);
    }
    if (what.photograph) {
        NewAttachment kept = *what.photograph;
        kept.ownerTable = "access_attempts";
        kept.owner = attempt.id.bytes;
        static_cast<void>(attachWithin(edit, kept));
    }
    edit.commit();
    return attempt.id;
}

calendar::Cadence readCadence(const Connection& db) {
    const auto said = calendar::cadenceFrom(readSetting(db, std::string(kCadenceSetting)));
    return said ? *said : calendar::Cadence(calendar::kUsualWeeks.begin(), calendar::kUsualWeeks.end());
}

void saveCadence(Session& session, const calendar::Cadence& cadence) {
    saveSetting(session, std::string(kCadenceSetting), calendar::cadenceText(cadence));
}

void saveOwnInterval(Session& session, int months) {
    if (months < 1 || months > kMostOwnMonths) {
        throw Failure(ErrorCode::OutOfRange, {std::to_string(months), "1", std::to_string(kMostOwnMonths)});
    }
    Transaction whole(session.db);
    saveSetting(session, std::string(kOwnIntervalSetting), std::to_string(months));
    refreshDueByInterval(session.db);
    whole.commit();
}

}  // namespace hearth::store
