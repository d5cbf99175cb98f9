// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/emergency.h"

#include <array>
#include <gtest/gtest.h>

namespace hearth::reg {
namespace {

using rulebook::Gas;

constexpr std::array kEveryGas{Gas::NaturalGas, Gas::Propane, Gas::Butane, Gas::LpgAir};
constexpr std::array kEveryCountry{Country::England, Country::Wales, Country::Scotland,
                                   Country::NorthernIreland};
// Great Britain's gas emergency service, as published by the GB gas register.
constexpr const char* kPublished = "0800 111 999";

// The numbers are of the ranges that are kept for invented ones (a public page on them), but for the last
// group's shape.
EmergencyContact contact(Country country, Gas gas, const char* number, const char* name = "Duty engineer") {
    EmergencyContact made;
    made.country = country;
    made.gas = gas;
    made.name = name;
    made.number = number;
    return made;
}

TEST(NetworkNumber, IsKnownForNaturalGasInGreatBritainAlone) {
    for (const auto country : kEveryCountry) {
        for (const auto gas : kEveryGas) {
            const bool serves = gas == Gas::NaturalGas && country != Country::NorthernIreland;
            EXPECT_EQ(networkNumber(country, gas), serves ? kPublished : "");
            EXPECT_EQ(isLpg(gas), gas != Gas::NaturalGas);
        }
    }
}

TEST(CanBeDialled, TakesWhatATelephoneTakes) {
    struct Case {
        const char* number;
        bool can;
    };
    constexpr std::array kCases{
        Case{"0800 111 999", true},
        Case{"(01632) 960-001", true},
        Case{"+44 1632 960001", true},
        Case{" 999 ", true},
        Case{"123456789012345", true},
        Case{"", false},
        Case{"   ", false},
        Case{"99", false},
        Case{"O800 111 999", false},           // a letter O
        Case{"01632 960001 ext 2", false},     // words
        Case{"01632+960001", false},           // a plus inside
        Case{"1234567890123456", false},       // 16 digits
        Case{"0 1 6 3 2 9 6 0 0 0 1", false},  // 21 signs
        Case{"see the tank", false},
    };
    for (const auto& [number, can] : kCases) {
        EXPECT_EQ(canBeDialled(number), can) << number;
    }
}

// The firm's own number never takes the place of the national service.
TEST(LinesToRing, PutTheNetworkFirstAndTheFirmsOwnAfterIt) {
    const std::vector contacts{contact(Country::England, Gas::NaturalGas, "01632 960001")};
    const auto lines = linesToRing(contacts, Country::England, Gas::NaturalGas);
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0], (EmergencyLine{kPublished, "", true}));
    EXPECT_EQ(lines[1], (EmergencyLine{"01632 960001", "Duty engineer", false}));
}

TEST(LinesToRing, AreOfThatCountryAndGasOnly) {
    for (const auto country : kEveryCountry) {
        for (const auto gas : kEveryGas) {
            const std::vector contacts{contact(country, gas, " 01632 960001 ")};
            for (const auto otherCountry : kEveryCountry) {
                for (const auto otherGas : kEveryGas) {
                    std::vector<EmergencyLine> expected;
                    if (otherGas == Gas::NaturalGas && otherCountry != Country::NorthernIreland) {
                        expected.push_back({kPublished, "", true});
                    }
                    if (otherCountry == country && otherGas == gas) {
                        expected.push_back({"01632 960001", "Duty engineer", false});
                    }
                    EXPECT_EQ(linesToRing(contacts, otherCountry, otherGas), expected);
                }
            }
        }
    }
}

TEST(LinesToRing, LeaveOutWhatCannotBeDialledAndWhatIsThereAlready) {
    for (const char* number : {"", "ask the office", "0800111999", "0800 111999"}) {
        const std::vector contacts{contact(Country::Wales, Gas::NaturalGas, number)};
        EXPECT_EQ(linesToRing(contacts, Country::Wales, Gas::NaturalGas).size(), 1U) << number;
    }
    EXPECT_TRUE(
        linesToRing({contact(Country::Wales, Gas::Propane, "?")}, Country::Wales, Gas::Propane).empty());
}

}  // namespace
}  // namespace hearth::reg
