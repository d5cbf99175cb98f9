// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::premises {

/// The fields of one gas installation; each is kept when it is committed.
class InstallationForm : public shell::RegisterForm<reg::Installation> {
    Q_DECLARE_TR_FUNCTIONS(InstallationForm)
  public:
    /// `context` of the fields' accessible names where there are several; empty for the only one.
    InstallationForm(const shell::Context& context, const QString& nameContext, QWidget* parent);
    void show(const reg::Installation& installation);

  private:
    void addGas();
    void addMeter();
    void addSupply();
    void addSeen();
    void showMeterVolume();

    input::Editor* m_meterVolume = nullptr;
};

}  // namespace hearth::ui::premises
