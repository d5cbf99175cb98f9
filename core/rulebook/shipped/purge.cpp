// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr Origin kSmall3{Provenance::Secondary, kUp1bEd3, "Two sets of trainees' revision cards on Edition 3",
                         "Meter to 6 m3/h with pipe to 28 mm; it is five turns of a 0.002 m3 meter."};
constexpr Origin kFactor3{Provenance::Secondary, kUp1bEd3, "Trainees' revision cards on Edition 3 (2015)",
                          "Meter above 6 m3/h, or pipe above 28 mm."};
constexpr Origin kBurner3{
    Provenance::Published, kUp1bEd3, kPocketGuide,
    "That a smaller volume may be purged to a well-ventilated place without a source of "
    "ignition is recalled, not read."};
constexpr Origin kFittings{
    Provenance::Published, kUp1bEd3,
    "Certification body's pocket guide Gas 2 (its worked example); an exam revision page agrees",
    "On the pipe only, not on the meter. Edition 4 was not read on this."};
constexpr std::string_view kPurgeNotRead4 =
    "Edition 4's purge rule was not read: enter it from your own copy.";
constexpr std::string_view kLpgPurgeNotRead = "The purge of LPG was not read: enter it from your own copy.";

struct PurgeRow {
    Rule rule;
    Comparison comparison;
};
constexpr PurgeRow kRows[] = {
    {Rule::PurgeVolumeSmall, Comparison::AtLeast},
    {Rule::PurgeVolumeFactor, Comparison::AsGiven},
    {Rule::PurgeOpenBurnerAbove, Comparison::AtMost},
};

}  // namespace

void addPurge(std::vector<Entry>& entries) {
    const auto gas = Gas::NaturalGas;
    const auto third = Edition::Up1bEd3;
    entries.push_back(entry({Rule::PurgeVolumeSmall, third, gas}, number(10, 3, UnitCode::CubicMetre),
                            Comparison::AtLeast, kSmall3));
    entries.push_back(entry({Rule::PurgeVolumeFactor, third, gas}, number(15, 1, UnitCode::None),
                            Comparison::AsGiven, kFactor3));
    entries.push_back(entry({Rule::PurgeOpenBurnerAbove, third, gas}, number(2, 2, UnitCode::CubicMetre),
                            Comparison::AtMost, kBurner3));
    for (const auto& row : kRows) {
        entries.push_back(
            emptyEntry({row.rule, Edition::Up1bEd4, gas}, row.comparison, kPurgeNotRead4, Daily::Yes));
        for (const auto other : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
            entries.push_back(emptyEntry({row.rule, third, other}, row.comparison, kLpgPurgeNotRead));
            entries.push_back(
                emptyEntry({row.rule, Edition::Up1bEd4, other}, row.comparison, kLpgPurgeNotRead));
        }
    }
    entries.push_back(
        entry({Rule::FittingsShare}, number(10, 2, UnitCode::None), Comparison::AsGiven, kFittings));
}

}  // namespace hearth::rulebook::shipped
