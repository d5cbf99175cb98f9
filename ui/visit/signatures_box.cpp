// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/visit/signatures_box.h"

#include "core/record/signers.h"
#include "ui/shell/kit.h"
#include "ui/visit/signature_pad.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace hearth::ui::visit {

using reg::HandSignature;
using reg::SignedWay;
using reg::Signer;

namespace {

std::vector<input::ChoiceItem> roleChoices(const words::Words& words) {
    std::vector<input::ChoiceItem> choices;
    for (const auto role :
         {reg::RoleKind::Customer, reg::RoleKind::Landlord, reg::RoleKind::Agent, reg::RoleKind::HomeOwner,
          reg::RoleKind::Tenant, reg::RoleKind::ResponsiblePerson}) {
        choices.push_back({shell::coded(reg::codeOf(role)), words.role(role)});
    }
    return choices;
}

}  // namespace

SignerPanel::SignerPanel(const SheetContext& context, Signer signer, QWidget* parent)
    : QWidget(parent), m_context(context), m_signer(signer), m_pad(new SignaturePad(this)) {
    const QString who =
        signer == Signer::Engineer ? tr("Signature of the engineer") : tr("Signature of who receives it");
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, look::kGap, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(who, this));
    makeFields();
    m_pad->setObjectName(QStringLiteral("signaturePad"));
    m_pad->setAccessibleName(tr("%1, pad to draw on").arg(who));
    m_pad->setAccessibleDescription(
        tr("Drawn with mouse, pen or finger. Backspace takes the last stroke away, Delete all of them. "
           "Without them, choose “on the paper copy” above."));
    lines->addWidget(m_pad);
    m_state = shell::softText({}, this);
    lines->addWidget(m_state);
    m_clear = new shell::KeyButton(tr("Clear this signature"), shell::ButtonKind::Quiet, this);
    m_clear->setObjectName(QStringLiteral("clearSignature"));
    m_clear->setAccessibleName(QStringLiteral("%1, %2").arg(who, tr("Clear this signature")));
    lines->addWidget(m_clear, 0, Qt::AlignLeft);
    connect(m_clear, &QPushButton::clicked, this, &SignerPanel::clear);
    connect(m_pad, &SignaturePad::changed, this, &SignerPanel::takeStrokes);
}

input::Editor* SignerPanel::addEditor(input::Editor* editor, const QString& label, const char* name) {
    editor->setLabel(label,
                     m_signer == Signer::Engineer ? tr("Engineer's signature") : tr("Receiver's signature"));
    editor->setObjectName(QString::fromLatin1(name));
    return editor;
}

void SignerPanel::makeFields() {
    auto* fields = new shell::Fields(6, this);
    layout()->addWidget(fields);
    std::vector<input::ChoiceItem> ways{
        {shell::coded(reg::codeOf(SignedWay::Drawn)), tr("&Drawn here")},
        {shell::coded(reg::codeOf(SignedWay::OnPaper)), tr("&On the paper copy")}};
    if (m_signer == Signer::Receiver) {
        ways.push_back({shell::coded(reg::codeOf(SignedWay::NotPresent)), tr("&Not present, copy left")});
    }
    const auto& words = m_context.window.words;
    m_way = addEditor(input::makeChoiceEditor(fields, ways), tr("How it is signed"), "signedWay");
    fields->add(m_way, 6);
    m_name = addEditor(input::makeTextEditor(fields), tr("Name of who signs"), "signedName");
    fields->add(m_name, 3);
    m_role = addEditor(input::makeListEditor(fields, roleChoices(words)), tr("Signing as"), "signedRole");
    fields->add(m_role, 3);
    m_copyLeft = addEditor(input::makeTextEditor(fields), tr("Where the copy was left"), "signedCopyLeft");
    fields->add(m_copyLeft, 6);
    connect(m_way, &input::Editor::committed, this, &SignerPanel::chooseWay);
    const auto keepText = [&](input::Editor* editor, std::string HandSignature::*field) {
        shell::keepOnCommit(editor, words, [this, field](const QString& text) {
            HandSignature signature = given();
            signature.*field = text.trimmed().toStdString();
            return keep(std::move(signature));
        });
    };
    keepText(m_name, &HandSignature::name);
    keepText(m_role, &HandSignature::role);
    keepText(m_copyLeft, &HandSignature::copyLeft);
}

/// What was given so far for the next record of the kind.
HandSignature SignerPanel::given() const {
    const auto& file = m_context.model.file();
    const auto* kept = m_kind ? record::signatureOf(file, *m_kind, m_signer) : nullptr;
    if (kept != nullptr) {
        return *kept;
    }
    HandSignature signature;
    signature.visit = file.visit.id;
    signature.recordKind = m_kind ? record::kindCode(*m_kind) : std::string_view();
    signature.signer = m_signer;
    const reg::Engineer* engineer = file.engineer();
    if (m_signer == Signer::Engineer && engineer != nullptr) {
        signature.name = engineer->name;
    }
    return signature;
}

Result<void> SignerPanel::keep(HandSignature signature) {
    if (signature.at == Instant{} || signature.way == SignedWay::Drawn) {
        signature.at = m_context.window.clock.now();
    }
    return m_context.model.sign(signature);
}

void SignerPanel::tell(const Result<void>& kept) {
    if (!kept) {
        m_context.window.navigator.say(m_context.window.words.error(kept.error()));
    }
}

void SignerPanel::chooseWay(const QString& code) {
    const auto way = reg::signedWayFromCode(code.toStdString());
    if (!way || *way == SignedWay::NotSaid) {
        clear();
        return;
    }
    HandSignature signature = given();
    signature.way = *way;
    signature.at = m_context.window.clock.now();
    if (*way != SignedWay::Drawn) {
        signature.strokes.clear();
    }
    tell(keep(std::move(signature)));
}

void SignerPanel::takeStrokes() {
    HandSignature signature = given();
    signature.way = SignedWay::Drawn;
    signature.strokes = reg::strokesText(m_pad->strokes());
    tell(keep(std::move(signature)));
}

void SignerPanel::clear() {
    if (m_kind) {
        tell(m_context.model.unsign(*m_kind, m_signer));
        m_way->focusTarget()->setFocus(Qt::OtherFocusReason);
    }
}

void SignerPanel::setKind(std::optional<record::RecordKind> kind) {
    m_kind = kind;
    refresh();
}

void SignerPanel::refresh() {
    const HandSignature signature = given();
    const auto fill = [](input::Editor* editor, std::string_view text) {
        if (const QString shown = shell::coded(text); editor->text() != shown) {
            editor->setText(shown);
        }
    };
    const bool isBegun = signature.way != SignedWay::NotSaid;
    fill(m_way, isBegun ? reg::codeOf(signature.way) : std::string_view());
    fill(m_name, signature.name);
    fill(m_role, signature.role);
    fill(m_copyLeft, signature.copyLeft);
    m_name->setVisible(isBegun);
    m_role->setVisible(isBegun && m_signer == Signer::Receiver);
    m_copyLeft->setVisible(signature.way == SignedWay::NotPresent);
    m_pad->setVisible(signature.way == SignedWay::Drawn);
    m_pad->setStrokes(reg::strokesFromText(signature.strokes).value_or(reg::PenStrokes{}));
    m_clear->setVisible(isBegun);
    say(signature);
}

void SignerPanel::say(const HandSignature& signature) {
    const bool isIssued = m_kind && m_context.model.currentRecord(*m_kind) != nullptr;
    if (reg::isSigned(signature)) {
        m_state->setText(tr("Given on %1, %2.")
                             .arg(shell::dayOf(m_context.window.words, signature.at),
                                  QString::fromStdString(wallTimeText(signature.at))));
    } else if (signature.way != SignedWay::NotSaid) {
        m_state->setText(signature.way == SignedWay::Drawn ? tr("Nothing is drawn yet.")
                                                           : tr("A name stands for the signature on paper."));
    } else {
        m_state->setText(isIssued ? tr("Not given. A revision asks again: nothing is carried over.")
                                  : tr("Not given: the record prints the name alone."));
    }
}

void SignerPanel::setReadOnly(bool readOnly) {
    for (auto* editor : {m_way, m_name, m_role, m_copyLeft}) {
        editor->setReadOnly(readOnly);
    }
    m_pad->setReadOnly(readOnly);
    m_clear->setEnabled(!readOnly);
}

SignaturesBox::SignaturesBox(const SheetContext& context, QWidget* parent) : QWidget(parent) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    for (const auto signer : {Signer::Engineer, Signer::Receiver}) {
        auto* panel = new SignerPanel(context, signer, this);
        panel->setObjectName(signer == Signer::Engineer ? QStringLiteral("engineerPanel")
                                                        : QStringLiteral("receiverPanel"));
        lines->addWidget(panel);
        m_panels.emplace_back(signer, panel);
    }
}

void SignaturesBox::setKind(std::optional<record::RecordKind> kind) {
    for (const auto& [signer, panel] : m_panels) {
        const auto signers = kind ? record::signersOf(*kind) : std::span<const Signer>();
        panel->setVisible(std::find(signers.begin(), signers.end(), signer) != signers.end());
        panel->setKind(kind);
    }
}

void SignaturesBox::setReadOnly(bool readOnly) {
    for (const auto& [signer, panel] : m_panels) {
        panel->setReadOnly(readOnly);
    }
}

SignerPanel* SignaturesBox::panel(Signer signer) const {
    const auto at = std::find_if(m_panels.begin(), m_panels.end(),
                                 [signer](const auto& one) { return one.first == signer; });
    return at == m_panels.end() ? nullptr : at->second;
}

}  // namespace hearth::ui::visit
