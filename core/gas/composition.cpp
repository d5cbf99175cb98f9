// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/composition.h"

#include "core/gas/stoichiometry.h"
#include "core/quantity/decimal.h"
#include "core/quantity/units.h"

#include <cmath>
#include <string>

namespace hearth::gas {

/// Fills a Composition part by part; nobody else can.
class CompositionMaker {
  public:
    void add(const Part& part) { m_made.m_fractions[placeOf(part.component)] += part.fraction; }
    void divide(double by) {
        for (auto& fraction : m_made.m_fractions) {
            fraction /= by;
        }
    }
    [[nodiscard]] const Composition& made() const { return m_made; }

  private:
    Composition m_made;
};

namespace {

std::string fractionText(double value) {
    return std::isfinite(value) ? quantity::Decimal::rounded(value, 4).text() : std::string("?");
}

tl::unexpected<Error> fractionOutside(std::string_view what, double value, double least, double most) {
    return fail(ErrorCode::OutOfRange,
                {std::string(what) + " = " + fractionText(value), fractionText(least), fractionText(most)});
}

bool isFraction(double value) {
    return value >= 0.0 && value <= 1.0;  // false for what is no number
}

}  // namespace

Result<Composition> compositionOf(std::span<const Part> parts, Fractions fractions) {
    CompositionMaker maker;
    double sum = 0.0;
    for (const auto& part : parts) {
        if (!isFraction(part.fraction)) {
            return fractionOutside(formulaText(part.component), part.fraction, 0.0, 1.0);
        }
        maker.add(part);
        sum += part.fraction;
    }
    if (fractions == Fractions::Normalised && sum > 0.0) {
        maker.divide(sum);
        return maker.made();
    }
    if (!(std::abs(sum - 1.0) <= kSumTolerance)) {
        return fractionOutside("\u03a3", sum, 1.0 - kSumTolerance, 1.0 + kSumTolerance);
    }
    return maker.made();
}

Result<Composition> propaneAir(quantity::Share propane) {
    const double share = propane.in(quantity::kOne);
    if (!(share > 0.0 && share <= 1.0)) {
        return fractionOutside(formulaText(Component::C3H8), share, 0.0, 1.0);
    }
    const double air = 1.0 - share;
    const std::array parts{Part{Component::C3H8, share}, Part{Component::O2, air * kOxygenInAir},
                           Part{Component::N2, air * (1.0 - kOxygenInAir)}};
    return compositionOf(parts);
}

}  // namespace hearth::gas
