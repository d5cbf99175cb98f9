// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/due_writing.h"

#include "core/record/language.h"
#include "ui/paper/paper.h"
#include "ui/shell/paper_choice.h"
#include "ui/words/document_words.h"
#include "ui/words/due_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>
#include <limits>
#include <map>
#include <optional>
#include <set>

namespace hearth::ui::shell {
namespace {

using calendar::Date;
using store::DueLine;

constexpr const char* kUidEnd = "@hearthledger";
constexpr int kMinutesOfDay = 24 * 60;

QString dueSaid(const char* text) {
    return QCoreApplication::translate("DueWriting", text);
}

std::string placeLine(const reg::Address& address) {
    std::string line;
    for (const auto* part : {&address.line1, &address.line2, &address.town, &address.postcode}) {
        if (!part->empty()) {
            line.append(line.empty() ? "" : ", ").append(*part);
        }
    }
    return line;
}

exchange::CalendarEvent deadlineEvent(const DueLine& line, int sequence, const words::Words& words) {
    exchange::CalendarEvent event;
    event.uid = "due-" + line.premises.text() + kUidEnd;
    event.sequence = sequence;
    event.date = *line.deadline;
    event.location = placeLine(line.address);
    event.summary = dueSaid(QT_TRANSLATE_NOOP("DueWriting", "Gas safety check due: %1"))
                        .arg(words::qstring(line.address.line1))
                        .toStdString();
    event.description = words::dueState(words, line.state).toStdString();
    if (line.latest) {
        event.description +=
            "\n" + dueSaid(QT_TRANSLATE_NOOP("DueWriting", "By the reading of the law as late as %1."))
                       .arg(words.date(*line.latest))
                       .toStdString();
    }
    constexpr int kFourWeeks = 28;
    constexpr int kWeek = 7;
    event.alarmsBefore = {kFourWeeks * kMinutesOfDay, kWeek * kMinutesOfDay};
    return event;
}

exchange::CalendarEvent bookingEvent(const reg::Booking& booking, const reg::Premises& premises,
                                     const std::string& engineer) {
    exchange::CalendarEvent event;
    event.uid = "booking-" + booking.id.text() + kUidEnd;
    event.sequence = booking.sequence;
    event.date = booking.date;
    event.from = booking.from;
    event.until = booking.from.empty() ? std::string() : booking.until;
    event.location = placeLine(premises.address);
    event.summary = dueSaid(QT_TRANSLATE_NOOP("DueWriting", "Gas safety check: %1"))
                        .arg(words::qstring(premises.address.line1))
                        .toStdString();
    event.description = engineer + (engineer.empty() || booking.note.empty() ? "" : "\n") + booking.note;
    event.cancelled = booking.state == reg::BookingState::Cancelled;
    event.alarmsBefore = {booking.from.empty() ? kMinutesOfDay : 60};
    return event;
}

std::vector<words::SummaryLine> summaryLines(const std::vector<DueLine>& lines,
                                             const std::vector<std::string>& records,
                                             const words::Words& words) {
    std::vector<words::SummaryLine> shown;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& line = lines[i];
        words::SummaryLine one;
        one.address = line.address;
        one.state = line.state;
        one.lastCheck = line.lastCheck;
        one.deadline = line.deadline;
        one.latest = line.latest;
        if (line.booking) {
            one.booked = words.shortDate(line.booking->date).toStdString();
            one.booked += (line.booking->from.empty() ? "" : " ") + line.booking->from;
        }
        one.record = records[i];
        one.letters = static_cast<int>(line.letters.size());
        one.attempts = static_cast<int>(line.attempts.size());
        shown.push_back(std::move(one));
    }
    return shown;
}

}  // namespace

Result<std::vector<DueLine>> allDue(const store::Store& store, const store::DueFilter& filter, Date today) {
    return store.duePage(filter, store::DueSort::Need, today, 0, std::numeric_limits<int>::max());
}

std::vector<exchange::DueRow> dueRows(const std::vector<DueLine>& lines) {
    std::vector<exchange::DueRow> rows;
    for (const auto& line : lines) {
        exchange::DueRow row;
        row.state = line.state;
        row.deadline = line.deadline;
        row.latest = line.latest;
        row.opens = line.opens;
        row.lastCheck = line.lastCheck;
        if (line.booking) {
            row.booked = line.booking->date;
            row.time = line.booking->from;
            row.engineer = line.booking->engineerName;
        }
        row.line1 = line.address.line1;
        row.line2 = line.address.line2;
        row.town = line.address.town;
        row.postcode = line.address.postcode;
        row.landlord = line.landlordName;
        row.agent = line.agentName;
        row.applianceKind = line.applianceKind;
        row.appliancePlace = line.appliancePlace;
        row.letters = static_cast<int>(line.letters.size());
        row.attempts = static_cast<int>(line.attempts.size());
        rows.push_back(std::move(row));
    }
    return rows;
}

Result<std::vector<exchange::CalendarEvent>> dueEvents(const store::Store& store,
                                                       const store::DueFilter& filter, const Clock& clock,
                                                       const words::Words& words) {
    constexpr int kDaysBack = 31;
    constexpr int kYearsOn = 10 * 12;
    const Date today = clock.today();
    const auto lines = allDue(store, filter, today);
    const auto bookings =
        store.bookings(calendar::addDays(today, -kDaysBack), calendar::addMonths(today, kYearsOn));
    const auto engineers = store.engineers();
    if (!lines || !bookings || !engineers) {
        return tl::unexpected(!lines ? lines.error() : !bookings ? bookings.error() : engineers.error());
    }
    std::vector<exchange::CalendarEvent> events;
    for (const auto& line : *lines) {
        if (line.deadline) {
            events.push_back(deadlineEvent(line, exchange::sequenceAt(clock.now()), words));
        }
    }
    std::map<UuidBytes, std::string> names;
    for (const auto& engineer : *engineers) {
        names.emplace(engineer.id.bytes, engineer.name);
    }
    std::set<reg::PremisesId> chosen;
    std::transform(lines->begin(), lines->end(), std::inserter(chosen, chosen.end()),
                   [](const DueLine& line) { return line.premises; });
    for (const auto& booking : *bookings) {
        if (filter != store::DueFilter{} && chosen.count(booking.premises) == 0) {
            continue;
        }
        const auto premises = store.premises(booking.premises);
        if (!premises) {
            return tl::unexpected(premises.error());
        }
        events.push_back(bookingEvent(booking, *premises,
                                      booking.engineer ? names[booking.engineer->bytes] : std::string()));
    }
    return events;
}

Result<std::vector<EntryFile>> entryFiles(const std::vector<exchange::CalendarEvent>& events, Instant now) {
    std::vector<EntryFile> files;
    for (const auto& event : events) {
        auto bytes = exchange::calendarOf({event}, now);
        if (!bytes) {
            return tl::unexpected(bytes.error());
        }
        const std::string stem = event.uid.substr(0, event.uid.find('@'));
        files.push_back({words::qstring(stem) + QStringLiteral(".ics"), std::move(*bytes)});
    }
    return files;
}

namespace {

QString firmsLanguage(const store::Store& store) {
    const auto firm = store.firm();
    return firm && record::isRecordLanguage(firm->language) ? words::qstring(firm->language)
                                                            : QStringLiteral("en");
}

/// What somebody with a role there prefers, else the firm's; a code from a newer program does not count.
QString preferredBy(const std::optional<reg::PartyId>& whom, reg::PremisesId there,
                    const store::Store& store) {
    const auto holders = whom ? store.holders(there) : std::vector<reg::VisitFile::Holder>();
    for (const auto& holder : holders.value_or(std::vector<reg::VisitFile::Holder>())) {
        if (holder.party.id == *whom && record::isRecordLanguage(holder.party.language)) {
            return words::qstring(holder.party.language);
        }
    }
    return firmsLanguage(store);
}

}  // namespace

QString languageOfHolder(const store::Store& store, const DueLine& line) {
    return preferredBy(line.landlord ? line.landlord : line.agent, line.premises, store);
}

GoesOutIn summaryLanguage(const store::Store& store, const store::DueFilter& filter,
                          const std::vector<DueLine>& lines, const QString& windows) {
    const auto named = filter.landlord ? filter.landlord : filter.agent;
    std::set<QString> preferred;
    std::set<reg::PartyId> asked;
    for (const auto& line : lines) {
        const auto whom = named ? named : line.landlord ? line.landlord : line.agent;
        if (whom && asked.insert(*whom).second) {
            preferred.insert(preferredBy(whom, line.premises, store));
        }
    }
    if (preferred.size() < 2) {
        return {preferred.empty() ? firmsLanguage(store) : *preferred.begin(), false};
    }
    const auto code = windows.toStdString();
    return {record::isRecordLanguage(code) ? windows : QStringLiteral("en"), true};
}

Result<std::string> summaryPdf(const store::Store& store, const std::vector<DueLine>& lines,
                               const std::string& whose, Date today, const QString& language) {
    std::vector<reg::PremisesId> premises;
    std::transform(lines.begin(), lines.end(), std::back_inserter(premises),
                   [](const DueLine& line) { return line.premises; });
    const auto firm = store.firm();
    const auto records = store.newestRecords(premises);
    if (!firm || !records) {
        return tl::unexpected(firm ? records.error() : firm.error());
    }
    const auto pdf = paper::toPdf(words::documentIn(language,
                                                    [&](const words::Words& words) {
                                                        words::Summary summary{*firm, whose, today, {}};
                                                        summary.paper = firmsPaper(store);
                                                        summary.lines = summaryLines(lines, *records, words);
                                                        return words::summaryDocument(words, summary);
                                                    }),
                                  {});
    return pdf ? Result<std::string>(pdf->toStdString()) : Result<std::string>(tl::unexpected(pdf.error()));
}

}  // namespace hearth::ui::shell
