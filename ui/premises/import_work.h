// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <QString>

#include <string>

namespace hearth::ui::premises {

/// A spreadsheet on its way into the store: what was read, chosen and planned.
struct ImportWork {
    QString path;
    QString name;  // of the file
    std::string bytes;
    exchange::CsvForm form;  // what is not left to guessing
    exchange::CsvTable table;
    exchange::ImportChoices choices;
    exchange::ImportPlan plan;
};

}  // namespace hearth::ui::premises
