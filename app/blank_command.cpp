// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/blank_command.h"

#include "app/files.h"
#include "core/record/snapshot.h"
#include "core/store/firm_logo.h"
#include "ui/paper/paper.h"
#include "ui/shell/paper_choice.h"
#include "ui/words/blank_words.h"
#include "ui/words/document_words.h"

#include <QDir>
#include <QFileInfo>
#include <QRandomGenerator>
#include <QSysInfo>

#include <algorithm>
#include <array>

namespace hearth::app {
namespace {

using ui::words::qstring;

constexpr int kLetters = 3;
constexpr int kDigits = 6;
// Without those that a hand makes alike.
constexpr std::string_view kAlphabet = "BCDFGHJKLMNPQRSTVWXYZ";

/// Where this store is: another machine or file has another run.
std::string placeOf(const store::Store& store) {
    const auto path = QFileInfo(QString::fromStdString(store.path().string())).absoluteFilePath();
    return record::sha256(QSysInfo::machineUniqueId().toStdString() + '\n' + path.toStdString())
        .substr(0, 16);
}

std::string drawnLetters() {
    std::string letters;
    for (int i = 0; i < kLetters; ++i) {
        letters += kAlphabet[QRandomGenerator::system()->bounded(static_cast<quint32>(kAlphabet.size()))];
    }
    return letters;
}

/// "KTM 12": the letters and the last number taken.
struct BlankRun {
    std::string letters;
    int last = 0;
};

BlankRun runFrom(const std::string& kept) {
    const QStringList parts = QString::fromStdString(kept).split(u' ');
    bool isNumber = false;
    const int last = parts.size() == 2 ? parts[1].toInt(&isNumber) : 0;
    if (!isNumber || last < 0 || parts[0].size() != kLetters) {
        return {drawnLetters(), 0};
    }
    return {parts[0].toStdString(), last};
}

std::string listOfKinds(const Desk& desk) {
    std::string list;
    for (const auto kind : ui::words::blankKinds()) {
        list += std::string(list.empty() ? "" : "\n") + std::string(record::kindCode(kind)) + "  " +
                desk.words.recordKind(kind).toStdString();
    }
    return list;
}

Result<void> writeBlank(const ui::words::BlankInput& input, const QString& language, record::Paper paper,
                        const QString& path) {
    auto blank = ui::words::documentIn(
        language, [&input](const ui::words::Words& words) { return ui::words::blankFor(input, words); });
    blank.paper = paper;
    const auto pdf = ui::paper::toPdf(blank, {});
    return pdf ? writeFile(path, pdf->toStdString(), IfThere::Refuse) : tl::unexpected(pdf.error());
}

}  // namespace

Result<std::vector<std::string>> takeBlankNumbers(store::Store& store, int count) {
    const std::string name = "blanks." + placeOf(store);
    const auto kept = store.setting(name);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    BlankRun run = runFrom(*kept);
    std::vector<std::string> numbers;
    for (int i = 0; i < count; ++i) {
        const auto digits = QString::number(++run.last).rightJustified(kDigits, u'0').toStdString();
        numbers.push_back("B-" + run.letters + "-" + digits);
    }
    const auto saved = store.saveSetting(name, run.letters + " " + std::to_string(run.last));
    if (!saved) {
        return tl::unexpected(saved.error());
    }
    return numbers;
}

Exit runBlank(const CommandLine& line, store::Store& store, const Desk& desk) {
    const auto kinds = ui::words::blankKinds();
    const auto kind = record::kindFromCode(line.words.front().toStdString());
    if (!kind || std::find(kinds.begin(), kinds.end(), *kind) == kinds.end()) {
        desk.console.complain(tr("No blank is called \"%1\". There are:").arg(line.words.front()));
        desk.console.complain(qstring(listOfKinds(desk)));
        return Exit::Refused;
    }
    const auto firm = store.firm();
    if (!firm) {
        return complain(firm.error(), desk);
    }
    auto logo = store::logoOf(store, *firm);
    if (!logo) {
        return complain(logo.error(), desk);
    }
    // before a number is taken
    if (const auto made = makeFolder(*line.into); !made) {
        return complain(made.error(), desk);
    }
    const auto numbers = takeBlankNumbers(store, line.copies);
    if (!numbers) {
        return complain(numbers.error(), desk);
    }
    const QString language = line.recordLanguage.isEmpty() ? qstring(firm->language) : line.recordLanguage;
    const auto paper = ui::shell::firmsPaper(store);
    for (const auto& number : *numbers) {
        const QString path =
            QDir(*line.into).filePath(line.words.front() + u' ' + qstring(number) + QStringLiteral(".pdf"));
        if (const auto written =
                writeBlank({*kind, *firm, number, *logo, line.blocks}, language, paper, path);
            !written) {
            return complain(written.error(), desk);
        }
        desk.console.say(path);
    }
    return Exit::Done;
}

}  // namespace hearth::app
