// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/correction.h"

#include "tests/core/burner/rate_samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

namespace rs = ratesamples;
using quantity::GaugePressure;
using quantity::kCelsius;
using quantity::kMetre;
using quantity::kMillibar;
using quantity::Length;
using quantity::Temperature;

double deductionAt(double metres) {
    const auto deduction = heightDeduction(Length(metres, kMetre));
    EXPECT_TRUE(deduction) << metres;
    return deduction ? deduction->in(kMillibar) : -1.0;
}

TEST(CorrectionAgainst, HeightTableOfTheRegulations) {
    // All values of the table that were read, to their last digit.
    testing::Agreement table("Height deduction by bands of 2.5 m",
                             "Gas (Calculation of Thermal Energy) Regulations 1996, Schedule (as made)",
                             "mbar", 0.0000005);
    const double rows[][2] = {{-3, 0},      {0, 0},        {0.1, 0.301},    {2.5, 0.301},  {2.6, 0.601},
                              {5, 0.601},   {7.5, 0.902},  {10, 1.202},     {47.6, 6.010}, {50, 6.010},
                              {98, 12.021}, {100, 12.021}, {197.6, 24.041}, {200, 24.041}};
    for (const auto& row : rows) {
        table.hold(std::to_string(row[0]) + " m", deductionAt(row[0]), row[1]);
    }
}

TEST(CorrectionAgainst, FixedFactorIsNearlyRebuilt) {
    // From memory: 12.2 degrees C, 21 mbar, 66 m. Known not to be exact: 1.02266 against 1.02264.
    testing::Agreement factor("Volume correction rebuilt from 12.2 °C, 21 mbar and 66 m",
                              "Suppliers' help pages on bills: 1.02264", "", 0.00003);
    const auto rebuilt =
        correctionAsMeasured({GaugePressure(21, kMillibar), Temperature(12.2, kCelsius), Length(66, kMetre)});
    ASSERT_TRUE(rebuilt);
    factor.hold("factor", rebuilt->factor, 1.02264);
    EXPECT_EQ(rebuilt->kind, CorrectionKind::AsMeasured);
}

// From memory of the regulations: 1.00981 at 12.2 degrees C. LPG at 37 mbar: arithmetic by hand.
TEST(Correction, FactorsOneByOne) {
    EXPECT_NEAR(*temperatureFactor(Temperature(12.2, kCelsius)), 1.00981, 5e-6);
    EXPECT_DOUBLE_EQ(*temperatureFactor(Temperature(15, kCelsius)), 1.0);
    EXPECT_DOUBLE_EQ(*pressureFactor(GaugePressure(0, kMillibar), {}), 1.0);
    EXPECT_NEAR(*pressureFactor(GaugePressure(37, kMillibar), {}), 1.0365, 5e-5);
}

TEST(Correction, StopsWhereItIsNotKnown) {
    EXPECT_FALSE(heightDeduction(Length(200.1, kMetre)));
    EXPECT_EQ(heightDeduction(Length(300, kMetre)).error().details.at(2), "200.0");
    EXPECT_FALSE(pressureFactor(GaugePressure(-1, kMillibar), {}));
    EXPECT_FALSE(pressureFactor(GaugePressure(501, kMillibar), {}));
    EXPECT_FALSE(temperatureFactor(Temperature(-21, kCelsius)));
    EXPECT_FALSE(temperatureFactor(Temperature(51, kCelsius)));
    const GaugePressure pressure(21, kMillibar);
    const Temperature warm(15, kCelsius);
    EXPECT_FALSE(correctionAsMeasured({pressure, warm, Length(300, kMetre)}));
    EXPECT_FALSE(correctionAsMeasured({pressure, Temperature(80, kCelsius), Length(10, kMetre)}));
    EXPECT_FALSE(correctionAsMeasured({GaugePressure(700, kMillibar), warm, Length(10, kMetre)}));
}

TEST(CorrectionLaws, HigherNeverGivesMoreAndPressureNeverLess) {
    double before = 0.0;
    for (double height = 0; height <= 200; height += 0.7) {
        EXPECT_GE(deductionAt(height), before);
        before = deductionAt(height);
    }
    for (double mbar = 1; mbar < 500; mbar += 13) {
        EXPECT_GT(*pressureFactor(GaugePressure(mbar, kMillibar), {}),
                  *pressureFactor(GaugePressure(mbar - 1, kMillibar), {}));
    }
}

// Suppliers' help pages on bills; LPG has none.
TEST(Correction, TheFixedFactorIsAnEntryOfNaturalGasAlone) {
    const auto book = rulebook::RuleBook::shipped();
    const auto fixed = fixedCorrection(rs::on(book));
    ASSERT_TRUE(fixed);
    EXPECT_DOUBLE_EQ(fixed->factor, 1.02264);
    EXPECT_EQ(fixed->kind, CorrectionKind::FixedFactor);
    ASSERT_NE(fixed->entry, nullptr);
    EXPECT_FALSE(fixedCorrection(rs::on(book, rulebook::Gas::Propane)));
}

}  // namespace
}  // namespace hearth::burner
