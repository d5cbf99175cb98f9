// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"
#include "ui/words/kept_words.h"

#include <algorithm>
#include <array>
#include <set>

/// Records that have no order of their own yet: everything that the kind asks for, in the order in which it
/// asks, subject by subject.
namespace hearth::ui::words {

namespace {

using record::RecordKind;
using reg::Item;

const char* largerSentence(rulebook::Outcome outcome) {
    switch (outcome) {
        case rulebook::Outcome::Pass:
            return QT_TRANSLATE_NOOP("Words", "The pipework was found in order by every test that was made.");
        case rulebook::Outcome::Fail:
            return QT_TRANSLATE_NOOP("Words", "The pipework was not found in order: see the findings.");
        case rulebook::Outcome::LookAgain:
            return QT_TRANSLATE_NOOP("Words", "Something is to be looked at again: see the findings.");
        case rulebook::Outcome::NoVerdict:
            break;
    }
    return QT_TRANSLATE_NOOP("Words", "No verdict: see the findings for what is missing.");
}

QString headSentenceFor(const DocumentPage& page) {
    const auto& situations = page.file().situations;
    const bool immediate = std::any_of(situations.begin(), situations.end(), [](const reg::Situation& one) {
        return one.danger == reg::Danger::ImmediatelyDangerous;
    });
    switch (page.input().kind) {
        case RecordKind::WarningNotice:
            return immediate
                       ? page.say(QT_TRANSLATE_NOOP("Words", "DANGER – DO NOT USE. Immediately dangerous."))
                       : page.say(QT_TRANSLATE_NOOP("Words", "DANGER – DO NOT USE. At risk."));
        case RecordKind::ReportableEntry:
            return page.say(QT_TRANSLATE_NOOP("Words", "To be reported to HSE within 14 days."));
        case RecordKind::RoomInvestigation:
            return situations.empty()
                       ? page.say(QT_TRANSLATE_NOOP("Words", "Investigated: what was found stands below."))
                       : page.say(QT_TRANSLATE_NOOP("Words", "An unsafe situation was found."));
        case RecordKind::LargerPipework:
            return page.say(
                largerSentence(record::outcomeOf(page.input().kind, page.file(), page.findings())));
        default:
            return {};
    }
}

/// The items of the kind that belong to subjects of one kind, in order.
std::vector<Item> itemsOf(const DocumentPage& page, reg::SubjectKind kind) {
    std::vector<Item> items;
    for (const auto& wanted : record::requirementsOf(page.input().kind)) {
        const bool signature = wanted.item == Item::SignedByEngineer || wanted.item == Item::ReceivedBy ||
                               wanted.item == Item::VisitRemarks;
        if (wanted.item && reg::infoOf(*wanted.item).subject == kind && !signature) {
            items.push_back(*wanted.item);
        }
    }
    return items;
}

void addSubject(const DocumentPage& page, const reg::SubjectRef& on, const std::string& title,
                Blocks& blocks) {
    const auto items = itemsOf(page, on.kind);
    addGiven(page, on, title, items, blocks);
}

std::string situationTitle(const DocumentPage& page, const reg::Situation& situation) {
    return utf8(danger(page.words(), situation.danger) + QStringLiteral(": ") + qstring(situation.what) +
                (situation.where.empty() ? QString() : QStringLiteral(", ") + qstring(situation.where)));
}

/// Readings in rooms, one a row.
void addRoomReadings(const DocumentPage& page, Blocks& blocks) {
    record::Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Carbon monoxide in the air"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Place")), record::Align::Left, 2.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "After")), record::Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO")), record::Align::Right, 1.0}};
    for (const auto& reading : page.file().roomReadings()) {
        std::vector<std::string> row;
        for (const auto item : {Item::RoomCoPlace, Item::RoomCoAt, Item::RoomCo}) {
            row.push_back(page.has(reading, item) ? utf8(page.value(reading, item)) : absentCell());
        }
        table.rows.push_back(std::move(row));
    }
    if (!table.rows.empty()) {
        const bool holes = std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
            return std::find(row.begin(), row.end(), absentCell()) != row.end();
        });
        table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
        blocks.emplace_back(std::move(table));
    }
}

bool asksOf(const DocumentPage& page, reg::SubjectKind kind) {
    return !itemsOf(page, kind).empty();
}

/// What is big at the top of a notice, an entry or a report; an entry of the firm's books and a letter have
/// none.
void addListedHeadline(const DocumentPage& page, Blocks& blocks) {
    const QString sentence = headSentenceFor(page);
    if (sentence.isEmpty()) {
        return;
    }
    record::Headline head;
    head.outcome = record::outcomeOf(page.input().kind, page.file(), page.findings());
    head.sentence = utf8(sentence);
    const bool larger = page.input().kind == RecordKind::LargerPipework;
    for (const auto& situation : larger ? std::vector<reg::Situation>() : page.file().situations) {
        head.details.push_back(situationTitle(page, situation));
    }
    blocks.emplace_back(std::move(head));
}

void addWarning(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(record::Paragraph{
        {},
        page.text(QT_TRANSLATE_NOOP(
            "Words",
            "Do not use it until a registered engineer has put it right. Whoever uses it, or lets it be "
            "used, may commit an offence: Gas Safety (Installation and Use) Regulations 1998, regulation "
            "34.")),
        true});
}

void addListedAppliances(const DocumentPage& page, Blocks& blocks) {
    for (const auto& appliance : appliancesOf(page)) {
        blocks.emplace_back(applianceGrid(page, appliance, Telling::InFull));
        addSubject(page, reg::subject(appliance.id), {}, blocks);
    }
}

bool speaksOfAppliances(RecordKind kind) {
    return kind == RecordKind::RoomInvestigation || kind == RecordKind::BuildingNotice;
}

bool namesInstruments(RecordKind kind) {
    return kind == RecordKind::RoomInvestigation || kind == RecordKind::CalibrationLog;
}

}  // namespace

void addListedRecord(const DocumentPage& page, Blocks& blocks) {
    const auto kind = page.input().kind;
    addListedHeadline(page, blocks);
    if (kind == RecordKind::WarningNotice) {
        addWarning(page, blocks);
    }
    blocks.emplace_back(whoAndWhere(page));
    addClocks(page, blocks);
    if (asksOf(page, reg::SubjectKind::Situation)) {
        for (const auto& situation : page.file().situations) {
            addSubject(page, reg::subject(situation.id), situationTitle(page, situation), blocks);
        }
    }
    addSubject(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "What was asked and found")), blocks);
    addSubject(page, reg::subject(page.file().installation.id),
               page.text(QT_TRANSLATE_NOOP("Words", "Installation")), blocks);
    if (kind == RecordKind::RoomInvestigation) {
        addRooms(page, blocks);
        for (const auto& room : page.file().rooms()) {
            addGiven(page, room, utf8(page.value(room, Item::RoomName)), std::array{Item::RoomFinding},
                     blocks);
        }
        addRoomReadings(page, blocks);
    }
    if (speaksOfAppliances(kind)) {
        addListedAppliances(page, blocks);
    }
    if (namesInstruments(kind)) {
        blocks.emplace_back(instrumentTable(page));
    }
    if (kind == RecordKind::RoomInvestigation) {
        addSituations(page, blocks);
    }
    if (kind == RecordKind::RoomInvestigation || kind == RecordKind::LargerPipework) {
        addFindings(page, blocks);
    }
}

}  // namespace hearth::ui::words
