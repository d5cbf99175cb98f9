// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gas/figures.h"

#include <cmath>

namespace hearth::gas {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;

namespace {

std::string shown(double value, UnitCode unit) {
    return std::isfinite(value) ? quantity::show({Decimal::rounded(value, 2), unit}) : std::string("?");
}

}  // namespace

Figure megajoules(double megajoulesPerCubicMetre) {
    return {Decimal::rounded(megajoulesPerCubicMetre, 2), UnitCode::MegajoulePerCubicMetre};
}

Figure densityFigure(double relativeDensity) {
    return {Decimal::rounded(relativeDensity, 3), UnitCode::None};
}

tl::unexpected<Error> outside(double value, double least, double most, UnitCode unit) {
    return fail(ErrorCode::OutOfRange, {shown(value, unit), shown(least, unit), shown(most, unit)});
}

}  // namespace hearth::gas
