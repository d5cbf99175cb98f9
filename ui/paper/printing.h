// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paper/paper.h"

#include <functional>
#include <memory>

class QPrinter;

namespace hearth::ui::paper {

/// Asks the person how to print; false: they would rather not. May change whatever it likes on the printer.
using AskHowToPrint = std::function<bool(QPrinter&)>;

/// What systemPrinting() is made of, with the dialog handed in.
[[nodiscard]] std::unique_ptr<Printing> printingThatAsks(AskHowToPrint ask);

}  // namespace hearth::ui::paper
