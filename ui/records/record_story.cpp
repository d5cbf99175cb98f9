// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/record_story.h"

#include "ui/words/proof_words.h"
#include "ui/words/sending_words.h"

namespace hearth::ui::records {

RecordStory::RecordStory(const shell::Context& context, QWidget* parent)
    : QWidget(parent), m_context(context) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, look::kGap);
    lines->setSpacing(look::kGap);
    m_signature = shell::softText({}, this);
    m_signature->setObjectName(QStringLiteral("recordSignature"));
    lines->addWidget(m_signature);
    m_toTell = addPart(tr("These still have an older revision"), "recordHolders");
    m_toTell.text->setInk(look::Role::LookAgain);
    m_changes = addPart(tr("What this revision changed"), "recordChanges");
    m_sendings = addPart(tr("To whom it went"), "recordSendings");
}

RecordStory::Part RecordStory::addPart(const QString& heading, const char* name) {
    const Part part{shell::headingText(heading, this), shell::bodyText({}, this)};
    part.text->setObjectName(QString::fromLatin1(name));
    part.text->setTextFormat(Qt::PlainText);
    layout()->addWidget(part.heading);
    layout()->addWidget(part.text);
    return part;
}

void RecordStory::setLines(const Part& part, const QStringList& lines) {
    part.text->setText(lines.join(u'\n'));
    part.heading->setVisible(!lines.isEmpty());
    part.text->setVisible(!lines.isEmpty());
}

void RecordStory::show(const store::IssuedRecord& record) {
    showSignature(record);
    showChanges(record);
    showHolders(record);
    showSendings(record);
}

void RecordStory::showSignature(const store::IssuedRecord& record) {
    const auto signature = m_context.store.signatureOf(record.line.id);
    if (!signature) {
        m_signature->setText(m_context.words.error(signature.error()));
        return;
    }
    if (!*signature) {
        m_signature->setText(tr("Not signed with the firm's key yet."));
        return;
    }
    const auto& made = **signature;
    const bool holds = record::signatureHolds(record.pdf, made.bytes, made.key.publicKey);
    m_signature->setInk(holds ? look::Role::SoftInk : look::Role::Fail);
    m_signature->setText(
        holds ? tr("Signed with the firm's key on %1. Fingerprint: %2…")
                    .arg(shell::dayOf(m_context.words, made.at),
                         words::groupedDigest(record::keyFingerprint(made.key.publicKey)).left(19))
              : tr("The firm's signature does not hold over this PDF. Don't hand it out; compare with a "
                   "backup."));
}

void RecordStory::showChanges(const store::IssuedRecord& record) {
    QStringList lines;
    if (record.line.supersedes) {
        const auto before = m_context.store.record(*record.line.supersedes);
        if (before) {
            for (const auto& one : record::differencesOf(before->document, record.document)) {
                lines << words::differenceLine(m_context.words, one);
            }
            if (lines.isEmpty()) {
                lines << tr("Nothing that is printed, beside the reason: %1")
                             .arg(words::qstring(record.line.reason));
            }
        } else {
            lines << m_context.words.error(before.error());
        }
    }
    setLines(m_changes, lines);
}

void RecordStory::showHolders(const store::IssuedRecord& record) {
    m_holders.clear();
    QStringList lines;
    const auto holders = m_context.store.holdersToTell(record.line.id);
    if (!holders) {
        lines << m_context.words.error(holders.error());
    } else if (!record.line.supersededBy && !record.line.voided) {
        m_holders = *holders;
        for (const auto& holder : m_holders) {
            lines << words::holderLine(m_context.words, holder);
        }
    }
    setLines(m_toTell, lines);
}

void RecordStory::showSendings(const store::IssuedRecord& record) {
    QStringList lines;
    const auto sendings = m_context.store.sendings(record.line.id);
    if (!sendings) {
        lines << m_context.words.error(sendings.error());
    } else {
        for (const auto& sending : *sendings) {
            lines << words::sendingLine(m_context.words, sending);
        }
    }
    setLines(m_sendings, lines);
}

}  // namespace hearth::ui::records
