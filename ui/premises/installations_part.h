// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/premises/installation_form.h"

namespace hearth::ui::premises {

/// All installations of a premises, and a way to add one.
class InstallationsPart : public QWidget {
    Q_OBJECT
  public:
    InstallationsPart(const shell::Context& context, QWidget* parent);
    void show(reg::PremisesId id);
    /// Of the first one.
    [[nodiscard]] rulebook::Gas gas() const;

  private:
    void add();
    void build(std::size_t count);

    shell::Context m_context;
    reg::PremisesId m_premises;
    QVBoxLayout* m_lines;
    shell::Text* m_problem;
    std::vector<InstallationForm*> m_forms;
    std::vector<QWidget*> m_headings;
    shell::KeyButton* m_add;
};

}  // namespace hearth::ui::premises
