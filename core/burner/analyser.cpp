// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/burner/analyser.h"

#include <algorithm>

namespace hearth::burner {

using quantity::kPercent;
using quantity::kPpm;
using quantity::Share;
using quantity::Uncertain;

namespace {

Uncertain shareRead(const ShareReading& reading, Share step, Share accuracy,
                    quantity::Unit<quantity::ShareDimension> unit) {
    return quantity::readOff(reading.value.in(unit), std::max(step, reading.digit).in(unit),
                             accuracy.in(unit));
}

}  // namespace

Share carbonMonoxideAccuracy(Share reading) {
    constexpr Share kLeast(3.0, kPpm);
    constexpr double kOfReading = 0.05;
    return std::max(kLeast, reading * kOfReading);
}

Uncertain carbonMonoxideRead(const ShareReading& reading, const Analyser& analyser) {
    const auto accuracy = analyser.carbonMonoxideAccuracy.value_or(carbonMonoxideAccuracy(reading.value));
    return shareRead(reading, analyser.carbonMonoxideStep, accuracy, kPpm);
}

Uncertain carbonDioxideRead(const ShareReading& reading, const Analyser& analyser) {
    return shareRead(reading, analyser.carbonDioxideStep, analyser.carbonDioxideAccuracy.value_or(Share{}),
                     kPercent);
}

Uncertain oxygenRead(const ShareReading& reading, const Analyser& analyser) {
    return shareRead(reading, analyser.oxygenStep, analyser.oxygenAccuracy.value_or(Share{}), kPercent);
}

}  // namespace hearth::burner
