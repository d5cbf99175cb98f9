// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/appliance_form.h"

#include "ui/words/kept_words.h"

namespace hearth::ui::premises {

using quantity::UnitFamily;
using reg::Appliance;
using shell::coded;
using words::qstring;

namespace {

constexpr int kApplianceColumns = 3;
constexpr int kApplianceNoteLines = 2;

std::vector<input::ChoiceItem> applianceKinds(const words::Words& words) {
    std::vector<input::ChoiceItem> choices{{QString(), ApplianceForm::tr("not said yet")}};
    for (const auto& choice : reg::infoOf(reg::Item::ApplianceKind).choices) {
        const std::string code(choice.code);
        choices.push_back({qstring(code), words.choice(reg::Item::ApplianceKind, code)});
    }
    return choices;
}

}  // namespace

QString applianceName(const words::Words& words, const Appliance& appliance) {
    if (!appliance.kind.empty()) {
        return words.choice(reg::Item::ApplianceKind, appliance.kind);
    }
    return appliance.make.empty() ? ApplianceForm::tr("Appliance, not said yet which")
                                  : qstring(appliance.make);
}

ApplianceForm::ApplianceForm(const shell::Context& context, QWidget* parent)
    : RegisterForm(context, kApplianceColumns, {}, parent) {
    addWhat();
    addWhose();
    addMaker();
    addLongText(tr("Notes on this appliance"), "applianceNotes", kApplianceNoteLines, &Appliance::notes,
                kApplianceColumns);
    addSuggestions();
}

void ApplianceForm::addWhat() {
    addCodeText(tr("Kind of appliance"), "applianceKind", applianceKinds(context().words), &Appliance::kind);
    addText(tr("Make"), "make", &Appliance::make);
    addText(tr("Model"), "model", &Appliance::model);
    addText(tr("Where it is"), "appliancePlace", &Appliance::place);
    addText(tr("Appliance's serial number"), "applianceSerial", &Appliance::serial);
    auto* gcNumber = addText(tr("GC number"), "gcNumber", &Appliance::gcNumber);
    check(gcNumber, [this](const Appliance& it) {
        return words::doubt(context().words, reg::doubtOfGcNumber(it.gcNumber));
    });
    std::vector<input::ChoiceItem> flues;
    for (const auto flue : {reg::FlueType::NotSaid, reg::FlueType::RoomSealed, reg::FlueType::OpenFlued,
                            reg::FlueType::Flueless}) {
        flues.push_back({coded(reg::codeOf(flue)), words::flueType(context().words, flue)});
    }
    addChoice<reg::FlueType>(tr("Flue"), "flue", As::List, flues, &Appliance::flue, reg::flueTypeFromCode,
                             reg::codeOf);
    std::vector<input::ChoiceItem> gases;
    for (const auto gas :
         {rulebook::Gas::NaturalGas, rulebook::Gas::Propane, rulebook::Gas::Butane, rulebook::Gas::LpgAir}) {
        gases.push_back({coded(rulebook::gasText(gas)), context().words.gas(gas)});
    }
    addChoice<rulebook::Gas>(tr("Appliance burns"), "applianceGas", As::List, gases, &Appliance::gas,
                             rulebook::gasFromText, rulebook::gasText);
}

void ApplianceForm::addWhose() {
    std::vector<input::ChoiceItem> owners;
    for (const auto owner :
         {reg::Owner::NotSaid, reg::Owner::Landlord, reg::Owner::Tenant, reg::Owner::HomeOwner}) {
        owners.push_back({coded(reg::codeOf(owner)), words::owner(context().words, owner)});
    }
    addChoice<reg::Owner>(tr("Whose it is"), "applianceOwner", As::List, owners, &Appliance::owner,
                          reg::ownerFromCode, reg::codeOf);
    addTyped(tr("Heat input, net"), "netInput", UnitFamily::Power, &Appliance::netInput);
    addTyped(tr("Heat input, gross"), "grossInput", UnitFamily::Power, &Appliance::grossInput);
    breakRow();
    addDate(tr("Installed on"), "installedOn", [](Appliance& it) {
        return shell::DateSlot{it.installedOn, it.installedOnText};
    });
    addDate(tr("Removed on"), "removedOn", [](Appliance& it) {
        return shell::DateSlot{it.removedOn, it.removedOnText};
    });
    breakRow();
}

void ApplianceForm::addMaker() {
    addText(tr("Maker's limits, where they stand"), "makerSource", &Appliance::makerSource);
    auto* ratio = addText(tr("Maker's greatest CO/CO₂ ratio"), "makerRatio",
                          [](Appliance& it) -> std::string& { return it.makerRatio.text; });
    check(ratio, [this](const Appliance& it) {
        const auto good = shell::readable(it.makerRatio);
        return good ? QString() : context().words.error(good.error());
    });
    addTyped(tr("Maker's greatest CO"), "makerCo", UnitFamily::Trace, &Appliance::makerCo);
    addTyped(tr("Maker's least inlet pressure"), "makerInletLeast", UnitFamily::Pressure,
             &Appliance::makerInletLeast);
    addTyped(tr("Maker's greatest inlet pressure"), "makerInletMost", UnitFamily::Pressure,
             &Appliance::makerInletMost);
    addTyped(tr("Maker's tolerance on heat input"), "makerTolerance", UnitFamily::Share,
             &Appliance::makerTolerance);
    addTyped(tr("Maker's least burner pressure"), "makerBurnerLeast", UnitFamily::Pressure,
             &Appliance::makerBurnerLeast);
    addTyped(tr("Maker's greatest burner pressure"), "makerBurnerMost", UnitFamily::Pressure,
             &Appliance::makerBurnerMost);
    breakRow();
}

void ApplianceForm::addSuggestions() {
    const auto offer = [this](const char* name, store::Suggest what, bool ofMake) {
        suggest(field(name), [this, what, ofMake](const QString& typed) {
            QStringList offered;
            const auto known =
                context().store.suggestions(what, typed.toStdString(), ofMake ? value().make : std::string());
            for (const auto& text : known.value_or(std::vector<std::string>())) {
                offered << qstring(text);
            }
            return offered;
        });
    };
    offer("make", store::Suggest::Make, false);
    offer("model", store::Suggest::Model, true);
    offer("appliancePlace", store::Suggest::Place, false);
}

}  // namespace hearth::ui::premises
