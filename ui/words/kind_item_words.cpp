// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/work_item_words.h"

#include <array>

namespace hearth::ui::words {

namespace {

using reg::Item;

constexpr std::array kKindItemTexts{
    // the LPG system of a leisure vehicle or a boat
    ItemText{Item::LpgDataBadge, QT_TRANSLATE_NOOP("Words", "Data badge"),
             QT_TRANSLATE_NOOP("Words", "Year and standard of construction, as the badge says.")},
    ItemText{Item::LpgUnitNumber, QT_TRANSLATE_NOOP("Words", "Serial, pitch, berth or hull number"), ""},
    ItemText{Item::LpgUse, QT_TRANSLATE_NOOP("Words", "Used"),
             QT_TRANSLATE_NOOP("Words", "One that is let falls under the landlord's duties.")},
    ItemText{Item::LpgCylinders, QT_TRANSLATE_NOOP("Words", "Cylinders: type and size"), ""},
    ItemText{Item::LpgCylinderPlace, QT_TRANSLATE_NOOP("Words", "Where the cylinders stand"), ""},
    ItemText{Item::LpgCylindersSecured, QT_TRANSLATE_NOOP("Words", "Cylinders upright and secured"), ""},
    ItemText{Item::LpgRegulator, QT_TRANSLATE_NOOP("Words", "Regulator: type"), ""},
    ItemText{Item::LpgRegulatorDate, QT_TRANSLATE_NOOP("Words", "Regulator: date on it"), ""},
    ItemText{Item::LpgHoseDates, QT_TRANSLATE_NOOP("Words", "Hoses: dates on them"), ""},
    ItemText{Item::LpgShutOffs, QT_TRANSLATE_NOOP("Words", "Over-pressure and under-pressure shut-off"), ""},
    ItemText{Item::LpgLockUp, QT_TRANSLATE_NOOP("Words", "Lock-up pressure"),
             QT_TRANSLATE_NOOP("Words", "Noted, not judged: no limit of it is known here.")},
    ItemText{Item::LpgBubbleTester, QT_TRANSLATE_NOOP("Words", "Bubble tester"), ""},
    ItemText{Item::LpgVentilation, QT_TRANSLATE_NOOP("Words", "Fixed ventilation, high and low"), ""},
    ItemText{Item::LpgVentHigh, QT_TRANSLATE_NOOP("Words", "Fixed vents, high"),
             QT_TRANSLATE_NOOP("Words", "Noted, not judged: no limit of it is known here.")},
    ItemText{Item::LpgVentLow, QT_TRANSLATE_NOOP("Words", "Fixed vents, low"),
             QT_TRANSLATE_NOOP("Words", "Noted, not judged: no limit of it is known here.")},
    ItemText{Item::LpgDrains, QT_TRANSLATE_NOOP("Words", "Drain and bilge openings"), ""},
    // catering
    ItemText{Item::CateringInterlock, QT_TRANSLATE_NOOP("Words", "Interlock of extract and gas"), ""},
    ItemText{Item::CateringInterlockProved, QT_TRANSLATE_NOOP("Words", "Interlock proved by a test"), ""},
    ItemText{Item::CateringShutOff, QT_TRANSLATE_NOOP("Words", "Emergency shut-off"), ""},
    ItemText{Item::CateringGasProving, QT_TRANSLATE_NOOP("Words", "Gas proving"), ""},
    ItemText{Item::CateringExtract, QT_TRANSLATE_NOOP("Words", "Canopy and fan"), ""},
    ItemText{Item::CateringMakeUpAir, QT_TRANSLATE_NOOP("Words", "Make-up air"), ""},
    ItemText{Item::CateringCo2Place, QT_TRANSLATE_NOOP("Words", "Where the kitchen's air was read"), ""},
    ItemText{Item::CateringCo2Start, QT_TRANSLATE_NOOP("Words", "CO₂ in the kitchen, at the start"),
             QT_TRANSLATE_NOOP("Words",
                               "With all appliances on. Noted, not judged: 2800 ppm is known from "
                               "memory of IGEM/UP/19 only. Look in your copy of it.")},
    ItemText{Item::CateringCo2End, QT_TRANSLATE_NOOP("Words", "CO₂ in the kitchen, at the end"),
             QT_TRANSLATE_NOOP("Words",
                               "With all appliances on. Noted, not judged: 2800 ppm is known from "
                               "memory of IGEM/UP/19 only. Look in your copy of it.")},
    ItemText{Item::CateringCo, QT_TRANSLATE_NOOP("Words", "CO in the kitchen"),
             QT_TRANSLATE_NOOP("Words",
                               "With all appliances on. Noted, not judged here: readings in the room "
                               "are judged by a room investigation.")},
    // an unvented cylinder
    ItemText{Item::UnventedCapacity, QT_TRANSLATE_NOOP("Words", "Capacity"),
             QT_TRANSLATE_NOOP("Words", "An unvented cylinder is noted only: nothing of it is judged.")},
    ItemText{Item::UnventedExpansion, QT_TRANSLATE_NOOP("Words", "Expansion vessel or space"), ""},
    ItemText{Item::UnventedRelief, QT_TRANSLATE_NOOP("Words", "Temperature and pressure relief valve"), ""},
    ItemText{Item::UnventedPressureValves,
             QT_TRANSLATE_NOOP("Words", "Pressure reducing and expansion valves"), ""},
    ItemText{Item::UnventedDischarge1, QT_TRANSLATE_NOOP("Words", "Discharge pipe D1"), ""},
    ItemText{Item::UnventedDischarge2, QT_TRANSLATE_NOOP("Words", "Discharge pipe D2"), ""},
    ItemText{Item::UnventedCompetence, QT_TRANSLATE_NOOP("Words", "Number of the competence for it"), ""},
    // decommissioned and capped
    ItemText{Item::CappedHow, QT_TRANSLATE_NOOP("Words", "How it is sealed"),
             QT_TRANSLATE_NOOP("Words", "A valve that is only shut is no seal.")},
    ItemText{Item::CappedWhere, QT_TRANSLATE_NOOP("Words", "Where it is sealed"), ""},
    ItemText{Item::CappedProved, QT_TRANSLATE_NOOP("Words", "Seal proved free of leaks"), ""},
    ItemText{Item::CappedLabel, QT_TRANSLATE_NOOP("Words", "Label on it that says so"), ""},
};

}  // namespace

std::span<const ItemText> kindItemTexts() {
    return kKindItemTexts;
}

}  // namespace hearth::ui::words
