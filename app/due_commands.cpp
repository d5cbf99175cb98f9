// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/due_commands.h"

#include "app/files.h"
#include "app/stores.h"
#include "core/store/store.h"
#include "ui/shell/due_writing.h"
#include "ui/shell/duty_words.h"
#include "ui/words/due_words.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <iterator>
#include <set>

namespace hearth::app {
namespace {

using calendar::DueState;
using store::DueLine;
using ui::words::qstring;

/// The one landlord or agent that has the name; else says who there is.
tl::expected<store::DueChoice, Exit> holderNamed(const std::vector<store::DueChoice>& holders,
                                                 const QString& name, const Desk& desk) {
    std::vector<store::DueChoice> found;
    for (const auto& holder : holders) {
        if (qstring(holder.name).compare(name, Qt::CaseInsensitive) == 0) {
            found.push_back(holder);
        }
    }
    if (found.size() == 1) {
        return found.front();
    }
    desk.console.complain(found.empty() ? tr("No landlord or agent is called \"%1\". There are:").arg(name)
                                        : tr("More than one is called \"%1\":").arg(name));
    for (const auto& holder : found.empty() ? holders : found) {
        desk.console.complain(qstring(holder.name));
    }
    return tl::unexpected(Exit::Refused);
}

tl::expected<store::DueFilter, Exit> dueFilterOf(const store::Store& store, const CommandLine& line,
                                                 const Desk& desk) {
    store::DueFilter filter;
    filter.text = line.words.join(QLatin1Char(' ')).toStdString();
    for (const auto& state : line.states) {
        filter.states.push_back(*calendar::dueStateFromCode(state.toStdString()));
    }
    if (!line.of) {
        return filter;
    }
    const auto today = desk.clock.today();
    const auto named = store.dueChoices(store::DueBy::Landlord, today);
    const auto agents = store.dueChoices(store::DueBy::Agent, today);
    if (!named || !agents) {
        return tl::unexpected(complain(named ? agents.error() : named.error(), desk));
    }
    const auto landlords = named->size();
    auto holders = *named;
    holders.insert(holders.end(), agents->begin(), agents->end());
    const auto holder = holderNamed(holders, *line.of, desk);
    if (!holder) {
        return tl::unexpected(holder.error());
    }
    const auto end = holders.begin() + static_cast<std::ptrdiff_t>(landlords);
    const bool isLandlord =
        std::any_of(holders.begin(), end, [&](const store::DueChoice& one) { return one.id == holder->id; });
    (isLandlord ? filter.landlord : filter.agent) = reg::PartyId{holder->id};
    return filter;
}

QString dueText(const DueLine& line, const Desk& desk) {
    QStringList parts{ui::words::dueState(desk.words, line.state)};
    parts << (line.deadline ? tr("due by %1").arg(desk.words.shortDate(*line.deadline))
                            : tr("nothing known to count from"));
    if (line.latest) {
        parts << tr("or as late as %1").arg(desk.words.shortDate(*line.latest));
    }
    if (line.booking) {
        parts << tr("booked for %1").arg(desk.words.shortDate(line.booking->date));
    }
    QStringList place;
    for (const auto* part : {&line.address.line1, &line.address.line2, &line.address.town}) {
        if (!part->empty()) {
            place << qstring(*part);
        }
    }
    if (!line.landlordName.empty()) {
        parts << qstring(line.landlordName);
    }
    return place.join(QStringLiteral(", ")) + QStringLiteral(": ") + parts.join(QStringLiteral(" · "));
}

QString formOf(const CommandLine& line) {
    if (!line.format.isEmpty()) {
        return line.format;
    }
    return line.to ? QFileInfo(*line.to).suffix().toLower() : QString();
}

/// What is to be written or said, by the file's ending or by --format.
Result<std::string> dueBytes(const store::Store& store, const CommandLine& line,
                             const store::DueFilter& filter, const std::vector<DueLine>& lines,
                             const Desk& desk) {
    const QString form = formOf(line);
    if (form == QLatin1String("pdf")) {
        const std::string whose = line.of ? line.of->toStdString() : std::string();
        const auto in = ui::shell::summaryLanguage(store, filter, lines, desk.words.language());
        return ui::shell::summaryPdf(store, lines, whose, desk.clock.today(),
                                     line.language ? desk.words.language() : in.language);
    }
    if (form == QLatin1String("csv")) {
        return exchange::dueCsv(ui::shell::dueRows(lines));
    }
    if (form == QLatin1String("json")) {
        return exchange::dueJson(ui::shell::dueRows(lines));
    }
    QString text;
    for (const auto& one : lines) {
        text += dueText(one, desk) + QLatin1Char('\n');
    }
    return text.toStdString();
}

Result<void> writeEvents(const std::vector<exchange::CalendarEvent>& events, const CommandLine& line,
                         const Desk& desk) {
    const auto ifThere = line.replace ? IfThere::Replace : IfThere::Refuse;
    if (line.to) {
        const auto bytes = exchange::calendarOf(events, desk.clock.now());
        return bytes ? writeFile(*line.to, *bytes, ifThere) : tl::unexpected(bytes.error());
    }
    if (auto made = makeFolder(*line.into); !made) {
        return made;
    }
    const auto files = ui::shell::entryFiles(events, desk.clock.now());
    if (!files) {
        return tl::unexpected(files.error());
    }
    for (const auto& file : *files) {
        if (auto written = writeFile(QDir(*line.into).filePath(file.name), file.bytes, IfThere::Replace);
            !written) {
            return written;
        }
    }
    return {};
}

/// Duties of the premises that the filter finds; of the whole firm where it asks for nothing.
Result<std::vector<store::DutyLine>> dutiesFor(const store::Store& store, store::DueFilter filter,
                                               const Desk& desk) {
    auto duties = store.dutiesOpen(desk.clock.today());
    if (!duties || filter == store::DueFilter{}) {
        return duties;
    }
    if (filter.states.empty()) {
        filter.states.assign(calendar::kDueStates.begin(), calendar::kDueStates.end());
    }
    const auto lines = ui::shell::allDue(store, filter, desk.clock.today());
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    std::set<reg::PremisesId> found;
    std::transform(lines->begin(), lines->end(), std::inserter(found, found.end()),
                   [](const DueLine& one) { return one.premises; });
    duties->erase(std::remove_if(duties->begin(), duties->end(),
                                 [&](const store::DutyLine& one) {
                                     return !one.premises || found.count(*one.premises) == 0;
                                 }),
                  duties->end());
    return duties;
}

std::string dutyBytes(const std::vector<store::DutyLine>& duties, const QString& form, const Desk& desk) {
    const auto today = desk.clock.today();
    if (form == QLatin1String("csv")) {
        return exchange::dutyCsv(ui::shell::dutyRows(duties, today));
    }
    if (form == QLatin1String("json")) {
        return exchange::dutyJson(ui::shell::dutyRows(duties, today));
    }
    QString text;
    for (const auto& one : duties) {
        text += ui::shell::dutySentence(one, today, desk.words) + QLatin1Char('\n');
    }
    return text.toStdString();
}

/// On its last day nothing is overdue yet.
bool turnedOverdue(const std::optional<calendar::Date>& by, const CommandLine& line, calendar::Date today) {
    return !line.turned || (by && *by < today && *by >= calendar::addDays(today, -*line.turned));
}

template <class Line>
void onlyTurned(std::vector<Line>& lines, std::optional<calendar::Date> Line::*by, const CommandLine& line,
                calendar::Date today) {
    lines.erase(std::remove_if(lines.begin(), lines.end(),
                               [&](const Line& one) { return !turnedOverdue(one.*by, line, today); }),
                lines.end());
}

Exit give(const std::string& bytes, const CommandLine& line, const Desk& desk, bool isOverdue) {
    if (line.to) {
        const auto written = writeFile(*line.to, bytes, line.replace ? IfThere::Replace : IfThere::Refuse);
        if (!written) {
            return complain(written.error(), desk);
        }
    } else if (!bytes.empty()) {
        desk.console.say(qstring(bytes).trimmed());
    }
    return isOverdue ? Exit::Refused : Exit::Done;
}

}  // namespace

Exit runDue(const CommandLine& line, const Desk& desk) {
    const auto store = store::Store::open(storeOf(line), store::Access::WriteOrRead, desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto filter = dueFilterOf(**store, line, desk);
    if (!filter) {
        return filter.error();
    }
    const auto today = desk.clock.today();
    if (line.duties) {
        auto duties = dutiesFor(**store, *filter, desk);
        if (!duties) {
            return complain(duties.error(), desk);
        }
        onlyTurned(*duties, &store::DutyLine::by, line, today);
        return give(dutyBytes(*duties, formOf(line), desk), line, desk,
                    std::any_of(duties->begin(), duties->end(),
                                [today](const store::DutyLine& one) { return one.isOverdue(today); }));
    }
    auto lines = ui::shell::allDue(**store, *filter, today);
    if (!lines) {
        return complain(lines.error(), desk);
    }
    onlyTurned(*lines, &DueLine::deadline, line, today);
    const auto bytes = dueBytes(**store, line, *filter, *lines, desk);
    if (!bytes) {
        return complain(bytes.error(), desk);
    }
    return give(*bytes, line, desk, std::any_of(lines->begin(), lines->end(), [](const DueLine& one) {
        return one.state == DueState::Overdue;
    }));
}

Exit runCalendar(const CommandLine& line, const Desk& desk) {
    const auto store = store::Store::open(storeOf(line), store::Access::WriteOrRead, desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto filter = dueFilterOf(**store, line, desk);
    if (!filter) {
        return filter.error();
    }
    const auto events = ui::shell::dueEvents(**store, *filter, desk.clock, desk.words);
    if (!events) {
        return complain(events.error(), desk);
    }
    if (const auto written = writeEvents(*events, line, desk); !written) {
        return complain(written.error(), desk);
    }
    desk.console.say(
        tr("Calendar entries written to %1: %2").arg(line.to ? *line.to : *line.into).arg(events->size()));
    return Exit::Done;
}

}  // namespace hearth::app
