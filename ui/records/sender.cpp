// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/sender.h"

#include "ui/shell/file_pattern.h"
#include "ui/shell/paper_choice.h"
#include "ui/shell/saving.h"
#include "ui/words/sending_words.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>

namespace hearth::ui::records {
namespace {

using record::SentBy;
using words::qstring;

struct Sending {
    Q_DECLARE_TR_FUNCTIONS(Sender)
};

/// The PDF, and its signature beside it where there is one. Files that the mail program reads when it likes:
/// they stay until the desktop clears what is temporary.
Result<QStringList> attachmentsOf(const store::Store& store, const store::IssuedRecord& record) {
    QTemporaryDir folder(QDir::tempPath() + QStringLiteral("/hearthledger-mail-XXXXXX"));
    if (!folder.isValid()) {
        return fail(ErrorCode::FileUnwritable,
                    {folder.path().toStdString(), folder.errorString().toStdString()});
    }
    const auto signature = store.signatureOf(record.line.id);
    if (!signature) {
        return tl::unexpected<Error>(signature.error());
    }
    QStringList paths{folder.filePath(shell::recordFileName(store, record.line))};
    auto written = shell::writeFile(paths[0], record.pdf);
    if (written && *signature) {
        paths << paths[0] + QStringLiteral(".sig");
        written = shell::writeFile(paths[1], (*signature)->bytes);
    }
    if (!written) {
        return tl::unexpected<Error>(written.error());
    }
    folder.setAutoRemove(false);
    return paths;
}

/// Whether something else has that name already.
bool holdsAnother(const QString& path, const std::string& bytes) {
    QFile file(path);
    return file.exists() && (!file.open(QIODevice::ReadOnly) || file.readAll().toStdString() != bytes);
}

}  // namespace

bool Sender::failed(const QString& title, const Error& error) const {
    m_context.dialogs.tell(m_over, title, m_context.words.error(error));
    return false;
}

void Sender::note(const store::IssuedRecord& record, const record::Sending& sending) const {
    if (m_context.store.isReadOnly()) {
        return;  // nothing can be noted; what went out is right all the same
    }
    if (const auto noted = m_context.store.noteSending(record.line.id, sending); !noted) {
        m_context.navigator.say(m_context.words.error(noted.error()));
    }
}

std::optional<Sender::Recipient> Sender::askRecipient(const store::IssuedRecord& record) const {
    const auto holders = m_context.store.holders(record.line.premises);
    std::vector<Recipient> known;
    QStringList answers;
    if (holders) {
        for (const auto& [role, party] : *holders) {
            known.push_back({qstring(party.name), qstring(party.email), qstring(party.telephone)});
            answers << Sending::tr("%1, %2").arg(qstring(party.name), m_context.words.role(role));
        }
    }
    answers << Sending::tr("Somebody else");
    const int answer =
        m_context.dialogs.ask(m_over, Sending::tr("Send record %1").arg(qstring(record.line.header.record)),
                              Sending::tr("To whom? It is noted with the record."), answers, 0);
    if (answer < 0) {
        return std::nullopt;
    }
    if (static_cast<std::size_t>(answer) < known.size()) {
        return known[static_cast<std::size_t>(answer)];
    }
    const auto named = m_context.dialogs.askText(m_over, Sending::tr("To whom?"),
                                                 Sending::tr("Name, or e-mail address, or telephone number"));
    if (!named || named->trimmed().isEmpty()) {
        return std::nullopt;
    }
    return Recipient{named->trimmed(), named->contains(u'@') ? named->trimmed() : QString(), {}};
}

bool Sender::send(const store::IssuedRecord& record, const paper::PageOptions& options) const {
    const auto to = askRecipient(record);
    if (!to) {
        return false;
    }
    const int how =
        m_context.dialogs.ask(m_over, Sending::tr("Send record %1").arg(qstring(record.line.header.record)),
                              Sending::tr("How does it go to %1?").arg(to->name),
                              {Sending::tr("By mail, with the PDF"), Sending::tr("As a PDF in a folder"),
                               Sending::tr("On paper"), Sending::tr("Text message: copy its wording")},
                              0);
    switch (how) {
        case 0:
            return mail(record, *to);
        case 1:
            return saveInto(record, *to);
        case 2:
            return print(record, options, *to);
        case 3:
            return copyMessage(record, *to);
        default:
            return false;
    }
}

bool Sender::mailTo(const store::IssuedRecord& record, const QString& address) const {
    const QString title = Sending::tr("No mail was begun");
    const auto attachments = attachmentsOf(m_context.store, record);
    if (!attachments) {
        return failed(title, attachments.error());
    }
    const words::Words inItsLanguage(qstring(record.document.language));
    const auto text = words::mailText(inItsLanguage, record.document, qstring(record.line.address));
    if (const auto begun = m_context.mail({address, text.subject, text.text, *attachments}); !begun) {
        return failed(title, begun.error());
    }
    note(record, {SentBy::Mail, address.toStdString(), text.subject.toStdString(), {}, {}});
    return true;
}

bool Sender::mail(const store::IssuedRecord& record, const Recipient& to) const {
    QString address = to.mail;
    if (address.isEmpty()) {
        const auto typed = m_context.dialogs.askText(m_over, Sending::tr("Mail to %1").arg(to.name),
                                                     Sending::tr("E-mail address"));
        address = typed.value_or(QString()).trimmed();
    }
    if (address.isEmpty() || !mailTo(record, address)) {
        return false;
    }
    m_context.navigator.say(
        Sending::tr("The mail to %1 is open in your mail program: send it there.").arg(address));
    return true;
}

bool Sender::saveAs(const store::IssuedRecord& record, const QString& path, const QString& to) const {
    const QString title = Sending::tr("The PDF was not saved");
    // The bytes that were issued, not the document rendered anew.
    if (const auto written = shell::writeFile(path, record.pdf); !written) {
        return failed(title, written.error());
    }
    const auto signature = m_context.store.signatureOf(record.line.id);
    if (!signature) {
        return failed(title, signature.error());
    }
    if (*signature) {
        if (const auto written = shell::writeFile(path + QStringLiteral(".sig"), (*signature)->bytes);
            !written) {
            return failed(title, written.error());
        }
    }
    m_context.navigator.say(Sending::tr("Saved as %1").arg(path));
    note(record, {SentBy::File, to.toStdString(), path.toStdString(), {}, {}});
    return true;
}

bool Sender::saveInto(const store::IssuedRecord& record, const Recipient& to) const {
    const auto folder = m_context.dialogs.chooseFolder(m_over, Sending::tr("Which folder?"));
    if (!folder) {
        return false;
    }
    const QString path = QDir(*folder).filePath(shell::recordFileName(m_context.store, record.line));
    if (holdsAnother(path, record.pdf)) {
        return failed(Sending::tr("The PDF was not saved"),
                      Error{ErrorCode::FileUnwritable,
                            {path.toStdString(), Sending::tr("another file has that name").toStdString()}});
    }
    return saveAs(record, path, to.name);
}

bool Sender::print(const store::IssuedRecord& record, const paper::PageOptions& options,
                   const Recipient& to) const {
    const auto printed =
        m_context.printing.print(record.document, options, shell::firmsPaper(m_context.store));
    if (!printed) {
        return failed(Sending::tr("Nothing was printed"), printed.error());
    }
    if (!*printed) {
        return false;
    }
    m_context.navigator.say(
        Sending::tr("Sent to the printer: record %1").arg(qstring(record.line.header.record)));
    note(record, {SentBy::Printed, to.name.toStdString(), {}, {}, {}});
    return true;
}

bool Sender::copyMessage(const store::IssuedRecord& record, const Recipient& to) const {
    const words::Words inItsLanguage(qstring(record.document.language));
    const QString text = words::textMessage(inItsLanguage, record.document, qstring(record.line.address));
    QGuiApplication::clipboard()->setText(text);
    m_context.navigator.say(Sending::tr("The wording is copied: paste it into the message."));
    const QString whom = to.telephone.isEmpty() ? to.name : to.telephone;
    note(record, {SentBy::TextMessage, whom.toStdString(), text.toStdString(), {}, {}});
    return true;
}

QStringList Sender::sendToHolders(const store::IssuedRecord& record,
                                  const std::vector<record::CopyHolder>& holders) const {
    QStringList others;
    for (const auto& holder : holders) {
        const QString to = qstring(holder.to);
        if (!to.contains(u'@')) {
            others << to;
        } else if (!mailTo(record, to)) {
            break;  // it was told why; the next would fail alike
        }
    }
    return others;
}

}  // namespace hearth::ui::records
