// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// Which bank holidays bookings are held against, up to which year, and where they come from; takes in a
/// newer file, and asks for one when they run out.
class HolidaysPart : public QWidget {
    Q_OBJECT
  public:
    HolidaysPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    void take();
    void backToOurs();
    void refuse(const QString& why);
    [[nodiscard]] calendar::Date today() const { return m_context.clock.today("Europe/London"); }

    shell::Context m_context;
    shell::Text* m_state;
    shell::Text* m_asking;
    shell::KeyButton* m_take;
    shell::KeyButton* m_ours;
};

}  // namespace hearth::ui::firm
