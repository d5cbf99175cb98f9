// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/doings.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::firm {

/// What lies in the bin: brought back with a key, or removed for good after a question.
class BinPart : public QWidget {
    Q_OBJECT
  public:
    BinPart(const shell::Context& context, QWidget* parent);
    void refresh();

  private:
    void bringBack();
    void removeForGood();
    [[nodiscard]] const reg::Binned* current() const;

    shell::Context m_context;
    std::vector<reg::Binned> m_binned;
    shell::LineList* m_list;
    shell::KeyButton* m_back;
    shell::KeyButton* m_remove;
};

}  // namespace hearth::ui::firm
