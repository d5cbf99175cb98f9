// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/gallery/shots.h"
#include "app/issue.h"
#include "app/window.h"
#include "core/store/record_traces.h"
#include "ui/due/duty_counter.h"
#include "ui/shell/first_start.h"
#include "ui/shell/no_dialogs.h"
#include "ui/shell/restore_dialog.h"
#include "ui/words/document_words.h"

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPixmap>

namespace hearth::app::gallery {
namespace {

constexpr QSize kWindow(1280, 800);

class NoPrinting final : public ui::paper::Printing {
  public:
    Result<bool> print(const record::Document&, const ui::paper::PageOptions&, record::Paper) override {
        return false;
    }
    ui::paper::PrintedParts printMany(const ui::paper::PrintJob&) override { return {false, 0, {}}; }
};

void settle(QWidget& window) {
    window.resize(kWindow);
    window.show();
    QApplication::setActiveWindow(&window);
    for (int i = 0; i < 3; ++i) {
        QApplication::processEvents();
        QApplication::sendPostedEvents();
    }
    for (const auto* counter : window.findChildren<ui::due::DutyCounter*>()) {
        while (counter->isBusy()) {  // a picture of what stands there once all is counted
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
    }
    QApplication::processEvents();  // what was counted may need more room
}

Result<int> takeFirstStart(const Surroundings& surroundings, const Album& album) {
    ui::shell::FirstStart start(surroundings.words, surroundings.clock, rulebook::RuleBook::shipped());
    const int pages = start.findChild<QStackedWidget*>()->count();
    for (int page = 0; page < pages; ++page) {
        start.showPage(page);
        settle(start);
        const QString name =
            page == 0 ? QStringLiteral("first-start") : QStringLiteral("set-up-%1").arg(page);
        if (const auto kept = keep(start.grab().toImage(), album, name); !kept) {
            return tl::unexpected(kept.error());
        }
    }
    return pages;
}

Result<int> takeRestore(const std::filesystem::path& store, const Surroundings& surroundings,
                        const Album& album) {
    ui::shell::RestoreDialog dialog({surroundings.words, surroundings.dialogs, store}, {});
    settle(dialog);
    return keep(dialog.grab().toImage(), album, QStringLiteral("open-a-backup")).map([] { return 1; });
}

Result<int> takePages(const ui::paper::Layout& layout, const Album& album, int number, double dotsPerInch) {
    for (int page = 0; page < layout.pageCount(); ++page) {
        const QString name =
            QStringLiteral("record-%1-page-%2").arg(number, 2, 10, QLatin1Char('0')).arg(page + 1);
        if (const auto kept = keep(ui::paper::toImage(layout, page, dotsPerInch), album, name); !kept) {
            return tl::unexpected(kept.error());
        }
    }
    return layout.pageCount();
}

}  // namespace

Result<void> keep(const QImage& picture, const Album& album, const QString& name) {
    QDir().mkpath(album.folder);
    const QString path = QDir(album.folder).filePath(name + QStringLiteral(".png"));
    if (!picture.save(path)) {
        return fail(ErrorCode::FileUnwritable, {path.toStdString(), "picture"});
    }
    return {};
}

Result<int> takeScreens(store::Store& store, FixedClock& clock, const Album& album) {
    const ui::words::Words words(album.language);
    const WindowLanguage language(album.language);
    applyLook(*qApp, album.scheme);
    ui::shell::NoDialogs dialogs;
    NoPrinting printing;
    const Surroundings surroundings{clock, words, dialogs, printing, album.scheme, nullptr};
    auto shots = shotsOf(store);
    const auto ofVisits = visitShotsOf(store);
    if (!shots || !ofVisits) {
        return tl::unexpected(shots ? ofVisits.error() : shots.error());
    }
    shots->insert(shots->end(), ofVisits->begin(), ofVisits->end());
    addSheetShots(store, *shots);
    for (const auto& shot : *shots) {
        // a window of its own for each, so that no picture depends on the one before
        const auto window = makeMainWindow(store, surroundings);
        settle(*window);
        Scene scene{*window, store, clock};
        shot.arrange(scene);
        settle(*window);
        if (const auto kept = keep(window->grab().toImage(), album, shot.name); !kept) {
            return tl::unexpected(kept.error());
        }
    }
    const auto start = takeFirstStart(surroundings, album);
    const auto restore = takeRestore(store.path(), surroundings, album);
    if (!start || !restore) {
        return start ? restore : start;
    }
    return *start + *restore + static_cast<int>(shots->size());
}

Result<int> takeRecords(const store::Store& store, const Album& album, double dotsPerInch) {
    const auto lines = store.records({});
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    int count = 0;
    for (const auto& line : *lines) {
        const auto record = store.record(line.id);
        if (!record) {
            return tl::unexpected(record.error());
        }
        ui::paper::PageOptions options;
        options.digest = record->line.header.snapshotDigest;
        options.stamp = line.supersededBy ? ui::paper::Stamp::Superseded : ui::paper::Stamp::None;
        // by its place in the chain: the letters before it are drawn by lot
        const auto pages =
            takePages(ui::paper::Layout(record->document, options), album, line.header.number, dotsPerInch);
        if (!pages) {
            return pages;
        }
        count += *pages;
    }
    return count;
}

Result<int> takeDrafts(const store::Store& store, const Clock& clock, const Album& album,
                       double dotsPerInch) {
    const auto visits = store.visits({});
    if (!visits) {
        return tl::unexpected(visits.error());
    }
    const ui::words::Words words(album.language);
    int count = 0;
    int number = 0;
    for (const auto& line : *visits) {
        const auto judged = judgeVisit(store, line.visit.id);
        if (!judged) {
            return tl::unexpected(judged.error());
        }
        const auto book = store.ruleBook();
        const auto traces = book ? store::tracesOf(store, judged->file, *book) : tl::unexpected(book.error());
        if (!traces) {
            return tl::unexpected(traces.error());
        }
        const auto document = ui::words::documentFor({record::RecordKind::TightnessAndPurge,
                                                      judged->file,
                                                      judged->findings,
                                                      judged->volume,
                                                      clock.today("Europe/London"),
                                                      {},
                                                      {},
                                                      &judged->pipes,
                                                      {},
                                                      *traces},
                                                     words);
        const auto pages = takePages(ui::paper::Layout(document, {}), album, ++number, dotsPerInch);
        if (!pages) {
            return pages;
        }
        count += *pages;
    }
    return count;
}

}  // namespace hearth::app::gallery
