// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::firm {

/// The fields of one instrument; each is kept when it is committed. A new one is kept with its first field.
class InstrumentForm : public shell::RegisterForm<reg::Instrument> {
    Q_DECLARE_TR_FUNCTIONS(InstrumentForm)
  public:
    InstrumentForm(const shell::Context& context, QWidget* parent);

  private:
    void addKind();
    void addReading();
    void addCalibration();
};

}  // namespace hearth::ui::firm
