// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/visit/sheet_field.h"

#include <string>

/// Fields of the sheet that are columns of the register, not items: one small binding each.
namespace hearth::ui::visit {

[[nodiscard]] FieldBinding installationText(VisitSheetModel& model, std::string reg::Installation::*column);
/// A figure of the installation: kept as typed, marked where it is no number.
[[nodiscard]] FieldBinding installationFigure(VisitSheetModel& model,
                                              quantity::Typed reg::Installation::*column);
[[nodiscard]] FieldBinding installationGas(VisitSheetModel& model);
/// The day, or what was typed for it; while that is no day the last one stands, and no record can be issued.
/// An emptied field says that a day is wanted, and the last one stands.
[[nodiscard]] FieldBinding visitDate(VisitSheetModel& model, const Clock& clock);
/// The engineer by id; an empty text is nobody.
[[nodiscard]] FieldBinding visitEngineer(VisitSheetModel& model);
/// Fields of an appliance and of an unsafe situation; a choice by its code, "not said" is an empty text.
[[nodiscard]] FieldBinding applianceText(VisitSheetModel& model, reg::ApplianceId id,
                                         std::string reg::Appliance::*column);
[[nodiscard]] FieldBinding applianceFlue(VisitSheetModel& model, reg::ApplianceId id);
[[nodiscard]] FieldBinding applianceOwner(VisitSheetModel& model, reg::ApplianceId id);
[[nodiscard]] FieldBinding situationText(VisitSheetModel& model, reg::SituationId id,
                                         std::string reg::Situation::*column);
[[nodiscard]] FieldBinding situationDanger(VisitSheetModel& model, reg::SituationId id);
[[nodiscard]] FieldBinding situationAppliance(VisitSheetModel& model, reg::SituationId id);
/// The kinds of visit: the codes of those of its items that are answered with yes, with spaces between.
[[nodiscard]] FieldBinding visitKinds(VisitSheetModel& model);

[[nodiscard]] std::vector<input::ChoiceItem> kindChoices(const words::Words& words);
[[nodiscard]] std::vector<input::ChoiceItem> flueChoices(const words::Words& words);
[[nodiscard]] std::vector<input::ChoiceItem> ownerChoices(const words::Words& words);
[[nodiscard]] std::vector<input::ChoiceItem> dangerChoices(const words::Words& words);
[[nodiscard]] std::vector<input::ChoiceItem> applianceChoices(const reg::VisitFile& file,
                                                              const words::Words& words);
[[nodiscard]] FieldBinding customerName(VisitSheetModel& model);

[[nodiscard]] std::vector<input::ChoiceItem> engineerChoices(const reg::VisitFile& file);
[[nodiscard]] std::vector<input::ChoiceItem> gasChoices(const words::Words& words);
[[nodiscard]] std::vector<input::ChoiceItem> meterChoices(const words::Words& words);

/// Ok for a text that reads as a number.
[[nodiscard]] Result<void> isNumber(const std::string& text);

}  // namespace hearth::ui::visit
