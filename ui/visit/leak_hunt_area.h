// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/leak_hunt.h"
#include "ui/visit/sheet_field.h"

#include <QWidget>

namespace hearth::ui::shell {
class Text;
}

namespace hearth::ui::visit {

/// The tests of the visit compared, where a leak is looked for by shutting off one branch after another. Not
/// there while nothing can be compared. For the search: no verdict.
class LeakHuntArea : public QWidget {
    Q_OBJECT
  public:
    LeakHuntArea(const SheetContext& context, QWidget* parent);
    /// After judging.
    void refresh();
    [[nodiscard]] QString meaning() const;

  private:
    [[nodiscard]] bool isWanted() const;

    SheetContext m_context;
    shell::Text* m_tests;
    shell::Text* m_meaning;
    shell::Text* m_places;
    shell::Text* m_beside;
};

}  // namespace hearth::ui::visit
