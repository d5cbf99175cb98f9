// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_list.h"

#include "ui/due/due_text.h"
#include "ui/shell/kit.h"
#include "ui/shell/paged.h"

#include <QAbstractListModel>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <set>
#include <utility>

namespace hearth::ui::due {

using look::Role;
using words::qstring;

namespace {

constexpr int kDueRow = 46;
constexpr int kHeaderHigh = 24;
constexpr int kMonthsBefore = 3;
constexpr int kFewestMonths = 4;
constexpr int kMostMonths = 26;

}  // namespace

DueColumns dueColumns(int width) {
    DueColumns columns;
    const int next = qBound(150, width * 17 / 100, 240);
    const int landlord = qBound(110, width * 13 / 100, 190);
    const int premises = qBound(160, width * 20 / 100, 280);
    constexpr int kDeadlineWide = 124;
    columns.state = 12;
    columns.premises = 38;
    columns.landlord = columns.premises + premises;
    columns.deadline = columns.landlord + landlord;
    columns.strip = columns.deadline + kDeadlineWide;
    columns.end = width - look::kGap;
    columns.next = columns.end - next;
    return columns;
}

class DueList::Model : public QAbstractListModel {
  public:
    Model(const store::Due& due, const words::Words& words, Failed failed, QObject* parent)
        : QAbstractListModel(parent), m_due(due), m_words(words), m_failed(std::move(failed)) {}

    void ask(const DueAsked& asked, int count) {
        beginResetModel();
        m_asked = asked;
        m_count = count;
        m_lines.readBy([this](int first, int many) { return read(first, many); });
        endResetModel();
    }
    void have(int first, int last) const { m_lines.have(first, last); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : m_count;
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid()) {
            return {};
        }
        switch (role) {
            case Qt::DisplayRole:
                return streetOf(at(index.row()).address);
            case Qt::AccessibleTextRole:
            case Qt::ToolTipRole:
                return spokenLine(at(index.row()), m_asked.today, m_words);
            default:
                return {};
        }
    }
    [[nodiscard]] const store::DueLine& at(int row) const { return m_lines.at(row); }
    [[nodiscard]] const words::Words& words() const { return m_words; }

  private:
    [[nodiscard]] std::vector<store::DueLine> read(int first, int count) const {
        auto lines = m_due.duePage(m_asked.filter, m_asked.sort, m_asked.today, first, count, m_asked.counts);
        if (!lines) {
            m_failed(lines.error());
        }
        return lines ? std::move(*lines) : std::vector<store::DueLine>();
    }

    const store::Due& m_due;
    const words::Words& m_words;
    Failed m_failed;
    DueAsked m_asked;
    int m_count = 0;
    shell::Paged<store::DueLine> m_lines;
};

/// Paints a row: two lines of words in each column, and the strip.
class DueList::Delegate : public QStyledItemDelegate {
  public:
    explicit Delegate(DueList* list) : QStyledItemDelegate(list), m_list(list) {}

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override {
        return {100, kDueRow};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const auto scheme = shell::currentScheme();
        const auto& line = m_list->m_model->at(index.row());
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        const bool current = m_list->currentRow() == index.row();
        const QRect row = option.rect;
        painter->save();
        painter->fillRect(row, look::colour(chosen ? Role::Selection : Role::Sheet, scheme));
        painter->fillRect(QRect(row.left(), row.bottom(), row.width(), 1), look::colour(Role::Line, scheme));
        const auto columns = dueColumns(row.width());
        paintWords(*painter, row, line, columns, scheme);
        const QRectF strip(columns.strip, row.top(), columns.next - columns.strip - look::kGap, row.height());
        drawGrid(*painter, strip, m_list->m_asked.today, m_list->m_scale, scheme);
        drawStrip(*painter, strip, line, m_list->m_asked.today, m_list->m_scale, scheme);
        if (current) {
            painter->fillRect(QRect(row.left(), row.top(), 3, row.height()), look::colour(Role::Key, scheme));
            if (m_list->hasFocus()) {
                painter->setPen(QPen(look::colour(Role::Focus, scheme), 2));
                painter->drawRect(row.adjusted(1, 1, -2, -2));
            }
        }
        painter->restore();
    }

  private:
    static void paintPart(QPainter& painter, const QRect& box, const QString& text, look::TypeRole type,
                          const QColor& ink, bool strong = false) {
        painter.setFont(strong ? shell::strongFont() : look::font(type));
        painter.setPen(ink);
        painter.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                         QFontMetrics(painter.font()).elidedText(text, Qt::ElideRight, box.width()));
    }
    void paintWords(QPainter& painter, const QRect& row, const store::DueLine& line,
                    const DueColumns& columns, look::Scheme scheme) const {
        const auto& words = m_list->m_model->words();
        const auto today = m_list->m_asked.today;
        const QColor ink = look::colour(Role::Ink, scheme);
        const QColor soft = look::colour(Role::SoftInk, scheme);
        const QColor state = look::colour(inkOf(line.state), scheme);
        const auto upper = [&row](int from, int to) { return QRect(from, row.top() + 4, to - from - 8, 20); };
        const auto lower = [&row](int from, int to) {
            return QRect(from, row.top() + 23, to - from - 8, 17);
        };
        using look::TypeRole;
        drawState(painter, QRectF(columns.state, row.top() + 4, 18, 20), line.state, scheme);
        paintPart(painter, upper(columns.premises, columns.landlord), streetOf(line.address), TypeRole::Body,
                  ink, line.state == calendar::DueState::Overdue);
        paintPart(painter, lower(columns.premises, columns.landlord), townOf(line.address), TypeRole::Small,
                  soft);
        paintPart(painter, upper(columns.landlord, columns.deadline), qstring(line.landlordName),
                  TypeRole::Body, ink);
        paintPart(painter, lower(columns.landlord, columns.deadline), qstring(line.agentName),
                  TypeRole::Small, soft);
        paintPart(painter, upper(columns.deadline, columns.strip),
                  line.deadline ? words.shortDate(*line.deadline) : DueList::tr("no date"), TypeRole::Body,
                  line.deadline ? state : soft);
        paintPart(painter, lower(columns.deadline, columns.strip),
                  line.latest ? DueList::tr("look again") : distanceText(line, today), TypeRole::Small,
                  state);
        paintPart(painter, upper(columns.next, columns.end), nextText(line, today, words), TypeRole::Body,
                  ink);
        paintPart(painter, lower(columns.next, columns.end), stateWord(line), TypeRole::Small, state);
    }

    DueList* m_list;
};

DueList::DueList(const store::Due& due, const words::Words& words, Failed failed, QWidget* parent)
    : QListView(parent), m_model(new Model(due, words, std::move(failed), this)) {
    setModel(m_model);
    setItemDelegate(new Delegate(this));
    setUniformItemSizes(true);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // the columns of the header stay over the list's
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setAccessibleName(tr("Premises by what needs doing next"));
    setMinimumHeight(kDueRow);  // what stands around it is never cut in the smallest window
    connect(this, &QListView::doubleClicked, this,
            [this](const QModelIndex& at) { Q_EMIT opened(at.row()); });
}

DueList::~DueList() = default;

void DueList::ask(const DueAsked& asked, int count) {
    const auto before = current();
    const int row = currentRow();
    m_asked = asked;
    m_model->ask(asked, count);
    fitScale();
    if (count == 0) {
        Q_EMIT chosenChanged();
        return;
    }
    // What was acted on has often moved a little; further away nobody looks for it.
    constexpr int kNear = 40;
    int now = qBound(0, row, count - 1);
    for (int i = qMax(0, row - kNear); before && i < qMin(count, row + kNear); ++i) {
        if (line(i).premises == *before) {
            now = i;
            break;
        }
    }
    setCurrentRow(now);
    Q_EMIT chosenChanged();
}

int DueList::count() const {
    return m_model->rowCount();
}

const store::DueLine& DueList::line(int row) const {
    return m_model->at(row);
}

void DueList::setCurrentRow(int row) {
    setCurrentIndex(m_model->index(row));
}

std::optional<reg::PremisesId> DueList::current() const {
    return currentIndex().isValid() ? std::optional(line(currentRow()).premises) : std::nullopt;
}

std::vector<reg::PremisesId> DueList::chosen() const {
    std::vector<int> rows;
    for (const auto& range : selectionModel()->selection()) {
        for (int row = range.top(); row <= range.bottom(); ++row) {
            rows.push_back(row);
        }
    }
    std::sort(rows.begin(), rows.end());
    std::vector<reg::PremisesId> ids;
    ids.reserve(rows.size());
    for (const int row : rows) {
        ids.push_back(line(row).premises);
    }
    if (ids.empty()) {
        if (const auto at = current()) {
            ids.push_back(*at);
        }
    }
    return ids;
}

void DueList::choose(const std::vector<reg::PremisesId>& premises) {
    std::set<reg::PremisesId> wanted(premises.begin(), premises.end());
    QItemSelection rows;
    int first = -1;
    for (int row = count() - 1; row >= 0 && !wanted.empty(); --row) {
        if (wanted.erase(line(row).premises) > 0) {
            rows.select(m_model->index(row, 0), m_model->index(row, 0));
            first = row;
        }
    }
    if (first >= 0) {
        setCurrentRow(first);
        selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
    }
}

void DueList::setEmptyText(const QString& text) {
    m_empty = text;
    viewport()->update();
}

void DueList::fitScale() {
    if (!m_asked.today.ok()) {
        return;
    }
    const auto columns = dueColumns(viewport()->width());
    const int before = qMin(kMonthsBefore, m_months / 2);
    m_scale.first = calendar::addMonths(m_asked.today, m_shift - before);
    m_scale.last = calendar::addMonths(m_asked.today, m_shift - before + m_months);
    m_scale.left = columns.strip;
    m_scale.width = qMax(1, columns.next - columns.strip - look::kGap);
    viewport()->update();
    Q_EMIT scaleChanged();
}

void DueList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    fitScale();
}

void DueList::paintEvent(QPaintEvent* event) {
    if (count() > 0) {
        const int first = qMax(indexAt({0, 0}).row(), 0);
        const int last = indexAt({0, viewport()->height() - 1}).row();
        m_model->have(first, last < 0 ? count() - 1 : last);
    }
    QListView::paintEvent(event);
    if (count() > 0) {
        return;
    }
    QPainter painter(viewport());
    painter.setFont(look::font(look::TypeRole::Body));
    painter.setPen(look::colour(Role::SoftInk, shell::currentScheme()));
    painter.drawText(viewport()->rect().adjusted(16, 16, -16, -16),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_empty);
}

void DueList::keyPressEvent(QKeyEvent* event) {
    if (shell::isEnter(*event) && event->modifiers() == Qt::NoModifier) {
        if (currentIndex().isValid()) {
            Q_EMIT opened(currentRow());
        }
        event->accept();
        return;
    }
    if (event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier) {
        const int key = event->key();
        if (key == Qt::Key_Left || key == Qt::Key_Right) {
            m_shift += key == Qt::Key_Right ? 1 : -1;
            fitScale();
            return;
        }
        if (key == Qt::Key_Plus || key == Qt::Key_Minus) {
            const int months = key == Qt::Key_Plus ? m_months * 2 / 3 : m_months * 3 / 2;
            m_months = qBound(kFewestMonths, months, kMostMonths);
            fitScale();
            return;
        }
    }
    QListView::keyPressEvent(event);
}

void DueList::focusInEvent(QFocusEvent* event) {
    QListView::focusInEvent(event);
    viewport()->update();
    if (!currentIndex().isValid() && count() > 0) {
        setCurrentRow(0);
    }
}

void DueList::selectionChanged(const QItemSelection& on, const QItemSelection& off) {
    QListView::selectionChanged(on, off);
    viewport()->update();
    Q_EMIT chosenChanged();
}

DueHeader::DueHeader(const DueList& list, QWidget* parent) : QWidget(parent), m_list(list) {
    setFixedHeight(kHeaderHigh);
    connect(&list, &DueList::scaleChanged, this, [this] { update(); });
}

void DueHeader::paintEvent(QPaintEvent*) {
    const auto scheme = shell::currentScheme();
    const auto columns = dueColumns(m_list.viewport()->width());
    QPainter painter(this);
    painter.fillRect(rect(), look::colour(Role::Sheet, scheme));
    painter.fillRect(QRect(0, height() - 1, width(), 1), look::colour(Role::Line, scheme));
    painter.setFont(look::font(look::TypeRole::Small));
    painter.setPen(look::colour(Role::SoftInk, scheme));
    const auto name = [&](int x, int end, const QString& text) {
        painter.drawText(QRect(x, 0, end - x - 8, height()), Qt::AlignVCenter | Qt::AlignLeft,
                         QFontMetrics(painter.font()).elidedText(text, Qt::ElideRight, end - x - 8));
    };
    name(columns.premises, columns.landlord, tr("Premises"));
    name(columns.landlord, columns.deadline, tr("Landlord, agent"));
    name(columns.deadline, columns.strip, tr("Deadline"));
    name(columns.next, columns.end, tr("Next step"));
    drawMonths(painter, QRectF(columns.strip, 0, columns.next - columns.strip - look::kGap, height()),
               m_list.scale(), scheme);
}

}  // namespace hearth::ui::due
