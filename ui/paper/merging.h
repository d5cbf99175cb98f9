// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/pdf_stream.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Many PDFs as one, each page as it was issued, with a bookmark for each. Read by libqpdf, since QPdfWriter
/// reads no PDF and writes no bookmarks; written part by part, so that a thousand take no more memory than
/// one.
namespace hearth::ui::paper {

/// Where another document begins within a part.
struct PageBookmark {
    int page = 0;  // of the part, from 0
    std::string title;
};
struct PdfPart {
    std::string bookmark;  // UTF-8
    std::string pdf;
    std::vector<PageBookmark> more =
        {};  // of a part that holds several, in rising order, after the first page
};
/// The next one; nothing at the end. An error ends the merging.
using NextPdf = std::function<Result<std::optional<PdfPart>>()>;

struct MergedHead {
    std::string title;     // UTF-8, of the whole
    std::string language;  // "en"
};

/// Writes the whole into the sink. It is PDF/A-1b where every part is. The same parts give the same bytes.
/// Errors: those of `next` and of the sink; PdfNotWritten with the bookmark of a part that can't be read as a
/// PDF, or without any part. After an error what the sink got is nothing worth keeping.
[[nodiscard]] Result<void> mergePdfs(const MergedHead& head, const NextPdf& next, const PdfSink& sink);

}  // namespace hearth::ui::paper
