// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include "app/backup_commands.h"
#include "app/blank_command.h"
#include "app/collect_command.h"
#include "app/demo.h"
#include "app/due_commands.h"
#include "app/exchange_commands.h"
#include "app/files.h"
#include "app/findings_text.h"
#include "app/issue.h"
#include "app/lookup.h"
#include "app/proof_commands.h"
#include "app/rules_text.h"
#include "app/signing_commands.h"
#include "app/stores.h"
#include "app/trace_command.h"
#include "ui/shell/file_pattern.h"

#include <QCoreApplication>

#include <memory>

namespace hearth::app {
namespace {

using store::Access;
using ui::words::qstring;

using OpenStore = Result<std::unique_ptr<store::Store>>;

OpenStore openFor(const CommandLine& line, Access access, const Desk& desk) {
    auto store = store::Store::open(storeOf(line), access, desk.clock);
    if (store && !(*store)->isReadOnly()) {
        (*store)->actAs("command line");
    } else if (store && (*store)->whyReadOnly().code == ErrorCode::StoreNewer) {
        desk.console.complain(desk.words.error((*store)->whyReadOnly()));
    }
    return store;
}

QString listed(const store::VisitLine& line, const Desk& desk) {
    const QString state = line.records > 0 ? tr("issued") : line.visit.closed ? tr("closed") : tr("open");
    return QStringLiteral("%1  %2  %3  %4")
               .arg(shortId(line.visit.id), desk.words.shortDate(line.visit.date).rightJustified(11),
                    state.leftJustified(7), addressLine(line.address)) +
           (line.customer.empty() ? QString() : QStringLiteral(" · ") + qstring(line.customer));
}

QString listed(const store::RecordLine& line, const Desk& desk) {
    QString text = QStringLiteral("%1  %2  %3  %4")
                       .arg(qstring(line.header.record), tr("revision %1").arg(line.header.revision),
                            (line.letGo ? tr("erased") : desk.words.outcome(line.outcome)).leftJustified(11),
                            qstring(line.address));
    if (line.letGo) {
        text += tr("%1; it was kept until %2")
                    .arg(desk.words.shortDate(FixedClock(line.letGo->at).today("Europe/London")),
                         desk.words.shortDate(line.letGo->keptUntil));
    }
    if (line.supersededBy || line.voided) {
        text += QStringLiteral(" · ") + (line.voided ? tr("void") : tr("replaced"));
    }
    return text;
}

template <class Lines>
Exit list(const Result<Lines>& lines, const QString& none, const Desk& desk) {
    if (!lines) {
        return complain(lines.error(), desk);
    }
    for (const auto& line : *lines) {
        desk.console.say(listed(line, desk));
    }
    if (lines->empty()) {
        desk.console.complain(none);
    }
    return Exit::Done;
}

Exit runVisits(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Read, desk);
    return store ? list(visitsNamed(**store, line.words), tr("No such visits."), desk)
                 : complain(store.error(), desk);
}

Exit runRecords(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Read, desk);
    return store ? list((*store)->records(line.words.join(QLatin1Char(' ')).toStdString()),
                        tr("No such records."), desk)
                 : complain(store.error(), desk);
}

/// The one visit that the words name; otherwise says what there is.
tl::expected<reg::VisitId, Exit> theVisit(const store::Store& store, const CommandLine& line,
                                          const Desk& desk) {
    const auto found = visitsNamed(store, line.words);
    if (!found) {
        return tl::unexpected(complain(found.error(), desk));
    }
    if (found->size() == 1) {
        return found->front().visit.id;
    }
    const QString words = line.words.join(QLatin1Char(' '));
    desk.console.complain(
        found->empty() ? tr("No visit is called \"%1\". \"hearthledger visits\" lists them.").arg(words)
                       : tr("More than one visit is called \"%1\":").arg(words));
    for (const auto& visit : *found) {
        desk.console.complain(listed(visit, desk));
    }
    return tl::unexpected(Exit::Refused);
}

Exit runJudge(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Read, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto visit = theVisit(**store, line, desk);
    if (!visit) {
        return visit.error();
    }
    const auto judged = judgeVisit(**store, *visit);
    if (!judged) {
        return complain(judged.error(), desk);
    }
    desk.console.say(
        findingsText(*judged, desk.words, desk.console.hasColours() ? Colours::Yes : Colours::No));
    if (!judged->missing.empty()) {
        desk.console.say(tr("A record of it still lacks:") + QLatin1Char('\n') +
                         missingText(*judged, desk.words));
    }
    return judged->outcome == rulebook::Outcome::Pass ? Exit::Done : Exit::Refused;
}

/// The signature beside the PDF, where there is one.
Result<void> writeSignature(const store::Store& store, store::RecordId id, const QString& pdf,
                            IfThere ifThere) {
    const auto signature = store.signatureOf(id);
    if (!signature) {
        return tl::unexpected(signature.error());
    }
    return *signature ? writeFile(pdf + QStringLiteral(".sig"), (*signature)->bytes, ifThere)
                      : Result<void>();
}

Exit writePdf(store::Store& store, store::RecordId id, const CommandLine& line, const Desk& desk) {
    const auto record = store.record(id);
    if (!record) {
        return complain(record.error(), desk);
    }
    const QString path = fileFor(*line.to, ui::shell::recordFileName(store, record->line));
    const auto ifThere = line.replace ? IfThere::Replace : IfThere::Refuse;
    if (const auto written = writeFile(path, record->pdf, ifThere); !written) {
        return complain(written.error(), desk);
    }
    if (const auto written = writeSignature(store, id, path, ifThere); !written) {
        return complain(written.error(), desk);
    }
    desk.console.say(path);
    if (!store.isReadOnly()) {
        if (const auto noted = store.noteSending(id, {record::SentBy::File, {}, path.toStdString(), {}, {}});
            !noted) {
            return complain(noted.error(), desk);
        }
    }
    return Exit::Done;
}

Exit refuseIncomplete(const store::Store& store, reg::VisitId visit, const Error& error, const Desk& desk) {
    const auto judged = judgeVisit(store, visit);
    if (error.code != ErrorCode::RecordIncomplete || !judged) {
        return complain(error, desk);
    }
    desk.console.complain(tr("The record can't be issued yet. Missing:") + QLatin1Char('\n') +
                          missingText(*judged, desk.words));
    return Exit::Refused;
}

Exit runIssue(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Write, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto visit = theVisit(**store, line, desk);
    if (!visit) {
        return visit.error();
    }
    std::optional<store::RecordId> supersedes;
    if (line.revises) {
        const auto old = recordNamed(**store, *line.revises, 0);
        if (!old) {
            return complain(old.error(), desk);
        }
        supersedes = *old;
    }
    const auto issued = issueRecord(**store, desk.clock, *visit, supersedes, line.reason.value_or(QString()),
                                    line.recordLanguage);
    if (!issued) {
        return refuseIncomplete(**store, *visit, issued.error(), desk);
    }
    const auto record = (*store)->record(*issued);
    if (!record) {
        return complain(record.error(), desk);
    }
    desk.console.say(listed(record->line, desk));
    return line.to ? writePdf(**store, *issued, line, desk) : Exit::Done;
}

Exit runPdf(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::WriteOrRead, desk);
    if (!store) {
        return complain(store.error(), desk);
    }
    const auto id = recordNamed(**store, line.words.first(), line.revision);
    return id ? writePdf(**store, *id, line, desk) : complain(id.error(), desk);
}

Exit sayHealth(const std::filesystem::path& path, const Desk& desk) {
    const auto health = store::Store::inspect(path);
    if (!health) {
        return complain(health.error(), desk);
    }
    const bool sound = health->isSound();
    desk.console.say(qstring(health->path) + QStringLiteral(": ") + (sound ? tr("sound") : tr("DAMAGED")) +
                     (health->demonstration ? QStringLiteral(" · ") + tr("demonstration") : QString()));
    desk.console.say(tr("  version %1 · %2 premises · %3 visits · %4 records")
                         .arg(health->schema)
                         .arg(health->premises)
                         .arg(health->visits)
                         .arg(health->records));
    if (health->letGo > 0) {
        desk.console.say(tr("  let go of since their keeping was over, with numbers and digests kept: %1")
                             .arg(health->letGo));
    }
    if (health->integrity != "ok") {
        desk.console.say(tr("  file: %1").arg(qstring(health->integrity)));
    }
    if (!health->chain) {
        desk.console.say(tr("  records: %1").arg(desk.words.error(health->chain.error())));
    }
    if (health->signatures > 0) {
        desk.console.say(tr("  signatures that hold: %1").arg(health->signatures));
    }
    for (const auto& record : health->wrongSignatures) {
        desk.console.say(
            tr("  signatures: that of record %1 does NOT hold over its PDF").arg(qstring(record)));
    }
    if (health->staleDue > 0) {
        desk.console.say(tr("  checks due: %1 premises are listed otherwise than follows from their checks. "
                            "Saying the firm's own interval anew works out all of them.")
                             .arg(health->staleDue));
    }
    for (const auto& record : health->outOfTime) {
        desk.console.say(tr("  clock: by it record %1 was issued before the one ahead of it. The computer's "
                            "clock had been set back; the order of the numbers counts.")
                             .arg(qstring(record)));
    }
    return sound ? Exit::Done : Exit::Trouble;
}

Exit runHealth(const CommandLine& line, const Desk& desk) {
    std::vector<std::filesystem::path> paths;
    for (const auto& word : line.words) {
        paths.push_back(pathFrom(word));
    }
    if (paths.empty()) {
        for (const auto& path : {ownStore(), demonstrationStore()}) {
            if (std::error_code failed; std::filesystem::exists(path, failed)) {
                paths.push_back(path);
            }
        }
    }
    if (paths.empty()) {
        desk.console.complain(tr("There is no store yet in %1.").arg(textOf(dataFolder())));
    }
    Exit worst = Exit::Done;
    for (const auto& path : paths) {
        worst = std::max(worst, sayHealth(path, desk));
    }
    return worst;
}

/// The store's rule book; before there is a store, the one that the program ships with.
Result<rulebook::RuleBook> bookFor(const CommandLine& line, const Desk& desk) {
    std::error_code failed;
    if (!line.store && !line.demonstration && !std::filesystem::exists(storeOf(line), failed) && !failed) {
        desk.console.complain(tr("There is no store yet: these are the values that the program comes with."));
        return rulebook::RuleBook::shipped();
    }
    const auto store = openFor(line, Access::Read, desk);
    return store ? (*store)->ruleBook() : tl::make_unexpected(store.error());
}

Exit runRules(const CommandLine& line, const Desk& desk) {
    const auto book = bookFor(line, desk);
    if (!book) {
        return complain(book.error(), desk);
    }
    const auto shown = line.unconfirmed ? RulesShown::Unconfirmed : RulesShown::All;
    const QString text = rulesText(*book, shown, line.words, desk.words);
    if (text.isEmpty()) {
        desk.console.complain(tr("No such rules."));
    } else {
        desk.console.say(text);
    }
    return Exit::Done;
}

Exit runImportInto(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, line.dryRun ? Access::Read : Access::Write, desk);
    return store ? runImport(line, **store, desk) : complain(store.error(), desk);
}

Exit runExportFrom(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Read, desk);
    return store ? runExport(line, **store, desk) : complain(store.error(), desk);
}

Exit runBlankFrom(const CommandLine& line, const Desk& desk) {
    const auto store = openFor(line, Access::Write, desk);
    return store ? runBlank(line, **store, desk) : complain(store.error(), desk);
}

Exit runDemonstration(const CommandLine& line, const Desk& desk) {
    const auto path = demonstrationStoreIn(pathFrom(*line.into));
    const auto made = makeDemonstration(path);
    if (!made) {
        return complain(made.error(), desk);
    }
    desk.console.say(textOf(path));
    if (*made == Made::WasThere) {
        desk.console.complain(tr("The demonstration was there already and was left as it is."));
    }
    return Exit::Done;
}

}  // namespace

Exit complain(const Error& error, const Desk& desk) {
    desk.console.complain(desk.words.error(error));
    switch (error.code) {
        case ErrorCode::NotFound:
        case ErrorCode::RecordIncomplete:
        case ErrorCode::RecordSuperseded:
        case ErrorCode::RecordErased:
        case ErrorCode::RecordVoid:
        case ErrorCode::ReasonMissing:
        case ErrorCode::SigningKeyMissing:
        case ErrorCode::KeyPassphraseWrong:
        case ErrorCode::LetterMissingInFont:
            return Exit::Refused;
        default:
            return Exit::Trouble;
    }
}

Exit runCommand(const CommandLine& line, const Desk& desk) {
    switch (line.verb) {
        case Verb::Judge:
            return runJudge(line, desk);
        case Verb::Issue:
            return runIssue(line, desk);
        case Verb::Pdf:
            return runPdf(line, desk);
        case Verb::Verify:
            return runVerify(line, desk);
        case Verb::Collect:
            return runCollect(line, desk);
        case Verb::Key:
            return runKey(line, desk);
        case Verb::NewKey:
            return runNewKey(line, desk);
        case Verb::Sign:
            return runSign(line, desk);
        case Verb::Due:
            return runDue(line, desk);
        case Verb::Trace:
            return runTrace(line, desk);
        case Verb::Calendar:
            return runCalendar(line, desk);
        case Verb::Blank:
            return runBlankFrom(line, desk);
        case Verb::Visits:
            return runVisits(line, desk);
        case Verb::Records:
            return runRecords(line, desk);
        case Verb::Rules:
            return runRules(line, desk);
        case Verb::Health:
            return runHealth(line, desk);
        case Verb::BackUp:
            return runBackUp(line, desk);
        case Verb::Restore:
            return runRestore(line, desk);
        case Verb::Import:
            return runImportInto(line, desk);
        case Verb::Export:
            return runExportFrom(line, desk);
        case Verb::MakeFrom:
            return runMakeFrom(line, desk);
        case Verb::Demonstration:
            return runDemonstration(line, desk);
        case Verb::Window:
        case Verb::Help:
        case Verb::Version:
            break;
    }
    Q_UNREACHABLE();
    return Exit::Usage;
}

}  // namespace hearth::app
