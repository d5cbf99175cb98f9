// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/backup_commands.h"

#include "app/files.h"
#include "app/stores.h"
#include "core/store/store.h"
#include "ui/shell/backup_words.h"

namespace hearth::app {
namespace {

using store::Access;

Exit copyTo(const store::Store& store, const std::filesystem::path& target, const Desk& desk) {
    if (std::error_code failed; std::filesystem::exists(target, failed)) {
        return complain(
            Error{ErrorCode::FileUnwritable, {target.string(), tr("it is there already").toStdString()}},
            desk);
    }
    if (const auto done = store.backUp(target); !done) {
        return complain(done.error(), desk);
    }
    desk.console.say(textOf(target));
    return Exit::Done;
}

Exit lookInto(const std::filesystem::path& backup, const std::string& passphrase,
              const std::filesystem::path& store, const Desk& desk) {
    const auto inside = store::lookInside(backup, passphrase, store);
    if (!inside) {
        return complain(inside.error(), desk);
    }
    desk.console.say(ui::shell::insideText(desk.words, *inside));
    return inside->check ? Exit::Done : Exit::Trouble;
}

}  // namespace

Exit runBackUp(const CommandLine& line, const Desk& desk) {
    const auto store =
        store::Store::open(storeOf(line), line.to ? Access::Read : Access::WriteOrRead, desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    if (line.to) {
        return copyTo(**store, pathFrom(*line.to), desk);
    }
    const auto job = (*store)->backupJob();
    return job ? makeBackup(*job, **store, desk) : complain(job.error(), desk);
}

Exit makeBackup(const store::BackupJob& job, store::Store& store, const Desk& desk) {
    const auto outcome = store::runBackup(job);
    if (!store.isReadOnly()) {
        if (const auto noted = store.noteBackup(outcome); !noted) {
            return complain(noted.error(), desk);
        }
    }
    if (outcome.failure) {
        return complain(*outcome.failure, desk);
    }
    desk.console.say(textOf(outcome.made));
    if (!outcome.copied.empty()) {
        desk.console.say(textOf(outcome.copied));
    }
    return outcome.secondFailure ? complain(*outcome.secondFailure, desk) : Exit::Done;
}

Exit runRestore(const CommandLine& line, const Desk& desk) {
    const auto passphrase =
        line.passphrase ? firstLineOf(*line.passphrase) : Result<std::string>(std::string());
    if (!passphrase) {
        return complain(passphrase.error(), desk);
    }
    const auto backup = pathFrom(line.words.first());
    const auto store = storeOf(line);
    if (line.look) {
        return lookInto(backup, *passphrase, store, desk);
    }
    const auto restored = store::restoreBackup(backup, *passphrase, store, desk.clock);
    if (!restored) {
        return complain(restored.error(), desk);
    }
    desk.console.say(textOf(store));
    if (!restored->before.empty()) {
        desk.console.complain(tr("What stood there before is kept as %1").arg(textOf(restored->before)));
    }
    return Exit::Done;
}

}  // namespace hearth::app
