// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pipework/fittings_text.h"

#include "core/quantity/typed.h"
#include "core/quantity/units.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

namespace hearth::pipework {

namespace {

constexpr int kMostFittings = 999;  // of one kind in one section: more is a slip of the key

struct FittingWord {
    std::string_view word;
    int Fittings::*kind;
};
constexpr std::array kFittingWords{
    FittingWord{"e", &Fittings::elbows},
    FittingWord{"elbow", &Fittings::elbows},
    FittingWord{"elbows", &Fittings::elbows},
    FittingWord{"b", &Fittings::bends},
    FittingWord{"bend", &Fittings::bends},
    FittingWord{"bends", &Fittings::bends},
    FittingWord{"t", &Fittings::tees},
    FittingWord{"tee", &Fittings::tees},
    FittingWord{"tees", &Fittings::tees},
    FittingWord{"x45", &Fittings::bends45},
    FittingWord{"45b", &Fittings::bends45},
    FittingWord{"45bend", &Fittings::bends45},
    FittingWord{"45bends", &Fittings::bends45},
    FittingWord{"45", &Fittings::bends45},
    FittingWord{"45s", &Fittings::bends45},
    FittingWord{"45\u00B0", &Fittings::bends45},
    FittingWord{"45\u00B0bend", &Fittings::bends45},
    FittingWord{"45\u00B0bends", &Fittings::bends45},
};

bool isNumberOfFittings(std::string_view word) {
    return !word.empty() &&
           std::all_of(word.begin(), word.end(), [](char letter) { return letter >= '0' && letter <= '9'; });
}

/// Small letters, parted where blanks, commas and plus signs stand.
std::vector<std::string> wordsOf(std::string_view typed) {
    std::vector<std::string> words(1);
    for (char letter : typed) {
        if (letter == ' ' || letter == ',' || letter == '+' || letter == ';' || letter == '\t') {
            if (!words.back().empty()) {
                words.emplace_back();
            }
            continue;
        }
        words.back() += letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

int Fittings::*kindOfWord(std::string_view word) {
    const auto* found = std::find_if(kFittingWords.begin(), kFittingWords.end(),
                                     [&](const FittingWord& known) { return known.word == word; });
    return found == kFittingWords.end() ? nullptr : found->kind;
}

/// One kind with its number, from one word ("3e", "elbow", "2x45") or more ("3 elbows", "1 45 bend").
class FittingReader {
  public:
    explicit FittingReader(std::vector<std::string> words) : m_words(std::move(words)) {}

    std::optional<Fittings> read() {
        while (m_at < m_words.size()) {
            if (!readOne()) {
                return std::nullopt;
            }
        }
        return m_counts;
    }

  private:
    bool readOne() {
        const std::string word = m_words[m_at];
        const std::string next = m_at + 1 < m_words.size() ? m_words[m_at + 1] : std::string();
        if (word == "45") {
            // One bend of 45 degrees; 45 of another kind is nobody's section.
            const bool ofAnother = kindOfWord(next) != nullptr && kindOfWord(next) != &Fittings::bends;
            return !ofAnother && readKind("1", word);
        }
        if (isNumberOfFittings(word)) {
            ++m_at;
            return readKind(word, next);
        }
        // "3e": the digits before the letters. "45°" alone is no number of degrees signs.
        const auto letters = word.find_first_not_of("0123456789");
        if (kindOfWord(word) != nullptr || letters == 0) {
            return readKind("1", word);
        }
        return readKind(word.substr(0, letters), word.substr(letters));
    }

    /// `word` is the kind; "45" may have its "bend" behind it.
    bool readKind(const std::string& number, std::string word) {
        if (word == "45" || word == "45\u00B0" || word == "x45") {
            const bool named = m_at + 1 < m_words.size() && kindOfWord(m_words[m_at + 1]) == &Fittings::bends;
            m_at += named ? 1 : 0;
        }
        const auto kind = kindOfWord(word);
        if (kind == nullptr || number.size() > 3) {
            return false;
        }
        m_counts.*kind += std::stoi(number);
        ++m_at;
        return m_counts.*kind <= kMostFittings;
    }

    std::vector<std::string> m_words;
    std::size_t m_at = 0;
    Fittings m_counts;
};

/// "1.5 m": a number with a unit of length behind it.
std::optional<quantity::Length> lengthTyped(std::string_view typed) {
    const auto read = quantity::parseTyped(typed, quantity::UnitFamily::Length);
    const auto value = read ? read->value() : Result<quantity::Decimal>(fail(ErrorCode::NumberMissing));
    const bool unitSaid = std::any_of(typed.begin(), typed.end(), [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
    });
    if (!value || !unitSaid || value->toDouble() < 0.0) {
        return std::nullopt;
    }
    return quantity::Length(value->toDouble(), quantity::lengthUnit(read->unit));
}

}  // namespace

FittingsRead readFittings(std::string_view typed) {
    FittingsRead result;
    const auto words = wordsOf(typed);
    if (words.empty()) {
        return result;
    }
    result.said = true;
    if (words.size() == 1 && (words[0] == "none" || words[0] == "0" || words[0] == "no")) {
        return result;
    }
    if (const auto length = lengthTyped(typed)) {
        result.typed = length;
    } else if (const auto counts = FittingReader(words).read()) {
        result.counts = *counts;
    } else {
        result.said = false;
        result.unreadable = true;
    }
    return result;
}

}  // namespace hearth::pipework
