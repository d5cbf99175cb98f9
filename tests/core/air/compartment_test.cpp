// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/compartment.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"
#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using quantity::kSquareCentimetre;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;
using samples::airRules;
using samples::appliance;
using samples::cm2;
using samples::confirmedBook;
using samples::findingOf;
using samples::kw;

Vent ventAt(VentLevel level, double area, VentLeadsTo leadsTo) {
    auto made = samples::vent(area, leadsTo);
    made.level = level;
    return made;
}

Compartment compartmentWith(Flue flue, double kilowatt, double high, double low, VentLeadsTo leadsTo) {
    Compartment made;
    made.appliances = {appliance(ApplianceKind::Boiler, flue, kilowatt)};
    made.vents = std::vector{ventAt(VentLevel::High, high, leadsTo), ventAt(VentLevel::Low, low, leadsTo)};
    return made;
}

TEST(Compartment, AreasByTheKilowatt) {
    struct Case {
        Flue flue;
        bool outside;
        double high;
        double low;
    };
    const Case cases[] = {
        {Flue::Open, false, 240, 480},
        {Flue::Open, true, 120, 240},
        {Flue::RoomSealed, false, 240, 240},
        {Flue::RoomSealed, true, 120, 120},
    };
    const auto book = rulebook::RuleBook::shipped();
    testing::Agreement agreement("Compartment vents, 24 kW net, high and low",
                                 "worked by hand from BS 5440-2:2000 and :2009 (suppliers' quick guides)",
                                 "cm2", 1e-9);
    for (const auto& c : cases) {
        Compartment compartment;
        compartment.appliances = {appliance(ApplianceKind::Boiler, c.flue, 24)};
        const auto need = compartmentNeed(compartment, c.outside, airRules(book));
        ASSERT_TRUE(need.high && need.low);
        agreement.hold("high", need.high->in(kSquareCentimetre), c.high);
        agreement.hold("low", need.low->in(kSquareCentimetre), c.low);
    }
}

TEST(Compartment, TheOpenFluedRowHoldsForAll) {
    const auto book = rulebook::RuleBook::shipped();
    Compartment both;
    both.appliances = {appliance(ApplianceKind::Boiler, Flue::Open, 10),
                       appliance(ApplianceKind::Boiler, Flue::RoomSealed, 20)};
    const auto need = compartmentNeed(both, true, airRules(book));
    EXPECT_NEAR(need.low->in(kSquareCentimetre), 300, 1e-9);
    EXPECT_EQ(need.steps.front().say, Say::VentCompartmentMixed);
}

TEST(Compartment, TheMakersFigureStandsForItsAppliance) {
    const auto book = rulebook::RuleBook::shipped();
    auto none = compartmentWith(Flue::RoomSealed, 24, 0, 0, VentLeadsTo::Outside);
    none.appliances.front().makersArea = cm2(0);
    none.vents->clear();
    const auto findings = compartmentVentilation(none, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).outcome, Outcome::Pass);
    EXPECT_EQ(findingOf(findings, FindingKind::VentLowLevel).why.say, Say::VentNotNeeded);
    none.appliances.push_back(appliance(ApplianceKind::Boiler, Flue::RoomSealed, 10));
    none.appliances.front().makersArea = cm2(30);
    EXPECT_NEAR(compartmentNeed(none, true, airRules(book)).high->in(kSquareCentimetre), 80, 1e-9);
}

TEST(Compartment, EachLevelIsJudged) {
    const auto book = rulebook::RuleBook::shipped();
    const auto outcomes = [&](const Compartment& compartment) {
        const auto findings = compartmentVentilation(compartment, airRules(book));
        return std::pair(findingOf(findings, FindingKind::VentHighLevel).outcome,
                         findingOf(findings, FindingKind::VentLowLevel).outcome);
    };
    const auto outside = VentLeadsTo::Outside;
    EXPECT_EQ(outcomes(compartmentWith(Flue::Open, 24, 130, 250, outside)),
              std::pair(Outcome::Pass, Outcome::Pass));
    EXPECT_EQ(outcomes(compartmentWith(Flue::Open, 24, 120, 230, outside)),
              std::pair(Outcome::LookAgain, Outcome::Fail));
    EXPECT_EQ(outcomes(compartmentWith(Flue::Open, 24, 250, 490, VentLeadsTo::ThroughOneWall)),
              std::pair(Outcome::Pass, Outcome::Pass));
    EXPECT_EQ(outcomes(compartmentWith(Flue::Open, 24, 130, 250, VentLeadsTo::ThroughOneWall)),
              std::pair(Outcome::Fail, Outcome::Fail));
    // Beyond the room there is a further wall: 250 counts as 166.7.
    EXPECT_EQ(outcomes(compartmentWith(Flue::Open, 24, 250, 490, VentLeadsTo::ThroughMoreWalls)),
              std::pair(Outcome::Fail, Outcome::Fail));
    auto none = compartmentWith(Flue::RoomSealed, 24, 0, 0, outside);
    none.vents->clear();
    EXPECT_EQ(outcomes(none), std::pair(Outcome::Fail, Outcome::Fail));
}

TEST(Compartment, VentsLeadToOnePlaceAndTheRoomNeedsItsOwn) {
    const auto book = rulebook::RuleBook::shipped();
    auto mixed = compartmentWith(Flue::Open, 10, 900, 900, VentLeadsTo::Outside);
    mixed.vents->front().leadsTo = VentLeadsTo::ThroughOneWall;
    auto findings = compartmentVentilation(mixed, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).outcome, Outcome::Fail);
    EXPECT_EQ(findingOf(findings, FindingKind::VentLowLevel).why.say, Say::VentMixedDestinations);
    findings = compartmentVentilation(compartmentWith(Flue::Open, 10, 900, 900, VentLeadsTo::ThroughOneWall),
                                      airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentFreeArea).why.say, Say::VentCompartmentRoom);
}

TEST(Compartment, NothingPassesOnWhatIsMissing) {
    const auto book = confirmedBook();
    const auto why = [&](const Compartment& compartment) {
        const auto low =
            findingOf(compartmentVentilation(compartment, airRules(book)), FindingKind::VentLowLevel);
        EXPECT_EQ(low.outcome, Outcome::NoVerdict);
        return low.why.say;
    };
    const auto good = compartmentWith(Flue::Open, 10, 900, 900, VentLeadsTo::Outside);
    auto c = good;
    c.vents.reset();
    EXPECT_EQ(why(c), Say::VentVentsMissing);
    c = good;
    c.vents->front().level.reset();
    EXPECT_EQ(why(c), Say::VentLevelMissing);
    c = good;
    c.vents->back().leadsTo.reset();
    EXPECT_EQ(why(c), Say::VentLeadsMissing);
    c = good;
    c.appliances.clear();
    EXPECT_EQ(why(c), Say::VentAppliancesMissing);
    c = good;
    c.appliances.front().input = {};
    EXPECT_EQ(why(c), Say::VentInputMissing);
    c.appliances.front().input.net = Given<quantity::NetPower>::unusable();
    EXPECT_EQ(why(c), Say::ReadingUnusable);
    for (const auto flue : {std::optional<Flue>(), std::optional(Flue::Flueless)}) {
        c = good;
        c.appliances.front().flue = flue;
        EXPECT_EQ(why(c), Say::VentKindMissing);
    }
    c = good;
    c.appliances.front().input.net = kw(71);
    const auto beyond = compartmentVentilation(c, airRules(book));
    ASSERT_EQ(beyond.size(), 1u);
    EXPECT_EQ(beyond.front().outcome, Outcome::NoVerdict);
}

TEST(Compartment, TheRowIsWhereTheVentsLeadElseWhatWasSaid) {
    Compartment c;
    EXPECT_FALSE(takesAirFromOutside(c)) << "the room's row asks for more";
    c.toOutside = true;
    EXPECT_TRUE(takesAirFromOutside(c));
    c.vents = std::vector{ventAt(VentLevel::High, 100, VentLeadsTo::ThroughOneWall)};
    EXPECT_FALSE(takesAirFromOutside(c));
    c.toOutside = false;
    c.vents->front().leadsTo = VentLeadsTo::Outside;
    EXPECT_TRUE(takesAirFromOutside(c));
    c.vents->clear();
    c.appliances = {appliance(ApplianceKind::Boiler, Flue::Open, 24)};
    const auto book = confirmedBook();
    const auto findings = compartmentVentilation(c, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).outcome, Outcome::Fail) << "no vents at all";
    EXPECT_EQ(findingOf(findings, FindingKind::VentFreeArea).why.say, Say::VentCompartmentRoom);
}

TEST(Compartment, NeedGrowsWithTheInputAndWithEveryAppliance) {
    const auto book = confirmedBook();
    for (const bool outside : {false, true}) {
        for (const auto flue : {Flue::Open, Flue::RoomSealed}) {
            double before = 0.0;
            for (double kilowatt = 1; kilowatt < 60; kilowatt += 1) {
                Compartment one;
                one.appliances = {appliance(ApplianceKind::Boiler, flue, kilowatt)};
                const auto need = compartmentNeed(one, outside, airRules(book));
                EXPECT_GE(need.low->in(kSquareCentimetre), before);
                before = need.low->in(kSquareCentimetre);
                for (const auto other : {Flue::Open, Flue::RoomSealed}) {
                    auto two = one;
                    two.appliances.push_back(appliance(ApplianceKind::Boiler, other, 5));
                    const auto more = compartmentNeed(two, outside, airRules(book));
                    EXPECT_GE(*more.low, *need.low);
                    EXPECT_GE(*more.high, *need.high);
                }
            }
        }
    }
}

Plant plantOf(double kilowatt, PlantSpace space, SummerUse summer) {
    Plant plant;
    plant.input = kw(kilowatt);
    plant.space = space;
    plant.summer = summer;
    plant.openFlued = true;
    return plant;
}

TEST(Plant, AreasByTheKilowatt) {
    struct Case {
        PlantSpace space;
        SummerUse summer;
        double low;
        double high;
    };
    const Case cases[] = {
        {PlantSpace::BoilerRoom, SummerUse::UpToHalf, 4, 2},
        {PlantSpace::BoilerRoom, SummerUse::HalfToThreeQuarters, 5, 3},
        {PlantSpace::BoilerRoom, SummerUse::More, 6, 4},
        {PlantSpace::Enclosure, SummerUse::UpToHalf, 10, 5},
        {PlantSpace::Enclosure, SummerUse::HalfToThreeQuarters, 11, 6},
        {PlantSpace::Enclosure, SummerUse::More, 12, 7},
    };
    const auto book = rulebook::RuleBook::shipped();
    testing::Agreement agreement(
        "Boiler room vents a kilowatt, low and high",
        "BS 6644 (boiler makers' pages; suppliers' quick guides to the 2005 edition)", "cm2", 1e-9);
    for (const auto& c : cases) {
        const auto need = plantNeed(plantOf(200, c.space, c.summer), airRules(book));
        ASSERT_TRUE(need.low && need.high);
        agreement.hold("low", need.low->in(kSquareCentimetre) / 200, c.low);
        agreement.hold("high", need.high->in(kSquareCentimetre) / 200, c.high);
    }
}

TEST(Plant, IsJudgedInItsScopeOnly) {
    const auto book = rulebook::RuleBook::shipped();
    auto plant = plantOf(200, PlantSpace::BoilerRoom, SummerUse::UpToHalf);
    plant.vents = std::vector{ventAt(VentLevel::High, 410, VentLeadsTo::Outside),
                              ventAt(VentLevel::Low, 790, VentLeadsTo::Outside)};
    auto findings = plantVentilation(plant, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentScope).outcome, Outcome::LookAgain) << "from memory";
    const auto confirmed = confirmedBook();
    EXPECT_EQ(findingOf(plantVentilation(plant, airRules(confirmed)), FindingKind::VentScope).outcome,
              Outcome::Pass);
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).outcome, Outcome::Pass);
    EXPECT_EQ(findingOf(findings, FindingKind::VentLowLevel).outcome, Outcome::Fail);
    const auto hasLevels = [&](double kilowatt) {
        plant.input = kw(kilowatt);
        const auto all = plantVentilation(plant, airRules(book));
        return std::any_of(all.begin(), all.end(),
                           [](const auto& finding) { return finding.kind == FindingKind::VentLowLevel; });
    };
    EXPECT_FALSE(hasLevels(60));
    EXPECT_TRUE(hasLevels(70));
    EXPECT_TRUE(hasLevels(1800));
    EXPECT_FALSE(hasLevels(1801));
    plant.input = kw(1900);
    findings = plantVentilation(plant, airRules(book));
    EXPECT_EQ(findings.front().outcome, Outcome::NoVerdict);
    EXPECT_EQ(findings.front().why.say, Say::VentPlantBeyond);
}

TEST(Plant, NothingPassesOnWhatIsMissing) {
    const auto book = confirmedBook();
    auto plant = plantOf(200, PlantSpace::BoilerRoom, SummerUse::UpToHalf);
    const auto why = [&] {
        const auto low = findingOf(plantVentilation(plant, airRules(book)), FindingKind::VentLowLevel);
        EXPECT_EQ(low.outcome, Outcome::NoVerdict);
        return low.why.say;
    };
    EXPECT_EQ(why(), Say::VentVentsMissing);
    plant.vents = std::vector{ventAt(VentLevel::Low, 2000, VentLeadsTo::ThroughOneWall)};
    EXPECT_EQ(why(), Say::VentOutsideOnly);
    plant.vents->front().leadsTo = VentLeadsTo::Outside;
    for (const auto flued : {std::optional<bool>(), std::optional(false)}) {
        plant.openFlued = flued;
        EXPECT_EQ(why(), Say::PlantFlueOther);
    }
    plant.summer.reset();
    EXPECT_EQ(why(), Say::PlantSpaceMissing);
    plant.input = {};
    EXPECT_EQ(why(), Say::VentInputMissing);
    plant.input = Given<quantity::NetPower>::unusable();
    EXPECT_EQ(why(), Say::ReadingUnusable);
}

TEST(Plant, TemperaturesThatWereReadAreJudged) {
    const auto book = rulebook::RuleBook::shipped();
    auto plant = plantOf(200, PlantSpace::BoilerRoom, SummerUse::UpToHalf);
    const auto celsius = [](double value) { return quantity::Temperature(value, quantity::kCelsius); };
    plant.atFloor = celsius(26);
    plant.atMiddle = celsius(32);
    plant.atCeiling = celsius(39);
    std::vector<Outcome> outcomes;
    for (const auto& finding : plantVentilation(plant, airRules(book))) {
        if (finding.kind == FindingKind::PlantTemperature) {
            outcomes.push_back(finding.outcome);
        }
    }
    EXPECT_EQ(outcomes, (std::vector{Outcome::Fail, Outcome::LookAgain, Outcome::Pass}));
    plant.atFloor = Given<quantity::Temperature>::unusable();
    EXPECT_EQ(findingOf(plantVentilation(plant, airRules(book)), FindingKind::PlantTemperature).why.say,
              Say::ReadingUnusable);
}

}  // namespace
}  // namespace hearth::air
