// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/due/action_page.h"

namespace hearth::ui::due {

/// A check that another firm made: its date and its record as a scan. It counts as proof of the anniversary.
class EarlierPage : public ActionPage {
    Q_OBJECT
  public:
    EarlierPage(const DueContext& context, QWidget* parent);
    void show(reg::PremisesId premises);
    void takeFocus() override;

  private:
    void keep();
    void chooseScan();
    void offerAppliances();

    reg::PremisesId m_premises;
    shell::Fields* m_fields = nullptr;
    input::Editor* m_date = nullptr;
    input::Editor* m_by = nullptr;
    input::Editor* m_note = nullptr;
    input::Editor* m_appliance = nullptr;
    QVBoxLayout* m_applianceBox = nullptr;
    shell::Text* m_scanText = nullptr;
    std::optional<store::NewAttachment> m_scan;
};

/// Premises like these, once for each number: thirty flats of a house, typed once.
class CopyPage : public ActionPage {
    Q_OBJECT
  public:
    CopyPage(const DueContext& context, QWidget* parent);
    void show(reg::PremisesId premises);
    void takeFocus() override;

  private:
    void look();
    void copy();
    [[nodiscard]] std::vector<store::AlikePremises> alike();

    reg::PremisesId m_premises;
    reg::Address m_address;
    input::Editor* m_pattern = nullptr;
    input::Editor* m_first = nullptr;
    input::Editor* m_last = nullptr;
    shell::Text* m_preview = nullptr;
};

/// "Flat 5" as "Flat #": the first number gives way.
[[nodiscard]] QString numberPattern(const QString& line);

}  // namespace hearth::ui::due
