// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/emergency.h"

#include "core/base/blanks.h"

#include <algorithm>

namespace hearth::reg {
namespace {

using rulebook::Gas;

constexpr std::size_t kLeastDigits = 3;
constexpr std::size_t kMostDigits = 15;
constexpr std::size_t kMostSigns = 20;

std::string digitsOf(std::string_view number) {
    std::string digits;
    std::copy_if(number.begin(), number.end(), std::back_inserter(digits),
                 [](char c) { return c >= '0' && c <= '9'; });
    return digits;
}

}  // namespace

std::string_view networkNumber(Country country, Gas gas) {
    return gas == Gas::NaturalGas && country != Country::NorthernIreland ? "0800 111 999"
                                                                         : std::string_view();
}

bool isLpg(Gas gas) {
    return gas != Gas::NaturalGas;
}

bool canBeDialled(std::string_view number) {
    const std::string_view inner = withoutOuterBlanks(number);
    const std::string_view afterPlus = inner.substr(0, 1) == "+" ? inner.substr(1) : inner;
    const std::size_t digits = digitsOf(inner).size();
    return inner.size() <= kMostSigns && digits >= kLeastDigits && digits <= kMostDigits &&
           afterPlus.find_first_not_of("0123456789 ()-") == std::string_view::npos;
}

std::vector<EmergencyLine> linesToRing(const std::vector<EmergencyContact>& contacts, Country country,
                                       Gas gas) {
    std::vector<EmergencyLine> lines;
    const std::string network(networkNumber(country, gas));
    if (!network.empty()) {
        lines.push_back({network, {}, true});
    }
    for (const auto& contact : contacts) {
        if (contact.country == country && contact.gas == gas && canBeDialled(contact.number) &&
            digitsOf(contact.number) != digitsOf(network)) {
            lines.push_back({std::string(withoutOuterBlanks(contact.number)), contact.name, false});
        }
    }
    return lines;
}

}  // namespace hearth::reg
