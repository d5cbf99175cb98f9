// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QWidget>

#include <vector>

class QHBoxLayout;

namespace hearth::ui::shell {

/// One place's name in the bar; the one in view is underlined.
class PlaceTab : public QAbstractButton {
    Q_OBJECT
  public:
    PlaceTab(const QString& title, int number, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

/// The bar at the head of the window: places at the left, search and what to do first at the right.
class PlaceBar : public QWidget {
    Q_OBJECT
  public:
    explicit PlaceBar(QWidget* parent);
    void addPlace(const QString& title);
    void addAtRight(QWidget* widget);
    void setCurrent(int index);

  Q_SIGNALS:
    void chosen(int index);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QHBoxLayout* m_tabsBox;
    QHBoxLayout* m_rightBox;
    std::vector<PlaceTab*> m_tabs;
};

}  // namespace hearth::ui::shell
