// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"
#include "ui/words/kept_words.h"

#include <QStringList>

#include <algorithm>
#include <array>

/// The warning notice: for whoever is about to use what is dangerous, and for whoever puts it right.
namespace hearth::ui::words {

namespace {

using record::RecordKind;
using record::Statement;
using reg::Item;
using rulebook::Outcome;
namespace choice = reg::choice;

QString sentenceList(const QStringList& parts) {
    QStringList there;
    std::copy_if(parts.begin(), parts.end(), std::back_inserter(there),
                 [](const QString& part) { return !part.isEmpty(); });
    return there.join(QStringLiteral(", "));
}

/// The gravest of those that still are, or of all where none is any more.
reg::Danger gravest(const DocumentPage& page) {
    const auto& situations = page.file().situations;
    const bool anyLeft = !record::isAllPutRight(page.file());
    const bool isImmediate =
        std::any_of(situations.begin(), situations.end(), [&](const reg::Situation& one) {
            return one.danger == reg::Danger::ImmediatelyDangerous &&
                   !(anyLeft && record::isPutRight(page.file(), one));
        });
    return isImmediate ? reg::Danger::ImmediatelyDangerous : reg::Danger::AtRisk;
}

/// What the situation is on: "fire, open-flued space heater (living room), Wrenmark Sable".
QString fittingOf(const DocumentPage& page, const reg::Situation& situation) {
    for (const auto& appliance : page.file().appliances) {
        if (situation.appliance && appliance.id == *situation.appliance) {
            const QString make = qstring(appliance.make) + u' ' + qstring(appliance.model);
            const QString serial =
                appliance.serial.empty()
                    ? QString()
                    : page.say(QT_TRANSLATE_NOOP("Words", "serial number %1"), {qstring(appliance.serial)});
            return sentenceList({applianceName(page, appliance), make.trimmed(), serial});
        }
    }
    return {};
}

Statement plain(const DocumentPage& page, const char* caption, const QString& text,
                const QStringList& details = {}) {
    Statement statement;
    statement.caption = page.text(caption);
    statement.text = text.isEmpty() ? page.text(QT_TRANSLATE_NOOP("Words", "— not entered")) : utf8(text);
    for (const QString& detail : details) {
        if (!detail.isEmpty()) {
            statement.details.push_back(utf8(detail));
        }
    }
    return statement;
}

Statement whatIsWrong(const DocumentPage& page, const reg::Situation& situation) {
    const auto on = reg::subject(situation.id);
    const bool isRight = record::isPutRight(page.file(), situation);
    const bool several = page.file().situations.size() > 1;
    auto statement = plain(
        page,
        isRight ? QT_TRANSLATE_NOOP("Words", "What was wrong") : QT_TRANSLATE_NOOP("Words", "What is wrong"),
        qstring(situation.what),
        {several ? danger(page.words(), situation.danger) : QString(), fittingOf(page, situation)});
    const char* gas = QT_TRANSLATE_NOOP("Words", "Whether gas is escaping: not entered.");
    const auto escape = page.file().choiceOf(on, Item::SituationGasEscape);
    if (escape == choice::kYes) {
        gas = isRight ? QT_TRANSLATE_NOOP("Words", "Gas was escaping.")
                      : QT_TRANSLATE_NOOP("Words", "Gas is escaping.");
    } else if (escape == choice::kNo) {
        gas = isRight ? QT_TRANSLATE_NOOP("Words", "No gas was escaping.")
                      : QT_TRANSLATE_NOOP("Words", "No gas is escaping.");
    } else if (isRight) {
        gas = QT_TRANSLATE_NOOP("Words", "Whether gas was escaping: not entered.");
    }
    statement.details.push_back(page.text(gas));
    return statement;
}

/// The engineer who made the visit, with the card's number.
QString engineerAndCard(const DocumentPage& page) {
    const reg::Engineer* engineer = page.file().engineer();
    if (engineer == nullptr || engineer->name.empty()) {
        return page.say(QT_TRANSLATE_NOOP("Words", "an engineer who is not named"));
    }
    return engineer->cardNumber.empty() ? qstring(engineer->name)
                                        : page.say(QT_TRANSLATE_NOOP("Words", "%1 (card %2)"),
                                                   {qstring(engineer->name), qstring(engineer->cardNumber)});
}

/// What was done, when and by whom: it happened on the visit.
Statement putRight(const DocumentPage& page, const reg::SubjectRef& on) {
    return plain(page, QT_TRANSLATE_NOOP("Words", "Put right"), page.value(on, Item::SituationMadeSafeHow),
                 {page.say(QT_TRANSLATE_NOOP("Words", "On %1, by %2"),
                           {page.words().date(page.file().visit.date), engineerAndCard(page)})});
}

/// Whether it was made safe is the one thing on the page that must not be misread.
Statement madeSafe(const DocumentPage& page, const reg::SubjectRef& on) {
    const auto how = page.file().choiceOf(on, Item::SituationMadeSafe);
    auto statement =
        plain(page, QT_TRANSLATE_NOOP("Words", "Made safe"), page.value(on, Item::SituationMadeSafe),
              {page.value(on, Item::SituationMadeSafeHow)});
    if (how == choice::kNotMadeSafe) {
        statement.text = page.text(QT_TRANSLATE_NOOP("Words", "NOT made safe"));
        statement.outcome = Outcome::Fail;
    }
    return statement;
}

/// What was entered beside an answer, each with its caption.
QString beside(const DocumentPage& page, const reg::SubjectRef& on, Item item, const char* text) {
    return page.has(on, item) ? page.say(text, {page.value(on, item)}) : QString();
}

Statement permission(const DocumentPage& page, const reg::SubjectRef& on) {
    const bool refused = page.file().choiceOf(on, Item::SituationPermission) == choice::kRefused;
    return plain(
        page, QT_TRANSLATE_NOOP("Words", "Permission to make it safe"),
        refused ? page.say(QT_TRANSLATE_NOOP("Words", "REFUSED")) : page.value(on, Item::SituationPermission),
        {beside(page, on, Item::SituationRefusedBy, QT_TRANSLATE_NOOP("Words", "Refused by: %1")),
         beside(page, on, Item::SituationRefusalWords, QT_TRANSLATE_NOOP("Words", "In their words: %1")),
         beside(page, on, Item::SituationSupplyLeft, QT_TRANSLATE_NOOP("Words", "The supply was left: %1"))});
}

Statement label(const DocumentPage& page, const reg::SubjectRef& on) {
    const auto fixed = page.file().choiceOf(on, Item::SituationLabel);
    QString text;
    if (fixed == choice::kYes) {
        text = page.has(on, Item::SituationLabelNumber)
                   ? page.say(QT_TRANSLATE_NOOP("Words", "fixed, no. %1"),
                              {page.value(on, Item::SituationLabelNumber)})
                   : page.say(QT_TRANSLATE_NOOP("Words", "fixed"));
    } else if (fixed == choice::kNo) {
        text = page.say(QT_TRANSLATE_NOOP("Words", "none fixed"));
    }
    return plain(page, QT_TRANSLATE_NOOP("Words", "Warning label"), text);
}

/// Whom, when, and under which reference.
Statement told(const DocumentPage& page, const reg::SubjectRef& on) {
    const QString at = page.value(on, Item::SituationToldAt);
    const QString reference = page.value(on, Item::SituationToldReference);
    const QString when = at.isEmpty() ? QString() : page.say(QT_TRANSLATE_NOOP("Words", "at %1"), {at});
    const QString under =
        reference.isEmpty() ? QString() : page.say(QT_TRANSLATE_NOOP("Words", "reference %1"), {reference});
    return plain(page, QT_TRANSLATE_NOOP("Words", "Also told"), page.value(on, Item::SituationTold),
                 {sentenceList({when, under})});
}

/// That it was signed for, and by whom, or that nobody signed and where the copy lies.
Statement receipt(const DocumentPage& page, const reg::SubjectRef& on) {
    const bool left = page.file().choiceOf(on, Item::SituationReceipt) == choice::kCopyLeft;
    return plain(page, QT_TRANSLATE_NOOP("Words", "This notice"),
                 left ? page.say(QT_TRANSLATE_NOOP("Words", "nobody signed for it, a copy was left"))
                      : page.value(on, Item::SituationReceipt),
                 {beside(page, on, Item::SituationReceivedBy, QT_TRANSLATE_NOOP("Words", "Received by: %1")),
                  beside(page, on, Item::SituationCopyLeft, QT_TRANSLATE_NOOP("Words", "Copy left: %1"))});
}

record::Statements situationPart(const DocumentPage& page, const reg::Situation& situation) {
    const auto on = reg::subject(situation.id);
    record::Statements part;
    part.title = situation.where.empty() ? page.text(QT_TRANSLATE_NOOP("Words", "What was found"))
                                         : page.text(QT_TRANSLATE_NOOP("Words", "What was found: %1"),
                                                     {qstring(situation.where)});
    part.statements = {
        whatIsWrong(page, situation),
        record::isPutRight(page.file(), situation) ? putRight(page, on) : madeSafe(page, on),
        permission(page, on),
        label(page, on),
        plain(page, QT_TRANSLATE_NOOP("Words", "Work needed"), page.value(on, Item::SituationWorkNeeded)),
        plain(page, QT_TRANSLATE_NOOP("Words", "Responsible person"), page.value(on, Item::SituationPerson)),
        told(page, on),
        receipt(page, on)};
    return part;
}

/// Nothing is dangerous any more: whoever reads the notice must not be kept from what is right, nor think
/// that nothing had been found.
record::Alert wasDangerous(const DocumentPage& page) {
    record::Alert alert;
    alert.outcome = Outcome::LookAgain;
    alert.word = page.text(QT_TRANSLATE_NOOP("Words", "PUT RIGHT"));
    alert.grade = page.text(QT_TRANSLATE_NOOP("Words", "It was: %1"), {danger(page.words(), gravest(page))});
    alert.meaning = page.text(
        QT_TRANSLATE_NOOP("Words",
                          "It was found dangerous, and put right at once, on %1, by %2. Below stands what "
                          "was done. Keep this notice."),
        {page.words().date(page.file().visit.date), engineerAndCard(page)});
    return alert;
}

/// RIDDOR, for the engineer's firm: small, since whoever is warned has nothing to do for it.
record::FieldGrid reportableGrid(const DocumentPage& page) {
    record::FieldGrid grid;
    for (const auto& situation : page.file().situations) {
        grid.fields.push_back(page.captioned(reg::subject(situation.id), Item::SituationReportable));
    }
    return grid;
}

}  // namespace

std::vector<std::string> fittingDetails(const DocumentPage& page, const reg::Situation& situation) {
    const QString fitting = fittingOf(page, situation);
    return fitting.isEmpty() ? std::vector<std::string>() : std::vector{utf8(fitting)};
}

// IGEM/G/11's two classes in the words of facts read in "Gas Appliance Warning Labels" and "How gas engineers
// deal with unsafe situations".
std::string dangerMeaning(const DocumentPage& page, reg::Danger grade) {
    return grade == reg::Danger::ImmediatelyDangerous
               ? page.text(QT_TRANSLATE_NOOP(
                     "Words",
                     "If it is used or left connected, it is an immediate danger to life or property."))
               : page.text(QT_TRANSLATE_NOOP(
                     "Words",
                     "It has a fault that could endanger life or property, even if nothing else fails."));
}

std::string dangerWord(const DocumentPage& page) {
    return page.text(QT_TRANSLATE_NOOP("Words", "DANGER – DO NOT USE"));
}

record::Statements whatNotToDo(const DocumentPage& page) {
    record::Statements part;
    part.statements.push_back(
        plain(page, QT_TRANSLATE_NOOP("Words", "What not to do"),
              page.say(QT_TRANSLATE_NOOP(
                  "Words",
                  "Do not use it, turn it on or remove the label until a registered engineer has put it "
                  "right.")),
              {page.say(QT_TRANSLATE_NOOP(
                  "Words",
                  "Whoever uses it, or lets it be used, may commit an offence: Gas Safety (Installation "
                  "and Use) Regulations 1998, regulation 34."))}));
    return part;
}

void addWarningNotice(const DocumentPage& page, Blocks& blocks) {
    if (record::isAllPutRight(page.file())) {
        blocks.emplace_back(wasDangerous(page));
    } else {
        const auto grade = gravest(page);
        record::Alert alert;
        alert.word = dangerWord(page);
        alert.grade = utf8(danger(page.words(), grade));
        alert.meaning = dangerMeaning(page, grade);
        blocks.emplace_back(std::move(alert));
        blocks.emplace_back(whatNotToDo(page));
    }
    for (const auto& situation : page.file().situations) {
        blocks.emplace_back(situationPart(page, situation));
    }
    blocks.emplace_back(whoAndWhere(page));
    blocks.emplace_back(reportableGrid(page));
}

}  // namespace hearth::ui::words
