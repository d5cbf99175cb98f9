// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_words.h"

#include "core/record/language.h"
#include "core/record/pairing.h"
#include "ui/words/document_parts.h"

#include <QStringList>

#include <algorithm>

namespace hearth::ui::words {

namespace {

using record::Document;
using reg::Item;

/// The editions that the tests were made to, each once: what the record follows.
QString editionsFollowed(const DocumentPage& page) {
    QStringList editions;
    for (const auto& test : page.tests()) {
        const QString edition = page.value(reg::subject(test.id), Item::TestEdition);
        if (!edition.isEmpty() && !editions.contains(edition)) {
            editions << edition;
        }
    }
    return editions.isEmpty() ? page.say(QT_TRANSLATE_NOOP("Words", "edition not chosen"))
                              : editions.join(QStringLiteral(" · "));
}

QString firmLine(const DocumentPage& page) {
    const reg::Firm& firm = page.file().firm;
    QStringList parts{qstring(firm.name)};
    if (!firm.registrationNumber.empty()) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "registration %1"), {qstring(firm.registrationNumber)});
    }
    if (!firm.telephone.empty()) {
        parts << qstring(firm.telephone);
    }
    return parts.join(QStringLiteral(" · "));
}

/// What it follows: the law or the standard.
QString followed(const DocumentPage& page) {
    switch (page.input().kind) {
        case record::RecordKind::LandlordSafety:
            return page.say(QT_TRANSLATE_NOOP(
                "Words", "Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)"));
        case record::RecordKind::OwnerSafety:
        case record::RecordKind::Service:
            return page.say(QT_TRANSLATE_NOOP(
                "Words", "Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)"));
        case record::RecordKind::Commissioning:
            return page.say(QT_TRANSLATE_NOOP(
                "Words",
                "Gas Safety (Installation and Use) Regulations 1998, regulations 26(9) and 33; BS 6798"));
        case record::RecordKind::WarningNotice:
            return page.say(QT_TRANSLATE_NOOP("Words", "IGEM/G/11"));
        case record::RecordKind::RoomInvestigation:
            return page.say(QT_TRANSLATE_NOOP("Words", "BS 7967; IGEM/G/11 Supplement 1"));
        case record::RecordKind::ReportableEntry:
            return page.say(QT_TRANSLATE_NOOP("Words", "RIDDOR 2013, regulation 11(2)"));
        case record::RecordKind::BuildingNotice:
            return page.say(QT_TRANSLATE_NOOP("Words", "Building Regulations 2010, regulations 20 and 40"));
        case record::RecordKind::LargerPipework:
            return page.say(QT_TRANSLATE_NOOP("Words", "IGE/UP/1, IGE/UP/1A"));
        case record::RecordKind::TightnessAndPurge:
            return editionsFollowed(page);
        case record::RecordKind::CalibrationLog:
        case record::RecordKind::ReminderLetter:
        case record::RecordKind::NoAccessLetter:
        case record::RecordKind::CoveringLetter:
            break;
    }
    return {};
}

record::Paragraph remarks(const DocumentPage& page) {
    return {page.text(QT_TRANSLATE_NOOP("Words", "Remarks")),
            page.has(page.visit(), Item::VisitRemarks)
                ? utf8(page.value(page.visit(), Item::VisitRemarks))
                : page.text(QT_TRANSLATE_NOOP("Words", "— none given")),
            false};
}

/// A notice and an entry of the firm's books have none of their own.
bool asksForRemarks(record::RecordKind kind) {
    const auto wanted = record::requirementsOf(kind);
    return std::any_of(wanted.begin(), wanted.end(),
                       [](const record::Requirement& one) { return one.item == Item::VisitRemarks; });
}

void addTightnessRecord(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(headline(page));
    addWhatToDo(page, blocks);
    blocks.emplace_back(whoAndWhere(page));
    blocks.emplace_back(instrumentTable(page));
    blocks.emplace_back(installationGrid(page));
    blocks.emplace_back(pipeTable(page));
    addPipeSketch(page, {}, blocks);
    for (const auto& test : page.tests()) {
        blocks.emplace_back(testedGrid(page, test));
        blocks.emplace_back(readingTable(page, test));
        addTestPlots(page, test, blocks);
        addTraces(page, test, blocks);
    }
    addLeakHunt(page, blocks);
    blocks.emplace_back(beforeGrid(page));
    blocks.emplace_back(findingList(page));
    for (const auto& test : page.tests()) {
        blocks.emplace_back(purgeGrid(page, test));
        blocks.emplace_back(restoreGrid(page, test));
    }
}

void addBody(const DocumentPage& page, Blocks& blocks) {
    switch (page.input().kind) {
        case record::RecordKind::TightnessAndPurge:
            return addTightnessRecord(page, blocks);
        case record::RecordKind::LandlordSafety:
        case record::RecordKind::OwnerSafety:
            return addSafetyRecord(page, blocks);
        case record::RecordKind::Commissioning:
            return addCommissioningRecord(page, blocks);
        case record::RecordKind::Service:
            return addServiceRecord(page, blocks);
        case record::RecordKind::LargerPipework:
            return addLargerRecord(page, blocks);
        case record::RecordKind::WarningNotice:
            return addWarningNotice(page, blocks);
        case record::RecordKind::RoomInvestigation:
            return addInvestigation(page, blocks);
        case record::RecordKind::ReportableEntry:
            return addReportableEntry(page, blocks);
        case record::RecordKind::BuildingNotice:
            return addBuildingNotice(page, blocks);
        case record::RecordKind::CalibrationLog:
            return addCalibrationLog(page, blocks);
        case record::RecordKind::ReminderLetter:
        case record::RecordKind::NoAccessLetter:
        case record::RecordKind::CoveringLetter:
            return addLetter(page, blocks);
    }
}

}  // namespace

void setFrame(const DocumentPage& page, Document& document) {
    const DocumentInput& input = page.input();
    document.kind = std::string(record::kindCode(input.kind));
    document.language = std::string(record::mainLanguage(utf8(page.words().language())));
    document.title = utf8(page.words().recordKind(input.kind));
    document.subtitle = utf8(followed(page));
    document.firm = utf8(firmLine(page));
    document.logo = input.logo;
    document.issued = utf8(page.words().date(input.issued));
    if (input.file.firm.demonstration) {
        document.banner = page.text(QT_TRANSLATE_NOOP("Words", "Demonstration: not a real record"));
    }
    document.caution = utf8(page.words().caution(input.file.installation.gas, input.file.premises.country,
                                                 input.file.emergencyContacts));
    document.pageWord = page.text(QT_TRANSLATE_NOOP("Words", "page %1 of %2"));
    document.revisionWord = page.text(QT_TRANSLATE_NOOP("Words", "revision %1"));
    document.digestWord = page.text(QT_TRANSLATE_NOOP("Words", "digest"));
}

Document documentFor(const DocumentInput& input, const Words& words) {
    const DocumentPage page(input, words);
    Document document;
    setFrame(page, document);
    addBody(page, document.blocks);
    if (record::isLetter(input.kind)) {
        document.blocks.emplace_back(letterSignature(page));
        return document;
    }
    // What was remarked on a visit is nothing of the firm's instruments.
    const bool remarked =
        page.has(page.visit(), Item::VisitRemarks) && input.kind != record::RecordKind::CalibrationLog;
    if (asksForRemarks(input.kind) || remarked) {
        document.blocks.emplace_back(remarks(page));
    }
    addPictures(page, document.blocks);
    document.blocks.emplace_back(signaturesOf(page));
    return document;
}

Document documentIn(const QString& language, const std::function<Document(const Words&)>& make) {
    const auto second = record::languageBeside(utf8(language));
    Document document = make(Words(language));
    return second.empty() ? document
                          : record::pairedDocument(std::move(document),
                                                   make(Words::beside(qstring(std::string(second)))));
}

Document documentFor(const DocumentInput& input, const QString& language) {
    return documentIn(language, [&input](const Words& words) { return documentFor(input, words); });
}

}  // namespace hearth::ui::words
