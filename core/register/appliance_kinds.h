// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/register/visit_file.h"

/// What kinds of appliance have in common, and what can be asked of each. One place: sheet, records and
/// judging ask here.
namespace hearth::reg {

/// False only for what is noted beside the gas work: an unvented cylinder. A kind that was not said yet, or
/// that is not known here, is one.
[[nodiscard]] bool isGasAppliance(std::string_view kind);
/// The LPG system of a leisure vehicle or a boat: cylinders, regulator, hoses, pipes. What burns there is an
/// appliance of its own.
[[nodiscard]] bool isLpgSystem(std::string_view kind);
/// It has a flame of its own: flue, air, heat input and combustion can be asked of it.
[[nodiscard]] bool burnsGas(std::string_view kind);

/// On this visit the engineer found it decommissioned and capped, or left it so: nothing can be measured.
[[nodiscard]] bool isCapped(const VisitFile& file, const SubjectRef& appliance);

/// The item belongs to some kinds of appliance, or to what is capped, and to nothing else.
[[nodiscard]] bool isOfSomeKinds(Item item);
/// Whether the item can be asked of an appliance of that kind. Of what is capped little is: how it is sealed,
/// defects, what was done, and the engineer's own declaration.
/// Source: the items of LPG systems, catering and unvented cylinders are the facts' field lists (Code of
/// Practice 32, IGEM/UP/19, Building Regulations G3); a seal by an appropriate fitting regulation 26(5).
[[nodiscard]] bool canBeAsked(Item item, std::string_view kind, bool capped);
/// The same of an appliance of the visit, where one without a flue is not asked of its flue; of anything else
/// everything can be asked.
[[nodiscard]] bool canBeAsked(Item item, const SubjectRef& on, const VisitFile& file);

}  // namespace hearth::reg
