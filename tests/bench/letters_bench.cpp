// SPDX-License-Identifier: GPL-3.0-or-later
// A thousand reminder letters as one PDF, worded, laid out and merged with a bookmark each, as the place of
// checks due writes them; against a bare QPdfWriter that draws the same texts and lines into one file.
// Measured in turns, by the processor's time; fails nothing but where no letter comes out.
#include "resources/resources.h"
#include "tests/bench/bare_pages.h"
#include "tests/bench/figure.h"
#include "ui/due/reminder_letter.h"
#include "ui/look/look.h"

#include <QApplication>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>

namespace {

using namespace hearth;
using namespace hearth::ui;

constexpr int kLetters = 1000;
constexpr int kTurns = 5;  // of a fifth of them each
constexpr int kOfTurn = kLetters / kTurns;

reg::Firm letterFirm() {
    reg::Firm firm;
    firm.name = "Ashdown & Pike Heating";
    firm.address = {"3 Kiln Yard", "", "Thornmere", "TH1 4AB"};
    firm.telephone = "01632 960000";
    firm.email = "office@ashdown-pike.example";
    firm.registrationNumber = "000000";
    return firm;
}

store::Reminder reminderNumber(int i) {
    store::Reminder reminder;
    reminder.address = {std::to_string(i + 1) + " Larch Row", "", "Thornmere", "TH2 9XY"};
    reminder.recipient = {"1 Estate Office", "", "Thornmere", "TH1 1AA"};
    reminder.deadline = calendar::addDays(*calendar::fromIso("2026-12-01"), i % 50);
    reminder.party = reg::Party{};
    reminder.party->name = "Fenn Estate";
    return reminder;
}

Result<std::vector<due::WordedReminder>> wordedOfTurn(int turn) {
    const words::Words words;
    std::vector<due::WordedReminder> letters;
    for (int i = turn * kOfTurn; i < (turn + 1) * kOfTurn; ++i) {
        auto one = due::wordReminder(letterFirm(), reminderNumber(i), *calendar::fromIso("2026-11-25"),
                                     record::Paper::A4, words);
        if (!one) {
            return tl::unexpected<Error>(one.error());
        }
        letters.push_back(std::move(*one));
    }
    return letters;
}

/// Letters without a fault, in seconds of the processor; nothing where one does not come out.
std::optional<double> writeTurn(int turn, const QString& path) {
    bool written = false;
    const double seconds = bench::secondsOf([&] {
        const auto letters = wordedOfTurn(turn);
        written = letters && due::writeLetters(*letters, path, words::Words());
    });
    return written ? std::optional(seconds) : std::nullopt;
}

}  // namespace

int main(int argc, char** argv) {
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    hearth::initResources();
    look::loadFonts();
    const QTemporaryDir folder;
    const QString ours = folder.filePath(QStringLiteral("letters.pdf"));
    const QString bare = folder.filePath(QStringLiteral("bare.pdf"));
    const auto first = wordedOfTurn(0);
    if (!first || !writeTurn(0, ours)) {
        std::printf("no letter came out\n");
        return 1;
    }
    const auto pages = bench::barePages(first->front().document, {}, look::family());
    std::vector<double> ratios;
    double seconds = 0;
    for (int turn = 0; turn < kTurns; ++turn) {
        const double theirs = bench::secondsOf([&] { bench::bareAsOne(pages, kOfTurn, bare); });
        const auto mine = writeTurn(turn, ours);
        if (!mine) {
            return 1;
        }
        seconds += *mine;
        ratios.push_back(*mine / theirs);
    }
    std::sort(ratios.begin(), ratios.end());
    std::printf("%d letters of %zu page(s): %.2f s, %.0f letters/s; a fifth of them %lld kB\n", kLetters,
                pages.size(), seconds, kLetters / seconds, static_cast<long long>(QFile(ours).size() / 1024));
    bench::figure("1,000 reminder letters as one PDF, in times of a bare QPdfWriter's", ratios[kTurns / 2],
                  1 / 0.8);
    return 0;
}
