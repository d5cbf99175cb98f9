// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/quantity/decimal.h"
#include "core/quantity/typed.h"
#include "core/quantity/units.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

/// Where the reading stands in a line of text that a gauge sends: described by the one who has the gauge.
namespace hearth::exchange {

/// A pattern as a person sees and edits it. `text` is the line with fields in braces for what changes:
///
///     {value}  {unit}           the reading and its unit
///     {second} {second unit}    another reading of the same line
///     {time}                    a time or a count of seconds; stepped over, since a gauge's clock may be set
///     {skip}                    anything
///
/// A blank stands for any number of blanks, none included; all else stands for itself. The whole line must
/// fit.
struct LinePattern {
    std::string text = "{value} {unit}";
    quantity::DecimalMark mark = quantity::DecimalMark::Point;
    quantity::UnitFamily family = quantity::UnitFamily::Pressure;
    std::optional<quantity::UnitCode> unit = std::nullopt;  // of lines that name none
    quantity::UnitFamily secondFamily = quantity::UnitFamily::Temperature;
    std::optional<quantity::UnitCode> secondUnit = std::nullopt;
    bool operator==(const LinePattern&) const = default;
};

enum class PatternFault {
    Empty,         // nothing in it
    TooLong,       // more than kLongestPattern bytes
    BraceOpen,     // a brace without its other half
    FieldUnknown,  // a field of no such name
    FieldTwice,
    FieldsTouch,  // between these two nothing tells where the one ends
    NoValue,      // no {value}
    NoUnit,       // neither {unit} nor a unit beside the pattern
    NoSecondUnit,
    SecondMissing,  // {second unit} without {second}
};

struct PatternRefusal {
    PatternFault fault;
    std::size_t at = 0;  // byte of the pattern's text
    std::string what;    // the field's name, where there is one
    bool operator==(const PatternRefusal&) const = default;
};

/// Bytes of a line.
struct Stretch {
    std::size_t from = 0;
    std::size_t length = 0;
    bool operator==(const Stretch&) const = default;
};

struct LineReading {
    quantity::Decimal value;
    quantity::UnitCode unit = quantity::UnitCode::None;
    std::optional<quantity::Decimal> second;
    quantity::UnitCode secondUnit = quantity::UnitCode::None;
    Stretch valueAt;  // to be shown
    std::optional<Stretch> secondAt;
};

enum class LineFault {
    TextDiffers,       // at: where the pattern asks for other text; what: that text
    NumberMissing,     // at: where a number should begin
    NumberUnreadable,  // what: more digits than a gauge has, or digits behind the other decimal mark
    TimeMissing,
    UnitMissing,
    UnitUnknown,  // what: the word that is no unit of what is read
    MoreText,     // at: where the line goes on past the pattern
};

struct LineRefusal {
    LineFault fault = LineFault::TextDiffers;
    std::size_t at = 0;  // byte of the line
    std::string what;
    bool operator==(const LineRefusal&) const = default;
};

inline constexpr std::size_t kLongestPattern = 200;

/// The unit of that name as gauges write it ("mbar", "hPa", "inH2O", "°C", "ppm"), small or large letters;
/// nothing for one of another family. Source: common practice, no source. Checked: line_pattern_test.cpp.
[[nodiscard]] std::optional<quantity::UnitCode> unitOfWord(std::string_view word,
                                                           quantity::UnitFamily family);

/// A pattern made ready for lines.
class LineMatcher {
  public:
    [[nodiscard]] static tl::expected<LineMatcher, PatternRefusal> of(const LinePattern& pattern);

    /// The reading of one line, or why there is none. A number is taken whole or not at all: neither its tail
    /// nor what stands before the other decimal mark, an exponent or a letter.
    [[nodiscard]] tl::expected<LineReading, LineRefusal> read(std::string_view line) const;

    enum class Kind { Text, Blank, Value, Unit, Second, SecondUnit, Time, Skip };
    struct Piece {
        Kind kind;
        std::string text = {};  // of Text
    };

  private:
    LinePattern m_pattern;
    std::vector<Piece> m_pieces;
};

/// A pattern that most of the lines fit, the strictest first; its unit stays empty where the lines name none.
/// Nothing where none does, as where two plain figures stand beside each other: which of them is the reading
/// is not guessed.
[[nodiscard]] std::optional<LinePattern> guessPattern(const std::vector<std::string>& lines,
                                                      quantity::UnitFamily family);

}  // namespace hearth::exchange
