// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/choice_field.h"
#include "ui/input/field_editor.h"

#include <QElapsedTimer>

class QComboBox;

namespace hearth::ui::input {

/// A choice among a few, all of them in view.
class ChoiceEditor : public FieldEditor {
    Q_OBJECT
  public:
    ChoiceEditor(QWidget* parent, const std::vector<ChoiceItem>& choices,
                 ChoiceField::Choose choose = ChoiceField::Choose::One);
    [[nodiscard]] QString text() const override { return m_choice->code(); }
    void setText(const QString& text) override;
    void setReadOnly(bool readOnly) override { m_choice->setReadOnly(readOnly); }

  protected:
    void showText(const QString& text) override { m_choice->setCode(text); }
    [[nodiscard]] QString hint() const override { return m_choice->keysInWords(); }

  private:
    ChoiceField* m_choice;
};

/// A choice among many, as a list that opens. Typing finds a choice by its beginning, else by the beginning
/// of one of its words: "28" finds "Copper 28 mm". A code that the list does not know is shown as it came and
/// kept.
class ListEditor : public FieldEditor {
    Q_OBJECT
  public:
    ListEditor(QWidget* parent, const std::vector<ChoiceItem>& choices, Offer offer = {});
    [[nodiscard]] QString text() const override;
    void setText(const QString& text) override;
    void setReadOnly(bool readOnly) override;

  protected:
    void showText(const QString& text) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fill(const std::vector<ChoiceItem>& choices);
    void askAnew();
    void showCode(const QString& code);
    bool answerListKey(const QKeyEvent& event);
    void find(const QString& letter);
    [[nodiscard]] int found(const QString& typed, int from) const;
    [[nodiscard]] int unsaidIndex() const;

    QComboBox* m_list;
    Offer m_offer;
    QString m_typed;  // letters in quick succession
    QElapsedTimer m_sinceLetter;
};

}  // namespace hearth::ui::input
