// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/line_pattern.h"

#include "core/exchange/folded.h"
#include "core/exchange/trace_columns.h"

#include <algorithm>
#include <array>

namespace hearth::exchange {
namespace {

using Kind = LineMatcher::Kind;
using Piece = LineMatcher::Piece;
using Pieces = std::vector<Piece>;
using quantity::Decimal;
using quantity::DecimalMark;
using quantity::UnitCode;
using quantity::UnitFamily;

constexpr std::string_view kDegreeOfOldMachines = "\xB0";  // in Latin-1; as UTF-8 it would be two bytes

bool isPatternBlank(char c) {
    return c == ' ' || c == '\t';
}
bool isPatternDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isPatternLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '%' ||
           static_cast<unsigned char>(c) >= 0x80;
}
bool isUnitByte(char c) {
    return isPatternLetter(c) || isPatternDigit(c) || c == '/' || c == '"';
}

char patternByte(std::string_view line, std::size_t at) {
    return at < line.size() ? line[at] : '\n';  // no line holds one
}

std::size_t pastBlanks(std::string_view line, std::size_t at) {
    while (isPatternBlank(patternByte(line, at))) {
        ++at;
    }
    return at;
}

/// Bytes of a sign at `at`; 0: none.
std::size_t signLength(std::string_view line, std::size_t at) {
    if (line.substr(at, quantity::kMinusSign.size()) == quantity::kMinusSign) {
        return quantity::kMinusSign.size();
    }
    const char c = patternByte(line, at);
    return c == '+' || c == '-' ? 1 : 0;
}

struct FieldName {
    std::string_view name;
    Kind kind;
};
constexpr std::array kPatternFields{
    FieldName{"value", Kind::Value},   FieldName{"unit", Kind::Unit},
    FieldName{"second", Kind::Second}, FieldName{"second unit", Kind::SecondUnit},
    FieldName{"time", Kind::Time},     FieldName{"skip", Kind::Skip},
};

bool isField(Kind kind) {
    return kind != Kind::Text && kind != Kind::Blank;
}

/// A unit may stand at its number without a blank.
bool belongTogether(Kind first, Kind second) {
    return (first == Kind::Value && second == Kind::Unit) ||
           (first == Kind::Second && second == Kind::SecondUnit);
}

bool has(const Pieces& pieces, Kind kind) {
    return std::any_of(pieces.begin(), pieces.end(), [&](const Piece& piece) { return piece.kind == kind; });
}

using Refused = tl::unexpected<PatternRefusal>;

Refused refusedPattern(PatternFault fault, std::size_t at = 0, std::string what = {}) {
    return Refused(PatternRefusal{fault, at, std::move(what)});
}

tl::expected<Piece, PatternRefusal> fieldAt(std::string_view text, std::size_t at) {
    const auto end = text.find_first_of("{}", at + 1);
    if (text[at] == '}' || end == std::string_view::npos || text[end] == '{') {
        return refusedPattern(PatternFault::BraceOpen, at);
    }
    const auto name = text.substr(at + 1, end - at - 1);
    const auto* found = std::find_if(kPatternFields.begin(), kPatternFields.end(),
                                     [&](const FieldName& field) { return field.name == name; });
    if (found == kPatternFields.end()) {
        return refusedPattern(PatternFault::FieldUnknown, at, std::string(name));
    }
    return Piece{found->kind, std::string(name)};
}

/// Puts `piece` behind the others; a fault where it can't stand there.
std::optional<PatternFault> addPiece(Pieces& pieces, Piece piece) {
    if (!isField(piece.kind)) {
        pieces.push_back(std::move(piece));
        return std::nullopt;
    }
    const bool isOnce = piece.kind != Kind::Skip && piece.kind != Kind::Time;
    if (isOnce && has(pieces, piece.kind)) {
        return PatternFault::FieldTwice;
    }
    const bool isBlankBefore = !pieces.empty() && pieces.back().kind == Kind::Blank;
    const std::size_t back = isBlankBefore ? 2 : 1;
    if (pieces.size() >= back && isField(pieces[pieces.size() - back].kind)) {
        const Kind before = pieces[pieces.size() - back].kind;
        const bool isBesideSkip = before == Kind::Skip || piece.kind == Kind::Skip;
        if ((before == Kind::Skip && piece.kind == Kind::Skip) ||
            (!isBlankBefore && !isBesideSkip && !belongTogether(before, piece.kind))) {
            return PatternFault::FieldsTouch;
        }
        if (isBlankBefore && !isBesideSkip && !belongTogether(before, piece.kind)) {
            pieces.back().text = " ";  // asks for one at least
        }
    }
    pieces.push_back(std::move(piece));
    return std::nullopt;
}

tl::expected<Pieces, PatternRefusal> piecesOf(std::string_view text) {
    Pieces pieces;
    for (std::size_t at = pastBlanks(text, 0); at < text.size();) {
        const auto from = at;
        Piece piece{Kind::Text, {}};
        if (text[at] == '{' || text[at] == '}') {
            auto field = fieldAt(text, at);
            if (!field) {
                return tl::unexpected(field.error());
            }
            at += field->text.size() + 2;
            piece = std::move(*field);
        } else if (isPatternBlank(text[at])) {
            at = pastBlanks(text, at);
            piece = Piece{Kind::Blank, {}};
        } else {
            at = std::min(text.find_first_of("{} \t", at), text.size());
            piece.text = text.substr(from, at - from);
        }
        const std::string name = piece.text;
        if (piece.kind == Kind::Blank && at == text.size()) {
            break;
        }
        if (const auto fault = addPiece(pieces, std::move(piece))) {
            return refusedPattern(*fault, from, name);
        }
    }
    return pieces;
}

/// Reads one line; the pieces' order tells where each field stands.
class LineReader {
  public:
    LineReader(const LinePattern& pattern, const Pieces& pieces, std::string_view line)
        : m_pattern(pattern), m_pieces(pieces), m_line(line) {}

    tl::expected<LineReading, LineRefusal> read() {
        m_at = pastBlanks(m_line, 0);
        std::optional<std::size_t> skip;  // the piece that is stretched when the rest does not fit
        std::size_t skippedTo = 0;
        std::size_t piece = 0;
        while (true) {
            std::optional<LineRefusal> refusal;
            if (piece == m_pieces.size()) {
                if (m_at == m_line.size()) {
                    return m_reading;
                }
                refusal = LineRefusal{LineFault::MoreText, pastBlanks(m_line, m_at), {}};
            } else if (m_pieces[piece].kind == Kind::Skip) {
                skip = piece;
                skippedTo = piece + 1 == m_pieces.size() ? m_line.size() : m_at;
                m_at = skippedTo;
                ++piece;
                continue;
            } else {
                refusal = take(piece);
            }
            if (!refusal) {
                ++piece;
                continue;
            }
            keepFurthest(piece, *refusal);
            // An earlier {skip} need not be stretched: what follows it fitted as early as it could.
            if (!skip || skippedTo >= m_line.size()) {
                return tl::unexpected(m_refusal);
            }
            m_at = ++skippedTo;
            piece = *skip + 1;
        }
    }

  private:
    void keepFurthest(std::size_t piece, const LineRefusal& refusal) {
        const bool saysMore = piece == m_refusedPiece && m_refusal.fault == LineFault::NumberMissing &&
                              refusal.fault == LineFault::NumberUnreadable;
        if (!m_isRefused || piece > m_refusedPiece || saysMore) {
            m_refusal = refusal;
            m_refusedPiece = piece;
        }
        m_isRefused = true;
    }

    std::optional<LineRefusal> take(std::size_t piece) {
        const auto& wanted = m_pieces[piece];
        switch (wanted.kind) {
            case Kind::Text:
                if (m_line.substr(m_at, wanted.text.size()) != wanted.text) {
                    return LineRefusal{LineFault::TextDiffers, m_at, wanted.text};
                }
                m_at += wanted.text.size();
                return std::nullopt;
            case Kind::Blank: {
                const auto end = pastBlanks(m_line, m_at);
                if (!wanted.text.empty() && end == m_at) {
                    return LineRefusal{LineFault::TextDiffers, m_at, wanted.text};
                }
                m_at = end;
                return std::nullopt;
            }
            case Kind::Value: {
                auto refusal = takeNumber(piece, m_reading.value, m_reading.valueAt);
                m_reading.unit = m_pattern.unit.value_or(UnitCode::None);
                return refusal;
            }
            case Kind::Second: {
                m_reading.second.emplace();
                m_reading.secondAt.emplace();
                m_reading.secondUnit = m_pattern.secondUnit.value_or(UnitCode::None);
                return takeNumber(piece, *m_reading.second, *m_reading.secondAt);
            }
            case Kind::Unit:
                return takeUnit(m_pattern.family, m_reading.unit);
            case Kind::SecondUnit:
                return takeUnit(m_pattern.secondFamily, m_reading.secondUnit);
            case Kind::Time:
                return takeTime(piece);
            case Kind::Skip:
                break;
        }
        return std::nullopt;
    }

    [[nodiscard]] const Piece* beside(std::size_t piece, std::ptrdiff_t step) const {
        for (auto at = static_cast<std::ptrdiff_t>(piece) + step;
             at >= 0 && at < static_cast<std::ptrdiff_t>(m_pieces.size()); at += step) {
            const auto& other = m_pieces[static_cast<std::size_t>(at)];
            if (other.kind != Kind::Blank) {
                return &other;
            }
        }
        return nullptr;
    }

    /// Would a number that begins here lack its head? Only behind what was skipped: all else is said.
    [[nodiscard]] bool isTail(std::size_t piece) const {
        const auto* before = beside(piece, -1);
        if (before == nullptr || before->kind != Kind::Skip || m_at == 0) {
            return false;
        }
        auto last = m_at - 1;
        const char c = m_line[last];
        if (isPatternDigit(c) || isPatternLetter(c)) {
            return true;
        }
        if ((c == '.' || c == ',') && last > 0 && isPatternDigit(m_line[last - 1])) {
            return true;
        }
        while (last > 0 && isPatternBlank(m_line[last])) {
            --last;
        }
        const auto minus = quantity::kMinusSign.size();
        return signLength(m_line, last) > 0 ||
               (last + 1 >= minus && signLength(m_line, last + 1 - minus) == minus);
    }

    /// Does the number go on in a way that is no number: "20,5" with a point for mark, "2.05E1", "20.5x"?
    [[nodiscard]] bool goesOn(std::size_t piece, std::size_t end) const {
        const char c = patternByte(m_line, end);
        const auto* next = beside(piece, 1);
        const bool isSaid = next != nullptr && next->kind == Kind::Text && next->text.front() == c;
        if ((c == '.' || c == ',') && isPatternDigit(patternByte(m_line, end + 1))) {
            return !isSaid;
        }
        const bool mayBeUnit =
            next == nullptr || next->kind == Kind::Unit || next->kind == Kind::SecondUnit || isSaid;
        return isPatternLetter(c) && !mayBeUnit;
    }

    std::optional<LineRefusal> takeNumber(std::size_t piece, Decimal& value, Stretch& where) {
        const char mark = m_pattern.mark == DecimalMark::Comma ? ',' : '.';
        m_at = pastBlanks(m_line, m_at);  // figures are set to the right
        const auto sign = signLength(m_line, m_at);
        const auto digits = sign > 0 ? pastBlanks(m_line, m_at + sign) : m_at;
        auto end = digits;
        const auto takeDigits = [&] {
            while (isPatternDigit(patternByte(m_line, end))) {
                ++end;
            }
        };
        takeDigits();
        if (end == digits || isTail(piece)) {
            return LineRefusal{LineFault::NumberMissing, m_at, {}};
        }
        if (patternByte(m_line, end) == mark && isPatternDigit(patternByte(m_line, end + 1))) {
            ++end;
            takeDigits();
        }
        const std::string typed(m_line.substr(m_at, sign));
        const auto number = Decimal::parse(typed + std::string(m_line.substr(digits, end - digits)));
        if (!number || goesOn(piece, end)) {
            const auto stop = std::min(m_line.find_first_of(" \t", end), m_line.size());
            return LineRefusal{LineFault::NumberUnreadable, m_at,
                               std::string(m_line.substr(m_at, stop - m_at))};
        }
        value = *number;
        where = Stretch{m_at, end - m_at};
        m_at = end;
        return std::nullopt;
    }

    [[nodiscard]] std::size_t wordEnd(std::size_t at) const {
        while (isUnitByte(patternByte(m_line, at))) {
            ++at;
        }
        return at;
    }

    std::optional<LineRefusal> takeUnit(UnitFamily family, UnitCode& unit) {
        if (!isPatternLetter(patternByte(m_line, m_at))) {
            return LineRefusal{LineFault::UnitMissing, m_at, {}};
        }
        auto end = wordEnd(m_at);
        auto word = m_line.substr(m_at, end - m_at);
        if (word == "in" || word == "mm") {  // "in wg", "mm H2O"
            const auto next = pastBlanks(m_line, end);
            const auto both = std::string(word) + std::string(m_line.substr(next, wordEnd(next) - next));
            if (unitOfWord(both, family)) {
                end = wordEnd(next);
                unit = *unitOfWord(both, family);
                m_at = end;
                return std::nullopt;
            }
        }
        const auto found = unitOfWord(word, family);
        if (!found) {
            return LineRefusal{LineFault::UnitUnknown, m_at, std::string(word)};
        }
        unit = *found;
        m_at = end;
        return std::nullopt;
    }

    std::optional<LineRefusal> takeTime(std::size_t piece) {
        const auto* next = beside(piece, 1);
        const char stop = next != nullptr && next->kind == Kind::Text ? next->text.front() : '\n';
        const std::string_view also = m_pattern.mark == DecimalMark::Comma ? ":-/TZ," : ":-/TZ.";
        auto end = m_at;
        while (patternByte(m_line, end) != stop && patternByte(m_line, end) != '\n' &&
               (isPatternDigit(m_line[end]) ||
                (end > m_at && also.find(m_line[end]) != std::string_view::npos))) {
            ++end;
        }
        if (end == m_at) {
            return LineRefusal{LineFault::TimeMissing, m_at, {}};
        }
        m_at = end;
        return std::nullopt;
    }

    const LinePattern& m_pattern;
    const Pieces& m_pieces;
    std::string_view m_line;
    std::size_t m_at = 0;
    LineReading m_reading;
    LineRefusal m_refusal;
    std::size_t m_refusedPiece = 0;
    bool m_isRefused = false;
};

/// Strictest first. A clock with a blank before the reading is a time or a date with a time.
constexpr std::array<std::string_view, 16> kGuessedPatterns{
    "{value} {unit}",
    "{value} {unit} {second} {second unit}",
    "{value} {unit}, {second} {second unit}",
    "{value} {unit}; {second} {second unit}",
    "{time} {value} {unit}",
    "{time}, {value} {unit}",
    "{time}; {value} {unit}",
    "{time} {time} {value} {unit}",
    "{time} {value} {unit} {second} {second unit}",
    "{time}, {value} {unit}, {second} {second unit}",
    "{time}; {value} {unit}; {second} {second unit}",
    "{value}",
    "{skip} {value} {unit}",
    "{value} {unit} {skip}",
    "{skip} {value} {unit} {second} {second unit}",
    "{skip} {value} {unit} {skip}",
};

}  // namespace

std::optional<UnitCode> unitOfWord(std::string_view word, UnitFamily family) {
    if (word.substr(0, 1) == kDegreeOfOldMachines) {
        word.remove_prefix(1);
    }
    const auto words = foldedWords(word);
    if (words.size() != 1) {
        return std::nullopt;
    }
    return headingUnit(words.front(), family);
}

tl::expected<LineMatcher, PatternRefusal> LineMatcher::of(const LinePattern& pattern) {
    if (pattern.text.size() > kLongestPattern) {
        return refusedPattern(PatternFault::TooLong, kLongestPattern);
    }
    auto pieces = piecesOf(pattern.text);
    if (!pieces) {
        return tl::unexpected(pieces.error());
    }
    if (pieces->empty()) {
        return refusedPattern(PatternFault::Empty);
    }
    if (!has(*pieces, Kind::Value)) {
        return refusedPattern(PatternFault::NoValue);
    }
    if (!has(*pieces, Kind::Unit) && !pattern.unit) {
        return refusedPattern(PatternFault::NoUnit);
    }
    if (has(*pieces, Kind::SecondUnit) && !has(*pieces, Kind::Second)) {
        return refusedPattern(PatternFault::SecondMissing);
    }
    if (has(*pieces, Kind::Second) && !has(*pieces, Kind::SecondUnit) && !pattern.secondUnit) {
        return refusedPattern(PatternFault::NoSecondUnit);
    }
    LineMatcher matcher;
    matcher.m_pattern = pattern;
    matcher.m_pieces = std::move(*pieces);
    return matcher;
}

tl::expected<LineReading, LineRefusal> LineMatcher::read(std::string_view line) const {
    while (!line.empty() && isPatternBlank(line.back())) {
        line.remove_suffix(1);
    }
    return LineReader(m_pattern, m_pieces, line).read();
}

std::optional<LinePattern> guessPattern(const std::vector<std::string>& lines, UnitFamily family) {
    std::optional<LinePattern> best;
    std::size_t most = lines.size() / 2;
    for (const auto text : kGuessedPatterns) {
        for (const auto mark : {DecimalMark::Point, DecimalMark::Comma}) {
            for (const auto second : {UnitFamily::Temperature, UnitFamily::Pressure}) {
                LinePattern tried{std::string(text), mark, family, std::nullopt, second, std::nullopt};
                if (text.find("{unit}") == std::string_view::npos) {
                    tried.unit = quantity::unitsOf(family).front();  // any: only the figures are looked at
                }
                const auto matcher = LineMatcher::of(tried);
                if (!matcher) {
                    continue;
                }
                const auto fit = static_cast<std::size_t>(
                    std::count_if(lines.begin(), lines.end(),
                                  [&](const std::string& line) { return matcher->read(line).has_value(); }));
                if (fit > most) {
                    most = fit;
                    tried.unit.reset();
                    best = std::move(tried);
                }
            }
        }
    }
    return best;
}

}  // namespace hearth::exchange
