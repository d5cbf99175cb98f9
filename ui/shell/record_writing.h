// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"
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
};

/// As one PDF with a bookmark for each. Stopped: nothing is written. Errors: those of Store::record(),
/// PdfNotWritten, FileUnwritable.
[[nodiscard]] Result<RecordsWritten> writeAsOne(store::Store& store,
                                                const std::vector<store::RecordLine>& lines,
                                                const QString& path, const words::Words& words,
                                                const WritingProgress& progress);

/// As files by the firm's pattern, each with its signature beside it where it has one. What was written
/// before it was stopped or failed stays. Errors: those of Store::record(); FileUnwritable, also for a name
/// that another file has already.
[[nodiscard]] Result<RecordsWritten> writeAsFiles(store::Store& store,
                                                  const std::vector<store::RecordLine>& lines,
                                                  const QString& folder, const WritingProgress& progress);

}  // namespace hearth::ui::shell
