// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/standard_choice.h"

#include "core/rulebook/conclude.h"
#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Rule;
using rulebook::Say;

ScopeInput installation(double volume, double pipe, double operating, double supply) {
    return {cubicMetres(volume),  pipe, true, pipework::meterByCode("u16_g10"), gaugeMillibar(operating),
            gaugeMillibar(supply)};
}

struct ChoiceCase {
    const char* name;
    ScopeInput input;
    std::optional<TestStandard> standard;
    Say says;
};

// Institution's own pages: IGEM/UP/1B Edition 3 to 0.035 m3, 35 mm, 16 m3/h, 21 mbar; IGE/UP/1A natural gas
// to 1 m3 and 40 mbar (150 mm from memory); IGE/UP/1 to 16 bar.
const ChoiceCase kChoices[] = {
    {"home", installation(0.0115, 28, 21, 75), TestStandard::Up1b, Say::StandardUp1b},
    {"at every limit of the small one", installation(0.035, 35, 21, 2000), TestStandard::Up1b,
     Say::StandardUp1b},
    {"volume", installation(0.036, 35, 21, 75), TestStandard::Up1a, Say::ScopeUseUp1a},
    {"at every limit of 1A", installation(1.0, 150, 40, 75), TestStandard::Up1a, Say::ScopeUseUp1a},
    {"more volume", installation(1.01, 150, 40, 75), TestStandard::Up1, Say::ScopeUseUp1},
    {"more pipe", installation(0.5, 160, 40, 75), TestStandard::Up1, Say::ScopeUseUp1},
    {"more pressure", installation(0.5, 100, 41, 75), TestStandard::Up1, Say::ScopeUseUp1},
    {"at the limit of 1", installation(2, 200, 16000, 16000), TestStandard::Up1, Say::ScopeUseUp1},
    {"beyond them all", installation(2, 200, 17000, 17000), std::nullopt, Say::StandardBeyondUp1},
};

TEST(StandardFor, GoesByTheScopes) {
    const auto book = allConfirmed();
    for (const auto& c : kChoices) {
        const auto chosen = standardFor(c.input, edition3(book));
        EXPECT_EQ(chosen.standard, c.standard) << c.name;
        EXPECT_EQ(chosen.finding.why.say, c.says) << c.name;
        EXPECT_EQ(chosen.finding.outcome, c.standard ? Outcome::Pass : Outcome::Fail) << c.name;
        EXPECT_FALSE(chosen.finding.limits.empty()) << c.name;
    }
}

TEST(StandardFor, TellsWhyItIsNotTheSmallerOne) {
    const auto book = allConfirmed();
    const auto chosen = standardFor(installation(1.2, 35, 21, 75), edition3(book));
    ASSERT_EQ(chosen.standard, TestStandard::Up1);
    const auto count = std::count_if(chosen.finding.notes.begin(), chosen.finding.notes.end(),
                                     [](const auto& note) { return note.say == Say::ScopeBeyondVolume; });
    EXPECT_EQ(count, 2) << "beyond 0.035 and beyond 1 m3";
}

TEST(StandardFor, OfLpgIsNever1A) {
    const auto book = allConfirmed();
    for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
        EXPECT_EQ(standardFor(installation(0.5, 100, 30, 75), edition3(book, gas)).standard,
                  TestStandard::Up1);
    }
}

TEST(StandardFor, FromMemoryIsLookedAtAgain) {
    const auto book = rulebook::RuleBook::shipped();
    const auto chosen = standardFor(installation(0.5, 100, 21, 75), edition3(book));
    EXPECT_EQ(chosen.standard, TestStandard::Up1a);
    EXPECT_EQ(chosen.finding.outcome, Outcome::LookAgain) << "150 mm";
    EXPECT_TRUE(says(chosen.finding, Say::ScopeUseUp1a));
}

TEST(StandardFor, IsNotGuessed) {
    const auto book = allConfirmed();
    auto input = installation(0.5, 0, 21, 75);
    input.nominalKnown = false;
    auto chosen = standardFor(input, edition3(book));
    EXPECT_FALSE(chosen.standard);
    EXPECT_EQ(chosen.finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(chosen.finding.why.say, Say::ScopeUseUp1aOrUp1);

    input = installation(0.5, 100, 21, 75);
    input.volume.reset();
    input.operating = {};
    chosen = standardFor(input, edition3(book));
    EXPECT_FALSE(chosen.standard) << "a pipe of 100 mm is beyond the small one alone";
    EXPECT_EQ(chosen.finding.why.say, Say::ScopeUseUp1aOrUp1);

    input = installation(2, 100, 21, 75);
    input.supply = {};
    chosen = standardFor(input, edition3(book));
    EXPECT_FALSE(chosen.standard);
    EXPECT_EQ(chosen.finding.why.say, Say::ScopeNotKnown);

    auto emptied = allConfirmed();
    empty(emptied, {Rule::Up1aPipe, rulebook::Edition::General, Gas::NaturalGas});
    chosen = standardFor(installation(0.5, 100, 21, 75), edition3(emptied));
    EXPECT_FALSE(chosen.standard);
    EXPECT_EQ(chosen.finding.why.say, Say::LimitMissing);
    EXPECT_EQ(standardFor(installation(1.5, 100, 21, 75), edition3(emptied)).standard, TestStandard::Up1)
        << "beyond one limit is outside, whatever else is not known";
}

TEST(StandardFor, WaitsForEdition4sScope) {
    const auto book = rulebook::RuleBook::shipped();
    const auto chosen = standardFor(installation(0.5, 100, 21, 75), edition4(book));
    EXPECT_FALSE(chosen.standard);
    EXPECT_EQ(chosen.finding.outcome, Outcome::NoVerdict);
    EXPECT_EQ(chosen.finding.why.say, Say::ScopeEd4NotEntered);
    EXPECT_TRUE(says(chosen.finding, Say::ScopeUseUp1a)) << "by Edition 3's scope, for information";
    const rulebook::RuleBook none({});
    EXPECT_FALSE(standardFor(installation(0.5, 100, 21, 75), edition4(none)).standard);
}

}  // namespace
}  // namespace hearth::tightness
