// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/restore.h"

#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Gas;
using rulebook::Outcome;
using rulebook::Say;

struct JointCase {
    JointsInput input;
    Outcome outcome;
    Say why;
};

// Test point: revision cards on Edition 3. Loosened joints: Gas Safety (Installation and Use) Regulations
// (NI) 1997 reg 22.
TEST(JointsProved, EveryAnswerMatters) {
    const JointCase cases[] = {
        {{true, JointsDisturbed::Proved, true}, Outcome::Pass, Say::JointsProvedAndWiped},
        {{true, JointsDisturbed::NoneDisturbed, true}, Outcome::Pass, Say::JointsProvedAndWiped},
        {{true, JointsDisturbed::Proved, false}, Outcome::LookAgain, Say::JointNotWiped},
        {{false, JointsDisturbed::Proved, true}, Outcome::Fail, Say::JointNotProved},
        {{true, JointsDisturbed::NotProved, true}, Outcome::Fail, Say::JointNotProved},
        {{true, std::nullopt, true}, Outcome::NoVerdict, Say::JointsNotSaid},
        {{std::nullopt, JointsDisturbed::Proved, true}, Outcome::NoVerdict, Say::JointsNotSaid},
        {{true, JointsDisturbed::Proved, std::nullopt}, Outcome::NoVerdict, Say::JointsNotSaid},
        {{}, Outcome::NoVerdict, Say::JointsNotSaid},
    };
    for (const auto& c : cases) {
        const auto finding = jointsProved(c.input);
        EXPECT_EQ(finding.outcome, c.outcome);
        EXPECT_EQ(finding.why.say, c.why);
    }
}

// Trainees' revision cards after BS 6400: lock-up not above 30 mbar, 21 +/- 2 mbar at the meter's outlet.
TEST(Pressures, AtTheMetersOutlet) {
    const auto book = allConfirmed();
    const auto rules = edition4(book);
    EXPECT_EQ(standingPressure(reading(30), rules).outcome, Outcome::Pass);
    EXPECT_EQ(standingPressure(reading(30.1), rules).why.say, Say::LockUpHigh);
    EXPECT_EQ(workingPressure(reading(19), rules).outcome, Outcome::Pass);
    EXPECT_EQ(workingPressure(reading(23), rules).outcome, Outcome::Pass);
    EXPECT_EQ(workingPressure(reading(18.9), rules).outcome, Outcome::Fail);
    EXPECT_EQ(workingPressure(reading(23.1), rules).why.say, Say::PressureOutside);
    EXPECT_EQ(workingPressure(Given<Reading>::unusable(), rules).why.say, Say::ReadingUnusable);
}

TEST(Pressures, UnconfirmedAndLpg) {
    const auto book = rulebook::RuleBook::shipped();
    EXPECT_EQ(workingPressure(reading(21), edition4(book)).outcome, Outcome::LookAgain);
    EXPECT_EQ(standingPressure(reading(21), edition4(book)).outcome, Outcome::LookAgain);
    EXPECT_EQ(workingPressure(reading(37), edition4(book, Gas::Propane)).why.say, Say::LimitMissing);
}

}  // namespace
}  // namespace hearth::tightness
