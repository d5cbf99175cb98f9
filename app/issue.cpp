// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/issue.h"

#include "core/record/language.h"
#include "core/record/pairing.h"
#include "core/store/firm_logo.h"
#include "core/store/record_pictures.h"
#include "core/store/record_traces.h"
#include "ui/paper/paper.h"
#include "ui/shell/paper_choice.h"
#include "ui/words/document_words.h"
#include "ui/words/words.h"

#include <utility>

namespace hearth::app {
namespace {

using ui::words::Words;

/// The codes that an Error carries; the caller that has the visit at hand words them better.
std::vector<std::string> codesOf(const std::vector<record::Missing>& missing) {
    std::vector<std::string> codes;
    for (const auto& one : missing) {
        codes.emplace_back(one.item ? reg::infoOf(*one.item).code : record::fieldCode(*one.field));
    }
    return codes;
}

Result<std::string> rendered(const record::Document& document, const std::string& digest) {
    ui::paper::PageOptions options;
    options.digest = digest;
    return ui::paper::toPdf(document, options).map([](const QByteArray& pdf) { return pdf.toStdString(); });
}

/// The line that a revision is printed with.
std::string replaces(const store::IssuedRecord& old, const QString& reason, const Words& words) {
    return words
        .say(QT_TRANSLATE_NOOP("Words", "Replaces revision %1 of %2: %3"),
             {QString::number(old.line.header.revision), ui::words::qstring(old.line.header.record), reason})
        .toStdString();
}

/// The record that a revision takes the place of.
Result<std::optional<store::IssuedRecord>> supersededBy(const store::Store& store,
                                                        std::optional<store::RecordId> id) {
    if (!id) {
        return std::nullopt;
    }
    return store.record(*id).map([](store::IssuedRecord record) { return std::optional(std::move(record)); });
}

/// The language asked for; else that of the record that is superseded; else what whoever receives it prefers.
QString languageOf(const QString& asked, const std::optional<store::IssuedRecord>& old,
                   record::RecordKind kind, const reg::VisitFile& file) {
    if (!asked.isEmpty()) {
        return asked;
    }
    const bool goesOn = old && record::isRecordLanguage(old->document.language);
    return ui::words::qstring(goesOn ? old->document.language : record::languageFor(kind, file));
}

/// What gauges saw of the visit's tests. A simulation is refused here already, before anything is worded.
Result<std::vector<judging::TraceSeen>> tracesFor(const store::Store& store, const reg::VisitFile& file,
                                                  const rulebook::RuleBook& book) {
    for (const auto& trace : file.traces) {
        if (trace.source.isSimulated) {
            return fail(ErrorCode::TraceSimulated, {trace.source.name});
        }
    }
    return store::tracesOf(store, file, book);
}

/// What a document shows beside what the visit's file says.
struct RecordShown {
    std::optional<record::Logo> logo;
    std::vector<record::PictureOf> pictures;
    std::vector<judging::TraceSeen> traces;
    std::vector<record::RoomTrace> roomTraces;
    judging::LeakHunt hunt;
    std::vector<record::CheckHistory> checks;
};
Result<RecordShown> shownIn(const store::Store& store, const reg::VisitFile& file) {
    auto logo = store::logoOf(store, file.firm);
    if (!logo) {
        return tl::unexpected(logo.error());
    }
    auto pictures = store::picturesOf(store, file);
    if (!pictures) {
        return tl::unexpected(pictures.error());
    }
    const auto book = store.ruleBook();
    if (!book) {
        return tl::unexpected(book.error());
    }
    auto traces = tracesFor(store, file, *book);
    if (!traces) {
        return tl::unexpected(traces.error());
    }
    auto roomTraces = store::roomTracesOf(store, file);
    if (!roomTraces) {
        return tl::unexpected(roomTraces.error());
    }
    auto checks = store.checksBefore(file.visit.id);
    if (!checks) {
        return tl::unexpected(checks.error());
    }
    auto hunt = judging::huntLeak(file, *book, *traces);
    return RecordShown{std::move(*logo),       std::move(*pictures), std::move(*traces),
                       std::move(*roomTraces), std::move(hunt),      std::move(*checks)};
}

/// What keeps the text from being written, in either language.
Result<void> letterFault(const ui::words::DocumentInput& input, const QString& language) {
    const auto fault = ui::words::letterFault(input, Words(language));
    const auto beside = record::languageBeside(language.toStdString());
    return fault && !beside.empty()
               ? ui::words::letterFault(input, Words::beside(ui::words::qstring(std::string(beside))))
               : fault;
}

}  // namespace

Result<JudgedVisit> judgeVisit(const store::Store& store, reg::VisitId visit,
                               std::optional<record::RecordKind> kind) {
    auto file = store.visitFile(visit);
    if (!file) {
        return tl::unexpected(file.error());
    }
    const auto book = store.ruleBook();
    if (!book) {
        return tl::unexpected(book.error());
    }
    JudgedVisit judged;
    judged.file = std::move(*file);
    judged.findings = judging::judge(judged.file, *book);
    judged.volume = judging::volumeOf(judged.file, *book);
    judged.pipes = judging::visitPipes(judged.file, *book);
    const auto possible = record::kindsOf(judged.file);
    judged.kind = kind ? *kind : possible.empty() ? judged.kind : possible.front();
    judged.outcome = record::outcomeOf(judged.kind, judged.file, judged.findings);
    judged.missing = record::missingFor(judged.kind, judged.file, judged.findings);
    return judged;
}

Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock, record::RecordKind kind,
                                    reg::VisitId visit, std::optional<store::RecordId> supersedes,
                                    const QString& reason, const QString& language) {
    auto judged = judgeVisit(store, visit, kind);
    if (!judged) {
        return tl::unexpected(judged.error());
    }
    if (!judged->missing.empty()) {
        return fail(ErrorCode::RecordIncomplete, codesOf(judged->missing));
    }
    auto shown = shownIn(store, judged->file);
    if (!shown) {
        return tl::unexpected(shown.error());
    }
    auto old = supersededBy(store, supersedes);
    if (!old) {
        return tl::unexpected(old.error());
    }
    store::IssueRequest request;
    request.kind = kind;
    request.outcome = judged->outcome;
    request.supersedes = supersedes;
    request.reason = reason.toStdString();
    const ui::words::DocumentInput input{kind,
                                         judged->file,
                                         judged->findings,
                                         judged->volume,
                                         clock.today(),
                                         std::move(shown->logo),
                                         std::move(shown->pictures),
                                         &judged->pipes,
                                         {},
                                         std::move(shown->traces),
                                         std::move(shown->hunt),
                                         std::move(shown->checks),
                                         std::move(shown->roomTraces)};
    const QString spoken = languageOf(language, *old, kind, judged->file);
    if (const auto fault = letterFault(input, spoken); !fault) {
        return tl::unexpected(fault.error());
    }
    request.snapshot.document = ui::words::documentIn(spoken, [&](const Words& words) {
        auto document = ui::words::documentFor(input, words);
        if (*old) {
            document.supersedes = replaces(**old, reason, words);
        }
        return document;
    });
    request.snapshot.document.paper = ui::shell::firmsPaper(store);
    request.snapshot.file = std::move(judged->file);
    request.snapshot.findings = std::move(judged->findings);
    return store.issue(request, rendered);
}

Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock, reg::VisitId visit,
                                    std::optional<store::RecordId> supersedes, const QString& reason,
                                    const QString& language) {
    std::optional<record::RecordKind> kind;
    if (supersedes) {
        const auto old = store.record(*supersedes);
        if (!old) {
            return tl::unexpected(old.error());
        }
        kind = record::kindFromCode(old->line.header.kind);
    }
    if (!kind) {
        const auto judged = judgeVisit(store, visit);
        if (!judged) {
            return tl::unexpected(judged.error());
        }
        kind = judged->kind;
    }
    return issueRecord(store, clock, *kind, visit, supersedes, reason, language);
}

ui::shell::Issue issueThrough(store::Store& store, const Clock& clock) {
    return ui::shell::Issue([&store, &clock](reg::VisitId visit, std::optional<store::RecordId> supersedes,
                                             const QString& reason, std::optional<record::RecordKind> kind,
                                             const QString& language) {
        return kind ? issueRecord(store, clock, *kind, visit, supersedes, reason, language)
                    : issueRecord(store, clock, visit, supersedes, reason, language);
    });
}

}  // namespace hearth::app
