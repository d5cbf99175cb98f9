// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due_lines.h"
#include "ui/words/words.h"

#include <QString>
#include <QStringList>

/// What the place of checks due says: states, next steps, why a deadline is what it is. A whole row is said
/// in one sentence, so that somebody who does not see the strip of time knows as much.
namespace hearth::ui::due {

[[nodiscard]] QString stateWord(calendar::DueState state);
/// Of a line: what is overdue may be booked all the same.
[[nodiscard]] QString stateWord(const store::DueLine& line);
/// Over a number of them: "Overdue, 9 of them booked".
[[nodiscard]] QString overdueWord(int booked);
[[nodiscard]] QString stepWord(calendar::NextStep step);
/// "14 Tallow Lane, Flat 2"
[[nodiscard]] QString streetOf(const reg::Address& address);
/// "Thornmere TH2 9XY"
[[nodiscard]] QString townOf(const reg::Address& address);
[[nodiscard]] QString oneLineOf(const reg::Address& address);
/// "28 Nov 2026, 10:00 to 12:00, R. Ashdown"
[[nodiscard]] QString bookingText(const store::DueBooking& booking, const words::Words& words);
/// How far the deadline is: "6 days overdue", "in 9 days"; empty where it is far.
[[nodiscard]] QString distanceText(const store::DueLine& line, calendar::Date today);
/// What to do next, with its date where it has one.
[[nodiscard]] QString nextText(const store::DueLine& line, calendar::Date today, const words::Words& words);
/// Everything that a row and its strip show.
[[nodiscard]] QString spokenLine(const store::DueLine& line, calendar::Date today, const words::Words& words);
/// Why a deadline is what it is, with the dates that it comes from.
[[nodiscard]] QString reasonText(const calendar::Deadline& deadline, const words::Words& words);
/// "If a check were made on that day": what it would be to the deadline.
[[nodiscard]] QString timingText(calendar::CheckTiming timing);
/// What stands against a booking.
[[nodiscard]] QString clashText(const store::Clash& clash, const words::Words& words);
[[nodiscard]] QString refusalText(store::ReminderRefusal refusal);
[[nodiscard]] QString channelWord(reg::Channel channel);
/// One line of the story: what happened.
[[nodiscard]] QString storyTitle(const store::StoryEvent& event);
/// By whom, when in the day, what was said or left: in one line.
[[nodiscard]] QString storyDetail(const store::StoryEvent& event, const words::Words& words);

}  // namespace hearth::ui::due
