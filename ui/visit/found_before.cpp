// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/found_before.h"

#include "ui/shell/kit.h"
#include "ui/visit/joined.h"
#include "ui/visit/subject_name.h"
#include "ui/words/kept_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

struct BeforeTexts {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::visit::FoundBefore)
};

/// What was found, not what to do about it: that was said on the day.
QString failedText(const rulebook::Finding& finding, const words::Words& words) {
    const QString read = finding.measured ? words.figure(*finding.measured) : QString();
    return joined({words.findingTitle(finding.kind), read}, QStringLiteral(", "));
}

QString situationLine(const reg::Situation& situation, const words::Words& words) {
    const QString danger = situation.danger == reg::Danger::NotSaid ? BeforeTexts::tr("not classed")
                                                                    : words::danger(words, situation.danger);
    const QString what =
        joined({danger, QString::fromStdString(situation.what), QString::fromStdString(situation.where)},
               QStringLiteral(", "));
    return BeforeTexts::tr("Still open: %1 (found on %2)").arg(what, shell::dayOf(words, situation.foundAt));
}

}  // namespace

FoundBefore foundBefore(const VisitSheetModel& model, const words::Words& words) {
    FoundBefore found;
    for (const reg::Situation& situation : model.openBefore()) {
        found.open << situationLine(situation, words);
    }
    const reg::VisitFile* last = model.last();
    if (last == nullptr) {
        return found;
    }
    int again = 0;
    for (const judging::Judged& judged : model.lastFindings()) {
        if (judged.finding.outcome == rulebook::Outcome::Fail) {
            found.failed << joined(
                {subjectName(judged.subject, *last, words), failedText(judged.finding, words)},
                QStringLiteral(": "));
        }
        again += judged.finding.outcome == rulebook::Outcome::LookAgain ? 1 : 0;
    }
    if (!found.failed.isEmpty()) {
        found.failed.push_front(
            BeforeTexts::tr("Failed on the visit of %1:").arg(words.shortDate(last->visit.date)));
        if (again > 0) {
            found.failed << BeforeTexts::tr("To be looked at again: %1").arg(again);
        }
    }
    return found;
}

}  // namespace hearth::ui::visit
