// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/tightness/given.h"

#include <gtest/gtest.h>

namespace hearth::tightness {
namespace {

using rulebook::Say;

TEST(Given, IsMissingUntilItIsGiven) {
    const Given<int> missing;
    EXPECT_FALSE(missing);
    EXPECT_FALSE(missing.isEntered());
    const Given<int> nought(0);
    EXPECT_TRUE(nought);
    EXPECT_TRUE(nought.isEntered());
    EXPECT_FALSE(Given<int>::unusable());
    EXPECT_TRUE(Given<int>::unusable().isEntered());
}

TEST(Absence, NamesTheUnreadableFirst) {
    const Given<int> there(1);
    const Given<double> missing;
    EXPECT_FALSE(absence(there, there));
    EXPECT_EQ(absence(there, missing)->say, Say::ReadingMissing);
    EXPECT_EQ(absence(missing, Given<int>::unusable())->say, Say::ReadingUnusable);
}

}  // namespace
}  // namespace hearth::tightness
