// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo.h"
#include "app/gallery/shots.h"
#include "resources/resources.h"

#include <QApplication>
#include <QDir>
#include <QTemporaryDir>

#include <cstdio>

namespace {

using namespace hearth;
using namespace hearth::app::gallery;
using ui::look::Scheme;

constexpr double kRecordDpi = 96.0;

int refuse(const Error& error) {
    std::fprintf(stderr, "gallery: %s\n", std::string(codeText(error.code)).c_str());
    for (const auto& detail : error.details) {
        std::fprintf(stderr, "  %s\n", detail.c_str());
    }
    return 1;
}

/// A fixed day some weeks after the scenario's last visit.
FixedClock today() {
    Instant instant{};
    const bool read = parseInstant("2026-11-25T10:00:00.000Z", instant);
    Q_ASSERT(read);
    Q_UNUSED(read);
    return FixedClock(instant);
}

/// Screens of a copy of the store: what is written for a picture is in no other album.
Result<int> takeFromCopy(const std::filesystem::path& path, const Album& album) {
    const QTemporaryDir place;
    const auto copy = std::filesystem::path(place.path().toStdString()) / path.filename();
    std::error_code failed;
    if (!std::filesystem::copy_file(path, copy, failed)) {
        return fail(ErrorCode::FileUnwritable, {copy.string(), failed.message()});
    }
    FixedClock clock = today();
    const auto store = store::Store::open(copy, store::Access::Write, clock);
    return store ? takeScreens(**store, clock, album) : tl::unexpected(store.error());
}

int run(const QString& folder, const QString& scale) {
    const QTemporaryDir place;
    const auto path = std::filesystem::path(place.path().toStdString()) / "demonstration.hearth";
    if (const auto made = app::makeDemonstration(path); !made) {
        return refuse(made.error());
    }
    std::vector<Album> albums{
        {folder + QStringLiteral("/light-%1x").arg(scale), Scheme::Light, QStringLiteral("en")},
        {folder + QStringLiteral("/dark-%1x").arg(scale), Scheme::Dark, QStringLiteral("en")}};
    if (scale == QStringLiteral("1")) {
        albums.push_back({folder + QStringLiteral("/pseudo-1x"), Scheme::Light, QStringLiteral("en_XA")});
        albums.push_back(
            {folder + QStringLiteral("/contrast-1x"), Scheme::HighContrast, QStringLiteral("en")});
    }
    int count = 0;
    for (const auto& album : albums) {
        const auto taken = takeFromCopy(path, album);
        if (!taken) {
            return refuse(taken.error());
        }
        count += *taken;
    }
    FixedClock clock = today();
    const auto store = store::Store::open(path, store::Access::Write, clock);
    if (!store) {
        return refuse(store.error());
    }
    const Album records{folder + QStringLiteral("/records-%1x").arg(scale)};
    const auto pages = takeRecords(**store, records, kRecordDpi * scale.toDouble());
    if (!pages) {
        return refuse(pages.error());
    }
    if (scale == QStringLiteral("1")) {
        const Album drafts{folder + QStringLiteral("/records-pseudo-1x"), Scheme::Light,
                           QStringLiteral("en_XA")};
        const auto drawn = takeDrafts(**store, clock, drafts, kRecordDpi);
        if (!drawn) {
            return refuse(drawn.error());
        }
        count += *drawn;
    }
    std::printf("%d pictures in %s\n", count + *pages, qPrintable(folder));
    return 0;
}

}  // namespace

/// gallery FOLDER [SCALE]: SCALE is 1 or 2; a process has one, since it is fixed when the application starts.
int main(int argc, char** argv) {
    const QByteArray scale = argc > 2 ? QByteArray(argv[2]) : QByteArray("1");
    if (argc < 2 || (scale != "1" && scale != "2")) {
        std::fputs("usage: gallery FOLDER [1|2]\n", stderr);
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_SCALE_FACTOR", scale);
    const QApplication application(argc, argv);
    initResources();
    ui::look::loadFonts();
    return run(QDir(QString::fromLocal8Bit(argv[1])).absolutePath(), QString::fromLatin1(scale));
}
