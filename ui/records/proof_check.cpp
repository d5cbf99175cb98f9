// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/proof_check.h"

#include "ui/words/proof_words.h"

#include <QCoreApplication>
#include <QFile>

namespace hearth::ui::records {
namespace {

using record::Claim;

struct Check {
    Q_DECLARE_TR_FUNCTIONS(ProofCheck)
};

/// Nothing when the person stepped back.
using Asked = std::optional<Result<record::Proof>>;

Result<record::Proof> proofOfFile(const shell::Context& context, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    return context.store.proveFile(file.readAll().toStdString());
}

Result<record::Proof> proofOfText(const shell::Context& context, const QString& text) {
    if (const auto code = record::claimOfCode(text.toStdString())) {
        return context.store.proveClaim(*code);
    }
    if (const auto number = record::numberTyped(text.toStdString())) {
        return context.store.proveClaim({Claim::By::Number, {*number, 0}, {}});
    }
    return fail(ErrorCode::FileUnreadable,
                {text.toStdString(),
                 Check::tr("it is no number of a record and no text of a record's code").toStdString()});
}

Asked ask(const shell::Context& context, QWidget* over) {
    const int answer = context.dialogs.ask(
        over, Check::tr("Check a record"),
        Check::tr(
            "Whether something that somebody shows is a record of yours, unchanged, and still the one that "
            "counts. What is there?"),
        {Check::tr("A PDF file"), Check::tr("A number, or what a page's code says")}, 0);
    if (answer == 0) {
        const auto files =
            context.dialogs.openFiles(over, Check::tr("Which PDF?"), Check::tr("PDF (*.pdf);;Any file (*)"));
        return files.isEmpty() ? Asked() : Asked(proofOfFile(context, files.first()));
    }
    if (answer == 1) {
        const auto text = context.dialogs.askText(
            over, Check::tr("Check a record"), Check::tr("Number, or the text scanned from a page's code"));
        return text ? Asked(proofOfText(context, *text)) : Asked();
    }
    return {};
}

}  // namespace

std::optional<store::RecordId> checkRecord(const shell::Context& context, QWidget* over) {
    const auto asked = ask(context, over);
    if (!asked) {
        return std::nullopt;
    }
    if (!*asked) {
        context.dialogs.tell(over, Check::tr("Nothing could be checked"),
                             context.words.error(asked->error()));
        return std::nullopt;
    }
    const auto& proof = asked->value();
    const auto text = words::proofText(context.words, proof);
    context.dialogs.tell(over, Check::tr("Check a record"),
                         text.headline + QStringLiteral("\n\n") + text.details.join(u'\n'));
    return proof.kept ? std::optional<store::RecordId>(store::RecordId{proof.kept->id}) : std::nullopt;
}

}  // namespace hearth::ui::records
