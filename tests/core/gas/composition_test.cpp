// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/composition.h"

#include "core/gas/stoichiometry.h"
#include "core/quantity/units.h"

#include <array>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace hearth::gas {
namespace {

using quantity::kPercent;

TEST(Composition, IsKeptAsTyped) {
    const std::array parts{Part{Component::CH4, 0.60}, Part{Component::N2, 0.0995},
                           Part{Component::CH4, 0.30}};
    const auto made = compositionOf(parts).value();
    EXPECT_DOUBLE_EQ(made.of(Component::CH4), 0.90);
    EXPECT_DOUBLE_EQ(made.of(Component::N2), 0.0995);  // 0.9995 is near enough to one and is not touched
    EXPECT_DOUBLE_EQ(made.of(Component::C2H6), 0.0);
    EXPECT_TRUE(Composition::exactly({{Component::CH4, 1.0}}) ==
                compositionOf(std::array{Part{Component::CH4, 1.0}}).value());
}

TEST(Composition, IsDividedByItsSumWhenToldTo) {
    const std::array parts{Part{Component::CH4, 0.45}, Part{Component::N2, 0.05}};
    const auto made = compositionOf(parts, Fractions::Normalised).value();
    EXPECT_DOUBLE_EQ(made.of(Component::CH4), 0.9);
    EXPECT_DOUBLE_EQ(made.of(Component::N2), 0.1);
    EXPECT_FALSE(compositionOf({}, Fractions::Normalised));
    EXPECT_FALSE(compositionOf(std::array{Part{Component::CH4, 0.0}}, Fractions::Normalised));
}

TEST(Composition, ThatDoesNotAddUpIsRefusedByName) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    for (const double fraction : {0.0, 0.5, 0.9989, none, -0.1, 1.2}) {
        EXPECT_FALSE(compositionOf(std::array{Part{Component::CH4, fraction}})) << fraction;
    }
    EXPECT_FALSE(compositionOf(std::array{Part{Component::CH4, 1.0}, Part{Component::N2, 0.0011}}));
    EXPECT_TRUE(compositionOf(std::array{Part{Component::CH4, 1.0}, Part{Component::N2, 0.0009}}));
    const auto negative = compositionOf(std::array{Part{Component::CH4, 1.1}, Part{Component::C3H8, -0.1}});
    EXPECT_EQ(negative.error().details, (std::vector<std::string>{"CH4 = 1.1000", "0.0000", "1.0000"}));
    const auto sum = compositionOf(std::array{Part{Component::CH4, 0.9}});
    EXPECT_EQ(sum.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(sum.error().details, (std::vector<std::string>{"\u03a3 = 0.9000", "0.9990", "1.0010"}));
}

TEST(PropaneAir, IsPropaneAndDryAir) {
    const auto half = propaneAir({50.0, kPercent}).value();
    EXPECT_DOUBLE_EQ(half.of(Component::C3H8), 0.5);
    EXPECT_DOUBLE_EQ(half.of(Component::O2), 0.5 * kOxygenInAir);
    EXPECT_DOUBLE_EQ(half.of(Component::N2), 0.5 * (1.0 - kOxygenInAir));
    EXPECT_DOUBLE_EQ(propaneAir({100.0, kPercent}).value().of(Component::C3H8), 1.0);
    const double none = std::numeric_limits<double>::quiet_NaN();
    for (const double percent : {0.0, -1.0, 100.1, none}) {
        EXPECT_EQ(propaneAir({percent, kPercent}).error().code, ErrorCode::OutOfRange) << percent;
    }
}

}  // namespace
}  // namespace hearth::gas
