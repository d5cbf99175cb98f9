// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/calendar_file.h"
#include "core/exchange/due_list.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

#include <functional>
#include <vector>

/// What goes out of checks due, for the place and the command line: lists, letters, summaries, calendars.
namespace hearth::ui::shell {

/// Of all premises that a filter finds, in the order of what needs doing next.
[[nodiscard]] Result<std::vector<store::DueLine>> allDue(const store::Store& store,
                                                         const store::DueFilter& filter,
                                                         calendar::Date today);
[[nodiscard]] std::vector<exchange::DueRow> dueRows(const std::vector<store::DueLine>& lines);

/// Deadlines of the filter's premises as whole days, and bookings of a month back and everything after as
/// their times, cancelled ones too. In the words' language.
[[nodiscard]] Result<std::vector<exchange::CalendarEvent>> dueEvents(const store::Store& store,
                                                                     const store::DueFilter& filter,
                                                                     const Clock& clock,
                                                                     const words::Words& words);

/// The landlord's or agent's summary as a PDF. Errors: the store's; LetterMissingInFont.
[[nodiscard]] Result<std::string> summaryPdf(const store::Store& store,
                                             const std::vector<store::DueLine>& lines,
                                             const std::string& whose, calendar::Date today,
                                             const words::Words& words);

/// What one reminder says, word for word: the text of a mail, and what is kept of a letter. Errors:
/// LetterLacks and the like; NotFound for a reminder that goes to nobody.
[[nodiscard]] Result<std::string> reminderText(const store::Store& store, const store::Reminder& reminder,
                                               calendar::Date today);

struct ReminderLetters {
    std::string pdf;                         // one for all, a bookmark each, in the order given
    std::vector<store::SentLetter> letters;  // to be kept when the PDF has gone out
};
/// Letters to all who can be written to by post; refused ones and those by mail are left out. Told before
/// each; false stops it with ImportStopped. Errors: as reminderText(); LetterMissingInFont; PdfNotWritten
/// when there is none to write.
[[nodiscard]] Result<ReminderLetters> reminderLetters(const store::Store& store,
                                                      const std::vector<store::Reminder>& reminders,
                                                      calendar::Date today,
                                                      const std::function<bool(int done, int all)>& progress);

}  // namespace hearth::ui::shell
