// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/words/languages.h"
#include "ui/words/words.h"

#include <QFile>
#include <QRegularExpression>

#include <map>

namespace hearth::ui::words {
namespace {

using rulebook::Argument;
using rulebook::FindingKind;
using rulebook::Say;
using rulebook::Sentence;

/// How many arguments the comment in core/rulebook/say.h promises, in the order of the enumeration.
std::vector<int> promisedArguments() {
    QFile file(QStringLiteral(HEARTH_SOURCE_DIR "/core/rulebook/say.h"));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    const QString text = QString::fromUtf8(file.readAll());
    const auto from = text.indexOf(u"enum class Say {");
    const auto body = text.mid(from, text.indexOf(u"};", from) - from).section(u'{', 1);
    std::vector<int> counts;
    static const QRegularExpression kName(QStringLiteral("^\\s*([A-Z]\\w*),\\s*(?://\\s*(.*))?$"));
    for (const auto& line : body.split(u'\n')) {
        const auto match = kName.match(line);
        if (match.hasMatch()) {
            const QString named = match.captured(2).section(u':', 0, 0).section(u'(', 0, 0).trimmed();
            counts.push_back(named.isEmpty() || named == u"-" ? 0 : static_cast<int>(named.count(u',')) + 1);
        }
    }
    return counts;
}

Sentence withArguments(Say say, int count) {
    Sentence sentence{say, {}};
    for (int i = 0; i < count; ++i) {
        // Numbers, since one sentence counts days; each another, so that it is found again.
        sentence.arguments.emplace_back(std::to_string(7100 + i));
    }
    return sentence;
}

TEST(Sentences, ThereIsOneForEverythingThatAFindingCanSay) {
    const auto promised = promisedArguments();
    const auto says = rulebook::allSays();
    ASSERT_EQ(promised.size(), says.size()) << "the comments of say.h were not read as meant";
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (std::size_t i = 0; i < says.size(); ++i) {
            const QString text = words.sentence(withArguments(says[i], promised[i]));
            const auto code = std::string(rulebook::sayText(says[i]));
            EXPECT_NE(text.toStdString(), code) << "no sentence";
            EXPECT_FALSE(text.isEmpty()) << code;
            EXPECT_TRUE(testing::isTranslated(text, words)) << code << ": " << text;
            EXPECT_TRUE(testing::isFilled(text)) << code << " asks for more than it is given: " << text;
            for (int argument = 0; argument < promised[i]; ++argument) {
                EXPECT_TRUE(text.contains(QString::number(7100 + argument)))
                    << code << " leaves out argument " << argument + 1 << ": " << text;
            }
        }
    }
}

TEST(Sentences, EndAsSentences) {
    const Words words;
    for (const auto say : rulebook::allSays()) {
        const QString text = words.sentence(withArguments(say, 4));
        EXPECT_TRUE(text.endsWith(u'.')) << text;
        EXPECT_TRUE(text[0].isUpper() || text[0].isDigit()) << text;
        EXPECT_FALSE(text.contains(u"  ")) << text;
    }
}

TEST(Sentences, WordTheirArguments) {
    using quantity::Decimal;
    using quantity::UnitCode;
    const Words words;
    EXPECT_EQ(words.sentence({Say::LetByNone,
                              {quantity::Figure{Decimal(-2, 2), UnitCode::Millibar},
                               quantity::Figure{Decimal(862, 2), UnitCode::Millibar}}}),
              QString::fromUtf8("No perceptible rise from 8.62\u00a0mbar (change \u22120.02\u00a0mbar)."));
    const calendar::Date day{std::chrono::year{2026}, std::chrono::month{10}, std::chrono::day{1}};
    EXPECT_EQ(
        words.sentence({Say::EditionNotAllowed, {rulebook::Edition::Up1bEd3, day}}),
        QStringLiteral(
            "IGEM/UP/1B Edition 3 may not judge a test made on 1 October 2026. Choose the edition that is in "
            "force on that day."));
}

TEST(Sentences, CountDaysAsPeopleDo) {
    const Words words;
    const calendar::Date due{std::chrono::year{2026}, std::chrono::month{12}, std::chrono::day{3}};
    const auto soon = [&](Argument days) {
        return words.sentence({Say::GaugeCalibrationSoon, {due, std::move(days)}});
    };
    EXPECT_EQ(soon(std::string("8")),
              QStringLiteral("Calibration runs out in 8 days, on 3 December 2026. It counts for this test."));
    EXPECT_EQ(soon(std::string("1")),
              QStringLiteral("Calibration runs out in 1 day, on 3 December 2026. It counts for this test."));
    EXPECT_EQ(soon(quantity::Figure{quantity::Decimal(0, 0), quantity::UnitCode::None}),
              QStringLiteral("Calibration runs out today, 3 December 2026. It still counts for this test."));
}

TEST(Sentences, AnArgumentIsNeverTakenForAPlaceholder) {
    const Words words;
    const QString text =
        words.sentence({Say::OutsideStated, {std::string("%2"), std::string("%3"), std::string("100 %1")}});
    EXPECT_EQ(text, QStringLiteral("%2 lies outside %3 to 100 %1."));
}

TEST(FindingTitles, ThereIsOneForEveryKindAndNoTwoAreTheSame) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        std::map<QString, int> seen;
        for (int i = 0; i <= static_cast<int>(FindingKind::WorkingPressure); ++i) {
            const auto kind = static_cast<FindingKind>(i);
            const QString title = words.findingTitle(kind);
            EXPECT_NE(title.toStdString(), std::string(rulebook::kindText(kind)));
            EXPECT_TRUE(testing::isTranslated(title, words)) << title;
            EXPECT_EQ(seen[title]++, 0) << title;
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
