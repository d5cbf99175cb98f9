// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/appliance_kinds.h"
#include "ui/words/document_parts.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using record::Align;
using record::CaptionedValue;
using record::Statement;
using record::Table;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
namespace choice = reg::choice;

std::string cellText(const QString& text) {
    return text.isEmpty() ? absentCell() : utf8(text);
}

QString kindOf(const DocumentPage& page, const reg::Appliance& appliance) {
    return appliance.kind.empty() ? page.say(QT_TRANSLATE_NOOP("Words", "appliance, kind not entered"))
                                  : page.words().choice(Item::ApplianceKind, appliance.kind);
}

QString makeOf(const reg::Appliance& appliance) {
    QStringList parts;
    for (const auto* part : {&appliance.make, &appliance.model}) {
        if (!part->empty()) {
            parts << qstring(*part);
        }
    }
    return parts.join(u' ');
}

QString flueOf(const DocumentPage& page, const reg::Appliance& appliance) {
    return appliance.flue == reg::FlueType::NotSaid
               ? QString()
               : page.words().choice(Item::ApplianceFlue, std::string(reg::codeOf(appliance.flue)));
}

QString ownerOf(const DocumentPage& page, reg::Owner owner) {
    switch (owner) {
        case reg::Owner::Landlord:
            return page.say(QT_TRANSLATE_NOOP("Words", "landlord’s"));
        case reg::Owner::Tenant:
            return page.say(QT_TRANSLATE_NOOP("Words", "tenant’s own"));
        case reg::Owner::HomeOwner:
            return page.say(QT_TRANSLATE_NOOP("Words", "home owner’s"));
        case reg::Owner::NotSaid:
            break;
    }
    return {};
}

QString doneWith(const DocumentPage& page, const reg::SubjectRef& on) {
    const QString done = page.value(on, Item::ApplianceInspected);
    const QString why = page.value(on, Item::NotInspectedWhy);
    return why.isEmpty() ? done : done + QStringLiteral(": ") + why;
}

bool isSeen(const DocumentPage& page, const reg::SubjectRef& on, std::string_view how) {
    return page.file().choiceOf(on, Item::ApplianceInspected) == how;
}

/// The measured value of a finding on the appliance: the ratio that was worked out from CO and CO2.
QString measuredOf(const DocumentPage& page, const reg::SubjectRef& on, FindingKind kind) {
    for (const auto& judged : page.findings()) {
        if (judged.subject == on && judged.finding.kind == kind && judged.finding.measured) {
            return page.words().figure(*judged.finding.measured);
        }
    }
    return {};
}

/// One line under the headline.
QString summaryOf(const DocumentPage& page, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    QStringList parts{doneWith(page, on)};
    if (parts.front().isEmpty()) {
        parts.front() = page.say(QT_TRANSLATE_NOOP("Words", "nothing entered"));
    }
    const auto defects = page.file().choiceOf(on, Item::DefectsFound);
    if (defects == choice::kFound) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "a safety defect was found"));
    } else if (defects == choice::kNoneFound) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "no safety defect was found"));
    }
    const auto safe = page.file().choiceOf(on, Item::SafeToUse);
    if (safe == choice::kYes) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "declared safe to use"));
    } else if (safe == choice::kNo) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "declared not safe to use"));
    }
    return applianceName(page, appliance) + QStringLiteral(": ") + parts.join(QStringLiteral(", ")) + u'.';
}

/// What keeps an appliance's readings from a pass, by name: "Burner pressure: look again".
QString openFindings(const DocumentPage& page, const reg::Appliance& appliance) {
    QStringList open;
    for (const auto& judged : page.findings()) {
        if (judged.subject == reg::subject(appliance.id) && judged.finding.outcome != Outcome::Pass) {
            open << page.words().findingTitle(judged.finding.kind) + QStringLiteral(": ") +
                        page.words().outcome(judged.finding.outcome);
        }
    }
    return open.join(QStringLiteral("; "));
}

const char* headSentenceOf(const DocumentPage& page, Outcome outcome) {
    const auto appliances = appliancesOf(page);
    const bool unsafe = std::any_of(appliances.begin(), appliances.end(), [&](const reg::Appliance& one) {
        return page.file().choiceOf(reg::subject(one.id), Item::SafeToUse) == choice::kNo;
    });
    switch (outcome) {
        case Outcome::Pass:
            return QT_TRANSLATE_NOOP("Words", "Every appliance was inspected and declared safe to use.");
        case Outcome::Fail:
            return unsafe ? QT_TRANSLATE_NOOP("Words", "Not every appliance is safe to use: see below.")
                          : QT_TRANSLATE_NOOP("Words", "A reading lies beyond its limit: see the findings.");
        case Outcome::LookAgain:
            return QT_TRANSLATE_NOOP(
                "Words",
                "Declared safe to use where inspected, but something is to be looked at: see below.");
        case Outcome::NoVerdict:
            break;
    }
    return QT_TRANSLATE_NOOP("Words", "No appliance was inspected.");
}

Statement defectStatement(const DocumentPage& page, const reg::SubjectRef& on) {
    Statement statement;
    statement.caption = numbered(page, "(v)", QT_TRANSLATE_NOOP("Words", "Safety defects"));
    if (page.file().choiceOf(on, Item::DefectsFound) == choice::kFound) {
        statement.text = page.has(on, Item::DefectsText)
                             ? utf8(page.value(on, Item::DefectsText))
                             : page.text(QT_TRANSLATE_NOOP("Words", "found; which was not entered"));
    } else {
        const QString said = page.value(on, Item::DefectsFound);
        statement.text = said.isEmpty() ? page.text(QT_TRANSLATE_NOOP("Words", "— not entered")) : utf8(said);
    }
    return statement;
}

Statement actionStatement(const DocumentPage& page, const reg::SubjectRef& on) {
    Statement statement;
    statement.caption = numbered(page, "(vi)", QT_TRANSLATE_NOOP("Words", "Remedial action taken"));
    const QString action = page.value(on, Item::ActionTaken);
    const bool none = page.file().choiceOf(on, Item::DefectsFound) == choice::kNoneFound;
    statement.text = !action.isEmpty() ? utf8(action)
                     : none            ? page.text(QT_TRANSLATE_NOOP("Words", "none needed"))
                                       : page.text(QT_TRANSLATE_NOOP("Words", "— not entered"));
    QStringList when;
    for (const auto item : {Item::ActionOn, Item::ActionBy}) {
        if (page.has(on, item)) {
            when << page.value(on, item);
        }
    }
    if (!when.isEmpty()) {
        statement.details.push_back(utf8(when.join(QStringLiteral(", "))));
    }
    return statement;
}

/// The engineer's own words, and what they rest on.
Statement safeStatement(const DocumentPage& page, const reg::SubjectRef& on) {
    Statement statement;
    statement.caption = page.text(QT_TRANSLATE_NOOP("Words", "Declared by the engineer"));
    const auto safe = page.file().choiceOf(on, Item::SafeToUse);
    const bool looked = isSeen(page, on, choice::kVisualOnly);
    if (safe == choice::kNo) {
        statement.outcome = Outcome::Fail;
        statement.text = page.text(QT_TRANSLATE_NOOP("Words", "NOT safe to use"));
    } else if (safe == choice::kYes) {
        statement.outcome = looked ? Outcome::LookAgain : Outcome::Pass;
        statement.text = looked ? page.text(QT_TRANSLATE_NOOP("Words", "Safe to use, by a visual check only"))
                                : page.text(QT_TRANSLATE_NOOP("Words", "Safe to use"));
    } else {
        statement.outcome = Outcome::NoVerdict;
        statement.text = page.text(QT_TRANSLATE_NOOP("Words", "— not declared"));
    }
    if (reg::isCapped(page.file(), on)) {
        statement.details.push_back(page.text(QT_TRANSLATE_NOOP(
            "Words", "Decommissioned and capped: it cannot be used, and nothing was measured of it.")));
    }
    if (looked) {
        statement.details.push_back(page.text(QT_TRANSLATE_NOOP(
            "Words", "Looked at for obvious defects only: nothing was tested or measured.")));
    }
    return statement;
}

struct MatterRow {
    const char* name;
    Item item;
};
constexpr std::array kMatterRows{
    MatterRow{QT_TRANSLATE_NOOP("Words", "(a) effectiveness of the flue"), Item::ExaminedFlue},
    MatterRow{QT_TRANSLATE_NOOP("Words", "(b) supply of combustion air"), Item::ExaminedAir},
    MatterRow{QT_TRANSLATE_NOOP("Words", "(c) operating pressure"), Item::ExaminedPressure},
    MatterRow{QT_TRANSLATE_NOOP("Words", "(c) heat input"), Item::ExaminedHeatInput},
    MatterRow{QT_TRANSLATE_NOOP("Words", "(ca) combustion performance, in place of (c)"),
              Item::ExaminedCombustion},
    MatterRow{QT_TRANSLATE_NOOP("Words", "(d) operation, so that it works safely"), Item::ExaminedOperation},
};

/// Whether it was examined, and apart from that its result.
std::pair<QString, QString> examinedAndResult(const DocumentPage& page, const reg::SubjectRef& on,
                                              Item item) {
    const auto code = page.file().choiceOf(on, item);
    const QString yes = page.say(QT_TRANSLATE_NOOP("Words", "yes"));
    if (isSeen(page, on, choice::kVisualOnly)) {
        return {page.say(QT_TRANSLATE_NOOP("Words", "visual check only")), {}};
    }
    if (code == choice::kGood || code == choice::kInOrder) {
        return {yes, page.say(QT_TRANSLATE_NOOP("Words", "in order"))};
    }
    if (code == choice::kWrong) {
        return {yes, page.say(QT_TRANSLATE_NOOP("Words", "not in order"))};
    }
    if (code == choice::kLookAgain) {
        return {yes, page.say(QT_TRANSLATE_NOOP("Words", "to be looked at again"))};
    }
    if (code == choice::kNotFitted) {
        return {yes, page.say(QT_TRANSLATE_NOOP("Words", "there is none"))};
    }
    return {page.say(QT_TRANSLATE_NOOP("Words", "no")), {}};
}

/// What was read for it.
QString readingFor(const DocumentPage& page, const reg::SubjectRef& on, Item item) {
    QStringList parts;
    const auto add = [&](Item reading) {
        if (page.has(on, reading) && page.file().choiceOf(on, reading) != choice::kNotApplicable) {
            parts << recordCaption(page.words(), reading) + u' ' + page.value(on, reading);
        }
    };
    switch (item) {
        case Item::ExaminedFlue:
            add(Item::FlueFlowTest);
            add(Item::SpillageTest);
            break;
        case Item::ExaminedAir:
            add(Item::VentilationSeen);
            break;
        case Item::ExaminedPressure:
            add(Item::BurnerPressure);
            add(Item::InletPressure);
            break;
        case Item::ExaminedHeatInput:
            add(Item::HeatInputRead);
            add(Item::GasRateRead);
            break;
        case Item::ExaminedCombustion:
            if (page.has(on, Item::WhyNeither)) {
                parts << page.value(on, Item::WhyNeither);
            }
            if (page.has(on, Item::WhyNeitherTaken)) {
                parts << page.value(on, Item::WhyNeitherTaken);
            }
            break;
        default:
            add(Item::SafetyDevices);
            add(Item::FlameSeen);
            break;
    }
    return parts.join(QStringLiteral("; "));
}

/// The explicit confirmation that item (vii) asks for.
QString confirmation(const DocumentPage& page, const reg::SubjectRef& on) {
    if (isSeen(page, on, choice::kVisualOnly)) {
        return page.say(QT_TRANSLATE_NOOP("Words", "Visual check only: these matters were not examined."));
    }
    const auto covered = page.file().choiceOf(on, Item::CheckCovered);
    if (covered == choice::kYes) {
        return page.say(QT_TRANSLATE_NOOP(
            "Words",
            "Confirmed by the engineer: the check included the matters of regulation 26(9)(a) to (d)."));
    }
    return covered == choice::kNo
               ? page.say(QT_TRANSLATE_NOOP("Words",
                                            "The engineer says: the check did not include all matters "
                                            "of regulation 26(9)(a) to (d)."))
               : page.say(QT_TRANSLATE_NOOP("Words", "Not confirmed by the engineer."));
}

struct RateRow {
    const char* name;
    Item co;
    Item co2;
    Item o2;
    std::optional<FindingKind> ratio;
};

void addRate(const DocumentPage& page, const reg::SubjectRef& on, const RateRow& rate, Table& table) {
    if (!page.has(on, rate.co) && !page.has(on, rate.co2)) {
        return;
    }
    table.rows.push_back({page.text(rate.name), cellText(page.value(on, rate.co)),
                          cellText(page.value(on, rate.co2)), cellText(page.value(on, rate.o2)),
                          cellText(rate.ratio ? measuredOf(page, on, *rate.ratio) : QString())});
}

Table combustionTable(const DocumentPage& page, const reg::SubjectRef& on) {
    Table table;
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Combustion")), Align::Left, 2.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO₂")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "O₂")), Align::Right, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO/CO₂ ratio, worked out")), Align::Right, 1.8}};
    addRate(page, on,
            {QT_TRANSLATE_NOOP("Words", "before, highest rate"), Item::BeforeCoHigh, Item::BeforeCo2High,
             Item::FlueO2High, std::nullopt},
            table);
    addRate(page, on,
            {QT_TRANSLATE_NOOP("Words", "before, lowest rate"), Item::BeforeCoLow, Item::BeforeCo2Low,
             Item::FlueO2Low, std::nullopt},
            table);
    for (auto& row : table.rows) {
        row[3] = absentCell();  // oxygen was read after it was adjusted
    }
    addRate(page, on,
            {QT_TRANSLATE_NOOP("Words", "highest rate"), Item::FlueCoHigh, Item::FlueCo2High,
             Item::FlueO2High, FindingKind::CombustionRatioMaximum},
            table);
    addRate(page, on,
            {QT_TRANSLATE_NOOP("Words", "lowest rate"), Item::FlueCoLow, Item::FlueCo2Low, Item::FlueO2Low,
             FindingKind::CombustionRatioMinimum},
            table);
    const bool holes = std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
        return std::find(row.begin(), row.end(), absentCell()) != row.end();
    });
    table.note =
        holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not read, or not worked out.")) : std::string();
    return table;
}

}  // namespace

std::string numbered(const DocumentPage& page, const char* number, const char* caption) {
    return page.input().kind == record::RecordKind::LandlordSafety
               ? std::string(number) + " " + page.text(caption)
               : page.text(caption);
}

std::vector<reg::Appliance> appliancesOf(const DocumentPage& page) {
    return record::appliancesFor(page.input().kind, page.file());
}

QString applianceName(const DocumentPage& page, const reg::Appliance& appliance) {
    const QString kind = kindOf(page, appliance);
    const auto all = appliancesOf(page);
    const auto at = std::find_if(all.begin(), all.end(),
                                 [&](const reg::Appliance& one) { return one.id == appliance.id; });
    const QString number =
        all.size() > 1 ? QString::number(at - all.begin() + 1) + QStringLiteral(" · ") : QString();
    return appliance.place.empty() ? number + kind
                                   : number + kind + QStringLiteral(" (") + qstring(appliance.place) + u')';
}

record::FieldGrid gridOf(const DocumentPage& page, const reg::SubjectRef& on, const std::string& title,
                         std::span<const Item> items) {
    record::FieldGrid grid;
    grid.title = title;
    for (const Item item : items) {
        grid.fields.push_back(page.captioned(on, item));
    }
    return grid;
}

void addGiven(const DocumentPage& page, const reg::SubjectRef& on, const std::string& title,
              std::span<const Item> items, Blocks& blocks) {
    record::FieldGrid grid;
    grid.title = title;
    for (const Item item : items) {
        page.addIfGiven(grid, on, item);
    }
    if (!grid.fields.empty()) {
        blocks.emplace_back(std::move(grid));
    }
}

record::Headline applianceHeadline(const DocumentPage& page) {
    record::Headline head;
    head.outcome = record::outcomeOf(page.input().kind, page.file(), page.findings());
    head.sentence = page.text(headSentenceOf(page, head.outcome));
    for (const auto& appliance : appliancesOf(page)) {
        const QString open = openFindings(page, appliance);
        head.details.push_back(
            utf8(summaryOf(page, appliance) + (open.isEmpty() ? QString() : u' ' + open + u'.')));
    }
    return head;
}

Table applianceTable(const DocumentPage& page) {
    Table table;
    table.title = numbered(page, "(iv)", QT_TRANSLATE_NOOP("Words", "Appliances and flues"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "No.")), Align::Right, 0.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Appliance")), Align::Left, 1.7},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Make and model")), Align::Left, 1.7},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Where")), Align::Left, 1.5},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Flue")), Align::Left, 0.9},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Whose")), Align::Left, 1.1},
                     {page.text(QT_TRANSLATE_NOOP("Words", "What was done")), Align::Left, 1.8}};
    bool holes = false;
    int number = 0;
    for (const auto& one : appliancesOf(page)) {
        table.rows.push_back({std::to_string(++number), utf8(kindOf(page, one)), cellText(makeOf(one)),
                              cellText(qstring(one.place)), cellText(flueOf(page, one)),
                              cellText(ownerOf(page, one.owner)),
                              cellText(doneWith(page, reg::subject(one.id)))});
        const auto& row = table.rows.back();
        holes = holes || std::find(row.begin(), row.end(), absentCell()) != row.end();
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    return table;
}

record::FieldGrid applianceGrid(const DocumentPage& page, const reg::Appliance& appliance, Telling told) {
    constexpr const char* kNotEntered = QT_TRANSLATE_NOOP("Words", "not entered");
    const auto& input = appliance.netInput.text.empty() ? appliance.grossInput : appliance.netInput;
    QString plate = page.typed(input);
    if (!plate.isEmpty()) {
        plate += u' ' + page.words().choice(
                            Item::ApplianceInputBasis,
                            std::string(appliance.netInput.text.empty() ? choice::kGross : choice::kNet));
    }
    record::FieldGrid grid;
    grid.title = utf8(applianceName(page, appliance));
    if (told == Telling::InFull) {
        grid.fields.push_back(
            page.field(QT_TRANSLATE_NOOP("Words", "Make and model"), makeOf(appliance), kNotEntered));
        grid.fields.push_back(
            page.field(QT_TRANSLATE_NOOP("Words", "Flue"), flueOf(page, appliance), kNotEntered));
        grid.fields.push_back(page.field(QT_TRANSLATE_NOOP("Words", "What was done"),
                                         doneWith(page, reg::subject(appliance.id)), kNotEntered));
    }
    grid.fields.push_back(
        page.field(QT_TRANSLATE_NOOP("Words", "Serial number"), qstring(appliance.serial), kNotEntered));
    if (!appliance.gcNumber.empty()) {
        grid.fields.push_back(
            page.field(QT_TRANSLATE_NOOP("Words", "GC number"), qstring(appliance.gcNumber), kNotEntered));
    }
    grid.fields.push_back(page.field(QT_TRANSLATE_NOOP("Words", "Input on the plate"), plate, kNotEntered));
    grid.fields.push_back(
        page.field(QT_TRANSLATE_NOOP("Words", "Gas"), page.words().gas(appliance.gas), kNotEntered));
    return grid;
}

record::Statements declarations(const DocumentPage& page, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    record::Statements said{{}, {defectStatement(page, on), actionStatement(page, on)}};
    // Of what is noted beside the gas work nothing is declared, unless its engineer did so all the same.
    if (reg::isGasAppliance(appliance.kind) || page.has(on, Item::SafeToUse)) {
        said.statements.push_back(safeStatement(page, on));
    }
    return said;
}

Table matterTable(const DocumentPage& page, const reg::Appliance& appliance) {
    const auto on = reg::subject(appliance.id);
    Table table;
    table.columns = {{numbered(page, "(vii)", QT_TRANSLATE_NOOP("Words", "Matters of regulation 26(9)")),
                      Align::Left, 2.6},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Examined")), Align::Left, 1.5},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Result")), Align::Left, 1.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Seen and read")), Align::Left, 2.9}};
    for (const auto& matter : kMatterRows) {
        const bool instead = matter.item == Item::ExaminedCombustion;
        if (instead && !page.has(on, matter.item)) {
            continue;
        }
        const auto [examined, result] = examinedAndResult(page, on, matter.item);
        table.rows.push_back({page.text(matter.name), utf8(examined), cellText(result),
                              cellText(readingFor(page, on, matter.item))});
    }
    const QString dash = page.say(QT_TRANSLATE_NOOP("Words", "—: nothing was read for it."));
    table.note = utf8(confirmation(page, on) + u' ' + dash);
    return table;
}

void addReadings(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    auto table = combustionTable(page, reg::subject(appliance.id));
    if (!table.rows.empty()) {
        blocks.emplace_back(std::move(table));
        addCombustionPlots(page, appliance, blocks);
    }
}

}  // namespace hearth::ui::words
