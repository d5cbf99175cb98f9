// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/no_display.h"

#include "app/console.h"
#include "app/demo.h"
#include "app/files.h"
#include "app/findings_text.h"
#include "app/issue.h"
#include "app/stores.h"

#include <QCoreApplication>
#include <QDir>
#include <QLockFile>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <optional>

namespace hearth::app {
namespace {

using OpenStore = Result<std::unique_ptr<store::Store>>;

constexpr int kWaitForTurn = 60000;  // milliseconds

std::filesystem::path folder() {
    return dataFolder() / "without-display";
}

/// Every run starts from the same firm: nothing piles up, and a copy that was damaged is of no matter.
OpenStore freshDemonstration(const Clock& clock) {
    const auto path = demonstrationStoreIn(folder());
    if (const auto removed = removeStoreFiles(path); !removed) {
        return tl::unexpected(removed.error());
    }
    if (const auto made = makeDemonstration(path, Records::None); !made) {
        return tl::unexpected(made.error());
    }
    return store::Store::open(path, store::Access::Write, clock);
}

struct Shown {
    reg::VisitId id;
    JudgedVisit judged;
};

/// How much there is to see in a visit that passes; 0 for one that does not, or lacks something for its
/// record.
std::ptrdiff_t worth(const JudgedVisit& judged) {
    const bool isReady =
        judged.missing.empty() && judged.file.tests.size() == 1 && judged.outcome == rulebook::Outcome::Pass;
    return isReady
               ? std::count_if(judged.findings.begin(), judged.findings.end(),
                               [](const auto& one) { return one.finding.outcome == rulebook::Outcome::Pass; })
               : 0;
}

/// The visit that passes in the most findings.
Result<Shown> visitToShow(const store::Store& store) {
    const auto visits = store.visits({});
    if (!visits) {
        return tl::unexpected(visits.error());
    }
    std::optional<Shown> best;
    for (const auto& line : *visits) {
        auto judged = judgeVisit(store, line.visit.id);
        if (!judged) {
            return tl::unexpected(judged.error());
        }
        if (worth(*judged) > (best ? worth(best->judged) : 0)) {
            best = Shown{line.visit.id, std::move(*judged)};
        }
    }
    if (!best) {
        return fail(ErrorCode::NotFound, {"visit", "demonstration"});
    }
    return *best;
}

Result<QString> issueAndWrite(store::Store& store, reg::VisitId visit, const Desk& desk) {
    const auto issued = issueRecord(store, desk.clock, visit, std::nullopt, {});
    if (!issued) {
        return tl::unexpected(issued.error());
    }
    const auto record = store.record(*issued);
    if (!record) {
        return tl::unexpected(record.error());
    }
    desk.console.say(tr("Issued record %1.").arg(ui::words::qstring(record->line.header.record)));
    const QString path = fileFor(textOf(folder()), QStringLiteral("record.pdf"));
    if (const auto written = writeFile(path, record->pdf, IfThere::Replace); !written) {
        return tl::unexpected(written.error());
    }
    return path;
}

}  // namespace

Exit showWithoutDisplay(const Desk& desk) {
    desk.console.say(
        tr("No display was found, so no window can be opened here. Instead, this is the main job on the\n"
           "demonstration firm: a visit is judged, and its record is issued.\n"));
    // two at once would take the same folder from each other
    QDir().mkpath(textOf(folder()));
    QLockFile turn(textOf(folder() / "in-use.lock"));
    if (!turn.tryLock(kWaitForTurn)) {
        return complain(Error{ErrorCode::StoreFolderUnusable, {folder().string()}}, desk);
    }
    const auto store = freshDemonstration(desk.clock);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto shown = visitToShow(**store);
    if (!shown) {
        return complain(shown.error(), desk);
    }
    desk.console.say(
        findingsText(shown->judged, desk.words, desk.console.hasColours() ? Colours::Yes : Colours::No));
    const auto pdf = issueAndWrite(**store, shown->id, desk);
    if (!pdf) {
        return complain(pdf.error(), desk);
    }
    desk.console.say(tr("Its PDF: %1").arg(*pdf) + QLatin1Char('\n'));
    desk.console.say(
        tr("To open the window, start the same program in a desktop session, or over \"ssh -X\" from one.\n"
           "What works without a window: hearthledger --help"));
    return Exit::Done;
}

}  // namespace hearth::app
