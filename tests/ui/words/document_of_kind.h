// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/record/sample_kinds.h"
#include "ui/words/document_words.h"

namespace hearth::testing {

/// The document of a visit by the shipped rule book, issued on the day of the visit.
[[nodiscard]] inline record::Document documentOfKind(record::RecordKind kind, const reg::VisitFile& file,
                                                     const QString& language = QStringLiteral("en")) {
    const auto book = rulebook::RuleBook::shipped();
    const auto findings = judging::judge(file, book);
    const auto volume = judging::volumeOf(file, book);
    return ui::words::documentFor({kind, file, findings, volume, file.visit.date},
                                  ui::words::Words(language));
}

}  // namespace hearth::testing
