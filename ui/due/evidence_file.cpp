// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/evidence_file.h"

#include "core/store/record_pictures.h"
#include "ui/shell/paper_choice.h"

#include <utility>

namespace hearth::ui::due {

using store::StoryEvent;
using store::StoryKind;
using words::EvidenceEvent;
using words::Happened;

namespace {

Result<std::vector<record::Picture>> photographsOf(const store::Store& store, const UuidBytes& owner) {
    const auto attachments = store.attachmentsOf(owner);
    if (!attachments) {
        return tl::unexpected<Error>(attachments.error());
    }
    std::vector<record::Picture> pictures;
    for (const auto& one : *attachments) {
        if (!store::isPicture(one)) {
            continue;
        }
        auto bytes = store.attachmentBytes(one.id);
        if (!bytes) {
            return tl::unexpected<Error>(bytes.error());
        }
        pictures.push_back({{}, one.note, one.digest, one.mediaType, std::move(*bytes)});
    }
    return pictures;
}

Happened letterHappened(const std::string& kind) {
    return kind == store::kTenantCopyLetter    ? Happened::CopyHandedOver
           : kind == store::kInformationLetter ? Happened::InformationHandedOver
                                               : Happened::LetterSent;
}

Happened bookingHappened(const std::string& state) {
    switch (reg::bookingStateFromCode(state).value_or(reg::BookingState::Booked)) {
        case reg::BookingState::Proposed:
            return Happened::DayProposed;
        case reg::BookingState::Booked:
            return Happened::Booked;
        case reg::BookingState::Done:
            return Happened::BookedAndDone;
        case reg::BookingState::Cancelled:
            return Happened::BookingCancelled;
        case reg::BookingState::NoAccess:
            break;
    }
    return Happened::BookedWithoutAccess;
}

Happened happenedIn(const StoryEvent& event) {
    switch (event.kind) {
        case StoryKind::Check:
            return Happened::Checked;
        case StoryKind::EarlierCheck:
            return Happened::CheckedEarlier;
        case StoryKind::Record:
            return Happened::RecordIssued;
        case StoryKind::RecordVoided:
            return Happened::RecordVoided;
        case StoryKind::RecordSent:
            return Happened::RecordSent;
        case StoryKind::Visit:
            return Happened::Visited;
        case StoryKind::Letter:
            return letterHappened(event.title);
        case StoryKind::Call:
            return Happened::Called;
        case StoryKind::NoAccess:
            return Happened::NoAccess;
        case StoryKind::Booking:
            return bookingHappened(event.code);
        case StoryKind::Situation:
            return Happened::SituationFound;
        case StoryKind::SituationStep:
            return Happened::SituationStep;
        case StoryKind::WindowOpens:
            return Happened::WindowOpens;
        case StoryKind::Deadline:
            break;
    }
    return Happened::Deadline;
}

/// What the store keeps under the same names for events of each kind, by what it is.
void addTold(const StoryEvent& event, EvidenceEvent& one) {
    switch (event.kind) {
        case StoryKind::Check:
        case StoryKind::RecordVoided:
        case StoryKind::RecordSent:
            one.number = event.title;
            if (event.kind != StoryKind::Check) {
                one.said = {event.detail};
            }
            break;
        case StoryKind::Record:
            one.number = event.title;
            one.revision = event.detail;
            break;
        case StoryKind::Letter:
        case StoryKind::Call:
            one.channel = reg::channelFromCode(event.code).value_or(reg::Channel::Other);
            one.text = event.detail;
            break;
        case StoryKind::NoAccess:
            one.channel = reg::channelFromCode(event.code).value_or(reg::Channel::Other);
            one.left = event.title;
            one.answer = event.detail;
            break;
        case StoryKind::Booking:
        case StoryKind::Situation:
        case StoryKind::SituationStep:
            one.said = {event.title, event.detail};
            break;
        case StoryKind::Deadline:
            one.latest = calendar::fromIso(event.detail);
            break;
        default:
            one.said = {event.detail};
            break;
    }
}

EvidenceEvent evidenceOf(const StoryEvent& event) {
    EvidenceEvent one;
    one.what = happenedIn(event);
    one.date = event.date;
    one.time = event.at ? wallTimeText(*event.at) : std::string();
    one.by = event.by;
    addTold(event, one);
    return one;
}

/// What came of letters, and what was noted to be done after attempts.
void addResults(const std::vector<reg::Letter>& letters, const std::vector<reg::AccessAttempt>& attempts,
                const UuidBytes& row, EvidenceEvent& one) {
    for (const auto& letter : letters) {
        if (letter.id.bytes == row) {
            one.result = letter.result;
        }
    }
    for (const auto& attempt : attempts) {
        if (attempt.id.bytes == row) {
            one.nextStep = attempt.nextStep;
            one.nextOn = attempt.nextOn;
        }
    }
}

words::Evidence headOf(const store::DueFile& file) {
    const auto& line = file.line;
    words::Evidence evidence;
    evidence.address = line.address;
    evidence.landlord = line.landlordName;
    evidence.agent = line.agentName;
    evidence.state = line.state;
    evidence.lastCheck = line.lastCheck;
    evidence.deadline = line.deadline;
    evidence.latest = line.latest;
    evidence.letters = static_cast<int>(line.letters.size());
    evidence.attempts = static_cast<int>(line.attempts.size());
    evidence.isLandlordsDuty = line.duty == calendar::CheckDuty::Let;
    evidence.step = file.step;
    return evidence;
}

}  // namespace

Result<words::Evidence> gatherEvidence(const store::Store& store, reg::PremisesId premises,
                                       calendar::Date today) {
    const auto firm = store.firm();
    const auto file = store.dueFile(premises, today);
    const auto story = store.storyOf(premises, today);
    const auto letters = store.letters(premises);
    const auto attempts = store.accessAttempts(premises);
    if (!firm || !file || !story || !letters || !attempts) {
        return tl::unexpected<Error>(!firm      ? firm.error()
                                     : !file    ? file.error()
                                     : !story   ? story.error()
                                     : !letters ? letters.error()
                                                : attempts.error());
    }
    auto evidence = headOf(*file);
    evidence.firm = *firm;
    evidence.paper = shell::firmsPaper(store);
    evidence.today = today;
    for (const auto& event : *story) {
        auto one = evidenceOf(event);
        addResults(*letters, *attempts, event.row, one);
        if (event.kind == StoryKind::NoAccess || event.kind == StoryKind::Situation) {
            auto pictures = photographsOf(store, event.row);
            if (!pictures) {
                return tl::unexpected<Error>(pictures.error());
            }
            one.photographs = std::move(*pictures);
        }
        evidence.events.push_back(std::move(one));
    }
    return evidence;
}

}  // namespace hearth::ui::due
