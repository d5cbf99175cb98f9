// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/input/text_editors.h"

class QLabel;

namespace hearth::ui::input {

/// A number as typed, its unit at the right inside the field. A unit typed behind the number becomes the
/// field's; the number itself is never converted, since it is what the gauge showed.
class QuantityEditor : public LineEditor {
    Q_OBJECT
  public:
    QuantityEditor(QWidget* parent, quantity::UnitFamily family);
    [[nodiscard]] quantity::UnitCode unit() const override { return m_unit; }
    void setUnit(quantity::UnitCode unit) override;
    void setReadOnly(bool readOnly) override;

  protected:
    void settle() override;
    [[nodiscard]] QString unitName() const override;
    [[nodiscard]] QString hint() const override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void placeUnit();
    void offerUnits();

    quantity::UnitFamily m_family;
    quantity::UnitCode m_unit = quantity::UnitCode::None;
    QLabel* m_unitLabel;
};

}  // namespace hearth::ui::input
