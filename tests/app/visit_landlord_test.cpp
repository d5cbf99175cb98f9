// SPDX-License-Identifier: GPL-3.0-or-later
// A landlord's check of four appliances, one of them the tenant's own, by keys alone through the program's
// window to the issued record; and a usual check with a tightness test. The figures are common practice, no
// source; the letters are those that the sheet underlines.
#include "tests/app/visit_bench.h"

namespace {

using namespace hearth;
using hearth::testing::need;
using hearth::testing::PartAnswers;
using hearth::testing::VisitDriver;
using reg::Item;
using ui::visit::PartKind;

PartAnswers arrival() {
    return {
        {{Item::SmellOnArrival, "no"}, {Item::VisualInspection, "sound"}, {Item::GasOnArrival, "gas_on"}}};
}

PartAnswers inspected() {
    PartAnswers answers;
    for (const Item seen :
         {Item::LocationSeen, Item::StabilitySeen, Item::DistressSeen, Item::FlueSeen, Item::TerminalSeen,
          Item::VentilationSeen, Item::FlueFlowTest, Item::SpillageTest, Item::SafetyDevices, Item::FlameSeen,
          Item::ExaminedAir, Item::ExaminedOperation, Item::ExaminedFlue}) {
        answers.items[seen] = "good";
    }
    answers.items[Item::ApplianceInspected] = "inspected";
    answers.items[Item::FlueHidden] = "not_hidden";
    answers.items[Item::BurnerPressure] = "11.5";
    answers.items[Item::ServicedToday] = "no";
    answers.items[Item::ExaminedPressure] = "in_order";
    answers.items[Item::CheckCovered] = "yes";
    answers.items[Item::DefectsFound] = "none_found";
    answers.items[Item::SafeToUse] = "yes";
    return answers;
}

/// A flueless hob: no flue to look at or to test, and nothing asked of one.
PartAnswers hob() {
    PartAnswers answers = inspected();
    for (const Item none :
         {Item::FlueSeen, Item::TerminalSeen, Item::FlueFlowTest, Item::SpillageTest, Item::FlueHidden}) {
        answers.items.erase(none);
    }
    answers.items[Item::ExaminedFlue] = "not_fitted";  // examined: there is none
    return answers;
}

PartAnswers boiler() {
    PartAnswers answers = inspected();
    answers.items[Item::FlueCoHigh] = "52";
    answers.items[Item::FlueCo2High] = "9.1";
    return answers;
}

/// The tenant's own: looked at only, and whether it is safe to use as far as seen.
PartAnswers cooker() {
    return {{{Item::ApplianceInspected, "visual_only"},
             {Item::LocationSeen, "good"},
             {Item::StabilitySeen, "good"},
             {Item::DistressSeen, "good"},
             {Item::DefectsFound, "none_found"},
             {Item::SafeToUse, "yes"}}};
}

class LandlordVisit : public hearth::testing::VisitBench {
  protected:
    LandlordVisit() {
        addLandlord();
        addAppliance(reg::choice::kCondensingBoiler, "kitchen", reg::FlueType::RoomSealed);
        addAppliance(reg::choice::kHotplate, "kitchen", reg::FlueType::Flueless);
        addAppliance(reg::choice::kGasFire, "lounge", reg::FlueType::OpenFlued);
        answers[{PartKind::WhoAndWhere, 0}].items[Item::VisitAnalyser] = analyser.id.text();
        answers[{PartKind::BeforeYouStart, 0}] = arrival();
        answers[{PartKind::Rooms, 0}].rows = {
            {{Item::RoomName, "Kitchen"}, {Item::RoomCoAlarm, "alarm_works"}}};
        answers[{PartKind::Appliance, 0}] = boiler();
        answers[{PartKind::Appliance, 1}] = hob();
        answers[{PartKind::Appliance, 2}] = inspected();
        answers[{PartKind::HandOver, 0}].items[Item::SignedByEngineer] = "R. Ashdown";
    }
};

TEST_F(LandlordVisit, IsFilledInAndIssuedByKeysAlone) {
    addAppliance(reg::choice::kRangeCooker, "annexe", reg::FlueType::Flueless, reg::Owner::Tenant);
    answers[{PartKind::Appliance, 3}] = cooker();
    VisitDriver driver(firm, firm.startVisit(premises));
    driver.answers = answers;
    driver.chooseKinds({Item::VisitLandlordCheck});
    EXPECT_EQ(driver.model().owed().front().kind, record::RecordKind::LandlordSafety);
    // Nothing of an appliance is there before it was seen: no answer is preset.
    for (const auto& appliance : driver.file().appliances) {
        EXPECT_FALSE(driver.file().hasEntries(reg::subject(appliance.id)));
    }
    driver.fillIn();
    driver.expectNothingMissing();
    const auto& of = driver.file().appliances;
    EXPECT_EQ(driver.file().find(reg::subject(of[1].id), Item::FlueSeen), nullptr) << "the hob has none";
    EXPECT_EQ(driver.file().choiceOf(reg::subject(of[1].id), Item::ExaminedFlue), reg::choice::kNotFitted);
    EXPECT_EQ(driver.file().choiceOf(reg::subject(of[3].id), Item::ApplianceInspected),
              reg::choice::kVisualOnly);
    driver.press(Qt::Key_I, Qt::ControlModifier);
    EXPECT_EQ(issuedKinds(driver), (std::vector<std::string>{"landlord_safety"}));
    driver.report("landlord's check of four appliances");
}

/// Tightness, boiler, hob and fire; both records.
TEST_F(LandlordVisit, AUsualCheckWithATightnessTestTakesAtMostNinetyKeysBeyondTheValues) {
    addPipe();
    answers[{PartKind::BeforeYouStart, 0}].items[Item::OpenEnds] = "none_seen";
    answers[{PartKind::BeforeYouStart, 0}].items[Item::SafeToTouch] = "safe";
    answers[{PartKind::Tightness, 0}] = tightnessOf("existing");
    answers[{PartKind::Restore, 0}] = {{{Item::PurgeDone, "not_needed"},
                                        {Item::TestPointProved, "yes"},
                                        {Item::DisturbedJointsProved, "none_disturbed"},
                                        {Item::FluidWiped, "yes"}}};
    VisitDriver driver(firm, firm.startVisit(premises));
    driver.answers = answers;
    driver.chooseKinds({Item::VisitLandlordCheck, Item::VisitPipework});
    driver.fillIn();
    driver.expectNothingMissing();
    driver.press(Qt::Key_I, Qt::ControlModifier);
    driver.press(Qt::Key_I, Qt::ControlModifier);
    EXPECT_EQ(issuedKinds(driver), (std::vector<std::string>{"landlord_safety", "tightness_and_purge"}));
    driver.report("usual landlord's check with a tightness test");
    EXPECT_LE(driver.beyond(), 90);
}

}  // namespace
