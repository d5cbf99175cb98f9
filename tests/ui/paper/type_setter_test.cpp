// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/type_setter.h"

#include <gtest/gtest.h>

namespace hearth::ui::paper {
namespace {

QString joined(const std::vector<TextItem>& lines) {
    QString all;
    for (const TextItem& line : lines) {
        all += line.text;
    }
    return all.remove(u' ');
}

TEST(Settable, composesLettersAndDropsWhatHasNoShape) {
    EXPECT_EQ(settable(QStringLiteral("Tw\u0302m")), QStringLiteral("Tŵm"));
    EXPECT_EQ(settable(QStringLiteral("a\tb\u0007c\uFEFF\u200B")), QStringLiteral("a bc"));
    EXPECT_EQ(settable(QStringLiteral("a\r\nb\n\n")), QStringLiteral("a\u2028b"));
    EXPECT_EQ(settable(std::string("Ł")), QStringLiteral("Ł"));
    EXPECT_EQ(settable(std::string()), QString());
}

TEST(TypeSetter, emptyTextGivesNoLine) {
    EXPECT_TRUE(TypeSetter().set(QString(), styles::kText, 50).empty());
}

TEST(TypeSetter, linesKeepWithinTheWidthAndLoseNothing) {
    const TypeSetter type;
    const QString text =
        settable(QStringLiteral("No perceptible rise in one minute at 9.02 mbar (band 7 to 10 mbar); "
                                "Llŷr ap Tŵm Wiśniewski, Tŷ Gwŷn, has been told.\nSecond line."));
    for (const double width : {12.0, 31.5, 60.0, 174.0}) {
        const auto lines = type.set(text, styles::kText, width);
        for (const TextItem& line : lines) {
            EXPECT_LE(line.box.right(), width + 0.01) << width;
            EXPECT_GE(line.box.left(), -0.01);
        }
        QString wanted = text;
        EXPECT_EQ(joined(lines), wanted.remove(u' ').remove(QChar(QChar::LineSeparator)));
    }
    EXPECT_EQ(type.set(text, styles::kText, 400).size(), 2U);
}

/// Each stretch between breaks is set by itself; as one layout it stands at the same places.
TEST(TypeSetter, breaksPartWhatIsSetWithoutMovingIt) {
    const TypeSetter type;
    const QString text = settable(QStringLiteral(
        "Dear Llŷr,\n\nOur records show that the check is due by 6 January 2027.\n\nYours,\nEmber"));
    const auto lines = type.set(text, styles::kLetter, 70);
    ASSERT_EQ(lines.size(), 7U) << "one of them wraps";
    EXPECT_EQ(lines[0].text, QStringLiteral("Dear Llŷr,"));
    EXPECT_TRUE(lines[1].text.isEmpty());
    EXPECT_EQ(lines[6].text, QStringLiteral("Ember"));
    // What reads from the right takes its side from all that stands before it, and is set as one.
    const QString hebrew = settable(QStringLiteral("\u05E9\u05DC\u05D5\u05DD\nab"));
    const auto right = type.set(hebrew, styles::kLetter, 70);
    ASSERT_EQ(right.size(), 2U);
    EXPECT_EQ(right[1].text, QStringLiteral("ab"));
    const auto alone = type.set(QStringLiteral("Ember"), styles::kLetter, 70).front();
    EXPECT_EQ(lines[6].box, alone.box);
    EXPECT_EQ(lines[6].ascent, alone.ascent);
    EXPECT_EQ(lines[1].ascent, lines[0].ascent) << "an empty line is as high as the others";
}

TEST(TypeSetter, breaksAWordThatIsTooLong) {
    const TypeSetter type;
    const QString word(300, u'm');
    const auto lines = type.set(word, styles::kText, 40);
    EXPECT_GT(lines.size(), 5U);
    EXPECT_EQ(joined(lines), word);
    for (const TextItem& line : lines) {
        EXPECT_LE(line.box.right(), 40.01);
    }
}

TEST(TypeSetter, widthsAreThoseOfTheDesign) {
    // Ten figures of the regular face: 1171 of 2048 units each (its hmtx table), at 9 points of 25.4/72 mm;
    // the size is set to the nearest hundredth of a millimetre.
    const double size = std::lround(9 * 25.4 / 72 * 100) / 100.0;
    EXPECT_NEAR(TypeSetter().widthOf(QStringLiteral("0000000000"), styles::kValue), 10 * size * 1171 / 2048,
                0.005);
}

TEST(TypeSetter, alignsAtTheRightAndInTheMiddle) {
    const TypeSetter type;
    auto right = type.set(QStringLiteral("20.46"), styles::kCell, 30);
    alignRight(right[0], 30);
    EXPECT_NEAR(right[0].box.right(), 30, 1e-9);
    auto middle = type.set(QStringLiteral("20.46"), styles::kCell, 30);
    centre(middle[0], 30);
    EXPECT_NEAR(middle[0].box.center().x(), 15, 1e-9);
}

TEST(TypeSetter, longestWordIsTheWidest) {
    const TypeSetter type;
    const QString text = QStringLiteral("iiiiii WWWW a");
    EXPECT_NEAR(type.longestWord(text, styles::kCell), type.widthOf(QStringLiteral("WWWW"), styles::kCell),
                1e-9);
}

TEST(TypeSetter, namesLettersThatNoFontHas) {
    const TypeSetter type;
    (void)type.set(QStringLiteral("Ł ŷ ₂ ≤ → −"), styles::kText, 100);
    EXPECT_EQ(type.missingLetters(), QString());
    // Private use: no font but one's own has it. Named once, however often it stands there.
    (void)type.set(QStringLiteral("a\U0010F123b\U0010F123"), styles::kText, 100);
    EXPECT_EQ(type.missingLetters(), QStringLiteral("\U0010F123"));
}

}  // namespace
}  // namespace hearth::ui::paper
