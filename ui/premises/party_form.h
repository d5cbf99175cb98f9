// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::premises {

/// The fields of one person or organisation; each is kept when it is committed.
class PartyForm : public shell::RegisterForm<reg::Party> {
    Q_DECLARE_TR_FUNCTIONS(PartyForm)
  public:
    PartyForm(const shell::Context& context, const QString& nameContext, QWidget* parent);

  private:
    void addReach();
    void addAddress();
    void addSending();
};

}  // namespace hearth::ui::premises
