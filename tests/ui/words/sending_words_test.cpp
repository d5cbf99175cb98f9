// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/sending_words.h"

#include "core/base/clock.h"
#include "tests/ui/words/languages.h"

namespace hearth::ui::words {
namespace {

using record::SentBy;
using ::testing::HasSubstr;
using ::testing::Not;

record::Document sentDocument() {
    record::Document document;
    document.title = "Gas tightness record";
    document.number = "BCD-000017";
    document.revision = 2;
    document.issued = "25 November 2026";
    document.firm = "Ashdown & Pike Heating";
    document.blocks = {record::Headline{rulebook::Outcome::Pass, "The installation is tight.", {}}};
    return document;
}

Instant noon() {
    Instant at{};
    static_cast<void>(parseInstant("2026-11-25T12:00:00.000Z", at));
    return at;
}

TEST(SendingWords, AMailSaysWhatIsAttachedAndWhatItReplaces) {
    auto document = sentDocument();
    const auto mail = mailText(Words(), document, QStringLiteral("14 Tallow Lane"));
    EXPECT_EQ(mail.subject, QStringLiteral("Gas tightness record, 14 Tallow Lane (BCD-000017)"));
    for (const char* said : {"BCD-000017 revision 2", "25 November 2026", "The installation is tight.",
                             "Ashdown & Pike Heating", "14 Tallow Lane"}) {
        EXPECT_THAT(mail.text.toStdString(), HasSubstr(said));
    }
    EXPECT_THAT(mail.text.toStdString(), Not(HasSubstr("takes the place")));
    document.supersedes = "Replaces revision 1 of BCD-000017: meter";
    EXPECT_THAT(mailText(Words(), document, {}).text.toStdString(),
                HasSubstr("Replaces revision 1 of BCD-000017: meter"));
}

TEST(SendingWords, ATextMessageIsShortAndWhole) {
    const auto text = textMessage(Words(), sentDocument(), QStringLiteral("14 Tallow Lane"));
    EXPECT_EQ(text, QStringLiteral("Gas tightness record, 14 Tallow Lane: The installation is tight. Record "
                                   "BCD-000017 revision 2 of 25 November 2026. Ashdown & Pike Heating"));
}

TEST(SendingWords, SendingsAndHoldersAreOneLineEach) {
    const record::Sending sending{SentBy::Mail, "m@harrow.example", "subject", "R. Ashdown", noon()};
    EXPECT_EQ(sendingLine(Words(), sending),
              QStringLiteral("25 November 2026: by mail, to m@harrow.example (R. Ashdown)"));
    const record::Sending saved{SentBy::File, "", "/tmp/a.pdf", "", noon()};
    EXPECT_EQ(sendingLine(Words(), saved),
              QStringLiteral("25 November 2026: as a file (nobody named) · /tmp/a.pdf"));
    EXPECT_EQ(holderLine(Words(), {"T. Nant", SentBy::Printed, noon()}),
              QStringLiteral("T. Nant: printed, 25 November 2026"));
}

TEST(SendingWords, ADifferenceNamesItsPlaceOldAndNew) {
    EXPECT_EQ(differenceLine(Words(), {"Meter", "Serial", "E0001", "E0002"}),
              QStringLiteral("Meter · Serial: E0001 → E0002"));
    EXPECT_EQ(differenceLine(Words(), {"Meter", "Place", "hall\ncupboard", ""}),
              QStringLiteral("Meter · Place: hall · cupboard → nothing"));
    EXPECT_EQ(differenceLine(Words(), {"", "", "Tight", "Not tight"}), QStringLiteral("Tight → Not tight"));
}

TEST(SendingWords, EachIsThereInEachLanguage) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        for (const auto by : {SentBy::File, SentBy::Mail, SentBy::Printed, SentBy::PrintedCopy, SentBy::Shown,
                              SentBy::TextMessage}) {
            EXPECT_TRUE(hearth::testing::isTranslated(sentBy(words, by), words)) << sentBy(words, by);
        }
        const auto mail = mailText(words, sentDocument(), QStringLiteral("14 Tallow Lane"));
        EXPECT_TRUE(hearth::testing::isFilled(mail.subject + mail.text)) << mail.text;
        EXPECT_TRUE(hearth::testing::isTranslated(mail.subject, words)) << mail.subject;
    }
}

}  // namespace
}  // namespace hearth::ui::words
