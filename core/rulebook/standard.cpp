// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/standard.h"

#include "core/rulebook/code_table.h"

#include <array>
#include <chrono>

namespace hearth::rulebook {

namespace {

using namespace std::chrono_literals;

constexpr auto kGases = std::to_array<Code<Gas>>({
    {Gas::NaturalGas, "natural_gas"},
    {Gas::Propane, "propane"},
    {Gas::Butane, "butane"},
    {Gas::LpgAir, "lpg_air"},
});
static_assert(inOrder(kGases));

constexpr auto kEditions = std::to_array<Code<Edition>>({
    {Edition::General, "general"},
    {Edition::Up1bEd3, "up1b_ed3"},
    {Edition::Up1bEd4, "up1b_ed4"},
});
static_assert(inOrder(kEditions));

}  // namespace

std::string_view gasText(Gas gas) {
    return textIn(kGases, gas);
}

std::optional<Gas> gasFromText(std::string_view text) {
    return valueIn(kGases, text);
}

std::string_view editionText(Edition edition) {
    return textIn(kEditions, edition);
}

std::optional<Edition> editionFromText(std::string_view text) {
    return valueIn(kEditions, text);
}

std::optional<Edition> EditionsAllowed::only() const {
    if (edition3 == edition4) {
        return std::nullopt;
    }
    return edition3 ? Edition::Up1bEd3 : Edition::Up1bEd4;
}

EditionsAllowed editionsAllowedOn(calendar::Date date) {
    return {date <= kEdition3Until, date >= kEdition4From};
}

}  // namespace hearth::rulebook
