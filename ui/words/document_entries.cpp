// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/notices.h"
#include "ui/words/document_parts.h"

#include <QStringList>

#include <algorithm>
#include <array>

/// Entries of the firm's books: what is to be reported, what was notified, the instruments and their dates.
namespace hearth::ui::words {

namespace {

using record::Align;
using record::Statement;
using record::Table;
using reg::Item;
using rulebook::Outcome;
namespace choice = reg::choice;

/// An answer in large ink; absent it says so and asks to be looked at again.
Statement answered(const DocumentPage& page, const char* caption, const reg::SubjectRef& on, Item item,
                   const char* absent) {
    Statement statement;
    statement.caption = page.text(caption);
    if (page.has(on, item)) {
        statement.text = utf8(page.value(on, item));
    } else {
        statement.text = page.text(absent);
        statement.outcome = Outcome::LookAgain;
    }
    return statement;
}

bool isReported(const DocumentPage& page, const reg::Situation& situation) {
    return page.has(reg::subject(situation.id), Item::SituationReportedOn);
}

std::vector<reg::Situation> reportables(const DocumentPage& page) {
    std::vector<reg::Situation> found;
    for (const auto& situation : page.file().situations) {
        if (page.file().choiceOf(reg::subject(situation.id), Item::SituationReportable) != choice::kNo) {
            found.push_back(situation);
        }
    }
    return found;
}

record::Headline reportableHeadline(const DocumentPage& page) {
    const auto all = reportables(page);
    const bool done = !all.empty() && std::all_of(all.begin(), all.end(), [&](const reg::Situation& one) {
        return isReported(page, one);
    });
    record::Headline head;
    head.outcome = record::outcomeOf(page.input().kind, page.file(), page.findings());
    head.sentence = done ? page.text(QT_TRANSLATE_NOOP("Words", "A dangerous gas fitting, reported to HSE."))
                         : page.text(QT_TRANSLATE_NOOP(
                               "Words", "A dangerous gas fitting: to be reported to HSE within 14 days."));
    return head;
}

record::Statements reportablePart(const DocumentPage& page, const reg::Situation& situation) {
    constexpr const char* kNotEntered = QT_TRANSLATE_NOOP("Words", "— not entered");
    const auto on = reg::subject(situation.id);
    record::Statements part;
    part.title = situation.where.empty()
                     ? page.text(QT_TRANSLATE_NOOP("Words", "The fitting"))
                     : page.text(QT_TRANSLATE_NOOP("Words", "The fitting: %1"), {qstring(situation.where)});
    Statement what;
    what.caption = page.text(QT_TRANSLATE_NOOP("Words", "What is wrong"));
    what.text = situation.what.empty() ? page.text(kNotEntered) : situation.what;
    what.details = fittingDetails(page, situation);
    part.statements.push_back(std::move(what));
    part.statements.push_back(answered(page, QT_TRANSLATE_NOOP("Words", "Because of its"), on,
                                       Item::SituationReportWhy, kNotEntered));
    part.statements.push_back(reportClock(page, situation));
    auto reported = answered(page, QT_TRANSLATE_NOOP("Words", "Reported on"), on, Item::SituationReportedOn,
                             QT_TRANSLATE_NOOP("Words", "not yet reported when this was issued"));
    if (page.has(on, Item::SituationReportReference)) {
        reported.details.push_back(page.text(QT_TRANSLATE_NOOP("Words", "Reference of the report: %1"),
                                             {page.value(on, Item::SituationReportReference)}));
    }
    part.statements.push_back(std::move(reported));
    part.statements.push_back(answered(page, QT_TRANSLATE_NOOP("Words", "Installed or serviced by"), on,
                                       Item::SituationWorkBy, kNotEntered));
    part.statements.push_back(answered(page, QT_TRANSLATE_NOOP("Words", "Persons affected"), on,
                                       Item::SituationPersons, kNotEntered));
    return part;
}

Table workTable(const DocumentPage& page) {
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "What was installed"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Appliance")), Align::Left, 2.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Make and model")), Align::Left, 1.8},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Serial number")), Align::Left, 1.4},
                     {page.text(QT_TRANSLATE_NOOP("Words", "The work")), Align::Left, 1.2}};
    bool holes = false;
    for (const auto& appliance : appliancesOf(page)) {
        std::vector<std::string> row{
            utf8(applianceName(page, appliance)),
            utf8((qstring(appliance.make) + u' ' + qstring(appliance.model)).trimmed()), appliance.serial,
            utf8(page.value(reg::subject(appliance.id), Item::NewOrReplacement))};
        for (auto& cell : row) {
            if (cell.empty()) {
                cell = absentCell();
                holes = true;
            }
        }
        table.rows.push_back(std::move(row));
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    return table;
}

/// What is known of an instrument's calibration on a day.
enum class CalibrationState { Valid, Soon, Past, NoDate, NeedsNone };

CalibrationState calibrationState(const reg::Instrument& instrument, calendar::Date on) {
    if (!instrument.calibrationDue) {
        return instrument.kind == reg::InstrumentKind::WaterGauge ? CalibrationState::NeedsNone
                                                                  : CalibrationState::NoDate;
    }
    switch (calendar::expiryOn(*instrument.calibrationDue, on)) {
        case calendar::Expiry::Valid:
            return CalibrationState::Valid;
        case calendar::Expiry::Soon:
            return CalibrationState::Soon;
        case calendar::Expiry::Expired:
            break;
    }
    return CalibrationState::Past;
}

const char* calibrationWord(CalibrationState state) {
    switch (state) {
        case CalibrationState::Valid:
            return QT_TRANSLATE_NOOP("Words", "in date");
        case CalibrationState::Soon:
            return QT_TRANSLATE_NOOP("Words", "due within 30 days");
        case CalibrationState::Past:
            return QT_TRANSLATE_NOOP("Words", "PAST ITS DATE");
        case CalibrationState::NoDate:
            return QT_TRANSLATE_NOOP("Words", "no date known");
        case CalibrationState::NeedsNone:
            break;
    }
    return QT_TRANSLATE_NOOP("Words", "fluid gauge, none kept");
}

/// Those whose date comes first stand first, those without one last.
std::vector<reg::Instrument> byDueDate(std::vector<reg::Instrument> instruments) {
    std::stable_sort(instruments.begin(), instruments.end(),
                     [](const reg::Instrument& a, const reg::Instrument& b) {
                         if (a.calibrationDue.has_value() != b.calibrationDue.has_value()) {
                             return a.calibrationDue.has_value();
                         }
                         return a.calibrationDue && *a.calibrationDue < *b.calibrationDue;
                     });
    return instruments;
}

/// The instruments in one state by name; "none" is an answer of its own.
Statement calibrationLine(const DocumentPage& page, const char* caption, CalibrationState state,
                          Outcome outcome) {
    QStringList names;
    for (const auto& instrument : page.file().instruments) {
        if (calibrationState(instrument, page.input().issued) == state) {
            names << qstring(instrument.name);
        }
    }
    Statement statement;
    statement.caption = page.text(caption);
    statement.text = names.isEmpty() ? page.text(QT_TRANSLATE_NOOP("Words", "none"))
                                     : utf8(names.join(QStringLiteral(", ")));
    statement.outcome = names.isEmpty() ? Outcome::Pass : outcome;
    return statement;
}

Table calibrationTable(const DocumentPage& page) {
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Instruments"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "Instrument")), Align::Left, 2.5},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Serial number")), Align::Left, 1.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Certificate")), Align::Left, 1.1},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Calibrated")), Align::Left, 1.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Due")), Align::Left, 1.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "On the day")), Align::Left, 1.7}};
    bool holes = false;
    const auto dated = [&](const std::optional<calendar::Date>& date) {
        return date ? utf8(page.words().shortDate(*date)) : std::string();
    };
    for (const auto& instrument : byDueDate(page.file().instruments)) {
        const QString name = qstring(instrument.name) + QStringLiteral(", ") +
                             page.words().instrumentKind(instrument.kind).toLower();
        std::vector<std::string> row{
            utf8(name),
            instrument.serial,
            instrument.certificate,
            dated(instrument.calibratedOn),
            dated(instrument.calibrationDue),
            page.text(calibrationWord(calibrationState(instrument, page.input().issued)))};
        for (auto& cell : row) {
            if (cell.empty()) {
                cell = absentCell();
                holes = true;
            }
        }
        table.rows.push_back(std::move(row));
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    return table;
}

/// The log is the firm's: no premises stand in it.
record::FieldGrid keptBy(const DocumentPage& page) {
    const auto& firm = page.file().firm;
    constexpr const char* kNotEntered = QT_TRANSLATE_NOOP("Words", "not entered");
    record::FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "Kept by"));
    grid.columns = 4;
    std::vector<std::string> lines{firm.name};
    const auto address = addressLines(firm.address);
    lines.insert(lines.end(), address.begin(), address.end());
    grid.fields = {{page.text(QT_TRANSLATE_NOOP("Words", "Firm")), lines, false},
                   page.field(QT_TRANSLATE_NOOP("Words", "Registration number"),
                              qstring(firm.registrationNumber), kNotEntered),
                   {page.text(QT_TRANSLATE_NOOP("Words", "State of")),
                    {utf8(page.words().date(page.input().issued))},
                    false}};
    return grid;
}

}  // namespace

void addReportableEntry(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(reportableHeadline(page));
    for (const auto& situation : reportables(page)) {
        blocks.emplace_back(reportablePart(page, situation));
    }
    blocks.emplace_back(whoAndWhere(page));
    blocks.emplace_back(record::Paragraph{
        page.text(QT_TRANSLATE_NOOP("Words", "Who reports")),
        page.text(QT_TRANSLATE_NOOP(
            "Words",
            "The business reports, as soon as it knows enough to decide that the fitting is or could "
            "have been dangerous by its design, construction, manner of installation, modification "
            "or servicing. A copy of the report is kept with this entry.")),
        false});
}

void addBuildingNotice(const DocumentPage& page, Blocks& blocks) {
    const auto on = page.visit();
    auto clocks = buildingClocks(page);
    auto notified = answered(page, QT_TRANSLATE_NOOP("Words", "Notified"), on, Item::BuildingNotification,
                             QT_TRANSLATE_NOOP("Words", "not yet entered"));
    auto informed = answered(page, QT_TRANSLATE_NOOP("Words", "Information handed over"), on,
                             Item::ControlsInformation, QT_TRANSLATE_NOOP("Words", "not yet entered"));
    // Each answer below the day it is due by.
    clocks.statements.insert(clocks.statements.begin() + 1, std::move(notified));
    clocks.statements.push_back(std::move(informed));
    Statement completed = answered(page, QT_TRANSLATE_NOOP("Words", "Work completed on"), on,
                                   Item::WorkCompleted, QT_TRANSLATE_NOOP("Words", "not yet entered"));
    clocks.statements.insert(clocks.statements.begin(), std::move(completed));
    blocks.emplace_back(std::move(clocks));
    blocks.emplace_back(whoAndWhere(page));
    blocks.emplace_back(workTable(page));
}

void addCalibrationLog(const DocumentPage& page, Blocks& blocks) {
    blocks.emplace_back(
        record::Statements{{},
                           {calibrationLine(page, QT_TRANSLATE_NOOP("Words", "Past their date"),
                                            CalibrationState::Past, Outcome::Fail),
                            calibrationLine(page, QT_TRANSLATE_NOOP("Words", "Due within 30 days"),
                                            CalibrationState::Soon, Outcome::LookAgain),
                            calibrationLine(page, QT_TRANSLATE_NOOP("Words", "Without a date"),
                                            CalibrationState::NoDate, Outcome::LookAgain)}});
    blocks.emplace_back(calibrationTable(page));
    blocks.emplace_back(keptBy(page));
}

}  // namespace hearth::ui::words
