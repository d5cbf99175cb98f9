// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"

class QLabel;
class QVBoxLayout;

namespace hearth::ui::input {

/// What every editor shares: label above, field, problem below; when to commit; the keys that all fields
/// answer to.
class FieldEditor : public Editor {
    Q_OBJECT
  public:
    void setLabel(const QString& label, const QString& context = {}) override;
    void setProblem(const QString& sentence) override;
    [[nodiscard]] QWidget* focusTarget() override { return m_field; }
    void commit() override;

  protected:
    explicit FieldEditor(QWidget* parent) : Editor(parent) {}

    /// Puts the field in its place; once, in the constructor of the derived class.
    void adopt(QWidget* field);
    /// Where a way of reading what was typed stands ("t" becomes a date): called before it is looked whether
    /// the text changed.
    virtual void settle() {}
    /// Shows text; the base keeps the book of what is committed.
    virtual void showText(const QString& text) = 0;
    /// The unit as it stands in the accessible name; empty: none.
    [[nodiscard]] virtual QString unitName() const { return {}; }
    /// What a screen reader is told beside the problem and the tool tip (a hint on keys); empty: nothing.
    [[nodiscard]] virtual QString hint() const { return {}; }

    /// What stands now is what was committed (after setText).
    void markCommitted();
    /// Names and description again (unit or language changed).
    void refreshNames();

    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    bool answerKey(QKeyEvent* event);
    void restore();

    QWidget* m_field = nullptr;
    QLabel* m_label = nullptr;
    QLabel* m_problem = nullptr;
    QString m_labelText;
    QString m_context;
    QString m_committedText;
    quantity::UnitCode m_committedUnit = quantity::UnitCode::None;
};

}  // namespace hearth::ui::input
