// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/run_window.h"

#include "app/demo.h"
#include "app/stores.h"
#include "ui/shell/first_start.h"
#include "ui/shell/system_dialogs.h"

#include <QApplication>
#include <QSettings>

#include <utility>

namespace hearth::app {
namespace {

using store::Access;
using store::Store;
using ui::shell::FirstStart;

using MaybeStore = std::optional<std::unique_ptr<Store>>;
using StoreResult = Result<MaybeStore>;

StoreResult opened(const std::filesystem::path& path, const Clock& clock) {
    return Store::open(path, Access::WriteOrRead, clock).map([](std::unique_ptr<Store> store) {
        return MaybeStore(std::move(store));
    });
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

StoreResult firstStart(const std::filesystem::path& path, const Surroundings& surroundings) {
    FirstStart start(surroundings.words, surroundings.clock, rulebook::RuleBook::shipped());
    if (start.exec() != QDialog::Accepted) {
        return MaybeStore();
    }
    switch (start.door()) {
        case FirstStart::Door::OwnFirm:
            return ownFirm(path, start.setUp(), surroundings.clock);
        case FirstStart::Door::Demonstration:
            return demonstration(surroundings.clock);
        case FirstStart::Door::None:
            break;
    }
    return MaybeStore();
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

Exit runOn(Store& store, const Surroundings& surroundings) {
    actAsEngineer(store);
    const auto window = makeMainWindow(store, surroundings);
    window->show();
    QApplication::exec();
    return Exit::Done;
}

}  // namespace

StoreResult storeForWindow(const CommandLine& line, const Surroundings& surroundings) {
    if (line.demonstration) {
        return demonstration(surroundings.clock);
    }
    const auto path = storeOf(line);
    std::error_code failed;
    const bool isThere = std::filesystem::exists(path, failed);
    // A store that was named is never made by a slip of the pen; only one's own is set up.
    return isThere || line.store ? opened(path, surroundings.clock) : firstStart(path, surroundings);
}

Exit runWindow(const CommandLine& line, const Console& console) {
    const QString language = line.language.value_or(QStringLiteral("en"));
    const WindowLanguage windowLanguage(language);
    const ui::words::Words words(language);
    const SystemClock clock;
    const auto scheme = line.scheme.value_or(ui::look::schemeOf(QApplication::palette()));
    applyLook(*qApp, scheme);
    ui::shell::SystemDialogs dialogs;
    const auto printing = ui::paper::systemPrinting();
    QSettings settings(windowSettingsFile(), QSettings::IniFormat);
    const Surroundings surroundings{clock, words, dialogs, *printing, scheme, &settings};

    const auto store = storeForWindow(line, surroundings);
    if (!store) {
        return refuse(store.error(), surroundings, console);
    }
    return *store ? runOn(***store, surroundings) : Exit::Done;
}

}  // namespace hearth::app
