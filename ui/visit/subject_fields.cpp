// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/kit.h"
#include "ui/visit/register_fields.h"
#include "ui/visit/subject_name.h"
#include "ui/words/kept_words.h"

#include <QStringList>

#include <algorithm>
#include <array>

namespace hearth::ui::visit {

using reg::Item;

namespace {

constexpr std::array kKindItems{Item::VisitLandlordCheck, Item::VisitOwnerCheck, Item::VisitInstallation,
                                Item::VisitService,       Item::VisitPipework,   Item::VisitLarger,
                                Item::VisitRoomCo,        Item::VisitUnsafe};

template <class List, class Id>
auto rowOf(const List& list, Id id) -> const typename List::value_type* {
    const auto at = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.id == id; });
    return at == list.end() ? nullptr : &*at;
}

quantity::Typed asTyped(std::string_view text) {
    return {std::string(text), quantity::UnitCode::None};
}

/// A column of a row of `list` (of the model's file): read by `read`, changed by `change`, which says whether
/// it could use the text.
template <class Row, class Id, class Read, class Change>
FieldBinding columnOf(VisitSheetModel& model, std::vector<Row> reg::VisitFile::*list, Id id, Read read,
                      Change change) {
    return {[&model, list, id, read] {
                const Row* row = rowOf(model.file().*list, id);
                return row == nullptr ? quantity::Typed{} : asTyped(read(*row));
            },
            [&model, list, id, change](const QString& text, quantity::UnitCode) -> Result<void> {
                const Row* row = rowOf(model.file().*list, id);
                if (row == nullptr) {
                    return fail(ErrorCode::NotFound);
                }
                Row changed = *row;
                if (!change(changed, text.toStdString())) {
                    return fail(ErrorCode::ChoiceUnknown, {text.toStdString()});
                }
                return model.save(changed);
            },
            {}};
}

template <class Row, class Id>
FieldBinding textOf(VisitSheetModel& model, std::vector<Row> reg::VisitFile::*list, Id id,
                    std::string Row::*column) {
    return columnOf(
        model, list, id, [column](const Row& row) { return row.*column; },
        [column](Row& row, const std::string& text) {
            row.*column = text;
            return true;
        });
}

/// A column with codes of its own; "not said" is the choice that nobody made: an empty text.
template <class Row, class Id, class Value, class FromCode>
FieldBinding codedColumn(VisitSheetModel& model, std::vector<Row> reg::VisitFile::*list, Id id,
                         Value Row::*column, FromCode fromCode) {
    return columnOf(
        model, list, id,
        [column](const Row& row) {
            return row.*column == Value::NotSaid ? std::string_view() : reg::codeOf(row.*column);
        },
        [column, fromCode](Row& row, const std::string& text) {
            const auto value = text.empty() ? std::optional(Value::NotSaid) : fromCode(text);
            row.*column = value.value_or(row.*column);
            return value.has_value();
        });
}

}  // namespace

FieldBinding applianceText(VisitSheetModel& model, reg::ApplianceId id, std::string reg::Appliance::*column) {
    return textOf(model, &reg::VisitFile::appliances, id, column);
}

FieldBinding applianceFlue(VisitSheetModel& model, reg::ApplianceId id) {
    return codedColumn(model, &reg::VisitFile::appliances, id, &reg::Appliance::flue, reg::flueTypeFromCode);
}

FieldBinding applianceOwner(VisitSheetModel& model, reg::ApplianceId id) {
    return codedColumn(model, &reg::VisitFile::appliances, id, &reg::Appliance::owner, reg::ownerFromCode);
}

FieldBinding situationText(VisitSheetModel& model, reg::SituationId id, std::string reg::Situation::*column) {
    return textOf(model, &reg::VisitFile::situations, id, column);
}

FieldBinding situationDanger(VisitSheetModel& model, reg::SituationId id) {
    return codedColumn(model, &reg::VisitFile::situations, id, &reg::Situation::danger, reg::dangerFromCode);
}

FieldBinding situationAppliance(VisitSheetModel& model, reg::SituationId id) {
    return columnOf(
        model, &reg::VisitFile::situations, id,
        [](const reg::Situation& row) { return row.appliance ? row.appliance->text() : std::string(); },
        [](reg::Situation& row, const std::string& text) {
            const auto bytes = uuidFromText(text);
            row.appliance = bytes ? std::optional(reg::ApplianceId{*bytes}) : std::nullopt;
            return bytes.has_value() || text.empty();
        });
}

FieldBinding visitKinds(VisitSheetModel& model) {
    return {[&model] {
                const auto visit = reg::subject(model.file().visit.id);
                QStringList codes;
                for (const Item item : kKindItems) {
                    if (model.file().choiceOf(visit, item) == reg::choice::kYes) {
                        codes << shell::coded(reg::infoOf(item).code);
                    }
                }
                return asTyped(codes.join(u' ').toStdString());
            },
            [&model](const QString& text, quantity::UnitCode) -> Result<void> {
                const auto visit = reg::subject(model.file().visit.id);
                const QStringList codes = text.split(u' ', Qt::SkipEmptyParts);
                for (const Item item : kKindItems) {
                    const bool isYes = codes.contains(shell::coded(reg::infoOf(item).code));
                    if (isYes == (model.file().choiceOf(visit, item) == reg::choice::kYes)) {
                        continue;
                    }
                    const QString answer = isYes ? shell::coded(reg::choice::kYes) : QString();
                    if (auto kept = model.enter(visit, item, answer); !kept) {
                        return kept;
                    }
                }
                return {};
            },
            {}};
}

std::vector<input::ChoiceItem> kindChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const Item item : kKindItems) {
        choices.push_back({shell::coded(reg::infoOf(item).code), words.item(item)});
    }
    return choices;
}

std::vector<input::ChoiceItem> flueChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto flue : {reg::FlueType::RoomSealed, reg::FlueType::OpenFlued, reg::FlueType::Flueless}) {
        choices.push_back({shell::coded(reg::codeOf(flue)), words::flueType(words, flue)});
    }
    return choices;
}

std::vector<input::ChoiceItem> ownerChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto owner : {reg::Owner::Landlord, reg::Owner::Tenant, reg::Owner::HomeOwner}) {
        choices.push_back({shell::coded(reg::codeOf(owner)), words::owner(words, owner)});
    }
    return choices;
}

std::vector<input::ChoiceItem> dangerChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto danger : {reg::Danger::ImmediatelyDangerous, reg::Danger::AtRisk}) {
        choices.push_back({shell::coded(reg::codeOf(danger)), words::danger(words, danger)});
    }
    return choices;
}

std::vector<input::ChoiceItem> applianceChoices(const reg::VisitFile& file, const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const reg::Appliance& appliance : file.appliances) {
        choices.push_back({QString::fromStdString(appliance.id.text()),
                           subjectName(reg::subject(appliance.id), file, words)});
    }
    return choices;
}

}  // namespace hearth::ui::visit
