// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/finding_note.h"

#include "ui/input/note_layout.h"
#include "ui/look/look.h"
#include "ui/words/question_words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace hearth::ui::input {

namespace {

constexpr int kUsualWidth = 304;

void paintBar(QPainter& painter, const NoteBar& bar, rulebook::Outcome outcome, look::Scheme scheme) {
    const auto at = [&bar](double share) { return bar.box.left() + share * bar.box.width(); };
    const double round = bar.box.height() / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(look::colour(look::Role::Line, scheme));
    painter.drawRoundedRect(bar.box, round, round);
    const double left = at(bar.from);
    const double wide = std::max(at(bar.to) - left, bar.box.height());
    painter.setBrush(look::colour(look::inkOf(outcome), scheme));
    painter.drawRoundedRect(QRectF(left, bar.box.top(), wide, bar.box.height()), round, round);
    painter.setBrush(look::colour(look::Role::Ink, scheme));
    for (const double limit : bar.limits) {
        painter.drawRect(QRectF(at(limit) - 1, bar.box.top() - 4, 2, bar.box.height() + 8));
    }
}

}  // namespace

FindingNote::FindingNote(const words::Words& words, QWidget* parent) : QWidget(parent), m_words(words) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void FindingNote::show(const judging::Judged& judged) {
    m_judged = judged;
    const QString measured = m_words.measuredAgainst(judged.finding);
    const QString title = noteTitle(judged.finding, m_words);
    setAccessibleName(measured.isEmpty() ? title : title + QStringLiteral(", ") + measured);
    describe();
    updateGeometry();
    update();
}

/// What a screen reader says after the name: all that the note shows.
void FindingNote::describe() {
    const rulebook::Finding& finding = m_judged.finding;
    QStringList said{m_words.sentence(finding.why), words::lacking(m_words, m_judged.lacking)};
    for (const rulebook::Sentence& note : finding.notes) {
        said << m_words.sentence(note);
    }
    for (const rulebook::Entry& limit : finding.limits) {
        if (m_sourceOpen) {
            said << m_words.rule(limit.key.rule) + QStringLiteral(": ") + m_words.ruleValue(limit)
                 << m_words.source(limit) << words::qstring(limit.source) << words::qstring(limit.doubt);
        }
    }
    said.removeAll(QString());
    setAccessibleDescription(said.join(u' '));
}

std::optional<rulebook::RuleKey> FindingNote::rule() const {
    const auto& limits = m_judged.finding.limits;
    const auto found = std::find_if(limits.begin(), limits.end(), isInRuleBook);
    return found == limits.end() ? std::nullopt : std::optional(found->key);
}

void FindingNote::setSourceOpen(bool open) {
    if (m_sourceOpen != open) {
        m_sourceOpen = open;
        describe();
        updateGeometry();
        update();
    }
}

QSize FindingNote::sizeHint() const {
    return {kUsualWidth, heightForWidth(kUsualWidth)};
}

int FindingNote::heightForWidth(int width) const {
    return static_cast<int>(std::ceil(planNote(m_judged, m_words, m_sourceOpen, width).height));
}

void FindingNote::paintEvent(QPaintEvent*) {
    const look::Scheme scheme = look::schemeInUse();
    const rulebook::Outcome outcome = m_judged.finding.outcome;
    const NotePlan plan = planNote(m_judged, m_words, m_sourceOpen, width());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), look::colour(look::groundOf(outcome), scheme));
    painter.fillRect(QRect(0, 0, 3, height()), look::colour(look::inkOf(outcome), scheme));
    look::drawOutcome(painter, plan.shape, outcome, scheme);
    if (plan.bar) {
        paintBar(painter, *plan.bar, outcome, scheme);
    }
    for (const NoteText& text : plan.texts) {
        painter.setFont(text.font);
        painter.setPen(look::colour(text.role, scheme));
        const Qt::Alignment side = text.isRight ? Qt::AlignRight : Qt::AlignLeft;
        painter.drawText(text.box, static_cast<int>(side | Qt::AlignTop) | Qt::TextWordWrap, text.text);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look::colour(look::Role::Focus, scheme), 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void FindingNote::keyPressEvent(QKeyEvent* event) {
    const bool isBare = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (event->key() == Qt::Key_F1 && event->modifiers() == Qt::ShiftModifier) {
        if (const auto key = rule()) {
            Q_EMIT ruleWanted(*key);
        }
        return;
    }
    switch (isBare ? event->key() : 0) {
        case Qt::Key_F1:
            setSourceOpen(!m_sourceOpen);
            break;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
            Q_EMIT chosen();
            break;
        case Qt::Key_Escape:
            if (m_sourceOpen) {
                setSourceOpen(false);
                break;
            }
            [[fallthrough]];
        default:
            QWidget::keyPressEvent(event);
    }
}

void FindingNote::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        QWidget::mousePressEvent(event);
        return;
    }
    const NotePlan plan = planNote(m_judged, m_words, m_sourceOpen, width());
    if (plan.sourceLine.contains(event->position())) {
        setSourceOpen(!m_sourceOpen);
        return;
    }
    for (qsizetype i = 0; i < plan.rules.size(); ++i) {
        const rulebook::Entry& limit = m_judged.finding.limits[static_cast<std::size_t>(i)];
        if (plan.rules[i].contains(event->position()) && isInRuleBook(limit)) {
            Q_EMIT ruleWanted(rulebook::RuleKey(limit.key));
            return;
        }
    }
    Q_EMIT chosen();
}

}  // namespace hearth::ui::input
