// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/store.h"

#include <QString>
#include <QStringList>

/// What the files of records are called: by the firm's pattern, with nothing in the name that a file system
/// of today refuses.
namespace hearth::ui::shell {

struct FileNameParts {
    QString number;
    int revision = 1;
    QString date;  // ISO day of issue
    QString premises;
    QString customer;
    QString reference;  // the customer's, of the visit
};

/// "{number}", "{revision}" …
[[nodiscard]] QStringList filePlaceholders();
[[nodiscard]] QString usualFilePattern();
/// The name with its ".pdf". {revision} is "r2", and nothing for the first.
[[nodiscard]] QString fileNameBy(const QString& pattern, const FileNameParts& parts);
/// Errors: PatternUnknown for a placeholder that is none, or without {number}, by which a file is told from
/// others.
[[nodiscard]] Result<void> checkFilePattern(const QString& pattern);

/// The store's setting that holds the pattern; empty: the usual one.
inline constexpr const char* kFilePatternSetting = "records.file_pattern";
/// By the firm's pattern.
[[nodiscard]] QString recordFileName(const store::Store& store, const store::RecordLine& line);
/// The civil day on which a record was issued, where the firm works; empty for what is no instant.
[[nodiscard]] QString isoDayOf(const std::string& issuedAt);

}  // namespace hearth::ui::shell
