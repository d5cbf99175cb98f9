// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/signing_commands.h"

#include "app/files.h"
#include "app/stores.h"
#include "core/store/store.h"
#include "ui/paper/paper.h"
#include "ui/shell/paper_choice.h"
#include "ui/words/key_words.h"

namespace hearth::app {
namespace {

using OpenedStore = Result<std::unique_ptr<store::Store>>;

constexpr int kSignedAtOnce = 100;

OpenedStore openedStore(const CommandLine& line, store::Access access, const Desk& desk) {
    auto store = store::Store::open(storeOf(line), access, desk.clock);
    if (store && !(*store)->isReadOnly()) {
        (*store)->actAs("command line");
    }
    return store;
}

std::vector<ui::words::ShownKey> shownKeysOf(const std::vector<store::KeyLine>& keys) {
    std::vector<ui::words::ShownKey> shown;
    for (const auto& key : keys) {
        shown.push_back({key.publicKey, key.from, key.until, key.signatures});
    }
    return shown;
}

/// As PEM; the keys as a page where the name ends in .pdf.
Result<std::string> keyFile(const store::Store& store, const std::vector<store::KeyLine>& keys,
                            const QString& to, const Desk& desk) {
    if (!to.endsWith(QLatin1String(".pdf"), Qt::CaseInsensitive)) {
        return record::publicKeyPem(keys.front().publicKey);
    }
    const auto firm = store.firm();
    if (!firm) {
        return tl::unexpected(firm.error());
    }
    auto page =
        ui::words::keyDocument(desk.words, *firm, shownKeysOf(keys), desk.clock.today("Europe/London"));
    page.paper = ui::shell::firmsPaper(store);
    return ui::paper::toPdf(page, {}).map([](const QByteArray& pdf) { return pdf.toStdString(); });
}

}  // namespace

Exit runKey(const CommandLine& line, const Desk& desk) {
    const auto store = openedStore(line, store::Access::Read, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto keys = (*store)->signingKeys();
    const auto waiting = (*store)->waitingForSignature();
    if (!keys || !waiting) {
        return complain(keys ? waiting.error() : keys.error(), desk);
    }
    if (keys->empty()) {
        return complain(Error{ErrorCode::SigningKeyMissing, {}}, desk);
    }
    if (!line.to) {
        for (const auto& text : ui::words::keyLines(desk.words, shownKeysOf(*keys))) {
            desk.console.say(text);
        }
        desk.console.say(tr("Records that wait for a signature: %1").arg(*waiting));
        return Exit::Done;
    }
    const QString path = fileFor(*line.to, QStringLiteral("records-public-key.pem"));
    const auto bytes = keyFile(**store, *keys, path, desk);
    if (!bytes) {
        return complain(bytes.error(), desk);
    }
    if (const auto written = writeFile(path, *bytes, line.replace ? IfThere::Replace : IfThere::Refuse);
        !written) {
        return complain(written.error(), desk);
    }
    desk.console.say(path);
    return Exit::Done;
}

Exit runNewKey(const CommandLine& line, const Desk& desk) {
    const auto passphrase = firstLineOf(*line.passphrase);
    if (!passphrase) {
        return complain(passphrase.error(), desk);
    }
    const auto store = openedStore(line, store::Access::Write, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    if (const auto made = (*store)->makeSigningKey(*passphrase); !made) {
        return complain(made.error(), desk);
    }
    const auto keys = (*store)->signingKeys();
    if (!keys) {
        return complain(keys.error(), desk);
    }
    desk.console.say(ui::words::keyLines(desk.words, shownKeysOf({keys->front()})).first());
    return Exit::Done;
}

Exit runSign(const CommandLine& line, const Desk& desk) {
    const auto passphrase = firstLineOf(*line.passphrase);
    if (!passphrase) {
        return complain(passphrase.error(), desk);
    }
    const auto store = openedStore(line, store::Access::Write, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto key = (*store)->openSigningKey(*passphrase);
    if (!key) {
        return complain(key.error(), desk);
    }
    (*store)->signWith(*key);
    int all = 0;
    for (int some = kSignedAtOnce; some == kSignedAtOnce;) {
        const auto done = (*store)->signWaiting(kSignedAtOnce);
        if (!done) {
            return complain(done.error(), desk);
        }
        some = *done;
        all += some;
    }
    desk.console.say(tr("Records signed: %1").arg(all));
    return Exit::Done;
}

}  // namespace hearth::app
