// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/nation.h"

#include <gtest/gtest.h>

namespace hearth::record {
namespace {

TEST(NationOf, EachCountryHasItsOwn) {
    EXPECT_EQ(nationOf(reg::Country::England), calendar::Nation::England);
    EXPECT_EQ(nationOf(reg::Country::Wales), calendar::Nation::Wales);
    EXPECT_EQ(nationOf(reg::Country::Scotland), calendar::Nation::Scotland);
    EXPECT_EQ(nationOf(reg::Country::NorthernIreland), calendar::Nation::NorthernIreland);
}

}  // namespace
}  // namespace hearth::record
