// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/figures.h"

#include "core/quantity/units.h"

#include <gtest/gtest.h>

namespace hearth::pipework {
namespace {

TEST(PipeFigures, RoundOnce) {
    using namespace quantity;
    EXPECT_EQ(figureOf(PressureChange(0.99951, kMillibar)).value.text(), "1.000");
    EXPECT_EQ(figureOf(Flow(3.0934, kCubicMetrePerHour)).value.text(), "3.093");
    EXPECT_EQ(figureOf(Volume(0.4455, kCubicMetre)).value.text(), "0.445500");
    EXPECT_EQ(figureOf(Share(90.04, kPercent)).value.text(), "90.0");
    EXPECT_EQ(bareFigure(0.96).value.text(), "0.96");
}

TEST(PipeFigures, ATimeThatIsNeededIsNeverShownShorter) {
    using namespace quantity;
    EXPECT_EQ(figureOf(Duration(80.19, kSecond)).value.text(), "81");
    EXPECT_EQ(figureOf(Duration(81.0, kSecond)).value.text(), "81");
}

}  // namespace
}  // namespace hearth::pipework
