// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The firm's own lists as files, and all that it keeps in one.
class FilesPart : public QWidget {
    Q_OBJECT
  public:
    FilesPart(const shell::Context& context, QWidget* parent);

  private:
    void writeEverything();

    shell::Context m_context;
};

}  // namespace hearth::ui::firm
