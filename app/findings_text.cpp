// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/findings_text.h"

#include "app/console.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>

namespace hearth::app {
namespace {

using rulebook::Outcome;
using ui::words::qstring;
using ui::words::Words;

constexpr qsizetype kWidth = 100;  // of a line; a terminal of 80 wraps the longest ones only
constexpr qsizetype kIndent = 6;

/// The shapes of the four outcomes as far as letters can draw them: disc, square, triangle, ring.
struct Mark {
    const char* drawn;
    const char* colour;
};

Mark markOf(Outcome outcome) {
    switch (outcome) {
        case Outcome::Pass:
            return {"(+)", "32"};
        case Outcome::Fail:
            return {"[x]", "31"};
        case Outcome::LookAgain:
            return {"/!\\", "33"};
        case Outcome::NoVerdict:
            break;
    }
    return {"(-)", "2"};
}

QString marked(Outcome outcome, const QString& text, Colours colours) {
    const Mark mark = markOf(outcome);
    const QString plain = QString::fromLatin1(mark.drawn) + QStringLiteral("   ") + text;
    return colours == Colours::No
               ? plain
               : QStringLiteral("\x1b[%1m%2\x1b[0m").arg(QString::fromLatin1(mark.colour), plain);
}

/// The text in lines that stand under the finding's title.
QString wrapped(const QString& text) {
    QString block;
    QString line;
    for (const auto& word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!line.isEmpty() && line.size() + 1 + word.size() > kWidth - kIndent) {
            block += QString(kIndent, QLatin1Char(' ')) + line + QLatin1Char('\n');
            line.clear();
        }
        line += (line.isEmpty() ? QString() : QStringLiteral(" ")) + word;
    }
    return line.isEmpty() ? block : block + QString(kIndent, QLatin1Char(' ')) + line + QLatin1Char('\n');
}

QString findingText(const rulebook::Finding& finding, const Words& words, Colours colours) {
    const QString title =
        words.findingTitle(finding.kind) + QStringLiteral(": ") + words.outcome(finding.outcome);
    const QString against = words.measuredAgainst(finding);
    QString text = marked(finding.outcome, title, colours) +
                   (against.isEmpty() ? QString() : QStringLiteral("  ·  ") + against) + QLatin1Char('\n');
    text += wrapped(words.sentence(finding.why));
    for (const auto& note : finding.notes) {
        text += wrapped(words.sentence(note));
    }
    for (const auto& limit : finding.limits) {
        text += wrapped(tr("Limit: %1 · %2").arg(words.ruleValue(limit), words.source(limit)));
    }
    return text;
}

/// A heading where the findings of another test begin; nothing while there is one test only.
QString testHeading(const reg::VisitFile& file, const reg::SubjectRef& subject) {
    for (std::size_t i = 0; file.tests.size() > 1 && i < file.tests.size(); ++i) {
        if (reg::subject(file.tests[i].id) == subject) {
            const QString label = qstring(file.tests[i].label);
            return tr("Test %1").arg(i + 1) + (label.isEmpty() ? QString() : QStringLiteral(": ") + label) +
                   QStringLiteral("\n\n");
        }
    }
    return {};
}

QString whereAndWhen(const reg::VisitFile& file, const Words& words) {
    QStringList parts{addressLine(file.premises.address), words.date(file.visit.date),
                      words.gas(file.installation.gas)};
    if (const auto* engineer = file.engineer()) {
        parts.append(qstring(engineer->name));
    }
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

QString addressLine(const reg::Address& address) {
    QStringList parts;
    for (const auto* part : {&address.line1, &address.line2, &address.town}) {
        if (!part->empty()) {
            parts.append(qstring(*part));
        }
    }
    QString line = parts.join(QStringLiteral(", "));
    if (!address.postcode.empty()) {
        line += QLatin1Char(' ') + qstring(address.postcode);
    }
    return line.trimmed();
}

QString findingsText(const JudgedVisit& visit, const Words& words, Colours colours) {
    QString text;
    if (visit.file.firm.demonstration) {
        text += tr("Demonstration firm: nothing here is real.") + QLatin1Char('\n');
    }
    text += whereAndWhen(visit.file, words) + QStringLiteral("\n\n");
    QString heading;
    for (const auto& judged : visit.findings) {
        if (const QString now = testHeading(visit.file, judged.subject); now != heading) {
            heading = now;
            text += heading;
        }
        text += findingText(judged.finding, words, colours) + QLatin1Char('\n');
    }
    text += marked(visit.outcome, tr("Verdict: %1").arg(words.outcome(visit.outcome)), colours) +
            QLatin1Char('\n');
    return text;
}

QString missingText(const JudgedVisit& visit, const Words& words) {
    QString text;
    for (const auto& missing : visit.missing) {
        text += QStringLiteral("  - ") + words.missing(missing) + QLatin1Char('\n');
    }
    return text;
}

}  // namespace hearth::app
