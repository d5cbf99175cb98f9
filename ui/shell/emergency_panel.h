// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "core/rulebook/standard.h"
#include "ui/input/editor.h"
#include "ui/shell/panel.h"
#include "ui/words/words.h"

#include <vector>

class QVBoxLayout;

namespace hearth::ui::shell {

/// What to do first, by event and gas (design: "What the work can do to people"). Opens on smell or escape;
/// 1, 2 and 3 change the event. The steps and the number to ring come from ui/words.
class EmergencyPanel : public Panel {
    Q_OBJECT
  public:
    EmergencyPanel(const words::Words& words, QWidget* parent);
    void open(rulebook::Gas gas, reg::Country country, std::vector<reg::EmergencyContact> contacts);
    void takeFocus() override;
    [[nodiscard]] rulebook::Gas gas() const { return m_gas; }
    [[nodiscard]] words::Words::Emergency event() const { return m_event; }
    /// As shown, one a step.
    [[nodiscard]] QStringList steps() const { return m_steps; }

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void choose(words::Words::Emergency event);
    void fill();
    void showSteps();

    const words::Words& m_words;
    rulebook::Gas m_gas = rulebook::Gas::NaturalGas;
    reg::Country m_country = reg::Country::England;
    std::vector<reg::EmergencyContact> m_contacts;
    words::Words::Emergency m_event = words::Words::Emergency::SmellOrEscape;
    input::Editor* m_events = nullptr;
    input::Editor* m_gases = nullptr;
    QWidget* m_list = nullptr;
    QVBoxLayout* m_listLines = nullptr;
    QStringList m_steps;
};

}  // namespace hearth::ui::shell
