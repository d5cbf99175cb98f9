// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/editor.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// The paper that the firm's records, letters and blanks are made for.
class PaperPart : public QWidget {
    Q_OBJECT
  public:
    PaperPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    shell::Context m_context;
    input::Editor* m_paper;
};

}  // namespace hearth::ui::firm
