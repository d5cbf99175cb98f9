// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "tests/core/exchange/counting_ids.h"

#include <cstdio>
#include <cstdlib>
#include <set>
#include <string>
#include <string_view>

/// What must hold of any bytes at all that are taken for a spreadsheet. Aborts where it does not: for the
/// fuzzer and for the test that replays its corpus.
namespace hearth::testing {

inline void must(bool holds, const char* what) {
    if (!holds) {
        std::fprintf(stderr, "does not hold: %s\n", what);
        std::abort();
    }
}

/// What is read from what we write is what was written.
inline void importWrittenComesBack(const exchange::CsvTable& table) {
    for (const auto& row : table.rows) {
        std::vector<exchange::CsvCell> cells;
        if (row.cells.front().substr(0, 4) == "sep=") {
            continue;  // alone in a file it says the separator
        }
        for (const auto& cell : row.cells) {
            cells.push_back({cell});
        }
        const auto again = exchange::readCsv(exchange::csvLine(cells), {exchange::Encoding::Utf8, ','});
        if (again.rows.empty()) {
            must(row.cells.size() == 1 && row.cells[0].empty(), "only an empty line is no row");
            continue;
        }
        must(again.rows.size() == 1 && again.rows[0].cells.size() == row.cells.size(), "as many cells");
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            must(exchange::withoutGuard(again.rows[0].cells[i]) == row.cells[i], "the same cell");
        }
    }
}

/// A plan holds together: every id that it names is made by it.
inline void importPlanHolds(const exchange::ImportPlan& plan) {
    std::set<UuidBytes> made;
    for (const auto& party : plan.parties) {
        must(made.insert(party.id.bytes).second, "a party once");
        must(!party.name.empty(), "a party has a name");
    }
    for (const auto& premises : plan.premises) {
        must(made.insert(premises.id.bytes).second, "a premises once");
        must(!premises.address.line1.empty(), "a premises has an address");
    }
    for (const auto& installation : plan.installations) {
        must(made.count(installation.premises.bytes) == 1, "an installation's premises");
        must(made.insert(installation.id.bytes).second, "an installation once");
    }
    for (const auto& role : plan.roles) {
        must(made.count(role.premises.bytes) == 1 && made.count(role.party.bytes) == 1, "a role's two ends");
    }
    for (const auto& appliance : plan.appliances) {
        must(made.count(appliance.installation.bytes) == 1, "an appliance's installation");
    }
    for (const auto& check : plan.checks) {
        must(made.count(check.visit.installation.bytes) == 1 && check.visit.date.ok(),
             "a check's installation");
    }
    for (const auto& row : plan.rows) {
        for (const auto problem : row.problems) {
            must(problem < plan.problems.size() && plan.problems[problem].line == row.line,
                 "a row's problem");
        }
    }
}

/// The first byte chooses what a person could choose; the rest is the file.
inline void importOneInput(std::string_view bytes) {
    const unsigned choice = bytes.empty() ? 0U : static_cast<unsigned char>(bytes.front());
    bytes.remove_prefix(bytes.empty() ? 0 : 1);
    exchange::CsvForm form;
    if ((choice & 1U) != 0) {
        form.encoding = static_cast<exchange::Encoding>(choice / 2U % 4U);
    }
    const auto table = exchange::readCsv(bytes, form);
    importWrittenComesBack(table);
    exchange::ImportChoices choices;
    choices.columns = exchange::guessColumns(table);
    choices.form.today =
        calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};
    choices.duplicates = static_cast<exchange::DuplicateChoice>(choice / 8U % 3U);
    if ((choice & 32U) != 0) {
        for (const auto& row : table.rows) {
            choices.rows[row.line] = exchange::RowChoice::Take;
        }
    }
    importPlanHolds(exchange::planImport(table, choices, {}, countingIds()));
}

}  // namespace hearth::testing
