// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/record_writing.h"

#include "ui/paper/merging.h"
#include "ui/shell/file_pattern.h"
#include "ui/shell/paper_choice.h"
#include "ui/shell/saving.h"
#include "ui/words/proof_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

namespace hearth::ui::shell {
namespace {

using Lines = std::vector<store::RecordLine>;

/// How the first `count` went out, noted in one transaction: one by one each would cost the disk several
/// syncs. `details`: of each its own, or one of all.
Result<void> noteAll(store::Store& store, const Lines& lines, std::size_t count, record::SentBy how,
                     const std::vector<QString>& details) {
    if (store.isReadOnly() || count == 0) {
        return {};
    }
    return store.together([&]() -> Result<void> {
        for (std::size_t i = 0; i < count; ++i) {
            const std::string detail =
                details.empty() ? std::string() : details[std::min(i, details.size() - 1)].toStdString();
            if (auto noted = store.noteSending(lines[i].id, {how, {}, detail, {}, {}}); !noted) {
                return noted;
            }
        }
        return {};
    });
}

Result<void> writeOne(const QString& path, const std::string& bytes) {
    QFile file(path);
    if (!file.exists()) {
        return writeFile(path, bytes);
    }
    if (file.open(QIODevice::ReadOnly) && file.readAll().toStdString() == bytes) {
        return {};
    }
    return fail(ErrorCode::FileUnwritable,
                {path.toStdString(),
                 QCoreApplication::translate("RecordWriting", "another file has that name").toStdString()});
}

Result<QString> writeRecord(const store::Store& store, const store::RecordLine& line, const QString& folder) {
    const auto record = store.record(line.id);
    const auto signature = store.signatureOf(line.id);
    if (!record || !signature) {
        return tl::unexpected<Error>(record ? signature.error() : record.error());
    }
    const QString path = QDir(folder).filePath(recordFileName(store, line));
    auto written = writeOne(path, record->pdf);
    if (written && *signature) {
        written = writeOne(path + QStringLiteral(".sig"), (*signature)->bytes);
    }
    return written ? Result<QString>(path) : Result<QString>(tl::unexpected<Error>(written.error()));
}

std::string bookmarkOf(const store::RecordLine& line, const words::Words& words) {
    return (words::recordName(words, {line.header.record, line.header.revision}) + QStringLiteral(" · ") +
            words::qstring(line.address))
        .toStdString();
}

}  // namespace

Result<RecordsWritten> writeAsOne(store::Store& store, const Lines& lines, const QString& path,
                                  const words::Words& words, const WritingProgress& progress) {
    RecordsWritten written;
    std::size_t at = 0;
    const int all = static_cast<int>(lines.size());
    const auto next = [&]() -> Result<std::optional<paper::PdfPart>> {
        if (at == lines.size()) {
            return std::nullopt;
        }
        if (!progress(static_cast<int>(at), all)) {
            written.stopped = true;
            return fail(ErrorCode::ImportStopped);
        }
        const auto& line = lines[at++];
        auto record = store.record(line.id);
        if (!record) {
            return tl::unexpected<Error>(record.error());
        }
        return paper::PdfPart{bookmarkOf(line, words), std::move(record->pdf)};
    };
    const QString title = QCoreApplication::translate("RecordWriting", "Records");
    const paper::MergedHead head{title.toStdString(), words.language().left(2).toStdString()};
    const auto saved =
        writeFile(path, [&](const FileSink& sink) { return paper::mergePdfs(head, next, sink); });
    if (written.stopped) {
        return written;
    }
    if (!saved) {
        return tl::unexpected<Error>(saved.error());
    }
    if (const auto noted = noteAll(store, lines, lines.size(), record::SentBy::File, {path}); !noted) {
        return tl::unexpected<Error>(noted.error());
    }
    written.records = all;
    return written;
}

Result<RecordsWritten> writeAsFiles(store::Store& store, const Lines& lines, const QString& folder,
                                    const WritingProgress& progress) {
    RecordsWritten written;
    std::vector<QString> paths;
    for (const auto& line : lines) {
        if (!progress(written.records, static_cast<int>(lines.size()))) {
            written.stopped = true;
            break;
        }
        const auto path = writeRecord(store, line, folder);
        if (!path) {
            written.failure = path.error();
            break;
        }
        paths.push_back(*path);
        ++written.records;
    }
    if (const auto noted = noteAll(store, lines, paths.size(), record::SentBy::File, paths); !noted) {
        return tl::unexpected<Error>(noted.error());
    }
    return written;
}

Result<RecordsWritten> printAsOneJob(store::Store& store, const Lines& lines, paper::Printing& printing,
                                     const WritingProgress& progress) {
    RecordsWritten written;
    std::size_t at = 0;
    const auto next = [&]() -> Result<std::optional<paper::PrintPart>> {
        if (at == lines.size()) {
            return std::nullopt;
        }
        if (!progress(static_cast<int>(at), static_cast<int>(lines.size()))) {
            written.stopped = true;
            return std::nullopt;
        }
        auto record = store.record(lines[at++].id);
        if (!record) {
            return tl::unexpected<Error>(record.error());
        }
        paper::PageOptions options;
        options.digest = record->line.header.snapshotDigest;
        options.stamp = stampOf(record->line);
        return paper::PrintPart{std::move(record->document), options};
    };
    const auto name = QCoreApplication::translate("RecordWriting", "Records");
    const auto printed = printing.printMany({name, firmsPaper(store), next});
    written.records = printed.parts;
    written.stopped = written.stopped || !printed.wanted;
    written.failure = printed.failure;
    if (const auto noted =
            noteAll(store, lines, static_cast<std::size_t>(printed.parts), record::SentBy::Printed, {});
        !noted) {
        return tl::unexpected<Error>(noted.error());
    }
    return written;
}

paper::Stamp stampOf(const store::RecordLine& line) {
    return line.voided         ? paper::Stamp::Void
           : line.supersededBy ? paper::Stamp::Superseded
                               : paper::Stamp::None;
}

}  // namespace hearth::ui::shell
