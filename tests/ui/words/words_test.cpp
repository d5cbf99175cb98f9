// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/words.h"

#include "core/pipework/tube.h"
#include "tests/ui/words/languages.h"

#include <set>

namespace hearth::ui::words {
namespace {

using rulebook::Gas;
using rulebook::Outcome;

calendar::Date civil(int year, unsigned month, unsigned day) {
    return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{day}};
}

TEST(Words, SpeaksEnglishInALanguageThatItLacks) {
    EXPECT_EQ(Words(QStringLiteral("xx")).outcome(Outcome::LookAgain), QStringLiteral("look again"));
    EXPECT_EQ(Words(QStringLiteral("en_GB")).outcome(Outcome::NoVerdict), QStringLiteral("no verdict"));
}

TEST(Words, DatesAreWritten) {
    const Words words;
    EXPECT_EQ(words.date(civil(2026, 11, 25)), QStringLiteral("25 November 2026"));
    EXPECT_EQ(words.shortDate(civil(2026, 11, 5)), QStringLiteral("5 Nov 2026"));
    std::set<QString> months;
    for (unsigned month = 1; month <= 12; ++month) {
        months.insert(words.date(civil(2026, month, 1)));
        months.insert(words.shortDate(civil(2026, month, 2)));
    }
    EXPECT_EQ(months.size(), 24U);
    EXPECT_EQ(words.date({}), QString());
}

TEST(Words, FiguresHaveTheirUnit) {
    const Words words;
    EXPECT_EQ(words.figure({quantity::Decimal(2070, 2), quantity::UnitCode::Millibar}).toStdString(),
              "20.70\u00a0mbar");
    EXPECT_EQ(words.unit(quantity::UnitCode::CubicMetre), QStringLiteral("m³"));
    EXPECT_EQ(words.unit(quantity::UnitCode::None), QString());
}

/// Every value of an enumeration that ends with `last` has a translated word, and no two the same.
template <class Enum, class Word>
void expectWords(const Words& words, Enum last, Word word) {
    std::set<QString> seen;
    for (int i = 0; i <= static_cast<int>(last); ++i) {
        const QString text = word(static_cast<Enum>(i));
        EXPECT_FALSE(text.isEmpty()) << i;
        EXPECT_TRUE(testing::isTranslated(text, words)) << text;
        EXPECT_TRUE(seen.insert(text).second) << text;
    }
}

TEST(Words, EveryCodeOfTheRegisterHasItsWord) {
    for (const auto& language : testing::languages()) {
        const Words w(language);
        expectWords(w, Outcome::NoVerdict, [&](auto v) { return w.outcome(v); });
        expectWords(w, Gas::LpgAir, [&](auto v) { return w.gas(v); });
        expectWords(w, reg::RoleKind::ResponsiblePerson, [&](auto v) { return w.role(v); });
        expectWords(w, reg::Country::NorthernIreland, [&](auto v) { return w.country(v); });
        expectWords(w, reg::PartyKind::Organisation, [&](auto v) { return w.partyKind(v); });
        expectWords(w, reg::InstrumentKind::Other, [&](auto v) { return w.instrumentKind(v); });
        expectWords(w, pipework::TubeFamily::Corrugated, [&](auto v) { return w.tubeFamily(v); });
        expectWords(w, pipework::VolumeBasis::Typed, [&](auto v) { return w.volumeBasis(v); });
        expectWords(w, record::RecordKind::CoveringLetter, [&](auto v) { return w.recordKind(v); });
        expectWords(w, record::Field::RecipientAddress, [&](auto v) { return w.field(v); });
    }
}

TEST(Words, TubesAndMetersAreNamed) {
    for (const auto& language : testing::languages()) {
        const Words words(language);
        std::set<QString> seen;
        for (const auto& tube : pipework::tubes()) {
            const QString name = words.tube(tube);
            EXPECT_FALSE(name.isEmpty()) << tube.code;
            EXPECT_TRUE(seen.insert(name).second) << name;
        }
        for (const auto& meter : pipework::meters()) {
            const QString name = words.meter(meter);
            EXPECT_FALSE(name.isEmpty()) << meter.code;
            EXPECT_TRUE(seen.insert(name).second) << name;
        }
    }
}

TEST(Words, WhatIsMissingIsSaidWithItsLabel) {
    const Words words;
    record::Missing missing{reg::Item::TightEnd, std::nullopt, {}, "common practice", false};
    EXPECT_EQ(words.missing(missing), QStringLiteral("Tightness, end: not entered"));
    EXPECT_EQ(words.wantedBy(missing), QStringLiteral("wanted by: common practice"));
    missing.unreadable = true;
    EXPECT_EQ(words.missing(missing), QStringLiteral("Tightness, end: typed, but can't be used"));
    missing = {std::nullopt, record::Field::EngineerCard, {}, "Some Act 1998", false};
    EXPECT_EQ(words.missing(missing), QStringLiteral("Engineer's card number: not entered"));
    EXPECT_EQ(words.wantedBy(missing), QStringLiteral("wanted by: Some Act 1998"));
}

TEST(Words, TheSourceOfEveryRequirementCanBeShown) {
    const Words words;
    for (const auto kind : record::allKinds()) {
        for (const auto& wanted : record::requirementsOf(kind)) {
            EXPECT_FALSE(
                words.wantedBy({wanted.item, wanted.field, {}, std::string(wanted.source), false}).isEmpty());
        }
    }
}

}  // namespace
}  // namespace hearth::ui::words
