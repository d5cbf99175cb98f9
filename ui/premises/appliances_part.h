// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/appliance.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class AttachmentsPart;
class LineList;
class PlotView;
}  // namespace hearth::ui::shell

namespace hearth::ui::premises {

class ApplianceForm;

/// The appliances of a premises: a list, and the fields of the one under the cursor, and with a key what
/// was read of it over the years. A new one is kept with its first field.
class AppliancesPart : public QWidget {
    Q_OBJECT
  public:
    AppliancesPart(const shell::Context& context, QWidget* parent);
    void show(reg::PremisesId id);

  private:
    void makeButtons(QVBoxLayout* lines);
    void fillList();
    void showRow(int row);
    void showForm(const reg::Appliance& appliance);
    void add();
    void addAnotherLikeIt();
    void putIntoBin();
    void toggleYears();
    void showYears(const reg::Appliance* appliance);
    [[nodiscard]] const reg::Appliance* current() const;
    [[nodiscard]] reg::Appliance blank() const;

    shell::Context m_context;
    reg::PremisesId m_premises;
    std::vector<reg::Installation> m_installations;
    std::vector<reg::Appliance> m_appliances;
    shell::LineList* m_list;
    ApplianceForm* m_form;
    shell::AttachmentsPart* m_attachments;
    shell::KeyButton* m_add = nullptr;
    shell::KeyButton* m_alike = nullptr;
    shell::KeyButton* m_bin = nullptr;
    shell::KeyButton* m_years = nullptr;
    shell::PlotView* m_yearPlots = nullptr;
    shell::Text* m_yearsTold = nullptr;
    bool m_yearsOpen = false;
};

}  // namespace hearth::ui::premises
