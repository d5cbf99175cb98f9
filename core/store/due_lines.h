// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"
#include "core/calendar/duties.h"
#include "core/calendar/reminders.h"
#include "core/register/checks_kept.h"
#include "core/register/doings.h"
#include "core/store/attachments.h"
#include "core/store/duties.h"
#include "core/store/lines.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// What the place of checks due shows.
namespace hearth::store {

/// Which premises are meant. What is left empty asks for nothing; all that is given must hold.
struct DueFilter {
    std::vector<calendar::DueState> states;  // any of these; empty: all but NoDuty
    std::optional<reg::PartyId> landlord;    // who holds the role now
    std::optional<reg::PartyId> agent;
    std::optional<reg::EngineerId> engineer;  // with whom it is booked
    std::string outward;                      // the postcode's first half, "QA1"
    std::string text;                         // words begun, as premises() finds them; from two letters on
    bool operator==(const DueFilter&) const = default;
};

enum class DueSort {
    Need,  // by state, then by deadline: what needs doing next
    Deadline,
    Address,
    Postcode,
    Landlord,
    LastCheck,
};

/// A booking as a line shows it.
struct DueBooking {
    reg::BookingId id;
    calendar::Date date{};
    std::string from;  // "09:30"; empty: any time of the day
    std::string until;
    std::optional<reg::EngineerId> engineer;
    std::string engineerName;
    bool afterDeadline = false;  // it settles nothing
};

/// One premises of the list, with all that its strip of time shows.
struct DueLine {
    reg::PremisesId premises;
    reg::Address address;
    reg::Country country = reg::Country::England;
    calendar::CheckDuty duty = calendar::CheckDuty::NotKnown;
    calendar::DueState state = calendar::DueState::NotKnown;
    /// Of the item that comes first; nothing: not known.
    std::optional<calendar::Date> deadline;
    std::optional<calendar::Date> latest;  // not decided: look again, the deadline may be as late as this
    calendar::DeadlineReason reason = calendar::DeadlineReason::Installed;
    std::optional<calendar::Date> base;         // what the deadline counts from
    std::optional<calendar::Date> opens;        // the window's first day
    std::optional<reg::ApplianceId> appliance;  // whose deadline it is; none: of the premises as a whole
    std::string applianceKind;                  // its choice code
    std::string appliancePlace;
    int items = 0;                            // appliances that the duty reaches
    int unknown = 0;                          // of these: nothing is known to count from
    std::optional<calendar::Date> lastCheck;  // the newest actual one
    std::optional<DueBooking> booking;        // the next that is not past
    std::vector<calendar::Date> letters;      // sent since the last check, oldest first; calls too
    std::vector<calendar::Date> attempts;     // since the last check, oldest first
    std::optional<reg::PartyId> landlord;
    std::string landlordName;
    std::optional<reg::PartyId> agent;
    std::string agentName;
};

struct DueCounts {
    std::array<int, calendar::kDueStates.size()> of{};  // by DueState
    int overdueBooked = 0;                              // of those overdue: a day is booked that is not past
    [[nodiscard]] int at(calendar::DueState state) const { return of.at(static_cast<std::size_t>(state)); }
    bool operator==(const DueCounts&) const = default;
};

/// What a filter can be set to, by name, each with how many premises with a duty it finds.
enum class DueBy {
    Landlord,
    Agent,
    Engineer,  // with a booking that is not past
    Area,      // the name is the postcode's first half; no id
};
struct DueChoice {
    UuidBytes id{};
    std::string name;
    int premises = 0;
};

/// One appliance, or the premises as a whole where no appliance is known.
struct DueItem {
    std::optional<reg::Appliance> appliance;
    calendar::CheckedItem history;               // what its deadline is worked out from
    std::optional<calendar::Deadline> deadline;  // nothing: nothing to count from, or it is the tenant's own
    std::optional<calendar::CheckWindow> window;
    bool reached = true;                 // whether the duty reaches it: not what is the tenant's own
    std::vector<calendar::Duty> duties;  // its service
};

/// A check in the history of premises: by a record of ours, or another firm's.
struct KnownCheck {
    calendar::Date date{};
    std::optional<reg::ApplianceId> appliance;   // none: all that stood there
    std::optional<RecordId> record;              // of ours that counts
    std::string number;                          // of that record
    std::optional<reg::EarlierCheckId> earlier;  // another firm's, or one of before
    std::string by;
};

/// One premises, whole.
struct DueFile {
    DueLine line;
    reg::CheckPlan plan;  // with a null id where nothing was said
    int months = 0;       // of the own interval in force
    std::vector<DueItem> items;
    std::optional<std::size_t> first;  // which of the items decides
    std::vector<KnownCheck> checks;    // newest first
    std::vector<reg::EarlierCheck> earlier;
    /// What runs beside the checks there and is not done: see Duties::dutiesOpen().
    std::vector<DutyLine> duties;
    calendar::NextStep step = calendar::NextStep::Nothing;
};

/// One event on the line of time.
enum class StoryKind {
    Check,         // a record of ours says so, or another firm's
    EarlierCheck,  // another firm's, or of before
    Record,        // issued
    RecordVoided,
    RecordSent,
    Visit,  // without a record
    Letter,
    Call,
    NoAccess,
    Booking,  // in whatever state
    Situation,
    SituationStep,
    WindowOpens,  // of the deadline in force
    Deadline,     // in force
};
struct StoryEvent {
    StoryKind kind = StoryKind::Check;
    calendar::Date date{};
    std::optional<Instant> at;  // where the hour is known
    UuidBytes row{};            // of the record, letter, booking ...; null for deadlines
    std::string title;          // a number, a name, a kind's code: see `kind`
    std::string detail;         // words kept: the letter's text, what was left
    std::string by;             // engineer, who went, to whom
    std::string code;  // channel, booking's state, danger, record's or letter's kind: its stable code
};

/// Two bookings that an engineer can't both keep, or one on a day that asks for a look.
enum class ClashKind {
    Overlaps,       // with another booking of the engineer
    SameDay,        // another booking of that engineer has no times that day: may overlap
    BookedAlready,  // these premises have a booking that is not past
    BankHoliday,
    HolidaysUnknown,  // the table of bank holidays ends before that day
    Weekend,
    AfterDeadline,
    BeforeWindow,  // a check that day would reset the clock
    Boundary,      // in the window or not, by the reading
    TimesCrossed,  // it ends before it begins
};
struct Clash {
    ClashKind kind = ClashKind::Overlaps;
    std::optional<reg::Booking> other;  // of the first three
    std::string detail;                 // the other's address; the holiday's name; ISO date of the deadline
};

/// How somebody is reminded of a check, or why not.
enum class ReminderRefusal {
    None,
    NobodyToTell,  // no landlord, agent or customer
    NoAddress,     // nothing to send it to by the means that they want
    Objected,      // they withdrew
    NoGround,      // a customer without consent, earlier work or a contract
};
struct Reminder {
    reg::PremisesId premises;
    reg::Address address;  // of the premises
    calendar::Date deadline{};
    std::optional<calendar::Date> opens;
    int stage = 1;  // of the cadence, from 1; 0: asked for by hand
    std::optional<reg::Party> party;
    reg::Address recipient;  // where a letter goes
    reg::RoleKind role = reg::RoleKind::Landlord;
    reg::Channel channel = reg::Channel::Letter;
    std::string sentTo;  // the e-mail address, or the postal one in one line
    ReminderRefusal refusal = ReminderRefusal::None;
    std::vector<calendar::Date> sentBefore;
    std::optional<DueBooking> booking;  // that is not past: a day was agreed
};

/// A letter as it went out.
struct SentLetter {
    reg::PremisesId premises;
    reg::PartyId party;
    std::string kind = "reminder";
    reg::Channel channel = reg::Channel::Letter;
    std::string sentTo;
    std::string text;  // word for word
    std::string result = {};
    std::optional<Instant> at = {};  // now, where it is not said
};

/// Somebody went and was not let in.
struct NoAccess {
    reg::AccessAttempt attempt;  // without an id: it gets one
    std::optional<reg::BookingId> booking = {};
    std::optional<NewAttachment> photograph = {};  // its owner is filled in
};

/// A telephone call about a check.
struct Call {
    reg::PremisesId premises;
    reg::PartyId party;
    std::string number;  // that was rung, or rang
    std::string text;    // what was said
    std::string result;
    std::optional<Instant> at = {};  // now, where it is not said
};

/// A flat that is like one that is there.
struct AlikePremises {
    reg::Address address;
    std::string uprn = {};
};

/// What a check on a day would do.
struct DueIfChecked {
    reg::PremisesId premises;
    std::optional<calendar::Date> now;
    std::optional<calendar::Date> next;
    std::optional<calendar::Date> nextLatest;  // not decided
    std::optional<calendar::CheckTiming> timing;
    std::optional<reg::ApplianceId> appliance;  // that decides then
};

/// A stop of a day's round.
struct DayStop {
    reg::Booking booking;
    DueLine line;
};

struct DueMonth {
    int year = 0;
    unsigned month = 0;
    int due = 0;     // deadlines in that month, as they stand
    int booked = 0;  // of these
};
struct DueKept {
    int checks = 0;           // that were held against a deadline
    int inWindow = 0;         // and kept it
    int early = 0;            // reset the clock
    int late = 0;             // after the deadline
    int rounds = 0;           // that ended in a check of ours
    int firstTimeAccess = 0;  // of these: nobody had stood before a closed door in them
};
struct DueOverview {
    std::vector<DueMonth> months;  // twelve from this one, and before them one for all that is overdue
    DueKept kept;                  // in the last twelve months
    struct OfLandlord {
        reg::PartyId landlord;
        std::string name;
        int premises = 0;
        int overdue = 0;
        int open = 0;
        int booked = 0;
    };
    std::vector<OfLandlord> landlords;  // those with most overdue first; 50 at most
};

}  // namespace hearth::store
