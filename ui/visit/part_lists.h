// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part_view.h"

namespace hearth::ui::shell {
class KeyButton;
class LineList;
}  // namespace hearth::ui::shell

namespace hearth::ui::visit {

/// The appliances of the installation, or the unsafe situations that this visit found: a list, whose Enter
/// goes to the part of the one under the cursor, and a button for another.
class ListPart : public PartView {
    Q_OBJECT
  public:
    ListPart(const SheetContext& context, const PartRef& ref, QWidget* parent);
    void refresh() override;
    void takeFocus() override;
    void setReadOnly(bool readOnly) override;
    [[nodiscard]] shell::LineList* list() const { return m_list; }

  Q_SIGNALS:
    /// One of them was chosen, or made.
    void chosen(const hearth::reg::SubjectRef& subject);

  private:
    [[nodiscard]] bool ofAppliances() const { return ref().kind == PartKind::Appliances; }
    void add();
    void refuse(const Error& error);

    shell::LineList* m_list;
    shell::KeyButton* m_add;
    shell::Text* m_refused;
};

}  // namespace hearth::ui::visit
