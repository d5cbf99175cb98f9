// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/uncertain.h"

#include <cassert>
#include <cmath>

namespace hearth::quantity {

double rectangular(double halfWidth) {
    return std::abs(halfWidth) / std::sqrt(3.0);
}

Uncertain readOff(double value, double step, double accuracy) {
    return {value, together(rectangular(step / 2.0), rectangular(accuracy))};
}

double together(double a, double b, double c) {
    return std::sqrt(a * a + b * b + c * c);
}

Uncertain operator+(const Uncertain& a, const Uncertain& b) {
    return {a.value + b.value, together(a.u, b.u)};
}

Uncertain operator-(const Uncertain& a, const Uncertain& b) {
    return {a.value - b.value, together(a.u, b.u)};
}

Uncertain operator*(const Uncertain& a, const Uncertain& b) {
    return {a.value * b.value, together(a.u * b.value, b.u * a.value)};
}

Uncertain operator/(const Uncertain& a, const Uncertain& b) {
    assert(b.value != 0.0);
    return {a.value / b.value, together(a.u / b.value, b.u * a.value / (b.value * b.value))};
}

Uncertain operator*(const Uncertain& a, double k) {
    return {a.value * k, std::abs(a.u * k)};
}

Uncertain operator/(const Uncertain& a, double k) {
    assert(k != 0.0);
    return {a.value / k, std::abs(a.u / k)};
}

}  // namespace hearth::quantity
