// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"

#include <QListView>
#include <QPixmap>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace hearth::ui::shell {

/// One thing in a list: two lines of text at the left, two at the right, a shape where it has an outcome.
struct Line {
    QString key;  // what it is, for keeping the cursor on it ("" for none)
    QString title;
    QString detail = {};
    QString right = {};
    QString rightDetail = {};
    std::optional<rulebook::Outcome> outcome = std::nullopt;
    QPixmap picture = {};  // small, at the left
    bool heading = false;  // over the lines that follow; the cursor passes it by
};

/// Where a long list's lines come from, a page at a time as they come into view.
class LineSource {
  public:
    virtual ~LineSource() = default;
    [[nodiscard]] virtual int count() = 0;
    /// Each with a title and a detail, so that all are of one height. Fewer than asked for only at the end.
    [[nodiscard]] virtual std::vector<Line> lines(int first, int count) = 0;
    /// Where the line with that key is; -1: nowhere.
    [[nodiscard]] virtual int rowOf(const QString& key) = 0;
};

/// A list by keyboard: arrows move, Enter opens. The one list of all places.
class LineList : public QListView {
    Q_OBJECT
  public:
    /// `name` is its accessible name; `empty` is said in its middle while it has no lines.
    LineList(const QString& name, const QString& empty, QWidget* parent);
    ~LineList() override;

    /// Keeps the cursor on the same key where it is still there; does not emit moved().
    void setLines(std::vector<Line> lines);
    /// The same for a list of whatever length.
    void setSource(std::unique_ptr<LineSource> source);
    void setEmptyText(const QString& text);
    [[nodiscard]] int count() const;
    /// Good until another line is asked for.
    [[nodiscard]] const Line& line(int row) const;
    [[nodiscard]] int currentRow() const;
    [[nodiscard]] QString currentKey() const;
    /// -1: no line. Like setCurrentKey(), does not emit moved().
    void setCurrentRow(int row);
    /// False when there is no such line.
    bool setCurrentKey(const QString& key);
    /// As high as its lines, for a list within a sheet.
    void setGrowing(bool growing);
    /// Titles take as many lines as they need, and nothing else is shown of a line but its outcome.
    void setWrapping(bool wrapping);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  Q_SIGNALS:
    /// The cursor came to another line by a person's hand; -1: there is none.
    void moved(int row);
    /// Enter or a double click.
    void opened(int row);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

  private:
    class Model;
    class Delegate;
    template <class Fill>
    void refill(Fill fill);
    Model* m_model;
    QString m_empty;
    bool m_filling = false;
    bool m_growing = false;
};

}  // namespace hearth::ui::shell
