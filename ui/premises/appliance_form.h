// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/appliance.h"
#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::premises {

/// The fields of one appliance; each is kept when it is committed. A new one is kept with its first field.
class ApplianceForm : public shell::RegisterForm<reg::Appliance> {
    Q_DECLARE_TR_FUNCTIONS(ApplianceForm)
  public:
    ApplianceForm(const shell::Context& context, QWidget* parent);

  private:
    void addWhat();
    void addWhose();
    void addMaker();
    void addSuggestions();
};

/// What an appliance is called in lists: its kind, else its make, else that nothing was said.
[[nodiscard]] QString applianceName(const words::Words& words, const reg::Appliance& appliance);

}  // namespace hearth::ui::premises
