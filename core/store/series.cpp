// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/series.h"

#include "core/record/snapshot.h"

#include <QRandomGenerator>
#include <QSysInfo>

#include <algorithm>
#include <fcntl.h>
#include <sys/stat.h>

namespace hearth::store {
namespace {

constexpr std::string_view kLetters = "BCDFGHJKLMNPRSTVWXZ";
constexpr int kLetterCount = 3;

std::string lettersByLot() {
    std::string letters;
    for (int i = 0; i < kLetterCount; ++i) {
        const auto at = QRandomGenerator::system()->bounded(static_cast<quint32>(kLetters.size()));
        letters += kLetters.at(at);
    }
    return letters;
}

std::string freshLetters(const std::vector<Series>& taken) {
    std::string letters;
    do {
        letters = lettersByLot();
    } while (std::any_of(taken.begin(), taken.end(),
                         [&](const Series& series) { return series.letters == letters; }));
    return letters;
}

Series begin(Session& session, const std::vector<Series>& before) {
    Series series;
    series.letters = freshLetters(before);
    if (!before.empty()) {
        series.followsSeries = before.back().letters;
        series.followsHead = before.back().head;
    }
    series.place = placeOf(session.db.path());
    series.head = series.followsHead;
    session.db.run(
        "INSERT INTO series (series, position, started_at, follows_series, follows_head, place, head) "
        "VALUES (?, (SELECT coalesce(max(position), 0) + 1 FROM series), ?, ?, ?, ?, ?)",
        {series.letters, instantText(session.clock.now()), series.followsSeries, series.followsHead,
         series.place, series.head});
    return series;
}

}  // namespace

std::string placeOf(const std::filesystem::path& path) {
    struct statx status {};
    const std::filesystem::path whole = std::filesystem::weakly_canonical(path);
    if (statx(AT_FDCWD, whole.c_str(), 0, STATX_INO | STATX_BTIME, &status) != 0) {
        return {};
    }
    const std::string born =
        (status.stx_mask & STATX_BTIME) != 0U
            ? std::to_string(status.stx_btime.tv_sec) + "." + std::to_string(status.stx_btime.tv_nsec)
            : std::string();
    const std::string machine = QSysInfo::machineUniqueId().toStdString();
    return record::sha256(machine + "|" + whole.string() + "|" + std::to_string(status.stx_ino) + "|" + born);
}

std::vector<Series> allSeries(const Connection& db) {
    return db.all(
        "SELECT series, follows_series, follows_head, place, last_number, last_record, head FROM series "
        "ORDER BY position",
        {}, [](const Columns& columns) {
            return Series{columns.text(0),   columns.text(1),   columns.text(2), columns.text(3),
                          columns.number(4), columns.number(5), columns.text(6)};
        });
}

Series seriesToIssueIn(Session& session) {
    const auto known = allSeries(session.db);
    if (known.empty() || known.back().place != placeOf(session.db.path())) {
        return begin(session, known);
    }
    return known.back();
}

void advance(Connection& db, const Series& series) {
    db.run("UPDATE series SET last_number = ?, last_record = ?, head = ? WHERE series = ?",
           {std::int64_t{series.lastNumber}, std::int64_t{series.lastRecord}, series.head, series.letters});
}

}  // namespace hearth::store
