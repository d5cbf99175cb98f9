// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

/// Other people's programs that look at our PDFs. A test that needs one fails where it is missing; it never
/// skips.
namespace hearth::testing {

struct Ran {
    bool started = false;
    int exitCode = -1;
    QByteArray out;
    QByteArray err;
};
[[nodiscard]] Ran run(const QString& program, const QStringList& arguments);

/// What PDFBox Preflight says of the file ("... is a valid PDF/A-1b file", or the faults).
[[nodiscard]] QString preflight(const QString& path);

/// The same of every file in a folder, in one go: the validator takes longer to start than to read.
[[nodiscard]] QString preflightAll(const QString& folder);

/// Text of one page (from 1) in the order of painting; all pages where page is 0.
[[nodiscard]] QString pdfText(const QString& path, int page = 0);

/// A PDF without what may differ between two of one record: dates and identifiers, which PDF/A demands.
[[nodiscard]] QByteArray withoutTimes(const QByteArray& pdf);

}  // namespace hearth::testing
