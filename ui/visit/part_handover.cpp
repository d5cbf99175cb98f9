// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/visit/asked_part.h"
#include "ui/visit/parts.h"

namespace hearth::ui::visit {

namespace {

using reg::Item;

/// What is handed over follows the kinds of visit; remarks and signatures are every visit's.
class HandOverPart : public AskedPart {
  public:
    HandOverPart(const SheetContext& context, QWidget* parent)
        : AskedPart(context, {PartKind::HandOver}, parent) {
        addGroups(handOverGroups());
        auto* fields = addFields();
        addItem(fields, Item::VisitRemarks, 6);
        addItem(fields, Item::SignedByEngineer, 3);
        addItem(fields, Item::ReceivedBy, 3);
        addMore();
    }
};

}  // namespace

PartView* makeHandOverPart(const SheetContext& context, QWidget* parent) {
    return new HandOverPart(context, parent);
}

}  // namespace hearth::ui::visit
