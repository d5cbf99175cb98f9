// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/document_page.h"

#include <QStringList>

#include <algorithm>
#include <iterator>

namespace hearth::ui::words {

namespace {

using record::Align;
using record::CaptionedValue;
using record::Column;
using record::FieldGrid;
using record::Table;
using reg::Item;

CaptionedValue premisesField(const DocumentPage& page) {
    auto lines = addressLines(page.file().premises.address);
    const bool absent = lines.empty();
    if (absent) {
        lines = {page.text(QT_TRANSLATE_NOOP("Words", "not entered"))};
    }
    return {page.text(QT_TRANSLATE_NOOP("Words", "Premises")), lines, absent};
}

/// Customer and owner in one stand once. A landlord or an agent has a place of their own in the law.
bool isSamePerson(const reg::VisitFile::Holder& one, const reg::VisitFile::Holder& other) {
    const auto stands = [](reg::RoleKind role) {
        return role == reg::RoleKind::Landlord || role == reg::RoleKind::Agent;
    };
    return one.party == other.party && !stands(one.role) && !stands(other.role);
}

void addPeople(const DocumentPage& page, FieldGrid& grid) {
    if (page.file().people.empty()) {
        grid.fields.push_back(page.field(QT_TRANSLATE_NOOP("Words", "Customer"), {},
                                         QT_TRANSLATE_NOOP("Words", "not entered")));
    }
    std::vector<const reg::VisitFile::Holder*> told;
    for (const auto& holder : page.file().people) {
        const auto same = std::find_if(told.begin(), told.end(),
                                       [&](const auto* one) { return isSamePerson(*one, holder); });
        if (same != told.end()) {
            const auto at = grid.fields.size() - told.size() + static_cast<std::size_t>(same - told.begin());
            grid.fields[at].caption += ", " + utf8(page.words().role(holder.role).toLower());
            continue;
        }
        std::vector<std::string> lines{holder.party.name};
        const auto address = addressLines(holder.party.address);
        lines.insert(lines.end(), address.begin(), address.end());
        if (!holder.party.telephone.empty()) {
            lines.push_back(holder.party.telephone);
        }
        grid.fields.push_back({utf8(page.words().role(holder.role)), lines, false});
        told.push_back(&holder);
    }
}

CaptionedValue engineerField(const DocumentPage& page) {
    const reg::Engineer* engineer = page.file().engineer();
    const auto caption = page.text(QT_TRANSLATE_NOOP("Words", "Engineer"));
    if (engineer == nullptr || engineer->name.empty()) {
        return {caption, {page.text(QT_TRANSLATE_NOOP("Words", "not entered"))}, true};
    }
    const QString card =
        engineer->cardNumber.empty()
            ? page.say(QT_TRANSLATE_NOOP("Words", "card number not entered"))
            : page.say(QT_TRANSLATE_NOOP("Words", "card %1"), {qstring(engineer->cardNumber)});
    return {caption, {utf8(qstring(engineer->name) + QStringLiteral(", ") + card)}, false};
}

/// Parts that are there, on one line.
QString joined(const QStringList& parts, const QString& between) {
    QStringList there;
    std::copy_if(parts.begin(), parts.end(), std::back_inserter(there),
                 [](const QString& part) { return !part.isEmpty(); });
    return there.join(between);
}

/// On one line: registration number and telephone stand in the page's head, so here only that the number is
/// missing.
CaptionedValue firmField(const DocumentPage& page) {
    const reg::Firm& firm = page.file().firm;
    const QString name =
        firm.name.empty() ? page.say(QT_TRANSLATE_NOOP("Words", "name not entered")) : qstring(firm.name);
    const QString town =
        joined({qstring(firm.address.town), qstring(firm.address.postcode)}, QStringLiteral(" "));
    const QString where =
        joined({name, qstring(firm.address.line1), qstring(firm.address.line2), town}, QStringLiteral(", "));
    const QString registration =
        firm.registrationNumber.empty()
            ? QStringLiteral(" · ") + page.say(QT_TRANSLATE_NOOP("Words", "registration number not entered"))
            : QString();
    return {page.text(QT_TRANSLATE_NOOP("Words", "Firm")), {utf8(where + registration)}, firm.name.empty()};
}

/// The heading says already that it is a gauge.
QString gaugeKind(const DocumentPage& page, reg::InstrumentKind kind) {
    if (kind == reg::InstrumentKind::ElectronicGauge) {
        return page.say(QT_TRANSLATE_NOOP("Words", "electronic"));
    }
    return kind == reg::InstrumentKind::WaterGauge ? page.say(QT_TRANSLATE_NOOP("Words", "water (U-tube)"))
                                                   : page.words().instrumentKind(kind).toLower();
}

/// Each instrument that something was read on, once.
std::vector<const reg::Instrument*> gaugesUsed(const DocumentPage& page) {
    std::vector<const reg::Instrument*> used;
    const auto add = [&](const reg::Instrument* gauge) {
        if (gauge != nullptr && std::find(used.begin(), used.end(), gauge) == used.end()) {
            used.push_back(gauge);
        }
    };
    for (const auto& test : page.tests()) {
        add(page.file().gaugeOf(test.id));
    }
    if (page.input().kind == record::RecordKind::CalibrationLog) {
        for (const auto& instrument : page.file().instruments) {
            add(&instrument);
        }
    }
    for (const auto item : {Item::VisitAnalyser, Item::VisitGauge}) {
        add(page.file().instrumentOf(page.visit(), item));
    }
    return used;
}

QString calibration(const DocumentPage& page, const reg::Instrument& gauge) {
    QStringList parts;
    if (!gauge.certificate.empty()) {
        parts << qstring(gauge.certificate);
    }
    if (gauge.calibratedOn) {
        parts << page.words().shortDate(*gauge.calibratedOn);
    }
    if (gauge.calibrationDue) {
        parts << page.say(QT_TRANSLATE_NOOP("Words", "due %1"),
                          {page.words().shortDate(*gauge.calibrationDue)});
    }
    return parts.join(QStringLiteral(" · "));
}

std::string cell(const QString& text) {
    return text.isEmpty() ? absentCell() : utf8(text);
}

QString meterText(const DocumentPage& page) {
    const auto& installation = page.file().installation;
    if (installation.meterCode.empty()) {
        return {};
    }
    const pipework::Meter* meter = pipework::meterByCode(installation.meterCode);
    return meter != nullptr ? page.words().meter(*meter) : qstring(installation.meterCode);
}

QString meterVolume(const DocumentPage& page) {
    const auto& installation = page.file().installation;
    if (!installation.meterVolume.text.empty()) {
        return page.say(QT_TRANSLATE_NOOP("Words", "%1 (typed in)"), {page.typed(installation.meterVolume)});
    }
    return page.input().volume.meter ? page.volume(*page.input().volume.meter) : QString();
}

/// Where a section begins: "meter", or the number of the section that feeds it.
QString fedFrom(const DocumentPage& page, const reg::PipeSection& section) {
    const auto& pipes = page.file().pipes;
    const auto feeds = [&](const reg::PipeSection& p) { return section.after && p.id == *section.after; };
    const auto found = std::find_if(pipes.begin(), pipes.end(), feeds);
    return found == pipes.end() ? page.say(QT_TRANSLATE_NOOP("Words", "meter"))
                                : QString::number(found - pipes.begin() + 1);
}

QString tubeText(const DocumentPage& page, const reg::PipeSection& section) {
    const pipework::Tube* tube = pipework::tubeByCode(section.tubeCode);
    return tube != nullptr ? page.words().tube(*tube) : qstring(section.tubeCode);
}

/// "trade table, published"; "outside the test" for a section that was not under test.
QString basisText(const DocumentPage& page, const pipework::SectionVolume& section) {
    if (!section.underTest) {
        return page.say(QT_TRANSLATE_NOOP("Words", "not under test"));
    }
    if (!section.volume) {
        return {};
    }
    const QString basis = page.words().volumeBasis(section.basis);
    return section.basis == pipework::VolumeBasis::TradeTable
               ? basis + QStringLiteral(", ") + page.words().provenance(section.provenance)
               : basis;
}

std::string volumeNote(const DocumentPage& page) {
    const auto& volume = page.input().volume;
    if (volume.typedTotal) {
        return page.text(QT_TRANSLATE_NOOP(
            "Words", "The volume was typed in instead of being worked out from this list."));
    }
    if (!volume.total) {
        return page.text(QT_TRANSLATE_NOOP(
            "Words", "—: not entered. The installation volume can't be worked out from what is known."));
    }
    const auto part = [&](const std::optional<quantity::Volume>& v) {
        return v ? page.volume(*v) : page.volume({});
    };
    return page.text(
        QT_TRANSLATE_NOOP("Words", "Installation volume: meter %1, pipes under test %2, fittings %3."),
        {part(volume.meter), part(volume.pipes), part(volume.fittings)});
}

}  // namespace

std::vector<std::string> addressLines(const reg::Address& address) {
    std::vector<std::string> lines;
    for (const auto* line : {&address.line1, &address.line2}) {
        if (!line->empty()) {
            lines.push_back(*line);
        }
    }
    const std::string town =
        address.town + (address.town.empty() || address.postcode.empty() ? "" : " ") + address.postcode;
    if (!town.empty()) {
        lines.push_back(town);
    }
    return lines;
}

FieldGrid whoAndWhere(const DocumentPage& page) {
    FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "Who and where"));
    grid.columns = 4;
    grid.fields.push_back(premisesField(page));
    addPeople(page, grid);
    grid.fields.push_back(engineerField(page));
    // Beside the people where there is room, else beside the firm.
    const CaptionedValue date{page.text(QT_TRANSLATE_NOOP("Words", "Date of the work")),
                              {utf8(page.words().date(page.file().visit.date))},
                              false};
    const bool besidePeople = grid.fields.size() < 4;
    if (besidePeople) {
        grid.fields.push_back(date);
    }
    grid.fields.push_back(firmField(page));
    if (!besidePeople) {
        grid.fields.push_back(date);
    }
    page.addIfGiven(grid, page.visit(), Item::VisitReference);
    page.addIfGiven(grid, page.visit(), Item::VisitPresent);
    return grid;
}

Table instrumentTable(const DocumentPage& page) {
    Table table;
    // Of a test there are gauges alone.
    const bool mixed = page.file().instrumentOf(page.visit(), Item::VisitAnalyser) != nullptr;
    table.title = mixed ? page.text(QT_TRANSLATE_NOOP("Words", "Instruments"))
                        : page.text(QT_TRANSLATE_NOOP("Words", "Gauges"));
    table.columns = {{mixed ? page.text(QT_TRANSLATE_NOOP("Words", "Instrument"))
                            : page.text(QT_TRANSLATE_NOOP("Words", "Gauge")),
                      Align::Left, 2.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Serial number")), Align::Left, 1.0},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Resolution")), Align::Right, 0.8},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Accuracy")), Align::Right, 0.8},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Calibration")), Align::Left, 3.2}};
    const auto used = gaugesUsed(page);
    bool holes = used.empty();
    for (const auto* gauge : used) {
        const QString name = qstring(gauge->name) + QStringLiteral(", ") + gaugeKind(page, gauge->kind);
        table.rows.push_back({utf8(name), cell(qstring(gauge->serial)), cell(page.typed(gauge->resolution)),
                              cell(page.typed(gauge->accuracy)), cell(calibration(page, *gauge))});
        const auto& row = table.rows.back();
        holes = holes || std::find(row.begin(), row.end(), absentCell()) != row.end();
    }
    if (used.empty()) {
        table.rows.push_back(std::vector<std::string>(table.columns.size(), absentCell()));
    }
    table.note = holes ? page.text(QT_TRANSLATE_NOOP("Words", "—: not entered.")) : std::string();
    return table;
}

FieldGrid installationGrid(const DocumentPage& page) {
    const auto& installation = page.file().installation;
    constexpr const char* kNotEntered = QT_TRANSLATE_NOOP("Words", "not entered");
    FieldGrid grid;
    grid.title = page.text(QT_TRANSLATE_NOOP("Words", "Installation"));
    grid.fields = {
        page.field(QT_TRANSLATE_NOOP("Words", "Gas"), page.words().gas(installation.gas), kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Meter"), meterText(page), kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Meter's volume"), meterVolume(page),
                   QT_TRANSLATE_NOOP("Words", "not known")),
        page.field(QT_TRANSLATE_NOOP("Words", "Meter's serial number"), qstring(installation.meterSerial),
                   kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Where the meter is"), qstring(installation.meterPlace),
                   kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Emergency control valve"),
                   qstring(installation.controlValvePlace), kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Operating pressure"),
                   page.typed(installation.operatingPressure), kNotEntered),
        page.field(QT_TRANSLATE_NOOP("Words", "Supply pressure, most"),
                   page.typed(installation.supplyPressure), kNotEntered),
    };
    return grid;
}

Table pipeTable(const DocumentPage& page) {
    Table table;
    table.title = page.text(QT_TRANSLATE_NOOP("Words", "Pipework"));
    table.columns = {{page.text(QT_TRANSLATE_NOOP("Words", "No.")), Align::Right, 0.3},
                     {page.text(QT_TRANSLATE_NOOP("Words", "From")), Align::Left, 0.55},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Leads to")), Align::Left, 1.9},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Tube")), Align::Left, 1.35},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Length")), Align::Right, 0.7},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Volume")), Align::Right, 1.2},
                     {page.text(QT_TRANSLATE_NOOP("Words", "Volume from")), Align::Left, 2.5}};
    const auto& volumes = page.input().volume.sections;
    const auto& pipes = page.file().pipes;
    for (std::size_t i = 0; i < pipes.size(); ++i) {
        const auto section = i < volumes.size() ? volumes[i] : pipework::SectionVolume{};
        table.rows.push_back(
            {std::to_string(i + 1), utf8(fedFrom(page, pipes[i])), cell(qstring(pipes[i].leadsTo)),
             cell(tubeText(page, pipes[i])), cell(page.typed(pipes[i].length)),
             cell(section.volume ? page.volume(*section.volume) : page.typed(pipes[i].volume)),
             cell(basisText(page, section))});
    }
    const auto& total = page.input().volume.total;
    table.total = {{}, {}, page.text(QT_TRANSLATE_NOOP("Words", "Installation volume")),
                   {}, {}, total ? utf8(page.volume(*total)) : absentCell(),
                   {}};
    table.note = volumeNote(page);
    return table;
}

}  // namespace hearth::ui::words
