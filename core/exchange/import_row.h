// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_columns.h"
#include "core/exchange/import_dates.h"
#include "core/exchange/import_problem.h"
#include "core/register/appliance.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace hearth::exchange {

/// How rows are read, beside the columns.
struct RowForm {
    reg::Country country = reg::Country::England;  // where the row names none
    rulebook::Gas gas = rulebook::Gas::NaturalGas;
    calendar::Date today{};
    std::map<std::size_t, DateOrder> dateOrders;  // by column; day first for others
};

struct RowParty {
    reg::RoleKind role = reg::RoleKind{};
    reg::Party party;  // without an id
};

/// What one row says, with what is doubtful about it. Ids are not set yet.
struct RowContent {
    int line = 0;
    reg::Premises premises;
    reg::Installation installation;
    bool saysInstallation = false;  // something of it stands in the row
    bool saysGas = false;
    std::vector<RowParty> parties;
    std::vector<reg::Appliance> appliances;
    std::optional<calendar::Date> lastCheck;
    std::vector<ProblemAt> problems;
};

/// Nothing for a row in which every column that is taken is empty.
[[nodiscard]] std::optional<RowContent> readImportRow(const CsvRow& row, const CsvRow& headings,
                                                      const ImportColumns& columns, const RowForm& form);

/// The choice code of an appliance's kind that a word of a spreadsheet surely means ("gas fire"); nothing
/// where it leaves open what matters ("boiler": condensing or not).
[[nodiscard]] std::optional<std::string> applianceKindCalled(std::string_view text);

}  // namespace hearth::exchange
