// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/run_window.h"

#include "app/closing_backup.h"
#include "app/demo.h"
#include "app/desktop_notices.h"
#include "app/stores.h"
#include "app/waiting.h"
#include "ui/shell/first_start.h"
#include "ui/shell/restore_dialog.h"
#include "ui/shell/system_dialogs.h"
#include "ui/shell/text_size.h"

#include <QApplication>
#include <QSettings>

#include <utility>

namespace hearth::app {
namespace {

using store::Access;
using store::Store;
using ui::shell::FirstStart;
using ui::shell::RestoreDialog;

using MaybeStore = std::optional<std::unique_ptr<Store>>;
using StoreResult = Result<MaybeStore>;

/// What a person wanted to be restored.
struct RestoreWish {
    std::filesystem::path backup;
    std::string passphrase;
};

Result<store::Restored> restoreWaiting(const RestoreWish& wish, const std::filesystem::path& store,
                                       const Surroundings& surroundings) {
    std::optional<Result<store::Restored>> restored;
    doWaiting(
        [&] { restored = store::restoreBackup(wish.backup, wish.passphrase, store, surroundings.clock); },
        tr("The backup is being checked and put in place. This closes by itself."));
    return *restored;
}

StoreResult opened(const std::filesystem::path& path, const Clock& clock) {
    return Store::open(path, Access::WriteOrRead, clock).map([](std::unique_ptr<Store> store) {
        return MaybeStore(std::move(store));
    });
}

/// The same, and a person was told why it is not there.
StoreResult told(StoreResult store, const Surroundings& surroundings) {
    if (!store) {
        surroundings.dialogs.tell(nullptr, QStringLiteral("Hearthledger"),
                                  surroundings.words.error(store.error()));
    }
    return store;
}

StoreResult demonstration(const Clock& clock) {
    QApplication::setOverrideCursor(Qt::WaitCursor);
    const auto made = makeDemonstration(demonstrationStore());
    QApplication::restoreOverrideCursor();
    return made ? opened(demonstrationStore(), clock) : StoreResult(tl::unexpected(made.error()));
}

/// A store of one's own, with what the set-up gave.
StoreResult ownFirm(const std::filesystem::path& path, const ui::shell::SetUp& setUp, const Clock& clock) {
    auto store = Store::create(path, setUp.firm, clock);
    if (!store) {
        return tl::unexpected(store.error());
    }
    if (setUp.engineer) {
        (*store)->actAs(setUp.engineer->name);
    }
    if (const auto written = ui::shell::writeSetUp(**store, setUp); !written) {
        return tl::unexpected(written.error());
    }
    return MaybeStore(std::move(*store));
}

/// A backup that a person chose, in the place of a store that is not open; nothing when none was wanted.
StoreResult fromBackup(const std::filesystem::path& path, const QString& why,
                       const Surroundings& surroundings) {
    while (true) {
        RestoreDialog dialog({surroundings.words, surroundings.dialogs, path}, why);
        if (dialog.exec() != QDialog::Accepted) {
            return MaybeStore();
        }
        const auto restored = restoreWaiting(
            {std::filesystem::path(dialog.backup().toStdString()), dialog.passphrase().toStdString()}, path,
            surroundings);
        if (restored) {
            return told(opened(path, surroundings.clock), surroundings);
        }
        surroundings.dialogs.tell(nullptr, tr("The backup was not restored"),
                                  surroundings.words.error(restored.error()));
    }
}

StoreResult firstStart(const std::filesystem::path& path, const Surroundings& surroundings) {
    while (true) {
        FirstStart start(surroundings.words, surroundings.clock, rulebook::RuleBook::shipped());
        if (start.exec() != QDialog::Accepted || start.door() == FirstStart::Door::None) {
            return MaybeStore();
        }
        if (start.door() == FirstStart::Door::OwnFirm) {
            return told(ownFirm(path, start.setUp(), surroundings.clock), surroundings);
        }
        if (start.door() == FirstStart::Door::Demonstration) {
            return told(demonstration(surroundings.clock), surroundings);
        }
        if (auto store = fromBackup(path, {}, surroundings); !store || *store) {
            return store;
        }
    }
}

/// A store that is damaged can't be opened; a backup of it can.
StoreResult openedOrRestored(const std::filesystem::path& path, const Surroundings& surroundings) {
    auto store = opened(path, surroundings.clock);
    if (store ||
        (store.error().code != ErrorCode::StoreDamaged && store.error().code != ErrorCode::StoreNotOurs)) {
        return told(std::move(store), surroundings);
    }
    constexpr int kClose = 0;
    constexpr int kRestore = 1;
    const QString why = surroundings.words.error(store.error());
    const int answer = surroundings.dialogs.ask(nullptr, tr("The store can't be opened"), why,
                                                {tr("Close"), tr("Open a backup")}, kClose);
    if (answer == kRestore) {
        return fromBackup(path, why, surroundings);
    }
    return store;
}

/// Who works here, for the change log: the first engineer until the window knows better.
void actAsEngineer(Store& store) {
    const auto engineers = store.engineers();
    if (!store.isReadOnly() && engineers && !engineers->empty()) {
        store.actAs(engineers->front().name);
    }
}

Exit refuse(const Error& error, const Surroundings& surroundings, const Console& console) {
    const QString sentence = surroundings.words.error(error);
    console.complain(sentence);
    surroundings.dialogs.tell(nullptr, QStringLiteral("Hearthledger"), sentence);
    return Exit::Trouble;
}

/// The window until it is closed. What was wanted to be restored then, if anything was.
std::optional<RestoreWish> runOnce(Store& store, const Surroundings& surroundings) {
    actAsEngineer(store);
    std::optional<RestoreWish> wish;
    auto around = surroundings;
    around.restore = [&wish](const std::filesystem::path& backup, const std::string& passphrase) {
        wish = RestoreWish{backup, passphrase};
        QApplication::closeAllWindows();
    };
    const auto window = makeMainWindow(store, around);
    window->show();
    QApplication::exec();
    return wish;
}

void tellRestored(const Result<store::Restored>& restored, const Surroundings& surroundings) {
    surroundings.dialogs.tell(
        nullptr, restored ? tr("The backup was restored") : tr("The backup was not restored"),
        restored
            ? tr("What stood before is kept as %1").arg(QString::fromStdString(restored->before.string()))
            : surroundings.words.error(restored.error()));
}

Exit runOn(std::unique_ptr<Store> store, const Surroundings& surroundings, const Console& console) {
    while (const auto wish = runOnce(*store, surroundings)) {
        const auto path = store->path();
        store.reset();  // it is written over as a whole
        tellRestored(restoreWaiting(*wish, path, surroundings), surroundings);
        auto again = Store::open(path, Access::WriteOrRead, surroundings.clock);
        if (!again) {
            return refuse(again.error(), surroundings, console);
        }
        store = std::move(*again);
    }
    backUpOnClosing(*store, surroundings);
    return Exit::Done;
}

}  // namespace

StoreResult storeForWindow(const CommandLine& line, const Surroundings& surroundings) {
    if (line.demonstration) {
        return told(demonstration(surroundings.clock), surroundings);
    }
    const auto path = storeOf(line);
    std::error_code failed;
    const bool isThere = std::filesystem::exists(path, failed);
    // A store that was named is never made by a slip of the pen; only one's own is set up.
    return isThere || line.store ? openedOrRestored(path, surroundings) : firstStart(path, surroundings);
}

Exit runWindow(const CommandLine& line, const Console& console) {
    const QString language = line.language.value_or(QStringLiteral("en"));
    const WindowLanguage windowLanguage(language);
    const ui::words::Words words(language);
    const SystemClock clock;
    const auto scheme = line.scheme.value_or(ui::look::schemeOf(QApplication::palette()));
    QSettings settings(windowSettingsFile(), QSettings::IniFormat);
    ui::look::useTextPercent(ui::shell::textPercent(&settings, QApplication::font()));
    applyLook(*qApp, scheme);
    ui::shell::SystemDialogs dialogs;
    const auto printing = ui::paper::systemPrinting();
    DesktopNotices notices(QDBusConnection::sessionBus());
    Surroundings surroundings{clock, words, dialogs, *printing, scheme, &settings};
    surroundings.notifying = &notices;

    auto store = storeForWindow(line, surroundings);
    if (!store) {
        console.complain(words.error(store.error()));
        return Exit::Trouble;
    }
    return *store ? runOn(std::move(**store), surroundings, console) : Exit::Done;
}

}  // namespace hearth::app
