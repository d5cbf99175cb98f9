// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"

#include <algorithm>
#include <array>

/// The report on carbon monoxide or fumes in a room: what came of it first, then what it rests on.
namespace hearth::ui::words {

namespace {

using record::Align;
using record::Statement;
using record::Table;
using reg::Item;
using rulebook::Outcome;
namespace choice = reg::choice;

constexpr std::array kCallItems{Item::CallFrom,   Item::EmergencyReference, Item::OccupantsThere,
                                Item::Symptoms,   Item::MedicalAdvice,      Item::WeatherThere,
                                Item::OtherFuels, Item::AdjoiningPremises};
constexpr std::array kAlarmItems{Item::AlarmMake, Item::AlarmPeak, Item::AlarmExpiry};

record::Headline investigationHeadline(const DocumentPage& page) {
    const bool unsafe = !page.file().situations.empty();
    record::Headline head;
    head.outcome = record::outcomeOf(page.input().kind, page.file(), page.findings());
    head.sentence = unsafe ? page.text(QT_TRANSLATE_NOOP("Words", "An unsafe situation was found."))
                           : page.text(QT_TRANSLATE_NOOP("Words", "No unsafe situation was found."));
    return head;
}

Statement outcomeLine(const DocumentPage& page, const char* caption, Item item) {
    Statement statement;
    statement.caption = page.text(caption);
    statement.text = page.has(page.visit(), item) ? utf8(page.value(page.visit(), item))
                                                  : page.text(QT_TRANSLATE_NOOP("Words", "— not entered"));
    return statement;
}

/// Cause, work and how it was left: what whoever lives there wants to know.
record::Statements outcomeLines(const DocumentPage& page) {
    return {{},
            {outcomeLine(page, QT_TRANSLATE_NOOP("Words", "Cause found"), Item::CauseFound),
             outcomeLine(page, QT_TRANSLATE_NOOP("Words", "What was done"), Item::InvestigationActions),
             outcomeLine(page, QT_TRANSLATE_NOOP("Words", "The gas was left"), Item::LeftAs)}};
}

/// Readings in rooms, one a row, in the order in which they were taken.
void addSeries(const DocumentPage& page, Blocks& blocks) {
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Carbon monoxide in the air"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Place")), Align::Left, 2.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "After")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO")), Align::Right, 1.0}};
    bool holes = false;
    for (const auto& reading : page.file().roomReadings()) {
        std::vector<std::string> row;
        for (const auto item : {Item::RoomCoPlace, Item::RoomCoAt, Item::RoomCo}) {
            row.push_back(page.has(reading, item) ? utf8(page.value(reading, item)) : absentCell());
            holes = holes || row.back() == absentCell();
        }
        table.rows.push_back(std::move(row));
    }
    if (table.rows.empty()) {
        blocks.emplace_back(record::Paragraph{
            std::move(table.title), page.text(QT_TRANSLATE_NOOP("Words", "— no reading entered")), false});
        addRoomTraces(page, blocks);
        return;
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    blocks.emplace_back(std::move(table));
    addRoomPlots(page, blocks);
    addRoomTraces(page, blocks);
}

/// Where the alarms are, and what was seen in each room.
void addRoomsSeen(const DocumentPage& page, Blocks& blocks) {
    addRooms(page, blocks);
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Seen in the rooms"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Room")), Align::Left, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "What was found")), Align::Left, 4.0}};
    for (const auto& room : page.file().rooms()) {
        if (page.has(room, Item::RoomFinding)) {
            const auto name = page.value(room, Item::RoomName);
            table.rows.push_back(
                {name.isEmpty() ? absentCell() : utf8(name), utf8(page.value(room, Item::RoomFinding))});
        }
    }
    if (!table.rows.empty()) {
        blocks.emplace_back(std::move(table));
    }
}

void addSuspects(const DocumentPage& page, Blocks& blocks) {
    for (const auto& appliance : appliancesOf(page)) {
        const auto on = reg::subject(appliance.id);
        auto grid = applianceGrid(page, appliance, Telling::InFull);
        for (const auto& wanted : record::requirementsOf(page.input().kind)) {
            const bool told = wanted.item == Item::ApplianceInspected || wanted.item == Item::NotInspectedWhy;
            if (wanted.item && !told && reg::infoOf(*wanted.item).subject == reg::SubjectKind::Appliance) {
                page.addIfGiven(grid, on, *wanted.item);
            }
        }
        blocks.emplace_back(std::move(grid));
    }
}

}  // namespace

void addInvestigation(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(investigationHeadline(page));
    blocks.emplace_back(outcomeLines(page));
    addSituations(page, blocks);
    blocks.emplace_back(whoAndWhere(page));
    addSeries(page, blocks);
    addFindings(page, blocks);
    addRoomsSeen(page, blocks);
    addSuspects(page, blocks);
    auto call = gridOf(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "The call")), kCallItems);
    for (const Item item : kAlarmItems) {
        page.addIfGiven(call, page.visit(), item);
    }
    blocks.emplace_back(std::move(call));
    blocks.emplace_back(instrumentTable(page));
}

}  // namespace hearth::ui::words
