// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/due_writing.h"

#include "core/store/firm_logo.h"
#include "ui/paper/merging.h"
#include "ui/paper/paper.h"
#include "ui/words/document_words.h"
#include "ui/words/due_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>
#include <limits>
#include <map>
#include <memory>
#include <set>
#include <type_traits>

namespace hearth::ui::shell {
namespace {

using calendar::Date;
using store::DueLine;
using store::Reminder;

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

/// The letter's road takes a visit; a reminder has none, and says when the check is due.
class ReminderLetter {
  public:
    ReminderLetter(const store::Store& store, Date today) : m_store(store), m_today(today) {}

    Result<void> begin() {
        const auto firm = m_store.firm();
        if (!firm) {
            return tl::unexpected(firm.error());
        }
        m_firm = *firm;
        const auto logo = store::logoOf(m_store, m_firm);
        if (!logo) {
            return tl::unexpected(logo.error());
        }
        m_logo = *logo;
        return {};
    }

    /// Runs `work` with the letter's input and the words of its language.
    template <class Work>
    auto with(const Reminder& reminder, Work work)
        -> std::invoke_result_t<Work, const words::DocumentInput&, const words::Words&> {
        if (!reminder.party) {
            return fail(ErrorCode::NotFound, {"party", reminder.premises.text()});
        }
        const auto premises = m_store.premises(reminder.premises);
        if (!premises) {
            return tl::unexpected(premises.error());
        }
        reg::VisitFile file;
        file.firm = m_firm;
        file.premises = *premises;
        file.visit.date = m_today;
        file.people = {{reminder.role, *reminder.party}};
        const std::vector<judging::Judged> none;
        const pipework::VolumeReport volume;
        words::DocumentInput input{record::RecordKind::ReminderLetter, file, none, volume, m_today};
        input.logo = m_logo;
        input.checkDue = reminder.deadline;
        return work(input, wordsIn(reminder.party->language));
    }

  private:
    const words::Words& wordsIn(const std::string& language) {
        auto& kept = m_words[language.empty() ? m_firm.language : language];
        if (!kept) {
            kept =
                std::make_unique<words::Words>(words::qstring(language.empty() ? m_firm.language : language));
        }
        return *kept;
    }

    const store::Store& m_store;
    Date m_today;
    reg::Firm m_firm;
    std::optional<record::Logo> m_logo;
    std::map<std::string, std::unique_ptr<words::Words>> m_words;
};

bool goesByPost(const Reminder& reminder) {
    return reminder.refusal == store::ReminderRefusal::None && reminder.channel == reg::Channel::Letter;
}

Result<std::string> letterPdf(const words::DocumentInput& input, const words::Words& words) {
    if (const auto fault = words::letterFault(input, words); !fault) {
        return tl::unexpected(fault.error());
    }
    const auto pdf = paper::toPdf(words::documentFor(input, words), {});
    return pdf ? Result<std::string>(pdf->toStdString()) : Result<std::string>(tl::unexpected(pdf.error()));
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

Result<std::string> summaryPdf(const store::Store& store, const std::vector<DueLine>& lines,
                               const std::string& whose, Date today, const words::Words& words) {
    const auto firm = store.firm();
    if (!firm) {
        return tl::unexpected(firm.error());
    }
    words::Summary summary{*firm, whose, today, {}};
    for (const auto& line : lines) {
        const auto file = store.dueFile(line.premises, today);
        if (!file) {
            return tl::unexpected(file.error());
        }
        words::SummaryLine shown{line.address, line.state, line.lastCheck, line.deadline, line.latest,
                                 {},           {}};
        if (line.booking) {
            shown.booked = line.booking->date;
        }
        for (const auto& check : file->checks) {
            if (check.record) {
                shown.record = check.number;
                break;
            }
        }
        summary.lines.push_back(std::move(shown));
    }
    const auto pdf = paper::toPdf(words::summaryDocument(words, summary), {});
    return pdf ? Result<std::string>(pdf->toStdString()) : Result<std::string>(tl::unexpected(pdf.error()));
}

Result<std::string> reminderText(const store::Store& store, const Reminder& reminder, Date today) {
    ReminderLetter letter(store, today);
    if (const auto begun = letter.begin(); !begun) {
        return tl::unexpected(begun.error());
    }
    return letter.with(reminder, [](const words::DocumentInput& input, const words::Words& words) {
        return words::letterText(input, words);
    });
}

Result<ReminderLetters> reminderLetters(const store::Store& store, const std::vector<Reminder>& reminders,
                                        Date today, const std::function<bool(int done, int all)>& progress) {
    std::vector<Reminder> chosen;
    std::copy_if(reminders.begin(), reminders.end(), std::back_inserter(chosen), goesByPost);
    ReminderLetter letter(store, today);
    if (const auto begun = letter.begin(); !begun) {
        return tl::unexpected(begun.error());
    }
    ReminderLetters written;
    std::size_t at = 0;
    const auto next = [&]() -> Result<std::optional<paper::PdfPart>> {
        if (at == chosen.size()) {
            return std::nullopt;
        }
        if (!progress(static_cast<int>(at), static_cast<int>(chosen.size()))) {
            return fail(ErrorCode::ImportStopped);
        }
        const Reminder& reminder = chosen[at++];
        auto text = letter.with(reminder, words::letterText);
        auto pdf = letter.with(reminder, letterPdf);
        if (!text || !pdf) {
            return tl::unexpected(text ? pdf.error() : text.error());
        }
        written.letters.push_back({reminder.premises,
                                   reminder.party->id,
                                   "reminder",
                                   reminder.channel,
                                   reminder.sentTo,
                                   std::move(*text),
                                   {}});
        return paper::PdfPart{reminder.party->name + " · " + placeLine(reminder.address), std::move(*pdf)};
    };
    const std::string title = dueSaid(QT_TRANSLATE_NOOP("DueWriting", "Reminders")).toStdString();
    const auto take = [&](std::string_view bytes) -> Result<void> {
        written.pdf.append(bytes);
        return {};
    };
    if (const auto merged = paper::mergePdfs({title, "en"}, next, take); !merged) {
        return tl::unexpected(merged.error());
    }
    return written;
}

}  // namespace hearth::ui::shell
