// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/instrument_form.h"

namespace hearth::ui::firm {

using reg::Instrument;
using shell::coded;
using words::qstring;

namespace {

constexpr int kFormColumns = 3;
constexpr reg::InstrumentKind kKinds[] = {
    reg::InstrumentKind::ElectronicGauge,    reg::InstrumentKind::WaterGauge,
    reg::InstrumentKind::CombustionAnalyser, reg::InstrumentKind::LeakDetector,
    reg::InstrumentKind::VoltageIndicator,   reg::InstrumentKind::Other};

}  // namespace

InstrumentForm::InstrumentForm(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_fields(new shell::Fields(kFormColumns, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_fields);
    addText(tr("What you call it"), "instrumentName", [](Instrument& it) -> std::string& { return it.name; });
    addKind();
    addText(tr("Instrument's serial number"), "instrumentSerial",
            [](Instrument& it) -> std::string& { return it.serial; });
    addTyped(tr("One step of its display or scale"), "resolution",
             [](Instrument& it) -> quantity::Typed& { return it.resolution; });
    addTyped(tr("Repeatability, where the maker gives it"), "repeatability",
             [](Instrument& it) -> quantity::Typed& { return it.repeatability; });
    addTyped(tr("Accuracy"), "accuracy", [](Instrument& it) -> quantity::Typed& { return it.accuracy; });
    addText(tr("Calibration certificate"), "certificate",
            [](Instrument& it) -> std::string& { return it.certificate; });
    addDate(tr("Calibrated on"), "calibratedOn", [](Instrument& it) {
        return shell::DateSlot{it.calibratedOn, it.calibratedOnText};
    });
    addDate(tr("Calibration due"), "calibrationDue", [](Instrument& it) {
        return shell::DateSlot{it.calibrationDue, it.calibrationDueText};
    });
}

void InstrumentForm::finish(input::Editor* editor, const QString& label, const char* name) {
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(editor);
}

void InstrumentForm::addKind() {
    std::vector<input::ChoiceItem> choices;
    for (const auto kind : kKinds) {
        choices.push_back({coded(reg::codeOf(kind)), m_context.words.instrumentKind(kind)});
    }
    m_kind = input::makeListEditor(m_fields, choices);
    finish(m_kind, tr("Kind of instrument"), "instrumentKind");
    shell::keepOnCommit(m_kind, m_context.words, [this](const QString& code) {
        return keep([&](Instrument& it) {
            it.kind = reg::instrumentKindFromCode(code.toStdString()).value_or(it.kind);
        });
    });
}

void InstrumentForm::addText(const QString& label, const char* name, TextOf field) {
    auto* editor = input::makeTextEditor(m_fields);
    finish(editor, label, name);
    m_texts.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) {
        return keep([&](Instrument& it) { field(it) = text.trimmed().toStdString(); });
    });
}

void InstrumentForm::addTyped(const QString& label, const char* name, TypedOf field) {
    auto* editor = input::makeQuantityEditor(m_fields, quantity::UnitFamily::Pressure);
    finish(editor, label, name);
    m_typed.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, editor, field](const QString&) {
        const quantity::Typed typed = shell::typedIn(editor);
        const auto kept = keep([&](Instrument& it) { field(it) = typed; });
        return kept ? shell::readable(typed) : kept;
    });
}

void InstrumentForm::addDate(const QString& label, const char* name, DateOf field) {
    auto* editor = input::makeDateEditor(m_fields);
    finish(editor, label, name);
    m_dates.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) -> Result<void> {
        Result<void> readable;
        const auto kept = keep([&](Instrument& it) {
            readable = shell::takeDate(text, m_context.clock.today("Europe/London"), field(it));
        });
        return kept ? readable : kept;
    });
}

Result<void> InstrumentForm::keep(const std::function<void(Instrument&)>& change) {
    Instrument instrument = m_instrument;
    change(instrument);
    if (instrument.id.isNull()) {
        instrument.id = {m_context.store.newId()};
    }
    if (const auto kept = m_context.store.save(instrument); !kept) {
        return kept;
    }
    m_instrument = instrument;
    Q_EMIT changed(instrument);
    return {};
}

void InstrumentForm::show(const Instrument& instrument) {
    m_instrument = instrument;
    m_kind->setText(coded(reg::codeOf(instrument.kind)));
    for (const auto& [editor, field] : m_texts) {
        editor->setText(qstring(field(m_instrument)));
        editor->setProblem({});
    }
    for (const auto& [editor, field] : m_typed) {
        shell::showTyped(editor, field(m_instrument), m_context.words);
    }
    for (const auto& [editor, field] : m_dates) {
        shell::showDate(editor, field(m_instrument), m_context.clock.today("Europe/London"), m_context.words);
    }
}

void InstrumentForm::takeFocus(const char* field) {
    shell::focusOn(m_fields->findChild<input::Editor*>(QString::fromLatin1(field)));
}

}  // namespace hearth::ui::firm
