// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/pressure_drop.h"

#include "core/quantity/decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace hearth::pipework {

using quantity::Flow;
using quantity::kCubicMetrePerSecond;
using quantity::kMetre;
using quantity::kMillibar;
using quantity::kPascal;
using quantity::PressureChange;

namespace {

constexpr double kLaminarShare = 0.9;  // of 16/Re's flow, see cautiousFriction()

std::string dropText(double value) {
    return std::isfinite(value) ? quantity::Decimal::rounded(value, 6).text() : std::string("?");
}

tl::unexpected<Error> outsideDrop(double value, const char* least, const std::string& greatest) {
    return fail(ErrorCode::OutOfRange, {dropText(value), least, greatest});
}

/// What is wrong with the run itself.
std::optional<tl::unexpected<Error>> runSlip(const PipeRun& run) {
    const double positive[] = {run.bore.in(kMetre), run.gas.relativeDensity, run.gas.kinematicViscosity};
    for (const double value : positive) {
        if (!(value > 0.0) || !std::isfinite(value)) {
            return outsideDrop(value, "> 0", "∞");
        }
    }
    if (!(run.efficiency > 0.0) || run.efficiency > 1.0) {
        return outsideDrop(run.efficiency, "> 0", "1");
    }
    const double length = run.length.in(kMetre);
    if (!(length >= 0.0) || !std::isfinite(length)) {
        return outsideDrop(length, "0", "∞");
    }
    return std::nullopt;
}

/// By the cautious friction, whatever comes out.
double dropInPascal(double cubicMetrePerSecond, const PipeRun& run) {
    if (cubicMetrePerSecond == 0.0) {
        return 0.0;  // and 16/Re would be without end
    }
    const Flow flow(cubicMetrePerSecond, kCubicMetrePerSecond);
    const double friction = cautiousFriction(reynolds(flow, run.bore, run.gas));
    return dropWithFriction(friction, flow, run).in(kPascal) / (run.efficiency * run.efficiency);
}

}  // namespace

std::optional<FlowingGas> flowingGas(rulebook::Gas gas) {
    switch (gas) {
        case rulebook::Gas::NaturalGas:
            return FlowingGas{0.6, 14.7e-6};
        case rulebook::Gas::Propane:
            return FlowingGas{1.55, 4.4e-6};
        default:
            return std::nullopt;
    }
}

double reynolds(Flow flow, quantity::Length bore, const FlowingGas& gas) {
    return 4.0 * flow.in(kCubicMetrePerSecond) / (std::numbers::pi * bore.in(kMetre)*gas.kinematicViscosity);
}

double laminarFriction(double reynolds) {
    return 16.0 / reynolds;
}

double smoothFriction(double reynolds) {
    const double x = std::log10(reynolds) - 5.0;
    const double root = 14.7519 + 3.5657 * x + 0.0362 * x * x;
    return 1.0 / (root * root);
}

double cautiousFriction(double reynolds) {
    constexpr double kLaminarForSure = 500.0;  // the laws cross near 1100; below, the smooth law says nothing
    const double laminar = laminarFriction(reynolds) / kLaminarShare;
    return reynolds < kLaminarForSure ? laminar : std::max(laminar, smoothFriction(reynolds));
}

PressureChange dropWithFriction(double friction, Flow flow, const PipeRun& run) {
    const double bore = run.bore.in(kMetre);
    const double speed = flow.in(kCubicMetrePerSecond)*4.0 / (std::numbers::pi * bore * bore);
    const double density = run.gas.relativeDensity * kAirDensity;
    return {friction * 4.0 * run.length.in(kMetre) / bore * density / 2.0 * speed * speed, kPascal};
}

Result<PressureChange> pressureDrop(Flow flow, const PipeRun& run) {
    if (auto slip = runSlip(run)) {
        return *slip;
    }
    const double rate = flow.in(kCubicMetrePerSecond);
    if (!(rate >= 0.0) || !std::isfinite(rate)) {
        return outsideDrop(rate, "0", "∞");
    }
    if (const double re = reynolds(flow, run.bore, run.gas); re > kMostReynolds) {
        return outsideDrop(re, "0", dropText(kMostReynolds));
    }
    const PressureChange drop(dropInPascal(rate, run), kPascal);
    if (drop > kMostDrop) {
        return outsideDrop(drop.in(kMillibar), "0", dropText(kMostDrop.in(kMillibar)));
    }
    return drop;
}

Result<Flow> discharge(PressureChange drop, const PipeRun& run) {
    if (auto slip = runSlip(run)) {
        return *slip;
    }
    if (!(drop > PressureChange{}) || drop > kMostDrop) {
        return outsideDrop(drop.in(kMillibar), "> 0", dropText(kMostDrop.in(kMillibar)));
    }
    if (!(run.length.in(kMetre) > 0.0)) {
        return outsideDrop(run.length.in(kMetre), "> 0", "∞");
    }
    // The drop rises with the flow: halve the interval, from nought to the most that the law is good for.
    const double most =
        kMostReynolds * std::numbers::pi * run.bore.in(kMetre)*run.gas.kinematicViscosity / 4.0;
    if (dropInPascal(most, run) < drop.in(kPascal)) {
        return outsideDrop(kMostReynolds, "0", dropText(kMostReynolds));
    }
    double low = 0.0;
    double high = most;
    constexpr int kHalvings = 100;
    constexpr double kClose = 1e-13;
    for (int i = 0; i < kHalvings && high - low > kClose * high; ++i) {
        const double middle = (low + high) / 2.0;
        (dropInPascal(middle, run) < drop.in(kPascal) ? low : high) = middle;
    }
    return Flow((low + high) / 2.0, kCubicMetrePerSecond);
}

namespace comparison {

namespace {

/// The flow for a friction that does not depend on it.
Flow constantFrictionDischarge(double friction, PressureChange drop, const PipeRun& run) {
    const Flow unit(1.0, kCubicMetrePerSecond);
    return unit * std::sqrt(drop / dropWithFriction(friction, unit, run));
}

}  // namespace

Flow poleDischarge(PressureChange drop, const PipeRun& run) {
    return constantFrictionDischarge(0.0065, drop, run);
}

Flow laceyDischarge(PressureChange drop, const PipeRun& run) {
    const double millimetres = run.bore.in(quantity::kMillimetre);
    return constantFrictionDischarge(0.0044 * (1.0 + 12.0 / (0.276 * millimetres)), drop, run);
}

}  // namespace comparison

}  // namespace hearth::pipework
