// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_text.h"

#include <QCoreApplication>

namespace hearth::ui::due {

using calendar::DueState;
using calendar::NextStep;
using words::qstring;

namespace {

struct DueText {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::due::DueText)
};

QString joinedFilled(QStringList parts, const QString& between) {
    parts.removeAll(QString());
    return parts.join(between);
}

QString datesText(const std::vector<calendar::Date>& dates, const words::Words& words) {
    QStringList texts;
    for (const auto date : dates) {
        texts << words.shortDate(date);
    }
    return texts.join(QStringLiteral(", "));
}

/// Without its year where that is this one.
QString dayInYear(calendar::Date date, calendar::Date today, const words::Words& words) {
    const QString text = words.shortDate(date);
    const QString year = QStringLiteral(" %1").arg(static_cast<int>(date.year()));
    return date.year() == today.year() && text.endsWith(year) ? text.chopped(year.size()) : text;
}

constexpr int kFarDays = 60;  // beyond these a date says more than a number of days

}  // namespace

QString stateWord(DueState state) {
    switch (state) {
        case DueState::Overdue:
            return DueText::tr("Overdue");
        case DueState::LastTwoWeeks:
            return DueText::tr("Within two weeks");
        case DueState::WindowOpen:
            return DueText::tr("Window open");
        case DueState::Booked:
            return DueText::tr("Booked");
        case DueState::OpeningSoon:
            return DueText::tr("Opening soon");
        case DueState::Later:
            return DueText::tr("Later");
        case DueState::NotKnown:
            return DueText::tr("Not known");
        case DueState::NoDuty:
            break;
    }
    return DueText::tr("No duty");
}

QString stateWord(const store::DueLine& line) {
    return line.state == DueState::Overdue && line.booking ? DueText::tr("Overdue, booked")
                                                           : stateWord(line.state);
}

QString overdueWord(int booked) {
    return booked == 0 ? stateWord(DueState::Overdue) : DueText::tr("Overdue, %1 of them booked").arg(booked);
}

QString stepWord(NextStep step) {
    switch (step) {
        case NextStep::AskLastCheck:
            return DueText::tr("Ask for the last check");
        case NextStep::Prepare:
            return DueText::tr("Tell the landlord");
        case NextStep::Book:
            return DueText::tr("Book the check");
        case NextStep::BookNow:
            return DueText::tr("Ring and book now");
        case NextStep::TryAgain:
            return DueText::tr("Try again, tell the landlord");
        case NextStep::TryAgainAndRecord:
            return DueText::tr("Try again, send evidence");
        case NextStep::Attend:
            return DueText::tr("Attend");
        case NextStep::Nothing:
            break;
    }
    return DueText::tr("Nothing to do yet");
}

QString streetOf(const reg::Address& address) {
    return joinedFilled({qstring(address.line1), qstring(address.line2)}, QStringLiteral(", "));
}

QString townOf(const reg::Address& address) {
    return joinedFilled({qstring(address.town), qstring(address.postcode)}, QStringLiteral(" "));
}

QString oneLineOf(const reg::Address& address) {
    return joinedFilled({streetOf(address), townOf(address)}, QStringLiteral(", "));
}

QString bookingText(const store::DueBooking& booking, const words::Words& words) {
    QString times = qstring(booking.from);
    if (!booking.from.empty() && !booking.until.empty()) {
        times = DueText::tr("%1 to %2").arg(qstring(booking.from), qstring(booking.until));
    }
    return joinedFilled({words.shortDate(booking.date), times, qstring(booking.engineerName)},
                        QStringLiteral(", "));
}

QString distanceText(const store::DueLine& line, calendar::Date today) {
    if (!line.deadline) {
        return {};
    }
    const int days = calendar::daysBetween(today, *line.deadline);
    if (days < 0) {
        return DueText::tr("%n day(s) overdue", nullptr, -days);
    }
    if (days == 0) {
        return DueText::tr("today is the last day");
    }
    return days <= kFarDays ? DueText::tr("in %n day(s)", nullptr, days) : QString();
}

QString nextText(const store::DueLine& line, calendar::Date today, const words::Words& words) {
    const auto step =
        calendar::nextStep(line.state, static_cast<int>(line.attempts.size()), line.booking.has_value());
    if (step == NextStep::Attend && line.booking) {
        return DueText::tr("Booked %1")
            .arg(joinedFilled({dayInYear(line.booking->date, today, words), qstring(line.booking->from)},
                              QStringLiteral(", ")));
    }
    if (step == NextStep::Nothing && line.opens && *line.opens > today) {
        return DueText::tr("Window opens %1").arg(words.shortDate(*line.opens));
    }
    return stepWord(step);
}

QString spokenLine(const store::DueLine& line, calendar::Date today, const words::Words& words) {
    const auto dated = [&words](const QString& text, const std::optional<calendar::Date>& date) {
        return date ? text.arg(words.shortDate(*date)) : QString();
    };
    const auto named = [](const QString& text, const std::string& name) {
        return name.empty() ? QString() : text.arg(qstring(name));
    };
    QStringList parts{oneLineOf(line.address), stateWord(line)};
    parts << (line.deadline ? dated(DueText::tr("deadline %1"), line.deadline)
                            : DueText::tr("no deadline known"));
    parts << distanceText(line, today);
    parts << dated(DueText::tr("look again: perhaps only by %1"), line.latest);
    parts << dated(DueText::tr("window from %1"), line.opens);
    parts << dated(DueText::tr("last check %1"), line.lastCheck);
    if (line.booking) {
        parts << DueText::tr("booked %1").arg(bookingText(*line.booking, words));
        if (line.booking->afterDeadline) {
            parts << DueText::tr("that is after the deadline");
        }
    }
    if (!line.letters.empty()) {
        parts << DueText::tr("letters and calls %1").arg(datesText(line.letters, words));
    }
    if (!line.attempts.empty()) {
        parts << DueText::tr("no access %1").arg(datesText(line.attempts, words));
    }
    parts << named(DueText::tr("landlord %1"), line.landlordName);
    parts << named(DueText::tr("agent %1"), line.agentName);
    parts << DueText::tr("next: %1").arg(nextText(line, today, words));
    return joinedFilled(parts, QStringLiteral(", "));
}

QString reasonText(const calendar::Deadline& deadline, const words::Words& words) {
    using calendar::DeadlineReason;
    const QString base = words.date(deadline.base);
    const QString before = deadline.before ? words.date(*deadline.before) : QString();
    switch (deadline.reason) {
        case DeadlineReason::Installed:
            return DueText::tr("12 months from the installation on %1.").arg(base);
        case DeadlineReason::LeaseBegins:
            return DueText::tr("A check is needed in the 12 months before the lease, which begins on %1.")
                .arg(base);
        case DeadlineReason::FirstKnownCheck:
            return DueText::tr(
                       "12 months from the check on %1. It is the first known: nothing is known of the "
                       "deadline before it.")
                .arg(base);
        case DeadlineReason::CheckedInWindow:
            return DueText::tr(
                       "The check on %1 lay in the two months before its deadline, so it counts as made on "
                       "%2. The next is due 12 months after that.")
                .arg(base, before);
        case DeadlineReason::CheckedEarly:
            return DueText::tr(
                       "The check on %1 came before the window of the deadline on %2, so the next is due 12 "
                       "months from the check.")
                .arg(base, before);
        case DeadlineReason::CheckedAtWindowsEdge:
            return DueText::tr(
                       "Look again: the check on %1 lay at the edge of the window before %2. The law's text "
                       "and the published guidance differ by days. Keep the earlier date.")
                .arg(base, before);
        case DeadlineReason::CheckedBeforeLease:
            return DueText::tr(
                       "Look again: the check on %1 was shortly before the lease began. Whether the year "
                       "counts from the lease is not settled. Keep the earlier date.")
                .arg(base);
        case DeadlineReason::CheckedInTime:
            return DueText::tr("12 months from the check on %1: this law has no window.").arg(base);
        case DeadlineReason::CheckedLate:
            return DueText::tr(
                       "The check on %1 came after its deadline on %2, so the next is due 12 months from the "
                       "check.")
                .arg(base, before);
        case DeadlineReason::Extended:
            return DueText::tr(
                "The first check was put off, once, so that it comes with the other appliances'.");
        case DeadlineReason::OwnInterval:
            return DueText::tr("The firm's own interval, counted from the check on %1. No law sets one here.")
                .arg(base);
        case DeadlineReason::CheckedExtended:
            break;
    }
    return DueText::tr(
               "Look again: the check on %1 used the one extension. How the next deadline counts was not "
               "read. Keep the earlier date.")
        .arg(base);
}

QString timingText(calendar::CheckTiming timing) {
    using calendar::CheckTiming;
    switch (timing) {
        case CheckTiming::BeforeWindow:
            return DueText::tr("before the window: the year starts anew");
        case CheckTiming::Boundary:
            return DueText::tr("at the window's edge: look again");
        case CheckTiming::InWindow:
            return DueText::tr("in the window: the anniversary is kept");
        case CheckTiming::InTime:
            return DueText::tr("in time");
        case CheckTiming::Late:
            break;
    }
    return DueText::tr("late: the year starts anew");
}

}  // namespace hearth::ui::due
