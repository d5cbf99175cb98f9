// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/text_table.h"
#include "ui/words/words.h"
#include "ui/words/work_item_words.h"

namespace hearth::ui::words {

namespace {

using reg::Item;

constexpr std::array kItems{
    ItemText{Item::VisitReference, QT_TRANSLATE_NOOP("Words", "Customer's reference"),
             QT_TRANSLATE_NOOP("Words", "An order or job number, if there is one.")},
    ItemText{Item::VisitPresent, QT_TRANSLATE_NOOP("Words", "Who was there"), ""},
    ItemText{Item::SmellOnArrival, QT_TRANSLATE_NOOP("Words", "Smell of gas on arrival"),
             QT_TRANSLATE_NOOP("Words", "Yes: deal with the escape first (F12).")},
    ItemText{Item::OpenEnds, QT_TRANSLATE_NOOP("Words", "Open ends"),
             QT_TRANSLATE_NOOP("Words", "Walk the whole installation before any pressure goes on.")},
    ItemText{Item::SafeToTouch, QT_TRANSLATE_NOOP("Words", "Pipe safe to touch"),
             QT_TRANSLATE_NOOP("Words", "Sweep exposed metal pipe with a no-contact voltage detector.")},
    ItemText{Item::VisualInspection, QT_TRANSLATE_NOOP("Words", "Visual inspection"), ""},
    ItemText{Item::VisualNotes, QT_TRANSLATE_NOOP("Words", "What was seen"), ""},

    ItemText{Item::TestEdition, QT_TRANSLATE_NOOP("Words", "Tested to"),
             QT_TRANSLATE_NOOP("Words", "From 1 October 2026 Edition 4 only.")},
    ItemText{Item::TestWork, QT_TRANSLATE_NOOP("Words", "Pipework tested"), ""},
    ItemText{Item::TestExtent, QT_TRANSLATE_NOOP("Words", "How much was tested"), ""},
    ItemText{Item::TestPartDescription, QT_TRANSLATE_NOOP("Words", "Which part"),
             QT_TRANSLATE_NOOP("Words", "From where to where, so that another can find it.")},
    ItemText{Item::TestAppliances, QT_TRANSLATE_NOOP("Words", "Appliances during the test"), ""},
    ItemText{Item::TestIsolatedWhat, QT_TRANSLATE_NOOP("Words", "What was open and shut"),
             QT_TRANSLATE_NOOP("Words", "Which valves, which appliances.")},
    ItemText{Item::TestPilots, QT_TRANSLATE_NOOP("Words", "Pilot lights"), ""},
    ItemText{Item::TestGauge, QT_TRANSLATE_NOOP("Words", "Gauge"), ""},
    ItemText{Item::TestGaugeZeroed, QT_TRANSLATE_NOOP("Words", "Gauge zeroed before connecting"), ""},
    ItemText{Item::TestSmell, QT_TRANSLATE_NOOP("Words", "Smell of gas during the test"),
             QT_TRANSLATE_NOOP("Words", "Any smell of gas fails, whatever the gauge shows.")},
    ItemText{Item::TestVolumeTyped, QT_TRANSLATE_NOOP("Words", "Volume from elsewhere"),
             QT_TRANSLATE_NOOP("Words", "Used instead of the pipe list.")},

    ItemText{
        Item::TestPipesShut, QT_TRANSLATE_NOOP("Words", "Pipes shut off"),
        QT_TRANSLATE_NOOP("Words",
                          "As the pipe list numbers or names them: 3, hob. A name stays right when the list "
                          "changes. What follows them was not reached.")},
    ItemText{Item::LetByStart, QT_TRANSLATE_NOOP("Words", "Let-by, start"), ""},
    ItemText{Item::LetByEnd, QT_TRANSLATE_NOOP("Words", "Let-by, end"), ""},
    ItemText{Item::LetByStartedAt, QT_TRANSLATE_NOOP("Words", "Let-by, from"), ""},
    ItemText{Item::LetByEndedAt, QT_TRANSLATE_NOOP("Words", "Let-by, to"), ""},

    ItemText{Item::SettleStart, QT_TRANSLATE_NOOP("Words", "Settling, start"), ""},
    ItemText{Item::SettleEnd, QT_TRANSLATE_NOOP("Words", "Settling, end"), ""},
    ItemText{Item::SettleStartedAt, QT_TRANSLATE_NOOP("Words", "Settling, from"), ""},
    ItemText{Item::SettleEndedAt, QT_TRANSLATE_NOOP("Words", "Settling, to"), ""},

    ItemText{Item::TightStart, QT_TRANSLATE_NOOP("Words", "Tightness, start"), ""},
    ItemText{Item::TightEnd, QT_TRANSLATE_NOOP("Words", "Tightness, end"), ""},
    ItemText{Item::TightStartedAt, QT_TRANSLATE_NOOP("Words", "Tightness, from"), ""},
    ItemText{Item::TightEndedAt, QT_TRANSLATE_NOOP("Words", "Tightness, to"), ""},
    ItemText{Item::SecondDisplayStart, QT_TRANSLATE_NOOP("Words", "Second display, start"),
             QT_TRANSLATE_NOOP("Words", "The same gauge read on another display, if there is one.")},
    ItemText{Item::SecondDisplayEnd, QT_TRANSLATE_NOOP("Words", "Second display, end"), ""},
    ItemText{Item::LowPressureReason, QT_TRANSLATE_NOOP("Words", "Why the pressure could not be reached"),
             ""},
    ItemText{Item::AssumedTemperatureChange, QT_TRANSLATE_NOOP("Words", "Temperature change assumed"),
             QT_TRANSLATE_NOOP("Words", "How far the gas may have warmed or cooled during the test.")},
    ItemText{Item::TestVolumeOff, QT_TRANSLATE_NOOP("Words", "How far the volume may be off"),
             QT_TRANSLATE_NOOP("Words", "Either way; left empty, leaks are told as if it were exact.")},

    ItemText{Item::RetestStart, QT_TRANSLATE_NOOP("Words", "Retest, start"),
             QT_TRANSLATE_NOOP("Words", "Repeat with the appliances isolated at their valves.")},
    ItemText{Item::RetestEnd, QT_TRANSLATE_NOOP("Words", "Retest, end"), ""},
    ItemText{Item::RetestStartedAt, QT_TRANSLATE_NOOP("Words", "Retest, from"), ""},
    ItemText{Item::RetestEndedAt, QT_TRANSLATE_NOOP("Words", "Retest, to"), ""},

    ItemText{Item::PurgeDone, QT_TRANSLATE_NOOP("Words", "Purged"), ""},
    ItemText{Item::PurgeMethod, QT_TRANSLATE_NOOP("Words", "Purged through"), ""},
    ItemText{Item::PurgeVolumePassed, QT_TRANSLATE_NOOP("Words", "Volume passed at the meter"), ""},
    ItemText{Item::PurgeSteadyFlame, QT_TRANSLATE_NOOP("Words", "Steady flame at every appliance"), ""},

    ItemText{Item::TestPointProved, QT_TRANSLATE_NOOP("Words", "Test point proved with leak detection fluid"),
             ""},
    ItemText{Item::DisturbedJointsProved,
             QT_TRANSLATE_NOOP("Words", "Disturbed joints proved with leak detection fluid"),
             QT_TRANSLATE_NOOP("Words", "Also joints that the test did not cover, and any purge point.")},
    ItemText{Item::FluidWiped, QT_TRANSLATE_NOOP("Words", "Fluid wiped off"), ""},
    ItemText{Item::StandingPressure, QT_TRANSLATE_NOOP("Words", "Standing pressure at the meter"), ""},
    ItemText{Item::WorkingPressure, QT_TRANSLATE_NOOP("Words", "Working pressure at the meter"), ""},
    ItemText{Item::WorkingLoad, QT_TRANSLATE_NOOP("Words", "With what burning"),
             QT_TRANSLATE_NOOP("Words", "Which appliances, at what setting.")},

    ItemText{Item::VisitRemarks, QT_TRANSLATE_NOOP("Words", "Remarks"), ""},
    ItemText{Item::SignedByEngineer, QT_TRANSLATE_NOOP("Words", "Signed by the engineer"),
             QT_TRANSLATE_NOOP("Words", "Name, typed in place of a signature.")},
    ItemText{Item::ReceivedBy, QT_TRANSLATE_NOOP("Words", "Received by"),
             QT_TRANSLATE_NOOP("Words", "Name of who took the record; may be left empty.")},
};

const ItemText& textOfItem(Item item) {
    const auto isIt = [&](const ItemText& t) { return t.code == item; };
    if (const auto* found = std::find_if(kItems.begin(), kItems.end(), isIt); found != kItems.end()) {
        return *found;
    }
    for (const auto others : {workItemTexts(), visitItemTexts(), kindItemTexts()}) {
        if (const auto found = std::find_if(others.begin(), others.end(), isIt); found != others.end()) {
            return *found;
        }
    }
    Q_UNREACHABLE();
}

struct ChoiceText {
    std::string_view code;
    const char* label;
};

namespace choice = reg::choice;

constexpr std::array kChoices{
    ChoiceText{choice::kNoneDisturbed, QT_TRANSLATE_NOOP("Words", "none disturbed")},
    ChoiceText{choice::kYes, QT_TRANSLATE_NOOP("Words", "yes")},
    ChoiceText{choice::kNo, QT_TRANSLATE_NOOP("Words", "no")},
    ChoiceText{choice::kNotNeeded, QT_TRANSLATE_NOOP("Words", "not needed")},
    ChoiceText{choice::kNoneSeen, QT_TRANSLATE_NOOP("Words", "none seen")},
    ChoiceText{choice::kFoundSealed, QT_TRANSLATE_NOOP("Words", "found and sealed")},
    ChoiceText{choice::kFoundOpen, QT_TRANSLATE_NOOP("Words", "found open")},
    ChoiceText{choice::kNotLooked, QT_TRANSLATE_NOOP("Words", "not looked for")},
    ChoiceText{choice::kSafe, QT_TRANSLATE_NOOP("Words", "safe")},
    ChoiceText{choice::kVoltage, QT_TRANSLATE_NOOP("Words", "voltage found")},
    ChoiceText{choice::kNotDone, QT_TRANSLATE_NOOP("Words", "not done")},
    ChoiceText{choice::kSound, QT_TRANSLATE_NOOP("Words", "sound")},
    ChoiceText{choice::kDefects, QT_TRANSLATE_NOOP("Words", "defects noted")},
    ChoiceText{choice::kNew, QT_TRANSLATE_NOOP("Words", "new")},
    ChoiceText{choice::kExisting, QT_TRANSLATE_NOOP("Words", "existing")},
    ChoiceText{choice::kWhole, QT_TRANSLATE_NOOP("Words", "whole installation")},
    ChoiceText{choice::kPart, QT_TRANSLATE_NOOP("Words", "a part")},
    ChoiceText{choice::kConnected, QT_TRANSLATE_NOOP("Words", "connected, all off")},
    ChoiceText{choice::kIsolated, QT_TRANSLATE_NOOP("Words", "isolated at their valves")},
    ChoiceText{choice::kNoneConnected, QT_TRANSLATE_NOOP("Words", "none connected")},
    ChoiceText{choice::kOut, QT_TRANSLATE_NOOP("Words", "out")},
    ChoiceText{choice::kNoneFitted, QT_TRANSLATE_NOOP("Words", "none fitted")},
    ChoiceText{choice::kLeftLit, QT_TRANSLATE_NOOP("Words", "left lit")},
    ChoiceText{choice::kOpenBurner, QT_TRANSLATE_NOOP("Words", "an open burner")},
    ChoiceText{choice::kVentilatedPlace,
               QT_TRANSLATE_NOOP("Words", "to a ventilated place, no source of ignition")},
    ChoiceText{choice::kNaturalGas, QT_TRANSLATE_NOOP("Words", "natural gas")},
    ChoiceText{choice::kPropane, QT_TRANSLATE_NOOP("Words", "propane")},
    ChoiceText{choice::kButane, QT_TRANSLATE_NOOP("Words", "butane")},
    ChoiceText{choice::kLpgAir, QT_TRANSLATE_NOOP("Words", "LPG-air")},
    ChoiceText{choice::kNaturalTypical, QT_TRANSLATE_NOOP("Words", "usual British mix")},
    ChoiceText{choice::kNaturalRichInCo2, QT_TRANSLATE_NOOP("Words", "usual mix, richer in CO₂")},
    ChoiceText{choice::kG20, QT_TRANSLATE_NOOP("Words", "G20 (methane)")},
    ChoiceText{choice::kG21, QT_TRANSLATE_NOOP("Words", "G21")},
    ChoiceText{choice::kG23, QT_TRANSLATE_NOOP("Words", "G23")},
    ChoiceText{choice::kG25, QT_TRANSLATE_NOOP("Words", "G25")},
    ChoiceText{choice::kG30, QT_TRANSLATE_NOOP("Words", "G30 (butane)")},
    ChoiceText{choice::kG31, QT_TRANSLATE_NOOP("Words", "G31 (propane)")},
    ChoiceText{choice::kTyped, QT_TRANSLATE_NOOP("Words", "typed in")},
    ChoiceText{choice::kAreaA, QT_TRANSLATE_NOOP("Words", "inside, small or poorly ventilated")},
    ChoiceText{choice::kAreaB, QT_TRANSLATE_NOOP("Words", "inside, a ventilated room")},
    ChoiceText{choice::kAreaC, QT_TRANSLATE_NOOP("Words", "inside, a large ventilated room")},
    ChoiceText{choice::kBuried, QT_TRANSLATE_NOOP("Words", "buried")},
    ChoiceText{choice::kWater, QT_TRANSLATE_NOOP("Words", "water gauge, to 120 mbar")},
    ChoiceText{choice::kHeavyFluid, QT_TRANSLATE_NOOP("Words", "gauge with heavy fluid (1.99), to 200 mbar")},
    ChoiceText{choice::kElectronic1, QT_TRANSLATE_NOOP("Words", "electronic, one decimal, to 200 mbar")},
    ChoiceText{choice::kElectronic2, QT_TRANSLATE_NOOP("Words", "electronic, two decimals, to 200 mbar")},
    ChoiceText{choice::kElectronic1Wide, QT_TRANSLATE_NOOP("Words", "electronic, one decimal, to 2 bar")},
    ChoiceText{choice::kElectronic0, QT_TRANSLATE_NOOP("Words", "electronic, no decimals, to 20 bar")},
    ChoiceText{choice::kMercury, QT_TRANSLATE_NOOP("Words", "mercury gauge, to 1 bar")},
    ChoiceText{choice::kFuelGas, QT_TRANSLATE_NOOP("Words", "the fuel gas")},
    ChoiceText{choice::kAirOrNitrogen, QT_TRANSLATE_NOOP("Words", "air or nitrogen")},
    ChoiceText{choice::kCondensingBoiler, QT_TRANSLATE_NOOP("Words", "condensing boiler")},
    ChoiceText{choice::kNonCondensingBoiler, QT_TRANSLATE_NOOP("Words", "boiler, not condensing")},
    ChoiceText{choice::kWarmAirHeater, QT_TRANSLATE_NOOP("Words", "warm-air heater, circulator")},
    ChoiceText{choice::kBackBoilerFire, QT_TRANSLATE_NOOP("Words", "fire before a back boiler")},
    ChoiceText{choice::kGasFire, QT_TRANSLATE_NOOP("Words", "fire, open-flued space heater")},
    ChoiceText{choice::kOpenFluedWaterHeater, QT_TRANSLATE_NOOP("Words", "water heater, open-flued")},
    ChoiceText{choice::kRoomSealedWaterHeater, QT_TRANSLATE_NOOP("Words", "water heater, room-sealed")},
    ChoiceText{choice::kFluelessSpaceHeater, QT_TRANSLATE_NOOP("Words", "space heater, flueless")},
    ChoiceText{choice::kRangeCooker, QT_TRANSLATE_NOOP("Words", "range cooker with a flue")},
    ChoiceText{choice::kTumbleDryer, QT_TRANSLATE_NOOP("Words", "tumble dryer")},
    ChoiceText{choice::kDecorativeFire, QT_TRANSLATE_NOOP("Words", "decorative fuel effect fire")},
    ChoiceText{choice::kCabinetHeater, QT_TRANSLATE_NOOP("Words", "LPG cabinet heater")},
    ChoiceText{choice::kBackBoiler, QT_TRANSLATE_NOOP("Words", "back boiler")},
    ChoiceText{choice::kFluelessWaterHeater, QT_TRANSLATE_NOOP("Words", "flueless water heater")},
    ChoiceText{choice::kOven, QT_TRANSLATE_NOOP("Words", "oven")},
    ChoiceText{choice::kGrill, QT_TRANSLATE_NOOP("Words", "grill")},
    ChoiceText{choice::kHotplate, QT_TRANSLATE_NOOP("Words", "hotplate")},
    ChoiceText{choice::kOther, QT_TRANSLATE_NOOP("Words", "another")},
    ChoiceText{choice::kRoomSealed, QT_TRANSLATE_NOOP("Words", "room-sealed")},
    ChoiceText{choice::kOpenFlued, QT_TRANSLATE_NOOP("Words", "open-flued")},
    ChoiceText{choice::kFlueless, QT_TRANSLATE_NOOP("Words", "flueless")},
    ChoiceText{choice::kNet, QT_TRANSLATE_NOOP("Words", "net")},
    ChoiceText{choice::kGross, QT_TRANSLATE_NOOP("Words", "gross")},
    ChoiceText{choice::kMetric, QT_TRANSLATE_NOOP("Words", "metric (m³)")},
    ChoiceText{choice::kImperial, QT_TRANSLATE_NOOP("Words", "imperial (ft³)")},
    ChoiceText{choice::kByHand, QT_TRANSLATE_NOOP("Words", "volume worked out by hand")},
    ChoiceText{choice::kDial1, QT_TRANSLATE_NOOP("Words", "1 ft³")},
    ChoiceText{choice::kDial2, QT_TRANSLATE_NOOP("Words", "2 ft³")},
    ChoiceText{choice::kDial5, QT_TRANSLATE_NOOP("Words", "5 ft³")},
    ChoiceText{choice::kDial10, QT_TRANSLATE_NOOP("Words", "10 ft³")},
    ChoiceText{choice::kNone, QT_TRANSLATE_NOOP("Words", "none")},
    ChoiceText{choice::kFixed, QT_TRANSLATE_NOOP("Words", "fixed factor of bills")},
    ChoiceText{choice::kStatutory, QT_TRANSLATE_NOOP("Words", "by pressure, temperature, height")},
    ChoiceText{choice::kRoom, QT_TRANSLATE_NOOP("Words", "a room")},
    ChoiceText{choice::kInternalSpace, QT_TRANSLATE_NOOP("Words", "an internal space: hall, landing")},
    ChoiceText{choice::kBoilerRoom, QT_TRANSLATE_NOOP("Words", "a boiler room, above 70 kW")},
    ChoiceText{choice::kBoilerEnclosure, QT_TRANSLATE_NOOP("Words", "a boiler enclosure, above 70 kW")},
    ChoiceText{choice::kSummerHalf, QT_TRANSLATE_NOOP("Words", "up to half of the time")},
    ChoiceText{choice::kSummerMost, QT_TRANSLATE_NOOP("Words", "half to three quarters")},
    ChoiceText{choice::kSummerAll, QT_TRANSLATE_NOOP("Words", "more than that")},
    ChoiceText{choice::kFlued, QT_TRANSLATE_NOOP("Words", "an appliance with a flue")},
    ChoiceText{choice::kCooker, QT_TRANSLATE_NOOP("Words", "a cooker")},
    ChoiceText{choice::kCompartmentToRoom, QT_TRANSLATE_NOOP("Words", "a compartment, vents to a room")},
    ChoiceText{choice::kCompartmentToOutside, QT_TRANSLATE_NOOP("Words", "a compartment, vents to outside")},
    ChoiceText{choice::kDoor, QT_TRANSLATE_NOOP("Words", "a door")},
    ChoiceText{choice::kUnknown, QT_TRANSLATE_NOOP("Words", "not known")},
    ChoiceText{choice::kOutside, QT_TRANSLATE_NOOP("Words", "straight to outside")},
    ChoiceText{choice::kOneWall, QT_TRANSLATE_NOOP("Words", "through one inside wall")},
    ChoiceText{choice::kMoreWalls, QT_TRANSLATE_NOOP("Words", "through more inside walls")},
    ChoiceText{choice::kHigh, QT_TRANSLATE_NOOP("Words", "high")},
    ChoiceText{choice::kLow, QT_TRANSLATE_NOOP("Words", "low")},
    ChoiceText{choice::kOutdoors, QT_TRANSLATE_NOOP("Words", "outdoors")},
    ChoiceText{choice::kAppliance, QT_TRANSLATE_NOOP("Words", "beside the appliance")},
    ChoiceText{choice::kElsewhere, QT_TRANSLATE_NOOP("Words", "elsewhere")},
    ChoiceText{choice::kGreatBritain, QT_TRANSLATE_NOOP("Words", "England, Wales, Scotland")},
    ChoiceText{choice::kNorthernIreland, QT_TRANSLATE_NOOP("Words", "Northern Ireland")},
    ChoiceText{choice::kBefore2015, QT_TRANSLATE_NOOP("Words", "BS 6891 before 2015")},
    ChoiceText{choice::kFrom2015, QT_TRANSLATE_NOOP("Words", "BS 6891:2015")},
    ChoiceText{choice::kSmall, QT_TRANSLATE_NOOP("Words", "small (IGEM/UP/1B)")},
    ChoiceText{choice::kLarger, QT_TRANSLATE_NOOP("Words", "larger (IGE/UP/1, 1A)")},
    ChoiceText{choice::kLoadHigh, QT_TRANSLATE_NOOP("Words", "high: all heaters at maximum")},
    ChoiceText{choice::kLoadLess, QT_TRANSLATE_NOOP("Words", "less than that")},
    ChoiceText{choice::kGood, QT_TRANSLATE_NOOP("Words", "examined, in order")},
    ChoiceText{choice::kWrong, QT_TRANSLATE_NOOP("Words", "not in order")},
    ChoiceText{choice::kNotFitted, QT_TRANSLATE_NOOP("Words", "examined, there is none")},
    ChoiceText{choice::kInOrder, QT_TRANSLATE_NOOP("Words", "read, in order")},
    ChoiceText{choice::kLookAgain, QT_TRANSLATE_NOOP("Words", "read, to be looked at again")},
    ChoiceText{choice::kNotTaken, QT_TRANSLATE_NOOP("Words", "not read")},
    ChoiceText{choice::kDisconnected, QT_TRANSLATE_NOOP("Words", "gas directly disconnected")},
    ChoiceText{choice::kHarmlessPurging, QT_TRANSLATE_NOOP("Words", "purging that harms nothing")},
    ChoiceText{choice::kAskedAll, QT_TRANSLATE_NOOP("Words", "work on the appliance")},
    ChoiceText{choice::kNoMeter, QT_TRANSLATE_NOOP("Words", "no meter and no test point")},
    ChoiceText{choice::kMeterNotReached, QT_TRANSLATE_NOOP("Words", "meter not accessible")},
    ChoiceText{choice::kDisplayDead, QT_TRANSLATE_NOOP("Words", "meter’s display not working")},
    // of the sheet beyond the pipework
    ChoiceText{choice::kNotApplicable, QT_TRANSLATE_NOOP("Words", "does not apply")},
    ChoiceText{choice::kNotChecked, QT_TRANSLATE_NOOP("Words", "not checked")},
    ChoiceText{choice::kGasOn, QT_TRANSLATE_NOOP("Words", "on")},
    ChoiceText{choice::kGasOff, QT_TRANSLATE_NOOP("Words", "off at the control valve")},
    ChoiceText{choice::kCapped, QT_TRANSLATE_NOOP("Words", "capped")},
    ChoiceText{choice::kNoCredit, QT_TRANSLATE_NOOP("Words", "no credit")},
    ChoiceText{choice::kMeterRemoved, QT_TRANSLATE_NOOP("Words", "meter removed")},
    ChoiceText{choice::kPremisesEmpty, QT_TRANSLATE_NOOP("Words", "premises empty, gas off")},
    ChoiceText{choice::kInspected, QT_TRANSLATE_NOOP("Words", "inspected")},
    ChoiceText{choice::kVisualOnly, QT_TRANSLATE_NOOP("Words", "visual check only")},
    ChoiceText{choice::kNotInspected, QT_TRANSLATE_NOOP("Words", "not inspected")},
    ChoiceText{choice::kNotHidden, QT_TRANSLATE_NOOP("Words", "none of it")},
    ChoiceText{choice::kHatchesAll, QT_TRANSLATE_NOOP("Words", "seen through its hatches")},
    ChoiceText{choice::kHatchesSome, QT_TRANSLATE_NOOP("Words", "seen in part through its hatches")},
    ChoiceText{choice::kNoHatches, QT_TRANSLATE_NOOP("Words", "without hatches, not seen")},
    ChoiceText{choice::kNoneFound, QT_TRANSLATE_NOOP("Words", "none found")},
    ChoiceText{choice::kFound, QT_TRANSLATE_NOOP("Words", "found")},
    ChoiceText{choice::kReplacement, QT_TRANSLATE_NOOP("Words", "a replacement")},
    ChoiceText{choice::kMoved, QT_TRANSLATE_NOOP("Words", "an existing one, moved")},
    ChoiceText{choice::kHeatRecovery, QT_TRANSLATE_NOOP("Words", "flue-gas heat recovery")},
    ChoiceText{choice::kWeather, QT_TRANSLATE_NOOP("Words", "weather compensation")},
    ChoiceText{choice::kLoad, QT_TRANSLATE_NOOP("Words", "load compensation")},
    ChoiceText{choice::kSmartThermostat,
               QT_TRANSLATE_NOOP("Words", "smart thermostat with automation and optimisation")},
    ChoiceText{choice::kInsideDrain, QT_TRANSLATE_NOOP("Words", "an inside drain or stack")},
    ChoiceText{choice::kOutsideDrain, QT_TRANSLATE_NOOP("Words", "an outside drain or gully")},
    ChoiceText{choice::kSoakaway, QT_TRANSLATE_NOOP("Words", "a soakaway")},
    ChoiceText{choice::kPumped, QT_TRANSLATE_NOOP("Words", "a pump")},
    ChoiceText{choice::kAnnual, QT_TRANSLATE_NOOP("Words", "yearly service")},
    ChoiceText{choice::kBreakdown, QT_TRANSLATE_NOOP("Words", "breakdown")},
    ChoiceText{choice::kAfterRepair, QT_TRANSLATE_NOOP("Words", "after a repair")},
    ChoiceText{choice::kAlarmWorks, QT_TRANSLATE_NOOP("Words", "fitted, tested, works")},
    ChoiceText{choice::kAlarmFailed, QT_TRANSLATE_NOOP("Words", "fitted, does not work")},
    ChoiceText{choice::kAlarmUntested, QT_TRANSLATE_NOOP("Words", "fitted, not tested")},
    ChoiceText{choice::kGiven, QT_TRANSLATE_NOOP("Words", "given")},
    ChoiceText{choice::kRefused, QT_TRANSLATE_NOOP("Words", "refused")},
    ChoiceText{choice::kNobodyThere, QT_TRANSLATE_NOOP("Words", "nobody to ask")},
    ChoiceText{choice::kTurnedOff, QT_TRANSLATE_NOOP("Words", "turned off at its own valve")},
    ChoiceText{choice::kValveOff, QT_TRANSLATE_NOOP("Words", "turned off at the emergency control valve")},
    ChoiceText{choice::kPutRight, QT_TRANSLATE_NOOP("Words", "put right at once")},
    ChoiceText{choice::kNotMadeSafe, QT_TRANSLATE_NOOP("Words", "not made safe")},
    ChoiceText{choice::kApplianceOff, QT_TRANSLATE_NOOP("Words", "on, the appliance off")},
    ChoiceText{choice::kSigned, QT_TRANSLATE_NOOP("Words", "signed for")},
    ChoiceText{choice::kCopyLeft, QT_TRANSLATE_NOOP("Words", "not present, copy left")},
    ChoiceText{choice::kDesign, QT_TRANSLATE_NOOP("Words", "design")},
    ChoiceText{choice::kConstruction, QT_TRANSLATE_NOOP("Words", "construction")},
    ChoiceText{choice::kManner, QT_TRANSLATE_NOOP("Words", "manner of installation")},
    ChoiceText{choice::kModification, QT_TRANSLATE_NOOP("Words", "modification")},
    ChoiceText{choice::kServicing, QT_TRANSLATE_NOOP("Words", "servicing")},
    // of kinds of appliance that have items of their own
    ChoiceText{choice::kLeisureVehicle, QT_TRANSLATE_NOOP("Words", "leisure vehicle, its LPG system")},
    ChoiceText{choice::kBoat, QT_TRANSLATE_NOOP("Words", "boat, its LPG system")},
    ChoiceText{choice::kCatering, QT_TRANSLATE_NOOP("Words", "catering appliance")},
    ChoiceText{choice::kUnventedCylinder, QT_TRANSLATE_NOOP("Words", "unvented cylinder, noted only")},
    ChoiceText{choice::kDecommissioned, QT_TRANSLATE_NOOP("Words", "decommissioned and capped")},
    ChoiceText{choice::kLet, QT_TRANSLATE_NOOP("Words", "let")},
    ChoiceText{choice::kPrivateUse, QT_TRANSLATE_NOOP("Words", "privately")},
    ChoiceText{choice::kNoBubbles, QT_TRANSLATE_NOOP("Words", "no bubbles")},
    ChoiceText{choice::kBubbles, QT_TRANSLATE_NOOP("Words", "bubbles: it leaks")},
    ChoiceText{choice::kByFlow, QT_TRANSLATE_NOOP("Words", "by air flow")},
    ChoiceText{choice::kByPressure, QT_TRANSLATE_NOOP("Words", "by air pressure")},
    ChoiceText{choice::kByCarbonDioxide, QT_TRANSLATE_NOOP("Words", "by CO₂")},
    ChoiceText{choice::kSealedFitting, QT_TRANSLATE_NOOP("Words", "with an appropriate fitting")},
    ChoiceText{choice::kValveOnly, QT_TRANSLATE_NOOP("Words", "shut at a valve only")},
    ChoiceText{choice::kNotSeen, QT_TRANSLATE_NOOP("Words", "could not be seen")},
};

/// What is looked at beside the law's own matters: its answers end with "not checked".
bool isLookedAt(Item item) {
    const auto choices = reg::infoOf(item).choices;
    return !choices.empty() && choices.back().code == choice::kNotChecked;
}

}  // namespace

QString Words::item(Item item) const {
    return say(textOfItem(item).label);
}

QString Words::itemHelp(Item item) const {
    const char* help = textOfItem(item).help;
    return *help == '\0' ? QString() : say(help);
}

QString Words::choice(Item item, const std::string& code) const {
    if (item == Item::RoomCoPlace && code == choice::kRoom) {
        return say(QT_TRANSLATE_NOOP("Words", "in the room"));
    }
    // Whether it was examined is asked apart where the law wants to know.
    if (code == choice::kGood && isLookedAt(item)) {
        return say(QT_TRANSLATE_NOOP("Words", "in order"));
    }
    if (code == choice::kEd3 || code == choice::kEd4) {
        return edition(code == choice::kEd3 ? rulebook::Edition::Up1bEd3 : rulebook::Edition::Up1bEd4);
    }
    for (const auto& text : kChoices) {
        if (text.code == code) {
            return say(text.label);
        }
    }
    return qstring(code);  // of a newer program: kept, shown as it stands
}

}  // namespace hearth::ui::words
