// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kBs6891 = "BS 6891";
constexpr std::string_view kBs6891Old = "BS 6891:2005 and before";
constexpr std::string_view kBs6891New = "BS 6891:2015";
constexpr std::string_view kUp1Family = "IGE/UP/1";
constexpr std::string_view kNotReadHere = "Not read: enter it from your own copy.";

constexpr Origin kDrop{Provenance::Published, kBs6891,
                       "Gas register's magazine, July 2021, on low pressure and pipework; an installer-trade "
                       "article on the 2005 edition agrees",
                       "From the meter's outlet to the appliance at design maximum flow, all together."};
constexpr Origin kDropLpg{
    Provenance::Published, kBs6891,
    "Gas register's magazine, July 2021 (2 mbar); an installer-trade article on the 2005 edition gives 2.5 "
    "mbar",
    "The two pages differ: the stricter stands until the standard itself has been read."};
constexpr std::string_view kEfficiencyFaint =
    "0.97 for small pipe is remembered too faintly to be given. While it is empty the program takes 0.95: "
    "the largest of two digits with which its law passes no more than the printed table of BS 6891:2005 in "
    "any cell.";

constexpr Origin kOldFittings{Provenance::Secondary, kBs6891Old,
                              "A two-page handout on pipe sizing and a do-it-yourself page on the 2005 "
                              "edition",
                              "One figure for every size to 28 mm; withdrawn with the 2015 edition."};
constexpr Origin kNewFittings{Provenance::Secondary, kBs6891New, "A trade forum's note on the 2015 edition",
                              "For copper of 15 and 22 mm only."};
constexpr std::string_view kOldBend45 = "The editions before 2015 were read without a figure for 45° bends.";
constexpr std::string_view kTeeByDirection =
    "The 2015 edition gives tees by the direction of flow; its figures were not read.";

struct FittingRow {
    Rule rule;
    int hundredths;  // of a metre; 0: not read
    const Origin& origin;
    std::string_view doubt = kNotReadHere;
};

void addFittings(std::vector<Entry>& entries) {
    const FittingRow rows[] = {
        {Rule::FittingOldElbow, 50, kOldFittings},
        {Rule::FittingOldBend, 30, kOldFittings},
        {Rule::FittingOldBend45, 0, kOldFittings, kOldBend45},
        {Rule::FittingOldTee, 50, kOldFittings},
        {Rule::Fitting15Elbow, 40, kNewFittings},
        {Rule::Fitting15Bend, 20, kNewFittings},
        {Rule::Fitting15Bend45, 15, kNewFittings},
        {Rule::Fitting15Tee, 0, kNewFittings, kTeeByDirection},
        {Rule::Fitting22Elbow, 60, kNewFittings},
        {Rule::Fitting22Bend, 30, kNewFittings},
        {Rule::Fitting22Bend45, 20, kNewFittings},
        {Rule::Fitting22Tee, 0, kNewFittings, kTeeByDirection},
        {Rule::Fitting28Elbow, 0, kNewFittings},
        {Rule::Fitting28Bend, 0, kNewFittings},
        {Rule::Fitting28Bend45, 0, kNewFittings},
        {Rule::Fitting28Tee, 0, kNewFittings},
        {Rule::Fitting35Elbow, 0, kNewFittings},
        {Rule::Fitting35Bend, 0, kNewFittings},
        {Rule::Fitting35Bend45, 0, kNewFittings},
        {Rule::Fitting35Tee, 0, kNewFittings},
    };
    for (const auto& row : rows) {
        if (row.hundredths == 0) {
            entries.push_back(emptyEntry({row.rule}, Comparison::AsGiven, row.doubt));
        } else {
            entries.push_back(entry({row.rule}, number(row.hundredths, 2, UnitCode::Metre),
                                    Comparison::AsGiven, row.origin));
        }
    }
}

constexpr Origin kRecalledFactor{Provenance::Memory, kUp1Family, "recalled from the standard, not read",
                                 "Pipe with fittings, and a diaphragm meter, are counted apart."};
constexpr Origin kRecalledSpeed{Provenance::Memory, kUp1Family, "recalled from the standard, not read",
                                "Pipe to 150 mm."};
constexpr Origin kRecalledEnd{Provenance::Memory, kUp1Family, "recalled from the standard, not read",
                              "By a gas detector at the vent."};
constexpr std::string_view kSpeedLargeFaint =
    "About 1.2 m/s: remembered too faintly to be given. Enter it from your own copy.";
constexpr std::string_view kLpgNotRead = "The purge of LPG was not read: enter it from your own copy.";

constexpr Origin kFlowListed{Provenance::Memory, kUp1Family,
                             "recalled from the standard's list of least purge flows by size, not read",
                             "Not less than 0.6 m/s through the nominal bore, which gives no more."};
constexpr Origin kFlowBySpeed{
    Provenance::Memory, kUp1Family,
    "0.6 m/s through the nominal bore, both recalled from the standard, not read",
    "The list of least purge flows, recalled too, gives less for this size (25: 1.0, 32: 1.7, 40: 2.5, 150: "
    "38 m3/h): the stricter stands."};

/// Of the recalled list and 0.6 m/s through the nominal bore, the larger.
struct FlowRow {
    Rule rule;
    int hundredths;  // m3/h
    const Origin& origin;
};

void addLargePurge(std::vector<Entry>& entries) {
    const FlowRow flows[] = {
        {Rule::PurgeFlow20, 70, kFlowListed},    {Rule::PurgeFlow25, 106, kFlowBySpeed},
        {Rule::PurgeFlow32, 174, kFlowBySpeed},  {Rule::PurgeFlow40, 271, kFlowBySpeed},
        {Rule::PurgeFlow50, 450, kFlowListed},   {Rule::PurgeFlow65, 750, kFlowListed},
        {Rule::PurgeFlow80, 1100, kFlowListed},  {Rule::PurgeFlow100, 2000, kFlowListed},
        {Rule::PurgeFlow125, 3000, kFlowListed}, {Rule::PurgeFlow150, 3820, kFlowBySpeed},
    };
    const auto gas = Gas::NaturalGas;
    const auto general = Edition::General;
    entries.push_back(entry({Rule::PurgePipeFactor, general, gas}, number(15, 1, UnitCode::None),
                            Comparison::AsGiven, kRecalledFactor));
    entries.push_back(entry({Rule::PurgeMeterCycles, general, gas}, number(5, 0, UnitCode::None),
                            Comparison::AsGiven, kRecalledFactor));
    entries.push_back(entry({Rule::PurgeSpeedLeast, general, gas}, number(6, 1, UnitCode::None),
                            Comparison::AtLeast, kRecalledSpeed));
    entries.push_back(
        emptyEntry({Rule::PurgeSpeedLarge, general, gas}, Comparison::AtLeast, kSpeedLargeFaint));
    entries.push_back(entry({Rule::PurgeEndShare, general, gas}, number(90, 0, UnitCode::Percent),
                            Comparison::AtLeast, kRecalledEnd));
    for (const auto& row : flows) {
        entries.push_back(entry({row.rule, general, gas},
                                number(row.hundredths, 2, UnitCode::CubicMetrePerHour), Comparison::AtLeast,
                                row.origin));
    }
    for (const auto other : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        entries.push_back(
            emptyEntry({Rule::PurgePipeFactor, general, other}, Comparison::AsGiven, kLpgNotRead));
        entries.push_back(
            emptyEntry({Rule::PurgeMeterCycles, general, other}, Comparison::AsGiven, kLpgNotRead));
        entries.push_back(
            emptyEntry({Rule::PurgeSpeedLeast, general, other}, Comparison::AtLeast, kLpgNotRead));
        entries.push_back(
            emptyEntry({Rule::PurgeEndShare, general, other}, Comparison::AtLeast, kLpgNotRead));
    }
}

constexpr Origin kCyclic{Provenance::Memory, "Meter's plate; Directive 71/318/EEC",
                         "recalled, not read: the trade's table and the Directive's least cyclic volumes",
                         "The meter's own plate says it: read it there."};
constexpr Origin kCyclicDiffers{
    Provenance::Memory, "Meter's plate; Directive 71/318/EEC",
    "recalled, not read: the trade's table (U25 10, U40 20, U65 25, U100 57, U160 71 dm3) and the "
    "Directive's "
    "least cyclic volumes (G16 10, G25 18, G40 30, G65 55, G100 100 dm3)",
    "The two differ for this size or near it: the larger stands, which purges more. The meter's own plate "
    "says it: read it there."};

void addCyclicVolumes(std::vector<Entry>& entries) {
    struct Row {
        Rule rule;
        int litres;
        const Origin& origin;
    };
    const Row rows[] = {
        {Rule::CyclicVolumeU6, 2, kCyclic},
        {Rule::CyclicVolumeU16, 6, kCyclic},
        {Rule::CyclicVolumeU25, 10, kCyclic},
        {Rule::CyclicVolumeU40, 20, kCyclicDiffers},
        {Rule::CyclicVolumeU65, 30, kCyclicDiffers},
        {Rule::CyclicVolumeU100, 57, kCyclicDiffers},
        {Rule::CyclicVolumeU160, 100, kCyclicDiffers},
    };
    for (const auto& row : rows) {
        entries.push_back(
            entry({row.rule}, number(row.litres, 3, UnitCode::CubicMetre), Comparison::AsGiven, row.origin));
    }
}

}  // namespace

void addPipework(std::vector<Entry>& entries) {
    entries.push_back(entry({Rule::PipeDropMost, Edition::General, Gas::NaturalGas},
                            number(1, 0, UnitCode::Millibar), Comparison::AtMost, kDrop));
    for (const auto gas : {Gas::Propane, Gas::Butane}) {
        entries.push_back(entry({Rule::PipeDropMost, Edition::General, gas}, number(2, 0, UnitCode::Millibar),
                                Comparison::AtMost, kDropLpg));
    }
    entries.push_back(
        emptyEntry({Rule::PipeDropMost, Edition::General, Gas::LpgAir}, Comparison::AtMost, kNotReadHere));
    entries.push_back(emptyEntry({Rule::PipeEfficiency}, Comparison::AsGiven, kEfficiencyFaint));
    addFittings(entries);
    addLargePurge(entries);
    addCyclicVolumes(entries);
}

}  // namespace hearth::rulebook::shipped
