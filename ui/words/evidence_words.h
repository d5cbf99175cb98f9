// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/due_state.h"
#include "core/record/document.h"
#include "core/register/model.h"
#include "ui/words/words.h"

#include <optional>
#include <string>
#include <vector>

/// All that was done for one premises to have the check made, for the landlord, in whatever language goes
/// out.
namespace hearth::ui::words {

enum class Happened {
    Checked,
    CheckedEarlier,  // another firm's, or of before
    RecordIssued,
    RecordVoided,
    RecordSent,
    Visited,
    LetterSent,
    CopyHandedOver,
    InformationHandedOver,
    Called,
    NoAccess,
    DayProposed,
    Booked,
    BookedAndDone,
    BookingCancelled,
    BookedWithoutAccess,
    SituationFound,
    SituationStep,
    WindowOpens,
    Deadline,
};

struct EvidenceEvent {
    Happened what = Happened::Visited;
    std::string number;  // the record's
    calendar::Date date{};
    std::string time;                     // "14:10"; empty: not known
    std::string by;                       // who; of letters and calls: to whom
    std::optional<reg::Channel> channel;  // of letters, calls and attempts
    std::vector<std::string> said;        // as it was typed
    std::string left;                     // of an attempt
    std::string answer;
    std::string revision;                      // of a record
    std::string result;                        // of a letter or call: what came of it
    std::string nextStep;                      // of an attempt, as it was noted then
    std::optional<calendar::Date> nextOn;      // the day that was set for it
    std::optional<calendar::Date> latest;      // of a deadline that is not decided
    std::string text;                          // of a letter or call, word for word
    std::vector<record::Picture> photographs;  // of an attempt or an unsafe situation
};

struct Evidence {
    reg::Firm firm;
    record::Paper paper = record::Paper::A4;
    calendar::Date today{};
    reg::Address address;
    std::string landlord;
    std::string agent;
    calendar::DueState state = calendar::DueState::NotKnown;
    std::optional<calendar::Date> lastCheck;
    std::optional<calendar::Date> deadline;
    std::optional<calendar::Date> latest;  // not decided
    int letters = 0;                       // and calls, since that check
    int attempts = 0;
    bool isLandlordsDuty = false;  // regulation 36
    calendar::NextStep step = calendar::NextStep::Nothing;
    std::vector<EvidenceEvent> events;  // oldest first
};

/// In order of time, with letters and calls word for word and the photographs behind; with what inspectors
/// look for, and that it is no safe harbour. Access notes never stand on it.
[[nodiscard]] record::Document evidenceDocument(const Words& words, const Evidence& evidence);

}  // namespace hearth::ui::words
