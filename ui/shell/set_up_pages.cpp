// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/set_up_pages.h"

#include "ui/shell/rule_answer.h"

namespace hearth::ui::shell {

namespace {

constexpr int kColumns = 2;

QVBoxLayout* pageLines(QWidget* page, const QString& title, const QString& text) {
    auto* lines = new QVBoxLayout(page);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(titleText(title, page));
    lines->addWidget(softText(text, page));
    return lines;
}

std::string trimmed(const input::Editor* editor) {
    return editor->text().trimmed().toStdString();
}

std::vector<input::ChoiceItem> countries(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto country : {reg::Country::England, reg::Country::Wales, reg::Country::Scotland,
                               reg::Country::NorthernIreland}) {
        choices.push_back({coded(reg::codeOf(country)), words.country(country)});
    }
    return choices;
}

std::vector<input::ChoiceItem> gaugeKinds(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto kind : {reg::InstrumentKind::ElectronicGauge, reg::InstrumentKind::WaterGauge}) {
        choices.push_back({coded(reg::codeOf(kind)), words.instrumentKind(kind)});
    }
    return choices;
}

}  // namespace

FirmPage::FirmPage(const words::Words& words, QWidget* parent) : SetUpPage(parent) {
    auto* lines = pageLines(
        this, tr("The firm"),
        tr("As it stands at the head of each record. All but the name may wait: it is found under Firm."));
    m_fields = new Fields(kColumns, this);
    lines->addWidget(m_fields);
    m_name = add(tr("Name of the firm"), "setUpFirmName");
    m_registration = add(tr("Registration number"), "setUpRegistration");
    m_line1 = add(tr("Address"), "setUpLine1");
    m_line2 = add(tr("Address, second line"), "setUpLine2");
    m_town = add(tr("Town"), "setUpTown");
    m_postcode = add(tr("Postcode"), "setUpPostcode");
    m_telephone = add(tr("Telephone"), "setUpTelephone");
    m_country = input::makeListEditor(m_fields, countries(words));
    m_country->setLabel(tr("Country"));
    m_country->setObjectName(QStringLiteral("setUpCountry"));
    m_country->setText(coded(reg::codeOf(reg::Country::England)));
    m_fields->add(m_country);
}

input::Editor* FirmPage::add(const QString& label, const char* name) {
    auto* editor = input::makeTextEditor(m_fields);
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    m_fields->add(editor);
    return editor;
}

void FirmPage::takeFocus() {
    focusOn(m_name);
}

bool FirmPage::isUsable() {
    const bool named = !trimmed(m_name).empty();
    m_name->setProblem(named ? QString() : tr("The firm needs a name."));
    if (!named) {
        focusOn(m_name);
    }
    return named;
}

void FirmPage::addTo(SetUp& setUp) {
    setUp.firm.name = trimmed(m_name);
    setUp.firm.registrationNumber = trimmed(m_registration);
    setUp.firm.telephone = trimmed(m_telephone);
    setUp.firm.address = {trimmed(m_line1), trimmed(m_line2), trimmed(m_town), trimmed(m_postcode)};
    setUp.firm.country =
        reg::countryFromCode(m_country->text().toStdString()).value_or(reg::Country::England);
}

EngineerAndGaugePage::EngineerAndGaugePage(const words::Words& words, const Clock& clock, QWidget* parent)
    : SetUpPage(parent), m_words(words), m_clock(clock) {
    auto* lines =
        pageLines(this, tr("Engineer and gauge"), tr("The first of each; others are added under Firm."));
    auto* person = new Fields(kColumns, this);
    lines->addWidget(person);
    m_name = add(person, input::makeTextEditor(person), tr("Engineer's name"), "setUpEngineer");
    m_card = add(person, input::makeTextEditor(person), tr("Card number"), "setUpCard");
    lines->addWidget(hairline(this));
    auto* gauge = new Fields(kColumns, this);
    lines->addWidget(gauge);
    m_kind =
        add(gauge, input::makeChoiceEditor(gauge, gaugeKinds(words)), tr("Kind of gauge"), "setUpGaugeKind");
    m_kind->setText(coded(reg::codeOf(reg::InstrumentKind::ElectronicGauge)));
    m_gaugeName = add(gauge, input::makeTextEditor(gauge), tr("What you call it"), "setUpGaugeName");
    m_serial = add(gauge, input::makeTextEditor(gauge), tr("Serial number"), "setUpSerial");
    m_resolution = add(gauge, input::makeQuantityEditor(gauge, quantity::UnitFamily::Pressure),
                       tr("One step of its display or scale"), "setUpResolution");
    m_accuracy = add(gauge, input::makeQuantityEditor(gauge, quantity::UnitFamily::Pressure), tr("Accuracy"),
                     "setUpAccuracy");
    m_due = add(gauge, input::makeDateEditor(gauge), tr("Calibration due"), "setUpDue");
    sayReadable(m_resolution);
    sayReadable(m_accuracy);
}

input::Editor* EngineerAndGaugePage::add(Fields* fields, input::Editor* editor, const QString& label,
                                         const char* name) {
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    fields->add(editor);
    return editor;
}

void EngineerAndGaugePage::sayReadable(input::Editor* editor) {
    keepOnCommit(editor, m_words, [editor](const QString&) { return readable(typedIn(editor)); });
}

void EngineerAndGaugePage::takeFocus() {
    focusOn(m_name);
}

bool EngineerAndGaugePage::isUsable() {
    const auto due = dateTyped(m_due->text(), m_clock.today("Europe/London"));
    m_due->setProblem(due ? QString() : m_words.error(due.error()));
    if (!due) {
        focusOn(m_due);
    }
    return due.has_value();
}

void EngineerAndGaugePage::addTo(SetUp& setUp) {
    setUp.engineer.reset();
    setUp.gauge.reset();
    if (const std::string name = trimmed(m_name); !name.empty()) {
        reg::Engineer engineer;
        engineer.name = name;
        engineer.cardNumber = trimmed(m_card);
        setUp.engineer = engineer;
    }
    reg::Instrument gauge;
    gauge.kind = reg::instrumentKindFromCode(m_kind->text().toStdString()).value_or(gauge.kind);
    const reg::Instrument untouched = gauge;
    gauge.name = trimmed(m_gaugeName);
    gauge.serial = trimmed(m_serial);
    gauge.resolution = typedIn(m_resolution);
    gauge.accuracy = typedIn(m_accuracy);
    static_cast<void>(takeDate(m_due->text(), m_clock.today("Europe/London"),
                               {gauge.calibrationDue, gauge.calibrationDueText}));
    if (!(gauge == untouched)) {
        setUp.gauge = gauge;
    }
}

ConfirmPage::ConfirmPage(const words::Words& words, const Clock& clock, const rulebook::RuleBook& book,
                         QWidget* parent)
    : SetUpPage(parent), m_clock(clock) {
    auto* lines = pageLines(
        this, tr("The limits of daily work"),
        tr("Hold each against your own copy of the standard. What you leave for later never gives a "
           "pass: its findings say "
           "“look again” or that the limit is missing. All of it is found again under Rule book."));
    for (const auto& entry : book.entries()) {
        if (!entry.daily) {
            continue;
        }
        lines->addWidget(hairline(this));
        auto* answer = new RuleAnswer(words, entry, this);
        lines->addWidget(answer);
        m_answers.push_back(answer);
    }
}

void ConfirmPage::takeFocus() {
    if (!m_answers.empty()) {
        focusOn(m_answers.front()->choice());
    }
}

bool ConfirmPage::isUsable() {
    for (auto* answer : m_answers) {
        if (!answer->isUsable()) {
            return false;
        }
    }
    return true;
}

void ConfirmPage::addTo(SetUp& setUp) {
    setUp.confirmed.clear();
    for (auto* answer : m_answers) {
        const auto value = answer->value();
        if (!value) {
            continue;
        }
        rulebook::FirmEntry entry;
        entry.key = answer->key();
        entry.value = *value;
        entry.confirmedBy = setUp.engineer ? setUp.engineer->name : setUp.firm.name;
        entry.confirmedOn = m_clock.today("Europe/London");
        entry.fromCopy = tr("own copy, when the firm was set up").toStdString();
        setUp.confirmed.push_back(entry);
    }
}

}  // namespace hearth::ui::shell
