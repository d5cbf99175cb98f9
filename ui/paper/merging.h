// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <functional>
#include <optional>
#include <string>

/// Many PDFs as one, each page as it was issued, with a bookmark for each. By libqpdf, since QPdfWriter
/// writes no bookmarks and reads no PDF.
namespace hearth::ui::paper {

struct PdfPart {
    std::string bookmark;  // UTF-8
    std::string pdf;
};
/// The next one; nothing at the end. An error ends the merging.
using NextPdf = std::function<Result<std::optional<PdfPart>>()>;

struct MergedHead {
    std::string title;     // UTF-8, of the whole
    std::string language;  // "en"
};

/// The bytes of the whole. The same parts give the same bytes. Errors: those of `next`; PdfNotWritten with
/// the bookmark of a part that can't be read as a PDF, or without any part.
[[nodiscard]] Result<std::string> mergePdfs(const MergedHead& head, const NextPdf& next);

}  // namespace hearth::ui::paper
