// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"
#include "core/record/check_dates.h"
#include "ui/words/document_parts.h"
#include "ui/words/letter_words.h"

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

std::optional<reg::LetterKind> letterKindOf(RecordKind kind) {
    switch (kind) {
        case RecordKind::ReminderLetter:
            return reg::LetterKind::Reminder;
        case RecordKind::NoAccessLetter:
            return reg::LetterKind::NoAccess;
        case RecordKind::CoveringLetter:
            return reg::LetterKind::Covering;
        default:
            return std::nullopt;
    }
}

const std::string& ownText(const reg::Firm& firm, reg::LetterKind kind) {
    switch (kind) {
        case reg::LetterKind::Reminder:
            return firm.reminderText;
        case reg::LetterKind::NoAccess:
            return firm.noAccessText;
        case reg::LetterKind::Covering:
            break;
    }
    return firm.coverText;
}

/// To whom it goes: who ordered the work before who lives there.
std::string recipient(const reg::VisitFile& file) {
    using reg::RoleKind;
    for (const auto role : {RoleKind::Customer, RoleKind::Landlord, RoleKind::Agent, RoleKind::HomeOwner,
                            RoleKind::ResponsiblePerson, RoleKind::Tenant}) {
        if (const reg::Party* party = file.holder(role); party != nullptr && !party->name.empty()) {
            return party->name;
        }
    }
    return {};
}

/// The first day by which a check of the landlord's appliances is due; empty where none is known.
std::string dateDue(const DocumentPage& page) {
    std::optional<calendar::Date> first;
    for (const auto& appliance : page.file().appliances) {
        const auto next = record::checkDatesOf(page.file(), appliance).next;
        if (next && (!first || next->date < *first)) {
            first = next->date;
        }
    }
    return first ? utf8(page.words().date(*first)) : std::string();
}

reg::LetterValues letterValues(const DocumentPage& page) {
    using reg::Placeholder;
    const reg::Firm& firm = page.file().firm;
    const std::string visited = utf8(page.words().date(page.file().visit.date));
    return {{Placeholder::Customer, recipient(page.file())},
            {Placeholder::Premises, utf8(addressLine(page))},
            {Placeholder::DateDue, dateDue(page)},
            {Placeholder::Attempted, visited},
            {Placeholder::Worked, visited},
            {Placeholder::Today, utf8(page.words().date(page.input().issued))},
            {Placeholder::Firm, firm.name},
            {Placeholder::Telephone, firm.telephone},
            {Placeholder::Email, firm.email},
            {Placeholder::Registration, firm.registrationNumber}};
}

/// The firm's own words, else the program's, filled for this visit.
Result<std::string> letterText(const DocumentPage& page, reg::LetterKind kind) {
    const std::string& own = ownText(page.file().firm, kind);
    return reg::fillLetter(kind, own.empty() ? utf8(shippedLetter(page.words(), kind)) : own,
                           letterValues(page));
}

/// A draft that can't be written says why in its place; it is never issued (see letterFault()).
void addLetter(const DocumentPage& page, Blocks& blocks) {
    const auto text = letterText(page, *letterKindOf(page.input().kind));
    blocks.emplace_back(
        record::Paragraph{{}, text ? *text : utf8(page.words().error(text.error())), !text.has_value()});
}

}  // namespace

Result<void> letterFault(const DocumentInput& input, const Words& words) {
    const auto kind = letterKindOf(input.kind);
    if (!kind) {
        return {};
    }
    return letterText(DocumentPage(input, words), *kind).map([](const std::string&) {});
}

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
            return addLetter(page, blocks);
        default:
            return;
    }
}

}  // namespace hearth::ui::words
