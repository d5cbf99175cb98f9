// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/due_list.h"

#include "core/exchange/csv.h"

#include <nlohmann/json.hpp>
#include <utility>

namespace hearth::exchange {
namespace {

std::string isoOrNothing(const std::optional<calendar::Date>& date) {
    return date ? calendar::isoText(*date) : std::string();
}

/// Each column once, in order: CSV and JSON can't differ.
std::vector<std::pair<const char*, CsvCell>> dueCells(const DueRow& row) {
    const auto number = [](int value) { return CsvCell{std::to_string(value), CsvCell::Kind::Number}; };
    const auto text = [](std::string value) { return CsvCell{std::move(value)}; };
    return {{"state", text(std::string(calendar::codeOf(row.state)))},
            {"deadline", text(isoOrNothing(row.deadline))},
            {"deadline_at_latest", text(isoOrNothing(row.latest))},
            {"window_opens", text(isoOrNothing(row.opens))},
            {"last_check", text(isoOrNothing(row.lastCheck))},
            {"booked", text(isoOrNothing(row.booked))},
            {"time", text(row.time)},
            {"engineer", text(row.engineer)},
            {"line1", text(row.line1)},
            {"line2", text(row.line2)},
            {"town", text(row.town)},
            {"postcode", text(row.postcode)},
            {"landlord", text(row.landlord)},
            {"agent", text(row.agent)},
            {"appliance_kind", text(row.applianceKind)},
            {"appliance_place", text(row.appliancePlace)},
            {"letters", number(row.letters)},
            {"attempts", number(row.attempts)}};
}

}  // namespace

std::string dueCsv(const std::vector<DueRow>& rows) {
    std::vector<CsvCell> headings;
    for (const auto& [code, cell] : dueCells({})) {
        headings.push_back({code});
    }
    std::string file = csvLine(headings);
    for (const auto& row : rows) {
        std::vector<CsvCell> cells;
        for (const auto& [code, cell] : dueCells(row)) {
            cells.push_back(cell);
        }
        file += csvLine(cells);
    }
    return file;
}

std::string dueJson(const std::vector<DueRow>& rows) {
    auto all = nlohmann::ordered_json::array();
    for (const auto& row : rows) {
        nlohmann::ordered_json object;
        for (const auto& [code, cell] : dueCells(row)) {
            if (cell.kind == CsvCell::Kind::Number) {
                object[code] = std::stoi(cell.text);
            } else if (cell.text.empty()) {
                object[code] = nullptr;
            } else {
                object[code] = cell.text;
            }
        }
        all.push_back(std::move(object));
    }
    constexpr int kIndent = 2;
    return all.dump(kIndent) + "\n";
}

}  // namespace hearth::exchange
