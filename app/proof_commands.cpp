// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/proof_commands.h"

#include "app/stores.h"
#include "core/store/store.h"
#include "ui/words/proof_words.h"

#include <QFile>
#include <QFileInfo>

namespace hearth::app {
namespace {

using record::Claim;
using record::Verdict;

Exit exitFor(Verdict verdict) {
    switch (verdict) {
        case Verdict::Ours:
            return Exit::Done;
        case Verdict::Superseded:
            return Exit::Superseded;
        case Verdict::Void:
            return Exit::Void;
        case Verdict::Changed:
            return Exit::Changed;
        case Verdict::Unprovable:
            return Exit::Trouble;
        case Verdict::NotOurs:
            break;
    }
    return Exit::Refused;
}

Result<std::string> bytesIn(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    return file.readAll().toStdString();
}

/// A file where there is one of that name, else a code, else a number.
Result<record::Proof> proofOf(const store::Store& store, const QString& shown, int revision) {
    if (QFileInfo(shown).isFile()) {
        const auto bytes = bytesIn(shown);
        return bytes ? store.proveFile(*bytes) : tl::make_unexpected(bytes.error());
    }
    if (const auto code = record::claimOfCode(shown.toStdString())) {
        return store.proveClaim(*code);
    }
    if (const auto number = record::numberTyped(shown.toStdString())) {
        return store.proveClaim({Claim::By::Number, {*number, revision}, {}});
    }
    return fail(ErrorCode::FileUnreadable,
                {shown.toStdString(),
                 tr("it is no file, no number of a record and no text of a record's code").toStdString()});
}

}  // namespace

Exit runVerify(const CommandLine& line, const Desk& desk) {
    const auto store = store::Store::open(storeOf(line), store::Access::Read, desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto proof = proofOf(**store, line.words.join(QLatin1Char(' ')), line.revision);
    if (!proof) {
        return complain(proof.error(), desk);
    }
    const auto text = ui::words::proofText(desk.words, *proof);
    desk.console.say(text.headline);
    for (const auto& detail : text.details) {
        desk.console.say(QStringLiteral("  ") + detail);
    }
    return exitFor(proof->verdict);
}

}  // namespace hearth::app
