// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/backup_words.h"

#include "ui/shell/kit.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace hearth::ui::shell {

using words::qstring;

namespace {

struct BackupTexts {
    Q_DECLARE_TR_FUNCTIONS(hearth::ui::shell::BackupTexts)
};

QString pathText(const std::filesystem::path& path) {
    return QString::fromStdString(path.string());
}

QString holdsText(const store::BackupInside& inside) {
    return BackupTexts::tr("Premises: %1 · visits: %2 · records: %3")
        .arg(inside.premises)
        .arg(inside.visits)
        .arg(inside.records);
}

}  // namespace

QString momentText(const words::Words& words, Instant instant) {
    return BackupTexts::tr("%1, %2").arg(dayOf(words, instant), qstring(wallTimeText(instant)));
}

QString lastBackupText(const words::Words& words, const store::BackupState& state) {
    QStringList said;
    if (state.lastAt) {
        said << BackupTexts::tr("Last backup: %1. It is kept as %2")
                    .arg(momentText(words, *state.lastAt), pathText(state.last));
        said << (state.hasChanged ? BackupTexts::tr("What was done since then is in no backup yet.")
                                  : BackupTexts::tr("Nothing was changed since then."));
    } else {
        said << BackupTexts::tr("There is no backup yet. One is made when the program is closed.");
    }
    if (!state.secondFolder.empty()) {
        said << (state.secondAt ? BackupTexts::tr("Second folder: %1, last copy: %2")
                                      .arg(pathText(state.secondFolder), momentText(words, *state.secondAt))
                                : BackupTexts::tr("Second folder: %1, no copy there yet")
                                      .arg(pathText(state.secondFolder)));
    } else {
        said << BackupTexts::tr(
            "No second folder. A stick or a synchronised folder keeps the work when this "
            "computer is lost.");
    }
    said << (state.isSealed ? BackupTexts::tr("Backups are sealed: only the passphrase opens them.")
                            : BackupTexts::tr("Backups are not sealed: whoever finds one can read it."));
    if (state.restoredAt) {
        said << BackupTexts::tr("This store was restored on %1 from %2")
                    .arg(momentText(words, *state.restoredAt), qstring(state.restoredFrom));
    }
    return said.join(u'\n');
}

QString backupTroubleText(const words::Words& words, const store::BackupState& state) {
    QStringList said;
    if (state.failure) {
        said << words.error(*state.failure);
    }
    if (state.secondFailure) {
        said << words.error(*state.secondFailure);
    }
    if (!state.networkDrive.empty()) {
        said << BackupTexts::tr(
                    "The store lies on a network drive (%1). A connection that breaks can damage it "
                    "there: move it to a disk of this computer, and let the second folder be on "
                    "the network.")
                    .arg(qstring(state.networkDrive));
    }
    return said.join(u'\n');
}

QString outcomeText(const words::Words& words, const store::BackupOutcome& outcome) {
    if (outcome.failure) {
        return words.error(*outcome.failure);
    }
    if (outcome.secondFailure) {
        return words.error(*outcome.secondFailure);
    }
    return outcome.copied.empty()
               ? BackupTexts::tr("Backed up, read again and found whole: %1").arg(pathText(outcome.made))
               : BackupTexts::tr("Backed up, read again and found whole, in both folders: %1")
                     .arg(pathText(outcome.copied.filename()));
}

QString backupKindText(const store::BackupFile& file) {
    switch (file.kind) {
        case store::BackupKind::BeforeMigration:
            return BackupTexts::tr("before the program was renewed");
        case store::BackupKind::BeforeRestore:
            return BackupTexts::tr("what stood before a restore");
        case store::BackupKind::SetAside:
            return BackupTexts::tr("a damaged store, as it stood before a restore");
        case store::BackupKind::Regular:
            break;
    }
    const QString whose =
        file.isFromHere ? BackupTexts::tr("of this store") : BackupTexts::tr("of another store or computer");
    return file.isSealed ? BackupTexts::tr("%1, sealed").arg(whose) : whose;
}

QString sizeText(std::uintmax_t bytes) {
    return QLocale().formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeTraditionalFormat);
}

QString insideText(const words::Words& words, const store::BackupInside& inside) {
    QStringList said;
    said << (inside.demonstration ? BackupTexts::tr("%1 (demonstration)").arg(qstring(inside.firm))
                                  : qstring(inside.firm));
    said << holdsText(inside);
    if (inside.newestVisit) {
        said << BackupTexts::tr("Newest visit: %1").arg(words.shortDate(*inside.newestVisit));
    }
    if (inside.lastChange) {
        said << BackupTexts::tr("Last change: %1").arg(momentText(words, *inside.lastChange));
    }
    said << (inside.check
                 ? BackupTexts::tr("Checked to the last byte: it is whole.")
                 : BackupTexts::tr("It can't be restored. %1").arg(words.error(inside.check.error())));
    return said.join(u'\n');
}

}  // namespace hearth::ui::shell
