// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/file_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace hearth::exchange {
namespace {

constexpr char32_t kNoLetter = 0xFFFD;

/// Windows-1252 from 0x80 to 0x9F; the rest is as ISO 8859-1. 0: no letter. (WHATWG gives the five holes to
/// control characters; in a spreadsheet they mean that the guess is wrong.)
constexpr std::array<char16_t, 32> kWindows1252{
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

std::uint8_t byteAt(std::string_view bytes, std::size_t at) {
    return static_cast<std::uint8_t>(bytes[at]);
}

bool isContinuation(std::string_view text, std::size_t at) {
    return at < text.size() && (byteAt(text, at) & 0xC0U) == 0x80U;
}

/// Length of the sequence that a first byte begins; 0: none begins so.
std::size_t sequenceLength(std::uint8_t first) {
    if (first < 0x80U) {
        return 1;
    }
    if (first >= 0xC2U && first <= 0xDFU) {
        return 2;
    }
    if (first >= 0xE0U && first <= 0xEFU) {
        return 3;
    }
    return first >= 0xF0U && first <= 0xF4U ? 4 : 0;
}

bool isScalar(char32_t letter) {
    return letter <= 0x10FFFFU && (letter < 0xD800U || letter > 0xDFFFU);
}

void keepLetter(FileText& text, char32_t letter) {
    if (letter == 0 || letter == kNoLetter || !isScalar(letter)) {
        ++text.unreadable;
        letter = kNoLetter;
    }
    appendUtf8(text.utf8, letter);
}

void readUtf8(std::string_view bytes, FileText& text) {
    for (std::size_t at = 0; at < bytes.size();) {
        keepLetter(text, takeUtf8(bytes, at));
    }
}

void readWindows1252(std::string_view bytes, FileText& text) {
    for (const char byte : bytes) {
        const auto code = static_cast<std::uint8_t>(byte);
        keepLetter(text, code >= 0x80U && code <= 0x9FU ? kWindows1252[code - 0x80U] : code);
    }
}

void readUtf16(std::string_view bytes, bool little, FileText& text) {
    const auto unitAt = [&](std::size_t at) {
        const char32_t first = byteAt(bytes, at);
        const char32_t second = byteAt(bytes, at + 1);
        return little ? second * 256U + first : first * 256U + second;
    };
    std::size_t at = 0;
    while (at + 1 < bytes.size()) {
        char32_t letter = unitAt(at);
        at += 2;
        if (letter >= 0xD800U && letter <= 0xDBFFU && at + 1 < bytes.size()) {
            const char32_t low = unitAt(at);
            if (low >= 0xDC00U && low <= 0xDFFFU) {
                letter = 0x10000U + (letter - 0xD800U) * 0x400U + (low - 0xDC00U);
                at += 2;
            }
        }
        keepLetter(text, letter);
    }
    if (at < bytes.size()) {
        keepLetter(text, kNoLetter);  // half a letter at the end
    }
}

bool isGoodUtf8(std::string_view bytes) {
    for (std::size_t at = 0; at < bytes.size();) {
        const std::size_t before = at;
        if (takeUtf8(bytes, at) == kNoLetter && at == before + 1) {
            return false;
        }
    }
    return true;
}

/// By the zeros on even and on odd places at the beginning: Latin letters in UTF-16 have one on one side and
/// none on the other, and no other encoding here has any.
Encoding guessUnmarked(std::string_view bytes) {
    constexpr std::size_t kBeginning = 1000;
    std::array<std::size_t, 2> zeros{};
    const std::size_t pairs = std::min(bytes.size(), kBeginning) / 2;
    for (std::size_t at = 0; at < pairs * 2; ++at) {
        zeros[at % 2] += bytes[at] == '\0' ? 1U : 0U;
    }
    if (pairs > 0 && zeros[1] * 4 >= pairs && zeros[0] * 20 < pairs) {
        return Encoding::Utf16Little;
    }
    if (pairs > 0 && zeros[0] * 4 >= pairs && zeros[1] * 20 < pairs) {
        return Encoding::Utf16Big;
    }
    return isGoodUtf8(bytes) ? Encoding::Utf8 : Encoding::Windows1252;
}

struct OrderMark {
    std::string_view bytes;
    Encoding encoding;
};
constexpr std::array kOrderMarks{OrderMark{"\xEF\xBB\xBF", Encoding::Utf8},
                                 OrderMark{"\xFF\xFE", Encoding::Utf16Little},
                                 OrderMark{"\xFE\xFF", Encoding::Utf16Big}};

constexpr std::array<std::pair<Encoding, std::string_view>, 4> kEncodingCodes{
    {{Encoding::Utf8, "utf-8"},
     {Encoding::Utf16Little, "utf-16le"},
     {Encoding::Utf16Big, "utf-16be"},
     {Encoding::Windows1252, "windows-1252"}}};

}  // namespace

void appendUtf8(std::string& to, char32_t letter) {
    if (!isScalar(letter)) {
        letter = kNoLetter;
    }
    const auto add = [&](char32_t value) { to.push_back(static_cast<char>(value)); };
    if (letter < 0x80U) {
        add(letter);
    } else if (letter < 0x800U) {
        add(0xC0U | (letter >> 6U));
        add(0x80U | (letter & 0x3FU));
    } else if (letter < 0x10000U) {
        add(0xE0U | (letter >> 12U));
        add(0x80U | ((letter >> 6U) & 0x3FU));
        add(0x80U | (letter & 0x3FU));
    } else {
        add(0xF0U | (letter >> 18U));
        add(0x80U | ((letter >> 12U) & 0x3FU));
        add(0x80U | ((letter >> 6U) & 0x3FU));
        add(0x80U | (letter & 0x3FU));
    }
}

char32_t takeUtf8(std::string_view text, std::size_t& at) {
    constexpr std::array<char32_t, 5> kLeast{0, 0, 0x80, 0x800, 0x10000};
    constexpr std::array<std::uint8_t, 5> kFirstBits{0, 0x7F, 0x1F, 0x0F, 0x07};
    const std::size_t length = sequenceLength(byteAt(text, at));
    if (length == 0) {
        ++at;
        return kNoLetter;
    }
    char32_t letter = static_cast<std::uint8_t>(byteAt(text, at) & kFirstBits.at(length));
    for (std::size_t i = 1; i < length; ++i) {
        if (!isContinuation(text, at + i)) {
            ++at;
            return kNoLetter;
        }
        letter = letter << 6U | (byteAt(text, at + i) & 0x3FU);
    }
    if (!isScalar(letter) || letter < kLeast.at(length)) {
        ++at;
        return kNoLetter;
    }
    at += length;
    return letter;
}

FileText readFileText(std::string_view bytes, std::optional<Encoding> encoding) {
    FileText text;
    std::optional<Encoding> marked;
    for (const auto& mark : kOrderMarks) {
        if (bytes.substr(0, mark.bytes.size()) == mark.bytes && (!encoding || encoding == mark.encoding)) {
            marked = mark.encoding;
            bytes.remove_prefix(mark.bytes.size());
            break;
        }
    }
    text.marked = marked.has_value();
    text.encoding = encoding ? *encoding : marked ? *marked : guessUnmarked(bytes);
    text.utf8.reserve(bytes.size());
    switch (text.encoding) {
        case Encoding::Utf8:
            readUtf8(bytes, text);
            break;
        case Encoding::Utf16Little:
        case Encoding::Utf16Big:
            readUtf16(bytes, text.encoding == Encoding::Utf16Little, text);
            break;
        case Encoding::Windows1252:
            readWindows1252(bytes, text);
            break;
    }
    return text;
}

std::string_view codeOf(Encoding encoding) {
    for (const auto& [known, code] : kEncodingCodes) {
        if (known == encoding) {
            return code;
        }
    }
    return {};
}

std::optional<Encoding> encodingFromCode(std::string_view code) {
    for (const auto& [encoding, known] : kEncodingCodes) {
        if (known == code) {
            return encoding;
        }
    }
    return std::nullopt;
}

}  // namespace hearth::exchange
