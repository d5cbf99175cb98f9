// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/signing_commands.h"

#include "tests/app/demonstration_copy.h"

#include <gmock/gmock.h>

namespace {

using hearth::testing::DemonstrationCopy;
using hearth::testing::readFile;
using hearth::testing::runCommand;
using hearth::testing::writeFile;
using ::testing::HasSubstr;
using ::testing::Not;

class SigningCommands : public DemonstrationCopy {
  protected:
    void SetUp() override {
        DemonstrationCopy::SetUp();
        writeFile(inHome("pass"), "quiet lamp under stairs\nnot this\n");
        writeFile(inHome("wrong"), "another passphrase\n");
    }
};

// From the command alone to a check with another program: what a landlord does.
TEST_F(SigningCommands, ARecordIsCheckedWithoutThisProgram) {
    EXPECT_EQ(run("key").exitCode, 1) << "there is none yet";
    const auto made = run("new-key --passphrase " + inHome("pass"));
    ASSERT_EQ(made.exitCode, 0) << made.error;
    EXPECT_THAT(run("key").out, Not(HasSubstr("signature: 0")));
    EXPECT_EQ(run("sign --passphrase " + inHome("wrong")).exitCode, 1);
    const auto signed_ = run("sign --passphrase " + inHome("pass"));
    ASSERT_EQ(signed_.exitCode, 0) << signed_.error;
    EXPECT_THAT(run("key").out, HasSubstr("signature: 0"));

    const std::string pdf = inHome("record.pdf");
    const std::string number = recordOn(0);
    ASSERT_EQ(run("pdf " + number + " --to " + pdf).exitCode, 0);
    EXPECT_EQ(readFile(pdf + ".sig").size(), 64U);
    ASSERT_EQ(run("key --to " + inHome("firm.pem")).exitCode, 0);
    const std::string check = "openssl pkeyutl -verify -pubin -inkey " + inHome("firm.pem") + " -rawin -in " +
                              pdf + " -sigfile " + pdf + ".sig 2>&1";
    EXPECT_THAT(runCommand(check).text, HasSubstr("Signature Verified Successfully"));
    EXPECT_THAT(run("verify " + number).out, HasSubstr("Signed on "));
    std::string bytes = readFile(pdf);
    bytes[100] = static_cast<char>(bytes[100] ^ 1);
    writeFile(pdf, bytes);
    EXPECT_THAT(runCommand(check).text, HasSubstr("Signature Verification Failure"));
}

TEST_F(SigningCommands, TheFingerprintIsTheOneThatOpensslSees) {
    ASSERT_EQ(run("new-key --passphrase " + inHome("pass")).exitCode, 0);
    ASSERT_EQ(run("key --to " + inHome("firm.pem")).exitCode, 0);
    const auto seen =
        runCommand("openssl pkey -pubin -in " + inHome("firm.pem") + " -outform DER | sha256sum | cut -c1-8");
    const std::string grouped = seen.text.substr(0, 4) + " " + seen.text.substr(4, 4);
    EXPECT_THAT(run("key").out, HasSubstr("Fingerprint: " + grouped));
    ASSERT_EQ(run("key --to " + inHome("firm.pdf")).exitCode, 0);
    EXPECT_THAT(runCommand("pdftotext " + inHome("firm.pdf") + " -").text, HasSubstr(grouped));
    EXPECT_EQ(run("key --to " + inHome("firm.pem")).exitCode, 0) << "the same again";
    ASSERT_EQ(run("new-key --passphrase " + inHome("wrong")).exitCode, 0);
    EXPECT_EQ(run("key --to " + inHome("firm.pem")).exitCode, 3)
        << "another key is not written over the old one";
    EXPECT_EQ(run("new-key").exitCode, 2);
}

}  // namespace
