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
                    const auto steps = words.emergencySteps(emergency, gas, country, {});
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
                const QString all = words.emergencySteps(emergency, gas, country, {}).join(u' ');
                EXPECT_EQ(all.contains(kNetworkNumber), serves) << all;
                EXPECT_EQ(all.contains(QStringLiteral("LPG supplier")), gas != Gas::NaturalGas) << all;
                EXPECT_EQ(words.caution(gas, country, {}).contains(kNetworkNumber), serves)
                    << words.caution(gas, country, {});
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
    const auto steps = words.emergencySteps(Emergency::SmellOrEscape, Gas::NaturalGas, Country::England, {});
    EXPECT_EQ(stepWith(steps, "No flames"), 0);
    EXPECT_EQ(stepWith(steps, "emergency control valve"), 1);
    EXPECT_LT(stepWith(steps, "Open doors"), stepWith(steps, "ring 0800"));
    EXPECT_GE(stepWith(steps, "cellar"), 0);
    EXPECT_TRUE(steps[stepWith(steps, "ring 0800")].contains(QStringLiteral("From outside")));
}

TEST(Emergency, LpgIsShutAtTheCylinderAndSinks) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::SmellOrEscape, Gas::Propane, Country::England, {});
    EXPECT_EQ(stepWith(steps, "cylinder or tank"), 1);
    EXPECT_GE(stepWith(steps, "LPG sinks"), 0);
}

TEST(Emergency, AFailedTestKeepsTheGasOffFirstAndRingsOnlyForTheNetwork) {
    const Words words;
    const auto steps = words.emergencySteps(Emergency::FailedTest, Gas::NaturalGas, Country::Wales, {});
    EXPECT_EQ(steps[0], QStringLiteral("Keep the gas off."));
    EXPECT_TRUE(steps[stepWith(steps, "0800")].startsWith(QStringLiteral("Only for"))) << steps.join(u'\n');
}

TEST(Emergency, FumesGetPeopleOutAndSeenToBeforeTheServiceIsRung) {
    const Words words;
    const auto steps =
        words.emergencySteps(Emergency::CarbonMonoxide, Gas::NaturalGas, Country::Scotland, {});
    EXPECT_EQ(stepWith(steps, "Get everybody out"), 0);
    EXPECT_LT(stepWith(steps, "medical help"), stepWith(steps, "0800"));
}

/// A number of the range kept for invented ones.
std::vector<reg::EmergencyContact> own(Country country, Gas gas) {
    reg::EmergencyContact contact;
    contact.country = country;
    contact.gas = gas;
    contact.name = "Penrose Bottled Gas";
    contact.number = "01632 960001";
    return {contact};
}

TEST(Emergency, TheFirmsOwnNumberNeverTakesTheNetworksPlace) {
    const Words words;
    const QString ownNumber = QStringLiteral("01632 960001");
    for (const auto emergency : kEmergencies) {
        for (const auto country : kCountries) {
            const auto contacts = own(country, Gas::NaturalGas);
            const QString all =
                words.emergencySteps(emergency, Gas::NaturalGas, country, contacts).join(u' ');
            const QString caution = words.caution(Gas::NaturalGas, country, contacts);
            EXPECT_TRUE(all.contains(QStringLiteral("01632 960001 (Penrose Bottled Gas)"))) << all;
            EXPECT_TRUE(caution.contains(ownNumber)) << caution;
            if (country == Country::NorthernIreland) {
                EXPECT_TRUE(all.contains(QStringLiteral("the gas emergency number on the meter"))) << all;
                EXPECT_TRUE(caution.contains(QStringLiteral("the number on the meter"))) << caution;
            } else {
                EXPECT_LT(all.indexOf(kNetworkNumber), all.indexOf(ownNumber)) << all;
                EXPECT_GE(all.indexOf(kNetworkNumber), 0) << all;
                EXPECT_LT(caution.indexOf(kNetworkNumber), caution.indexOf(ownNumber)) << caution;
                EXPECT_GE(caution.indexOf(kNetworkNumber), 0) << caution;
            }
        }
    }
}

TEST(Emergency, ForLpgTheFirmsSupplierStandsWithTheNumberOnTheTank) {
    const Words words;
    for (const auto emergency : kEmergencies) {
        for (const auto gas : {Gas::Propane, Gas::Butane, Gas::LpgAir}) {
            const auto contacts = own(Country::Scotland, gas);
            const QString all = words.emergencySteps(emergency, gas, Country::Scotland, contacts).join(u' ');
            EXPECT_TRUE(
                all.contains(QStringLiteral("01632 960001 (Penrose Bottled Gas), or the number on "
                                            "the cylinder or tank where it is another")))
                << all;
            EXPECT_FALSE(all.contains(kNetworkNumber)) << all;
            EXPECT_TRUE(words.caution(gas, Country::Scotland, contacts)
                            .contains(QStringLiteral("ring 01632 960001 or the number on the tank")));
            // Of another gas or country it says nothing.
            EXPECT_EQ(words.emergencySteps(emergency, gas, Country::England, contacts),
                      words.emergencySteps(emergency, gas, Country::England, {}));
        }
    }
}

TEST(Emergency, WhomToRingIsWhatTheStepsSay) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (const auto gas : kGases) {
            for (const auto country : kCountries) {
                for (const auto& contacts : {own(country, gas), std::vector<reg::EmergencyContact>()}) {
                    const QString said = words.whomToRing(gas, country, contacts);
                    EXPECT_TRUE(testing::isFilled(said)) << said;
                    EXPECT_TRUE(words.emergencySteps(Emergency::CarbonMonoxide, gas, country, contacts)
                                    .join(u' ')
                                    .contains(said))
                        << said;
                }
            }
        }
    }
}

TEST(Caution, IsOneLine) {
    const Words words;
    for (const auto gas : kGases) {
        for (const auto country : kCountries) {
            for (const auto& contacts : {own(country, gas), std::vector<reg::EmergencyContact>()}) {
                const QString caution = words.caution(gas, country, contacts);
                EXPECT_FALSE(caution.contains(u'\n'));
                EXPECT_LE(caution.size(), 240) << caution;
                EXPECT_TRUE(caution.contains(QStringLiteral("no flames"))) << caution;
            }
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
