// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/pressure_drop.h"

#include "tests/support/agreement.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

namespace hearth::pipework {
namespace {

using namespace quantity;

constexpr std::size_t kColumns = 8;
constexpr std::array<double, kColumns> kTableLengths{3, 6, 9, 12, 15, 20, 25, 30};

/// Discharge at 1 mbar of gas of relative density 0.6, m3/h.
struct TableRow {
    const char* tube;
    double bore;  // mm
    std::array<double, kColumns> flows;
};

// Two-page handout "Pipe sizing", reproducing the discharge table of BS 6891 (2005 or earlier).
constexpr std::array kHandout{
    TableRow{"10 mm", 8.8, {0.84, 0.56, 0.51, 0.36, 0.31, 0.22, 0.17, 0.14}},
    TableRow{"12 mm", 10.8, {1.52, 1.01, 0.84, 0.82, 0.67, 0.51, 0.39, 0.33}},
    TableRow{"15 mm", 13.6, {2.9, 1.9, 1.5, 1.3, 1.1, 0.95, 0.92, 0.88}},
    TableRow{"22 mm", 20.2, {8.7, 5.8, 4.6, 3.9, 3.6, 2.8, 2.6, 2.3}},
    TableRow{"28 mm", 26.2, {18, 12, 9.4, 8.0, 7.2, 6.0, 5.4, 4.8}},
};
// BS 6891:2005 Table 3, from memory; the handout's 22 and 28 mm cells from 15 m on differ.
constexpr std::array kRecalled{
    TableRow{"22 mm", 20.2, {8.7, 5.8, 4.6, 3.9, 3.4, 2.9, 2.5, 2.3}},
    TableRow{"28 mm", 26.2, {18, 12, 9.4, 8.0, 7.0, 5.9, 5.2, 4.7}},
};

PipeRun run(double bore, double metres, double efficiency = 1.0,
            FlowingGas gas = *flowingGas(rulebook::Gas::NaturalGas)) {
    return {Length(bore, kMillimetre), Length(metres, kMetre), gas, efficiency};
}

double dischargeAt(double millibar, const PipeRun& pipe) {
    return discharge(PressureChange(millibar, kMillibar), pipe).value().in(kCubicMetrePerHour);
}

double dropOf(double flow, const PipeRun& pipe) {
    return pressureDrop(Flow(flow, kCubicMetrePerHour), pipe).value().in(kMillibar);
}

std::string cell(const TableRow& row, std::size_t column) {
    return std::string(row.tube) + ", " + std::to_string(static_cast<int>(kTableLengths.at(column))) + " m";
}

void holdRow(testing::Agreement& agreement, const TableRow& row, std::size_t first, std::size_t end) {
    for (std::size_t i = first; i < end; ++i) {
        agreement.holdRelative(cell(row, i), dischargeAt(1.0, run(row.bore, kTableLengths.at(i))),
                               row.flows.at(i));
    }
}

TEST(PressureDropTable, Of22And28MillimetreCopper) {
    // Printed with two digits: half of the last one is 0.3 to 2 %.
    testing::Agreement recalled("Discharge at 1 mbar, 22 and 28 mm copper, smooth-pipe law",
                                "BS 6891:2005 Table 3, from memory", "%", 2.1);
    for (const auto& row : kRecalled) {
        holdRow(recalled, row, 0, kColumns);
    }
    // The handout's cells from 15 m on are up to 6 % from those remembered, so no law fits both closer.
    testing::Agreement handout("Discharge at 1 mbar, 22 and 28 mm copper, smooth-pipe law, second version",
                               "Handout reproducing BS 6891, 2005 or earlier", "%", 4.5);
    holdRow(handout, kHandout[3], 0, kColumns);
    holdRow(handout, kHandout[4], 0, kColumns);
}

TEST(PressureDropTable, Of15MillimetreCopperWhereItIsTurbulent) {
    // Half of the last digit of 1.1 is 4.5 %.
    testing::Agreement agreement("Discharge at 1 mbar, 15 mm copper to 20 m, smooth-pipe law",
                                 "Handout reproducing BS 6891, 2005 or earlier", "%", 4.5);
    holdRow(agreement, kHandout[2], 0, 6);
}

TEST(PressureDropTable, OfSmallTubesWhereItIsLaminar) {
    // The printed cells are about 0.9 of Hagen and Poiseuille's flow: 0.86 to 0.94, since they have two
    // digits (half of the last of 0.14 is 3.6 %) and are no pure law.
    testing::Agreement agreement("Discharge at 1 mbar, 10 and 12 mm copper, laminar cells",
                                 "Handout reproducing BS 6891, 2005 or earlier (0.9 of 64/Re)", "%", 6.0);
    holdRow(agreement, kHandout[0], 3, kColumns);
    holdRow(agreement, kHandout[1], 5, kColumns);
}

/// The least that the versions of the table give for a cell.
double leastOf(const TableRow& row, std::size_t column) {
    double least = row.flows.at(column);
    for (const auto& other : kRecalled) {
        if (other.bore == row.bore) {
            least = std::min(least, other.flows.at(column));
        }
    }
    return least;
}

TEST(PressureDropTable, IsNowhereExceededWithTheCautiousEfficiency) {
    const auto most = [](double efficiency) {
        double worst = 0.0;
        for (const auto& row : kHandout) {
            for (std::size_t i = 0; i < kColumns; ++i) {
                worst = std::max(worst, dischargeAt(1.0, run(row.bore, kTableLengths.at(i), efficiency)) /
                                            leastOf(row, i));
            }
        }
        return worst;
    };
    EXPECT_LE(most(kCautiousEfficiency), 1.0);
    EXPECT_GT(most(kCautiousEfficiency + 0.01), 1.0) << "it is said to be the largest of two digits";
}

// BS 6891:2005, from memory: the drop in a leg is its length over the table's length for its flow; summed
// along the route.
TEST(PressureDropTable, LegsByTheTableMethod) {
    // 15 mm cells are good to 4.5 % in flow, so 8 % in drop.
    testing::Agreement agreement("Drop along a route by the table method (example O)",
                                 "BS 6891:2005, from memory; table by the handout", "%", 8.0);
    agreement.holdRelative("half of 12 m of 22 mm, half of 12 m of 15 mm",
                           dropOf(3.9, run(20.2, 6)) + dropOf(1.3, run(13.6, 6)), 1.0);
    agreement.holdRelative("a third of 9 m of 28 mm, half of 12 m of 22 mm",
                           dropOf(9.4, run(26.2, 3)) + dropOf(3.9, run(20.2, 6)), 1.0 / 3.0 + 0.5);
}

// Worked by hand beside the facts with the same law and two digits; no published table of propane was found.
TEST(PressureDrop, PropaneIn22Millimetre) {
    const auto gas = *flowingGas(rulebook::Gas::Propane);
    const std::array<std::pair<double, double>, 4> cases{{{6, 6.1}, {12, 4.1}, {20, 3.1}, {30, 2.4}}};
    for (const auto& [metres, flow] : cases) {
        EXPECT_NEAR(dischargeAt(2.0, run(20.2, metres, 1.0, gas)), flow, 0.06) << metres;
    }
}

TEST(PressureDrop, IsHagenAndPoiseuilleWhereLaminar) {
    testing::Agreement agreement("Laminar drop by the friction factor 16/Re",
                                 "Hagen-Poiseuille, 128 mu L Q / (pi D^4) (textbook)", "%", 1e-9);
    const auto gas = *flowingGas(rulebook::Gas::NaturalGas);
    for (const double bore : {8.8, 13.6, 26.2}) {
        for (const double flow : {0.01, 0.1, 0.3}) {
            const auto pipe = run(bore, 7.0);
            const Flow rate(flow, kCubicMetrePerHour);
            const double d = bore / 1000.0;
            const double mu = gas.kinematicViscosity * gas.relativeDensity * kAirDensity;
            const double expected = 128.0 * mu * 7.0 * flow / 3600.0 / (std::numbers::pi * d * d * d * d);
            const double re = reynolds(rate, pipe.bore, gas);
            agreement.holdRelative(std::to_string(bore),
                                   dropWithFriction(laminarFriction(re), rate, pipe).in(kPascal), expected);
        }
    }
}

double prandtlKarman(double reynolds) {
    double friction = 0.005;
    for (int i = 0; i < 100; ++i) {
        const double root = 4.0 * std::log10(reynolds * std::sqrt(friction)) - 0.4;
        friction = 1.0 / (root * root);
    }
    return friction;
}

TEST(PressureDrop, SmoothLawAgreesWithTheTextbooks) {
    // Three laws fitted to measurements that scatter by some per cent; the smooth-pipe law lies above the
    // first.
    testing::Agreement karman("Friction of smooth pipe, Re 4000 to 10^7",
                              "Prandtl-Karman, 1/sqrt(f) = 4 log10(Re sqrt(f)) - 0.4 (textbook)", "%", 4.0);
    testing::Agreement blasius("Friction of smooth pipe, Re 4000 to 10^5",
                               "Blasius, 0.0791 Re^-1/4 (textbook)", "%", 4.0);
    for (double re = 4000.0; re <= kMostReynolds; re *= 1.25) {
        karman.holdRelative(std::to_string(re), smoothFriction(re), prandtlKarman(re));
        EXPECT_GE(smoothFriction(re), prandtlKarman(re)) << re;
        if (re <= 1e5) {
            blasius.holdRelative(std::to_string(re), smoothFriction(re), 0.0791 * std::pow(re, -0.25));
        }
    }
}

TEST(PressureDrop, ConstantOfTheLowPressureForm) {
    testing::Agreement agreement("Low-pressure flow equation, constant 5.72e-4 (mbar, mm, m, m3/h)",
                                 "Gas network texts, from memory", "%",
                                 0.5);  // rounded to three digits, squared
    const double flow = 4.2;
    const double bore = 26.2;
    const double metres = 17.0;
    const double ours =
        dropWithFriction(0.008, Flow(flow, kCubicMetrePerHour), run(bore, metres)).in(kMillibar);
    agreement.holdRelative("28 mm", ours,
                           0.008 * 0.6 * metres * flow * flow / std::pow(bore, 5) / (5.72e-4 * 5.72e-4));
}

TEST(PressureDropComparison, PolesFormulaInImperialUnits) {
    testing::Agreement agreement("Pole's formula (comparison only)",
                                 "A page of formulas: 1350 sqrt(D5 p / (S L)), inch, in wg, yard", "%", 0.7);
    PipeRun pipe = run(25.4, 0.9144 * 10);
    const auto flow = comparison::poleDischarge(PressureChange(0.4, kInchWater), pipe);
    agreement.holdRelative("1 inch, 10 yards, 0.4 in wg", flow.in(kCubicFootPerHour),
                           1350.0 * std::sqrt(0.4 / (0.6 * 10.0)));
}

// Against the handout's table: Pole passes far more in small copper, Lacey less.
TEST(PressureDropComparison, PoleIsGenerousAndLaceyIsNot) {
    const PressureChange drop(1.0, kMillibar);
    for (const auto& row : {kHandout[2], kHandout[3], kHandout[4]}) {
        for (std::size_t i = 0; i < 5; ++i) {
            const auto pipe = run(row.bore, kTableLengths.at(i));
            EXPECT_GT(comparison::poleDischarge(drop, pipe).in(kCubicMetrePerHour), row.flows.at(i));
            EXPECT_LT(comparison::laceyDischarge(drop, pipe).in(kCubicMetrePerHour), row.flows.at(i));
        }
    }
}

TEST(PressureDropProperty, RisesWithFlowAndLengthAndFallsWithBore) {
    std::mt19937 random(17);
    std::uniform_real_distribution<double> log(-2.0, 1.0);
    int held = 0;
    for (int round = 0; round < 2000; ++round) {
        const double flow = std::pow(10.0, log(random));
        const double bore = 38.0 + 15.0 * log(random);
        const double metres = 1.0 + std::pow(10.0, log(random));
        const auto pipe = run(bore, metres);
        const auto drop = pressureDrop(Flow(flow, kCubicMetrePerHour), pipe);
        if (!drop || *drop > PressureChange(20, kMillibar)) {
            continue;
        }
        ++held;
        EXPECT_GT(dropOf(flow * 1.001, pipe), drop->in(kMillibar)) << flow << ' ' << bore;
        EXPECT_GT(dropOf(flow, run(bore, metres * 1.001)), drop->in(kMillibar));
        EXPECT_LT(dropOf(flow, run(bore * 1.001, metres)), drop->in(kMillibar)) << flow << ' ' << bore;
        EXPECT_NEAR(dischargeAt(drop->in(kMillibar), pipe) / flow, 1.0, 1e-9) << "discharge is the inverse";
        EXPECT_NEAR(dropOf(flow, run(bore, metres * 3)), 3.0 * drop->in(kMillibar), 1e-9);
    }
    EXPECT_GT(held, 1000);
}

TEST(PressureDropProperty, FrictionHasNoJump) {
    for (double re = 10.0; re < 1e6; re *= 1.01) {
        const double step = cautiousFriction(re * 1.0001) / cautiousFriction(re);
        EXPECT_NEAR(step, 1.0, 2e-4) << re;
        EXPECT_GE(cautiousFriction(re), laminarFriction(re));
        if (re >= 1000.0) {
            EXPECT_GE(cautiousFriction(re), smoothFriction(re));
        }
    }
}

TEST(PressureDrop, EfficiencyOnlyAddsToTheDrop) {
    EXPECT_NEAR(dropOf(2.0, run(20.2, 10, 0.95)), dropOf(2.0, run(20.2, 10)) / (0.95 * 0.95), 1e-12);
}

TEST(PressureDrop, RefusesWhatLiesOutsideItsValidity) {
    const auto code = [](double flow, const PipeRun& pipe) {
        const auto drop = pressureDrop(Flow(flow, kCubicMetrePerHour), pipe);
        return drop ? std::optional<ErrorCode>() : std::optional(drop.error().code);
    };
    const auto outside = std::optional(ErrorCode::OutOfRange);
    EXPECT_EQ(code(-1, run(20, 1)), outside);
    EXPECT_EQ(code(1, run(0, 1)), outside);
    EXPECT_EQ(code(1, run(20, -1)), outside);
    EXPECT_EQ(code(1, run(20, 1, 0.0)), outside);
    EXPECT_EQ(code(1, run(20, 1, 1.01)), outside);
    EXPECT_EQ(code(1, run(20, 1, 1.0, {0.6, 0.0})), outside);
    EXPECT_EQ(code(1, run(20, 1, 1.0, {0.0, 1e-5})), outside);
    EXPECT_EQ(code(100, run(10, 10)), outside) << "more than a tenth of the atmosphere";
    EXPECT_EQ(code(1e7, run(1000, 0)), outside) << "Reynolds number";
    EXPECT_EQ(code(std::nan(""), run(20, 1)), outside);
    EXPECT_EQ(code(0, run(20, 1)), std::nullopt);
    EXPECT_EQ(dropOf(0, run(20, 1)), 0.0);
    for (const double millibar : {0.0, -1.0, 101.0}) {
        EXPECT_FALSE(discharge(PressureChange(millibar, kMillibar), run(20, 1))) << millibar;
    }
    EXPECT_FALSE(discharge(PressureChange(1, kMillibar), run(20, 0)));
    EXPECT_FALSE(discharge(PressureChange(50, kMillibar), run(2000, 0.001))) << "Reynolds number";
}

TEST(PressureDrop, KnowsTwoGases) {
    EXPECT_EQ(flowingGas(rulebook::Gas::NaturalGas)->relativeDensity, 0.6);
    EXPECT_EQ(flowingGas(rulebook::Gas::Propane)->kinematicViscosity, 4.4e-6);
    EXPECT_FALSE(flowingGas(rulebook::Gas::Butane)) << "its viscosity was not found";
    EXPECT_FALSE(flowingGas(rulebook::Gas::LpgAir));
}

}  // namespace
}  // namespace hearth::pipework
