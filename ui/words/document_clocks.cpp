// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"
#include "ui/words/document_parts.h"

#include <QStringList>

/// What the law wants done by when, and what a letter says.
namespace hearth::ui::words {

namespace {

using record::CaptionedValue;
using record::RecordKind;
using reg::Item;

calendar::Nation nationOf(reg::Country country) {
    switch (country) {
        case reg::Country::Wales:
            return calendar::Nation::Wales;
        case reg::Country::Scotland:
            return calendar::Nation::Scotland;
        case reg::Country::NorthernIreland:
            return calendar::Nation::NorthernIreland;
        case reg::Country::England:
            break;
    }
    return calendar::Nation::England;
}

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

void addBuildingClocks(const DocumentPage& page, Blocks& blocks) {
    const auto nation = nationOf(page.file().premises.country);
    const auto completed = dateOf(page, page.visit(), Item::WorkCompleted);
    const auto by = [&](auto rule) { return completed ? rule(*completed, nation) : std::nullopt; };
    record::FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "By when"));
    grid.columns = 2;
    grid.fields = {
        lastDay(page, QT_TRANSLATE_NOOP("Words", "Certificate to the occupier, notice to the council"),
                completed, by(calendar::buildingNoticeBy)),
        lastDay(page, QT_TRANSLATE_NOOP("Words", "Operating and maintaining information to the owner"),
                completed, by(calendar::operatingInformationBy))};
    blocks.emplace_back(std::move(grid));
}

void addReportClocks(const DocumentPage& page, Blocks& blocks) {
    const auto nation = nationOf(page.file().premises.country);
    record::FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "By when"));
    for (const auto& situation : page.file().situations) {
        const auto known = dateOf(page, reg::subject(situation.id), Item::SituationKnownOn);
        grid.fields.push_back(
            lastDay(page, QT_TRANSLATE_NOOP("Words", "Report to HSE"), known,
                    known ? calendar::dangerousFittingReportBy(*known, nation) : std::nullopt));
    }
    blocks.emplace_back(std::move(grid));
}

QString addressLine(const DocumentPage& page) {
    QStringList parts;
    for (const auto& line : addressLines(page.file().premises.address)) {
        parts << qstring(line);
    }
    return parts.join(QStringLiteral(", "));
}

/// The firm's own words, else the program's.
QString letterText(const DocumentPage& page) {
    const reg::Firm& firm = page.file().firm;
    const QString where = addressLine(page);
    const QString when = page.words().date(page.file().visit.date);
    const QString ring = firm.telephone.empty() ? qstring(firm.name) : qstring(firm.telephone);
    switch (page.input().kind) {
        case RecordKind::ReminderLetter:
            return !firm.reminderText.empty()
                       ? qstring(firm.reminderText)
                       : page.say(QT_TRANSLATE_NOOP("Words",
                                                    "The yearly check of the gas appliances at %1 falls "
                                                    "due. Please ring %2 to agree on a day."),
                                  {where, ring});
        case RecordKind::NoAccessLetter:
            return !firm.noAccessText.empty()
                       ? qstring(firm.noAccessText)
                       : page.say(QT_TRANSLATE_NOOP(
                                      "Words",
                                      "We called at %1 on %2 to check the gas appliances and could not get "
                                      "in. The law asks for this check, and it is made for your own "
                                      "safety. Please ring %3 to agree on a time that suits you."),
                                  {where, when, ring});
        default:
            return !firm.coverText.empty()
                       ? qstring(firm.coverText)
                       : page.say(QT_TRANSLATE_NOOP("Words",
                                                    "With this letter comes the record of the work at %1 "
                                                    "on %2. Please keep it with the papers of the "
                                                    "premises."),
                                  {where, when});
    }
}

}  // namespace

void addClocks(const DocumentPage& page, Blocks& blocks) {
    switch (page.input().kind) {
        case RecordKind::Commissioning:
        case RecordKind::BuildingNotice:
            return addBuildingClocks(page, blocks);
        case RecordKind::ReportableEntry:
            return addReportClocks(page, blocks);
        case RecordKind::ReminderLetter:
        case RecordKind::NoAccessLetter:
        case RecordKind::CoveringLetter:
            blocks.emplace_back(record::Paragraph{{}, utf8(letterText(page)), false});
            return;
        default:
            return;
    }
}

}  // namespace hearth::ui::words
