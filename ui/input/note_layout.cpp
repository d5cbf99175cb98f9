// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/note_layout.h"

#include "ui/words/question_words.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace hearth::ui::input {

namespace {

using look::Role;
using look::TypeRole;

constexpr double kLeft = 12;
constexpr double kRight = 10;
constexpr double kTop = 9;
constexpr double kShape = 15;
constexpr double kAfterShape = 7;
constexpr double kBarHeight = 6;

QString say(const char* text) {
    return QCoreApplication::translate("hearth::ui::input::FindingNote", text);
}

/// What a key does stays on one line with it.
QString unbroken(QString text) {
    return text.replace(u' ', QChar(0xA0));
}

QFont titleFont() {
    QFont font = look::font(TypeRole::Body);
    font.setBold(true);
    return font;
}

/// Puts texts below each other in one column and keeps the plan's height.
class Column {
  public:
    Column(NotePlan& plan, double width) : m_plan(plan), m_width(width) {}

    QRectF add(const QString& text, TypeRole type, Role role, double gapAbove) {
        if (text.isEmpty()) {
            return {};
        }
        const QFont font = look::font(type);
        const QRectF room(kLeft, m_y + gapAbove, m_width - kLeft - kRight, 1e6);
        const QRectF taken = QFontMetricsF(font).boundingRect(room, Qt::TextWordWrap, text);
        const QRectF box(room.left(), room.top(), room.width(), std::ceil(taken.height()));
        m_plan.texts.append({box, text, font, role, false});
        m_y = box.bottom();
        return box;
    }
    [[nodiscard]] double y() const { return m_y; }
    void moveTo(double y) { m_y = y; }

  private:
    NotePlan& m_plan;
    double m_width;
    double m_y = 0;
};

/// Title at the left, the measured value at the right of the same line where both fit, below it where they
/// don't.
void placeHead(NotePlan& plan, Column& column, const judging::Judged& judged, const words::Words& words,
               double width) {
    const rulebook::Finding& finding = judged.finding;
    const QString title = noteTitle(finding, words);
    const QString measured = finding.measured ? words.figure(*finding.measured) : QString();
    const QFont strong = titleFont();
    const QFont plain = look::font(TypeRole::Body);
    const double titleLeft = kLeft + kShape + kAfterShape;
    const double inner = width - titleLeft - kRight;
    const double measuredWidth =
        measured.isEmpty() ? 0 : std::ceil(QFontMetricsF(plain).horizontalAdvance(measured)) + 1;
    const bool fits = QFontMetricsF(strong).horizontalAdvance(title) + 12 + measuredWidth <= inner;
    const QRectF room(titleLeft, kTop, fits ? inner - measuredWidth : inner, 1e6);
    const double titleHeight =
        std::ceil(QFontMetricsF(strong).boundingRect(room, Qt::TextWordWrap, title).height());
    plan.texts.append({QRectF(room.left(), kTop, room.width(), titleHeight), title, strong,
                       look::inkOf(finding.outcome), false});
    const double lineHeight = QFontMetricsF(strong).height();
    plan.shape = QRectF(kLeft, kTop + (lineHeight - kShape) / 2, kShape, kShape);
    column.moveTo(kTop + titleHeight);
    if (measured.isEmpty()) {
        return;
    }
    const double top = fits ? kTop : column.y();
    const double height = std::ceil(QFontMetricsF(plain).height());
    const double left = fits ? width - kRight - measuredWidth : kLeft;
    plan.texts.append({QRectF(left, top, width - kRight - left, height), measured, plain, Role::Ink, true});
    column.moveTo(std::max(column.y(), top + height));
}

QString sourceLine(const rulebook::Finding& finding, const words::Words& words, bool isOpen) {
    if (finding.limits.empty()) {
        return {};
    }
    QStringList parts{words.source(finding.limits.front())};
    parts << unbroken(isOpen ? say(QT_TRANSLATE_NOOP("hearth::ui::input::FindingNote", "less: F1"))
                             : say(QT_TRANSLATE_NOOP("hearth::ui::input::FindingNote", "why: F1")));
    if (isOpen && std::any_of(finding.limits.begin(), finding.limits.end(), isInRuleBook)) {
        parts << unbroken(say(QT_TRANSLATE_NOOP("hearth::ui::input::FindingNote", "rule book: Shift+F1")));
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

QRectF placeSource(Column& column, const rulebook::Entry& entry, const words::Words& words) {
    const QRectF head = column.add(words.rule(entry.key.rule) + QStringLiteral(": ") + words.ruleValue(entry),
                                   TypeRole::Small, Role::Ink, 7);
    QString standard = words::qstring(entry.standard);
    if (!entry.clause.empty()) {
        standard += QStringLiteral(", ") + words::qstring(entry.clause);
    }
    column.add(standard, TypeRole::Small, Role::SoftInk, 1);
    column.add(
        words.provenance(entry.provenance) + QStringLiteral(": ") + words.provenanceMeaning(entry.provenance),
        TypeRole::Small, Role::SoftInk, 1);
    column.add(words::qstring(entry.source), TypeRole::Small, Role::SoftInk, 1);
    column.add(words::qstring(entry.doubt), TypeRole::Small, Role::LookAgain, 1);
    return {head.topLeft(), QPointF(head.right(), column.y())};
}

/// A scale that holds zero (or the range with as much room on each side), the limits and the measured value.
NoteBar scaled(double measured, double least, double most, bool isRange) {
    const double span = most - least;
    double low = isRange ? least - span : 0;
    double high = isRange ? most + span : most * 1.25;
    low = std::min(low, measured - 0.04 * (high - low));
    high = std::max(high, measured + 0.04 * (high - low));
    if (!isRange) {
        low = std::min(0.0, measured);
    }
    const auto share = [low, high](double value) { return high > low ? (value - low) / (high - low) : 0.0; };
    NoteBar bar;
    bar.from = isRange ? 0 : share(std::min(0.0, measured));
    bar.to = share(measured);
    if (!isRange && measured < 0) {
        bar.to = share(0);
    }
    bar.limits = isRange ? QList<double>{share(least), share(most)} : QList<double>{share(most)};
    return bar;
}

}  // namespace

bool isInRuleBook(const rulebook::Entry& entry) {
    return entry.provenance != rulebook::Provenance::Maker;
}

QString noteTitle(const rulebook::Finding& finding, const words::Words& words) {
    return words.findingTitle(finding.kind) + QStringLiteral(": ") + words.outcome(finding.outcome);
}

std::optional<NoteBar> barOf(const rulebook::Finding& finding) {
    if (!finding.measured) {
        return std::nullopt;
    }
    const double measured = finding.measured->value.toDouble();
    if (finding.comparison == rulebook::Comparison::Within && !finding.limits.empty()) {
        const auto range = rulebook::rangeOf(finding.limits.front());
        if (range && range->unit == finding.measured->unit) {
            return scaled(measured, range->least.toDouble(), range->most.toDouble(), true);
        }
    }
    if (!finding.limit || finding.limit->unit != finding.measured->unit ||
        finding.limit->value.toDouble() <= 0) {
        return std::nullopt;
    }
    return scaled(measured, 0, finding.limit->value.toDouble(), false);
}

NotePlan planNote(const judging::Judged& judged, const words::Words& words, bool isSourceOpen, double width) {
    const rulebook::Finding& finding = judged.finding;
    NotePlan plan;
    Column column(plan, width);
    placeHead(plan, column, judged, words, width);
    if (auto bar = barOf(finding)) {
        bar->box = QRectF(kLeft, column.y() + 7, width - kLeft - kRight, kBarHeight);
        column.moveTo(bar->box.bottom() + 1);
        plan.bar = std::move(bar);
    }
    column.add(words.sentence(finding.why), TypeRole::Small, Role::Ink, 6);
    column.add(words::lacking(words, judged.lacking), TypeRole::Small, Role::Ink, 3);
    for (const rulebook::Sentence& note : finding.notes) {
        column.add(words.sentence(note), TypeRole::Small, Role::SoftInk, 3);
    }
    plan.sourceLine = column.add(sourceLine(finding, words, isSourceOpen), TypeRole::Small, Role::SoftInk, 5);
    if (isSourceOpen) {
        for (const rulebook::Entry& entry : finding.limits) {
            plan.rules.append(placeSource(column, entry, words));
        }
    }
    plan.height = std::ceil(column.y() + kTop);
    return plan;
}

}  // namespace hearth::ui::input
