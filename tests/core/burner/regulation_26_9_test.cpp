// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/regulation_26_9.h"

#include "core/rulebook/conclude.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using rulebook::Outcome;
using rulebook::Say;

AppliancesExamination examined() {
    AppliancesExamination all;
    all.flue = Examined::Good;
    all.combustionAir = Examined::Good;
    all.operatingPressure = Outcome::Pass;
    all.operation = Examined::Good;
    return all;
}

struct Reg26Case {
    const char* name;
    void (*change)(AppliancesExamination&);
    Asked state;
    Outcome outcome;
    Say why;
};

using Reg26A = AppliancesExamination;
constexpr auto kReg26Pass = Outcome::Pass;
constexpr auto kReg26Fail = Outcome::Fail;
constexpr auto kReg26None = Outcome::NoVerdict;
constexpr auto kReg26Look = Outcome::LookAgain;
constexpr auto kReg26Yes = Asked::Satisfied;
constexpr auto kReg26No = Asked::NotSatisfied;
constexpr auto kReg26Yet = Asked::NotYet;

void expectReg26(const Reg26Case& c) {
    auto appliance = examined();
    c.change(appliance);
    EXPECT_EQ(examinedUnder26(appliance).state, c.state) << c.name;
    EXPECT_EQ(examinedUnder26(appliance).why.say, c.why) << c.name;
    EXPECT_EQ(regulation26Finding(appliance).outcome, c.outcome) << c.name;
}

// Gas Safety (Installation and Use) Regulations 1998 reg 26(9): (a), (b), (c), (ca) read; (d) partly from
// memory.
TEST(Regulation26, EveryMatterIsAskedFor) {
    const Reg26Case cases[] = {
        {"all", [](Reg26A&) {}, kReg26Yes, kReg26Pass, Say::Reg26Satisfied},
        {"heat input instead",
         [](Reg26A& a) {
             a.operatingPressure = {};
             a.heatInput = Outcome::Pass;
         },
         kReg26Yes, kReg26Pass, Say::Reg26Satisfied},
        {"flueless", [](Reg26A& a) { a.flue = Examined::NotFitted; }, kReg26Yes, kReg26Pass,
         Say::Reg26Satisfied},
        {"flue not", [](Reg26A& a) { a.flue = {}; }, kReg26Yet, kReg26None, Say::Reg26FlueNot},
        {"flue wrong", [](Reg26A& a) { a.flue = Examined::Wrong; }, kReg26No, kReg26Fail,
         Say::Reg26FlueWrong},
        {"air not", [](Reg26A& a) { a.combustionAir = {}; }, kReg26Yet, kReg26None, Say::Reg26AirNot},
        {"air none", [](Reg26A& a) { a.combustionAir = Examined::NotFitted; }, kReg26Yet, kReg26None,
         Say::Reg26AirNot},
        {"air wrong", [](Reg26A& a) { a.combustionAir = Examined::Wrong; }, kReg26No, kReg26Fail,
         Say::Reg26AirWrong},
        {"operation not", [](Reg26A& a) { a.operation = {}; }, kReg26Yet, kReg26None, Say::Reg26OperationNot},
        {"operation wrong", [](Reg26A& a) { a.operation = Examined::Wrong; }, kReg26No, kReg26Fail,
         Say::Reg26OperationWrong},
    };
    for (const auto& c : cases) {
        expectReg26(c);
    }
}

TEST(Regulation26, PressureOrHeatInputOrBoth) {
    const Reg26Case cases[] = {
        {"neither", [](Reg26A& a) { a.operatingPressure = {}; }, kReg26Yet, kReg26None,
         Say::Reg26PressureOrHeat},
        {"pressure fails", [](Reg26A& a) { a.operatingPressure = Outcome::Fail; }, kReg26No, kReg26Fail,
         Say::Reg26ReadingFails},
        {"pressure fails, heat input does not",
         [](Reg26A& a) {
             a.operatingPressure = Outcome::Fail;
             a.heatInput = Outcome::Pass;
         },
         kReg26No, kReg26Fail, Say::Reg26ReadingFails},
        {"pressure not judged", [](Reg26A& a) { a.operatingPressure = Outcome::NoVerdict; }, kReg26Yet,
         kReg26None, Say::Reg26ReadingOpen},
        {"pressure not judged, heat input is",
         [](Reg26A& a) {
             a.operatingPressure = Outcome::NoVerdict;
             a.heatInput = Outcome::Pass;
         },
         kReg26Yes, kReg26Pass, Say::Reg26Satisfied},
        {"pressure asks for a look", [](Reg26A& a) { a.operatingPressure = Outcome::LookAgain; }, kReg26Yes,
         kReg26Look, Say::Reg26Satisfied},
        {"both needed", [](Reg26A& a) { a.bothNecessary = true; }, kReg26Yet, kReg26None,
         Say::Reg26BothNeeded},
        {"both needed and there",
         [](Reg26A& a) {
             a.bothNecessary = true;
             a.heatInput = Outcome::Pass;
         },
         kReg26Yes, kReg26Pass, Say::Reg26Satisfied},
        {"both needed, one not judged",
         [](Reg26A& a) {
             a.bothNecessary = true;
             a.heatInput = Outcome::NoVerdict;
         },
         kReg26Yet, kReg26None, Say::Reg26ReadingOpen},
        {"combustion fails beside a good pressure", [](Reg26A& a) { a.combustion = Outcome::Fail; }, kReg26No,
         kReg26Fail, Say::Reg26ReadingFails},
        {"a defect before what is missing",
         [](Reg26A& a) {
             a.flue = {};
             a.combustionAir = Examined::Wrong;
         },
         kReg26No, kReg26Fail, Say::Reg26AirWrong},
    };
    for (const auto& c : cases) {
        expectReg26(c);
    }
}

TEST(Regulation26, CombustionStandsInOnlyWithAReason) {
    auto appliance = examined();
    appliance.operatingPressure = {};
    appliance.combustion = Outcome::Pass;
    EXPECT_EQ(examinedUnder26(appliance).state, Asked::NotYet);
    EXPECT_EQ(examinedUnder26(appliance).why.say, Say::Reg26NoReason);
    for (const auto reason : {NotPracticable::NoMeterNoTestPoint, NotPracticable::MeterNotAccessible,
                              NotPracticable::MeterDisplayDead}) {
        appliance.whyNotPracticable = reason;
        EXPECT_EQ(examinedUnder26(appliance).state, Asked::Satisfied);
        EXPECT_TRUE(says(regulation26Finding(appliance), Say::Reg26CombustionInstead));
    }
    appliance.whyNotPracticable = NotPracticable::Other;
    EXPECT_EQ(examinedUnder26(appliance).why.say, Say::Reg26ReasonWords);
    appliance.whyInWords = "test point broken off inside the valve";
    EXPECT_EQ(examinedUnder26(appliance).state, Asked::Satisfied);
    appliance.combustion = Outcome::NoVerdict;
    EXPECT_EQ(examinedUnder26(appliance).state, Asked::NotYet);
    appliance.combustion = Outcome::Fail;
    EXPECT_EQ(examinedUnder26(appliance).state, Asked::NotSatisfied);
    appliance.combustion = {};
    EXPECT_EQ(examinedUnder26(appliance).why.say, Say::Reg26CombustionNot);
}

TEST(Regulation26, NothingPassesByDefault) {
    EXPECT_EQ(regulation26Finding({}).outcome, Outcome::NoVerdict);
    EXPECT_EQ(examinedUnder26({}).matters.size(), 4U) << "each matter is named";
}

TEST(Regulation26, ADefectIsToBeTold) {
    auto appliance = examined();
    appliance.flue = Examined::Wrong;
    EXPECT_TRUE(says(regulation26Finding(appliance), Say::Reg26TellDefect));
    EXPECT_FALSE(says(regulation26Finding(examined()), Say::Reg26TellDefect));
}

// 26(10), from memory.
TEST(Regulation26, WhereItDoesNotApplyNothingPasses) {
    for (const auto why : {NotAsked::DirectDisconnection, NotAsked::HarmlessPurging}) {
        AppliancesExamination appliance;
        appliance.notAsked = why;
        EXPECT_EQ(examinedUnder26(appliance).state, Asked::DoesNotApply);
        EXPECT_EQ(regulation26Finding(appliance).outcome, Outcome::LookAgain);
        EXPECT_EQ(regulation26Finding(appliance).why.say, Say::Reg26DoesNotApply);
    }
}

}  // namespace
}  // namespace hearth::burner
