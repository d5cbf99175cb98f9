// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/result.h"

#include <gtest/gtest.h>

namespace hearth {
namespace {

Result<int> half(int number) {
    if (number % 2 != 0) {
        return fail(ErrorCode::OutOfRange, {std::to_string(number)});
    }
    return number / 2;
}

TEST(Result, isAValueOrAnErrorWithItsParticulars) {
    EXPECT_EQ(half(8).value(), 4);
    const auto odd = half(7);
    ASSERT_FALSE(odd.has_value());
    EXPECT_EQ(odd.error(), (Error{ErrorCode::OutOfRange, {"7"}}));
    EXPECT_NE(odd.error(), (Error{ErrorCode::OutOfRange, {"9"}}));
}

}  // namespace
}  // namespace hearth
