// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/field_editor.h"

#include <QLineEdit>
#include <QPlainTextEdit>

namespace hearth::ui::input {

/// One line of text; dates, times and quantities build on it.
class LineEditor : public FieldEditor {
    Q_OBJECT
  public:
    explicit LineEditor(QWidget* parent);
    [[nodiscard]] QString text() const override { return m_line->text(); }
    void setText(const QString& text) override;
    void setReadOnly(bool readOnly) override { m_line->setReadOnly(readOnly); }
    void suggest(const QString& text) override;

  protected:
    void showText(const QString& text) override;
    [[nodiscard]] QString hint() const override;
    /// How a text that is kept is shown.
    [[nodiscard]] virtual QString shownAs(const QString& text) const { return text; }
    bool eventFilter(QObject* watched, QEvent* event) override;
    [[nodiscard]] QLineEdit* line() const { return m_line; }

  private:
    QLineEdit* m_line;
    QString m_suggested;
};

/// Several lines. Tab and Enter leave it, so that the keyboard flows through; Shift+Enter starts a line.
class LongTextEditor : public FieldEditor {
    Q_OBJECT
  public:
    LongTextEditor(QWidget* parent, int lines);
    [[nodiscard]] QString text() const override { return m_area->toPlainText(); }
    void setText(const QString& text) override;
    void setReadOnly(bool readOnly) override { m_area->setReadOnly(readOnly); }

  protected:
    void showText(const QString& text) override;
    [[nodiscard]] QString hint() const override;

  private:
    QPlainTextEdit* m_area;
    bool m_isShowing = false;
};

}  // namespace hearth::ui::input
