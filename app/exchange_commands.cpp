// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/exchange_commands.h"

#include "app/backup_commands.h"
#include "app/files.h"
#include "app/stores.h"
#include "ui/shell/exporting.h"
#include "ui/shell/importing.h"
#include "ui/words/exchange_words.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <array>

namespace hearth::app {
namespace {

using exchange::CsvTable;
using exchange::ImportPlan;
using ui::words::qstring;

constexpr QLatin1String kCards("cards");
constexpr QLatin1String kEverything("everything");
constexpr QLatin1String kSchema("schema");

QString exchangeText(const char* text, int count = -1) {
    return QCoreApplication::translate("CommandLine", text, nullptr, count);
}

Result<std::string> bytesOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return fail(ErrorCode::FileUnreadable, {path.toStdString(), file.errorString().toStdString()});
    }
    return file.readAll().toStdString();
}

/// What each column is taken for.
void sayColumns(const CsvTable& table, const exchange::ImportColumns& columns, const Desk& desk) {
    if (table.rows.size() <= columns.headerRow) {
        return;
    }
    const auto& headings = table.rows[columns.headerRow].cells;
    for (std::size_t i = 0; i < headings.size(); ++i) {
        const auto& target = columns.targets[i];
        desk.console.say(
            QStringLiteral("  %1: %2").arg(qstring(headings[i]), ui::shell::targetText(target, desk.words)));
    }
}

void sayProblems(const ImportPlan& plan, const Desk& desk) {
    for (const auto& problem : plan.problems) {
        const QString text = ui::shell::problemText(problem, desk.words);
        desk.console.say(problem.line == 0 ? text : exchangeText("line %1: %2").arg(problem.line).arg(text));
    }
}

void sayDuplicates(const ImportPlan& plan, const Desk& desk) {
    for (const auto& row : plan.rows) {
        if (row.met) {
            const QString where =
                row.met->line == 0 ? exchangeText("the store") : exchangeText("line %1").arg(row.met->line);
            desk.console.say(exchangeText("line %1: is there already (%2): %3")
                                 .arg(row.line)
                                 .arg(where, ui::shell::fateText(row.fate, desk.words)));
        }
    }
}

/// So much was taken over that it is not left to the evening's backup.
Exit backUpAfter(store::Store& store, const Desk& desk) {
    const auto job = store.backupDue(store::BackupOccasion::AfterMuch);
    if (!job) {
        return complain(job.error(), desk);
    }
    return *job ? makeBackup(**job, store, desk) : Exit::Done;
}

}  // namespace

Exit runImport(const CommandLine& line, store::Store& store, const Desk& desk) {
    const QString path = line.words.first();
    const auto bytes = bytesOf(path);
    if (!bytes) {
        return complain(bytes.error(), desk);
    }
    const auto table = exchange::readCsv(*bytes);
    const auto choices = ui::shell::firstChoices(table, store, desk.clock, QFileInfo(path).fileName());
    if (!choices) {
        return complain(choices.error(), desk);
    }
    const auto plan = ui::shell::planFor(table, *choices, store, desk.clock);
    if (!plan) {
        return complain(plan.error(), desk);
    }
    sayColumns(table, choices->columns, desk);
    sayProblems(*plan, desk);
    sayDuplicates(*plan, desk);
    if (plan->blocked) {
        desk.console.complain(exchangeText("Nothing was taken over."));
        return Exit::Refused;
    }
    if (!line.dryRun) {
        if (const auto taken = ui::shell::takeOver(*plan, store, {}); !taken) {
            return complain(taken.error(), desk);
        }
    }
    desk.console.say((line.dryRun ? exchangeText("Would be taken over: %1") : exchangeText("Taken over: %1"))
                         .arg(ui::shell::planSummary(*plan)));
    return line.dryRun ? Exit::Done : backUpAfter(store, desk);
}

namespace {

/// What `export` knows beside the lists, with the name's end of its file.
struct OtherExport {
    QLatin1String word;
    QLatin1String end;
};
constexpr std::array kOtherExports{OtherExport{kCards, QLatin1String(".vcf")},
                                   OtherExport{kEverything, QLatin1String(".json")},
                                   OtherExport{kSchema, QLatin1String(".schema.json")}};

Exit sayExports(const QString& word, const Desk& desk) {
    QStringList known;
    for (const auto one : exchange::allListKinds()) {
        const auto code = exchange::codeOf(one);
        known << QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
    }
    for (const auto& one : kOtherExports) {
        known << one.word;
    }
    desk.console.complain(
        exchangeText("“%1” is no list. There are: %2.").arg(word, known.join(QStringLiteral(", "))));
    return Exit::Usage;
}

/// The whole store goes straight into the file: it may be large.
Exit exportEverything(const CommandLine& line, const store::Store& store, const QString& path,
                      const Desk& desk) {
    if (QFileInfo::exists(path) && !line.replace) {
        return complain({ErrorCode::FileUnwritable,
                         {path.toStdString(),
                          exchangeText("it is there already; --replace writes over it").toStdString()}},
                        desk);
    }
    if (const auto written = ui::shell::writeWholeStore(store, desk.clock, path); !written) {
        return complain(written.error(), desk);
    }
    desk.console.say(path);
    return Exit::Done;
}

}  // namespace

Exit runExport(const CommandLine& line, const store::Store& store, const Desk& desk) {
    const QString word = line.words.first();
    const auto kind = exchange::listKindFromCode(word.toStdString());
    const auto other = std::find_if(kOtherExports.begin(), kOtherExports.end(),
                                    [&](const OtherExport& one) { return one.word == word; });
    if (!kind && other == kOtherExports.end()) {
        return sayExports(word, desk);
    }
    const QString path = fileFor(line.words.at(1), word + (kind ? QLatin1String(".csv") : other->end));
    if (word == kEverything) {
        return exportEverything(line, store, path, desk);
    }
    const auto bytes = kind             ? ui::shell::listFile(*kind, store, desk.clock, desk.words)
                       : word == kCards ? ui::shell::peopleCards(store)
                                        : ui::shell::wholeStoreSchema(store);
    if (!bytes) {
        return complain(bytes.error(), desk);
    }
    if (const auto written = writeFile(path, *bytes, line.replace ? IfThere::Replace : IfThere::Refuse);
        !written) {
        return complain(written.error(), desk);
    }
    desk.console.say(path);
    return Exit::Done;
}

Exit runMakeFrom(const CommandLine& line, const Desk& desk) {
    const QString path = line.to.value_or(QString());
    if (const auto made = ui::shell::makeStoreFrom(line.words.first(), pathFrom(path), desk.clock); !made) {
        return complain(made.error(), desk);
    }
    desk.console.say(path);
    return Exit::Done;
}

}  // namespace hearth::app
