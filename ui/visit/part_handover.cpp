// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/visit/parts.h"

namespace hearth::ui::visit {

namespace {

using reg::Item;

class HandOverPart : public PartView {
  public:
    HandOverPart(const SheetContext& context, QWidget* parent)
        : PartView(context, {PartKind::HandOver}, parent) {
        auto* fields = addFields();
        addItem(fields, Item::VisitRemarks, 6);
        addItem(fields, Item::SignedByEngineer, 3);
        addItem(fields, Item::ReceivedBy, 3);
    }
};

}  // namespace

PartView* makeHandOverPart(const SheetContext& context, QWidget* parent) {
    return new HandOverPart(context, parent);
}

}  // namespace hearth::ui::visit
