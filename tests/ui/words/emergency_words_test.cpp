// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/words/languages.h"
#include "ui/words/words.h"

namespace hearth::ui::words {
namespace {

using reg::Country;
using rulebook::Gas;
using Emergency = Words::Emergency;

constexpr std::array kEmergencies{Emergency::SmellOrEscape, Emergency::FailedTest, Emergency::CarbonMonoxide};
constexpr std::array kGases{Gas::NaturalGas, Gas::Propane, Gas::Butane, Gas::LpgAir};
constexpr std::array kCountries{Country::England, Country::Wales, Country::Scotland,
                                Country::NorthernIreland};
// Great Britain's gas emergency service, as published by the GB gas register.
const QString kNetworkNumber = QStringLiteral("0800 111 999");

TEST(Emergency, EveryCaseHasItsStepsInEveryLanguage) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto emergency : kEmergencies) {
            EXPECT_TRUE(testing::isTranslated(words.emergencyTitle(emergency), words));
            for (const auto gas : kGases) {
                for (const auto country : kCountries) {
                    const auto steps = words.emergencySteps(emergency, gas, country);
                    EXPECT_GE(steps.size(), 5);
                    for (const auto& step : steps) {
                        EXPECT_TRUE(testing::isTranslated(step, words)) << step;
                        EXPECT_TRUE(testing::isFilled(step)) << step;
                    }
                }
            }
        }
    }
}

// The network's number serves natural gas in Great Britain only: LPG is its supplier's, and Northern
// Ireland's is not known here.
TEST(Emergency, TheNetworksNumberIsGivenExactlyWhereItServes) {
    const Words words;
    for (const auto emergency : kEmergencies) {
        for (const auto gas : kGases) {
            for (const auto country : kCountries) {
                const bool serves = gas == Gas::NaturalGas && country != Country::NorthernIreland;
                const QString all = words.emergencySteps(emergency, gas, country).join(u' ');
                EXPECT_EQ(all.contains(kNetworkNumber), serves) << all;
                EXPECT_EQ(all.contains(QStringLiteral("LPG supplier")), gas != Gas::NaturalGas) << all;
                EXPECT_EQ(words.caution(gas, country).contains(kNetworkNumber), serves)
                    << words.caution(gas, country);
            }
        }
    }
}

int stepWith(const QStringList& steps, const char* word) {
    for (qsizetype i = 0; i < steps.size(); ++i) {
        if (steps[i].contains(QString::fromUtf8(word))) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

// First no spark, then the valve, then air and people, and only then the telephone, from outside.
TEST(Emergency, AnEscapeIsDealtWithInOrder) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::SmellOrEscape, Gas::NaturalGas, Country::England);
    EXPECT_EQ(stepWith(steps, "No flames"), 0);
    EXPECT_EQ(stepWith(steps, "emergency control valve"), 1);
    EXPECT_LT(stepWith(steps, "Open doors"), stepWith(steps, "ring 0800"));
    EXPECT_GE(stepWith(steps, "cellar"), 0);
    EXPECT_TRUE(steps[stepWith(steps, "ring 0800")].contains(QStringLiteral("From outside")));
}

TEST(Emergency, LpgIsShutAtTheCylinderAndSinks) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::SmellOrEscape, Gas::Propane, Country::England);
    EXPECT_EQ(stepWith(steps, "cylinder or tank"), 1);
    EXPECT_GE(stepWith(steps, "LPG sinks"), 0);
}

TEST(Emergency, AFailedTestKeepsTheGasOffFirstAndRingsOnlyForTheNetwork) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::FailedTest, Gas::NaturalGas, Country::Wales);
    EXPECT_EQ(steps[0], QStringLiteral("Keep the gas off."));
    EXPECT_TRUE(steps[stepWith(steps, "0800")].startsWith(QStringLiteral("Only for"))) << steps.join(u'\n');
}

TEST(Emergency, FumesGetPeopleOutAndSeenToBeforeTheServiceIsRung) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::CarbonMonoxide, Gas::NaturalGas, Country::Scotland);
    EXPECT_EQ(stepWith(steps, "Get everybody out"), 0);
    EXPECT_LT(stepWith(steps, "medical help"), stepWith(steps, "0800"));
}

TEST(Caution, IsOneLine) {
    const Words words;
    for (const auto gas : kGases) {
        for (const auto country : kCountries) {
            const QString caution = words.caution(gas, country);
            EXPECT_FALSE(caution.contains(u'\n'));
            EXPECT_LE(caution.size(), 210) << caution;
            EXPECT_TRUE(caution.contains(QStringLiteral("no flames"))) << caution;
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
