// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/analysis.h"

#include <cmath>
#include <vector>

namespace hearth::gas {

namespace {

struct SquaredDigits {
    double gross = 0.0;
    double relativeDensity = 0.0;
    double grossWobbe = 0.0;

    void add(const Properties& moved, const Properties& as) {
        gross += std::pow(moved.gross.base() - as.gross.base(), 2);
        relativeDensity += std::pow(moved.relativeDensity - as.relativeDensity, 2);
        grossWobbe += std::pow(moved.grossWobbe.base() - as.grossWobbe.base(), 2);
    }
};

std::vector<Part> partsOf(std::span<const AnalysedPart> analysedParts) {
    std::vector<Part> parts;
    parts.reserve(analysedParts.size());
    for (const auto& part : analysedParts) {
        parts.push_back({part.component, part.fraction});
    }
    return parts;
}

}  // namespace

Result<Analysis> analysed(std::span<const AnalysedPart> parts) {
    const auto fractions = partsOf(parts);
    const auto composition = compositionOf(fractions);
    if (!composition) {
        return tl::unexpected(composition.error());
    }
    const Properties as = properties(*composition);
    SquaredDigits squares;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto moved = fractions;
        moved[i].fraction += parts[i].digit;
        for (auto& part : moved) {
            part.fraction /= 1.0 + parts[i].digit;  // so that the sum stays what it was, or nearly
        }
        const auto other = compositionOf(moved);
        if (!other) {
            return tl::unexpected(other.error());
        }
        squares.add(properties(*other), as);
    }
    return Analysis{
        *composition,
        {as.gross, quantity::GrossHeatValue::fromBase(std::sqrt(squares.gross))},
        {as.relativeDensity, std::sqrt(squares.relativeDensity)},
        {as.grossWobbe, GrossWobbe::fromBase(std::sqrt(squares.grossWobbe))},
    };
}

std::optional<Stated<GrossWobbe>> wobbeStated(const Stated<quantity::GrossHeatValue>& gross,
                                              const Stated<double>& relativeDensity) {
    const auto wobbe = wobbeOf(gross.value, relativeDensity.value);
    if (!wobbe || !(gross.value.base() > 0.0)) {
        return std::nullopt;
    }
    const double part = std::hypot(gross.digit.base() / gross.value.base(),
                                   relativeDensity.digit / (2.0 * relativeDensity.value));
    return Stated<GrossWobbe>{*wobbe, GrossWobbe::fromBase(wobbe->base() * part)};
}

}  // namespace hearth::gas
