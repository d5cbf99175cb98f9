// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/due_table.h"

#include "core/calendar/due_state.h"

#include <QtGlobal>

namespace hearth::app {
namespace {

constexpr int kAnyWords = 1000;
constexpr int kMostDaysTurned = 366;

bool keepState(CommandLine& line, const QString& value) {
    line.states.append(value);
    return calendar::dueStateFromCode(value.toStdString()).has_value();
}

bool keepFormat(CommandLine& line, const QString& value) {
    line.format = value;
    return value == QLatin1String("text") || value == QLatin1String("csv") || value == QLatin1String("json");
}

bool keepDuties(CommandLine& line, const QString&) {
    line.duties = true;
    return true;
}

bool keepTurned(CommandLine& line, const QString& value) {
    bool isNumber = false;
    const int days = value.toInt(&isNumber);
    line.turned = days;
    return isNumber && days >= 1 && days <= kMostDaysTurned;
}

}  // namespace

/// How a list of checks due is narrowed and said.
std::vector<Option> dueOptions() {
    return {{QLatin1String("state"), QLatin1String("STATE"),
             QT_TRANSLATE_NOOP("CommandLine",
                               "only those: overdue, last_two_weeks, window_open, booked, opening_soon, "
                               "later, not_known, no_duty; as often as wanted"),
             keepState},
            {QLatin1String("format"), QLatin1String("FORM"),
             QT_TRANSLATE_NOOP("CommandLine", "text, csv or json"), keepFormat},
            {QLatin1String("duties"),
             {},
             QT_TRANSLATE_NOOP("CommandLine",
                               "not the checks but what is due beside them: copies to tenants, notices, "
                               "reports, open situations, and what runs out"),
             keepDuties},
            {QLatin1String("turned"), QLatin1String("DAYS"),
             QT_TRANSLATE_NOOP("CommandLine",
                               "only what turned overdue within so many days: 1 is since yesterday, for a "
                               "nightly job"),
             keepTurned}};
}

/// Checks due.
std::vector<Command> dueCommands() {
    const QLatin1String store("store");
    const QLatin1String demonstration("demonstration");
    return {{Verb::Due,
             QLatin1String("due"),
             QLatin1String("[WORD...]"),
             0,
             kAnyWords,
             {store, demonstration, QLatin1String("state"), QLatin1String("format"), QLatin1String("duties"),
              QLatin1String("turned"), QLatin1String("of"), QLatin1String("to"), QLatin1String("replace")},
             QT_TRANSLATE_NOOP(
                 "CommandLine",
                 "lists the safety checks that are due, in the order of what needs doing next; with "
                 "--of a landlord's or agent's, with --to as a file (.csv, .json, .txt or, as a summary, "
                 ".pdf). Ends with 1 when one of them is overdue")},
            {Verb::Calendar,
             QLatin1String("calendar"),
             QLatin1String("[WORD...]"),
             0,
             kAnyWords,
             {store, demonstration, QLatin1String("to"), QLatin1String("into"), QLatin1String("replace"),
              QLatin1String("of")},
             QT_TRANSLATE_NOOP("CommandLine",
                               "writes deadlines and bookings for a calendar program (iCalendar): with --to "
                               "as one file, with --into as a file each")}};
}

}  // namespace hearth::app
