// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/input/choice_field.h"

#include "ui/look/look.h"

#include <QAccessible>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QSet>
#include <QVariant>

#include <algorithm>

namespace hearth::ui::input {

namespace {

constexpr int kSegmentHeight = 28;
constexpr int kRing = 10;
constexpr int kPadding = 9;
constexpr int kBetween = 4;
constexpr int kEdge = 2;  // room for the focus ring

struct Marked {
    QString label;
    qsizetype letterAt = -1;
};

/// Takes out the & and finds the letter: the one after &, else the first that no earlier choice has taken.
Marked markLetter(const QString& given, QSet<QChar>& taken) {
    Marked marked{given, -1};
    const qsizetype sign = given.indexOf(u'&');
    if (sign >= 0 && sign + 1 < given.size()) {
        marked.label.remove(sign, 1);
        marked.letterAt = sign;
    }
    for (qsizetype i = 0; marked.letterAt < 0 && i < marked.label.size(); ++i) {
        if (marked.label[i].isLetterOrNumber() && !taken.contains(marked.label[i].toLower())) {
            marked.letterAt = i;
        }
    }
    if (marked.letterAt >= 0) {
        taken.insert(marked.label[marked.letterAt].toLower());
    }
    return marked;
}

QFont segmentFont(bool isChosen) {
    QFont font = look::font(look::TypeRole::Body);
    font.setBold(isChosen);
    return font;
}

}  // namespace

ChoiceField::ChoiceField(QWidget* parent, const std::vector<ChoiceItem>& choices, Choose choose)
    : QWidget(parent), m_choose(choose) {
    QSet<QChar> taken;
    for (const ChoiceItem& choice : choices) {
        const Marked marked = markLetter(choice.label, taken);
        m_segments.append({choice.code, marked.label, marked.letterAt});
    }
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);  // a row that wraps is higher
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int ChoiceField::chosen() const {
    for (int i = 0; i < m_segments.size(); ++i) {
        if (m_segments[i].code == m_code) {
            return i;
        }
    }
    return -1;
}

bool ChoiceField::isChosen(int index) const {
    return m_choose == Choose::One ? index == chosen() : m_code.split(u' ').contains(m_segments[index].code);
}

int ChoiceField::cursor() const {
    return m_choose == Choose::One ? std::max(0, chosen()) : m_at;
}

/// Chooses one of several, or takes it away; the codes stand in the order of the choices.
void ChoiceField::toggle(int index) {
    QStringList codes;
    for (int i = 0; i < m_segments.size(); ++i) {
        if (isChosen(i) != (i == index)) {
            codes << m_segments[i].code;
        }
    }
    m_at = index;
    choose(codes.join(u' '));
    update();
}

void ChoiceField::setCode(const QString& code) {
    if (m_code == code) {
        return;
    }
    m_code = code;
    update();
#ifndef QT_NO_ACCESSIBILITY
    QAccessibleValueChangeEvent event(this, chosenLabel());
    QAccessible::updateAccessibility(&event);
#endif
}

QString ChoiceField::chosenLabel() const {
    QStringList labels;
    for (int i = 0; i < m_segments.size(); ++i) {
        if (isChosen(i)) {
            labels << m_segments[i].label;
        }
    }
    return labels.isEmpty() ? m_code : labels.join(QStringLiteral(", "));
}

QString ChoiceField::letterOf(const QString& code) const {
    for (const Segment& segment : m_segments) {
        if (segment.code == code && segment.letterAt >= 0) {
            return segment.label[segment.letterAt].toUpper();
        }
    }
    return {};
}

QString ChoiceField::keysInWords() const {
    QStringList keys;
    for (const Segment& segment : m_segments) {
        const QString letter = letterOf(segment.code);
        keys << (letter.isEmpty() ? segment.label : letter + u' ' + segment.label);
    }
    return keys.join(QStringLiteral(", "));
}

void ChoiceField::setReadOnly(bool readOnly) {
    m_readOnly = readOnly;
    update();
}

int ChoiceField::segmentWidth(const Segment& segment) const {
    // As wide as when chosen, so that choosing moves nothing.
    return QFontMetrics(segmentFont(true)).horizontalAdvance(segment.label) + kRing + 3 * kPadding - 2;
}

QList<QRectF> ChoiceField::segmentBoxes(int width) const {
    QList<QRectF> boxes;
    int x = kEdge;
    int y = kEdge;
    for (const Segment& segment : m_segments) {
        const int wanted = std::min(segmentWidth(segment), std::max(40, width - 2 * kEdge));
        if (x > kEdge && x + wanted > width - kEdge) {
            x = kEdge;
            y += kSegmentHeight + kBetween;
        }
        boxes.append(QRectF(x, y, wanted, kSegmentHeight));
        x += wanted + kBetween;
    }
    return boxes;
}

QSize ChoiceField::sizeHint() const {
    int width = 2 * kEdge - kBetween;
    for (const Segment& segment : m_segments) {
        width += segmentWidth(segment) + kBetween;
    }
    return {std::max(width, 40), kSegmentHeight + 2 * kEdge};
}

QSize ChoiceField::minimumSizeHint() const {
    int widest = 40;
    for (const Segment& segment : m_segments) {
        widest = std::max(widest, segmentWidth(segment));
    }
    return {std::min(widest, 240) + 2 * kEdge, kSegmentHeight + 2 * kEdge};
}

int ChoiceField::heightForWidth(int width) const {
    const QList<QRectF> boxes = segmentBoxes(width);
    return boxes.isEmpty() ? kSegmentHeight : static_cast<int>(boxes.last().bottom()) + kEdge;
}

/// A ring with a dot where one is chosen, a box with a tick where several may be.
void ChoiceField::paintMark(QPainter& painter, const QPointF& centre, bool isChosen) const {
    const look::Scheme scheme = look::schemeInUse();
    const QColor key = look::colour(look::Role::Key, scheme);
    const double half = kRing / 2.0 - 0.6;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(isChosen ? key : look::colour(look::Role::SoftInk, scheme), 1.2));
    if (m_choose == Choose::Several) {
        painter.drawRect(QRectF(centre.x() - half, centre.y() - half, 2 * half, 2 * half));
        if (isChosen) {
            painter.setPen(QPen(key, 1.8));
            painter.drawPolyline(QPolygonF(
                {centre + QPointF(-2.6, 0), centre + QPointF(-0.6, 2.4), centre + QPointF(3, -2.6)}));
        }
        return;
    }
    painter.drawEllipse(centre, half, half);
    if (isChosen) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(key);
        painter.drawEllipse(centre, 2.6, 2.6);
    }
}

void ChoiceField::paintSegment(QPainter& painter, int index, const QRectF& box) const {
    using look::Role;
    const look::Scheme scheme = look::schemeInUse();
    const auto of = [scheme](Role role) { return look::colour(role, scheme); };
    const Segment& segment = m_segments[index];
    const bool isChosen = this->isChosen(index);
    const bool hasProblem = property("problem").toBool();
    const Role edge = hasProblem ? Role::FieldProblem : isChosen ? Role::Key : Role::FieldEdge;
    painter.setPen(QPen(of(edge), 1));
    painter.setBrush(of(isChosen ? Role::KeyGround : m_readOnly ? Role::Desk : Role::FieldGround));
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);

    const QPointF centre(box.left() + kPadding + kRing / 2.0, box.center().y());
    paintMark(painter, centre, isChosen);

    const QFont font = segmentFont(isChosen);
    const QFontMetricsF metrics(font);
    const QRectF words = box.adjusted(kPadding + kRing + kPadding - 2, 0, -kPadding + 2, 0);
    const QString label = metrics.elidedText(segment.label, Qt::ElideRight, words.width() + 1);
    painter.setFont(font);
    painter.setPen(of(isChosen ? Role::Key : Role::Ink));
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextSingleLine, label);
    if (segment.letterAt >= 0 && segment.letterAt < label.size() && !m_readOnly) {
        const double left = words.left() + metrics.horizontalAdvance(label.left(segment.letterAt));
        const double wide = metrics.horizontalAdvance(label[segment.letterAt]);
        const double y = words.center().y() + (metrics.ascent() - metrics.descent()) / 2 + 2.5;
        painter.setPen(QPen(of(isChosen ? Role::Key : Role::SoftInk), 1));
        painter.drawLine(QPointF(left, y), QPointF(left + wide, y));
    }
}

void ChoiceField::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QList<QRectF> boxes = segmentBoxes(width());
    for (int i = 0; i < boxes.size(); ++i) {
        paintSegment(painter, i, boxes[i]);
    }
    if (hasFocus() && !boxes.isEmpty()) {
        const QRectF around = boxes[cursor()];
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look::colour(look::Role::Focus, look::schemeInUse()), 2));
        painter.drawRoundedRect(around.adjusted(0, 0, 0, 0), 3.5, 3.5);
    }
}

void ChoiceField::choose(const QString& code) {
    if (!m_readOnly) {
        setCode(code);
    }
}

bool ChoiceField::stepBy(int key) {
    const int count = static_cast<int>(m_segments.size());
    const bool isForward = key == Qt::Key_Right || key == Qt::Key_Down;
    const bool isBack = key == Qt::Key_Left || key == Qt::Key_Up;
    if (count == 0 || (!isForward && !isBack)) {
        return false;
    }
    if (m_choose == Choose::Several) {
        m_at = std::clamp(m_at + (isForward ? 1 : -1), 0, count - 1);
        update();
        return true;
    }
    const int at = chosen();
    const int next =
        at < 0 ? (isForward ? 0 : count - 1) : std::clamp(at + (isForward ? 1 : -1), 0, count - 1);
    choose(m_segments[next].code);
    Q_EMIT moved();
    return true;
}

bool ChoiceField::pickByLetter(const QString& letter) {
    if (letter.size() != 1) {
        return false;
    }
    const bool several = m_choose == Choose::Several;
    for (int i = 0; i < m_segments.size(); ++i) {
        const Segment& segment = m_segments[i];
        const bool isMeant =
            segment.letterAt >= 0 && segment.label[segment.letterAt].toLower() == letter[0].toLower();
        if (isMeant || (several && letter[0] == u' ' && i == m_at)) {
            several ? toggle(i) : choose(segment.code);
            Q_EMIT picked();
            if (!several && !m_readOnly) {
                Q_EMIT answered();
            }
            return true;
        }
    }
    return false;
}

void ChoiceField::keyPressEvent(QKeyEvent* event) {
    const bool isBare = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    const bool clears = event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace;
    if (isBare && clears) {
        choose(QString());
        Q_EMIT moved();
    } else if (!isBare || !(stepBy(event->key()) || pickByLetter(event->text()))) {
        QWidget::keyPressEvent(event);
    }
}

void ChoiceField::mousePressEvent(QMouseEvent* event) {
    const QList<QRectF> boxes = segmentBoxes(width());
    for (int i = 0; i < boxes.size(); ++i) {
        if (boxes[i].contains(event->position()) && event->button() == Qt::LeftButton) {
            m_choose == Choose::Several ? toggle(i) : choose(m_segments[i].code);
            Q_EMIT picked();
            return;
        }
    }
    QWidget::mousePressEvent(event);
}

void ChoiceField::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) {
        update();
    }
    QWidget::changeEvent(event);
}

}  // namespace hearth::ui::input
