// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <vector>

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::workings {

/// The open visits, in the place of the sheet: Enter chooses one, Escape goes back.
class VisitChooser : public shell::Sheet {
    Q_OBJECT
  public:
    VisitChooser(const shell::Context& context, QWidget* parent);
    /// Reads them and takes the focus.
    void open(const QString& question);

  Q_SIGNALS:
    void chosen(hearth::reg::VisitId visit, const QString& where);
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void fill();

    const shell::Context& m_context;
    shell::Text* m_what;
    shell::LineList* m_list;
    shell::KeyButton* m_back;
    std::vector<reg::VisitId> m_visits;
};

}  // namespace hearth::ui::workings
