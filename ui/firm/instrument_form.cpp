// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/instrument_form.h"

namespace hearth::ui::firm {

using reg::Instrument;
using shell::coded;

namespace {

constexpr int kFormColumns = 3;
constexpr reg::InstrumentKind kKinds[] = {
    reg::InstrumentKind::ElectronicGauge,    reg::InstrumentKind::WaterGauge,
    reg::InstrumentKind::CombustionAnalyser, reg::InstrumentKind::LeakDetector,
    reg::InstrumentKind::VoltageIndicator,   reg::InstrumentKind::Other};

}  // namespace

InstrumentForm::InstrumentForm(const shell::Context& context, QWidget* parent)
    : RegisterForm(context, kFormColumns, {}, parent) {
    addText(tr("What you call it"), "instrumentName", &Instrument::name);
    addKind();
    addText(tr("Instrument's serial number"), "instrumentSerial", &Instrument::serial);
    addReading();
    addCalibration();
}

void InstrumentForm::addKind() {
    std::vector<input::ChoiceItem> choices;
    for (const auto kind : kKinds) {
        choices.push_back({coded(reg::codeOf(kind)), context().words.instrumentKind(kind)});
    }
    addChoice<reg::InstrumentKind>(tr("Kind of instrument"), "instrumentKind", As::List, choices,
                                   &Instrument::kind, reg::instrumentKindFromCode, reg::codeOf);
}

void InstrumentForm::addReading() {
    constexpr auto kFamily = quantity::UnitFamily::Pressure;
    addTyped(tr("One step of its display or scale"), "resolution", kFamily, &Instrument::resolution);
    addTyped(tr("Repeatability, where the maker gives it"), "repeatability", kFamily,
             &Instrument::repeatability);
    addTyped(tr("Accuracy"), "accuracy", kFamily, &Instrument::accuracy);
    addTyped(tr("Drift in a minute, where it is known"), "drift", kFamily, &Instrument::drift);
}

void InstrumentForm::addCalibration() {
    addText(tr("Calibration certificate"), "certificate", &Instrument::certificate);
    addDate(tr("Calibrated on"), "calibratedOn", [](Instrument& it) {
        return shell::DateSlot{it.calibratedOn, it.calibratedOnText};
    });
    addDate(tr("Calibration due"), "calibrationDue", [](Instrument& it) {
        return shell::DateSlot{it.calibrationDue, it.calibrationDueText};
    });
}

}  // namespace hearth::ui::firm
