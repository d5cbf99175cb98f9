// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/finding.h"
#include "ui/visit/part.h"
#include "ui/visit/part_state.h"

#include <QElapsedTimer>
#include <QListView>
#include <QString>

#include <vector>

namespace hearth::ui::visit {

/// A part as it stands in the spine.
struct SpineLine {
    PartRef ref;
    QString title;
    QString word;  // its state in words: "2 to fill in"; empty where the shape says enough
    PartWord state = PartWord::NotStarted;
    bool operator==(const SpineLine&) const = default;
};

/// The spine at the sheet's left: the parts in their order, each with a shape and a word. Up and Down or the
/// first letters of any word of a part's title choose, Enter goes there.
class Spine : public QListView {
    Q_OBJECT
    Q_DISABLE_COPY_MOVE(Spine)
  public:
    explicit Spine(QWidget* parent);
    ~Spine() override;

    void setLines(const std::vector<SpineLine>& lines);
    [[nodiscard]] const std::vector<SpineLine>& lines() const;
    /// Where the keyboard is on the sheet; emits nothing.
    void setCurrent(const PartRef& ref);
    [[nodiscard]] QSize sizeHint() const override;
    /// "tight" finds "Let-by and tightness".
    void keyboardSearch(const QString& search) override;

  Q_SIGNALS:
    void chosen(const hearth::ui::visit::PartRef& ref);
    /// Escape: back to the sheet.
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    class Model;
    class Delegate;
    Model* m_model;
    QString m_typed;
    QElapsedTimer m_sinceTyped;
};

/// "2 to fill in", "1 to look at": a part's state in words.
[[nodiscard]] QString wordOf(const PartState& state);

}  // namespace hearth::ui::visit
