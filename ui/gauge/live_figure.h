// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

namespace hearth::ui::gauge {

/// The live figure, to be read across a room, with its age below. One that is stale is struck by a shape and
/// a word, not by a colour alone.
class LiveFigure : public QWidget {
    Q_OBJECT
  public:
    explicit LiveFigure(QWidget* parent);
    struct Shown {
        QString name;    // of the gauge
        QString figure;  // empty: no reading yet
        QString unit;
        QString age;
        bool isStale = false;
        bool isDanger = false;  // said by shape, word and colour together
        bool operator==(const Shown&) const = default;
    };
    void show(const Shown& shown);
    [[nodiscard]] const Shown& shown() const { return m_shown; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] QString caption() const;
    Shown m_shown;
};

}  // namespace hearth::ui::gauge
