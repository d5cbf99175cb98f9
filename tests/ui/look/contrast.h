// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

#include <algorithm>
#include <cmath>

namespace hearth::testing {

/// Relative luminance and contrast ratio as WCAG 2.1 defines them (W3C Recommendation, 5 June 2018, "relative
/// luminance" and "contrast ratio"; thresholds in success criteria 1.4.3, 1.4.6 and 1.4.11).
inline double luminance(const QColor& colour) {
    const auto linear = [](double share) {
        return share <= 0.03928 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

inline double contrast(const QColor& a, const QColor& b) {
    const double brighter = std::max(luminance(a), luminance(b));
    const double darker = std::min(luminance(a), luminance(b));
    return (brighter + 0.05) / (darker + 0.05);
}

}  // namespace hearth::testing
