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

const Table* tableNamed(std::string_view name) {
    const std::array<const Table*, 20> tables{&tableOf<FirmRow>(),
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
                                              &tableOf<reg::Attachment>(),
                                              &tableOf<reg::Binned>()};
    const auto* found =
        std::find_if(tables.begin(), tables.end(), [&](const Table* table) { return table->name == name; });
    return found == tables.end() ? nullptr : *found;
}

}  // namespace hearth::store
