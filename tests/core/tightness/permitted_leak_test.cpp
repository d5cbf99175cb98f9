// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/permitted_leak.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kCubicMetrePerHour;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

Surroundings existing(AreaType area, std::optional<double> room = std::nullopt,
                      std::optional<bool> ventilated = std::nullopt) {
    return {Work::Existing, area, room ? std::optional(cubicMetres(*room)) : std::nullopt, ventilated};
}

struct LeakCase {
    const char* name;
    Surroundings place;
    std::optional<double> limit;  // m3/h
    Say says;
    bool unproved;
    Outcome outcome;
};

// IGE/UP/1 and IGE/UP/1A, all from memory: 0.0014 new and type A, 0.0005 RV type B, 0.03 type C.
const LeakCase kLeakCases[] = {
    {"new", {Work::New, {}, {}, {}}, 0.0014, Say::PermittedLeakIs, false, Outcome::LookAgain},
    {"new, whatever the place",
     {Work::New, AreaType::TypeC, cubicMetres(900), true},
     0.0014,
     Say::PermittedLeakIs,
     false,
     Outcome::LookAgain},
    {"type A", existing(AreaType::TypeA), 0.0014, Say::PermittedLeakIs, false, Outcome::LookAgain},
    {"type B", existing(AreaType::TypeB, 20, true), 0.01, Say::PermittedLeakIs, false, Outcome::LookAgain},
    {"type B not ventilated", existing(AreaType::TypeB, 20, false), 0.0014, Say::RoomAsTypeA, false,
     Outcome::LookAgain},
    {"type C not ventilated", existing(AreaType::TypeC, 200, false), 0.0014, Say::RoomAsTypeA, false,
     Outcome::LookAgain},
    {"type B of 60 m3", existing(AreaType::TypeB, 60, true), 0.03, Say::PermittedLeakIs, false,
     Outcome::LookAgain},
    {"type B capped", existing(AreaType::TypeB, 400, true), 0.03, Say::RoomCappedAsTypeC, false,
     Outcome::LookAgain},
    {"type B, room not said", existing(AreaType::TypeB, std::nullopt, true), std::nullopt,
     Say::RoomVolumeUnknown, false, Outcome::NoVerdict},
    {"type B, room of nought", existing(AreaType::TypeB, 0.0, true), std::nullopt, Say::RoomVolumeUnknown,
     false, Outcome::NoVerdict},
    {"type B, ventilation not said", existing(AreaType::TypeB, 20), 0.01, Say::VentilationUnknown, true,
     Outcome::NoVerdict},
    {"type C", existing(AreaType::TypeC, 200, true), 0.03, Say::LargeRoomUnproved, true, Outcome::NoVerdict},
    {"type C, room not said", existing(AreaType::TypeC, std::nullopt, true), 0.03, Say::RoomVolumeUnknown,
     true, Outcome::NoVerdict},
    {"outside", existing(AreaType::Outside), std::nullopt, Say::LimitMissing, false, Outcome::NoVerdict},
    {"buried", existing(AreaType::Buried), std::nullopt, Say::LimitMissing, false, Outcome::NoVerdict},
    {"work not said",
     {{}, AreaType::TypeA, {}, {}},
     std::nullopt,
     Say::WorkUnknown,
     false,
     Outcome::NoVerdict},
    {"place not said",
     {Work::Existing, {}, {}, {}},
     std::nullopt,
     Say::AreaTypeUnknown,
     false,
     Outcome::NoVerdict},
};

TEST(PermittedLeak, GoesByWorkAndPlace) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& c : kLeakCases) {
        const auto permitted = permittedLeak(c.place, edition4(book));
        ASSERT_EQ(permitted.limit.has_value(), c.limit.has_value()) << c.name;
        if (c.limit) {
            EXPECT_NEAR(permitted.limit->in(kCubicMetrePerHour), *c.limit, 1e-12) << c.name;
            EXPECT_FALSE(permitted.entries.empty()) << c.name;
        }
        EXPECT_TRUE(says(permitted.finding, c.says)) << c.name;
        EXPECT_EQ(permitted.unproved, c.unproved) << c.name;
        EXPECT_EQ(permitted.finding.outcome, c.outcome) << c.name;
    }
}

TEST(PermittedLeak, HasNoFigureForLpgOrWithoutABook) {
    const auto book = rulebook::RuleBook::shipped();
    const rulebook::RuleBook none({});
    for (const auto& c : kLeakCases) {
        for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
            const auto permitted = permittedLeak(c.place, edition4(book, gas));
            EXPECT_FALSE(permitted.limit) << c.name;
            EXPECT_EQ(permitted.finding.outcome, Outcome::NoVerdict) << c.name;
        }
        const auto bare = permittedLeak(c.place, edition4(none));
        EXPECT_FALSE(bare.limit) << c.name;
        EXPECT_EQ(bare.finding.outcome, Outcome::NoVerdict) << c.name;
    }
}

TEST(PermittedLeak, OfALargeRoomNeedsItsLeastVolume) {
    auto book = allConfirmed();
    // Invented and of no standard.
    layFigure(book, {Rule::LargeRoomLeast}, {quantity::Decimal(100, 0), quantity::UnitCode::CubicMetre});
    const auto rules = edition4(book);
    const auto large = permittedLeak(existing(AreaType::TypeC, 100, true), rules);
    EXPECT_EQ(large.finding.outcome, Outcome::Pass);
    EXPECT_FALSE(large.unproved);
    const auto small = permittedLeak(existing(AreaType::TypeC, 99.9, true), rules);
    EXPECT_EQ(small.finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(small.finding.why.say, Say::LargeRoomTooSmall);
    EXPECT_TRUE(small.unproved);
}

TEST(PermittedLeak, IsNeverNegativeAndNeverMoreThanALargeRooms) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto area : {AreaType::TypeA, AreaType::TypeB, AreaType::TypeC}) {
        for (double room = -5; room < 300; room += 2.5) {
            for (const auto ventilated : {false, true}) {
                const auto permitted = permittedLeak(existing(area, room, ventilated), edition4(book));
                if (permitted.limit) {
                    EXPECT_GT(permitted.limit->base(), 0.0);
                    EXPECT_LE(permitted.limit->in(kCubicMetrePerHour), 0.03 + 1e-12);
                }
            }
        }
    }
}

// An uncited question-and-answer page: 0.0005 m3/h for each m3 of space.
TEST(LeakForRoom, IsTheRateTimesTheVolume) {
    EXPECT_NEAR(leakForRoom(0.0005, cubicMetres(60))->in(kCubicMetrePerHour), 0.03, 1e-15);
    EXPECT_FALSE(leakForRoom(0.0005, cubicMetres(0)));
    EXPECT_FALSE(leakForRoom(0, cubicMetres(60)));
    EXPECT_FALSE(leakForRoom(0.0005, cubicMetres(-1)));
}

}  // namespace
}  // namespace hearth::tightness
