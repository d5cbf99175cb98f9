// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rulebook/rule_book.h"
#include "tests/ui/words/languages.h"
#include "ui/words/words.h"

#include <map>

namespace hearth::ui::words {
namespace {

using quantity::Decimal;
using quantity::Figure;
using quantity::UnitCode;
using rulebook::Comparison;
using rulebook::Entry;
using rulebook::Provenance;
using rulebook::Rule;

Entry entry(rulebook::Value value, Comparison comparison, Provenance provenance = Provenance::Published) {
    Entry made;
    made.key = {Rule::NoMovementElectronic, rulebook::Edition::Up1bEd4, std::nullopt};
    made.value = std::move(value);
    made.comparison = comparison;
    made.provenance = provenance;
    made.standard = "IGEM/UP/1B Edition 4";
    return made;
}

calendar::Date dated(int year, unsigned month, unsigned day) {
    return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

TEST(Rules, EachHasATitleOfItsOwn) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        std::map<QString, int> seen;
        for (int i = 0; i <= static_cast<int>(Rule::AssumedTemperatureChange); ++i) {
            const auto rule = static_cast<Rule>(i);
            const QString title = words.rule(rule);
            EXPECT_NE(title.toStdString(), std::string(rulebook::ruleText(rule)));
            EXPECT_TRUE(testing::isTranslated(title, words)) << title;
            EXPECT_EQ(seen[title]++, 0) << title;
        }
    }
}

TEST(Rules, EveryShippedEntryCanBeShown) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        const auto book = rulebook::RuleBook::shipped();
        ASSERT_FALSE(book.entries().empty());
        for (const auto& shipped : book.entries()) {
            EXPECT_FALSE(words.ruleValue(shipped).isEmpty()) << rulebook::ruleText(shipped.key.rule);
            EXPECT_FALSE(words.source(shipped).isEmpty()) << rulebook::ruleText(shipped.key.rule);
        }
    }
}

TEST(RuleValue, SaysHowAMeasurementIsHeldAgainstIt) {
    const Words words;
    const auto value = [&](rulebook::Value v, Comparison c) {
        return words.ruleValue(entry(std::move(v), c)).toStdString();
    };
    EXPECT_EQ(value(Figure{Decimal(2, 1), UnitCode::Millibar}, Comparison::Below), "below 0.2\u00a0mbar");
    EXPECT_EQ(value(Figure{Decimal(35, 3), UnitCode::CubicMetre}, Comparison::AtMost),
              "at most 0.035\u00a0m³");
    EXPECT_EQ(value(Figure{Decimal(18, 0), UnitCode::Millibar}, Comparison::AtLeast),
              "at least 18\u00a0mbar");
    EXPECT_EQ(value(Figure{Decimal(15, 1), UnitCode::None}, Comparison::AsGiven), "1.5");
    EXPECT_EQ(value(rulebook::Range{Decimal(70, 1), Decimal(100, 1), UnitCode::Millibar}, Comparison::Within),
              "7.0 to 10.0\u00a0mbar");
    EXPECT_EQ(
        value(std::vector<rulebook::Band>{{Decimal(1, 2), Decimal(20, 1)}, {Decimal(2, 2), Decimal(10, 1)}},
              Comparison::AtMost),
        "up to 0.01\u00a0m³: 2.0\u00a0mbar; up to 0.02\u00a0m³: 1.0\u00a0mbar");
    EXPECT_EQ(value(std::monostate{}, Comparison::AtMost), "not entered");
}

TEST(Source, NamesStandardAndWarrantInOneLine) {
    const Words words;
    Entry known = entry(Figure{Decimal(2, 1), UnitCode::Millibar}, Comparison::Below);
    EXPECT_EQ(words.source(known), QStringLiteral("IGEM/UP/1B Edition 4 · published"));
    known.clause = "table 5";
    known.provenance = Provenance::Firm;
    known.confirmedBy = "J. Example";
    known.confirmedOn = dated(2026, 10, 3);
    EXPECT_EQ(words.source(known),
              QStringLiteral("IGEM/UP/1B Edition 4, table 5 · confirmed by J. Example, 3 Oct 2026"));
    EXPECT_EQ(words.source(entry(std::monostate{}, Comparison::AtMost)),
              QStringLiteral("IGEM/UP/1B Edition 4 · not entered"));
    Entry habit =
        entry(Figure{Decimal(1, 0), UnitCode::Millibar}, Comparison::AtMost, Provenance::CommonPractice);
    habit.standard.clear();
    EXPECT_EQ(words.source(habit), QStringLiteral("common practice"));
}

TEST(MeasuredAgainst, ShowsTheLimitWithItsWord) {
    const Words words;
    rulebook::Finding finding;
    finding.kind = rulebook::FindingKind::Tightness;
    EXPECT_EQ(words.measuredAgainst(finding), QString());
    finding.measured = Figure{Decimal(4, 2), UnitCode::Millibar};
    EXPECT_EQ(words.measuredAgainst(finding).toStdString(), "0.04\u00a0mbar");
    finding.limit = Figure{Decimal(2, 1), UnitCode::Millibar};
    finding.comparison = Comparison::Below;
    EXPECT_EQ(words.measuredAgainst(finding).toStdString(), "0.04\u00a0mbar (limit: below 0.2\u00a0mbar)");
    finding.comparison = Comparison::Within;
    finding.limits = {
        entry(rulebook::Range{Decimal(20, 0), Decimal(21, 0), UnitCode::Millibar}, Comparison::Within)};
    EXPECT_EQ(words.measuredAgainst(finding).toStdString(), "0.04\u00a0mbar (band: 20 to 21\u00a0mbar)");
}

TEST(Provenance, EachHasAWordAndAMeaning) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (int i = 0; i <= static_cast<int>(Provenance::Maker); ++i) {
            const auto provenance = static_cast<Provenance>(i);
            EXPECT_TRUE(testing::isTranslated(words.provenance(provenance), words));
            EXPECT_TRUE(testing::isTranslated(words.provenanceMeaning(provenance), words));
            EXPECT_GT(words.provenanceMeaning(provenance).size(), words.provenance(provenance).size());
        }
    }
}

TEST(Comparison, EachHasAWord) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        for (int i = 0; i <= static_cast<int>(Comparison::AsGiven); ++i) {
            EXPECT_TRUE(testing::isTranslated(words.comparison(static_cast<Comparison>(i)), words));
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
