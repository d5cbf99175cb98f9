// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_parts.h"

#include <array>

/// Strength, tightness and purge of pipework beyond the small domestic.
namespace hearth::ui::words {

namespace {

using record::Align;
using record::Table;
using reg::Item;
using rulebook::Outcome;

constexpr std::array kLargerWhat{Item::LargerWork, Item::LargerArea, Item::PurgeVolumeKnown,
                                 Item::LargerOperatingPressure, Item::LargerIncidentalPressure};
constexpr std::array kLargerWhatFurther{Item::LargerRoomVolume, Item::LargerVentilated,
                                        Item::LargerSupplyPressure};
constexpr std::array kStrengthHow{Item::StrengthMedium, Item::StrengthGauge, Item::StrengthMostOperating,
                                  Item::StrengthPartsOff};
constexpr std::array kTightHow{Item::LargerMedium, Item::LargerGauge, Item::LargerSmell};
constexpr std::array kPurgeHow{Item::PurgeSize, Item::PurgePipe, Item::PurgeFlow, Item::PurgePassed,
                               Item::PurgeEndGas};

const char* largerSentence(Outcome outcome) {
    switch (outcome) {
        case Outcome::Pass:
            return QT_TRANSLATE_NOOP("Words", "The pipework was found in order by every test that was made.");
        case Outcome::Fail:
            return QT_TRANSLATE_NOOP("Words", "The pipework was not found in order: see the findings.");
        case Outcome::LookAgain:
            return QT_TRANSLATE_NOOP("Words", "Something is to be looked at again: see the findings.");
        case Outcome::NoVerdict:
            break;
    }
    return QT_TRANSLATE_NOOP("Words", "No verdict: see the findings for what is missing.");
}

/// One stage of a test: how long, from what to what.
struct LargerStage {
    const char* name;
    Item took;
    std::optional<Item> start;
    std::optional<Item> end;
};
const std::array kStrengthStages{
    LargerStage{QT_TRANSLATE_NOOP("Words", "Settling"), Item::StrengthSettled, std::nullopt, std::nullopt},
    LargerStage{QT_TRANSLATE_NOOP("Words", "Strength test"), Item::StrengthTook, Item::StrengthStart,
                Item::StrengthEnd}};
const std::array kTightStages{LargerStage{QT_TRANSLATE_NOOP("Words", "Let-by"), Item::LargerLetByTook,
                                          Item::LargerLetByStart, Item::LargerLetByEnd},
                              LargerStage{QT_TRANSLATE_NOOP("Words", "Settling"), Item::LargerSettleTook,
                                          Item::LargerSettleStart, Item::LargerSettleEnd},
                              LargerStage{QT_TRANSLATE_NOOP("Words", "Tightness test"), Item::LargerTook,
                                          Item::LargerStart, Item::LargerEnd}};

/// A stage of which nothing was entered was not made, and has no row.
template <std::size_t N>
Table stageTable(const DocumentPage& page, const reg::SubjectRef& on,
                 const std::array<LargerStage, N>& stages) {
    Table table;
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Stage")), Align::Left, 2.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Lasted")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "At the start")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "At the end")), Align::Right, 1.0}};
    bool holes = false;
    for (const auto& stage : stages) {
        std::vector<std::string> row{page.text(stage.name)};
        bool any = false;
        for (const auto& item : {std::optional(stage.took), stage.start, stage.end}) {
            const bool there = item && page.has(on, *item);
            row.push_back(there ? utf8(page.value(on, *item)) : item ? absentCell() : std::string());
            any = any || there;
        }
        if (any) {
            holes = holes || std::find(row.begin(), row.end(), absentCell()) != row.end();
            table.rows.push_back(std::move(row));
        }
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    return table;
}

/// Each test under its own title: how it was made, then its stages.
template <std::size_t N, std::size_t M>
void addLargerTest(const DocumentPage& page, const char* title, const std::array<Item, N>& how,
                   const std::array<LargerStage, M>& stages, Blocks& blocks) {
    const auto on = reg::subject(page.file().installation.id);
    const auto before = blocks.size();
    addGiven(page, on, page.text(title), how, blocks);
    auto table = stageTable(page, on, stages);
    if (table.rows.empty()) {
        if (blocks.size() == before) {
            blocks.emplace_back(record::Paragraph{
                page.text(title), page.text(QT_TRANSLATE_NOOP("Words", "— not made")), false});
        }
        return;
    }
    if (blocks.size() == before) {
        table.title = page.text(title);
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace

void addLargerRecord(const DocumentPage& page, Blocks& blocks) {
    const auto on = reg::subject(page.file().installation.id);
    record::Headline head;
    head.outcome = record::outcomeOf(page.input().kind, page.file(), page.findings());
    head.sentence = page.text(largerSentence(head.outcome));
    blocks.emplace_back(std::move(head));
    blocks.emplace_back(whoAndWhere(page));
    auto what = gridOf(page, on, page.text(QT_TRANSLATE_NOOP("Words", "The pipework")), kLargerWhat);
    what.fields.insert(what.fields.begin(), page.field(QT_TRANSLATE_NOOP("Words", "Gas"),
                                                       page.words().gas(page.file().installation.gas),
                                                       QT_TRANSLATE_NOOP("Words", "not entered")));
    for (const Item item : kLargerWhatFurther) {
        page.addIfGiven(what, on, item);
    }
    blocks.emplace_back(std::move(what));
    addPipeSketch(page, {}, blocks);
    addLargerTest(page, QT_TRANSLATE_NOOP("Words", "Strength"), kStrengthHow, kStrengthStages, blocks);
    addLargerTest(page, QT_TRANSLATE_NOOP("Words", "Tightness"), kTightHow, kTightStages, blocks);
    addLargerTest(page, QT_TRANSLATE_NOOP("Words", "Purge"), kPurgeHow, std::array<LargerStage, 0>{}, blocks);
    addFindings(page, blocks);
    if (page.file().instrumentOf(page.visit(), Item::VisitGauge) != nullptr) {
        blocks.emplace_back(instrumentTable(page));
    }
}

}  // namespace hearth::ui::words
