// SPDX-License-Identifier: GPL-3.0-or-later
// The English catalogue holds the plural forms of the texts that count something.
#include "resources/resources.h"
#include "tests/support/files.h"
#include "tests/ui/words/languages.h"

#include <QFile>
#include <QTranslator>
#include <QXmlStreamReader>

#include <set>
#include <utility>

namespace hearth::ui::words {
namespace {

TEST(Catalogue, IsCarriedByTheProgram) {
    initResources();
    QTranslator translator;
    EXPECT_TRUE(translator.load(QStringLiteral(":/i18n/hearthledger_en.qm")));
    EXPECT_FALSE(translator.isEmpty());
}

TEST(Catalogue, EnglishHasBothFormsOfEveryTextThatCounts) {
    QFile file(QStringLiteral(HEARTH_SOURCE_DIR "/translations/hearthledger_en.ts"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    int forms = 0;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"translation") {
            EXPECT_FALSE(xml.attributes().hasAttribute(QStringLiteral("type")))
                << "unfinished at line " << xml.lineNumber();
        }
        if (xml.isStartElement() && xml.name() == u"numerusform") {
            ++forms;
            EXPECT_FALSE(xml.readElementText().isEmpty()) << "line " << xml.lineNumber();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString();
    EXPECT_GT(forms, 0);
    EXPECT_EQ(forms % 2, 0);
}

/// Context and text, as the program asks for them.
std::set<std::pair<QString, QString>> textsThatCount(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    std::set<std::pair<QString, QString>> texts;
    QString context;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isStartElement() && xml.name() == u"name") {
            context = xml.readElementText();
        }
        if (xml.isStartElement() && xml.name() == u"source") {
            texts.insert({context, xml.readElementText()});
        }
    }
    return texts;
}

// A text with %n that the catalogue lacks would be shown as "1 thing(s)": build the target
// update_translations and fill its forms in.
TEST(Catalogue, HasEveryTextOfTheProgramThatCounts) {
    const testing::TempDir folder;
    const auto fresh = folder / "fresh.ts";
    const auto made = testing::runCommand(
        HEARTH_LUPDATE " -silent -pluralonly -locations none -source-language en -I " HEARTH_SOURCE_DIR
                       " " HEARTH_SOURCE_DIR "/ui " HEARTH_SOURCE_DIR "/app -ts " +
        fresh.string() + " 2>&1");
    ASSERT_EQ(made.exitCode, 0) << made.text;
    const auto wanted = textsThatCount(QString::fromStdString(fresh.string()));
    EXPECT_FALSE(wanted.empty());
    const auto kept = textsThatCount(QStringLiteral(HEARTH_SOURCE_DIR "/translations/hearthledger_en.ts"));
    for (const auto& text : wanted) {
        EXPECT_EQ(kept.count(text), 1U) << text.first << ": " << text.second;
    }
}

// A class asks by its whole name. Where its own translate function is called by a short name outside of it,
// the catalogue would have a context that nobody asks for: write the whole name there.
TEST(Catalogue, HasTheContextsThatTheProgramAsksFor) {
    const std::set<QString> called{QStringLiteral("Words"), QStringLiteral("Importing"),
                                   QStringLiteral("Exporting"),
                                   QStringLiteral("Collecting")};  // so in the source, in quotes
    for (const auto& [context, text] :
         textsThatCount(QStringLiteral(HEARTH_SOURCE_DIR "/translations/hearthledger_en.ts"))) {
        EXPECT_TRUE(context.contains(QStringLiteral("::")) || called.count(context) == 1)
            << context << ": " << text;
    }
}

}  // namespace
}  // namespace hearth::ui::words
