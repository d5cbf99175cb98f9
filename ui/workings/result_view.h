// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/answer.h"
#include "ui/words/words.h"

#include <QWidget>

class QGridLayout;
class QVBoxLayout;

namespace hearth::ui::workings {

/// What was worked out on the way to the findings: each figure with its uncertainty and where its formula
/// stands; then what else is to be said, and why something could not be worked out.
class ResultView : public QWidget {
    Q_OBJECT
  public:
    ResultView(const words::Words& words, QWidget* parent);
    /// Hidden while there is nothing.
    void show(const judging::Answer& answer);
    /// How wide it may be.
    void setRoom(int width);

  private:
    void rebuild();
    void addLine(QWidget* line);
    void addFigure(const judging::Worked& worked);
    void addError(const QString& text);

    const words::Words& m_words;
    QVBoxLayout* m_lines;
    judging::Answer m_answer;
    bool m_isWide = false;
    QWidget* m_page = nullptr;
    QGridLayout* m_grid = nullptr;
};

/// "5.32 ± 0.06 kW".
[[nodiscard]] QString figureText(const judging::Worked& worked, const words::Words& words);

}  // namespace hearth::ui::workings
