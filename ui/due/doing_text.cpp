// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_text.h"

#include <QCoreApplication>

/// The rest of due_text.h: what is done and what happened.
namespace hearth::ui::due {

using words::qstring;

namespace {

struct DoingText {
    Q_DECLARE_TR_FUNCTIONS(DoingText)
};

QString otherBooking(const store::Clash& clash, const words::Words& words) {
    if (!clash.other) {
        return qstring(clash.detail);
    }
    QStringList parts{qstring(clash.detail), words.shortDate(clash.other->date), qstring(clash.other->from)};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

}  // namespace

QString clashText(const store::Clash& clash, const words::Words& words) {
    using store::ClashKind;
    const auto day = calendar::fromIso(clash.detail);
    const QString date = day ? words.shortDate(*day) : qstring(clash.detail);
    switch (clash.kind) {
        case ClashKind::Overlaps:
            return DoingText::tr("The engineer is booked then: %1.").arg(otherBooking(clash, words));
        case ClashKind::SameDay:
            return DoingText::tr("The engineer has a booking without a time that day: %1.")
                .arg(otherBooking(clash, words));
        case ClashKind::BookedAlready:
            return DoingText::tr("These premises are booked already: %1.").arg(otherBooking(clash, words));
        case ClashKind::BankHoliday:
            return DoingText::tr("A bank holiday: %1.").arg(qstring(clash.detail));
        case ClashKind::HolidaysUnknown:
            return DoingText::tr(
                       "Bank holidays are known until %1 only. Take in a newer file under Firm, “Bank "
                       "holidays”.")
                .arg(qstring(clash.detail));
        case ClashKind::Weekend:
            return DoingText::tr("A Saturday or Sunday.");
        case ClashKind::AfterDeadline:
            return DoingText::tr("After the deadline, %1.").arg(date);
        case ClashKind::BeforeWindow:
            return DoingText::tr("Before the window: the year would start anew. The deadline is %1.")
                .arg(date);
        case ClashKind::Boundary:
            return DoingText::tr("At the window's edge: the texts differ. The deadline is %1.").arg(date);
        case ClashKind::TimesCrossed:
            break;
    }
    return DoingText::tr("It ends before it begins.");
}

QString refusalText(store::ReminderRefusal refusal) {
    using store::ReminderRefusal;
    switch (refusal) {
        case ReminderRefusal::NobodyToTell:
            return DoingText::tr("nobody to tell: no landlord, agent or customer");
        case ReminderRefusal::NoAddress:
            return DoingText::tr("no address to send it to");
        case ReminderRefusal::Objected:
            return DoingText::tr("they objected to reminders");
        case ReminderRefusal::NoGround:
            return DoingText::tr("no consent and no earlier work for them");
        case ReminderRefusal::None:
            break;
    }
    return {};
}

QString channelWord(reg::Channel channel) {
    switch (channel) {
        case reg::Channel::Visit:
            return DoingText::tr("visit");
        case reg::Channel::Letter:
            return DoingText::tr("letter");
        case reg::Channel::Telephone:
            return DoingText::tr("telephone");
        case reg::Channel::TextMessage:
            return DoingText::tr("text message");
        case reg::Channel::Email:
            return DoingText::tr("mail");
        case reg::Channel::Other:
            break;
    }
    return DoingText::tr("another way");
}

namespace {

QString bookingTitle(const store::StoryEvent& event) {
    switch (reg::bookingStateFromCode(event.code).value_or(reg::BookingState::Booked)) {
        case reg::BookingState::Proposed:
            return DoingText::tr("A day was proposed");
        case reg::BookingState::Booked:
            return DoingText::tr("Booked");
        case reg::BookingState::Done:
            return DoingText::tr("Booked, and done");
        case reg::BookingState::Cancelled:
            return DoingText::tr("Booking cancelled");
        case reg::BookingState::NoAccess:
            break;
    }
    return DoingText::tr("Booked, and no access");
}

QString letterTitle(const std::string& kind) {
    return kind == store::kTenantCopyLetter    ? DoingText::tr("Copy of the record handed over")
           : kind == store::kInformationLetter ? DoingText::tr("Operating information handed over")
                                               : DoingText::tr("Letter sent");
}

}  // namespace

QString storyTitle(const store::StoryEvent& event) {
    using store::StoryKind;
    const QString number = qstring(event.title);
    switch (event.kind) {
        case StoryKind::Check:
            return DoingText::tr("Checked: record %1").arg(number);
        case StoryKind::EarlierCheck:
            return DoingText::tr("Checked, by an earlier record");
        case StoryKind::Record:
            return DoingText::tr("Record %1 issued").arg(number);
        case StoryKind::RecordVoided:
            return DoingText::tr("Record %1 declared void").arg(number);
        case StoryKind::RecordSent:
            return DoingText::tr("Record %1 sent").arg(number);
        case StoryKind::Visit:
            return DoingText::tr("Visit");
        case StoryKind::Letter:
            return letterTitle(event.title);
        case StoryKind::Call:
            return DoingText::tr("Telephone call");
        case StoryKind::NoAccess:
            return DoingText::tr("No access");
        case StoryKind::Booking:
            return bookingTitle(event);
        case StoryKind::Situation:
            return DoingText::tr("Unsafe situation");
        case StoryKind::SituationStep:
            return DoingText::tr("Unsafe situation, a step");
        case StoryKind::WindowOpens:
            return DoingText::tr("The window opens");
        case StoryKind::Deadline:
            break;
    }
    return DoingText::tr("Deadline of the next check");
}

namespace {

QString attemptDetail(const store::StoryEvent& event) {
    QStringList parts{qstring(event.by)};
    parts << channelWord(reg::channelFromCode(event.code).value_or(reg::Channel::Other));
    if (!event.title.empty()) {
        parts << DoingText::tr("left: %1").arg(qstring(event.title));
    }
    if (!event.detail.empty()) {
        parts << DoingText::tr("answer: %1").arg(qstring(event.detail));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

}  // namespace

QString storyDetail(const store::StoryEvent& event, const words::Words& words) {
    using store::StoryKind;
    const auto joined = [](QStringList parts) {
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", ")).simplified();
    };
    switch (event.kind) {
        case StoryKind::Record:
            return event.detail.empty() ? QString() : DoingText::tr("revision %1").arg(qstring(event.detail));
        case StoryKind::Check:
        case StoryKind::WindowOpens:
            return {};
        case StoryKind::NoAccess:
            return attemptDetail(event);
        case StoryKind::Booking:
            return joined({qstring(event.title), qstring(event.by), qstring(event.detail)});
        case StoryKind::Situation:
        case StoryKind::SituationStep:
            return joined({qstring(event.title), qstring(event.detail), qstring(event.by)});
        case StoryKind::Deadline: {
            const auto latest = calendar::fromIso(event.detail);
            return latest ? DoingText::tr("look again: perhaps only by %1").arg(words.shortDate(*latest))
                          : QString();
        }
        default:
            return joined({qstring(event.by), qstring(event.detail)});
    }
}

}  // namespace hearth::ui::due
