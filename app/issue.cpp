// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/issue.h"

#include "core/store/firm_logo.h"
#include "core/store/record_pictures.h"
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
Result<QString> replaces(const store::Store& store, store::RecordId id, const QString& reason,
                         const Words& words) {
    const auto old = store.record(id);
    if (!old) {
        return tl::unexpected(old.error());
    }
    return words.say(
        QT_TRANSLATE_NOOP("Words", "Replaces revision %1 of %2: %3"),
        {QString::number(old->line.header.revision), ui::words::qstring(old->line.header.record), reason});
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
    const auto possible = record::kindsOf(judged.file);
    judged.kind = kind ? *kind : possible.empty() ? judged.kind : possible.front();
    judged.outcome = record::outcomeOf(judged.kind, judged.file, judged.findings);
    judged.missing = record::missingFor(judged.kind, judged.file, judged.findings);
    return judged;
}

Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock, record::RecordKind kind,
                                    reg::VisitId visit, std::optional<store::RecordId> supersedes,
                                    const QString& reason) {
    auto judged = judgeVisit(store, visit, kind);
    if (!judged) {
        return tl::unexpected(judged.error());
    }
    if (!judged->missing.empty()) {
        return fail(ErrorCode::RecordIncomplete, codesOf(judged->missing));
    }
    auto logo = store::logoOf(store, judged->file.firm);
    if (!logo) {
        return tl::unexpected(logo.error());
    }
    auto pictures = store::picturesOf(store, judged->file);
    if (!pictures) {
        return tl::unexpected(pictures.error());
    }
    const Words words(ui::words::qstring(judged->file.firm.language));
    store::IssueRequest request;
    request.kind = kind;
    request.outcome = judged->outcome;
    request.supersedes = supersedes;
    request.reason = reason.toStdString();
    const ui::words::DocumentInput input{kind,          judged->file,     judged->findings,    judged->volume,
                                         clock.today(), std::move(*logo), std::move(*pictures)};
    if (const auto fault = ui::words::letterFault(input, words); !fault) {
        return tl::unexpected(fault.error());
    }
    request.snapshot.document = ui::words::documentFor(input, words);
    request.snapshot.document.paper = ui::shell::firmsPaper(store);
    if (supersedes) {
        const auto line = replaces(store, *supersedes, reason, words);
        if (!line) {
            return tl::unexpected(line.error());
        }
        request.snapshot.document.supersedes = line->toStdString();
    }
    request.snapshot.file = std::move(judged->file);
    request.snapshot.findings = std::move(judged->findings);
    return store.issue(request, rendered);
}

Result<store::RecordId> issueRecord(store::Store& store, const Clock& clock, reg::VisitId visit,
                                    std::optional<store::RecordId> supersedes, const QString& reason) {
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
    return issueRecord(store, clock, *kind, visit, supersedes, reason);
}

ui::shell::Issue issueThrough(store::Store& store, const Clock& clock) {
    return ui::shell::Issue([&store, &clock](reg::VisitId visit, std::optional<store::RecordId> supersedes,
                                             const QString& reason, std::optional<record::RecordKind> kind) {
        return kind ? issueRecord(store, clock, *kind, visit, supersedes, reason)
                    : issueRecord(store, clock, visit, supersedes, reason);
    });
}

}  // namespace hearth::app
