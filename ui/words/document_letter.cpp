// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"
#include "core/record/recipient.h"
#include "ui/words/document_parts.h"
#include "ui/words/letter_words.h"

#include <QStringList>

#include <algorithm>

/// Letters: printed as letters, in the firm's words or the program's.
namespace hearth::ui::words {

namespace {

using record::RecordKind;
using reg::LetterKind;
using reg::Placeholder;

LetterKind letterKindOf(RecordKind kind) {
    return kind == RecordKind::ReminderLetter   ? LetterKind::Reminder
           : kind == RecordKind::NoAccessLetter ? LetterKind::NoAccess
                                                : LetterKind::Covering;
}

std::string oneLine(const reg::Address& address) {
    QStringList parts;
    for (const auto& line : addressLines(address)) {
        parts << qstring(line);
    }
    return utf8(parts.join(QStringLiteral(", ")));
}

/// The first day on which the check of any appliance is due: the deadline before a check that was not made.
std::optional<calendar::Date> checkDue(const DocumentInput& input) {
    const auto& file = input.file;
    std::optional<calendar::Date> first;
    for (const auto& appliance : file.appliances) {
        const auto dates = record::checkDatesOf(file, appliance, input.checks);
        const auto due =
            dates.checked ? (dates.next ? std::optional(dates.next->date) : std::nullopt) : dates.before;
        if (due && (!first || *due < *first)) {
            first = due;
        }
    }
    return first;
}

std::optional<calendar::Date> dayDue(const DocumentInput& input) {
    return input.checkDue ? input.checkDue : checkDue(input);
}

/// A date or a number that no end of a line parts.
std::string unparted(QString text) {
    return utf8(text.replace(u' ', QChar::Nbsp));
}

reg::LetterValues letterValues(const DocumentInput& input, const Words& words) {
    const auto& firm = input.file.firm;
    reg::LetterValues values{{Placeholder::Premises, oneLine(input.file.premises.address)},
                             {Placeholder::Attempted, unparted(words.date(input.file.visit.date))},
                             {Placeholder::Worked, unparted(words.date(input.file.visit.date))},
                             {Placeholder::Today, unparted(words.date(input.issued))},
                             {Placeholder::Firm, firm.name},
                             {Placeholder::Telephone, unparted(qstring(firm.telephone))},
                             {Placeholder::Email, firm.email},
                             {Placeholder::Registration, firm.registrationNumber}};
    if (const auto recipient = record::recipientOf(input.kind, input.file)) {
        values[Placeholder::Customer] = recipient->name;
    }
    if (const auto due = dayDue(input)) {
        values[Placeholder::DateDue] = unparted(words.date(*due));
    }
    return values;
}

const std::string& firmsText(const reg::Firm& firm, LetterKind kind) {
    switch (kind) {
        case LetterKind::Reminder:
            return firm.reminderText;
        case LetterKind::NoAccess:
            return firm.noAccessText;
        case LetterKind::Covering:
            break;
    }
    return firm.coverText;
}

std::string textToFill(const DocumentInput& input, const Words& words) {
    const auto kind = letterKindOf(input.kind);
    const auto& own = firmsText(input.file.firm, kind);
    if (!own.empty() || kind != LetterKind::Reminder) {
        return own.empty() ? utf8(shippedLetter(words, kind)) : own;
    }
    const auto due = dayDue(input);
    return utf8(shippedReminder(words, !due                  ? ReminderDay::NotKnown
                                       : *due < input.issued ? ReminderDay::Past
                                                             : ReminderDay::ToCome));
}

record::LetterHead letterHead(const DocumentPage& page) {
    const auto& firm = page.file().firm;
    record::LetterHead head;
    head.sender = {firm.name, oneLine(firm.address)};
    QStringList reached;
    for (const auto* part : {&firm.telephone, &firm.email}) {
        if (!part->empty()) {
            reached << qstring(*part);
        }
    }
    if (!firm.registrationNumber.empty()) {
        reached << page.say(QT_TRANSLATE_NOOP("Words", "registration %1"),
                            {qstring(firm.registrationNumber)});
    }
    head.sender.push_back(utf8(reached.join(QStringLiteral(" · "))));
    if (const auto recipient = record::recipientOf(page.input().kind, page.file())) {
        head.recipient = addressLines(recipient->address);
        head.recipient.insert(head.recipient.begin(), recipient->name);
    } else {
        head.recipient = {page.text(QT_TRANSLATE_NOOP("Words", "— nobody with an address"))};
    }
    head.date = utf8(page.words().date(page.input().issued));
    const QStringList where{qstring(oneLine(page.file().premises.address))};
    head.subject = page.input().kind == RecordKind::CoveringLetter
                       ? page.text(QT_TRANSLATE_NOOP("Words", "Our work at %1"), where)
                       : page.text(QT_TRANSLATE_NOOP("Words", "Gas safety check at %1"), where);
    return head;
}

}  // namespace

Result<std::string> letterText(const DocumentInput& input, const Words& words) {
    return reg::fillLetter(letterKindOf(input.kind), textToFill(input, words), letterValues(input, words));
}

Result<void> letterFault(const DocumentInput& input, const Words& words) {
    return record::isLetter(input.kind) ? letterText(input, words).map([](const std::string&) {})
                                        : Result<void>();
}

record::Signatures letterSignature(const DocumentPage& page) {
    const reg::Engineer* engineer = page.file().engineer();
    record::Signature signature;
    signature.caption =
        page.text(QT_TRANSLATE_NOOP("Words", "Signed for %1"), {qstring(page.file().firm.name)});
    signature.name = engineer != nullptr ? engineer->name : absentCell();
    return {{std::move(signature)}};
}

void addLetter(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(letterHead(page));
    // A draft that can't be written says why in its place; it is never issued (see letterFault()).
    const auto text = letterText(page.input(), page.words());
    blocks.emplace_back(
        record::Paragraph{{}, text ? *text : utf8(page.words().error(text.error())), !text.has_value()});
}

}  // namespace hearth::ui::words
