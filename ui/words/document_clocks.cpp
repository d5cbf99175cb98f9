// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"
#include "core/record/nation.h"
#include "ui/words/document_parts.h"

#include <array>

/// What the law wants done by when.
namespace hearth::ui::words {

namespace {

using record::CaptionedValue;
using reg::Item;

std::optional<calendar::Date> dateOf(const DocumentPage& page, const reg::SubjectRef& on, Item item) {
    const reg::Entry* entry = page.file().find(on, item);
    return entry != nullptr ? calendar::fromIso(entry->canonical) : std::nullopt;
}

/// A last day; absent with its reason where the day it runs from is not known, or the law has none.
CaptionedValue lastDay(const DocumentPage& page, const char* caption,
                       const std::optional<calendar::Date>& from, const std::optional<calendar::Date>& by) {
    const char* reason = from ? QT_TRANSLATE_NOOP("Words", "no such day in this country’s law")
                              : QT_TRANSLATE_NOOP("Words", "the day it runs from is not entered");
    return page.field(caption, by ? page.words().date(*by) : QString(), reason);
}

/// A last day in large ink, with what it runs from.
record::Statement dayStatement(const DocumentPage& page, const char* caption, const CaptionedValue& day,
                               const char* from, const std::optional<calendar::Date>& since) {
    record::Statement statement;
    statement.caption = page.text(caption);
    statement.text = day.absent ? absentCell() + " " + day.lines.front() : day.lines.front();
    if (since && !day.absent) {
        statement.details = {page.text(from, {page.words().date(*since)})};
    }
    return statement;
}

constexpr const char* kCertificateBy =
    QT_TRANSLATE_NOOP("Words", "Certificate to the occupier, notice to the council");
constexpr const char* kInformationBy =
    QT_TRANSLATE_NOOP("Words", "Operating and maintaining information to the owner");

/// The two last days of building work: notice, then information.
std::array<CaptionedValue, 2> buildingDays(const DocumentPage& page) {
    const auto nation = record::nationOf(page.file().premises.country);
    const auto completed = dateOf(page, page.visit(), Item::WorkCompleted);
    const auto by = [&](auto rule) { return completed ? rule(*completed, nation) : std::nullopt; };
    return {lastDay(page, kCertificateBy, completed, by(calendar::buildingNoticeBy)),
            lastDay(page, kInformationBy, completed, by(calendar::operatingInformationBy))};
}

}  // namespace

record::FieldGrid buildingClockGrid(const DocumentPage& page) {
    record::FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "By when"));
    grid.columns = 2;
    const auto days = buildingDays(page);
    grid.fields.assign(days.begin(), days.end());
    return grid;
}

record::Statements buildingClocks(const DocumentPage& page) {
    const auto days = buildingDays(page);
    const auto completed = dateOf(page, page.visit(), Item::WorkCompleted);
    return {page.text(QT_TRANSLATE_NOOP("Words", "By when")),
            {dayStatement(page, kCertificateBy, days[0],
                          QT_TRANSLATE_NOOP("Words", "30 days after completion on %1 (regulation 20)."),
                          completed),
             dayStatement(page, kInformationBy, days[1],
                          QT_TRANSLATE_NOOP("Words", "5 days after completion on %1 (regulation 40)."),
                          completed)}};
}

record::Statement reportClock(const DocumentPage& page, const reg::Situation& situation) {
    constexpr const char* kReportBy = QT_TRANSLATE_NOOP("Words", "Report to HSE by");
    const auto known = dateOf(page, reg::subject(situation.id), Item::SituationKnownOn);
    const auto by =
        known ? calendar::dangerousFittingReportBy(*known, record::nationOf(page.file().premises.country))
              : std::nullopt;
    return dayStatement(page, kReportBy, lastDay(page, kReportBy, known, by),
                        QT_TRANSLATE_NOOP("Words", "14 days after it was known, %1."), known);
}

}  // namespace hearth::ui::words
