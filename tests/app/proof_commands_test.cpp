// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/proof_commands.h"

#include "tests/app/demonstration_copy.h"

#include <gmock/gmock.h>

namespace {

using hearth::testing::DemonstrationCopy;
using hearth::testing::readFile;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::StartsWith;

class Verify : public DemonstrationCopy {
  protected:
    void SetUp() override {
        DemonstrationCopy::SetUp();
        number = recordOn(0);
        pdf = inHome("shown.pdf");
        ASSERT_EQ(run("pdf " + number + " --to " + pdf).exitCode, 0);
    }
    std::string number;
    std::string pdf;
};

TEST_F(Verify, APdfThatWasIssuedIsOurs) {
    const auto said = run("verify " + pdf);
    EXPECT_EQ(said.exitCode, 0) << said.error;
    EXPECT_THAT(said.out, StartsWith("Ours and unchanged: " + number));
    EXPECT_EQ(run("verify " + number).exitCode, 0);
}

TEST_F(Verify, AChangedOneIsCaughtWithTheDigestThatDiffers) {
    std::string bytes = readFile(pdf);
    bytes[bytes.size() / 3] = static_cast<char>(bytes[bytes.size() / 3] ^ 1);
    writeFile(pdf, bytes);
    const auto said = run("verify " + pdf);
    EXPECT_EQ(said.exitCode, 6);
    EXPECT_THAT(said.out, HasSubstr("not " + number));
    EXPECT_THAT(said.out, HasSubstr("digest"));
    EXPECT_THAT(said.out, HasSubstr("number " + std::to_string(bytes.size() / 3 + 1)));
}

TEST_F(Verify, WhatIsForeignIsNotOurs) {
    writeFile(pdf, "%PDF-1.4 somebody else's");
    const auto said = run("verify " + pdf);
    EXPECT_EQ(said.exitCode, 1);
    EXPECT_THAT(said.out, StartsWith("Not ours"));
    EXPECT_EQ(run("verify QQQ-000001").exitCode, 1);
    const auto nothing = run("verify nosuchfile.pdf");
    EXPECT_EQ(nothing.exitCode, 3);
    EXPECT_THAT(nothing.error, HasSubstr("nosuchfile.pdf"));
}

/// The text of the code on a page, as a reader from outside sees it.
TEST_F(Verify, TheCodeOfAPrintedPageIsRead) {
    const std::string page = inHome("page");
    ASSERT_EQ(hearth::testing::runCommand("pdftoppm -r 150 -png " + pdf + " " + page).exitCode, 0);
    const auto scanned = hearth::testing::runCommand("zbarimg -q --raw " + page + "-*.png | sort -u");
    ASSERT_THAT(scanned.text, StartsWith(number + " "));
    const QString text = QString::fromStdString(scanned.text).trimmed();
    const auto said = run(QStringList{QStringLiteral("verify"), text});
    EXPECT_EQ(said.exitCode, 0) << scanned.text;
    EXPECT_THAT(said.out, StartsWith("Ours and unchanged"));
    QString forged = text;
    forged[forged.size() - 1] = forged.endsWith(QLatin1Char('0')) ? QLatin1Char('1') : QLatin1Char('0');
    EXPECT_EQ(run(QStringList{QStringLiteral("verify"), forged}).exitCode, 6);
}

}  // namespace
