// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
#include "ui/paper/paper.h"
#include "ui/words/words.h"

#include <QString>

#include <functional>
#include <vector>

/// Many records at once, as they were issued: the road that the records place and the command line share.
namespace hearth::ui::shell {

/// Told before each record; false: stop.
using WritingProgress = std::function<bool(int done, int all)>;

struct RecordsWritten {
    int records = 0;
    bool stopped = false;
    std::optional<Error> failure = {};  // of the record after those
};

/// As one PDF with a bookmark for each. Stopped: nothing is written. Errors: those of Store::record(),
/// PdfNotWritten, FileUnwritable.
[[nodiscard]] Result<RecordsWritten> writeAsOne(store::Store& store,
                                                const std::vector<store::RecordLine>& lines,
                                                const QString& path, const words::Words& words,
                                                const WritingProgress& progress);

/// As files by the firm's pattern, each with its signature beside it where it has one. What was written
/// before it was stopped or failed stays. Failures: those of Store::record(); FileUnwritable, also for a name
/// that another file has already. Error: what was written could not be noted.
[[nodiscard]] Result<RecordsWritten> writeAsFiles(store::Store& store,
                                                  const std::vector<store::RecordLine>& lines,
                                                  const QString& folder, const WritingProgress& progress);

/// As one print job, the first to the last. Stopped or failed: the records before that are printed, each
/// whole, and noted; nothing of the others is. Not wanted in the printer's dialog: stopped, with none.
/// Failures: those of Store::record() and of paper::Printing. Error: what was printed could not be noted.
[[nodiscard]] Result<RecordsWritten> printAsOneJob(store::Store& store,
                                                   const std::vector<store::RecordLine>& lines,
                                                   paper::Printing& printing,
                                                   const WritingProgress& progress);

/// What stands across a print of it today.
[[nodiscard]] paper::Stamp stampOf(const store::RecordLine& line);

}  // namespace hearth::ui::shell
