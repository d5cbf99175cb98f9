// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/line_list.h"

#include "ui/look/look.h"
#include "ui/shell/kit.h"
#include "ui/shell/paged.h"

#include <QAbstractListModel>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <utility>

namespace hearth::ui::shell {

namespace {

constexpr int kRowPad = 6;
constexpr int kShape = 16;
constexpr int kPictureWide = 72;
constexpr int kPictureHigh = 54;

constexpr int kLeftPad = 12;
constexpr int kRightPad = 10;

/// Of a title that may take several lines, in a row of that width.
int titleHeight(const Line& line, int width) {
    const int room = width - kLeftPad - kRightPad - (line.outcome ? kShape + look::kGap : 0);
    return QFontMetrics(look::font(look::TypeRole::Body))
        .boundingRect(QRect(0, 0, qMax(room, 1), 10000), Qt::TextWordWrap, line.title)
        .height();
}

int rowHeight(const Line& line) {
    if (line.heading) {
        return look::kGap + QFontMetrics(look::font(look::TypeRole::Small)).height() + kRowPad;
    }
    const int first = QFontMetrics(look::font(look::TypeRole::Body)).height();
    const int second = QFontMetrics(look::font(look::TypeRole::Small)).height();
    const bool two = !line.detail.isEmpty() || !line.rightDetail.isEmpty();
    const int words = first + (two ? second : 0);
    return 2 * kRowPad + (line.picture.isNull() ? words : qMax(words, kPictureHigh));
}

QString spoken(const Line& line) {
    QStringList parts{line.title, line.detail, line.right, line.rightDetail};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

/// Text at the left and at the right of one line of a row; the left one gives way.
void paintPair(QPainter& painter, const QRect& box, const QString& left, const QString& right) {
    const QFontMetrics metrics(painter.font());
    const int rightWidth = right.isEmpty() ? 0 : metrics.horizontalAdvance(right) + look::kGap;
    painter.drawText(box, Qt::AlignRight | Qt::AlignTop, right);
    const QRect leftBox = box.adjusted(0, 0, -rightWidth, 0);
    painter.drawText(leftBox, Qt::AlignLeft | Qt::AlignTop,
                     metrics.elidedText(left, Qt::ElideRight, leftBox.width()));
}

}  // namespace

class LineList::Model : public QAbstractListModel {
  public:
    using QAbstractListModel::QAbstractListModel;

    void fill(std::vector<Line> lines) {
        beginResetModel();
        m_source.reset();
        m_lines = std::move(lines);
        m_count = static_cast<int>(m_lines.size());
        endResetModel();
    }
    void fill(std::unique_ptr<LineSource> source) {
        beginResetModel();
        m_lines.clear();
        m_source = std::move(source);
        m_count = m_source->count();
        m_paged.readBy([this](int first, int count) { return m_source->lines(first, count); });
        endResetModel();
    }
    [[nodiscard]] LineSource* source() const { return m_source.get(); }
    [[nodiscard]] const Line& at(int row) const {
        return m_source == nullptr ? m_lines[static_cast<std::size_t>(row)] : m_paged.at(row);
    }
    void have(int first, int last) const {
        if (m_source != nullptr) {
            m_paged.have(first, last);
        }
    }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : m_count;
    }
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override {
        const bool heading = index.isValid() && m_source == nullptr && at(index.row()).heading;
        return heading ? Qt::NoItemFlags : QAbstractListModel::flags(index);
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid()) {
            return {};
        }
        const Line& line = at(index.row());
        if (role == Qt::DisplayRole) {
            return line.title;
        }
        if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) {
            return spoken(line);
        }
        return {};
    }

  private:
    std::vector<Line> m_lines;
    std::unique_ptr<LineSource> m_source;
    Paged<Line> m_paged;
    int m_count = 0;
};

class LineList::Delegate : public QStyledItemDelegate {
  public:
    Delegate(const Model& model, LineList* list) : QStyledItemDelegate(list), m_model(model), m_list(list) {}

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const Line& line = m_model.at(index.row());
        if (m_list->wordWrap()) {
            return {100, 2 * kRowPad + titleHeight(line, m_list->viewport()->width())};
        }
        return {100, rowHeight(line)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Line& line = m_model.at(index.row());
        const auto scheme = currentScheme();
        painter->save();
        if (line.heading) {
            painter->setFont(look::font(look::TypeRole::Small));
            painter->setPen(look::colour(look::Role::SoftInk, scheme));
            painter->drawText(option.rect.adjusted(kLeftPad, 0, -kRightPad, -kRowPad / 2),
                              Qt::AlignLeft | Qt::AlignBottom, line.title);
            painter->restore();
            return;
        }
        if (m_list->currentIndex() == index) {
            painter->fillRect(option.rect, look::colour(look::Role::KeyGround, scheme));
            painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())),
                              look::colour(look::Role::Key, scheme));
            if (m_list->hasFocus()) {
                painter->setPen(QPen(look::colour(look::Role::Focus, scheme), 1.5));
                painter->drawRect(QRectF(option.rect).adjusted(0.75, 0.75, -0.75, -0.75));
            }
        }
        painter->setPen(look::colour(look::Role::Line, scheme));
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        paintWords(*painter, option.rect.adjusted(kLeftPad, kRowPad, -kRightPad, -kRowPad), line);
        painter->restore();
    }

  private:
    void paintWords(QPainter& painter, QRect box, const Line& line) const {
        const auto scheme = currentScheme();
        if (line.outcome) {
            look::drawOutcome(painter, QRectF(box.left(), box.top() + 1, kShape, kShape), *line.outcome,
                              scheme);
            box.setLeft(box.left() + kShape + look::kGap);
        }
        if (!line.picture.isNull()) {
            const QSize fit = line.picture.size().scaled(kPictureWide, kPictureHigh, Qt::KeepAspectRatio);
            painter.drawPixmap(QRect(box.topLeft(), fit), line.picture);
            box.setLeft(box.left() + kPictureWide + look::kGap);
        }
        painter.setFont(look::font(look::TypeRole::Body));
        painter.setPen(look::colour(look::Role::Ink, scheme));
        if (m_list->wordWrap()) {
            painter.drawText(box, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, line.title);
            return;
        }
        paintPair(painter, box, line.title, line.right);
        box.setTop(box.top() + QFontMetrics(painter.font()).height());
        painter.setFont(look::font(look::TypeRole::Small));
        painter.setPen(look::colour(look::Role::SoftInk, scheme));
        paintPair(painter, box, line.detail, line.rightDetail);
    }

    const Model& m_model;
    LineList* m_list;
};

LineList::LineList(const QString& name, const QString& empty, QWidget* parent)
    : QListView(parent), m_model(new Model(this)), m_empty(empty) {
    setAccessibleName(name);
    setModel(m_model);
    setItemDelegate(new Delegate(*m_model, this));
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setUniformItemSizes(false);
    setTabKeyNavigation(false);
    connect(this, &QListView::doubleClicked, this,
            [this](const QModelIndex& index) { Q_EMIT opened(index.row()); });
}

LineList::~LineList() = default;

template <class Fill>
void LineList::refill(Fill fill) {
    const QString key = currentKey();
    m_filling = true;
    fill();
    setUniformItemSizes(m_model->source() != nullptr);
    if (!key.isEmpty()) {
        setCurrentKey(key);
    }
    m_filling = false;
    if (m_growing) {
        updateGeometry();
    }
    viewport()->update();
}

void LineList::setLines(std::vector<Line> lines) {
    refill([&] { m_model->fill(std::move(lines)); });
}

void LineList::setSource(std::unique_ptr<LineSource> source) {
    refill([&] { m_model->fill(std::move(source)); });
}

void LineList::setEmptyText(const QString& text) {
    m_empty = text;
    viewport()->update();
}

int LineList::count() const {
    return m_model->rowCount();
}

const Line& LineList::line(int row) const {
    return m_model->at(row);
}

int LineList::currentRow() const {
    return currentIndex().isValid() ? currentIndex().row() : -1;
}

QString LineList::currentKey() const {
    return currentRow() < 0 ? QString() : line(currentRow()).key;
}

void LineList::setCurrentRow(int row) {
    const bool before = std::exchange(m_filling, true);
    setCurrentIndex(row < 0 ? QModelIndex() : m_model->index(row));
    m_filling = before;
}

bool LineList::setCurrentKey(const QString& key) {
    if (auto* source = m_model->source()) {
        const int row = source->rowOf(key);
        if (row >= 0 && row < count()) {
            setCurrentRow(row);
        }
        return row >= 0;
    }
    for (int row = 0; row < count(); ++row) {
        if (line(row).key == key) {
            setCurrentRow(row);
            return true;
        }
    }
    return false;
}

void LineList::setGrowing(bool growing) {
    m_growing = growing;
    setVerticalScrollBarPolicy(growing ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    setSizePolicy(QSizePolicy::Expanding, growing ? QSizePolicy::Fixed : QSizePolicy::Expanding);
}

void LineList::setWrapping(bool wrapping) {
    setWordWrap(wrapping);
    setResizeMode(wrapping ? Adjust : Fixed);
}

QSize LineList::sizeHint() const {
    if (!m_growing) {
        return {300, 200};
    }
    int height =
        count() == 0 ? 2 * kRowPad + 2 * QFontMetrics(look::font(look::TypeRole::Small)).height() : 2;
    for (int row = 0; row < count(); ++row) {
        height += wordWrap() ? sizeHintForRow(row) : rowHeight(line(row));
    }
    return {300, height};
}

QSize LineList::minimumSizeHint() const {
    return m_growing ? QSize(120, sizeHint().height()) : QSize(160, 80);
}

/// Lines that wrap are higher where it is narrower.
void LineList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    if (m_growing && wordWrap() && event->size().width() != event->oldSize().width()) {
        updateGeometry();
    }
}

void LineList::paintEvent(QPaintEvent* event) {
    if (count() > 0) {
        const int first = std::max(indexAt({0, 0}).row(), 0);
        const int last = indexAt({0, viewport()->height() - 1}).row();
        m_model->have(first, last < 0 ? count() - 1 : last);
    }
    QListView::paintEvent(event);
    if (count() > 0) {
        return;
    }
    QPainter painter(viewport());
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(look::Role::SoftInk, currentScheme()));
    const QRect box = viewport()->rect().adjusted(12, kRowPad, -12, -kRowPad);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_empty);
}

void LineList::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers() == Qt::NoModifier) {
        if (currentRow() >= 0) {
            Q_EMIT opened(currentRow());
        }
        event->accept();
        return;
    }
    QListView::keyPressEvent(event);
}

void LineList::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    viewport()->update();
    if (currentRow() < 0 && count() > 0) {
        const bool headed = m_model->source() == nullptr && line(0).heading && count() > 1;
        setCurrentIndex(m_model->index(headed ? 1 : 0));
    }
}

void LineList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    viewport()->update();
    if (!m_filling) {
        Q_EMIT moved(current.isValid() ? current.row() : -1);
    }
}

}  // namespace hearth::ui::shell
