// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/belonging.h"

#include <array>

namespace hearth::store {
namespace {

std::optional<UuidBytes> linkIn(const Table& table, const Cells& row, std::string_view column) {
    const auto* link = table.has(column) ? std::get_if<UuidBytes>(&row[table.indexOf(column)]) : nullptr;
    return link != nullptr ? std::optional<UuidBytes>(*link) : std::nullopt;
}

/// The premises of a row that is known by table and key only.
std::optional<UuidBytes> premisesOfKnown(const Connection& db, const std::string& name, const UuidBytes& id) {
    const Table* table = tableNamed(name);
    if (table == nullptr) {
        return std::nullopt;
    }
    const std::string sql = "SELECT " + table->columnList("t") + " FROM " + name + " AS t WHERE t.id = ?";
    const auto row = db.first(sql, {id}, [&](const Columns& columns) { return cellsOfRow(*table, columns); });
    return row ? premisesOf(db, *table, *row) : std::nullopt;
}

}  // namespace

std::optional<UuidBytes> premisesOf(const Connection& db, const Table& table, const Cells& row) {
    if (table.name == "premises") {
        return std::get<UuidBytes>(row.front());
    }
    if (const auto premises = linkIn(table, row, "premises")) {
        return premises;
    }
    constexpr std::array<std::pair<std::string_view, std::string_view>, 3> kParents{{
        {"installation", "installations"},
        {"situation", "situations"},
        {"visit", "visits"},
    }};
    for (const auto& [column, parents] : kParents) {
        if (const auto parent = linkIn(table, row, column)) {
            return db.first("SELECT premises FROM " + std::string(parents) + " WHERE id = ?", {*parent},
                            [](const Columns& columns) { return columns.uuid(0); });
        }
    }
    constexpr std::array<std::pair<std::string_view, std::string_view>, 2> kOwners{{
        {"owner_table", "owner"},
        {"table_name", "row"},
    }};
    for (const auto& [name, key] : kOwners) {
        if (const auto owner = linkIn(table, row, key)) {
            return premisesOfKnown(db, std::get<std::string>(row[table.indexOf(name)]), *owner);
        }
    }
    return std::nullopt;
}

}  // namespace hearth::store
