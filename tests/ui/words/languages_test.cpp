// SPDX-License-Identifier: GPL-3.0-or-later
// Welsh and Polish: every text that a record or a letter can print is there, whole, in both.
#include "tests/ui/words/languages.h"

#include "tests/support/files.h"
#include "ui/words/kept_words.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSet>
#include <QXmlStreamReader>

#include <algorithm>
#include <map>

namespace hearth::ui::words {
namespace {

struct Translated {
    QStringList forms;  // one, or those of a text that counts
    bool counts = false;
    bool finished = true;
};
/// Of the context "Words", by their English text.
using CatalogueTexts = std::map<QString, Translated>;

CatalogueTexts textsIn(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
    CatalogueTexts texts;
    QString context;
    QString source;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement()) {
            continue;
        }
        if (xml.name() == u"name") {
            context = xml.readElementText();
        } else if (xml.name() == u"source") {
            source = xml.readElementText();
        } else if (xml.name() == u"translation" && context == u"Words") {
            Translated& found = texts[source];
            found.finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
            while (xml.readNext() != QXmlStreamReader::EndElement) {
                if (xml.isStartElement()) {
                    found.counts = true;
                    found.forms << xml.readElementText();
                } else if (xml.isCharacters() && !xml.isWhitespace()) {
                    found.forms << xml.text().toString();
                }
            }
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString();
    return texts;
}

/// Of this folder, what only the window and the command line say. All else can stand on a record or in a
/// letter, but for the helps of fields, which are taken out below.
constexpr std::array kFilesOfWindow{"commonly_seen.cpp",  "error_texts.cpp",    "error_words.cpp",
                                    "exchange_words.cpp", "kept_words.cpp",     "key_words.cpp",
                                    "proof_words.cpp",    "question_words.cpp", "work_item_words.cpp"};

std::string filesOfRecords() {
    const QString root = QStringLiteral(HEARTH_SOURCE_DIR);
    const QDir folder(root + QStringLiteral("/ui/words"));
    std::string files = " " HEARTH_SOURCE_DIR "/ui/paper/*.cpp " HEARTH_SOURCE_DIR "/app/issue.cpp";
    for (const QString& name : folder.entryList({QStringLiteral("*.cpp")}, QDir::Files)) {
        const bool isWindows = std::any_of(kFilesOfWindow.begin(), kFilesOfWindow.end(),
                                           [&](const char* one) { return name == QString::fromLatin1(one); });
        files += isWindows ? std::string() : " " + folder.filePath(name).toStdString();
    }
    return files;
}

QSet<QString> helps() {
    QSet<QString> texts;
    const Words words;
    for (const auto& info : reg::itemCatalogue()) {
        texts << words.itemHelp(info.item);
    }
    return texts;
}

/// As lupdate reads them out of the source.
QSet<QString> textsOfRecords() {
    const hearth::testing::TempDir folder;
    const auto fresh = folder / "fresh.ts";
    const auto made = hearth::testing::runCommand(
        HEARTH_LUPDATE " -silent -locations none -source-language en -I " HEARTH_SOURCE_DIR +
        filesOfRecords() + " -ts " + fresh.string() + " 2>&1");
    EXPECT_EQ(made.exitCode, 0) << made.text;
    QSet<QString> texts;
    const auto windowOnly = helps();
    for (const auto& [text, unused] : textsIn(QString::fromStdString(fresh.string()))) {
        if (!windowOnly.contains(text)) {
            texts << text;
        }
    }
    const Words english;
    for (const auto danger : {reg::Danger::NotSaid, reg::Danger::ImmediatelyDangerous, reg::Danger::AtRisk}) {
        texts << words::danger(english, danger);
    }
    return texts;
}

QStringList sortedMatches(const QRegularExpression& pattern, const QString& text) {
    QStringList found;
    for (auto match = pattern.globalMatch(text); match.hasNext();) {
        found << match.next().captured();
    }
    found.sort();
    return found;
}

/// %1, %2 … each once; a placeholder may be said twice where the language needs it, never left out.
QSet<QString> placeholders(const QString& text) {
    static const QRegularExpression kPlaceholder(QStringLiteral("%[0-9n]"));
    const auto found = sortedMatches(kPlaceholder, text);
    return {found.begin(), found.end()};
}

struct Language {
    const char* code;
    int forms;
    /// Words that are the same as in English.
    QSet<QString> same;
};

const std::vector<Language>& translatedLanguages() {
    static const std::vector<Language> kLanguages{
        {"cy",
         5,
         {QStringLiteral("Landlord"), QStringLiteral("Tenant"), QStringLiteral("Person"),
          QStringLiteral("net"), QStringLiteral("imperial (ft³)"), QStringLiteral("%1 (band: %2)")}},
        {"pl", 3, {QStringLiteral("Agent"), QStringLiteral("Inhibitor"), QStringLiteral("grill")}}};
    return kLanguages;
}

class TranslationTest : public ::testing::TestWithParam<Language> {
  protected:
    CatalogueTexts texts = textsIn(QStringLiteral(HEARTH_SOURCE_DIR "/translations/hearthledger_") +
                                   QString::fromLatin1(GetParam().code) + QStringLiteral(".ts"));
};

TEST_P(TranslationTest, HasEveryTextThatARecordCanPrintAndNoOther) {
    const auto wanted = textsOfRecords();
    EXPECT_GT(wanted.size(), 1500);
    for (const QString& text : wanted) {
        EXPECT_EQ(texts.count(text), 1U) << text;
    }
    for (const auto& [text, unused] : texts) {
        EXPECT_TRUE(wanted.contains(text)) << "nothing says it any more: " << text;
    }
}

TEST_P(TranslationTest, IsFinishedWithEveryForm) {
    for (const auto& [source, translated] : texts) {
        EXPECT_TRUE(translated.finished) << source;
        EXPECT_EQ(translated.forms.size(), translated.counts ? GetParam().forms : 1) << source;
        EXPECT_EQ(translated.counts, source.contains(QStringLiteral("%n"))) << source;
        for (const QString& form : translated.forms) {
            EXPECT_FALSE(form.trimmed().isEmpty()) << source;
            EXPECT_EQ(form, form.normalized(QString::NormalizationForm_C)) << source;
        }
    }
}

TEST_P(TranslationTest, KeepsEveryPlaceholderAndLineAndNumber) {
    static const QRegularExpression kNumber(QStringLiteral("[0-9]+(?:[.,][0-9]+)?"));
    for (const auto& [source, translated] : texts) {
        for (const QString& form : translated.forms) {
            EXPECT_EQ(placeholders(form), placeholders(source)) << source << '\n' << form;
            EXPECT_EQ(form.count(u'\n'), source.count(u'\n')) << source << '\n' << form;
            for (const QString& number : sortedMatches(kNumber, source)) {
                EXPECT_TRUE(form.contains(number)) << number << " of " << source << '\n' << form;
            }
        }
    }
}

/// What the law and the trade's procedure name stays in English, so that nobody can mistake it; a translation
/// follows it.
TEST_P(TranslationTest, KeepsTheTermsOfTheLaw) {
    static const QRegularExpression kTerm(
        QStringLiteral("Immediately Dangerous|At Risk|[Ss]afe to use|Gas Safety \\(Installation and Use\\) "
                       "Regulations 1998|Building Regulations 2010|RIDDOR(?: 2013)?|Warning notice|"
                       "Landlord's gas safety record|[Rr]egulations? [0-9]+A?(?:\\([0-9a-z]+\\))*"));
    int terms = 0;
    for (const auto& [source, translated] : texts) {
        for (const QString& term : sortedMatches(kTerm, source)) {
            ++terms;
            for (const QString& form : translated.forms) {
                EXPECT_TRUE(form.contains(term, Qt::CaseInsensitive)) << term << ": " << form;
                EXPECT_NE(form, source) << "no translation follows";
            }
        }
    }
    EXPECT_GT(terms, 40);
}

TEST_P(TranslationTest, LeavesNoEnglishRemainder) {
    static const QRegularExpression kWord(QStringLiteral("[a-z]{3,}"));
    for (const auto& [source, translated] : texts) {
        QString words = source;
        words.remove(QRegularExpression(QStringLiteral("%[0-9n]|mbar|ppm|IGEM?[^ ]*|Supplement")));
        const bool isName = !kWord.match(words).hasMatch();
        const bool isSame = GetParam().same.contains(source) || source == u"propan";
        EXPECT_TRUE(isName || isSame || !translated.forms.contains(source)) << source;
    }
}

/// The program finds it: by walking what can be asked for.
TEST_P(TranslationTest, IsSpoken) {
    const Words words(QString::fromLatin1(GetParam().code));
    QSet<QString> all;
    for (const auto& [unused, translated] : texts) {
        all.unite({translated.forms.begin(), translated.forms.end()});
    }
    const auto expectSpoken = [&](const QString& text) { EXPECT_TRUE(all.contains(text)) << text; };
    for (const auto kind : record::allKinds()) {
        expectSpoken(words.recordKind(kind));
    }
    for (const auto& info : reg::itemCatalogue()) {
        for (const auto& choice : info.choices) {
            if (info.item != reg::Item::TestEdition) {
                expectSpoken(words.choice(info.item, std::string(choice.code)));
            }
        }
    }
    for (const auto outcome : {rulebook::Outcome::Pass, rulebook::Outcome::Fail, rulebook::Outcome::LookAgain,
                               rulebook::Outcome::NoVerdict}) {
        expectSpoken(words.outcome(outcome));
    }
    for (int i = 0; i <= static_cast<int>(rulebook::Rule::AssumedTemperatureChange); ++i) {
        expectSpoken(words.rule(static_cast<rulebook::Rule>(i)));
    }
    for (const auto say : rulebook::allSays()) {
        const QString text = words.sentence({say, {}});
        const bool isFormula = !text.contains(QRegularExpression(QStringLiteral("[a-z]{3}")));
        EXPECT_TRUE(isFormula || text != Words().sentence({say, {}})) << text;
    }
    expectSpoken(words.emergencyTitle(Words::Emergency::SmellOrEscape));
    expectSpoken(words::danger(words, reg::Danger::ImmediatelyDangerous));
}

INSTANTIATE_TEST_SUITE_P(Languages, TranslationTest, ::testing::ValuesIn(translatedLanguages()),
                         [](const auto& one) { return std::string(one.param.code); });

// Plural forms: Unicode CLDR, "Language plural rules" (pl: one, few, many), as Qt's catalogues have them.
TEST(Languages, CountAsTheyDo) {
    const auto days = [](const Words& words, int count) {
        return words.sentence(
            {rulebook::Say::GaugeCalibrationSoon, {std::string("1 X"), std::to_string(count)}});
    };
    const Words polish(QStringLiteral("pl"));
    EXPECT_TRUE(days(polish, 1).contains(u"za 1 dzień")) << days(polish, 1);
    EXPECT_TRUE(days(polish, 2).contains(u"za 2 dni")) << days(polish, 2);
    EXPECT_TRUE(days(polish, 12).contains(u"za 12 dni")) << days(polish, 12);
    const Words welsh(QStringLiteral("cy"));
    EXPECT_TRUE(days(welsh, 1).contains(u"ymhen 1 diwrnod")) << days(welsh, 1);
    EXPECT_TRUE(days(welsh, 6).contains(u"ymhen 6 o ddiwrnodau")) << days(welsh, 6);
}

// Decimal marks and months: Unicode CLDR 42, cy and pl.
TEST(Languages, WriteNumbersAndDatesAsTheyDo) {
    const quantity::Figure figure{*quantity::Decimal::parse("0.04"), quantity::UnitCode::Millibar};
    const calendar::Date date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{25}};
    EXPECT_EQ(Words(QStringLiteral("pl")).figure(figure), QStringLiteral("0,04\u00A0mbar"));
    EXPECT_EQ(Words(QStringLiteral("cy")).figure(figure), QStringLiteral("0.04\u00A0mbar"));
    EXPECT_EQ(Words::beside(QStringLiteral("pl")).figure(figure), QStringLiteral("0.04\u00A0mbar"));
    EXPECT_EQ(Words(QStringLiteral("pl")).date(date), QStringLiteral("25 listopada 2026"));
    EXPECT_EQ(Words(QStringLiteral("cy")).date(date), QStringLiteral("25 Tachwedd 2026"));
    EXPECT_EQ(Words(QStringLiteral("en+cy")).date(date), QStringLiteral("25 November 2026"));
}

TEST(Languages, WhatHasNoTranslationIsEnglish) {
    const Words welsh(QStringLiteral("cy"));
    EXPECT_EQ(welsh.itemHelp(reg::Item::VisitReference), Words().itemHelp(reg::Item::VisitReference));
    EXPECT_EQ(Words(QStringLiteral("fr")).outcome(rulebook::Outcome::Pass), QStringLiteral("pass"));
}

}  // namespace
}  // namespace hearth::ui::words
