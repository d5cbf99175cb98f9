// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <array>
#include <optional>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr Origin kScope3{Provenance::Published, kUp1bEd3, kInstitutionPage};
constexpr Origin kVolume3{
    Provenance::Published, kUp1bEd3,
    "Institution's own page on IGEM/UP/1B Edition 3 +A:2012; the certification body's pocket "
    "guide agrees",
    "For each dwelling or premises."};
constexpr Origin kPipe3{Provenance::Published, kUp1bEd3, kInstitutionPage,
                        "Nominal bore: about R 1 1/4 steel (DN 32), that equivalence from memory."};
constexpr Origin kMeter3{Provenance::Published, kUp1bEd3, kInstitutionPage,
                         "Badged capacity of the primary meter."};
constexpr std::string_view kScopeNotRead4 = "Edition 4's scope was not read: enter it from your own copy.";

struct ScopeRow {
    Rule rule;
    std::optional<Gas> gas;
    Value value;
    const Origin& origin;
};

std::array<ScopeRow, 9> edition3() {
    return {{
        {Rule::ScopeVolume, {}, number(35, 3, UnitCode::CubicMetre), kVolume3},
        {Rule::ScopePipe, {}, number(35, 0, UnitCode::Millimetre), kPipe3},
        {Rule::ScopeMeter, {}, number(16, 0, UnitCode::CubicMetrePerHour), kMeter3},
        {Rule::ScopeOperatingPressure, Gas::NaturalGas, number(21, 0, UnitCode::Millibar), kScope3},
        {Rule::ScopeOperatingPressure, Gas::LpgAir, number(21, 0, UnitCode::Millibar), kScope3},
        {Rule::ScopeOperatingPressure, Gas::Propane, number(37, 0, UnitCode::Millibar), kScope3},
        {Rule::ScopeOperatingPressure, Gas::Butane, number(37, 0, UnitCode::Millibar), kScope3},
        {Rule::ScopeSupplyPressure, Gas::NaturalGas, number(2, 0, UnitCode::Bar), kScope3},
        {Rule::ScopeSupplyPressure, Gas::LpgAir, number(2, 0, UnitCode::Bar), kScope3},
    }};
}

}  // namespace

void addScope(std::vector<Entry>& entries) {
    for (const auto& row : edition3()) {
        entries.push_back(
            entry({row.rule, Edition::Up1bEd3, row.gas}, row.value, Comparison::AtMost, row.origin));
    }
    for (const auto& row : edition3()) {
        const bool everyDay = !row.gas || row.gas == Gas::NaturalGas;
        entries.push_back(emptyEntry({row.rule, Edition::Up1bEd4, row.gas}, Comparison::AtMost,
                                     kScopeNotRead4, everyDay ? Daily::Yes : Daily::No));
    }
}

}  // namespace hearth::rulebook::shipped
