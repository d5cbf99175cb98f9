// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_finding.h"

#include "core/rulebook/conclude.h"
#include "tests/core/air/air_samples.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::air {
namespace {

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
using samples::m3;
using samples::roomWith;
using samples::vent;

Room boilerRoom(double area, VentLeadsTo leadsTo = VentLeadsTo::Outside) {
    auto room = roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 17)});  // 50 cm2
    room.vents = std::vector{vent(area, leadsTo)};
    return room;
}

TEST(VentFinding, TheFreeAreaAgainstTheNeed) {
    const auto book = rulebook::RuleBook::shipped();
    struct Case {
        double area;
        VentLeadsTo leadsTo;
        Outcome outcome;
        Say say;
    };
    // What a wall takes is from a page of secondary quality: it fails, and asks to be confirmed.
    const Case cases[] = {
        {60, VentLeadsTo::Outside, Outcome::Pass, Say::VentEnough},
        {50, VentLeadsTo::Outside, Outcome::LookAgain, Say::VentNear},
        {49, VentLeadsTo::Outside, Outcome::Fail, Say::VentTooSmall},
        {80, VentLeadsTo::ThroughOneWall, Outcome::LookAgain, Say::LimitSecondary},
        {74, VentLeadsTo::ThroughOneWall, Outcome::Fail, Say::VentTooSmall},
    };
    for (const auto& c : cases) {
        const auto finding = freeAreaFinding(boilerRoom(c.area, c.leadsTo), airRules(book));
        EXPECT_EQ(finding.outcome, c.outcome) << c.area;
        EXPECT_EQ(finding.why.say, c.say) << c.area;
        EXPECT_TRUE(rulebook::says(finding, Say::VentStepOpenFlued));
        EXPECT_TRUE(rulebook::says(finding, Say::VentNeedIs));
        EXPECT_EQ(finding.limit->value.text(), "50.0");
    }
    auto measured = boilerRoom(55);
    measured.vents->front().uncertainty = cm2(4);
    EXPECT_EQ(freeAreaFinding(measured, airRules(book)).why.say, Say::VentNear);
}

TEST(VentFinding, NothingPassesOnWhatIsMissing) {
    const auto book = confirmedBook();
    const auto why = [&](const Room& room) {
        const auto finding = freeAreaFinding(room, airRules(book));
        EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
        return finding.why.say;
    };
    auto room = boilerRoom(60);
    room.vents.reset();
    EXPECT_EQ(why(room), Say::VentVentsMissing);
    room = boilerRoom(60);
    room.vents->front().freeArea = {};
    EXPECT_EQ(why(room), Say::VentVentsMissing);
    room = boilerRoom(60);
    room.vents->front().leadsTo.reset();
    EXPECT_EQ(why(room), Say::VentLeadsMissing);
    room = boilerRoom(60);
    room.appliances.front().input = {};
    EXPECT_EQ(why(room), Say::VentInputMissing);
    EXPECT_EQ(why(roomWith({})), Say::VentAppliancesMissing);
}

TEST(VentFinding, LeaksAreCountedOnlyWhereTheDwellingIsNotTight) {
    const auto book = confirmedBook();
    auto room = boilerRoom(60);
    room.tightDwelling.reset();
    EXPECT_EQ(freeAreaFinding(room, airRules(book)).why.say, Say::VentTightMissing);
    room.tightDwelling = true;
    auto finding = freeAreaFinding(room, airRules(book));
    EXPECT_EQ(finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(finding.why.say, Say::VentTightMore);
    // Too little for the usual rule is too little for the other.
    room.vents->front().freeArea = cm2(40);
    EXPECT_EQ(freeAreaFinding(room, airRules(book)).outcome, Outcome::Fail);
    const auto entered = samples::bookWith(Rule::VentTightPerKilowatt, 5, quantity::UnitCode::None);
    room.vents->front().freeArea = cm2(90);
    EXPECT_EQ(freeAreaFinding(room, airRules(entered)).outcome, Outcome::Pass);
    // A small fire that needs no vent counts on leaks as well.
    auto fire = roomWith({appliance(ApplianceKind::Fire, Flue::Open, 6)});
    EXPECT_EQ(freeAreaFinding(fire, airRules(book)).outcome, Outcome::Pass);
    fire.tightDwelling = true;
    EXPECT_EQ(freeAreaFinding(fire, airRules(book)).why.say, Say::VentTightMore);
}

TEST(VentFinding, RoomSealedAppliancesAskForNothing) {
    const auto book = rulebook::RuleBook::shipped();
    auto room = roomWith({appliance(ApplianceKind::Boiler, Flue::RoomSealed, 24)});
    room.vents.reset();
    const auto finding = freeAreaFinding(room, airRules(book));
    EXPECT_EQ(finding.outcome, Outcome::Pass);
    EXPECT_EQ(finding.why.say, Say::VentNotNeeded);
    EXPECT_FALSE(finding.measured);
}

TEST(VentFinding, FluelessAirThroughAWallIsToBeLookedUp) {
    const auto book = confirmedBook();
    auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    room.volume = m3(4);
    room.vents = std::vector{vent(90), vent(30, VentLeadsTo::ThroughOneWall)};
    auto finding = freeAreaFinding(room, airRules(book));
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_EQ(finding.why.say, Say::VentFluelessThroughWall);
    room.vents->front().freeArea = cm2(101);
    EXPECT_EQ(freeAreaFinding(room, airRules(book)).outcome, Outcome::Pass);
}

TEST(VentFinding, CabinetHeatersNeedBothLevels) {
    const auto book = confirmedBook();
    auto room = roomWith({appliance(ApplianceKind::CabinetHeater, Flue::Flueless, 1.4)});
    auto high = vent(60);
    high.level = VentLevel::High;
    auto low = vent(40);
    low.level = VentLevel::Low;
    room.vents = std::vector{high, low};
    auto findings = ventilation(room, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).outcome, Outcome::Pass);
    EXPECT_EQ(findingOf(findings, FindingKind::VentLowLevel).outcome, Outcome::Fail);
    room.vents->back().level.reset();
    findings = ventilation(room, airRules(book));
    EXPECT_EQ(findingOf(findings, FindingKind::VentHighLevel).why.say, Say::VentLevelMissing);
    room.vents.reset();
    EXPECT_EQ(findingOf(ventilation(room, airRules(book)), FindingKind::VentLowLevel).why.say,
              Say::VentVentsMissing);
    // The maker's figure says nothing of levels.
    room.appliances.front().makersArea = cm2(120);
    findings = ventilation(room, airRules(book));
    EXPECT_TRUE(std::none_of(findings.begin(), findings.end(),
                             [](const auto& finding) { return finding.kind == FindingKind::VentHighLevel; }));
}

TEST(VentFinding, FluelessAppliancesNeedAnOpening) {
    const auto book = rulebook::RuleBook::shipped();
    auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    EXPECT_EQ(openingFinding(room, airRules(book))->outcome, Outcome::Pass);
    room.opensToOutside = false;
    EXPECT_EQ(openingFinding(room, airRules(book))->outcome, Outcome::Fail);
    room.opensToOutside.reset();
    EXPECT_EQ(openingFinding(room, airRules(book))->why.say, Say::VentOpeningUnknown);
    EXPECT_FALSE(openingFinding(boilerRoom(60), airRules(book)));
    auto dryer = roomWith({appliance(ApplianceKind::TumbleDryer, Flue::Flueless, 4)});
    EXPECT_EQ(openingFinding(dryer, airRules(book))->why.say, Say::LimitMissing);
}

TEST(VentFinding, WhereAppliancesAreNotAllowed) {
    const auto book = confirmedBook();
    const auto outcome = [&](const Room& room) {
        Outcome gravest = Outcome::Pass;
        const auto findings = allowedFindings(room, airRules(book));
        EXPECT_FALSE(findings.empty());
        for (const auto& finding : findings) {
            gravest = rulebook::graver(gravest, finding.outcome);
        }
        return gravest;
    };
    const auto with = [](ApplianceKind kind, Flue flue, double kilowatt, double volume) {
        auto room = roomWith({appliance(kind, flue, kilowatt)});
        room.volume = m3(volume);
        return room;
    };
    auto cooker = with(ApplianceKind::Cooker, Flue::Flueless, 10, 20.5);
    cooker.bedSitting = true;
    EXPECT_EQ(outcome(cooker), Outcome::Fail);
    cooker.volume = m3(22);
    EXPECT_EQ(outcome(cooker), Outcome::Pass);
    cooker.volumeUncertainty = m3(0.6);
    EXPECT_EQ(outcome(cooker), Outcome::LookAgain);
    cooker.bedSitting.reset();
    EXPECT_EQ(outcome(cooker), Outcome::NoVerdict);
    EXPECT_EQ(outcome(with(ApplianceKind::WaterHeater, Flue::Flueless, 10, 4)), Outcome::Fail);
    EXPECT_EQ(outcome(with(ApplianceKind::WaterHeater, Flue::Flueless, 12, 30)), Outcome::Fail);
    EXPECT_EQ(outcome(with(ApplianceKind::WaterHeater, Flue::Flueless, 10, 30)), Outcome::Pass);
    EXPECT_EQ(outcome(with(ApplianceKind::DecorativeFire, Flue::Open, 21, 30)), Outcome::Fail);
    // 45 W/m3: 2.7 kW in 60 m3 is exactly at it.
    EXPECT_EQ(outcome(with(ApplianceKind::SpaceHeater, Flue::Flueless, 2.7, 60)), Outcome::LookAgain);
    EXPECT_EQ(outcome(with(ApplianceKind::SpaceHeater, Flue::Flueless, 2.7, 61)), Outcome::Pass);
    EXPECT_EQ(outcome(with(ApplianceKind::SpaceHeater, Flue::Flueless, 2.7, 59)), Outcome::Fail);
    auto hall = with(ApplianceKind::SpaceHeater, Flue::Flueless, 2.7, 31);
    hall.internalSpace = true;
    EXPECT_EQ(outcome(hall), Outcome::Pass);
    EXPECT_EQ(outcome(with(ApplianceKind::CabinetHeater, Flue::Flueless, 0.5, 14)), Outcome::Fail);
    EXPECT_EQ(outcome(with(ApplianceKind::CabinetHeater, Flue::Flueless, 1.4, 30)), Outcome::Pass);
    auto nowhere = with(ApplianceKind::SpaceHeater, Flue::Flueless, 2.7, 61);
    nowhere.volume = {};
    EXPECT_EQ(outcome(nowhere), Outcome::NoVerdict);
}

TEST(VentFinding, BeyondItsScopeTheDomesticStandardSaysNothing) {
    const auto book = rulebook::RuleBook::shipped();
    const auto boilers = [](double a, double b) {
        return roomWith({appliance(ApplianceKind::Boiler, Flue::Open, a),
                         appliance(ApplianceKind::Boiler, Flue::Open, b)});
    };
    EXPECT_EQ(scopeFinding(boilers(30, 30).appliances, airRules(book))->outcome, Outcome::Pass);
    EXPECT_EQ(scopeFinding(boilers(40, 30).appliances, airRules(book))->outcome, Outcome::LookAgain);
    const auto beyond = ventilation(boilers(40, 31), airRules(book));
    EXPECT_EQ(findingOf(beyond, FindingKind::VentScope).outcome, Outcome::NoVerdict);
    EXPECT_TRUE(std::none_of(beyond.begin(), beyond.end(),
                             [](const auto& finding) { return finding.kind == FindingKind::VentFreeArea; }));
    auto unsaid = boilers(30, 30);
    unsaid.appliances.back().input = {};
    EXPECT_FALSE(scopeFinding(unsaid.appliances, airRules(book)));
    unsaid.appliances.front().input.net = kw(80);
    EXPECT_EQ(scopeFinding(unsaid.appliances, airRules(book))->outcome, Outcome::NoVerdict);
}

TEST(VentFinding, ABasementCookerIsAdvisedAVent) {
    const auto book = confirmedBook();
    auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    room.basement = true;
    auto finding = findingOf(ventilation(room, airRules(book)), FindingKind::VentBasement);
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_EQ(finding.why.say, Say::VentBasementAdvised);
    room.vents = std::vector{vent(120)};
    finding = findingOf(ventilation(room, airRules(book)), FindingKind::VentBasement);
    EXPECT_EQ(finding.outcome, Outcome::Pass);
    EXPECT_EQ(finding.why.say, Say::VentBasementEnough);
    room.vents.reset();
    finding = findingOf(ventilation(room, airRules(book)), FindingKind::VentBasement);
    EXPECT_EQ(finding.why.say, Say::VentVentsMissing);
}

TEST(VentFinding, MoreVentNeverMakesItWorse) {
    const auto book = confirmedBook();
    const auto rank = [](Outcome outcome) {
        return outcome == Outcome::Pass ? 2 : outcome == Outcome::LookAgain ? 1 : 0;
    };
    int before = 0;
    for (double area = 0; area <= 120; area += 1) {
        const int now = rank(freeAreaFinding(boilerRoom(area), airRules(book)).outcome);
        EXPECT_GE(now, before) << area;
        before = now;
    }
    EXPECT_EQ(before, 2);
}

}  // namespace
}  // namespace hearth::air
