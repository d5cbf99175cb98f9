// SPDX-License-Identifier: GPL-3.0-or-later
// The English catalogue holds the plural forms of the texts that count something.
#include "resources/resources.h"
#include "tests/ui/words/languages.h"

#include <QFile>
#include <QTranslator>
#include <QXmlStreamReader>

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

}  // namespace
}  // namespace hearth::ui::words
