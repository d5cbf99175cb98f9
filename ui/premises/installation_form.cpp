// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/installation_form.h"

#include "core/pipework/tube.h"
#include "ui/words/kept_words.h"

namespace hearth::ui::premises {

using reg::Installation;
using shell::coded;

namespace {
constexpr int kInstallationColumns = 3;
}  // namespace

InstallationForm::InstallationForm(const shell::Context& context, const QString& nameContext, QWidget* parent)
    : RegisterForm(context, kInstallationColumns, nameContext, parent) {
    addGas();
    addMeter();
    addSupply();
    addSeen();
    whenKept([this](const Installation&) { showMeterVolume(); });
}

void InstallationForm::addGas() {
    std::vector<input::ChoiceItem> choices;
    for (const auto gas :
         {rulebook::Gas::NaturalGas, rulebook::Gas::Propane, rulebook::Gas::Butane, rulebook::Gas::LpgAir}) {
        choices.push_back({coded(rulebook::gasText(gas)), context().words.gas(gas)});
    }
    addChoice<rulebook::Gas>(tr("Gas"), "gas", As::Row, choices, &Installation::gas, rulebook::gasFromText,
                             rulebook::gasText, kInstallationColumns);
}

void InstallationForm::addMeter() {
    std::vector<input::ChoiceItem> choices{{QString(), tr("not said yet")}};
    for (const auto& meter : pipework::meters()) {
        choices.push_back({coded(meter.code), context().words.meter(meter)});
    }
    addText(tr("What this installation is called"), "installationName", &Installation::name);
    auto* mprn = addText(tr("Meter point reference (MPRN)"), "mprn", &Installation::mprn);
    check(mprn, [this](const Installation& it) {
        return words::doubt(context().words, reg::doubtOfMprn(it.mprn, it.gas));
    });
    breakRow();
    addCodeText(tr("Meter"), "meter", choices, &Installation::meterCode);
    addText(tr("Meter serial number"), "meterSerial", &Installation::meterSerial);
    addText(tr("Meter's badge"), "meterBadge", &Installation::meterBadge);
    addText(tr("Where the meter is"), "meterPlace", &Installation::meterPlace);
    addText(tr("Regulator"), "regulator", &Installation::regulator);
    m_meterVolume = addTyped(tr("Meter's volume from its plate"), "meterVolume", quantity::UnitFamily::Volume,
                             &Installation::meterVolume);
    breakRow();
}

void InstallationForm::addSupply() {
    addText(tr("Where the emergency control valve is"), "valvePlace", &Installation::controlValvePlace);
    addTyped(tr("Operating pressure at the meter outlet"), "operatingPressure",
             quantity::UnitFamily::Pressure, &Installation::operatingPressure);
    addTyped(tr("Highest supply pressure at the valve"), "supplyPressure", quantity::UnitFamily::Pressure,
             &Installation::supplyPressure);
}

void InstallationForm::addSeen() {
    std::vector<input::ChoiceItem> choices;
    for (const auto answer : {reg::YesNo::NotSaid, reg::YesNo::Yes, reg::YesNo::No}) {
        choices.push_back({coded(reg::codeOf(answer)), words::yesNo(context().words, answer)});
    }
    addChoice<reg::YesNo>(tr("Emergency control valve within reach"), "valveAccessible", As::List, choices,
                          &Installation::controlValveAccessible, reg::yesNoFromCode, reg::codeOf);
    addChoice<reg::YesNo>(tr("Equipotential bonding seen"), "bondingSeen", As::List, choices,
                          &Installation::bondingSeen, reg::yesNoFromCode, reg::codeOf);
    addText(tr("Line diagram"), "lineDiagram", &Installation::lineDiagram);
}

void InstallationForm::show(const Installation& installation) {
    RegisterForm::show(installation);
    showMeterVolume();
}

void InstallationForm::showMeterVolume() {
    const auto* meter = pipework::meterByCode(value().meterCode);
    const bool lacksVolume = meter != nullptr && meter->kind != pipework::MeterKind::None && !meter->volume;
    m_meterVolume->setVisible(lacksVolume || !value().meterVolume.text.empty());
}

}  // namespace hearth::ui::premises
