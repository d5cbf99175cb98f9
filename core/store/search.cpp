// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/search.h"

#include "core/store/bridge.h"
#include "core/store/tables.h"

#include <QString>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace hearth::store {
namespace {

std::string_view kindName(Indexed kind) {
    constexpr std::array<std::string_view, 3> kNames{"premises", "party", "record"};
    return kNames.at(static_cast<std::size_t>(kind));
}

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

/// The words to look for: those of the text, each once, without the parts of O'Brien.
std::set<std::string> wholeWords(std::string_view text) {
    std::set<std::string> words;
    for (const auto& piece : pieces(folded(text))) {
        words.insert(fromQt(withoutApostrophes(piece)));
    }
    words.erase(std::string());
    return words;
}

void addWords(std::set<std::string>& words, std::string_view text) {
    for (auto& word : searchWords(text)) {
        words.insert(std::move(word));
    }
}

/// A postcode is looked for with its blank and without.
void addPostcode(std::set<std::string>& words, const std::string& postcode) {
    addWords(words, postcode);
    std::string joined;
    for (const auto& piece : pieces(folded(postcode))) {
        joined += fromQt(withoutApostrophes(piece));
    }
    words.insert(joined);
}

void addAddress(std::set<std::string>& words, const reg::Address& address) {
    addWords(words, address.line1);
    addWords(words, address.line2);
    addWords(words, address.town);
    addPostcode(words, address.postcode);
}

}  // namespace

std::vector<std::string> searchWords(std::string_view text) {
    std::set<std::string> words = wholeWords(text);
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

std::vector<std::string> addressWords(const reg::Address& address) {
    std::set<std::string> words;
    addAddress(words, address);
    words.erase(std::string());
    return {words.begin(), words.end()};
}

void setWords(Connection& db, Indexed kind, const UuidBytes& row, const std::vector<std::string>& words) {
    const Cell name = std::string(kindName(kind));
    db.run("DELETE FROM search_words WHERE row = ? AND kind = ?", {row, name});
    for (const auto& word : words) {
        if (!word.empty()) {
            db.run("INSERT OR IGNORE INTO search_words (kind, word, row) VALUES (?, ?, ?)",
                   {name, word, row});
        }
    }
}

void refreshPremisesWords(Connection& db, const UuidBytes& premises) {
    std::set<std::string> words;
    for (const auto& found : valuesWhere<reg::Premises>(db, "WHERE t.id = ?", {premises})) {
        addAddress(words, found.address);
    }
    for (const auto& holder : valuesWhere<reg::Party>(
             db, "WHERE t.id IN (SELECT party FROM roles WHERE premises = ? AND until IS NULL)",
             {premises})) {
        addWords(words, holder.name);
    }
    setWords(db, Indexed::Premises, premises, {words.begin(), words.end()});
}

void refreshPartyWords(Connection& db, const UuidBytes& party) {
    std::set<std::string> words;
    for (const auto& found : valuesWhere<reg::Party>(db, "WHERE t.id = ?", {party})) {
        addWords(words, found.name);
        addAddress(words, found.address);
        addWords(words, found.email);
        addPostcode(words, found.telephone);  // a number too is typed with blanks or without
    }
    setWords(db, Indexed::Party, party, {words.begin(), words.end()});
}

std::string matching(Indexed kind, std::string_view search, std::string_view column, Cells& values) {
    std::string condition;
    for (const auto& word : wholeWords(search)) {
        condition += condition.empty() ? "" : " AND ";
        condition.append(column).append(
            " IN (SELECT row FROM search_words WHERE kind = ? AND word >= ? AND word < ?)");
        values.emplace_back(std::string(kindName(kind)));
        values.emplace_back(word);
        values.emplace_back(word + "\U0010FFFF");  // after every word that begins so
    }
    return condition.empty() ? "TRUE" : condition;
}

}  // namespace hearth::store
