// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/check_dates.h"
#include "core/register/appliance_kinds.h"
#include "tests/core/record/sample_kinds.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace hearth::record {
namespace {

using reg::Item;
using rulebook::Outcome;
namespace choice = reg::choice;

/// A landlord's record with its boiler complete, and a second appliance of another kind.
struct RecordWithAnother : ::testing::Test {
    reg::VisitFile file = testing::visitOfKind(RecordKind::LandlordSafety);
    reg::SubjectRef second;
    std::vector<judging::Judged> none;

    void SetUp() override { file.situations.clear(); }
    void add(std::string_view kind) {
        reg::Appliance another = file.appliances[0];
        another.id = reg::ApplianceId{testing::sampleBytes(41)};
        another.kind = std::string(kind);
        another.flue = reg::burnsGas(kind) ? reg::FlueType::OpenFlued : reg::FlueType::NotSaid;
        file.appliances.push_back(another);
        second = reg::subject(another.id);
    }
    void say(Item item, std::string_view text) { testing::enter(file, second, item, std::string(text)); }
    std::set<Item> lacking(RecordKind kind = RecordKind::LandlordSafety) const {
        std::set<Item> items;
        for (const auto& one : missingFor(kind, file, none)) {
            if (one.subject == second && one.item) {
                items.insert(*one.item);
            }
        }
        return items;
    }
    Outcome outcome() const { return outcomeOf(RecordKind::LandlordSafety, file, none); }
};

TEST_F(RecordWithAnother, AVehiclesLpgSystemOwesWhatCanBeSeenOfItAndNoFlue) {
    add(choice::kLeisureVehicle);
    say(Item::ApplianceInspected, choice::kInspected);
    const std::set<Item> owed{Item::DefectsFound,     Item::SafeToUse,
                              Item::LocationSeen,     Item::StabilitySeen,
                              Item::DistressSeen,     Item::ServicedToday,
                              Item::LpgUse,           Item::LpgCylinders,
                              Item::LpgCylinderPlace, Item::LpgCylindersSecured,
                              Item::LpgRegulator,     Item::LpgShutOffs,
                              Item::LpgVentilation,   Item::LpgDrains};
    EXPECT_EQ(lacking(), owed);
    const auto all = missingFor(RecordKind::LandlordSafety, file, none);
    EXPECT_TRUE(std::none_of(all.begin(), all.end(),
                             [](const Missing& one) { return one.field == Field::ApplianceFlue; }));
    file.appliances.back().kind = std::string(choice::kBoat);
    auto boat = owed;
    boat.insert(Item::LpgBubbleTester);
    EXPECT_EQ(lacking(), boat);
}

TEST_F(RecordWithAnother, AKitchenOwesItsInterlockBesideWhatEveryApplianceOwes) {
    add(choice::kCatering);
    say(Item::ApplianceInspected, choice::kVisualOnly);
    EXPECT_EQ(lacking().count(Item::CateringInterlock), 0U) << "only looked at";
    say(Item::ApplianceInspected, choice::kInspected);
    const auto owed = lacking();
    for (const auto item : {Item::CateringInterlock, Item::CateringInterlockProved, Item::CateringShutOff,
                            Item::CateringGasProving, Item::ExaminedFlue, Item::CheckCovered}) {
        EXPECT_EQ(owed.count(item), 1U) << reg::infoOf(item).code;
    }
    EXPECT_EQ(owed.count(Item::CateringCo2End), 0U) << "may be left out";
    say(Item::CateringCo2End, "a lot");
    const auto all = missingFor(RecordKind::LandlordSafety, file, none);
    EXPECT_TRUE(std::any_of(all.begin(), all.end(), [](const Missing& one) {
        return one.item == Item::CateringCo2End && one.unreadable;
    }));
}

TEST_F(RecordWithAnother, AnUnventedCylinderIsNotedAndChangesNothingOfTheGasCheck) {
    EXPECT_EQ(outcome(), Outcome::Pass);
    add(choice::kUnventedCylinder);
    say(Item::ApplianceInspected, choice::kInspected);
    const auto owed = lacking();
    EXPECT_EQ(owed.count(Item::UnventedRelief), 1U);
    EXPECT_EQ(owed.count(Item::SafeToUse), 0U);
    EXPECT_EQ(owed.count(Item::ExaminedFlue), 0U);
    EXPECT_EQ(outcome(), Outcome::Pass) << "noted only";
    EXPECT_FALSE(checkDatesOf(file, file.appliances[1]).checked);
    EXPECT_EQ(checksStatedBy(RecordKind::LandlordSafety, file).size(), 1U);
    // What its engineer declared of it all the same is heard.
    say(Item::SafeToUse, choice::kNo);
    EXPECT_EQ(outcome(), Outcome::Fail);
    // It is no appliance that a gas check could consist of.
    file.appliances.erase(file.appliances.begin());
    const auto all = missingFor(RecordKind::LandlordSafety, file, none);
    EXPECT_TRUE(std::any_of(all.begin(), all.end(),
                            [](const Missing& one) { return one.field == Field::ApplianceChecked; }));
}

TEST_F(RecordWithAnother, WhatIsCappedOwesItsSealAndNeverFailsForWhatCannotBeMeasured) {
    add(choice::kGasFire);
    say(Item::ApplianceInspected, choice::kDecommissioned);
    EXPECT_EQ(lacking(), (std::set<Item>{Item::DefectsFound, Item::CappedHow, Item::CappedWhere,
                                         Item::CappedProved, Item::CappedLabel}));
    say(Item::DefectsFound, choice::kNoneFound);
    say(Item::CappedHow, choice::kSealedFitting);
    say(Item::CappedWhere, "at the skirting");
    say(Item::CappedProved, choice::kYes);
    say(Item::CappedLabel, choice::kYes);
    EXPECT_TRUE(lacking().empty()) << "whether it is safe to use may be left undeclared";
    EXPECT_EQ(outcome(), Outcome::LookAgain);
    const auto judged = judging::judge(file, rulebook::RuleBook::shipped());
    EXPECT_TRUE(std::none_of(judged.begin(), judged.end(),
                             [&](const judging::Judged& one) { return one.subject == second; }));
    say(Item::SafeToUse, choice::kYes);
    EXPECT_EQ(outcome(), Outcome::LookAgain) << "it was not inspected";
    say(Item::SafeToUse, choice::kNo);
    EXPECT_EQ(outcome(), Outcome::Fail) << "the engineer's own declaration";
}

/// A commissioning or service record asks the same; a tightness record asks nothing of appliances.
TEST(RequirementsOfSomeKinds, AreOfTheRecordsThatSpeakOfAppliances) {
    for (const auto kind : allKinds()) {
        const bool speaks = kind == RecordKind::LandlordSafety || kind == RecordKind::OwnerSafety ||
                            kind == RecordKind::Commissioning || kind == RecordKind::Service;
        EXPECT_EQ(!requirementsOfSomeKinds(kind).empty(), speaks) << kindCode(kind);
    }
    std::set<Item> asked;
    for (const auto& wanted : requirementsOfSomeKinds(RecordKind::Service)) {
        ASSERT_TRUE(wanted.item);
        EXPECT_FALSE(wanted.source.empty());
        asked.insert(*wanted.item);
    }
    for (const auto& info : reg::itemCatalogue()) {
        EXPECT_EQ(asked.count(info.item) > 0, reg::isOfSomeKinds(info.item)) << info.code;
    }
}

}  // namespace
}  // namespace hearth::record
