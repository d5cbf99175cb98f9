// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/paper.h"

#include <functional>
#include <memory>

class QPrinter;

namespace hearth::ui::paper {

/// A page on a sheet of another size: in the middle, and smaller where it would not fit. Millimetres.
struct Fit {
    double scale = 1;
    QPointF at;
};
[[nodiscard]] Fit fitOn(const QSizeF& page, const QSizeF& sheet);

enum class Pages { MayChoose, All };
/// Asks the person how to print; false: they would rather not. May change whatever it likes on the printer:
/// its paper is what `sheet` says afterwards.
using AskHowToPrint = std::function<bool(QPrinter&, PaperSize& sheet, Pages)>;

/// What systemPrinting() is made of, with the dialog handed in.
[[nodiscard]] std::unique_ptr<Printing> printingThatAsks(AskHowToPrint ask);

}  // namespace hearth::ui::paper
