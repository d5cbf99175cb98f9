// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/decimal.h"

#include "core/base/blanks.h"
#include "core/base/digits.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <optional>

namespace hearth::quantity {
namespace {

// Sums of two mantissas at the finer scale need more than 64 bits; both compilers that we use have 128.
__extension__ using Wide = __int128;

constexpr int kMostDigits = 15;  // what a double carries without loss, so toDouble is exact to the last digit
constexpr std::int64_t kMostMantissa = 999'999'999'999'999'999;

Wide powerOfTen(int exponent) {
    Wide power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

Wide scaled(const Decimal& number, int decimals) {
    return Wide{number.mantissa()} * powerOfTen(decimals - number.decimals());
}

bool isMark(char c) {
    return c == '.' || c == ',';
}

/// Takes a sign off the front; true when it is a minus.
bool takeSign(std::string_view& text) {
    if (text.substr(0, kMinusSign.size()) == kMinusSign) {
        text.remove_prefix(kMinusSign.size());
        return true;
    }
    const bool isMinus = !text.empty() && text.front() == '-';
    if (isMinus || (!text.empty() && text.front() == '+')) {
        text.remove_prefix(1);
    }
    return isMinus;
}

/// What is wrong with the digits of a number, sign and outer blanks taken off; nothing when they can be read.
std::optional<ErrorCode> slipIn(std::string_view body) {
    int marks = 0;
    int digits = 0;
    bool hasInnerBlank = false;
    for (std::string_view rest = body; !rest.empty();) {
        if (const std::size_t blank = blankLength(rest); blank > 0) {
            hasInnerBlank = true;
            rest.remove_prefix(blank);
            continue;
        }
        digits += isDigit(rest.front()) ? 1 : 0;
        marks += isMark(rest.front()) ? 1 : 0;
        if (!isDigit(rest.front()) && !isMark(rest.front())) {
            return ErrorCode::NumberUnreadable;
        }
        rest.remove_prefix(1);
    }
    if (digits == 0) {
        return ErrorCode::NumberUnreadable;
    }
    if (marks > 1 || hasInnerBlank) {
        return ErrorCode::NumberAmbiguous;
    }
    return std::nullopt;
}

/// The common case, without going through text: a value whose scaled fraction lies so far from a half that
/// its last binary digits can't turn the rounding. Nothing for all others.
std::optional<std::int64_t> plainlyRounded(double magnitude, int decimals) {
    constexpr std::array<double, 10> kPowers{1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
    constexpr double kMost = 1e9;  // below it, 15 digits are good to 5e-6 of the last decimal
    constexpr double kClear = 1e-5;
    if (decimals >= static_cast<int>(kPowers.size())) {
        return std::nullopt;
    }
    const double scaled = magnitude * kPowers[static_cast<std::size_t>(decimals)];
    const double whole = std::floor(scaled);
    const double fraction = scaled - whole;
    if (!(scaled < kMost) || std::fabs(fraction - 0.5) < kClear) {
        return std::nullopt;
    }
    return static_cast<std::int64_t>(whole) + (fraction > 0.5 ? 1 : 0);
}

}  // namespace

Result<Decimal> Decimal::parse(std::string_view typed) {
    const auto failure = [typed](ErrorCode code) { return fail(code, {std::string(typed)}); };
    std::string_view body = withoutOuterBlanks(typed);
    if (body.empty()) {
        return fail(ErrorCode::NumberMissing);
    }
    const bool isNegative = takeSign(body);
    if (!body.empty() && blankLength(body) > 0) {
        return failure(ErrorCode::NumberUnreadable);
    }
    if (const auto slip = slipIn(body)) {
        return failure(*slip);
    }
    const std::size_t mark = std::min(body.find_first_of(".,"), body.size());
    const std::string_view decimals = mark < body.size() ? body.substr(mark + 1) : std::string_view{};
    std::string digits = std::string(body.substr(0, mark)) + std::string(decimals);
    digits.erase(0, std::min(digits.find_first_not_of('0'), digits.size()));
    if (digits.size() > kMostDigits || decimals.size() > kMostDigits) {
        return failure(ErrorCode::NumberTooLong);
    }
    std::int64_t mantissa = 0;
    for (const char digit : digits) {
        mantissa = mantissa * 10 + (digit - '0');
    }
    return Decimal(isNegative ? -mantissa : mantissa, static_cast<int>(decimals.size()));
}

Decimal Decimal::rounded(double value, int decimals) {
    assert(std::isfinite(value));
    assert(decimals >= 0 && decimals <= kMostDigits);
    if (const auto plain = plainlyRounded(std::fabs(value), decimals)) {
        return Decimal(std::signbit(value) ? -*plain : *plain, decimals);
    }
    // A double is read as its 15 digits first: 1.005 is then a half, and not the 1.00499999999999989 beneath
    // it.
    std::array<char, 32> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%.*e", kMostDigits - 1, std::fabs(value));
    std::int64_t mantissa = 0;
    const char* at = buffer.data();
    for (; *at != '\0' && *at != 'e'; ++at) {
        mantissa = isDigit(*at) ? mantissa * 10 + (*at - '0') : mantissa;
    }
    // value = mantissa x 10^exponent
    const int exponent = (*at == 'e' ? std::atoi(at + 1) : 0) - (kMostDigits - 1);
    const int shift = exponent + decimals;
    const bool isTooLarge = !std::isfinite(value) || (mantissa != 0 && shift > 3);
    Wide scaledUp = kMostMantissa;  // a value past all reason is shown so, never as a plausible figure
    if (!isTooLarge && shift >= 0) {
        scaledUp = mantissa == 0 ? Wide{0} : Wide{mantissa} * powerOfTen(shift);
    } else if (!isTooLarge) {
        const Wide divisor = powerOfTen(std::min(-shift, 2 * kMostDigits));
        scaledUp = (Wide{mantissa} + divisor / 2) / divisor;
    }
    const auto result = static_cast<std::int64_t>(scaledUp);
    return Decimal(std::signbit(value) ? -result : result, decimals);
}

std::string Decimal::text() const {
    std::string digits = std::to_string(m_mantissa);
    const bool isNegative = digits.front() == '-';
    if (isNegative) {
        digits.erase(0, 1);
    }
    const auto places = static_cast<std::size_t>(m_decimals);
    if (digits.size() <= places) {
        digits.insert(0, places + 1 - digits.size(), '0');
    }
    if (places > 0) {
        digits.insert(digits.size() - places, 1, '.');
    }
    return isNegative ? '-' + digits : digits;
}

double Decimal::toDouble() const {
    // Both are exact as doubles up to 2^53 and 10^22, so the quotient is the nearest double to the decimal.
    return static_cast<double>(m_mantissa) / static_cast<double>(powerOfTen(m_decimals));
}

double Decimal::lastDigit() const {
    return 1.0 / static_cast<double>(powerOfTen(m_decimals));
}

Decimal operator-(const Decimal& a, const Decimal& b) {
    int decimals = std::max(a.m_decimals, b.m_decimals);
    Wide difference = scaled(a, decimals) - scaled(b, decimals);
    while ((difference > kMostMantissa || difference < -kMostMantissa) && decimals > 0) {
        difference = (difference + (difference < 0 ? -5 : 5)) / 10;
        --decimals;
    }
    return Decimal(static_cast<std::int64_t>(difference), decimals);
}

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b) {
    const int decimals = std::max(a.m_decimals, b.m_decimals);
    const Wide left = scaled(a, decimals);
    const Wide right = scaled(b, decimals);
    if (left == right) {
        return std::strong_ordering::equal;
    }
    return left < right ? std::strong_ordering::less : std::strong_ordering::greater;
}

bool operator==(const Decimal& a, const Decimal& b) {
    return std::is_eq(a <=> b);
}

}  // namespace hearth::quantity
