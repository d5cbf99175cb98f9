// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/kind.h"

#include <array>

/// What each kind wants, as tables. Only what kind.h declares is for others.
namespace hearth::record {

[[nodiscard]] constexpr Requirement wantedField(Field field, std::string_view source,
                                                When when = When::Always) {
    return {std::nullopt, field, source, when};
}
[[nodiscard]] constexpr Requirement wantedItem(reg::Item item, std::string_view source,
                                               When when = When::Always) {
    return {item, std::nullopt, source, when};
}

/// Tables one after the other: what several kinds ask stands once.
template <std::size_t... Sizes>
[[nodiscard]] constexpr auto joinedTables(const std::array<Requirement, Sizes>&... tables) {
    std::array<Requirement, (Sizes + ...)> all{};
    std::size_t at = 0;
    const auto put = [&](const auto& table) {
        for (const auto& one : table) {
            all[at++] = one;
        }
    };
    (put(tables), ...);
    return all;
}

// checking.cpp
/// Whether what is wanted of that subject is there and readable, or isn't asked of it.
[[nodiscard]] bool isMet(const Requirement& wanted, const reg::SubjectRef& on, const reg::VisitFile& file,
                         const std::vector<judging::Judged>& findings);
// requirements_safety.cpp
[[nodiscard]] std::span<const Requirement> landlordRequirements();
[[nodiscard]] std::span<const Requirement> ownerRequirements();
// requirements_appliances.cpp
[[nodiscard]] std::span<const Requirement> commissioningRequirements();
[[nodiscard]] std::span<const Requirement> serviceRequirements();
// requirements_others.cpp
[[nodiscard]] std::span<const Requirement> largerRequirements();
[[nodiscard]] std::span<const Requirement> noticeRequirements();
[[nodiscard]] std::span<const Requirement> investigationRequirements();
[[nodiscard]] std::span<const Requirement> reportableRequirements();
[[nodiscard]] std::span<const Requirement> buildingRequirements();
[[nodiscard]] std::span<const Requirement> calibrationRequirements();
[[nodiscard]] std::span<const Requirement> letterRequirements();

}  // namespace hearth::record
