// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::firm {

/// The firm's own fields; each is kept when it is committed.
class FirmForm : public shell::RegisterForm<reg::Firm> {
    Q_DECLARE_TR_FUNCTIONS(FirmForm)
  public:
    FirmForm(const shell::Context& context, QWidget* parent);

  private:
    void addAddress();
    void addCountry();
    void addLanguage();
    void addInsurance();
};

/// That form under its heading.
class FirmPart : public QWidget {
    Q_OBJECT
  public:
    FirmPart(const shell::Context& context, QWidget* parent);
    void refresh();
    /// To the field of that name; without one, to the first.
    void takeFocus(const char* name = nullptr) { m_form->takeFocus(name); }

  private:
    shell::Context m_context;
    shell::Text* m_title;
    FirmForm* m_form;
};

}  // namespace hearth::ui::firm
