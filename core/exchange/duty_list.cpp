// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/duty_list.h"

#include "core/exchange/csv.h"

#include <nlohmann/json.hpp>
#include <utility>

namespace hearth::exchange {
namespace {

/// Each column once, in order: CSV and JSON can't differ.
std::vector<std::pair<const char*, std::string>> dutyCells(const DutyRow& row) {
    const auto iso = [](const std::optional<calendar::Date>& date) {
        return date ? calendar::isoText(*date) : std::string();
    };
    return {{"duty", std::string(calendar::codeOf(row.kind))},
            {"state", row.overdue ? "overdue" : "open"},
            {"by", iso(row.by)},
            {"counts_from", iso(row.from)},
            {"what", row.what},
            {"which", row.which},
            {"line1", row.line1},
            {"line2", row.line2},
            {"town", row.town},
            {"postcode", row.postcode},
            {"source", std::string(calendar::sourceOf(row.kind))}};
}

}  // namespace

std::string dutyCsv(const std::vector<DutyRow>& rows) {
    std::vector<CsvCell> headings;
    for (const auto& [code, cell] : dutyCells({})) {
        headings.push_back({code});
    }
    std::string file = csvLine(headings);
    for (const auto& row : rows) {
        std::vector<CsvCell> cells;
        for (const auto& [code, cell] : dutyCells(row)) {
            cells.push_back({cell});
        }
        file += csvLine(cells);
    }
    return file;
}

std::string dutyJson(const std::vector<DutyRow>& rows) {
    auto all = nlohmann::ordered_json::array();
    for (const auto& row : rows) {
        nlohmann::ordered_json object;
        for (const auto& [code, cell] : dutyCells(row)) {
            if (cell.empty()) {
                object[code] = nullptr;
            } else {
                object[code] = cell;
            }
        }
        all.push_back(std::move(object));
    }
    constexpr int kIndent = 2;
    return all.dump(kIndent) + "\n";
}

}  // namespace hearth::exchange
