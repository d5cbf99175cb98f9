// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/words/words.h"

#include <QMenu>

namespace hearth::ui::visit {

/// The tubes that are known, by family, to choose one from the keyboard or with the mouse. Deletes itself
/// when it closes.
class TubeMenu : public QMenu {
    Q_OBJECT
  public:
    TubeMenu(const words::Words& words, QWidget* parent);

  Q_SIGNALS:
    void chosen(const QString& code);
};

}  // namespace hearth::ui::visit
