// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/subject_name.h"

#include "ui/visit/joined.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::visit {

using reg::Item;
using reg::SubjectKind;

namespace {

QString numbered(const char* text, std::size_t index) {
    return QCoreApplication::translate("hearth::ui::visit::SubjectName", text).arg(index + 1);
}

QString nameOf(const reg::Appliance& appliance, const words::Words& words) {
    const QString kind =
        appliance.kind.empty() ? QString() : words.choice(Item::ApplianceKind, appliance.kind);
    return joined({kind.isEmpty() ? QString::fromStdString(appliance.make) : kind,
                   QString::fromStdString(appliance.place)},
                  QStringLiteral(", "));
}

/// The own name where there is one and no other has it; else with the number.
QString amongOthers(const QStringList& names, qsizetype index, const char* unnamed) {
    const QString number = numbered(unnamed, static_cast<std::size_t>(index));
    return names[index].isEmpty()          ? number
           : names.count(names[index]) > 1 ? names[index] + QStringLiteral(" (") + number + u')'
                                           : names[index];
}

template <class List, class Name>
QString nameIn(const List& list, const reg::SubjectRef& subject, const char* unnamed, Name name) {
    QStringList names;
    qsizetype at = -1;
    for (const auto& one : list) {
        at = reg::subject(one.id) == subject ? names.size() : at;
        names << name(one);
    }
    return at < 0 ? QString() : amongOthers(names, at, unnamed);
}

QString roomName(const reg::SubjectRef& subject, const reg::VisitFile& file) {
    const auto rooms = file.rooms();
    const auto readings = file.roomReadings();
    const auto reading = std::find(readings.begin(), readings.end(), subject);
    if (reading != readings.end()) {
        return numbered(QT_TRANSLATE_NOOP("hearth::ui::visit::SubjectName", "Reading %1"),
                        static_cast<std::size_t>(reading - readings.begin()));
    }
    QStringList names;
    qsizetype at = -1;
    for (const reg::SubjectRef& room : rooms) {
        const reg::Entry* name = file.find(room, Item::RoomName);
        at = room == subject ? names.size() : at;
        names << (name == nullptr ? QString() : QString::fromStdString(name->text));
    }
    return at < 0 ? QString()
                  : amongOthers(names, at, QT_TRANSLATE_NOOP("hearth::ui::visit::SubjectName", "Room %1"));
}

}  // namespace

QString subjectName(const reg::SubjectRef& subject, const reg::VisitFile& file, const words::Words& words) {
    switch (subject.kind) {
        case SubjectKind::Test: {
            const auto at = std::find_if(file.tests.begin(), file.tests.end(), [&](const reg::Test& test) {
                return reg::subject(test.id) == subject;
            });
            if (at == file.tests.end()) {
                return {};
            }
            return at->label.empty() ? QString::number(at - file.tests.begin() + 1)
                                     : QString::fromStdString(at->label);
        }
        case SubjectKind::Appliance:
            return nameIn(file.appliances, subject,
                          QT_TRANSLATE_NOOP("hearth::ui::visit::SubjectName", "Appliance %1"),
                          [&](const reg::Appliance& one) { return nameOf(one, words); });
        case SubjectKind::Situation:
            return nameIn(file.situations, subject, QT_TRANSLATE_NOOP("hearth::ui::visit::SubjectName", "%1"),
                          [](const reg::Situation&) { return QString(); });
        case SubjectKind::Room:
            return roomName(subject, file);
        case SubjectKind::Visit:
        case SubjectKind::Installation:
            break;
    }
    return {};
}

QString subjectContext(const SheetContext& context, const reg::SubjectRef& subject) {
    const reg::VisitFile& file = context.model.file();
    if (subject.kind == SubjectKind::Test && file.tests.size() < 2) {
        return {};
    }
    const QString name = subjectName(subject, file, context.window.words);
    return subject.kind == SubjectKind::Situation
               ? QCoreApplication::translate("hearth::ui::visit::SubjectName", "Unsafe situation %1")
                     .arg(name)
               : name;
}

}  // namespace hearth::ui::visit
