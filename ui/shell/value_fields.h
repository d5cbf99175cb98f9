// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rulebook/entry.h"
#include "ui/input/editor.h"
#include "ui/words/words.h"

#include <QWidget>

#include <optional>
#include <vector>

class QHBoxLayout;

namespace hearth::ui::shell {

/// Editors for a rule's value in the shape that it has: one figure, or the two ends of a range. Bands have a
/// form of their own (ui/rulebook).
class ValueFields : public QWidget {
    Q_OBJECT
  public:
    /// `nameContext` goes before the accessible names.
    ValueFields(const words::Words& words, const QString& nameContext, QWidget* parent);
    /// Makes the fields of that rule and fills them with what the entry says now.
    void show(const rulebook::Entry& entry);
    /// What was typed. Nothing when it can't be used: why is then said below the field, and the field has the
    /// focus.
    [[nodiscard]] std::optional<rulebook::Value> value();
    [[nodiscard]] input::Editor* first() const { return m_editors.empty() ? nullptr : m_editors.front(); }

  private:
    void add(const QString& label, quantity::UnitFamily family);
    void refuse(input::Editor* editor, const QString& sentence);
    [[nodiscard]] std::optional<quantity::Figure> figureIn(input::Editor* editor);
    [[nodiscard]] std::optional<rulebook::Value> whole();

    const words::Words& m_words;
    QString m_nameContext;
    rulebook::Rule m_rule = rulebook::Rule::TestTime;
    QHBoxLayout* m_row;
    std::vector<input::Editor*> m_editors;
};

}  // namespace hearth::ui::shell
