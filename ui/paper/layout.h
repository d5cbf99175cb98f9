// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/page.h"
#include "ui/paper/paper.h"

#include <vector>

namespace hearth::ui::paper {

struct LaidOut {
    QSizeF size;  // of a page, millimetres
    std::vector<Page> pages;
    QString missingLetters;
};

/// A document placed on pages; what Layout holds, open to the folder's own files and tests.
[[nodiscard]] LaidOut layOut(const record::Document& document, const PageOptions& options);

/// Paints one page; the painter's unit is a millimetre. Paper is white whatever the window's scheme; a plot
/// that stands in the window is painted in its scheme.
void paintPage(QPainter& painter, const Page& page, look::Scheme scheme = look::Scheme::Light);

}  // namespace hearth::ui::paper
