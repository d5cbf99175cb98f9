// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"
#include "core/register/appliance_kinds.h"
#include "ui/words/document_parts.h"
#include "ui/words/kept_words.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::words {

namespace {

using record::Align;
using record::CaptionedValue;
using record::FieldGrid;
using record::Table;
using reg::Item;
namespace choice = reg::choice;

constexpr std::array kLookedAt{Item::LocationSeen,    Item::StabilitySeen, Item::DistressSeen,
                               Item::FlueSeen,        Item::TerminalSeen,  Item::FlueHidden,
                               Item::VentilationSeen, Item::FlueFlowTest,  Item::SpillageTest,
                               Item::SafetyDevices,   Item::FlameSeen,     Item::ServicedToday};
constexpr std::array kLookedAtFurther{Item::FlueNotSeen,    Item::FlueRoute,      Item::ConnectionSeen,
                                      Item::ClearancesSeen, Item::SpillageFans,   Item::CaseSealSeen,
                                      Item::CondensateSeen, Item::PressureRelief, Item::FlueRatioPrinted};
constexpr std::array kSite{Item::GasOnArrival, Item::SmellOnArrival, Item::VisualInspection};
constexpr std::array kSiteFurther{Item::MeterNotice, Item::MainBonding, Item::VisualNotes, Item::StillToDo};

bool isLandlords(const DocumentPage& page) {
    return page.input().kind == record::RecordKind::LandlordSafety;
}

QString dateOr(const DocumentPage& page, const std::optional<calendar::Date>& date) {
    return date ? page.words().shortDate(*date) : QString();
}

/// "1 June 2027", or both dates where the texts leave it open.
QString dueText(const DocumentPage& page, const calendar::Deadline& due) {
    return due.latest ? page.say(QT_TRANSLATE_NOOP("Words", "%1 or %2: keep the first"),
                                 {page.words().shortDate(due.date), page.words().shortDate(*due.latest)})
                      : page.words().shortDate(due.date);
}

/// Where what is kept and what was entered differ both stand there, and nobody has chosen between them.
QString nextText(const DocumentPage& page, const record::CheckDates& dates) {
    const QString kept = dueText(page, *dates.next);
    return dates.nextByEntry
               ? page.say(
                     QT_TRANSLATE_NOOP("Words",
                                       "%1 by the checks kept here, %2 by the last check as entered: look "
                                       "again, keep the earlier"),
                     {kept, dueText(page, *dates.nextByEntry)})
               : kept;
}

const char* noDueReason(const reg::Appliance& appliance) {
    if (!reg::isGasAppliance(appliance.kind)) {
        return QT_TRANSLATE_NOOP("Words", "noted only");
    }
    return appliance.owner == reg::Owner::Tenant ? QT_TRANSLATE_NOOP("Words", "tenant’s own")
                                                 : QT_TRANSLATE_NOOP("Words", "not known");
}

/// The dates of each appliance: its check, the deadline that it counts for, the next.
Table dateTable(const DocumentPage& page) {
    Table table;
    table.title = numbered(page, "(i)", QT_TRANSLATE_NOOP("Words", "Dates of the check"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Appliance and its flue")), Align::Left, 2.6},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Checked on")), Align::Left, 1.4},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Was due by")), Align::Left, 1.4},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Deadline kept")), Align::Left, 1.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Next check due by")), Align::Left, 2.2}};
    for (const auto& appliance : appliancesOf(page)) {
        const auto dates = record::checkDatesOf(page.file(), appliance, page.input().checks);
        const QString kept = !dates.checked || !dates.before ? QString()
                             : dates.keepsDeadline           ? page.say(QT_TRANSLATE_NOOP("Words", "yes"))
                                                   : page.say(QT_TRANSLATE_NOOP("Words", "no, anew"));
        const auto cell = [](const QString& text) { return text.isEmpty() ? absentCell() : utf8(text); };
        table.rows.push_back(
            {utf8(applianceName(page, appliance)),
             dates.checked ? utf8(page.words().shortDate(*dates.checked))
                           : page.text(QT_TRANSLATE_NOOP("Words", "— not checked")),
             cell(dateOr(page, dates.before)), cell(kept),
             dates.next ? utf8(nextText(page, dates)) : "— " + page.text(noDueReason(appliance))});
    }
    table.note = page.text(QT_TRANSLATE_NOOP(
        "Words",
        "—: not known here, or does not apply. A check in the two months that end with its deadline "
        "keeps the date (regulation 36A(1)); another starts twelve months anew."));
    return table;
}

/// By when whom a copy reaches, and how long the record is kept.
record::Paragraph duties(const DocumentPage& page) {
    std::optional<calendar::Date> copyBy;
    for (const auto& appliance : appliancesOf(page)) {
        const auto dates = record::checkDatesOf(page.file(), appliance, page.input().checks);
        if (dates.copyBy && (!copyBy || *dates.copyBy < *copyBy)) {
            copyBy = dates.copyBy;
        }
    }
    QStringList text;
    if (copyBy) {
        text << page.say(QT_TRANSLATE_NOOP("Words",
                                           "An existing tenant has a copy by %1, a new tenant before "
                                           "moving in (regulation 36(6))."),
                         {page.words().date(*copyBy)});
    }
    text << page.say(QT_TRANSLATE_NOOP(
        "Words",
        "The landlord keeps this record until two further checks of the same appliance or flue have "
        "been made, and two years at least."));
    return {page.text(QT_TRANSLATE_NOOP("Words", "Copies and keeping")), utf8(text.join(u' ')), false};
}

/// "(ii) Premises" and "(iii) Landlord" in the numbers of the regulation.
FieldGrid partiesGrid(const DocumentPage& page) {
    FieldGrid grid = whoAndWhere(page);
    if (!isLandlords(page)) {
        grid.fields.push_back(
            {page.text(QT_TRANSLATE_NOOP("Words", "Next check advised by")),
             {utf8(page.words().date(calendar::addMonths(page.file().visit.date, calendar::kCheckMonths)))},
             false});
        return grid;
    }
    grid.fields.push_back(page.field(QT_TRANSLATE_NOOP("Words", "(ix) Registration number"),
                                     qstring(page.file().firm.registrationNumber),
                                     QT_TRANSLATE_NOOP("Words", "not entered")));
    const std::string premises = page.text(QT_TRANSLATE_NOOP("Words", "Premises"));
    const bool landlord = page.file().holder(reg::RoleKind::Landlord) != nullptr;
    const std::string holder =
        utf8(page.words().role(landlord ? reg::RoleKind::Landlord : reg::RoleKind::Agent));
    for (auto& field : grid.fields) {
        if (field.caption == premises) {
            field.caption = "(ii) " + field.caption;
        } else if (field.caption == holder) {
            field.caption = "(iii) " + field.caption;
        }
    }
    return grid;
}

void addAppliance(const DocumentPage& page, const reg::Appliance& appliance, Blocks& blocks) {
    const auto on = reg::subject(appliance.id);
    blocks.emplace_back(applianceGrid(page, appliance, Telling::BesideTable));
    if (page.file().choiceOf(on, Item::ApplianceInspected) == choice::kNotInspected) {
        return;
    }
    blocks.emplace_back(declarations(page, appliance));
    addOfItsKind(page, appliance, blocks);
    if (isBurning(page, appliance)) {
        blocks.emplace_back(matterTable(page, appliance));
    }
    addReadings(page, appliance, blocks);
    if (page.file().choiceOf(on, Item::ApplianceInspected) == choice::kInspected) {
        auto grid = gridOf(page, on, {}, thoseOfKind(page, on, kLookedAt));
        for (const Item item : kLookedAtFurther) {
            page.addIfGiven(grid, on, item);
        }
        if (!grid.fields.empty()) {
            blocks.emplace_back(std::move(grid));
        }
    } else {
        addGiven(page, on, {}, kLookedAt, blocks);
    }
}

}  // namespace

void addFindings(const DocumentPage& page, Blocks& blocks) {
    auto site = findingList(page, [](const judging::Judged& judged) {
        return judged.subject.kind != reg::SubjectKind::Appliance;
    });
    if (!site.findings.empty()) {
        blocks.emplace_back(std::move(site));
    }
    for (const auto& appliance : appliancesOf(page)) {
        auto own = findingList(page, [&](const judging::Judged& judged) {
            return judged.subject == reg::subject(appliance.id);
        });
        if (!own.findings.empty()) {
            own.title =
                page.text(QT_TRANSLATE_NOOP("Words", "Findings: %1"), {applianceName(page, appliance)});
            blocks.emplace_back(std::move(own));
        }
    }
}

void addRooms(const DocumentPage& page, Blocks& blocks) {
    const auto rooms = page.file().rooms();
    if (rooms.empty()) {
        return;
    }
    std::vector<Item> items{Item::RoomName, Item::RoomCoAlarm, Item::RoomCoAlarmExpiry, Item::RoomSmokeAlarm,
                            Item::RoomSmokeAlarmExpiry};
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Alarms"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Room")), Align::Left, 1.4},
                     {page.text(QT_TRANSLATE_NOOP("Words", "CO alarm")), Align::Left, 1.9},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Replace by")), Align::Left, 1.5},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Smoke alarm")), Align::Left, 1.9},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Replace by")), Align::Left, 1.5}};
    const bool remarked = std::any_of(rooms.begin(), rooms.end(), [&](const reg::SubjectRef& room) {
        return page.has(room, Item::RoomAlarmNotes);
    });
    if (remarked) {
        items.push_back(Item::RoomAlarmNotes);
        table.columns.push_back({page.text(QT_TRANSLATE_NOOP("Words", "Remarks")), Align::Left, 1.8});
    }
    bool holes = false;
    for (const auto& room : rooms) {
        std::vector<std::string> row;
        for (const auto item : items) {
            row.push_back(page.has(room, item) ? utf8(page.value(room, item)) : absentCell());
            holes = holes || row.back() == absentCell();
        }
        table.rows.push_back(std::move(row));
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    blocks.emplace_back(std::move(table));
}

void addSituations(const DocumentPage& page, Blocks& blocks) {
    if (page.file().situations.empty()) {
        return;
    }
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Unsafe situations, by the engineer’s decision"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Class")), Align::Left, 1.5},
                     {page.text(QT_TRANSLATE_NOOP("Words", "What is wrong")), Align::Left, 2.6},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Where it is")), Align::Left, 1.6},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Made safe by")), Align::Left, 1.8}};
    for (const auto& situation : page.file().situations) {
        const auto on = reg::subject(situation.id);
        const auto cell = [](const QString& text) { return text.isEmpty() ? absentCell() : utf8(text); };
        table.rows.push_back({cell(danger(page.words(), situation.danger)), cell(qstring(situation.what)),
                              cell(qstring(situation.where)), cell(page.value(on, Item::SituationMadeSafe))});
    }
    const bool holes = std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
        return std::find(row.begin(), row.end(), absentCell()) != row.end();
    });
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    blocks.emplace_back(std::move(table));
}

void addSafetyRecord(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(applianceHeadline(page));
    addWhatToDo(page, blocks);
    if (isLandlords(page)) {
        blocks.emplace_back(dateTable(page));
    }
    blocks.emplace_back(partiesGrid(page));
    blocks.emplace_back(applianceTable(page));
    for (const auto& appliance : appliancesOf(page)) {
        addAppliance(page, appliance, blocks);
    }
    addSituations(page, blocks);
    addRooms(page, blocks);
    auto site =
        gridOf(page, page.visit(), page.text(QT_TRANSLATE_NOOP("Words", "Meter and pipework")), kSite);
    for (const Item item : kSiteFurther) {
        page.addIfGiven(site, page.visit(), item);
    }
    blocks.emplace_back(std::move(site));
    addPipeSketch(page, {}, blocks);
    blocks.emplace_back(instrumentTable(page));
    for (const auto& test : page.tests()) {
        blocks.emplace_back(readingTable(page, test));
    }
    addFindings(page, blocks);
    if (isLandlords(page)) {
        blocks.emplace_back(duties(page));
    }
}

}  // namespace hearth::ui::words
