// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <array>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kBs5440 = "BS 5440-2 (2000 and 2009)";
constexpr std::string_view kBs5440Cookers = "BS 5440-2:2000 (and :1989)";
constexpr std::string_view kBs6644 = "BS 6644";
constexpr std::string_view kBs7967 = "BS 7967";

constexpr Origin kGuides{Provenance::Published, kBs5440,
                         "Boiler suppliers' quick guides to BS 5440-2:2000 and :2009; a gas-safety page with "
                         "the arithmetic"};
constexpr Origin kCompartments{
    Provenance::Published, kBs5440,
    "Boiler suppliers' quick guides to BS 5440-2:2000 and :2009, alike in both",
    "Many condensing room-sealed boilers need none: the maker's word comes first."};
constexpr Origin kScope{Provenance::Published, kBs5440, "The standard's title and scope (catalogue)",
                        "Whether there is a later edition than 2009 was not found out."};
constexpr Origin kThroughWall{Provenance::Secondary, kBs5440, "A gas-safety page with ventilation arithmetic",
                              "The page enlarges any vent through an inside wall; from memory the standard "
                              "does so only beyond the first wall. The stricter is taken: any."};
constexpr Origin kSeveral{Provenance::Memory, kBs5440, "from memory",
                          "The greatest of: all flueless heaters, all open-flued heaters, the largest other. "
                          "1 means that only the greatest of the three counts; 3 adds them all."};
constexpr Origin kFires{
    Provenance::Memory, "BS 5440-2, BS 5871", "from memory",
    "Remembered well; the maker's instructions come first, and Approved Document J has a table of its own."};
constexpr Origin kCookers{Provenance::Published, kBs5440Cookers,
                          "Six cooker makers' pages that print the table, of the 1989 and 2000 editions",
                          "One 1989 page asks for none where a door opens to outside and the room is over 1 "
                          "m\u00B3; the larger vent is kept. Not checked against the 2009 edition."};
constexpr Origin kBedSit{Provenance::Published, kBs5440Cookers, "Six cooker makers' pages",
                         "Some pages say 20, some 21 m\u00B3: the stricter is taken."};
constexpr Origin kBasement{
    Provenance::Published, kBs5440Cookers, "Cooker makers' pages",
    "\"About 100 cm\u00B2 advisable\": advice, so that less is to be looked at again."};
constexpr Origin kWaterHeater{Provenance::Memory, kBs5440, "from memory",
                              "Read the row in your copy before you go by it."};
constexpr Origin kFlueless{Provenance::Secondary, kBs5440,
                           "An exam revision page on fires and flueless heaters (2013)"};
constexpr Origin kCabinet{Provenance::Secondary, "BS 5440-2, BS EN 449",
                          "An exam revision page on fires and flueless heaters (2013)",
                          "The page prints 446 for the appliance standard."};
constexpr Origin kPlant{Provenance::Published, kBs6644, "Three commercial boiler makers' ventilation pages"};
constexpr Origin kPlantScope{Provenance::Published, kBs6644, "The standard's title and scope (catalogue)"};
constexpr Origin kEnclosure{Provenance::Published, "BS 6644:2005",
                            "Boiler suppliers' quick guides to BS 6644:2005",
                            "Which row holds at exactly half or three quarters is not said."};
constexpr Origin kPlantHeat{Provenance::Published, "BS 6644:2005", "An article on plant room ventilation",
                            "For the ceiling a guide to the 2011 edition prints 42 degrees: the stricter is "
                            "taken."};
constexpr Origin kEh40{Provenance::Secondary, "HSE EH40/2005, workplace exposure limits",
                       "An indoor-air-quality guide; from memory in force since August 2018",
                       "A limit for people at work, not for a home."};
constexpr Origin kDanger{
    Provenance::Secondary, "HSE EH40/2005, workplace exposure limits",
    "An indoor-air-quality guide: the limit for a mean of 8 hours",
    "Taken for any single reading, as nobody knows how long people have been in the "
    "room. Stricter than the guideline of 25 ppm for an hour (WHO Europe, 2nd edition)."};
constexpr Origin kWho8h{Provenance::Published, "WHO Air Quality Guidelines for Europe, 2nd edition",
                        "A journal's table of the guideline values: 10 ppm for 8 hours",
                        "Taken for any single reading: it warns, and fails nothing."};
constexpr Origin kWhoBlood{Provenance::Published, "WHO Air Quality Guidelines for Europe, 2nd edition",
                           "A journal's table of the guideline values: carboxyhaemoglobin 2.5 %"};

struct Row {
    Rule rule;
    std::int64_t mantissa;
    int decimals;
    UnitCode unit;
    Comparison comparison;
    const Origin& origin;
};

constexpr auto kMost = Comparison::AtMost;
constexpr auto kLeast = Comparison::AtLeast;
constexpr auto kAs = Comparison::AsGiven;

const std::array kVentRows{
    Row{Rule::VentAdventitiousInput, 7, 0, UnitCode::Kilowatt, kAs, kGuides},
    Row{Rule::VentOpenFluedPerKilowatt, 5, 0, UnitCode::None, kAs, kGuides},
    Row{Rule::VentScopeInput, 70, 0, UnitCode::Kilowatt, kMost, kScope},
    Row{Rule::VentThroughWallFactor, 15, 1, UnitCode::None, kAs, kThroughWall},
    Row{Rule::VentSeveralGroups, 1, 0, UnitCode::None, kAs, kSeveral},
    Row{Rule::VentDecorativeFire, 100, 0, UnitCode::SquareCentimetre, kLeast, kFires},
    Row{Rule::VentDecorativeInputMost, 20, 0, UnitCode::Kilowatt, kMost, kFires},
    Row{Rule::VentFireInputWithout, 7, 0, UnitCode::Kilowatt, kMost, kFires},
    Row{Rule::VentOpenToRoomHigh, 10, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentOpenToRoomLow, 20, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentOpenOutsideHigh, 5, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentOpenOutsideLow, 10, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentSealedToRoomHigh, 10, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentSealedToRoomLow, 10, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentSealedOutsideHigh, 5, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentSealedOutsideLow, 5, 0, UnitCode::None, kAs, kCompartments},
    Row{Rule::VentCookerVolumeSmall, 5, 0, UnitCode::CubicMetre, Comparison::Below, kCookers},
    Row{Rule::VentCookerVolumeMedium, 10, 0, UnitCode::CubicMetre, kMost, kCookers},
    Row{Rule::VentCookerSmall, 100, 0, UnitCode::SquareCentimetre, kLeast, kCookers},
    Row{Rule::VentCookerMedium, 50, 0, UnitCode::SquareCentimetre, kLeast, kCookers},
    Row{Rule::VentCookerBedSit, 21, 0, UnitCode::CubicMetre, kLeast, kBedSit},
    Row{Rule::VentCookerBasement, 100, 0, UnitCode::SquareCentimetre, kLeast, kBasement},
    Row{Rule::VentWaterHeaterInputMost, 11, 0, UnitCode::Kilowatt, kMost, kWaterHeater},
    Row{Rule::VentWaterHeaterVolumeLeast, 5, 0, UnitCode::CubicMetre, kLeast, kWaterHeater},
    Row{Rule::VentWaterHeaterVolumeMedium, 10, 0, UnitCode::CubicMetre, kMost, kWaterHeater},
    Row{Rule::VentWaterHeaterVolumeLarge, 20, 0, UnitCode::CubicMetre, kMost, kWaterHeater},
    Row{Rule::VentWaterHeaterSmall, 100, 0, UnitCode::SquareCentimetre, kLeast, kWaterHeater},
    Row{Rule::VentWaterHeaterMedium, 50, 0, UnitCode::SquareCentimetre, kLeast, kWaterHeater},
    Row{Rule::VentHeaterWattsRoom, 45, 0, UnitCode::None, kMost, kFlueless},
    Row{Rule::VentHeaterWattsInternal, 90, 0, UnitCode::None, kMost, kFlueless},
    Row{Rule::VentHeaterBase, 100, 0, UnitCode::SquareCentimetre, kLeast, kFlueless},
    Row{Rule::VentHeaterInputRoom, 27, 1, UnitCode::Kilowatt, kAs, kFlueless},
    Row{Rule::VentHeaterPerKilowattRoom, 55, 0, UnitCode::None, kAs, kFlueless},
    Row{Rule::VentHeaterInputInternal, 54, 1, UnitCode::Kilowatt, kAs, kFlueless},
    Row{Rule::VentHeaterPerKilowattInternal, 275, 1, UnitCode::None, kAs, kFlueless},
    Row{Rule::VentCabinetWattsRoom, 50, 0, UnitCode::None, kMost, kCabinet},
    Row{Rule::VentCabinetWattsInternal, 100, 0, UnitCode::None, kMost, kCabinet},
    Row{Rule::VentCabinetVolumeLeast, 15, 0, UnitCode::CubicMetre, kLeast, kCabinet},
    Row{Rule::VentCabinetPerKilowatt, 25, 0, UnitCode::None, kAs, kCabinet},
    Row{Rule::VentCabinetLeast, 50, 0, UnitCode::SquareCentimetre, kLeast, kCabinet},
};

const std::array kPlantRows{
    Row{Rule::PlantInputMost, 1800, 0, UnitCode::Kilowatt, kMost, kPlantScope},
    Row{Rule::PlantRoomLow, 4, 0, UnitCode::None, kAs, kPlant},
    Row{Rule::PlantRoomHigh, 2, 0, UnitCode::None, kAs, kPlant},
    Row{Rule::PlantEnclosureLowHalf, 10, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantEnclosureHighHalf, 5, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantEnclosureLowMost, 11, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantEnclosureHighMost, 6, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantEnclosureLowAll, 12, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantEnclosureHighAll, 7, 0, UnitCode::None, kAs, kEnclosure},
    Row{Rule::PlantSummerMost, 1, 0, UnitCode::None, kAs, kPlant},
    Row{Rule::PlantSummerAll, 2, 0, UnitCode::None, kAs, kPlant},
    Row{Rule::PlantTemperatureFloor, 25, 0, UnitCode::Celsius, kMost, kPlantHeat},
    Row{Rule::PlantTemperatureMiddle, 32, 0, UnitCode::Celsius, kMost, kPlantHeat},
    Row{Rule::PlantTemperatureCeiling, 40, 0, UnitCode::Celsius, kMost, kPlantHeat},
};

const std::array kCoRows{
    Row{Rule::RoomCoShortLimit, 100, 0, UnitCode::Ppm, kMost, kEh40},
    Row{Rule::RoomCoLongLimit, 20, 0, UnitCode::Ppm, kMost, kEh40},
    Row{Rule::RoomCoDangerFrom, 20, 0, UnitCode::Ppm, Comparison::Below, kDanger},
    Row{Rule::RoomCoRaisedFrom, 10, 0, UnitCode::Ppm, Comparison::Below, kWho8h},
    Row{Rule::RoomCoBloodLimit, 25, 1, UnitCode::Percent, Comparison::Below, kWhoBlood},
};

struct EmptyRow {
    Rule rule;
    Comparison comparison;
    std::string_view standard;
    std::string_view doubt;
};

// What is remembered of each is told as a doubt, so that the firm knows what to look for; it decides nothing.
constexpr std::array kEmptyRows{
    EmptyRow{Rule::VentTightPerKilowatt, kAs, "Approved Document J",
             "The document asks for larger vents where the air permeability is 5 m\u00B3/(h\u00B7m\u00B2) or "
             "less; the figure "
             "was not visible (uncertain memory: 5 cm\u00B2 for each kW, nothing deducted)."},
    EmptyRow{Rule::VentMakersArea, kLeast, "Maker's instructions",
             "The maker's figure is kept with the appliance and comes before every rule."},
    EmptyRow{Rule::VentDryer, kLeast, "BS 7624, BS 5440-2",
             "Not read (uncertain memory: 100 cm\u00B2 in rooms under 3.7 m\u00B3 for each kW, dryers to 6 "
             "kW)."},
    EmptyRow{Rule::RoomCoNoActionMost, kMost, kBs7967,
             "Not read (uncertain memory: 10 ppm, steady). Sources in circulation differ."},
    EmptyRow{Rule::RoomCoLeaveFrom, Comparison::Below, kBs7967,
             "Not read (uncertain memory: 30 ppm and rising). Sources in circulation differ."},
    EmptyRow{Rule::RoomCoCookerPeakMost, kMost, kBs7967,
             "Not read (very uncertain memory: 90 ppm for a short time, falling below 30)."},
    EmptyRow{Rule::RoomCoSampleHeight, kAs, kBs7967,
             "Not read (uncertain memory: about 2 m; others say breathing height, 1.5 m)."},
    EmptyRow{Rule::RoomCoSampleDistance, kLeast, kBs7967, "Not read (uncertain memory: 1 m)."},
    EmptyRow{Rule::RoomCoTimeFlued, kLeast, kBs7967,
             "Not read (uncertain memory: 15 min, longer while the readings rise)."},
    EmptyRow{Rule::RoomCoTimeFlueless, kLeast, kBs7967, "Not read (very uncertain memory: 30 min)."},
};

template <class Rows>
void addRows(std::vector<Entry>& entries, const Rows& rows) {
    for (const auto& row : rows) {
        entries.push_back(
            entry({row.rule}, number(row.mantissa, row.decimals, row.unit), row.comparison, row.origin));
    }
}

}  // namespace

void addAir(std::vector<Entry>& entries) {
    addRows(entries, kVentRows);
    addRows(entries, kPlantRows);
    addRows(entries, kCoRows);
    for (const auto& row : kEmptyRows) {
        auto empty = emptyEntry({row.rule}, row.comparison, row.doubt);
        empty.standard = row.standard;
        entries.push_back(std::move(empty));
    }
}

}  // namespace hearth::rulebook::shipped
