// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/checks.h"

#include "core/base/blanks.h"
#include "core/register/forms.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace hearth::reg {
namespace {

bool isNumeral(char c) {
    return c >= '0' && c <= '9';
}

bool areNumerals(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), isNumeral);
}

/// The text without blanks and without the marks in `marks`.
std::string without(std::string_view text, std::string_view marks) {
    std::string kept;
    while (!text.empty()) {
        if (const std::size_t blank = blankLength(text)) {
            text.remove_prefix(blank);
            continue;
        }
        if (marks.find(text.front()) == std::string_view::npos) {
            kept += text.front();
        }
        text.remove_prefix(1);
    }
    return kept;
}

/// Doubted when something was typed and `fits` says no.
std::optional<Doubt> doubtUnless(std::string_view typed, bool fits, Doubt doubt) {
    return fits || withoutOuterBlanks(typed).empty() ? std::nullopt : std::optional<Doubt>(doubt);
}

// Telephone numbers ----------------------------------------------------------------------------------------

/// Area codes of five digits, without their 0.
constexpr std::array<std::string_view, 12> kLongAreas{"13873", "15242", "15394", "15395", "15396", "16973",
                                                      "16974", "16977", "17683", "17684", "17687", "19467"};

/// How many digits stand before the first blank, the 0 left out.
std::size_t areaLength(std::string_view digits) {
    if (std::any_of(kLongAreas.begin(), kLongAreas.end(),
                    [&](std::string_view area) { return digits.substr(0, area.size()) == area; })) {
        return 5;
    }
    if (digits[0] == '2') {
        return 2;
    }
    const bool isCity = digits[0] == '1' && (digits[1] == '1' || digits[2] == '1');
    return isCity || digits[0] == '3' || digits[0] == '8' || digits[0] == '9' ? 3 : 4;
}

}  // namespace

std::optional<Doubt> doubtOfMprn(std::string_view typed, rulebook::Gas gas) {
    const std::string number = without(typed, "");
    if (number.empty()) {
        return std::nullopt;
    }
    if (gas != rulebook::Gas::NaturalGas) {
        return Doubt::MprnOfLpg;
    }
    if (!areNumerals(number)) {
        return Doubt::MprnForm;
    }
    constexpr std::size_t kLeast = 6;
    constexpr std::size_t kMost = 11;
    if (number.size() < kLeast || number.size() > kMost) {
        return Doubt::MprnLength;
    }
    return doubtUnless(typed, isMprn(number), Doubt::MprnCheckDigits);
}

std::optional<Doubt> doubtOfPostcode(std::string_view typed) {
    const std::string code = without(typed, "-.");
    const bool isForces = (code.substr(0, 4) == "BFPO" || code.substr(0, 4) == "bfpo") &&
                          areNumerals(std::string_view(code).substr(4));
    return doubtUnless(typed, isForces || postcodeIn(code), Doubt::PostcodeForm);
}

std::string telephoneNational(std::string_view e164) {
    constexpr std::string_view kHome = "+44";
    if (e164.substr(0, kHome.size()) != kHome || telephoneE164(e164) != std::string(e164)) {
        return std::string(e164);
    }
    const std::string digits(e164.substr(kHome.size()));
    const std::size_t area = areaLength(digits);
    const std::string rest = digits.substr(area);
    const std::string first = "0" + digits.substr(0, area) + " ";
    if (area == 2) {
        return first + rest.substr(0, 4) + " " + rest.substr(4);
    }
    return area == 3 && rest.size() == 7 ? first + rest.substr(0, 3) + " " + rest.substr(3) : first + rest;
}

std::optional<Doubt> doubtOfTelephone(std::string_view typed) {
    return doubtUnless(typed, telephoneE164(typed).has_value(), Doubt::TelephoneForm);
}

std::optional<std::string> gcNumberOf(std::string_view typed) {
    const std::string digits = without(typed, "-");
    return areNumerals(digits) && digits.size() == 7
               ? std::optional<std::string>(digits.substr(0, 2) + "-" + digits.substr(2, 3) + "-" +
                                            digits.substr(5))
               : std::nullopt;
}

std::optional<Doubt> doubtOfGcNumber(std::string_view typed) {
    return doubtUnless(typed, gcNumberOf(typed).has_value(), Doubt::GcNumberForm);
}

std::optional<Doubt> doubtOfUprn(std::string_view typed) {
    const std::string digits = without(typed, "");
    return doubtUnless(typed, isUprn(digits), Doubt::UprnForm);
}

}  // namespace hearth::reg
