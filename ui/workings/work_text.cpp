// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/work_text.h"

#include "ui/words/question_words.h"
#include "ui/workings/result_view.h"
#include "ui/workings/work_editor.h"

#include <QCoreApplication>

namespace hearth::ui::workings {

namespace {

/// Texts of what is copied.
struct WorkText {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::workings::WorkText)
};

QStringList typedLines(const judging::Worksheet& sheet, const judging::AskedGroup& group,
                       const words::Words& words) {
    QStringList lines;
    for (int row = 0; row < sheet.rows(group.group); ++row) {
        QStringList values;
        for (const reg::Item item : group.items) {
            if (const reg::Entry* entry = sheet.find(group.group, row, item)) {
                values << QStringLiteral("%1: %2").arg(words.item(item), spokenValue(*entry, words));
            }
        }
        if (group.group == judging::Group::Once) {
            lines << values;
        } else if (!values.isEmpty()) {
            lines << QStringLiteral("%1 · %2").arg(words::rowName(words, group.group, row),
                                                   values.join(QStringLiteral(" · ")));
        }
    }
    return lines;
}

QStringList figureLines(const judging::Answer& answer, const words::Words& words) {
    QStringList lines;
    for (const judging::Worked& worked : answer.figures) {
        QString line =
            QStringLiteral("%1: %2").arg(words::derived(words, worked.what), figureText(worked, words));
        if (!worked.source.empty()) {
            line += QStringLiteral(" (%1)").arg(
                QString::fromUtf8(worked.source.data(), static_cast<qsizetype>(worked.source.size())));
        }
        lines << line;
    }
    for (const rulebook::Sentence& note : answer.notes) {
        lines << words.sentence(note);
    }
    for (const Error& error : answer.errors) {
        lines << words.error(error);
    }
    return lines;
}

QStringList findingLines(const judging::Judged& judged, const words::Words& words) {
    const rulebook::Finding& finding = judged.finding;
    const QString against = words.measuredAgainst(finding);
    QString title =
        QStringLiteral("%1: %2").arg(words.findingTitle(finding.kind), words.outcome(finding.outcome));
    title += against.isEmpty() ? QString() : QStringLiteral(" · ") + against;
    QStringList lines{title, words.sentence(finding.why)};
    if (!judged.lacking.empty()) {
        lines << words::lacking(words, judged.lacking);
    }
    for (const rulebook::Sentence& note : finding.notes) {
        lines << words.sentence(note);
    }
    for (const rulebook::Entry& limit : finding.limits) {
        lines << WorkText::tr("Limit: %1 · %2").arg(words.ruleValue(limit), words.source(limit));
    }
    return lines;
}

}  // namespace

QString workText(const judging::Worksheet& sheet, const judging::Answer& answer, const words::Words& words) {
    QStringList blocks{words::question(words, sheet.question()) + u'\n' + words.date(sheet.on())};
    QStringList typed;
    for (const judging::AskedGroup& group : judging::infoOf(sheet.question()).groups) {
        typed << typedLines(sheet, group, words);
    }
    blocks << typed.join(u'\n') << figureLines(answer, words).join(u'\n');
    for (const judging::Judged& judged : answer.findings) {
        blocks << findingLines(judged, words).join(u'\n');
    }
    blocks.removeAll(QString());
    return blocks.join(QStringLiteral("\n\n"));
}

}  // namespace hearth::ui::workings
