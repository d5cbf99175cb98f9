// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/forms.h"

#include <algorithm>

namespace hearth::reg {
namespace {

bool isFormDigit(char letter) {
    return letter >= '0' && letter <= '9';
}
bool isFormLetter(char letter) {
    return letter >= 'A' && letter <= 'Z';
}
bool isOneOf(char letter, std::string_view letters) {
    return letters.find(letter) != std::string_view::npos;
}

/// Letters as A, digits as 9: "LS1" is "AA9".
std::string shapeOf(std::string_view text) {
    std::string shape;
    for (const char letter : text) {
        shape.push_back(isFormDigit(letter) ? '9' : isFormLetter(letter) ? 'A' : '?');
    }
    return shape;
}

bool isOutward(std::string_view text) {
    const std::string shape = shapeOf(text);
    if (text.empty() || isOneOf(text[0], "QVX") ||
        (shape.size() > 1 && shape[1] == 'A' && isOneOf(text[1], "IJZ"))) {
        return false;
    }
    if (shape == "A9A") {
        return isOneOf(text[2], "ABCDEFGHJKPSTUW");
    }
    if (shape == "AA9A") {
        return isOneOf(text[3], "ABEHMNPRVWXY");
    }
    return shape == "A9" || shape == "A99" || shape == "AA9" || shape == "AA99";
}

bool isInward(std::string_view text) {
    return shapeOf(text) == "9AA" && !isOneOf(text[1], "CIKMOV") && !isOneOf(text[2], "CIKMOV");
}

bool isDigits(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), isFormDigit);
}

/// Without what people write between the digits; nothing where a letter stands there.
std::optional<std::string> dialled(std::string_view text) {
    std::string digits;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char letter = text[at];
        if (isFormDigit(letter) || (letter == '+' && digits.empty())) {
            if (text.substr(at > 0 ? at - 1 : 0, 3) == "(0)" && !digits.empty()) {
                continue;  // "+44 (0)113": the 0 is not dialled from abroad
            }
            digits.push_back(letter);
        } else if (!isOneOf(letter, " ()-./")) {
            return std::nullopt;
        }
    }
    return digits;
}

}  // namespace

std::optional<std::string> postcodeIn(std::string_view text) {
    constexpr std::size_t kInward = 3;
    std::string letters;
    for (const char letter : text) {
        if (letter >= 'a' && letter <= 'z') {
            letters.push_back(static_cast<char>(letter - 'a' + 'A'));
        } else if (isFormDigit(letter) || isFormLetter(letter)) {
            letters.push_back(letter);
        } else if (!isOneOf(letter, " \t-.")) {
            return std::nullopt;
        }
    }
    if (letters.size() <= kInward) {
        return std::nullopt;
    }
    const std::string outward = letters.substr(0, letters.size() - kInward);
    const std::string inward = letters.substr(letters.size() - kInward);
    const bool girobank = outward == "GIR" && inward == "0AA";
    return girobank || (isOutward(outward) && isInward(inward)) ? std::optional(outward + ' ' + inward)
                                                                : std::nullopt;
}

std::optional<std::string> telephoneE164(std::string_view text) {
    constexpr std::size_t kMost = 15;
    constexpr std::size_t kLeast = 8;
    auto digits = dialled(text);
    if (!digits) {
        return std::nullopt;
    }
    std::string number = *digits;
    if (number.substr(0, 2) == "00") {
        number = '+' + number.substr(2);
    } else if (number.substr(0, 1) == "0") {
        number = "+44" + number.substr(1);
    }
    if (number.substr(0, 1) != "+") {
        return std::nullopt;
    }
    const std::string_view rest = std::string_view(number).substr(1);
    if (!isDigits(rest) || rest.size() > kMost || rest.size() < kLeast || rest[0] == '0') {
        return std::nullopt;
    }
    const bool british = rest.substr(0, 2) == "44";
    const bool right = !british || ((rest.size() == 11 || rest.size() == 12) && rest[2] != '0');
    return right ? std::optional(number) : std::nullopt;
}

bool isUprn(std::string_view text) {
    return isDigits(text) && text.size() <= 12;
}

bool isMprn(std::string_view text) {
    if (!isDigits(text) || text.size() < 6 || text.size() > 11) {
        return false;
    }
    const std::string_view body = text.substr(0, text.size() - 2);
    int sum = 0;
    int weight = static_cast<int>(body.size());
    for (const char digit : body) {
        sum += (digit - '0') * weight--;
    }
    const int check = (text[text.size() - 2] - '0') * 10 + (text.back() - '0');
    return sum % 11 == check;
}

}  // namespace hearth::reg
