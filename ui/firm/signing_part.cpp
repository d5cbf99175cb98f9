// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/signing_part.h"

#include "ui/shell/file_pattern.h"
#include "ui/shell/paper_choice.h"
#include "ui/shell/saving.h"
#include "ui/words/key_words.h"

#include <QApplication>

namespace hearth::ui::firm {
namespace {

constexpr int kSignedAtOnce = 50;

std::vector<words::ShownKey> shownKeys(const std::vector<store::KeyLine>& keys) {
    std::vector<words::ShownKey> shown;
    for (const auto& key : keys) {
        shown.push_back({key.publicKey, key.from, key.until, key.signatures});
    }
    return shown;
}

/// While something takes its time in this thread.
class Waiting {
  public:
    Waiting() { QGuiApplication::setOverrideCursor(Qt::WaitCursor); }
    ~Waiting() { QGuiApplication::restoreOverrideCursor(); }
    Waiting(const Waiting&) = delete;
    Waiting& operator=(const Waiting&) = delete;
};

}  // namespace

SigningPart::SigningPart(const shell::Context& context, QWidget* parent)
    : QWidget(parent),
      m_context(context),
      m_state(shell::bodyText({}, this)),
      m_keys(shell::softText({}, this)) {
    auto* lines = new QVBoxLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(look::kGap);
    lines->addWidget(shell::headingText(tr("Signing records"), this));
    m_state->setObjectName(QStringLiteral("signingStateText"));
    lines->addWidget(m_state);
    m_keys->setObjectName(QStringLiteral("signingKeysText"));
    m_keys->setTextInteractionFlags(Qt::TextSelectableByMouse);
    lines->addWidget(m_keys);
    lines->addWidget(makeButtons());
    addPattern(lines);
}

QWidget* SigningPart::makeButtons() {
    auto* row = new QWidget(this);
    auto* grid = new QGridLayout(row);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(look::kGap);
    int at = 0;
    const auto add = [&](const QString& text, const char* name, void (SigningPart::*press)()) {
        constexpr int kInRow = 3;
        auto* button = new shell::KeyButton(text, shell::ButtonKind::Plain, row);
        button->setObjectName(QString::fromLatin1(name));
        grid->addWidget(button, at / kInRow, at % kInRow);
        ++at;
        connect(button, &QPushButton::clicked, this, press);
        return button;
    };
    m_unlock = add(tr("Unlock for now…"), "unlockSigningButton", &SigningPart::unlockOrLock);
    m_sign = add(tr("Sign what waits"), "signWaitingButton", &SigningPart::signWaiting);
    m_make = add(tr("Make a key…"), "makeSigningKeyButton", &SigningPart::makeKey);
    m_save = add(tr("Public key to a file…"), "savePublicKeyButton", &SigningPart::saveKey);
    m_print = add(tr("Print the public key"), "printPublicKeyButton", &SigningPart::printKey);
    grid->setColumnStretch(3, 1);
    return row;
}

void SigningPart::addPattern(QVBoxLayout* lines) {
    lines->addWidget(shell::headingText(tr("What the files of records are called"), this));
    m_pattern = input::makeTextEditor(this);
    m_pattern->setObjectName(QStringLiteral("filePattern"));
    m_pattern->setLabel(tr("Pattern of the names"));
    shell::keepOnCommit(m_pattern, m_context.words,
                        [this](const QString& typed) { return keepPattern(typed); });
    lines->addWidget(m_pattern);
    lines->addWidget(shell::softText(tr("%1 stand for what a record has; all else is taken as it is. The "
                                        "reference is the customer's, as the "
                                        "visit has it.")
                                         .arg(shell::filePlaceholders().join(u' ')),
                                     this));
}

Result<void> SigningPart::keepPattern(const QString& typed) {
    const QString pattern = typed.trimmed();
    if (!pattern.isEmpty()) {
        if (auto checked = shell::checkFilePattern(pattern); !checked) {
            return checked;
        }
    }
    return m_context.store.saveSetting(shell::kFilePatternSetting, pattern.toStdString());
}

void SigningPart::refresh() {
    const auto keys = m_context.store.signingKeys();
    const auto waiting = m_context.store.waitingForSignature();
    if (!keys || !waiting) {
        m_state->setText(m_context.words.error(keys ? waiting.error() : keys.error()));
        return;
    }
    const bool has = !keys->empty();
    const bool canSign = m_context.store.canSign();
    const bool readOnly = m_context.store.isReadOnly();
    m_state->setText(words::signingState(m_context.words, {has, canSign, *waiting}));
    m_keys->setText(words::keyLines(m_context.words, shownKeys(*keys)).join(u'\n'));
    m_keys->setVisible(has);
    m_make->setWords(has ? tr("Renew the key…") : tr("Make a key…"));
    m_make->setEnabled(!readOnly);
    m_unlock->setWords(canSign ? tr("Lock again") : tr("Unlock for now…"));
    m_unlock->setVisible(has);
    m_unlock->setEnabled(!readOnly);
    m_sign->setVisible(has && *waiting > 0);
    m_sign->setEnabled(!readOnly);
    m_save->setVisible(has);
    m_print->setVisible(has);
    m_pattern->setReadOnly(readOnly);
    const auto pattern = m_context.store.setting(shell::kFilePatternSetting);
    m_pattern->setText(pattern && !pattern->empty() ? words::qstring(*pattern) : shell::usualFilePattern());
}

void SigningPart::tellFailed(const Error& error) {
    m_context.dialogs.tell(this, tr("Signing is as it was"), m_context.words.error(error));
}

std::optional<QString> SigningPart::askNewPassphrase() {
    const QString title = tr("The firm's key");
    const auto first =
        m_context.dialogs.askPassphrase(this, title,
                                        tr("A passphrase for the key. It is asked for once each time the "
                                           "program is started, and nobody signs "
                                           "without it"));
    if (!first) {
        return std::nullopt;
    }
    const auto again = m_context.dialogs.askPassphrase(this, title, tr("The same once more"));
    if (again && *again != *first) {
        m_context.dialogs.tell(this, tr("Signing is as it was"),
                               tr("The two were not the same. Nothing was changed; try again."));
    }
    return again == first ? first : std::nullopt;
}

void SigningPart::makeKey() {
    const auto keys = m_context.store.signingKeys();
    if (keys && !keys->empty()) {
        const int answer = m_context.dialogs.ask(this, tr("Renew the key"),
                                                 tr("A new key signs from now on. The signatures made so far "
                                                    "hold on, and the old public key stays in "
                                                    "the list; hand out the new one."),
                                                 {tr("Leave it as it is"), tr("Make a new key")}, 0);
        if (answer != 1) {
            return;
        }
    }
    const auto passphrase = askNewPassphrase();
    if (!passphrase) {
        return;
    }
    const auto done = [&]() -> Result<void> {
        const Waiting waiting;
        if (auto made = m_context.store.makeSigningKey(passphrase->toStdString()); !made) {
            return made;
        }
        const auto opened = m_context.store.openSigningKey(passphrase->toStdString());
        if (!opened) {
            return tl::unexpected<Error>(opened.error());
        }
        m_context.store.signWith(*opened);
        return {};
    }();
    if (!done) {
        tellFailed(done.error());
    }
    refresh();
}

bool SigningPart::unlock() {
    const auto passphrase =
        m_context.dialogs.askPassphrase(this, tr("Unlock the firm's key"), tr("Its passphrase"));
    if (!passphrase) {
        return false;
    }
    const auto opened = [&] {
        const Waiting waiting;
        return m_context.store.openSigningKey(passphrase->toStdString());
    }();
    if (!opened) {
        tellFailed(opened.error());
        return false;
    }
    m_context.store.signWith(*opened);
    return true;
}

void SigningPart::unlockOrLock() {
    if (m_context.store.canSign()) {
        m_context.store.signWith(std::nullopt);
    } else {
        unlock();
    }
    refresh();
}

void SigningPart::signWaiting() {
    if (!m_context.store.canSign() && !unlock()) {
        return;
    }
    int all = 0;
    while (true) {
        const auto some = m_context.store.signWaiting(kSignedAtOnce);
        if (!some) {
            tellFailed(some.error());
            break;
        }
        all += *some;
        m_context.navigator.say(tr("%n record(s) signed.", nullptr, all));
        QApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
        if (*some < kSignedAtOnce) {
            break;
        }
    }
    refresh();
}

void SigningPart::saveKey() {
    const auto keys = m_context.store.signingKeys();
    if (!keys || keys->empty()) {
        return;
    }
    const auto path = m_context.dialogs.saveFile(
        this, tr("Public key to a file"), QStringLiteral("records-public-key.pem"), tr("Keys (*.pem)"));
    if (!path) {
        return;
    }
    if (const auto written = shell::writeFile(*path, record::publicKeyPem(keys->front().publicKey));
        !written) {
        tellFailed(written.error());
        return;
    }
    m_context.navigator.say(tr("Saved as %1").arg(*path));
}

void SigningPart::printKey() {
    const auto keys = m_context.store.signingKeys();
    const auto firm = m_context.store.firm();
    if (!keys || keys->empty() || !firm) {
        return;
    }
    auto page =
        words::keyDocument(m_context.words, *firm, shownKeys(*keys), m_context.clock.today("Europe/London"));
    page.paper = shell::firmsPaper(m_context.store);
    const auto printed = m_context.printing.print(page, {}, page.paper);
    if (!printed) {
        tellFailed(printed.error());
    }
}

}  // namespace hearth::ui::firm
