// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/finding.h"
#include "ui/words/words.h"

#include <QFrame>

#include <vector>

namespace hearth::ui::shell {

class LineList;

/// What the search field finds, by kind, below the field and over the place in view. Arrows go through it,
/// Enter opens; Up from the first, Escape and every letter go back to the field.
class HitsPanel : public QFrame {
    Q_OBJECT
  public:
    HitsPanel(QWidget* field, const words::Words& words, QWidget* window);

    /// Shown for as long as there are hits.
    void show(const store::Hits& found);
    void takeFocus();
    [[nodiscard]] bool holdsFocus() const;
    /// The best of all; only while it is shown.
    void openFirst();

  Q_SIGNALS:
    void opened(const hearth::store::Hit& hit);

  protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void place();
    void backToField();
    [[nodiscard]] bool goesBack(const QKeyEvent& key);
    void open(int row);

    QWidget* m_field;
    const words::Words& m_words;
    LineList* m_list;
    std::vector<int> m_rows;  // of the hits, in the list
    std::vector<store::Hit> m_hits;
};

}  // namespace hearth::ui::shell
