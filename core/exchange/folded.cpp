// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/folded.h"

#include "core/exchange/file_text.h"

#include <algorithm>

namespace hearth::exchange {
namespace {

/// From U+00C0 to U+017F; a blank for what is no letter.
constexpr std::string_view kBaseLetters =
    "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo ouuuuyty"
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllll"
    "lllnnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
constexpr char32_t kFirstBase = 0xC0;
constexpr char32_t kNoBreak = 0xA0;
constexpr char32_t kLastPunctuation = 0x206F;
constexpr char32_t kFirstPunctuation = 0x2000;
constexpr char32_t kRightQuote = 0x2019;

bool isApostrophe(char32_t letter) {
    return letter == U'\'' || letter == kRightQuote;
}

/// The letter as it is compared; 0 for a blank.
char32_t foldedLetter(char32_t letter) {
    if (letter >= U'A' && letter <= U'Z') {
        return letter - U'A' + U'a';
    }
    if ((letter >= U'a' && letter <= U'z') || (letter >= U'0' && letter <= U'9')) {
        return letter;
    }
    if (letter >= kFirstBase && letter < kFirstBase + kBaseLetters.size()) {
        const char base = kBaseLetters[letter - kFirstBase];
        return base == ' ' ? 0 : static_cast<unsigned char>(base);
    }
    const bool isPunctuation =
        letter < kFirstBase || (letter >= kFirstPunctuation && letter <= kLastPunctuation);
    return isPunctuation ? 0 : letter;
}

bool isBlank(char32_t letter) {
    return letter == U' ' || (letter >= U'\t' && letter <= U'\r') || letter == kNoBreak;
}

}  // namespace

std::string folded(std::string_view text) {
    std::string plain;
    bool gap = false;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t read = takeUtf8(text, at);
        if (isApostrophe(read)) {
            continue;
        }
        const char32_t letter = foldedLetter(read);
        if (letter == 0) {
            gap = !plain.empty();
            continue;
        }
        plain.append(gap ? " " : "");
        gap = false;
        appendUtf8(plain, letter);
    }
    return plain;
}

std::vector<std::string> foldedWords(std::string_view text) {
    std::vector<std::string> words;
    const std::string plain = folded(text);
    for (std::size_t at = 0; at < plain.size();) {
        const std::size_t end = std::min(plain.find(' ', at), plain.size());
        words.push_back(plain.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

std::string tidied(std::string_view text) {
    std::string tidy;
    bool gap = false;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t letter = takeUtf8(text, at);
        if (isBlank(letter)) {
            gap = !tidy.empty();
            continue;
        }
        tidy.append(gap ? " " : "");
        gap = false;
        appendUtf8(tidy, letter);
    }
    return tidy;
}

}  // namespace hearth::exchange
