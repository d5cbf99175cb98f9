// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/duty_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace hearth::ui::shell {

using calendar::DutyKind;
using words::qstring;

namespace {

struct DutyWords {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::shell::DutyWords)
};

bool runsOut(DutyKind kind) {
    return kind == DutyKind::Calibration || kind == DutyKind::Competence || kind == DutyKind::Registration ||
           kind == DutyKind::Insurance;
}

QString dangerWord(const std::string& code) {
    switch (reg::dangerFromCode(code).value_or(reg::Danger::NotSaid)) {
        case reg::Danger::ImmediatelyDangerous:
            return DutyWords::tr("Immediately Dangerous");
        case reg::Danger::AtRisk:
            return DutyWords::tr("At Risk");
        case reg::Danger::NotSaid:
            break;
    }
    return DutyWords::tr("danger not said");
}

QString joinedWords(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

/// Why, where the day that it counts from is known.
QString countedFrom(DutyKind kind, const QString& from) {
    switch (kind) {
        case DutyKind::TenantCopy:
            return DutyWords::tr("28 days after the check on %1.").arg(from);
        case DutyKind::CopyBeforeMovingIn:
            return DutyWords::tr("Before the tenant moves in on %1.").arg(from);
        case DutyKind::Display:
            return DutyWords::
                tr("For a stay of 28 days or less a copy that hangs where it is seen will do. The check was "
                   "on %1.")
                    .arg(from);
        case DutyKind::DisplayWithStatement:
            return DutyWords::
                tr("No gas appliance in the tenant’s rooms: a copy that hangs where it is seen will do, with "
                   "the statement that the tenant may have a copy of their own, and at which address to ask "
                   "the landlord for it. The check was on %1.")
                    .arg(from);
        case DutyKind::BuildingNotice:
            return DutyWords::tr(
                       "30 days after completion on %1: certificate to the occupier, notice to the "
                       "council. Where none is needed, say so on the visit's sheet.")
                .arg(from);
        case DutyKind::OperatingInformation:
            return DutyWords::tr("5 days after completion on %1, to the owner.").arg(from);
        case DutyKind::FittingReport:
            return DutyWords::tr("14 days after the firm knew enough, on %1.").arg(from);
        case DutyKind::OpenNotice:
            return DutyWords::tr("Found on %1, and not closed. Ask whether it was put right.").arg(from);
        case DutyKind::Calibration:
            return DutyWords::tr("Last calibrated on %1.").arg(from);
        case DutyKind::Service:
            return DutyWords::tr(
                       "12 months after its last service by our records, or after it was installed: %1. The "
                       "maker's own interval goes before.")
                .arg(from);
        default:
            break;
    }
    return DutyWords::tr("Counted from %1.").arg(from);
}

}  // namespace

QString dutyTitle(DutyKind kind) {
    switch (kind) {
        case DutyKind::TenantCopy:
            return DutyWords::tr("Copy of the record to the tenant");
        case DutyKind::CopyBeforeMovingIn:
            return DutyWords::tr("Copy of the record before the tenant moves in");
        case DutyKind::Display:
            return DutyWords::tr("Copy of the record on display");
        case DutyKind::DisplayWithStatement:
            return DutyWords::tr("Copy of the record on display, with a statement");
        case DutyKind::BuildingNotice:
            return DutyWords::tr("Building regulations: certificate and notice");
        case DutyKind::OperatingInformation:
            return DutyWords::tr("Operating information to the owner");
        case DutyKind::FittingReport:
            return DutyWords::tr("Report of a dangerous fitting");
        case DutyKind::OpenNotice:
            return DutyWords::tr("Unsafe situation, open");
        case DutyKind::Calibration:
            return DutyWords::tr("Calibration");
        case DutyKind::Competence:
            return DutyWords::tr("Competence");
        case DutyKind::Registration:
            return DutyWords::tr("Card and registration");
        case DutyKind::Insurance:
            return DutyWords::tr("Insurance");
        case DutyKind::Service:
            return DutyWords::tr("Yearly service by the maker's instructions");
        default:
            break;
    }
    return DutyWords::tr("Another duty");
}

QString dutyAbout(const store::DutyLine& line) {
    const QString which = qstring(line.which);
    switch (line.kind) {
        case DutyKind::TenantCopy:
        case DutyKind::CopyBeforeMovingIn:
        case DutyKind::Display:
        case DutyKind::DisplayWithStatement:
            return DutyWords::tr("%1, record %2").arg(qstring(line.what), which);
        case DutyKind::OpenNotice:
            return joinedWords({qstring(line.what), dangerWord(line.which)});
        case DutyKind::Registration:
            return which.isEmpty() ? qstring(line.what)
                                   : DutyWords::tr("%1, card %2").arg(qstring(line.what), which);
        default:
            return joinedWords({qstring(line.what), which});
    }
}

QString dutyWhy(const store::DutyLine& line, const words::Words& words) {
    if (line.from) {
        return countedFrom(line.kind, words.date(*line.from));
    }
    return line.kind == DutyKind::FittingReport
               ? DutyWords::tr("The 14 days count from a day that is not entered: since when it is known.")
               : QString();
}

QString dutyDay(const store::DutyLine& line, calendar::Date today, const words::Words& words) {
    if (!line.by) {
        return line.kind == DutyKind::OpenNotice ? DutyWords::tr("no day is set")
                                                 : DutyWords::tr("the day is not known");
    }
    const QString day = words.shortDate(*line.by);
    if (!runsOut(line.kind)) {
        return DutyWords::tr("by %1").arg(day);
    }
    return line.isOverdue(today) ? DutyWords::tr("ran out on %1").arg(day)
                                 : DutyWords::tr("runs out on %1").arg(day);
}

QString dutySentence(const store::DutyLine& line, calendar::Date today, const words::Words& words) {
    const auto& at = line.address;
    QStringList parts{dutyTitle(line.kind), dutyDay(line, today, words)};
    if (line.isOverdue(today)) {
        parts << DutyWords::tr("overdue");
    }
    parts << dutyAbout(line)
          << joinedWords({qstring(at.line1), qstring(at.line2), qstring(at.town), qstring(at.postcode)});
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

std::vector<exchange::DutyRow> dutyRows(const std::vector<store::DutyLine>& lines, calendar::Date today) {
    std::vector<exchange::DutyRow> rows;
    for (const auto& line : lines) {
        rows.push_back({line.kind, line.isOverdue(today), line.by, line.from, line.what, line.which,
                        line.address.line1, line.address.line2, line.address.town, line.address.postcode});
    }
    return rows;
}

}  // namespace hearth::ui::shell
