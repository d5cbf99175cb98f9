// SPDX-License-Identifier: GPL-3.0-or-later
// An investigation of carbon monoxide in a room that ends in an immediately dangerous fire and a refusal, by
// keys alone through the program's window to its three records. The figures are common practice, no source.
#include "tests/app/visit_bench.h"

namespace {

using namespace hearth;
using hearth::testing::PartAnswers;
using hearth::testing::VisitDriver;
using reg::Item;
using ui::visit::PartKind;

class RoomCoVisit : public hearth::testing::VisitBench {
  protected:
    RoomCoVisit() {
        addParty("M. Okafor", reg::RoleKind::Customer);
        addAppliance(reg::choice::kGasFire, "lounge", reg::FlueType::OpenFlued, reg::Owner::HomeOwner);
        answers[{PartKind::WhoAndWhere, 0}].items[Item::VisitAnalyser] = analyser.id.text();
        answers[{PartKind::BeforeYouStart, 0}].items = {{Item::SmellOnArrival, "no"}};
        answers[{PartKind::Rooms, 0}].rows = {{{Item::RoomName, "Lounge"},
                                               {Item::RoomCoAlarm, "alarm_works"},
                                               {Item::RoomFinding, "soot above the fire"}}};
        answers[{PartKind::Investigation, 0}] = call();
        answers[{PartKind::Appliance, 0}].items = {
            {Item::ApplianceInspected, "inspected"}, {Item::FlueSeen, "wrong"},
            {Item::VentilationSeen, "good"},         {Item::SpillageTest, "wrong"},
            {Item::DefectsFound, "found"},           {Item::DefectsText, "Spills: the flue is blocked."}};
        answers[{PartKind::Situation, 0}] = situation();
        answers[{PartKind::HandOver, 0}].items = {
            {Item::CauseFound, "Products of the gas fire: its flue is blocked."},
            {Item::InvestigationActions, "Windows opened, emergency service called."},
            {Item::LeftAs, "appliance_off"},
            {Item::SignedByEngineer, "R. Ashdown"}};
    }

    [[nodiscard]] static PartAnswers call() {
        PartAnswers of;
        of.items = {{Item::CallFrom, "the occupier, 08:15"},
                    {Item::EmergencyReference, "ES 20931"},
                    {Item::Symptoms, "headaches in the evening"},
                    {Item::MedicalAdvice, "yes"},
                    {Item::OccupantsThere, "two"},
                    {Item::WeatherThere, "dry, still"},
                    {Item::AdjoiningPremises, "no alarms"},
                    {Item::OtherFuels, "none"}};
        of.rows = {{{Item::RoomCoPlace, "outdoors"}, {Item::RoomCoAt, "0"}, {Item::RoomCo, "0"}},
                   {{Item::RoomCoPlace, "room"}, {Item::RoomCoAt, "5"}, {Item::RoomCo, "38"}},
                   {{Item::RoomCoPlace, "room"}, {Item::RoomCoAt, "10"}, {Item::RoomCo, "64"}}};
        return of;
    }

    [[nodiscard]] static PartAnswers situation() {
        PartAnswers of;
        of.fields = {{record::Field::SituationWhat, "The fire spills products into the room."},
                     {record::Field::SituationWhere, "lounge"},
                     {record::Field::SituationDanger, "immediately_dangerous"}};
        of.items = {{Item::SituationGasEscape, "no"},
                    {Item::SituationPerson, "M. Okafor, owner"},
                    {Item::SituationPermission, "refused"},
                    {Item::SituationMadeSafe, "not_made_safe"},
                    {Item::SituationLabel, "yes"},
                    {Item::SituationRefusedBy, "M. Okafor"},
                    {Item::SituationRefusalWords, "It stays on tonight."},
                    {Item::SituationSupplyLeft, "gas_on"},
                    {Item::SituationWorkNeeded, "Clear the flue, test again."},
                    {Item::SituationTold, "the emergency service"},
                    {Item::SituationToldAt, "1012"},
                    {Item::SituationToldReference, "ES 20931"},
                    {Item::SituationReceipt, "copy_left"},
                    {Item::SituationCopyLeft, "on the kitchen table"},
                    {Item::SituationReportable, "yes"},
                    {Item::SituationReportWhy, "servicing"},
                    {Item::SituationKnownOn, "t"},
                    {Item::SituationWorkBy, "not known"},
                    {Item::SituationPersons, "two, headaches"}};
        return of;
    }
};

TEST_F(RoomCoVisit, EndsInAnImmediatelyDangerousFireAndARefusalByKeysAlone) {
    VisitDriver driver(firm, firm.startVisit(premises));
    driver.answers = answers;
    driver.chooseKinds({Item::VisitRoomCo});
    driver.fillIn(VisitDriver::Part{PartKind::Appliances, 0});
    driver.press(Qt::Key_Return);  // takes up the fire in the list
    driver.fillIn(VisitDriver::Part{PartKind::Situations, 0});
    driver.press(Qt::Key_PageUp);
    driver.press(Qt::Key_U, Qt::ControlModifier);  // unsafe: at the fire
    driver.fillIn();
    driver.expectNothingMissing();
    for (int record = 0; record < 3; ++record) {
        driver.press(Qt::Key_I, Qt::ControlModifier);
    }
    EXPECT_EQ(issuedKinds(driver),
              (std::vector<std::string>{"reportable_entry", "room_investigation", "warning_notice"}));
    const auto& situation = driver.file().situations.front();
    EXPECT_EQ(situation.danger, reg::Danger::ImmediatelyDangerous);
    EXPECT_EQ(situation.appliance, driver.file().appliances.front().id);
    driver.report("room CO to an immediately dangerous fire and a refusal");
}

}  // namespace
