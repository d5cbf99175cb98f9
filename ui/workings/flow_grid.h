// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <QPointer>
#include <QWidget>

#include <memory>
#include <vector>

namespace hearth::ui::workings {

/// Fields side by side in twelve equal columns, one line after another. What is hidden leaves no gap. Not a
/// QGridLayout: its columns are only as equal as what stands in them, and rows of fields below each other
/// would not line up.
class FlowGrid : public QLayout {
  public:
    static constexpr int kColumns = 12;
    /// How many columns of a form hold a field.
    [[nodiscard]] static int spanFor(int fieldWidth, int formWidth);

    struct Cell {
        QWidget* field;
        int span;  // of the twelve columns
        bool startsLine = false;
    };

    FlowGrid() = default;
    ~FlowGrid() override = default;
    Q_DISABLE_COPY_MOVE(FlowGrid)
    /// Instead of what it holds.
    void place(const std::vector<Cell>& cells);

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] int count() const override { return static_cast<int>(m_placed.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override { return {kColumns, 1}; }
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return layOut({0, 0, width, 0}, nullptr); }
    void setGeometry(const QRect& rect) override;

  private:
    struct Put {
        QPointer<QWidget> field;
        QRect where;
    };
    struct Placed {
        std::unique_ptr<QLayoutItem> item;
        int span;
        bool startsLine;
    };
    /// Gives the height that is taken; says where everything goes, if asked.
    int layOut(const QRect& rect, std::vector<Put>* puts) const;

    std::vector<Placed> m_placed;
};

/// Takes everything out; the widgets themselves stay.
void emptyOut(QLayout* layout);

}  // namespace hearth::ui::workings
