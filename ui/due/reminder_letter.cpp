// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/reminder_letter.h"

#include "core/record/kind.h"
#include "core/record/language.h"
#include "core/record/pairing.h"
#include "core/register/letter_text.h"
#include "ui/due/due_text.h"
#include "ui/paper/merging.h"
#include "ui/shell/saving.h"
#include "ui/words/letter_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::due {

using reg::Placeholder;
using words::qstring;

namespace {

struct ReminderLetter {
    Q_DECLARE_TR_FUNCTIONS(ReminderLetter)
};

/// A date or a number that no end of a line parts.
std::string unbroken(QString text) {
    return text.replace(u' ', QChar::Nbsp).toStdString();
}

/// What whoever gets it prefers, else the firm's; a code from a newer program does not count.
std::string languageOf(const reg::Firm& firm, const store::Reminder& reminder) {
    if (reminder.party && record::isRecordLanguage(reminder.party->language)) {
        return reminder.party->language;
    }
    return record::isRecordLanguage(firm.language) ? firm.language : std::string("en");
}

reg::LetterValues reminderValues(const reg::Firm& firm, const store::Reminder& reminder, calendar::Date today,
                                 const words::Words& words) {
    return {{Placeholder::Customer, reminder.party ? reminder.party->name : std::string()},
            {Placeholder::Premises, oneLineOf(reminder.address).toStdString()},
            {Placeholder::DateDue, unbroken(words.date(reminder.deadline))},
            {Placeholder::Today, unbroken(words.date(today))},
            {Placeholder::Firm, firm.name},
            {Placeholder::Telephone, unbroken(qstring(firm.telephone))},
            {Placeholder::Email, firm.email},
            {Placeholder::Registration, firm.registrationNumber}};
}

std::vector<std::string> addressLinesOf(const std::string& name, const reg::Address& address) {
    std::vector<std::string> lines{name};
    for (const auto* line : {&address.line1, &address.line2, &address.town, &address.postcode}) {
        if (!line->empty()) {
            lines.push_back(*line);
        }
    }
    return lines;
}

record::LetterHead headOf(const reg::Firm& firm, const store::Reminder& reminder, const QString& subject,
                          const QString& date, const words::Words& words) {
    record::LetterHead head;
    QStringList reached;
    for (const auto* part : {&firm.telephone, &firm.email}) {
        if (!part->empty()) {
            reached << qstring(*part);
        }
    }
    if (!firm.registrationNumber.empty()) {
        reached << words.say("registration %1", {qstring(firm.registrationNumber)});
    }
    head.sender = {firm.name, oneLineOf(firm.address).toStdString(),
                   reached.join(QStringLiteral(" · ")).toStdString()};
    head.recipient =
        addressLinesOf(reminder.party ? reminder.party->name : std::string(), reminder.recipient);
    head.date = date.toStdString();
    head.subject = subject.toStdString();
    return head;
}

/// "Fenn Estate: Gas safety check at 14 Tallow Lane"
std::string bookmarkOf(const WordedReminder& letter) {
    const auto& head = std::get<record::LetterHead>(letter.document.blocks.front());
    return head.recipient.front() + ": " + head.subject;
}

}  // namespace

Result<WordedReminder> wordReminder(const reg::Firm& firm, const store::Reminder& reminder,
                                    calendar::Date today, record::Paper paper, const words::Words& words) {
    constexpr auto kKind = reg::LetterKind::Reminder;
    const auto day = reminder.deadline < today ? words::ReminderDay::Past : words::ReminderDay::ToCome;
    const std::string wording =
        firm.reminderText.empty() ? words::shippedReminder(words, day).toStdString() : firm.reminderText;
    const auto text = reg::fillLetter(kKind, wording, reminderValues(firm, reminder, today, words));
    if (!text) {
        return tl::unexpected<Error>(text.error());
    }
    WordedReminder worded;
    worded.subject = words.say("Gas safety check at %1", {oneLineOf(reminder.address)});
    worded.text = *text;
    auto& document = worded.document;
    document.kind = std::string(record::kindCode(record::RecordKind::ReminderLetter));
    document.language = words.language().left(2).toStdString();
    document.title = worded.subject.toStdString();
    document.firm = firm.name;
    document.paper = paper;
    document.issued = words.date(today).toStdString();
    document.pageWord = words.say("page %1 of %2").toStdString();
    if (firm.demonstration) {
        document.banner = words.say("Demonstration: not a real record").toStdString();
    }
    document.blocks.emplace_back(headOf(firm, reminder, worded.subject, words.date(today), words));
    document.blocks.emplace_back(record::Paragraph{{}, *text, false});
    return worded;
}

Result<WordedReminder> ReminderWording::word(const store::Reminder& reminder) {
    const auto language = languageOf(m_firm, reminder);
    auto worded = wordReminder(m_firm, reminder, m_today, m_paper, wordsIn(language, false));
    const auto second = record::languageBeside(language);
    if (!worded || second.empty()) {
        return worded;
    }
    auto beside = wordReminder(m_firm, reminder, m_today, m_paper, wordsIn(second, true));
    if (!beside) {
        return beside;
    }
    if (beside->text != worded->text) {
        worded->text += "\n\n" + beside->text;
    }
    worded->document = record::pairedDocument(std::move(worded->document), beside->document);
    return worded;
}

const words::Words& ReminderWording::wordsIn(const std::string& language, bool isBeside) {
    auto& kept = m_words[{language, isBeside}];
    if (!kept) {
        kept = std::make_unique<words::Words>(isBeside ? words::Words::beside(qstring(language))
                                                       : words::Words(qstring(language)));
    }
    return *kept;
}

Result<void> writeLetters(const std::vector<WordedReminder>& letters, const QString& path,
                          const words::Words& words) {
    constexpr std::size_t kAtOnce = 100;  // enough for the type to weigh nothing, and little memory
    std::size_t at = 0;
    const paper::NextPdf next = [&]() -> Result<std::optional<paper::PdfPart>> {
        if (at == letters.size()) {
            return std::nullopt;
        }
        const std::size_t end = std::min(letters.size(), at + kAtOnce);
        std::vector<record::Document> documents;
        for (std::size_t i = at; i < end; ++i) {
            documents.push_back(letters[i].document);
        }
        const auto pdf = paper::toPdfOfMany(documents, {});
        if (!pdf) {
            return tl::unexpected<Error>(pdf.error());
        }
        paper::PdfPart part{bookmarkOf(letters[at]), pdf->bytes.toStdString()};
        for (std::size_t i = at + 1; i < end; ++i) {
            part.more.push_back({pdf->firstPages[i - at], bookmarkOf(letters[i])});
        }
        at = end;
        return part;
    };
    const paper::MergedHead head{ReminderLetter::tr("Reminders").toStdString(),
                                 words.language().left(2).toStdString()};
    return shell::writeFile(path,
                            [&](const shell::FileSink& sink) { return paper::mergePdfs(head, next, sink); });
}

}  // namespace hearth::ui::due
