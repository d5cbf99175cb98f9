// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/scope.h"

#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Say;

ScopeInput home() {
    return {cubicMetres(0.0115), 22, true, pipework::meterByCode("u6_g4"), gaugeMillibar(21),
            gaugeMillibar(75)};
}

struct ScopeCase {
    const char* name;
    void (*change)(ScopeInput&);
    Outcome outcome;
    Say why;
    std::optional<Say> instead;
};

// Institution's own page on IGEM/UP/1B Edition 3 +A:2012: 0.035 m3, 35 mm, 16 m3/h, 21 mbar, 2 bar. Above:
// IGE/UP/1A (institution's own page: natural gas, 1 m3, 40 mbar; 150 mm from memory), else IGE/UP/1.
const ScopeCase kCases[] = {
    {"home", [](ScopeInput&) {}, Outcome::Pass, Say::ScopeWithin, {}},
    {"at every limit",
     [](ScopeInput& i) {
         i = {cubicMetres(0.035), 35, true, pipework::meterByCode("u16_g10"), gaugeMillibar(21),
              gaugeMillibar(2000)};
     },
     Outcome::Pass,
     Say::ScopeWithin,
     {}},
    {"volume", [](ScopeInput& i) { i.volume = cubicMetres(0.0351); }, Outcome::Fail, Say::ScopeBeyondVolume,
     Say::ScopeUseUp1a},
    {"pipe", [](ScopeInput& i) { i.largestNominal = 40; }, Outcome::Fail, Say::ScopeBeyondPipe,
     Say::ScopeUseUp1a},
    {"meter", [](ScopeInput& i) { i.meter = pipework::meterByCode("u25_g16"); }, Outcome::Fail,
     Say::ScopeBeyondMeter, Say::ScopeUseUp1a},
    {"operating pressure", [](ScopeInput& i) { i.operating = gaugeMillibar(30); }, Outcome::Fail,
     Say::ScopeBeyondPressure, Say::ScopeUseUp1a},
    {"supply pressure", [](ScopeInput& i) { i.supply = gaugeMillibar(2100); }, Outcome::Fail,
     Say::ScopeBeyondPressure, Say::ScopeUseUp1a},
    {"more than 1 m3", [](ScopeInput& i) { i.volume = cubicMetres(1.2); }, Outcome::Fail,
     Say::ScopeBeyondVolume, Say::ScopeUseUp1},
    {"more than 150 mm", [](ScopeInput& i) { i.largestNominal = 180; }, Outcome::Fail, Say::ScopeBeyondPipe,
     Say::ScopeUseUp1},
    {"more than 40 mbar", [](ScopeInput& i) { i.operating = gaugeMillibar(50); }, Outcome::Fail,
     Say::ScopeBeyondPressure, Say::ScopeUseUp1},
    {"pipe too large, volume unknown",
     [](ScopeInput& i) {
         i.largestNominal = 54;
         i.volume.reset();
     },
     Outcome::Fail, Say::ScopeBeyondPipe, Say::ScopeUseUp1aOrUp1},
    {"a large pipe among unknown ones",
     [](ScopeInput& i) {
         i.largestNominal = 54;
         i.nominalKnown = false;
     },
     Outcome::Fail, Say::ScopeBeyondPipe, Say::ScopeUseUp1aOrUp1},
    {"volume unknown", [](ScopeInput& i) { i.volume.reset(); }, Outcome::NoVerdict, Say::ScopeNotKnown, {}},
    {"a pipe unknown",
     [](ScopeInput& i) { i.nominalKnown = false; },
     Outcome::NoVerdict,
     Say::ScopeNotKnown,
     {}},
    {"meter unknown", [](ScopeInput& i) { i.meter = nullptr; }, Outcome::NoVerdict, Say::ScopeNotKnown, {}},
    {"another meter",
     [](ScopeInput& i) { i.meter = pipework::meterByCode("other"); },
     Outcome::NoVerdict,
     Say::ScopeNotKnown,
     {}},
    {"no meter in the part",
     [](ScopeInput& i) { i.meter = pipework::meterByCode("none"); },
     Outcome::Pass,
     Say::ScopeWithin,
     {}},
    {"operating pressure unknown",
     [](ScopeInput& i) { i.operating = {}; },
     Outcome::NoVerdict,
     Say::ScopeNotKnown,
     {}},
    {"supply pressure unreadable",
     [](ScopeInput& i) { i.supply = Given<quantity::GaugePressure>::unusable(); },
     Outcome::NoVerdict,
     Say::ScopeNotKnown,
     {}},
};

TEST(Scope, OfEdition3) {
    const auto book = rulebook::RuleBook::shipped();
    for (const auto& c : kCases) {
        auto input = home();
        c.change(input);
        const auto finding = scope(input, edition3(book));
        EXPECT_EQ(finding.outcome, c.outcome) << c.name;
        EXPECT_EQ(finding.why.say, c.why) << c.name;
        for (const auto say : {Say::ScopeUseUp1a, Say::ScopeUseUp1, Say::ScopeUseUp1aOrUp1}) {
            EXPECT_EQ(says(finding, say), c.instead == say) << c.name;
        }
    }
}

// The same page: LPG to 37 mbar at the final regulator's outlet, no limit of supply pressure named for it.
TEST(Scope, OfLpg) {
    const auto book = rulebook::RuleBook::shipped();
    auto input = home();
    input.operating = gaugeMillibar(37);
    input.supply = {};
    EXPECT_EQ(scope(input, edition3(book, Gas::Propane)).outcome, Outcome::Pass);
    input.operating = gaugeMillibar(38);
    const auto beyond = scope(input, edition3(book, Gas::Propane));
    EXPECT_EQ(beyond.outcome, Outcome::Fail);
    EXPECT_TRUE(says(beyond, Say::ScopeUseUp1)) << "IGE/UP/1A is for natural gas";
}

TEST(Scope, OfEdition4IsEmptyAndTellsEdition3sForInformation) {
    const auto book = rulebook::RuleBook::shipped();
    const auto within = scope(home(), edition4(book));
    EXPECT_EQ(within.outcome, Outcome::NoVerdict);
    EXPECT_EQ(within.why.say, Say::ScopeEd4NotEntered);
    EXPECT_FALSE(within.limits.empty()) << "what is to be entered";
    auto hall = home();
    hall.volume = cubicMetres(0.06);
    const auto beyond = scope(hall, edition4(book));
    EXPECT_EQ(beyond.outcome, Outcome::NoVerdict);
    EXPECT_TRUE(says(beyond, Say::ScopeBeyondVolume));
    EXPECT_TRUE(says(beyond, Say::ScopeUseUp1a));
}

// Institution's own page on IGE/UP/1A: natural gas, to 1 m3 and 40 mbar; to 150 mm from memory.
TEST(StandardInstead, IsTheOneThatTheInstallationFits) {
    auto hall = home();
    hall.volume = cubicMetres(1.0);
    hall.largestNominal = 150;
    hall.operating = gaugeMillibar(40);
    EXPECT_EQ(standardInstead(hall, Gas::NaturalGas), Say::ScopeUseUp1a) << "at every limit";
    EXPECT_EQ(standardInstead(hall, Gas::Propane), Say::ScopeUseUp1);
    hall.volume = cubicMetres(1.01);
    EXPECT_EQ(standardInstead(hall, Gas::NaturalGas), Say::ScopeUseUp1);
    hall.volume.reset();
    EXPECT_EQ(standardInstead(hall, Gas::NaturalGas), Say::ScopeUseUp1aOrUp1);
}

TEST(Scope, WithoutABookThereIsNoVerdict) {
    const rulebook::RuleBook none({});
    EXPECT_EQ(scope(home(), edition3(none)).outcome, Outcome::NoVerdict);
}

}  // namespace
}  // namespace hearth::tightness
