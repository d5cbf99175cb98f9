// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workings/workings_model.h"

#include "tests/ui/support/firm_bench.h"

#include <gtest/gtest.h>

namespace hearth::ui::workings {
namespace {

using hearth::testing::FirmBench;
using judging::Group;
using judging::Question;
using quantity::UnitCode;
using reg::Item;

class WorkingsModelTest : public ::testing::Test {
  protected:
    void SetUp() override {
        model.refresh();
        model.choose(Question::RoomCo);
    }
    void put(int row, const char* text, UnitCode unit = UnitCode::Ppm) {
        model.put({Group::Reading, row, Item::RoomCo}, QString::fromLatin1(text), unit);
    }
    [[nodiscard]] std::string at(int row) const {
        const auto* entry = model.sheet().find(Group::Reading, row, Item::RoomCo);
        return entry == nullptr ? std::string() : entry->text;
    }

    FirmBench bench;
    shell::Context context = bench.context();
    WorkingsModel model{context};
};

TEST_F(WorkingsModelTest, NothingIsFoundWhileNothingIsTyped) {
    for (const auto& info : judging::questions()) {
        model.choose(info.question);
        EXPECT_TRUE(model.answer().findings.empty()) << info.code;
        EXPECT_TRUE(model.answer().errors.empty()) << info.code;
        EXPECT_EQ(model.outcome(info.question), std::nullopt) << info.code;
    }
}

TEST_F(WorkingsModelTest, EveryQuestionKeepsItsOwnSheet) {
    put(0, "12");
    model.choose(Question::GasRate);
    EXPECT_TRUE(model.sheet().isEmpty());
    model.choose(Question::RoomCo);
    EXPECT_EQ(at(0), "12");
}

TEST_F(WorkingsModelTest, TakesBackStepByStepAndThenSaysThatThereIsNothing) {
    put(0, "12");
    put(1, "14");
    put(0, "13");
    EXPECT_TRUE(model.takeBack());
    EXPECT_EQ(at(0), "12");
    EXPECT_TRUE(model.takeBack());
    EXPECT_EQ(at(1), "");
    EXPECT_TRUE(model.takeBack());
    EXPECT_TRUE(model.sheet().isEmpty());
    EXPECT_FALSE(model.takeBack());
}

TEST_F(WorkingsModelTest, WhatWasClearedComesBackToTheLetter) {
    put(0, "12,0");
    put(2, "rubbish");
    model.clear();
    EXPECT_TRUE(model.sheet().isEmpty());
    EXPECT_TRUE(model.wasCleared());
    EXPECT_TRUE(model.takeBack());
    EXPECT_FALSE(model.wasCleared());
    EXPECT_EQ(at(0), "12,0");
    EXPECT_EQ(at(2), "rubbish");
    EXPECT_EQ(model.sheet().find(Group::Reading, 0, Item::RoomCo)->unit, UnitCode::Ppm);
}

TEST_F(WorkingsModelTest, AfterTheStoreChangedTheNextTakingBackIsTheStores) {
    put(0, "12");
    model.storeChanged();
    EXPECT_FALSE(model.takeBack());
    EXPECT_EQ(at(0), "12");
    EXPECT_TRUE(model.takeBack());
    put(0, "12");
    model.storeChanged();
    put(0, "13");
    EXPECT_TRUE(model.takeBack()) << "what was typed since is newer";
    EXPECT_EQ(at(0), "12");
}

TEST_F(WorkingsModelTest, AnotherDayKeepsWhatWasTypedAndJudgesByItsOwnRules) {
    put(3, "12");
    bench.clock.advance(std::chrono::hours(24));
    model.refresh();
    EXPECT_EQ(at(3), "12");
    EXPECT_EQ(model.sheet().on(), bench.clock.today("Europe/London"));
}

TEST_F(WorkingsModelTest, RowsGrowByOneAsFarAsTheyMay) {
    const judging::AskedGroup few{Group::Reading, judging::infoOf(Question::RoomCo).groups.back().items, 2};
    EXPECT_EQ(rowsShown(model.sheet(), few), 1);
    put(0, "12");
    EXPECT_EQ(rowsShown(model.sheet(), few), 2);
    put(1, "12");
    EXPECT_EQ(rowsShown(model.sheet(), few), 2);
}

TEST_F(WorkingsModelTest, TheGasIsWhatTheSheetSays) {
    model.choose(Question::GasRate);
    EXPECT_EQ(gasOf(model.sheet()), rulebook::Gas::NaturalGas);
    for (const auto& [code, gas] :
         {std::pair("propane", rulebook::Gas::Propane), std::pair("butane", rulebook::Gas::Butane),
          std::pair("lpg_air", rulebook::Gas::LpgAir), std::pair("natural_gas", rulebook::Gas::NaturalGas)}) {
        model.put({Group::Once, 0, Item::GasFamily}, QString::fromLatin1(code), UnitCode::None);
        EXPECT_EQ(gasOf(model.sheet()), gas) << code;
    }
}

}  // namespace
}  // namespace hearth::ui::workings
