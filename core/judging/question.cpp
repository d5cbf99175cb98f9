// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/judging/question.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace hearth::judging {

namespace {

using reg::Item;

// --- gas_rate
constexpr std::array kGasRateOnce{Item::GasFamily,
                                  Item::GasHeatValue,
                                  Item::RateMeter,
                                  Item::RateIndexStart,
                                  Item::RateIndexEnd,
                                  Item::RateIndexWhole,
                                  Item::RatePassed,
                                  Item::RateDial,
                                  Item::RateTurns,
                                  Item::RateDialDivision,
                                  Item::RateTime,
                                  Item::RateOthersOff,
                                  Item::RateFullRate,
                                  Item::RateWarm,
                                  Item::RateMeterMost,
                                  Item::RateCorrection,
                                  Item::RateMeterPressure,
                                  Item::RateGasTemperature,
                                  Item::RateAltitude,
                                  Item::ApplianceInput,
                                  Item::ApplianceInputBasis,
                                  Item::ApplianceTolerance,
                                  Item::ApplianceToleranceUnder,
                                  Item::ApplianceToleranceSource};
constexpr std::array kGasRate{AskedGroup{Group::Once, kGasRateOnce, 1}};
// --- end of gas_rate

// --- pressures
constexpr std::array kPressuresOnce{Item::GasFamily,
                                    Item::MeterStandingPressure,
                                    Item::MeterWorkingPressure,
                                    Item::InletStanding,
                                    Item::InletPressure,
                                    Item::InletFullRate,
                                    Item::PressureSameGauge,
                                    Item::GaugeAccuracy,
                                    Item::InletLeast,
                                    Item::InletMost,
                                    Item::BurnerPressure,
                                    Item::BurnerLeast,
                                    Item::BurnerMost,
                                    Item::PressureMakerSource,
                                    Item::MeterAverage,
                                    Item::MeterAverageTime,
                                    Item::MeterLoad};
constexpr std::array kPressures{AskedGroup{Group::Once, kPressuresOnce, 1}};
// --- end of pressures

// --- combustion
constexpr std::array kCombustionOnce{Item::GasFamily,
                                     Item::ApplianceKind,
                                     Item::MakerCo,
                                     Item::MakerRatio,
                                     Item::MakerCo2Least,
                                     Item::MakerCo2Most,
                                     Item::MakerCo2LeastLow,
                                     Item::MakerCo2MostLow,
                                     Item::MakerCombustionSource,
                                     Item::AnalyserZeroed,
                                     Item::AnalyserComputes,
                                     Item::AnalyserCoAccuracy,
                                     Item::AnalyserCo2Accuracy,
                                     Item::AnalyserO2Accuracy,
                                     Item::InletO2,
                                     Item::InletCo2,
                                     Item::FlueCoHigh,
                                     Item::FlueCo2High,
                                     Item::FlueO2High,
                                     Item::FlueRatioPrinted,
                                     Item::FlueCoLow,
                                     Item::FlueCo2Low,
                                     Item::FlueO2Low,
                                     Item::FlueTemperature,
                                     Item::FlueAirTemperature,
                                     Item::FlueHumidity};
constexpr std::array kCombustion{AskedGroup{Group::Once, kCombustionOnce, 1}};
// --- end of combustion

// --- hot_water
constexpr std::array kHotWaterOnce{
    Item::HotWaterFlow,        Item::HotWaterCold,        Item::HotWaterHot,
    Item::HotWaterFullRate,    Item::HotWaterMakerFlow,   Item::HotWaterMakerRise,
    Item::HotWaterMakerOutput, Item::HotWaterMakerSource, Item::HotWaterNetInput};
constexpr std::array kHotWater{AskedGroup{Group::Once, kHotWaterOnce, 1}};
// --- end of hot_water

// --- regulation_26_9
constexpr std::array kRegulation26Once{
    Item::ExaminedNotAsked,  Item::ExaminedFlue,     Item::ExaminedAir,        Item::ExaminedPressure,
    Item::ExaminedHeatInput, Item::ExaminedBoth,     Item::ExaminedCombustion, Item::WhyNeither,
    Item::WhyNeitherTaken,   Item::ExaminedOperation};
constexpr std::array kRegulation26{AskedGroup{Group::Once, kRegulation26Once, 1}};
// --- end of regulation_26_9

// --- ventilation
constexpr std::array kVentilationOnce{Item::RoomSpace,    Item::RoomVolume,     Item::RoomOpening,
                                      Item::RoomTight,    Item::RoomBedSitting, Item::RoomBasement,
                                      Item::PlantSummer,  Item::PlantFloor,     Item::PlantMiddle,
                                      Item::PlantCeiling, Item::RoomVents,      Item::GasFamily};
constexpr std::array kVentilationAppliance{Item::ApplianceKind, Item::ApplianceFlue, Item::ApplianceInput,
                                           Item::ApplianceInputBasis, Item::ApplianceVentArea};
constexpr std::array kVentilationVent{Item::VentArea, Item::VentTo, Item::VentLevel, Item::VentSound,
                                      Item::VentSleeved};
constexpr std::array kVentilation{AskedGroup{Group::Once, kVentilationOnce, 1},
                                  AskedGroup{Group::Appliance, kVentilationAppliance, 12},
                                  AskedGroup{Group::Vent, kVentilationVent, 12}};
// --- end of ventilation

// --- room_co
constexpr std::array kRoomCoOnce{Item::RoomCoAppliance, Item::RoomCoDistance, Item::RoomCoHeight,
                                 Item::RoomCoFromAppliance, Item::RoomCoAccuracy};
constexpr std::array kRoomCoReading{Item::RoomCoAt, Item::RoomCoPlace, Item::RoomCo};
constexpr std::array kRoomCo{AskedGroup{Group::Once, kRoomCoOnce, 1},
                             AskedGroup{Group::Reading, kRoomCoReading, 200}};
// --- end of room_co

// --- pipes
constexpr std::array kPipesOnce{Item::GasFamily, Item::GasHeatValue, Item::PipeEdition, Item::PurgeMeter};
constexpr std::array kPipesSection{Item::SectionName,    Item::SectionTube,     Item::SectionLength,
                                   Item::SectionAfter,   Item::SectionElbows,   Item::SectionBends,
                                   Item::SectionBends45, Item::SectionTees,     Item::SectionFittings,
                                   Item::SectionDemand,  Item::SectionMeasured, Item::SectionUnderTest};
constexpr std::array kPipes{AskedGroup{Group::Once, kPipesOnce, 1},
                            AskedGroup{Group::Section, kPipesSection, 40}};
// --- end of pipes

// --- purge
constexpr std::array kPurgeOnce{Item::GasFamily,    Item::PurgeSize,        Item::PurgeMeter,
                                Item::SectionTube,  Item::PurgeVolumeKnown, Item::PurgePipes,
                                Item::PurgePlate,   Item::PurgeFlow,        Item::PurgeBurner,
                                Item::GasHeatValue, Item::PurgePassed,      Item::PurgeEndGas};
constexpr std::array kPurge{AskedGroup{Group::Once, kPurgeOnce, 1}};
// --- end of purge

// --- larger
constexpr std::array kLargerOnce{Item::GasFamily,
                                 Item::PurgeVolumeKnown,
                                 Item::PurgePipe,
                                 Item::PurgeMeter,
                                 Item::LargerOperatingPressure,
                                 Item::LargerSupplyPressure,
                                 Item::LargerWork,
                                 Item::LargerArea,
                                 Item::LargerVentilated,
                                 Item::LargerRoomVolume,
                                 Item::LargerGauge,
                                 Item::LargerMedium,
                                 Item::LargerLetByStart,
                                 Item::LargerLetByEnd,
                                 Item::LargerLetByTook,
                                 Item::LargerSettleStart,
                                 Item::LargerSettleEnd,
                                 Item::LargerSettleTook,
                                 Item::LargerStart,
                                 Item::LargerEnd,
                                 Item::LargerTook,
                                 Item::LargerSmell,
                                 Item::StrengthMostOperating,
                                 Item::LargerIncidentalPressure,
                                 Item::StrengthMedium,
                                 Item::StrengthGauge,
                                 Item::StrengthPartsOff,
                                 Item::StrengthSettled,
                                 Item::StrengthStart,
                                 Item::StrengthEnd,
                                 Item::StrengthTook};
constexpr std::array kLarger{AskedGroup{Group::Once, kLargerOnce, 1}};
// --- end of larger

// --- gas
constexpr std::array kGasOnce{
    Item::GasFamily,        Item::GasMix,      Item::GasMethane,  Item::GasEthane,         Item::GasPropane,
    Item::GasButanes,       Item::GasPentanes, Item::GasHydrogen, Item::GasCarbonMonoxide, Item::GasNitrogen,
    Item::GasCarbonDioxide, Item::GasOxygen,   Item::GasLpgShare, Item::GasHeatValue,      Item::GasDensity};
constexpr std::array kGas{AskedGroup{Group::Once, kGasOnce, 1}};
// --- end of gas

// --- check_due
constexpr std::array kCheckDueOnce{Item::CheckCountry, Item::CheckInstalled, Item::CheckLease,
                                   Item::CheckLast,    Item::CheckDone,      Item::CheckOthersDue,
                                   Item::CheckTenant,  Item::CheckMovesIn};
constexpr std::array kCheckDue{AskedGroup{Group::Once, kCheckDueOnce, 1}};
// --- end of check_due

constexpr std::array kQuestions{
    QuestionInfo{Question::GasRate, "gas_rate", kGasRate},
    QuestionInfo{Question::Pressures, "pressures", kPressures},
    QuestionInfo{Question::Combustion, "combustion", kCombustion},
    QuestionInfo{Question::HotWater, "hot_water", kHotWater},
    QuestionInfo{Question::Regulation26, "regulation_26_9", kRegulation26},
    QuestionInfo{Question::Ventilation, "ventilation", kVentilation},
    QuestionInfo{Question::RoomCo, "room_co", kRoomCo},
    QuestionInfo{Question::Pipes, "pipes", kPipes},
    QuestionInfo{Question::Purge, "purge", kPurge},
    QuestionInfo{Question::Larger, "larger", kLarger},
    QuestionInfo{Question::Gas, "gas", kGas},
    QuestionInfo{Question::CheckDue, "check_due", kCheckDue},
};

}  // namespace

std::span<const QuestionInfo> questions() {
    return kQuestions;
}

const QuestionInfo& infoOf(Question question) {
    const auto* found = std::find_if(kQuestions.begin(), kQuestions.end(),
                                     [&](const QuestionInfo& info) { return info.question == question; });
    assert(found != kQuestions.end());
    return *found;
}

std::optional<Question> questionFromCode(std::string_view code) {
    for (const auto& info : kQuestions) {
        if (info.code == code) {
            return info.question;
        }
    }
    return std::nullopt;
}

}  // namespace hearth::judging
