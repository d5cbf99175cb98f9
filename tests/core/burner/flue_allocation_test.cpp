// SPDX-License-Identifier: GPL-3.0-or-later
// The formulas on flue gas take no memory: every operator new of this binary is counted.
#include "core/burner/air_inlet.h"
#include "core/burner/efficiency.h"
#include "core/burner/flue_gas.h"
#include "core/burner/plausibility.h"
#include "core/burner/ratio.h"
#include "tests/core/burner/flue_samples.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <new>

namespace {
thread_local long flueAllocations = 0;
}  // namespace

void* operator new(std::size_t size) {
    ++flueAllocations;
    if (void* memory = std::malloc(size == 0 ? 1 : size)) {
        return memory;
    }
    throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

namespace hearth::burner {
namespace {

using flue::celsius;
using flue::percent;
using flue::ppm;

TEST(FlueFormulas, AllocateNothing) {
    const auto burning = flue::burning("g20");
    const auto siegert = siegertCoefficients(rulebook::Gas::NaturalGas);
    const auto bs = *bs845Fuel(rulebook::Gas::NaturalGas, flue::named("g20"));
    const auto co = flue::ppmRead(80);
    const auto co2 = flue::percentRead(9.2);
    const Analyser analyser;
    const long before = flueAllocations;
    double sum = *ratioOf(ppm(80), percent(9.2)) + ratioRead(co, co2, analyser)->u;
    sum += carbonDioxideFromOxygen(percent(4), burning.co2Max)->base() + *lambdaSimple(percent(4));
    sum += *lambdaByCarbonDioxide(percent(9), burning.co2Max) + excessAir(1.2)->base();
    sum += *gas::lambdaAtOxygen(burning, percent(4));
    sum += atOxygen(ppm(80), percent(4), percent(3))->base() + airFree(ppm(80), percent(4))->base();
    sum += atThreePercent(ppm(80), percent(4))->base() + airFreeOfRatio(0.004, burning.co2Max)->base();
    sum += airFreeByCarbonDioxide(ppm(80), percent(9), burning.co2Max)->base();
    sum += dryFromWet(percent(9), percent(10))->base() + *milligramsPerCubicMetre(ppm(1), celsius(15));
    sum += *milligramsPerKilowattHour(ppm(1), kMolarMassCarbonMonoxide, burning.dryFlue, 0.2);
    sum += offLine(percent(4), percent(9), burning.co2Max)->base();
    sum += recirculation(percent(0.1), percent(9))->base();
    sum += siegertLossByCarbonDioxide(celsius(100), celsius(20), percent(9), siegert)->base();
    sum += siegertLossByOxygen(celsius(100), celsius(20), percent(4), siegert)->base();
    sum += dryGasLoss(celsius(100), celsius(20), percent(9), bs)->base();
    sum += waterVapourLoss(celsius(100), celsius(20), bs)->base();
    sum += unburnedLoss(ppm(80), percent(9), bs)->base();
    const long after = flueAllocations;
    EXPECT_GT(sum, 0.0);
    EXPECT_EQ(after, before);
    // The counter counts.
    const std::vector<double> one(1);
    EXPECT_EQ(flueAllocations, after + 1);
}

}  // namespace
}  // namespace hearth::burner
