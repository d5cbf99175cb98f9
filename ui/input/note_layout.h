// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/judging/judge.h"
#include "ui/look/look.h"
#include "ui/words/words.h"

#include <QFont>
#include <QList>
#include <QRectF>
#include <QString>

#include <optional>

/// Where the parts of a finding's note stand, for one width: measured and painted from the same plan.
namespace hearth::ui::input {

struct NoteText {
    QRectF box;
    QString text;
    QFont font;
    look::Role role = look::Role::Ink;
    bool isRight = false;
};

/// Measured against limit on a line; all in shares (0 to 1) of the bar's length.
struct NoteBar {
    QRectF box;
    double from = 0;  // filled from here (zero, or the least of a range's scale)
    double to = 0;    // to the measured value
    QList<double> limits;
};

struct NotePlan {
    QRectF shape;
    QList<NoteText> texts;
    std::optional<NoteBar> bar;
    QRectF sourceLine;  // clicking here opens the source
    /// While it is open: where each limit stands. Clicking there goes to the rule book.
    QList<QRectF> rules;
    double height = 0;
};

[[nodiscard]] NotePlan planNote(const judging::Judged& judged, const words::Words& words, bool isSourceOpen,
                                double width);
/// The bar of a finding that measures something against a figure or a range in the same unit; nothing for any
/// other.
[[nodiscard]] std::optional<NoteBar> barOf(const rulebook::Finding& finding);
/// Whether a limit has a page in the rule book: a maker's figure has none.
[[nodiscard]] bool isInRuleBook(const rulebook::Entry& entry);
/// "Let-by: pass"
[[nodiscard]] QString noteTitle(const rulebook::Finding& finding, const words::Words& words);

}  // namespace hearth::ui::input
