// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/appliance.h"

/// What is done around premises beside visits: attempts to get in, letters, bookings, unsafe situations; and
/// what is kept of them as pictures and papers.
namespace hearth::reg {

using AccessAttemptId = Id<struct AccessAttemptTag>;
using LetterId = Id<struct LetterTag>;
using BookingId = Id<struct BookingTag>;
using SituationId = Id<struct SituationTag>;
using SituationEventId = Id<struct SituationEventTag>;
using EmergencyContactId = Id<struct EmergencyContactTag>;

enum class Channel { Visit, Letter, Telephone, TextMessage, Email, Other };

/// Somebody tried and did not get in.
struct AccessAttempt {
    AccessAttemptId id;
    PremisesId premises;
    Instant at{};
    std::string who;  // who went or called
    Channel channel = Channel::Visit;
    std::string left;  // what was left or sent
    std::string response;
    std::string nextStep;
    std::optional<calendar::Date> nextOn;
    bool operator==(const AccessAttempt&) const = default;
};

/// What was sent, word for word.
struct Letter {
    LetterId id;
    PremisesId premises;
    PartyId party;
    std::string kind;  // "reminder", "no_access", "covering", or the firm's own
    Channel channel = Channel::Letter;
    std::string sentTo;  // the address or number used
    std::string text;
    Instant at{};
    std::string result;  // came back, answered …
    bool operator==(const Letter&) const = default;
};

enum class BookingState { Proposed, Booked, Done, Cancelled, NoAccess };
struct Booking {
    BookingId id;
    PremisesId premises;
    std::optional<VisitId> visit;
    std::optional<EngineerId> engineer;
    calendar::Date date{};
    std::string from;  // "09:30"; empty: any time of the day
    std::string until;
    BookingState state = BookingState::Booked;
    std::string note;
    int sequence = 0;  // of the calendar entry, raised with each change
    bool operator==(const Booking&) const = default;
};

/// Immediately Dangerous or At Risk: the engineer's decision, never the program's.
enum class Danger { NotSaid, ImmediatelyDangerous, AtRisk };
struct Situation {
    SituationId id;
    PremisesId premises;
    std::optional<InstallationId> installation;
    std::optional<ApplianceId> appliance;
    std::optional<VisitId> visit;
    Instant foundAt{};
    Danger danger = Danger::NotSaid;
    std::string what;  // what is wrong
    std::string where;
    std::optional<Instant> closedAt;
    bool operator==(const Situation&) const = default;
};
[[nodiscard]] inline SubjectRef subject(SituationId id) {
    return {SubjectKind::Situation, id.bytes};
}
/// A step in its course: made safe, refused, told to whom, put right.
struct SituationEvent {
    SituationEventId id;
    SituationId situation;
    Instant at{};
    std::string kind;  // a stable code
    std::string text;
    std::string by;
    bool operator==(const SituationEvent&) const = default;
};

/// A number to ring, by country and gas, where the firm has another than the program's.
struct EmergencyContact {
    EmergencyContactId id;
    Country country = Country::England;
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    std::string name;
    std::string number;
    bool operator==(const EmergencyContact&) const = default;
};

/// A photograph or paper. Its bytes lie apart (see store::Attachments).
struct Attachment {
    AttachmentId id;
    std::string ownerTable;  // "premises", "appliances", "visits", "situations", "firm", "access_attempts" …
    UuidBytes owner{};
    std::string name;       // file name as it came
    std::string mediaType;  // "image/jpeg", "image/png", "application/pdf"
    int size = 0;           // bytes
    std::string digest;     // SHA-256 of the bytes, hexadecimal
    Instant addedAt{};
    std::string addedBy;
    bool placeKept = false;  // where the picture was taken was left in on purpose
    std::string note;
    std::optional<VisitId> inRecordOf;  // whose records show the picture, with its note below it
    bool operator==(const Attachment&) const = default;
};

/// Something that was deleted: it lies in the bin until it is brought back or the bin is emptied.
using BinnedId = Id<struct BinnedTag>;
struct Binned {
    BinnedId id;
    std::string table;
    UuidBytes row{};
    std::string label;  // what it was called, for the list
    Instant at{};
    std::string by;
    bool operator==(const Binned&) const = default;
};

[[nodiscard]] std::string_view codeOf(Channel);
[[nodiscard]] std::string_view codeOf(BookingState);
[[nodiscard]] std::string_view codeOf(Danger);
[[nodiscard]] std::optional<Channel> channelFromCode(std::string_view);
[[nodiscard]] std::optional<BookingState> bookingStateFromCode(std::string_view);
[[nodiscard]] std::optional<Danger> dangerFromCode(std::string_view);

}  // namespace hearth::reg
