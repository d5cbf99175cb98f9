// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/premises/party_form.h"

namespace hearth::ui::premises {

using shell::coded;
using words::qstring;

namespace {

constexpr int kPartyColumns = 3;

std::vector<input::ChoiceItem> kinds(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto kind : {reg::PartyKind::Person, reg::PartyKind::Organisation}) {
        choices.push_back({coded(reg::codeOf(kind)), words.partyKind(kind)});
    }
    return choices;
}

}  // namespace

PartyForm::PartyForm(const shell::Context& context, const QString& nameContext, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_nameContext(nameContext),
      m_fields(new shell::Fields(kPartyColumns, this)),
      m_kind(input::makeChoiceEditor(m_fields, kinds(context.words))) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(2 * look::kGap, 0, 0, look::kGap);
    lines->addWidget(m_fields);
    m_kind->setLabel(tr("Kind"), nameContext);
    m_kind->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(m_kind, kPartyColumns);
    shell::keepOnCommit(m_kind, m_context.words, [this](const QString& code) {
        return keep([&](reg::Party& party) {
            party.kind = reg::partyKindFromCode(code.toStdString()).value_or(party.kind);
        });
    });
    addText(tr("Telephone"), "telephone", [](reg::Party& party) -> std::string& { return party.telephone; });
    addText(tr("E-mail"), "email", [](reg::Party& party) -> std::string& { return party.email; });
    m_fields->breakRow();
    addText(tr("Address"), "line1", [](reg::Party& party) -> std::string& { return party.address.line1; });
    addText(tr("Address, second line"), "line2",
            [](reg::Party& party) -> std::string& { return party.address.line2; });
    addText(tr("Town"), "town", [](reg::Party& party) -> std::string& { return party.address.town; });
    addText(tr("Postcode"), "postcode",
            [](reg::Party& party) -> std::string& { return party.address.postcode; });
}

void PartyForm::addText(const QString& label, const char* name, TextOf field) {
    auto* editor = input::makeTextEditor(m_fields);
    editor->setLabel(label, m_nameContext);
    editor->setObjectName(QString::fromLatin1(name));
    editor->setReadOnly(m_context.store.isReadOnly());
    m_fields->add(editor);
    m_texts.emplace_back(editor, field);
    shell::keepOnCommit(editor, m_context.words, [this, field](const QString& text) {
        return keep([&](reg::Party& party) { field(party) = text.trimmed().toStdString(); });
    });
}

void PartyForm::show(const reg::Party& party) {
    m_party = party;
    m_kind->setText(coded(reg::codeOf(party.kind)));
    for (const auto& [editor, field] : m_texts) {
        editor->setText(qstring(field(m_party)));
        editor->setProblem({});
    }
}

Result<void> PartyForm::keep(const std::function<void(reg::Party&)>& change) {
    reg::Party party = m_party;
    change(party);
    if (const auto kept = m_context.store.save(party); !kept) {
        return kept;
    }
    m_party = party;
    Q_EMIT changed(party);
    return {};
}

}  // namespace hearth::ui::premises
