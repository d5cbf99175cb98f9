// SPDX-License-Identifier: GPL-3.0-or-later
// A combination boiler from new pipework to hand-over, by keys alone through the program's window to its
// three records. The figures are common practice, no source.
#include "tests/app/visit_bench.h"

namespace {

using namespace hearth;
using hearth::testing::PartAnswers;
using hearth::testing::VisitDriver;
using reg::Item;
using ui::visit::PartKind;

class CombiVisit : public hearth::testing::VisitBench {
  protected:
    CombiVisit() {
        addParty("M. Okafor", reg::RoleKind::Customer);
        answers[{PartKind::WhoAndWhere, 0}].items[Item::VisitAnalyser] = analyser.id.text();
        answers[{PartKind::BeforeYouStart, 0}] = {{{Item::SmellOnArrival, "no"},
                                                   {Item::OpenEnds, "none_seen"},
                                                   {Item::SafeToTouch, "safe"},
                                                   {Item::VisualInspection, "sound"}}};
        answers[{PartKind::Rooms, 0}].rows = {
            {{Item::RoomName, "Kitchen"}, {Item::RoomCoAlarm, "alarm_works"}}};
        answers[{PartKind::Tightness, 0}] = tightnessOf("new");
        answers[{PartKind::Restore, 0}] = {{{Item::PurgeDone, "yes"},
                                            {Item::PurgeMethod, "open_burner"},
                                            {Item::PurgeVolumePassed, "0.012"},
                                            {Item::PurgeSteadyFlame, "yes"},
                                            {Item::TestPointProved, "yes"},
                                            {Item::DisturbedJointsProved, "yes"},
                                            {Item::FluidWiped, "yes"},
                                            {Item::StandingPressure, "21.4"},
                                            {Item::WorkingPressure, "20.2"},
                                            {Item::WorkingLoad, "boiler at its highest rate"}}};
        answers[{PartKind::Appliance, 0}] = boiler();
        answers[{PartKind::HandOver, 0}] = {{{Item::HandoverShown, "yes"},
                                             {Item::HandoverInstructions, "yes"},
                                             {Item::HandoverReadings, "yes"},
                                             {Item::ControlsInformation, "yes"},
                                             {Item::WorkCompleted, "t"},
                                             {Item::BuildingNotification, "notified by the register"},
                                             {Item::SignedByEngineer, "R. Ashdown"},
                                             {Item::ReceivedBy, "M. Okafor"}}};
    }

    [[nodiscard]] static PartAnswers boiler() {
        PartAnswers of;
        using record::Field;
        of.fields = {{Field::ApplianceKind, std::string(reg::choice::kCondensingBoiler)},
                     {Field::AppliancePlace, "kitchen"},
                     {Field::ApplianceMake, "Invented"},
                     {Field::ApplianceModel, "Combi 24"},
                     {Field::ApplianceSerial, "IN-0024"},
                     {Field::ApplianceFlue, "room_sealed"}};
        of.items = {{Item::ApplianceInspected, "inspected"}, {Item::NewOrReplacement, "new"}};
        for (const Item seen :
             {Item::FlueSeen, Item::TerminalSeen, Item::VentilationSeen, Item::ClearancesSeen,
              Item::SafetyDevices, Item::PressureRelief, Item::FlameSeen, Item::ExaminedFlue,
              Item::ExaminedAir, Item::ExaminedOperation}) {
            of.items[seen] = "good";
        }
        for (const Item done :
             {Item::ControlTime, Item::ControlRoom, Item::ControlInterlock, Item::ControlTrvs,
              Item::ControlBypass, Item::WaterCleaned, Item::WaterFilter, Item::PipeSizing, Item::TrapFilled,
              Item::ByMaker, Item::CheckCovered, Item::SafeToUse}) {
            of.items[done] = "yes";
        }
        of.items.insert({{Item::ControlCylinder, "not_applicable"},
                         {Item::CombiMeasure, "weather"},
                         {Item::WaterCleaner, "flushed, cleaner no. 3"},
                         {Item::WaterInhibitor, "1 litre"},
                         {Item::WaterHardness, "180"},
                         {Item::ScaleReducer, "no"},
                         {Item::WaterPressure, "1.2"},
                         {Item::DesignFlow, "55"},
                         {Item::GasRateRead, "2.48"},
                         {Item::HeatInputRead, "24.1"},
                         {Item::HeatInputBasis, "net"},
                         {Item::HeatingFlow, "70"},
                         {Item::HeatingReturn, "51"},
                         {Item::HotWaterCold, "11"},
                         {Item::HotWaterHot, "46"},
                         {Item::HotWaterFlow, "9.8"},
                         {Item::MeterStandingPressure, "21.4"},
                         {Item::MeterWorkingPressure, "20.2"},
                         {Item::InletPressure, "19.6"},
                         {Item::FlueRoute, "horizontal, rear wall"},
                         {Item::FlueHidden, "not_hidden"},
                         {Item::InletO2, "20.9"},
                         {Item::InletCo2, "0.05"},
                         {Item::FlueCoHigh, "78"},
                         {Item::FlueCo2High, "9.2"},
                         {Item::FlueCoLow, "12"},
                         {Item::FlueCo2Low, "8.9"},
                         {Item::CondensateRoute, "32 mm, insulated"},
                         {Item::CondensateEnd, "inside_drain"},
                         {Item::ServiceInterval, "a year"},
                         {Item::ExaminedHeatInput, "in_order"},
                         {Item::DefectsFound, "none_found"}});
        return of;
    }
};

TEST_F(CombiVisit, FromNewPipeworkToHandOverIsIssuedByKeysAlone) {
    VisitDriver driver(firm, firm.startVisit(premises));
    driver.answers = answers;
    driver.chooseKinds({Item::VisitInstallation, Item::VisitPipework});
    driver.fillIn(VisitDriver::Part{PartKind::Pipework, 0});
    driver.press(Qt::Key_Return);  // gas
    driver.press(Qt::Key_Return);  // meter
    driver.press(Qt::Key_Return);  // its serial
    driver.line(QStringLiteral("21"));
    driver.line(QStringLiteral("75"));
    driver.press(Qt::Key_Return);  // where the meter is
    driver.press(Qt::Key_Return);  // where the valve is
    driver.line(QStringLiteral("22 cu"));
    driver.line(QStringLiteral("8"));
    driver.line(QStringLiteral("boiler"));
    driver.press(Qt::Key_Return);  // it goes on from the meter
    driver.press(Qt::Key_Return);  // no more pipes
    driver.fillIn(VisitDriver::Part{PartKind::Appliances, 0});
    driver.press(Qt::Key_Space);  // another appliance
    driver.fillIn();
    driver.expectNothingMissing();
    for (int record = 0; record < 3; ++record) {
        driver.press(Qt::Key_I, Qt::ControlModifier);
    }
    EXPECT_EQ(issuedKinds(driver), (std::vector<std::string>{"building_notice", "installation_commissioning",
                                                             "tightness_and_purge"}));
    driver.report("combination boiler from new pipework to hand-over");
    EXPECT_EQ(driver.file().appliances.front().model, "Combi 24");
    EXPECT_EQ(driver.file().pipes.size(), 1U);
}

}  // namespace
