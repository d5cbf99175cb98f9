// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/heat_input.h"

#include "core/rulebook/conclude.h"
#include "tests/core/burner/rate_samples.h"
#include "tests/support/agreement.h"

#include <gtest/gtest.h>

namespace hearth::burner {
namespace {

namespace rs = ratesamples;
using quantity::GrossHeatValue;
using quantity::GrossPower;
using quantity::kKilowatt;
using quantity::kKilowattHourPerCubicMetre;
using quantity::kMegajoulePerCubicMetre;
using quantity::NetPower;
using rulebook::Outcome;
using rulebook::Say;

struct HeatExample {
    Measured<GrossPower> gross;
    Measured<NetPower> net;
};

HeatExample heatOf(const Passed& passed, double took, GrossHeatValue calorific,
                   const Correction& correction = {}) {
    const auto rate = gasRate(*volumePassed(passed), {rs::seconds(took), {}});
    const auto gross = grossHeatInput(*rate, {calorific, {}}, correction);
    return {gross, *netHeatInput(gross, 1.11)};
}

Passed heatLitres(double volume) {
    return VolumeRead{rs::cubicMetres(volume), rs::cubicMetres(0.001)};
}

Passed oneFoot() {
    return DialTurns{quantity::Volume(1, quantity::kCubicFoot), 1.0, {}};
}

TEST(HeatInputAgainst, WorkedExamples) {
    const GrossHeatValue bill(10.76, kKilowattHourPerCubicMetre);
    const auto h = heatOf(heatLitres(0.088), 122, bill);
    testing::Agreement note("Heat input, worked example of 0.088 m3 in 122 s",
                            "Technical note on gas rate by a UK gas installer", "kW", 0.005);
    note.hold("gross", h.gross.value.in(kKilowatt), 27.94);
    note.hold("net", h.net.value.in(kKilowatt), 25.17);
    testing::Agreement plate("Deviation from the plate of 24.49 kW net",
                             "Technical note on gas rate by a UK gas installer", "%", 0.05);
    plate.hold("deviation", 100 * (h.net.value / NetPower(24.49, kKilowatt) - 1), 2.8);

    testing::Agreement training("Heat input, training worked examples", "Training worked examples", "kW",
                                0.05);
    const auto i = heatOf(heatLitres(0.040), 120, GrossHeatValue(39.0, kMegajoulePerCubicMetre));
    training.hold("0.040 m3 in 120 s, gross", i.gross.value.in(kKilowatt), 13.0);
    training.hold("0.040 m3 in 120 s, net", i.net.value.in(kKilowatt), 11.7);
    const auto j = heatOf(oneFoot(), 80, GrossHeatValue(1040, quantity::kBtuPerCubicFoot));
    training.hold("1 ft3 in 80 s, 1040 Btu/ft3", j.gross.value.in(kKilowatt), 13.7);
    testing::Agreement btu("Heat input in Btu/h of 1 ft3 in 80 s at 1040 Btu/ft3", "Training worked example",
                           "Btu/h", 0.5);
    btu.hold("gross", j.gross.value.in(quantity::kBtuPerHour), 46800);
}

TEST(HeatInputAgainst, ArithmeticOfBills) {
    // 38.76 MJ/m3 is 10.76 kWh/m3 uncorrected: 3.6 and the two digits that are printed.
    testing::Agreement bill("Calorific value of bills, MJ/m3 and kWh/m3",
                            "Technical note on gas rate by a UK gas installer; suppliers' help pages (3.6)",
                            "kWh/m3", 0.01);
    const double rows[][2] = {{38.76, 10.76}, {37.5, 10.42}, {43.0, 11.94}};
    for (const auto& row : rows) {
        // What an hour at 1 m3/h gives.
        const auto gross =
            grossHeatInput({rs::hourly(1), {}}, {GrossHeatValue(row[0], kMegajoulePerCubicMetre), {}}, {});
        bill.hold("heat of a cubic metre", gross.value.in(kKilowatt), row[1]);
    }
}

// Arithmetic from example H, not printed in it: 28.57 kW gross and 25.74 net with the factor.
TEST(HeatInput, TheFixedFactorRaisesIt) {
    const auto book = rulebook::RuleBook::shipped();
    const auto h = heatOf(heatLitres(0.088), 122, GrossHeatValue(10.76, kKilowattHourPerCubicMetre),
                          *fixedCorrection(rs::on(book)));
    EXPECT_NEAR(h.gross.value.in(kKilowatt), 28.57, 0.01);
    EXPECT_NEAR(h.net.value.in(kKilowatt), 25.74, 0.01);
}

TEST(HeatInputLaws, GrossIsNeverBelowNetAndUncertaintiesGoAlong) {
    for (const double ratio : {1.0, 1.084, 1.1107, 1.2}) {
        const Measured<GrossPower> gross{GrossPower(24, kKilowatt), GrossPower(0.4, kKilowatt)};
        const auto net = netHeatInput(gross, ratio);
        ASSERT_TRUE(net);
        EXPECT_GE(gross.value.in(kKilowatt), net->value.in(kKilowatt));
        EXPECT_NEAR(gross.relative() / net->relative(), 1.0, 1e-12);
    }
    EXPECT_FALSE(netHeatInput({}, 0.9));
    EXPECT_FALSE(netHeatInput({}, 1.3));
    const auto fuel = rs::fuel(38.76, 1.109);
    EXPECT_NEAR(*grossToNet(fuel), 1.109, 1e-12);
    auto unknown = fuel;
    unknown.net.reset();
    EXPECT_FALSE(grossToNet(unknown));
}

TEST(HeatInputLaws, IsInProportion) {
    const Measured<GrossHeatValue> calorific{GrossHeatValue(39, kMegajoulePerCubicMetre), {}};
    const auto one = grossHeatInput({rs::hourly(1), rs::hourly(0.01)}, calorific, {});
    const auto three = grossHeatInput({rs::hourly(3), rs::hourly(0.03)}, calorific, {});
    EXPECT_NEAR(three.value / one.value, 3.0, 1e-12);
    EXPECT_NEAR(three.u / one.u, 3.0, 1e-12);
}

// Training cards: V x 30 x 10.76. Exactly two minutes: the same as the long way.
TEST(HeatInput, TwoMinuteShortcut) {
    const GrossHeatValue bill(10.76, kKilowattHourPerCubicMetre);
    const auto longWay = heatOf(heatLitres(0.088), 120, bill);
    EXPECT_NEAR(twoMinuteShortcut(rs::cubicMetres(0.088), bill) / longWay.gross.value, 1.0, 1e-12);
    EXPECT_NEAR(twoMinuteShortcut(rs::cubicMetres(0.088), bill).in(kKilowatt), 0.088 * 30 * 10.76, 1e-9);
}

/// The example of 0.088 m3 in 122 s, judged: net 25.17 kW.
HeatInputCase heatCase(const rulebook::RuleBook& book, PlatePower plate, double passed = 0.088) {
    HeatInputCase input;
    input.timing = rs::timed(passed, 122);
    input.rate = judgeRate(input.timing, rs::on(book));
    input.fuel = rs::fuel(38.736, 1.11);
    input.plate.heatInput = plate;
    return input;
}

NetPower netKilowatt(double value) {
    return {value, kKilowatt};
}

struct PlateCase {
    const char* name;
    PlatePower plate;
    Outcome confirmed;
    Outcome shipped;
    Say why;
};

TEST(JudgeHeatInput, AgainstThePlate) {
    // Deviations: 0, about +2.8 (within 2 U of the limit), +20, -20, and the gross figure against a gross
    // plate. Makers' pages: 5 % either way.
    const PlateCase cases[] = {
        {"as the plate", netKilowatt(25.17), Outcome::Pass, Outcome::LookAgain, Say::HeatInputWithin},
        {"near the limit", netKilowatt(24.2), Outcome::LookAgain, Outcome::LookAgain, Say::HeatInputNear},
        {"over", netKilowatt(21), Outcome::Fail, Outcome::Fail, Say::HeatInputOverRated},
        {"under", netKilowatt(31.5), Outcome::Fail, Outcome::Fail, Say::HeatInputUnderRated},
        {"gross with gross", GrossPower(27.94, kKilowatt), Outcome::Pass, Outcome::LookAgain,
         Say::HeatInputWithin},
    };
    const auto confirmed = rs::allConfirmed();
    const auto shipped = rulebook::RuleBook::shipped();
    for (const auto& c : cases) {
        const auto firm = judgeHeatInput(heatCase(confirmed, c.plate), rs::on(confirmed));
        EXPECT_EQ(firm.finding.outcome, c.confirmed) << c.name;
        EXPECT_EQ(firm.finding.why.say, c.why) << c.name;
        const auto bare = judgeHeatInput(heatCase(shipped, c.plate), rs::on(shipped));
        EXPECT_EQ(bare.finding.outcome, c.shipped) << c.name << ", unconfirmed: never a pass";
        const bool net = std::holds_alternative<NetPower>(c.plate);
        EXPECT_TRUE(says(firm.finding, net ? Say::HeatInputNet : Say::HeatInputGross)) << c.name;
        EXPECT_FALSE(says(firm.finding, net ? Say::HeatInputGross : Say::HeatInputNet)) << c.name;
    }
}

TEST(JudgeHeatInput, ANetFigureTakenForGrossWouldLookUnderRated) {
    const auto book = rs::allConfirmed();
    const auto rules = rs::on(book);
    EXPECT_EQ(judgeHeatInput(heatCase(book, GrossPower(25.17, kKilowatt)), rules).finding.why.say,
              Say::HeatInputOverRated);
    EXPECT_EQ(judgeHeatInput(heatCase(book, netKilowatt(27.94)), rules).finding.why.say,
              Say::HeatInputUnderRated);
}

TEST(JudgeHeatInput, TheMakersToleranceDecidesFirst) {
    const auto book = rulebook::RuleBook::shipped();
    auto input = heatCase(book, netKilowatt(25.17 / 1.08));
    EXPECT_EQ(judgeHeatInput(input, rs::on(book)).finding.outcome, Outcome::Fail);
    input.plate.tolerance = MakersTolerance{rs::percent(12), rs::percent(5), "invented instructions"};
    const auto judged = judgeHeatInput(input, rs::on(book));
    EXPECT_EQ(judged.finding.outcome, Outcome::Pass);
    EXPECT_EQ(judged.finding.limits.front().provenance, rulebook::Provenance::Maker);
    ASSERT_TRUE(judged.finding.limit);
    EXPECT_EQ(judged.finding.limit->value.text(), "12.0");
}

TEST(JudgeHeatInput, LongerTimingDecidesWhatAShortOneLeavesOpen) {
    const auto book = rs::allConfirmed();
    auto input = heatCase(book, netKilowatt(24.49));
    input.timing.countMeterAccuracy = false;
    const double passed = 0.088 / 122;
    const auto at = [&](double took) {
        input.timing.passed = heatLitres(passed * took);
        input.timing.took = rs::seconds(took);
        input.rate = judgeRate(input.timing, rs::on(book));
        return judgeHeatInput(input, rs::on(book)).finding.why.say;
    };
    EXPECT_EQ(at(30), Say::HeatInputNear);
    EXPECT_EQ(at(300), Say::HeatInputWithin);
}

struct HeatGap {
    const char* name;
    void (*change)(HeatInputCase&);
    Say why;
    bool worked;
};

TEST(JudgeHeatInput, SaysWhatIsMissingAndStillWorksOutWhatItCan) {
    const HeatGap cases[] = {
        {"no plate", [](HeatInputCase& c) { c.plate.heatInput = {}; }, Say::HeatInputNoPlate, true},
        {"kind not said",
         [](HeatInputCase& c) {
             c.plate.heatInput = {};
             c.plate.kindNotSaid = true;
         },
         Say::HeatInputPlateKindNotSaid, true},
        {"plate unreadable",
         [](HeatInputCase& c) { c.plate.heatInput = rulebook::Given<PlatePower>::unusable(); },
         Say::ReadingUnusable, true},
        {"plate of nought", [](HeatInputCase& c) { c.plate.heatInput = PlatePower{NetPower{}}; },
         Say::ReadingMissing, true},
        {"no calorific value", [](HeatInputCase& c) { c.fuel.reset(); }, Say::HeatInputNoCalorific, false},
        {"no ratio", [](HeatInputCase& c) { c.fuel->net.reset(); }, Say::ReadingMissing, true},
        {"no rate",
         [](HeatInputCase& c) {
             c.rate = JudgedRate{};
             concludeOpen(c.rate.finding, {Say::RateNoMeter});
         },
         Say::RateNoMeter, false},
    };
    const auto book = rs::allConfirmed();
    for (const auto& c : cases) {
        auto input = heatCase(book, netKilowatt(25.17));
        c.change(input);
        const auto judged = judgeHeatInput(input, rs::on(book));
        EXPECT_EQ(judged.finding.outcome, Outcome::NoVerdict) << c.name;
        EXPECT_EQ(judged.finding.why.say, c.why) << c.name;
        EXPECT_EQ(judged.gross.has_value(), c.worked) << c.name;
    }
    const auto empty = rs::without(book, rulebook::Rule::HeatInputOver);
    EXPECT_EQ(judgeHeatInput(heatCase(book, netKilowatt(25)), rs::on(empty)).finding.why.say,
              Say::LimitMissing);
}

TEST(JudgeHeatInput, NamesTheCorrectionAndRestsOnItsEntry) {
    const auto book = rs::allConfirmed();
    auto input = heatCase(book, netKilowatt(25.17));
    EXPECT_TRUE(says(judgeHeatInput(input, rs::on(book)).finding, Say::CorrectionNone));
    input.correction = *fixedCorrection(rs::on(book));
    const auto fixed = judgeHeatInput(input, rs::on(book));
    EXPECT_TRUE(says(fixed.finding, Say::CorrectionFixed));
    EXPECT_EQ(fixed.correction, input.correction);
    EXPECT_EQ(fixed.finding.limits.front().key.rule, rulebook::Rule::HeatInputOver);
    EXPECT_EQ(fixed.finding.limits.back().key.rule, rulebook::Rule::MeteringFactor);
    input.correction = {CorrectionKind::AsMeasured, 1.01, nullptr};
    EXPECT_TRUE(says(judgeHeatInput(input, rs::on(book)).finding, Say::CorrectionMeasured));
}

TEST(JudgeHeatInput, RestsOnTheCalorificValueThatNobodyTyped) {
    const auto book = rs::allConfirmed();
    auto entry = *rs::on(book).known(rulebook::Rule::WorkingHeatValue);
    entry.provenance = rulebook::Provenance::Memory;
    auto input = heatCase(book, netKilowatt(25.17));
    input.fuel->workingHeatValue = &entry;
    EXPECT_EQ(judgeHeatInput(input, rs::on(book)).finding.outcome, Outcome::LookAgain)
        << "nothing passes on a calorific value from memory";
}

TEST(JudgeHeatInput, TheShortcutStandsBesideATimingOfTwoMinutesOnly) {
    const auto book = rs::allConfirmed();
    auto input = heatCase(book, netKilowatt(25.17));
    EXPECT_TRUE(says(judgeHeatInput(input, rs::on(book)).finding, Say::HeatInputShortcut));
    input.timing.took = rs::seconds(180);
    EXPECT_FALSE(says(judgeHeatInput(input, rs::on(book)).finding, Say::HeatInputShortcut));
}

TEST(JudgeHeatInput, AColdApplianceNeitherPassesNorFailsForItsExcess) {
    const auto book = rs::allConfirmed();
    const auto judged = [&](double plate) {
        auto input = heatCase(book, netKilowatt(plate));
        input.timing.warm = false;
        input.rate = judgeRate(input.timing, rs::on(book));
        return judgeHeatInput(input, rs::on(book)).finding;
    };
    EXPECT_EQ(judged(25.17).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(21).outcome, Outcome::LookAgain);
    EXPECT_EQ(judged(21).why.say, Say::RateCold);
    EXPECT_TRUE(says(judged(21), Say::HeatInputOverRated));
    EXPECT_EQ(judged(31.5).outcome, Outcome::Fail) << "cold, and still too little";
}

}  // namespace
}  // namespace hearth::burner
