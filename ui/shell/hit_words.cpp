// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/hit_words.h"

#include <QCoreApplication>

namespace hearth::ui::shell {
namespace {

using store::Hit;
using store::HitField;
using store::HitKind;
using words::qstring;

QString hitSaid(const char* source) {
    return QCoreApplication::translate("hearth::ui::shell::HitsPanel", source);
}

/// By what it was found; empty where title and detail show it already.
QString whyFound(const Hit& hit) {
    const QString found = qstring(hit.found);
    switch (hit.field) {
        case HitField::Uprn:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "UPRN %1")).arg(found);
        case HitField::Mprn:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "MPRN %1")).arg(found);
        case HitField::MeterSerial:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "meter %1")).arg(found);
        case HitField::ApplianceSerial:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "%1, serial number %2"))
                .arg(qstring(hit.of), found);
        case HitField::GcNumber:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "%1, GC number %2"))
                .arg(qstring(hit.of), found);
        case HitField::OrderReference:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "order %1")).arg(found);
        case HitField::Holder:
        case HitField::Email:
        case HitField::Postcode:
            return found;
        case HitField::Address:
        case HitField::Name:
        case HitField::Telephone:
        case HitField::RecordNumber:
            break;
    }
    return {};
}

}  // namespace

QString hitKindTitle(HitKind kind) {
    switch (kind) {
        case HitKind::Premises:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "Premises"));
        case HitKind::Party:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "People"));
        case HitKind::Visit:
            return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "Visits"));
        case HitKind::Record:
            break;
    }
    return hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "Records"));
}

Line hitLine(const Hit& hit, const words::Words& words) {
    Line line;
    line.key = QString::fromStdString(uuidText(hit.row));
    line.title = qstring(hit.title);
    const QString why = whyFound(hit);
    const QString detail = qstring(hit.detail);
    const bool shown = why.isEmpty() || detail.contains(why) || line.title.contains(why);
    line.detail = shown ? detail : detail.isEmpty() ? why : why + QStringLiteral(" · ") + detail;
    line.right = hit.date ? words.shortDate(*hit.date) : QString();
    line.outcome = hit.outcome;
    if (hit.revision > 1) {
        line.title = hitSaid(QT_TRANSLATE_NOOP("hearth::ui::shell::HitsPanel", "%1, revision %2"))
                         .arg(line.title)
                         .arg(hit.revision);
    }
    return line;
}

}  // namespace hearth::ui::shell
