// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/spine.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"

#include <QAbstractListModel>
#include <QApplication>
#include <QCoreApplication>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QStyledItemDelegate>

#include <algorithm>

namespace hearth::ui::visit {

namespace {

constexpr double kShape = 14;
constexpr double kShapeLeft = 14;

/// A name and its word below, which come a little closer than two lines would.
int lineHeight() {
    const QFontMetrics title(look::font(look::TypeRole::Heading));
    const QFontMetrics word(look::font(look::TypeRole::Small));
    return title.height() + word.height() + 6;
}

QString count(const char* text, int n) {
    return QCoreApplication::translate("hearth::ui::visit::Spine", text, nullptr, n);
}

}  // namespace

QString wordOf(const PartState& state) {
    switch (state.word) {
        case PartWord::NotStarted:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "not started"), -1);
        case PartWord::Running:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "running"), -1);
        case PartWord::Fails:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "%n failing"), state.count);
        case PartWord::LookAgain:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "%n to look at"), state.count);
        case PartWord::ToFill:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "%n to fill in"), state.count);
        case PartWord::NoVerdict:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "%n without a verdict"), state.count);
        case PartWord::Defects:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "not in order"), -1);
        case PartWord::StillOpen:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "filled in, still open"), -1);
        case PartWord::NoneThere:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "none"), -1);
        case PartWord::Listed:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "%n listed"), state.count);
        case PartWord::ReadyToIssue:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "ready to issue"), -1);
        case PartWord::Issued:
            return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "issued"), -1);
        case PartWord::Done:
            break;
    }
    return count(QT_TRANSLATE_NOOP("hearth::ui::visit::Spine", "done"), -1);
}

class Spine::Model : public QAbstractListModel {
  public:
    using QAbstractListModel::QAbstractListModel;
    std::vector<SpineLine> lines;

    void fill(const std::vector<SpineLine>& now) {
        const bool sameLength = now.size() == lines.size();
        if (sameLength) {
            lines = now;
            Q_EMIT dataChanged(index(0), index(static_cast<int>(lines.size()) - 1));
            return;
        }
        beginResetModel();
        lines = now;
        endResetModel();
    }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        const SpineLine& line = lines[static_cast<std::size_t>(index.row())];
        if (role == Qt::DisplayRole) {
            return line.title;
        }
        const bool isWhole = role == Qt::AccessibleTextRole || role == Qt::ToolTipRole;
        return isWhole ? QVariant(line.title + QStringLiteral(", ") + line.word) : QVariant();
    }
};

class Spine::Delegate : public QStyledItemDelegate {
  public:
    Delegate(const Model& model, Spine* spine) : QStyledItemDelegate(spine), m_model(model), m_spine(spine) {}

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
        return {120, lineHeight()};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const SpineLine& line = m_model.lines[static_cast<std::size_t>(index.row())];
        const bool isCurrent = m_spine->currentIndex() == index;
        if (isCurrent) {
            paintFrame(*painter, option.rect);
        }
        paintShape(*painter, option.rect, line, index.row());
        paintWords(*painter, option.rect, line, isCurrent);
        painter->restore();
    }

  private:
    void paintFrame(QPainter& painter, const QRect& box) const {
        const auto scheme = shell::currentScheme();
        painter.setBrush(look::colour(look::Role::Sheet, scheme));
        painter.setPen(QPen(look::colour(look::Role::Key, scheme), m_spine->hasFocus() ? 2.5 : 1.2));
        painter.drawRoundedRect(QRectF(box).adjusted(1.5, 1.5, -1.5, -1.5), 4, 4);
    }

    void paintShape(QPainter& painter, const QRect& box, const SpineLine& line, int row) const {
        const auto scheme = shell::currentScheme();
        const double middle = box.left() + kShapeLeft + kShape / 2;
        const double top = box.top() + (box.height() - kShape) / 2.0;
        painter.setPen(QPen(look::colour(look::Role::Line, scheme), 1.5));
        if (row > 0) {
            painter.drawLine(QPointF(middle, box.top()), QPointF(middle, top - 2));
        }
        if (row + 1 < m_model.rowCount()) {
            painter.drawLine(QPointF(middle, top + kShape + 2), QPointF(middle, box.bottom() + 1));
        }
        const QRectF shape(middle - kShape / 2, top, kShape, kShape);
        if (line.state == PartWord::Running) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(look::colour(look::Role::Key, scheme));
            painter.drawEllipse(shape.adjusted(1, 1, -1, -1));
            return;
        }
        look::drawOutcome(painter, shape, shapeOf(line.state), scheme);
    }

    static void paintWords(QPainter& painter, const QRect& box, const SpineLine& line, bool isCurrent) {
        const auto scheme = shell::currentScheme();
        const QFont title = look::font(isCurrent ? look::TypeRole::Heading : look::TypeRole::Body);
        const QFont small = look::font(look::TypeRole::Small);
        const QRectF words = QRectF(box).adjusted(kShapeLeft + kShape + 10, 3, -6, -3);
        const QFontMetricsF metrics(title);
        const QFontMetricsF smallMetrics(small);
        const double high = metrics.height() + (line.word.isEmpty() ? 0 : smallMetrics.height() - 2);
        const double top = words.center().y() - high / 2;
        painter.setFont(title);
        painter.setPen(look::colour(isCurrent ? look::Role::Key : look::Role::Ink, scheme));
        // Several tests, or boilers, differ at the end of their names.
        painter.drawText(QRectF(words.left(), top, words.width(), metrics.height()),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(line.title, Qt::ElideMiddle, words.width()));
        painter.setFont(small);
        painter.setPen(look::colour(look::Role::SoftInk, scheme));
        painter.drawText(
            QRectF(words.left(), top + metrics.height() - 2, words.width(), smallMetrics.height()),
            Qt::AlignLeft | Qt::AlignVCenter,
            smallMetrics.elidedText(line.word, Qt::ElideRight, words.width()));
    }

    const Model& m_model;
    Spine* m_spine;
};

Spine::Spine(QWidget* parent) : QListView(parent), m_model(new Model(this)) {
    setModel(m_model);
    setItemDelegate(new Delegate(*m_model, this));
    setAccessibleName(tr("Parts of the sheet"));
    setFrameShape(QFrame::NoFrame);
    setObjectName(QStringLiteral("spine"));
    setEditTriggers(NoEditTriggers);
    setSelectionMode(NoSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTabKeyNavigation(false);
    // No box around it and no ground of its own: it stands on the desk.
    setStyleSheet(QStringLiteral("QListView { border: none; background: transparent; }"));
    viewport()->setAutoFillBackground(false);
}

Spine::~Spine() = default;

const std::vector<SpineLine>& Spine::lines() const {
    return m_model->lines;
}

void Spine::setLines(const std::vector<SpineLine>& lines) {
    if (lines == m_model->lines) {
        return;
    }
    const int row = currentIndex().row();
    m_model->fill(lines);
    if (row >= 0) {
        setCurrentIndex(m_model->index(std::min(row, m_model->rowCount() - 1)));
    }
    updateGeometry();
}

void Spine::setCurrent(const PartRef& ref) {
    for (std::size_t row = 0; row < m_model->lines.size(); ++row) {
        if (m_model->lines[row].ref == ref && currentIndex().row() != static_cast<int>(row)) {
            setCurrentIndex(m_model->index(static_cast<int>(row)));
            viewport()->update();
        }
    }
}

QSize Spine::sizeHint() const {
    return {208, lineHeight() * m_model->rowCount() + 2};
}

void Spine::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && event->modifiers() == Qt::NoModifier && currentIndex().isValid()) {
        Q_EMIT chosen(m_model->lines[static_cast<std::size_t>(currentIndex().row())].ref);
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return;
    }
    if (isEnter || event->key() == Qt::Key_PageUp || event->key() == Qt::Key_PageDown) {
        event->ignore();  // the sheet's
        return;
    }
    QListView::keyPressEvent(event);
    viewport()->update();
}

void Spine::keyboardSearch(const QString& search) {
    const bool goesOn =
        m_sinceTyped.isValid() && m_sinceTyped.elapsed() < QApplication::keyboardInputInterval();
    m_typed = goesOn ? m_typed + search : search;
    m_sinceTyped.start();
    const auto isMeant = [this](const QString& title) {
        static const QRegularExpression between(QStringLiteral("[^\\w]+"),
                                                QRegularExpression::UseUnicodePropertiesOption);
        const QStringList words = title.split(between, Qt::SkipEmptyParts);
        return title.startsWith(m_typed, Qt::CaseInsensitive) ||
               std::any_of(words.begin(), words.end(), [this](const QString& word) {
                   return word.startsWith(m_typed, Qt::CaseInsensitive);
               });
    };
    // The same first letter again goes to the next one.
    const int rows = m_model->rowCount();
    const int from = currentIndex().isValid() ? currentIndex().row() + (m_typed.size() == 1 ? 1 : 0) : 0;
    for (int step = 0; step < rows; ++step) {
        const int row = (from + step) % rows;
        if (isMeant(m_model->lines[static_cast<std::size_t>(row)].title)) {
            setCurrentIndex(m_model->index(row));
            return;
        }
    }
}

void Spine::mouseReleaseEvent(QMouseEvent* event) {
    QListView::mouseReleaseEvent(event);
    const QModelIndex at = indexAt(event->pos());
    if (at.isValid()) {
        Q_EMIT chosen(m_model->lines[static_cast<std::size_t>(at.row())].ref);
    }
}

void Spine::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && m_model->rowCount() > 0) {
        setCurrentIndex(m_model->index(0));
    }
    viewport()->update();
}

void Spine::focusOutEvent(QFocusEvent* event) {
    QListView::focusOutEvent(event);
    viewport()->update();
}

}  // namespace hearth::ui::visit
