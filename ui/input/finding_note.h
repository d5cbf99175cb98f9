// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "ui/words/words.h"

#include <QWidget>

#include <optional>

namespace hearth::ui::input {

/// A finding as it stands in the sheet's margin: shape, title and outcome word, measured against limit on a
/// small bar, one sentence why, notes, and the source on a key (F1 or a click opens it in place). Focusable;
/// its accessible name is title and outcome, its description the sentence.
class FindingNote : public QWidget {
    Q_OBJECT
  public:
    using QWidget::show;
    explicit FindingNote(const words::Words& words, QWidget* parent = nullptr);
    void show(const judging::Judged& judged);
    [[nodiscard]] const judging::Judged& judged() const { return m_judged; }
    void setSourceOpen(bool open);
    [[nodiscard]] bool isSourceOpen() const { return m_sourceOpen; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

    /// The first of its limits that has a page in the rule book.
    [[nodiscard]] std::optional<rulebook::RuleKey> rule() const;

  Q_SIGNALS:
    /// Pressed or clicked: the sheet goes to the reading.
    void chosen();
    /// Shift+F1, or a click on a limit: its page in the rule book is wanted.
    void ruleWanted(const hearth::rulebook::RuleKey& key);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

  private:
    void describe();
    const words::Words& m_words;
    judging::Judged m_judged{};
    bool m_sourceOpen = false;
};

}  // namespace hearth::ui::input
