// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <chrono>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kGasSafetyManagement = "Gas Safety (Management) Regulations 1996, Schedule 3";
constexpr std::string_view kRegulatorsPage =
    "Safety regulator's page on changes to the Gas Safety (Management) Regulations";
constexpr std::string_view kNoStandard = "Habit of the trade";

constexpr calendar::Date kDensityFrom{std::chrono::year(2023), std::chrono::April, std::chrono::day(6)};
constexpr calendar::Date kOldWobbeUntil{std::chrono::year(2025), std::chrono::April, std::chrono::day(5)};
constexpr calendar::Date kNewWobbeFrom{std::chrono::year(2025), std::chrono::April, std::chrono::day(6)};

constexpr Origin kOldWobbe{
    Provenance::Published, kGasSafetyManagement,
    "Industry magazine, 2016/17, on the interchangeability of gases, reproducing Schedule 3"};
constexpr Origin kNewWobbe{Provenance::Published, kGasSafetyManagement, kRegulatorsPage,
                           "The lower limit fell from 47.20 MJ/m3 on 6 April 2025."};
constexpr Origin kWobbeMost{Provenance::Memory, kGasSafetyManagement, "recalled, not read",
                            "The page read on the changes of 2023 and 2025 does not repeat the upper limit."};
constexpr Origin kDensity{
    Provenance::Published, kGasSafetyManagement, kRegulatorsPage,
    "It took the place of the incomplete combustion factor and the soot index on 6 April "
    "2023."};
constexpr Origin kSeen{
    Provenance::Secondary, kNoStandard,
    "A transmission operator's text on calorific values, read on a third page; an installer's "
    "technical note gives the same range in kWh/m3",
    "What networks are seen to carry, not a limit: beyond it, look again."};
constexpr Origin kNatural{
    Provenance::Secondary, kNoStandard,
    "An installer's technical note and trainees' revision cards on gas rates",
    "39.0, 39.3 and 39.5 MJ/m3 are taken too. The bill's own calorific value is better."};
constexpr Origin kPropane{
    Provenance::Memory, "EN 437",
    "G31 (pure propane), recalled; the published component data of ISO 6976 give 95.64",
    "Commercial propane is met from 93 to 95.65 MJ/m3, and building-services notes say 95. "
    "The supplier's figure is better."};
constexpr Origin kButane{
    Provenance::Memory, "EN 437",
    "G30 (n- and i-butane, half each), recalled; the published component data of ISO 6976:1995 "
    "give the same",
    "Commercial butane is met from 121 to 126 MJ/m3. The supplier's figure is better."};

Entry dated(Entry entry, std::optional<calendar::Date> from, std::optional<calendar::Date> to) {
    entry.appliesFrom = from;
    entry.appliesTo = to;
    return entry;
}

void addNetworkLimits(std::vector<Entry>& entries) {
    constexpr auto kUnit = UnitCode::MegajoulePerCubicMetre;
    const auto gas = Gas::NaturalGas;
    const auto any = Edition::General;
    entries.push_back(dated(
        entry({Rule::NetworkWobbeLeast, any, gas}, number(4720, 2, kUnit), Comparison::AtLeast, kOldWobbe),
        std::nullopt, kOldWobbeUntil));
    entries.push_back(dated(
        entry({Rule::NetworkWobbeLeast, any, gas}, number(4650, 2, kUnit), Comparison::AtLeast, kNewWobbe),
        kNewWobbeFrom, std::nullopt));
    entries.push_back(
        entry({Rule::NetworkWobbeMost, any, gas}, number(5141, 2, kUnit), Comparison::AtMost, kWobbeMost));
    entries.push_back(dated(entry({Rule::NetworkDensityMost, any, gas}, number(700, 3, UnitCode::None),
                                  Comparison::AtMost, kDensity),
                            kDensityFrom, std::nullopt));
    entries.push_back(entry({Rule::NetworkHeatValueSeen, any, gas},
                            Range{quantity::Decimal(375, 1), quantity::Decimal(430, 1), kUnit},
                            Comparison::Within, kSeen));
}

void addHeatValues(std::vector<Entry>& entries) {
    constexpr auto kUnit = UnitCode::MegajoulePerCubicMetre;
    const auto any = Edition::General;
    entries.push_back(entry({Rule::WorkingHeatValue, any, Gas::NaturalGas}, number(3876, 2, kUnit),
                            Comparison::AsGiven, kNatural, Daily::Yes));
    entries.push_back(entry({Rule::WorkingHeatValue, any, Gas::Propane}, number(9565, 2, kUnit),
                            Comparison::AsGiven, kPropane));
    entries.push_back(entry({Rule::WorkingHeatValue, any, Gas::Butane}, number(12581, 2, kUnit),
                            Comparison::AsGiven, kButane));
    entries.push_back(
        emptyEntry({Rule::WorkingHeatValue, any, Gas::LpgAir}, Comparison::AsGiven,
                   "Each plant mixes its own: calorific value and relative density are the supplier's "
                   "to give."));
}

}  // namespace

void addGas(std::vector<Entry>& entries) {
    addNetworkLimits(entries);
    addHeatValues(entries);
}

}  // namespace hearth::rulebook::shipped
