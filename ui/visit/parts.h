// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/part_view.h"

namespace hearth::ui::visit {

/// Makes a part's view, one of the part_*.cpp. The parts of the tests and of the records have classes of
/// their own in their headers, since the sheet asks them for more.
[[nodiscard]] PartView* makePart(const SheetContext& context, const PartRef& ref, QWidget* parent);

[[nodiscard]] PartView* makeWhoPart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeBeforePart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeRoomsPart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeInvestigationPart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeLargerPart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeAppliancePart(const SheetContext& context, const PartRef& ref, QWidget* parent);
[[nodiscard]] PartView* makePipeworkPart(const SheetContext& context, QWidget* parent);
[[nodiscard]] PartView* makeRestorePart(const SheetContext& context, const PartRef& ref, QWidget* parent);
[[nodiscard]] PartView* makeHandOverPart(const SheetContext& context, QWidget* parent);

}  // namespace hearth::ui::visit
