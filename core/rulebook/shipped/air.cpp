// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/shipped/table.h"

#include <array>

namespace hearth::rulebook::shipped {

namespace {

using quantity::UnitCode;

constexpr std::string_view kAirBs5440 = "BS 5440-2 (2000 and 2009)";
constexpr std::string_view kAirBs5440Cookers = "BS 5440-2:2000 (and :1989)";
constexpr std::string_view kAirBs6644 = "BS 6644";
constexpr std::string_view kAirBs7967 = "BS 7967";

constexpr Origin kAirGuides{
    Provenance::Published, kAirBs5440,
    "Boiler suppliers' quick guides to BS 5440-2:2000 and :2009; a gas-safety page with "
    "the arithmetic"};
constexpr Origin kAirCompartments{
    Provenance::Published, kAirBs5440,
    "Boiler suppliers' quick guides to BS 5440-2:2000 and :2009, alike in both",
    "Many condensing room-sealed boilers need none: the maker's word comes first."};
constexpr Origin kAirScope{Provenance::Published, "Approved Document J; BS 5440-2",
                           "Approved Document J extracts: 70 kW net, which is 77.7 kW gross",
                           "From memory it is the standard's own scope too. Whether there is a later edition "
                           "than 2009 was not found "
                           "out."};
constexpr Origin kAirThroughWall{
    Provenance::Secondary, kAirBs5440, "A gas-safety page with ventilation arithmetic",
    "The page enlarges any vent through an inside wall; from memory the standard "
    "does so only beyond the first wall. The stricter is taken: any."};
constexpr Origin kAirSeveral{
    Provenance::Memory, kAirBs5440, "from memory",
    "The greatest of: all flueless heaters, all open-flued heaters, the largest other. "
    "1 means that only the greatest of the three counts; 3 adds them all."};
constexpr Origin kAirFires{
    Provenance::Memory, "BS 5440-2, BS 5871", "from memory",
    "Remembered well; the maker's instructions come first, and Approved Document J has a table of its own."};
constexpr Origin kAirCookers{
    Provenance::Published, kAirBs5440Cookers,
    "Six cooker makers' pages that print the table, of the 1989 and 2000 editions",
    "One 1989 page asks for none where a door opens to outside and the room is over 1 "
    "m\u00B3; the larger vent is kept. Not checked against the 2009 edition."};
constexpr Origin kAirBedSit{Provenance::Published, kAirBs5440Cookers, "Six cooker makers' pages",
                            "Some pages say 20, some 21 m\u00B3: the stricter is taken."};
constexpr Origin kAirBasement{
    Provenance::Published, kAirBs5440Cookers, "Cooker makers' pages",
    "\"About 100 cm\u00B2 advisable\": advice, so that less is to be looked at again."};
constexpr Origin kAirWaterHeater{Provenance::Memory, kAirBs5440, "from memory",
                                 "Read the row in your copy before you go by it."};
constexpr Origin kAirFlueless{Provenance::Secondary, kAirBs5440,
                              "An exam revision page on fires and flueless heaters (2013)"};
constexpr Origin kAirCabinet{Provenance::Secondary, "BS 5440-2, BS EN 449",
                             "An exam revision page on fires and flueless heaters (2013)",
                             "The page prints 446 for the appliance standard."};
constexpr Origin kAirPlant{Provenance::Published, kAirBs6644,
                           "Three commercial boiler makers' ventilation pages"};
constexpr Origin kAirPlantScope{Provenance::Memory, kAirBs6644, "from memory",
                                "Read the scope in your copy: 70 kW to 1.8 MW net is remembered."};
constexpr Origin kAirEnclosure{Provenance::Published, "BS 6644:2005",
                               "Boiler suppliers' quick guides to BS 6644:2005",
                               "Which row holds at exactly half or three quarters is not said."};
constexpr Origin kAirPlantHeat{
    Provenance::Published, "BS 6644:2005", "An article on plant room ventilation",
    "For the ceiling a guide to the 2011 edition prints 42 degrees: the stricter is "
    "taken."};
constexpr Origin kAirEh40{Provenance::Secondary, "HSE EH40/2005, workplace exposure limits",
                          "An indoor-air-quality guide; from memory in force since August 2018",
                          "A limit for people at work, not for a home."};
constexpr Origin kAirDanger{
    Provenance::Secondary, "HSE EH40/2005, workplace exposure limits",
    "An indoor-air-quality guide: the limit for a mean of 8 hours",
    "Taken for any single reading, as nobody knows how long people have been in the "
    "room. Stricter than the guideline of 25 ppm for an hour (WHO Europe, 2nd edition)."};
constexpr Origin kAirWho8h{Provenance::Published, "WHO Air Quality Guidelines for Europe, 2nd edition",
                           "A journal's table of the guideline values: 10 ppm for 8 hours",
                           "Taken for any single reading: it warns, and fails nothing."};
constexpr Origin kAirWhoBlood{Provenance::Published, "WHO Air Quality Guidelines for Europe, 2nd edition",
                              "A journal's table of the guideline values: carboxyhaemoglobin 2.5 %"};

struct AirRow {
    Rule rule;
    std::int64_t mantissa;
    int decimals;
    UnitCode unit;
    Comparison comparison;
    const Origin& origin;
};

constexpr auto kAirMost = Comparison::AtMost;
constexpr auto kAirLeast = Comparison::AtLeast;
constexpr auto kAirAs = Comparison::AsGiven;

const std::array kVentRows{
    AirRow{Rule::VentAdventitiousInput, 7, 0, UnitCode::Kilowatt, kAirAs, kAirGuides},
    AirRow{Rule::VentOpenFluedPerKilowatt, 5, 0, UnitCode::None, kAirAs, kAirGuides},
    AirRow{Rule::VentScopeInput, 70, 0, UnitCode::Kilowatt, kAirMost, kAirScope},
    AirRow{Rule::VentThroughWallFactor, 15, 1, UnitCode::None, kAirAs, kAirThroughWall},
    AirRow{Rule::VentSeveralGroups, 1, 0, UnitCode::None, kAirAs, kAirSeveral},
    AirRow{Rule::VentDecorativeFire, 100, 0, UnitCode::SquareCentimetre, kAirLeast, kAirFires},
    AirRow{Rule::VentDecorativeInputMost, 20, 0, UnitCode::Kilowatt, kAirMost, kAirFires},
    AirRow{Rule::VentFireInputWithout, 7, 0, UnitCode::Kilowatt, kAirMost, kAirFires},
    AirRow{Rule::VentOpenToRoomHigh, 10, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentOpenToRoomLow, 20, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentOpenOutsideHigh, 5, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentOpenOutsideLow, 10, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentSealedToRoomHigh, 10, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentSealedToRoomLow, 10, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentSealedOutsideHigh, 5, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentSealedOutsideLow, 5, 0, UnitCode::None, kAirAs, kAirCompartments},
    AirRow{Rule::VentCookerVolumeSmall, 5, 0, UnitCode::CubicMetre, Comparison::Below, kAirCookers},
    AirRow{Rule::VentCookerVolumeMedium, 10, 0, UnitCode::CubicMetre, kAirMost, kAirCookers},
    AirRow{Rule::VentCookerSmall, 100, 0, UnitCode::SquareCentimetre, kAirLeast, kAirCookers},
    AirRow{Rule::VentCookerMedium, 50, 0, UnitCode::SquareCentimetre, kAirLeast, kAirCookers},
    AirRow{Rule::VentCookerBedSit, 21, 0, UnitCode::CubicMetre, kAirLeast, kAirBedSit},
    AirRow{Rule::VentCookerBasement, 100, 0, UnitCode::SquareCentimetre, kAirLeast, kAirBasement},
    AirRow{Rule::VentWaterHeaterInputMost, 11, 0, UnitCode::Kilowatt, kAirMost, kAirWaterHeater},
    AirRow{Rule::VentWaterHeaterVolumeLeast, 5, 0, UnitCode::CubicMetre, kAirLeast, kAirWaterHeater},
    AirRow{Rule::VentWaterHeaterVolumeMedium, 10, 0, UnitCode::CubicMetre, kAirMost, kAirWaterHeater},
    AirRow{Rule::VentWaterHeaterVolumeLarge, 20, 0, UnitCode::CubicMetre, kAirMost, kAirWaterHeater},
    AirRow{Rule::VentWaterHeaterSmall, 100, 0, UnitCode::SquareCentimetre, kAirLeast, kAirWaterHeater},
    AirRow{Rule::VentWaterHeaterMedium, 50, 0, UnitCode::SquareCentimetre, kAirLeast, kAirWaterHeater},
    AirRow{Rule::VentHeaterWattsRoom, 45, 0, UnitCode::None, kAirMost, kAirFlueless},
    AirRow{Rule::VentHeaterWattsInternal, 90, 0, UnitCode::None, kAirMost, kAirFlueless},
    AirRow{Rule::VentHeaterBase, 100, 0, UnitCode::SquareCentimetre, kAirLeast, kAirFlueless},
    AirRow{Rule::VentHeaterInputRoom, 27, 1, UnitCode::Kilowatt, kAirAs, kAirFlueless},
    AirRow{Rule::VentHeaterPerKilowattRoom, 55, 0, UnitCode::None, kAirAs, kAirFlueless},
    AirRow{Rule::VentHeaterInputInternal, 54, 1, UnitCode::Kilowatt, kAirAs, kAirFlueless},
    AirRow{Rule::VentHeaterPerKilowattInternal, 275, 1, UnitCode::None, kAirAs, kAirFlueless},
    AirRow{Rule::VentCabinetWattsRoom, 50, 0, UnitCode::None, kAirMost, kAirCabinet},
    AirRow{Rule::VentCabinetWattsInternal, 100, 0, UnitCode::None, kAirMost, kAirCabinet},
    AirRow{Rule::VentCabinetVolumeLeast, 15, 0, UnitCode::CubicMetre, kAirLeast, kAirCabinet},
    AirRow{Rule::VentCabinetPerKilowatt, 25, 0, UnitCode::None, kAirAs, kAirCabinet},
    AirRow{Rule::VentCabinetLeast, 50, 0, UnitCode::SquareCentimetre, kAirLeast, kAirCabinet},
};

const std::array kPlantRows{
    AirRow{Rule::PlantInputMost, 1800, 0, UnitCode::Kilowatt, kAirMost, kAirPlantScope},
    AirRow{Rule::PlantRoomLow, 4, 0, UnitCode::None, kAirAs, kAirPlant},
    AirRow{Rule::PlantRoomHigh, 2, 0, UnitCode::None, kAirAs, kAirPlant},
    AirRow{Rule::PlantEnclosureLowHalf, 10, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantEnclosureHighHalf, 5, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantEnclosureLowMost, 11, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantEnclosureHighMost, 6, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantEnclosureLowAll, 12, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantEnclosureHighAll, 7, 0, UnitCode::None, kAirAs, kAirEnclosure},
    AirRow{Rule::PlantSummerMost, 1, 0, UnitCode::None, kAirAs, kAirPlant},
    AirRow{Rule::PlantSummerAll, 2, 0, UnitCode::None, kAirAs, kAirPlant},
    AirRow{Rule::PlantTemperatureFloor, 25, 0, UnitCode::Celsius, kAirMost, kAirPlantHeat},
    AirRow{Rule::PlantTemperatureMiddle, 32, 0, UnitCode::Celsius, kAirMost, kAirPlantHeat},
    AirRow{Rule::PlantTemperatureCeiling, 40, 0, UnitCode::Celsius, kAirMost, kAirPlantHeat},
};

const std::array kCoRows{
    AirRow{Rule::RoomCoShortLimit, 100, 0, UnitCode::Ppm, kAirMost, kAirEh40},
    AirRow{Rule::RoomCoLongLimit, 20, 0, UnitCode::Ppm, kAirMost, kAirEh40},
    AirRow{Rule::RoomCoDangerFrom, 20, 0, UnitCode::Ppm, Comparison::Below, kAirDanger},
    AirRow{Rule::RoomCoRaisedFrom, 10, 0, UnitCode::Ppm, Comparison::Below, kAirWho8h},
    AirRow{Rule::RoomCoBloodLimit, 25, 1, UnitCode::Percent, Comparison::Below, kAirWhoBlood},
};

struct AirEmptyRow {
    Rule rule;
    Comparison comparison;
    std::string_view standard;
    std::string_view doubt;
};

// What is remembered of each is told as a doubt, so that the firm knows what to look for; it decides nothing.
constexpr std::array kAirEmptyRows{
    AirEmptyRow{
        Rule::VentTightPerKilowatt, kAirAs, "Approved Document J",
        "The document asks for larger vents where the air permeability is 5 m\u00B3/(h\u00B7m\u00B2) or "
        "less; the figure "
        "was not visible (uncertain memory: 5 cm\u00B2 for each kW, nothing deducted)."},
    AirEmptyRow{Rule::VentMakersArea, kAirLeast, "Maker's instructions",
                "The maker's figure is kept with the appliance and comes before every rule."},
    AirEmptyRow{
        Rule::VentDryer, kAirLeast, "BS 7624, BS 5440-2",
        "Not read (uncertain memory: 100 cm\u00B2 in rooms under 3.7 m\u00B3 for each kW, dryers to 6 "
        "kW)."},
    AirEmptyRow{Rule::RoomCoNoActionMost, kAirMost, kAirBs7967,
                "Not read (uncertain memory: 10 ppm, steady). Sources in circulation differ."},
    AirEmptyRow{Rule::RoomCoLeaveFrom, Comparison::Below, kAirBs7967,
                "Not read (uncertain memory: 30 ppm and rising). Sources in circulation differ."},
    AirEmptyRow{Rule::RoomCoCookerPeakMost, kAirMost, kAirBs7967,
                "Not read (very uncertain memory: 90 ppm for a short time, falling below 30)."},
    AirEmptyRow{Rule::RoomCoSampleHeight, kAirAs, kAirBs7967,
                "Not read (uncertain memory: about 2 m; others say breathing height, 1.5 m)."},
    AirEmptyRow{Rule::RoomCoSampleDistance, kAirLeast, kAirBs7967, "Not read (uncertain memory: 1 m)."},
    AirEmptyRow{Rule::RoomCoTimeFlued, kAirLeast, kAirBs7967,
                "Not read (uncertain memory: 15 min, longer while the readings rise)."},
    AirEmptyRow{Rule::RoomCoTimeFlueless, kAirLeast, kAirBs7967, "Not read (very uncertain memory: 30 min)."},
};

template <class Rows>
void addAirRows(std::vector<Entry>& entries, const Rows& rows) {
    for (const auto& row : rows) {
        entries.push_back(
            entry({row.rule}, number(row.mantissa, row.decimals, row.unit), row.comparison, row.origin));
    }
}

}  // namespace

void addAir(std::vector<Entry>& entries) {
    addAirRows(entries, kVentRows);
    addAirRows(entries, kPlantRows);
    addAirRows(entries, kCoRows);
    for (const auto& row : kAirEmptyRows) {
        auto empty = emptyEntry({row.rule}, row.comparison, row.doubt);
        empty.standard = row.standard;
        entries.push_back(std::move(empty));
    }
}

}  // namespace hearth::rulebook::shipped
