// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "ui/shell/register_form.h"

#include <QCoreApplication>

namespace hearth::ui::firm {

/// One number to ring, for one country and one gas. A new one is kept once it has a number that can be
/// dialled.
class EmergencyContactForm : public shell::RegisterForm<reg::EmergencyContact> {
    Q_DECLARE_TR_FUNCTIONS(EmergencyContactForm)
  public:
    EmergencyContactForm(const shell::Context& context, const QString& nameContext, QWidget* parent);

  protected:
    Result<void> save(reg::EmergencyContact& changed) override;

  private:
    [[nodiscard]] bool isTaken(const reg::EmergencyContact& contact) const;
};

/// The firm's own numbers to ring when gas escapes, a row each, with what a person is then told. They stand
/// beside the numbers that are known here and never in their place (see reg::linesToRing()).
class EmergencyPart : public QWidget {
    Q_OBJECT
  public:
    EmergencyPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    struct Row {
        QWidget* line;
        EmergencyContactForm* form;
        shell::Text* shown;
    };
    void add();
    Row makeRow(std::size_t number);
    void showTold(std::size_t row);
    void remove(std::size_t row);
    /// The first country and gas without a contact, the firm's country first.
    [[nodiscard]] std::optional<reg::EmergencyContact> nextFree() const;

    shell::Context m_context;
    std::vector<Row> m_rows;
    QVBoxLayout* m_lines;
    shell::Text* m_problem;
    shell::KeyButton* m_add;
};

}  // namespace hearth::ui::firm
