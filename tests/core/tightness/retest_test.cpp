// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/retest.h"

#include "tests/core/tightness/samples.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using namespace samples;
using rulebook::Outcome;
using rulebook::Say;

struct RetestCase {
    const char* name;
    Stage stage;
    Outcome outcome;
    Say why;
};

// Register's bulletin on Edition 4: a movement must be shown not to come from the pipework.
TEST(IsolatedRetest, ShowsWhetherThePipeworkMoves) {
    const auto book = allConfirmed();
    const RetestCase cases[] = {
        {"clear", stage(20.5, 20.48, 120), Outcome::Pass, Say::RetestClear},
        {"moved", stage(20.5, 20.0, 120), Outcome::Fail, Say::RetestMoved},
        {"moved in a short time", stage(20.5, 20.0, 30), Outcome::Fail, Say::RetestMoved},
        {"at the threshold", stage(20.5, 20.3, 120), Outcome::LookAgain, Say::AtLimit},
        {"rose", stage(20.2, 20.7, 120), Outcome::LookAgain, Say::RiseDuringTest},
        {"too short", stage(20.5, 20.5, 60), Outcome::NoVerdict, Say::TestTooShort},
        {"pressure low", stage(19.0, 19.0, 120), Outcome::NoVerdict, Say::TestPressureLowUnexplained},
        {"pressure high", stage(21.5, 21.5, 120), Outcome::NoVerdict, Say::TestPressureHigh},
        {"half done", {reading(20.5), {}, seconds(120)}, Outcome::NoVerdict, Say::ReadingMissing},
        {"not timed", {reading(20.5), reading(20.5), {}}, Outcome::NoVerdict, Say::ReadingMissing},
    };
    for (const auto& c : cases) {
        const auto finding = isolatedRetest(c.stage, electronic(), false, edition4(book));
        EXPECT_EQ(finding.outcome, c.outcome) << c.name;
        EXPECT_EQ(finding.why.say, c.why) << c.name;
    }
    EXPECT_EQ(isolatedRetest(stage(20.5, 20.5, 120), std::nullopt, false, edition4(book)).why.say,
              Say::GaugeNotChosen);
    EXPECT_EQ(isolatedRetest(stage(19.0, 19.0, 120), electronic(), true, edition4(book)).outcome,
              Outcome::Pass);
}

TEST(IsolatedRetest, IsNotClearOnUnconfirmedLimits) {
    const auto book = rulebook::RuleBook::shipped();
    EXPECT_EQ(isolatedRetest(stage(20.5, 20.5, 120), electronic(), false, edition4(book)).outcome,
              Outcome::LookAgain);
}

}  // namespace
}  // namespace hearth::tightness
