// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;
using record::Align;
using record::FieldGrid;
using record::Table;
using reg::Item;

/// The four items of one stage, and its name.
struct Stage {
    const char* name;
    Item startedAt;
    Item endedAt;
    Item start;
    Item end;
};
constexpr Stage kLetBy{QT_TRANSLATE_NOOP("Words", "Let-by"), Item::LetByStartedAt, Item::LetByEndedAt,
                       Item::LetByStart, Item::LetByEnd};
constexpr Stage kSettle{QT_TRANSLATE_NOOP("Words", "Settling"), Item::SettleStartedAt, Item::SettleEndedAt,
                        Item::SettleStart, Item::SettleEnd};
constexpr Stage kTight{QT_TRANSLATE_NOOP("Words", "Tightness"), Item::TightStartedAt, Item::TightEndedAt,
                       Item::TightStart, Item::TightEnd};
constexpr Stage kSecond{QT_TRANSLATE_NOOP("Words", "Tightness, second display"), Item::TightStartedAt,
                        Item::TightEndedAt, Item::SecondDisplayStart, Item::SecondDisplayEnd};
constexpr Stage kRetest{QT_TRANSLATE_NOOP("Words", "Retest, appliances isolated"), Item::RetestStartedAt,
                        Item::RetestEndedAt, Item::RetestStart, Item::RetestEnd};

/// Decimals of a change between readings in different units, in mbar.
constexpr int kMixedUnitDecimals = 2;

/// End less start, exactly as typed where both have the same unit.
QString change(const DocumentPage& page, const reg::SubjectRef& on, const Stage& stage) {
    const reg::Entry* start = page.file().find(on, stage.start);
    const reg::Entry* end = page.file().find(on, stage.end);
    if (start == nullptr || end == nullptr) {
        return {};
    }
    const auto from = Decimal::parse(start->text);
    const auto to = Decimal::parse(end->text);
    if (!from || !to) {
        return {};
    }
    Figure figure{*to - *from, start->unit};
    if (start->unit != end->unit) {
        const quantity::PressureChange fell =
            quantity::GaugePressure(to->toDouble(), quantity::pressureUnit(end->unit)) -
            quantity::GaugePressure(from->toDouble(), quantity::pressureUnit(start->unit));
        figure = {Decimal::rounded(fell.in(quantity::kMillibar), kMixedUnitDecimals), UnitCode::Millibar};
    }
    const bool still = figure.value.mantissa() == 0;
    return qstring(quantity::show(figure, page.words().decimalMark(),
                                  still ? quantity::Sign::WhenNegative : quantity::Sign::Always));
}

std::string cellOf(const DocumentPage& page, const reg::SubjectRef& on, Item item) {
    return page.has(on, item) ? utf8(page.value(on, item)) : absentCell();
}

bool anyOf(const DocumentPage& page, const reg::SubjectRef& on, const Stage& stage) {
    return page.has(on, stage.start) || page.has(on, stage.end);
}

void addStage(const DocumentPage& page, const reg::SubjectRef& on, const Stage& stage, Table& table) {
    const QString changed = change(page, on, stage);
    table.rows.push_back({page.text(stage.name), cellOf(page, on, stage.startedAt),
                          cellOf(page, on, stage.endedAt), cellOf(page, on, stage.start),
                          cellOf(page, on, stage.end), changed.isEmpty() ? absentCell() : utf8(changed)});
}

bool retestWanted(const DocumentPage& page, const reg::SubjectRef& on) {
    const auto& findings = page.findings();
    return std::any_of(findings.begin(), findings.end(), [&](const judging::Judged& j) {
        return j.subject == on && j.finding.kind == rulebook::FindingKind::IsolatedRetest;
    });
}

/// Why a row of the table has dashes, or is not there.
std::string readingNote(const DocumentPage& page, const reg::SubjectRef& on, const Table& table) {
    QStringList notes;
    const bool holes = std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
        return std::find(row.begin(), row.end(), absentCell()) != row.end();
    });
    if (record::stoppedByLetBy(page.findings(), on)) {
        notes << page.say(
            QT_TRANSLATE_NOOP("Words", "—: not made, since let-by was found and stopped the test."));
    } else if (holes) {
        notes << page.say(QT_TRANSLATE_NOOP("Words", "—: not entered."));
    }
    if (!anyOf(page, on, kRetest) && !retestWanted(page, on)) {
        notes << page.say(QT_TRANSLATE_NOOP("Words", "No retest with appliances isolated was called for."));
    }
    return utf8(notes.join(u' '));
}

}  // namespace

FieldGrid testedGrid(const DocumentPage& page, const reg::Test& test) {
    const auto on = reg::subject(test.id);
    FieldGrid grid;
    grid.title = page.titled(page.say(QT_TRANSLATE_NOOP("Words", "What was tested")), test);
    for (const Item item : {Item::TestEdition, Item::TestWork, Item::TestExtent}) {
        grid.fields.push_back(page.captioned(on, item));
    }
    page.addIfGiven(grid, on, Item::TestPartDescription);
    grid.fields.push_back(page.captioned(on, Item::TestAppliances));
    page.addIfGiven(grid, on, Item::TestIsolatedWhat);
    page.addIfGiven(grid, on, Item::TestPipesShut);
    for (const Item item : {Item::TestPilots, Item::TestGauge, Item::TestGaugeZeroed}) {
        grid.fields.push_back(page.captioned(on, item));
    }
    page.addIfGiven(grid, on, Item::TestVolumeTyped);
    page.addIfGiven(grid, on, Item::LowPressureReason);
    page.addIfGiven(grid, on, Item::AssumedTemperatureChange);
    page.addIfGiven(grid, on, Item::TestVolumeOff);
    return grid;
}

Table readingTable(const DocumentPage& page, const reg::Test& test) {
    const auto on = reg::subject(test.id);
    Table table;
    table.title = page.titled(page.say(QT_TRANSLATE_NOOP("Words", "Readings as taken")), test);
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Stage")), Align::Left, 2.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "From (time)")), Align::Left, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "To (time)")), Align::Left, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Start")), Align::Right, 1.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "End")), Align::Right, 1.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Change")), Align::Right, 1.2}};
    for (const auto& stage : {kLetBy, kSettle, kTight}) {
        addStage(page, on, stage, table);
    }
    if (anyOf(page, on, kSecond)) {
        addStage(page, on, kSecond, table);
    }
    if (anyOf(page, on, kRetest) || retestWanted(page, on)) {
        addStage(page, on, kRetest, table);
    }
    table.note = readingNote(page, on, table);
    return table;
}

FieldGrid beforeGrid(const DocumentPage& page) {
    FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "Smell and safe to touch"));
    for (const Item item :
         {Item::SmellOnArrival, Item::SafeToTouch, Item::OpenEnds, Item::VisualInspection}) {
        grid.fields.push_back(page.captioned(page.visit(), item));
    }
    page.addIfGiven(grid, page.visit(), Item::VisualNotes);
    for (const auto& test : page.tests()) {
        auto smell = page.captioned(reg::subject(test.id), Item::TestSmell);
        smell.caption = page.titled(recordCaption(page.words(), Item::TestSmell), test);
        grid.fields.push_back(smell);
    }
    return grid;
}

FieldGrid purgeGrid(const DocumentPage& page, const reg::Test& test) {
    const auto on = reg::subject(test.id);
    FieldGrid grid;
    grid.title = page.titled(page.say(QT_TRANSLATE_NOOP("Words", "Purge")), test);
    grid.columns = 4;
    grid.fields.push_back(page.captioned(on, Item::PurgeDone));
    const std::array how{Item::PurgeMethod, Item::PurgeVolumePassed, Item::PurgeSteadyFlame};
    const bool anyHow =
        std::any_of(how.begin(), how.end(), [&](const Item item) { return page.has(on, item); });
    if (!anyHow && page.file().choiceOf(on, Item::PurgeDone) != reg::choice::kYes) {
        grid.fields.push_back(
            page.absentTogether(QT_TRANSLATE_NOOP("Words", "Method, volume, flame"), on, Item::PurgeMethod));
        return grid;
    }
    for (const Item item : how) {
        grid.fields.push_back(page.captioned(on, item));
    }
    return grid;
}

FieldGrid restoreGrid(const DocumentPage& page, const reg::Test& test) {
    const auto on = reg::subject(test.id);
    FieldGrid grid;
    grid.title = page.titled(page.say(QT_TRANSLATE_NOOP("Words", "Joints and pressures")), test);
    for (const Item item : {Item::TestPointProved, Item::DisturbedJointsProved, Item::FluidWiped,
                            Item::StandingPressure, Item::WorkingPressure}) {
        grid.fields.push_back(page.captioned(on, item));
    }
    page.addIfGiven(grid, on, Item::WorkingLoad);
    return grid;
}

}  // namespace hearth::ui::words
