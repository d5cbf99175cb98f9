// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// Whether and where it is said at the start that checks turned overdue.
class NewsPart : public QWidget {
    Q_OBJECT
  public:
    NewsPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    shell::Context m_context;
    input::Editor* m_where;
};

}  // namespace hearth::ui::firm
