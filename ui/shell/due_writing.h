// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/calendar_file.h"
#include "core/exchange/due_list.h"
#include "core/store/store.h"
#include "ui/words/words.h"

#include <QString>

#include <string>
#include <vector>

/// What goes out of checks due, for the place and the command line: lists, summaries, calendars.
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

/// An entry of a calendar as a file of its own.
struct EntryFile {
    QString name;  // stays the same, so that a later one replaces it
    std::string bytes;
};
/// Errors: as exchange::calendarOf().
[[nodiscard]] Result<std::vector<EntryFile>> entryFiles(const std::vector<exchange::CalendarEvent>& events,
                                                        Instant now);

/// A language that records can be issued in.
struct GoesOutIn {
    QString language;
    bool differ = false;  // whoever gets it prefers others: it is the window's
};
/// What the landlord of these premises prefers, else the agent, else the firm's.
[[nodiscard]] QString languageOfHolder(const store::Store& store, const store::DueLine& line);
/// The same of the landlord or agent that the filter names; else of all whose premises these are, as far as
/// they agree. `windows`: the window's.
[[nodiscard]] GoesOutIn summaryLanguage(const store::Store& store, const store::DueFilter& filter,
                                        const std::vector<store::DueLine>& lines, const QString& windows);
/// The landlord's or agent's summary as a PDF in a language that records can be issued in. Errors: the
/// store's; LetterMissingInFont.
[[nodiscard]] Result<std::string> summaryPdf(const store::Store& store,
                                             const std::vector<store::DueLine>& lines,
                                             const std::string& whose, calendar::Date today,
                                             const QString& language);

}  // namespace hearth::ui::shell
