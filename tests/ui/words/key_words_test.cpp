// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/key_words.h"

#include "tests/ui/words/languages.h"
#include "ui/words/proof_words.h"

namespace hearth::ui::words {
namespace {

using ::testing::HasSubstr;

ShownKey keyFrom(const std::string& from, const std::string& until = {}) {
    ShownKey key;
    key.publicKey[0] = 7;
    static_cast<void>(parseInstant(from, key.from));
    if (!until.empty()) {
        key.until.emplace();
        static_cast<void>(parseInstant(until, *key.until));
    }
    key.signatures = 2;
    return key;
}
const std::string kSpring = "2026-03-01T09:00:00.000Z";
const std::string kAutumn = "2026-10-01T09:00:00.000Z";

TEST(KeyWords, TheStateSaysWhatWaits) {
    for (const auto& language : hearth::testing::languages()) {
        const Words words(language);
        for (const auto& standing : {SigningStanding{false, false, 3}, SigningStanding{true, false, 3},
                                     SigningStanding{true, true, 0}}) {
            const auto text = signingState(words, standing);
            EXPECT_TRUE(hearth::testing::isTranslated(text, words)) << text;
            EXPECT_TRUE(hearth::testing::isFilled(text)) << text;
        }
    }
    EXPECT_THAT(signingState(Words(), {true, false, 3}).toStdString(),
                HasSubstr("3 records wait for a signature"));
    EXPECT_THAT(signingState(Words(), {true, false, 1}).toStdString(),
                HasSubstr("1 record waits for a signature"));
}

TEST(KeyWords, EachKeyIsALine) {
    const auto lines = keyLines(Words(), {keyFrom(kAutumn), keyFrom(kSpring, kAutumn)});
    ASSERT_EQ(lines.size(), 2);
    EXPECT_THAT(lines[0].toStdString(), HasSubstr("Key in use since 1 October 2026, 2 records signed."));
    EXPECT_THAT(lines[1].toStdString(), HasSubstr("Key from 1 March 2026 to 1 October 2026"));
}

TEST(KeyWords, ThePageHasKeyFingerprintAndTheCheck) {
    reg::Firm firm;
    firm.name = "Ashdown & Pike Heating";
    const auto key = keyFrom(kAutumn);
    const auto page =
        keyDocument(Words(), firm, {key},
                    calendar::Date{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)});
    std::string all = page.title + page.firm;
    for (const auto& block : page.blocks) {
        if (const auto* grid = std::get_if<record::FieldGrid>(&block)) {
            for (const auto& field : grid->fields) {
                all += field.caption + field.lines.front() + '\n';
            }
        } else if (const auto* paragraph = std::get_if<record::Paragraph>(&block)) {
            all += paragraph->text;
        }
    }
    EXPECT_THAT(all, HasSubstr(groupedDigest(record::keyFingerprint(key.publicKey)).toStdString()));
    EXPECT_THAT(all, HasSubstr("MCowBQYDK2VwAyEABwAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA="));
    EXPECT_THAT(all, HasSubstr("openssl pkeyutl -verify -pubin -inkey KEY.pem -rawin"));
    EXPECT_THAT(all, HasSubstr("Ashdown & Pike Heating"));
}

}  // namespace
}  // namespace hearth::ui::words
