// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"

#include <QList>

namespace hearth::ui::input {

/// A row of buttons of which one is chosen, drawn as one control with one place in the tab order. Letters
/// choose, arrows move, Delete takes the choice away; the row wraps where it is narrow. Where several may be
/// chosen, a letter or Space chooses one or takes it away again, and arrows only move.
class ChoiceField : public QWidget {
    Q_OBJECT
  public:
    enum class Choose { One, Several };
    ChoiceField(QWidget* parent, const std::vector<ChoiceItem>& choices, Choose choose = Choose::One);

    /// The code chosen, of several with spaces between; a code that is not among the choices is kept as it
    /// came, with nothing marked.
    [[nodiscard]] QString code() const { return m_code; }
    void setCode(const QString& code);
    /// Label of what is chosen, without the mark of its letter; empty: nothing is.
    [[nodiscard]] QString chosenLabel() const;
    /// The letter that chooses it; empty: there was none left.
    [[nodiscard]] QString letterOf(const QString& code) const;
    /// "N no, Y yes": what the letters do, for screen readers.
    [[nodiscard]] QString keysInWords() const;
    void setReadOnly(bool readOnly);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  Q_SIGNALS:
    /// By arrow or Delete: may be one of several steps.
    void moved();
    /// By letter or click: meant as it is.
    void picked();
    /// By letter, and that is all there is to say here; after picked().
    void answered();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    struct Segment {
        QString code;
        QString label;
        qsizetype letterAt = -1;  // index in label; -1: no letter left for it
    };
    [[nodiscard]] int chosen() const;
    [[nodiscard]] bool isChosen(int index) const;
    [[nodiscard]] int cursor() const;
    void toggle(int index);
    void paintMark(QPainter& painter, const QPointF& centre, bool isChosen) const;
    [[nodiscard]] int segmentWidth(const Segment& segment) const;
    [[nodiscard]] QList<QRectF> segmentBoxes(int width) const;
    [[nodiscard]] bool stepBy(int key);
    [[nodiscard]] bool pickByLetter(const QString& letter);
    void paintSegment(QPainter& painter, int index, const QRectF& box) const;
    void choose(const QString& code);

    QList<Segment> m_segments;
    QString m_code;
    Choose m_choose;
    int m_at = 0;  // of several: where the arrows are
    bool m_readOnly = false;
};

}  // namespace hearth::ui::input
