// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/pseudo_translator.h"

#include "tests/ui/words/languages.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace hearth::ui::words {
namespace {

TEST(Pseudo, IsLongerAccentedAndBracketed) {
    const QString text = pseudo(QStringLiteral("Settling, start"));
    EXPECT_TRUE(text.startsWith(u'[') && text.endsWith(u']')) << text;
    EXPECT_GE(text.size(), 15 * 14 / 10) << text;
    EXPECT_LE(text.size(), 15 * 16 / 10) << text;
    EXPECT_FALSE(text.contains(u'e')) << text;
    EXPECT_TRUE(text.contains(u'ê')) << text;
}

TEST(Pseudo, KeepsPlaceholdersMnemonicsTagsAndBreaks) {
    const QString text = pseudo(QStringLiteral("&Save %1 of %n\nas <b>%L2</b>"));
    for (const auto* kept : {"&", "%1", "%n", "\n", "<b>", "%L2", "</b>"}) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(kept))) << kept << " in " << text;
    }
    EXPECT_EQ(pseudo(QString()), QString());
}

// The bundled family has Latin-1, Latin Extended-A and the rest of Welsh: a letter outside would fall to
// another font.
TEST(Pseudo, UsesOnlyLettersOfTheBundledFamily) {
    QString all;
    for (char16_t c = u' '; c < 0x7F; ++c) {
        all += QChar(c);
    }
    for (const QChar c : pseudo(all)) {
        EXPECT_LT(c.unicode(), 0x180) << static_cast<int>(c.unicode());
    }
}

TEST(Pseudo, TranslatesTheWindowToo) {
    int count = 0;
    QCoreApplication application(count, nullptr);
    PseudoTranslator translator;
    QCoreApplication::installTranslator(&translator);
    EXPECT_EQ(QCoreApplication::translate("Anything", "Visits"), pseudo(QStringLiteral("Visits")));
    QCoreApplication::removeTranslator(&translator);
}

}  // namespace
}  // namespace hearth::ui::words
