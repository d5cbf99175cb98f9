// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/search.h"

#include "core/store/bridge.h"

#include <QString>

#include <algorithm>
#include <array>
#include <cctype>
#include <set>
#include <utility>

namespace hearth::store {
namespace {

/// Letters that Unicode does not take apart into a letter and an accent.
QString plainLetter(QChar letter) {
    constexpr std::array<std::pair<char16_t, const char*>, 8> kPlain{{
        {u'\u0142', "l"},   // ł
        {u'\u00F8', "o"},   // ø
        {u'\u0111', "d"},   // đ
        {u'\u00E6', "ae"},  // æ
        {u'\u0153', "oe"},  // œ
        {u'\u00FE', "th"},  // þ
        {u'\u00F0', "d"},   // ð
        {u'\u00DF', "ss"},  // ß
    }};
    for (const auto& [special, plain] : kPlain) {
        if (letter.unicode() == special) {
            return QString::fromLatin1(plain);
        }
    }
    return letter;
}

bool isApostrophe(QChar c) {
    return c == QLatin1Char('\'') || c == QLatin1Char('`') || c == QChar(0x2019) || c == QChar(0x2018);
}

QString folded(std::string_view text) {
    QString plain;
    const QString apart = toQt(text).normalized(QString::NormalizationForm_KD).toCaseFolded();
    for (const QChar c : apart) {
        if (!c.isMark()) {
            plain += plainLetter(c);
        }
    }
    return plain;
}

/// Splits at everything that is neither a letter, a digit nor an apostrophe.
std::vector<QString> pieces(const QString& text) {
    std::vector<QString> found(1);
    for (const QChar c : text) {
        if (c.isLetterOrNumber() || c.isSurrogate() || isApostrophe(c)) {
            found.back() += c;
        } else {
            found.emplace_back();
        }
    }
    return found;
}

QString withoutApostrophes(QString word) {
    return word.removeIf(isApostrophe);
}

bool isDigits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
}

bool begins(std::string_view text, std::string_view with) {
    return text.substr(0, with.size()) == with;
}

}  // namespace

std::vector<std::string> typedWords(std::string_view text) {
    std::vector<std::string> words;
    for (const auto& piece : pieces(folded(text))) {
        if (auto word = fromQt(withoutApostrophes(piece)); !word.empty()) {
            words.push_back(std::move(word));
        }
    }
    return words;
}

std::vector<std::string> searchWords(std::string_view text) {
    const auto typed = typedWords(text);
    std::set<std::string> words(typed.begin(), typed.end());
    QString parts = folded(text);
    for (QChar& c : parts) {
        c = isApostrophe(c) ? QChar(u' ') : c;
    }
    for (const auto& piece : pieces(parts)) {
        words.insert(fromQt(piece));
    }
    words.erase(std::string());
    return {words.begin(), words.end()};
}

std::string joinedWord(std::string_view text) {
    std::string joined;
    for (const auto& word : typedWords(text)) {
        joined += word;
    }
    return joined;
}

std::string nationalDigits(std::string_view digits) {
    constexpr std::size_t kShortest = 5;  // of which something is known beyond the country's code
    for (const std::string_view country : {"0044", "44"}) {
        if (begins(digits, country) && digits.size() >= country.size() + kShortest - 2) {
            digits.remove_prefix(country.size());
            digits.remove_prefix(begins(digits, "0") ? 1 : 0);
            return "0" + std::string(digits);
        }
    }
    return std::string(digits);
}

void SearchDocument::addWord(SearchField field, std::string word) {
    if (!word.empty()) {
        m_words.at(static_cast<std::size_t>(field)).insert(std::move(word));
    }
}

void SearchDocument::add(SearchField field, std::string_view text) {
    for (auto& word : searchWords(text)) {
        addWord(field, std::move(word));
    }
}

void SearchDocument::addAddress(const reg::Address& address) {
    add(SearchField::Streets, address.line1);
    add(SearchField::Streets, address.line2);
    add(SearchField::Towns, address.town);
    add(SearchField::Towns, address.postcode);
    addWord(SearchField::Towns, joinedWord(address.postcode));
}

void SearchDocument::addNumber(std::string_view text) {
    add(SearchField::Numbers, text);
    addWord(SearchField::Numbers, joinedWord(text));
}

void SearchDocument::addTelephone(std::string_view text) {
    add(SearchField::Numbers, text);
    const std::string digits = joinedWord(text);
    const std::string national = isDigits(digits) ? nationalDigits(digits) : digits;
    addWord(SearchField::Numbers, national);
    if (begins(national, "0")) {
        addWord(SearchField::Numbers, national.substr(1));
    }
}

void SearchDocument::addRecordNumber(std::string_view text) {
    addNumber(text);
    const std::size_t hyphen = text.find('-');
    if (hyphen == std::string_view::npos) {
        return;
    }
    const std::string_view digits = text.substr(hyphen + 1);
    const std::string bare(digits.substr(std::min(digits.find_first_not_of('0'), digits.size())));
    addWord(SearchField::Numbers, bare);
    addWord(SearchField::Numbers, joinedWord(text.substr(0, hyphen)) + bare);
}

bool SearchDocument::isEmpty() const {
    return std::all_of(m_words.begin(), m_words.end(), [](const auto& words) { return words.empty(); });
}

}  // namespace hearth::store
