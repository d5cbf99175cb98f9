// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/flue_figures.h"

#include "tests/core/burner/flue_samples.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

using quantity::UnitCode;

TEST(FlueFigures, AreRoundedOnce) {
    EXPECT_EQ(ratioFigure(0.00087).value.text(), "0.0009");
    EXPECT_EQ(ratioFigure(0.00087).unit, UnitCode::None);
    EXPECT_EQ(ratioUncertaintyFigure(0.000048).value.text(), "0.00005");
    EXPECT_EQ(ppmFigure(flue::ppm(101.95)).value.text(), "102");
    EXPECT_EQ(ppmFigure(flue::ppm(1.25), 1).value.text(), "1.3");
    EXPECT_EQ(percentFigure(flue::percent(9.2)).value.text(), "9.2");
    EXPECT_EQ(percentFigure(flue::percent(9.2), 2).unit, UnitCode::Percent);
    EXPECT_EQ(emissionFigure(109.4).value.text(), "109");
    EXPECT_EQ(degreesFigure(flue::celsius(54.6)).value.text(), "55");
}

// By hand: as many decimals as the reading's own last digit.
TEST(FlueFigures, KeepWhatWasRead) {
    EXPECT_EQ(percentRead({flue::percent(0.05), flue::percent(0.01)}).value.text(), "0.05");
    EXPECT_EQ(percentRead({flue::percent(0.15), flue::percent(0.01)}).value.text(), "0.15");
    EXPECT_EQ(percentRead({flue::percent(9.2), flue::percent(0.1)}).value.text(), "9.2");
    EXPECT_EQ(percentRead({flue::percent(9.0), flue::percent(1.0)}).value.text(), "9.0");
    EXPECT_EQ(percentRead({flue::percent(9.2), {}}).value.text(), "9.2");
    EXPECT_EQ(ppmRead({flue::ppm(12.5), flue::ppm(0.1)}).value.text(), "12.5");
    EXPECT_EQ(ppmRead({flue::ppm(100.0), flue::ppm(10.0)}).value.text(), "100");
}

TEST(OutOfRange, NamesValueAndBounds) {
    const Result<double> wrong = outOfRange(21.5, "0", "20.9");
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(wrong.error().details, (std::vector<std::string>{"21.5000", "0", "20.9"}));
}

}  // namespace
}  // namespace hearth::burner
