// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/due.h"
#include "ui/due/strip.h"
#include "ui/words/words.h"

#include <QListView>

#include <functional>
#include <optional>
#include <vector>

namespace hearth::ui::due {

/// Which premises the list asks for.
struct DueAsked {
    store::DueFilter filter;
    store::DueSort sort = store::DueSort::Need;
    calendar::Date today{};
    std::optional<store::DueCounts> counts = {};  // by the filter
    bool operator==(const DueAsked&) const = default;
};

/// The columns of a row, in pixels from its left.
struct DueColumns {
    int state = 0;
    int premises = 0;
    int landlord = 0;
    int deadline = 0;
    int strip = 0;
    int next = 0;
    int end = 0;
};
[[nodiscard]] DueColumns dueColumns(int width);

/// Every premises a row with its strip of time, read a page at a time as it comes into view. Arrows move,
/// Shift and Ctrl choose several, Enter opens; Left and Right move the strip by a month, + and - widen and
/// narrow it.
class DueList : public QListView {
    Q_OBJECT
  public:
    using Failed = std::function<void(const Error&)>;
    DueList(const store::Due& due, const words::Words& words, Failed failed, QWidget* parent);
    ~DueList() override;
    DueList(const DueList&) = delete;
    DueList& operator=(const DueList&) = delete;

    /// Reads anew; the cursor stays on its premises where they are on the same row or near. `count`: how many
    /// the filter finds.
    void ask(const DueAsked& asked, int count);
    [[nodiscard]] int count() const;
    /// Good until another line is asked for.
    [[nodiscard]] const store::DueLine& line(int row) const;
    [[nodiscard]] int currentRow() const { return currentIndex().row(); }
    void setCurrentRow(int row);
    [[nodiscard]] std::optional<reg::PremisesId> current() const;
    /// Those that are chosen, in the list's order; the one under the cursor where none is.
    [[nodiscard]] std::vector<reg::PremisesId> chosen() const;
    /// Chooses these, wherever they stand; looked for from the end, where the newest of a state are.
    void choose(const std::vector<reg::PremisesId>& premises);
    [[nodiscard]] const TimeScale& scale() const { return m_scale; }
    void setEmptyText(const QString& text);

  Q_SIGNALS:
    /// Enter or a double click.
    void opened(int row);
    void scaleChanged();
    void chosenChanged();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void selectionChanged(const QItemSelection& on, const QItemSelection& off) override;

  private:
    class Model;
    class Delegate;
    void fitScale();

    Model* m_model;
    DueAsked m_asked;
    QString m_empty;
    TimeScale m_scale;
    int m_months = 7;  // how many the strip shows
    int m_shift = 0;   // months that it is moved
};

/// The columns' names and the months, over the list.
class DueHeader : public QWidget {
    Q_OBJECT
  public:
    DueHeader(const DueList& list, QWidget* parent);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    const DueList& m_list;
};

}  // namespace hearth::ui::due
