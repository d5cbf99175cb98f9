// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/proof.h"

#include "core/base/blanks.h"
#include "core/record/number_form.h"

#include <algorithm>
#include <charconv>

namespace hearth::record {
namespace {

constexpr std::size_t kDigestLetters = 64;
constexpr std::size_t kLongestNumber = 32;
constexpr std::size_t kLeastDigits = NumberForm::kLeastDigits;

bool isCapital(char c) {
    return c >= 'A' && c <= 'Z';
}
bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isHexDigit(char c) {
    return isDigit(c) || (c >= 'a' && c <= 'f');
}
char capital(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}
char small(char c) {
    return isCapital(c) ? static_cast<char>(c - 'A' + 'a') : c;
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words{{}};
    while (!text.empty()) {
        const std::size_t blank = blankLength(text);
        if (blank > 0 && !words.back().empty()) {
            words.emplace_back();
        } else if (blank == 0) {
            words.back() += text.front();
        }
        text.remove_prefix(blank > 0 ? blank : 1);
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

std::optional<int> wholeNumber(const std::string& text) {
    int number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = read.ec == std::errc() && read.ptr == text.data() + text.size();
    return whole && number > 0 ? std::optional<int>(number) : std::nullopt;
}

/// What numbers are written with: capitals, numerals, hyphens and points (see number_form.h).
bool isOfNumber(char c) {
    return isCapital(c) || isDigit(c) || c == '-' || c == '.';
}

/// Where the digits at the end begin, after a letter and a hyphen; nothing where it does not end so.
std::optional<std::size_t> digitsOf(std::string_view number) {
    const auto hyphen = number.rfind('-');
    const bool formed =
        hyphen != std::string_view::npos && hyphen > 0 && isCapital(number[hyphen - 1]) &&
        hyphen + 1 < number.size() &&
        std::all_of(number.begin() + static_cast<std::ptrdiff_t>(hyphen) + 1, number.end(), isDigit);
    return formed ? std::optional<std::size_t>(hyphen + 1) : std::nullopt;
}

/// Each run of such letters that ends as a number does.
void addNumbers(std::string_view text, std::vector<std::string>& numbers) {
    for (std::size_t at = 0; at < text.size();) {
        std::size_t end = at;
        while (end < text.size() && isOfNumber(text[end])) {
            ++end;
        }
        const std::string_view run = text.substr(at, end - at);
        const auto digits = run.size() <= kLongestNumber ? digitsOf(run) : std::nullopt;
        if (digits && run.size() - *digits >= kLeastDigits &&
            std::find(numbers.begin(), numbers.end(), run) == numbers.end()) {
            numbers.emplace_back(run);
        }
        at = end + 1;
    }
}

/// Every second byte where the others are 0: what UTF-16 has of plain letters.
std::string lettersOfUtf16(std::string_view bytes) {
    std::string letters;
    for (std::size_t i = 0; i + 1 < bytes.size(); ++i) {
        if (bytes[i] == '\0' && bytes[i + 1] != '\0') {
            letters += bytes[i + 1];
            ++i;
        } else if (!letters.empty() && letters.back() != '\n') {
            letters += '\n';
        }
    }
    return letters;
}

std::vector<Mismatch> mismatchesOf(const Claim& claim, const KeptFacts& kept) {
    std::vector<Mismatch> found;
    const auto add = [&](bool wrong, Mismatch what) {
        if (wrong) {
            found.push_back(what);
        }
    };
    add(claim.by == Claim::By::Pdf && claim.digest != kept.header.pdfDigest, Mismatch::PdfDigest);
    add(claim.by == Claim::By::Code && claim.digest != kept.header.snapshotDigest, Mismatch::CodeDigest);
    add(!kept.pdfHolds, Mismatch::KeptPdf);
    add(!kept.snapshotHolds, Mismatch::KeptSnapshot);
    add(!kept.chainHolds, Mismatch::Chain);
    add(kept.signature && !kept.signature->holds, Mismatch::Signature);
    return found;
}

/// Whether what was shown is what was issued. A number shows nothing: what is kept stands for it.
bool isAsIssued(const Claim& claim, const KeptFacts& kept) {
    switch (claim.by) {
        case Claim::By::Pdf:
            return claim.digest == kept.header.pdfDigest;
        case Claim::By::Code:
            return claim.digest == kept.header.snapshotDigest;
        case Claim::By::Number:
            break;
    }
    return kept.pdfHolds && kept.snapshotHolds;
}

Verdict verdictOf(const Claim& claim, const KeptFacts& kept) {
    if (!kept.chainHolds) {
        return Verdict::Unprovable;
    }
    if (!isAsIssued(claim, kept)) {
        return Verdict::Changed;
    }
    if (kept.voided) {
        return Verdict::Void;
    }
    return kept.supersededBy ? Verdict::Superseded : Verdict::Ours;
}

}  // namespace

std::optional<std::string> numberTyped(std::string_view text) {
    std::string number;
    for (const char c : withoutOuterBlanks(text)) {
        number += capital(c);
    }
    const bool formed = number.size() <= kLongestNumber && digitsOf(number) &&
                        std::all_of(number.begin(), number.end(), isOfNumber);
    return formed ? std::optional<std::string>(number) : std::nullopt;
}

bool meansNumber(std::string_view typed, std::string_view number) {
    const auto typedAt = digitsOf(typed);
    const auto numberAt = digitsOf(number);
    if (!typedAt || !numberAt) {
        return false;
    }
    const auto withoutZeros = [](std::string_view digits) {
        return digits.substr(std::min(digits.find_first_not_of('0'), digits.size()));
    };
    const std::string_view letters = number.substr(0, *numberAt);
    const std::string_view typedLetters = typed.substr(0, *typedAt);
    const bool ends = letters.size() >= typedLetters.size() &&
                      letters.substr(letters.size() - typedLetters.size()) == typedLetters;
    // The series' letters are three: fewer would mean several series.
    return ends && typedLetters.size() > 3 &&
           withoutZeros(typed.substr(*typedAt)) == withoutZeros(number.substr(*numberAt));
}

std::optional<Claim> claimOfCode(std::string_view text) {
    const auto words = wordsOf(text);
    if (words.size() != 3) {
        return std::nullopt;
    }
    const auto number = numberTyped(words[0]);
    const auto revision = wholeNumber(words[1]);
    std::string digest = words[2];
    std::transform(digest.begin(), digest.end(), digest.begin(), small);
    if (!number || !revision || digest.size() != kDigestLetters ||
        !std::all_of(digest.begin(), digest.end(), isHexDigit)) {
        return std::nullopt;
    }
    return Claim{Claim::By::Code, {*number, *revision}, digest};
}

std::vector<std::string> numbersNamedIn(std::string_view bytes) {
    std::vector<std::string> numbers;
    addNumbers(bytes, numbers);
    addNumbers(lettersOfUtf16(bytes), numbers);
    return numbers;
}

double likeness(std::string_view one, std::string_view other) {
    const std::size_t longest = std::max(one.size(), other.size());
    if (longest == 0) {
        return 1.0;
    }
    std::size_t same = 0;
    const std::size_t shortest = std::min(one.size(), other.size());
    if (one.size() == other.size()) {
        for (std::size_t i = 0; i < longest; ++i) {
            same += one[i] == other[i] ? 1U : 0U;
        }
    } else {
        std::size_t ahead = 0;
        while (ahead < shortest && one[ahead] == other[ahead]) {
            ++ahead;
        }
        std::size_t behind = 0;
        while (behind < shortest - ahead &&
               one[one.size() - 1 - behind] == other[other.size() - 1 - behind]) {
            ++behind;
        }
        same = ahead + behind;
    }
    return static_cast<double>(same) / static_cast<double>(longest);
}

std::optional<std::size_t> firstDifference(std::string_view one, std::string_view other) {
    const std::size_t shortest = std::min(one.size(), other.size());
    for (std::size_t i = 0; i < shortest; ++i) {
        if (one[i] != other[i]) {
            return i;
        }
    }
    return one.size() == other.size() ? std::nullopt : std::optional<std::size_t>(shortest);
}

Proof proofOf(const Claim& claim, const std::optional<KeptFacts>& kept) {
    Proof proof;
    proof.claim = claim;
    if (kept) {
        proof.kept = kept;
        proof.mismatches = mismatchesOf(claim, *kept);
        proof.verdict = verdictOf(claim, *kept);
    }
    return proof;
}

}  // namespace hearth::record
