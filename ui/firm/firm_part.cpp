// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/firm_part.h"

namespace hearth::ui::firm {

using shell::coded;
using words::qstring;

namespace {
constexpr int kColumns = 3;
}  // namespace

FirmPart::FirmPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_title(shell::titleText(tr("The firm"), this)),
      m_fields(new shell::Fields(kColumns, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(m_title);
    lines->addWidget(shell::softText(
        tr("As it stands at the head of each record. Records that have been issued keep what they said."),
        this));
    lines->addWidget(m_fields);
    addText(tr("Name of the firm"), "firmName", [](reg::Firm& firm) -> std::string& { return firm.name; });
    addText(tr("Registration number"), "registrationNumber",
            [](reg::Firm& firm) -> std::string& { return firm.registrationNumber; });
    addText(tr("Telephone"), "telephone", [](reg::Firm& firm) -> std::string& { return firm.telephone; });
    addText(tr("E-mail"), "email", [](reg::Firm& firm) -> std::string& { return firm.email; });
    addText(tr("Address"), "line1", [](reg::Firm& firm) -> std::string& { return firm.address.line1; });
    addText(tr("Address, second line"), "line2",
            [](reg::Firm& firm) -> std::string& { return firm.address.line2; });
    addText(tr("Town"), "town", [](reg::Firm& firm) -> std::string& { return firm.address.town; });
    addText(tr("Postcode"), "postcode",
            [](reg::Firm& firm) -> std::string& { return firm.address.postcode; });
    addCountry();
    addLanguage();
}

void FirmPart::addText(const QString& label, const char* name, TextOf field) {
    auto* editor = input::makeTextEditor(m_fields);
    editor->setLabel(label);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(editor);
    m_texts.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) {
        return keep([&](reg::Firm& firm) { field(firm) = text.trimmed().toStdString(); });
    });
}

void FirmPart::addCountry() {
    std::vector<input::ChoiceItem> choices;
    for (const auto country : {reg::Country::England, reg::Country::Wales, reg::Country::Scotland,
                               reg::Country::NorthernIreland}) {
        choices.push_back({coded(reg::codeOf(country)), m_context.words.country(country)});
    }
    m_country = input::makeListEditor(m_fields, choices);
    m_country->setLabel(tr("Country"));
    m_country->setObjectName(QStringLiteral("country"));
    m_country->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(m_country);
    shell::keepOnCommit(m_country, m_context.words, [this](const QString& code) {
        return keep([&](reg::Firm& firm) {
            firm.country = reg::countryFromCode(code.toStdString()).value_or(firm.country);
        });
    });
}

void FirmPart::addLanguage() {
    std::vector<input::ChoiceItem> choices{{QStringLiteral("en"), tr("English")}};
    if (const auto firm = m_context.store.firm(); firm && firm->language != "en") {
        choices.push_back({qstring(firm->language), qstring(firm->language)});  // from a newer program: kept
    }
    m_language = input::makeListEditor(m_fields, choices);
    m_language->setLabel(tr("Language of the records"));
    m_language->setObjectName(QStringLiteral("language"));
    m_language->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(m_language);
    shell::keepOnCommit(m_language, m_context.words, [this](const QString& code) {
        return keep([&](reg::Firm& firm) { firm.language = code.toStdString(); });
    });
}

Result<void> FirmPart::keep(const std::function<void(reg::Firm&)>& change) {
    reg::Firm firm = m_firm;
    change(firm);
    const auto kept = m_context.store.saveFirm(firm);
    if (kept) {
        m_firm = firm;
    }
    return kept;
}

void FirmPart::refresh() {
    const auto firm = m_context.store.firm();
    if (!firm) {
        m_title->setText(m_context.words.error(firm.error()));
        return;
    }
    m_firm = *firm;
    for (const auto& [editor, field] : m_texts) {
        editor->setText(qstring(field(m_firm)));
        editor->setProblem({});
    }
    m_country->setText(coded(reg::codeOf(m_firm.country)));
    m_language->setText(qstring(m_firm.language));
}

void FirmPart::takeFocus(const char* name) {
    shell::focusOn(m_fields->findChild<input::Editor*>(QString::fromLatin1(name)));
}

}  // namespace hearth::ui::firm
