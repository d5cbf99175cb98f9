// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/premises/import_work.h"
#include "ui/shell/kit.h"
#include "ui/shell/place.h"

namespace hearth::ui::premises {

/// Each column of the file with what stands in its first rows and what it is taken for; above them how the
/// file is read.
class ImportColumnsPart : public QWidget {
    Q_OBJECT
  public:
    ImportColumnsPart(const shell::Context& context, ImportWork& work, QWidget* parent);
    void takeFocus();

  Q_SIGNALS:
    /// The file is to be read again: by another encoding or separator.
    void formChanged();

  private:
    void addForm(QVBoxLayout* lines);
    void addColumn(shell::Fields* fields, std::size_t column);
    [[nodiscard]] QString samplesOf(std::size_t column) const;
    [[nodiscard]] std::vector<input::ChoiceItem> targets() const;

    shell::Context m_context;
    ImportWork& m_work;
    std::vector<input::Editor*> m_columns;
};

}  // namespace hearth::ui::premises
