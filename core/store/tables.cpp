// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/tables.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace hearth::store {

std::string Table::columnList(std::string_view alias) const {
    std::string list;
    for (const auto& column : columns) {
        list.append(list.empty() ? "" : ", ").append(alias).append(".").append(column.name);
    }
    return list;
}

std::size_t Table::indexOf(std::string_view column) const {
    const auto found = std::find_if(columns.begin(), columns.end(),
                                    [&](const Column& known) { return known.name == column; });
    assert(found != columns.end());
    return static_cast<std::size_t>(found - columns.begin());
}

bool Table::has(std::string_view column) const {
    return std::any_of(columns.begin(), columns.end(),
                       [&](const Column& known) { return known.name == column; });
}

Cells cellsOfRow(const Table& table, const Columns& columns) {
    Cells row;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const int column = static_cast<int>(i);
        if (columns.isNull(column)) {
            row.emplace_back();
            continue;
        }
        switch (table.columns[i].type) {
            case CellType::Text:
                row.emplace_back(columns.text(column));
                break;
            case CellType::Integer:
                row.emplace_back(columns.integer(column));
                break;
            case CellType::Uuid:
                row.emplace_back(columns.uuid(column));
                break;
        }
    }
    return row;
}

const Table* tableNamed(std::string_view name) {
    const std::array<const Table*, 25> tables{&tableOf<FirmRow>(),
                                              &tableOf<reg::Party>(),
                                              &tableOf<reg::Premises>(),
                                              &tableOf<reg::Role>(),
                                              &tableOf<reg::Installation>(),
                                              &tableOf<reg::PipeSection>(),
                                              &tableOf<reg::Engineer>(),
                                              &tableOf<reg::Instrument>(),
                                              &tableOf<reg::Visit>(),
                                              &tableOf<reg::Test>(),
                                              &tableOf<reg::Appliance>(),
                                              &tableOf<reg::Competence>(),
                                              &tableOf<reg::AccessAttempt>(),
                                              &tableOf<reg::Letter>(),
                                              &tableOf<reg::Booking>(),
                                              &tableOf<reg::Situation>(),
                                              &tableOf<reg::SituationEvent>(),
                                              &tableOf<reg::EmergencyContact>(),
                                              &tableOf<reg::CheckPlan>(),
                                              &tableOf<reg::EarlierCheck>(),
                                              &tableOf<reg::CheckExtension>(),
                                              &tableOf<reg::Attachment>(),
                                              &tableOf<reg::HandSignature>(),
                                              &tableOf<reg::GaugeTrace>(),
                                              &tableOf<reg::Binned>()};
    const auto* found =
        std::find_if(tables.begin(), tables.end(), [&](const Table* table) { return table->name == name; });
    return found == tables.end() ? nullptr : *found;
}

}  // namespace hearth::store
