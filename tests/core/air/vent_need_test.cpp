// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/vent_need.h"

#include "core/air/known_rules.h"
#include "tests/core/air/air_samples.h"
#include "tests/support/agreement.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace hearth::air {
namespace {

using quantity::kKilowatt;
using rulebook::Rule;
using rulebook::Say;
using samples::airRules;
using samples::appliance;
using samples::cm2;
using samples::confirmedBook;
using samples::kw;
using samples::roomWith;

constexpr double kVentExact = 1e-9;

/// What the room needs in cm2, or -1 where it can't be said.
double needed(const Room& room, const rulebook::RuleBook& book) {
    const auto need = roomNeed(room, airRules(book));
    return need.area ? need.area->in(quantity::kSquareCentimetre) : -1.0;
}

bool lacks(const Room& room, const rulebook::RuleBook& book, Say say) {
    const auto missing = roomNeed(room, airRules(book)).missing;
    return std::any_of(missing.begin(), missing.end(), [&](const auto& one) { return one.say == say; });
}

TEST(VentNeed, OpenFluedAsThePublishedExamples) {
    const auto book = rulebook::RuleBook::shipped();
    testing::Agreement agreement("Vent for open-flued appliances in a room",
                                 "gas-safety page on BS 5440-2 (17 kW; 25 and 8 kW)", "cm2", kVentExact);
    agreement.hold("17 kW", needed(roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 17)}), book), 50);
    agreement.hold("25 and 8 kW",
                   needed(roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 25),
                                    appliance(ApplianceKind::SpaceHeater, Flue::Open, 8)}),
                          book),
                   130);
}

TEST(VentNeed, CookerRowsAsPublished) {
    struct Case {
        double volume;
        bool door;
        double area;
    };
    const Case cases[] = {
        {4, false, 100}, {4, true, 100},  {4.99, false, 100}, {5, false, 50},
        {7, false, 50},  {10, false, 50}, {7, true, 0},       {15, false, 0},
        {20, false, 0},  {25, false, 0},  {10.01, false, 0},
    };
    const auto book = rulebook::RuleBook::shipped();
    testing::Agreement agreement("Vent for a cooker by the room's volume",
                                 "BS 5440-2, flueless table (six cooker makers' pages)", "cm2", kVentExact);
    for (const auto& c : cases) {
        auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
        room.volume = samples::m3(c.volume);
        room.doorToOutside = c.door;
        agreement.hold(std::to_string(c.volume) + " m3", needed(room, book), c.area);
    }
}

TEST(VentNeed, FluelessHeatersByTheRowsArithmetic) {
    const auto book = rulebook::RuleBook::shipped();
    testing::Agreement agreement("Vent for a flueless space heater",
                                 "worked by hand from BS 5440-2's row (exam revision page, 2013)", "cm2",
                                 kVentExact);
    const auto heater = [](double kilowatt, bool internal) {
        auto room = roomWith({appliance(ApplianceKind::SpaceHeater, Flue::Flueless, kilowatt)});
        room.volume = samples::m3(100);
        room.internalSpace = internal;
        return room;
    };
    agreement.hold("2.7 kW", needed(heater(2.7, false), book), 100);
    agreement.hold("4 kW", needed(heater(4.0, false), book), 171.5);
    agreement.hold("1.5 kW", needed(heater(1.5, false), book), 100);
    agreement.hold("internal, 5.4 kW", needed(heater(5.4, true), book), 100);
    agreement.hold("internal, 7.4 kW", needed(heater(7.4, true), book), 155);
    agreement.hold("function, 4 kW", fluelessHeaterArea(kw(4), cm2(100), kw(2.7), 55) / cm2(1), 171.5);
}

TEST(VentNeed, SeveralAppliancesAskForTheGreatest) {
    const auto book = rulebook::RuleBook::shipped();
    // Facts 4.5, derived: boiler 18 kW, fire 6.9 kW, cooker in 25 m3: (18 + 6.9 - 7) x 5.
    auto room = roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 18),
                          appliance(ApplianceKind::Fire, Flue::Open, 6.9),
                          appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    room.volume = samples::m3(25);
    EXPECT_NEAR(needed(room, book), 89.5, kVentExact);
    // A water heater of 17 kW asks for 50 by itself and is no space heater: 89.5 stays the greatest.
    room.appliances.push_back(appliance(ApplianceKind::WaterHeater, Flue::Open, 17));
    EXPECT_NEAR(needed(room, book), 89.5, kVentExact);
    // A firm that adds all three groups.
    const auto adding = samples::bookWith(Rule::VentSeveralGroups, 3, quantity::UnitCode::None);
    EXPECT_NEAR(needed(room, adding), 139.5, kVentExact);
}

TEST(VentNeed, TheOtherRows) {
    const auto book = rulebook::RuleBook::shipped();
    const auto one = [&](Appliance a) { return needed(roomWith({a}), book); };
    EXPECT_EQ(one(appliance(ApplianceKind::Boiler, Flue::RoomSealed, 30)), 0);
    EXPECT_EQ(one(appliance(ApplianceKind::Fire, Flue::Open, 6.9)), 0);
    EXPECT_EQ(one(appliance(ApplianceKind::DecorativeFire, Flue::Open, 8)), 100);
    EXPECT_NEAR(one(appliance(ApplianceKind::CabinetHeater, Flue::Flueless, 4)), 200, kVentExact);
    EXPECT_NEAR(one(appliance(ApplianceKind::CabinetHeater, Flue::Flueless, 1)), 100, kVentExact);
    EXPECT_EQ(one(appliance(ApplianceKind::TumbleDryer, Flue::Flueless, 4)), -1);  // shipped empty
    const struct {
        double volume;
        double area;
    } heaters[] = {{6, 100}, {10, 100}, {15, 50}, {20, 50}, {21, 0}};
    for (const auto& h : heaters) {
        auto room = roomWith({appliance(ApplianceKind::WaterHeater, Flue::Flueless, 10)});
        room.volume = samples::m3(h.volume);
        EXPECT_EQ(needed(room, book), h.area) << h.volume;
    }
    EXPECT_EQ(cabinetHeaterArea(kw(4), cm2(50), 25).in(quantity::kSquareCentimetre), 100);
    EXPECT_EQ(perKilowattArea(kw(24), 10).in(quantity::kSquareCentimetre), 240);
    EXPECT_EQ(openFluedArea(kw(5), kw(7), 5).in(quantity::kSquareCentimetre), 0);
}

TEST(VentNeed, AnUncertainVolumeIsTakenSmaller) {
    const auto book = rulebook::RuleBook::shipped();
    auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    room.volume = samples::m3(10.2);
    EXPECT_EQ(needed(room, book), 0);
    room.volumeUncertainty = samples::m3(0.2);
    EXPECT_EQ(needed(room, book), 50);
}

TEST(VentNeed, TheMakersFigureComesFirst) {
    const auto book = rulebook::RuleBook::shipped();
    auto boiler = appliance(ApplianceKind::Boiler, Flue::Open, 17);
    boiler.makersArea = cm2(75);
    EXPECT_NEAR(needed(roomWith({boiler}), book), 75, kVentExact);
    boiler.input = {};
    EXPECT_NEAR(needed(roomWith({boiler}), book), 75, kVentExact);
    boiler.makersArea = cm2(0);
    EXPECT_NEAR(needed(roomWith({boiler}), book), 0, kVentExact);
}

TEST(VentNeed, InATightDwellingNothingIsDeductedOnceTheFirmHasEnteredTheRule) {
    auto room = roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 17)});
    room.tightDwelling = true;
    EXPECT_TRUE(roomNeed(room, airRules(confirmedBook())).countsLeaks);
    const auto book = samples::bookWith(Rule::VentTightPerKilowatt, 5, quantity::UnitCode::None);
    EXPECT_NEAR(needed(room, book), 85, kVentExact);
    EXPECT_FALSE(roomNeed(room, airRules(book)).countsLeaks);
    room.tightDwelling = false;
    EXPECT_NEAR(needed(room, book), 50, kVentExact);
}

TEST(VentNeed, WhatIsMissingIsNamedAndNothingIsNeededByDefault) {
    const auto book = confirmedBook();
    EXPECT_TRUE(lacks(roomWith({}), book, Say::VentAppliancesMissing));
    EXPECT_EQ(needed(roomWith({}), book), -1);
    Appliance unknown;
    unknown.input.net = kw(10);
    EXPECT_TRUE(lacks(roomWith({unknown}), book, Say::VentKindMissing));
    auto noInput = appliance(ApplianceKind::Boiler, Flue::Open, 0);
    noInput.input = {};
    EXPECT_TRUE(lacks(roomWith({noInput}), book, Say::VentInputMissing));
    EXPECT_EQ(needed(roomWith({noInput}), book), -1);
    noInput.input.net = Given<quantity::NetPower>::unusable();
    EXPECT_TRUE(lacks(roomWith({noInput}), book, Say::ReadingUnusable));
    auto room = roomWith({appliance(ApplianceKind::Cooker, Flue::Flueless, 10)});
    room.volume = samples::m3(7);
    room.doorToOutside.reset();
    EXPECT_TRUE(lacks(room, book, Say::VentDoorMissing));
    room.volume = {};
    EXPECT_TRUE(lacks(room, book, Say::VentVolumeMissing));
    auto hall = roomWith({appliance(ApplianceKind::SpaceHeater, Flue::Flueless, 3)});
    hall.internalSpace.reset();
    EXPECT_TRUE(lacks(hall, book, Say::VentInternalMissing));
    EXPECT_TRUE(lacks(roomWith({appliance(ApplianceKind::Boiler, Flue::Open, 10)}),
                      rulebook::RuleBook(std::vector<rulebook::Entry>{}), Say::LimitMissing));
}

TEST(VentNeed, GrossIsNetOnlyByARatio) {
    EXPECT_NEAR(netFromGross({22.2, kKilowatt}, 1.11)->in(kKilowatt), 20.0, kVentExact);
    for (const double ratio : {0.0, 0.99, 1.21, -1.1}) {
        EXPECT_FALSE(netFromGross({22.2, kKilowatt}, ratio)) << ratio;
    }
    HeatInput input;
    input.gross = quantity::GrossPower(22.2, kKilowatt);
    EXPECT_FALSE(netInputOf(input));
    input.grossOverNet = 1.11;
    EXPECT_NEAR(netInputOf(input)->in(kKilowatt), 20.0, kVentExact);
    input.net = kw(18);
    EXPECT_EQ(netInputOf(input)->in(kKilowatt), 18.0);
    input.net = Given<quantity::NetPower>::unusable();
    EXPECT_FALSE(netInputOf(input));
    // The equation shows the way: 22.2 gross / 1.11.
    auto boiler = appliance(ApplianceKind::Boiler, Flue::Open, 0);
    boiler.input = {};
    boiler.input.gross = quantity::GrossPower(22.2, kKilowatt);
    boiler.input.grossOverNet = 1.11;
    const auto need = roomNeed(roomWith({boiler}), airRules(confirmedBook()));
    EXPECT_NEAR(need.area->in(quantity::kSquareCentimetre), 65.0, 1e-6);
    EXPECT_EQ(need.steps.front().say, Say::VentStepGross);
}

/// Every kind with the flues that it may have.
std::vector<Appliance> everyKind(double kilowatt) {
    std::vector<Appliance> all;
    for (const auto kind : {ApplianceKind::Boiler, ApplianceKind::SpaceHeater, ApplianceKind::Fire,
                            ApplianceKind::DecorativeFire, ApplianceKind::WaterHeater}) {
        all.push_back(appliance(kind, Flue::Open, kilowatt));
    }
    for (const auto kind : {ApplianceKind::SpaceHeater, ApplianceKind::Fire, ApplianceKind::WaterHeater,
                            ApplianceKind::Cooker, ApplianceKind::CabinetHeater}) {
        all.push_back(appliance(kind, Flue::Flueless, kilowatt));
    }
    all.push_back(appliance(ApplianceKind::Boiler, Flue::RoomSealed, kilowatt));
    return all;
}

TEST(VentNeed, GrowsWithTheInputAndNeverShrinksByAnotherAppliance) {
    const auto book = confirmedBook();
    for (const double volume : {4.0, 8.0, 15.0, 40.0}) {
        const auto in = [&](std::vector<Appliance> appliances) {
            auto room = roomWith(std::move(appliances));
            room.volume = samples::m3(volume);
            const double area = needed(room, book);
            EXPECT_GE(area, 0.0);
            return area;
        };
        for (std::size_t i = 0; i < everyKind(1).size(); ++i) {
            double before = 0.0;
            for (double kilowatt = 0.5; kilowatt <= 40.0; kilowatt += 0.5) {
                const double area = in({everyKind(kilowatt)[i]});
                EXPECT_GE(area, before) << i << " at " << kilowatt;
                before = area;
            }
            for (const double first : {2.0, 6.9, 7.1, 25.0}) {
                for (const double second : {0.5, 6.9, 30.0}) {
                    for (const auto& another : everyKind(second)) {
                        const auto one = everyKind(first)[i];
                        EXPECT_GE(in({one, another}), in({one})) << i;
                        EXPECT_GE(in({one, another, another}), in({one, another})) << i;
                    }
                }
            }
        }
    }
}

TEST(KnownRules, KeepEachEntryOnceAndRememberWhatWasEmpty) {
    const auto book = rulebook::RuleBook::shipped();
    const auto rules = airRules(book);
    KnownRules known(rules);
    EXPECT_EQ(known.power(Rule::VentAdventitiousInput), kw(7));
    EXPECT_EQ(known.power(Rule::VentAdventitiousInput), kw(7));
    EXPECT_EQ(known.area(Rule::VentCookerSmall), cm2(100));
    EXPECT_EQ(known.volume(Rule::VentCookerVolumeSmall), samples::m3(5));
    EXPECT_EQ(known.factor(Rule::VentThroughWallFactor), 1.5);
    EXPECT_EQ(known.entries().size(), 4u);
    EXPECT_FALSE(known.oneIsEmpty());
    EXPECT_FALSE(known.area(Rule::VentDryer));
    EXPECT_TRUE(known.oneIsEmpty());
    known.keep(known.entries().front());
    EXPECT_EQ(known.entries().size(), 5u);
    std::vector<rulebook::Sentence> sentences;
    addOnce(sentences, {Say::VentInputMissing});
    addOnce(sentences, {Say::VentInputMissing});
    EXPECT_EQ(sentences.size(), 1u);
}

}  // namespace
}  // namespace hearth::air
