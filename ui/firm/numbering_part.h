// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/number_form.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::firm {

/// How records are numbered: what stands before the series' letters, how many digits, and the next number as
/// it will be written.
class NumberingPart : public QWidget {
    Q_OBJECT
  public:
    NumberingPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    [[nodiscard]] record::NumberForm kept() const;
    /// As it stands in the fields now.
    [[nodiscard]] record::NumberForm typed() const;
    [[nodiscard]] Result<void> keep(const record::NumberForm& form);
    void showExample(const record::NumberForm& form);

    shell::Context m_context;
    input::Editor* m_prefix;
    input::Editor* m_digits;
    shell::Text* m_example;
};

}  // namespace hearth::ui::firm
