// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/gauge/simulated_room.h"

#include "tests/ui/gauge/source_bench.h"
#include "ui/gauge/simulated_source.h"

#include <gtest/gtest.h>

namespace hearth::ui::gauge {
namespace {

// By hand: 60 (1 - exp(-t / 180)); after 180 s 63.2121 % of 60, after 540 s 95.0213 %.
TEST(SimulatedRoom, RisesAsAMixedRoomDoes) {
    EXPECT_EQ(practiceLevel(PracticeRoom::Rises, 0.0), 0.0);
    EXPECT_EQ(practiceLevel(PracticeRoom::Rises, 29.9), 0.0);
    EXPECT_NEAR(practiceLevel(PracticeRoom::Rises, 210.0), 37.9272, 1e-4);
    EXPECT_NEAR(practiceLevel(PracticeRoom::Rises, 570.0), 57.0128, 1e-4);
    EXPECT_EQ(practiceLevel(PracticeRoom::Clear, 570.0), 0.0);
    for (std::uint32_t i = 0; i < 200; ++i) {
        EXPECT_NEAR(practicePpm(PracticeRoom::Rises, i, i), practiceLevel(PracticeRoom::Rises, i), 1.0);
        EXPECT_EQ(practicePpm(PracticeRoom::Clear, i, i), 0);
    }
}

TEST(SimulatedRoom, SendsWhatAnInstrumentWouldAndIsMarked) {
    const SystemClock clock;
    SimulatedSource source(PracticeRoom::Rises, clock);
    testing::Heard heard(source);
    source.start();
    EXPECT_TRUE(source.isSimulated());
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.values.size() >= 2; }, 20000));
    EXPECT_EQ(heard.values.front(), "0");
    EXPECT_EQ(source.refusals(), 0U);
}

}  // namespace
}  // namespace hearth::ui::gauge
