// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/purge.h"

#include "core/quantity/units.h"
#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using quantity::kCubicMetre;
using rulebook::Edition;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

PurgeInput done(const TestedPart& tested, double passed) {
    PurgeInput input;
    input.done = PurgeDone::Yes;
    input.method = PurgeMethod::OpenBurner;
    input.passed = cubicMetres(passed);
    input.steadyFlame = true;
    input.conduct = {Work::Existing, Extent::Whole, Appliances::Connected, Pilots::Out, false};
    input.part = tested;
    return input;
}

struct NeedCase {
    const char* meter;
    double nominal;
    double volume;
    double needed;  // m3
};

// Trainees' revision cards on IGEM/UP/1B Edition 3: 0.010 m3 for E6/U6/G4 with pipe to 28 mm, else 1.5 x IV.
TEST(PurgeNeed, OfMeterAndPipe) {
    const auto book = allConfirmed();
    const NeedCase cases[] = {
        {"e6", 28, 0.0094, 0.010},      {"u6_g4", 22, 0.0115, 0.010}, {"u6_g4", 35, 0.02, 0.03},
        {"u16_g10", 28, 0.033, 0.0495}, {"none", 22, 0.004, 0.006},
    };
    for (const auto& c : cases) {
        const auto need = purgeNeed(part(c.meter, c.nominal, c.volume), edition3(book));
        ASSERT_TRUE(need.volume) << c.meter;
        EXPECT_NEAR(need.volume->in(kCubicMetre), c.needed, 1e-12) << c.meter;
    }
}

TEST(Purge, EnoughByAnOpenBurner) {
    const auto book = allConfirmed();
    const auto enough = purge(done(part("u6_g4", 22), 0.010), edition3(book));
    EXPECT_EQ(enough.outcome, Outcome::Pass);
    EXPECT_EQ(enough.why.say, Say::PurgeEnough);
    EXPECT_TRUE(says(enough, Say::PurgeOpenBurner));
    const auto brief = purge(done(part("u6_g4", 22), 0.0099), edition3(book));
    EXPECT_EQ(brief.outcome, Outcome::Fail);
    EXPECT_EQ(brief.why.say, Say::PurgeShort);
}

// Pocket guide Gas 2: above 0.02 m3 through an open burner.
TEST(Purge, MethodGoesByTheVolume) {
    const auto book = allConfirmed();
    auto small = done(part("u16_g10", 22, 0.02), 0.03);
    small.method = PurgeMethod::VentilatedPlace;
    EXPECT_EQ(purge(small, edition3(book)).outcome, Outcome::Pass);
    auto large = done(part("u16_g10", 22, 0.0201), 0.04);
    large.method = PurgeMethod::VentilatedPlace;
    EXPECT_EQ(purge(large, edition3(book)).why.say, Say::PurgeMethodWrong);
    EXPECT_EQ(purge(large, edition3(book)).outcome, Outcome::Fail);
}

TEST(Purge, VentilatedPlaceIsFromMemoryUntilConfirmed) {
    auto book = allConfirmed();
    setProvenance(book, {Rule::PurgeOpenBurnerAbove, Edition::Up1bEd3, Gas::NaturalGas},
                  rulebook::Provenance::Published);
    auto input = done(part("u6_g4", 22), 0.012);
    EXPECT_EQ(purge(input, edition3(book)).outcome, Outcome::Pass);
    input.method = PurgeMethod::VentilatedPlace;
    const auto finding = purge(input, edition3(book));
    EXPECT_EQ(finding.outcome, Outcome::LookAgain);
    EXPECT_EQ(finding.why.say, Say::LimitFromMemory);
}

struct PurgeLackCase {
    const char* name;
    void (*change)(PurgeInput&);
    Outcome outcome;
    Say why;
};

TEST(Purge, WhatIsMissingOrNotDone) {
    const PurgeLackCase cases[] = {
        {"not said", [](PurgeInput& i) { i.done.reset(); }, Outcome::NoVerdict, Say::ReadingMissing},
        {"not done", [](PurgeInput& i) { i.done = PurgeDone::No; }, Outcome::Fail, Say::PurgeNotDone},
        {"not needed", [](PurgeInput& i) { i.done = PurgeDone::NotNeeded; }, Outcome::Pass,
         Say::PurgeNotNeeded},
        {"not needed on new work",
         [](PurgeInput& i) {
             i.done = PurgeDone::NotNeeded;
             i.conduct.work = Work::New;
         },
         Outcome::LookAgain, Say::PurgeNotNeeded},
        {"amount", [](PurgeInput& i) { i.passed = {}; }, Outcome::NoVerdict, Say::ReadingMissing},
        {"amount unreadable", [](PurgeInput& i) { i.passed = Given<quantity::Volume>::unusable(); },
         Outcome::NoVerdict, Say::ReadingUnusable},
        {"method", [](PurgeInput& i) { i.method.reset(); }, Outcome::NoVerdict, Say::ReadingMissing},
        {"flame", [](PurgeInput& i) { i.steadyFlame.reset(); }, Outcome::NoVerdict, Say::ReadingMissing},
        {"flame unsteady", [](PurgeInput& i) { i.steadyFlame = false; }, Outcome::Fail,
         Say::PurgeNoSteadyFlame},
        {"no appliance to burn",
         [](PurgeInput& i) {
             i.steadyFlame.reset();
             i.conduct.appliances = Appliances::NoneConnected;
         },
         Outcome::Pass, Say::PurgeEnough},
        {"volume unknown", [](PurgeInput& i) { i.part.volume.reset(); }, Outcome::NoVerdict,
         Say::VolumeUnknown},
    };
    const auto book = allConfirmed();
    for (const auto& c : cases) {
        auto input = done(part("u6_g4", 22), 0.012);
        c.change(input);
        const auto finding = purge(input, edition3(book));
        EXPECT_EQ(finding.outcome, c.outcome) << c.name;
        EXPECT_EQ(finding.why.say, c.why) << c.name;
    }
}

TEST(Purge, SaysHowMuchIsNeededBeforeItIsDone) {
    const auto book = allConfirmed();
    auto input = done(part("u16_g10", 28, 0.03), 0);
    input.done.reset();
    const auto finding = purge(input, edition3(book));
    EXPECT_TRUE(says(finding, Say::PurgeVolumeNeeded));
    EXPECT_EQ(finding.limit->value.text(), "0.045000");
}

TEST(Purge, Edition4AndLpgWaitForTheFirm) {
    const auto book = allConfirmed();
    EXPECT_EQ(purge(done(part("u6_g4", 22), 0.012), edition4(book)).why.say, Say::LimitMissing);
    EXPECT_EQ(purge(done(part("u6_g4", 22), 0.012), edition3(book, Gas::Propane)).why.say, Say::LimitMissing);
}

}  // namespace
}  // namespace hearth::tightness
