// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/evidence_words.h"

#include "ui/words/due_words.h"
#include "ui/words/text_table.h"

#include <QStringList>

namespace hearth::ui::words {

namespace {

using calendar::Date;
using calendar::NextStep;
using reg::Channel;

constexpr std::array kHappenedTexts{
    Text<Happened>{Happened::Checked, QT_TRANSLATE_NOOP("Words", "Checked: record %1")},
    Text<Happened>{Happened::CheckedEarlier, QT_TRANSLATE_NOOP("Words", "Checked, by an earlier record")},
    Text<Happened>{Happened::RecordIssued, QT_TRANSLATE_NOOP("Words", "Record %1 issued")},
    Text<Happened>{Happened::RecordVoided, QT_TRANSLATE_NOOP("Words", "Record %1 declared void")},
    Text<Happened>{Happened::RecordSent, QT_TRANSLATE_NOOP("Words", "Record %1 sent")},
    Text<Happened>{Happened::Visited, QT_TRANSLATE_NOOP("Words", "Visit")},
    Text<Happened>{Happened::LetterSent, QT_TRANSLATE_NOOP("Words", "Letter sent")},
    Text<Happened>{Happened::CopyHandedOver, QT_TRANSLATE_NOOP("Words", "Copy of the record handed over")},
    Text<Happened>{Happened::InformationHandedOver,
                   QT_TRANSLATE_NOOP("Words", "Operating information handed over")},
    Text<Happened>{Happened::Called, QT_TRANSLATE_NOOP("Words", "Telephone call")},
    Text<Happened>{Happened::NoAccess, QT_TRANSLATE_NOOP("Words", "No access")},
    Text<Happened>{Happened::DayProposed, QT_TRANSLATE_NOOP("Words", "A day was proposed")},
    Text<Happened>{Happened::Booked, QT_TRANSLATE_NOOP("Words", "Booked")},
    Text<Happened>{Happened::BookedAndDone, QT_TRANSLATE_NOOP("Words", "Booked, and done")},
    Text<Happened>{Happened::BookingCancelled, QT_TRANSLATE_NOOP("Words", "Booking cancelled")},
    Text<Happened>{Happened::BookedWithoutAccess, QT_TRANSLATE_NOOP("Words", "Booked, and no access")},
    Text<Happened>{Happened::SituationFound, QT_TRANSLATE_NOOP("Words", "Unsafe situation")},
    Text<Happened>{Happened::SituationStep, QT_TRANSLATE_NOOP("Words", "Unsafe situation, a step")},
    Text<Happened>{Happened::WindowOpens, QT_TRANSLATE_NOOP("Words", "The window opens")},
    Text<Happened>{Happened::Deadline, QT_TRANSLATE_NOOP("Words", "Deadline of the next check")},
};

constexpr std::array kWayTexts{
    Text<Channel>{Channel::Visit, QT_TRANSLATE_NOOP("Words", "in person")},
    Text<Channel>{Channel::Letter, QT_TRANSLATE_NOOP("Words", "by letter")},
    Text<Channel>{Channel::Telephone, QT_TRANSLATE_NOOP("Words", "by telephone")},
    Text<Channel>{Channel::TextMessage, QT_TRANSLATE_NOOP("Words", "by text message")},
    Text<Channel>{Channel::Email, QT_TRANSLATE_NOOP("Words", "by mail")},
    Text<Channel>{Channel::Other, QT_TRANSLATE_NOOP("Words", "another way")},
};

/// Three attempts change what goes to the landlord, never what is to be done.
constexpr const char* kTryAgain = QT_TRANSLATE_NOOP("Words", "Try again and tell the landlord");
constexpr std::array kComesNext{
    Text<NextStep>{NextStep::AskLastCheck, QT_TRANSLATE_NOOP("Words", "Ask for the last check")},
    Text<NextStep>{NextStep::Prepare, QT_TRANSLATE_NOOP("Words", "Tell the landlord")},
    Text<NextStep>{NextStep::Book, QT_TRANSLATE_NOOP("Words", "Book the check")},
    Text<NextStep>{NextStep::BookNow, QT_TRANSLATE_NOOP("Words", "Ring and book now")},
    Text<NextStep>{NextStep::TryAgain, kTryAgain},
    Text<NextStep>{NextStep::TryAgainAndRecord, kTryAgain},
    Text<NextStep>{NextStep::Attend, QT_TRANSLATE_NOOP("Words", "Attend")},
    Text<NextStep>{NextStep::Nothing, QT_TRANSLATE_NOOP("Words", "Nothing to do yet")},
};

class EvidencePage {
  public:
    EvidencePage(const Words& words, const Evidence& evidence) : m_words(words), m_evidence(evidence) {}

    [[nodiscard]] record::Document made() const {
        record::Document page;
        page.kind = "due_evidence";
        page.language = m_words.language().left(2).toStdString();
        page.title = said(QT_TRANSLATE_NOOP("Words", "What was done for the gas safety check"));
        page.subtitle = addressLine();
        page.firm = m_evidence.firm.name;
        page.paper = m_evidence.paper;
        page.issued = m_words.date(m_evidence.today).toStdString();
        page.pageWord = said(QT_TRANSLATE_NOOP("Words", "page %1 of %2"));
        if (m_evidence.firm.demonstration) {
            page.banner = said(QT_TRANSLATE_NOOP("Words", "Demonstration: not a real record"));
        }
        page.blocks.emplace_back(head());
        page.blocks.emplace_back(worthAndNext());
        page.blocks.emplace_back(inOrderOfTime());
        addWords(page);
        addPhotographs(page);
        return page;
    }

  private:
    [[nodiscard]] std::string said(const char* english, const QStringList& arguments = {}) const {
        return m_words.say(english, arguments).toStdString();
    }
    [[nodiscard]] std::string addressLine() const {
        const auto& address = m_evidence.address;
        QStringList parts{qstring(address.line1), qstring(address.line2),
                          QStringList{qstring(address.town), qstring(address.postcode)}.join(u' ').trimmed()};
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", ")).toStdString();
    }

    [[nodiscard]] record::CaptionedValue field(const char* caption, const std::string& value) const {
        return value.empty() ? record::CaptionedValue{said(caption),
                                                      {said(QT_TRANSLATE_NOOP("Words", "not known"))},
                                                      true}
                             : record::CaptionedValue{said(caption), {value}};
    }
    [[nodiscard]] std::string dayText(const std::optional<Date>& day) const {
        return day ? m_words.date(*day).toStdString() : std::string();
    }
    [[nodiscard]] record::FieldGrid head() const {
        record::FieldGrid grid;
        grid.fields = {
            field(QT_TRANSLATE_NOOP("Words", "Landlord"), m_evidence.landlord),
            field(QT_TRANSLATE_NOOP("Words", "Agent"), m_evidence.agent),
            field(QT_TRANSLATE_NOOP("Words", "State"), dueState(m_words, m_evidence.state).toStdString()),
            field(QT_TRANSLATE_NOOP("Words", "Last check"), dayText(m_evidence.lastCheck)),
            field(QT_TRANSLATE_NOOP("Words", "Deadline of the next"), dayText(m_evidence.deadline)),
            field(QT_TRANSLATE_NOOP("Words", "Letters and calls since the last check"),
                  std::to_string(m_evidence.letters)),
            field(QT_TRANSLATE_NOOP("Words", "Attempts without access since the last check"),
                  std::to_string(m_evidence.attempts))};
        if (m_evidence.latest) {
            grid.fields[4].lines.push_back(said(kLookAgain, {m_words.date(*m_evidence.latest)}));
        }
        return grid;
    }

    /// What inspectors look for, which is no verdict, and what comes next whatever was done so far.
    [[nodiscard]] record::Statements worthAndNext() const {
        record::Statement next{said(QT_TRANSLATE_NOOP("Words", "What comes next")),
                               said(textOf(kComesNext, m_evidence.step)),
                               {},
                               {}};
        record::Statements block;
        if (m_evidence.isLandlordsDuty) {
            block.statements.push_back(
                {said(QT_TRANSLATE_NOOP("Words", "What this is worth")),
                 said(QT_TRANSLATE_NOOP("Words",
                                        "At least three attempts are what inspectors look for. They "
                                        "are no safe harbour: a court decides on the facts.")),
                 {},
                 {said(QT_TRANSLATE_NOOP("Words",
                                         "A landlord has to show that all reasonable steps were taken. Keep "
                                         "every letter. Nobody may use force to get in.")),
                  said(QT_TRANSLATE_NOOP("Words",
                                         "Source: HSE, “How far do I need to go if the tenant prevents "
                                         "access for a gas safety check?”"))}});
            next.details.push_back(
                said(QT_TRANSLATE_NOOP("Words",
                                       "However many attempts were made, the next step stays: try again and "
                                       "tell the landlord.")));
        }
        block.statements.push_back(std::move(next));
        return block;
    }

    [[nodiscard]] QString title(const EvidenceEvent& one) const {
        return m_words.say(textOf(kHappenedTexts, one.what), {qstring(one.number)});
    }
    /// "No access, 3 Nov 2026 at 14:10"
    [[nodiscard]] QString named(const EvidenceEvent& one) const {
        const QString day = m_words.shortDate(one.date);
        return one.time.empty() ? title(one) + QStringLiteral(", ") + day
                                : m_words.say(QT_TRANSLATE_NOOP("Words", "%1, %2 at %3"),
                                              {title(one), day, qstring(one.time)});
    }
    /// Who and by which means: of letters and calls to whom.
    [[nodiscard]] QStringList who(const EvidenceEvent& one) const {
        const QString way = one.channel ? m_words.say(textOf(kWayTexts, *one.channel)) : QString();
        const QString by = qstring(one.by);
        if (one.what == Happened::NoAccess || way.isEmpty() || by.isEmpty()) {
            return {by, way};
        }
        return {m_words.say(QT_TRANSLATE_NOOP("Words", "%1, to %2"), {way, by})};
    }
    [[nodiscard]] QString how(const EvidenceEvent& one) const {
        QStringList parts = who(one);
        const auto add = [&](const char* english, const std::string& value) {
            parts << (value.empty() ? QString() : m_words.say(english, {qstring(value)}));
        };
        for (const auto& said : one.said) {
            parts << qstring(said).simplified();
        }
        add(QT_TRANSLATE_NOOP("Words", "revision %1"), one.revision);
        add(QT_TRANSLATE_NOOP("Words", "left: %1"), one.left);
        add(QT_TRANSLATE_NOOP("Words", "answer: %1"), one.answer);
        add(QT_TRANSLATE_NOOP("Words", "came of it: %1"), one.result);
        add(QT_TRANSLATE_NOOP("Words", "next: %1"), one.nextStep);
        const auto addDay = [&](const char* english, const std::optional<Date>& day) {
            parts << (day ? m_words.say(english, {m_words.shortDate(*day)}) : QString());
        };
        addDay(QT_TRANSLATE_NOOP("Words", "on %1"), one.nextOn);
        addDay(kLookAgain, one.latest);
        if (!one.text.empty()) {
            parts << m_words.say(QT_TRANSLATE_NOOP("Words", "word for word below"));
        }
        if (!one.photographs.empty()) {
            parts << m_words.say(QT_TRANSLATE_NOOP("Words", "photograph below"));
        }
        parts.removeAll(QString());
        return parts.join(QStringLiteral("; "));
    }

    [[nodiscard]] record::Table inOrderOfTime() const {
        using record::Align;
        record::Table table;
        table.title = said(QT_TRANSLATE_NOOP("Words", "What was done, in order of time"));
        table.columns = {
            {said(QT_TRANSLATE_NOOP("Words", "No.")), Align::Right, 0.5},
            {said(QT_TRANSLATE_NOOP("Words", "Day")), Align::Left, 1.2},
            {said(QT_TRANSLATE_NOOP("Words", "Time")), Align::Left, 0.7},
            {said(QT_TRANSLATE_NOOP("Words", "What")), Align::Left, 2.0},
            {said(QT_TRANSLATE_NOOP("Words", "By whom, how, and what came of it")), Align::Left, 4.0}};
        int number = 0;
        for (const auto& one : m_evidence.events) {
            const QString what = one.date > m_evidence.today
                                     ? m_words.say(QT_TRANSLATE_NOOP("Words", "%1 (to come)"), {title(one)})
                                     : title(one);
            table.rows.push_back({std::to_string(++number), m_words.shortDate(one.date).toStdString(),
                                  one.time, what.toStdString(), how(one).toStdString()});
        }
        return table;
    }

    /// Letters and calls word for word, under the number that they have in the table.
    void addWords(record::Document& page) const {
        int number = 0;
        for (const auto& one : m_evidence.events) {
            ++number;
            if (!one.text.empty()) {
                page.blocks.emplace_back(
                    record::Paragraph{said(QT_TRANSLATE_NOOP("Words", "No. %1, word for word: %2"),
                                           {QString::number(number), named(one)}),
                                      one.text, false});
            }
        }
    }
    void addPhotographs(record::Document& page) const {
        record::Pictures block;
        block.title = said(QT_TRANSLATE_NOOP("Words", "Photographs"));
        int number = 0;
        for (const auto& one : m_evidence.events) {
            ++number;
            for (auto picture : one.photographs) {
                picture.of =
                    said(QT_TRANSLATE_NOOP("Words", "No. %1: %2"), {QString::number(number), named(one)});
                block.pictures.push_back(std::move(picture));
            }
        }
        if (!block.pictures.empty()) {
            page.blocks.emplace_back(std::move(block));
        }
    }

    static constexpr const char* kLookAgain = QT_TRANSLATE_NOOP("Words", "look again: perhaps only by %1");
    const Words& m_words;
    const Evidence& m_evidence;
};

}  // namespace

record::Document evidenceDocument(const Words& words, const Evidence& evidence) {
    return EvidencePage(words, evidence).made();
}

}  // namespace hearth::ui::words
