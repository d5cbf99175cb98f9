// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/firm_part.h"

#include "core/record/language.h"
#include "ui/words/kept_words.h"

namespace hearth::ui::firm {

using reg::Firm;
using shell::coded;
using words::qstring;

namespace {
constexpr int kColumns = 3;
}  // namespace

FirmForm::FirmForm(const shell::Context& context, QWidget* parent)
    : RegisterForm(context, kColumns, {}, parent) {
    addText(tr("Name of the firm"), "firmName", &Firm::name);
    addText(tr("Registration number"), "registrationNumber", &Firm::registrationNumber);
    auto* telephone = addText(tr("Telephone"), "telephone", &Firm::telephone);
    check(telephone, [this](const Firm& it) {
        return words::doubt(this->context().words, reg::doubtOfTelephone(it.telephone));
    });
    addText(tr("E-mail"), "email", &Firm::email);
    addAddress();
    addCountry();
    addLanguage();
    addInsurance();
}

void FirmForm::addAddress() {
    const auto part = [this](const QString& label, const char* name, std::string reg::Address::*field) {
        addText(label, name, [field](Firm& firm) -> std::string& { return firm.address.*field; });
    };
    part(tr("Address"), "line1", &reg::Address::line1);
    part(tr("Address, second line"), "line2", &reg::Address::line2);
    part(tr("Town"), "town", &reg::Address::town);
    auto* postcode =
        addText(tr("Postcode"), "postcode", [](Firm& firm) -> std::string& { return firm.address.postcode; });
    check(postcode, [this](const Firm& it) { return shell::postcodeDoubt(context(), it.address.postcode); });
}

void FirmForm::addCountry() {
    std::vector<input::ChoiceItem> choices;
    for (const auto country : {reg::Country::England, reg::Country::Wales, reg::Country::Scotland,
                               reg::Country::NorthernIreland}) {
        choices.push_back({coded(reg::codeOf(country)), context().words.country(country)});
    }
    addChoice<reg::Country>(tr("Country"), "country", As::List, choices, &Firm::country, reg::countryFromCode,
                            reg::codeOf);
}

void FirmForm::addLanguage() {
    std::vector<input::ChoiceItem> choices;
    for (const auto code : record::recordLanguages()) {
        choices.push_back({coded(code), words::recordLanguage(context().words, std::string(code))});
    }
    if (const auto firm = context().store.firm(); firm && !record::isRecordLanguage(firm->language)) {
        choices.push_back({qstring(firm->language), qstring(firm->language)});  // from a newer program: kept
    }
    addCodeText(tr("Language of the records"), "language", choices, &Firm::language);
    breakRow();
}

void FirmForm::addInsurance() {
    addText(tr("Liability insurer"), "insurer", &Firm::insurer);
    addText(tr("Policy number"), "policy", &Firm::policy);
    addDate(tr("Insured until"), "insuredUntil", [](Firm& it) {
        return shell::DateSlot{it.insuredUntil, it.insuredUntilText};
    });
}

FirmPart::FirmPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_title(shell::titleText(tr("The firm"), this)),
      m_form(new FirmForm(context, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(m_title);
    lines->addWidget(shell::softText(
        tr("As it stands at the head of each record. Records that have been issued keep what they said."),
        this));
    lines->addWidget(m_form);
}

void FirmPart::refresh() {
    const auto firm = m_context.store.firm();
    if (!firm) {
        m_title->setText(m_context.words.error(firm.error()));
        return;
    }
    m_form->show(*firm);
}

}  // namespace hearth::ui::firm
