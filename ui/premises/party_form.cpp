// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/party_form.h"

#include "core/record/language.h"
#include "ui/words/kept_words.h"

namespace hearth::ui::premises {

using reg::Party;
using shell::coded;

namespace {
constexpr int kPartyColumns = 3;
constexpr int kPartyNoteLines = 2;
}  // namespace

PartyForm::PartyForm(const shell::Context& context, const QString& nameContext, QWidget* parent)
    : RegisterForm(context, kPartyColumns, nameContext, parent) {
    layout()->setContentsMargins(2 * look::kGap, 0, 0, look::kGap);
    std::vector<input::ChoiceItem> kinds;
    for (const auto kind : {reg::PartyKind::Person, reg::PartyKind::Organisation}) {
        kinds.push_back({coded(reg::codeOf(kind)), context.words.partyKind(kind)});
    }
    addChoice<reg::PartyKind>(tr("Kind"), "partyKind", As::Row, kinds, &Party::kind, reg::partyKindFromCode,
                              reg::codeOf, kPartyColumns);
    addReach();
    addAddress();
    addSending();
    addLongText(tr("Notes on them"), "partyNotes", kPartyNoteLines, &Party::notes, kPartyColumns);
}

void PartyForm::addReach() {
    auto* telephone = addText(tr("Telephone"), "telephone", &Party::telephone);
    check(telephone, [this](const Party& it) {
        return words::doubt(context().words, reg::doubtOfTelephone(it.telephone));
    });
    addText(tr("E-mail"), "email", &Party::email);
    breakRow();
}

void PartyForm::addAddress() {
    const auto part = [this](const QString& label, const char* name, std::string reg::Address::*field) {
        addText(label, name, [field](Party& party) -> std::string& { return party.address.*field; });
    };
    part(tr("Address"), "line1", &reg::Address::line1);
    part(tr("Address, second line"), "line2", &reg::Address::line2);
    part(tr("Town"), "town", &reg::Address::town);
    auto* postcode = addText(tr("Postcode"), "postcode",
                             [](Party& party) -> std::string& { return party.address.postcode; });
    check(postcode, [this](const Party& it) { return shell::postcodeDoubt(context(), it.address.postcode); });
    breakRow();
}

void PartyForm::addSending() {
    const auto& words = context().words;
    std::vector<input::ChoiceItem> sendings;
    for (const auto way :
         {reg::SendBy::NotSaid, reg::SendBy::Post, reg::SendBy::Email, reg::SendBy::Handed}) {
        sendings.push_back({coded(reg::codeOf(way)), words::sendBy(words, way)});
    }
    addChoice<reg::SendBy>(tr("How records are sent"), "sendBy", As::List, sendings, &Party::sendBy,
                           reg::sendByFromCode, reg::codeOf);
    std::vector<input::ChoiceItem> languages{{QString(), tr("as the firm's")}};
    for (const auto code : record::recordLanguages()) {
        languages.push_back({coded(code), words::recordLanguage(words, std::string(code))});
    }
    addCodeText(tr("Language of what is sent"), "language", languages, &Party::language);
    breakRow();
    std::vector<input::ChoiceItem> bases;
    for (const auto basis : {reg::ReminderBasis::NotSaid, reg::ReminderBasis::Consent,
                             reg::ReminderBasis::EarlierWork, reg::ReminderBasis::Contract}) {
        bases.push_back({coded(reg::codeOf(basis)), words::reminderBasis(words, basis)});
    }
    addChoice<reg::ReminderBasis>(tr("Why they may be reminded"), "reminderBasis", As::List, bases,
                                  &Party::reminderBasis, reg::reminderBasisFromCode, reg::codeOf);
    addDay(tr("Since"), "reminderSince", &Party::reminderSince);
    addDay(tr("Objected on"), "reminderWithdrawn", &Party::reminderWithdrawn);
}

}  // namespace hearth::ui::premises
