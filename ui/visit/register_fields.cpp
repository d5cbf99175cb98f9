// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/register_fields.h"

#include "core/calendar/civil_date.h"
#include "core/pipework/tube.h"

#include <array>

namespace hearth::ui::visit {

using quantity::Typed;
using quantity::UnitCode;
using rulebook::Gas;

namespace {

constexpr std::array kGases{Gas::NaturalGas, Gas::Propane, Gas::Butane, Gas::LpgAir};

QString qtext(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

Result<void> isNumber(const std::string& text) {
    const auto number = quantity::Decimal::parse(text);
    return number ? Result<void>() : tl::unexpected(number.error());
}

FieldBinding installationText(VisitSheetModel& model, std::string reg::Installation::*column) {
    return {[&model, column] {
                return Typed{model.file().installation.*column, UnitCode::None};
            },
            [&model, column](const QString& text, UnitCode) {
                reg::Installation installation = model.file().installation;
                installation.*column = text.toStdString();
                return model.save(installation);
            },
            {}};
}

FieldBinding installationFigure(VisitSheetModel& model, Typed reg::Installation::*column) {
    return {[&model, column] { return model.file().installation.*column; },
            [&model, column](const QString& text, UnitCode unit) {
                reg::Installation installation = model.file().installation;
                installation.*column = Typed{text.toStdString(), unit};
                return model.save(installation);
            },
            isNumber};
}

FieldBinding installationGas(VisitSheetModel& model) {
    return {[&model] {
                return Typed{std::string(rulebook::gasText(model.file().installation.gas)), UnitCode::None};
            },
            [&model](const QString& text, UnitCode) -> Result<void> {
                const auto gas = rulebook::gasFromText(text.toStdString());
                if (!gas) {
                    return fail(ErrorCode::ChoiceUnknown, {text.toStdString()});
                }
                reg::Installation installation = model.file().installation;
                installation.gas = *gas;
                return model.save(installation);
            },
            {}};
}

FieldBinding visitDate(VisitSheetModel& model, const Clock& clock) {
    const auto parsed = [&clock](const std::string& text) {
        return calendar::parseDate(text, clock.today());
    };
    return {[&model] {
                const reg::Visit& visit = model.file().visit;
                return Typed{visit.dateText.empty() ? calendar::isoText(visit.date) : visit.dateText,
                             UnitCode::None};
            },
            [&model, parsed](const QString& text, UnitCode) -> Result<void> {
                const auto date = parsed(text.toStdString());
                if (!date && text.trimmed().isEmpty()) {
                    return tl::unexpected(date.error());  // a visit has a day: the last one stands
                }
                reg::Visit visit = model.file().visit;
                visit.date = date.value_or(visit.date);
                visit.dateText = date ? std::string() : text.toStdString();
                return model.save(visit);
            },
            [parsed](const std::string& text) -> Result<void> {
                const auto date = parsed(text);
                return date ? Result<void>() : tl::unexpected(date.error());
            }};
}

FieldBinding visitEngineer(VisitSheetModel& model) {
    return {[&model] {
                const auto& engineer = model.file().visit.engineer;
                return Typed{engineer ? engineer->text() : std::string(), UnitCode::None};
            },
            [&model](const QString& text, UnitCode) -> Result<void> {
                const auto bytes = uuidFromText(text.toStdString());
                if (!bytes && !text.isEmpty()) {
                    return fail(ErrorCode::ChoiceUnknown, {text.toStdString()});
                }
                reg::Visit visit = model.file().visit;
                visit.engineer = bytes ? std::optional(reg::EngineerId{*bytes}) : std::nullopt;
                return model.save(visit);
            },
            {}};
}

FieldBinding customerName(VisitSheetModel& model) {
    return {[&model] {
                const reg::Party* customer = customerOf(model.file());
                return Typed{customer != nullptr ? customer->name : std::string(), UnitCode::None};
            },
            [&model](const QString& text, UnitCode) { return model.nameCustomer(text); },
            {}};
}

std::vector<input::ChoiceItem> engineerChoices(const reg::VisitFile& file) {
    std::vector<input::ChoiceItem> choices;
    for (const reg::Engineer& engineer : file.engineers) {
        choices.push_back(
            {QString::fromStdString(engineer.id.text()), QString::fromStdString(engineer.name)});
    }
    return choices;
}

std::vector<input::ChoiceItem> gasChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    choices.reserve(kGases.size());
    for (const Gas gas : kGases) {
        choices.push_back({qtext(rulebook::gasText(gas)), words.gas(gas)});
    }
    return choices;
}

std::vector<input::ChoiceItem> meterChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const pipework::Meter& meter : pipework::meters()) {
        choices.push_back({qtext(meter.code), words.meter(meter)});
    }
    return choices;
}

}  // namespace hearth::ui::visit
