// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/register/hand_signature.h"

#include <array>
#include <charconv>
#include <cstddef>
#include <system_error>

namespace hearth::reg {

namespace {

// In the order of their enumerations.
constexpr std::array<std::string_view, 2> kSigners{"engineer", "receiver"};
constexpr std::array<std::string_view, 4> kSignedWays{"not_said", "drawn", "on_paper", "not_present"};

template <class Enum, std::size_t N>
std::optional<Enum> signatureCode(const std::array<std::string_view, N>& codes, std::string_view code) {
    for (std::size_t i = 0; i < N; ++i) {
        if (codes[i] == code) {
            return static_cast<Enum>(i);
        }
    }
    return std::nullopt;
}

std::string tenthsText(int tenths) {
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

/// Digits, a point, one digit: no sign, nothing else.
std::optional<int> tenthsFromText(std::string_view text, int most) {
    const auto point = text.find('.');
    if (point == std::string_view::npos || point == 0 || point + 2 != text.size()) {
        return std::nullopt;
    }
    const std::string digits = std::string(text.substr(0, point)) + std::string(text.substr(point + 1));
    unsigned tenths = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), tenths);
    const bool isWhole = read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    return isWhole && tenths <= static_cast<unsigned>(10 * most) ? std::optional(static_cast<int>(tenths))
                                                                 : std::nullopt;
}

std::optional<PenPoint> penPointFrom(std::string_view text) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) {
        return std::nullopt;
    }
    const auto x = tenthsFromText(text.substr(0, comma), kPadWidth);
    const auto y = tenthsFromText(text.substr(comma + 1), kPadHeight);
    return x && y ? std::optional(PenPoint{*x, *y}) : std::nullopt;
}

/// The part up to `mark`, taken off the front.
std::string_view partBefore(std::string_view& text, char mark) {
    const auto at = text.find(mark);
    const auto part = text.substr(0, at);
    text = at == std::string_view::npos ? std::string_view() : text.substr(at + 1);
    return part;
}

}  // namespace

bool isSigned(const HandSignature& signature) {
    switch (signature.way) {
        case SignedWay::Drawn:
            return !signature.strokes.empty();
        case SignedWay::OnPaper:
            return !signature.name.empty();
        case SignedWay::NotPresent:
            return true;
        case SignedWay::NotSaid:
            break;
    }
    return false;
}

std::string strokesText(const PenStrokes& strokes) {
    std::string text;
    for (const auto& stroke : strokes) {
        if (stroke.empty()) {
            continue;
        }
        text += text.empty() ? "" : ";";
        for (std::size_t i = 0; i < stroke.size(); ++i) {
            text += (i > 0 ? " " : "") + tenthsText(stroke[i].x) + "," + tenthsText(stroke[i].y);
        }
    }
    return text;
}

std::optional<PenStrokes> strokesFromText(std::string_view text) {
    PenStrokes strokes;
    std::size_t count = 0;
    if (!text.empty() && text.back() == ';') {
        return std::nullopt;
    }
    while (!text.empty()) {
        std::string_view left = partBefore(text, ';');
        if (left.empty() || left.back() == ' ') {
            return std::nullopt;
        }
        PenStroke stroke;
        while (!left.empty()) {
            const auto point = penPointFrom(partBefore(left, ' '));
            if (!point || ++count > kMostPenPoints) {
                return std::nullopt;
            }
            stroke.push_back(*point);
        }
        strokes.push_back(std::move(stroke));
    }
    return strokes;
}

std::string_view codeOf(Signer value) {
    return kSigners.at(static_cast<std::size_t>(value));
}
std::string_view codeOf(SignedWay value) {
    return kSignedWays.at(static_cast<std::size_t>(value));
}
std::optional<Signer> signerFromCode(std::string_view code) {
    return signatureCode<Signer>(kSigners, code);
}
std::optional<SignedWay> signedWayFromCode(std::string_view code) {
    return signatureCode<SignedWay>(kSignedWays, code);
}

}  // namespace hearth::reg
