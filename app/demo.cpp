// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo.h"

#include "core/exchange/scenario.h"
#include "core/store/store.h"
#include "resources/resources.h"

#include <QCoreApplication>
#include <QFile>

#include <fstream>
#include <memory>
#include <system_error>

namespace hearth::app {
namespace {

namespace fs = std::filesystem;

constexpr auto kResource = ":/demo/scenario.json";

Result<exchange::Scenario> carriedScenario() {
    initResources();
    QFile file(QString::fromLatin1(kResource));
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {kResource, file.errorString().toStdString()});
    }
    const SystemClock clock;
    return exchange::parseScenario(file.readAll().toStdString(),
                                   [&clock] { return makeUuid7(clock.now().time_since_epoch().count()); });
}

/// Stands beside a store for as long as it is being made: what is found with it was interrupted.
fs::path makingMark(const fs::path& path) {
    return fs::path(path.string() + ".unfinished");
}

/// True for a whole demonstration's store; an error for anything else that has the name.
Result<bool> isThere(const fs::path& path) {
    std::error_code failed;
    if (!fs::exists(path, failed)) {
        return false;
    }
    if (fs::exists(makingMark(path), failed)) {
        if (const auto removed = removeStoreFiles(path); !removed) {
            return tl::unexpected(removed.error());
        }
        return false;
    }
    const auto health = store::Store::inspect(path);
    if (!health) {
        return tl::unexpected(health.error());
    }
    if (!health->demonstration) {
        return fail(
            ErrorCode::FileUnwritable,
            {path.string(),
             QCoreApplication::translate("CommandLine", "a firm's own store has that name").toStdString()});
    }
    return true;
}

Result<void> make(const fs::path& path, const exchange::Scenario& scenario, Records records) {
    FixedClock clock(startOf(scenario));
    const auto store = store::Store::create(path, scenario.firm, clock);
    return store ? writeScenario(scenario, **store, clock, records) : tl::unexpected(store.error());
}

}  // namespace

Result<Made> makeDemonstration(const fs::path& path, Records records) {
    const auto there = isThere(path);
    if (!there) {
        return tl::unexpected(there.error());
    }
    if (*there) {
        return Made::WasThere;
    }
    const auto scenario = carriedScenario();
    if (!scenario) {
        return tl::unexpected(scenario.error());
    }
    std::error_code failed;
    fs::create_directories(path.parent_path(), failed);
    if (!std::ofstream(makingMark(path))) {
        return fail(ErrorCode::StoreFolderUnusable, {path.parent_path().string()});
    }
    if (const auto made = make(path, *scenario, records); !made) {
        return tl::unexpected(made.error());
    }
    fs::remove(makingMark(path), failed);
    return Made::New;
}

Result<void> removeStoreFiles(const fs::path& path) {
    for (const char* ending : {"", "-journal", ".lock", ".unfinished"}) {
        std::error_code failed;
        const fs::path file(path.string() + ending);
        fs::remove(file, failed);
        if (failed) {
            return fail(ErrorCode::FileUnwritable, {file.string(), failed.message()});
        }
    }
    return {};
}

}  // namespace hearth::app
