// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/installations_part.h"

#include "core/pipework/tube.h"

namespace hearth::ui::premises {

using shell::coded;
using words::qstring;

namespace {
constexpr int kColumns = 3;
}  // namespace

InstallationForm::InstallationForm(const shell::Context& context, const QString& nameContext, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_nameContext(nameContext),
      m_fields(new shell::Fields(kColumns, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->addWidget(m_fields);
    addGas();
    addMeter();
    addText(tr("Meter serial number"), "meterSerial",
            [](reg::Installation& installation) -> std::string& { return installation.meterSerial; });
    addText(tr("Where the meter is"), "meterPlace",
            [](reg::Installation& installation) -> std::string& { return installation.meterPlace; });
    addText(tr("Where the emergency control valve is"), "valvePlace",
            [](reg::Installation& installation) -> std::string& { return installation.controlValvePlace; });
    addTyped(
        tr("Operating pressure at the meter outlet"), "operatingPressure", quantity::UnitFamily::Pressure,
        [](reg::Installation& installation) -> quantity::Typed& { return installation.operatingPressure; });
    addTyped(tr("Highest supply pressure at the valve"), "supplyPressure", quantity::UnitFamily::Pressure,
             [](reg::Installation& installation) -> quantity::Typed& { return installation.supplyPressure; });
    addTyped(tr("Meter's volume from its plate"), "meterVolume", quantity::UnitFamily::Volume,
             [](reg::Installation& installation) -> quantity::Typed& { return installation.meterVolume; });
    m_meterVolume = m_typed.back().first;
}

void InstallationForm::finish(input::Editor* editor, const QString& label, const char* name) {
    editor->setLabel(label, m_nameContext);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
}

void InstallationForm::addGas() {
    std::vector<input::ChoiceItem> choices;
    for (const auto gas :
         {rulebook::Gas::NaturalGas, rulebook::Gas::Propane, rulebook::Gas::Butane, rulebook::Gas::LpgAir}) {
        choices.push_back({coded(rulebook::gasText(gas)), m_context.words.gas(gas)});
    }
    m_gas = input::makeChoiceEditor(m_fields, choices);
    finish(m_gas, tr("Gas"), "gas");
    m_fields->add(m_gas, kColumns);
    shell::keepOnCommit(m_gas, m_context.words, [this](const QString& code) {
        return keep([&](reg::Installation& installation) {
            installation.gas = rulebook::gasFromText(code.toStdString()).value_or(installation.gas);
        });
    });
}

void InstallationForm::addMeter() {
    std::vector<input::ChoiceItem> choices{{QString(), tr("not said yet")}};
    for (const auto& meter : pipework::meters()) {
        choices.push_back({coded(meter.code), m_context.words.meter(meter)});
    }
    m_meter = input::makeListEditor(m_fields, choices);
    finish(m_meter, tr("Meter"), "meter");
    m_fields->add(m_meter);
    shell::keepOnCommit(m_meter, m_context.words, [this](const QString& code) {
        const auto kept =
            keep([&](reg::Installation& installation) { installation.meterCode = code.toStdString(); });
        showMeterVolume();
        return kept;
    });
}

void InstallationForm::addText(const QString& label, const char* name, TextOf field) {
    auto* editor = input::makeTextEditor(m_fields);
    finish(editor, label, name);
    m_fields->add(editor);
    m_texts.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) {
        return keep(
            [&](reg::Installation& installation) { field(installation) = text.trimmed().toStdString(); });
    });
}

void InstallationForm::addTyped(const QString& label, const char* name, quantity::UnitFamily family,
                                TypedOf field) {
    auto* editor = input::makeQuantityEditor(m_fields, family);
    finish(editor, label, name);
    m_fields->add(editor);
    m_typed.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, editor, field](const QString&) {
        const quantity::Typed typed = shell::typedIn(editor);
        const auto kept = keep([&](reg::Installation& installation) { field(installation) = typed; });
        // Kept to the letter in any case; what can't be read as a number is said.
        return kept ? shell::readable(typed) : kept;
    });
}

Result<void> InstallationForm::keep(const std::function<void(reg::Installation&)>& change) {
    reg::Installation changed = m_installation;
    change(changed);
    if (const auto kept = m_context.store.save(changed); !kept) {
        return kept;
    }
    m_installation = changed;
    return {};
}

void InstallationForm::show(const reg::Installation& installation) {
    m_installation = installation;
    m_gas->setText(coded(rulebook::gasText(installation.gas)));
    m_meter->setText(qstring(installation.meterCode));
    for (const auto& [editor, field] : m_texts) {
        editor->setText(qstring(field(m_installation)));
        editor->setProblem({});
    }
    for (const auto& [editor, field] : m_typed) {
        shell::showTyped(editor, field(m_installation), m_context.words);
    }
    showMeterVolume();
}

void InstallationForm::showMeterVolume() {
    const auto* meter = pipework::meterByCode(m_installation.meterCode);
    const bool lacksVolume = meter != nullptr && meter->kind != pipework::MeterKind::None && !meter->volume;
    m_meterVolume->setVisible(lacksVolume || !m_installation.meterVolume.text.empty());
}

InstallationsPart::InstallationsPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context), m_lines(new QVBoxLayout(this)) {
    m_lines->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(look::kGap);
    m_problem = shell::bodyText({}, this);
    m_problem->setInk(look::Role::Fail);
    m_problem->hide();
    m_lines->addWidget(m_problem);
    m_add = new shell::KeyButton(tr("Another installation here"), shell::ButtonKind::Quiet, this);
    m_add->setObjectName(QStringLiteral("addInstallationButton"));
    m_add->setEnabled(!m_context.store.isReadOnly());
    m_lines->addWidget(m_add, 0, Qt::AlignLeft);
    connect(m_add, &QPushButton::clicked, this, &InstallationsPart::add);
}

void InstallationsPart::build(std::size_t count) {
    qDeleteAll(m_forms);
    qDeleteAll(m_headings);
    m_forms.clear();
    m_headings.clear();
    for (std::size_t i = 0; i < count; ++i) {
        const QString name = count == 1 ? tr("Gas installation") : tr("Gas installation %1").arg(i + 1);
        auto* heading = shell::headingText(name, this);
        auto* form = new InstallationForm(m_context, count == 1 ? QString() : name, this);
        m_lines->insertWidget(m_lines->count() - 1, heading);
        m_lines->insertWidget(m_lines->count() - 1, form);
        m_headings.push_back(heading);
        m_forms.push_back(form);
    }
}

void InstallationsPart::show(reg::PremisesId id) {
    m_premises = id;
    const auto installations = m_context.store.installations(id);
    m_problem->setVisible(!installations);
    if (!installations) {
        m_problem->setText(m_context.words.error(installations.error()));
        return;
    }
    if (installations->size() != m_forms.size()) {
        build(installations->size());
    }
    for (std::size_t i = 0; i < m_forms.size(); ++i) {
        m_forms[i]->show((*installations)[i]);
    }
}

rulebook::Gas InstallationsPart::gas() const {
    return m_forms.empty() ? rulebook::Gas::NaturalGas : m_forms.front()->installation().gas;
}

void InstallationsPart::add() {
    reg::Installation installation;
    installation.id = {m_context.store.newId()};
    installation.premises = m_premises;
    if (const auto kept = m_context.store.save(installation); !kept) {
        m_context.dialogs.tell(this, tr("The installation was not added"),
                               m_context.words.error(kept.error()));
        return;
    }
    show(m_premises);
    shell::orderTabs(window());
    m_context.navigator.say(tr("Added. Ctrl+Z takes it away again."));
}

}  // namespace hearth::ui::premises
