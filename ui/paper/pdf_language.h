// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

namespace hearth::ui::paper {

/// Writes the document's language into a PDF as QPdfWriter made it, which can't say one itself: a reader's
/// voice goes by it. One entry in the catalogue, and the cross-references moved by its length: reading and
/// writing the whole file anew would take longer than making it. False, and nothing changed, where the file
/// is not built as expected. Source: ISO 32000-1 (PDF 1.7), 7.5.4, 7.5.5, table 28 ("Lang"), 14.9.2; ISO
/// 19005-1, 6.8.4.
[[nodiscard]] bool nameLanguage(QByteArray& pdf, const QByteArray& language);

}  // namespace hearth::ui::paper
