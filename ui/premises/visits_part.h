// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/kit.h"
#include "ui/shell/place.h"

#include <variant>

namespace hearth::ui::shell {
class LineList;
}

namespace hearth::ui::premises {

/// The visits of a premises, newest first, each with the records that were issued of it. Enter opens.
class VisitsPart : public QWidget {
    Q_OBJECT
  public:
    VisitsPart(const shell::Context& context, QWidget* parent);
    void show(reg::PremisesId id);

  private:
    void open(int row);

    shell::Context m_context;
    shell::LineList* m_list;
    std::vector<std::variant<reg::VisitId, store::RecordId>> m_targets;  // of the lines
};

}  // namespace hearth::ui::premises
