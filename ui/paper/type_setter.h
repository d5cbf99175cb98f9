// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/document.h"
#include "ui/paper/page.h"

#include <QFont>
#include <QSet>
#include <QString>

#include <string>
#include <vector>

namespace hearth::ui::paper {

/// Size in points, weight, colour and leading of a text on paper.
struct TextStyle {
    double points = 9;
    bool isBold = false;
    look::Role role = look::Role::Ink;
    double leading = 1.36;     // line height in ems
    double letterSpacing = 0;  // ems

    [[nodiscard]] bool operator==(const TextStyle&) const = default;
    [[nodiscard]] double em() const { return points * 25.4 / 72.0; }
    [[nodiscard]] double lineHeight() const { return em() * leading; }
    /// From the top of a line's box to its baseline.
    [[nodiscard]] double baseline() const { return em() * (leading / 2 + 0.36); }
};

/// The styles of our records: few, and named by what they are for. What is read to decide is 9 points or
/// more, small print 7.5 or more.
namespace styles {
inline constexpr TextStyle kTitle{17, true, look::Role::Ink, 1.25};
inline constexpr TextStyle kFirm{9, true, look::Role::Key, 1.35};
inline constexpr TextStyle kNumber{12, true, look::Role::Ink, 1.3};
inline constexpr TextStyle kHeadNote{7.5, false, look::Role::SoftInk, 1.36};
inline constexpr TextStyle kHeadStrong{7.5, true, look::Role::Ink, 1.36};
inline constexpr TextStyle kRunningTitle{9.5, true, look::Role::Ink, 1.36};
inline constexpr TextStyle kSentence{13, true, look::Role::Ink, 1.3};
inline constexpr TextStyle kStatement{11, true, look::Role::Ink, 1.3};
inline constexpr TextStyle kDetail{9, false, look::Role::SoftInk, 1.32};
inline constexpr TextStyle kSection{9.5, true, look::Role::Key, 1.3};
inline constexpr TextStyle kCaption{7.5, false, look::Role::SoftInk, 1.24};
inline constexpr TextStyle kValue{9, false, look::Role::Ink, 1.26};
inline constexpr TextStyle kAbsent{9, false, look::Role::SoftInk, 1.26};
inline constexpr TextStyle kHead{7.5, true, look::Role::SoftInk, 1.24};
inline constexpr TextStyle kCell{9, false, look::Role::Ink, 1.26};
inline constexpr TextStyle kTotal{9, true, look::Role::Ink, 1.26};
inline constexpr TextStyle kFinding{9, true, look::Role::Ink, 1.26};
inline constexpr TextStyle kWhy{9, false, look::Role::Ink, 1.26};
inline constexpr TextStyle kNote{8, false, look::Role::SoftInk, 1.24};
inline constexpr TextStyle kSource{7.5, false, look::Role::SoftInk, 1.24};
inline constexpr TextStyle kText{9, false, look::Role::Ink, 1.36};
inline constexpr TextStyle kLetter{10.5, false, look::Role::Ink, 1.4};
inline constexpr TextStyle kAlertWord{27, true, look::Role::Fail, 1.3};
inline constexpr TextStyle kAlertGrade{15, true, look::Role::Ink, 1.3};
inline constexpr TextStyle kAlertMeaning{10.5, false, look::Role::Ink, 1.3};
inline constexpr TextStyle kBanner{9, true, look::Role::DemoBand, 1.3};
inline constexpr TextStyle kStamp{12, true, look::Role::Fail, 1.25, 0.12};
inline constexpr TextStyle kFoot{7.5, false, look::Role::SoftInk, 1.24};
}  // namespace styles

/// Of a text in two languages the second is smaller, lighter and never bold, so that an eye can keep to
/// either; only what must be read from afar stays large.
[[nodiscard]] TextStyle besideStyle(const TextStyle& style);

/// Shapes text into lines. Remembers which letters it met, so that those which no font has can be named.
class TypeSetter {
  public:
    TypeSetter();

    /// Lines of at most `width` millimetres, each for itself: at the left end of a line box whose top is 0. A
    /// line break in the text is one on paper. A word that is longer than the width is broken, never cut.
    /// Empty text gives no line. Of a text in two languages (see record/pairing.h) the lines of the second
    /// follow those of the first.
    [[nodiscard]] std::vector<TextItem> set(const QString& text, const TextStyle& style, double width) const;
    /// Width of the text in one line; of one in two languages that of the wider.
    [[nodiscard]] double widthOf(const QString& text, const TextStyle& style) const;
    /// Width of the longest part that stands between two blanks.
    [[nodiscard]] double longestWord(const QString& text, const TextStyle& style) const;

    /// Letters met so far that neither the bundled family nor an embeddable system font has, each once.
    [[nodiscard]] QString missingLetters() const;

  private:
    void note(const QString& text) const;
    [[nodiscard]] std::vector<TextItem> setOne(const QString& text, const TextStyle& style,
                                               double width) const;
    [[nodiscard]] std::vector<TextItem> setPiece(const QString& text, const TextStyle& style,
                                                 double width) const;

    mutable QSet<char32_t> m_met;  // beyond the plain ones of ASCII
};

/// The text as it is set: composed letters (NFC), line ends as line separators, other control and format
/// characters, which have no shape, left out.
[[nodiscard]] QString settable(const std::string& utf8);
[[nodiscard]] QString settable(const QString& text);
/// The same of a few words that stand in a line with others: both languages in that line.
[[nodiscard]] QString settableInLine(const std::string& utf8);

/// Moves a line to the right end of `width`.
void alignRight(TextItem& line, double width);
void centre(TextItem& line, double width);

}  // namespace hearth::ui::paper
