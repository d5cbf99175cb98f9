// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/validity.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

TEST(Validity, AFigureOutsideIsNamedWithBothEnds) {
    const Result<double> result = outside(250.04, 0.0, 200.0, 1);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.error(), (Error{ErrorCode::OutOfRange, {"250.0", "0.0", "200.0"}}));
}

}  // namespace
}  // namespace hearth::burner
