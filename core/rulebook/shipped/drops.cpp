// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr Origin kDropCards{Provenance::Secondary, kUp1bEd3,
                            "Two sets of trainees' revision cards on Edition 3",
                            "Existing installation, appliances connected, no smell of gas, in 2 minutes."};
constexpr Origin kOneSet{
    Provenance::Secondary, kUp1bEd3, "Trainees' revision cards on Edition 3 (2015)",
    "One set of cards only. Existing installation, appliances connected, no smell of gas."};
constexpr Origin kRecalled{Provenance::Memory, kUp1bEd3, "recalled from the standard, not read",
                           "The whole column for pipe above 28 to 35 mm is recalled."};
constexpr Origin kShortCut{
    Provenance::Secondary, kUp1bEd4, "A training centre's article on Edition 4 (2026)",
    "The register's bulletin (second edition, 15 April 2026) says that the pipework must still be "
    "shown to be clear of movement. The article is a summary."};

void addEdition3(std::vector<Entry>& entries) {
    struct Row {
        Rule rule;
        std::int64_t millibar;
        const Origin& origin;
    };
    const Row rows[] = {
        {Rule::DropNoMeter28, 8, kOneSet},         {Rule::DropUltrasonic28, 8, kDropCards},
        {Rule::DropDiaphragm6At28, 4, kDropCards}, {Rule::DropDiaphragm16At28, 1, kDropCards},
        {Rule::DropNoMeter35, 4, kRecalled},       {Rule::DropUltrasonic35, 4, kRecalled},
        {Rule::DropDiaphragm16At35, 1, kRecalled},
    };
    for (const auto& row : rows) {
        entries.push_back(entry({row.rule, Edition::Up1bEd3, Gas::NaturalGas},
                                number(row.millibar, 0, UnitCode::Millibar), Comparison::AtMost, row.origin));
    }
    entries.push_back(emptyEntry({Rule::DropDiaphragm6At35, Edition::Up1bEd3, Gas::NaturalGas},
                                 Comparison::AtMost, "2.5 or 2 mbar: remembered too faintly to be given."));
}

void addBands(std::vector<Entry>& entries) {
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        entries.push_back(emptyEntry({Rule::DropByVolume, Edition::Up1bEd3, gas}, Comparison::AtMost,
                                     "Edition 3 goes by volume for LPG; the bands were not read."));
    }
    for (const auto gas : {Gas::NaturalGas, Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        entries.push_back(
            emptyEntry({Rule::DropByVolume, Edition::Up1bEd4, gas}, Comparison::AtMost,
                       "Edition 4's bands by volume were not read: enter them from your own copy. The "
                       "register's first bulletin of 25 March 2026 was superseded after misreading."));
    }
}

}  // namespace

void addDrops(std::vector<Entry>& entries) {
    addEdition3(entries);
    addBands(entries);
    entries.push_back(entry({Rule::DropShortCut, Edition::Up1bEd4, Gas::NaturalGas},
                            number(1, 0, UnitCode::Millibar), Comparison::Below, kShortCut, Daily::Yes));
}

}  // namespace hearth::rulebook::shipped
