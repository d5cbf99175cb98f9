// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// Where everything is kept, a copy of it on demand, and whether it is sound.
class StorePart : public QWidget {
    Q_OBJECT
  public:
    StorePart(const shell::Context& context, QWidget* parent);

  private:
    void backUp();
    void check();

    shell::Context m_context;
    shell::Text* m_backedUp;
    shell::Text* m_health;
};

}  // namespace hearth::ui::firm
