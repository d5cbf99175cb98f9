// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/quantity/typed.h"

#include "core/base/blanks.h"

#include <algorithm>
#include <array>
#include <optional>

namespace hearth::quantity {
namespace {

constexpr std::string_view kNoBreakSpace = "\u00A0";

struct Spelling {
    std::string_view text;
    UnitCode unit;
};

// What people write for a unit besides its text and symbol; small letters without blanks and full stops. A
// word may stand for units of several families: "m" is looked for within the entry's own family only.
constexpr std::array kSpellings{
    Spelling{"mb", UnitCode::Millibar},
    Spelling{"mbars", UnitCode::Millibar},
    Spelling{"millibar", UnitCode::Millibar},
    Spelling{"millibars", UnitCode::Millibar},
    Spelling{"pascal", UnitCode::Pascal},
    Spelling{"pascals", UnitCode::Pascal},
    Spelling{"kilopascal", UnitCode::Kilopascal},
    Spelling{"kilopascals", UnitCode::Kilopascal},
    Spelling{"in", UnitCode::InchWater},
    Spelling{"\"", UnitCode::InchWater},
    Spelling{"\"wg", UnitCode::InchWater},
    Spelling{"inchwg", UnitCode::InchWater},
    Spelling{"incheswg", UnitCode::InchWater},
    Spelling{"inh2o", UnitCode::InchWater},
    Spelling{"inh\u2082o", UnitCode::InchWater},
    Spelling{"mmh2o", UnitCode::MillimetreWater},
    Spelling{"mmh\u2082o", UnitCode::MillimetreWater},
    Spelling{"mmws", UnitCode::MillimetreWater},
    Spelling{"m^3", UnitCode::CubicMetre},
    Spelling{"cum", UnitCode::CubicMetre},
    Spelling{"litre", UnitCode::Litre},
    Spelling{"litres", UnitCode::Litre},
    Spelling{"liter", UnitCode::Litre},
    Spelling{"liters", UnitCode::Litre},
    Spelling{"ltr", UnitCode::Litre},
    Spelling{"dm3", UnitCode::Litre},
    Spelling{"dm\u00B3", UnitCode::Litre},
    Spelling{"ft^3", UnitCode::CubicFoot},
    Spelling{"cuft", UnitCode::CubicFoot},
    Spelling{"cubicfeet", UnitCode::CubicFoot},
    Spelling{"metre", UnitCode::Metre},
    Spelling{"metres", UnitCode::Metre},
    Spelling{"meter", UnitCode::Metre},
    Spelling{"meters", UnitCode::Metre},
    Spelling{"foot", UnitCode::Foot},
    Spelling{"feet", UnitCode::Foot},
    Spelling{"'", UnitCode::Foot},
    Spelling{"sec", UnitCode::Second},
    Spelling{"secs", UnitCode::Second},
    Spelling{"second", UnitCode::Second},
    Spelling{"seconds", UnitCode::Second},
    Spelling{"mins", UnitCode::Minute},
    Spelling{"minute", UnitCode::Minute},
    Spelling{"minutes", UnitCode::Minute},
    Spelling{"m3/hr", UnitCode::CubicMetrePerHour},
    Spelling{"m\u00B3/hr", UnitCode::CubicMetrePerHour},
    Spelling{"m^3/h", UnitCode::CubicMetrePerHour},
    Spelling{"l/hr", UnitCode::LitrePerHour},
    Spelling{"lph", UnitCode::LitrePerHour},
    Spelling{"litres/h", UnitCode::LitrePerHour},
    Spelling{"c", UnitCode::Celsius},
    Spelling{"\u00B0", UnitCode::Celsius},
    Spelling{"celsius", UnitCode::Celsius},
    Spelling{"kelvin", UnitCode::Kelvin},
};

/// Small letters without blanks and full stops, so that "In. W.G." and "inwg" are one.
std::string plain(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        const std::size_t blank = blankLength(text);
        if (blank == 0 && text.front() != '.') {
            const char c = text.front();
            result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
        text.remove_prefix(std::max<std::size_t>(blank, 1));
    }
    return result;
}

bool isCalled(UnitCode unit, std::string_view word) {
    return word == plain(unitText(unit)) || word == plain(unitSymbol(unit)) ||
           std::any_of(kSpellings.begin(), kSpellings.end(), [&](const Spelling& spelling) {
               return spelling.unit == unit && spelling.text == word;
           });
}

std::optional<UnitCode> unitCalled(std::string_view typed, UnitFamily family) {
    const auto units = unitsOf(family);
    const std::string word = plain(typed);
    if (word.empty()) {
        return units.front();
    }
    const auto found =
        std::find_if(units.begin(), units.end(), [&](UnitCode unit) { return isCalled(unit, word); });
    return found == units.end() ? std::nullopt : std::optional(*found);
}

/// Bytes of the sign, digit, mark or blank that `text` begins with; 0 when it begins with something else.
std::size_t numberPieceLength(std::string_view text) {
    if (const std::size_t blank = blankLength(text); blank > 0) {
        return blank;
    }
    if (text.substr(0, kMinusSign.size()) == kMinusSign) {
        return kMinusSign.size();
    }
    return !text.empty() && std::string_view("0123456789.,+-").find(text.front()) != std::string_view::npos
               ? 1
               : 0;
}

}  // namespace

Result<Typed> parseTyped(std::string_view typed, UnitFamily family) {
    std::size_t split = 0;
    while (const std::size_t piece = numberPieceLength(typed.substr(split))) {
        split += piece;
    }
    const std::string_view number = withoutOuterBlanks(typed.substr(0, split));
    const std::string_view unitPart = withoutOuterBlanks(typed.substr(split));
    const auto unit = unitCalled(unitPart, family);
    if (number.empty() && !unit) {
        return fail(ErrorCode::NumberUnreadable, {std::string(typed)});
    }
    if (auto value = Decimal::parse(number); !value) {
        return tl::unexpected(value.error());
    }
    if (!unit) {
        return fail(ErrorCode::UnitUnknown, {std::string(unitPart)});
    }
    return Typed{std::string(number), *unit};
}

std::string show(const Figure& figure, DecimalMark mark, Sign sign) {
    std::string text = figure.value.text();
    if (text.front() == '-') {
        text.replace(0, 1, kMinusSign);
    } else if (sign == Sign::Always) {
        text.insert(0, 1, '+');
    }
    if (mark == DecimalMark::Comma) {
        std::replace(text.begin(), text.end(), '.', ',');
    }
    if (figure.unit != UnitCode::None) {
        text.append(kNoBreakSpace).append(unitSymbol(figure.unit));
    }
    return text;
}

}  // namespace hearth::quantity
