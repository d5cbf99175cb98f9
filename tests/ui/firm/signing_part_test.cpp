// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/firm/signing_part.h"

#include "tests/ui/support/firm_bench.h"
#include "tests/ui/support/keys.h"
#include "ui/shell/file_pattern.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

namespace hearth::ui::firm {
namespace {

using hearth::testing::child;
using hearth::testing::FirmBench;
using hearth::testing::need;

const QString kPassphrase = QStringLiteral("quiet lamp under stairs");

class SigningPartTest : public ::testing::Test {
  protected:
    void SetUp() override {
        part = std::make_unique<SigningPart>(bench.context(), nullptr);
        part->refresh();
        hearth::testing::activate(part.get());
    }
    [[nodiscard]] QPushButton* button(const char* name) const { return child<QPushButton>(part.get(), name); }
    [[nodiscard]] QString textOf(const char* name) const { return child<QLabel>(part.get(), name)->text(); }
    void makeKey() {
        bench.dialogs.texts = {kPassphrase, kPassphrase};
        button("makeSigningKeyButton")->click();
    }
    store::RecordId issueOne() {
        return need(bench.issue()(bench.startVisit(bench.addPremises("14 Tallow Lane")), std::nullopt, {}));
    }

    FirmBench bench;
    std::unique_ptr<SigningPart> part;
};

TEST_F(SigningPartTest, aKeyIsMadeAndOpenUntilItIsLocked) {
    EXPECT_TRUE(textOf("signingStateText").contains(QStringLiteral("no key")));
    EXPECT_FALSE(button("unlockSigningButton")->isVisible());
    makeKey();
    EXPECT_TRUE(bench.store->canSign());
    EXPECT_TRUE(textOf("signingStateText").contains(QStringLiteral("unlocked")));
    EXPECT_TRUE(textOf("signingKeysText").contains(QStringLiteral("in use since 25 November 2026")));
    EXPECT_TRUE(need(bench.store->signatureOf(issueOne())).has_value());
    button("unlockSigningButton")->click();
    EXPECT_FALSE(bench.store->canSign());
}

TEST_F(SigningPartTest, twoPassphrasesThatDifferMakeNoKey) {
    bench.dialogs.texts = {kPassphrase, QStringLiteral("quiet lamp under stair")};
    button("makeSigningKeyButton")->click();
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_TRUE(need(bench.store->signingKeys()).empty());
    bench.dialogs.texts = {QStringLiteral("short"), QStringLiteral("short")};
    button("makeSigningKeyButton")->click();
    EXPECT_EQ(bench.dialogs.told.size(), 2);
    EXPECT_TRUE(need(bench.store->signingKeys()).empty());
}

TEST_F(SigningPartTest, whatWaitsIsSignedAfterAskingOnce) {
    const auto record = issueOne();
    makeKey();
    bench.store->signWith(std::nullopt);
    part->refresh();
    EXPECT_TRUE(textOf("signingStateText").contains(QStringLiteral("1 record waits")));
    bench.dialogs.texts = {QStringLiteral("another passphrase")};
    button("signWaitingButton")->click();
    EXPECT_EQ(bench.dialogs.told.size(), 1);
    EXPECT_FALSE(need(bench.store->signatureOf(record)).has_value());
    bench.dialogs.texts = {kPassphrase};
    button("signWaitingButton")->click();
    EXPECT_TRUE(need(bench.store->signatureOf(record)).has_value());
    EXPECT_FALSE(button("signWaitingButton")->isVisible()) << "nothing waits";
}

TEST_F(SigningPartTest, aKeyIsRenewedOnlyWhenThatIsMeant) {
    makeKey();
    bench.dialogs.answers = {0};
    button("makeSigningKeyButton")->click();
    EXPECT_EQ(need(bench.store->signingKeys()).size(), 1U);
    bench.dialogs.answers = {1};
    bench.dialogs.texts = {QStringLiteral("seven grey geese"), QStringLiteral("seven grey geese")};
    button("makeSigningKeyButton")->click();
    EXPECT_EQ(need(bench.store->signingKeys()).size(), 2U);
    EXPECT_TRUE(bench.store->canSign());
}

TEST_F(SigningPartTest, thePublicKeyIsSavedAndPrinted) {
    makeKey();
    const auto target = bench.folder() / "key.pem";
    bench.dialogs.files = {QString::fromStdString(target.string())};
    button("savePublicKeyButton")->click();
    const auto key = need(bench.store->signingKeys()).front().publicKey;
    EXPECT_EQ(hearth::testing::readFile(target), record::publicKeyPem(key));
    button("printPublicKeyButton")->click();
    ASSERT_EQ(bench.printing.jobs.size(), 1U);
    EXPECT_EQ(bench.printing.jobs[0].document.firm, "Ashdown & Pike Heating");
    EXPECT_TRUE(paper::toPdf(bench.printing.jobs[0].document, {})) << "every letter of it can be set";
}

TEST_F(SigningPartTest, aPatternThatIsNoneIsSaidAtTheField) {
    auto* editor = child<input::Editor>(part.get(), "filePattern");
    auto* line = qobject_cast<QLineEdit*>(editor->focusTarget());
    ASSERT_NE(line, nullptr);
    EXPECT_EQ(line->text(), shell::usualFilePattern());
    line->setText(QStringLiteral("{number} {road}"));
    editor->commit();
    EXPECT_EQ(need(bench.store->setting(shell::kFilePatternSetting)), "");
    line->setText(QStringLiteral("{customer} {number}"));
    editor->commit();
    EXPECT_EQ(need(bench.store->setting(shell::kFilePatternSetting)), "{customer} {number}");
}

}  // namespace
}  // namespace hearth::ui::firm
