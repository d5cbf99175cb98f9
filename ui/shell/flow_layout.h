// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>

#include <vector>

namespace hearth::ui::shell {

/// One after the other in lines that wrap, each as large as it asks to be.
class FlowLayout : public QLayout {
  public:
    FlowLayout(QWidget* parent, int gap);
    ~FlowLayout() override;
    FlowLayout(const FlowLayout&) = delete;
    FlowLayout& operator=(const FlowLayout&) = delete;

    void addItem(QLayoutItem* item) override { m_items.push_back(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return flow({0, 0, width, 0}, false); }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& box) override;

  private:
    int flow(const QRect& box, bool place) const;
    std::vector<QLayoutItem*> m_items;
    int m_gap;
};

}  // namespace hearth::ui::shell
