// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/place.h"

#include <QString>

#include <optional>
#include <string>

namespace hearth::ui::visit {

struct ChosenTable {
    QString name;
    std::string bytes;
};
/// Asks for a logger's table and reads it; what can't be read is told. Nothing: none was chosen, or read.
[[nodiscard]] std::optional<ChosenTable> chooseTable(const shell::Context& window, QWidget* over);

}  // namespace hearth::ui::visit
