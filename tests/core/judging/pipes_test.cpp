// SPDX-License-Identifier: GPL-3.0-or-later
// Published source: BS 6891's discharge table (handout): 22 mm copper passes 4.6 m3/h over 9 m at 1 mbar. At
// 38.76 MJ/m3 that is 49.5 kW gross.
#include "core/judging/pipes.h"

#include "core/pipework/figures.h"
#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/judging/scenario.h"

#include <gtest/gtest.h>

namespace hearth::judging {
namespace {

using pipework::FlowBasis;
using quantity::UnitCode;
using reg::Item;
using rulebook::FindingKind;
using rulebook::Outcome;
using rulebook::Say;

struct PipeFindings : ::testing::Test {
    reg::VisitFile file = scenario::commonPractice("2026-11-10", "ed4");
    rulebook::RuleBook book = rulebook::RuleBook::shipped();

    void SetUp() override {
        reg::Appliance boiler;
        boiler.id.bytes[15] = 77;
        boiler.grossInput = {"49.5", UnitCode::Kilowatt};
        file.appliances = {boiler};
        file.pipes.resize(1);
        file.pipes[0].tubeCode = "copper_22";
        file.pipes[0].length = {"4.50", UnitCode::Metre};
        file.pipes[0].leadsTo = "boiler";
        file.pipes[0].appliance = boiler.id;
        file.pipes[0].fittings = "none";
    }
    std::vector<rulebook::Finding> found(FindingKind kind = FindingKind::PressureDropDesign) const {
        std::vector<rulebook::Finding> findings;
        for (const auto& judged : judge(file, book)) {
            if (judged.finding.kind == kind && judged.subject == reg::subject(file.installation.id)) {
                findings.push_back(judged.finding);
            }
        }
        return findings;
    }
    double designDrop() const {
        const auto pipes = visitPipes(file, book);
        const auto& drop = pipes.worked.design->routes.at(0).drop;
        return drop ? drop->in(quantity::kMillibar) : -1.0;
    }
    void addPipe(const char* tube, const char* metres) {
        reg::PipeSection pipe;
        pipe.id.bytes[0] = static_cast<std::uint8_t>(file.pipes.size() + 40);
        pipe.tubeCode = tube;
        pipe.length = {metres, UnitCode::Metre};
        pipe.after = file.pipes.front().id;
        pipe.fittings = "0";
        file.pipes.push_back(pipe);
    }
    /// 4.6 m3/h: 0.767 m3 in ten minutes.
    void timeTheBoiler() {
        const std::pair<Item, const char*> typed[] = {
            {Item::RateIndexStart, "100.000"}, {Item::RateIndexEnd, "100.767"}, {Item::RateTime, "600"},
            {Item::RateOthersOff, "yes"},      {Item::RateFullRate, "yes"},     {Item::RateWarm, "yes"}};
        for (const auto& [item, text] : typed) {
            reg::Entry entry;
            entry.subject = reg::subject(file.appliances[0].id);
            entry.item = item;
            entry.text = text;
            entry.unit = item == Item::RateTime                                       ? UnitCode::Second
                         : item == Item::RateIndexStart || item == Item::RateIndexEnd ? UnitCode::CubicMetre
                                                                                      : UnitCode::None;
            entry.canonical = reg::canonicalOf(item, text).value_or(std::string());
            file.entries.push_back(entry);
        }
    }
};

TEST_F(PipeFindings, AreAskedForByAnApplianceAtAnEnd) {
    ASSERT_EQ(found().size(), 1U);
    EXPECT_TRUE(visitPipes(file, book).isAsked);
    file.pipes[0].appliance.reset();
    EXPECT_TRUE(found().empty()) << "a list for the volume alone asks nothing";
    EXPECT_FALSE(visitPipes(file, book).isAsked);
    file.pipes.clear();
    EXPECT_TRUE(judgePipes(file, book).empty());
}

TEST_F(PipeFindings, GoByTheHeatInputAndTheLength) {
    EXPECT_EQ(found().at(0).outcome, Outcome::Pass);
    EXPECT_NEAR(designDrop(), 0.5, 0.07);  // half of the table's length; the table's agreement is 13 %
    const double gross = designDrop();
    file.pipes[0].length.text = "18";
    EXPECT_EQ(found().at(0).outcome, Outcome::Fail);
    file.pipes[0].length.text = "4.50";
    // Approved Document J: 70 kW net is 77.7 kW gross.
    file.appliances[0].grossInput = {};
    file.appliances[0].netInput = {"44.6", UnitCode::Kilowatt};
    EXPECT_NEAR(designDrop(), gross, 0.02);
}

TEST_F(PipeFindings, WithoutFittingsSaidNothingPasses) {
    for (const auto* unsaid : {"", "some"}) {
        file.pipes[0].fittings = unsaid;
        file.pipes[0].length.text = "4.50";
        EXPECT_EQ(found().at(0).outcome, Outcome::NoVerdict) << unsaid;
        EXPECT_EQ(found().at(0).why.say, Say::PipeDropLeast) << unsaid;
        file.pipes[0].length.text = "18";
        EXPECT_EQ(found().at(0).outcome, Outcome::Fail) << unsaid;
        EXPECT_TRUE(rulebook::says(found().at(0), Say::PipeFittingsUnsaid)) << unsaid;
    }
    const double bare = designDrop();
    file.pipes[0].fittings = "18 m";
    EXPECT_NEAR(designDrop(), 2 * bare, 1e-9) << "worth as much again";
}

TEST_F(PipeFindings, AMissingHeatInputOrEndIsNoVerdict) {
    for (const auto* unusable : {"", "big"}) {
        file.appliances[0].grossInput.text = unusable;
        EXPECT_EQ(found().at(0).outcome, Outcome::NoVerdict);
        EXPECT_EQ(found().at(0).why.say, Say::PipeFlowUnknown) << unusable;
    }
    file.appliances[0].grossInput.text = "49.5";
    addPipe("copper_15", "2");
    ASSERT_EQ(found().size(), 1U) << "said once: what the branch draws flows through the first pipe too";
    EXPECT_EQ(found().at(0).why.say, Say::PipeFlowUnknown);
    file.pipes[1].capped = true;
    ASSERT_EQ(found().size(), 2U);
    EXPECT_EQ(found().at(0).outcome, Outcome::Pass);
    EXPECT_EQ(found().at(1).outcome, Outcome::Pass);
    file.pipes[0].tubeCode = "ghost";
    EXPECT_EQ(found().at(0).why.say, Say::PipeSizeUnknown);
    file.appliances.clear();  // taken away since
    EXPECT_EQ(found().at(0).outcome, Outcome::NoVerdict);
}

TEST_F(PipeFindings, AListThatIsNoTreeIsNoVerdict) {
    file.pipes[0].afterText = "the old one";
    ASSERT_EQ(found().size(), 1U);
    EXPECT_EQ(found().at(0).outcome, Outcome::NoVerdict);
    EXPECT_EQ(found().at(0).why.say, Say::PipeOrderUnclear);
    file.pipes[0].afterText.clear();
    file.pipes[0].after = file.pipes[0].id;
    EXPECT_EQ(found().at(0).why.say, Say::PipeOrderUnclear);
    file.pipes[0].after = reg::PipeSectionId{};
    EXPECT_EQ(found().at(0).why.say, Say::PipeOrderUnclear);
    file.pipes[0].after.reset();
    file.installation.gas = rulebook::Gas::LpgAir;
    EXPECT_EQ(found().at(0).why.say, Say::PipeGasUnknown);
}

TEST_F(PipeFindings, WhatWasTimedIsJudgedToo) {
    EXPECT_TRUE(found(FindingKind::PressureDropMeasured).empty());
    const auto before = file.entries.size();
    timeTheBoiler();
    ASSERT_EQ(found(FindingKind::PressureDropMeasured).size(), 1U);
    EXPECT_EQ(found(FindingKind::PressureDropMeasured).at(0).outcome, Outcome::Pass);
    const auto pipes = visitPipes(file, book);
    EXPECT_NEAR(pipes.worked.measured->routes.at(0).drop->in(quantity::kMillibar), designDrop(), 0.01);
    EXPECT_GT(pipes.worked.measured->routes.at(0).uncertainty.base(),
              pipes.worked.design->routes.at(0).uncertainty.base());
    file.entries.resize(before);
    reg::Entry typed;
    typed.subject = reg::subject(file.appliances[0].id);
    typed.item = Item::GasRateRead;
    typed.text = typed.canonical = "4.60";
    typed.unit = UnitCode::CubicMetrePerHour;
    file.entries.push_back(typed);
    ASSERT_EQ(found(FindingKind::PressureDropMeasured).size(), 1U) << "typed as a rate";
    EXPECT_NEAR(visitPipes(file, book).worked.measured->routes.at(0).drop->in(quantity::kMillibar),
                designDrop(), 0.01);
    // An untimed neighbour is no finding at the measured flow.
    addPipe("copper_15", "2");
    auto hob = file.appliances[0];
    hob.id.bytes[15] = 78;
    hob.grossInput.text = "8";
    file.appliances.push_back(hob);
    file.pipes[1].appliance = hob.id;
    EXPECT_TRUE(found(FindingKind::PressureDropMeasured).empty());
    EXPECT_EQ(found().size(), 2U);
}

TEST(PipeUncertainty, OfALastDigitIsRectangular) {
    // JCGM 100:2008, 4.3.7: half a digit over the square root of three.
    EXPECT_NEAR(lengthUncertainty(quantity::Length(0.1, quantity::kMetre)).in(quantity::kMetre), 0.028867513,
                1e-8);
    EXPECT_NEAR(
        flowUncertainty(quantity::Flow(0.1, quantity::kCubicMetrePerHour)).in(quantity::kCubicMetrePerHour),
        0.028867513, 1e-8);
}

}  // namespace
}  // namespace hearth::judging
